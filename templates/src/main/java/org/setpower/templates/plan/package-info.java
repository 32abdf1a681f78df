/**
 * The vocabulary of workbooks that show a plan ({@link org.setpower.plan.common.PlanModel}).
 *
 * <p>Columns, headings, units, lists, limits and help come from the records of the plan; a workbook
 * says only what stands where:
 *
 * <ul>
 *   <li>{@link org.setpower.templates.plan.PlanTable}: a table to fill with its results. Status and
 *       name stand left, then the cells to fill as one block, then results, the reason last.
 *   <li>{@link org.setpower.templates.plan.PlanFields}: cells of a table with one row, which may
 *       stand on several tabs.
 *   <li>{@link org.setpower.templates.plan.PlanChart}: lines over a list.
 *   <li>{@link org.setpower.templates.plan.PlanList}: rows of a table of results.
 *   <li>{@link org.setpower.templates.plan.PlanFigures}: figures of a result with one row, large or
 *       one below another.
 *   <li>{@link org.setpower.templates.plan.PlanLetter}: head or foot of a letter, made of results.
 *   <li>{@link org.setpower.templates.plan.PlanText}: sentences.
 *   <li>{@link org.setpower.templates.plan.LeafColumn}: a function over the row's own cells.
 * </ul>
 *
 * <p>Nothing here decides anything: cells show the plan's answer or call one function.
 */
package org.setpower.templates.plan;
