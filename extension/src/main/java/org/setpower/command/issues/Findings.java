package org.setpower.command.issues;

import static org.setpower.command.message.Say.say;

import com.sun.star.sheet.FormulaResult;
import com.sun.star.sheet.XCellRangeData;
import com.sun.star.sheet.XCellRangeFormula;
import com.sun.star.sheet.XCellRangesQuery;
import com.sun.star.sheet.XSpreadsheet;
import com.sun.star.table.CellAddress;
import com.sun.star.table.CellRangeAddress;
import com.sun.star.table.XCell;
import com.sun.star.table.XCellRange;
import com.sun.star.uno.Exception;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.setpower.command.document.Book;
import org.setpower.command.document.OurCall;
import org.setpower.command.document.OwnSheet;
import org.setpower.command.document.Values;
import org.setpower.command.trace.Explain;
import org.setpower.command.trace.Explainer;
import org.setpower.uno.Uno;

/**
 * Everything in a document that needs a look: cells with our functions that show an error, and
 * cells whose formula says "stop" or "look" (the cell to the right says why). What a later sheet
 * repeats is named once: the same word with the same reason, or without a reason for the same row,
 * or a list of findings, where the name of a sheet stands beside the word.
 */
final class Findings {
  private final Book book;
  private final Explainer explainer;
  private final List<Finding> found = new ArrayList<>();
  private final Map<String, String> firstSheet = new HashMap<>();

  private Findings(Book book) throws Exception {
    this.book = book;
    explainer = new Explainer(book);
  }

  /** The findings, the worst first, then as they stand in the document. */
  static List<Finding> in(Book book) throws Exception {
    Findings findings = new Findings(book);
    Set<String> ours = new HashSet<>(OwnSheet.names(Look.SHEET));
    ours.addAll(OwnSheet.names(Explain.SHEET));
    for (XSpreadsheet sheet : book.all()) {
      if (!ours.contains(Book.name(sheet))) {
        findings.errors(sheet);
        findings.words(sheet);
      }
    }
    findings.found.sort(Comparator.comparing(Finding::kind));
    return findings.found;
  }

  private static List<CellRangeAddress> formulas(XSpreadsheet sheet, int result) {
    return Book.ranges(Uno.as(XCellRangesQuery.class, sheet).queryFormulaCells(result));
  }

  private void errors(XSpreadsheet sheet) throws Exception {
    for (CellRangeAddress at : formulas(sheet, FormulaResult.ERROR)) {
      XCellRange range = book.range(at);
      String[][] texts = Uno.as(XCellRangeFormula.class, range).getFormulaArray();
      for (int r = 0; r < texts.length; r++) {
        for (int c = 0; c < texts[r].length; c++) {
          if (OurCall.mentionedIn(texts[r][c])) {
            error(sheet, range.getCellByPosition(c, r));
          }
        }
      }
    }
  }

  private void error(XSpreadsheet sheet, XCell cell) throws Exception {
    String reason = explainer.reason(cell);
    String shown = Book.shown(cell);
    add(
        Finding.Kind.ERROR,
        sheet,
        Book.address(cell),
        reason.isEmpty() ? say("The formula around our function gives {}.", shown) : reason);
  }

  private void words(XSpreadsheet sheet) throws Exception {
    for (CellRangeAddress at : formulas(sheet, FormulaResult.STRING)) {
      Object[][] data = Uno.as(XCellRangeData.class, book.range(at)).getDataArray();
      for (int r = 0; r < data.length; r++) {
        for (int c = 0; c < data[r].length; c++) {
          Finding.Kind kind = kind(data[r][c]);
          if (kind != null) {
            CellAddress cell = new CellAddress(at.Sheet, at.StartColumn + c, at.StartRow + r);
            add(kind, sheet, cell, besides(sheet, cell));
          }
        }
      }
    }
  }

  private static Finding.Kind kind(Object value) {
    if (Finding.Kind.STOP.word().equals(value)) {
      return Finding.Kind.STOP;
    }
    return Finding.Kind.LOOK.word().equals(value) ? Finding.Kind.LOOK : null;
  }

  private static String besides(XSpreadsheet sheet, CellAddress at) throws Exception {
    return Book.shown(sheet.getCellByPosition(at.Column + 1, at.Row));
  }

  private void add(Finding.Kind kind, XSpreadsheet sheet, CellAddress at, String reason)
      throws Exception {
    String name = Book.name(sheet);
    String row = row(sheet, at);
    boolean isListed = book.sheets().hasByName(reason);
    if (!isListed && isNew(name, kind + "\n" + (reason.isEmpty() ? row : reason))) {
      firstSheet.putIfAbsent(kind + "\n" + row, name);
      found.add(new Finding(kind, name, at, row, reason));
    }
  }

  /** Whether no earlier sheet said so. */
  private boolean isNew(String sheet, String said) {
    String first = firstSheet.putIfAbsent(said, sheet);
    return first == null || first.equals(sheet);
  }

  /** The first text in the row. */
  private static String row(XSpreadsheet sheet, CellAddress at) throws Exception {
    for (int column = 0; column < Math.min(at.Column, 6); column++) {
      XCell cell = sheet.getCellByPosition(column, at.Row);
      if (Values.isText(cell) && !Book.shown(cell).isBlank()) {
        return Book.shown(cell);
      }
    }
    return "";
  }
}
