package org.setpower.command;

import static org.setpower.command.Say.say;

/** A command that cannot go on; the message is the sentence for the user. */
final class Sorry extends RuntimeException {
  private static final long serialVersionUID = 1L;

  /** A sentence in English, with values in the place of each {}; it is told in the user's words. */
  Sorry(String english, Object... values) {
    super(say(english, values));
  }

  /** Tells what caused it too. */
  Sorry because(Throwable cause) {
    initCause(cause);
    return this;
  }
}
