/**
 * A stock of packs: health, cycles left, packs that stand apart, cells that drift.
 *
 * <p>Sources: arithmetic, and B. Iglewicz and D. Hoaglin, How to Detect and Handle Outliers (ASQC,
 * 1993) for the modified z-score. Leaves out: why a pack ages, and what is safe to use. A swollen,
 * wet or dropped pack is set aside whatever the figures say.
 */
package org.setpower.fleet;
