/** Reads what is typed: units, words, numbers on batteries, voltages on labels. */
package org.setpower.plan.batteryday.typed;
