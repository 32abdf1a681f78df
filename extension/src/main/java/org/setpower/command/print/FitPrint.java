package org.setpower.command.print;

import static org.setpower.command.message.Say.say;

import com.sun.star.uno.Exception;
import org.setpower.command.Command;
import org.setpower.command.Desk;
import org.setpower.command.Order;
import org.setpower.command.document.Book;
import org.setpower.command.document.UndoStep;
import org.setpower.command.message.Sorry;
import org.setpower.ui.Boxes;

/** Ends what is printed at the last filled row of each table. */
public final class FitPrint implements Command {
  private static final String TITLE = "Fit print to filled rows";

  @Override
  public void openly(Desk desk) throws Exception {
    Boxes.say(desk, fit(desk));
  }

  @Override
  public boolean makesSense(Desk desk) throws Exception {
    return desk.mayWrite() && desk.book().isFromTemplate();
  }

  @Override
  public String quietly(Desk desk, Order order) throws Exception {
    return fit(desk);
  }

  private static String fit(Desk desk) throws Exception {
    Book book = desk.book();
    if (!book.isFromTemplate()) {
      throw new Sorry("This document was not made from a sheet of Set power.");
    }
    int[] sheets = new int[1];
    UndoStep.in(book, TITLE, () -> sheets[0] = PrintFit.in(book));
    return say(
        "Sheets that print down to their last filled row: {}. Call this again when you have filled"
            + " more.",
        sheets[0]);
  }
}
