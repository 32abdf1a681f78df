package org.setpower.command.repair;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import com.sun.star.container.XIndexAccess;
import com.sun.star.container.XNamed;
import com.sun.star.document.XUndoManagerSupplier;
import com.sun.star.frame.XComponentLoader;
import com.sun.star.lang.XComponent;
import com.sun.star.sheet.CellFlags;
import com.sun.star.sheet.XCellRangesQuery;
import com.sun.star.sheet.XNamedRanges;
import com.sun.star.sheet.XSheetCellRanges;
import com.sun.star.sheet.XSpreadsheet;
import com.sun.star.sheet.XUniqueCellFormatRangesSupplier;
import com.sun.star.table.CellAddress;
import com.sun.star.table.CellRangeAddress;
import com.sun.star.table.XCell;
import com.sun.star.util.CellProtection;
import com.sun.star.util.XProtectable;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.setpower.addin.SharedOffice;
import org.setpower.command.CommandContext;
import org.setpower.command.issues.ListIssuesCommand;
import org.setpower.command.message.CommandCancelledException;
import org.setpower.command.message.Progress;
import org.setpower.command.message.UserMessageException;
import org.setpower.office.Office;
import org.setpower.uno.Uno;

/** Formulas come back all together or, for whoever cancels, not at all. */
@ExtendWith(SharedOffice.class)
class RepairFormulasIT {
  private static final Path EXAMPLE = Path.of("target/sheets/examples/power-budget-example.ods");
  private static final String OTHER = "=1";

  private CommandContext desk;

  @BeforeEach
  void open(Office shared) throws IOException {
    desk = new CommandContext(shared.context(), shared.open(EXAMPLE));
  }

  @AfterEach
  void close() {
    Office.discard(desk.document());
  }

  /** The first cells with a formula on the last sheets, each overwritten. */
  private List<XCell> overwritten(int count) throws Exception {
    List<XCell> cells = new ArrayList<>();
    List<XSpreadsheet> sheets = desk.book().all();
    for (int i = sheets.size() - 1; cells.size() < count; i--) {
      for (CellRangeAddress at :
          Uno.as(XCellRangesQuery.class, sheets.get(i))
              .queryContentCells((short) CellFlags.FORMULA)
              .getRangeAddresses()) {
        XCell cell = sheets.get(i).getCellByPosition(at.StartColumn, at.StartRow);
        if (cells.size() < count && !cell.getFormula().startsWith("{")) {
          Uno.as(XProtectable.class, sheets.get(i)).unprotect("");
          cell.setFormula(OTHER);
          Uno.as(XProtectable.class, sheets.get(i)).protect("");
          cells.add(cell);
        }
      }
    }
    return cells;
  }

  private static List<String> formulas(List<XCell> cells) {
    return cells.stream().map(XCell::getFormula).toList();
  }

  private String[] steps() {
    return Uno.as(XUndoManagerSupplier.class, desk.document())
        .getUndoManager()
        .getAllUndoActionTitles();
  }

  @Test
  @Tag("one-office")
  void one_formula_and_several_are_told_rightly() throws Exception {
    List<XCell> one = overwritten(1);
    assertThat(formulas(one)).containsExactly(OTHER);
    assertThat(RepairFormulasCommand.mend(desk, Progress.NONE)).isEqualTo("1 formula restored.");
    List<XCell> three = overwritten(3);
    assertThat(RepairFormulasCommand.mend(desk, Progress.NONE)).isEqualTo("3 formulas restored.");
    assertThat(formulas(three)).doesNotContain(OTHER);
    assertThat(RepairFormulasCommand.mend(desk, Progress.NONE))
        .isEqualTo("All formulas match the template.");
  }

  @Test
  @Tag("one-office")
  void each_sheet_is_a_step_that_is_shown() throws Exception {
    List<Integer> percents = new ArrayList<>();
    List<String> words = new ArrayList<>();
    RepairFormulasCommand.mend(
        desk,
        (percent, now) -> {
          percents.add(percent);
          words.add(now);
        });
    assertThat(percents).isSorted().startsWith(0).endsWith(90);
    assertThat(words)
        .startsWith("Opening the template")
        .contains("Formulas of the sheet Budget lines")
        .endsWith("Restoring formulas")
        .hasSize(desk.book().all().size() + 2);
  }

  @Test
  @Tag("one-office")
  void cancelling_at_any_step_changes_nothing() throws Exception {
    List<XCell> cells = overwritten(2);
    String[] before = steps();
    for (int at : new int[] {0, 30, 60, 90}) {
      Progress late =
          (percent, words) -> {
            if (percent >= at) {
              throw new CommandCancelledException();
            }
          };
      assertThatThrownBy(() -> RepairFormulasCommand.mend(desk, late))
          .isInstanceOf(CommandCancelledException.class);
      assertThat(formulas(cells)).as("cancelled at %d", at).containsOnly(OTHER);
      assertThat(steps()).isEqualTo(before);
    }
  }

  @Test
  void what_was_mended_is_one_step_of_undo() throws Exception {
    List<XCell> cells = overwritten(3);
    int before = steps().length;
    RepairFormulasCommand.mend(desk, Progress.NONE);
    assertThat(steps()).hasSize(before + 1).startsWith("Restore formulas");
    XComponent document = desk.document();
    Uno.as(XUndoManagerSupplier.class, document).getUndoManager().undo();
    assertThat(formulas(cells)).containsOnly(OTHER);
  }

  private XNamed tab(String name) throws Exception {
    return Uno.as(XNamed.class, desk.book().sheets().getByName(name));
  }

  /** Refuses with a sentence, and leaves formulas and undo list as they are. */
  private void assertRefused(List<XCell> cells, String... words) {
    String[] before = steps();
    assertThatThrownBy(() -> RepairFormulasCommand.mend(desk, Progress.NONE))
        .isInstanceOf(UserMessageException.class)
        .hasMessageContainingAll(words)
        .hasMessageContaining("Nothing was changed");
    assertThat(formulas(cells)).containsOnly(OTHER);
    assertThat(steps()).isEqualTo(before);
  }

  @Test
  @Tag("one-office")
  void a_renamed_tab_is_refused_with_both_names() throws Exception {
    List<XCell> cells = overwritten(2);
    tab("Budget lines").setName("Places");
    assertRefused(cells, "“Budget lines”", "“Places”");
    tab("Places").setName("Budget lines");
    assertThat(RepairFormulasCommand.mend(desk, Progress.NONE)).startsWith("2 formulas");
  }

  @Test
  @Tag("one-office")
  void a_copied_tab_is_refused_with_both_names() throws Exception {
    List<XCell> cells = overwritten(2);
    desk.book().sheets().copyByName("Budget lines", "Budget lines on day 2", (short) 0);
    assertRefused(cells, "“Budget lines on day 2”", "copy of “Budget lines”");
  }

  @Test
  @Tag("one-office")
  void a_missing_tab_is_refused_with_its_name() throws Exception {
    List<XCell> cells = overwritten(1);
    desk.book().sheets().removeByName("Budget lines");
    assertRefused(cells, "“Budget lines” is missing");
  }

  @Test
  @Tag("one-office")
  void tabs_that_exchanged_their_names_are_refused() throws Exception {
    List<XCell> cells = overwritten(1);
    tab("Budget lines").setName("For a moment");
    tab("Cash flow").setName("Budget lines");
    tab("For a moment").setName("Cash flow");
    assertRefused(cells, "exchanged", "“Cash flow”", "“Budget lines”");
  }

  @Test
  @Tag("one-office")
  void tabs_of_the_user_and_of_the_commands_are_no_obstacle() throws Exception {
    overwritten(1);
    desk.book().sheets().insertNewByName("My notes", (short) 0);
    desk.book().sheets().insertNewByName(ListIssuesCommand.SHEET, (short) 99);
    assertThat(RepairFormulasCommand.mend(desk, Progress.NONE)).startsWith("1 formula restored.");
  }

  /** The first formula that reads its row by a name, after the name means an error on its tab. */
  private XCell cellOfNameInError() throws Exception {
    for (XSpreadsheet sheet : desk.book().all()) {
      for (CellRangeAddress at :
          Uno.as(XCellRangesQuery.class, sheet)
              .queryContentCells((short) CellFlags.FORMULA)
              .getRangeAddresses()) {
        XCell cell = sheet.getCellByPosition(at.StartColumn, at.StartRow);
        Matcher name = Pattern.compile("Results_\\w+").matcher(cell.getFormula());
        if (!cell.getFormula().startsWith("{") && name.find()) {
          Uno.as(XProtectable.class, sheet).unprotect("");
          cell.setFormula(OTHER);
          Uno.as(XNamedRanges.class, Uno.get(sheet, "NamedRanges"))
              .addNewByName(name.group(), "1/0", new CellAddress(), 0);
          Uno.as(XProtectable.class, sheet).protect("");
          return cell;
        }
      }
    }
    throw new AssertionError("no formula with a name");
  }

  @Test
  @Tag("one-office")
  void more_errors_than_before_are_taken_back() throws Exception {
    XCell cell = cellOfNameInError();
    int errors = ErrorCells.in(desk.book()).count();
    String[] before = steps();
    assertThatThrownBy(() -> RepairFormulasCommand.mend(desk, Progress.NONE))
        .isInstanceOf(UserMessageException.class)
        .hasMessageContaining("now it is " + errors)
        .hasMessageMatching("(?s).*the first new one is \\S+\\.[A-Z]+\\d+\\..*")
        .hasMessageContaining("nothing was changed");
    assertThat(cell.getFormula()).isEqualTo(OTHER);
    assertThat(ErrorCells.in(desk.book()).count()).isEqualTo(errors);
    assertThat(steps()).isEqualTo(before);
  }

  @Test
  @Tag("one-office")
  void errors_that_remain_are_told() throws Exception {
    desk.book().sheets().insertNewByName("My notes", (short) 0);
    desk.book().sheet("My notes").getCellByPosition(2, 3).setFormula("=1/0");
    assertThat(RepairFormulasCommand.mend(desk, Progress.NONE))
        .isEqualTo(
            "All formulas match the template.\n"
                + "Cells in error: 1, the first is My notes.C4. Use List open issues to"
                + " see them.");
    overwritten(1);
    assertThat(RepairFormulasCommand.mend(desk, Progress.NONE))
        .startsWith("1 formula restored.\nCells in error: 1, ");
  }

  @Test
  void a_fault_in_the_middle_takes_everything_back() throws Exception {
    List<XCell> cells = overwritten(2);
    XSpreadsheet positions = desk.book().sheet("Budget lines");
    Uno.as(XProtectable.class, positions).unprotect("");
    XSheetCellRanges toFill = firstToFill(positions);
    for (CellRangeAddress at : toFill.getRangeAddresses()) {
      Uno.set(desk.book().range(at), "CellStyle", "Default");
    }
    Uno.as(XProtectable.class, positions).protect("of the house");
    String[] before = steps();
    assertThatThrownBy(() -> RepairFormulasCommand.mend(desk, Progress.NONE))
        .hasMessageContaining("“Budget lines” is protected with a password");
    assertThat(formulas(cells)).containsOnly(OTHER);
    assertThat(steps()).isEqualTo(before);
    assertThat(Uno.as(XProtectable.class, positions).isProtected()).isTrue();
  }

  private static XSheetCellRanges firstToFill(XSpreadsheet sheet) throws Exception {
    XIndexAccess alikes =
        Uno.as(XUniqueCellFormatRangesSupplier.class, sheet).getUniqueCellFormatRanges();
    for (int i = 0; i < alikes.getCount(); i++) {
      if (!((CellProtection) Uno.get(alikes.getByIndex(i), "CellProtection")).IsLocked) {
        return Uno.as(XSheetCellRanges.class, alikes.getByIndex(i));
      }
    }
    throw new AssertionError("no cells to fill");
  }

  @Test
  @Tag("one-office")
  void a_document_for_reading_only_is_told_so(Office office) throws Exception {
    CommandContext read =
        new CommandContext(
            office.context(),
            Uno.as(XComponentLoader.class, desk.desktop())
                .loadComponentFromURL(
                    office.copyIn(EXAMPLE),
                    "_blank",
                    0,
                    Uno.properties(Uno.property("ReadOnly", true))));
    try {
      assertThatThrownBy(() -> RepairFormulasCommand.mend(read, Progress.NONE))
          .hasMessageContaining("reading only");
    } finally {
      Office.discard(read.document());
    }
  }
}
