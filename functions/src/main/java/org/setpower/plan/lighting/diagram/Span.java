package org.setpower.plan.lighting.diagram;

import java.util.List;

/** A piece of a line of text. */
record Span(String words, Ink ink, boolean bold, Element.Subject subject) {
  static final String GAP = "  ";

  static Span of(String words) {
    return new Span(words, Ink.PLAIN, false, null);
  }

  static Span bold(String words, Ink ink) {
    return new Span(words, ink, true, null);
  }

  Span about(Element.Subject row) {
    return new Span(words, ink, bold, row);
  }

  /** Width of a line of pieces. */
  static int width(List<Span> line, double points) {
    int width = 0;
    for (Span span : line) {
      width += (width == 0 ? 0 : Font.width(GAP, points, false)) + span.width(points);
    }
    return width;
  }

  int width(double points) {
    return Font.width(words, points, bold);
  }
}
