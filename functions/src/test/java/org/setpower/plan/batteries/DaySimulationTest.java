package org.setpower.plan.batteries;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.setpower.base.EvaluationException;
import org.setpower.plan.batteryday.simulation.PowerHours;

/** The day against playing it through minute by minute, and what must hold of any day. */
class DaySimulationTest {
  private static final int MINUTES = 3000;

  /** By then the last device has ended. */
  private static final int ALL_ENDED = 801;

  private static final int[] SIZES = {120, 300};

  /** A small day whose moments fall on whole minutes. */
  record SmallDay(
      List<MinuteSimulation.Load> loads,
      int few,
      int many,
      int channels,
      int chargeSmall,
      int chargeLarge,
      int gapFrom,
      int gapLength) {

    List<Device> devices() {
      List<Device> devices = new ArrayList<>();
      for (MinuteSimulation.Load l : loads) {
        double watts = l.size() * 60.0 * l.atOnce() / l.lasts();
        devices.add(
            new Device(
                devices.size() + 1, watts, l.from() / 60.0, l.to() / 60.0, l.size(), l.atOnce()));
      }
      return devices;
    }

    ChargerSet chargers() {
      PowerHours mains =
          PowerHours.within(
              List.of(
                  new PowerHours.Span((gapFrom + gapLength) / 60.0, MINUTES),
                  new PowerHours.Span(0, gapFrom / 60.0)));
      return new ChargerSet(channels, chargeSmall / 60.0, Map.of(300.0, chargeLarge / 60.0), mains);
    }

    DaySimulation planned(Map<Double, Integer> pieces) {
      List<DaySimulation.Stock> stock = new ArrayList<>();
      pieces.forEach((wh, n) -> stock.add(new DaySimulation.Stock(stock.size() + 1, wh, n, 1)));
      return DaySimulation.of(devices(), stock, chargers(), 25);
    }

    DaySimulation planned() {
      return planned(new TreeMap<>(Map.of(120.0, few, 300.0, many)));
    }

    MinuteSimulation played(int small, int large, int minutes) {
      boolean[] mains = new boolean[minutes];
      Arrays.fill(mains, true);
      Arrays.fill(mains, gapFrom, gapFrom + gapLength, false);
      return new MinuteSimulation(
          loads,
          new TreeMap<>(Map.of(120, small, 300, large)),
          channels,
          new TreeMap<>(Map.of(120, chargeSmall, 300, chargeLarge)),
          mains);
    }
  }

  @Provide
  Arbitrary<SmallDay> days() {
    Arbitrary<MinuteSimulation.Load> load =
        Combinators.combine(
                Arbitraries.integers().between(0, 300),
                Arbitraries.integers().between(1, 500),
                Arbitraries.integers().between(5, 200),
                Arbitraries.of(120, 300),
                Arbitraries.integers().between(1, 3))
            .as(
                (from, length, lasts, size, n) ->
                    new MinuteSimulation.Load(from, from + length, lasts, size, n));
    return Combinators.combine(
            load.list().ofMinSize(1).ofMaxSize(6),
            Arbitraries.integers().between(0, 8),
            Arbitraries.integers().between(0, 8),
            Arbitraries.integers().between(0, 4),
            Arbitraries.integers().between(1, 200),
            Arbitraries.integers().between(1, 200),
            Arbitraries.integers().between(1, 400),
            Arbitraries.integers().between(0, 200))
        .as(SmallDay::new);
  }

  @Property(tries = 200)
  void the_day_goes_as_it_does_minute_by_minute(@ForAll("days") SmallDay day) {
    DaySimulation plan = day.planned();
    MinuteSimulation played = day.played(day.few, day.many, MINUTES);
    List<String> log = new ArrayList<>();
    for (DaySimulation.Event e : plan.events()) {
      assertThat(e.hour() * 60).isCloseTo(Math.rint(e.hour() * 60), within(1e-6));
      String who =
          e.what() == DaySimulation.What.BACK
              ? "back " + SIZES[e.kind() - 1]
              : e.what().words() + " " + e.device();
      if (Math.round(e.hour() * 60) < MINUTES) {
        log.add(Math.round(e.hour() * 60) + " " + who);
      }
    }
    // Within one moment several may come back; which of them is named first does not matter.
    assertThat(sorted(log)).isEqualTo(sorted(played.log));
    assertThat(plan.hoursLost() * 60).isCloseTo(played.minutesDark, within(1e-6));
  }

  private static List<String> sorted(List<String> log) {
    return log.stream().sorted().toList();
  }

  @Property(tries = 25)
  void one_pack_fewer_than_the_fewest_leaves_a_device_dark(@ForAll("days") SmallDay day) {
    Map<Double, Integer> fewest = DaySimulation.fewestPacks(day.devices(), day.chargers(), 25);
    int small = fewest.getOrDefault(120.0, 0);
    int large = fewest.getOrDefault(300.0, 0);
    assertThat(day.played(small, large, ALL_ENDED).minutesDark).isZero();
    assertThat(day.planned(fewest).hoursLost()).isZero();
    for (double size : fewest.keySet()) {
      Map<Double, Integer> fewer = new TreeMap<>(fewest);
      fewer.merge(size, -1, Integer::sum);
      assertThat(day.planned(fewer).hoursLost()).isPositive();
    }
    // By trying: every smaller number of the one size, plenty of the other.
    for (int n = 0; n < small; n++) {
      assertThat(day.played(n, 99, ALL_ENDED).minutesDark).isPositive();
    }
    for (int n = 0; n < large; n++) {
      assertThat(day.played(99, n, ALL_ENDED).minutesDark).isPositive();
    }
  }

  @Property(tries = 300)
  void no_pack_is_at_two_places_at_once(@ForAll("days") SmallDay day) {
    int all = day.few + day.many;
    Map<Integer, List<String>> held = new HashMap<>();
    Set<String> away = new HashSet<>();
    double before = Double.NEGATIVE_INFINITY;
    for (DaySimulation.Event e : day.planned().events()) {
      assertThat(e.hour()).isGreaterThanOrEqualTo(before);
      before = e.hour();
      assertThat(e.inUse() + e.charging() + e.waiting() + e.onShelf()).isEqualTo(all);
      assertThat(e.charging()).isLessThanOrEqualTo(day.channels);
      String pack = e.kind() + "/" + e.pack();
      switch (e.what()) {
        case BACK -> assertThat(away.remove(pack)).as("%s was away", pack).isTrue();
        case STARTS, SWAP, ON_AGAIN -> {
          assertThat(away.add(pack)).as("%s was on the shelf", pack).isTrue();
          held.computeIfAbsent(e.device(), d -> new ArrayList<>()).add(pack);
        }
        default -> held.remove(e.device());
      }
    }
  }

  @Property(tries = 100)
  void cold_and_worn_packs_last_a_share_of_the_time(@ForAll("days") SmallDay day) {
    Device first = day.devices().get(0);
    double lasts = first.wattHours() * first.atOnce() / first.watts();
    Device whole = new Device(1, first.watts(), 0, 10 * lasts, first.wattHours(), first.atOnce());
    List<DaySimulation.Stock> stock =
        List.of(new DaySimulation.Stock(1, first.wattHours(), 60, 0.8));
    ChargerSet none = new ChargerSet(0, 1, Map.of(), PowerHours.always());
    // −10 °C: 0.7378 of the energy (lower quartile of measured NMC cells)
    DaySimulation plan = DaySimulation.of(List.of(whole), stock, none, -10);
    DaySimulation.Event swap =
        plan.events().stream()
            .filter(e -> e.what() == DaySimulation.What.SWAP)
            .findFirst()
            .orElseThrow();
    assertThat(swap.hour()).isCloseTo(lasts * 0.8 * 0.7378, within(1e-9 * lasts));
  }

  /**
   * A pack lasts 0.01 h and is charged in half of that. In n + 0.5 times 0.01 h a device starts,
   * swaps n times and ends, and n + 1 packs come back: 2n + 3 events; another one starts, ends, and
   * its pack comes back. With n = 9997 that makes 20 000.
   */
  @Example
  void as_many_events_as_anybody_reads() {
    assertThat(DaySimulation.of(busy(9997), BUSY_STOCK, BUSY_CHARGERS, 25).events())
        .hasSize(20_000);
    assertThatThrownBy(() -> DaySimulation.of(busy(9998), BUSY_STOCK, BUSY_CHARGERS, 25))
        .isInstanceOfSatisfying(
            EvaluationException.class,
            r -> assertThat(r.errorCode()).isEqualTo(BatteryPlanErrorCode.TOO_MANY_EVENTS));
  }

  private static final List<DaySimulation.Stock> BUSY_STOCK =
      List.of(new DaySimulation.Stock(1, 98, 2, 1), new DaySimulation.Stock(2, 150, 1, 1));
  private static final ChargerSet BUSY_CHARGERS =
      new ChargerSet(2, 0.005, Map.of(), PowerHours.always());

  private static List<Device> busy(int swaps) {
    return List.of(
        new Device(1, 9800, 0, (swaps + 0.5) * 0.01, 98, 1), new Device(2, 1, 0, 1, 150, 1));
  }

  /** Mains from 0 to 2 and from 3 to 9: a charge of 2 h begun at 1 waits from 2 to 3. */
  @Example
  void a_charge_waits_for_mains() {
    PowerHours mains =
        PowerHours.within(List.of(new PowerHours.Span(3, 9), new PowerHours.Span(0, 2)));
    assertThat(mains.finish(1, 2)).isEqualTo(4);
    assertThat(mains.finish(0, 2)).isEqualTo(2);
    assertThat(mains.finish(2.5, 1)).isEqualTo(4);
    assertThat(mains.finish(1, 7)).isEqualTo(9);
    assertThat(mains.finish(1, 7.1)).isEqualTo(Double.POSITIVE_INFINITY);
    assertThat(PowerHours.always().finish(3, 2)).isEqualTo(5);
  }

  @Example
  void hours_of_mains_may_touch_and_overlap() {
    PowerHours mains =
        PowerHours.within(
            List.of(
                new PowerHours.Span(1, 4), new PowerHours.Span(0, 6), new PowerHours.Span(6, 8)));
    assertThat(mains.finish(0, 8)).isEqualTo(8);
    assertThat(mains.finish(0, 8.1)).isEqualTo(Double.POSITIVE_INFINITY);
  }
}
