package org.setpower.addin;

import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
import java.util.stream.Collectors;
import org.setpower.registry.FunctionSpec;
import org.setpower.registry.groups.FunctionCases;
import org.setpower.registry.groups.FunctionRegistry;

/**
 * Arguments that no sheet should pass: those of the check values, some replaced by other numbers
 * and texts, by what belongs to another function, or by ranges of odd shapes and sizes.
 */
final class HostileArguments {
  private static final int MEGABYTE = 1_000_000;
  private static final String[] LONG = {
    "x".repeat(MEGABYTE),
    "9".repeat(MEGABYTE),
    " ".repeat(MEGABYTE),
    "1 m ".repeat(MEGABYTE / 4),
    "1,".repeat(MEGABYTE / 2),
    "\ud83d\udd0b".repeat(MEGABYTE / 2),
    "2.5 mm² ".repeat(MEGABYTE / 8),
    "0:".repeat(MEGABYTE / 2),
  };

  private final List<FunctionSpec> functions = FunctionRegistry.all();
  private final Map<String, List<Object[]>> known =
      functions.stream()
          .collect(
              Collectors.toMap(
                  FunctionSpec::name,
                  f ->
                      FunctionCases.of(f.name()).stream()
                          .map(FunctionCases.Case::arguments)
                          .toList()));
  private final List<Object> words =
      known.values().stream().flatMap(List::stream).flatMap(Arrays::stream).toList();

  FunctionSpec function(SplittableRandom random) {
    return functions.get(random.nextInt(functions.size()));
  }

  /** Arguments of one call; {@code null} where one is left out. */
  Object[] of(FunctionSpec f, SplittableRandom random) {
    List<Object[]> all = known.get(f.name());
    Object[] base = all.get(random.nextInt(all.size()));
    int most = f.takesRest() ? base.length + 2 : f.parameters().size();
    Object[] arguments = Arrays.copyOf(base, random.nextInt(4) == 0 ? most : base.length);
    int changes = random.nextInt(3);
    for (int i = 0; i < changes && arguments.length > 0; i++) {
      int place = random.nextInt(arguments.length);
      arguments[place] = mutated(arguments[place], random);
    }
    return arguments;
  }

  private Object mutated(Object value, SplittableRandom random) {
    if (value instanceof Double d && random.nextBoolean()) {
      return d * Math.pow(10, random.nextInt(-4, 5)) * (random.nextInt(8) == 0 ? -1 : 1);
    }
    if (value instanceof Object[][] table && table.length > 0 && random.nextBoolean()) {
      return random.nextInt(20) == 0 ? longer(table, random) : spoilt(table, random);
    }
    if (random.nextInt(8) == 0) {
      return words.get(random.nextInt(words.size()));
    }
    return random.nextInt(4) == 0 ? range(random) : single(random);
  }

  /** The same table with its rows again and again: right, but more than anybody has. */
  private static Object[][] longer(Object[][] table, SplittableRandom random) {
    int rows = (int) Math.pow(10, random.nextDouble(1, random.nextInt(20) == 0 ? 5 : 3));
    Object[][] all = new Object[rows][];
    for (int r = 0; r < rows; r++) {
      all[r] = table[r % table.length];
    }
    return all;
  }

  private Object[][] spoilt(Object[][] table, SplittableRandom random) {
    Object[][] copy = Arrays.stream(table).map(Object[]::clone).toArray(Object[][]::new);
    Object[] row = copy[random.nextInt(copy.length)];
    if (row.length > 0) {
      int c = random.nextInt(row.length);
      row[c] = random.nextBoolean() ? mutated(row[c], random) : single(random);
    }
    return copy;
  }

  /** One value: a number, a text, or {@code null} for nothing. */
  static Object single(SplittableRandom random) {
    return switch (random.nextInt(25)) {
      case 0 -> 0.0;
      case 1 -> -0.0;
      case 2 -> Double.NaN;
      case 3 -> Double.POSITIVE_INFINITY;
      case 4 -> 1e308;
      case 5 -> -1e308;
      case 6 -> 5e-324;
      case 7 -> 3.0;
      case 8 -> -1.0;
      case 9 -> 2.0000000001;
      case 10 -> 1e9;
      case 11 -> "";
      case 12 -> " ";
      case 13 -> "\ud83d\udd0b\ud83d";
      case 14 -> "12 AWG";
      case 15 -> "3PH";
      case 16 -> "=1+1";
      case 17 -> "1e999 m";
      case 18 -> "\u0000";
      case 19 -> random.nextInt(50) == 0 ? LONG[random.nextInt(LONG.length)] : "LFP";
      case 20 -> "-5 °C";
      case 21 -> "0/0";
      case 22 -> null;
      case 23 -> Double.MIN_NORMAL;
      default -> random.nextDouble(-1e3, 1e3);
    };
  }

  private static Object range(SplittableRandom random) {
    int rows =
        switch (random.nextInt(12)) {
          case 0 -> 0;
          case 1 -> random.nextInt(200) == 0 ? 100_000 : 50;
          default -> random.nextInt(1, 5);
        };
    int columns = random.nextInt(1, 6);
    Object[][] range = new Object[rows][];
    for (int r = 0; r < rows; r++) {
      int width = random.nextInt(20) == 0 ? random.nextInt(6) : columns;
      range[r] = new Object[width];
      for (int c = 0; c < width; c++) {
        Object cell = single(random);
        range[r][c] = cell == null ? "" : cell;
      }
    }
    return range;
  }
}
