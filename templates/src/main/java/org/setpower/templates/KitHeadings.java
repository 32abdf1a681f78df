package org.setpower.templates;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import org.setpower.templates.example.Workbook;
import org.setpower.templates.spec.Block;
import org.setpower.templates.spec.Column;
import org.setpower.templates.spec.Formula;
import org.setpower.templates.spec.Tab;
import org.setpower.templates.spec.Table;
import org.setpower.text.Translation;
import org.setpower.text.Words;

/** What the columns of the lists on Kit are called in all languages, so that lists can travel. */
public final class KitHeadings {
  private static final String TAB = "Kit";

  private KitHeadings() {}

  /** A line each heading, and each unit that is a word: English, then the other languages. */
  public static List<String> lines() {
    Map<String, Words> languages = new LinkedHashMap<>();
    Translation.LANGUAGES.forEach(l -> languages.put(l, Words.in(l, Shelf.class)));
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
    for (Workbook workbook : Shelf.all()) {
      for (Tab tab : workbook.template().tabs()) {
        for (Block block : tab.name().equals(TAB) ? tab.blocks() : List.<Block>of()) {
          if (block instanceof Table table) {
            table.inputs().forEach(column -> note(column, texts));
          }
        }
      }
    }
    return texts;
  }

  private static void note(Column column, Set<String> texts) {
    texts.add(column.heading());
    if (column.unit() instanceof Formula.Literal unit) {
      texts.add(unit.text().replace("\"", ""));
    }
  }
}
