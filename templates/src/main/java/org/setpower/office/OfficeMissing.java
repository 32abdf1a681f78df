package org.setpower.office;

/** There is no office to start; the message says in one sentence what to install. */
public final class OfficeMissing extends RuntimeException {
  OfficeMissing(String sentence) {
    super(sentence);
  }
}
