/**
 * Charging packs: hours on a charger, energy from the wall, channels. Charging is constant current,
 * then constant voltage (CC-CV) on the open-circuit curves of {@link org.setpower.pack}. Leaves
 * out: balancing at the end, pre-charge of deeply empty cells, and chargers that hold back in the
 * heat.
 */
package org.setpower.charge;
