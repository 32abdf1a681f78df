package org.setpower.ui;

import com.sun.star.uno.Exception;
import org.setpower.command.CommandContext;
import org.setpower.uno.Uno;

/** A window with a text that can be read, scrolled, marked and copied. */
public final class TextWindow {
  private static final int WIDTH = 360;
  private static final int HEIGHT = 250;
  private static final int LINE_HEIGHT = 74;
  private static final int BUTTON = 60;

  private TextWindow() {}

  /**
   * Shows it until it is closed.
   *
   * @param label what the text is, with a tilde before the letter for the keyboard
   * @param action a button beside, or empty
   * @return whether that button ended it
   */
  public static boolean show(
      CommandContext desk, String title, String label, String text, String action)
      throws Exception {
    return show(desk, title, HEIGHT, label, text, action);
  }

  /** Shows a text of a line or two until the window is closed. */
  public static void line(CommandContext desk, String title, String label, String text)
      throws Exception {
    show(desk, title, LINE_HEIGHT, label, text, "");
  }

  private static boolean show(
      CommandContext desk, String title, int height, String label, String text, String action)
      throws Exception {
    try (Dialog dialog = new Dialog(desk, title, WIDTH, height)) {
      dialog.form().label(Dialog.GAP, Dialog.GAP, dialog.inside(), 10, label);
      int top = Dialog.GAP + 12;
      int bottom = Dialog.buttonsAt(height);
      dialog
          .form()
          .add(
              "Edit",
              "text",
              Dialog.GAP,
              top,
              dialog.inside(),
              bottom - top - Dialog.GAP,
              Uno.property("MultiLine", true),
              Uno.property("ReadOnly", true),
              Uno.property("VScroll", true),
              Uno.property("Text", text));
      dialog.button(
          "copy",
          Dialog.GAP,
          bottom,
          BUTTON,
          "~Copy",
          ErrorReporting.in(desk, () -> Clipboard.put(desk, text)));
      int right = WIDTH - Dialog.GAP - BUTTON;
      if (!action.isEmpty()) {
        dialog.end(right - Dialog.GAP - 100, bottom, 100, action, true, false);
      }
      dialog.end(right, bottom, BUTTON, "C~lose", false, true);
      return dialog.show();
    }
  }
}
