package org.setpower.plan.quote;

import org.setpower.base.TextEnum;

/** What a line of the return statement is. */
public enum StatementKind implements TextEnum {
  /** A return that costs something, or came late. */
  RETURNED("returned"),
  NOT_BACK("not back"),
  CHARGES("charges"),
  SECURITY("security deposit"),
  GIVE_BACK("to give back"),
  TO_PAY("to pay"),
  /** Of the quote, for information. */
  BALANCE("balance"),
  /** The only line while the quote or a return is a stop. */
  NOT_ISSUED("not to be issued");

  private final String word;

  StatementKind(String word) {
    this.word = word;
  }

  @Override
  public String word() {
    return word;
  }
}
