package org.setpower.templates.example;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.setpower.base.ReferenceTable;
import org.setpower.plan.budget.BudgetPlan;
import org.setpower.plan.transfer.TargetReader;
import org.setpower.plan.transfer.ThreeWayMerge;
import org.setpower.plan.transfer.TransferBatch;
import org.setpower.plan.transfer.TransferChange;
import org.setpower.plan.transfer.TransferRow;
import org.setpower.plan.transfer.TransferSource;
import org.setpower.plan.transfer.TransferWay;

/** The examples hang together: what Bring in… would bring stands there already, typed once. */
class ExampleLinksTest {
  private static List<TransferBatch> batches(TransferWay way) {
    return ExampleTables.batches(
        way,
        TransferSource.of(way.from(), new ExampleTables(way.from()).ranges()),
        new ExampleTables(way.into()).ranges());
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

  /** Every figure that another file of the scenario has stands there alone. */
  @ParameterizedTest
  @CsvSource({
    "quote/items.csv, qty, ''",
    "budget/counts.csv, value, ''",
    "budget/deposits.csv, amount, ''",
    "budget/lines.csv, ordered, planned"
  })
  void no_figure_is_typed_twice(String name, String column, String word) throws IOException {
    for (CSVRecord line : lines(name)) {
      assertThat(line.get(column)).as(line.toString()).isIn("", word);
    }
  }

  /** What a line of the quote costs, and what was approved as planned, is no figure of the file. */
  @Test
  void lines_of_the_quote_have_no_figure_of_their_own() throws IOException {
    for (CSVRecord line : lines("budget/lines.csv")) {
      if (line.get("po").equals("PO 118")) {
        for (String column : List.of("qty", "times", "price", "discount", "tax")) {
          assertThat(line.get(column)).as(line.toString()).isEmpty();
        }
      }
    }
    List<Object> ranges = new ExampleTables(BudgetPlan.MODEL).ranges();
    Map<Integer, String> planned = new HashMap<>();
    BudgetPlan.approval(ranges)
        .amounts()
        .forEach(a -> planned.put(a.row(), a.planned().stripTrailingZeros().toPlainString()));
    int row = 0;
    for (CSVRecord line : lines("budget/lines.csv")) {
      row++;
      for (String column : List.of("ordered", "budget")) {
        if (!line.get(column).isEmpty()) {
          assertThat(line.get(column)).as("%s: %s", column, line).isNotEqualTo(planned.get(row));
        }
      }
    }
  }

  private static List<CSVRecord> lines(String name) throws IOException {
    try (InputStream in =
            ExampleLinksTest.class.getResourceAsStream("/org/setpower/templates/example/" + name);
        CSVParser parser =
            ReferenceTable.FORMAT.parse(new InputStreamReader(in, StandardCharsets.UTF_8))) {
      return parser.getRecords();
    }
  }
}
