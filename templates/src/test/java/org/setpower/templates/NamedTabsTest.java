package org.setpower.templates;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Properties;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.setpower.plan.batteryday.BatteryDayFinding;
import org.setpower.plan.finding.CommonFinding;
import org.setpower.plan.finding.FindingKey;
import org.setpower.templates.example.PlanTemplate;
import org.setpower.templates.plan.PlanPart;
import org.setpower.templates.plan.PlanTab;
import org.setpower.templates.plan.PlanTable;
import org.setpower.templates.plan.PlanWorkbook;

/** A sentence that sends somebody to a tab or a table names one of the same workbook. */
class NamedTabsTest {
  /**
   * What the battery plan finds wrong and the lighting plan shows. Not what is of its own tables,
   * which the lighting plan fills by itself: positions, devices, supplies, batteries as found.
   */
  private static final Pattern SHARED =
      Pattern.compile("batteries\\.(days|types?|stock|charger)\\..*");

  private static final List<String> OWN =
      List.of("charger.supply", "charger.supplyUnclear", "stock.reserve", "stock.lentTo");

  static Stream<PlanWorkbook> workbooks() {
    return TemplateRegistry.plans().stream().map(PlanTemplate::workbook);
  }

  /** Names of tabs, titles of tables and headings of columns: what can be found on a sheet. */
  private static Set<String> names(PlanWorkbook workbook, boolean columns) {
    Set<String> names = new TreeSet<>();
    for (PlanTab tab : workbook.tabs()) {
      names.add(tab.name());
      tab.parts().stream().map(PlanPart::title).forEach(names::add);
    }
    if (columns) {
      workbook.model().inputs().stream()
          .flatMap(t -> t.columns().stream())
          .forEach(c -> names.add(c.heading()));
      workbook.model().results().stream()
          .flatMap(t -> t.columns().stream())
          .forEach(c -> names.add(c.heading()));
    }
    names.remove("");
    return names;
  }

  /** All names of tabs and tables of all plans, also those that a title hides. */
  private static Set<String> known() {
    Set<String> known = new TreeSet<>();
    workbooks()
        .forEach(
            w -> {
              known.addAll(names(w, false));
              w.model().inputs().forEach(t -> known.add(t.heading()));
            });
    return known;
  }

  private static Properties sentences() throws IOException {
    Properties sentences = new Properties();
    try (InputStream in =
        FindingKey.class.getResourceAsStream("/org/setpower/plan/common/findings.properties")) {
      sentences.load(new InputStreamReader(in, StandardCharsets.UTF_8));
    }
    return sentences;
  }

  /** Names in a sentence: words with a capital that do not begin it. */
  private static List<String> named(String sentence, Set<String> known) {
    List<String> found = new ArrayList<>();
    String rest = sentence;
    List<String> longest =
        known.stream().sorted((a, b) -> Integer.compare(b.length(), a.length())).toList();
    for (String name : longest) {
      boolean words = name.contains(" ");
      Pattern there =
          Pattern.compile((words ? "" : "(?<=[a-z,;] )") + "\\b" + Pattern.quote(name) + "\\b");
      if (there.matcher(rest).find()) {
        found.add(name);
        rest = there.matcher(rest).replaceAll("");
      }
    }
    return found;
  }

  @ParameterizedTest
  @MethodSource("workbooks")
  void sentences_name_what_is_there(PlanWorkbook workbook) throws IOException {
    Properties sentences = sentences();
    Set<String> there = names(workbook, true);
    Set<String> known = known();
    known.addAll(there); // the longest name counts: Order status is no Order
    List<String> lost = new ArrayList<>();
    Stream<FindingKey> keys =
        Stream.concat(Arrays.stream(CommonFinding.values()), workbook.model().findings().stream());
    if ("lighting".equals(workbook.model().name())) {
      keys =
          Stream.concat(
              keys,
              Arrays.stream(BatteryDayFinding.values())
                  .filter(k -> SHARED.matcher(k.key()).matches())
                  .filter(k -> OWN.stream().noneMatch(o -> k.key().endsWith(o))));
    }
    keys.forEach(
        k ->
            named(sentences.getProperty(k.key()), known).stream()
                .filter(n -> !there.contains(n))
                .filter(n -> !isOnItsTab(workbook, n, sentences.getProperty(k.key())))
                .forEach(n -> lost.add(k.key() + ": " + n)));
    assertThat(lost).isEmpty();
  }

  /** Whether a sentence names with a table the tab on which it stands. */
  private static boolean isOnItsTab(PlanWorkbook workbook, String table, String sentence) {
    return workbook.tabs().stream()
        .filter(t -> sentence.contains(" on " + t.name()))
        .flatMap(t -> t.parts().stream())
        .anyMatch(p -> p instanceof PlanTable own && own.inputs().heading().equals(table));
  }

  /** The names it looks for are found where they stand. */
  @Test
  void names_are_found() {
    Set<String> known = known();
    assertThat(named("Battery types has no {0}. Add it there.", known))
        .containsExactly("Battery types");
    assertThat(named("Correct these rows of Loads.", known)).containsExactly("Loads");
    assertThat(named("Loads that cannot be counted.", known)).isEmpty();
  }
}
