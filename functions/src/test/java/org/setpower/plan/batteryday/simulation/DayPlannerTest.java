package org.setpower.plan.batteryday.simulation;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.setpower.pack.Chemistry;

/** The fewest batteries: against every schedule of small days, and what must always hold. */
class DayPlannerTest {
  private static final AirTemperature MILD =
      new AirTemperature(List.of(AirTemperature.Part.constant(0, 20, 20)));
  private static final BatteryFeed FEED =
      new BatteryFeed(Chemistry.LI_ION, 8, 10.2, 45.0, 294, 1, 20, 0, 0);

  private static UnitSpec unit(int row, int type, double watts, double from, double to) {
    return new UnitSpec(
        row,
        1,
        row,
        type,
        BatteryConnection.ONE,
        1,
        FEED,
        List.of(new UnitSpec.Span(from, to, watts)));
  }

  private static DaySpec day(
      List<UnitSpec> units, List<ChargerSpec> chargers, List<SupplySpec> supplies) {
    return new DaySpec(
        6,
        30,
        MILD,
        Double.NaN,
        List.of(),
        0.5,
        units.stream().map(u -> new UnitWork(u, MILD, Double.NaN, List.of())).toList(),
        List.of(),
        chargers,
        supplies,
        Double.POSITIVE_INFINITY,
        List.of());
  }

  private static ChargerSpec charger(int row, double amps, double from, double to, int... types) {
    ChargeCurve curve = ChargeCurve.of(Chemistry.LI_ION, 8, 10.2, 45.0, amps, 20);
    Map<Integer, ChargerSpec.Rate> rates = new TreeMap<>();
    for (int type : types) {
      rates.put(type, new ChargerSpec.Rate(curve, amps * 42, 367));
    }
    PowerHours power = new PowerHours(List.of(new PowerHours.Span(from, to)));
    return new ChargerSpec(row, 1, 1, rates, 1, 1, 0, 0, power, power, Double.POSITIVE_INFINITY);
  }

  /** Minutes that a full battery lasts, rounded down, and that a whole charge takes, rounded up. */
  private static int minutes(double hours) {
    return (int) Math.floor(hours * 60);
  }

  private static MinuteDay.Load load(double watts, double from, double to) {
    return new MinuteDay.Load(
        (int) Math.round(from * 60), (int) Math.round(to * 60), minutes(FEED.hours(watts, 20)));
  }

  private static MinuteDay.Channel channel(double amps, double from, double to) {
    ChargeCurve curve = ChargeCurve.of(Chemistry.LI_ION, 8, 10.2, 45.0, amps, 20);
    double end = FEED.curve(92, 20).end();
    return new MinuteDay.Channel(
        minutes(curve.hours(end, 1)) + 1,
        (int) Math.round(Math.max(0, from) * 60),
        (int) Math.round(Math.min(48, to) * 60));
  }

  /**
   * A dozen days: watts and hours of up to three positions; amps and hours of power of up to two
   * chargers. With full batteries only, every schedule is tried minute by minute; part-used
   * batteries may save one.
   */
  @ParameterizedTest
  @CsvSource({
    "92,7,17, 0,0,0, 0,0,0, 0,0,0, 0,0,0",
    "92,7,17, 0,0,0, 0,0,0, 4,0,48, 0,0,0",
    "92,7,17, 0,0,0, 0,0,0, 1,0,48, 0,0,0",
    "92,7,17, 92,7,17, 0,0,0, 0,0,0, 0,0,0",
    "92,7,17, 92,7,17, 0,0,0, 4,0,48, 0,0,0",
    "92,7,17, 120,8,18, 0,0,0, 4,0,48, 4,0,48",
    "92,7,17, 120,8,18, 0,0,0, 4,12,48, 0,0,0",
    "92,7,17, 120,8,18, 0,0,0, 4,0,11, 4,14,48",
    "150,7,15, 60,7,19, 0,0,0, 5,0,48, 0,0,0",
    "150,7,15, 60,7,19, 92,9,12, 5,0,48, 2,0,48",
    "200,7,12, 0,0,0, 0,0,0, 8,0,48, 0,0,0",
    "200,7,12, 200,7,12, 0,0,0, 8,0,48, 8,0,48",
    "110,7,13, 110,7,13, 110,7,13, 3,0,48, 0,0,0",
  })
  void the_fewest_of_small_days_are_those_of_the_best_schedule(
      double w1,
      double f1,
      double t1,
      double w2,
      double f2,
      double t2,
      double w3,
      double f3,
      double t3,
      double a1,
      double pf1,
      double pt1,
      double a2,
      double pf2,
      double pt2) {
    List<UnitSpec> units = new ArrayList<>();
    List<MinuteDay.Load> loads = new ArrayList<>();
    double[][] given = {{w1, f1, t1}, {w2, f2, t2}, {w3, f3, t3}};
    for (double[] g : given) {
      if (g[0] > 0) {
        units.add(unit(units.size() + 1, 1, g[0], g[1], g[2]));
        loads.add(load(g[0], g[1], g[2]));
      }
    }
    List<ChargerSpec> chargers = new ArrayList<>();
    List<MinuteDay.Channel> channels = new ArrayList<>();
    for (double[] g : new double[][] {{a1, pf1, pt1}, {a2, pf2, pt2}}) {
      if (g[0] > 0) {
        chargers.add(charger(chargers.size() + 1, g[0], g[1], g[2], 1));
        channels.add(channel(g[0], g[1], g[2]));
      }
    }
    DayPlanner.Fewest fewest = new DayPlanner(day(units, chargers, List.of())).fewest();
    assertThat(fewest.proven()).isTrue();
    int best = MinuteDay.fewest(loads, channels);
    int energy = 0;
    for (MinuteDay.Load load : loads) {
      energy += load.to() - load.from();
    }
    assertThat(energy).isPositive();
    assertThat(fewest.together().get(1)).isLessThanOrEqualTo(best).isGreaterThanOrEqualTo(best - 1);
  }

  /** One more charger never asks for more batteries, one less never for fewer. */
  @Test
  void more_chargers_never_ask_for_more() {
    Random random = new Random(5);
    int saved = 0;
    for (int i = 0; i < 60; i++) {
      List<UnitSpec> units = units(random);
      List<ChargerSpec> chargers = new ArrayList<>();
      Map<Integer, Integer> before =
          new DayPlanner(day(units, chargers, List.of())).fewest().alone();
      for (int c = 1; c <= 3; c++) {
        int[] types = random.nextInt(3) == 0 ? new int[] {1, 2} : new int[] {1 + random.nextInt(2)};
        double from = random.nextInt(3) == 0 ? 12 : 0;
        chargers.add(charger(c, 2 + random.nextInt(5), from, 48, types));
        Map<Integer, Integer> after =
            new DayPlanner(day(units, List.copyOf(chargers), List.of())).fewest().alone();
        before.forEach((type, number) -> assertThat(after.get(type)).isLessThanOrEqualTo(number));
        saved += sum(before) - sum(after);
        before = after;
      }
    }
    assertThat(saved).isGreaterThan(20);
  }

  /** The same of all types together, which is the figure of the sheet; and calculated twice. */
  @Test
  void more_chargers_and_watts_never_ask_for_more_in_all() {
    Random random = new Random(11);
    int saved = 0;
    for (int i = 0; i < 60; i++) {
      List<UnitSpec> units = units(random);
      List<ChargerSpec> chargers = new ArrayList<>();
      double watts = 150 + random.nextInt(300);
      Map<Integer, Integer> before = together(units, chargers, watts);
      for (int c = 1; c <= 3; c++) {
        int[] types = random.nextInt(3) == 0 ? new int[] {1, 2} : new int[] {1 + random.nextInt(2)};
        chargers.add(charger(c, 2 + random.nextInt(5), 0, 48, types));
        Map<Integer, Integer> after = together(units, List.copyOf(chargers), watts);
        assertThat(sum(after)).as("day %s, charger %s", i, c).isLessThanOrEqualTo(sum(before));
        assertThat(together(units, List.copyOf(chargers), watts)).isEqualTo(after);
        saved += sum(before) - sum(after);
        before = after;
      }
      Map<Integer, Integer> more = together(units, List.copyOf(chargers), 2 * watts);
      assertThat(sum(more)).as("day %s, watts", i).isLessThanOrEqualTo(sum(before));
    }
    assertThat(saved).isGreaterThan(20);
  }

  private static Map<Integer, Integer> together(
      List<UnitSpec> units, List<ChargerSpec> chargers, double watts) {
    List<SupplySpec> supply = List.of(new SupplySpec(1, watts, Double.POSITIVE_INFINITY));
    return new DayPlanner(day(units, chargers, supply)).fewest().together();
  }

  /** More watts never ask for more batteries. */
  @Test
  void more_watts_never_ask_for_more() {
    Random random = new Random(6);
    int saved = 0;
    for (int i = 0; i < 40; i++) {
      List<UnitSpec> units = units(random);
      List<ChargerSpec> chargers =
          List.of(charger(1, 4, 0, 48, 1, 2), charger(2, 4, 0, 48, 1), charger(3, 4, 0, 48, 2));
      Map<Integer, Integer> before = null;
      for (double watts = 100; watts <= 600; watts += 168) {
        List<SupplySpec> supply = List.of(new SupplySpec(1, watts, Double.POSITIVE_INFINITY));
        Map<Integer, Integer> after = new DayPlanner(day(units, chargers, supply)).fewest().alone();
        if (before != null) {
          before.forEach((type, number) -> assertThat(after.get(type)).isLessThanOrEqualTo(number));
          saved += sum(before) - sum(after);
        }
        before = after;
      }
    }
    assertThat(saved).isGreaterThan(10);
  }

  /** One more position of a type never asks for fewer of it. */
  @Test
  void more_load_never_asks_for_fewer() {
    Random random = new Random(7);
    for (int i = 0; i < 60; i++) {
      List<UnitSpec> units = units(random);
      List<ChargerSpec> chargers = List.of(charger(1, 4, 0, 48, 1, 2), charger(2, 3, 0, 48, 1));
      Map<Integer, Integer> before =
          new DayPlanner(day(units, chargers, List.of())).fewest().alone();
      List<UnitSpec> more = new ArrayList<>(units);
      more.add(unit(9, 1 + random.nextInt(2), 40 + random.nextInt(100), 8, 16));
      Map<Integer, Integer> after = new DayPlanner(day(more, chargers, List.of())).fewest().alone();
      before.forEach((type, number) -> assertThat(after.get(type)).isGreaterThanOrEqualTo(number));
    }
  }

  private static List<UnitSpec> units(Random random) {
    List<UnitSpec> units = new ArrayList<>();
    int count = 2 + random.nextInt(3);
    for (int u = 1; u <= count; u++) {
      double from = 7 + random.nextInt(4);
      double to = from + 3 + random.nextInt(8);
      units.add(unit(u, 1 + u % 2, 40 + random.nextInt(160), from, to));
    }
    return units;
  }

  private static int sum(Map<Integer, Integer> numbers) {
    return numbers.values().stream().mapToInt(n -> n).sum();
  }

  /** With the numbers that are shown nothing goes dark: they are planned, not only counted. */
  @Test
  void the_fewest_together_light_the_day() {
    Random random = new Random(8);
    for (int i = 0; i < 40; i++) {
      List<UnitSpec> units = units(random);
      DaySpec day =
          day(units, List.of(charger(1, 4, 0, 48, 1, 2), charger(2, 3, 10, 48, 1)), List.of());
      List<BatterySpec> stock = new ArrayList<>();
      new DayPlanner(day)
          .fewest()
          .together()
          .forEach(
              (type, number) -> {
                for (int n = 0; n < number; n++) {
                  stock.add(new BatterySpec(stock.size() + 1, type, 1));
                }
              });
      assertThat(new DayPlanner(day.with(stock, day.chargers())).plan().isLit()).isTrue();
    }
  }
}
