package org.setpower.plan.lighting;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.setpower.plan.lighting.LightingPlans.load;
import static org.setpower.plan.lighting.LightingPlans.order;
import static org.setpower.plan.lighting.LightingSamples.outletRow;
import static org.setpower.plan.lighting.LightingSamples.quay;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.setpower.plan.common.Ranges;
import org.setpower.plan.lighting.result.LightingPapers;

/** Legs of lamps on outlets with more than one: on paper, as suggested, as adaptors are wired. */
class LightingLegsTest {
  private static Ranges fivePins(String numbers, int amps) {
    String connector = "IEC 60309 " + amps + " A 5-pin";
    return quay()
        .set("equipment", 1, "plug", "IEC 60309 16 A 3-pin")
        .row("outlets", outletRow("A", numbers, connector, "" + amps, "curve", "B", "rcd", "30"));
  }

  private static LightingPapers.PlaceRow place(Ranges plan, String name) {
    return plan.calculate().rows(LightingPapers.PLACE_ROW).stream()
        .filter(p -> p.place().equals(name))
        .findFirst()
        .orElseThrow();
  }

  @Test
  void the_leg_of_a_lamp_on_five_pins_stands_on_labels_and_in_the_order() {
    Ranges plan = fivePins("7", 32).row("loads", "item", "LED 1600", "place", "A-7", "leg", "L3");
    assertThat(place(plan, "A-7").legs()).isEqualTo("L3");
    assertThat(plan.calculate().rows(LightingPapers.LABEL_ROW))
        .filteredOn(l -> "A-7".equals(l.place()))
        .extracting(LightingPapers.LabelRow::legs)
        .containsExactly("L3");
    assertThat(order(plan))
        .extracting(LightingPapers.OrderRow::what)
        .contains("IEC 60309 32 A 5-pin to IEC 60309 16 A 3-pin, L3");
  }

  @Test
  void pieces_of_a_row_are_suggested_on_several_legs() {
    Ranges two = fivePins("7", 32).row("loads", "item", "LED 1600", "place", "A-7", "quantity", 2);
    assertThat(load(two, 2).legUsed().split(", ")).hasSize(2);
    Ranges five = fivePins("7", 32).row("loads", "item", "LED 1600", "place", "A-7", "quantity", 5);
    assertThat(load(five, 2).legUsed()).isEqualTo("L1, L2, L3");
    // 5 × 1600 W on three legs: two pieces on the highest
    assertThat(load(five, 2).amps()).isCloseTo(2 * load(two, 2).amps(), within(0.2));
  }

  /** L3 of the source carries least, and L3 of the outlet's breaker is full. */
  @Test
  void a_leg_whose_breaker_is_full_is_not_suggested() {
    Ranges plan =
        fivePins("7–8", 16)
            .row("equipment", "item", "big", "watts", 3000, "powerFactor", 1, "inrush", "tungsten")
            .row("loads", "item", "big", "place", "A-8", "leg", "L1")
            .row("loads", "item", "big", "place", "A-8", "leg", "L2")
            .row("loads", "item", "LED 1600", "place", "A-1")
            .row("loads", "item", "LED 1600", "place", "A-2")
            .row("loads", "item", "big", "place", "A-7", "leg", "L3")
            .row("loads", "item", "LED 1600", "place", "A-7");
    assertThat(load(plan, 7).legUsed()).isNotEqualTo("L3");
  }

  /** Two hots, neutral and earth: common practice. */
  @Test
  void an_outlet_of_four_wires_takes_two_legs() {
    Ranges plan =
        LightingSamples.stage()
            .row("outlets", outletRow("D1", "20", "4-wire 50 A", "50"))
            .row("loads", "item", "tungsten 5 kW", "place", "D1-20");
    assertThat(load(plan, 7).legUsed()).isEqualTo("L1-L2");
  }

  @Test
  void an_rcd_may_be_of_a_type_and_delayed() {
    for (String type : List.of("S", "A S", "B S")) {
      Ranges plan = quay().set("supplies", 1, "rcdType", type);
      assertThat(LightingPlans.supply(plan, 1).reasons())
          .as(type)
          .isEqualTo(LightingPlans.supply(quay(), 1).reasons());
    }
    Ranges quick = quay().set("supplies", 1, "rcdType", "A");
    assertThat(LightingPlans.supply(quick, 1).reasons())
        .isNotEqualTo(LightingPlans.supply(quay(), 1).reasons());
  }
}
