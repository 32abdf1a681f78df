/**
 * Wire and runs: cross-section and resistance of standard sizes, volts lost and heat of a run, what
 * arrives at a load of constant watts, current ratings, breakers, the longest run and the smallest
 * size that does, fault loops.
 *
 * <p>Sources: ASTM B258; IEC 60228; NEC (NFPA 70) Chapter 9, 240, 310, 400; FAA AC 43.13-1B; BS
 * 7671 Tables 4F1A, 4F3A, 4F3B; 30 CFR 18 Appendix I; IEC 60364-5-52; IEC 60898. Each row of a
 * table names its own.
 *
 * <p>Left out: cables in ground, mineral-insulated and high-temperature cords, skin effect (under 2
 * % up to 240 mm²), the spacing of single cores, short-circuit withstand, discrimination between
 * breakers, RCDs, metric building wiring.
 */
package org.setpower.cable;
