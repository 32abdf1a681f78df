package org.setpower.command.bringin;

import static org.setpower.command.message.CommandMessages.say;

import com.sun.star.sheet.XCellRangeAddressable;
import com.sun.star.sheet.XCellRangeData;
import com.sun.star.sheet.XSheetCellCursor;
import com.sun.star.sheet.XSpreadsheet;
import com.sun.star.sheet.XUsedAreaCursor;
import com.sun.star.table.CellRangeAddress;
import com.sun.star.uno.Exception;
import java.util.List;
import org.setpower.command.document.CalcDocument;
import org.setpower.command.document.ReportSheet;
import org.setpower.plan.transfer.BroughtTable;
import org.setpower.uno.Uno;

/**
 * The hidden tab on which a document remembers what it brought in, with the document: undone with
 * it, saved with it.
 */
public final class BroughtSheet {
  static final String SHEET = "Brought in";

  private static final int HEADINGS = 2;
  private static final int[] WIDTHS = {45, 60, 20, 25, 35, 12, 45, 30, 90};

  private BroughtSheet() {}

  /** Whether a tab is the one on which a document remembers. */
  public static boolean isNamed(String tab) {
    return ReportSheet.names(SHEET).contains(tab);
  }

  /** What a document remembers; nothing where it has brought nothing in. */
  static List<BroughtTable> read(CalcDocument book) throws Exception {
    for (String name : ReportSheet.names(SHEET)) {
      if (book.sheets().hasByName(name)) {
        XSpreadsheet sheet = book.sheet(name);
        XSheetCellCursor cursor = sheet.createCursor();
        Uno.as(XUsedAreaCursor.class, cursor).gotoEndOfUsedArea(false);
        CellRangeAddress end = Uno.as(XCellRangeAddressable.class, cursor).getRangeAddress();
        var range = sheet.getCellRangeByPosition(0, 0, BroughtTable.WIDTH - 1, end.EndRow);
        return BroughtTable.read(Uno.as(XCellRangeData.class, range).getDataArray());
      }
    }
    return List.of();
  }

  static void write(CalcDocument book, List<BroughtTable> tables) throws Exception {
    ReportSheet sheet = ReportSheet.named(book, SHEET, WIDTHS);
    sheet.clear();
    sheet.type(
        0,
        say(
            "What other files held when it was brought in. The next Bring in… compares with it: do"
                + " not change it."));
    sheet.type(
        1,
        say("From, into"),
        say("File"),
        say("Revision"),
        say("Brought in on"),
        say("Table"),
        say("Row"),
        say("Key"),
        say("Group"),
        say("Cells"));
    List<Object[]> rows = BroughtTable.written(tables);
    for (int r = 0; r < rows.size(); r++) {
      sheet.type(r + HEADINGS, rows.get(r));
    }
    sheet.hide();
  }

  /** Takes over what an older file remembers: its rows stand at the same places in the new one. */
  public static void copy(CalcDocument old, CalcDocument fresh) throws Exception {
    List<BroughtTable> tables = read(old);
    if (!tables.isEmpty()) {
      write(fresh, tables);
    }
  }
}
