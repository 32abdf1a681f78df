package org.setpower.plan.register;

import org.setpower.base.TextEnum;

/** What a battery's state is, from mild to strict; a decision by hand goes only towards strict. */
public enum Status implements TextEnum {
  KEEP("keep"),
  /** Goes out, is tested more often. */
  WATCH("watch"),
  /** No valid test; the house's rule says whether it goes out. */
  NOT_TESTED("not tested"),
  /** Condition blank; does not go out. */
  NOT_INSPECTED("not inspected"),
  /** Its row, type, limits or tests cannot be read; does not go out. */
  UNCLEAR("unclear"),
  SERVICE("service"),
  RETIRE("retire"),
  QUARANTINE("quarantine"),
  /** In no count and on no list. */
  LOST("lost");

  private final String word;

  Status(String word) {
    this.word = word;
  }

  @Override
  public String word() {
    return word;
  }
}
