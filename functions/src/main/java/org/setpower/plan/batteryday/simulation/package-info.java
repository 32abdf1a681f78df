/**
 * A day on batteries, battery by battery, without tables and words: which battery goes on which
 * position and on which charger at what time, what goes dark, and how few batteries do.
 *
 * <p>Rules of the trade: a battery stays on through breaks; at a change the least charged battery
 * goes on that reaches the next break, else the fullest; a hot-swap plate changes one battery at a
 * time, sets in series or parallel change together; what is short goes dark piece by piece, the
 * least important first; a battery goes to the charger that has it back first, warmed up before.
 * Runtime is that of {@code org.setpower.pack} at the temperature of each hour, without credit for
 * a battery's own warmth.
 */
package org.setpower.plan.batteryday.simulation;
