package org.setpower.templates;

import java.util.Arrays;
import java.util.List;

/**
 * How much room a heading takes over a column. The office breaks its words at the width of the
 * cell, and keeps them clear of the button of a filter only where each line leaves room for it.
 */
final class Heading {
  private static final int MOST_LINES = 3;
  private static final double EM = 3.175; // 9 pt in mm
  private static final double MARGINS = 2.4; // with the indent of a heading, in mm
  private static final double PADDING = 2; // of a cell, in mm
  private static final double SLACK = 1.04; // so much narrower letters may be than reckoned
  private static final double BUTTON = 5.1;
  private static final double ROUGH = 1.02; // letters on a screen stand on whole dots

  private final String[] parts;

  /** A heading, with its unit. */
  Heading(String text) {
    parts = text.split("(?<=-)|\\s");
  }

  /** The least width, from this one on, at which no word is broken or stands below a button. */
  int width(int least) {
    int width = least;
    while (!fits(width)) {
      width++;
    }
    return width;
  }

  /**
   * Whether all lines are clear of the button, wherever the office breaks them: a heading that may
   * need two lines by this reckoning may stand in one there.
   */
  private boolean fits(int width) {
    double clear = width - BUTTON - MARGINS;
    return lines(width) <= MOST_LINES
        && widest(broken(width - MARGINS)) <= clear
        && widest(broken(width * SLACK)) <= clear;
  }

  /** How many lines it takes in a column of a width. */
  int lines(int width) {
    return broken(width - MARGINS).length;
  }

  private static double widest(double... lines) {
    return Arrays.stream(lines).max().orElse(0);
  }

  /** The lengths of its lines, in so much room. */
  private double[] broken(double room) {
    double[] lines = new double[parts.length];
    int line = 0;
    for (int i = 0; i < parts.length; i++) {
      double word = of(parts[i]);
      double joined = lines[line] + of(" ") + word;
      if (i > 0 && joined > room) {
        lines[++line] = word;
      } else {
        lines[line] = i == 0 ? word : joined;
      }
    }
    return Arrays.copyOf(lines, line + 1);
  }

  /** The words that a column of a width cuts in the middle. */
  List<String> cutAt(int width) {
    return Arrays.stream(parts).filter(word -> !fits(word, width)).toList();
  }

  /** Whether a word stands uncut in a column of a width. */
  static boolean fits(String word, int width) {
    return of(word) + PADDING <= width;
  }

  private static double of(String word) {
    return word.chars().mapToDouble(Heading::of).sum() * EM * ROUGH;
  }

  /** The width of a bold letter as a share of the size of the type. */
  private static double of(int letter) {
    if ("ijlI.,;:'| ".indexOf(letter) >= 0) {
      return 0.28;
    }
    if ("ft()-".indexOf(letter) >= 0) {
      return 0.33;
    }
    if (letter == 'r') {
      return 0.39;
    }
    if ("sackevxyzJ0123456789".indexOf(letter) >= 0) {
      return 0.55;
    }
    if ("mM%wW".indexOf(letter) >= 0) {
      return 0.87;
    }
    if ("EPSVXY".indexOf(letter) >= 0) {
      return 0.67;
    }
    if ("FLTZ".indexOf(letter) >= 0) {
      return 0.61;
    }
    return Character.isUpperCase(letter) ? 0.73 : 0.61;
  }
}
