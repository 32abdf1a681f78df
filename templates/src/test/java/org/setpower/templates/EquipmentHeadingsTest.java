package org.setpower.templates;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.setpower.text.MessageCatalog;

/** A heading of a kit list means one column, whatever language it is in. */
class EquipmentHeadingsTest {
  @Test
  void no_heading_of_one_language_means_something_else_in_another() {
    Map<String, String> meanings = new TreeMap<>();
    for (String line : EquipmentHeadings.lines()) {
      String[] texts = line.split("\t");
      assertThat(texts).as(line).hasSize(1 + MessageCatalog.LANGUAGES.size());
      for (String text : texts) {
        String before = meanings.put(text.toLowerCase(Locale.ROOT), texts[0]);
        assertThat(before).as(text).isIn(null, texts[0]);
      }
    }
    assertThat(meanings).containsKeys("item", "pack", "power");
  }
}
