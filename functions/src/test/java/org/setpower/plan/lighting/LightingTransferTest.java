package org.setpower.plan.lighting;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.setpower.plan.common.Ranges;
import org.setpower.plan.transfer.TransferBatch;
import org.setpower.plan.transfer.TransferOptions;
import org.setpower.plan.transfer.TransferRow;
import org.setpower.plan.transfer.TransferSource;
import org.setpower.plan.transfer.TransferWay;

/** What a lighting power plan has for quote and budget, worked out by hand. */
class LightingTransferTest {
  private static TransferBatch batch(TransferWay way, Ranges plan, boolean onlyShort) {
    TransferSource source = TransferSource.of(LightingModel.MODEL, plan.list());
    return way.batches(source, new TransferOptions(onlyShort, true, w -> w)).get(0);
  }

  private static List<Object> values(TransferBatch batch, String... keys) {
    return batch.rows().stream()
        .map(TransferRow::cells)
        .map(c -> (Object) List.of(keys).stream().map(c::get).toList())
        .toList();
  }

  @Test
  void the_order_list_becomes_rows_of_a_quote() {
    TransferBatch batch = batch(TransferWay.LIGHTING_TO_QUOTE, LightingSamples.quay(), false);
    assertThat(values(batch, "item", "section", "qty"))
        .containsExactlyInAnyOrder(
            List.of("LED 1600", "lighting", 1.0),
            List.of("distro 63 A, 1–6: IEC 60309 16 A 3-pin", "power", 1.0),
            List.of("cable rubber, 5 × 16 mm², 25 m, IEC 60309 63 A 5-pin", "power", 1.0));
    assertThat(batch.withheld()).isEmpty();
  }

  /** Two distros alike are two pieces of one item, whatever they are called on set. */
  @Test
  void distros_alike_are_one_item() {
    Ranges plan =
        LightingSamples.quay()
            .row("supplies", "name", "B", "type", "distro", "system", "3PH", "breaker", 63)
            .row("outlets", "distro", "B", "numbers", "1–6", "connector", "IEC 60309 16 A 3-pin");
    assertThat(values(batch(TransferWay.LIGHTING_TO_QUOTE, plan, false), "item", "qty"))
        .contains(List.of("distro 63 A, 1–6: IEC 60309 16 A 3-pin", 2.0));
  }

  @Test
  void what_is_in_stock_is_not_short() {
    Ranges plan = LightingSamples.quay().set("equipment", 1, "stock", 1);
    assertThat(values(batch(TransferWay.LIGHTING_TO_QUOTE, plan, true), "item"))
        .doesNotContain(List.of("LED 1600"))
        .hasSize(2);
  }

  @Test
  void a_load_that_is_a_stop_is_listed_and_not_brought_in() {
    Ranges plan = LightingSamples.quay().row("loads", "item", "crane", "place", "Z-9");
    TransferBatch batch = batch(TransferWay.LIGHTING_TO_QUOTE, plan, false);
    assertThat(batch.withheld()).containsExactly("crane (#2)");
    assertThat(values(batch, "item")).noneMatch(v -> v.toString().contains("crane")).hasSize(3);
    plan.set("loads", 2, "quantity", 3);
    assertThat(batch(TransferWay.LIGHTING_TO_QUOTE, plan, false).withheld())
        .containsExactly("crane × 3 (#2)");
  }

  /** A splitter and batteries are no cable: they have neither cores nor size. */
  @Test
  void a_splitter_keeps_its_name() {
    Ranges plan = LightingSamples.quay().row("loads", "item", "LED 1600", "place", "A-2");
    assertThat(values(batch(TransferWay.LIGHTING_TO_QUOTE, plan, false), "item"))
        .contains(List.of("splitter IEC 60309 16 A 3-pin, 1 to 2"));
  }

  /** 1600 W from call at 07:00 to wrap at 18:00: 17.6 kWh. */
  @Test
  void energy_of_a_supply_becomes_a_count() {
    TransferBatch batch = batch(TransferWay.LIGHTING_TO_BUDGET, LightingSamples.quay(), false);
    assertThat(batch.rows())
        .extracting(TransferRow::cells)
        .containsExactly(Map.of("count", "quay: energy, kWh", "value", 17.6, "inAll", "yes"));
  }

  /** 45 min before call to 30 min after wrap, off for an hour and a half: 12.25 h and 10.75 h. */
  @Test
  void hours_of_a_generator_with_and_without_those_off_for_sound() {
    Ranges plan =
        LightingSamples.quay()
            .set("supplies", 1, "type", "generator", "existing", "")
            .row("generators", "name", "quay", "kva", 25, "before", 45, "after", 30)
            .set("generators", 1, "bond", "at generator", "altitude", 5)
            .set("generators", 1, "offFrom", 12 / 24.0, "offTo", 13.5 / 24);
    TransferBatch batch = batch(TransferWay.LIGHTING_TO_BUDGET, plan, false);
    assertThat(batch.withheld()).isEmpty();
    assertThat(values(batch, "count", "value"))
        .contains(List.of("quay: running time, h", 10.75), List.of("quay: hours on site, h", 12.25))
        .anyMatch(v -> v.toString().startsWith("[quay: fuel, L, "));
  }
}
