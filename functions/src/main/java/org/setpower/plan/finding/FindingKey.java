package org.setpower.plan.finding;

/** One thing that can be wrong: a constant of a plan's enum. */
public interface FindingKey {
  /** The key of its sentence, such as {@code register.dropped}; never changed once released. */
  String key();

  Severity severity();
}
