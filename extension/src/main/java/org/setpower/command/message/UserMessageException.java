package org.setpower.command.message;

import static org.setpower.command.message.CommandMessages.say;

/** A command that cannot go on; the message is the sentence for the user. */
public final class UserMessageException extends RuntimeException {
  private static final long serialVersionUID = 1L;

  /**
   * A sentence in English, with values in the place of each {}; it is shown in the user's language.
   */
  public UserMessageException(String english, Object... values) {
    super(say(english, values));
  }

  /** With its cause. */
  public UserMessageException because(Throwable cause) {
    initCause(cause);
    return this;
  }

  /** What the user reads of any fault; one that is not ours is named by its class. */
  public static String sentence(Throwable fault) {
    if (fault instanceof UserMessageException) {
      return fault.getMessage();
    }
    String message = fault.getMessage();
    return say(
        "Set Power could not finish this command ({}).",
        fault.getClass().getSimpleName()
            + (message == null || message.isBlank() ? "" : ": " + message.strip()));
  }
}
