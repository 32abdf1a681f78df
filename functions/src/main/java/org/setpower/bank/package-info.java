/**
 * Equal packs in series and parallel, and stacks of unequal packs joined hard-parallel or through
 * ideal diodes (hot-swap). Sources: circuit laws (Ohm, Kirchhoff) and the cell figures of {@link
 * org.setpower.pack}. Leaves out: cables between the packs, balancing inside a pack, and limits
 * that a maker sets.
 */
package org.setpower.bank;
