package org.setpower.plan.register;

import org.setpower.base.TextEnum;

/** The house's rule on a battery without a valid test. */
public enum UntestedRule implements TextEnum {
  /** It stays in. */
  HOLD("hold"),
  /** It goes out, printed as not tested. */
  GOES_OUT("goes out");

  private final String word;

  UntestedRule(String word) {
    this.word = word;
  }

  @Override
  public String word() {
    return word;
  }
}
