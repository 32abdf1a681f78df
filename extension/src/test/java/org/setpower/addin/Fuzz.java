package org.setpower.addin;

import com.sun.star.lang.IllegalArgumentException;
import com.sun.star.script.CannotConvertException;
import com.sun.star.sheet.NoConvergenceException;
import com.sun.star.uno.Any;
import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;
import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.Method;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.SplittableRandom;
import java.util.TreeMap;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicReference;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.setpower.registry.FunctionSpec;

/**
 * Hostile calls through the adapter: the check values of every function with some arguments
 * replaced by what no sheet should pass. Whatever comes, a call answers with a number that is
 * finite, a text, a matrix or void, or throws one of the three declared exceptions, and does so
 * within {@link #MOST_SECONDS} of the processor's time.
 */
final class Fuzz {
  /** What a call may take of one processor: a second at rest, twice that when others work too. */
  static final double MOST_SECONDS = 2;

  private static final long HANGS_AFTER_SECONDS = 120;
  private static final Set<Class<?>> DECLARED =
      Set.of(
          IllegalArgumentException.class,
          CannotConvertException.class,
          NoConvergenceException.class);
  private final FunctionsAddIn addIn = new FunctionsAddIn();
  private final Map<String, Method> methods =
      Arrays.stream(FunctionsAddIn.class.getMethods())
          .collect(Collectors.toMap(Method::getName, Function.identity(), (a, b) -> a));
  private final HostileArguments hostile = new HostileArguments();
  private final Map<String, Cost> costs = new TreeMap<>();
  private final ThreadMXBean threads = ManagementFactory.getThreadMXBean();

  private volatile Call current;
  private Call slowest;

  /** What the calls of one function took, in nanoseconds of the processor. */
  private static final class Cost {
    private long calls;
    private long sum;
    private long most;

    private void add(long nanos) {
      calls++;
      sum += nanos;
      most = Math.max(most, nanos);
    }

    private String words(String name) {
      return "%-18s %10d calls %10.2f µs each %8.0f ms the slowest"
          .formatted(name, calls, sum / 1e3 / calls, most / 1e6);
    }
  }

  /** One call, put into words only when somebody wants to read it. */
  private static final class Call {
    private final FunctionSpec function;
    private final Object[] arguments;
    private long nanos;

    Call(FunctionSpec function, Object[] arguments) {
      this.function = function;
      this.arguments = arguments;
    }

    @Override
    public String toString() {
      return function.name()
          + Arrays.stream(arguments).map(Call::words).collect(Collectors.joining("; ", "(", ")"));
    }

    private static String words(Object argument) {
      if (argument instanceof Object[][] table && table.length > 12) {
        String first = Arrays.deepToString(Arrays.copyOf(table, 3));
        return "%d rows, the first %s".formatted(table.length, shortened(first));
      }
      return argument instanceof Object[] cells
          ? shortened(Arrays.deepToString(cells))
          : shortened(String.valueOf(argument));
    }

    private static String shortened(String text) {
      return text.length() < 400
          ? text
          : text.substring(0, 80) + "… (%,d characters)".formatted(text.length());
    }
  }

  /** A run of calls that follow from the seed; fails with the call that broke the rule. */
  void run(int calls, long seed) {
    AtomicReference<Throwable> broke = new AtomicReference<>();
    Thread worker = new Thread(() -> calls(calls, new SplittableRandom(seed)), "calls");
    worker.setDaemon(true);
    worker.setUncaughtExceptionHandler((t, e) -> broke.set(e));
    worker.start();
    watch(worker);
    if (broke.get() != null) {
      throw new AssertionError("after seed " + seed + ": " + broke.get().getMessage(), broke.get());
    }
  }

  private void watch(Thread worker) {
    Call seen = null;
    long since = System.nanoTime();
    while (worker.isAlive()) {
      try {
        worker.join(500);
      } catch (InterruptedException e) {
        Thread.currentThread().interrupt();
        return;
      }
      long now = System.nanoTime();
      if (seen != current) {
        seen = current;
        since = now;
      } else if (TimeUnit.NANOSECONDS.toSeconds(now - since) > HANGS_AFTER_SECONDS) {
        AssertionError hangs = new AssertionError("Does not end: " + seen);
        hangs.setStackTrace(worker.getStackTrace());
        throw hangs;
      }
    }
  }

  private void calls(int calls, SplittableRandom random) {
    for (int i = 0; i < calls; i++) {
      FunctionSpec f = hostile.function(random);
      Call call = new Call(f, hostile.of(f, random));
      current = call;
      Object[] uno = forUno(f, call.arguments);
      long began = threads.getCurrentThreadCpuTime();
      make(call, uno);
      call.nanos = threads.getCurrentThreadCpuTime() - began;
      costs.computeIfAbsent(f.name(), n -> new Cost()).add(call.nanos);
      if (slowest == null || call.nanos > slowest.nanos) {
        slowest = call;
      }
      if (call.nanos > MOST_SECONDS * 1e9) {
        throw new AssertionError("%.1f s: %s".formatted(call.nanos / 1e9, call));
      }
    }
    current = null;
  }

  private void make(Call call, Object[] uno) {
    try {
      Object answer = methods.get(call.function.methodName()).invoke(addIn, uno);
      if (!isAnswer(answer)) {
        throw new AssertionError(call + " gives " + answer);
      }
    } catch (InvocationTargetException e) {
      if (!DECLARED.contains(e.getCause().getClass())) {
        throw new AssertionError(call.toString(), e.getCause());
      }
    } catch (ReflectiveOperationException e) {
      throw new AssertionError(call.toString(), e);
    }
  }

  private static boolean isAnswer(Object answer) {
    if (answer instanceof Double d) {
      return Double.isFinite(d);
    }
    if (answer instanceof Object[][] table) {
      return Arrays.stream(table)
          .flatMap(Arrays::stream)
          .map(c -> c instanceof Any any ? any.getObject() : c)
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

  /** The dearest functions first, with the slowest call of all. */
  List<String> report() {
    return Stream.concat(
            costs.entrySet().stream()
                .sorted(
                    Comparator.comparingLong((Map.Entry<String, Cost> e) -> e.getValue().sum)
                        .reversed())
                .map(e -> e.getValue().words(e.getKey())),
            Stream.of("The slowest, %.0f ms: %s".formatted(slowest.nanos / 1e6, slowest)))
        .toList();
  }
}
