package org.setpower.plan.register;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.function.Predicate;
import org.setpower.base.EvaluationException;
import org.setpower.fleet.Ageing;
import org.setpower.fleet.OutlierDetection;
import org.setpower.plan.common.InputColumn;
import org.setpower.plan.common.InputRow;
import org.setpower.plan.common.InputRows;
import org.setpower.plan.finding.Finding;
import org.setpower.plan.finding.Identity;
import org.setpower.plan.register.RegisterInputs.Battery;
import org.setpower.plan.register.RegisterInputs.BenchTest;

/** The tests: which can be compared, which counts for a battery, which batteries it is like. */
final class BenchTests {
  /** Tests within this are at like temperature, K; common practice, from memory. */
  static final double LIKE_TEMPERATURE = 5;

  /** Tests within this are at like state of charge, a share; common practice, from memory. */
  static final double LIKE_CHARGE = 0.1;

  /**
   * A lower share of the rating is rather Ah or kWh in place of Wh; common practice, from memory.
   */
  static final double LOWEST_SHARE = 0.3;

  /** A load is set to full watts, and so little more changes no result; common practice. */
  private static final double LOAD_ROOM = 1.05;

  /**
   * W a rated Wh; a lower load empties nothing. Lead is tested in 20 hours, all else faster: common
   * practice, from memory.
   */
  private static final double LEAST_LOAD = 0.04;

  /** mΩ; a lower figure of a whole battery is one in Ω: common practice, from memory. */
  private static final double LEAST_RESISTANCE = 1;

  private static final double FULL = 0.9;
  private static final double HALF = 0.5;
  private static final double ROUNDING = 1e-9;

  /** Columns without which a test is not compared. */
  private static final List<String> NEEDED =
      List.of("date", "measured", "load", "temperature", "rested");

  /** Columns of what is measured: a row without any of them is no test. */
  private static final List<String> READINGS =
      RegisterInputs.TESTS.columns().stream()
          .map(InputColumn::key)
          .filter(k -> k.equals("measured") || k.equals("resistance") || k.startsWith("cell"))
          .toList();

  /** By what is typed, for tests that are alike otherwise. */
  private static final Comparator<Judged> BY_CELLS =
      (a, b) ->
          a.row().cells().equals(b.row().cells())
              ? 0
              : a.row().cells().toString().compareTo(b.row().cells().toString());

  /** One of which the share is not known last, then the lowest; never by the order of rows. */
  private static final Comparator<Judged> LOWEST_LAST =
      Comparator.comparing((Judged j) -> j.share() == null ? 1 : -j.share())
          .thenComparing(BY_CELLS);

  private final Settings settings;
  private final Map<Integer, Judged> byRow = new LinkedHashMap<>();
  private final Map<String, List<Judged>> bySerial = new HashMap<>();

  /**
   * A test.
   *
   * @param compared whether nothing is wrong with it
   * @param health share of the rated energy; null unless compared
   * @param share measured over rated energy, compared or not; null where not known
   * @param celsius °C of the test; null where not known
   */
  record Judged(
      InputRow<BenchTest> row,
      List<Finding> findings,
      boolean compared,
      Double health,
      Double share,
      Double celsius) {
    BenchTest test() {
      return row.value();
    }

    /** Whether two tests were made at like temperature and state of charge. */
    boolean isLike(Judged other) {
      return celsius != null
          && other.celsius != null
          && test().charge() != null
          && other.test().charge() != null
          && Math.abs(celsius - other.celsius) <= LIKE_TEMPERATURE + ROUNDING
          && Math.abs(test().charge() - other.test().charge()) <= LIKE_CHARGE + ROUNDING;
    }

    private boolean isAfter(LocalDate day) {
      return day == null || test().date() != null && test().date().isAfter(day);
    }

    /** How many cell voltages are typed. */
    int cells() {
      return test().cells().size();
    }

    /**
     * A rested lithium-ion cell that its state of charge contradicts: above 90 % it has more than
     * 3.8 V, below 50 % less than 4.05 V. From memory, with room to the curves of makers.
     */
    Optional<Double> contradicting() {
      Double charge = test().charge();
      return charge == null
          ? Optional.empty()
          : test().cells().stream()
              .filter(v -> charge >= FULL && v < 3.8 || charge <= HALF && v > 4.05)
              .findFirst();
    }

    /** V between the best and the worst cell. */
    double spread() {
      List<Double> cells = test().cells();
      return cells.stream().mapToDouble(v -> v).max().orElseThrow()
          - cells.stream().mapToDouble(v -> v).min().orElseThrow();
    }

    /** The cell voltage that lies furthest outside limits, V. */
    Optional<Double> outside(CellLimits limits) {
      return test().cells().stream()
          .filter(v -> v < limits.lowest() || v > limits.highest())
          .max(limits.furthest());
    }
  }

  /**
   * @param tests rows of Tests
   * @param batteries rows of Batteries by serial; where two have one serial, each of them counts
   */
  BenchTests(
      Settings settings,
      InputRows<BenchTest> tests,
      Map<String, List<InputRow<Battery>>> batteries) {
    this.settings = settings;
    tests
        .filled()
        .forEach(
            r -> {
              String serial = Identity.of(r.value().serial());
              Judged judged = judge(r, batteries.get(serial));
              byRow.put(r.number(), judged);
              bySerial.computeIfAbsent(serial, s -> new ArrayList<>()).add(judged);
            });
  }

  private Judged judge(InputRow<BenchTest> row, List<InputRow<Battery>> batteries) {
    BenchTest test = row.value();
    List<Finding> findings = new ArrayList<>(row.findings());
    if (test.serial() != null && batteries == null) {
      findings.add(Finding.of(RegisterFinding.TEST_SERIAL, test.serial()));
    }
    boolean empty =
        test.measured() == null
            && test.resistance() == null
            && test.cells().isEmpty()
            && READINGS.stream().noneMatch(row.cells()::containsKey);
    if (empty) {
      findings.add(Finding.of(RegisterFinding.TEST_EMPTY));
    }
    for (String key : empty ? List.<String>of() : NEEDED) {
      if (!row.cells().containsKey(key)) {
        InputColumn column = RegisterInputs.TESTS.column(key);
        findings.add(Finding.of(RegisterFinding.TEST_INCOMPLETE, column));
      }
    }
    if (test.date() != null && test.date().isAfter(settings.asOf())) {
      findings.add(Finding.of(RegisterFinding.TEST_LATER, test.date()));
    }
    if (test.resistance() != null && test.resistance() < LEAST_RESISTANCE) {
      findings.add(Finding.of(RegisterFinding.TEST_RESISTANCE, test.resistance()));
    }
    Double celsius =
        test.temperature() == null ? null : settings.unit().toCelsius(test.temperature());
    if (celsius != null
        && (celsius < settings.coldest() - ROUNDING || celsius > settings.warmest() + ROUNDING)) {
      findings.add(temperature(test.temperature()));
    }
    if (test.rested() != null && test.rested() < settings.rest()) {
      findings.add(Finding.of(RegisterFinding.TEST_REST, test.rested(), settings.rest()));
    }
    Double rated = rated(batteries);
    Double health = null;
    if (rated == null) {
      if (batteries != null && !empty) {
        findings.add(Finding.of(RegisterFinding.TEST_NO_RATING, Incidents.named(test.serial())));
      }
    } else {
      if (test.load() != null && test.load() > LOAD_ROOM * settings.maxLoad() * rated + ROUNDING) {
        findings.add(
            Finding.of(RegisterFinding.TEST_LOAD, test.load(), settings.maxLoad() * rated));
      }
      if (test.load() != null && test.load() < LEAST_LOAD * rated - ROUNDING) {
        findings.add(Finding.of(RegisterFinding.TEST_LOAD_LOW, test.load(), LEAST_LOAD * rated));
      }
      health = health(test.measured(), rated, findings);
    }
    boolean compared = findings.isEmpty();
    return new Judged(
        row,
        findings.stream().sorted(Finding.WORST_FIRST).toList(),
        compared,
        compared ? health : null,
        rated == null || test.measured() == null ? null : (Double) (test.measured() / rated),
        celsius);
  }

  /** A temperature outside the limits, and whether another unit was meant. */
  private Finding temperature(double typed) {
    TemperatureUnit unit = settings.unit();
    double meant = unit.other().toCelsius(typed);
    return meant >= settings.coldest() && meant <= settings.warmest()
        ? Finding.of(RegisterFinding.TEST_UNIT, typed, unit.word(), unit.other().word())
        : Finding.of(
            RegisterFinding.TEST_TEMPERATURE,
            typed,
            unit.fromCelsius(settings.coldest()),
            unit.fromCelsius(settings.warmest()),
            unit.word());
  }

  /** The rated energy, Wh: of two rows with one serial the higher, which gives the lower health. */
  private static Double rated(List<InputRow<Battery>> batteries) {
    return batteries == null
        ? null
        : batteries.stream()
            .map(b -> b.value().energy())
            .filter(e -> e != null)
            .max(Comparator.naturalOrder())
            .orElse(null);
  }

  private static Double health(Double measured, double rated, List<Finding> findings) {
    if (measured == null) {
      return null;
    }
    if (measured < LOWEST_SHARE * rated - ROUNDING) {
      findings.add(Finding.of(RegisterFinding.TEST_UNDER_RATING, measured, LOWEST_SHARE, rated));
    }
    try {
      return Ageing.health(measured, rated);
    } catch (EvaluationException overRating) {
      findings.add(Finding.of(RegisterFinding.TEST_OVER_RATING, measured, rated));
      return null;
    }
  }

  /** The judgement of a row of Tests; null for a blank row. */
  Judged row(int number) {
    return byRow.get(number);
  }

  /** All tests of a serial, in any order. */
  List<Judged> of(String serial) {
    return serial.isEmpty() ? List.of() : bySerial.getOrDefault(serial, List.of());
  }

  /** The test that counts: the newest compared one; of two on one day that of the lower health. */
  Optional<Judged> counting(String serial) {
    return newest(serial, Judged::compared, Comparator.comparing(j -> -j.health()));
  }

  /** The newest test that is not compared and later than a day; with null any. */
  Optional<Judged> refusedAfter(String serial, LocalDate day) {
    return of(serial).stream()
        .filter(j -> !j.compared() && j.test().date() != null)
        .filter(j -> day == null || j.test().date().isAfter(day))
        .max(Comparator.comparing((Judged j) -> j.test().date()).thenComparing(LOWEST_LAST));
  }

  /** A test that is not compared and has no date, so that it may be the newest. */
  Optional<Judged> undated(String serial) {
    return of(serial).stream()
        .filter(j -> !j.compared() && j.test().date() == null)
        .max(LOWEST_LAST);
  }

  /** The other compared tests of the day of one. */
  List<Judged> sameDay(String serial, Judged test) {
    return of(serial).stream()
        .filter(j -> j != test && j.compared() && j.test().date().equals(test.test().date()))
        .toList();
  }

  /**
   * The newest test with two or more cell voltages; of two on one day the wider spread.
   *
   * @param since only later ones count; null for all
   */
  Optional<Judged> newestCells(String serial, LocalDate since) {
    return newest(
        serial, j -> j.cells() > 1 && j.isAfter(since), Comparator.comparing(Judged::spread));
  }

  /**
   * The newest test with a resistance; of two on one day the higher.
   *
   * @param since only later ones count; null for all
   */
  Optional<Judged> newestResistance(String serial, LocalDate since) {
    return newest(
        serial,
        j ->
            j.test().resistance() != null
                && j.test().resistance() >= LEAST_RESISTANCE
                && j.isAfter(since),
        Comparator.comparing(j -> j.test().resistance()));
  }

  private Optional<Judged> newest(
      String serial, Predicate<Judged> usable, Comparator<Judged> worst) {
    return of(serial).stream()
        .filter(usable)
        .filter(j -> j.test().date() != null && !j.test().date().isAfter(settings.asOf()))
        .max(
            Comparator.comparing((Judged j) -> j.test().date())
                .thenComparing(worst)
                // nothing of two equal ones may depend on the order of rows
                .thenComparing(BY_CELLS));
  }

  /**
   * The most cell voltages of a compared test later than a day and not later than another; empty
   * without such a test.
   */
  OptionalInt cellsBetween(String serial, LocalDate day, LocalDate last) {
    return of(serial).stream()
        .filter(j -> j.compared() && j.test().date().isAfter(day))
        .filter(j -> !j.test().date().isAfter(last))
        .mapToInt(Judged::cells)
        .max();
  }

  /**
   * The tests of one type that are compared, one a battery. What was found for a temperature and a
   * state of charge is kept: most tests of a house are made alike.
   */
  static final class Peers {
    private final List<Judged> tests;
    private final Map<List<Double>, List<Judged>> like = new HashMap<>();
    private final Map<List<Double>, double[]> scores = new HashMap<>();
    private final Map<List<Double>, Optional<Double>> medians = new HashMap<>();

    Peers(List<Judged> tests) {
      this.tests = tests;
    }

    private List<Judged> like(Judged mine) {
      return like.computeIfAbsent(
          conditions(mine), c -> tests.stream().filter(mine::isLike).toList());
    }

    private static List<Double> conditions(Judged mine) {
      return Arrays.asList(mine.celsius, mine.test().charge());
    }

    /**
     * How far the health of a test stands from like tests, as {@link OutlierDetection#scores};
     * empty with fewer than five.
     *
     * @param mine is one of them
     */
    Optional<Double> score(Judged mine) {
      List<Judged> same = like(mine);
      if (same.size() < OutlierDetection.FEWEST) {
        return Optional.empty();
      }
      double[] all =
          scores.computeIfAbsent(
              conditions(mine),
              c -> OutlierDetection.scores(same.stream().mapToDouble(Judged::health).toArray()));
      return Optional.of(all[same.indexOf(mine)]);
    }

    /** Median of the resistance of like tests, mΩ; empty with fewer than five. */
    Optional<Double> median(Judged mine) {
      return medians.computeIfAbsent(
          conditions(mine),
          c -> {
            double[] same =
                like(mine).stream().mapToDouble(j -> j.test().resistance()).sorted().toArray();
            int half = same.length / 2;
            return same.length < OutlierDetection.FEWEST
                ? Optional.empty()
                : Optional.of(
                    same.length % 2 == 1 ? same[half] : (same[half - 1] + same[half]) / 2);
          });
    }
  }
}
