package org.setpower.command.message;

/** How far a long command is. */
@FunctionalInterface
public interface Progress {
  /** Nobody watches. */
  Progress NONE = (percent, words) -> {};

  /**
   * Tells what is being done now; throws what ends the command if it was cancelled.
   *
   * @param percent 0 to 100
   */
  void at(int percent, String words);
}
