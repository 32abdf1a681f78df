package org.setpower.command;

import static org.setpower.command.Say.say;

import com.sun.star.frame.XComponentLoader;
import com.sun.star.lang.XComponent;
import com.sun.star.uno.Exception;
import com.sun.star.util.XCloseable;
import org.setpower.sheet.Words;

/**
 * Puts the formulas of the template back where they differ: cells that were dragged, or cut and
 * pasted, take the formulas that read them along. What is typed stays.
 */
final class Mend implements Command {
  private static final String TITLE = "Mend formulas";

  @Override
  public void openly(Desk desk) throws Exception {
    String[] sentence = new String[1];
    try {
      ProgressWindow.during(desk, TITLE, progress -> sentence[0] = mend(desk, progress));
    } catch (Cancelled cancelled) {
      sentence[0] = say("Cancelled; nothing was changed.");
    }
    Boxes.say(desk, sentence[0]);
  }

  @Override
  public boolean makesSense(Desk desk) throws Exception {
    return desk.mayWrite() && !desk.book().origin().isEmpty();
  }

  @Override
  public String quietly(Desk desk, Order order) throws Exception {
    return mend(desk, Progress.NONE);
  }

  /** Whoever cancels does so while formulas are compared; they are put back all at once. */
  static String mend(Desk desk, Progress progress) throws Exception {
    Book book = desk.book();
    String origin = book.origin();
    if (origin.isEmpty()) {
      throw new Sorry("This document was not made from a sheet of Set power.");
    }
    progress.at(0, say("Opening the template"));
    XComponent template = open(desk, origin);
    try {
      Book right = new Book(template);
      if (!right.origin().equals(origin)) {
        throw new Sorry(
            "This document was made from another version of its template, so its formulas cannot be"
                + " compared: begin a new one and copy what is typed, table by table.");
      }
      Differences differences = Differences.between(book, right, progress);
      progress.at(90, say("Putting formulas back"));
      if (!differences.isEmpty()) {
        UndoStep.in(book, TITLE, differences::mend);
      }
      int mended = differences.count();
      if (mended == 0) {
        return say("Every formula is as the template has it.");
      }
      return mended == 1
          ? say("{} formula is again as the template has it.", mended)
          : say("{} formulas are again as the template has them.", mended);
    } finally {
      Uno.as(XCloseable.class, template).close(true);
    }
  }

  /** The language of a template stands behind its version; nothing for English. */
  private static String language(String origin) {
    return origin.matches(".*-[a-z]{2}") ? origin.substring(origin.length() - 2) : Words.ENGLISH;
  }

  private static XComponent open(Desk desk, String origin) throws Exception {
    String file = "/" + origin.substring(0, origin.lastIndexOf(' ')) + ".ots";
    for (Shelf.Item item : Shelf.of(desk, language(origin))) {
      if (item.url().endsWith(file)) {
        return Uno.as(XComponentLoader.class, desk.desktop())
            .loadComponentFromURL(
                item.url(),
                "_blank",
                0,
                Uno.properties(Uno.property("Hidden", true), Uno.property("AsTemplate", true)));
      }
    }
    throw new Sorry("The template of this document is not among the installed ones.");
  }
}
