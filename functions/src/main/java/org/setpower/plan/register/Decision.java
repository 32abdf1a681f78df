package org.setpower.plan.register;

import org.setpower.base.TextEnum;

/** What somebody decides to do with a battery. */
public enum Decision implements TextEnum {
  KEEP(Status.KEEP),
  WATCH(Status.WATCH),
  SERVICE(Status.SERVICE),
  QUARANTINE(Status.QUARANTINE),
  RETIRE(Status.RETIRE);

  private final Status status;

  Decision(Status status) {
    this.status = status;
  }

  @Override
  public String word() {
    return status.word();
  }

  Status status() {
    return status;
  }

  /** Whether the decision counts: it is stricter, or takes the battery out for good. */
  boolean isStricterThan(Status proposed) {
    return this == RETIRE || status.compareTo(proposed) > 0;
  }
}
