package org.setpower.command.document;

import com.sun.star.document.XUndoAction;

/** What stands at either end of a step: run when it is done again, and when it is undone. */
record StepEnd(String title, Runnable again, Runnable back) implements XUndoAction {
  @Override
  public String getTitle() {
    return title;
  }

  @Override
  public void undo() {
    back.run();
  }

  @Override
  public void redo() {
    again.run();
  }
}
