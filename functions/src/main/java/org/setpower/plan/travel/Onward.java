package org.setpower.plan.travel;

import org.setpower.base.TextEnum;

/** How the batteries travel that nobody carries. */
public enum Onward implements TextEnum {
  ROAD("road"),
  CARGO_AIRCRAFT("cargo aircraft"),
  PASSENGER_AIRCRAFT("passenger aircraft"),
  /** Left behind, or hired at the destination. */
  STAYS("stays");

  private final String word;

  Onward(String word) {
    this.word = word;
  }

  @Override
  public String word() {
    return word;
  }

  /** Whether it is air freight. */
  public boolean isAir() {
    return this == CARGO_AIRCRAFT || this == PASSENGER_AIRCRAFT;
  }
}
