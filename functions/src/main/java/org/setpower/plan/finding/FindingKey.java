package org.setpower.plan.finding;

/** One thing that can be wrong: a constant of a plan's enum. */
public interface FindingKey {
  /** The key of its sentence, such as {@code register.dropped}; never changed once released. */
  String key();

  Severity severity();

  /**
   * Whether it follows from entries: among issues as severe it stands below what is wrong with
   * these.
   */
  default boolean isResult() {
    return false;
  }
}
