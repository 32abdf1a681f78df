package org.setpower.ui;

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
      show(desk, UserMessageException.sentence(fault));
    }
  }

  private static void show(CommandContext desk, String sentence) {
    try {
      MessageBoxes.warn(desk, sentence);
    } catch (Throwable noWindow) {
      System.err.println(sentence);
    }
  }
}
