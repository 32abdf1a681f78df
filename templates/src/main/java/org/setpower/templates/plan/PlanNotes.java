package org.setpower.templates.plan;

import java.util.List;
import org.setpower.templates.spec.FieldSpec;

/**
 * Cells to fill that no plan reads: papers print them.
 *
 * @param title the heading above them
 * @param cells label, format and help
 */
public record PlanNotes(String title, List<FieldSpec> cells) implements PlanPart {
  public static PlanNotes of(String title, FieldSpec... cells) {
    return new PlanNotes(title, List.of(cells));
  }
}
