package org.setpower.plan.finding;

/** How bad a finding is, from mild to bad. */
public enum Severity {
  /** Somebody should look; the row may appear as fit. */
  CHECK(Verdict.CHECK),
  /** Somebody should look; until then a rule of the user's house keeps the row back. */
  HOLD(Verdict.CHECK),
  /**
   * The row does not work or is not known; a decision by hand may accept it where a plan allows.
   */
  STOP(Verdict.STOP),
  /** Somebody can get hurt; no decision by hand lifts it. */
  DANGER(Verdict.STOP);

  private final Verdict verdict;

  Severity(Verdict verdict) {
    this.verdict = verdict;
  }

  public Verdict verdict() {
    return verdict;
  }
}
