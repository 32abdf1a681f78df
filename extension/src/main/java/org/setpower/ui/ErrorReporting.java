package org.setpower.ui;

import static org.setpower.command.message.CommandMessages.say;

import org.setpower.command.CommandContext;
import org.setpower.command.message.FallibleAction;
import org.setpower.command.message.UserMessageException;

/** No exception is lost: each is shown in a sentence. */
public final class ErrorReporting {
  private ErrorReporting() {}

  public static Runnable in(CommandContext desk, FallibleAction action) {
    return () -> run(desk, action);
  }

  public static void run(CommandContext desk, FallibleAction action) {
    try {
      action.run();
    } catch (Throwable fault) {
      show(desk, sentence(fault));
    }
  }

  /** What a user is told. */
  public static String sentence(Throwable fault) {
    if (fault instanceof UserMessageException sorry) {
      return sorry.getMessage();
    }
    String message = fault.getMessage();
    return say(
        "Set power could not finish this command ({}).",
        fault.getClass().getSimpleName()
            + (message == null || message.isBlank() ? "" : ": " + message.strip()));
  }

  private static void show(CommandContext desk, String sentence) {
    try {
      MessageBoxes.warn(desk, sentence);
    } catch (Throwable noWindow) {
      System.err.println(sentence);
    }
  }
}
