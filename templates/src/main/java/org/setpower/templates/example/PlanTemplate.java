package org.setpower.templates.example;

import org.setpower.templates.plan.PlanWorkbook;

/** A declared workbook of a plan and how its example is filled. */
public interface PlanTemplate {
  /** What is in it. */
  PlanWorkbook workbook();

  /** The title of the filled example. */
  String exampleTitle();
}
