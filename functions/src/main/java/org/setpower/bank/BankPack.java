package org.setpower.bank;

import org.setpower.pack.Chemistry;
import org.setpower.pack.Pack;

/**
 * One pack of a bank.
 *
 * @param number its row, from 1
 * @param cells in series
 * @param ampHours held when full today, at room temperature
 * @param milliohms today, at room temperature
 * @param charge share of its charge at the start
 */
public record BankPack(
    int number,
    Chemistry chemistry,
    double cells,
    double ampHours,
    double milliohms,
    double charge) {

  /** The pack at a temperature. */
  Pack at(double temp) {
    return Pack.of(chemistry, cells, ampHours, milliohms, 1, temp);
  }

  /** Whether the other is the same but for its row, so that both do the same all along. */
  boolean isLike(BankPack other) {
    return chemistry == other.chemistry
        && cells == other.cells
        && ampHours == other.ampHours
        && milliohms == other.milliohms
        && charge == other.charge;
  }
}
