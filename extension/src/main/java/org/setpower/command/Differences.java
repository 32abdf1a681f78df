package org.setpower.command;

import static org.setpower.command.Say.say;

import com.sun.star.container.XIndexAccess;
import com.sun.star.sheet.CellFlags;
import com.sun.star.sheet.XArrayFormulaRange;
import com.sun.star.sheet.XCellRangeAddressable;
import com.sun.star.sheet.XCellRangeFormula;
import com.sun.star.sheet.XCellRangesQuery;
import com.sun.star.sheet.XNamedRange;
import com.sun.star.sheet.XNamedRanges;
import com.sun.star.sheet.XSheetCellCursor;
import com.sun.star.sheet.XSheetCellRange;
import com.sun.star.sheet.XSheetCellRanges;
import com.sun.star.sheet.XSheetOperation;
import com.sun.star.sheet.XSpreadsheet;
import com.sun.star.sheet.XUniqueCellFormatRangesSupplier;
import com.sun.star.table.CellRangeAddress;
import com.sun.star.table.XCellRange;
import com.sun.star.uno.Exception;
import com.sun.star.util.CellProtection;
import com.sun.star.util.XProtectable;
import java.util.ArrayList;
import java.util.List;

/**
 * Where the formulas of a document are not those of its template: found first, changing nothing,
 * then mended all at once.
 */
final class Differences {
  private final List<Safely.Action> formulas = new ArrayList<>();
  private final List<Safely.Action> looks = new ArrayList<>();

  private Differences() {}

  /** Compares them sheet by sheet; the progress goes to 90 per cent. */
  static Differences between(Book book, Book right, Progress progress) throws Exception {
    Differences differences = new Differences();
    differences.findNames(names(right), names(book));
    List<XSpreadsheet> sheets = right.all();
    for (int i = 0; i < sheets.size(); i++) {
      XSpreadsheet from = sheets.get(i);
      progress.at(30 + 60 * i / sheets.size(), say("Formulas of the sheet {}", Book.name(from)));
      if (book.sheets().hasByName(Book.name(from))) {
        differences.find(from, book.sheet(Book.name(from)));
      }
    }
    return differences;
  }

  /** How many formulas differ, in cells or behind names; an array counts once. */
  int count() {
    return formulas.size();
  }

  boolean isEmpty() {
    return formulas.isEmpty() && looks.isEmpty();
  }

  /** Puts everything back as the template has it. */
  void mend() throws Exception {
    for (Safely.Action formula : formulas) {
      formula.run();
    }
    for (Safely.Action look : looks) {
      look.run();
    }
  }

  private static XNamedRanges names(Book book) throws Exception {
    return Uno.as(XNamedRanges.class, Uno.get(book.document(), "NamedRanges"));
  }

  /** Names that stand for cells or formulas; what users named themselves stays. */
  private void findNames(XNamedRanges from, XNamedRanges to) throws Exception {
    for (String name : from.getElementNames()) {
      XNamedRange wanted = Uno.as(XNamedRange.class, from.getByName(name));
      if (!to.hasByName(name)) {
        formulas.add(
            () ->
                to.addNewByName(
                    name, wanted.getContent(), wanted.getReferencePosition(), wanted.getType()));
      } else {
        XNamedRange there = Uno.as(XNamedRange.class, to.getByName(name));
        if (!plain(wanted.getContent()).equals(plain(there.getContent()))) {
          formulas.add(() -> there.setContent(wanted.getContent()));
        }
      }
    }
  }

  private void find(XSpreadsheet from, XSpreadsheet to) throws Exception {
    for (CellRangeAddress at :
        Uno.as(XCellRangesQuery.class, from)
            .queryContentCells((short) CellFlags.FORMULA)
            .getRangeAddresses()) {
      findFormulas(from, to, at);
    }
    findLooks(from, to);
  }

  private void findFormulas(XSpreadsheet from, XSpreadsheet to, CellRangeAddress at)
      throws Exception {
    String[][] wanted = formulas(from, at);
    String[][] there = formulas(to, at);
    List<CellRangeAddress> arrays = new ArrayList<>();
    for (int r = 0; r < wanted.length; r++) {
      for (int c = 0; c < wanted[r].length; c++) {
        int column = at.StartColumn + c;
        int row = at.StartRow + r;
        String formula = wanted[r][c];
        if (plain(formula).equals(plain(there[r][c])) || isToFill(to, column, row)) {
          continue;
        }
        if (!formula.startsWith("{")) {
          formulas.add(() -> to.getCellByPosition(column, row).setFormula(formula));
        } else if (arrays.stream().noneMatch(a -> holds(a, column, row))) {
          CellRangeAddress array = array(from, column, row);
          arrays.add(array);
          formulas.add(() -> setArray(from, to, array));
        }
      }
    }
  }

  /** Cells to fill that were dragged leave plain, locked ones behind: they are dressed again. */
  private void findLooks(XSpreadsheet from, XSpreadsheet to) throws Exception {
    XIndexAccess alikes =
        Uno.as(XUniqueCellFormatRangesSupplier.class, from).getUniqueCellFormatRanges();
    for (int i = 0; i < alikes.getCount(); i++) {
      Object alike = alikes.getByIndex(i);
      if (((CellProtection) Uno.get(alike, "CellProtection")).IsLocked) {
        continue;
      }
      for (CellRangeAddress at : Uno.as(XSheetCellRanges.class, alike).getRangeAddresses()) {
        Object style = Uno.get(cells(from, at), "CellStyle");
        if (!style.equals(Uno.get(cells(to, at), "CellStyle"))) {
          looks.add(() -> unlocked(to, () -> Uno.set(cells(to, at), "CellStyle", style)));
        }
      }
    }
  }

  private static String[][] formulas(XSpreadsheet sheet, CellRangeAddress at) throws Exception {
    return Uno.as(XCellRangeFormula.class, cells(sheet, at)).getFormulaArray();
  }

  private static XCellRange cells(XSpreadsheet sheet, CellRangeAddress at) throws Exception {
    return sheet.getCellRangeByPosition(at.StartColumn, at.StartRow, at.EndColumn, at.EndRow);
  }

  /** After a move Calc names the sheet at both ends of a range. */
  private static String plain(String formula) {
    return formula.replaceAll(":\\$('[^']*'|[\\w\\p{L} ]+)\\.", ":");
  }

  private static boolean isToFill(XSpreadsheet sheet, int column, int row) throws Exception {
    return !((CellProtection) Uno.get(sheet.getCellByPosition(column, row), "CellProtection"))
        .IsLocked;
  }

  private static CellRangeAddress array(XSpreadsheet sheet, int column, int row) throws Exception {
    XSheetCellCursor cursor =
        sheet.createCursorByRange(
            Uno.as(XSheetCellRange.class, sheet.getCellRangeByPosition(column, row, column, row)));
    cursor.collapseToCurrentArray();
    return Uno.as(XCellRangeAddressable.class, cursor).getRangeAddress();
  }

  private static boolean holds(CellRangeAddress array, int column, int row) {
    return array.StartColumn <= column
        && column <= array.EndColumn
        && array.StartRow <= row
        && row <= array.EndRow;
  }

  /** An array is written as a whole, which a protected sheet refuses. */
  private static void setArray(XSpreadsheet from, XSpreadsheet to, CellRangeAddress array)
      throws Exception {
    unlocked(
        to,
        () -> {
          XCellRange cells = cells(to, array);
          Uno.as(XSheetOperation.class, cells).clearContents(CellFlags.FORMULA);
          Uno.as(XArrayFormulaRange.class, cells)
              .setArrayFormula(
                  Uno.as(XArrayFormulaRange.class, cells(from, array)).getArrayFormula());
        });
  }

  private static void unlocked(XSpreadsheet sheet, Safely.Action writing) throws Exception {
    boolean wasLocked = Freezer.unlock(sheet);
    try {
      writing.run();
    } finally {
      if (wasLocked) {
        Uno.as(XProtectable.class, sheet).protect("");
      }
    }
  }
}
