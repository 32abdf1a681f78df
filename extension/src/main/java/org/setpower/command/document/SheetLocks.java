package org.setpower.command.document;

import com.sun.star.document.XUndoAction;
import com.sun.star.lang.IllegalArgumentException;
import com.sun.star.sheet.XSpreadsheet;
import com.sun.star.uno.Exception;
import com.sun.star.util.XProtectable;
import java.util.ArrayList;
import java.util.List;
import org.setpower.uno.Uno;

/**
 * The protection of sheets, taken off while a step that sets heights of rows is done again: the
 * office lets a program set and undo them on a protected sheet, and refuses to do it again.
 */
final class SheetLocks {
  private final List<XSpreadsheet> sheets;
  private final List<XProtectable> open = new ArrayList<>();

  SheetLocks(CalcDocument book) throws Exception {
    sheets = book.all();
  }

  /** What stands first in such a step. */
  XUndoAction first(String title) {
    return new StepEnd(title, this::unlock, () -> {});
  }

  /** What stands last in such a step. */
  XUndoAction last(String title) {
    return new StepEnd(title, this::lock, () -> {});
  }

  private void unlock() {
    for (XSpreadsheet sheet : sheets) {
      XProtectable lock = Uno.as(XProtectable.class, sheet);
      if (lock.isProtected()) {
        try {
          lock.unprotect("");
          open.add(lock);
        } catch (IllegalArgumentException hasPassword) {
          // its rows stay as they are
        }
      }
    }
  }

  private void lock() {
    open.forEach(lock -> lock.protect(""));
    open.clear();
  }
}
