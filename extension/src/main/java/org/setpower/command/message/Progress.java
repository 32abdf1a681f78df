package org.setpower.command.message;

/** How far a long command is. */
@FunctionalInterface
public interface Progress {
  /** Without a display. */
  Progress NONE = (percent, words) -> {};

  /**
   * Reports the current step; throws if the command was cancelled.
   *
   * @param percent 0 to 100
   */
  void at(int percent, String words);
}
