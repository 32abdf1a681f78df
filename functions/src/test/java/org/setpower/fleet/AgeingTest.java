package org.setpower.fleet;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.junit.platform.commons.logging.LoggerFactory;
import org.setpower.base.ReferenceTable;

/**
 * Cycles left against measured cells with a knee. Capacity checks of two of the 48 like NMC cells
 * of T. Baumhöfer, M. Brühl, S. Rothgang, D. U. Sauer, J. Power Sources 247 (2014) 332-338,
 * doi:10.1016/j.jpowsour.2013.08.108: cycle, capacity over that of the first check.
 */
class AgeingTest {
  private record Series(String cell, double[][] checks) {
    /** Where the measured capacity crosses a health, straight between two checks. */
    double cyclesAt(double health) {
      for (int i = 1; i < checks.length; i++) {
        if (checks[i][1] < health) {
          double share = (checks[i - 1][1] - health) / (checks[i - 1][1] - checks[i][1]);
          return checks[i - 1][0] + share * (checks[i][0] - checks[i - 1][0]);
        }
      }
      throw new AssertionError(cell + " never falls to " + health);
    }
  }

  static List<Series> measured() {
    return List.of(
        new Series(
            "005",
            new double[][] {
              {320, 0.9484},
              {640, 0.9064},
              {960, 0.8723},
              {1280, 0.8093},
              {1440, 0.7143},
              {1600, 0.597}
            }),
        new Series(
            "023",
            new double[][] {
              {160, 0.9695},
              {320, 0.9434},
              {640, 0.9064},
              {960, 0.8674},
              {1280, 0.8177},
              {1440, 0.773},
              {1600, 0.6738}
            }));
  }

  /** Cycles left on a straight line from new through today: what others use, and why we do not. */
  private static double onALine(double cycles, double health, double retireAt) {
    return cycles * (health - retireAt) / (1 - health);
  }

  @ParameterizedTest
  @MethodSource("measured")
  void what_came_lies_between_least_and_most(Series s) {
    List<String> report = new ArrayList<>();
    for (double retireAt : new double[] {0.85, 0.8, 0.75, 0.7}) {
      for (double[] check : s.checks) {
        if (check[1] > retireAt) {
          double came = s.cyclesAt(retireAt) - check[0];
          report.add(
              String.format(
                  "%.2f to %.2f: %.0f came, a line says %.0f",
                  check[1], retireAt, came, onALine(check[0], check[1], retireAt)));
          assertThat(came)
              .as("cell %s from %s to %s", s.cell, check[1], retireAt)
              .isBetween(
                  Ageing.cyclesLeft(check[0], check[1], retireAt, ForecastBound.LEAST),
                  Ageing.cyclesLeft(check[0], check[1], retireAt, ForecastBound.MOST));
        }
      }
    }
    LoggerFactory.getLogger(AgeingTest.class).info(() -> "cell " + s.cell + ": " + report);
  }

  @ParameterizedTest
  @MethodSource("measured")
  void beyond_the_knee_a_line_would_promise_several_times_what_came(Series s) {
    double[] last = s.checks[s.cell.equals("005") ? 3 : 4];
    double came = s.cyclesAt(0.7) - last[0];
    assertThat(onALine(last[0], last[1], 0.7) / came).isGreaterThan(2.5);
    assertThat(Ageing.cyclesLeft(last[0], last[1], 0.7, ForecastBound.LEAST)).isLessThan(came);
  }

  /** Each of the six cells, foretold from the other five, at every row of the table. */
  @ParameterizedTest
  @ValueSource(strings = {"a", "b", "c", "d", "e", "f"})
  void six_tenths_and_seven_fifths_cover_the_cell_that_is_left_out(String cell) {
    List<ReferenceTable.Row> rows = ReferenceTable.read(Ageing.class, "ageing.csv");
    int compared = 0;
    for (ReferenceTable.Row from : rows) {
      for (ReferenceTable.Row to : rows) {
        if (to.number("health") < from.number("health")) {
          double came = to.number(cell) / from.number(cell) - 1;
          double least = Double.POSITIVE_INFINITY;
          double most = 0;
          for (String other : List.of("a", "b", "c", "d", "e", "f")) {
            if (!other.equals(cell)) {
              double left = to.number(other) / from.number(other) - 1;
              least = Math.min(least, left);
              most = Math.max(most, left);
            }
          }
          assertThat(came).isBetween(0.6 * least, 1.4 * most);
          compared++;
        }
      }
    }
    assertThat(compared).isEqualTo(66);
  }

  @Test
  void more_cycles_at_the_same_health_leave_more() {
    assertThat(Ageing.cyclesLeft(400, 0.9, 0.8, ForecastBound.LEAST))
        .isEqualTo(2 * Ageing.cyclesLeft(200, 0.9, 0.8, ForecastBound.LEAST));
  }
}
