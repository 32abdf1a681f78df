package org.setpower.command.trace;

import static org.setpower.command.message.Say.say;

import com.sun.star.sheet.XCellRangeAddressable;
import com.sun.star.sheet.XSheetCellRange;
import com.sun.star.table.CellAddress;
import com.sun.star.table.CellRangeAddress;
import com.sun.star.table.XCell;
import com.sun.star.uno.Exception;
import com.sun.star.view.XSelectionSupplier;
import org.setpower.command.Command;
import org.setpower.command.Desk;
import org.setpower.command.Order;
import org.setpower.command.document.Book;
import org.setpower.command.document.OurCall;
import org.setpower.command.document.OwnSheet;
import org.setpower.command.document.UndoStep;
import org.setpower.command.message.Sorry;
import org.setpower.ui.TextWindow;
import org.setpower.uno.Uno;

/** How the number in the selected cell came about. */
public final class Explain implements Command {
  /** The sheet that collects what is put into the document. */
  public static final String SHEET = "How it came about";

  private static final String TITLE = "How this number came about";

  @Override
  public void openly(Desk desk) throws Exception {
    XCell cell = selected(desk);
    Explanation explanation = new Explainer(desk.book()).explain(cell);
    String label = say("~Working: {}", explanation.title());
    if (TextWindow.show(desk, TITLE, label, explanation.text(), "~Put into the document")) {
      putInto(desk, cell, explanation);
    }
  }

  @Override
  public String quietly(Desk desk, Order order) throws Exception {
    XCell cell = order.has("cell") ? desk.book().cell(order.text("cell")) : selected(desk);
    Explanation explanation = new Explainer(desk.book()).explain(cell);
    if (order.has("put")) {
      putInto(desk, cell, explanation);
    }
    return explanation.text();
  }

  @Override
  public boolean makesSense(Desk desk) throws Exception {
    return desk.hasBook()
        && desk.controller() != null
        && isRange(selection(desk))
        && OurCall.mentionedIn(selected(desk).getFormula());
  }

  private static Object selection(Desk desk) throws Exception {
    return Uno.as(XSelectionSupplier.class, desk.controller()).getSelection();
  }

  private static boolean isRange(Object selection) {
    return Uno.as(XSheetCellRange.class, selection) != null;
  }

  private static XCell selected(Desk desk) throws Exception {
    Book book = desk.book();
    if (desk.controller() == null) {
      throw new Sorry("Select a cell first.");
    }
    Object selection = selection(desk);
    if (!isRange(selection)) {
      throw new Sorry("Select one cell, and ask again.");
    }
    CellRangeAddress at = Uno.as(XCellRangeAddressable.class, selection).getRangeAddress();
    return book.cell(new CellAddress(at.Sheet, at.StartColumn, at.StartRow));
  }

  private static void putInto(Desk desk, XCell cell, Explanation explanation) throws Exception {
    desk.refuseReadOnly();
    Book book = desk.book();
    CellAddress at = Book.address(cell);
    UndoStep.in(book, TITLE, () -> write(desk, at, explanation));
  }

  private static void write(Desk desk, CellAddress at, Explanation explanation) throws Exception {
    Book book = desk.book();
    OwnSheet own = OwnSheet.named(book, SHEET, 45, 30, 18, 80, 80);
    int row = own.nextRow();
    Object[][] rows = explanation.rows();
    own.write(row, rows);
    own.wrap(3);
    for (int i = 0; i < rows.length; i++) {
      if (explanation.isHeading(i)) {
        own.bold(row + i, 1);
      }
    }
    own.link(4, row, Book.name(book.sheet(at.Sheet)), Book.words(at));
    own.show(desk.controller());
  }
}
