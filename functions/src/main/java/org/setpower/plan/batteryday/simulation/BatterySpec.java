package org.setpower.plan.batteryday.simulation;

/**
 * A battery at call.
 *
 * @param number 1 for B1
 * @param charge state of charge, 0…1
 */
public record BatterySpec(int number, int type, double charge) {}
