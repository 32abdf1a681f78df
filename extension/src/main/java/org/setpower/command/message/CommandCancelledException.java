package org.setpower.command.message;

import static org.setpower.command.message.CommandMessages.say;

/** The user ended a long command; no other message is shown. */
public final class CommandCancelledException extends RuntimeException {
  private static final long serialVersionUID = 1L;

  public CommandCancelledException() {
    super(say("Cancelled; nothing was written."));
  }
}
