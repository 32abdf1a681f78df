package org.setpower.templates.plan;

import java.util.List;
import org.setpower.templates.spec.CellStyle;

/**
 * Sentences, one below another.
 *
 * @param title the heading above them
 * @param style how they look
 * @param lines the sentences
 * @param room height of a line, in lines of text
 */
public record PlanText(String title, CellStyle style, List<String> lines, int room)
    implements PlanPart {
  private static final int TO_SIGN = 3;

  public static PlanText notes(String title, String... lines) {
    return new PlanText(title, CellStyle.NOTE, List.of(lines), 1);
  }

  /** Which tabs are hidden and how they are shown: for the screen, not for paper. */
  public static PlanText moreTabs(String line) {
    return new PlanText("More tabs", CellStyle.HINT, List.of(line), 1);
  }

  /** What is signed, with room above the strokes to sign on. */
  public static PlanText signed(String... lines) {
    return new PlanText("", CellStyle.NOTE, List.of(lines), 2);
  }

  /** Lines to sign on paper. */
  public static PlanText signatures(String... lines) {
    return new PlanText("Signatures", CellStyle.NOTE, List.of(lines), TO_SIGN);
  }

  /** What could hurt somebody who relies on the page. */
  public static PlanText cautions(String... lines) {
    return new PlanText("Cautions", CellStyle.CAUTION, List.of(lines), 1);
  }
}
