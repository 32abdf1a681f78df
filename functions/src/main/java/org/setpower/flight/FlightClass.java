package org.setpower.flight;

import org.setpower.base.TextEnum;

/** Where a pack may travel with its owner; stricter ones stand later. */
public enum FlightClass implements TextEnum {
  HOLD_OR_CABIN("hold or cabin"),
  HOLD_OR_CABIN_AGREED("hold or cabin, airline must agree"),
  CABIN("cabin"),
  CABIN_AGREED("cabin, airline must agree"),
  ASK("ask the airline"),
  CARGO_ONLY("cargo only"),
  NOT_BY_AIR("not by air");

  private final String word;

  FlightClass(String word) {
    this.word = word;
  }

  /** Whether a traveller may take it, the airline willing. */
  public boolean isCarriedOn() {
    return compareTo(ASK) < 0;
  }

  /** Whether the airline has to say yes first. */
  public boolean needsAnswer() {
    return this == HOLD_OR_CABIN_AGREED || this == CABIN_AGREED || this == ASK;
  }

  /**
   * The same once the airline has agreed; what is not known to be fit for the hold goes by hand.
   */
  public FlightClass agreed() {
    return switch (this) {
      case HOLD_OR_CABIN_AGREED -> HOLD_OR_CABIN;
      case CABIN_AGREED, ASK -> CABIN;
      default -> this;
    };
  }

  /** What holds when both hold: no hold if one forbids it, agreement if one asks for it. */
  public FlightClass and(FlightClass other) {
    FlightClass stricter = compareTo(other) > 0 ? this : other;
    boolean asks = this == HOLD_OR_CABIN_AGREED || other == HOLD_OR_CABIN_AGREED;
    return stricter == CABIN && asks ? CABIN_AGREED : stricter;
  }

  @Override
  public String word() {
    return word;
  }
}
