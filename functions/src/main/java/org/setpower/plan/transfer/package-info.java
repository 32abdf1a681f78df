/**
 * From one plan to another: rows to be typed into a table to fill, and what changed since they were
 * brought in last time. Cells are as a sheet holds them; nothing is guessed.
 */
package org.setpower.plan.transfer;
