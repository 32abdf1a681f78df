package org.setpower.bank;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Collections;
import java.util.List;
import org.assertj.core.data.Percentage;
import org.junit.jupiter.api.Test;
import org.setpower.base.ErrorCode;
import org.setpower.base.EvaluationException;
import org.setpower.pack.Chemistry;
import org.setpower.pack.DeviceLoad;

/** The limits of a bank, and the parts that its reckoning is made of, by hand. */
class BankEdgesTest {
  /** Hours of one such pack at 92 W down to 3 V a cell: mpmath 1.3, as in PACK.DISCHARGE.csv. */
  private static final double ALONE = 3.18727718184226;

  private static BankPack liIon(int number, double charge) {
    return new BankPack(number, Chemistry.LI_ION, 8, 10.2, 45, charge);
  }

  private static List<BankEvent> events(
      List<BankPack> members, double watts, ParallelConnection joined) {
    return BankDischarge.events(members, new DeviceLoad(watts, 0, 0), joined, 25);
  }

  private static double hours(List<BankEvent> events) {
    return events.get(events.size() - 1).hours();
  }

  private static void assertRefused(ErrorCode reason, Runnable call) {
    assertThatThrownBy(call::run)
        .isInstanceOfSatisfying(
            EvaluationException.class,
            refusal -> assertThat(refusal.errorCode()).isEqualTo(reason));
  }

  @Test
  void sixty_packs_are_followed() {
    List<BankPack> sixty = Collections.nCopies(60, liIon(1, 1));
    assertThat(hours(events(sixty, 60 * 92, ParallelConnection.PARALLEL)))
        .isCloseTo(ALONE, within(1e-9));
    List<BankPack> more = Collections.nCopies(61, liIon(1, 1));
    assertRefused(
        BankErrorCode.TOO_MANY_PACKS, () -> events(more, 61 * 92, ParallelConnection.PARALLEL));
  }

  /** Next to no load loses nothing: 3.20909261165408 h · 92 W, by mpmath for a pack without mΩ. */
  @Test
  void a_millionth_of_a_watt_is_followed() {
    double wattHours = 3.20909261165408 * 92;
    assertThat(hours(events(List.of(liIon(1, 1)), 1e-6, ParallelConnection.HOT_SWAP)))
        .isCloseTo(wattHours / 1e-6, Percentage.withPercentage(1e-6));
    assertRefused(
        BankErrorCode.NOT_FOLLOWED,
        () -> events(List.of(liIon(1, 1)), 9e-7, ParallelConnection.HOT_SWAP));
  }

  @Test
  void an_empty_pack_behind_diodes_takes_no_part() {
    List<BankEvent> events =
        events(List.of(liIon(1, 1), liIon(2, 0)), 92, ParallelConnection.HOT_SWAP);
    assertThat(events.get(0)).isEqualTo(new BankEvent(0, 2, 0, "empty"));
    assertThat(events.get(1).what()).isEqualTo("carries the load");
    assertThat(events.get(1).pack()).isEqualTo(1);
    assertThat(hours(events)).isCloseTo(ALONE, within(1e-9));
  }

  /** 10.1632869182894 h by mpmath, as in PACK.DISCHARGE.csv: empty before its floor. */
  @Test
  void a_pack_may_be_empty_before_its_floor() {
    BankPack lead = new BankPack(1, Chemistry.LEAD, 6, 100, 6, 1);
    List<BankEvent> events =
        BankDischarge.events(
            List.of(lead), new DeviceLoad(120, 10.5, 0), ParallelConnection.HOT_SWAP, 25);
    assertThat(events)
        .extracting(BankEvent::what)
        .containsExactly("carries the load", "empty", "dark: the battery is empty");
    assertThat(hours(events)).isCloseTo(10.1632869182894, within(1e-8));
    assertThat(events.get(1).amps()).isZero();
  }

  /** 1.38142544538865 h by mpmath, 2.54020330608 h by scipy: as in the case files. */
  @Test
  void a_device_may_stop_before_the_packs() {
    DeviceLoad load = new DeviceLoad(200, 26, 0);
    List<BankEvent> one =
        BankDischarge.events(List.of(liIon(1, 1)), load, ParallelConnection.HOT_SWAP, 25);
    List<BankEvent> three =
        BankDischarge.events(
            List.of(liIon(1, 1), liIon(2, 0.62), liIon(3, 0.35)),
            load,
            ParallelConnection.HOT_SWAP,
            25);
    assertThat(hours(one)).isCloseTo(1.38142544538865, within(1e-9));
    assertThat(hours(three)).isCloseTo(2.54020330608, within(1e-7));
    for (List<BankEvent> events : List.of(one, three)) {
      assertThat(events).last().satisfies(e -> assertThat(e.what()).endsWith("device's cut-off"));
    }
  }

  /** 33.6²/(4 · 2.045 Ω) = 138 W; of 130 W the last are had at 2√(2.045 · 130) = 32.61 V. */
  @Test
  void the_watts_may_collapse_first() {
    List<BankEvent> events =
        BankDischarge.events(
            List.of(liIon(1, 1)), new DeviceLoad(130, 0, 2), ParallelConnection.HOT_SWAP, 25);
    assertThat(hours(events)).isCloseTo(0.227907225114339, within(1e-9));
    assertThat(events).last().satisfies(e -> assertThat(e.what()).endsWith("deliver the power"));
  }

  /** The curve has points at 0.5, 0.6 and 0.7: a pack that begins there goes as one beside it. */
  @Test
  void a_pack_may_begin_on_a_point_of_its_curve() {
    for (ParallelConnection joined : ParallelConnection.values()) {
      List<BankEvent> on = events(List.of(liIon(1, 0.7), liIon(2, 0.5), liIon(3, 0.6)), 92, joined);
      List<BankEvent> beside =
          events(List.of(liIon(1, 0.7), liIon(2, 0.5 + 1e-10), liIon(3, 0.6 - 1e-10)), 92, joined);
      assertThat(on).hasSameSizeAs(beside);
      for (int i = 0; i < on.size(); i++) {
        assertThat(on.get(i).hours()).isCloseTo(beside.get(i).hours(), within(1e-7));
        assertThat(on.get(i).amps()).isCloseTo(beside.get(i).amps(), within(1e-6));
        assertThat(on.get(i).what()).isEqualTo(beside.get(i).what());
      }
    }
  }

  /** 0 °C is not below 0 °C; a current under half of the amp-hours is no danger in itself. */
  @Test
  void charging_by_neighbours_is_a_danger_below_freezing() {
    List<BankPack> nearly = List.of(liIon(1, 0.7), liIon(2, 0.65));
    for (double temp : new double[] {0, 25, -1}) {
      List<BankEvent> events =
          BankDischarge.events(nearly, new DeviceLoad(10, 0, 0), ParallelConnection.PARALLEL, temp);
      String what =
          temp < 0 ? "stop: charged by its neighbours below 0 °C" : "is charged by its neighbours";
      assertThat(events)
          .filteredOn(e -> e.pack() == 2 && e.hours() == 0)
          .singleElement()
          .satisfies(e -> assertThat(e.what()).isEqualTo(what));
      assertThat(events.get(0).pack()).isEqualTo(temp < 0 ? 2 : 1);
    }
  }

  /** Behind 1 Ω the most that comes out of 64 V is 32 V · 32 A. */
  @Test
  void packs_share_all_that_they_have() {
    double[] one = CurrentSharing.amps(new double[] {64}, new double[] {1}, 1024);
    assertThat(one[0]).isCloseTo(32, within(1e-12));
    double[] two = CurrentSharing.amps(new double[] {64, 64}, new double[] {1, 1}, 2048);
    assertThat(two).containsExactly(new double[] {32, 32}, within(1e-12));
  }

  /** y′ = 5t⁴ is the most a fifth order follows exactly; its estimate is 71/54 000 of the step⁵. */
  @Test
  void a_step_is_of_the_fifth_order() {
    DormandPrince method =
        new DormandPrince(
            2,
            (values, rates) -> {
              rates[0] = 1;
              rates[1] = 5 * Math.pow(values[0], 4);
            });
    double[] start = {0, 3};
    double[] end = new double[2];
    method.start(start);
    double error = method.step(start, 2, end);
    assertThat(end[0]).isCloseTo(2, within(1e-14));
    assertThat(end[1]).isCloseTo(3 + 32, within(1e-12));
    assertThat(error).isCloseTo(71 / 54_000.0 * 32, within(1e-12));
  }

  /** y′ = 4t³ is what the lower order follows too: nothing to estimate. */
  @Test
  void a_step_of_the_fourth_order_has_no_error() {
    DormandPrince method =
        new DormandPrince(
            2,
            (values, rates) -> {
              rates[0] = 1;
              rates[1] = 4 * Math.pow(values[0], 3);
            });
    double[] start = {1, 0};
    double[] end = new double[2];
    method.start(start);
    assertThat(method.step(start, 1, end)).isCloseTo(0, within(1e-12));
    assertThat(end[1]).isCloseTo(16 - 1, within(1e-12));
  }

  /** Chen et al. 2020: between 0.5 (3.7509 V) and 0.6 (3.8406 V) of the charge; 8 cells. */
  @Test
  void like_packs_are_one_part() {
    PackGroup part = new PackGroup(liIon(1, 0.55), 25);
    assertThat(part.volts()).isCloseTo(8 * (3.7509 + 3.8406) / 2, within(1e-9));
    assertThat(part.volts(0.5)).isCloseTo(8 * 3.7509, within(1e-9));
    assertThat(part.chargeAt(8 * 3.8406)).isCloseTo(0.6, within(1e-9));
    assertThat(part.held()).isCloseTo(0.55, within(1e-12));
    assertThat(part.ohms).isCloseTo(0.045, within(1e-12));
    assertThat(part.ampHours).isCloseTo(10.2, within(1e-12));
    part.add(liIon(2, 0.55));
    assertThat(part.ohms).isCloseTo(0.0225, within(1e-12));
    assertThat(part.ampHours).isCloseTo(20.4, within(1e-12));
    part.charge = 0.52;
    assertThat(part.held()).isCloseTo(0.52, within(1e-12));
  }

  @Test
  void packs_are_alike_if_all_but_the_row_is() {
    BankPack one = liIon(1, 0.5);
    assertThat(one.isLike(liIon(2, 0.5))).isTrue();
    assertThat(one.isLike(liIon(1, 0.4))).isFalse();
    assertThat(one.isLike(new BankPack(1, Chemistry.LFP, 8, 10.2, 45, 0.5))).isFalse();
    assertThat(one.isLike(new BankPack(1, Chemistry.LI_ION, 7, 10.2, 45, 0.5))).isFalse();
    assertThat(one.isLike(new BankPack(1, Chemistry.LI_ION, 8, 10, 45, 0.5))).isFalse();
    assertThat(one.isLike(new BankPack(1, Chemistry.LI_ION, 8, 10.2, 44, 0.5))).isFalse();
  }

  /** 33.6 V behind 45 mΩ and 55 mΩ of lead: 100 A leave 23.6 V, 2360 W; the bus is at 29.1 V. */
  @Test
  void node_and_lead_share_the_drop() {
    NodeSolver node = new NodeSolver(new DeviceLoad(2360, 0, 0.055));
    PackGroup[] parts = {new PackGroup(liIon(1, 1), 25)};
    node.solve(parts, new double[] {1});
    assertThat(node.carries()).isTrue();
    assertThat(node.amps()).isCloseTo(100, within(1e-9));
    assertThat(node.bus()).isCloseTo(29.1, within(1e-9));
    assertThat(node.deviceVolts()).isCloseTo(23.6, within(1e-9));
    double collapse = 2 * Math.sqrt(0.1 * 2360);
    assertThat(node.aboveCollapse()).isCloseTo(33.6 / collapse - 1, within(1e-9));
    // 33.6²/0.4 = 2822.4 W is the most
    NodeSolver dark = new NodeSolver(new DeviceLoad(2823, 0, 0.055));
    dark.solve(parts, new double[] {1});
    assertThat(dark.carries()).isFalse();
    node.solve(new PackGroup[0], new double[0]);
    assertThat(node.carries()).isFalse();
  }

  @Test
  void moments_are_taken_in_turn() {
    StateRecorder recorder = new StateRecorder(new double[] {0, 1.5});
    PackGroup part = new PackGroup(liIon(1, 1), 25);
    NodeSolver node = new NodeSolver(new DeviceLoad(92, 0, 0));
    node.solve(new PackGroup[] {part}, new double[] {1});
    assertThat(recorder.wants(-0.1)).isFalse();
    assertThat(recorder.wants(0)).isTrue();
    assertThat(recorder.next()).isZero();
    recorder.take(List.of(part), node);
    assertThat(recorder.wants(1.4)).isFalse();
    assertThat(recorder.wants(1.5)).isTrue();
    recorder.take(List.of(part), node);
    assertThat(recorder.wants(9)).isFalse();
    assertThat(recorder.moments()).extracting(BankState::hours).containsExactly(0.0, 1.5);
    assertThat(recorder.moments().get(1).charges()).containsExactly(1);
  }
}
