package org.setpower.base;

import java.util.List;

/** How a supply reaches a load: direct current, one phase, or balanced three-phase. */
public enum PhaseSystem implements TextEnum {
  DC("DC", 2, 2),
  ONE("1PH", 2, 2),
  THREE("3PH", Math.sqrt(3), 3);

  private final String word;
  private final double loopFactor;
  private final int loadedConductors;

  PhaseSystem(String word, double loopFactor, int loadedConductors) {
    this.word = word;
    this.loopFactor = loopFactor;
    this.loadedConductors = loadedConductors;
  }

  @Override
  public String word() {
    return word;
  }

  @Override
  public List<String> alsoWritten() {
    return switch (this) {
      case DC -> List.of();
      case ONE -> List.of("1 phase", "single phase");
      case THREE -> List.of("3 phase", "three phase");
    };
  }

  /** The factor on the voltage drop of one conductor: out and back 2, line to line √3. */
  public double loopFactor() {
    return loopFactor;
  }

  /** How many conductors carry the line current: 2, 2, 3. */
  public int loadedConductors() {
    return loadedConductors;
  }

  /** A power factor as this system can have it: direct current has none. */
  public double requirePowerFactor(double powerFactor) {
    if (this == DC && powerFactor != 1) {
      throw new EvaluationException(BaseErrorCode.DC_POWER_FACTOR, powerFactor);
    }
    return powerFactor;
  }
}
