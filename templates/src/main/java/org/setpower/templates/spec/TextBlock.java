package org.setpower.templates.spec;

import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;

/**
 * Sentences, one below the other: notes, cautions, what was assumed.
 *
 * @param title the heading above them
 * @param style how they look
 * @param lines the sentences
 */
public record TextBlock(String title, CellStyle style, List<Formula> lines) implements Block {
  /** A caution to whoever charges lithium packs. */
  public static final String CHARGING =
      "Do not charge lithium batteries below 0 °C (32 °F). Let them warm up first. "
          + "Charge attended, on a non-combustible surface, with the matching charger.";

  /** A caution to whoever stands beside a battery that may burn. */
  public static final String HOT =
      "Hot, smoking, leaking or smelling: do not touch it. Clear the area. Call the fire service.";

  /** A caution to whoever has a damaged battery that is cold. */
  public static final String DAMAGED =
      "Dropped, wet or swollen, and cold: quarantine it outdoors, away from people "
          + "and batteries. Do not charge it. Do not fly it.";

  private static final String FOLLOWED =
      "To see how a figure was calculated, select its cell and choose Set Power >"
          + " Show calculation.";

  /** Notes; each a text or a formula that gives one. */
  public static TextBlock notes(String title, Object... lines) {
    return new TextBlock(title, CellStyle.NOTE, Arrays.stream(lines).map(Formula::of).toList());
  }

  /** How the figures of the file are worked out. */
  public static TextBlock reckoned(Object... lines) {
    return notes("How it is calculated", lines);
  }

  /** What the file leaves to its reader. */
  public static TextBlock leftOut(Object... lines) {
    return notes("Not included", lines);
  }

  /** Whose figures they are, and how a reader gets to the bottom of one. */
  public static TextBlock sources(Object... lines) {
    return notes(
        "Where the figures come from",
        Stream.concat(Arrays.stream(lines), Stream.of(FOLLOWED)).toArray());
  }

  /** What could hurt somebody who relies on the page. */
  public static TextBlock cautions(Object... lines) {
    return warning("Cautions", lines);
  }

  /** Cautions under a heading of their own. */
  public static TextBlock warning(String title, Object... lines) {
    return new TextBlock(title, CellStyle.CAUTION, Arrays.stream(lines).map(Formula::of).toList());
  }

  @Override
  public int height() {
    return lines.size();
  }
}
