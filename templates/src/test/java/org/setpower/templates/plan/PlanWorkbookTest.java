package org.setpower.templates.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.setpower.base.TextEnum;
import org.setpower.plan.common.Answer;
import org.setpower.plan.common.InputColumn;
import org.setpower.plan.common.InputTable;
import org.setpower.plan.finding.ResultWord;
import org.setpower.registry.groups.CableFunctions;
import org.setpower.templates.TemplateRegistry;
import org.setpower.templates.example.PlanTemplate;
import org.setpower.templates.layout.PlanLayout;
import org.setpower.templates.layout.PlanLayout.Column;
import org.setpower.templates.layout.PlanNames;
import org.setpower.templates.lighting.LightingPowerPlan;
import org.setpower.templates.spec.CellFormat;
import org.setpower.text.MessageCatalog;

/** What every workbook of a plan must keep to. */
class PlanWorkbookTest {
  private static final int MOST_COLUMNS = 14;
  private static final int MOST_TABS = 7;
  private static final int MOST_LETTERS = 250;

  /** Of 7 points across a page, in bold. */
  private static final int FIGURE_LETTERS = 128;

  static Stream<PlanWorkbook> workbooks() {
    return TemplateRegistry.plans().stream().map(PlanTemplate::workbook);
  }

  private static Stream<PlanTable> tables(PlanWorkbook workbook) {
    return workbook.parts(PlanTable.class);
  }

  @ParameterizedTest
  @MethodSource("workbooks")
  void every_table_and_cell_to_fill_stands_on_one_tab(PlanWorkbook workbook) {
    List<String> filled = new ArrayList<>();
    tables(workbook).flatMap(t -> t.inputs().columns().stream()).forEach(c -> filled.add(c.path()));
    workbook
        .parts(PlanFields.class)
        .flatMap(f -> f.columns().stream())
        .forEach(c -> filled.add(c.path()));
    assertThat(filled)
        .containsExactlyInAnyOrderElementsOf(
            workbook.model().inputs().stream()
                .flatMap(t -> t.columns().stream())
                .map(InputColumn::path)
                .toList());
  }

  @ParameterizedTest
  @MethodSource("workbooks")
  void status_and_name_stand_left_then_the_cells_to_fill_then_results(PlanWorkbook workbook) {
    PlanLayout layout = new PlanLayout(workbook, MessageCatalog.english());
    for (PlanTable table : tables(workbook).toList()) {
      List<Column> columns = layout.columns(table);
      int inputs = table.inputs().columns().size();
      assertThat(columns.get(0).isVerdict()).isTrue();
      assertThat(columns.subList(1, 1 + inputs))
          .extracting(Column::input)
          .isEqualTo(table.inputs().columns());
      assertThat(columns.subList(1 + inputs, columns.size())).allMatch(c -> c.input() == null);
      assertThat(columns.get(columns.size() - 1).isReason()).isTrue();
      assertThat(columns.stream().filter(c -> !c.grouped()))
          .as(table.inputs().key() + " outside closed groups")
          .hasSizeLessThanOrEqualTo(MOST_COLUMNS);
    }
  }

  @ParameterizedTest
  @MethodSource("workbooks")
  void at_most_seven_tabs_are_shown(PlanWorkbook workbook) {
    assertThat(workbook.tabs().stream().filter(t -> !t.isHidden()))
        .hasSizeLessThanOrEqualTo(MOST_TABS);
  }

  /** What stands right of a page's last column is on no paper. */
  @ParameterizedTest
  @MethodSource("workbooks")
  void a_page_holds_all_columns_of_its_lists(PlanWorkbook workbook) {
    PlanLayout layout = new PlanLayout(workbook, MessageCatalog.english());
    workbook.tabs().stream()
        .filter(PlanTab::isPage)
        .forEach(
            t ->
                t.parts().stream()
                    .filter(PlanList.class::isInstance)
                    .flatMap(p -> layout.columns((PlanList) p).stream())
                    .forEach(
                        c ->
                            assertThat(c.at() + c.span())
                                .as(t.name() + ": " + c.heading())
                                .isLessThanOrEqualTo(t.grid())));
  }

  /** Nothing is left out of a paper in silence: more rows than are printed, and a line says so. */
  @ParameterizedTest
  @MethodSource("workbooks")
  void a_paper_says_when_more_rows_are_filled_than_are_printed(PlanWorkbook workbook) {
    PlanLayout layout = new PlanLayout(workbook, MessageCatalog.english());
    workbook.tabs().stream()
        .filter(t -> t.printed() > 0)
        .forEach(
            t -> {
              PlanList list = layout.fitted(t);
              assertThat(t.printed()).as(t.name()).isLessThan(list.rows());
              assertThat(layout.lastPrinted(t)).isEqualTo(layout.place(list).row() + t.printed());
            });
    for (PlanList list : layout.fitted()) {
      int row = layout.place(list).row() + 1;
      String printed = "Printed_" + layout.names().top(list).substring("Top_".length());
      assertThat(layout.formulas().stamp(layout.place(list).tab()))
          .contains(")))>" + printed + ";Notice_fit;")
          .contains("$A$" + (row + 1) + ":")
          .contains("$" + (row + list.rows()) + ")");
      assertThat(layout.ranges()).containsKeys(printed, "Notice_fit");
    }
  }

  @ParameterizedTest
  @MethodSource("workbooks")
  void every_cell_to_fill_says_what_to_type_or_what_a_blank_means(PlanWorkbook workbook) {
    MessageCatalog english = MessageCatalog.english();
    workbook.model().inputs().stream()
        .flatMap(t -> t.columns().stream())
        .forEach(
            c -> {
              assertThat(InputCells.help(c, english)).as(c.path()).isNotEmpty();
              assertThat(InputCells.of(c).error(english)).as(c.path()).isNotEmpty();
            });
  }

  @ParameterizedTest
  @MethodSource("workbooks")
  void formulas_are_short_in_every_language(PlanWorkbook workbook) {
    for (String language : MessageCatalog.files()) {
      PlanLayout layout =
          new PlanLayout(workbook, MessageCatalog.in(language, MessageCatalog.Speaker.SHEETS));
      Map<String, String> formulas = layout.formulas().all();
      assertThat(formulas.values())
          .isNotEmpty()
          .allSatisfy(f -> assertThat(stored(f)).hasSizeLessThanOrEqualTo(MOST_LETTERS));
    }
  }

  /** A label that is longer shrinks to letters of less than 7 points. */
  @ParameterizedTest
  @MethodSource("workbooks")
  void labels_of_figures_can_be_read_in_every_language(PlanWorkbook workbook) {
    for (String language : MessageCatalog.files()) {
      MessageCatalog words = MessageCatalog.in(language, MessageCatalog.Speaker.SHEETS);
      workbook
          .parts(PlanFigures.class)
          .filter(f -> f.across() > 0)
          .forEach(
              f ->
                  assertThat(f.columns())
                      .extracting(c -> InputCells.heading(workbook.result(c), words))
                      .as(language)
                      .allSatisfy(
                          l ->
                              assertThat(l).hasSizeLessThanOrEqualTo(FIGURE_LETTERS / f.across())));
    }
  }

  /** As a file holds it: with the names of functions that are the same in every language. */
  private static String stored(String formula) {
    return formula.replaceAll("\\b(PLAN|SHEET|LINK)\\.(?=[A-Z]+\\()", "ORG.SETPOWER.FUNCTIONS.$1");
  }

  @Test
  void every_language_has_its_months() {
    for (String language : MessageCatalog.files()) {
      PlanLayout layout =
          new PlanLayout(
              new LightingPowerPlan().workbook(),
              MessageCatalog.in(language, MessageCatalog.Speaker.SHEETS));
      String today = layout.formulas().today();
      assertThat(today).as(language).doesNotContain("null");
      assertThat(today.contains("d\\.")).as(language).isEqualTo(language.equals("de"));
    }
  }

  @ParameterizedTest
  @MethodSource("workbooks")
  void names_differ_whatever_their_case(PlanWorkbook workbook) {
    Map<String, String> names = new TreeMap<>();
    new PlanLayout(workbook, MessageCatalog.english())
        .ranges()
        .forEach(
            (name, cells) -> assertThat(names.put(name.toLowerCase(Locale.ROOT), cells)).isNull());
  }

  @ParameterizedTest
  @MethodSource("workbooks")
  void the_answer_asks_for_each_result_once_and_the_block_holds_it(PlanWorkbook workbook) {
    PlanNames names = new PlanLayout(workbook, MessageCatalog.english()).names();
    List<List<Object>> answer = names.answer("en");
    assertThat(answer.get(0)).startsWith("en", InputTable.layoutHash(workbook.model().inputs()));
    List<Object> keys =
        answer.subList(1, answer.size()).stream()
            .flatMap(r -> r.subList(3, r.size()).stream())
            .filter(k -> !"".equals(k))
            .toList();
    assertThat(keys).doesNotHaveDuplicates().hasSameElementsAs(workbook.answer());
    assertThat(answer).allMatch(r -> r.size() == names.answerColumns());
    Answer read =
        Answer.read(answer.stream().map(List::toArray).toArray(Object[][]::new)).orElseThrow();
    assertThat(read.rows() + 1).isEqualTo(names.blockRows());
    assertThat(read.width()).isEqualTo(names.blockColumns());
  }

  /** A list is an array formula a column: past the end of its results it would show #N/A. */
  @ParameterizedTest
  @MethodSource("workbooks")
  void no_list_has_more_rows_than_its_results(PlanWorkbook workbook) {
    workbook
        .parts(PlanList.class)
        .forEach(l -> assertThat(l.rows()).isLessThanOrEqualTo(l.results().rows()));
  }

  /** What is typed from a list stays English; what is printed is read by others. */
  @ParameterizedTest
  @MethodSource("workbooks")
  void words_on_papers_are_those_of_the_reader(PlanWorkbook workbook) {
    List<String> english = new ArrayList<>();
    for (PlanTab tab : workbook.tabs()) {
      if (tab.isPaper()) {
        tab.parts().stream()
            .flatMap(PlanWorkbookTest::printed)
            .map(workbook::result)
            .filter(c -> TextEnum.class.isAssignableFrom(c.type()) || c.type() == Boolean.class)
            .filter(c -> !InputCells.isVerdict(c) && !c.translated())
            .filter(c -> !ResultWord.class.isAssignableFrom(c.type()))
            .forEach(c -> english.add(tab.name() + ": " + c.path()));
      }
    }
    assertThat(english).isEmpty();
  }

  private static Stream<String> printed(PlanPart part) {
    if (part instanceof PlanList list) {
      return list.columns().stream();
    }
    if (part instanceof PlanLetter letter) {
      return letter.columns().stream();
    }
    return part instanceof PlanFigures figures ? figures.columns().stream() : Stream.empty();
  }

  /** Cells of a block cost time whether they hold something or not. */
  @ParameterizedTest
  @MethodSource("workbooks")
  void most_cells_of_a_block_hold_results(PlanWorkbook workbook) {
    PlanNames names = new PlanLayout(workbook, MessageCatalog.english()).names();
    long results =
        workbook.answer().stream()
            .mapToLong(p -> workbook.results(p.substring(0, p.indexOf('.'))).rows())
            .sum();
    assertThat((double) results / (names.blockRows() * names.blockColumns()))
        .as(workbook.fileName())
        .isGreaterThan(0.7);
  }

  /** Two tables on a tab: where the second begins, and no result of it in a closed group. */
  @Test
  void outlets_stand_below_sources_where_their_tab_says() {
    PlanWorkbook lighting = new LightingPowerPlan().workbook();
    PlanLayout layout = new PlanLayout(lighting, MessageCatalog.english());
    PlanTab tab =
        lighting.tabs().stream()
            .filter(t -> t.name().equals("Sources & distro"))
            .findFirst()
            .orElseThrow();
    PlanTable supplies = (PlanTable) tab.parts().get(0);
    PlanTable outlets = (PlanTable) tab.parts().get(1);
    assertThat(tab.lead()).contains("from row " + (layout.place(outlets).row() + 1) + ".");
    List<Integer> closed =
        layout.columns(supplies).stream().filter(Column::grouped).map(Column::at).toList();
    assertThat(layout.columns(outlets))
        .filteredOn(c -> !c.grouped())
        .extracting(Column::at)
        .doesNotContainAnyElementsOf(closed);
    assertThat(lighting.tabs().stream().filter(t -> !t.isHidden()).map(PlanTab::name))
        .containsExactly(
            "Project",
            "Sources & distro",
            "Loads",
            "Cable runs",
            "Generator",
            "Batteries",
            "Summary");
  }

  @Test
  void a_leaf_column_names_its_arguments_in_any_order() {
    LeafColumn drop =
        LeafColumn.of("Voltage drop", CableFunctions.DROP)
            .with(name(2), "runs.amps")
            .with(name(0), "runs.size")
            .with(name(1), "runs.length")
            .with(name(3), "runs.system")
            .shown("V", CellFormat.ONE);
    assertThat(drop.formula(PlanNames::cell))
        .isEqualTo("CABLE.DROP(Runs_size;Runs_length;Runs_amps;Runs_system)");
  }

  @Test
  void a_leaf_column_refuses_an_argument_too_many_or_too_few() {
    LeafColumn drop = LeafColumn.of("Voltage drop", CableFunctions.DROP);
    assertThatThrownBy(() -> drop.with("colour", "runs.colour")).hasMessageContaining("colour");
    assertThatThrownBy(() -> drop.with(name(0), "runs.size").formula(PlanNames::cell))
        .hasMessageContaining(name(1));
  }

  private static String name(int parameter) {
    return CableFunctions.DROP.parameters().get(parameter).name();
  }
}
