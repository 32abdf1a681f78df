package org.setpower.command.issues;

import com.sun.star.container.XNameAccess;
import com.sun.star.sheet.XCellRangeAddressable;
import com.sun.star.sheet.XCellRangeData;
import com.sun.star.sheet.XCellRangeReferrer;
import com.sun.star.table.CellAddress;
import com.sun.star.table.CellRangeAddress;
import com.sun.star.table.XCellRange;
import com.sun.star.uno.Exception;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.setpower.command.document.CalcDocument;
import org.setpower.plan.finding.Verdict;
import org.setpower.uno.Uno;

/** The open issues of a document that shows a plan: the plan lists them, one for each cause. */
final class PlanIssues {
  private static final String TABLE = "issues.";

  private final XNameAccess names;

  private PlanIssues(CalcDocument book) throws Exception {
    names = Uno.as(XNameAccess.class, Uno.get(book.document(), "NamedRanges"));
  }

  /** The issues; null where the document asks no plan for them. */
  static List<Issue> in(CalcDocument book) throws Exception {
    PlanIssues issues = new PlanIssues(book);
    XCellRange results = issues.named("Results_issues");
    List<String> keys = issues.keys();
    XCellRange list = issues.named("Top_issues");
    if (results == null || list == null || !keys.contains(TABLE + "verdict")) {
      return null;
    }
    CellRangeAddress at = address(list);
    List<Issue> found = new ArrayList<>();
    Object[][] rows = Uno.as(XCellRangeData.class, results).getDataArray();
    for (int i = 0; i < rows.length; i++) {
      Object verdict = rows[i][keys.indexOf(TABLE + "verdict")];
      if (!"".equals(verdict)) {
        String where = String.valueOf(rows[i][keys.indexOf(TABLE + "where")]);
        String reason = String.valueOf(rows[i][keys.indexOf(TABLE + "reasons")]);
        CellAddress listed = new CellAddress(at.Sheet, at.StartColumn, at.StartRow + 1 + i);
        CellAddress cell = issues.cell(where, listed);
        String sheet = CalcDocument.name(book.sheet(cell.Sheet));
        found.add(new Issue(kind(verdict), sheet, cell, where, reason));
      }
    }
    return found;
  }

  private static Issue.Kind kind(Object verdict) {
    return Verdict.CHECK.code().equals(verdict) ? Issue.Kind.CHECK : Issue.Kind.STOP;
  }

  private XCellRange named(String name) throws Exception {
    return names.hasByName(name)
        ? Uno.as(XCellRangeReferrer.class, names.getByName(name)).getReferredCells()
        : null;
  }

  private static CellRangeAddress address(XCellRange range) {
    return Uno.as(XCellRangeAddressable.class, range).getRangeAddress();
  }

  /** The keys of the table of issues, in the order of its columns. */
  private List<String> keys() throws Exception {
    XCellRange answer = named("Answer");
    return answer == null
        ? List.of()
        : Arrays.stream(Uno.as(XCellRangeData.class, answer).getDataArray())
            .flatMap(Arrays::stream)
            .map(String::valueOf)
            .filter(k -> k.startsWith(TABLE))
            .toList();
  }

  /** The row that an issue names first, by its table and name; else its row in the list. */
  private CellAddress cell(String where, CellAddress listed) throws Exception {
    int colon = where.indexOf(": ");
    XCellRange table = colon < 0 ? null : named(where.substring(0, colon));
    if (table == null) {
      return listed;
    }
    CellRangeAddress at = address(table);
    String first = where.substring(colon + 2).split(", ")[0];
    Object[][] rows = Uno.as(XCellRangeData.class, table).getDataArray();
    for (int i = 1; i < rows.length - 1; i++) {
      if (first.equals(rows[i][0]) || first.equals("#" + i)) {
        return new CellAddress(at.Sheet, at.StartColumn, at.StartRow + i);
      }
    }
    return listed;
  }
}
