package org.setpower.plan.lighting;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.setpower.plan.lighting.LightingPlans.keys;
import static org.setpower.plan.lighting.LightingPlans.load;
import static org.setpower.plan.lighting.LightingPlans.order;
import static org.setpower.plan.lighting.LightingPlans.outlet;
import static org.setpower.plan.lighting.LightingPlans.run;
import static org.setpower.plan.lighting.LightingPlans.supply;
import static org.setpower.plan.lighting.LightingPlans.verdict;
import static org.setpower.plan.lighting.LightingSamples.clock;
import static org.setpower.plan.lighting.LightingSamples.day;
import static org.setpower.plan.lighting.LightingSamples.outletRow;
import static org.setpower.plan.lighting.LightingSamples.pans;
import static org.setpower.plan.lighting.LightingSamples.quay;
import static org.setpower.plan.lighting.LightingSamples.stage;
import static org.setpower.plan.lighting.LightingSamples.tungsten;

import java.time.LocalTime;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.setpower.base.PhaseSystem;
import org.setpower.cable.CableRun;
import org.setpower.cable.CableSize;
import org.setpower.plan.common.EnglishMessages;
import org.setpower.plan.common.Phrase;
import org.setpower.plan.common.PlanResult;
import org.setpower.plan.common.Ranges;
import org.setpower.plan.finding.Verdict;
import org.setpower.plan.lighting.result.LightingPapers;
import org.setpower.plan.lighting.result.LightingResults;

/** The trade's rules of a distribution, worked out by hand. */
class LightingRulesTest {
  private static final EnglishMessages ENGLISH = new EnglishMessages();
  private static final double LEG_VOLTS = 400 / Math.sqrt(3);

  // Places.

  @Test
  void an_own_lead_straight_in_an_outlet_is_right() {
    assertThat(load(quay(), 1).verdict()).isEqualTo(Verdict.OK);
    assertThat(verdict(quay().calculate())).isEqualTo(Verdict.OK);
  }

  @Test
  void a_place_that_does_not_exist_stops() {
    for (String place : List.of("A-9", "B-1", "tail", "A-5…9", "A1", "A-2.1", "-", "A-")) {
      Ranges plan = quay().set("loads", 1, "place", place);
      assertThat(keys(load(plan, 1).reasons())).as(place).containsExactly("place.unknown");
      assertThat(load(plan, 1).verdict()).isEqualTo(Verdict.STOP);
    }
    assertThat(load(quay().set("loads", 1, "place", " a - 2 "), 1).verdict()).isEqualTo(Verdict.OK);
  }

  @Test
  void a_range_takes_its_pieces_in_turn() {
    Ranges plan = tungsten().set("loads", 1, "place", "A-1…6", "quantity", 8);
    double amps = 1600 / (LEG_VOLTS * 0.98);
    // two outlets have two pieces: A-1 on L1 and A-2 on L2
    assertThat(load(plan, 1).amps()).isCloseTo(2 * amps, within(1e-9));
    assertThat(supply(plan, 2).amps1()).isCloseTo(3 * amps, within(1e-9));
    assertThat(supply(plan, 2).amps2()).isCloseTo(3 * amps, within(1e-9));
    assertThat(supply(plan, 2).amps3()).isCloseTo(2 * amps, within(1e-9));
    for (String range : List.of("A-1-6", "A-1..6", "A-1 to 6", "A-1–6")) {
      assertThat(supply(tungsten().set("loads", 1, "place", range, "quantity", 8), 2).amps3())
          .as(range)
          .isCloseTo(2 * amps, within(1e-9));
    }
  }

  @Test
  void a_distro_without_a_cable_run_stops_with_all_that_hangs_on_it() {
    Ranges plan = quay();
    plan.rows("runs").clear();
    assertThat(keys(supply(plan, 2).reasons())).containsExactly("supply.none");
    assertThat(keys(load(plan, 1).reasons())).containsExactly("place.noSupply");
    assertThat(plan.calculate().rows(LightingPapers.PLUGGING_ROW)).isEmpty();
  }

  @Test
  void a_distro_fed_by_itself_stops() {
    Ranges plan = quay().set("runs", 1, "from", "A-3");
    assertThat(keys(run(plan, 1).reasons())).contains("supply.loop");
    assertThat(load(plan, 1).verdict()).isEqualTo(Verdict.STOP);
  }

  @Test
  void too_much_on_a_breaker_stops_with_place_and_time() {
    Ranges plan =
        quay()
            .row("equipment", "item", "kettle", "watts", 3000, "inrush", "none")
            .row("loads", "item", "kettle", "place", "A-2", "from", clock(5, 30), "to", clock(6, 0))
            .row(
                "loads", "item", "kettle", "place", "A-2", "from", clock(5, 30), "to", clock(9, 0));
    assertThat(keys(outlet(plan, 1).reasons())).containsExactly("outlet.over");
    assertThat(outlet(plan, 1).reasons().get(0).arguments()).contains("A-2", "05:30", 16.0);
    assertThat(outlet(plan, 1).peak()).isCloseTo(6000 / LEG_VOLTS, within(1e-9));
  }

  @Test
  void twin_outlets_share_their_breaker() {
    Ranges plan = quay().set("equipment", 1, "watts", 2300, "leakage", 1);
    plan.row("loads", "item", "LED 1600", "place", "A-1");
    assertThat(outlet(plan, 1).verdict()).isEqualTo(Verdict.OK);
    plan.set("outlets", 1, "sharing", 2);
    assertThat(keys(outlet(plan, 1).reasons())).containsExactly("outlet.over");
    // both hang on the leg of their breaker
    assertThat(supply(plan, 2).amps2()).isZero();
  }

  @Test
  void an_outlet_in_two_rows_stops() {
    Ranges plan = quay();
    plan.row("outlets", outletRow("A", "2", "CEE 7 16 A", "16", "rcd", "30"));
    assertThat(keys(outlet(plan, 1).reasons())).contains("outlet.twice");
    assertThat(keys(outlet(plan, 2).reasons())).contains("outlet.twice");
    assertThat(load(plan, 1).verdict()).isEqualTo(Verdict.STOP);
  }

  @Test
  void circuits_of_a_multi_circuit_cable_have_their_own_breakers() {
    Ranges plan = pans();
    // bar-3 is the third circuit of B2-5: leg L3, its own 16 A
    assertThat(load(plan, 3).legUsed()).isEqualTo("L3");
    assertThat(load(plan, 3).upstream()).isEqualTo(16);
    plan.set("loads", 3, "quantity", 3);
    assertThat(keys(outlet(plan, 4).reasons())).contains("outlet.over");
    plan.set("loads", 3, "place", "B2-5.3", "quantity", 1);
    assertThat(load(plan, 3).legUsed()).isEqualTo("L3");
    assertThat(load(plan.set("loads", 3, "place", "bar-7"), 3).verdict()).isEqualTo(Verdict.STOP);
  }

  // Legs.

  @Test
  void a_leg_that_contradicts_the_outlet_stops() {
    Ranges plan = quay().set("loads", 1, "leg", "L3");
    assertThat(keys(load(plan, 1).reasons())).containsExactly("load.leg");
    assertThat(load(quay().set("loads", 1, "leg", "L2"), 1).verdict()).isEqualTo(Verdict.OK);
  }

  @Test
  void an_open_leg_is_suggested_where_least_flows_and_is_a_check() {
    Ranges plan =
        tungsten()
            .set("equipment", 1, "plug", "IEC 60309 16 A 3-pin")
            .row(
                "outlets",
                outletRow("A", "7", "IEC 60309 32 A 5-pin", "32", "curve", "C", "rcd", "30"))
            .row("loads", "item", "LED 1600", "place", "A-7");
    assertThat(load(plan, 2).legUsed()).isEqualTo("L1");
    assertThat(keys(load(plan, 2).reasons())).containsExactly("load.legOpen");
    plan.set("loads", 2, "leg", "L2");
    assertThat(load(plan, 2).verdict()).isEqualTo(Verdict.OK);
    assertThat(supply(plan, 2).amps2()).isCloseTo(2 * 1600 / (LEG_VOLTS * 0.98), within(1e-9));
  }

  @Test
  void a_distro_of_three_legs_on_an_outlet_of_one_stops() {
    Ranges plan =
        quay()
            .row("supplies", "name", "B", "type", "distro", "system", "3PH")
            .row("runs", "to", "B", "from", "A-1", "length", 10, "size", "5G2.5", "type", "rubber");
    assertThat(keys(supply(plan, 3).reasons())).contains("supply.system");
    plan.set("supplies", 3, "system", "1PH").set("runs", 2, "size", "3G2.5");
    assertThat(supply(plan, 3).verdict()).isEqualTo(Verdict.OK);
  }

  // Available and headroom.

  @Test
  void available_is_the_smallest_upstream_less_what_others_take() {
    // 63 A less the crane's 12 A; a 125 A main breaker behind it does not change that
    assertThat(supply(tungsten(), 2).available()).isCloseTo(51, within(1e-9));
    Ranges plan = tungsten().set("supplies", 2, "breaker", 125);
    assertThat(supply(plan, 2).available()).isCloseTo(51, within(1e-9));
    double lamp = 1600 / (LEG_VOLTS * 0.98);
    assertThat(supply(plan, 2).headroom()).isCloseTo(51 - lamp, within(1e-9));
  }

  // Time.

  @Test
  void loads_count_when_they_are_on_together() {
    Ranges plan =
        tungsten()
            .set("loads", 1, "from", clock(8, 0), "to", clock(12, 0))
            .row(
                "loads",
                "item",
                "LED 1600",
                "place",
                "A-5",
                "from",
                clock(12, 0),
                "to",
                clock(14, 0));
    double lamp = 1600 / (LEG_VOLTS * 0.98);
    assertThat(supply(plan, 2).amps2()).isCloseTo(lamp, within(1e-9));
    plan.set("loads", 2, "from", clock(11, 50));
    assertThat(supply(plan, 2).amps2()).isCloseTo(2 * lamp, within(1e-9));
    // 11:50 belongs to the quarter hour of 11:45
    assertThat(supply(plan, 2).peakAt()).isCloseTo(clock(11, 45), within(1e-9));
  }

  @Test
  void a_night_ends_the_next_morning() {
    Ranges plan = tungsten().set("days", 1, "call", clock(16, 0), "wrap", clock(3, 0));
    plan.row("loads", "item", "LED 1600", "place", "A-5", "from", clock(2, 0), "to", clock(2, 30));
    // 02:00 is before wrap, so it is the end of the night
    double lamp = 1600 / (LEG_VOLTS * 0.98);
    assertThat(supply(plan, 2).amps2()).isCloseTo(2 * lamp, within(1e-9));
    plan.set("loads", 2, "from", clock(3, 0), "to", clock(3, 30));
    assertThat(supply(plan, 2).amps2()).isCloseTo(lamp, within(1e-9));
  }

  @Test
  void day_ranges_and_groups_switch_loads() {
    Ranges plan =
        tungsten()
            .row(
                "days",
                "date",
                day("2027-02-02"),
                "call",
                clock(7, 0),
                "wrap",
                clock(18, 0),
                "warmest",
                8)
            .set("loads", 1, "toDay", day("2027-02-01"))
            .row(
                "loads",
                "item",
                "LED 1600",
                "place",
                "A-5",
                "fromDay",
                day("2027-02-02"),
                "group",
                "scene 4");
    double lamp = 1600 / (LEG_VOLTS * 0.98);
    assertThat(supply(plan, 2).amps2()).isCloseTo(lamp, within(1e-9));
    plan.set("project", 1, "dayShown", day("2027-02-02"));
    assertThat(supply(plan, 2).amps2()).isCloseTo(lamp, within(1e-9));
    plan.row("groups", "group", "Scene 4", "on", "no");
    assertThat(supply(plan, 2).amps2()).isZero();
    assertThat(load(plan, 2).verdict()).isEqualTo(Verdict.OK);
    plan.set("loads", 2, "fromDay", day("2027-02-03"), "group", "");
    assertThat(keys(load(plan, 2).reasons())).contains("load.never");
  }

  @Test
  void the_day_shown_changes_figures_and_never_a_status() {
    Ranges plan =
        quay()
            .set("equipment", 1, "leakage", 1)
            .row("days", "date", day("2027-02-02"), "warmest", 8)
            .set("loads", 1, "toDay", day("2027-02-01"), "quantity", 4)
            .set("project", 1, "dayShown", day("2027-02-02"));
    assertThat(supply(plan, 2).amps2()).isZero();
    assertThat(keys(outlet(plan, 1).reasons())).containsExactly("outlet.over");
  }

  // Unreadable rows.

  @Test
  void a_load_without_watts_stops_and_so_does_what_feeds_it() {
    for (Object watts : new Object[] {"", "#", "12.5 W"}) {
      Ranges plan = quay().set("equipment", 1, "watts", watts);
      assertThat(keys(load(plan, 1).reasons())).contains("load.watts");
      assertThat(keys(supply(plan, 2).reasons())).containsExactly("supply.uncounted");
      assertThat(keys(run(plan, 1).reasons())).contains("supply.uncounted");
    }
    assertThat(keys(load(quay().set("loads", 1, "item", "LED 9"), 1).reasons()))
        .containsExactly("load.equipment");
  }

  @Test
  void a_level_is_a_share_and_never_fifty_times() {
    assertThat(load(quay().set("loads", 1, "level", 50), 1).verdict()).isEqualTo(Verdict.STOP);
    assertThat(load(quay().set("loads", 1, "level", 0.5), 1).power()).isEqualTo(800);
  }

  @Test
  void a_hostile_row_hurts_only_itself_and_what_feeds_it() {
    Ranges plan = quay().row("loads", "item", "#", "place", "A-6", "quantity", "x");
    assertThat(load(plan, 1).verdict()).isEqualTo(Verdict.OK);
    assertThat(load(plan, 2).verdict()).isEqualTo(Verdict.STOP);
    assertThat(supply(plan, 2).verdict()).isEqualTo(Verdict.STOP);
  }

  @Test
  void a_project_without_units_stops_everything() {
    Ranges plan = quay().set("project", 1, "units", "");
    assertThat(load(plan, 1).verdict()).isEqualTo(Verdict.STOP);
    assertThat(run(plan, 1).fit()).isFalse();
    assertThat(plan.calculate().rows(LightingPapers.PULL_ROW)).isEmpty();
  }

  /** BS 7671: 5G16 carries 63 A, bunched with another 0.8 of it, 50.4 A: enough for 50 A. */
  @Test
  void a_blank_default_installation_is_one_check() {
    PlanResult plan =
        quay()
            .set("project", 1, "installation", "")
            .set("supplies", 1, "breaker", 50)
            .set("supplies", 2, "breaker", 50)
            .calculate();
    assertThat(plan.rows(LightingPapers.SUMMARY).get(0).checks()).isEqualTo(1);
    assertThat(plan.rows(LightingPapers.SUMMARY).get(0).stops()).isZero();
  }

  // Cables.

  @Test
  void light_and_rubber_cords_from_1_mm2_have_a_rating() {
    // BS 7671 Table 4F3A, single-phase
    Map<String, Double> amps = Map.of("3G1", 10.0, "3G1.5", 16.0, "3 × 2.5", 25.0, "1 mm²", 10.0);
    amps.forEach(
        (size, rating) -> {
          for (String type : List.of("cord", "rubber")) {
            Ranges plan = quay();
            plan.row("runs", "to", "tail", "from", "A-1", "length", 5, "size", size, "type", type);
            assertThat(run(plan, 2).rating()).as(size + type).isEqualTo(rating);
            plan.set("project", 1, "rule", "VDE 0298-4");
            assertThat(run(plan, 2).rating()).as(size + type).isGreaterThanOrEqualTo(rating);
          }
        });
  }

  /** NEC Table 400.5(A)(2), 4/0 single-conductor: 300, 360, 405 A at 60, 75, 90 °C. */
  @Test
  void the_marked_temperature_class_counts() {
    Map.of("60", 300.0, "75", 360.0, "90", 405.0)
        .forEach(
            (marked, rating) ->
                assertThat(run(stage().set("runs", 1, "temperatureClass", marked), 1).rating())
                    .isEqualTo(rating));
    assertThat(run(stage().set("runs", 1, "temperatureClass", ""), 1).rating()).isEqualTo(300);
  }

  @Test
  void a_makers_rating_counts_with_its_source_and_is_derated() {
    Ranges plan = quay().set("runs", 1, "makersRating", 80);
    assertThat(keys(run(plan, 1).reasons())).containsExactly("run.makersSource");
    assertThat(run(plan, 1).rating()).isEqualTo(63);
    plan.set("runs", 1, "ratingSource", "data sheet", "air", 40);
    assertThat(run(plan, 1).rating()).isCloseTo(80 * 0.82, within(1e-9));
  }

  @Test
  void sizes_that_are_none_stop() {
    for (String size : List.of("2.7 mm²", "13/0", "thick", "12", "2,7")) {
      assertThat(keys(run(quay().set("runs", 1, "size", size), 1).reasons()))
          .as(size)
          .contains("run.size");
    }
    // a gauge or an area: only metric plans have no gauges
    assertThat(keys(run(LightingSamples.stage().set("runs", 1, "size", "16"), 1).reasons()))
        .contains("run.size");
  }

  @Test
  void pieces_that_do_not_reach_stop() {
    assertThat(run(quay().set("runs", 1, "pieces", "10+15"), 1).verdict()).isEqualTo(Verdict.OK);
    assertThat(keys(run(quay().set("runs", 1, "pieces", "10+10"), 1).reasons()))
        .containsExactly("run.pieces");
    assertThat(keys(run(quay().set("runs", 1, "pieces", "all"), 1).reasons()))
        .containsExactly("run.piecesWrong");
  }

  // Voltage.

  /** The drop beside a run is the leaf function's, to the last digit. */
  @Test
  void the_drop_of_a_run_is_that_of_the_leaf_function() {
    Ranges plan = quay();
    plan.row("runs", "to", "tail", "from", "A-3", "length", 50, "size", "3G2.5", "type", "rubber");
    plan.set("loads", 1, "place", "tail");
    LightingResults.RunResult tail = run(plan, 2);
    double leaf =
        CableRun.of(CableSize.ofArea(2.5), 50, PhaseSystem.ONE, 0.98, 60, 1).drop(tail.amps());
    assertThat(tail.drop()).isCloseTo(leaf, within(1e-9));
  }

  /** Constant power: V = (Vs + √(Vs² − 4·P·R))/2 for pf 1, R of the loop. */
  @Test
  void the_voltage_at_a_load_is_that_of_constant_power() {
    Ranges plan = quay().set("equipment", 1, "powerFactor", 1, "harmonic", 0);
    plan.set("supplies", 2, "type", "distro").set("runs", 1, "length", 0.1);
    plan.row("runs", "to", "tail", "from", "A-3", "length", 100, "size", "3G1.5", "type", "cord");
    plan.set("loads", 1, "place", "tail");
    // 13.3 Ω/km at 20 °C, IEC 60228 class 5; 60 °C: (1 + 0.00393 × 40)
    double loop = 2 * 0.1 * 13.3 * (1 + 0.00393 * 40);
    double expected = (LEG_VOLTS + Math.sqrt(LEG_VOLTS * LEG_VOLTS - 4 * 1600 * loop)) / 2;
    assertThat(load(plan, 1).volts()).isCloseTo(expected, within(0.15));
    plan.set("equipment", 1, "watts", 9000);
    assertThat(keys(run(plan, 2).reasons())).contains("run.collapse");
  }

  /** 4,400 W at power factor 0.98 take 20.2 A at 222 V, and 19.4 A at 231 V. */
  @Test
  void what_draws_constant_power_takes_the_current_of_the_voltage_it_gets() {
    Ranges plan = quay().set("equipment", 1, "watts", 3600, "harmonic", 0);
    plan.set("supplies", 1, "existing", "").set("outlets", 1, "breaker", "16");
    plan.row("runs", "to", "tail", "from", "A-3", "length", 100, "size", "3G2.5", "type", "rubber");
    plan.set("loads", 1, "place", "tail");
    double volts = load(plan, 1).volts();
    assertThat(volts).isBetween(180.0, 222.0);
    double amps = 3600 / (volts * 0.98);
    // at 230.9 V it would be 15.9 A
    assertThat(amps).isGreaterThan(16.5);
    assertThat(load(plan, 1).amps()).isCloseTo(amps, within(1e-3));
    assertThat(run(plan, 2).amps()).isCloseTo(amps, within(1e-3));
    assertThat(supply(plan, 2).amps3()).isCloseTo(amps, within(1e-3));
    assertThat(supply(plan, 1).headroom()).isCloseTo(63 - amps, within(1e-3));
    assertThat(keys(outlet(plan, 1).reasons())).containsExactly("outlet.over");
    // what is a resistance never takes more than at the source's voltage
    for (String kind : List.of("heater", "tungsten")) {
      plan.set("equipment", 1, "inrush", kind);
      assertThat(run(plan, 2).amps()).isCloseTo(3600 / (LEG_VOLTS * 0.98), within(1e-9));
      assertThat(load(plan, 1).amps()).isCloseTo(3600 / (LEG_VOLTS * 0.98), within(1e-9));
      assertThat(keys(outlet(plan, 1).reasons())).isEmpty();
    }
  }

  @Test
  void drops_add_up_from_the_source() {
    Ranges plan = quay().set("runs", 1, "length", 200);
    double before = run(plan, 1).totalDrop();
    plan.row("runs", "to", "tail", "from", "A-2", "length", 50, "size", "3G2.5", "type", "rubber");
    plan.row("loads", "item", "LED 1600", "place", "tail");
    plan.rows("loads").remove(0);
    double own = run(plan, 2).drop() / LEG_VOLTS;
    assertThat(run(plan, 2).totalDrop()).isBetween(before + own, (before + own) * 1.1);
  }

  /** 150 m lose more than 2 m behind them; a larger cable at the end would not help. */
  @Test
  void a_drop_names_the_run_over_which_most_is_lost() {
    Ranges plan = quay();
    plan.row("runs", "to", "reel", "from", "A-3", "length", 150, "size", "3G2.5", "type", "rubber");
    plan.row("runs", "to", "tail", "from", "reel", "length", 2, "size", "3G2.5", "type", "rubber");
    plan.set("loads", 1, "place", "tail");
    assertThat(run(plan, 3).reasons())
        .filteredOn(f -> f.key().key().endsWith("run.drop"))
        .singleElement()
        .satisfies(f -> assertThat(f.arguments().get(2)).isEqualTo("reel"));
  }

  /** A blank temperature class is the lowest of the tables, 60 °C: what is marked may be more. */
  @Test
  void a_cable_that_is_not_protected_names_its_temperature_class() {
    Ranges plan = quay().set("runs", 1, "size", "5G4");
    assertThat(run(plan, 1).reasons())
        .filteredOn(f -> f.key().key().endsWith("run.overload"))
        .singleElement()
        .satisfies(f -> assertThat(f.arguments().get(2)).isEqualTo(60.0));
  }

  @Test
  void min_size_and_max_length_keep_breaker_and_drop() {
    Ranges plan = quay();
    plan.row("runs", "to", "tail", "from", "A-3", "length", 150, "size", "3G2.5", "type", "rubber");
    plan.set("loads", 1, "place", "tail");
    assertThat(keys(run(plan, 2).reasons())).contains("run.drop");
    String size = run(plan, 2).minSize();
    assertThat(keys(run(plan.copy().set("runs", 2, "size", size), 2).reasons()))
        .doesNotContain("run.drop", "run.overload");
    double length = run(plan, 2).maxLength();
    assertThat(length).isLessThan(150);
    assertThat(keys(run(plan.copy().set("runs", 2, "length", length * 0.97), 2).reasons()))
        .doesNotContain("run.drop");
  }

  // What a stop leaves out.

  /** Two lamps at the end of a cable are stopped: papers and order must not be short silently. */
  @Test
  void what_a_stop_leaves_out_is_counted_on_papers_and_in_the_order() {
    Ranges plan = quay();
    plan.row("runs", "to", "pan", "from", "A-3", "length", 20, "size", "3G2.5", "type", "rubber");
    plan.row("equipment", "item", "fresnel", "watts", 650, "stock", 0);
    plan.row("loads", "item", "fresnel", "place", "pan", "quantity", 2, "leg", "L1");
    assertThat(load(plan, 2).verdict()).isEqualTo(Verdict.STOP);
    PlanResult result = plan.calculate();
    assertThat(result.rows(LightingPapers.SUMMARY).get(0).loadsWithheld()).isEqualTo(1);
    assertThat(result.rows(LightingPapers.PLACE_ROW))
        .filteredOn(p -> p.place().equals("A-3"))
        .singleElement()
        .satisfies(p -> assertThat(p.withheld()).isEqualTo(1));
    assertThat(order(plan))
        .filteredOn(o -> o.what().equals("fresnel"))
        .singleElement()
        .satisfies(
            o -> {
              assertThat(o.kind()).isEqualTo("stop");
              assertThat(o.required()).isEqualTo(2);
              assertThat(o.shortOf()).isZero();
            });
    plan.set("loads", 2, "leg", "");
    assertThat(order(plan))
        .filteredOn(o -> o.what().equals("fresnel"))
        .singleElement()
        .satisfies(o -> assertThat(o.kind()).isEqualTo("load"));
    // of a cable run that is a stop as well
    plan.set("runs", 2, "size", "3G1").set("outlets", 1, "breaker", "32");
    plan.set("outlets", 1, "connector", "IEC 60309 32 A 5-pin");
    assertThat(order(plan)).anyMatch(o -> o.kind().equals("stop") && o.what().equals("pan"));
  }

  /** 4,000 W at half its level on 16 A: turned up it takes 17.7 A. */
  @Test
  void a_plug_that_is_larger_than_its_outlet_is_a_check_also_when_dimmed() {
    Ranges plan = quay().set("equipment", 1, "watts", 4000, "plug", "IEC 60309 32 A 3-pin");
    plan.set("loads", 1, "level", 0.5);
    assertThat(keys(load(plan, 1).reasons())).containsExactly("load.plug");
    assertThat(load(plan, 1).verdict()).isEqualTo(Verdict.CHECK);
    assertThat((double) load(plan, 1).reasons().get(0).arguments().get(2))
        .isCloseTo(4000 / (LEG_VOLTS * 0.98), within(0.2));
    plan.set("equipment", 1, "plug", "IEC 60309 16 A 3-pin");
    assertThat(keys(load(plan, 1).reasons())).isEmpty();
    // at the end of a cable its connector counts, else that of the outlet it is plugged in
    plan.set("equipment", 1, "plug", "IEC 60309 32 A 3-pin");
    plan.row("runs", "to", "pan", "from", "A-3", "length", 20, "size", "3G2.5", "type", "rubber");
    plan.set("loads", 1, "place", "pan");
    assertThat(keys(load(plan, 1).reasons())).containsExactly("load.plug");
    plan.set("runs", 2, "connector", "IEC 60309 32 A 3-pin");
    assertThat(keys(load(plan, 1).reasons())).containsExactly("load.plug");
    plan.set("outlets", 1, "connector", "IEC 60309 32 A 3-pin", "breaker", "25");
    assertThat(keys(load(plan, 1).reasons())).isEmpty();
  }

  /** 16.02 A on 16 A: both would read 16.0. */
  @Test
  void a_figure_and_its_limit_never_read_the_same() {
    Ranges plan = quay().set("equipment", 1, "watts", 3_698, "powerFactor", 1, "harmonic", 0);
    plan.set("equipment", 1, "inrush", "heater", "leakage", 1);
    EnglishMessages english = new EnglishMessages();
    String sentence = english.sentence(outlet(plan, 1).reasons().get(0), Locale.UK);
    assertThat(sentence).contains("16.01 A").contains("16 A breaker");
    plan.set("equipment", 1, "watts", 3_900);
    assertThat(english.sentence(outlet(plan, 1).reasons().get(0), Locale.UK)).contains("16.9 A");
  }

  // Order, balance, readings.

  @Test
  void a_set_of_single_cores_is_ordered_by_conductor() {
    List<LightingPapers.OrderRow> feeder =
        order(stage()).stream().filter(o -> o.what().equals("feeder")).toList();
    assertThat(feeder.stream().map(LightingPapers.OrderRow::cores))
        .containsExactlyInAnyOrder("earth", "neutral", "L1", "L2", "L3");
    // two pieces of 50 ft each, 10 % spare rounded up
    assertThat(feeder).allMatch(o -> o.required() == 2 && o.spare() == 1 && o.length() == 50);
  }

  @Test
  void cables_of_other_cores_and_lengths_are_other_lines() {
    Ranges plan = quay().set("runs", 1, "length", 25);
    plan.row("runs", "to", "tail", "from", "A-3", "length", 25, "size", "3G16", "type", "rubber");
    assertThat(order(plan).stream().filter(o -> o.kind().equals("cable")).count()).isEqualTo(2);
  }

  /** Straight from a source no outlet says which connector: the smallest made for the breaker. */
  @Test
  void a_cable_straight_from_a_source_has_the_connector_of_its_breaker() {
    assertThat(cable(order(quay())).connector()).isEqualTo("IEC 60309 63 A 5-pin");
    Ranges large =
        quay()
            .set("project", 1, "rule", "VDE 0298-4")
            .set("supplies", 1, "breaker", 125)
            .set("runs", 1, "size", "5G35");
    assertThat(cable(order(large)).connector()).isEqualTo("IEC 60309 125 A 5-pin");
    assertThat(cable(order(quay().set("runs", 1, "connector", "terminals"))).connector())
        .isEqualTo("terminals");
    assertThat(order(stage()).stream().filter(r -> r.size() != null && r.size().startsWith("4/0")))
        .isNotEmpty()
        .allMatch(r -> "single-pole set".equals(r.connector()));
  }

  private static LightingPapers.OrderRow cable(List<LightingPapers.OrderRow> order) {
    return order.stream().filter(r -> "cable".equals(r.kind())).findFirst().orElseThrow();
  }

  @Test
  void an_adaptor_to_a_smaller_plug_names_the_breaker_it_needs() {
    Ranges plan = quay().set("outlets", 1, "connector", "IEC 60309 32 A 5-pin", "breaker", "32");
    plan.set("equipment", 1, "plug", "IEC 60309 16 A 3-pin");
    LightingPapers.OrderRow adaptor =
        order(plan).stream().filter(o -> o.kind().equals("adaptor")).findFirst().orElseThrow();
    assertThat(adaptor.what()).isEqualTo("IEC 60309 32 A 5-pin to IEC 60309 16 A 3-pin");
    assertThat(adaptor.breaker()).isEqualTo(16);
    assertThat(adaptor.article())
        .isEqualTo(Phrase.of("{0}, with breaker {1,number,0.#} A", adaptor.what(), 16.0));
  }

  /** HD 22.4 calls heavy rubber cable H07RN-F; American cable is marked otherwise. */
  @Test
  void rubber_cable_is_ordered_by_the_name_of_the_trade() {
    assertThat(cable(order(quay())).article()).isEqualTo(Phrase.of("rubber cable H07RN-F"));
    assertThat(order(stage()))
        .extracting(LightingPapers.OrderRow::article)
        .contains(Phrase.of("single-core cable"))
        .doesNotContain(Phrase.of("rubber cable H07RN-F"));
    Ranges typed = quay().set("runs", 1, "type", "H07RN-F");
    assertThat(order(typed)).isEqualTo(order(quay()));
  }

  @Test
  void stock_counts_against_what_is_required() {
    LightingPapers.OrderRow cable =
        order(pans()).stream().filter(o -> "6 mm²".equals(o.size())).findFirst().orElseThrow();
    assertThat(cable.required()).isEqualTo(1);
    assertThat(cable.spare()).isEqualTo(1);
    assertThat(cable.shortOf()).isEqualTo(1);
  }

  @Test
  void the_proposed_exchange_lowers_the_peak_most() {
    Ranges plan = tungsten();
    plan.row("equipment", "item", "small", "watts", 400, "powerFactor", 1, "harmonic", 0);
    plan.row("loads", "item", "LED 1600", "place", "A-5");
    plan.row("loads", "item", "small", "place", "A-1");
    List<LightingPapers.BalanceRow> rows = plan.calculate().rows(LightingPapers.BALANCE_ROW);
    LightingPapers.BalanceRow row =
        rows.stream().filter(r -> r.supply().equals("A")).findFirst().orElseThrow();
    double lamp = 1600 / (LEG_VOLTS * 0.98);
    // of two lamps on L2 one moves to the empty L3
    assertThat(row.fromLeg()).isEqualTo("L2");
    assertThat(row.toLeg()).isEqualTo("L3");
    assertThat(row.otherItem()).isNull();
    assertThat(row.before()).isCloseTo(2 * lamp, within(1e-9));
    assertThat(row.after()).isCloseTo(lamp, within(1e-9));
  }

  @Test
  void a_reading_six_amps_above_the_plan_is_a_check() {
    Ranges plan = tungsten();
    double lamp = 1600 / (LEG_VOLTS * 0.98);
    plan.row(
        "readings",
        "place",
        "A",
        "date",
        day("2027-02-01"),
        "time",
        clock(12, 30),
        "l1",
        0,
        "l2",
        lamp + 6);
    LightingResults.ReadingResult reading =
        plan.calculate().rows(LightingResults.READING_RESULT).get(0);
    assertThat(reading.planned2()).isCloseTo(lamp, within(1e-9));
    assertThat(keys(reading.reasons())).containsExactly("reading.off");
  }

  @Test
  void outlets_say_on_which_legs_they_are() {
    assertThat(outlet(quay(), 1).legsOf()).isEqualTo("L1: 1, 4 · L2: 2, 5 · L3: 3, 6");
    assertThat(outlet(quay().set("outlets", 1, "legs", "L2"), 1).legsOf()).isEqualTo("L2");
  }

  @Test
  void a_generator_and_the_devices_that_are_on_at_once_are_ordered() {
    Ranges plan = LightingSafetyTest.onGenerator(40).set("loads", 1, "quantity", 2);
    plan.row("loads", "item", "LED 1600", "place", "A-3");
    assertThat(order(plan))
        .anyMatch(l -> l.kind().equals("generator") && l.size().equals("40 kVA"))
        .anyMatch(
            l ->
                l.kind().equals("load")
                    && l.required() == 3
                    && l.stock() == null
                    && l.shortOf() == 3);
    plan.set("equipment", 1, "stock", 2);
    assertThat(order(plan))
        .anyMatch(l -> l.kind().equals("load") && l.stock() == 2 && l.shortOf() == 1);
    plan.set("generators", 1, "bond", "none");
    assertThat(order(plan)).noneMatch(l -> l.kind().equals("generator"));
  }

  @Test
  void a_label_has_what_is_plugged_into_each_outlet_of_its_distro() {
    List<LightingPapers.LabelRow> label = quay().calculate().rows(LightingPapers.LABEL_ROW);
    assertThat(label)
        .extracting(LightingPapers.LabelRow::kind)
        .containsExactly("name", "line", "outlet", "line", "caution", "");
    assertThat(label.get(0).place()).isEqualTo("A");
    assertThat(label.get(1).plugged().arguments()).containsExactly("quay", "63");
    assertThat(label.get(2).place()).isEqualTo("A-2");
    assertThat(label.get(2).legs()).isEqualTo("L2");
    assertThat(label.get(2).breaker()).isEqualTo(16);
    assertThat(label.get(2).plugged().arguments()).containsExactly("1 × LED 1600");
    Ranges stopped = quay().set("supplies", 2, "breaker", 16).set("equipment", 1, "watts", 5000);
    assertThat(stopped.calculate().rows(LightingPapers.LABEL_ROW))
        .extracting(LightingPapers.LabelRow::kind)
        .containsExactly("name", "stop", "caution", "");
  }

  /** Whoever plugs reads outlet, breaker, cable, lamp and where it stands on one line. */
  @Test
  void papers_name_the_lamp_behind_a_cable_and_where_it_stands() {
    Ranges ranges =
        quay()
            .row(
                "runs", "to", "pan1", "from", "A-3", "length", 20, "size", "3G2.5", "type",
                "rubber")
            .row("loads", "item", "LED 1600", "place", "pan1", "location", "dike", "from", 0.75);
    var result = ranges.calculate();
    LightingPapers.PluggingRow row =
        result.rows(LightingPapers.PLUGGING_ROW).stream()
            .filter(r -> r.place().equals("pan1"))
            .findFirst()
            .orElseThrow();
    assertThat(row.outlet()).isEqualTo("A-3");
    assertThat(row.breaker()).isEqualTo(16);
    assertThat(row.cable()).isEqualTo("pan1 · 3G2.5 · 20 m");
    assertThat(row.location()).isEqualTo("dike");
    assertThat(row.on()).isEqualTo(Phrase.of("from {0}", LocalTime.of(18, 0)));
    assertThat(result.rows(LightingPapers.PLUGGING_ROW))
        .extracting(LightingPapers.PluggingRow::outlet)
        .containsExactly("A-2", "A-3");
    assertThat(result.rows(LightingPapers.PLACE_ROW))
        .extracting(LightingPapers.PlaceRow::plugged)
        .contains("→ pan1: 1 × LED 1600");
    LightingPapers.PullRow pulled =
        result.rows(LightingPapers.PULL_ROW).stream()
            .filter(r -> r.to().equals("pan1"))
            .findFirst()
            .orElseThrow();
    assertThat(pulled.feeds()).isEqualTo(Phrase.of("{0}", "1 × LED 1600"));
    assertThat(pulled.location()).isEqualTo("dike");
    // what hangs on the distro stands on its own label: A-2 and A-3 are used
    assertThat(result.rows(LightingPapers.PULL_ROW))
        .filteredOn(r -> r.to().equals("A"))
        .extracting(LightingPapers.PullRow::feeds)
        .containsExactly(Phrase.of("distro, outlets in use: {0,number,0}", 2L));
  }

  /**
   * Whoever looks for a free way reads it off the box; a box that nobody uses has no empty label.
   */
  @Test
  void a_label_names_outlets_that_are_not_in_use() {
    assertThat(labels(quay())).contains("Not in use: A-1, A-3…6.");
    Ranges idle = quay();
    idle.rows("loads").clear();
    assertThat(labels(idle)).contains("Not in use: A-1…6.");
    assertThat(labels(quay().set("loads", 1, "place", "A-1…6", "quantity", 6)))
        .noneMatch(t -> t.startsWith("Not in use"));
  }

  private static List<String> labels(Ranges plan) {
    return plan.calculate().rows(LightingPapers.LABEL_ROW).stream()
        .filter(r -> r.plugged() != null)
        .map(r -> ENGLISH.phrase(r.plugged(), Locale.ENGLISH))
        .toList();
  }

  /** A rental house must know tank, preheating (the plan asks for it in frost) and the days. */
  @Test
  void the_order_of_a_generator_has_tank_and_preheating() {
    Ranges plan =
        LightingSafetyTest.onGenerator(40)
            .set("generators", 1, "tank", 120)
            .set("days", 1, "coldest", -5);
    assertThat(generatorOrdered(plan)).contains("tank 120 L, with engine preheating");
    assertThat(generatorOrdered(plan.set("days", 1, "coldest", 2)))
        .contains("tank 120 L")
        .doesNotContain("preheating");
    LightingPapers.Summary summary = pans().calculate().rows(LightingPapers.SUMMARY).get(0);
    assertThat(ENGLISH.phrase(summary.period(), Locale.ENGLISH)).isEqualTo("2 Feb–4 Feb 2027");
  }

  private static String generatorOrdered(Ranges plan) {
    return order(plan).stream()
        .filter(r -> r.kind().equals("generator"))
        .map(r -> ENGLISH.phrase(r.article(), Locale.ENGLISH))
        .findFirst()
        .orElseThrow();
  }
}
