package org.setpower.command.diagram;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import com.sun.star.awt.Point;
import com.sun.star.container.XIndexAccess;
import com.sun.star.container.XNameAccess;
import com.sun.star.document.XUndoManager;
import com.sun.star.document.XUndoManagerSupplier;
import com.sun.star.drawing.XDrawPageSupplier;
import com.sun.star.drawing.XShape;
import com.sun.star.lang.XComponent;
import com.sun.star.sheet.XPrintAreas;
import com.sun.star.sheet.XSpreadsheet;
import com.sun.star.sheet.XSpreadsheetDocument;
import com.sun.star.table.CellRangeAddress;
import com.sun.star.table.XCell;
import com.sun.star.text.XText;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;
import org.setpower.addin.SharedOffice;
import org.setpower.command.CommandDriver;
import org.setpower.office.Office;
import org.setpower.plan.PlanDocument;
import org.setpower.plan.common.InputTable;
import org.setpower.plan.common.Ranges;
import org.setpower.plan.lighting.DiagramSamples;
import org.setpower.plan.lighting.LightingModel;
import org.setpower.uno.Uno;

/** The single-line diagram in a document: its shapes, its pages, what Undo takes back. */
@ExtendWith(SharedOffice.class)
class DrawDiagramIT {
  private static final String TAB = "Diagram";

  @TempDir Path folder;

  private Office office;
  private PlanDocument plan;

  @BeforeEach
  void begin(Office shared) {
    office = shared;
  }

  @AfterEach
  void close() {
    if (plan != null) {
      plan.close();
    }
  }

  private void fill(Ranges ranges) throws Exception {
    plan = PlanDocument.of(office, LightingModel.MODEL, 40, 60);
    plan.fill(
        LightingModel.MODEL.inputs().stream()
            .map(InputTable::key)
            .filter(key -> !ranges.rows(key).isEmpty())
            .collect(Collectors.toMap(key -> key, ranges::rows)));
  }

  private String draw() {
    return CommandDriver.command(office, plan.document(), "diagram");
  }

  private static XSpreadsheet tab(XComponent document) throws Exception {
    return Uno.as(
        XSpreadsheet.class,
        Uno.as(XSpreadsheetDocument.class, document).getSheets().getByName(TAB));
  }

  private List<Object> groups() throws Exception {
    XIndexAccess shapes =
        Uno.as(
            XIndexAccess.class,
            Uno.as(XDrawPageSupplier.class, tab(plan.document())).getDrawPage());
    List<Object> groups = new ArrayList<>();
    for (int i = 0; i < shapes.getCount(); i++) {
      if (((String) Uno.get(shapes.getByIndex(i), "Name")).startsWith("Set Power diagram")) {
        groups.add(shapes.getByIndex(i));
      }
    }
    return groups;
  }

  private List<String> texts() throws Exception {
    List<String> texts = new ArrayList<>();
    for (Object group : groups()) {
      XIndexAccess parts = Uno.as(XIndexAccess.class, group);
      for (int i = 0; i < parts.getCount(); i++) {
        XText text = Uno.as(XText.class, parts.getByIndex(i));
        if (text != null && !text.getString().isEmpty()) {
          texts.add(text.getString());
        }
      }
    }
    return texts;
  }

  private byte[] pdf(String name) throws Exception {
    Path file = folder.resolve(name + ".pdf");
    office.store(plan.document(), "calc_pdf_Export", file);
    String keep = System.getenv("SETPOWER_PICTURES");
    if (keep != null) {
      Files.copy(file, Path.of(keep, name + ".pdf"));
    }
    return Files.readAllBytes(file);
  }

  @Test
  void a_plan_is_one_group_on_one_page_with_its_words() throws Exception {
    fill(DiagramSamples.night());
    assertThat(draw()).startsWith("The diagram is on the tab “Diagram”, 1 page.");
    assertThat(groups()).hasSize(1);
    Object group = groups().get(0);
    assertThat(Uno.get(group, "Name")).isEqualTo("Set Power diagram 1");
    assertThat(Uno.get(group, "Title")).isEqualTo("Single-line diagram, Page 1 of 1");
    // 1600 W / 0.98 at 230.9 V less 2.4 % are 7.24 A
    assertThat((String) Uno.get(group, "Description")).contains("A1-1 · C16 · 30 mA A · L1 7.2 A");
    assertThat(texts())
        .contains("A1-1 · C16 · 30 mA A · L1 7.2 A", "1 × LED 1600", "B1 · pans, north", "G")
        .contains("Day shown: 4 Feb 2027", "L1 brown");
    CellRangeAddress[] printed = Uno.as(XPrintAreas.class, tab(plan.document())).getPrintAreas();
    assertThat(printed).hasSize(1);
    // the drawing begins below the line that says when it is old
    XCell corner = tab(plan.document()).getCellByPosition(0, printed[0].StartRow + 1);
    Point cell = (Point) Uno.get(corner, "Position");
    Point drawn = Uno.as(XShape.class, group).getPosition();
    assertThat(Math.abs(drawn.Y - cell.Y)).isLessThan(100);
    assertThat(Math.abs(drawn.X - cell.X)).isLessThan(100);
    assertThat(pdf("night")).isNotEmpty();
  }

  @Test
  @Tag("one-office")
  void a_stop_is_drawn_in_words() throws Exception {
    fill(DiagramSamples.nightWithStops());
    draw();
    assertThat(String.join(" ", texts()))
        .contains("stop: The upstream breaker of 32 A does not protect this cable")
        .contains("stop: There is no place B2-9.");
    assertThat(pdf("stops")).isNotEmpty();
  }

  @Test
  @Tag("one-office")
  void an_american_stage_is_drawn_in_feet_on_letter() throws Exception {
    fill(DiagramSamples.stage());
    draw();
    assertThat(texts()).anyMatch(t -> t.startsWith("5 × 4/0 AWG · 100 ft"));
    XNameAccess styles =
        Uno.as(
            XNameAccess.class,
            Uno.as(com.sun.star.style.XStyleFamiliesSupplier.class, plan.document())
                .getStyleFamilies()
                .getByName("PageStyles"));
    Object style = styles.getByName((String) Uno.get(tab(plan.document()), "PageStyle"));
    assertThat((int) Uno.get(style, "Width")).isBetween(27_900, 27_980);
    assertThat(pdf("stage")).isNotEmpty();
  }

  @Test
  void drawing_again_replaces_the_former_and_undo_brings_it_back() throws Exception {
    fill(DiagramSamples.night());
    draw();
    List<String> before = texts();
    plan.type("loads", "quantity", 1, 3);
    draw();
    assertThat(groups()).hasSize(1);
    assertThat(texts()).contains("3 × LED 1600");
    XUndoManager undo = Uno.as(XUndoManagerSupplier.class, plan.document()).getUndoManager();
    assertThat(undo.getCurrentUndoActionTitle()).isEqualTo("Draw diagram");
    for (int times = 0; times < 3; times++) {
      undo.undo();
      assertThat(texts()).isEqualTo(before);
      undo.redo();
      assertThat(texts()).contains("3 × LED 1600");
      assertThat(groups()).hasSize(1);
    }
    // the second drawing, what was typed, the first drawing
    for (int step = 0; step < 3; step++) {
      undo.undo();
    }
    assertThat(groups()).isEmpty();
    draw();
    assertThat(groups()).hasSize(1);
    assertThat(texts()).isEqualTo(before);
  }

  @Test
  @Tag("one-office")
  void many_distros_have_pages_and_a_smaller_plan_has_one_again() throws Exception {
    fill(DiagramSamples.tails(4, 9));
    assertThat(draw()).contains("5 pages");
    assertThat(groups()).hasSize(5);
    assertThat(Uno.as(XPrintAreas.class, tab(plan.document())).getPrintAreas()).hasSize(5);
    assertThat(pdf("pages")).isNotEmpty();
    plan.atOnce(this::clearAllButOneLamp);
    plan.type("loads", "place", 1, "D1-1");
    assertThat(draw()).contains("1 page.");
    assertThat(groups()).hasSize(1);
    assertThat(Uno.as(XPrintAreas.class, tab(plan.document())).getPrintAreas()).hasSize(1);
  }

  /** What is left: the mains, D1 and its run, a lamp on its first outlet. */
  private void clearAllButOneLamp() {
    Map<String, List<String>> cells =
        Map.of(
            "supplies", List.of("name", "type", "breaker"),
            "outlets",
                List.of("distro", "numbers", "connector", "breaker", "rcd", "curve", "rcdType"),
            "runs", List.of("to", "from", "length", "size", "type"),
            "loads", List.of("item", "place", "quantity"));
    Ranges before = DiagramSamples.tails(4, 9);
    for (Map.Entry<String, List<String>> table : cells.entrySet()) {
      int first = table.getKey().equals("supplies") ? 3 : 2;
      for (int row = first; row <= before.rows(table.getKey()).size(); row++) {
        for (String key : table.getValue()) {
          plan.type(table.getKey(), key, row, "");
        }
      }
    }
  }

  @Test
  @Tag("one-office")
  void a_change_of_the_plan_is_told_above_the_drawing() throws Exception {
    fill(DiagramSamples.night());
    draw();
    XText notice = Uno.as(XText.class, tab(plan.document()).getCellByPosition(0, 5));
    assertThat(notice.getString()).isEmpty();
    plan.type("runs", "length", 5, 99);
    assertThat(notice.getString()).startsWith("The plan has changed since this was drawn");
    CommandDriver.command(office, plan.document(), "diagram");
    assertThat(notice.getString()).isEmpty();
    plan.type("loads", "item", 1, "haze");
    assertThat(notice.getString()).startsWith("The plan has changed");
  }

  @Test
  @Tag("one-office")
  void what_cannot_be_trusted_is_said_and_nothing_is_drawn() throws Exception {
    fill(DiagramSamples.night());
    plan.tab("runs").text("C" + PlanDocument.KEYS, "source");
    draw();
    assertThat(texts()).anyMatch(t -> t.startsWith("stop: "));
    assertThat(texts()).noneMatch(t -> t.contains("LED"));
  }

  @Test
  @Tag("one-office")
  void a_document_without_a_lighting_plan_is_refused() throws Exception {
    XComponent other = office.newSpreadsheet();
    try {
      assertThatThrownBy(() -> CommandDriver.command(office, other, "diagram"))
          .hasMessageContaining("has no lighting power plan");
    } finally {
      Office.discard(other);
    }
  }

  @Test
  @Tag("one-office")
  void names_of_rows_are_kept_for_who_looks_at_a_shape() throws Exception {
    fill(DiagramSamples.night());
    draw();
    XIndexAccess parts = Uno.as(XIndexAccess.class, groups().get(0));
    List<String> names = new ArrayList<>();
    for (int i = 0; i < parts.getCount(); i++) {
      names.add((String) Uno.get(parts.getByIndex(i), "Name"));
    }
    Map<String, Long> runs =
        names.stream()
            .filter(n -> n.startsWith("runs "))
            .collect(
                java.util.stream.Collectors.groupingBy(
                    n -> n, java.util.stream.Collectors.counting()));
    assertThat(runs).hasSize(20).allSatisfy((n, count) -> assertThat(count).isEqualTo(1));
    assertThat(names).contains("generator", "breaker", "RCD", "socket outlet", "lamp", "motor");
  }
}
