package org.setpower.fleet;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.platform.commons.logging.LoggerFactory;

/**
 * The straight line against measured cells with a knee. A few capacity checks of two of the 48 like
 * NMC cells of T. Baumhöfer, M. Brühl, S. Rothgang, D. U. Sauer, J. Power Sources 247 (2014)
 * 332-338, doi:10.1016/j.jpowsour.2013.08.108: cycle, capacity over that of the first check.
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

    /** Life promised by the line, less the measured one, over the measured one. */
    double error(double[] check, double retireAt) {
      double real = cyclesAt(retireAt);
      return (check[0] + Ageing.cyclesLeft(check[0], check[1], retireAt) - real) / real;
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

  @ParameterizedTest
  @MethodSource("measured")
  void before_the_knee_the_line_misses_by_no_more_than_a_quarter(Series s) {
    List<String> report = new ArrayList<>();
    for (double[] check : s.checks) {
      if (check[1] > 0.8) {
        double error = s.error(check, 0.8);
        report.add(
            String.format("at health %.2f the line is off by %+.0f %%", check[1], 100 * error));
        assertThat(error).isBetween(-0.25, 0.25);
      }
    }
    LoggerFactory.getLogger(AgeingTest.class).info(() -> "cell " + s.cell + ": " + report);
  }

  @ParameterizedTest
  @MethodSource("measured")
  void from_ninety_to_eighty_five_per_cent_it_promises_too_much(Series s) {
    for (double[] check : s.checks) {
      if (check[1] > 0.85 && check[1] < 0.9) {
        assertThat(s.error(check, 0.8)).isBetween(0.07, 0.23);
      }
    }
  }

  @ParameterizedTest
  @MethodSource("measured")
  void beyond_the_knee_it_promises_several_times_the_cycles_that_are_left(Series s) {
    double[] last = s.checks[s.cell.equals("005") ? 3 : 4];
    double promised = Ageing.cyclesLeft(last[0], last[1], 0.7);
    double real = s.cyclesAt(0.7) - last[0];
    LoggerFactory.getLogger(AgeingTest.class)
        .info(
            () ->
                String.format(
                    "cell %s: from health %.2f to 0.70 the line promises %.0f cycles, %.0f came",
                    s.cell, last[1], promised, real));
    assertThat(promised / real).isGreaterThan(2.5);
  }
}
