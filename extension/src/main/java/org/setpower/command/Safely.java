package org.setpower.command;

import static org.setpower.command.Say.say;

import com.sun.star.uno.Exception;

/** No exception is lost: each is shown in a sentence. */
final class Safely {
  private Safely() {}

  /** Something that may fail. */
  @FunctionalInterface
  interface Action {
    void run() throws Exception;
  }

  static Runnable in(Desk desk, Action action) {
    return () -> run(desk, action);
  }

  static void run(Desk desk, Action action) {
    try {
      action.run();
    } catch (Throwable fault) {
      show(desk, sentence(fault));
    }
  }

  /** What a user is told. */
  static String sentence(Throwable fault) {
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
