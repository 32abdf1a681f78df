package org.setpower.plan.quote;

import org.setpower.base.TextEnum;

/** What a line of the client's document is. */
public enum LineKind implements TextEnum {
  /** Heading of a section. */
  SECTION("section"),
  ITEM("item"),
  /** Of a section. */
  SUBTOTAL("subtotal"),
  /** Sum of the sections. */
  HIRE("hire"),
  DISCOUNT("discount"),
  /** What is missing to the smallest order of the house. */
  MINIMUM("minimum hire"),
  WAIVER("damage waiver, not insurance"),
  SOLD("sold"),
  SERVICE("service"),
  NET("net"),
  BASE("net by tax rate"),
  TAX("tax"),
  TOTAL("total"),
  DOWN_PAYMENT("deposit"),
  BALANCE("balance"),
  SECURITY("security deposit, not part of the total"),
  VALUE("replacement value to insure"),
  /** Offered, in no sum. */
  OPTION("option"),
  /** The only line while a row is a stop. */
  NOT_ISSUED("not to be issued");

  private final String word;

  LineKind(String word) {
    this.word = word;
  }

  @Override
  public String word() {
    return word;
  }
}
