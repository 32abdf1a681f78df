/** Reads what is typed: units, numbers on batteries, voltages on labels. */
package org.setpower.plan.batteryday.typed;
