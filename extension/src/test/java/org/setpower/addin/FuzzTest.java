package org.setpower.addin;

import static org.assertj.core.api.Assertions.assertThat;

import com.sun.star.lang.IllegalArgumentException;
import com.sun.star.script.CannotConvertException;
import com.sun.star.sheet.NoConvergenceException;
import com.sun.star.uno.Any;
import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.Method;
import java.time.Duration;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.SplittableRandom;
import java.util.concurrent.atomic.AtomicReference;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Assertions;
import org.junit.jupiter.api.Test;
import org.junit.platform.commons.logging.LoggerFactory;
import org.setpower.sheet.Cases;
import org.setpower.sheet.Catalogue;
import org.setpower.sheet.FunctionSpec;
import org.setpower.sheet.LiteralCall;

/**
 * Hostile calls through the adapter: the check values of every function with some arguments
 * replaced by what no sheet should pass. Whatever comes, a call answers with a number that is
 * finite, a text, a matrix or void, or throws one of the three declared exceptions.
 *
 * <p>The long form, with a count of calls and a seed: {@code extension/bin/fuzz 10000000 7}.
 */
class FuzzTest {
  private static final int CALLS = 20_000;
  private static final Set<Class<?>> DECLARED =
      Set.of(
          IllegalArgumentException.class,
          CannotConvertException.class,
          NoConvergenceException.class);
  private static final String LONG = "x".repeat(1_000_000);

  private final FunctionsAddIn addIn = new FunctionsAddIn();
  private final Map<String, Method> methods =
      Arrays.stream(FunctionsAddIn.class.getMethods())
          .collect(Collectors.toMap(Method::getName, Function.identity(), (a, b) -> a));
  private final List<FunctionSpec> functions = Catalogue.all();
  private final Map<String, List<Object[]>> known =
      functions.stream()
          .collect(
              Collectors.toMap(
                  FunctionSpec::name,
                  f ->
                      Cases.of(f.name()).stream()
                          .map(c -> LiteralCall.parse(c.formula()).arguments())
                          .toList()));

  @Test
  void no_call_ends_otherwise_than_declared() {
    int calls = Integer.getInteger("fuzz.calls", CALLS);
    long seed = Long.getLong("fuzz.seed", 1);
    AtomicReference<String> current = new AtomicReference<>("nothing yet");
    long before = usedBytes();
    long slowest =
        Assertions.assertTimeoutPreemptively(
            Duration.ofMinutes(5 + calls / 100_000), () -> run(calls, seed, current), current::get);
    long more = (usedBytes() - before) / 1024;
    LoggerFactory.getLogger(FuzzTest.class)
        .info(
            () ->
                "%,d calls, all as declared; the slowest took %d ms; heap %+,d kB"
                    .formatted(calls, slowest / 1_000_000, more));
  }

  private static long usedBytes() {
    System.gc();
    return Runtime.getRuntime().totalMemory() - Runtime.getRuntime().freeMemory();
  }

  /** Gives the nanoseconds of the slowest call. */
  private long run(int calls, long seed, AtomicReference<String> current)
      throws ReflectiveOperationException {
    SplittableRandom random = new SplittableRandom(seed);
    long slowest = 0;
    for (int i = 0; i < calls; i++) {
      FunctionSpec f = functions.get(random.nextInt(functions.size()));
      Object[] arguments = arguments(f, random);
      current.set(f.name() + shortened(arguments));
      long began = System.nanoTime();
      call(f, arguments);
      slowest = Math.max(slowest, System.nanoTime() - began);
    }
    return slowest;
  }

  private void call(FunctionSpec f, Object[] arguments) throws ReflectiveOperationException {
    Method method = methods.get(f.methodName());
    try {
      Object answer = method.invoke(addIn, forUno(f, arguments));
      assertThat(isAnswer(answer)).as(() -> f.name() + shortened(arguments)).isTrue();
    } catch (InvocationTargetException e) {
      if (!DECLARED.contains(e.getCause().getClass())) {
        throw new AssertionError(f.name() + shortened(arguments), e.getCause());
      }
    }
  }

  private static boolean isAnswer(Object answer) {
    if (answer instanceof Double d) {
      return Double.isFinite(d);
    }
    if (answer instanceof Object[][] table) {
      return Arrays.stream(table)
          .flatMap(Arrays::stream)
          .allMatch(c -> c instanceof Double || c instanceof String);
    }
    return answer instanceof String || answer instanceof double[][] || answer == Any.VOID;
  }

  /** The calling document first where dates are read; a rest as a sequence; void for null. */
  private static Object[] forUno(FunctionSpec f, Object[] arguments) {
    int places = f.parameters().size();
    int fixed = f.takesRest() ? places - 1 : places;
    Object[] uno = new Object[places + (f.takesDate() ? 1 : 0)];
    int at = f.takesDate() ? 1 : 0;
    for (int i = 0; i < fixed; i++) {
      uno[at++] = i < arguments.length && arguments[i] != null ? arguments[i] : Any.VOID;
    }
    if (f.takesRest()) {
      uno[at] =
          arguments.length <= fixed
              ? new Object[0]
              : Arrays.stream(arguments, fixed, arguments.length)
                  .map(a -> a == null ? Any.VOID : a)
                  .toArray();
    }
    return uno;
  }

  private Object[] arguments(FunctionSpec f, SplittableRandom random) {
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

  private static Object mutated(Object value, SplittableRandom random) {
    if (value instanceof Double d && random.nextBoolean()) {
      return d * Math.pow(10, random.nextInt(-4, 5)) * (random.nextInt(8) == 0 ? -1 : 1);
    }
    if (value instanceof Object[][] table && table.length > 0 && random.nextBoolean()) {
      Object[][] copy = Arrays.stream(table).map(Object[]::clone).toArray(Object[][]::new);
      Object[] row = copy[random.nextInt(copy.length)];
      if (row.length > 0) {
        int c = random.nextInt(row.length);
        row[c] = random.nextBoolean() ? mutated(row[c], random) : single(random);
      }
      return copy;
    }
    return random.nextInt(4) == 0 ? range(random) : single(random);
  }

  private static Object single(SplittableRandom random) {
    return switch (random.nextInt(24)) {
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
      case 19 -> random.nextInt(50) == 0 ? LONG : "LFP";
      case 20 -> "-5 °C";
      case 21 -> "0/0";
      case 22 -> null;
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

  private static String shortened(Object[] arguments) {
    String text = Arrays.deepToString(arguments);
    return text.length() < 600 ? text : text.substring(0, 600) + "…";
  }
}
