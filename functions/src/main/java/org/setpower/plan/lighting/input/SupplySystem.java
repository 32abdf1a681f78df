package org.setpower.plan.lighting.input;

import java.util.List;
import org.setpower.base.TextEnum;

/** The legs of a supply. */
public enum SupplySystem implements TextEnum {
  /** One leg. */
  ONE("1PH", "1"),
  /** Two legs of opposite sign, as 120/240 V. */
  SPLIT("split", "split phase"),
  /** Three legs, 120° apart. */
  THREE("3PH", "3");

  private static final double LOW = 150;
  private static final double AMERICAN = 210;
  private static final double HIGH = 260;

  private final String word;
  private final List<String> alsoWritten;

  SupplySystem(String word, String... alsoWritten) {
    this.word = word;
    this.alsoWritten = List.of(alsoWritten);
  }

  @Override
  public String word() {
    return word;
  }

  @Override
  public List<String> alsoWritten() {
    return alsoWritten;
  }

  /** Legs as bits: bit 0 is L1. */
  public int legs() {
    return switch (this) {
      case ONE -> 1;
      case SPLIT -> 3;
      case THREE -> 7;
    };
  }

  /** Voltage between a leg and neutral. */
  public double legVolts(double volts) {
    return switch (this) {
      case ONE -> volts;
      case SPLIT -> volts / 2;
      case THREE -> volts / Math.sqrt(3);
    };
  }

  /**
   * Whether a typed voltage is probably that to neutral: 100 to 127 V, or 220 to 240 V where 208 V
   * and 240 V are not usual between legs (IEC 60038).
   */
  public boolean isToNeutral(double volts, boolean us) {
    boolean low = volts > 0 && volts < LOW;
    return this != ONE && (low || this == THREE && !us && volts > AMERICAN && volts < HIGH);
  }

  /** Usual voltage: line to line where it has more than one leg. */
  public double usualVolts(boolean us) {
    return switch (this) {
      case ONE -> us ? 120 : 230;
      case SPLIT -> us ? 240 : 460;
      case THREE -> us ? 208 : 400;
    };
  }
}
