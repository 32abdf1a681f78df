package org.setpower.plan;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.setpower.addin.SharedOffice;
import org.setpower.office.Office;
import org.setpower.plan.register.RegisterPlan;

/** A plan's function in a document. */
@ExtendWith(SharedOffice.class)
class PlanCarrierIT {
  @Test
  void a_sheet_shows_what_the_plan_gives(Office office) throws Exception {
    PlanDocument plan = PlanDocument.of(office, RegisterPlan.MODEL, 8, 8);
    plan.type("project", "asOf", 1, 46_428).type("types", "type", 1, "P1");
    plan.type("types", "chemistry", 1, "Li-ion");
    plan.type("batteries", "serial", 1, "P1-01").type("batteries", "type", 1, "P1");
    plan.type("batteries", "condition", 1, "swollen");
    assertThat(plan.status()).isEqualTo("ok ");
    assertThat(plan.shown("batteries", "verdict", 1)).isEqualTo("stop");
    assertThat(plan.shown("batteries", "verdict", 2)).isEmpty();
    plan.close();
  }
}
