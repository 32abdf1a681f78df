/**
 * The battery plan: a day on batteries, from typed tables to the change schedule, the papers and
 * the fewest batteries.
 *
 * <p>{@link org.setpower.plan.batteryday.BatteryDayPlan} is the model. Tables to fill are records
 * of {@link org.setpower.plan.batteryday.BatteryDayInputs}, tables of results of {@link
 * org.setpower.plan.batteryday.BatteryDayResults}. The day itself is run in {@code
 * org.setpower.plan.batteryday.simulation}.
 */
package org.setpower.plan.batteryday;
