package org.setpower.command;

import static org.setpower.command.Say.say;

/** The user ended a long command; nothing is to be said about it but that. */
final class Cancelled extends RuntimeException {
  private static final long serialVersionUID = 1L;

  Cancelled() {
    super(say("Cancelled; nothing was written."));
  }
}
