/**
 * The ready sheets: what is on them, and the builder that draws them.
 *
 * <p>A file is declared once, in a class that implements {@link
 * org.setpower.templates.example.PlanTemplate} and stands in {@link
 * org.setpower.templates.TemplateRegistry}. It shows a plan in the vocabulary of {@link
 * org.setpower.templates.plan.PlanWorkbook} and touches no office.
 *
 * <p>What stays out: formulas of physics, law or money. They are in the plan and its functions.
 */
package org.setpower.templates;
