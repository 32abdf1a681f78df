/**
 * The whole day: which pack goes on which device when, how many packs it takes, and the cheapest
 * mix of packs that covers a job.
 *
 * <p>Sources: the rules of a charging cart (full packs first, the one longest on the shelf; an
 * empty pack goes to the first free channel), energy balance with the measured share of capacity
 * that Li-ion cells have in the cold, and integer programming. Leaves out: voltage and current
 * limits of packs (see {@code org.setpower.pack}), a charger that shares its amps among its
 * channels (type the longer time), and packs of other chemistries.
 */
package org.setpower.plan.batteries;
