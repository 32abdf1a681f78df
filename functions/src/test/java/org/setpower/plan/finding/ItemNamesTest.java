package org.setpower.plan.finding;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.setpower.plan.finding.ItemNames.Item;

/** Names of other files: found by any of them, never guessed between two. */
class ItemNamesTest {
  private static final Item BATTERY = new Item("camera pack 98 Wh", "P98; P 98, new ");
  private static final Item CABLE = new Item("cable 16 A 10 m", "lead; P98");
  private static final Item PANEL = new Item("panel", null);

  @Test
  void an_item_is_found_by_its_other_names_as_a_person_reads_them() {
    ItemNames names = new ItemNames(List.of(BATTERY, PANEL));
    assertThat(names.of("p98")).isEqualTo("camera pack 98 Wh");
    assertThat(names.of("P 98, NEW")).isEqualTo("camera pack 98 Wh");
    assertThat(names.of("Panel")).isEqualTo("Panel");
    assertThat(names.of("P150")).isEqualTo("P150");
  }

  @Test
  void a_name_of_two_items_is_neither_and_is_listed() {
    ItemNames names = new ItemNames(List.of(BATTERY, CABLE, new Item("lead", "panel"), PANEL));
    assertThat(names.of("P98")).isEqualTo("P98");
    assertThat(names.of("lead")).isEqualTo("lead");
    assertThat(names.of("panel")).isEqualTo("panel");
    assertThat(names.unclear(BATTERY)).containsExactly("P98");
    assertThat(names.unclear(CABLE)).containsExactly("lead", "P98");
    assertThat(names.unclear(PANEL)).isEmpty();
  }

  @Test
  void a_name_is_added_once() {
    assertThat(ItemNames.with(null, " P98 ")).isEqualTo("P98");
    assertThat(ItemNames.with("P98", "p 98")).isEqualTo("P98");
    assertThat(ItemNames.with("P98;lead", "cable, 10 m")).isEqualTo("P98; lead; cable, 10 m");
  }
}
