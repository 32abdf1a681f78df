package org.setpower.plan.lighting;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.setpower.plan.lighting.LightingPlans.keys;
import static org.setpower.plan.lighting.LightingPlans.load;
import static org.setpower.plan.lighting.LightingPlans.order;
import static org.setpower.plan.lighting.LightingPlans.outlet;
import static org.setpower.plan.lighting.LightingPlans.run;
import static org.setpower.plan.lighting.LightingPlans.supply;
import static org.setpower.plan.lighting.LightingSamples.clock;
import static org.setpower.plan.lighting.LightingSamples.feeder;
import static org.setpower.plan.lighting.LightingSamples.quay;

import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.setpower.plan.common.EnglishMessages;
import org.setpower.plan.common.Ranges;
import org.setpower.plan.finding.Verdict;
import org.setpower.plan.lighting.result.LightingPapers;

/** What is plugged into what: pins, ampere, several plugs, power of a device and its plug. */
class LightingPlugTest {
  /** A-7 of 32 A, 3-pin, with a cable to "tower". */
  private static Ranges tower(Object connector) {
    return quay()
        .row(
            "outlets",
            "distro",
            "A",
            "numbers",
            "7",
            "connector",
            "IEC 60309 32 A 3-pin",
            "legs",
            "L1",
            "breaker",
            "32",
            "curve",
            "B",
            "rcd",
            "30")
        .row(
            "runs",
            "to",
            "tower",
            "from",
            "A-7",
            "length",
            20,
            "size",
            "3G6",
            "type",
            "rubber",
            "connector",
            connector)
        .row("loads", "item", "LED 1600", "place", "tower");
  }

  /** A connector of 16 A (IEC 60309-1) behind a breaker of 32 A: nothing opens before it melts. */
  @Test
  void a_connector_on_a_cable_that_its_breaker_does_not_protect_stops() {
    for (String small : List.of("IEC 60309 16 A 3-pin", "CEE 7 16 A")) {
      Ranges plan = tower(small);
      assertThat(keys(run(plan, 2).reasons())).as(small).contains("outlet.connector");
      assertThat(run(plan, 2).verdict()).isEqualTo(Verdict.STOP);
      assertThat(load(plan, 2).verdict()).isEqualTo(Verdict.STOP);
      // a smaller breaker, or a connector of 32 A, is right
      plan.set("outlets", 2, "breaker", "16");
      assertThat(keys(run(plan, 2).reasons())).doesNotContain("outlet.connector");
    }
    assertThat(keys(run(tower("IEC 60309 32 A 3-pin"), 2).reasons())).isEmpty();
    assertThat(keys(run(tower(""), 2).reasons())).isEmpty();
  }

  /**
   * Standards that let a connector be smaller than its breaker: a BS 1363 plug has its own fuse, so
   * the circuit may have 32 A (BS 7671 433.1.204); NEMA 5-15 on 20 A (NEC table 210.21(B)(3)).
   */
  @ParameterizedTest
  @CsvSource({
    "BS 1363 13 A,32,true",
    "BS 1363 13 A,63,false",
    "NEMA 5-15,20,true",
    "NEMA 5-15,32,false",
    "NEMA 5-20,32,false"
  })
  void connectors_that_a_standard_allows_behind_a_larger_breaker(
      String connector, String breaker, boolean right) {
    Ranges plan = tower(connector).set("outlets", 2, "breaker", breaker);
    plan.set("outlets", 2, "connector", "IEC 60309 63 A 3-pin");
    assertThat(keys(run(plan, 2).reasons()).contains("outlet.connector")).isEqualTo(!right);
  }

  /**
   * A lamp on the name of a distro or a generator has neither connector nor RCD (IEC 60364-4-41,
   * 411.3.3); a single socket outlet is all of it itself.
   */
  @Test
  void a_load_without_an_outlet_stops() {
    for (String place : List.of("A", "quay")) {
      Ranges plan = quay().row("loads", "item", "LED 1600", "place", place);
      assertThat(keys(load(plan, 2).reasons())).as(place).contains("load.outlet");
      assertThat(load(plan, 2).verdict()).isEqualTo(Verdict.STOP);
    }
    assertThat(keys(load(quay(), 1).reasons())).doesNotContain("load.outlet");
  }

  /**
   * NEMA 5 is the pattern of 125 V (NEMA WD 6); type AC is not for electronics (IEC 60364-5-53).
   */
  @Test
  void a_connector_of_another_voltage_stops_and_type_ac_is_a_check() {
    Ranges plan = quay().set("outlets", 1, "connector", "NEMA 5-20");
    assertThat(keys(outlet(plan, 1).reasons())).contains("outlet.volts");
    assertThat(outlet(plan, 1).verdict()).isEqualTo(Verdict.STOP);
    assertThat(keys(outlet(quay(), 1).reasons())).doesNotContain("outlet.volts", "outlet.rcdAc");
    assertThat(keys(outlet(quay().set("outlets", 1, "rcdType", "AC"), 1).reasons()))
        .contains("outlet.rcdAc");
  }

  /** One zero too many would lift the protection of a cable: 3G4 with 320 A. */
  @Test
  void a_makers_rating_far_above_the_table_is_a_check() {
    Ranges plan = quay().set("runs", 1, "makersRating", 640, "ratingSource", "data sheet");
    assertThat(keys(run(plan, 1).reasons())).contains("run.makerHigh");
    plan.set("runs", 1, "makersRating", 85);
    assertThat(keys(run(plan, 1).reasons())).doesNotContain("run.makerHigh");
  }

  /** VDE 0298-4, from memory: two layers on a drum 0.61, so 2.5 mm² of 25 A carries 15.3 A. */
  @Test
  void two_layers_on_a_drum_are_61_percent_by_vde() {
    Ranges plan = quay().set("project", 1, "rule", "VDE 0298-4");
    plan.row(
        "runs",
        "to",
        "drum",
        "from",
        "A-3",
        "length",
        20,
        "size",
        "3G2.5",
        "type",
        "rubber",
        "installation",
        "free");
    double free = run(plan, 2).rating();
    plan.set("runs", 2, "installation", "drum 2 layers");
    assertThat(run(plan, 2).rating()).isCloseTo(0.61 * free, within(1e-6));
  }

  /** Five cores end in five pins (IEC 60309-2): they do not go into three. */
  @Test
  void a_cable_of_five_cores_does_not_fit_three_pins() {
    Ranges plan = tower("").set("runs", 2, "size", "5G6");
    assertThat(keys(run(plan, 2).reasons())).containsExactly("run.pinsFewer");
    assertThat(run(plan, 2).verdict()).isEqualTo(Verdict.STOP);
    // with its connector named it is an adaptor, behind which one leg is live
    plan.set("runs", 2, "connector", "IEC 60309 32 A 5-pin");
    assertThat(keys(run(plan, 2).reasons())).containsExactly("run.adaptorLegs");
    assertThat(run(plan, 2).reasons().get(0).arguments()).contains("L1");
    assertThat(run(plan, 2).verdict()).isEqualTo(Verdict.CHECK);
    assertThat(order(plan))
        .anyMatch(o -> o.what().equals("IEC 60309 32 A 3-pin to IEC 60309 32 A 5-pin"));
  }

  /** A distro of three legs behind that adaptor has one. */
  @Test
  void a_distro_behind_an_adaptor_to_one_leg_is_a_check_or_a_stop() {
    Ranges plan = feeder("30").set("outlets", 2, "connector", "IEC 60309 32 A 3-pin", "legs", "L1");
    assertThat(keys(run(plan, 2).reasons())).contains("run.pinsFewer");
    assertThat(keys(supply(plan, 3).reasons())).contains("supply.system");
  }

  @Test
  void several_plugs_in_one_outlet_are_a_check_and_a_splitter_on_the_order() {
    Ranges plan =
        quay()
            .set("equipment", 1, "watts", 300)
            .row("loads", "item", "LED 1600", "place", "A-2")
            .row(
                "runs", "to", "stairs", "from", "A-2", "length", 5, "size", "3G2.5", "type",
                "rubber")
            .row("loads", "item", "LED 1600", "place", "stairs", "quantity", 2)
            .row("loads", "item", "LED 1600", "place", "A-3");
    assertThat(keys(outlet(plan, 1).reasons())).containsExactly("outlet.splitter");
    assertThat(outlet(plan, 1).reasons().get(0).arguments()).containsExactly("A-2", 3);
    assertThat(outlet(plan, 1).verdict()).isEqualTo(Verdict.CHECK);
    assertThat(keys(run(plan, 2).reasons())).containsExactly("outlet.splitter");
    assertThat(order(plan))
        .filteredOn(o -> o.kind().equals("splitter"))
        .extracting(LightingPapers.OrderRow::what)
        .containsExactlyInAnyOrder("IEC 60309 16 A 3-pin, 1 to 3", "IEC 60309 16 A 3-pin, 1 to 2");
  }

  @Test
  void plugs_one_after_the_other_need_no_splitter() {
    Ranges plan =
        quay()
            .set("loads", 1, "to", clock(12, 0))
            .row("loads", "item", "LED 1600", "place", "A-2", "from", clock(12, 0));
    assertThat(keys(outlet(plan, 1).reasons())).isEmpty();
  }

  /** IEC 60309-2: three pins are one leg, neutral and earth. */
  @Test
  void all_legs_on_three_pins_stop() {
    Ranges plan = quay().set("outlets", 1, "legs", "all");
    assertThat(keys(outlet(plan, 1).reasons())).contains("outlet.pins");
    assertThat(outlet(plan, 1).verdict()).isEqualTo(Verdict.STOP);
    plan.set("outlets", 1, "connector", "IEC 60309 16 A 5-pin");
    assertThat(keys(outlet(plan, 1).reasons())).doesNotContain("outlet.pins");
    // on a supply of one leg "all" is that leg
    Ranges one = quay().set("supplies", 1, "system", "1PH", "volts", 230);
    one.set("supplies", 2, "system", "1PH").set("outlets", 1, "legs", "all");
    assertThat(keys(outlet(one.set("runs", 1, "size", "3G16"), 1).reasons()))
        .doesNotContain("outlet.pins");
  }

  /** 4 kW typed as 4: a plug of 32 A is for kilowatts. */
  @ParameterizedTest
  @CsvSource({
    "4,IEC 60309 32 A 3-pin,true",
    "4,,true",
    "99,IEC 60309 32 A 3-pin,true",
    "4000,IEC 60309 32 A 3-pin,false",
    "10,CEE 7 16 A,false",
    "20,,false",
    "2.5,CEE 7 16 A,true"
  })
  void watts_far_below_the_plug_are_a_check(double watts, String plug, boolean said) {
    Ranges plan = quay().set("equipment", 1, "watts", watts, "plug", plug == null ? "" : plug);
    assertThat(
            keys(plan.calculate()
                    .rows(org.setpower.plan.lighting.result.LightingResults.EQUIPMENT_RESULT)
                    .get(0)
                    .reasons())
                .contains("equipment.watts"))
        .isEqualTo(said);
  }

  /** 6 mm² is in no series of gauges that a metric plan uses. */
  @Test
  void a_bare_size_in_a_metric_plan_is_an_area() {
    for (String size : List.of("6", "16", "2.5")) {
      Ranges plan =
          quay().row("runs", "to", "t", "from", "A-1", "length", 5, "size", size, "type", "rubber");
      assertThat(keys(run(plan, 2).reasons())).as(size).isEmpty();
      assertThat(run(plan, 2).rating()).isGreaterThanOrEqualTo(16);
    }
    Ranges compared =
        quay()
            .row(
                "comparison",
                "system",
                "1PH",
                "volts",
                230,
                "watts",
                2000,
                "length",
                20,
                "size",
                "16");
    assertThat(compared.calculate().rows(LightingPapers.COMPARISON_ROW).get(0).amps()).isNotNull();
  }

  /** 400 V is line to line where 230 V is line to neutral (IEC 60038). */
  @Test
  void a_voltage_to_neutral_on_three_phases_is_a_check() {
    assertThat(keys(supply(quay().set("supplies", 1, "volts", 230), 1).reasons()))
        .contains("supply.volts");
    assertThat(keys(supply(quay(), 1).reasons())).isEmpty();
    assertThat(keys(supply(LightingSamples.stage(), 1).reasons())).doesNotContain("supply.volts");
    assertThat(keys(supply(LightingSamples.stage().set("supplies", 1, "volts", 120), 1).reasons()))
        .contains("supply.volts");
  }

  /**
   * 30 mA before the 30 mA of a distro on 32 A: IEC 60364-4-41, 411.3.3 asks for the first, so no
   * other RCD cures the second. Whose decision it is stands on the label; it lifts nothing else.
   */
  @Test
  void rcds_that_trip_together_can_be_accepted_by_a_role() {
    Ranges plan = LightingSamples.feeder("30").set("equipment", 1, "watts", 1600);
    plan.set("outlets", 2, "rcd", "30");
    assertThat(keys(outlet(plan, 2).reasons())).containsExactly("outlet.rcdSelectivity");
    assertThat(labelWords(plan)).noneMatch(w -> w.contains("accepted"));
    plan.set("outlets", 2, "together", "best boy");
    assertThat(keys(outlet(plan, 2).reasons())).isEmpty();
    assertThat(outlet(plan, 2).verdict()).isEqualTo(Verdict.OK);
    assertThat(labelWords(plan)).contains("RCDs behind A-7 trip with it; accepted: best boy.");
    // no decision lifts a missing RCD, nor is it noted where nothing trips together
    plan.set("outlets", 2, "rcd", "none");
    assertThat(keys(outlet(plan, 2).reasons())).containsExactly("outlet.rcdNone");
    assertThat(labelWords(plan)).noneMatch(w -> w.contains("accepted"));
  }

  private static List<String> labelWords(Ranges plan) {
    return plan.calculate().rows(LightingPapers.LABEL_ROW).stream()
        .filter(r -> r.plugged() != null)
        .map(r -> new EnglishMessages().phrase(r.plugged(), Locale.UK))
        .toList();
  }

  @Test
  void an_rcd_of_less_than_a_milliampere_cannot_be_read() {
    assertThat(keys(outlet(quay().set("outlets", 1, "rcd", "0.03"), 1).reasons()))
        .contains("outlet.rcdWrong");
  }
}
