package org.setpower.command.bringin;

import com.sun.star.sheet.FormulaResult;
import com.sun.star.sheet.XCellRangeAddressable;
import com.sun.star.sheet.XCellRangesQuery;
import com.sun.star.table.CellRangeAddress;
import com.sun.star.table.XCell;
import com.sun.star.table.XCellRange;
import com.sun.star.text.XText;
import com.sun.star.uno.Exception;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.setpower.command.document.CalcDocument;
import org.setpower.command.message.CommandMessages;
import org.setpower.command.message.UserMessageException;
import org.setpower.command.plan.PlanFile;
import org.setpower.plan.common.InputColumn;
import org.setpower.plan.common.InputRow;
import org.setpower.plan.common.InputTable;
import org.setpower.plan.common.Messages;
import org.setpower.plan.transfer.TargetRow;
import org.setpower.plan.transfer.ThreeWayMerge;
import org.setpower.plan.transfer.TransferTarget;
import org.setpower.uno.Uno;

/** A table to fill of the document into which rows are brought. */
final class TargetTable {
  private static final int RESULTS =
      FormulaResult.VALUE | FormulaResult.STRING | FormulaResult.ERROR;

  private final PlanFile plan;
  private final TransferTarget target;
  private final List<Object> ranges;
  private final InputTable<?> table;
  private final List<TargetRow> rows = new ArrayList<>();
  private final int room;

  TargetTable(PlanFile plan, TransferTarget target) throws Exception {
    this.plan = plan;
    this.target = target;
    ranges = plan.read();
    table = table(target.table());
    Map<String, Set<Integer>> formulas = formulas();
    List<? extends InputRow<?>> read = read(table);
    room = read.size();
    for (InputRow<?> row : read) {
      if (!row.isBlank()) {
        Set<String> calculated = new HashSet<>();
        formulas.forEach(
            (key, numbers) -> {
              if (numbers.contains(row.number())) {
                calculated.add(key);
              }
            });
        rows.add(new TargetRow(row.number(), compared(row), calculated));
      }
    }
  }

  private InputTable<?> table(String key) {
    return plan.model().inputs().stream()
        .filter(t -> t.key().equals(key))
        .findFirst()
        .orElseThrow();
  }

  private List<? extends InputRow<?>> read(InputTable<?> some) {
    return some.read(ranges.get(plan.model().inputs().indexOf(some))).rows();
  }

  private Map<String, Object> compared(InputRow<?> row) {
    Map<String, Object> cells = new LinkedHashMap<>();
    row.cells().forEach((key, cell) -> cells.put(key, table.column(key).compared(cell)));
    return cells;
  }

  /** Rows of each column whose cell holds a formula. */
  private Map<String, Set<Integer>> formulas() throws Exception {
    Map<String, Set<Integer>> formulas = new HashMap<>();
    for (InputColumn column : table.columns()) {
      XCellRange cells = plan.typed(table, column.key());
      int top = Uno.as(XCellRangeAddressable.class, cells).getRangeAddress().StartRow;
      Set<Integer> numbers = new HashSet<>();
      for (CellRangeAddress at :
          CalcDocument.ranges(Uno.as(XCellRangesQuery.class, cells).queryFormulaCells(RESULTS))) {
        for (int row = at.StartRow; row <= at.EndRow; row++) {
          numbers.add(row - top + 1);
        }
      }
      if (!numbers.isEmpty()) {
        formulas.put(column.key(), numbers);
      }
    }
    return formulas;
  }

  /** As a comparison takes it. */
  ThreeWayMerge.Table compared(Set<Integer> ofOthers) {
    return new ThreeWayMerge.Table(rows, ofOthers, blanks(), known());
  }

  private Map<String, Object> blanks() {
    Map<String, Object> blanks = new HashMap<>();
    if (target == TransferTarget.BUDGET_LINES) {
      blanks.put("qty", 1.0);
      blanks.put("unit", "once");
      InputTable<?> project = table("project");
      for (InputRow<?> row : read(project)) {
        for (String key : List.of("currency", "tax")) {
          Object cell = project.column(key).compared(row.cells().get(key));
          if (cell != null) {
            blanks.put(key, cell);
          }
        }
      }
    } else if (target == TransferTarget.BUDGET_COUNTS) {
      blanks.put("inAll", "no");
    }
    return blanks;
  }

  /** The names of the table that rows have to be in. */
  private Set<String> known() {
    Set<String> known = new HashSet<>();
    if (!target.known().isEmpty()) {
      InputTable<?> list = table(target.known());
      InputColumn name = list.columns().get(0);
      for (InputRow<?> row : read(list)) {
        Object cell = name.compared(row.cells().get(name.key()));
        if (cell != null) {
          known.add(String.valueOf(cell));
        }
      }
    }
    return known;
  }

  /** Blank rows below the last filled one, then those between. */
  List<Integer> free(int count) {
    Set<Integer> filled = new HashSet<>();
    int last = 0;
    for (TargetRow row : rows) {
      filled.add(row.number());
      last = Math.max(last, row.number());
    }
    List<Integer> free = new ArrayList<>();
    for (int n = last + 1; n <= room && free.size() < count; n++) {
      free.add(n);
    }
    for (int n = 1; n < last && free.size() < count; n++) {
      if (!filled.contains(n)) {
        free.add(n);
      }
    }
    if (free.size() < count) {
      throw new UserMessageException(
          "The table “{}” has room for {} rows and is too full for {} more. Delete rows, or bring"
              + " in fewer. Nothing was changed.",
          heading(),
          room,
          count);
    }
    return free;
  }

  /** Cell by cell: LibreOffice 7.4 does not undo setDataArray where cells were blank. */
  void write(List<ThreeWayMerge.Write> writes) throws Exception {
    for (ThreeWayMerge.Write write : writes) {
      XCell cell = plan.typed(table, write.column()).getCellByPosition(0, write.row() - 1);
      if (write.value() instanceof LocalDate date) {
        cell.setValue(InputColumn.serial(date) - plan.days());
      } else if (write.value() instanceof Double number) {
        cell.setValue(number);
      } else if (write.value() == null) {
        cell.setFormula("");
      } else {
        Uno.as(XText.class, cell).setString(String.valueOf(write.value()));
      }
    }
  }

  String heading() {
    return words().text(table.heading());
  }

  InputColumn column(String key) {
    return table.column(key);
  }

  /** The heading of the table that names have to be in. */
  String knownHeading() {
    return words().text(table(target.known()).heading());
  }

  static Messages words() {
    return Messages.in(CommandMessages.language());
  }
}
