package org.setpower.command.print;

import com.sun.star.document.XUndoManager;
import com.sun.star.document.XUndoManagerSupplier;
import com.sun.star.frame.XController;
import com.sun.star.lang.XComponent;
import com.sun.star.sheet.XCellRangeAddressable;
import com.sun.star.sheet.XPrintAreas;
import com.sun.star.sheet.XSheetCellRanges;
import com.sun.star.sheet.XSpreadsheet;
import com.sun.star.sheet.XSpreadsheetView;
import com.sun.star.table.CellRangeAddress;
import com.sun.star.uno.Exception;
import com.sun.star.view.XSelectionSupplier;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.setpower.command.document.CalcDocument;
import org.setpower.templates.layout.PlanNames;
import org.setpower.uno.Uno;

/**
 * Papers of a document with letters that nobody means to print now. Each letter is for somebody
 * else, so no two go into one file by chance: the selected tabs are printed, or, where these are no
 * papers, the first letter, which is the client's. The others have no print range meanwhile.
 */
final class OtherPapers {
  private final CalcDocument book;
  private final Map<XPrintAreas, CellRangeAddress[]> aside = new LinkedHashMap<>();

  private OtherPapers(CalcDocument book) {
    this.book = book;
  }

  /** Takes the print ranges off them; of a document without letters off none. */
  static OtherPapers setAside(CalcDocument book, XController view) throws Exception {
    OtherPapers others = new OtherPapers(book);
    List<XSpreadsheet> all = book.all();
    XSpreadsheet letter = null;
    Set<Integer> selected = selected(view);
    boolean isSelected = false;
    for (int i = 0; i < all.size(); i++) {
      boolean isPrinted = printed(all.get(i)).getPrintAreas().length > 0;
      isSelected |= isPrinted && selected.contains(i);
      if (letter == null && isPrinted && isLetter(all.get(i))) {
        letter = all.get(i);
      }
    }
    for (int i = 0; letter != null && i < all.size(); i++) {
      boolean isMeant = isSelected ? selected.contains(i) : all.get(i) == letter;
      CellRangeAddress[] areas = printed(all.get(i)).getPrintAreas();
      if (!isMeant && areas.length > 0) {
        others.aside.put(printed(all.get(i)), areas);
      }
    }
    others.set(false);
    return others;
  }

  /** Whether a sheet leaves the house as a letter. */
  static boolean isLetter(XSpreadsheet sheet) throws Exception {
    return Uno.get(sheet, "PageStyle").toString().startsWith(PlanNames.LETTER);
  }

  private static XPrintAreas printed(XSpreadsheet sheet) {
    return Uno.as(XPrintAreas.class, sheet);
  }

  /** The indexes of the selected tabs. */
  private static Set<Integer> selected(XController view) {
    Set<Integer> sheets = new HashSet<>();
    XSpreadsheet active = Uno.as(XSpreadsheetView.class, view).getActiveSheet();
    sheets.add((int) Uno.as(XCellRangeAddressable.class, active).getRangeAddress().Sheet);
    Object cells = Uno.as(XSelectionSupplier.class, view).getSelection();
    XSheetCellRanges several = Uno.as(XSheetCellRanges.class, cells);
    if (several != null) {
      for (CellRangeAddress range : several.getRangeAddresses()) {
        sheets.add((int) range.Sheet);
      }
    }
    return sheets;
  }

  /** Puts the print ranges back. */
  void putBack() throws Exception {
    set(true);
    aside.clear();
  }

  XComponent document() {
    return book.document();
  }

  private void set(boolean back) throws Exception {
    XUndoManager undo = Uno.as(XUndoManagerSupplier.class, book.document()).getUndoManager();
    undo.lock();
    try {
      aside.forEach((sheet, areas) -> sheet.setPrintAreas(back ? areas : new CellRangeAddress[0]));
    } finally {
      undo.unlock();
    }
  }
}
