package org.setpower.templates.plan;

/** What stands on a tab; parts stand one below another. */
public sealed interface PlanPart
    permits PlanTable,
        PlanFields,
        PlanNotes,
        PlanList,
        PlanFigures,
        PlanLetter,
        PlanChart,
        PlanText {
  /** The heading above it; empty for none. */
  String title();
}
