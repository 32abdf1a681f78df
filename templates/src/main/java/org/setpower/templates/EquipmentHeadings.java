package org.setpower.templates;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import org.setpower.templates.example.TemplateDefinition;
import org.setpower.templates.spec.Block;
import org.setpower.templates.spec.ColumnSpec;
import org.setpower.templates.spec.Formula;
import org.setpower.templates.spec.SheetSpec;
import org.setpower.templates.spec.TableSpec;
import org.setpower.text.MessageCatalog;

/** What the columns of the lists on Kit are called in all languages, so that lists can travel. */
public final class EquipmentHeadings {
  private static final String TAB = "Kit";

  private EquipmentHeadings() {}

  /** A line each heading, and each unit that is a word: English, then the other languages. */
  public static List<String> lines() {
    Map<String, MessageCatalog> languages = new LinkedHashMap<>();
    MessageCatalog.LANGUAGES.forEach(
        l -> languages.put(l, MessageCatalog.in(l, MessageCatalog.Speaker.SHEETS)));
    List<String> lines = new ArrayList<>();
    for (String english : english()) {
      List<String> line = new ArrayList<>(List.of(english));
      languages.values().forEach(words -> line.add(words.of(english)));
      lines.add(String.join("\t", line));
    }
    return lines;
  }

  private static Set<String> english() {
    Set<String> texts = new TreeSet<>();
    for (TemplateDefinition workbook : TemplateRegistry.all()) {
      for (SheetSpec tab : workbook.template().tabs()) {
        for (Block block : tab.name().equals(TAB) ? tab.blocks() : List.<Block>of()) {
          if (block instanceof TableSpec table) {
            table.inputs().forEach(column -> note(column, texts));
          }
        }
      }
    }
    return texts;
  }

  private static void note(ColumnSpec column, Set<String> texts) {
    texts.add(column.heading());
    if (column.unit() instanceof Formula.Literal unit) {
      texts.add(unit.text().replace("\"", ""));
    }
  }
}
