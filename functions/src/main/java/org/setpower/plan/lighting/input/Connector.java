package org.setpower.plan.lighting.input;

import org.setpower.base.TextEnum;

/** Connectors by standard or plain words. */
public enum Connector implements TextEnum {
  CEE_16_3("IEC 60309 16 A 3-pin", 16, 3),
  CEE_32_3("IEC 60309 32 A 3-pin", 32, 3),
  CEE_63_3("IEC 60309 63 A 3-pin", 63, 3),
  CEE_16_5("IEC 60309 16 A 5-pin", 16, 5),
  CEE_32_5("IEC 60309 32 A 5-pin", 32, 5),
  CEE_63_5("IEC 60309 63 A 5-pin", 63, 5),
  CEE_125_5("IEC 60309 125 A 5-pin", 125, 5),
  /** One connector a conductor. */
  SINGLE_POLE("single-pole set", 400, 5),
  STAGE_PIN_20("stage pin 20 A", 20, 3),
  STAGE_PIN_60("stage pin 60 A", 60, 3),
  STAGE_PIN_100("stage pin 100 A", 100, 3),
  /** Two legs, neutral and earth. */
  FOUR_WIRE_50("4-wire 50 A", 50, 4),
  FOUR_WIRE_100("4-wire 100 A", 100, 4),
  /** The earthed socket of most of Europe. */
  CEE_7("CEE 7 16 A", 16, 3),
  BS_1363("BS 1363 13 A", 13, 3),
  NEMA_15("NEMA 5-15", 15, 3),
  NEMA_20("NEMA 5-20", 20, 3),
  MULTI_19("19-pin", 20, 19),
  TERMINALS("terminals", 6000, 5);

  private static final double MOST_OF_NEMA_5 = 140;
  private static final double FUSED_PLUG = 32;
  private static final double SHARED_CIRCUIT = 20;
  private static final int THREE = 3;

  private final String word;
  private final double amps;
  private final int pins;

  Connector(String word, double amps, int pins) {
    this.word = word;
    this.amps = amps;
    this.pins = pins;
  }

  @Override
  public String word() {
    return word;
  }

  /**
   * The largest breaker that protects it, A: what it is made for, or what a standard allows. A BS
   * 1363 plug has a fuse (BS 7671 433.1.204); NEMA 5-15 on 20 A: NEC table 210.21(B)(3). From
   * memory.
   */
  public double largestBreaker() {
    return this == BS_1363 ? FUSED_PLUG : this == NEMA_15 ? SHARED_CIRCUIT : amps;
  }

  /** Whether so many legs, or a pair of them, end in a pin each. */
  public boolean hasPins(int legs) {
    return !isPlug() || legs < pins - 1 || legs + 1 == pins && legs < THREE;
  }

  /** NEMA 5 is the pattern of 125 V to earth (NEMA WD 6); with a margin for 127 V. */
  public boolean isFor(double volts) {
    return !isNema5() || volts <= MOST_OF_NEMA_5;
  }

  /** A household outlet of the US. */
  public boolean isNema5() {
    return this == NEMA_15 || this == NEMA_20;
  }

  /** What it is made for, A. */
  public double amps() {
    return amps;
  }

  /** Whether all its contacts are in one plug of one circuit. */
  public boolean isPlug() {
    return this != SINGLE_POLE && this != MULTI_19 && this != TERMINALS;
  }

  /** Contacts, earth included. */
  public int pins() {
    return pins;
  }
}
