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
}
