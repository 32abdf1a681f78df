package org.setpower.plan.lighting.load;

/**
 * One conductor of a cable run.
 *
 * @param ohms Ω at the temperature of the loaded cable
 * @param reactance Ω
 */
public record RunImpedance(double ohms, double reactance) {
  /** Of a run whose size is not known. */
  public static final RunImpedance NONE = new RunImpedance(0, 0);
}
