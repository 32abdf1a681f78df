package org.setpower.templates.layout;

import java.util.Arrays;
import java.util.List;
import java.util.regex.Pattern;

/**
 * How much room a heading takes over a column, and where its lines end: the office keeps words
 * clear of the button of a filter only where each line leaves room for it, so where lines end is
 * not left to the letters of a machine.
 */
public final class HeadingLayout {
  private static final Pattern SHORT_BRACKETS = Pattern.compile("\\([^()]{2,7}\\)");
  private static final char NO_BREAK = '\u0000';
  private static final int MOST_LINES = 3;
  public static final double EM = 3.175; // 9 pt in mm
  private static final double MARGINS = 2.4; // with the indent of a heading, in mm
  private static final double PADDING = 2.2; // of a cell, in mm
  private static final double BUTTON = 5.1;
  private static final double ROUGH = 1.02; // letters on a screen stand on whole dots

  /** What is never divided: words, halves of words with their hyphen, short units. */
  private final String[] parts;

  private final double taken;

  /**
   * A heading, with its unit.
   *
   * @param filtered whether the button of a filter stands in its cell
   */
  HeadingLayout(String text, boolean filtered) {
    String units = SHORT_BRACKETS.matcher(text).replaceAll(m -> m.group().replace(' ', NO_BREAK));
    parts =
        Arrays.stream(units.split("(?<=-)|\\s"))
            .map(part -> part.replace(NO_BREAK, ' '))
            .toArray(String[]::new);
    taken = MARGINS + (filtered ? BUTTON : 0);
  }

  /** The least width, from this one on, at which no word is broken or stands below a button. */
  int width(int least) {
    int width = least;
    while (!fits(width)) {
      width++;
    }
    return width;
  }

  private boolean fits(int width) {
    return lines(width) <= MOST_LINES
        && Arrays.stream(parts).allMatch(part -> length(part) + taken <= width);
  }

  /** The words that a column of a width cuts in the middle. */
  List<String> cutAt(int width) {
    return Arrays.stream(parts).filter(word -> !fits(word, width)).toList();
  }

  /** Whether a word stands uncut in a column of a width. */
  static boolean fits(String word, int width) {
    return length(word) / ROUGH + PADDING <= width;
  }

  /** How many lines it takes in a column of a width. */
  int lines(int width) {
    return 1 + (int) broken(width).chars().filter(c -> c == '\n').count();
  }

  /** The heading with the end of each line written into it. */
  String broken(int width) {
    StringBuilder text = new StringBuilder(parts[0]);
    double line = length(parts[0]);
    for (int i = 1; i < parts.length; i++) {
      String gap = parts[i - 1].endsWith("-") ? "" : " ";
      double joined = line + length(gap + parts[i]);
      boolean ends = joined + taken > width;
      text.append(ends ? "\n" : gap).append(parts[i]);
      line = ends ? length(parts[i]) : joined;
    }
    return text.toString();
  }

  private static double length(String word) {
    return word.chars().mapToDouble(HeadingLayout::of).sum() * EM * ROUGH;
  }

  /** The width of a bold letter as a share of the size of the type: Liberation Sans. */
  public static double of(int letter) {
    if ("ijlI.,;:'|/ ".indexOf(letter) >= 0) {
      return 0.28;
    }
    if ("ft()-".indexOf(letter) >= 0) {
      return 0.33;
    }
    if (letter == 'r') {
      return 0.39;
    }
    if ("sackevxyzJ0123456789".indexOf(letter) >= 0) {
      return 0.56;
    }
    if ("mM%wW".indexOf(letter) >= 0) {
      return 0.89;
    }
    if ("EPSVXY".indexOf(letter) >= 0) {
      return 0.67;
    }
    return Character.isUpperCase(letter) && "FLTZ".indexOf(letter) < 0 ? 0.75 : 0.61;
  }
}
