package org.setpower.templates;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.setpower.templates.TestWorkbook.column;

import java.io.IOException;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;
import org.setpower.addin.SharedOffice;
import org.setpower.office.Office;
import org.setpower.templates.example.TemplateDefinition;
import org.setpower.templates.lighting.LightingPlan;
import org.setpower.templates.spec.TableSpec;
import org.setpower.templates.uno.KeyFigureReader;

/** Files filled to the last row, against sums that are worked out here. */
@Tag("one-office")
@ExtendWith(SharedOffice.class)
class StressIT {
  private static final Path TEMPLATES = Path.of("target/sheets/templates/en");

  @TempDir Path folder;

  private TestWorkbook open(Office office, FullExamples stress, TemplateDefinition workbook)
      throws IOException {
    Path file = stress.fill(office, TEMPLATES, folder);
    TestWorkbook book = new TestWorkbook(office, file, workbook.template()).calculated();
    assertThat(book.errors()).isEmpty();
    Map<String, String> first = KeyFigureReader.of(book.document());
    book.calculated();
    assertThat(KeyFigureReader.of(book.document())).isEqualTo(first);
    return book;
  }

  private static double number(Map<String, String> row, String heading, double blank) {
    String text = row.getOrDefault(heading, "");
    return text.isEmpty()
        ? blank
        : text.endsWith("%")
            ? Double.parseDouble(text.substring(0, text.length() - 1)) / 100
            : Double.parseDouble(text);
  }

  @Test
  void lighting_plan_of_200_loads_100_runs_60_packs(Office office) throws IOException {
    FullExamples stress = FullExamples.lighting();
    try (TestWorkbook book = open(office, stress, new LightingPlan())) {
      Map<String, Double> watts = new HashMap<>();
      FullExamples.scenario("kit-devices")
          .forEach(d -> watts.put(d.get("Item"), number(d, "Power", Double.NaN)));
      double expected =
          stress.rows("Loads").stream()
              .mapToDouble(
                  r -> number(r, "Quantity", 0) * number(r, "Level", 1) * watts.get(r.get("Item")))
              .sum();
      TableSpec loads = book.table("Loads");
      assertThat(book.sum(column(loads, "Power"))).isCloseTo(expected, within(1e-6));
      assertThat(everyRowSaysSomething(book, loads)).isTrue();
      assertThat(everyRowSaysSomething(book, book.table("Runs"))).isTrue();
      assertThat(everyRowSaysSomething(book, book.table("Packs"))).isTrue();
    }
  }

  private static boolean everyRowSaysSomething(TestWorkbook book, TableSpec table) {
    return book.values(table.status()).stream()
        .map(Objects::toString)
        .allMatch(List.of("ok", "check", "stop")::contains);
  }
}
