package org.setpower.bank;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Assume;
import net.jqwik.api.Combinators;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.IntRange;
import org.assertj.core.data.Percentage;
import org.setpower.base.EvaluationException;
import org.setpower.pack.Chemistry;
import org.setpower.pack.DeviceLoad;
import org.setpower.pack.Discharge;
import org.setpower.pack.PackErrorCode;

/** What holds for every bank. */
class BankProperties {
  @Provide
  Arbitrary<List<BankPack>> banks() {
    return Combinators.combine(
            Arbitraries.doubles().between(2, 25),
            Arbitraries.doubles().between(20, 120),
            Arbitraries.doubles().between(0.3, 1))
        .as((ah, r, charge) -> new BankPack(1, Chemistry.LI_ION, 8, ah, r, charge))
        .list()
        .ofMinSize(1)
        .ofMaxSize(5);
  }

  private static double hours(List<BankPack> members, double watts, ParallelConnection joined) {
    List<BankEvent> events =
        BankDischarge.events(members, new DeviceLoad(watts, 22, 0.010), joined, 25);
    return events.get(events.size() - 1).hours();
  }

  @Property(tries = 100)
  void like_packs_last_as_long_as_one_at_its_part_of_the_watts(
      @ForAll("banks") List<BankPack> bank,
      @ForAll @IntRange(min = 2, max = 6) int count,
      @ForAll ParallelConnection joined) {
    BankPack one = bank.get(0);
    double alone =
        Discharge.of(one.at(25), new DeviceLoad(60, 22, 0.010 * count), one.charge(), 0).hours();
    assertThat(hours(Collections.nCopies(count, one), 60.0 * count, joined))
        .isCloseTo(alone, Percentage.withPercentage(1e-9));
  }

  @Property(tries = 100)
  void the_order_of_rows_does_not_matter(
      @ForAll("banks") List<BankPack> bank, @ForAll ParallelConnection joined) {
    List<BankPack> turned = new ArrayList<>(bank);
    Collections.reverse(turned);
    assertThat(hours(turned, 80, joined))
        .isCloseTo(hours(bank, 80, joined), Percentage.withPercentage(1e-7));
  }

  @Property(tries = 100)
  void another_pack_behind_diodes_never_shortens_the_job(@ForAll("banks") List<BankPack> bank) {
    double all = hours(bank, 80, ParallelConnection.HOT_SWAP);
    double fewer =
        bank.size() == 1
            ? 0
            : hours(bank.subList(0, bank.size() - 1), 80, ParallelConnection.HOT_SWAP);
    assertThat(all).isGreaterThanOrEqualTo(fewer * (1 - 1e-9));
  }

  /** What reaches the device is never more than what leaves the resting packs. */
  @Property(tries = 100)
  void no_energy_comes_from_nowhere(
      @ForAll("banks") List<BankPack> bank, @ForAll ParallelConnection joined) {
    double held = 0;
    for (BankPack m : bank) {
      double mean = 0;
      for (int i = 0; i < 2000; i++) {
        mean += m.at(25).restVolts(m.charge() * (i + 0.5) / 2000) / 2000;
      }
      held += mean * m.charge() * m.ampHours();
    }
    assertThat(80 * hours(bank, 80, joined)).isLessThan(held);
  }

  @Property(tries = 100)
  void events_come_in_order_and_end_in_the_dark(
      @ForAll("banks") List<BankPack> bank, @ForAll ParallelConnection joined) {
    List<BankEvent> events = BankDischarge.events(bank, new DeviceLoad(80, 22, 0.010), joined, 25);
    assertThat(events).isSortedAccordingTo((a, b) -> Double.compare(a.hours(), b.hours()));
    assertThat(events.get(events.size() - 1).what()).startsWith("dark: ");
    assertThat(events).filteredOn(e -> e.pack() == 0).hasSize(1);
  }

  @Property(tries = 100)
  void a_curve_of_one_pack_is_the_discharge_of_that_pack(
      @ForAll("banks") List<BankPack> bank,
      @ForAll @IntRange(min = -20, max = 25) int temp,
      @ForAll @IntRange(min = 1, max = 9) int steps) {
    BankPack one = bank.get(0);
    DeviceLoad load = new DeviceLoad(80, 22, 0.010);
    Discharge discharge;
    try {
      discharge = Discharge.of(one.at(temp), load, one.charge(), 0);
    } catch (EvaluationException refusal) {
      assertThat(refusal.errorCode())
          .as(refusal.getMessage())
          .isIn(PackErrorCode.DOES_NOT_START, PackErrorCode.NOTHING_TO_USE);
      Assume.that(false);
      throw refusal;
    }
    List<BankState> moments =
        BankDischarge.moments(List.of(one), load, ParallelConnection.HOT_SWAP, temp, steps);
    assertThat(moments).hasSizeGreaterThan(1);
    for (BankState m : moments) {
      Discharge.Moment same = discharge.at(m.charges()[0]);
      assertThat(m.hours()).isCloseTo(same.hours(), within(1e-9));
      assertThat(m.deviceVolts()).isCloseTo(same.deviceVolts(), within(1e-9));
      assertThat(m.amps()).isCloseTo(same.amps(), within(1e-9));
    }
  }

  /** At −10 °C the cold keeps more of the charge than the second pack has. */
  @Example
  void a_curve_begins_with_the_charges_as_given() {
    List<BankPack> bank =
        List.of(
            new BankPack(1, Chemistry.LI_ION, 8, 10.2, 45, 0.9),
            new BankPack(2, Chemistry.LI_ION, 8, 10.2, 45, 0.1));
    BankState first =
        BankDischarge.moments(bank, new DeviceLoad(92, 20, 0), ParallelConnection.HOT_SWAP, -10, 4)
            .get(0);
    assertThat(first.charges()[0]).isCloseTo(0.9, within(1e-12));
    assertThat(first.charges()[1]).isCloseTo(0.1, within(1e-12));
  }

  @Property(tries = 100)
  void a_curve_has_all_its_moments_and_keeps_feeding_the_load(
      @ForAll("banks") List<BankPack> bank,
      @ForAll ParallelConnection joined,
      @ForAll @IntRange(min = 1, max = 40) int steps) {
    List<BankState> moments =
        BankDischarge.moments(bank, new DeviceLoad(80, 22, 0.010), joined, 25, steps);
    assertThat(moments).hasSize(steps + 1);
    assertThat(moments.get(steps).hours()).isEqualTo(hours(bank, 80, joined));
    assertThat(moments)
        .allSatisfy(m -> assertThat(m.deviceVolts() * m.amps()).isCloseTo(80, within(1e-8)));
  }

  @Property
  void shares_feed_the_load_and_nothing_else(@ForAll("banks") List<BankPack> bank) {
    double[] volts = bank.stream().mapToDouble(m -> m.at(25).restVolts(m.charge())).toArray();
    double[] ohms = bank.stream().mapToDouble(m -> m.at(25).ohms()).toArray();
    double[] amps = CurrentSharing.amps(volts, ohms, 92);
    double node = volts[0] - amps[0] * ohms[0];
    double sum = 0;
    for (int k = 0; k < amps.length; k++) {
      sum += amps[k];
      assertThat(volts[k] - amps[k] * ohms[k]).isCloseTo(node, within(1e-9));
    }
    assertThat(sum * node).isCloseTo(92, within(1e-8));
  }
}
