package org.setpower.templates.example;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.setpower.plan.transfer.TargetReader;
import org.setpower.plan.transfer.ThreeWayMerge;
import org.setpower.plan.transfer.TransferBatch;
import org.setpower.plan.transfer.TransferChange;
import org.setpower.plan.transfer.TransferOptions;
import org.setpower.plan.transfer.TransferRow;
import org.setpower.plan.transfer.TransferSource;
import org.setpower.plan.transfer.TransferWay;

/** The examples hang together: what Bring in… would bring stands there already, typed once. */
class ExampleLinksTest {
  private static List<TransferBatch> batches(TransferWay way) {
    return way.batches(
        TransferSource.of(way.from(), new ExampleTables(way.from()).ranges()),
        TransferOptions.USUAL);
  }

  private static List<TransferChange> differences(
      TransferWay way, TransferBatch batch, List<TransferRow> rows) {
    List<Object> ranges = new ExampleTables(way.into()).ranges();
    return new ThreeWayMerge(
            batch.target(),
            new TargetReader(way.into(), ranges, batch.target()).compared(Map.of(), Set.of()),
            List.of(),
            rows)
        .changes().stream().filter(TransferChange::isDifference).toList();
  }

  @ParameterizedTest
  @EnumSource(
      names = {"LIGHTING_TO_QUOTE", "BATTERIES_TO_QUOTE", "LIGHTING_TO_BUDGET", "QUOTE_TO_BUDGET"})
  void nothing_differs_from_what_would_be_brought_in(TransferWay way) {
    for (TransferBatch batch : batches(way)) {
      assertThat(batch.rows()).isNotEmpty();
      assertThat(differences(way, batch, batch.rows())).as("%s", way).isEmpty();
      // and a change in the source would be noticed
      String figure = batch.target().followed().get(1);
      List<TransferRow> changed = new ArrayList<>();
      for (TransferRow row : batch.rows()) {
        Map<String, Object> cells = new LinkedHashMap<>(row.cells());
        cells.computeIfPresent(figure, (key, value) -> (Double) value + 1);
        changed.add(new TransferRow(row.key(), row.group(), cells));
      }
      assertThat(differences(way, batch, changed)).as("%s", way).isNotEmpty();
    }
  }

  private static String file(String name) throws IOException {
    try (InputStream in =
        ExampleLinksTest.class.getResourceAsStream("/org/setpower/templates/example/" + name)) {
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    }
  }

  /** Quantities of batteries and power, counts of the budget stand in the files of the plans. */
  @ParameterizedTest
  @ValueSource(strings = {"quote/items.csv", "budget/counts.csv", "budget/deposits.csv"})
  void no_figure_is_typed_twice(String name) throws IOException {
    List<String> lines = file(name).lines().filter(l -> !l.startsWith("#")).toList();
    int figure =
        List.of(lines.get(0).split(","))
            .indexOf(
                name.startsWith("quote") ? "qty" : name.contains("counts") ? "value" : "amount");
    for (String line : lines.subList(1, lines.size())) {
      String plain = line.replaceAll("\"[^\"]*\"", "quoted");
      // what no plan names: the camera kit, and lights that only hang on batteries
      if (!line.contains("camera and sound") && !line.contains("on batteries")) {
        assertThat(plain.split(",", -1)[figure]).as(line).isEmpty();
      }
    }
  }
}
