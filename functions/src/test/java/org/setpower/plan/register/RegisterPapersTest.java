package org.setpower.plan.register;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Random;
import java.util.Set;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.setpower.plan.common.PlanResult;
import org.setpower.plan.common.RandomTables;
import org.setpower.plan.common.Ranges;
import org.setpower.plan.finding.CommonFinding;
import org.setpower.plan.finding.Verdict;

/** Papers, counts and proposals of random registers agree with the verdicts of Batteries. */
class RegisterPapersTest {
  private static final Set<Status> GOES_OUT = Set.of(Status.KEEP, Status.WATCH, Status.NOT_TESTED);

  private static Ranges random(int seed) {
    Ranges ranges =
        new RandomTables(RegisterPlan.MODEL, RegisterSamples::values, new Random(seed))
            .valid(1 + seed % 9);
    for (String table : List.of("batteries", "tests", "incidents")) {
      ranges.rows(table).forEach(r -> r.values().removeIf(""::equals));
    }
    if (seed % 3 > 0) {
      ranges.rows("incidents").clear();
    }
    if (seed % 2 > 0) {
      // most are in the house, where a slip may say yes
      ranges.rows("batteries").forEach(r -> r.remove("outTo"));
      ranges.rows("batteries").forEach(r -> r.remove("returned"));
      ranges.rows("batteries").forEach(r -> r.remove("backBy"));
      ranges.rows("batteries").forEach(r -> r.put("inspected", 46_480.0));
      ranges.rows("batteries").forEach(r -> r.put("inspectedBy", "bench"));
      ranges.rows("project").forEach(r -> r.put("inspectionDays", 400.0));
    }
    if (seed % 5 > 0) {
      // what is in has no day agreed for its return
      ranges.rows("batteries").stream()
          .filter(r -> !r.containsKey("outTo"))
          .forEach(r -> r.remove("backBy"));
    }
    if (seed % 4 > 0) {
      Set<Object> once = new HashSet<>();
      ranges.rows("types").removeIf(r -> !once.add(r.get("type")));
      ranges.rows("limits").clear();
    }
    return ranges;
  }

  private static List<RegisterResults.BatteryResult> batteries(PlanResult result) {
    return result.rows(RegisterResults.BATTERIES).stream().filter(Objects::nonNull).toList();
  }

  @Test
  void papers_and_counts_agree_with_the_gate() {
    int fit = 0;
    int slips = 0;
    for (int seed = 0; seed < 3500; seed++) {
      Ranges ranges = random(seed);
      PlanResult result = ranges.calculate();
      List<RegisterResults.BatteryResult> all = batteries(result);
      List<RegisterResults.BatteryResult> out =
          all.stream().filter(RegisterResults.BatteryResult::fit).toList();
      fit += out.size();
      for (RegisterResults.BatteryResult battery : all) {
        if (battery.fit()) {
          assertThat(battery.verdict()).isNotEqualTo(Verdict.STOP);
          assertThat(battery.status()).isIn(GOES_OUT);
        } else {
          assertThat(battery.status()).isNotIn(Status.KEEP, Status.WATCH);
          assertThat(battery.reasons()).isNotEmpty();
        }
      }
      List<RegisterResults.BatteryResult> house = notRetired(ranges, all, true);
      assertStocktake(result, house, all);
      assertCounts(result, notRetired(ranges, all, false), out.size());
      slips += assertSlip(ranges, result);
    }
    assertThat(fit).isGreaterThan(200);
    assertThat(slips).isGreaterThan(10);
  }

  /**
   * Retired ones are in no count, and on the list only while somebody has them; lost ones never.
   */
  private static List<RegisterResults.BatteryResult> notRetired(
      Ranges ranges, List<RegisterResults.BatteryResult> all, boolean orOut) {
    List<Map<String, Object>> rows = ranges.rows("batteries");
    return IntStream.range(0, all.size())
        .filter(i -> all.get(i).status() != Status.LOST)
        .filter(
            i -> !rows.get(i).containsKey("retired") || orOut && rows.get(i).containsKey("outTo"))
        .mapToObj(all::get)
        .toList();
  }

  private static void assertStocktake(
      PlanResult result,
      List<RegisterResults.BatteryResult> house,
      List<RegisterResults.BatteryResult> all) {
    assertThat(
            result.rows(RegisterResults.STOCKTAKE).stream()
                .map(r -> List.of(r.fit(), r.status(), r.verdict())))
        .containsExactlyInAnyOrderElementsOf(
            house.stream().map(b -> List.of(b.fit(), b.status(), b.verdict())).toList());
    long actions = all.stream().filter(b -> b.action() != null).count();
    // a serial that stands twice is one line where all that is said of it is the same
    boolean twice =
        all.stream()
            .flatMap(b -> b.reasons().stream())
            .anyMatch(f -> f.key() == CommonFinding.DOUBLE_IDENTITY);
    assertThat(result.rows(RegisterResults.ACTIONS))
        .hasSizeBetween((int) (twice ? Math.min(1, actions) : actions), (int) actions);
  }

  private static void assertCounts(
      PlanResult result, List<RegisterResults.BatteryResult> all, int fit) {
    RegisterResults.Summary summary = result.rows(RegisterResults.SUMMARY).get(0);
    assertThat(summary.batteries()).isEqualTo(all.size());
    assertThat(summary.fit()).isEqualTo(fit);
    assertThat(summary.withheld()).isEqualTo(all.size() - fit);
    int goes = (int) all.stream().filter(b -> b.status().compareTo(Status.WATCH) <= 0).count();
    assertThat(
            goes
                + summary.quarantine()
                + summary.retire()
                + summary.service()
                + summary.notInspected()
                + summary.notTested()
                + summary.unclear())
        .isEqualTo(all.size());
    List<RegisterResults.TypeResult> types =
        result.rows(RegisterResults.TYPES).stream().filter(Objects::nonNull).toList();
    boolean doubles = types.stream().anyMatch(t -> t.verdict() == Verdict.STOP) && types.size() > 1;
    if (!doubles) {
      // a fit battery has a known type, so it is counted once
      assertThat(types.stream().mapToInt(RegisterResults.TypeResult::fit).sum()).isEqualTo(fit);
    }
  }

  private static int assertSlip(Ranges ranges, PlanResult result) {
    List<Map<String, Object>> rows = ranges.rows("batteries");
    int out = 0;
    for (RegisterResults.Slip slip : result.rows(RegisterResults.SLIP)) {
      List<Integer> same =
          IntStream.range(0, rows.size())
              .filter(i -> slip.serial().equals(text(rows.get(i).get("serial"))))
              .boxed()
              .toList();
      assertThat(same).hasSize(1);
      assertThat(result.rows(RegisterResults.BATTERIES).get(same.get(0)).fit()).isTrue();
      out++;
    }
    assertThat(result.rows(RegisterResults.HANDOVER).get(0).out()).isEqualTo(out);
    return out;
  }

  private static String text(Object cell) {
    return cell instanceof Double d ? String.format(Locale.ROOT, "%.0f", d) : (String) cell;
  }

  /** Read from the typed cells alone: none of these may ever be fit. */
  @Test
  void nothing_dangerous_is_ever_fit() {
    int dangerous = 0;
    for (int seed = 0; seed < 6000; seed++) {
      Ranges ranges = random(seed);
      List<Map<String, Object>> rows = ranges.rows("batteries");
      List<RegisterResults.BatteryResult> results =
          ranges.calculate().rows(RegisterResults.BATTERIES);
      Set<Object> twice = new HashSet<>();
      rows.stream()
          .map(r -> r.get("serial"))
          .filter(s -> rows.stream().filter(o -> o.get("serial").equals(s)).count() > 1)
          .forEach(twice::add);
      for (int i = 0; i < rows.size(); i++) {
        if (isDangerous(ranges, rows.get(i)) || twice.contains(rows.get(i).get("serial"))) {
          dangerous++;
          assertThat(results.get(i).fit()).as("seed %s row %s", seed, i + 1).isFalse();
        }
      }
    }
    assertThat(dangerous).isGreaterThan(5000);
  }

  private static boolean isDangerous(Ranges ranges, Map<String, Object> battery) {
    Object serial = battery.get("serial");
    boolean openIncident =
        ranges.rows("incidents").stream()
            .filter(i -> !i.containsKey("lastSerial") && serial.equals(i.get("serial")))
            .filter(i -> !i.containsKey("type") || i.get("type").equals(battery.get("type")))
            .anyMatch(i -> !i.containsKey("closed") || "hot".equals(i.get("happened")));
    boolean recalled =
        ranges.rows("incidents").stream()
            .filter(i -> !i.containsKey("serial") && !i.containsKey("lastSerial"))
            .anyMatch(i -> battery.get("type").equals(i.get("type")) && !i.containsKey("reason"));
    boolean deepCell =
        ranges.rows("tests").stream()
            .filter(t -> serial.equals(t.get("serial")))
            .flatMap(t -> t.entrySet().stream())
            .anyMatch(
                e -> e.getKey().startsWith("cell") && List.of(1.2, 3.6).contains(e.getValue()));
    boolean excused =
        ranges.rows("incidents").stream().anyMatch(i -> i.containsKey("closed"))
            || ranges.rows("types").stream().anyMatch(t -> "NiMH".equals(t.get("chemistry")));
    return !"fine".equals(battery.get("condition"))
        || battery.containsKey("retired")
        || openIncident
        || recalled
        || deepCell && !excused;
  }

  @Test
  void one_more_incident_never_makes_a_battery_fit() {
    for (int seed = 0; seed < 1500; seed++) {
      Ranges ranges = random(seed);
      Ranges more = ranges.copy();
      more.row("incidents", "serial", "A-01", "happened", "wet", "date", 46_300.0);
      List<RegisterResults.BatteryResult> before =
          ranges.calculate().rows(RegisterResults.BATTERIES);
      List<RegisterResults.BatteryResult> after = more.calculate().rows(RegisterResults.BATTERIES);
      for (int i = 0; i < before.size(); i++) {
        assertThat(after.get(i).fit() && !before.get(i).fit()).isFalse();
        assertThat(after.get(i).verdict()).isGreaterThanOrEqualTo(before.get(i).verdict());
      }
    }
  }

  /** The help of each setting says what a blank means; it means that. */
  @Test
  void a_blank_setting_is_the_figure_that_its_help_names() {
    for (int seed = 0; seed < 500; seed++) {
      Ranges blank = random(seed);
      Object asOf = blank.rows("project").get(0).get("asOf");
      blank.rows("project").get(0).clear();
      blank.set("project", 1, "asOf", asOf);
      blank.rows("limits").clear();
      Ranges typed = blank.copy();
      typed.set("project", 1, "temperatureUnit", "°C", "coldestTest", 15, "warmestTest", 30);
      typed.set("project", 1, "rest", 1, "maxLoad", 0.5, "validDays", 180, "untested", "hold");
      typed.set("project", 1, "retireBelow", 0.8, "watchBelow", 0.85);
      typed.row("limits", "chemistry", "Li-ion", "maxSpread", 0.05, "maxResistance", 1.5);
      typed.set("limits", 1, "maxApart", 0.3);
      assertThat(typed.calculate().rows(RegisterResults.BATTERIES))
          .isEqualTo(blank.calculate().rows(RegisterResults.BATTERIES));
    }
  }

  @Test
  void a_blank_register_is_answered() {
    PlanResult result = Ranges.of(RegisterPlan.MODEL).calculate();
    assertThat(result.faults()).isEmpty();
    assertThat(result.rows(RegisterResults.SUMMARY).get(0).batteries()).isZero();
    assertThat(result.rows(RegisterResults.ISSUES).get(0).verdict()).isEqualTo(Verdict.STOP);
  }
}
