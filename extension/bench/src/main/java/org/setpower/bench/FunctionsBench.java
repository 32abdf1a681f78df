package org.setpower.bench;

import java.io.IOException;
import java.util.Arrays;
import java.util.Locale;
import java.util.regex.Pattern;
import org.setpower.office.Office;
import org.setpower.registry.FunctionSpec;
import org.setpower.registry.Parameter;
import org.setpower.registry.groups.FunctionRegistry;

/** A cell of every function, against the empty function with the same arguments. */
final class FunctionsBench {
  private static final int CELLS = 1_000;
  private static final int ROUNDS = 15;
  private static final double LIMIT = 1.10;
  private static final Pattern PERCENT = Pattern.compile("([0-9.]+)%");

  private FunctionsBench() {}

  static void run(Office office, Measurements figures)
      throws IOException, com.sun.star.uno.Exception {
    double[] ratios = new double[FunctionRegistry.all().size()];
    int scalars = 0;
    int met = 0;
    for (FunctionSpec f : FunctionRegistry.all()) {
      String formula =
          f.examples().isEmpty() ? "=" + f.name() + "()" : forCalc(f.examples().get(0).formula());
      try (BenchDocument ours = filled(office, formula);
          BenchDocument empty = filled(office, EmptyAddIn.formula(formula))) {
        BenchDocument.inTurn(ROUNDS, ours, empty);
        double ratio = ours.seconds() / empty.seconds();
        String what =
            String.format(
                Locale.ROOT,
                "%s: %.1f µs, the empty one %.1f µs",
                f.name(),
                1e6 * ours.seconds() / CELLS,
                1e6 * empty.seconds() / CELLS);
        if (f.kind() == FunctionSpec.Kind.TABLE || !takesSingleValues(f)) {
          figures.add(what, "%.2f", ratio);
        } else {
          figures.atMost(LIMIT, what, ratio, "%.2f");
          met += ratio <= LIMIT ? 1 : 0;
          ratios[scalars++] = ratio;
        }
      }
    }
    Arrays.sort(ratios, 0, scalars);
    figures.add(
        "single values: %d of %d met".formatted(met, scalars),
        "median %.2f, highest %.2f",
        ratios[scalars / 2],
        ratios[scalars - 1]);
  }

  private static boolean takesSingleValues(FunctionSpec f) {
    return f.parameters().stream().allMatch(p -> p.shape() == Parameter.Shape.SINGLE);
  }

  /** Calc reads no percent in an inline array, and truth as a function. */
  private static String forCalc(String formula) {
    return PERCENT
        .matcher(formula)
        .replaceAll(share -> String.valueOf(Double.parseDouble(share.group(1)) / 100))
        .replaceAll("\\b(TRUE|FALSE)\\b", "$1()");
  }

  private static BenchDocument filled(Office office, String formula)
      throws IOException, com.sun.star.uno.Exception {
    return BenchDocument.empty(office).down(0, 0, CELLS, formula).answers(0, CELLS - 1, formula);
  }
}
