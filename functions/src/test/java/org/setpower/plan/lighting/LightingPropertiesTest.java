package org.setpower.plan.lighting;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.setpower.plan.common.Answer;
import org.setpower.plan.common.EnglishMessages;
import org.setpower.plan.common.InputColumn;
import org.setpower.plan.common.InputTable;
import org.setpower.plan.common.PlanResult;
import org.setpower.plan.common.RandomTables;
import org.setpower.plan.common.Ranges;
import org.setpower.plan.common.ResultColumn;
import org.setpower.plan.common.ResultTable;
import org.setpower.plan.finding.Verdict;
import org.setpower.plan.lighting.input.ProjectTables;
import org.setpower.plan.lighting.result.LightingPapers;
import org.setpower.plan.lighting.result.LightingResults;

/** What holds for every lighting plan. */
class LightingPropertiesTest {
  private static final int BLOCK = 120;
  private static final EnglishMessages ENGLISH = new EnglishMessages();
  private static final Set<String> UNITS =
      Set.of(
          ProjectTables.LENGTH,
          ProjectTables.TEMPERATURE,
          ProjectTables.VOLUME,
          ProjectTables.CONSUMPTION);

  private static List<Ranges> plans(int random) {
    List<Ranges> plans = new ArrayList<>();
    plans.add(LightingSamples.quay());
    plans.add(LightingSamples.pans());
    plans.add(LightingSamples.faults());
    for (int i = 0; i < random; i++) {
      Ranges plan =
          new RandomTables(LightingModel.MODEL, LightingSamples::values, new Random(i)).valid(8);
      plan.set("project", 1, "units", "metric");
      plans.add(plan);
    }
    return plans;
  }

  // Units: the same job in metric and US units is the same plan.

  private static Object converted(String unit, Object cell) {
    if (!(cell instanceof Double value)) {
      return cell;
    }
    return switch (unit) {
      // international foot, degree Fahrenheit, US gallon of 231 cubic inches
      case ProjectTables.LENGTH -> value / 0.3048;
      case ProjectTables.TEMPERATURE -> value * 9 / 5 + 32;
      default -> value / 3.785411784;
    };
  }

  private static Ranges inUsUnits(Ranges metric) {
    Ranges us = metric.copy();
    for (InputTable<?> table : LightingModel.MODEL.inputs()) {
      for (InputColumn column : table.columns()) {
        if (UNITS.contains(column.unit())) {
          for (Map<String, Object> row : us.rows(table.key())) {
            row.computeIfPresent(column.key(), (k, cell) -> converted(column.unit(), cell));
          }
        }
      }
    }
    for (Map<String, Object> row : us.rows("runs")) {
      row.remove("pieces");
    }
    for (Map<String, Object> row : us.rows("generators")) {
      row.remove("fuelPrice");
    }
    return us;
  }

  /** Blanks that mean another figure in the other system are filled in. */
  private static Ranges decided(Ranges plan) {
    Ranges decided = plan.copy();
    for (Map<String, Object> row : decided.rows("supplies")) {
      row.put("volts", 400.0);
    }
    for (Map<String, Object> row : decided.rows("runs")) {
      row.remove("pieces");
    }
    for (Map<String, Object> row : decided.rows("generators")) {
      row.remove("fuelPrice");
    }
    for (Map<String, Object> row : decided.rows("outlets")) {
      row.put("rcd", "30");
    }
    return decided;
  }

  @Test
  void the_same_job_in_metric_and_us_units_is_the_same_plan() {
    int compared = 0;
    for (Ranges plan : plans(60)) {
      Ranges metric = decided(plan);
      Ranges us = inUsUnits(metric).set("project", 1, "units", "US");
      PlanResult one = metric.calculate();
      PlanResult other = us.calculate();
      for (ResultTable<?> table : LightingModel.MODEL.results()) {
        if (List.of("order", "pull").contains(table.key())) {
          continue;
        }
        for (ResultColumn column : table.columns()) {
          compared += assertSame(column, one, other);
        }
      }
    }
    assertThat(compared).isGreaterThan(2000);
  }

  @Test
  void units_that_are_not_confirmed_yet_are_the_same_plan_with_one_more_check() {
    int compared = 0;
    for (Ranges plan : plans(20)) {
      Ranges us = inUsUnits(decided(plan)).set("project", 1, "units", "US");
      PlanResult one = us.calculate();
      PlanResult other =
          us.copy().set("project", 1, "units", "US (figures are ft, °F, US gal)").calculate();
      for (ResultTable<?> table : LightingModel.MODEL.results()) {
        if (!List.of("project", "issues", "summary").contains(table.key())) {
          for (ResultColumn column : table.columns()) {
            assertThat(block(other, column)).as(column.path()).isEqualTo(block(one, column));
            compared++;
          }
        }
      }
      LightingPapers.Summary late = other.rows(LightingPapers.SUMMARY).get(0);
      assertThat(late.checks()).isEqualTo(one.rows(LightingPapers.SUMMARY).get(0).checks() + 1);
      assertThat(late.verdict()).isNotEqualTo(Verdict.OK);
    }
    assertThat(compared).isGreaterThan(2000);
  }

  private static int assertSame(ResultColumn column, PlanResult one, PlanResult other) {
    Object[][] metric = block(one, column);
    Object[][] us = block(other, column);
    int figures = 0;
    for (int r = 1; r < metric.length; r++) {
      Object cell = metric[r][0];
      if (UNITS.contains(column.unit())) {
        cell = converted(column.unit(), cell);
      }
      if (column.path().equals("plugging.cable")) { // names, sizes and, in either unit, lengths
        cell = withoutLengths(cell);
        us[r][0] = withoutLengths(us[r][0]);
      }
      if (cell instanceof Double value) {
        figures++;
        assertThat(us[r][0]).as(column.path() + " row " + r).isInstanceOf(Double.class);
        assertThat((Double) us[r][0])
            .as(column.path() + " row " + r)
            .isCloseTo(value, within(1e-6 * Math.max(1, Math.abs(value))));
      } else if (column.type() != List.class) {
        assertThat(us[r][0]).as(column.path() + " row " + r).isEqualTo(cell);
      }
    }
    return figures;
  }

  private static Object withoutLengths(Object text) {
    return text.toString().replaceAll("[\\d.,]+ (m|ft)\\b", "#");
  }

  private static Object[][] block(PlanResult plan, ResultColumn column) {
    return plan.matrix(new Answer(List.of(column.path()), BLOCK), ENGLISH, Locale.ENGLISH);
  }

  // One more load.

  @Test
  void one_more_load_never_lowers_a_peak_or_a_verdict() {
    int higher = 0;
    for (Ranges plan : plans(80)) {
      Ranges more = plan.copy();
      more.row(
          "equipment",
          "item",
          "one more",
          "watts",
          900,
          "harmonic",
          0,
          "powerFactor",
          1,
          "inrush",
          "electronic");
      more.row("loads", "item", "one more", "place", "A-1");
      PlanResult before = plan.calculate();
      PlanResult after = more.calculate();
      List<LightingResults.SupplyResult> supplies = before.rows(LightingResults.SUPPLY_RESULT);
      for (int i = 0; i < supplies.size(); i++) {
        LightingResults.SupplyResult one = supplies.get(i);
        LightingResults.SupplyResult other = after.rows(LightingResults.SUPPLY_RESULT).get(i);
        if (one != null && one.amps1() != null && !hasOpenLegs(plan) && isOneSided(plan)) {
          assertThat(other.amps1()).isGreaterThanOrEqualTo(one.amps1() - 1e-9);
          higher += other.amps1() > one.amps1() ? 1 : 0;
        }
        if (one != null && one.verdict() == Verdict.STOP) {
          assertThat(other.verdict()).isEqualTo(Verdict.STOP);
        }
      }
      Verdict was = before.rows(LightingPapers.SUMMARY).get(0).verdict();
      assertThat(after.rows(LightingPapers.SUMMARY).get(0).verdict()).isGreaterThanOrEqualTo(was);
    }
    assertThat(higher).isPositive();
  }

  /** A suggestion may change with one more load; a decision does not. */
  private static boolean hasOpenLegs(Ranges plan) {
    return plan.calculate().rows(LightingResults.LOAD_RESULT).stream()
        .anyMatch(
            l ->
                l != null
                    && l.reasons().stream()
                        .anyMatch(f -> f.key().key().equals("lighting.load.legOpen")));
  }

  /** A pair or a leading load can cancel part of a leg by vectors, rightly. */
  private static boolean isOneSided(Ranges plan) {
    return plan.rows("equipment").stream()
        .allMatch(e -> !"line-line".equals(e.get("connection")) && !"yes".equals(e.get("leading")));
  }

  // Without its cable nothing is ok.

  @Test
  void removing_a_cable_never_leaves_what_hangs_on_it_ok() {
    int removed = 0;
    for (Ranges plan : plans(60)) {
      for (int r = 0; r < plan.rows("runs").size(); r++) {
        Ranges without = plan.copy();
        Object end = without.rows("runs").remove(r).get("to");
        boolean again =
            without.rows("runs").stream().anyMatch(o -> String.valueOf(end).equals(o.get("to")));
        if (again) {
          continue;
        }
        List<LightingResults.LoadResult> loads =
            without.calculate().rows(LightingResults.LOAD_RESULT);
        for (int i = 0; i < loads.size(); i++) {
          String place = String.valueOf(plan.rows("loads").get(i).get("place"));
          if (place.equals(end) || place.startsWith(end + "-")) {
            removed++;
            boolean source =
                plan.rows("supplies").stream()
                    .anyMatch(s -> end.equals(s.get("name")) && !"distro".equals(s.get("type")));
            assertThat(source || loads.get(i).verdict() == Verdict.STOP)
                .as(plan + " without " + end)
                .isTrue();
          }
        }
      }
    }
    assertThat(removed).isGreaterThan(20);
  }

  // Papers.

  @Test
  void papers_print_only_what_is_fit_and_count_what_they_withhold() {
    int withheld = 0;
    for (Ranges plan : plans(80)) {
      PlanResult result = plan.calculate();
      LightingPapers.Summary summary = result.rows(LightingPapers.SUMMARY).get(0);
      long fitRuns =
          result.rows(LightingResults.RUN_RESULT).stream()
              .filter(r -> r != null && r.fit())
              .count();
      assertThat(result.rows(LightingPapers.PULL_ROW)).hasSize((int) fitRuns);
      assertThat(summary.runsFit()).isEqualTo((int) fitRuns);
      assertThat(result.rows(LightingPapers.PULL_ROW)).allMatch(r -> r.verdict() != Verdict.STOP);
      long fitLoads =
          result.rows(LightingResults.LOAD_RESULT).stream()
              .filter(r -> r != null && r.fit())
              .count();
      assertThat(summary.loadsFit()).isEqualTo((int) fitLoads);
      assertThat(result.rows(LightingPapers.PLUGGING_ROW).size())
          .isLessThanOrEqualTo((int) fitLoads);
      assertThat(result.rows(LightingPapers.PLUGGING_ROW))
          .allMatch(r -> r.verdict() != Verdict.STOP);
      assertThat(summary.loadsFit() + summary.loadsWithheld())
          .isEqualTo(
              (int)
                  result.rows(LightingResults.LOAD_RESULT).stream().filter(r -> r != null).count());
      withheld += summary.loadsWithheld() + summary.runsWithheld();
    }
    assertThat(withheld).isPositive();
  }
}
