package org.setpower.command;

import static org.setpower.command.Say.say;

import com.sun.star.document.XUndoManager;
import com.sun.star.document.XUndoManagerSupplier;
import com.sun.star.uno.Exception;

/** What a command writes into a document, undone in one step. */
final class UndoStep {
  private UndoStep() {}

  static void in(Book book, String title, Safely.Action writing) throws Exception {
    XUndoManager undo = Uno.as(XUndoManagerSupplier.class, book.document()).getUndoManager();
    undo.enterUndoContext(say(title));
    try {
      writing.run();
    } finally {
      undo.leaveUndoContext();
    }
  }
}
