package org.setpower.plan.batteryday.typed;

import java.util.List;
import org.setpower.base.TextEnum;

/** The units of typed temperatures and lengths. */
public enum UnitSystem implements TextEnum {
  METRIC("metric"),
  US("US");

  private static final double METRES_A_FOOT = 0.3048;

  private final String word;

  UnitSystem(String word) {
    this.word = word;
  }

  @Override
  public String word() {
    return word;
  }

  @Override
  public List<String> alsoWritten() {
    return List.of();
  }

  /** Degrees Celsius of a typed temperature. */
  public double toCelsius(double typed) {
    return this == METRIC ? typed : (typed - 32) / 1.8;
  }

  /** Metres of a typed length. */
  public double toMetres(double typed) {
    return this == METRIC ? typed : typed * METRES_A_FOOT;
  }
}
