package org.setpower.plan.batteryday;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.setpower.plan.common.Ranges;
import org.setpower.plan.finding.ItemNames;
import org.setpower.plan.transfer.TransferBatch;
import org.setpower.plan.transfer.TransferOptions;
import org.setpower.plan.transfer.TransferRow;
import org.setpower.plan.transfer.TransferSource;
import org.setpower.plan.transfer.TransferWay;

/** What a battery plan has for a quote. */
class BatteryTransferTest {
  private static TransferBatch batch(Ranges plan, boolean onlyShort) {
    TransferSource source = TransferSource.of(BatteryDayPlan.MODEL, plan.list());
    return TransferWay.BATTERIES_TO_QUOTE
        .batches(source, new TransferOptions(onlyShort, false, w -> w))
        .get(0);
  }

  private static List<Map<String, Object>> cells(Ranges plan, boolean onlyShort) {
    return batch(plan, onlyShort).rows().stream().map(TransferRow::cells).toList();
  }

  @Test
  void hired_batteries_and_chargers_by_piece() {
    Ranges plan = BatteryDaySamples.camera().set("stock", 1, "owned", 2, "hired", 5);
    BatteryDaySamples.charger(plan, "charger 1", "P294", 4, 3);
    BatteryDaySamples.charger(plan, "charger 2", "P294", 4, 3);
    assertThat(cells(plan, false))
        .containsExactly(
            Map.of("item", "P294", "section", "batteries", "qty", 5.0),
            Map.of("item", "charger", "section", "batteries", "qty", 2.0),
            Map.of("item", "camera A", "qty", 1.0));
  }

  /** A position of 8 with one lamp at each is 8 lamps; a position with a power is a device. */
  @Test
  void devices_come_by_position_and_by_the_names_of_the_quote() {
    Ranges plan =
        BatteryDaySamples.camera()
            .row("positions", "position", "tubes", "volts", 24, "type", "P294", "quantity", 8)
            .row("devices", "device", "LED tube", "position", "tubes", "watts", 50)
            .row("devices", "device", "video link", "position", "camera A", "watts", 14)
            .row("devices", "device", "lost", "position", "nowhere", "watts", 14);
    ItemNames names =
        new ItemNames(
            List.of(
                new ItemNames.Item("tube 4 ft", "LED tube; tube light"),
                new ItemNames.Item("camera", "camera A")));
    TransferSource source = TransferSource.of(BatteryDayPlan.MODEL, plan.list());
    TransferBatch batch =
        TransferWay.BATTERIES_TO_QUOTE
            .batches(source, TransferOptions.USUAL.with(names::of))
            .get(0);
    assertThat(batch.rows())
        .filteredOn(r -> r.group().equals(TransferRow.DEVICE))
        .extracting(r -> r.cells().get("item") + " " + r.cells().get("qty"))
        .containsExactly("camera 1.0", "tube 4 ft 8.0", "video link 1.0");
    assertThat(batch.withheld()).containsExactly("#4");
  }

  /** 92 W for 10 h and one battery of 294 Wh: four at least, so three or more are short. */
  @Test
  void what_is_short_is_no_decision_and_comes_only_when_it_is_asked_for() {
    Ranges plan = BatteryDaySamples.camera().set("stock", 1, "owned", "", "hired", 1);
    assertThat(cells(plan, false).get(0)).containsEntry("qty", 1.0);
    Object missing = cells(plan, true).get(0).get("qty");
    assertThat((Double) missing).isGreaterThanOrEqualTo(3);
  }

  @Test
  void a_row_that_cannot_be_read_is_listed() {
    Ranges plan = BatteryDaySamples.camera().set("stock", 1, "hired", "many");
    assertThat(batch(plan, false).withheld()).containsExactly("P294");
  }
}
