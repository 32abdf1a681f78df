package org.setpower.command.trace;

import static org.setpower.command.message.CommandMessages.say;

import com.sun.star.sheet.XCellRangeAddressable;
import com.sun.star.sheet.XSheetCellRange;
import com.sun.star.table.CellAddress;
import com.sun.star.table.CellRangeAddress;
import com.sun.star.table.XCell;
import com.sun.star.uno.Exception;
import com.sun.star.view.XSelectionSupplier;
import org.setpower.command.Command;
import org.setpower.command.CommandContext;
import org.setpower.command.CommandRequest;
import org.setpower.command.document.CalcDocument;
import org.setpower.command.document.FunctionCall;
import org.setpower.command.document.ReportSheet;
import org.setpower.command.document.UndoStep;
import org.setpower.command.message.UserMessageException;
import org.setpower.command.plan.PlanFile;
import org.setpower.ui.TextWindow;
import org.setpower.uno.Uno;

/** Shows the calculation of the selected cell. */
public final class TraceCommand implements Command {
  /** The sheet that collects what is put into the document. */
  public static final String SHEET = "Calculation";

  private static final String TITLE = "Show calculation";

  @Override
  public void runInteractive(CommandContext desk) throws Exception {
    XCell cell = selected(desk);
    CalculationTrace explanation = new CalculationTracer(desk.book()).explain(cell);
    String label = say("~Working: {}", explanation.title());
    if (TextWindow.show(desk, TITLE, label, explanation.text(), "~Insert into document")) {
      putInto(desk, cell, explanation);
    }
  }

  @Override
  public String runHeadless(CommandContext desk, CommandRequest order) throws Exception {
    XCell cell = order.has("cell") ? desk.book().cell(order.text("cell")) : selected(desk);
    CalculationTrace explanation = new CalculationTracer(desk.book()).explain(cell);
    if (order.has("put")) {
      putInto(desk, cell, explanation);
    }
    return explanation.text();
  }

  @Override
  public boolean isEnabled(CommandContext desk) throws Exception {
    return desk.hasBook()
        && desk.controller() != null
        && isRange(selection(desk))
        && isTraced(selected(desk).getFormula());
  }

  private static boolean isTraced(String formula) {
    return FunctionCall.mentionedIn(formula) || PlanFile.isShownBy(formula);
  }

  private static Object selection(CommandContext desk) throws Exception {
    return Uno.as(XSelectionSupplier.class, desk.controller()).getSelection();
  }

  private static boolean isRange(Object selection) {
    return Uno.as(XSheetCellRange.class, selection) != null;
  }

  private static XCell selected(CommandContext desk) throws Exception {
    CalcDocument book = desk.book();
    if (desk.controller() == null) {
      throw new UserMessageException("Select a cell first.");
    }
    Object selection = selection(desk);
    if (!isRange(selection)) {
      throw new UserMessageException("Select one cell, and ask again.");
    }
    CellRangeAddress at = Uno.as(XCellRangeAddressable.class, selection).getRangeAddress();
    return book.cell(new CellAddress(at.Sheet, at.StartColumn, at.StartRow));
  }

  private static void putInto(CommandContext desk, XCell cell, CalculationTrace explanation)
      throws Exception {
    desk.refuseReadOnly();
    CalcDocument book = desk.book();
    CellAddress at = CalcDocument.address(cell);
    UndoStep.in(book, TITLE, () -> write(desk, at, explanation));
  }

  private static void write(CommandContext desk, CellAddress at, CalculationTrace explanation)
      throws Exception {
    CalcDocument book = desk.book();
    ReportSheet own = ReportSheet.named(book, SHEET, 45, 30, 18, 80, 80);
    int row = own.nextRow();
    Object[][] rows = explanation.rows();
    own.write(row, rows);
    own.wrap(3);
    for (int i = 0; i < rows.length; i++) {
      if (explanation.isHeading(i)) {
        own.bold(row + i, 1);
      }
    }
    own.link(4, row, CalcDocument.name(book.sheet(at.Sheet)), CalcDocument.address(at));
    own.show(desk.controller());
  }
}
