package org.setpower.plan.lighting;

import static org.assertj.core.api.Assertions.assertThat;
import static org.setpower.plan.lighting.LightingSamples.quay;
import static org.setpower.plan.lighting.LightingSamples.stage;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.setpower.plan.common.PlanResult;
import org.setpower.plan.common.Ranges;
import org.setpower.plan.finding.Verdict;
import org.setpower.plan.lighting.distro.DistroAddition;
import org.setpower.plan.lighting.distro.DistroAddition.Order;
import org.setpower.plan.lighting.distro.DistroAddition.Refusal;
import org.setpower.plan.lighting.distro.DistroKind;
import org.setpower.plan.lighting.input.CableType;
import org.setpower.plan.lighting.input.MeasureSystem;
import org.setpower.plan.lighting.result.LightingResults;

/** A distro that is added with its outlets and its cable run is a plan without a stop. */
class DistroAdditionTest {
  /** With blank rows below, as a sheet has them. */
  private static List<Object> room(Ranges plan) {
    Ranges roomy = plan.copy();
    for (String table : List.of("supplies", "outlets", "runs")) {
      for (int i = 0; i < 6; i++) {
        roomy.rows(table).add(new LinkedHashMap<>());
      }
    }
    return roomy.list();
  }

  private static DistroKind kind(MeasureSystem units, String name) {
    return DistroKind.of(units).stream()
        .filter(k -> k.name().equals(name))
        .findFirst()
        .orElseThrow();
  }

  private static Order order(String name, DistroKind kind, String from) {
    return new Order(name, kind, from, 20.0, "", null);
  }

  private static Ranges added(Ranges plan, Order order) {
    DistroAddition addition = new DistroAddition(room(plan));
    assertThat(addition.refusal(order)).as(order.toString()).isEmpty();
    Ranges after = plan.copy();
    for (DistroAddition.NewRow row : addition.rows(order)) {
      List<Object> cells = new ArrayList<>();
      row.cells().forEach((key, cell) -> cells.addAll(List.of(key, cell)));
      after.row(row.table(), cells.toArray());
    }
    return after;
  }

  private static Ranges source(double amps) {
    Ranges plan = quay().set("project", 1, "rule", "VDE 0298-4");
    return plan.set("supplies", 1, "breaker", amps, "existing", "", "name", "main")
        .set("runs", 1, "from", "main");
  }

  /** A box of 32 A on a set of 125 A would be a stop at once. */
  @Test
  void a_place_of_its_size_is_offered_first() {
    Ranges plan =
        LightingSamples.feeder("30")
            .set("supplies", 1, "breaker", 125)
            .row("supplies", "name", "kiosk", "type", "utility", "system", "3PH", "breaker", 32);
    DistroAddition addition = new DistroAddition(room(plan));
    assertThat(addition.places(kind(MeasureSystem.METRIC, "32 A to 6 × 16 A")))
        .startsWith("kiosk")
        .containsExactlyInAnyOrderElementsOf(addition.places());
    assertThat(addition.places(kind(MeasureSystem.METRIC, "16 A to 4 household sockets")))
        .first()
        .matches(p -> p.startsWith("A-") || p.startsWith("B-"));
    // none of 63 A is free: 32 A is nearer than the source of 125 A
    assertThat(addition.places(kind(MeasureSystem.METRIC, "63 A to 6 × 16 A")))
        .startsWith("kiosk")
        .endsWith("quay");
  }

  @Test
  void every_usual_distro_on_its_source_is_without_a_stop() {
    Map<String, Double> mains =
        Map.of(
            "32 A to 6 × 16 A", 32.0,
            "63 A to 6 × 16 A", 63.0,
            "63 A to 32 A and 6 × 16 A", 63.0,
            "125 A to 2 × 63 A and 2 × 32 A", 125.0,
            "400 A to 2 × 125 A and 4 × 63 A", 400.0);
    for (DistroKind kind : DistroKind.of(MeasureSystem.METRIC)) {
      boolean small = !mains.containsKey(kind.name());
      Ranges plan = small ? quay() : source(mains.get(kind.name()));
      Ranges after = added(plan, order("N", kind, small ? "A-3" : "main"));
      PlanResult result = after.calculate();
      assertSound(kind, result, after);
    }
    for (DistroKind kind : DistroKind.of(MeasureSystem.US)) {
      boolean large = kind.supply().containsKey("breaker");
      Ranges plan = stage();
      if (kind.name().startsWith("60 A")) {
        plan.set("outlets", 1, "connector", "stage pin 60 A", "breaker", "60");
      }
      Ranges after = added(plan, order("N", kind, large ? "switch" : "D1-2"));
      assertSound(kind, after.calculate(), after);
    }
  }

  private static void assertSound(DistroKind kind, PlanResult result, Ranges plan) {
    int supply = plan.rows("supplies").size() - 1;
    int run = plan.rows("runs").size() - 1;
    LightingResults.RunResult cable = result.rows(LightingResults.RUN_RESULT).get(run);
    assertThat(cable.verdict()).as(kind.name() + cable.reasons()).isNotEqualTo(Verdict.STOP);
    LightingResults.SupplyResult box = result.rows(LightingResults.SUPPLY_RESULT).get(supply);
    assertThat(box.verdict()).as(kind.name() + box.reasons()).isNotEqualTo(Verdict.STOP);
    List<LightingResults.OutletResult> outlets = result.rows(LightingResults.OUTLET_RESULT);
    for (int i = outlets.size() - kind.outlets().size(); i < outlets.size(); i++) {
      assertThat(outlets.get(i).verdict())
          .as(kind.name() + outlets.get(i).reasons())
          .isNotEqualTo(Verdict.STOP);
    }
  }

  @Test
  void places_are_sources_and_outlets_that_nothing_is_plugged_into() {
    DistroAddition addition = new DistroAddition(room(quay()));
    assertThat(addition.places()).containsExactly("quay", "A-1", "A-3", "A-4", "A-5", "A-6");
    assertThat(addition.nextName()).isEqualTo("B");
    assertThat(new DistroAddition(room(LightingSamples.pans())).nextName()).isEqualTo("B1");
  }

  @Test
  void what_cannot_be_added_is_refused() {
    DistroAddition addition = new DistroAddition(room(quay()));
    DistroKind kind = kind(MeasureSystem.METRIC, "32 A to 6 × 16 A");
    assertThat(addition.refusal(order(" ", kind, "quay"))).contains(Refusal.NAME_BLANK);
    assertThat(addition.refusal(order(" a", kind, "quay"))).contains(Refusal.NAME_TAKEN);
    assertThat(addition.refusal(order("B", kind, "A-9"))).contains(Refusal.PLACE_UNKNOWN);
    assertThat(addition.refusal(order("B", kind, "A-1…3"))).contains(Refusal.PLACE_UNKNOWN);
    assertThat(addition.refusal(new Order("B", kind, "quay", null, "", null)))
        .contains(Refusal.LENGTH);
    assertThat(addition.refusal(new Order("B", kind, "quay", 0.0, "", null)))
        .contains(Refusal.LENGTH);
    assertThat(addition.refusal(new Order("B", kind, "quay", 5.0, "thick", null)))
        .contains(Refusal.SIZE);
    assertThat(new DistroAddition(quay().list()).refusal(order("B", kind, "quay")))
        .contains(Refusal.NO_ROOM);
    assertThat(
            new DistroAddition(room(quay().set("project", 1, "units", "")))
                .refusal(order("B", kind, "quay")))
        .contains(Refusal.UNITS_BLANK);
  }

  @Test
  void another_cable_than_the_usual_one_is_written_as_it_is_said() {
    DistroKind kind = kind(MeasureSystem.METRIC, "63 A to 6 × 16 A");
    Ranges after = added(quay(), new Order("B", kind, "quay", 40.0, "25 mm²", CableType.FEEDER));
    assertThat(after.rows("runs").get(1))
        .containsEntry("size", "25 mm²")
        .containsEntry("type", "feeder")
        .containsEntry("length", 40.0)
        .doesNotContainKey("cores");
  }
}
