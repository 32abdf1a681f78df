package org.setpower.command.export;

import com.sun.star.awt.Point;
import com.sun.star.awt.Size;
import com.sun.star.container.XIndexAccess;
import com.sun.star.container.XNameAccess;
import com.sun.star.container.XNamed;
import com.sun.star.document.XDocumentProperties;
import com.sun.star.document.XDocumentPropertiesSupplier;
import com.sun.star.drawing.XShape;
import com.sun.star.sheet.XCellRangeAddressable;
import com.sun.star.sheet.XCellRangeData;
import com.sun.star.sheet.XHeaderFooterContent;
import com.sun.star.sheet.XPrintAreas;
import com.sun.star.sheet.XSheetCellCursor;
import com.sun.star.sheet.XSheetCellRange;
import com.sun.star.sheet.XSpreadsheet;
import com.sun.star.style.XStyleFamiliesSupplier;
import com.sun.star.table.CellContentType;
import com.sun.star.table.CellRangeAddress;
import com.sun.star.table.CellVertJustify2;
import com.sun.star.table.XCell;
import com.sun.star.table.XCellRange;
import com.sun.star.table.XColumnRowRange;
import com.sun.star.text.XText;
import com.sun.star.text.XTextContent;
import com.sun.star.uno.Exception;
import com.sun.star.util.XMergeable;
import java.util.BitSet;
import java.util.List;
import java.util.Map;
import org.setpower.command.CommandContext;
import org.setpower.command.document.CalcDocument;
import org.setpower.plan.quote.LineKind;
import org.setpower.uno.Uno;

/**
 * Writes what a tab shows into a new document: words and numbers with their look, and nothing else
 * of the document it comes from. Rows that show nothing are left out.
 */
final class ClientPage {
  /** What is taken over of a page. */
  private static final List<String> PAGE =
      List.of(
          "IsLandscape",
          "Width",
          "Height",
          "LeftMargin",
          "RightMargin",
          "TopMargin",
          "BottomMargin",
          "ScaleToPagesX",
          "ScaleToPagesY",
          "HeaderIsOn",
          "FooterIsOn",
          "FirstPageNumber");

  private static final int LINE = 480; // of 10 pt in 1/100 mm
  private static final double LETTERS = 0.0058; // of 10 pt a 1/100 mm, on the safe side
  private static final int BLANK = 450;
  private static final int SIGNATURE = 1400;
  private static final int MARGIN = 150;
  private static final int SPARE = 400; // of a page, for what rounding takes

  private final CommandContext desk;
  private final CalcDocument from;
  private final XSpreadsheet tab;
  private final CalcDocument to;
  private final XSpreadsheet page;
  private final Map<Integer, String> kinds;
  private final CellLooks looks;
  private int next;
  private int sums;
  private int terms;

  /**
   * A page.
   *
   * @param desk whose document it comes from
   * @param kinds what the rows of the list are, by row of the tab
   * @param decimals of amounts
   */
  ClientPage(
      CommandContext desk,
      XSpreadsheet tab,
      CalcDocument to,
      Map<Integer, String> kinds,
      int decimals)
      throws Exception {
    this.desk = desk;
    from = desk.book();
    this.tab = tab;
    this.to = to;
    this.kinds = kinds;
    looks = new CellLooks(from, to, decimals);
    page = to.sheet(0);
  }

  /**
   * Writes it.
   *
   * @param first the first row that the client sees
   * @param closing the row above the sentences below the lines
   * @return how many rows it has
   */
  int write(String name, String title, int first, int closing) throws Exception {
    Uno.as(XNamed.class, page).setName(name);
    Uno.set(to.document(), "CharLocale", Uno.get(from.document(), "CharLocale"));
    CellRangeAddress used = used();
    pictures();
    for (int column = 0; column <= used.EndColumn; column++) {
      Uno.set(column(page, column), "Width", Uno.get(column(tab, column), "Width"));
    }
    boolean gap = false;
    BitSet shown = shown(used);
    for (int row = first; row <= used.EndRow; row++) {
      if (!shown.get(row)) {
        gap = true;
      } else {
        if (gap && next > 0) {
          height(next++, BLANK);
        }
        gap = false;
        terms = terms == 0 && row > closing ? next : terms;
        sums = sums == 0 && LineKind.NET.word().equals(kinds.get(row)) ? next : sums;
        row(row, used.EndColumn);
      }
    }
    height(next - 1, SIGNATURE);
    Uno.set(page.getCellByPosition(0, next - 1), "VertJustify", CellVertJustify2.BOTTOM);
    look();
    properties(title);
    XPrintAreas areas = Uno.as(XPrintAreas.class, page);
    areas.setPrintAreas(
        new CellRangeAddress[] {new CellRangeAddress((short) 0, 0, 0, used.EndColumn, next - 1)});
    keepTogether();
    return next;
  }

  /** Pictures of the letterhead, in a first row of their height. */
  private void pictures() throws Exception {
    int tallest = 0;
    for (XShape picture : PagePictures.above(tab, list())) {
      Size size = picture.getSize();
      tallest = Math.max(tallest, size.Height);
      int left = picture.getPosition().X;
      PagePictures.add(to, page, PagePictures.plain(desk, picture), size, 0, MARGIN)
          .setPosition(new Point(left, MARGIN));
    }
    if (tallest > 0) {
      height(next++, tallest + 2 * MARGIN);
    }
  }

  /** The first row of the list of lines. */
  private int list() {
    return kinds.keySet().stream().mapToInt(Integer::intValue).min().orElse(0);
  }

  /**
   * The sums, the terms and what the client signs are not cut: where they do not end on the page,
   * they begin the next; the terms alone where all of it is longer than a page.
   */
  private void keepTogether() throws Exception {
    // the sheet's own page breaks are those of a page that is not scaled
    XIndexAccess rows = Uno.as(XColumnRowRange.class, page).getRows();
    int room = room();
    int used = 0;
    int from = sums > 0 && height(rows, sums, next) <= room ? sums : terms;
    for (int row = 0; row < next && from > 0; row++) {
      int height = height(rows, row, row + 1);
      used += height;
      if (used > room) {
        used = height;
        if (row > from) {
          Uno.set(rows.getByIndex(from), "IsStartOfNewPage", true);
          return;
        }
      }
    }
  }

  private static int height(XIndexAccess rows, int first, int end) throws Exception {
    int height = 0;
    for (int row = first; row < end; row++) {
      height += (int) Uno.get(rows.getByIndex(row), "Height");
    }
    return height;
  }

  /** The height of what fits on a page, in the measure of the sheet: it is scaled to its width. */
  private int room() throws Exception {
    Object style = family(to, "PageStyles").getByName((String) Uno.get(page, "PageStyle"));
    int wide =
        (int) Uno.get(style, "Width")
            - (int) Uno.get(style, "LeftMargin")
            - (int) Uno.get(style, "RightMargin");
    int tall =
        (int) Uno.get(style, "Height")
            - (int) Uno.get(style, "TopMargin")
            - (int) Uno.get(style, "BottomMargin")
            - (int) Uno.get(style, "FooterHeight")
            - SPARE;
    int columns = 0;
    for (int column = 0; column <= used().EndColumn; column++) {
      columns += (int) Uno.get(column(page, column), "Width");
    }
    return (int) ((long) tall * Math.max(wide, columns) / wide);
  }

  private CellRangeAddress used() {
    XSheetCellCursor cursor = tab.createCursor();
    Uno.as(com.sun.star.sheet.XUsedAreaCursor.class, cursor).gotoEndOfUsedArea(false);
    return Uno.as(XCellRangeAddressable.class, cursor).getRangeAddress();
  }

  private static Object column(XSpreadsheet sheet, int column) throws Exception {
    return Uno.as(XColumnRowRange.class, sheet).getColumns().getByIndex(column);
  }

  /** Rows of the tab that show something. */
  private BitSet shown(CellRangeAddress used) throws Exception {
    XCellRange all = tab.getCellRangeByPosition(0, 0, used.EndColumn, used.EndRow);
    Object[][] values = Uno.as(XCellRangeData.class, all).getDataArray();
    BitSet shown = new BitSet();
    for (int row = 0; row < values.length; row++) {
      for (int column = 0; column < values[row].length && !shown.get(row); column++) {
        shown.set(
            row,
            !values[row][column].equals("")
                && !CalcDocument.shown(tab.getCellByPosition(column, row)).isEmpty());
      }
    }
    return shown;
  }

  private void row(int row, int last) throws Exception {
    int lines = 1;
    boolean merged = false;
    for (int column = 0; column <= last; column++) {
      XCell cell = tab.getCellByPosition(column, row);
      XSheetCellCursor area =
          tab.createCursorByRange(
              Uno.as(XSheetCellRange.class, tab.getCellRangeByPosition(column, row, column, row)));
      area.collapseToMergedArea();
      CellRangeAddress at = Uno.as(XCellRangeAddressable.class, area).getRangeAddress();
      if (at.StartColumn < column) {
        continue;
      }
      XCell target = page.getCellByPosition(column, next);
      String text = CalcDocument.shown(cell);
      if (isNumber(cell)) {
        target.setValue(cell.getValue());
      } else if (!text.isEmpty()) {
        Uno.as(XText.class, target).setString(text);
      }
      looks.dress(cell, kinds.get(row), target);
      if (at.EndColumn > column) {
        merged = true;
        XCellRange all = page.getCellRangeByPosition(column, next, at.EndColumn, next);
        Uno.as(XMergeable.class, all).merge(true);
        double width = 0;
        for (int c = column; c <= at.EndColumn; c++) {
          width += (int) Uno.get(column(tab, c), "Width");
        }
        int needed = 0;
        for (String line : text.split("\n")) {
          needed += 1 + (int) (line.length() / (width * LETTERS));
        }
        lines = Math.max(lines, needed);
      }
    }
    if (merged) {
      int tall = lines * LINE + 60;
      height(next, Math.max(tall, letterhead(row)));
    } else {
      Uno.set(
          Uno.as(XColumnRowRange.class, page).getRows().getByIndex(next), "OptimalHeight", true);
    }
    next++;
  }

  /** The first line of a letter is taller than others. */
  private int letterhead(int row) throws Exception {
    float points = (float) Uno.get(tab.getCellByPosition(0, row), "CharHeight");
    return points > 12 ? 800 : 0;
  }

  private static boolean isNumber(XCell cell) throws Exception {
    boolean formula =
        cell.getType() == CellContentType.FORMULA
            && (int) Uno.get(cell, "FormulaResultType2") == com.sun.star.sheet.FormulaResult.VALUE;
    return cell.getType() == CellContentType.VALUE || formula;
  }

  private void height(int row, int height) throws Exception {
    Object rows = Uno.as(XColumnRowRange.class, page).getRows().getByIndex(row);
    Uno.set(rows, "Height", height);
  }

  private static XNameAccess family(CalcDocument book, String name) throws Exception {
    return Uno.as(
        XNameAccess.class,
        Uno.as(XStyleFamiliesSupplier.class, book.document()).getStyleFamilies().getByName(name));
  }

  private void look() throws Exception {
    Object like = family(from, "PageStyles").getByName((String) Uno.get(tab, "PageStyle"));
    Object style = family(to, "PageStyles").getByName((String) Uno.get(page, "PageStyle"));
    for (String property : PAGE) {
      Uno.set(style, property, Uno.get(like, property));
    }
    XHeaderFooterContent foot =
        Uno.as(XHeaderFooterContent.class, Uno.get(style, "RightPageFooterContent"));
    foot.getLeftText().setString("");
    foot.getCenterText().setString("");
    XText right = foot.getRightText();
    right.setString("");
    var end = right.createTextCursor();
    Object number = to.factory().createInstance("com.sun.star.text.TextField.PageNumber");
    right.insertTextContent(end, Uno.as(XTextContent.class, number), false);
    Uno.set(style, "RightPageFooterContent", foot);
  }

  /** The title alone: no name, no date of the desk's document. */
  private void properties(String title) throws Exception {
    Uno.set(to.factory().createInstance("com.sun.star.document.Settings"), "ApplyUserData", false);
    XDocumentProperties properties =
        Uno.as(XDocumentPropertiesSupplier.class, to.document()).getDocumentProperties();
    properties.resetUserData("");
    properties.setTitle(title);
  }
}
