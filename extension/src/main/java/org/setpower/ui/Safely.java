package org.setpower.ui;

import static org.setpower.command.message.Say.say;

import org.setpower.command.Desk;
import org.setpower.command.message.FallibleAction;
import org.setpower.command.message.Sorry;

/** No exception is lost: each is shown in a sentence. */
public final class Safely {
  private Safely() {}

  public static Runnable in(Desk desk, FallibleAction action) {
    return () -> run(desk, action);
  }

  public static void run(Desk desk, FallibleAction action) {
    try {
      action.run();
    } catch (Throwable fault) {
      show(desk, sentence(fault));
    }
  }

  /** What a user is told. */
  public static String sentence(Throwable fault) {
    if (fault instanceof Sorry sorry) {
      return sorry.getMessage();
    }
    String message = fault.getMessage();
    return say(
        "Set power could not finish this command ({}).",
        fault.getClass().getSimpleName()
            + (message == null || message.isBlank() ? "" : ": " + message.strip()));
  }

  private static void show(Desk desk, String sentence) {
    try {
      Boxes.warn(desk, sentence);
    } catch (Throwable noWindow) {
      System.err.println(sentence);
    }
  }
}
