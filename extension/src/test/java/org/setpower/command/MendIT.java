package org.setpower.command;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import com.sun.star.document.XUndoManagerSupplier;
import com.sun.star.lang.XComponent;
import com.sun.star.sheet.CellFlags;
import com.sun.star.sheet.XCellRangesQuery;
import com.sun.star.sheet.XSpreadsheet;
import com.sun.star.table.CellRangeAddress;
import com.sun.star.table.XCell;
import com.sun.star.util.XProtectable;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.setpower.addin.SharedOffice;
import org.setpower.office.Office;

/** Formulas come back all together or, for whoever cancels, not at all; every table: RowsIT. */
@ExtendWith(SharedOffice.class)
class MendIT {
  private static final Path EXAMPLE = Path.of("target/sheets/examples/battery-day-example.ods");
  private static final String OTHER = "=1";

  private Desk desk;

  @BeforeEach
  void open(Office shared) throws IOException {
    desk = new Desk(shared.context(), shared.open(EXAMPLE));
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
  void one_formula_and_several_are_told_rightly() throws Exception {
    List<XCell> one = overwritten(1);
    assertThat(formulas(one)).containsExactly(OTHER);
    assertThat(Mend.mend(desk, Progress.NONE))
        .isEqualTo("1 formula is again as the template has it.");
    List<XCell> three = overwritten(3);
    assertThat(Mend.mend(desk, Progress.NONE))
        .isEqualTo("3 formulas are again as the template has them.");
    assertThat(formulas(three)).doesNotContain(OTHER);
    assertThat(Mend.mend(desk, Progress.NONE))
        .isEqualTo("Every formula is as the template has it.");
  }

  @Test
  void each_sheet_is_a_step_that_is_shown() throws Exception {
    List<Integer> percents = new ArrayList<>();
    List<String> words = new ArrayList<>();
    Mend.mend(
        desk,
        (percent, now) -> {
          percents.add(percent);
          words.add(now);
        });
    assertThat(percents).isSorted().startsWith(0).endsWith(90);
    assertThat(words)
        .startsWith("Opening the template")
        .contains("Formulas of the sheet Positions")
        .endsWith("Putting formulas back")
        .hasSize(desk.book().all().size() + 2);
  }

  @Test
  void cancelling_at_any_step_changes_nothing() throws Exception {
    List<XCell> cells = overwritten(2);
    String[] before = steps();
    for (int at : new int[] {0, 30, 60, 90}) {
      Progress late =
          (percent, words) -> {
            if (percent >= at) {
              throw new Cancelled();
            }
          };
      assertThatThrownBy(() -> Mend.mend(desk, late)).isInstanceOf(Cancelled.class);
      assertThat(formulas(cells)).as("cancelled at %d", at).containsOnly(OTHER);
      assertThat(steps()).isEqualTo(before);
    }
  }

  @Test
  void what_was_mended_is_one_step_of_undo() throws Exception {
    List<XCell> cells = overwritten(3);
    int before = steps().length;
    Mend.mend(desk, Progress.NONE);
    assertThat(steps()).hasSize(before + 1).startsWith("Mend formulas");
    XComponent document = desk.document();
    Uno.as(XUndoManagerSupplier.class, document).getUndoManager().undo();
    assertThat(formulas(cells)).containsOnly(OTHER);
  }
}
