package org.setpower.command.rows;

import com.sun.star.sheet.XCellRangeAddressable;
import com.sun.star.table.CellContentType;
import com.sun.star.table.CellRangeAddress;
import com.sun.star.table.XCell;
import com.sun.star.table.XCellRange;
import com.sun.star.uno.Exception;
import java.util.Optional;
import java.util.OptionalDouble;
import org.setpower.command.document.CalcDocument;
import org.setpower.command.plan.PlanFile;
import org.setpower.plan.common.InputColumn;
import org.setpower.plan.common.InputTable;
import org.setpower.uno.Uno;

/** Numbers typed in one table that name rows of another: they follow these rows. */
final class RowReferences {
  private RowReferences() {}

  /**
   * Corrects what is typed in other tables after rows were inserted or deleted.
   *
   * @param area cells of the table that was changed, with its headings
   * @param from first row of the sheet that was deleted or that moved
   * @param more rows inserted before it; negative: deleted from it on
   * @return numbers that named a deleted row and are blank now
   */
  static int follow(CalcDocument book, CellRangeAddress area, int from, int more) throws Exception {
    Optional<PlanFile> file = PlanFile.of(book);
    int lost = 0;
    if (file.isPresent()) {
      for (InputTable<?> changed : file.get().model().inputs()) {
        CellRangeAddress cells = changed.isUpright() ? null : address(first(file.get(), changed));
        if (cells != null && isIn(cells, area)) {
          lost += follow(file.get(), changed.key(), new RowShift(from - cells.StartRow + 1, more));
        }
      }
    }
    return lost;
  }

  private static XCellRange first(PlanFile file, InputTable<?> table) throws Exception {
    return file.typed(table, table.columns().get(0).key());
  }

  private static CellRangeAddress address(XCellRange cells) {
    return cells == null ? null : Uno.as(XCellRangeAddressable.class, cells).getRangeAddress();
  }

  private static boolean isIn(CellRangeAddress cells, CellRangeAddress area) {
    return cells.Sheet == area.Sheet
        && area.StartRow <= cells.StartRow
        && cells.StartRow <= area.EndRow
        && area.StartColumn <= cells.StartColumn
        && cells.StartColumn <= area.EndColumn;
  }

  private static int follow(PlanFile file, String changed, RowShift shift) throws Exception {
    int lost = 0;
    for (InputTable<?> table : file.model().inputs()) {
      for (InputColumn column : table.columns()) {
        XCellRange cells = column.rowOf().equals(changed) ? file.typed(table, column.key()) : null;
        lost += cells == null ? 0 : follow(cells, shift);
      }
    }
    return lost;
  }

  /** Numbers only: what a formula answers follows by itself. */
  private static int follow(XCellRange cells, RowShift shift) throws Exception {
    int lost = 0;
    CellRangeAddress at = address(cells);
    for (int i = 0; i <= at.EndRow - at.StartRow; i++) {
      XCell cell = cells.getCellByPosition(0, i);
      if (cell.getType() == CellContentType.VALUE) {
        OptionalDouble now = shift.of(cell.getValue());
        if (now.isEmpty()) {
          cell.setFormula("");
          lost++;
        } else if (now.getAsDouble() != cell.getValue()) {
          cell.setValue(now.getAsDouble());
        }
      }
    }
    return lost;
  }
}
