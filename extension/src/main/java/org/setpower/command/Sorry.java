package org.setpower.command;

/** A command that cannot go on; the message is the sentence for the user. */
final class Sorry extends RuntimeException {
  private static final long serialVersionUID = 1L;

  Sorry(String sentence) {
    super(sentence);
  }

  Sorry(String sentence, Throwable cause) {
    super(sentence, cause);
  }
}
