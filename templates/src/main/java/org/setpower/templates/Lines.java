package org.setpower.templates;

import java.util.Arrays;
import java.util.List;

/**
 * Sentences, one below the other: notes, cautions, what was assumed.
 *
 * @param title the heading above them
 * @param style how they look
 * @param lines the sentences
 */
public record Lines(String title, Style style, List<Formula> lines) implements Block {
  /** How a reader gets to the bottom of a figure. */
  public static final String FOLLOWED =
      "Every figure can be followed: put the cursor on it and choose How this number came about in"
          + " the menu Set power.";

  /** Notes; each a text or a formula that gives one. */
  public static Lines notes(String title, Object... lines) {
    return new Lines(title, Style.NOTE, Arrays.stream(lines).map(Formula::of).toList());
  }

  /** What could hurt somebody who relies on the page. */
  public static Lines cautions(String title, Object... lines) {
    return new Lines(title, Style.CAUTION, Arrays.stream(lines).map(Formula::of).toList());
  }

  @Override
  public int height() {
    return lines.size();
  }
}
