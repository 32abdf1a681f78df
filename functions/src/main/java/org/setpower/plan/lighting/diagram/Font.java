package org.setpower.plan.lighting.diagram;

import java.text.Normalizer;
import java.util.ArrayList;
import java.util.List;

/** Estimates texts in a proportional font without serifs, as Liberation Sans. */
final class Font {
  /** 1/100 mm of a point: 25.4 / 72. */
  private static final double POINT = 2540.0 / 72;

  /** Ascent and descent together, in sizes of the font. */
  private static final double HEIGHT = 1.15;

  /** Room for a font that the office takes in its place. */
  private static final double ROOM = 1.04;

  private static final double BOLD = 1.08;
  private static final int PER_EM = 1000;

  /** Widths of the characters from the blank to ~ in 1/1000 of the size, as sans fonts have. */
  private static final int[] WIDTHS = {
    278, 278, 355, 556, 556, 889, 667, 191, 333, 333, 389, 584, 278, 333, 278, 278, 556, 556, 556,
    556, 556, 556, 556, 556, 556, 556, 278, 278, 584, 584, 584, 556, 1015, 667, 667, 722, 722, 667,
    611, 778, 722, 278, 500, 667, 556, 833, 722, 778, 667, 778, 722, 667, 611, 722, 667, 944, 667,
    667, 611, 278, 278, 278, 469, 556, 333, 556, 556, 500, 556, 556, 278, 556, 556, 222, 222, 500,
    222, 833, 556, 556, 556, 556, 333, 500, 278, 556, 500, 722, 500, 500, 500, 334, 260, 334, 584
  };

  private Font() {}

  /** Height of a line. */
  static int height(double points) {
    return (int) Math.ceil(points * POINT * HEIGHT);
  }

  /** Width of a line. */
  static int width(String text, double points, boolean bold) {
    double sum = 0;
    String plain = Normalizer.normalize(text, Normalizer.Form.NFD);
    for (int i = 0; i < plain.length(); ) {
      int character = plain.codePointAt(i);
      sum += width(character);
      i += Character.charCount(character);
    }
    return (int) Math.ceil(sum / PER_EM * points * POINT * ROOM * (bold ? BOLD : 1));
  }

  private static int width(int character) {
    if (character >= ' ' && character <= '~') {
      return WIDTHS[character - ' '];
    }
    if (Character.getType(character) == Character.NON_SPACING_MARK) {
      return 0;
    }
    return switch (character) {
      case '·', '\u00a0', '’', '‘' -> 278;
      case '×', '−' -> 584;
      case '–', 'ß', '„', '“', '”' -> 556;
      case '²' -> 333;
      default -> PER_EM;
    };
  }

  /** The text in lines of this width; a word that is longer is divided. */
  static List<String> wrap(String text, double points, boolean bold, int most) {
    List<String> lines = new ArrayList<>();
    String line = "";
    for (String word : text.strip().split("\\s+")) {
      String longer = line.isEmpty() ? word : line + " " + word;
      if (width(longer, points, bold) <= most) {
        line = longer;
        continue;
      }
      if (!line.isEmpty()) {
        lines.add(line);
      }
      line = word;
      while (width(line, points, bold) > most && line.length() > 1) {
        int cut = line.length() - 1;
        while (cut > 1 && width(line.substring(0, cut), points, bold) > most) {
          cut--;
        }
        cut -= Character.isHighSurrogate(line.charAt(cut - 1)) && cut > 1 ? 1 : 0;
        lines.add(line.substring(0, cut));
        line = line.substring(cut);
      }
    }
    if (!line.isEmpty() || lines.isEmpty()) {
      lines.add(line);
    }
    return lines;
  }
}
