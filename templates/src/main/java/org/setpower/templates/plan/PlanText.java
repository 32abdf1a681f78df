package org.setpower.templates.plan;

import java.util.List;
import org.setpower.templates.spec.CellStyle;

/**
 * Sentences, one below another.
 *
 * @param title the heading above them
 * @param style how they look
 * @param lines the sentences
 */
public record PlanText(String title, CellStyle style, List<String> lines) implements PlanPart {
  public static PlanText notes(String title, String... lines) {
    return new PlanText(title, CellStyle.NOTE, List.of(lines));
  }

  /** What could hurt somebody who relies on the page. */
  public static PlanText cautions(String... lines) {
    return new PlanText("Cautions", CellStyle.CAUTION, List.of(lines));
  }
}
