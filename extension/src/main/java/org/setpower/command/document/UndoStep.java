package org.setpower.command.document;

import static org.setpower.command.message.CommandMessages.say;

import com.sun.star.document.XUndoManager;
import com.sun.star.document.XUndoManagerSupplier;
import com.sun.star.sheet.XCalculatable;
import com.sun.star.uno.Exception;
import com.sun.star.util.XModifiable;
import java.util.Arrays;
import org.setpower.command.message.FallibleAction;
import org.setpower.command.message.UserMessageException;
import org.setpower.uno.Uno;

/** What a command writes into a document, undone in one step. */
public final class UndoStep {
  private UndoStep() {}

  public static void in(CalcDocument book, String title, FallibleAction writing) throws Exception {
    XUndoManager undo = Uno.as(XUndoManagerSupplier.class, book.document()).getUndoManager();
    undo.enterUndoContext(say(title));
    try {
      writing.run();
    } finally {
      undo.leaveUndoContext();
    }
  }

  /** As {@link #in}, of writing that sets heights of rows too. */
  public static void inWithHeights(CalcDocument book, String title, FallibleAction writing)
      throws Exception {
    in(book, title, () -> withHeights(book, title, writing));
  }

  /**
   * Heights of rows that belong to the last step, undone and done again with it. The list of steps
   * cannot be locked instead: the office unlocks it while it sets the heights.
   *
   * @param title of that step; where another came after it, the heights are a step of their own
   */
  public static void asPartOf(CalcDocument book, String title, FallibleAction writing)
      throws Exception {
    XUndoManager undo = Uno.as(XUndoManagerSupplier.class, book.document()).getUndoManager();
    String[] steps = undo.getAllUndoActionTitles();
    if (steps.length == 0 || !steps[0].equals(say(title))) {
      inWithHeights(book, title, writing);
      return;
    }
    undo.enterHiddenUndoContext();
    try {
      withHeights(book, title, writing);
    } finally {
      undo.leaveUndoContext();
    }
  }

  private static void withHeights(CalcDocument book, String title, FallibleAction writing)
      throws Exception {
    XUndoManager undo = Uno.as(XUndoManagerSupplier.class, book.document()).getUndoManager();
    SheetLocks locks = new SheetLocks(book);
    undo.addUndoAction(locks.first(say(title)));
    try {
      writing.run();
    } finally {
      undo.addUndoAction(locks.last(say(title)));
    }
  }

  /**
   * Part of a step that writes many cells: neither writing nor undoing it calculates after each.
   */
  public static void withoutCalculation(CalcDocument book, String title, FallibleAction writing)
      throws Exception {
    XUndoManager undo = Uno.as(XUndoManagerSupplier.class, book.document()).getUndoManager();
    CalculationPause pause = new CalculationPause(Uno.as(XCalculatable.class, book.document()));
    undo.addUndoAction(pause.first(say(title)));
    pause.begin();
    try {
      writing.run();
    } finally {
      undo.addUndoAction(pause.last(say(title)));
      pause.end();
    }
  }

  /** As {@link #in}; where the writing fails, what it wrote is undone. */
  public static void allOrNothing(CalcDocument book, String title, FallibleAction writing)
      throws Exception {
    XUndoManager undo = Uno.as(XUndoManagerSupplier.class, book.document()).getUndoManager();
    XModifiable document = Uno.as(XModifiable.class, book.document());
    boolean wasModified = document.isModified();
    String[] before = undo.getAllUndoActionTitles();
    try {
      in(book, title, writing);
    } catch (Exception | RuntimeException fault) {
      // A step in which nothing was written is not in the list: undoing would undo the user's last
      // step.
      if (!Arrays.equals(before, undo.getAllUndoActionTitles())) {
        takeBack(undo, fault);
        document.setModified(wasModified);
      }
      throw fault;
    }
  }

  private static void takeBack(XUndoManager undo, Throwable fault) {
    try {
      undo.undo();
      undo.clearRedo();
    } catch (Exception notUndone) {
      throw new UserMessageException(
              "What was changed could not be undone: close the document without saving it. The"
                  + " reason: {}",
              UserMessageException.sentence(fault))
          .because(notUndone);
    }
  }
}
