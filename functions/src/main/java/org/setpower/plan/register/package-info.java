/**
 * The battery register of a rental house: which batteries are fit to go out, which are kept in
 * quarantine, serviced or retired, and why.
 *
 * <p>Tables to fill are in {@link org.setpower.plan.register.RegisterInputs}, results in {@link
 * org.setpower.plan.register.RegisterResults}. {@link org.setpower.plan.register.RegisterPlan}
 * reads the one and makes the other. Figures of health, cycles left and batteries that stand apart
 * come from {@code org.setpower.fleet}; limits of cell voltage from {@code limits.csv}. A good
 * figure is no proof that a battery is sound: inspect it as its maker requires.
 */
package org.setpower.plan.register;
