/**
 * What is plugged in and what it hangs on: amps and VA of a load, the neutral, unbalance and
 * distribution of three-phase and split-phase supplies, and the generator: rating, load, fuel, CO2.
 *
 * <p>Sources: identities of alternating current; ISO 8528-1; US Army TM 9-6115-673-13&P; the common
 * approximate diesel chart; factors of EIA, EPA, DESNZ and Our World in Data. Each row of a table
 * names its own.
 *
 * <p>Left out: inrush and starting currents, harmonics other than the third, line-to-line loads as
 * phasors (their amps are added as numbers, which is never too little), voltage dip of a set.
 */
package org.setpower.supply;
