package org.setpower.plan.lighting;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.setpower.plan.lighting.LightingPlans.generator;
import static org.setpower.plan.lighting.LightingPlans.keys;
import static org.setpower.plan.lighting.LightingPlans.load;
import static org.setpower.plan.lighting.LightingPlans.outlet;
import static org.setpower.plan.lighting.LightingPlans.project;
import static org.setpower.plan.lighting.LightingPlans.run;
import static org.setpower.plan.lighting.LightingPlans.supply;
import static org.setpower.plan.lighting.LightingSamples.clock;
import static org.setpower.plan.lighting.LightingSamples.day;
import static org.setpower.plan.lighting.LightingSamples.feeder;
import static org.setpower.plan.lighting.LightingSamples.outletRow;
import static org.setpower.plan.lighting.LightingSamples.quay;
import static org.setpower.plan.lighting.LightingSamples.stage;
import static org.setpower.plan.lighting.LightingSamples.tungsten;

import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.setpower.plan.common.Ranges;
import org.setpower.plan.finding.Finding;
import org.setpower.plan.finding.Verdict;
import org.setpower.plan.lighting.protection.Disconnection;
import org.setpower.plan.lighting.result.LightingPapers;
import org.setpower.plan.lighting.result.LightingResults;

/** What must never be wrong, and what never stops: one test a rule of safety. */
class LightingSafetyTest {
  /** The same on a generator of so many kVA. */
  static Ranges onGenerator(double kva) {
    return quay()
        .set("supplies", 1, "type", "generator", "existing", "", "zs", 0.1)
        .row(
            "generators",
            "name",
            "quay",
            "kva",
            kva,
            "engine",
            "diesel turbo",
            "altitude",
            5,
            "intake",
            25,
            "bond",
            "at generator");
  }

  private static Ranges onOneOutlet(String size, String cores, Object breaker) {
    return quay()
        .set("outlets", 1, "breaker", breaker, "connector", "IEC 60309 63 A 3-pin")
        .row(
            "runs", "to", "tail", "from", "A-1", "length", 20, "size", size, "type", "rubber",
            "cores", cores)
        .row("loads", "item", "LED 1600", "place", "tail");
  }

  // The breaker really upstream protects the cable as laid: IEC 60364-4-43.

  @Test
  void a_breaker_above_the_rating_stops_however_little_flows() {
    Ranges plan = onOneOutlet("3G2.5", "3", "32");
    assertThat(run(plan, 2).verdict()).isEqualTo(Verdict.STOP);
    assertThat(keys(run(plan, 2).reasons())).contains("run.overload");
    // BS 7671 Table 4F3A, single-phase: 25 A
    assertThat(run(plan, 2).rating()).isEqualTo(25);
    assertThat(run(plan, 2).upstream()).isEqualTo(32);
    assertThat(run(plan, 2).amps()).isLessThan(10);
    assertThat(run(plan, 2).fit()).isFalse();
  }

  @Test
  void the_outlet_really_used_decides_not_another_outlet_of_the_distro() {
    Ranges plan =
        quay()
            .row(
                "outlets",
                outletRow("A", "7", "IEC 60309 32 A 5-pin", "32", "curve", "C", "rcd", "30"))
            .row("supplies", "name", "B", "type", "distro", "system", "3PH", "breaker", 32)
            .row("runs", "to", "B", "from", "A-7", "length", 20, "size", "5G2.5", "type", "rubber");
    assertThat(run(plan, 2).upstream()).isEqualTo(32);
    assertThat(keys(run(plan, 2).reasons())).contains("run.overload");
  }

  @Test
  void through_hands_the_upstream_breaker_on() {
    Ranges plan = onOneOutlet("3G2.5", "3", "through");
    assertThat(run(plan, 2).upstream()).isEqualTo(63);
    assertThat(keys(run(plan, 2).reasons())).contains("run.overload");
  }

  @Test
  void a_blank_breaker_of_a_used_outlet_stops() {
    Ranges plan = quay().set("outlets", 1, "breaker", "");
    assertThat(keys(outlet(plan, 1).reasons())).contains("outlet.breakerBlank");
    assertThat(outlet(plan, 1).verdict()).isEqualTo(Verdict.STOP);
    assertThat(outlet(quay().set("outlets", 1, "breaker", "big"), 1).verdict())
        .isEqualTo(Verdict.STOP);
  }

  @Test
  void a_short_cable_to_a_smaller_breaker_is_a_check_with_its_clause() {
    Ranges plan =
        quay().set("supplies", 2, "breaker", 32).set("runs", 1, "size", "5G6", "length", 3);
    assertThat(keys(run(plan, 1).reasons())).containsExactly("run.short");
    assertThat(run(plan, 1).verdict()).isEqualTo(Verdict.CHECK);
    plan.set("runs", 1, "length", 4);
    assertThat(keys(run(plan, 1).reasons())).contains("run.overload");
  }

  /** Somebody has to read them in the standard: it is asked once a table, not at each cable. */
  @Test
  void a_table_from_memory_is_one_check_until_it_is_compared() {
    Ranges plan =
        stage()
            .row(
                "runs", "to", "tails", "from", "switch", "length", 20, "size", "4/0", "type",
                "feeder")
            .set("runs", 4, "temperatureClass", "75", "cores", "5 single");
    assertThat(keys(project(plan))).containsOnlyOnce("rating.memory");
    assertThat(project(plan).get(0).arguments())
        .containsExactly("NEC Table 400.5(A)(2) single conductor, 75 °C", 2);
    assertThat(keys(run(plan, 1).reasons())).doesNotContain("rating.memory");
    assertThat(run(plan, 1).ratingTable()).contains("from memory");
    plan.set("project", 1, "tablesCompared", "gaffer, 4 Feb 2027");
    assertThat(keys(project(plan))).isEmpty();
    // BS 7671 Table 4F1A and VDE 0298-4 for heavy rubber are published
    assertThat(keys(project(quay()))).isEmpty();
    assertThat(keys(project(quay().set("project", 1, "rule", "VDE 0298-4")))).isEmpty();
    // the factors that VDE 0298-4 has for layers on a drum are not
    Ranges drum =
        quay()
            .set("project", 1, "rule", "VDE 0298-4", "installation", "drum 2 layers")
            .set("supplies", 1, "breaker", 32);
    assertThat(project(drum).get(0).arguments())
        .containsExactly("VDE 0298-4, cables wound on drums", 1);
  }

  /** A cable distributor's table of BS 7671 Table 4F2A, three- to five-core: 177 A, 225 A. */
  @ParameterizedTest
  @CsvSource({"5G16, 89", "5G50, 177", "5G70, 225", "5G95, 273"})
  void rubber_of_90_degrees_is_rated_by_the_published_table(String size, double amps) {
    Ranges plan = quay().set("runs", 1, "size", size, "temperatureClass", "90");
    assertThat(run(plan, 1).rating()).isEqualTo(amps);
  }

  /** NEC 240.4(B), from memory: 4/0 at 75 °C has 360 A, the next standard breaker is 400. */
  @ParameterizedTest
  @CsvSource({"4/0,feeder,5 single,75,400,360", "2 AWG,cord,3,60,100,95"})
  void the_next_standard_size_up_is_right_by_the_nec(
      String size, String type, String cores, String marked, double breaker, double rating) {
    Ranges plan = stage();
    int row = breaker == 400 ? 1 : 2;
    plan.set("runs", row, "size", size, "type", type, "cores", cores, "temperatureClass", marked);
    assertThat(run(plan, row).upstream()).isEqualTo(breaker);
    assertThat(run(plan, row).rating()).isEqualTo(rating);
    assertThat(run(plan, row).protects()).isEqualTo("yes");
  }

  @Test
  void a_cord_with_several_outlets_has_no_next_size_up() {
    Ranges plan = stage().set("outlets", 1, "breaker", "25");
    plan.row(
        "runs",
        "to",
        "tail",
        "from",
        "D1-2",
        "length",
        20,
        "size",
        "12 AWG",
        "type",
        "building",
        "cores",
        "3");
    plan.row("loads", "item", "tungsten 2 kW", "place", "tail", "quantity", 2);
    assertThat(keys(run(plan, 4).reasons())).contains("run.overload");
  }

  // Neutral: vectors, third harmonics added, within its rating.

  /** Two legs of a wye at 50 A leave 50 A in the neutral. */
  @Test
  void two_legs_of_a_wye_leave_their_amps_in_the_neutral() {
    Ranges plan =
        tungsten()
            .set("equipment", 1, "watts", 11500, "powerFactor", 1, "harmonic", 0)
            .set("outlets", 1, "breaker", "63", "connector", "IEC 60309 63 A 3-pin");
    double amps = 11500 / (400 / Math.sqrt(3));
    plan.row("loads", "item", "LED 1600", "place", "A-1");
    assertThat(supply(plan, 2).amps1()).isCloseTo(amps, within(1e-9));
    assertThat(supply(plan, 2).neutral()).isCloseTo(amps, within(1e-9));
  }

  @Test
  void third_harmonics_add_up_in_the_neutral_and_stop_beyond_its_rating() {
    Ranges plan = tungsten();
    plan.set("equipment", 1, "watts", 4200, "harmonic", 0.7, "powerFactor", 0.7);
    plan.set("outlets", 1, "breaker", "32", "connector", "IEC 60309 32 A 5-pin");
    plan.set("runs", 1, "size", "5G10").set("supplies", 1, "breaker", 32, "existing", "");
    plan.set("loads", 1, "place", "A-1…3", "quantity", 3);
    double leg = 4200 / (400 / Math.sqrt(3)) / 0.7;
    double third = 0.7 * leg / Math.sqrt(1 + 0.49);
    assertThat(run(plan, 1).neutral()).isCloseTo(3 * third, within(1e-6));
    // 47 A of BS 7671 Table 4F1A times 0.86, IEC 60364-5-52 annex E (from memory)
    assertThat(run(plan, 1).rating()).isCloseTo(47 * 0.86, within(1e-9));
    assertThat(keys(run(plan, 1).reasons())).contains("run.neutral");
    plan.set("runs", 1, "size", "35 mm²", "type", "feeder", "cores", "6 single");
    assertThat(keys(run(plan, 1).reasons())).doesNotContain("run.neutral");
  }

  /** Nobody reads it off a type plate: IEC 61000-3-2 class C allows 30 % × 0.98 (from memory). */
  @Test
  void a_blank_third_harmonic_counts_as_the_most_its_kind_may_have() {
    Ranges plan = quay().set("equipment", 1, "harmonic", "");
    assertThat(equipment(plan)).isEmpty();
    plan.set("loads", 1, "place", "A-1…3", "quantity", 3);
    double amps = 1600 / load(plan, 1).volts() / 0.98;
    double third = 0.3 * 0.98 * amps / Math.sqrt(1 + 0.294 * 0.294);
    assertThat(run(plan, 1).neutral()).isCloseTo(3 * third, within(1e-6));
    for (String kind : new String[] {"heater", "tungsten", "motor"}) {
      plan.set("equipment", 1, "inrush", kind);
      assertThat(run(plan, 1).neutral()).isCloseTo(0, within(1e-6));
      assertThat(equipment(plan)).isEmpty();
    }
  }

  /** A power factor of 0.6 without a shift: √(1/0.6² − 1) is 133 %, of rectifiers up to 80 %. */
  @Test
  void a_low_power_factor_with_unknown_harmonics_is_a_check_and_counts_80_percent() {
    Ranges plan = quay().set("equipment", 1, "harmonic", "", "powerFactor", 0.6);
    assertThat(equipment(plan)).containsExactly("equipment.harmonic");
    plan.set("loads", 1, "place", "A-1…3", "quantity", 3);
    double amps = 1600 / load(plan, 1).volts() / 0.6;
    assertThat(run(plan, 1).neutral()).isCloseTo(3 * 0.8 * amps / Math.sqrt(1.64), within(1e-6));
  }

  private static List<String> equipment(Ranges plan) {
    return keys(plan.calculate().rows(LightingResults.EQUIPMENT_RESULT).get(0).reasons());
  }

  /** 5G6 has 44 A by VDE 0298-4, times 0.86 37.8 A; 34 A by BS 7671, times 0.86 29.2 A. */
  @Test
  void assumed_harmonics_make_a_usual_cable_a_check_and_typed_ones_a_stop() {
    Ranges plan =
        quay()
            .set("equipment", 1, "harmonic", "")
            .set("supplies", 1, "breaker", 32, "existing", "")
            .set("supplies", 2, "breaker", 32)
            .set("runs", 1, "size", "5G6");
    assertThat(keys(run(plan, 1).reasons())).containsExactly("run.harmonic");
    assertThat(run(plan, 1).rating()).isCloseTo(34 * 0.86, within(1e-9));
    assertThat(run(plan, 1).verdict()).isEqualTo(Verdict.CHECK);
    plan.set("equipment", 1, "harmonic", 0.3);
    assertThat(run(plan, 1).verdict()).isNotEqualTo(Verdict.OK);
    assertThat(keys(run(plan, 1).reasons())).doesNotContain("run.harmonic");
  }

  // Earth fault: IEC 60364-4-41 (from memory).

  @Test
  void an_earth_fault_that_is_too_slow_without_rcd_stops() {
    Ranges plan = onOneOutlet("3G2.5", "3", "16");
    plan.set("outlets", 1, "rcd", "none", "curve", "C").set("supplies", 1, "rcd", "");
    plan.set("runs", 2, "length", 80);
    // R of 2.5 mm² at 20 °C: 7.98 Ω/km, IEC 60228 class 5; 80 m twice are 1.28 Ω
    assertThat(run(plan, 2).loop())
        .isCloseTo(0.15 + 2 * 0.025 * 1.21 + 2 * 0.08 * 7.98, within(1e-6));
    assertThat(run(plan, 2).disconnects()).isEqualTo(Disconnection.NO);
    assertThat(keys(run(plan, 2).reasons())).contains("run.fault");
    plan.set("outlets", 1, "rcd", "30");
    assertThat(run(plan, 2).disconnects()).isEqualTo(Disconnection.BY_RCD);
    assertThat(keys(run(plan, 2).reasons())).doesNotContain("run.fault");
  }

  @Test
  void an_unknown_loop_is_a_check() {
    Ranges plan = quay().set("supplies", 1, "zs", "", "rcd", "");
    assertThat(run(plan, 1).disconnects()).isEqualTo(Disconnection.UNKNOWN);
    assertThat(run(plan, 1).verdict()).isEqualTo(Verdict.CHECK);
    assertThat(supply(plan, 1).verdict()).isEqualTo(Verdict.CHECK);
  }

  /** 40 kVA sustain about 3 × 57.7 A; B63 needs 315 A. */
  @Test
  void a_generator_proves_nothing_by_the_curve() {
    Ranges plan = onGenerator(40).set("supplies", 1, "rcd", "");
    assertThat(keys(run(plan, 1).reasons())).contains("run.faultGenerator");
    assertThat(run(plan, 1).verdict()).isEqualTo(Verdict.STOP);
    plan.set("supplies", 1, "rcd", 300);
    assertThat(run(plan, 1).disconnects()).isEqualTo(Disconnection.BY_RCD);
    assertThat(run(plan, 1).verdict()).isEqualTo(Verdict.OK);
  }

  // RCDs: 411.3.3; selectivity and leakage 60364-5-53 (from memory).

  @Test
  void an_outlet_to_32_amps_without_rcd_stops_and_a_blank_is_a_check() {
    assertThat(keys(outlet(quay().set("outlets", 1, "rcd", "none"), 1).reasons()))
        .containsExactly("outlet.rcdNone");
    assertThat(keys(outlet(quay().set("outlets", 1, "rcd", "300"), 1).reasons()))
        .contains("outlet.rcdNone");
    assertThat(keys(outlet(quay().set("outlets", 1, "rcd", "upstream"), 1).reasons()))
        .containsExactly("outlet.rcdNone");
    assertThat(keys(outlet(quay().set("outlets", 1, "rcd", ""), 1).reasons()))
        .containsExactly("outlet.rcdOpen");
    Ranges us = stage().set("outlets", 4, "rcd", "none");
    assertThat(outlet(us, 4).verdict()).isEqualTo(Verdict.CHECK);
    assertThat(keys(outlet(us, 4).reasons())).contains("outlet.gfciNone");
  }

  /** 411.3.3 has no exception for an outlet to 32 A that feeds a distro with RCDs of its own. */
  @Test
  void a_feeder_of_a_distro_with_rcds_of_its_own_stops_too() {
    assertThat(keys(outlet(feeder("30"), 2).reasons())).containsExactly("outlet.rcdNone");
    assertThat(outlet(feeder("30"), 2).verdict()).isEqualTo(Verdict.STOP);
    Ranges own = feeder("30").set("outlets", 2, "rcd", "30");
    assertThat(keys(outlet(own, 2).reasons())).containsExactly("outlet.rcdSelectivity");
    assertThat(keys(outlet(own, 3).reasons())).isEmpty();
  }

  /** One finding at the RCD that trips too early, however many outlets are behind it. */
  @Test
  void rcds_in_series_need_three_times_the_milliamps_and_a_delay() {
    assertThat(outlet(quay(), 1).verdict()).isEqualTo(Verdict.OK);
    Ranges fast = quay().set("supplies", 1, "rcdType", "A");
    assertThat(keys(supply(fast, 1).reasons())).containsExactly("outlet.rcdSelectivity");
    assertThat(keys(outlet(fast, 1).reasons())).isEmpty();
    Ranges small = quay().set("supplies", 1, "rcd", 30);
    assertThat(keys(supply(small, 1).reasons())).containsExactly("outlet.rcdSelectivity");
    Ranges twins = quay().set("outlets", 1, "sharing", 2).set("supplies", 1, "rcdType", "A");
    assertThat(keys(supply(twins, 1).reasons())).containsExactly("outlet.rcdSelectivity");
    // a second distro and a second row of outlets are still one pair
    Ranges many = fast.set("loads", 1, "place", "A-1…6", "quantity", 6);
    many.row("supplies", "name", "B", "type", "distro", "breaker", 63)
        .row("runs", "to", "B", "from", "quay", "length", 20, "size", "5G16", "type", "rubber")
        .row("outlets", outletRow("B", "1–4", "CEE 7 16 A", "16", "rcd", "30"))
        .row("loads", "item", "LED 1600", "place", "B-2");
    List<Finding> found =
        many.calculate().rows(LightingResults.SUPPLY_RESULT).stream()
            .filter(r -> r != null)
            .flatMap(r -> r.reasons().stream())
            .toList();
    assertThat(keys(found)).containsExactly("outlet.rcdSelectivity");
    assertThat(found.get(0).arguments()).containsExactly(300.0, 30.0, "A, B");
    assertThat(many.calculate().rows(LightingPapers.SUMMARY).get(0).checks()).isEqualTo(1);
  }

  @Test
  void standing_leakage_over_30_percent_is_a_check() {
    Ranges plan = quay().set("loads", 1, "quantity", 2).set("equipment", 1, "leakage", 4.5);
    assertThat(keys(outlet(plan, 1).reasons())).containsExactly("outlet.splitter");
    plan.set("equipment", 1, "leakage", 4.6);
    assertThat(keys(outlet(plan, 1).reasons()))
        .containsExactlyInAnyOrder("outlet.rcdLeakage", "outlet.splitter");
  }

  /** All that is behind an RCD leaks through it, whatever other RCDs are on the way. */
  @Test
  void an_rcd_carries_the_leakage_of_all_rows_behind_it() {
    Ranges plan = feeder("30").set("outlets", 2, "rcd", "30").set("equipment", 1, "leakage", 3);
    plan.set("loads", 2, "place", "B-1…3", "quantity", 3);
    // 3 × 3 mA are 30 % of 30 mA
    assertThat(keys(outlet(plan, 2).reasons())).doesNotContain("outlet.rcdLeakage");
    plan.row("loads", "item", "LED 1600", "place", "B-1", "level", 0.1);
    assertThat(keys(outlet(plan, 2).reasons())).contains("outlet.rcdLeakage");
    assertThat(outlet(plan, 2).reasons())
        .filteredOn(f -> f.key().key().endsWith("rcdLeakage"))
        .singleElement()
        .satisfies(f -> assertThat(f.arguments()).containsExactly("A-7", 12.0, 30.0));
    assertThat(keys(outlet(plan, 3).reasons())).doesNotContain("outlet.rcdLeakage");
    // 300 mA of the quay carry 5 × 3 mA
    plan.set("supplies", 1, "rcd", 49).set("equipment", 1, "leakage", 3);
    assertThat(keys(supply(plan, 1).reasons())).contains("outlet.rcdLeakage");
  }

  /**
   * IEC 60335-1, 13.2 (from memory): heating appliances 0.75 mA a kW; class II 0.25 mA. IEC 61140
   * (as a maker of RCDs prints it): plugged equipment 0.5 mA an ampere, to 5 mA.
   */
  @ParameterizedTest
  @CsvSource({
    "tungsten,150,0.25",
    "heater,3000,2.25",
    "heater,9000,5",
    "electronic,150,1",
    "electronic,1386,3",
    "electronic,9000,5",
    "motor,1386,3"
  })
  void a_blank_leakage_is_that_of_its_kind_and_size(String kind, double watts, double each) {
    Ranges plan = quay().set("equipment", 1, "inrush", kind, "watts", watts, "powerFactor", 1);
    plan.set("outlets", 1, "breaker", "63", "connector", "IEC 60309 63 A 3-pin");
    // the RCD that this leakage is just 30 % of, and the next smaller one
    plan.set("outlets", 1, "rcd", "" + each / 0.299).set("loads", 1, "level", 0.05);
    assertThat(keys(outlet(plan, 1).reasons())).doesNotContain("outlet.rcdLeakage");
    plan.set("outlets", 1, "rcd", "" + each / 0.301);
    assertThat(keys(outlet(plan, 1).reasons())).contains("outlet.rcdLeakage");
  }

  /** Three lamps of 2 kW on one outlet: 26.0 A at full level, a phase-cut dimmer at half power. */
  static Ranges dimmed(double level) {
    return quay()
        .set("equipment", 1, "inrush", "tungsten", "watts", 2000, "powerFactor", "", "harmonic", "")
        .set("loads", 1, "quantity", 3, "level", level);
  }

  /**
   * A resistance has half its power at 71 % of its current (P = I²R), whatever cuts the phase: 18.4
   * A, not 13.0 A.
   */
  @Test
  void dimmed_tungsten_draws_the_root_of_its_level() {
    double full = 6000 / (400 / Math.sqrt(3));
    assertThat(load(dimmed(0.5), 1).amps()).isCloseTo(full * Math.sqrt(0.5), within(1e-9));
    assertThat(keys(outlet(dimmed(0.5), 1).reasons())).contains("outlet.over");
    assertThat(load(dimmed(1), 1).amps()).isCloseTo(full, within(1e-9));
    assertThat(load(dimmed(0), 1).amps()).isZero();
    assertThat(load(dimmed(0.5), 1).power()).isEqualTo(3000);
  }

  /**
   * A sine that conducts from 90° on has a third harmonic of 1/π of its full amplitude, by the
   * Fourier integrals; those of three legs add up in the neutral: 3/π of the full current, more
   * than the 71 % of each leg.
   */
  @Test
  void third_harmonics_of_dimmed_tungsten_add_up_in_the_neutral() {
    Ranges plan = dimmed(0.5).set("loads", 1, "place", "A-1…3");
    double full = 2000 / (400 / Math.sqrt(3));
    LightingResults.SupplyResult a = supply(plan, 2);
    assertThat(a.amps1()).isCloseTo(full * Math.sqrt(0.5), within(1e-9));
    assertThat(a.neutral()).isBetween(3 / Math.PI * full, 3 / Math.PI * full * 1.06);
    assertThat(supply(plan.set("loads", 1, "level", 1), 2).neutral()).isCloseTo(0, within(1e-9));
    // what is typed counts: a dimmer that leaves the sine as it is
    plan.set("loads", 1, "level", 0.5).set("equipment", 1, "harmonic", 0);
    assertThat(supply(plan, 2).neutral()).isCloseTo(0, within(1e-9));
  }

  /** 9.2 A at 12.5 %, 26.0 A turned up. */
  @Test
  void what_exceeds_its_breaker_at_full_level_is_a_check() {
    Ranges plan = dimmed(0.125);
    assertThat(keys(outlet(plan, 1).reasons()))
        .contains("outlet.full")
        .doesNotContain("outlet.over");
    assertThat(outlet(plan, 1).verdict()).isEqualTo(Verdict.CHECK);
    // rows on one breaker count together
    Ranges rows = dimmed(0.2).set("loads", 1, "quantity", 1);
    assertThat(keys(outlet(rows, 1).reasons())).doesNotContain("outlet.full");
    rows.row("loads", "item", "LED 1600", "place", "A-2", "level", 0.2);
    assertThat(keys(outlet(rows, 1).reasons())).contains("outlet.full");
    // 4 × 2 × 8.7 A on a leg of a supply of 63 A
    Ranges many = dimmed(0.1).set("loads", 1, "quantity", 24, "place", "A-1…6");
    assertThat(keys(supply(many, 2).reasons())).contains("outlet.full");
  }

  /** A household plug at the end of a cable behind 63 A and 300 mA. */
  static Ranges smallPlug() {
    return quay()
        .set("equipment", 1, "plug", "CEE 7 16 A")
        .row(
            "outlets",
            outletRow(
                "A", "7", "IEC 60309 63 A 5-pin", "63", "curve", "B", "rcd", "300", "rcdType", "S"))
        .row("runs", "to", "pan", "from", "A-7", "length", 20, "size", "5G16", "type", "rubber")
        .set("loads", 1, "place", "pan", "leg", "L1");
  }

  /** What plugs it has is not known: a small lead behind a large breaker burns first. */
  @Test
  void a_blank_plug_on_a_large_outlet_is_a_check() {
    Ranges plan = smallPlug().set("equipment", 1, "plug", "");
    assertThat(keys(load(plan, 1).reasons())).contains("load.plugOpen");
    assertThat(load(plan, 1).verdict()).isEqualTo(Verdict.CHECK);
    assertThat(keys(load(plan.set("loads", 1, "place", "A-2"), 1).reasons()))
        .doesNotContain("load.plugOpen");
  }

  /** In the US people are protected by 5 mA; none is no blank. */
  @Test
  void a_us_outlet_says_what_its_rcd_is_not() {
    assertThat(keys(outlet(stage().set("outlets", 4, "rcd", "none"), 4).reasons()))
        .contains("outlet.gfciNone")
        .doesNotContain("outlet.rcdOpen");
    assertThat(keys(outlet(stage().set("outlets", 4, "rcd", "30"), 4).reasons()))
        .contains("outlet.gfciHigh");
    assertThat(keys(outlet(stage().set("outlets", 4, "rcd", "5"), 4).reasons()))
        .doesNotContain("outlet.gfciHigh", "outlet.gfciNone", "outlet.rcdOpen");
    assertThat(keys(outlet(stage().set("outlets", 4, "rcd", ""), 4).reasons()))
        .contains("outlet.rcdOpen");
  }

  /** IEC 60364-4-41, 411.3.3: the socket of an adaptor is a socket outlet too. */
  @Test
  void a_small_plug_behind_a_large_breaker_needs_an_rcd_of_30_milliamps() {
    Ranges plan = smallPlug();
    assertThat(keys(load(plan, 1).reasons())).contains("load.rcd");
    assertThat(load(plan, 1).verdict()).isEqualTo(Verdict.STOP);
    assertThat(keys(load(plan.set("loads", 1, "place", "A-7"), 1).reasons())).contains("load.rcd");
    plan.set("outlets", 2, "rcd", "30", "rcdType", "A");
    assertThat(keys(load(plan, 1).reasons())).doesNotContain("load.rcd");
    // its own plug, or an outlet that is a stop itself
    plan.set("outlets", 2, "rcd", "300").set("equipment", 1, "plug", "IEC 60309 63 A 5-pin");
    assertThat(keys(load(plan, 1).reasons())).doesNotContain("load.rcd");
    plan.set("equipment", 1, "plug", "CEE 7 16 A").set("loads", 1, "place", "A-2");
    plan.set("outlets", 1, "rcd", "none");
    assertThat(keys(load(plan, 1).reasons())).doesNotContain("load.rcd");
  }

  /** IEC 61008-1: an RCD trips at its rated current at the latest. */
  @Test
  void standing_leakage_over_the_rcd_itself_stops() {
    Ranges plan = quay().set("loads", 1, "quantity", 7).set("equipment", 1, "leakage", 5);
    assertThat(keys(outlet(plan, 1).reasons())).contains("outlet.rcdTrips");
    assertThat(keys(outlet(plan, 1).reasons())).doesNotContain("outlet.rcdLeakage");
    assertThat(outlet(plan, 1).verdict()).isEqualTo(Verdict.STOP);
    plan.set("equipment", 1, "leakage", 4.2);
    assertThat(keys(outlet(plan, 1).reasons())).contains("outlet.rcdLeakage");
    assertThat(keys(outlet(plan, 1).reasons())).doesNotContain("outlet.rcdTrips");
  }

  // Line pairs.

  /** 24.8 A on each of three pairs are √3 × 24.8 = 43.0 A a leg. */
  @Test
  void pairs_add_up_by_vectors() {
    Ranges plan = stage().set("equipment", 2, "watts", 24.8 * 208);
    plan.rows("loads").subList(0, 3).clear();
    assertThat(supply(plan, 2).amps1()).isCloseTo(Math.sqrt(3) * 24.8, within(1e-9));
    assertThat(supply(plan, 2).amps3()).isCloseTo(Math.sqrt(3) * 24.8, within(1e-9));
    assertThat(load(plan, 1).amps()).isCloseTo(24.8, within(1e-9));
  }

  @Test
  void an_outlet_without_the_pair_stops() {
    Ranges plan = stage().set("loads", 4, "place", "D1-2");
    assertThat(load(plan, 4).verdict()).isEqualTo(Verdict.STOP);
    assertThat(keys(load(plan, 4).reasons())).contains("load.pair");
  }

  // Bundle, drum, air.

  @Test
  void bundle_drum_and_air_multiply_and_a_closed_drum_stops() {
    Ranges plan = onOneOutlet("3G4", "3", "25");
    assertThat(run(plan, 2).verdict()).isEqualTo(Verdict.OK);
    plan.set("runs", 2, "installation", "drum 3 layers");
    // BS 7671 Table 4F1A: 30 A, note 2: 0.45
    assertThat(run(plan, 2).rating()).isCloseTo(30 * 0.45, within(1e-9));
    assertThat(keys(run(plan, 2).reasons())).contains("run.overload");
    plan.set("runs", 2, "air", 40);
    assertThat(run(plan, 2).rating()).isCloseTo(30 * 0.45 * 0.82, within(1e-9));
    plan.set("runs", 2, "installation", "closed drum", "air", "");
    assertThat(keys(run(plan, 2).reasons())).contains("run.closedDrum");
    assertThat(run(plan, 2).verdict()).isEqualTo(Verdict.STOP);
  }

  @Test
  void the_warmest_day_in_use_derates_the_cable() {
    assertThat(run(quay().set("days", 1, "warmest", 49), 1).verdict()).isEqualTo(Verdict.STOP);
    assertThat(keys(run(quay().set("days", 1, "warmest", 60), 1).reasons())).contains("run.hot");
  }

  // No paralleled sources; neutral bonded once.

  @Test
  void two_supplies_into_one_distro_stop() {
    Ranges plan =
        quay()
            .row("supplies", "name", "other", "type", "utility", "system", "3PH", "breaker", 63)
            .row(
                "runs", "to", "A", "from", "other", "length", 25, "size", "5G16", "type", "rubber");
    assertThat(keys(supply(plan, 2).reasons())).contains("supply.twice");
    assertThat(keys(run(plan, 1).reasons())).contains("supply.twice");
    assertThat(load(plan, 1).verdict()).isEqualTo(Verdict.STOP);
    Ranges fed =
        quay()
            .row("supplies", "name", "other", "type", "utility", "system", "3PH", "breaker", 63)
            .row(
                "runs", "to", "other", "from", "A-3", "length", 5, "size", "3G2.5", "type",
                "rubber");
    assertThat(keys(supply(fed, 3).reasons())).contains("supply.fed");
  }

  @Test
  void the_neutral_is_bonded_once() {
    assertThat(generator(onGenerator(50).set("generators", 1, "bond", "both"), 1).verdict())
        .isEqualTo(Verdict.STOP);
    assertThat(generator(onGenerator(50).set("generators", 1, "bond", "none"), 1).verdict())
        .isEqualTo(Verdict.STOP);
    assertThat(keys(generator(onGenerator(50).set("generators", 1, "bond", ""), 1).reasons()))
        .contains("generator.bond");
  }

  // Generator.

  @Test
  void a_generator_below_the_largest_start_stops() {
    Ranges plan = onGenerator(20);
    plan.set("equipment", 1, "inrush", "motor", "start", 5);
    // 3 × 1600 W / 0.98 run, 3 × 4 × 1600 W / 0.8 come on top: 28.9 kVA; the engine has 8 of 16 kW
    double running = 3 * 1.6 / 0.98 * (400 / Math.sqrt(3)) / load(plan, 1).volts();
    double starting = running + 3 * 4 * 1.6 / 0.8;
    assertThat(generator(plan, 1).starting()).isCloseTo(starting, within(1e-6));
    assertThat(keys(generator(plan, 1).reasons()))
        .contains("generator.over")
        .doesNotContain("generator.engine");
  }

  @Test
  void a_generator_whose_loads_are_not_all_counted_stops() {
    Ranges place = onGenerator(40).row("loads", "item", "LED 1600", "place", "A-99");
    assertThat(keys(generator(place, 1).reasons())).contains("generator.uncounted");
    Ranges watts = onGenerator(40).set("equipment", 1, "watts", "");
    assertThat(keys(generator(watts, 1).reasons())).contains("generator.uncounted");
    assertThat(generator(watts, 1).verdict()).isEqualTo(Verdict.STOP);
    assertThat(keys(generator(onGenerator(40), 1).reasons())).doesNotContain("generator.uncounted");
    Ranges crossed = onGenerator(40).set("loads", 1, "fromDay", day("2027-02-03"));
    crossed.set("loads", 1, "toDay", day("2027-02-02"));
    assertThat(keys(generator(crossed, 1).reasons())).contains("generator.uncounted");
  }

  @Test
  void what_hangs_on_a_cable_that_is_a_stop_stops() {
    Ranges plan = onOneOutlet("3G2.5", "3", "32");
    plan.row("runs", "to", "end", "from", "tail", "length", 5, "size", "3G6", "type", "rubber");
    plan.row("loads", "item", "LED 1600", "place", "end");
    assertThat(keys(run(plan, 3).reasons())).containsExactly("load.upstream");
    assertThat(keys(load(plan, 3).reasons())).contains("load.upstream");
    assertThat(plan.calculate().rows(LightingPapers.PULL_ROW))
        .extracting(LightingPapers.PullRow::to)
        .filteredOn(to -> !to.isEmpty())
        .containsExactly("A");
  }

  @Test
  void a_generator_over_80_percent_or_with_leading_loads_is_a_check() {
    Ranges plan = onGenerator(20).set("loads", 1, "quantity", 3).set("outlets", 1, "breaker", "32");
    plan.set("loads", 1, "quantity", 4).set("equipment", 1, "inrush", "tungsten");
    // 3 × 4 × 1600 W / 0.98 are 19.6 kVA of the alternator; the engine has 6.4 of 16 kW
    assertThat(generator(plan, 1).load()).isCloseTo(3 * 6.4 / 0.98, within(1e-9));
    assertThat(generator(plan, 1).power()).isCloseTo(6.4, within(1e-9));
    assertThat(generator(plan, 1).engineLeft()).isCloseTo(16, within(1e-9));
    assertThat(generator(plan, 1).share()).isCloseTo(3 * 6.4 / 0.98 / 20, within(1e-9));
    assertThat(keys(generator(plan, 1).reasons())).contains("generator.high");
    plan.set("equipment", 1, "leading", "yes");
    assertThat(keys(generator(plan, 1).reasons())).contains("generator.leading");
    assertThat(generator(plan, 1).verdict()).isEqualTo(Verdict.CHECK);
  }

  @Test
  void a_required_size_above_the_size_is_a_check_that_says_so() {
    // 1600 W / 0.98 × 3 legs = 4.9 kVA; with 20 % headroom 5.88 kVA
    Ranges plan =
        onGenerator(5.8)
            .set("equipment", 1, "inrush", "tungsten")
            .set("project", 1, "headroom", 0.2);
    assertThat(generator(plan, 1).needed()).isCloseTo(1.2 * 3 * 1.6 / 0.98, within(1e-9));
    assertThat(keys(generator(plan, 1).reasons())).contains("generator.small");
    plan.set("generators", 1, "kva", 5.9);
    assertThat(keys(generator(plan, 1).reasons())).doesNotContain("generator.small");
  }

  /** Call 7:00 − 30 min to wrap 18:00 + 30 min are 12 h; off time counts whole quarter hours. */
  @ParameterizedTest
  @CsvSource({
    "12,0,12,5,12",
    "12,0,12,20,11.75",
    "12,5,12,25,12",
    "12,0,12,30,11.5",
    "12,0,12,0,12"
  })
  void time_off_for_sound_is_never_counted_longer_than_it_is(
      int fromHour, int fromMinute, int toHour, int toMinute, double hours) {
    Ranges plan = onGenerator(20).set("generators", 1, "offFrom", clock(fromHour, fromMinute));
    plan.set("generators", 1, "offTo", clock(toHour, toMinute));
    assertThat(generator(plan, 1).hours()).isCloseTo(hours, within(1e-9));
  }

  @Test
  void nobody_refuels_while_the_generator_runs() {
    Ranges plan = onGenerator(50).set("generators", 1, "usable", 1);
    plan.row("days", "date", day("2027-02-02"), "call", clock(7, 0), "wrap", clock(18, 0));
    double fuel = generator(plan, 1).fuel();
    // the tank lasts the first day of two alike and is empty on the second
    plan.set("generators", 1, "tank", 0.7 * fuel);
    assertThat(generator(plan, 1).refuelOn()).isEqualTo(LocalDate.of(2027, 2, 2));
    assertThat(generator(plan, 1).refuelAt()).isCloseTo(clock(6, 30), within(1e-9));
    assertThat(keys(generator(plan, 1).reasons())).doesNotContain("generator.tank");
    // no tank of this size lasts one run: by when it is empty stands where the operator reads
    plan.set("generators", 1, "tank", 0.4 * fuel);
    assertThat(generator(plan, 1).refuelOn()).isEqualTo(LocalDate.of(2027, 2, 1));
    // 0.4 of two equal runs is 0.8 of one: it burns no less before noon than after
    assertThat(generator(plan, 1).refuelAt()).isBetween(clock(15, 0), clock(17, 0));
    assertThat(generator(plan, 1).reasons())
        .filteredOn(f -> f.key().key().endsWith("tank"))
        .allSatisfy(
            f ->
                assertThat(f.arguments())
                    .contains(
                        org.setpower.plan.lighting.load.Timeline.text(
                            generator(plan, 1).refuelAt())));
    assertThat(keys(generator(plan, 1).reasons())).contains("generator.tank");
    plan.set("generators", 1, "tank", 1.1 * fuel);
    assertThat(generator(plan, 1).refuelAt()).isNull();
    assertThat(keys(generator(plan, 1).reasons())).doesNotContain("generator.tank");
  }

  @Test
  void what_is_short_is_said_beside_each_other() {
    Ranges plan = LightingSamples.shortOfFuel();
    assertThat(keys(generator(plan, 1).reasons())).contains("generator.small", "generator.tank");
  }

  /** 25.1 kW balanced and 30.6 kVA by the busiest leg: a gaffer's sums for a 45 kVA generator. */
  @Test
  void alternator_and_engine_have_limits_of_their_own() {
    Ranges plan = onGenerator(12).set("equipment", 1, "inrush", "tungsten");
    plan.set("equipment", 1, "powerFactor", 1, "harmonic", 0, "watts", 3000);
    plan.set("loads", 1, "place", "A-1…3", "quantity", 3);
    // 9 kW on three legs: 9 kVA of 12, 9 kW of 0.8 × 12 kW
    assertThat(generator(plan, 1).load()).isCloseTo(9, within(1e-9));
    assertThat(generator(plan, 1).power()).isCloseTo(9, within(1e-9));
    assertThat(generator(plan, 1).share()).isCloseTo(9 / 9.6, within(1e-9));
    assertThat(keys(generator(plan, 1).reasons())).contains("generator.high");
    plan.set("generators", 1, "kva", 11);
    assertThat(keys(generator(plan, 1).reasons()))
        .contains("generator.engine")
        .doesNotContain("generator.over");
    assertThat(generator(plan, 1).verdict()).isEqualTo(Verdict.STOP);
    // 11.25 kVA are 9 kW / 0.8
    assertThat(generator(plan, 1).needed()).isGreaterThanOrEqualTo(11.25);
  }

  @Test
  void what_goes_off_for_sound_is_one_check_of_its_generator() {
    Ranges plan = onGenerator(40).row("loads", "item", "LED 1600", "place", "A-3");
    assertThat(keys(generator(plan, 1).reasons())).doesNotContain("generator.sound");
    plan.set("generators", 1, "offFrom", clock(12, 0), "offTo", clock(12, 5));
    assertThat(keys(generator(plan, 1).reasons())).containsOnlyOnce("generator.sound");
    assertThat(generator(plan, 1).reasons())
        .filteredOn(f -> f.key().key().endsWith("generator.sound"))
        .allSatisfy(f -> assertThat(f.arguments()).containsExactly("12:00–12:05", 2));
    // an LED panel, a trailer, a charger are on again with their generator
    assertThat(keys(load(plan, 1).reasons())).isEmpty();
    plan.set("loads", 1, "from", clock(13, 0), "to", clock(17, 0));
    plan.set("loads", 2, "from", clock(13, 0), "to", clock(17, 0));
    assertThat(keys(generator(plan, 1).reasons())).doesNotContain("generator.sound");
    // a typed time counts as a blank one: it is no stop of each load
    plan.set("generators", 1, "offFrom", clock(14, 0), "offTo", clock(15, 0));
    assertThat(keys(load(plan, 1).reasons())).isEmpty();
    assertThat(load(plan, 1).fit()).isTrue();
    assertThat(keys(generator(plan, 1).reasons())).containsOnlyOnce("generator.sound");
    plan.set("generators", 1, "offFrom", "", "offTo", "", "offMinutes", 40);
    assertThat(keys(generator(plan, 1).reasons())).containsOnlyOnce("generator.sound");
  }

  /** It strikes again once it has cooled down only; a kind that is not known may be one. */
  @ParameterizedTest
  @CsvSource({
    "LED 1600, electronic, false",
    "LED 1600, tungsten, false",
    "LED 1600, discharge, true",
    "HMI 575 W, electronic, true",
    "lamp, , true"
  })
  void a_discharge_lamp_that_goes_off_for_sound_is_a_check(
      String item, String kind, boolean expected) {
    Ranges plan = onGenerator(40).set("generators", 1, "offFrom", clock(12, 0));
    plan.set("generators", 1, "offTo", clock(12, 5));
    plan.set("equipment", 1, "item", item, "inrush", kind == null ? "" : kind);
    plan.set("loads", 1, "item", item);
    assertThat(keys(load(plan, 1).reasons()).contains("load.restrike")).isEqualTo(expected);
  }

  /** 56.7 °C is the highest that was ever measured (World Meteorological Organization). */
  @Test
  void a_day_tells_in_its_own_row_what_is_wrong_with_it() {
    Ranges plan = quay().set("days", 1, "warmest", 56);
    assertThat(dayKeys(plan, 1)).isEmpty();
    assertThat(dayKeys(plan.set("days", 1, "warmest", 95), 1)).containsExactly("day.hot");
    Ranges us = stage().set("days", 1, "warmest", 95);
    assertThat(dayKeys(us, 1)).isEmpty();
    plan = quay().set("days", 1, "coldest", 20);
    assertThat(dayKeys(plan, 1)).containsExactly("day.temperatures");
    // a move: 07:00 to 18:00, then elsewhere from 19:00; two rows at one time are none
    plan = quay().row("days", "date", day("2027-02-01"), "call", clock(19, 0), "warmest", 8);
    assertThat(dayKeys(plan, 1)).isEmpty();
    assertThat(dayKeys(plan, 2)).isEmpty();
    plan.set("days", 2, "call", clock(17, 0));
    assertThat(dayKeys(plan, 1)).containsExactly("day.overlap");
    assertThat(dayKeys(plan, 2)).containsExactly("day.overlap");
  }

  private static List<String> dayKeys(Ranges plan, int row) {
    return keys(plan.calculate().rows(LightingResults.DAY_RESULT).get(row - 1).reasons());
  }

  /** 80 kW on 240 V are 333 A; VDE 0298-4 allows 16 mm² 98 A, NEC and BS 7671 no more than 103. */
  @Test
  void a_comparison_with_more_than_any_table_allows_is_a_check() {
    Ranges plan =
        quay()
            .row(
                "comparison",
                "system",
                "1PH",
                "volts",
                240,
                "watts",
                80_000,
                "length",
                25,
                "size",
                "16");
    LightingPapers.ComparisonRow row = plan.calculate().rows(LightingPapers.COMPARISON_ROW).get(0);
    assertThat(keys(row.reasons())).containsExactly("comparison.over");
    assertThat(row.amps()).isCloseTo(80_000 / 240.0, within(1e-9));
    plan.set("comparison", 1, "watts", 8000);
    assertThat(plan.calculate().rows(LightingPapers.COMPARISON_ROW).get(0).reasons()).isEmpty();
  }

  /** 12 h run; 40 minutes off a day are 11 h 20. */
  @Test
  void minutes_off_for_sound_shorten_the_running_time() {
    Ranges plan = onGenerator(40);
    double fuel = generator(plan, 1).fuel();
    plan.set("generators", 1, "offMinutes", 40);
    assertThat(generator(plan, 1).hours()).isCloseTo(12 - 40 / 60.0, within(1e-9));
    assertThat(generator(plan, 1).fuel()).isBetween(fuel * (1 - 40 / 720.0) - 1e-9, fuel);
  }

  /** A stop of half an hour for sound is too short to cool down and refuel in. */
  @Test
  void nobody_refuels_in_a_short_stop_for_sound() {
    Ranges plan = onGenerator(50).set("generators", 1, "usable", 1);
    plan.set("generators", 1, "offFrom", clock(12, 0), "offTo", clock(12, 30));
    plan.set("generators", 1, "tank", 0.7 * generator(plan, 1).fuel());
    assertThat(generator(plan, 1).refuelAt()).isBetween(clock(14, 0), clock(17, 0));
    assertThat(keys(generator(plan, 1).reasons())).contains("generator.tank");
    plan.set("generators", 1, "offTo", clock(13, 0));
    assertThat(generator(plan, 1).refuelAt()).isCloseTo(clock(13, 0), within(1e-9));
  }

  /** EN 590 class B is usable down to 0 °C (from memory). */
  @Test
  void frost_is_a_check_of_a_diesel_generator() {
    Ranges plan = onGenerator(40).set("days", 1, "warmest", 11);
    assertThat(keys(generator(plan, 1).reasons())).doesNotContain("generator.cold");
    // blank: 10 °C below the max. temperature
    plan.set("days", 1, "warmest", 10);
    assertThat(keys(generator(plan, 1).reasons())).contains("generator.cold");
    plan.set("days", 1, "coldest", 3);
    assertThat(keys(generator(plan, 1).reasons())).doesNotContain("generator.cold");
    plan.set("days", 1, "coldest", -8);
    assertThat(keys(generator(plan, 1).reasons())).contains("generator.cold");
    plan.set("generators", 1, "engine", "petrol");
    assertThat(keys(generator(plan, 1).reasons())).doesNotContain("generator.cold");
  }

  /** Three quarters of 40 kVA × 0.8 are 24 kW: there it burns what its maker states. */
  @Test
  void the_makers_consumption_counts() {
    Ranges plan = onGenerator(40).set("equipment", 1, "watts", 8000, "powerFactor", 1);
    plan.set("outlets", 1, "breaker", "63", "connector", "IEC 60309 63 A 3-pin");
    plan.set(
        "loads", 1, "place", "A-1…3", "quantity", 3, "from", clock(6, 30), "to", clock(18, 30));
    plan.set("generators", 1, "consumption", 6);
    // the voltage drop of the cable leaves a little less than 24 kW at the generator's terminals
    assertThat(generator(plan, 1).mean()).isCloseTo(24, within(0.2));
    assertThat(generator(plan, 1).fuel()).isCloseTo(12 * 6, within(0.5));
  }

  @Test
  void the_hotter_of_intake_and_day_derates() {
    Ranges plan = onGenerator(50).set("generators", 1, "intake", 45);
    // 3 % for each 10 K above 35 °C, US Army TM 9-6115-673-13&P Table 2-3
    assertThat(generator(plan, 1).derating()).isCloseTo(0.97, within(1e-9));
    plan.set("generators", 1, "intake", 20).set("days", 1, "warmest", 45);
    assertThat(generator(plan, 1).derating()).isCloseTo(0.97, within(1e-9));
    plan.set("generators", 1, "intake", "");
    assertThat(generator(plan, 1).derating()).isCloseTo(0.94, within(1e-9));
  }

  /** 59.7, 25.0 and 21.0 A on 87 A a leg: 60 kVA at 230.9 V; common practice is 25 %. */
  @Test
  void legs_of_a_generator_that_differ_too_much_are_a_check() {
    Ranges plan = onGenerator(60).set("equipment", 1, "inrush", "heater", "powerFactor", 1);
    plan.set("equipment", 1, "harmonic", 0, "watts", 5000);
    double rated = 60_000 / (3 * 400 / Math.sqrt(3));
    double amps = 5000 / (400 / Math.sqrt(3));
    plan.set("outlets", 1, "breaker", "63", "connector", "IEC 60309 63 A 3-pin");
    // 21.7 A of 86.6 are 25.0 %
    assertThat(generator(plan, 1).imbalance()).isCloseTo(amps / rated, within(1e-9));
    plan.set("equipment", 1, "watts", 4990);
    assertThat(keys(generator(plan, 1).reasons())).doesNotContain("generator.imbalance");
    plan.set("equipment", 1, "watts", 5010);
    assertThat(keys(generator(plan, 1).reasons())).contains("generator.imbalance");
    assertThat(generator(plan, 1).verdict()).isEqualTo(Verdict.CHECK);
    plan.set("project", 1, "maxImbalance", 0.3);
    assertThat(keys(generator(plan, 1).reasons())).doesNotContain("generator.imbalance");
    plan.set("loads", 1, "place", "A-1…3", "quantity", 3).set("project", 1, "maxImbalance", 0);
    assertThat(generator(plan, 1).imbalance()).isCloseTo(0, within(1e-9));
    assertThat(keys(generator(plan, 1).reasons())).doesNotContain("generator.imbalance");
  }

  // Single cores.

  @Test
  void a_set_of_single_cores_without_one_of_them_stops() {
    Ranges plan = quay().set("runs", 1, "size", "35 mm²", "type", "feeder", "cores", "5 single");
    assertThat(run(plan, 1).verdict()).isEqualTo(Verdict.OK);
    plan.set("runs", 1, "cores", "4 single");
    assertThat(keys(run(plan, 1).reasons())).contains("run.cores");
    assertThat(run(plan, 1).verdict()).isEqualTo(Verdict.STOP);
    assertThat(keys(run(quay().set("runs", 1, "cores", "3"), 1).reasons())).contains("run.cores");
  }

  // Cores that Size names.

  /** 3G is a cable of three cores (HD 361): its Cores are no choice. */
  @Test
  void cores_that_size_names_count_and_too_few_stop() {
    Ranges plan = quay().set("runs", 1, "size", "3G16");
    assertThat(keys(run(plan, 1).reasons())).contains("run.cores");
    assertThat(run(plan, 1).verdict()).isEqualTo(Verdict.STOP);
    plan.set("runs", 1, "size", "4G16");
    assertThat(keys(run(plan, 1).reasons())).contains("run.cores");
    for (String size : List.of("1x16", "2x16")) {
      assertThat(keys(run(plan.set("runs", 1, "size", size), 1).reasons())).contains("run.cores");
    }
    for (String size : List.of("5G16", "5x16", "5 G 16", "16 mm²", "7G16")) {
      assertThat(keys(run(plan.set("runs", 1, "size", size), 1).reasons())).as(size).isEmpty();
    }
    Ranges us = stage().set("runs", 2, "size", "2/3", "cores", "");
    assertThat(keys(run(us, 2).reasons())).doesNotContain("run.cores", "run.coresDiffer");
    assertThat(run(us.set("runs", 2, "size", "2/2"), 2).verdict()).isEqualTo(Verdict.STOP);
  }

  @ParameterizedTest
  @CsvSource({
    "3G16,5,true",
    "5G16,3,true",
    "5G16,4,true",
    "5G16,5,false",
    "3G35,5 single,true",
    "1x35,5 single,false",
    "5 × 35,5 single,false"
  })
  void size_and_cores_that_disagree_stop(String size, String cores, boolean differ) {
    Ranges plan = quay().set("runs", 1, "size", size, "cores", cores);
    if (cores.endsWith("single")) {
      plan.set("runs", 1, "type", "feeder");
    }
    assertThat(keys(run(plan, 1).reasons()).contains("run.coresDiffer")).isEqualTo(differ);
    assertThat(run(plan, 1).verdict() == Verdict.STOP).isEqualTo(differ);
    if (differ) {
      assertThat(plan.calculate().rows(LightingPapers.PULL_ROW)).isEmpty();
    }
  }

  /** A plug of five pins on three cores leaves two legs without a conductor. */
  @Test
  void a_connector_with_more_pins_than_the_cable_has_cores_is_a_check() {
    Ranges plan = onOneOutlet("3G16", "3", "32");
    assertThat(keys(run(plan, 2).reasons())).isEmpty();
    plan.set("outlets", 1, "connector", "IEC 60309 63 A 5-pin");
    plan.set("loads", 2, "leg", "L1");
    assertThat(keys(run(plan, 2).reasons())).containsExactly("run.pins");
    plan.set("runs", 2, "connector", "IEC 60309 63 A 3-pin");
    assertThat(keys(run(plan, 2).reasons())).isEmpty();
  }

  /** H07RN-F 5G6 stands on the sheath (HD 22.4): type and size in one. */
  @Test
  void a_size_with_the_type_of_the_sheath_is_read() {
    Ranges plan = quay().set("runs", 1, "size", "H07RN-F 5G16");
    assertThat(run(plan, 1).rating()).isEqualTo(63);
    assertThat(run(plan, 1).verdict()).isEqualTo(Verdict.OK);
    plan.set("runs", 1, "size", "H07RN-F 3G16");
    assertThat(keys(run(plan, 1).reasons())).contains("run.cores");
    plan.set("runs", 1, "size", "H05VV-F 5G16");
    assertThat(keys(run(plan, 1).reasons())).containsExactly("run.typeDiffers");
    assertThat(run(plan, 1).verdict()).isEqualTo(Verdict.STOP);
    plan.set("runs", 1, "size", "H07RN-F");
    assertThat(keys(run(plan, 1).reasons())).contains("run.size");
  }

  @Test
  void stock_whose_size_and_cores_disagree_does_not_count() {
    Ranges plan = quay().set("runs", 1, "size", "5G16");
    plan.row(
        "cableStock", "type", "rubber", "size", "3G16", "cores", "5", "length", 25, "pieces", 9);
    assertThat(LightingPlans.order(plan))
        .filteredOn(l -> l.kind().equals("cable"))
        .allMatch(l -> l.shortOf() == 1);
    assertThat(plan.calculate().rows(LightingResults.STOCK_RESULT).get(0).verdict())
        .isEqualTo(Verdict.STOP);
    plan.set("cableStock", 1, "size", "5G16", "cores", "");
    assertThat(LightingPlans.order(plan))
        .filteredOn(l -> l.kind().equals("cable"))
        .allMatch(l -> l.shortOf() == 0);
  }

  @Test
  void the_pull_list_asks_for_the_order_of_connecting_singles() {
    Ranges plan = quay().set("runs", 1, "size", "35 mm²", "type", "feeder", "cores", "5 single");
    assertThat(plan.calculate().rows(LightingPapers.PULL_ROW).get(0).singles()).isTrue();
  }

  // What never stops.

  @ParameterizedTest
  @CsvSource({
    "VDE 0298-4,5G6,32,44", "VDE 0298-4,5G16,63,82", "VDE 0298-4,5G35,125,135",
    "BS 7671,5G6,32,34", "BS 7671,5G16,63,63", "BS 7671,5G35,125,102"
  })
  void standard_cables_on_their_usual_breakers_never_stop(
      String rule, String size, double breaker, double rating) {
    Ranges plan = quay().set("project", 1, "rule", rule).set("days", 1, "warmest", 30);
    plan.set("supplies", 1, "breaker", breaker).set("supplies", 2, "breaker", breaker);
    plan.set("runs", 1, "size", size);
    assertThat(run(plan, 1).rating()).isEqualTo(rating);
    assertThat(run(plan, 1).verdict()).isEqualTo(rating < breaker ? Verdict.CHECK : Verdict.OK);
  }

  @ParameterizedTest
  @CsvSource({"BS 7671", "VDE 0298-4"})
  void a_19_pin_cable_with_all_circuits_in_use_never_stops(String rule) {
    Ranges plan = quay().set("project", 1, "rule", rule).set("supplies", 1, "existing", "");
    plan.row(
        "outlets",
        outletRow("A", "7", "19-pin", "16", "legs", "in turn", "curve", "C", "rcd", "30"));
    plan.row(
        "runs",
        "to",
        "bar",
        "from",
        "A-7",
        "length",
        25,
        "size",
        "2.5 mm²",
        "type",
        "multi-circuit");
    for (int c = 1; c <= 6; c++) {
      plan.row("loads", "item", "LED 1600", "place", "bar-" + c);
    }
    assertThat(run(plan, 2).verdict()).isEqualTo(Verdict.CHECK);
    assertThat(keys(run(plan, 2).reasons())).containsExactly("run.multi");
    assertThat(run(plan, 2).rating()).isBetween(8.0, 16.0);
    plan.set("outlets", 2, "breaker", "20");
    assertThat(run(plan, 2).verdict()).isEqualTo(Verdict.STOP);
  }

  @ParameterizedTest
  @CsvSource({"BS 7671,240 mm²", "VDE 0298-4,185 mm²", "VDE 0298-4,240 mm²", "NEC,4/0"})
  void a_400_amp_set_of_single_cores_never_stops(String rule, String size) {
    Ranges plan = stage().set("project", 1, "rule", rule);
    plan.set("runs", 1, "size", size);
    assertThat(run(plan, 1).protects()).isEqualTo("yes");
    assertThat(run(plan, 1).verdict()).isNotEqualTo(Verdict.STOP);
  }

  @Test
  void a_smaller_distro_on_a_larger_outlet_whose_cable_fits_never_stops() {
    Ranges plan =
        quay()
            .row("outlets", outletRow("A", "7", "IEC 60309 63 A 5-pin", "through"))
            .row("supplies", "name", "B", "type", "distro", "system", "3PH", "breaker", 32)
            .row("runs", "to", "B", "from", "A-7", "length", 20, "size", "5G16", "type", "rubber");
    assertThat(run(plan, 2).verdict()).isEqualTo(Verdict.OK);
    assertThat(supply(plan, 3).verdict()).isEqualTo(Verdict.OK);
  }

  @Test
  void voltage_drop_never_stops_and_undervoltage_stops_electronics_only() {
    Ranges plan = quay().set("runs", 1, "length", 900).set("equipment", 1, "minVolts", 225);
    assertThat(keys(run(plan, 1).reasons())).contains("run.drop");
    assertThat(run(plan, 1).verdict()).isEqualTo(Verdict.CHECK);
    assertThat(keys(load(plan, 1).reasons())).containsExactly("load.undervoltage");
    for (String kind : new String[] {"heater", "tungsten"}) {
      plan.set("equipment", 1, "inrush", kind);
      assertThat(keys(load(plan, 1).reasons())).containsExactly("load.dim");
      assertThat(load(plan, 1).verdict()).isEqualTo(Verdict.CHECK);
    }
  }

  @Test
  void splitters_imbalance_headroom_and_wet_stacking_never_stop() {
    Ranges splitter = quay().set("loads", 1, "quantity", 2);
    assertThat(load(splitter, 1).verdict()).isEqualTo(Verdict.OK);
    assertThat(supply(splitter, 2).imbalance()).isCloseTo(2, within(1e-9));
    assertThat(supply(splitter, 2).verdict()).isEqualTo(Verdict.OK);
    Ranges wet = onGenerator(100).set("days", 1, "coldest", 5);
    assertThat(keys(generator(wet, 1).reasons())).containsExactly("generator.wet");
    assertThat(generator(wet, 1).verdict()).isEqualTo(Verdict.CHECK);
  }

  @Test
  void venue_power_without_a_measured_loop_never_stops() {
    Ranges plan = quay().set("supplies", 1, "type", "house power", "zs", "");
    assertThat(supply(plan, 1).verdict()).isEqualTo(Verdict.CHECK);
    assertThat(run(plan, 1).verdict()).isEqualTo(Verdict.OK);
    assertThat(run(plan, 1).disconnects()).isEqualTo(Disconnection.BY_RCD);
  }

  @Test
  void a_load_while_its_source_is_off_stops() {
    Ranges plan = quay().set("supplies", 1, "from", clock(8, 0), "to", clock(12, 0));
    assertThat(load(plan, 1).verdict()).isEqualTo(Verdict.OK);
    plan.set("loads", 1, "from", clock(7, 0), "to", clock(10, 0));
    assertThat(keys(load(plan, 1).reasons())).containsExactly("load.off");
  }
}
