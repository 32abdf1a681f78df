package org.setpower.command.print;

import static org.setpower.command.message.CommandMessages.say;

import com.sun.star.uno.Exception;
import org.setpower.command.Command;
import org.setpower.command.CommandContext;
import org.setpower.command.CommandRequest;
import org.setpower.command.diagram.DrawDiagramCommand;
import org.setpower.command.document.CalcDocument;
import org.setpower.command.document.UndoStep;
import org.setpower.command.message.UserMessageException;
import org.setpower.ui.MessageBoxes;

/** Ends what is printed at the last filled row of each table. */
public final class FitPrintCommand implements Command {
  static final String TITLE = "Set print ranges to filled rows";

  @Override
  public void runInteractive(CommandContext desk) throws Exception {
    MessageBoxes.say(desk, fit(desk));
  }

  @Override
  public boolean isEnabled(CommandContext desk) throws Exception {
    return desk.mayWrite() && desk.book().isFromTemplate();
  }

  @Override
  public String runHeadless(CommandContext desk, CommandRequest order) throws Exception {
    return fit(desk);
  }

  private static String fit(CommandContext desk) throws Exception {
    return fit(desk, BlankRows.none(desk.book()));
  }

  /** The same, with blank rows hidden that push what follows to another page. */
  static String fit(CommandContext desk, BlankRows blank) throws Exception {
    CalcDocument book = desk.book();
    if (!book.isFromTemplate()) {
      throw new UserMessageException("This document was not made from a sheet of Set Power.");
    }
    int[] sheets = new int[1];
    UndoStep.inWithHeights(
        book,
        TITLE,
        () -> {
          sheets[0] = PrintRangeFitter.in(book, blank);
          DrawDiagramCommand.beforePrinting(desk);
        });
    return say(
        "Sheets that print down to their last filled row: {}. Call this again when you have filled"
            + " more.",
        sheets[0]);
  }
}
