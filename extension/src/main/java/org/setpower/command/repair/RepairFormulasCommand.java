package org.setpower.command.repair;

import static org.setpower.command.message.CommandMessages.plural;
import static org.setpower.command.message.CommandMessages.say;

import com.sun.star.uno.Exception;
import org.setpower.command.Command;
import org.setpower.command.CommandContext;
import org.setpower.command.CommandRequest;
import org.setpower.command.document.CalcDocument;
import org.setpower.command.document.UndoStep;
import org.setpower.command.message.CommandCancelledException;
import org.setpower.command.message.Progress;
import org.setpower.command.message.UserMessageException;
import org.setpower.ui.MessageBoxes;
import org.setpower.ui.ProgressWindow;

/**
 * Restores the formulas of the template where they differ: cells that were dragged, or cut and
 * pasted, take the formulas that read them along. What is typed stays.
 */
public final class RepairFormulasCommand implements Command {
  private static final String TITLE = "Restore formulas";

  @Override
  public void runInteractive(CommandContext desk) throws Exception {
    String[] sentence = new String[1];
    try {
      ProgressWindow.during(desk, TITLE, progress -> sentence[0] = mend(desk, progress));
    } catch (CommandCancelledException cancelled) {
      sentence[0] = say("Cancelled; nothing was changed.");
    }
    MessageBoxes.say(desk, sentence[0]);
  }

  @Override
  public boolean isEnabled(CommandContext desk) throws Exception {
    return desk.mayWrite() && !desk.book().origin().isEmpty();
  }

  @Override
  public String runHeadless(CommandContext desk, CommandRequest order) throws Exception {
    return mend(desk, Progress.NONE);
  }

  /** Whoever cancels does so while formulas are compared; they are put back all at once. */
  static String mend(CommandContext desk, Progress progress) throws Exception {
    CalcDocument book = desk.book();
    String origin = book.origin();
    if (origin.isEmpty()) {
      throw new UserMessageException("This document was not made from a sheet of Set Power.");
    }
    desk.refuseReadOnly();
    progress.at(0, say("Opening the template"));
    TemplateFormulas right = TemplateFormulas.of(desk, origin);
    SheetIdentities.check(book, right);
    FormulaDiff differences = FormulaDiff.between(book, right, progress);
    progress.at(90, say("Restoring formulas"));
    if (differences.isEmpty()) {
      return say("All formulas match the template.") + remaining(ErrorCells.in(book));
    }
    ErrorCells before = ErrorCells.in(book);
    ErrorCells[] after = new ErrorCells[1];
    UndoStep.allOrNothing(
        book,
        TITLE,
        () -> {
          differences.mend();
          after[0] = ErrorCells.in(book);
          refuseMore(before, after[0]);
        });
    if (differences.count() == 0) {
      return say("Formats of cells to fill restored.") + remaining(after[0]);
    }
    return told(differences.count(), after[0].without(before)) + remaining(after[0]);
  }

  private static void refuseMore(ErrorCells before, ErrorCells after) {
    if (after.count() > before.count()) {
      throw new UserMessageException(
          "With the formulas of the template {} cells would be in error, now it is {}; the first"
              + " new one is {}. The formulas were not restored, nothing was changed: begin a new"
              + " sheet and copy what is typed, table by table.",
          after.count(),
          before.count(),
          after.without(before).first());
    }
  }

  private static String told(int mended, ErrorCells fresh) {
    String formulas = plural("{} formula restored.", "{} formulas restored.", mended);
    return fresh.isEmpty()
        ? formulas
        : say("Cells newly in error: {}, the first is {}.", fresh.count(), fresh.first())
            + " "
            + formulas;
  }

  private static String remaining(ErrorCells errors) {
    return errors.isEmpty()
        ? ""
        : "\n"
            + say(
                "Cells in error: {}, the first is {}. Use List open issues to see them.",
                errors.count(),
                errors.first());
  }
}
