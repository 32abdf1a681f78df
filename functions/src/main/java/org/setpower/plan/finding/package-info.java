/**
 * What is wrong in a plan, and what may therefore appear as fit; without words and without tables.
 *
 * <ul>
 *   <li>{@link org.setpower.plan.finding.Finding} is what is wrong: a key with arguments, of which
 *       {@code plan.common} makes a sentence.
 *   <li>{@link org.setpower.plan.finding.Severity} is how bad it is, {@link
 *       org.setpower.plan.finding.Verdict} the word that a row has therefore: ok, check or stop.
 *   <li>{@link org.setpower.plan.finding.Gate} decides what may appear as fit, for every paper and
 *       count.
 *   <li>{@link org.setpower.plan.finding.Identity} compares names as a reader does.
 * </ul>
 */
package org.setpower.plan.finding;
