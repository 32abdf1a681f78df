package org.setpower.plan.finding;

/** What can be wrong in every plan. */
public enum CommonFinding implements FindingKey {
  /** Arguments: heading. */
  BLANK_CELL("input.blank", Severity.STOP),
  /** Arguments: heading. */
  UNREADABLE_CELL("input.unreadable", Severity.STOP),
  /** Arguments: heading, what is typed. */
  NOT_A_NUMBER("input.number", Severity.STOP),
  /** Arguments: heading, what is typed. */
  NOT_A_DATE("input.date", Severity.STOP),
  /** Arguments: heading, what is typed. */
  NOT_A_TIME("input.time", Severity.STOP),
  /** Arguments: heading, value, smallest, largest, unit. */
  OUT_OF_RANGE("input.range", Severity.STOP),
  /** Arguments: heading, what is typed, known words. */
  UNKNOWN_WORD("input.word", Severity.STOP),
  /** Arguments: heading, characters allowed. */
  TOO_LONG("input.long", Severity.STOP),
  /** Arguments: table. */
  UNREADABLE_TABLE("table.unreadable", Severity.DANGER),
  /** Arguments: table, keys. */
  WRONG_KEYS("table.keys", Severity.DANGER),
  /** Arguments: table. */
  NO_END_ROW("table.end", Severity.DANGER),
  /** Arguments: result keys. */
  WRONG_ANSWER("answer.keys", Severity.DANGER),
  /** Arguments: layout of the file, layout of this version. */
  OTHER_LAYOUT("answer.layout", Severity.DANGER),
  /** Arguments: technical cause. */
  NOT_CALCULATED("plan.failed", Severity.DANGER),
  /** Arguments: table, rows of the table, rows of the block. */
  OVERFLOW("answer.overflow", Severity.DANGER),
  /** Arguments: issues that are not shown, of which one is a stop. */
  MORE_STOPS("issues.moreStops", Severity.STOP),
  /** Arguments: issues that are not shown, none of them a stop. */
  MORE_CHECKS("issues.moreChecks", Severity.CHECK),
  /** A row without a name. */
  NO_IDENTITY("gate.unnamed", Severity.STOP),
  /** Arguments: identity, how many rows have it. */
  DOUBLE_IDENTITY("gate.double", Severity.DANGER);

  private final String key;
  private final Severity severity;

  CommonFinding(String key, Severity severity) {
    this.key = key;
    this.severity = severity;
  }

  @Override
  public String key() {
    return key;
  }

  @Override
  public Severity severity() {
    return severity;
  }
}
