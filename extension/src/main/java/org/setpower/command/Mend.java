package org.setpower.command;

import static org.setpower.command.Say.say;

import com.sun.star.container.XIndexAccess;
import com.sun.star.frame.XComponentLoader;
import com.sun.star.lang.XComponent;
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
import com.sun.star.util.XCloseable;
import com.sun.star.util.XProtectable;
import java.util.ArrayList;
import java.util.List;
import org.setpower.sheet.Words;

/**
 * Puts the formulas of the template back where they differ: cells that were dragged, or cut and
 * pasted, take the formulas that read them along. What is typed stays.
 */
final class Mend implements Command {
  private static final String TITLE = "Mend formulas";

  @Override
  public void openly(Desk desk) throws Exception {
    Boxes.say(desk, mend(desk));
  }

  @Override
  public boolean makesSense(Desk desk) throws Exception {
    return desk.mayWrite() && !desk.book().origin().isEmpty();
  }

  @Override
  public String quietly(Desk desk, Order order) throws Exception {
    return mend(desk);
  }

  private static String mend(Desk desk) throws Exception {
    Book book = desk.book();
    String origin = book.origin();
    if (origin.isEmpty()) {
      throw new Sorry("This document was not made from a sheet of Set power.");
    }
    XComponent template = open(desk, origin);
    try {
      Book right = new Book(template);
      if (!right.origin().equals(origin)) {
        throw new Sorry(
            "This document was made from another version of its template, so its formulas cannot be"
                + " compared: begin a new one and copy what is typed, table by table.");
      }
      int[] mended = new int[1];
      UndoStep.in(book, TITLE, () -> mended[0] = mend(book, right));
      return mended[0] == 0
          ? say("Every formula is as the template has it.")
          : say("{} cells have the formula of the template again.", mended[0]);
    } finally {
      Uno.as(XCloseable.class, template).close(true);
    }
  }

  /** The language of a template stands behind its version; nothing for English. */
  private static String language(String origin) {
    return origin.matches(".*-[a-z]{2}") ? origin.substring(origin.length() - 2) : Words.ENGLISH;
  }

  private static XComponent open(Desk desk, String origin) throws Exception {
    String file = "/" + origin.substring(0, origin.lastIndexOf(' ')) + ".ots";
    for (Shelf.Item item : Shelf.of(desk, language(origin))) {
      if (item.url().endsWith(file)) {
        return Uno.as(XComponentLoader.class, desk.desktop())
            .loadComponentFromURL(
                item.url(),
                "_blank",
                0,
                Uno.properties(Uno.property("Hidden", true), Uno.property("AsTemplate", true)));
      }
    }
    throw new Sorry("The template of this document is not among the installed ones.");
  }

  private static int mend(Book book, Book right) throws Exception {
    int mended = mendNames(names(right), names(book));
    for (XSpreadsheet from : right.all()) {
      if (book.sheets().hasByName(Book.name(from))) {
        XSpreadsheet to = book.sheet(Book.name(from));
        for (CellRangeAddress at :
            Uno.as(XCellRangesQuery.class, from)
                .queryContentCells((short) CellFlags.FORMULA)
                .getRangeAddresses()) {
          mended += mend(from, to, at);
        }
        dress(from, to);
      }
    }
    return mended;
  }

  private static XNamedRanges names(Book book) throws Exception {
    return Uno.as(XNamedRanges.class, Uno.get(book.document(), "NamedRanges"));
  }

  /** Names that stand for cells or formulas; what users named themselves stays. */
  private static int mendNames(XNamedRanges from, XNamedRanges to) throws Exception {
    int mended = 0;
    for (String name : from.getElementNames()) {
      XNamedRange wanted = Uno.as(XNamedRange.class, from.getByName(name));
      if (!to.hasByName(name)) {
        to.addNewByName(name, wanted.getContent(), wanted.getReferencePosition(), wanted.getType());
        mended++;
      } else {
        XNamedRange there = Uno.as(XNamedRange.class, to.getByName(name));
        if (!plain(wanted.getContent()).equals(plain(there.getContent()))) {
          there.setContent(wanted.getContent());
          mended++;
        }
      }
    }
    return mended;
  }

  private static int mend(XSpreadsheet from, XSpreadsheet to, CellRangeAddress at)
      throws Exception {
    String[][] wanted = formulas(from, at);
    String[][] there = formulas(to, at);
    List<CellRangeAddress> arrays = new ArrayList<>();
    int mended = 0;
    for (int r = 0; r < wanted.length; r++) {
      for (int c = 0; c < wanted[r].length; c++) {
        int column = at.StartColumn + c;
        int row = at.StartRow + r;
        if (plain(wanted[r][c]).equals(plain(there[r][c])) || isToFill(to, column, row)) {
          continue;
        }
        if (!wanted[r][c].startsWith("{")) {
          to.getCellByPosition(column, row).setFormula(wanted[r][c]);
          mended++;
        } else if (arrays.stream().noneMatch(a -> holds(a, column, row))) {
          arrays.add(array(from, column, row));
          mended++;
        }
      }
    }
    for (CellRangeAddress array : arrays) {
      setArray(from, to, array);
    }
    return mended;
  }

  /** Cells to fill that were dragged leave plain, locked ones behind: they are dressed again. */
  private static void dress(XSpreadsheet from, XSpreadsheet to) throws Exception {
    XIndexAccess looks =
        Uno.as(XUniqueCellFormatRangesSupplier.class, from).getUniqueCellFormatRanges();
    for (int i = 0; i < looks.getCount(); i++) {
      Object alike = looks.getByIndex(i);
      if (((CellProtection) Uno.get(alike, "CellProtection")).IsLocked) {
        continue;
      }
      for (CellRangeAddress at : Uno.as(XSheetCellRanges.class, alike).getRangeAddresses()) {
        Object style = Uno.get(cells(from, at), "CellStyle");
        if (!style.equals(Uno.get(cells(to, at), "CellStyle"))) {
          unlocked(to, () -> Uno.set(cells(to, at), "CellStyle", style));
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
