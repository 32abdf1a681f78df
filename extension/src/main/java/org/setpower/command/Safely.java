package org.setpower.command;

import static org.setpower.command.Say.say;

/** No exception is lost: each is shown in a sentence. */
final class Safely {
  private Safely() {}

  static Runnable in(Desk desk, FallibleAction action) {
    return () -> run(desk, action);
  }

  static void run(Desk desk, FallibleAction action) {
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
