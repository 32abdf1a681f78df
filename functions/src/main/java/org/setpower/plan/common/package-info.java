/**
 * What every plan has in common. A plan is a sheet's model: tables of typed cells in, tables of
 * results out, calculated at once and without an office.
 *
 * <ul>
 *   <li>{@link org.setpower.plan.common.InputTable} is declared from a record and reads a range.
 *   <li>{@link org.setpower.plan.common.Messages} makes sentences of findings (package {@code
 *       plan.finding}).
 *   <li>{@link org.setpower.plan.common.ResultTable} is declared from a record and becomes columns
 *       of the matrix that {@link org.setpower.plan.common.PlanResult} hands to the sheet.
 *   <li>{@link org.setpower.plan.common.Trace} leads from a figure back to typed cells.
 *   <li>{@link org.setpower.plan.common.PlanModel} ties them together: one constant a sheet.
 * </ul>
 */
package org.setpower.plan.common;
