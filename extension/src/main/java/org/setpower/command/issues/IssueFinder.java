package org.setpower.command.issues;

import static org.setpower.command.message.CommandMessages.say;

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
import org.setpower.command.document.CalcDocument;
import org.setpower.command.document.CellValues;
import org.setpower.command.document.FunctionCall;
import org.setpower.command.document.ReportSheet;
import org.setpower.command.trace.CalculationTracer;
import org.setpower.command.trace.TraceCommand;
import org.setpower.uno.Uno;

/**
 * The open issues of a document: cells with our functions that show an error, and cells whose
 * formula says "stop" or "check" (the cell to the right says why). What a later sheet repeats is
 * named once: the same word with the same reason, or without a reason for the same row, or a list
 * of findings, where the name of a sheet stands beside the word.
 */
final class IssueFinder {
  private final CalcDocument book;
  private final CalculationTracer explainer;
  private final List<Issue> found = new ArrayList<>();
  private final Map<String, String> firstSheet = new HashMap<>();

  private IssueFinder(CalcDocument book) throws Exception {
    this.book = book;
    explainer = new CalculationTracer(book);
  }

  /** The findings, the worst first, then as they stand in the document. */
  static List<Issue> in(CalcDocument book) throws Exception {
    IssueFinder findings = new IssueFinder(book);
    List<Issue> ofPlan = PlanIssues.in(book);
    Set<String> ours = new HashSet<>(ReportSheet.names(ListIssuesCommand.SHEET));
    ours.addAll(ReportSheet.names(TraceCommand.SHEET));
    for (XSpreadsheet sheet : book.all()) {
      if (!ours.contains(CalcDocument.name(sheet))) {
        findings.errors(sheet);
        if (ofPlan == null) {
          findings.words(sheet);
        }
      }
    }
    if (ofPlan != null) {
      findings.found.addAll(ofPlan);
    }
    findings.found.sort(Comparator.comparing(Issue::kind));
    return findings.found;
  }

  private static List<CellRangeAddress> formulas(XSpreadsheet sheet, int result) {
    return CalcDocument.ranges(Uno.as(XCellRangesQuery.class, sheet).queryFormulaCells(result));
  }

  private void errors(XSpreadsheet sheet) throws Exception {
    for (CellRangeAddress at : formulas(sheet, FormulaResult.ERROR)) {
      XCellRange range = book.range(at);
      String[][] texts = Uno.as(XCellRangeFormula.class, range).getFormulaArray();
      for (int r = 0; r < texts.length; r++) {
        for (int c = 0; c < texts[r].length; c++) {
          if (FunctionCall.mentionedIn(texts[r][c])) {
            error(sheet, range.getCellByPosition(c, r));
          }
        }
      }
    }
  }

  private void error(XSpreadsheet sheet, XCell cell) throws Exception {
    String reason = explainer.reason(cell);
    String shown = CalcDocument.shown(cell);
    add(
        Issue.Kind.ERROR,
        sheet,
        CalcDocument.address(cell),
        reason.isEmpty() ? say("The formula around our function gives {}.", shown) : reason);
  }

  private void words(XSpreadsheet sheet) throws Exception {
    for (CellRangeAddress at : formulas(sheet, FormulaResult.STRING)) {
      Object[][] data = Uno.as(XCellRangeData.class, book.range(at)).getDataArray();
      for (int r = 0; r < data.length; r++) {
        for (int c = 0; c < data[r].length; c++) {
          Issue.Kind kind = kind(data[r][c]);
          if (kind != null) {
            CellAddress cell = new CellAddress(at.Sheet, at.StartColumn + c, at.StartRow + r);
            add(kind, sheet, cell, besides(sheet, cell));
          }
        }
      }
    }
  }

  private static Issue.Kind kind(Object value) {
    if (Issue.Kind.STOP.word().equals(value)) {
      return Issue.Kind.STOP;
    }
    return Issue.Kind.CHECK.word().equals(value) ? Issue.Kind.CHECK : null;
  }

  private static String besides(XSpreadsheet sheet, CellAddress at) throws Exception {
    return CalcDocument.shown(sheet.getCellByPosition(at.Column + 1, at.Row));
  }

  private void add(Issue.Kind kind, XSpreadsheet sheet, CellAddress at, String reason)
      throws Exception {
    String name = CalcDocument.name(sheet);
    String row = row(sheet, at);
    boolean isListed = book.sheets().hasByName(reason);
    if (!isListed && isNew(name, kind + "\n" + (reason.isEmpty() ? row : reason))) {
      firstSheet.putIfAbsent(kind + "\n" + row, name);
      found.add(new Issue(kind, name, at, row, reason));
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
      if (CellValues.isText(cell) && !CalcDocument.shown(cell).isBlank()) {
        return CalcDocument.shown(cell);
      }
    }
    return "";
  }
}
