package org.setpower.handbook;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.setpower.plan.common.PlanModel;
import org.setpower.plan.common.PlanResult;
import org.setpower.templates.TemplateRegistry;
import org.setpower.templates.example.ExampleTables;

/** The figures of the tour are those of the examples, in the order of the page, all of them. */
class TourTest {
  private static final Path PAGE = Path.of("src/main/handbook/tour.md");
  private static final Path FIGURES = Path.of("src/test/resources/tour.csv");
  private static final Pattern FIGURE = Pattern.compile("\\*\\*([\\d.]+)\\*\\*");

  private final Map<String, PlanResult> plans = new HashMap<>();

  private PlanResult plan(String name) {
    return plans.computeIfAbsent(
        name,
        n -> {
          PlanModel model =
              TemplateRegistry.plans().stream()
                  .map(t -> t.workbook().model())
                  .filter(m -> m.name().equals(n))
                  .findFirst()
                  .orElseThrow();
          return model.calculate(new ExampleTables(model).ranges());
        });
  }

  private String shown(String plan, String path, int row, int decimals) {
    int dot = path.indexOf('.');
    Object value =
        plan(plan).cells(path.substring(0, dot)).get(row - 1).get(path.substring(dot + 1));
    return new BigDecimal(value.toString())
        .abs()
        .setScale(decimals, RoundingMode.HALF_UP)
        .toPlainString();
  }

  @Test
  void figures_are_those_of_the_examples() throws IOException {
    List<String> calculated = new ArrayList<>();
    List<String> lines = Files.readAllLines(FIGURES);
    for (String line : lines.subList(1, lines.size() - 1)) {
      String[] cells = line.split(",");
      int decimals = new BigDecimal(cells[3]).scale();
      calculated.add(shown(cells[0], cells[1], Integer.parseInt(cells[2]), decimals));
    }
    List<String> written =
        FIGURE.matcher(Files.readString(PAGE)).results().map(m -> m.group(1)).toList();
    assertThat(written).hasSizeGreaterThan(40).isEqualTo(calculated);
  }
}
