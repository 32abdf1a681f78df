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
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.setpower.command.document.CalcDocument;
import org.setpower.command.message.CommandMessages;
import org.setpower.command.message.UserMessageException;
import org.setpower.command.plan.PlanFile;
import org.setpower.plan.common.InputColumn;
import org.setpower.plan.common.InputTable;
import org.setpower.plan.common.Messages;
import org.setpower.plan.transfer.TargetReader;
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
  private final TargetReader reader;
  private final InputTable<?> table;
  private final Map<String, Set<Integer>> formulas;

  TargetTable(PlanFile plan, TransferTarget target) throws Exception {
    this.plan = plan;
    this.target = target;
    reader = new TargetReader(plan.model(), plan.read(), target);
    table = reader.table();
    formulas = formulas();
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
    return reader.compared(formulas, ofOthers);
  }

  /** Blank rows below the last filled one, then those between. */
  List<Integer> free(int count) {
    Set<Integer> filled = new HashSet<>();
    int last = 0;
    for (TargetRow row : compared(Set.of()).rows()) {
      filled.add(row.number());
      last = Math.max(last, row.number());
    }
    List<Integer> free = new ArrayList<>();
    for (int n = last + 1; n <= reader.room() && free.size() < count; n++) {
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
          reader.room(),
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

  String nameColumn() {
    return target.nameColumn();
  }

  InputColumn column(String key) {
    return table.column(key);
  }

  /** The heading of the table that names have to be in. */
  String knownHeading() {
    return words().text(reader.known().heading());
  }

  static Messages words() {
    return Messages.in(CommandMessages.language());
  }
}
