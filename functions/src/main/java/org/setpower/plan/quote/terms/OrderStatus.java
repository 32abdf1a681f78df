package org.setpower.plan.quote.terms;

import org.setpower.base.TextEnum;

/** Whether the client takes a row of the quote. */
public enum OrderStatus implements TextEnum {
  ORDERED("ordered"),
  /** Offered with its price, in no sum; its pieces are kept for the client. */
  OPTION("option"),
  /** Kept as a record: on no paper, in no sum, nothing taken from the shelf. */
  DROPPED("dropped");

  private final String word;

  OrderStatus(String word) {
    this.word = word;
  }

  @Override
  public String word() {
    return word;
  }
}
