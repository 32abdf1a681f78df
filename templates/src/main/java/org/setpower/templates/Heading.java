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

  private boolean fits(int width) {
    return lines(width) <= MOST_LINES && widest(width) + BUTTON + MARGINS <= width;
  }

  /** The words that a column of a width cuts in the middle. */
  List<String> cutAt(int width) {
    return Arrays.stream(parts).filter(word -> !fits(word, width)).toList();
  }

  /** Whether a word stands uncut in a column of a width. */
  static boolean fits(String word, int width) {
    double drawn = word.chars().mapToDouble(Heading::drawn).sum() * EM * ROUGH;
    return drawn + PADDING <= width;
  }

  /** How many lines it takes in a column of a width. */
  int lines(int width) {
    return broken(width).length;
  }

  private double widest(int width) {
    double widest = 0;
    for (double line : broken(width)) {
      widest = Math.max(widest, line);
    }
    return widest;
  }

  /** The lengths of its lines. */
  private double[] broken(int width) {
    double[] lines = new double[parts.length];
    int line = 0;
    for (int i = 0; i < parts.length; i++) {
      double word = of(parts[i]);
      double joined = lines[line] + of(" ") + word;
      if (i > 0 && joined > width - MARGINS) {
        lines[++line] = word;
      } else {
        lines[line] = i == 0 ? word : joined;
      }
    }
    return Arrays.copyOf(lines, line + 1);
  }

  private static double of(String word) {
    return word.chars().mapToDouble(Heading::of).sum() * EM * ROUGH;
  }

  /** The width of a bold letter as a share of the size of the type, on the wide side. */
  private static double of(int letter) {
    if ("ijlI.,;:'| ".indexOf(letter) >= 0) {
      return 0.28;
    }
    if ("ft()-".indexOf(letter) >= 0) {
      return 0.33;
    }
    if ("rsackevxyzJ0123456789".indexOf(letter) >= 0) {
      return 0.55;
    }
    if ("mM%wW".indexOf(letter) >= 0) {
      return 0.87;
    }
    return Character.isUpperCase(letter) ? 0.7 : 0.61;
  }

  /** The same where it is drawn otherwise: a word is divided only if it must be. */
  private static double drawn(int letter) {
    if (letter == 'r') {
      return 0.39;
    }
    if ("FLTZ".indexOf(letter) >= 0) {
      return 0.61;
    }
    if ("EPSVXY".indexOf(letter) >= 0) {
      return 0.67;
    }
    return Character.isUpperCase(letter) ? Math.max(0.73, of(letter)) : of(letter);
  }
}
