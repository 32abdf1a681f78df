package org.setpower.plan.batteryday.simulation;

/**
 * What chargers hang on.
 *
 * @param row its row
 * @param watts it gives at most; infinite without a limit
 * @param wattHours it holds; infinite without a limit
 */
public record SupplySpec(int row, double watts, double wattHours) {}
