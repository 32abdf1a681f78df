package org.setpower.command.repair;

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
import com.sun.star.sheet.XSpreadsheet;
import com.sun.star.sheet.XUniqueCellFormatRangesSupplier;
import com.sun.star.table.CellAddress;
import com.sun.star.table.CellRangeAddress;
import com.sun.star.uno.Exception;
import com.sun.star.util.CellProtection;
import com.sun.star.util.XCloseable;
import java.lang.ref.SoftReference;
import java.util.ArrayList;
import java.util.List;
import org.setpower.command.CommandContext;
import org.setpower.command.document.CalcDocument;
import org.setpower.command.message.UserMessageException;
import org.setpower.command.newfile.ShippedTemplates;
import org.setpower.uno.Uno;

/**
 * What a template has in its cells and names. The one asked for last is kept for the session, as
 * opening a template takes longer than everything else.
 */
record TemplateFormulas(String origin, List<Name> names, List<Tab> tabs) {
  private static SoftReference<TemplateFormulas> last = new SoftReference<>(null);

  /** A name of the document that stands for cells or a formula. */
  record Name(String name, String content, CellAddress position, int type) {}

  /** A block of cells that all have formulas. */
  record Area(CellRangeAddress at, String[][] formulas) {}

  /** An array formula with all its cells. */
  record Array(CellRangeAddress at, String formula) {
    boolean holds(int column, int row) {
      return at.StartColumn <= column
          && column <= at.EndColumn
          && at.StartRow <= row
          && row <= at.EndRow;
    }
  }

  /** Cells to fill, with the style they have. */
  record Look(CellRangeAddress at, String style) {}

  /** One tab; its title is what its first row says, by which it is known when it is renamed. */
  record Tab(String name, String title, List<Area> areas, List<Array> arrays, List<Look> looks) {
    Array array(int column, int row) {
      return arrays.stream().filter(a -> a.holds(column, row)).findFirst().orElseThrow();
    }
  }

  /** The template that a document was made from, named with its version as the document has it. */
  static TemplateFormulas of(CommandContext desk, String origin) throws Exception {
    synchronized (TemplateFormulas.class) {
      TemplateFormulas known = last.get();
      if (known != null && known.origin.equals(origin)) {
        return known;
      }
    }
    TemplateFormulas read = read(desk, origin);
    synchronized (TemplateFormulas.class) {
      last = new SoftReference<>(read);
    }
    return read;
  }

  private static TemplateFormulas read(CommandContext desk, String origin) throws Exception {
    XComponent template = open(desk, origin);
    try {
      CalcDocument book = new CalcDocument(template);
      if (!book.origin().equals(origin)) {
        throw new UserMessageException(
            "This document was made from another version of its template, so its formulas cannot be"
                + " compared: begin a new one and copy what is typed, table by table.");
      }
      List<Tab> tabs = new ArrayList<>();
      for (XSpreadsheet sheet : book.all()) {
        tabs.add(tab(sheet));
      }
      return new TemplateFormulas(origin, names(book), tabs);
    } finally {
      Uno.as(XCloseable.class, template).close(true);
    }
  }

  private static XComponent open(CommandContext desk, String origin) throws Exception {
    String name = origin.replaceFirst(" [^ ]*$", "");
    String url = ShippedTemplates.template(desk, CalcDocument.language(origin), name + ".ots");
    if (url.isEmpty()) {
      throw new UserMessageException(
          "The template of this document is not among the installed ones.");
    }
    XComponent template = load(desk, url);
    if (template == null) {
      throw new UserMessageException(
          "Cannot open “{}”: its file is damaged. Reinstall the extension.", name);
    }
    return template;
  }

  /** Null if it cannot be read. */
  private static XComponent load(CommandContext desk, String url) throws Exception {
    try {
      return Uno.as(XComponentLoader.class, desk.desktop())
          .loadComponentFromURL(
              url,
              "_blank",
              0,
              Uno.properties(Uno.property("Hidden", true), Uno.property("AsTemplate", true)));
    } catch (com.sun.star.io.IOException | com.sun.star.lang.IllegalArgumentException damaged) {
      return null;
    }
  }

  private static List<Name> names(CalcDocument book) throws Exception {
    XNamedRanges names = Uno.as(XNamedRanges.class, Uno.get(book.document(), "NamedRanges"));
    List<Name> all = new ArrayList<>();
    for (String name : names.getElementNames()) {
      XNamedRange range = Uno.as(XNamedRange.class, names.getByName(name));
      all.add(new Name(name, range.getContent(), range.getReferencePosition(), range.getType()));
    }
    return all;
  }

  private static Tab tab(XSpreadsheet sheet) throws Exception {
    List<Area> areas = new ArrayList<>();
    List<Array> arrays = new ArrayList<>();
    for (CellRangeAddress at :
        Uno.as(XCellRangesQuery.class, sheet)
            .queryContentCells((short) CellFlags.FORMULA)
            .getRangeAddresses()) {
      Area area = new Area(at, formulas(sheet, at));
      areas.add(area);
      collectArrays(sheet, area, arrays);
    }
    return new Tab(CalcDocument.name(sheet), title(sheet), areas, arrays, looks(sheet));
  }

  /** What stands in the first row: in its first cell, or beside the names of a wide table. */
  static String title(XSpreadsheet sheet) throws Exception {
    String first = CalcDocument.shown(sheet.getCellByPosition(0, 0));
    return first.isEmpty() ? CalcDocument.shown(sheet.getCellByPosition(1, 0)) : first;
  }

  static String[][] formulas(XSpreadsheet sheet, CellRangeAddress at) throws Exception {
    return Uno.as(
            XCellRangeFormula.class,
            sheet.getCellRangeByPosition(at.StartColumn, at.StartRow, at.EndColumn, at.EndRow))
        .getFormulaArray();
  }

  private static void collectArrays(XSpreadsheet sheet, Area area, List<Array> arrays)
      throws Exception {
    for (int r = 0; r < area.formulas.length; r++) {
      for (int c = 0; c < area.formulas[r].length; c++) {
        int column = area.at.StartColumn + c;
        int row = area.at.StartRow + r;
        if (area.formulas[r][c].startsWith("{")
            && arrays.stream().noneMatch(a -> a.holds(column, row))) {
          arrays.add(array(sheet, column, row));
        }
      }
    }
  }

  private static Array array(XSpreadsheet sheet, int column, int row) throws Exception {
    XSheetCellCursor cursor =
        sheet.createCursorByRange(
            Uno.as(XSheetCellRange.class, sheet.getCellRangeByPosition(column, row, column, row)));
    cursor.collapseToCurrentArray();
    return new Array(
        Uno.as(XCellRangeAddressable.class, cursor).getRangeAddress(),
        Uno.as(XArrayFormulaRange.class, cursor).getArrayFormula());
  }

  private static List<Look> looks(XSpreadsheet sheet) throws Exception {
    List<Look> looks = new ArrayList<>();
    XIndexAccess alikes =
        Uno.as(XUniqueCellFormatRangesSupplier.class, sheet).getUniqueCellFormatRanges();
    for (int i = 0; i < alikes.getCount(); i++) {
      Object alike = alikes.getByIndex(i);
      if (((CellProtection) Uno.get(alike, "CellProtection")).IsLocked) {
        continue;
      }
      String style = null; // the same for all of them
      for (CellRangeAddress at : Uno.as(XSheetCellRanges.class, alike).getRangeAddresses()) {
        if (style == null) {
          style =
              (String) Uno.get(sheet.getCellByPosition(at.StartColumn, at.StartRow), "CellStyle");
        }
        looks.add(new Look(at, style));
      }
    }
    return looks;
  }
}
