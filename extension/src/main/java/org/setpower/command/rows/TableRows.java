package org.setpower.command.rows;

import static org.setpower.command.message.CommandMessages.plural;
import static org.setpower.command.message.CommandMessages.say;

import com.sun.star.container.XNameAccess;
import com.sun.star.sheet.CellFlags;
import com.sun.star.sheet.XCellRangeAddressable;
import com.sun.star.sheet.XCellRangeFormula;
import com.sun.star.sheet.XCellRangeMovement;
import com.sun.star.sheet.XDatabaseRange;
import com.sun.star.sheet.XSheetOperation;
import com.sun.star.sheet.XSpreadsheet;
import com.sun.star.table.CellAddress;
import com.sun.star.table.CellRangeAddress;
import com.sun.star.table.XCellRange;
import com.sun.star.table.XColumnRowRange;
import com.sun.star.uno.Exception;
import com.sun.star.util.CellProtection;
import com.sun.star.view.XSelectionSupplier;
import java.util.Arrays;
import org.setpower.command.CommandContext;
import org.setpower.command.CommandRequest;
import org.setpower.command.document.CalcDocument;
import org.setpower.command.document.UndoStep;
import org.setpower.command.message.UserMessageException;
import org.setpower.uno.Uno;

/**
 * Rows of one of our tables. Typed values are copied up and down between its cells to fill in, so
 * that formulas, charts, sums and the size of the table stay as they are.
 */
final class TableRows {
  private static final int EVERYTHING_TYPED =
      CellFlags.VALUE
          | CellFlags.DATETIME
          | CellFlags.STRING
          | CellFlags.FORMULA
          | CellFlags.ANNOTATION;

  private final CalcDocument book;
  private final XSpreadsheet sheet;
  private final CellRangeAddress area;
  private final int inputs;
  private final int first;
  private final int last;
  private final int filled;

  private TableRows(CalcDocument book, CellRangeAddress area, CellRangeAddress chosen)
      throws Exception {
    this.book = book;
    this.area = area;
    sheet = book.sheet(area.Sheet);
    inputs = inputs(sheet, area);
    first = chosen.StartRow;
    last = Math.min(chosen.EndRow, area.EndRow);
    filled = lastFilled();
    refuseHidden();
  }

  /** The rows that are selected, or those an order names. */
  static TableRows chosen(CommandContext desk, CommandRequest order) throws Exception {
    CellRangeAddress chosen = order == null ? selected(desk) : named(desk.book(), order);
    CalcDocument book = desk.book();
    CellRangeAddress area = table(book, chosen);
    if (area == null) {
      throw new UserMessageException("Select a row inside a Set Power table first.");
    }
    return new TableRows(book, area, chosen);
  }

  /** Whether rows of a table of ours are selected and may be moved. */
  static boolean areSelected(CommandContext desk) throws Exception {
    return desk.mayWrite() && table(desk.book(), selected(desk)) != null;
  }

  /** The table that the chosen cells begin in; null if there is none. */
  private static CellRangeAddress table(CalcDocument book, CellRangeAddress chosen)
      throws Exception {
    XNameAccess ranges = Uno.as(XNameAccess.class, Uno.get(book.document(), "DatabaseRanges"));
    for (String name : ranges.getElementNames()) {
      CellRangeAddress area = Uno.as(XDatabaseRange.class, ranges.getByName(name)).getDataArea();
      if (name.startsWith("Rows_")
          && area.Sheet == chosen.Sheet
          && area.StartRow < chosen.StartRow
          && chosen.StartRow <= area.EndRow
          && inputs(book.sheet(area.Sheet), area) > 0) {
        return area;
      }
    }
    return null;
  }

  private static CellRangeAddress selected(CommandContext desk) throws Exception {
    desk.book();
    XSelectionSupplier view = Uno.as(XSelectionSupplier.class, desk.controller());
    XCellRangeAddressable range =
        view == null ? null : Uno.as(XCellRangeAddressable.class, view.getSelection());
    if (range == null) {
      throw new UserMessageException(
          "Select one block of cells, or one cell, in the rows that are meant.");
    }
    return range.getRangeAddress();
  }

  private static CellRangeAddress named(CalcDocument book, CommandRequest order) throws Exception {
    CellAddress cell = CalcDocument.address(book.cell(order.text("cell")));
    int more = Integer.parseInt(order.text("rows", "1")) - 1;
    return new CellRangeAddress(cell.Sheet, cell.Column, cell.Row, cell.Column, cell.Row + more);
  }

  /** How many columns from the left are to be filled. */
  static int inputs(XSpreadsheet sheet, CellRangeAddress area) throws Exception {
    int columns = 0;
    while (area.StartColumn + columns <= area.EndColumn
        && !((CellProtection)
                Uno.get(
                    sheet.getCellByPosition(area.StartColumn + columns, area.StartRow + 1),
                    "CellProtection"))
            .IsLocked) {
      columns++;
    }
    return columns;
  }

  private XCellRange cells(int from, int to) throws Exception {
    return sheet.getCellRangeByPosition(area.StartColumn, from, area.StartColumn + inputs - 1, to);
  }

  /** The last row in which something is typed; the row of headings if there is none. */
  private int lastFilled() throws Exception {
    String[][] typed =
        Uno.as(XCellRangeFormula.class, cells(area.StartRow + 1, area.EndRow)).getFormulaArray();
    int row = typed.length - 1;
    while (row >= 0 && Arrays.stream(typed[row]).allMatch(String::isEmpty)) {
      row--;
    }
    return area.StartRow + 1 + row;
  }

  private void refuseHidden() throws Exception {
    var rows =
        Uno.as(XColumnRowRange.class, cells(area.StartRow + 1, Math.max(filled, last))).getRows();
    for (int i = 0; i < rows.getCount(); i++) {
      if (!(Boolean) Uno.get(rows.getByIndex(i), "IsVisible")) {
        throw new UserMessageException("Some rows of this table are hidden: show them all first.");
      }
    }
  }

  /** As many blank rows below as are chosen; gives what was done in a sentence. */
  String addBelow() throws Exception {
    int more = last - first + 1;
    if (filled + more > area.EndRow) {
      throw new UserMessageException(
          "The table has room for {} rows and is filled down to its row {}: no room for {}. Nothing"
              + " was changed.",
          area.EndRow - area.StartRow,
          filled - area.StartRow,
          rows(more));
    }
    if (last < filled) {
      UndoStep.in(
          book,
          "Insert rows below",
          () -> {
            move(last + 1, filled, last + 1 + more);
            clear(last + 1, last + more);
            RowReferences.follow(book, area, last + 1, more);
          });
    }
    return say("{} blank from row {} on.", rows(more), last + 2);
  }

  /** Without the chosen rows; those below move up. */
  String remove() throws Exception {
    int less = last - first + 1;
    if (first > filled) {
      throw new UserMessageException("Nothing is typed in these rows.");
    }
    int[] lost = new int[1];
    UndoStep.in(
        book,
        "Delete rows",
        () -> {
          if (last < filled) {
            move(last + 1, filled, first);
          }
          clear(Math.max(first, filled - less + 1), filled);
          lost[0] = RowReferences.follow(book, area, first, -less);
        });
    return lost[0] == 0
        ? say("{} removed.", rows(less))
        : say("{} removed.", rows(less)) + " " + lost(lost[0]);
  }

  private static String lost(int count) {
    return plural(
        "{} row of another tab named a removed row: its number is blank now.",
        "{} rows of other tabs named a removed row: their numbers are blank now.",
        count);
  }

  private static String rows(int count) {
    return plural("{} row", "{} rows", count);
  }

  /** Copies, as moved cells would take the formulas that read them along. */
  private void move(int from, int to, int where) throws Exception {
    CellRangeAddress source =
        Uno.as(XCellRangeAddressable.class, cells(from, to)).getRangeAddress();
    Uno.as(XCellRangeMovement.class, sheet)
        .copyRange(new CellAddress(area.Sheet, area.StartColumn, where), source);
  }

  private void clear(int from, int to) throws Exception {
    Uno.as(XSheetOperation.class, cells(from, to)).clearContents(EVERYTHING_TYPED);
  }

  /** Puts the cursor into the first cell of the rows that are meant, or below them. */
  void show(CommandContext desk, boolean below) throws Exception {
    XSelectionSupplier view = Uno.as(XSelectionSupplier.class, desk.controller());
    if (view != null) {
      int row = Math.min(below ? last + 1 : first, area.EndRow);
      view.select(cells(row, row).getCellByPosition(0, 0));
    }
  }
}
