package org.setpower.templates.uno;

import com.sun.star.sheet.XArrayFormulaRange;
import com.sun.star.sheet.XSpreadsheet;
import com.sun.star.table.XCellRange;
import org.setpower.plan.common.InputColumn;
import org.setpower.plan.common.InputTable;
import org.setpower.templates.layout.PlanNames;
import org.setpower.templates.layout.PlanNames.Block;

/** Draws the hidden tab that asks the plan: what is handed over, and its answer. */
final class PlanBlockWriter {
  private final PlanWriter drawing;
  private final PlanNames names;
  private final XSpreadsheet sheet;

  PlanBlockWriter(PlanWriter drawing) {
    this.drawing = drawing;
    names = drawing.layout().names();
    sheet = drawing.sheet(PlanNames.TAB);
  }

  void draw() {
    names.ranges().forEach(drawing::name);
    write(0, 0, drawing.layout().words().of("Working figures; nothing to fill here."));
    names.uprights().forEach(this::handOver);
    names.blocks().forEach(this::ask);
    UnoAccess.set(sheet, "IsVisible", false);
  }

  private void write(int column, int row, String text) {
    PlanWriter.put(PlanWriter.range(sheet, column, row, 1, 1), text);
  }

  private void handOver(InputTable<?> table) {
    int row = names.top(table);
    for (InputColumn column : table.columns()) {
      write(0, row, column.key());
      write(1, row, "=" + names.handedOver(column, drawing.layout()));
      row++;
    }
    write(0, row, InputTable.END);
  }

  private void ask(Block block) {
    for (int i = 0; i < block.keys().size(); i++) {
      write(block.column() + i, PlanNames.TOP, block.keys().get(i));
    }
    XCellRange cells =
        PlanWriter.range(
            sheet, block.column(), PlanNames.TOP + 1, block.keys().size(), block.rows() + 1);
    UnoAccess.as(XArrayFormulaRange.class, cells).setArrayFormula("=" + names.call(block));
  }
}
