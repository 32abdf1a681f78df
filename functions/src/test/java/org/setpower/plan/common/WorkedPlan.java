package org.setpower.plan.common;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Objects;

/**
 * A plan worked apart by a script: cells of its tables, and the figures that the script expects.
 */
public final class WorkedPlan {
  private static final double ROUNDING = 1e-9;
  private static final int BLOCK = 200;

  private WorkedPlan() {}

  /** A row of either file. */
  private record Entry(String table, int row, String key, String value) {
    private Object cell() {
      return value.matches("-?\\d+(\\.\\d+)?") ? (Object) Double.valueOf(value) : value;
    }
  }

  private static List<Entry> read(Class<?> near, String file) {
    try (BufferedReader reader =
        new BufferedReader(
            new InputStreamReader(
                Objects.requireNonNull(near.getResourceAsStream(file), file),
                StandardCharsets.UTF_8))) {
      List<Entry> entries = new ArrayList<>();
      reader
          .lines()
          .skip(1)
          .map(l -> l.split(",", 4))
          .forEach(
              c ->
                  entries.add(
                      new Entry(c[0], Integer.parseInt(c[1]), c[2], c[3].replace("\"", ""))));
      return entries;
    } catch (IOException e) {
      throw new UncheckedIOException(file, e);
    }
  }

  /** The cells of a plan. */
  public static Ranges cells(PlanModel model, Class<?> near, String file) {
    Ranges ranges = Ranges.of(model);
    for (Entry entry : read(near, file)) {
      if (ranges.rows(entry.table).size() < entry.row) {
        ranges.row(entry.table);
      }
      ranges.set(entry.table, entry.row, entry.key, entry.cell());
    }
    return ranges;
  }

  /**
   * Every expected figure is that of the plan, to the last digit.
   *
   * @return how many were compared
   */
  public static int assertFigures(PlanResult result, Class<?> near, String file) {
    List<Entry> expected = read(near, file);
    for (Entry entry : expected) {
      String path = entry.table + "." + entry.key;
      Object[][] matrix =
          result.matrix(new Answer(List.of(path), BLOCK), new EnglishMessages(), Locale.ENGLISH);
      Object figure = matrix[entry.row][0];
      if (figure instanceof Double d) {
        assertThat(d)
            .as("%s row %s", path, entry.row)
            .isCloseTo(Double.parseDouble(entry.value), within(ROUNDING));
      } else {
        assertThat(figure).as("%s row %s", path, entry.row).isEqualTo(entry.value);
      }
    }
    return expected.size();
  }
}
