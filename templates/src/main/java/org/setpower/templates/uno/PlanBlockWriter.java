package org.setpower.templates.uno;

import com.sun.star.sheet.XArrayFormulaRange;
import com.sun.star.sheet.XCellRangeData;
import com.sun.star.sheet.XSpreadsheet;
import com.sun.star.table.XCellRange;
import java.util.List;
import org.setpower.plan.common.InputColumn;
import org.setpower.plan.common.InputTable;
import org.setpower.templates.layout.PlanFormulas;
import org.setpower.templates.layout.PlanLayout;
import org.setpower.templates.layout.PlanNames;
import org.setpower.templates.plan.PlanList;
import org.setpower.text.MessageCatalog;

/** Draws the hidden tab that asks the plan: what is handed over, what is asked, the answer. */
final class PlanBlockWriter {
  static final String HIDDEN = "Working figures; nothing to fill here.";

  /** What every tab says in an office without the extension. */
  static final String MISSING =
      "Set Power Sheets or Java is not installed: the figures shown are not valid."
          + " Install it, or ask the sender for a values-only copy.";

  /** What a copied tab says. */
  static final String COPIED = "This tab is a copy: it shows the original's figures.";

  /** Starts Java when the file is opened: the menu answers at once, and printing is prepared. */
  private static final String WAKE = "=IFERROR(IF(NOW()>0;SHEET.VERSION());\"\")";

  /** Why units cannot be picked. */
  static final String UNITS_STAY =
      "Pick metric or US. While lengths, temperatures or volumes are typed in this plan its units"
          + " stay as they are: clear these figures first, or begin a new plan.";

  private final PlanLayout layout;
  private final String unitCell;
  private final PlanNames names;
  private final MessageCatalog words;
  private final XSpreadsheet sheet;

  PlanBlockWriter(PlanWriter drawing) {
    layout = drawing.layout();
    unitCell = layout.workbook().unitCell();
    names = layout.names();
    words = drawing.layout().words();
    sheet = drawing.sheet(PlanNames.TAB);
  }

  void draw(List<String> tops) {
    write(0, 0, words.of(HIDDEN));
    write(0, 1, words.of(MISSING));
    write(0, 2, words.of(COPIED));
    write(1, 0, WAKE);
    write(1, 1, "  ·  " + words.of(PlanFormulas.TO_FIT));
    write(1, 2, "=" + layout.formulas().today());
    write(0, 3, "=" + layout.formulas().job());
    if (!unitCell.isEmpty()) {
      List<String> systems = layout.input(unitCell).words();
      for (int i = 0; i < systems.size(); i++) {
        write(PlanNames.UNITS_COLUMN, i, "=" + layout.formulas().offered(systems.get(i)));
      }
      write(PlanNames.UNITS_COLUMN, systems.size(), "=" + layout.formulas().typed());
    }
    names.uprights().forEach(this::handOver);
    Object[][] layout = names.layout();
    UnoAccess.as(
            XCellRangeData.class, PlanWriter.range(sheet, 0, names.layoutTop(), 2, layout.length))
        .setDataArray(layout);
    List<List<Object>> answer = names.answer(words.tag());
    XCellRange asked =
        PlanWriter.range(
            sheet, PlanNames.ANSWER, PlanNames.TOP, names.answerColumns(), answer.size());
    UnoAccess.as(XCellRangeData.class, asked)
        .setDataArray(answer.stream().map(List::toArray).toArray(Object[][]::new));
    XCellRange block =
        PlanWriter.range(
            sheet, PlanNames.ANSWER, names.blockTop(), names.blockColumns(), names.blockRows());
    UnoAccess.as(XArrayFormulaRange.class, block).setArrayFormula("=" + names.call());
    for (int i = 0; i < tops.size(); i++) {
      write(PlanNames.ANSWER + i, 1, "=SHEET(" + tops.get(i) + ")");
    }
    List<String> above = this.layout.above();
    for (int i = 0; i < above.size(); i++) {
      write(PlanNames.ANSWER + i, PlanNames.ROWS, "=CELL(\"ROW\";" + above.get(i) + ")");
    }
    List<PlanList> fitted = this.layout.fitted();
    for (int i = 0; i < fitted.size(); i++) {
      int last = this.layout.lastPrinted(this.layout.place(fitted.get(i)).tab());
      number(PlanNames.ANSWER + i, 2, last + 1);
    }
    UnoAccess.set(sheet, "IsVisible", false);
  }

  private void number(int column, int row, double value) {
    UnoAccess.tell(() -> sheet.getCellByPosition(column, row).setValue(value));
  }

  private void write(int column, int row, String text) {
    PlanWriter.put(PlanWriter.range(sheet, column, row, 1, 1), text);
  }

  private void handOver(InputTable<?> table) {
    int row = names.top(table);
    for (InputColumn column : table.columns()) {
      write(0, row, column.key());
      write(1, row, "=" + names.handedOver(column));
      row++;
    }
    write(0, row, InputTable.END);
  }
}
