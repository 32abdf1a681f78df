package org.setpower.command.issues;

import com.sun.star.sheet.XCellRangeAddressable;
import com.sun.star.sheet.XCellRangeData;
import com.sun.star.table.CellAddress;
import com.sun.star.table.CellRangeAddress;
import com.sun.star.table.XCellRange;
import com.sun.star.uno.Exception;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.setpower.command.document.CalcDocument;
import org.setpower.command.plan.PlanFile;
import org.setpower.plan.common.InputColumn;
import org.setpower.plan.common.InputTable;
import org.setpower.plan.common.Messages;
import org.setpower.plan.finding.Verdict;
import org.setpower.uno.Uno;

/** The open issues of a document that shows a plan: the plan lists them, one for each cause. */
final class PlanIssues {
  private static final String TABLE = "issues.";

  private final PlanFile plan;

  private PlanIssues(PlanFile plan) {
    this.plan = plan;
  }

  /** The issues; null where the document asks no plan for them. */
  static List<Issue> in(CalcDocument book) throws Exception {
    Optional<PlanFile> plan = PlanFile.of(book);
    return plan.isEmpty() ? null : new PlanIssues(plan.get()).found();
  }

  private List<Issue> found() throws Exception {
    Object[][] rows = plan.values("Results_issues");
    CellRangeAddress at = plan.address("Top_issues");
    List<String> keys = keys();
    if (rows == null || at == null || !keys.contains(TABLE + "verdict")) {
      return null;
    }
    List<Issue> found = new ArrayList<>();
    for (int i = 0; i < rows.length; i++) {
      Object verdict = rows[i][keys.indexOf(TABLE + "verdict")];
      if (!"".equals(verdict)) {
        String where = String.valueOf(rows[i][keys.indexOf(TABLE + "where")]);
        String reason = String.valueOf(rows[i][keys.indexOf(TABLE + "reasons")]);
        CellAddress listed = new CellAddress(at.Sheet, at.StartColumn, at.StartRow + 1 + i);
        CellAddress cell = cell(where, listed);
        String sheet = CalcDocument.name(plan.book().sheet(cell.Sheet));
        found.add(new Issue(kind(verdict), sheet, cell, where, reason));
      }
    }
    return found;
  }

  private static Issue.Kind kind(Object verdict) {
    return Verdict.CHECK.code().equals(verdict) ? Issue.Kind.CHECK : Issue.Kind.STOP;
  }

  /** The keys of the table of issues, in the order of its columns. */
  private List<String> keys() throws Exception {
    Object[][] answer = plan.values("Answer");
    return answer == null
        ? List.of()
        : Arrays.stream(answer)
            .flatMap(Arrays::stream)
            .map(String::valueOf)
            .filter(k -> k.startsWith(TABLE))
            .toList();
  }

  /** The row that an issue names first, by its table and name; else its row in the list. */
  private CellAddress cell(String where, CellAddress listed) throws Exception {
    Messages messages = Messages.in(plan.locale().toLanguageTag());
    for (InputTable<?> table : plan.model().inputs()) {
      String heading = messages.text(table.heading()) + ": ";
      XCellRange first = plan.typed(table, table.columns().get(0).key());
      if (where.startsWith(heading) && first != null) {
        CellRangeAddress at = Uno.as(XCellRangeAddressable.class, first).getRangeAddress();
        int row = table.isUpright() ? 0 : row(table, where.substring(heading.length()));
        return row < 0 ? listed : new CellAddress(at.Sheet, at.StartColumn, at.StartRow + row);
      }
    }
    return listed;
  }

  /**
   * The row with a name, by the first column that has it, else by its first two cells, such as the
   * distro and the numbers of a row of outlets; from 0, −1 without one.
   */
  private int row(InputTable<?> table, String names) throws Exception {
    String name = names.split(", ")[0];
    for (InputColumn column : table.columns()) {
      XCellRange cells = plan.typed(table, column.key());
      if (cells != null) {
        Object[][] typed = Uno.as(XCellRangeData.class, cells).getDataArray();
        for (int i = 0; i < typed.length; i++) {
          if (name.equals(String.valueOf(typed[i][0]).strip()) || name.equals("#" + (i + 1))) {
            return i;
          }
        }
      }
    }
    XCellRange first = plan.typed(table, table.columns().get(0).key());
    XCellRange second =
        table.columns().size() < 2 ? null : plan.typed(table, table.columns().get(1).key());
    if (first == null || second == null) {
      return -1;
    }
    Object[][] begin = Uno.as(XCellRangeData.class, first).getDataArray();
    Object[][] end = Uno.as(XCellRangeData.class, second).getDataArray();
    for (int i = 0; i < begin.length; i++) {
      boolean blank = "".equals(begin[i][0]) || "".equals(end[i][0]);
      if (!blank && names.startsWith(word(begin[i][0]) + " " + word(end[i][0]))) {
        return i;
      }
    }
    return -1;
  }

  /** A cell as a name has it: a number without decimals. */
  private static String word(Object cell) {
    return cell instanceof Double number && number == Math.rint(number)
        ? String.valueOf(number.longValue())
        : String.valueOf(cell).strip();
  }
}
