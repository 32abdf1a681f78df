package org.setpower.ui;

import com.sun.star.awt.MessageBoxButtons;
import com.sun.star.awt.MessageBoxResults;
import com.sun.star.awt.MessageBoxType;
import com.sun.star.awt.XMessageBoxFactory;
import com.sun.star.lang.XComponent;
import com.sun.star.uno.Exception;
import org.setpower.command.CommandContext;
import org.setpower.uno.Uno;

/** Windows with one sentence. */
public final class MessageBoxes {
  private static final String TITLE = "Set Power";

  private MessageBoxes() {}

  public static void say(CommandContext desk, String sentence) throws Exception {
    show(desk, MessageBoxType.INFOBOX, MessageBoxButtons.BUTTONS_OK, sentence);
  }

  public static void warn(CommandContext desk, String sentence) throws Exception {
    show(desk, MessageBoxType.WARNINGBOX, MessageBoxButtons.BUTTONS_OK, sentence);
  }

  public static boolean ask(CommandContext desk, String question) throws Exception {
    return show(desk, MessageBoxType.QUERYBOX, MessageBoxButtons.BUTTONS_YES_NO, question)
        == MessageBoxResults.YES;
  }

  private static short show(CommandContext desk, MessageBoxType kind, int buttons, String words)
      throws Exception {
    var toolkit = desk.service(XMessageBoxFactory.class, "com.sun.star.awt.Toolkit");
    var box = toolkit.createMessageBox(desk.window(), kind, buttons, TITLE, words);
    try {
      return box.execute();
    } finally {
      Uno.as(XComponent.class, box).dispose();
    }
  }
}
