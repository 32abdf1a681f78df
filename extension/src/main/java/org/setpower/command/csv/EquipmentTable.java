package org.setpower.command.csv;

import static org.setpower.command.message.CommandMessages.say;

import com.sun.star.container.XNameAccess;
import com.sun.star.sheet.XCellRangeData;
import com.sun.star.sheet.XDatabaseRange;
import com.sun.star.sheet.XSpreadsheet;
import com.sun.star.table.CellRangeAddress;
import com.sun.star.table.XCell;
import com.sun.star.table.XCellRange;
import com.sun.star.uno.Exception;
import com.sun.star.util.CellProtection;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.setpower.command.document.CalcDocument;
import org.setpower.command.document.InputRule;
import org.setpower.command.message.UserMessageException;
import org.setpower.uno.Uno;

/** One list of the sheet Kit: a heading row, and below it cells to fill on the left. */
final class EquipmentTable {
  static final String SHEET = "Kit";

  /** How the cells of its lists are called, in every language. */
  private static final String ROWS = "Rows_" + SHEET + "_";

  private static final int TITLE_ROWS = 3;

  private final XSpreadsheet sheet;
  private final CellRangeAddress area;
  private final String title;
  private final List<String> headings = new ArrayList<>();
  private final List<InputRule> rules = new ArrayList<>();

  private EquipmentTable(XSpreadsheet sheet, CellRangeAddress area) throws Exception {
    this.sheet = sheet;
    this.area = area;
    for (int c = area.StartColumn; c <= area.EndColumn; c++) {
      XCell first = sheet.getCellByPosition(c, area.StartRow + 1);
      if (((CellProtection) Uno.get(first, "CellProtection")).IsLocked) {
        break;
      }
      String heading = CalcDocument.shown(sheet.getCellByPosition(c, area.StartRow));
      headings.add(heading.replace("-\n", "-").replace("\n", " "));
      rules.add(InputRule.of(first));
    }
    title = titleAbove();
  }

  private String titleAbove() throws Exception {
    for (int r = area.StartRow - 1; r >= Math.max(0, area.StartRow - TITLE_ROWS); r--) {
      String above = CalcDocument.shown(sheet.getCellByPosition(area.StartColumn, r));
      if (!above.isBlank()) {
        return above;
      }
    }
    return headings.isEmpty() ? "" : headings.get(0);
  }

  /** Whether a document has such lists. */
  static boolean areIn(CalcDocument book) throws Exception {
    XNameAccess ranges = Uno.as(XNameAccess.class, Uno.get(book.document(), "DatabaseRanges"));
    return List.of(ranges.getElementNames()).stream().anyMatch(n -> n.startsWith(ROWS));
  }

  /** The lists of a document, from top to bottom. */
  static List<EquipmentTable> of(CalcDocument book) throws Exception {
    XNameAccess ranges = Uno.as(XNameAccess.class, Uno.get(book.document(), "DatabaseRanges"));
    List<EquipmentTable> tables = new ArrayList<>();
    for (String name : ranges.getElementNames()) {
      if (name.startsWith(ROWS)) {
        CellRangeAddress area = Uno.as(XDatabaseRange.class, ranges.getByName(name)).getDataArea();
        tables.add(new EquipmentTable(book.sheet(area.Sheet), area));
      }
    }
    tables.removeIf(t -> t.headings.isEmpty());
    tables.sort(Comparator.comparing((EquipmentTable t) -> t.area.StartRow));
    if (tables.isEmpty()) {
      throw new UserMessageException(
          "This document has no sheet “{}” with lists: open one made from a sheet of"
              + " Set Power.",
          say("Kit"));
    }
    return tables;
  }

  /** What stands above it. */
  String title() {
    return title;
  }

  List<String> headings() {
    return headings;
  }

  InputRule rule(int column) {
    return rules.get(column);
  }

  /** How many rows fit. */
  int room() {
    return area.EndRow - area.StartRow;
  }

  private XCellRange cells() throws Exception {
    return sheet.getCellRangeByPosition(
        area.StartColumn, area.StartRow + 1, area.StartColumn + headings.size() - 1, area.EndRow);
  }

  /** The filled rows: Doubles and texts. */
  List<Object[]> rows() throws Exception {
    List<Object[]> filled = new ArrayList<>();
    for (Object[] row : Uno.as(XCellRangeData.class, cells()).getDataArray()) {
      for (Object cell : row) {
        if (!"".equals(cell)) {
          filled.add(row);
          break;
        }
      }
    }
    return filled;
  }

  /** Puts these rows in the place of all; texts stay texts, whatever they begin with. */
  void replace(List<Object[]> rows) throws Exception {
    Object[][] all = new Object[room()][headings.size()];
    for (int r = 0; r < all.length; r++) {
      if (r < rows.size()) {
        all[r] = rows.get(r);
      } else {
        java.util.Arrays.fill(all[r], "");
      }
    }
    Uno.as(XCellRangeData.class, cells()).setDataArray(all);
  }
}
