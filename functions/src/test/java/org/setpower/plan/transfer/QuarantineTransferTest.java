package org.setpower.plan.transfer;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;

import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.setpower.plan.common.Ranges;
import org.setpower.plan.register.RegisterPlan;

/**
 * What the register holds back is held back in the files that take batteries from it: the rules of
 * the register (Part 175 and ADR 376 on damaged batteries, common practice).
 */
class QuarantineTransferTest {
  private static final LocalDate DAY_ZERO = LocalDate.of(1899, 12, 30);
  private static final TransferOptions OPTIONS = new TransferOptions(false, false, w -> w);

  private static double day(String iso) {
    return LocalDate.parse(iso).toEpochDay() - DAY_ZERO.toEpochDay();
  }

  /** One that may go out, one dropped, one with an open incident. */
  private static TransferSource register() {
    Ranges ranges =
        Ranges.of(RegisterPlan.MODEL)
            .row("project", "asOf", day("2027-02-10"), "untested", "goes out")
            .row("types", "type", "P1", "chemistry", "Li-ion")
            .row("batteries", "serial", "A1", "type", "P1", "condition", "fine", "energy", 98)
            .row("batteries", "serial", "A2", "type", "P1", "condition", "dropped", "energy", 98)
            .row("batteries", "serial", "A3", "type", "P1", "condition", "fine", "energy", 98)
            .row("incidents", "serial", "A3", "happened", "wet", "date", day("2027-01-20"));
    for (int row = 1; row <= 3; row++) {
      ranges.set("batteries", row, "inspected", day("2027-02-01"), "inspectedBy", "bench");
    }
    return TransferSource.of(RegisterPlan.MODEL, ranges.list());
  }

  @Test
  void the_travel_list_gets_the_state_of_each_serial() {
    List<TransferBatch> batches = TransferWay.REGISTER_TO_TRAVEL.batches(register(), OPTIONS);
    assertThat(batches.get(0).rows())
        .extracting(r -> r.cells().get("battery"), r -> r.cells().get("register"))
        .containsExactly(
            tuple("A1", "not tested"), tuple("A2", "quarantine"), tuple("A3", "quarantine"));
    assertThat(batches.get(0).rows())
        .extracting(TransferRow::group)
        .containsExactly("", TransferRow.UNFIT, TransferRow.UNFIT);
  }

  @Test
  void the_stock_of_a_day_counts_only_what_may_go_out() {
    TransferBatch stock = TransferWay.REGISTER_TO_BATTERIES.batches(register(), OPTIONS).get(0);
    assertThat(stock.rows()).extracting(r -> r.cells().get("owned")).containsExactly(1.0);
    assertThat(stock.withheld()).containsExactly("A2", "A3");
  }
}
