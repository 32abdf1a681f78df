package org.setpower.plan.register;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.setpower.plan.common.PlanResult;
import org.setpower.plan.common.Ranges;
import org.setpower.plan.transfer.TransferBatch;
import org.setpower.plan.transfer.TransferOptions;
import org.setpower.plan.transfer.TransferRow;
import org.setpower.plan.transfer.TransferSource;
import org.setpower.plan.transfer.TransferWay;
import org.setpower.plan.travel.TravelPlan;

/** What a register has for the stock of a battery plan and for a travel list. */
class RegisterTransferTest {
  private static Ranges four() {
    Ranges register = RegisterSamples.sound().set("batteries", 1, "un383", "yes");
    RegisterSamples.add(register, "P1-02", 92, 55);
    RegisterSamples.add(register, "P1-03", 92, 55);
    RegisterSamples.add(register, "P1-04", 92, 55);
    register.set("batteries", 2, "condition", "swollen");
    register.set("batteries", 3, "outTo", "another job");
    return register
        .row("incidents", "serial", "P1-04", "happened", "recalled")
        .set("incidents", 1, "date", RegisterSamples.day("2027-02-01"));
  }

  private static TransferBatch batch(TransferWay way, Ranges register) {
    TransferSource source = TransferSource.of(RegisterPlan.MODEL, register.list());
    return way.batches(source, TransferOptions.USUAL).get(0);
  }

  /** Of four one is swollen, one out, one recalled. */
  @Test
  void only_what_may_go_out_and_is_in_counts_as_stock() {
    TransferBatch batch = batch(TransferWay.REGISTER_TO_BATTERIES, four());
    assertThat(batch.rows())
        .extracting(TransferRow::cells)
        .containsExactly(Map.of("type", "P1", "owned", 1.0));
    assertThat(batch.withheld()).containsExactly("P1-02", "P1-03", "P1-04");
  }

  @Test
  void every_serial_comes_with_its_state() {
    List<TransferRow> rows = batch(TransferWay.REGISTER_TO_TRAVEL, four()).rows();
    assertThat(rows).hasSize(4);
    assertThat(rows.get(0).cells())
        .containsEntry("battery", "P1-01")
        .containsEntry("type", "P1")
        .containsEntry("energy", 98.0)
        .containsEntry("chemistry", "Li-ion")
        .containsEntry("condition", "fine")
        .containsEntry("un383", "yes");
    assertThat(rows.get(1).cells())
        .containsEntry("condition", "swollen")
        .containsEntry("register", "quarantine")
        .doesNotContainKey("un383");
    assertThat(rows.get(3).cells()).containsEntry("register", "quarantine");
    assertThat(rows)
        .extracting(TransferRow::group)
        .containsExactly("", TransferRow.UNFIT, "", TransferRow.UNFIT);
  }

  /** What is in quarantine in the register is a stop in the travel list. */
  @Test
  void quarantined_and_recalled_serials_stop_in_the_travel_list() {
    Ranges travel = Ranges.of(TravelPlan.MODEL);
    for (TransferRow row : batch(TransferWay.REGISTER_TO_TRAVEL, four()).rows()) {
      travel.row("batteries");
      row.cells().forEach((k, v) -> travel.set("batteries", travel.rows("batteries").size(), k, v));
    }
    PlanResult result = travel.calculate();
    List<Map<String, Object>> verdicts = result.cells("batteries");
    assertThat(verdicts.get(1).get("verdict")).hasToString("STOP");
    assertThat(verdicts.get(3).get("verdict")).hasToString("STOP");
  }

  /** Nobody packs a lost battery, and a cracked one does not fly. */
  @Test
  void lost_ones_stay_behind_and_cracked_ones_stop() {
    Ranges register = RegisterSamples.sound().set("batteries", 1, "condition", "lost");
    RegisterSamples.add(register, "P1-02", 92, 55).set("batteries", 2, "condition", "cracked");
    TransferBatch batch = batch(TransferWay.REGISTER_TO_TRAVEL, register);
    assertThat(batch.withheld()).containsExactly("P1-01");
    assertThat(batch.rows()).extracting(r -> r.cells().get("condition")).containsExactly("cracked");
    assertThat(batch(TransferWay.REGISTER_TO_BATTERIES, register).withheld())
        .containsExactly("P1-02");
    Ranges travel = Ranges.of(TravelPlan.MODEL);
    travel.row("batteries");
    batch.rows().get(0).cells().forEach((k, v) -> travel.set("batteries", 1, k, v));
    assertThat(travel.calculate().cells("batteries").get(0).get("reasons").toString())
        .contains("DAMAGED");
  }

  /** A serial that stands twice is in quarantine, and comes once. */
  @Test
  void a_serial_that_stands_twice_comes_once() {
    Ranges register = RegisterSamples.sound();
    RegisterSamples.add(register, "P1-01", 92, 55);
    assertThat(batch(TransferWay.REGISTER_TO_TRAVEL, register).rows())
        .extracting(r -> r.cells().get("register"))
        .containsExactly("quarantine");
  }
}
