package org.setpower.templates.plan;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.setpower.plan.lighting.input.Connector;
import org.setpower.templates.layout.PlanLayout;
import org.setpower.templates.layout.PlanLayout.Column;
import org.setpower.templates.lighting.LightingPowerPlan;
import org.setpower.templates.uno.PlanFiller;
import org.setpower.text.MessageCatalog;

/**
 * What made a gaffer put the lighting plan away: 69 pages with inputs and results of a row on two
 * of them, 33,535 formulas. The limits are those of the brief: 12 pages, 9,000 formulas.
 */
class LightingSheetTest {
  private static final int PAPERS = 12;
  private static final int FORMULAS = 9000;

  /** Type of cells, and what a paper in the hand of a rigger may be shrunk to; from memory. */
  private static final double TYPE = 10;

  private static final double READABLE = 8;

  /** A4 without its margins of 10 mm: ISO 216. */
  private static final double SHORT = 190;

  private static final double LONG = 277;

  /** Where it is not the CEE 7 of the continent. */
  private static final Map<String, String> PLUGS =
      Map.of("en", "(BS 1363|IEC).*", "en-US", "(NEMA|stage|4-wire).*");

  private final PlanWorkbook workbook = new LightingPowerPlan().workbook();
  private final PlanLayout layout =
      new PlanLayout(workbook, MessageCatalog.in("en", MessageCatalog.Speaker.SHEETS));

  /** A paper begins with one page: it is as many pages as papers, until a list is longer. */
  @Test
  void each_paper_is_one_page_until_its_list_is_longer() {
    List<PlanTab> papers = workbook.tabs().stream().filter(PlanTab::isPaper).toList();
    assertThat(papers.size()).isBetween(7, PAPERS);
    for (PlanTab paper : papers) {
      boolean list = paper.parts().get(paper.parts().size() - 1) instanceof PlanList;
      assertThat(list ? paper.printed() : 1).as(paper.name()).isPositive();
    }
  }

  /** The office shrinks what is wider than the paper, and enlarges nothing. */
  @ParameterizedTest
  @ValueSource(strings = {"en", "de", "fr", "es", "en-US"})
  void papers_are_printed_in_readable_type(String language) {
    PlanLayout in =
        new PlanLayout(workbook, MessageCatalog.in(language, MessageCatalog.Speaker.SHEETS));
    assertThat(workbook.tabs().stream().filter(PlanTab::isPaper))
        .allSatisfy(
            paper -> {
              double wide = in.widths(paper).stream().mapToInt(w -> w).sum();
              double fits = paper.isUpright() ? SHORT : LONG;
              assertThat(TYPE * Math.min(1, fits / wide))
                  .as(paper.name() + ": " + wide + " mm")
                  .isGreaterThanOrEqualTo(READABLE);
            });
  }

  @Test
  void what_is_filled_in_stands_in_one_block_left_of_its_results() {
    workbook
        .parts(PlanTable.class)
        .forEach(
            table -> {
              List<Column> columns = layout.columns(table);
              int last = -1;
              int result = columns.size();
              for (int i = 2; i < columns.size(); i++) {
                boolean input = columns.get(i).input() != null;
                last = input ? i : last;
                result = input ? result : Math.min(result, i);
              }
              assertThat(last).as(table.inputs().key()).isLessThan(result);
            });
  }

  /** A column of a list is one array formula, a result beside a row is one in each row. */
  @Test
  void formulas_are_few() {
    long beside =
        workbook
            .parts(PlanTable.class)
            .mapToLong(
                t ->
                    t.inputs().rows()
                        * layout.columns(t).stream().filter(c -> c.input() == null).count())
            .sum();
    long lists = workbook.parts(PlanList.class).mapToLong(l -> l.columns().size()).sum();
    assertThat(beside + lists).isBetween(1000L, (long) FORMULAS);
  }

  /** Sockets take no plug of another country: common practice. */
  @ParameterizedTest
  @ValueSource(strings = {"en", "de", "fr", "es", "en-US"})
  void shipped_equipment_has_the_plugs_of_its_country(String language) {
    PlanTable equipment =
        workbook
            .parts(PlanTable.class)
            .filter(t -> t.inputs().key().equals("equipment"))
            .findFirst()
            .orElseThrow();
    List<Map<String, String>> rows = PlanFiller.initial(workbook, equipment, language);
    List<String> words = Arrays.stream(Connector.values()).map(Connector::word).toList();
    assertThat(rows).hasSize(PlanFiller.initial(workbook, equipment).size());
    for (Map<String, String> row : rows) {
      String plug = row.get("plug");
      boolean isUs = language.equals("en-US");
      if (isUs && row.get("item").equals("catering kettle 3 kW")) {
        assertThat(plug).isEmpty(); // 25 A at 120 V: has no usual plug
      } else {
        assertThat(words).as(row.get("item")).contains(plug);
        assertThat(plug).as(row.get("item")).matches(PLUGS.getOrDefault(language, "(CEE 7|IEC).*"));
      }
    }
  }
}
