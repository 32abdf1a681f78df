package org.setpower.plan.lighting;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.setpower.plan.lighting.LightingPlans.keys;
import static org.setpower.plan.lighting.LightingPlans.load;
import static org.setpower.plan.lighting.LightingPlans.run;
import static org.setpower.plan.lighting.LightingPlans.supply;
import static org.setpower.plan.lighting.LightingSamples.clock;
import static org.setpower.plan.lighting.LightingSamples.day;
import static org.setpower.plan.lighting.LightingSamples.feeder;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.setpower.plan.common.Ranges;
import org.setpower.plan.finding.Verdict;
import org.setpower.plan.lighting.result.LightingPapers;

/** Of several nights each paper is that of the one shown, and says which. */
class LightingDayTest {
  private static final double LEG_VOLTS = 400 / Math.sqrt(3);

  /** 11 Oct: one lamp on A-2; 12 Oct: two on A-5, one of them at the end of a cable; one on A-6. */
  private static Ranges nights(String shown) {
    return LightingSamples.tungsten()
        .set("days", 1, "date", day("2027-10-11"), "call", clock(17, 0), "wrap", clock(4, 0))
        .row(
            "days",
            "date",
            day("2027-10-12"),
            "call",
            clock(17, 0),
            "wrap",
            clock(4, 0),
            "warmest",
            8)
        .set("project", 1, "dayShown", shown.isEmpty() ? "" : (Object) day(shown))
        .set("equipment", 1, "powerFactor", 1, "harmonic", 0)
        .set("loads", 1, "toDay", day("2027-10-11"))
        .row("runs", "to", "gate", "from", "A-5", "length", 40, "size", "3G2.5", "type", "rubber")
        .row("loads", "item", "LED 1600", "place", "gate", "fromDay", day("2027-10-12"))
        .row("loads", "item", "LED 1600", "place", "A-6");
  }

  private static List<LightingPapers.PlaceRow> distribution(Ranges plan) {
    return plan.calculate().rows(LightingPapers.PLACE_ROW);
  }

  @Test
  void papers_have_the_rows_of_the_day_shown() {
    assertThat(distribution(nights("2027-10-11")))
        .extracting(LightingPapers.PlaceRow::place)
        .containsExactly("A-2", "A-6");
    assertThat(distribution(nights("2027-10-12")))
        .extracting(LightingPapers.PlaceRow::place)
        .containsExactly("A-5", "A-6");
    assertThat(distribution(nights(""))).hasSize(3);
    assertThat(nights("2027-10-11").calculate().rows(LightingPapers.PLUGGING_ROW))
        .extracting(LightingPapers.PluggingRow::place)
        .containsExactly("A-2", "A-6");
    assertThat(nights("2027-10-11").calculate().rows(LightingPapers.PULL_ROW))
        .extracting(LightingPapers.PullRow::to)
        .filteredOn(to -> !to.isEmpty())
        .containsExactly("A");
    assertThat(nights("2027-10-12").calculate().rows(LightingPapers.PULL_ROW))
        .extracting(LightingPapers.PullRow::to)
        .filteredOn(to -> !to.isEmpty())
        .containsExactly("A", "gate");
    assertThat(nights("2027-10-11").calculate().rows(LightingPapers.LABEL_ROW))
        .extracting(LightingPapers.LabelRow::place)
        .contains("A-2", "A-6")
        .doesNotContain("A-5");
  }

  /** L2 on 11 Oct and on 12 Oct, L3 on both; 1600 W at 230.9 V are 6.93 A. */
  @Test
  void current_neutral_and_the_loads_own_are_of_one_day() {
    double lamp = 1600 / LEG_VOLTS;
    Ranges first = nights("2027-10-11");
    for (LightingPapers.PlaceRow row : distribution(first)) {
      assertThat(row.amps()).as(row.place()).isCloseTo(lamp, within(1e-9));
      assertThat(row.neutral()).as(row.place()).isCloseTo(lamp, within(1e-9));
    }
    // the lamp at the gate is not there
    assertThat(load(first, 2).amps()).isZero();
    assertThat(load(first, 2).shared()).isZero();
    assertThat(run(first, 2).amps()).isZero();
    assertThat(run(first, 2).neutral()).isZero();
    assertThat(run(first, 2).totalDrop()).isZero();
    Ranges second = nights("2027-10-12");
    assertThat(load(second, 2).amps()).isCloseTo(lamp, within(1e-9));
    assertThat(run(second, 2).neutral()).isCloseTo(lamp, within(1e-9));
    assertThat(run(second, 2).totalDrop()).isPositive();
    // two legs of 6.93 A at 120°: the neutral carries as much
    assertThat(supply(second, 2).neutral()).isCloseTo(lamp, within(1e-9));
  }

  /**
   * IEC 60364-5-52 annex G: the drop is a share of the voltage to neutral. One lamp over both
   * cables: there and back in each.
   */
  @Test
  void volts_and_shares_of_a_drop_agree() {
    Ranges plan = nights("2027-10-12").set("supplies", 1, "existing", "");
    double volts = run(plan, 2).drop();
    double own = run(plan, 2).totalDrop() * LEG_VOLTS - run(plan, 1).totalDrop() * LEG_VOLTS;
    assertThat(volts).isCloseTo(own, within(0.1 * own));
    assertThat(run(plan, 1).drop()).isCloseTo(run(plan, 1).totalDrop() * LEG_VOLTS, within(1e-6));
    // 3G2.5 over 40 m at 6.93 A: 2 · 40 · 7.98 Ω/km (IEC 60228, 20 °C) · 1.2 for a warm conductor
    assertThat(volts).isBetween(2 * 0.040 * 7.98 * 6.93, 2 * 0.040 * 7.98 * 6.93 * 1.25);
    Ranges feeder = feeder("30").set("loads", 2, "quantity", 2);
    assertThat(run(feeder, 1).drop())
        .isCloseTo(run(feeder, 1).totalDrop() * LEG_VOLTS, within(1e-6));
  }

  /** Typed 2026 for 2027: it is on all days, and said. */
  @Test
  void a_date_away_from_the_days_is_a_check() {
    Ranges plan = nights("").set("loads", 3, "fromDay", day("2026-10-12"));
    assertThat(keys(load(plan, 3).reasons())).containsExactly("load.dayAway");
    plan.set("loads", 3, "fromDay", "", "toDay", day("2028-10-12"));
    assertThat(keys(load(plan, 3).reasons())).containsExactly("load.dayAway");
    plan.set("loads", 3, "toDay", day("2027-10-12"));
    assertThat(keys(load(plan, 3).reasons())).isEmpty();
  }

  /** What stops above a distro stops its label: who reads it does not see the sheet. */
  @Test
  void a_stop_upstream_is_a_stop_on_the_labels_of_what_it_feeds() {
    Ranges plan = feeder("30").set("equipment", 1, "watts", 1600).set("outlets", 2, "rcd", "30");
    assertThat(labels(plan, "B")).doesNotContain("stop");
    plan.row("loads", "item", "LED 1600", "place", "A-5", "level", 80);
    assertThat(supply(plan, 2).verdict()).isEqualTo(Verdict.STOP);
    assertThat(labels(plan, "A")).contains("stop");
    assertThat(labels(plan, "B")).contains("stop").doesNotContain("outlet");
  }

  /** Whoever holds one paper sees no other: each names the stop that stands above its rows. */
  @Test
  void a_stop_upstream_stands_on_each_paper_of_what_it_feeds() {
    Ranges plan = feeder("30").set("equipment", 1, "watts", 1600).set("outlets", 2, "rcd", "30");
    plan.row("runs", "to", "stairs", "from", "B-1", "length", 5, "size", "3G2.5", "type", "rubber");
    plan.row("loads", "item", "LED 1600", "place", "stairs");
    assertThat(supply(plan, 3).verdict()).isNotEqualTo(Verdict.STOP);
    assertThat(plan.calculate().rows(LightingPapers.PLUGGING_ROW))
        .allMatch(r -> r.upstream() == null && r.verdict() != Verdict.STOP);
    // a level of 8000 %: the sums of A and of quay are too low, those of B are known
    plan.row("loads", "item", "LED 1600", "place", "A-5", "level", 80);
    assertThat(keys(supply(plan, 3).reasons())).containsExactly("load.upstream");
    assertThat(supply(plan, 3).reasons().get(0).arguments()).containsExactly("A");
    List<LightingPapers.PluggingRow> plugging = plan.calculate().rows(LightingPapers.PLUGGING_ROW);
    assertThat(plugging).filteredOn(r -> r.outlet().startsWith("B-")).isNotEmpty();
    assertThat(plugging)
        .allMatch(r -> "A".equals(r.upstream()) || "B".equals(r.upstream()))
        .allMatch(r -> r.verdict() == Verdict.STOP);
    assertThat(plan.calculate().rows(LightingPapers.PULL_ROW))
        .filteredOn(r -> List.of("B", "stairs").contains(r.to()))
        .hasSize(2)
        .allMatch(r -> r.upstream() != null && r.verdict() == Verdict.STOP);
    assertThat(distribution(plan)).allMatch(r -> r.upstream() != null);
    assertThat(plan.calculate().rows(LightingPapers.LABEL_ROW))
        .extracting(r -> r.plugged() == null ? "" : r.plugged().arguments().toString())
        .filteredOn(v -> v.equals("[A]"))
        .hasSize(1);
  }

  private static List<String> labels(Ranges plan, String distro) {
    List<LightingPapers.LabelRow> rows = plan.calculate().rows(LightingPapers.LABEL_ROW);
    int from = 0;
    while (!distro.equals(rows.get(from).place())) {
      from++;
    }
    int to = from;
    while (!rows.get(to).kind().isEmpty()) {
      to++;
    }
    return rows.subList(from, to).stream().map(LightingPapers.LabelRow::kind).toList();
  }
}
