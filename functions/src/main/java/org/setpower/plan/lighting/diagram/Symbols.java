package org.setpower.plan.lighting.diagram;

import java.util.List;
import org.setpower.plan.lighting.diagram.Element.Arc;
import org.setpower.plan.lighting.diagram.Element.Line;
import org.setpower.plan.lighting.diagram.Element.Point;
import org.setpower.plan.lighting.diagram.Element.Polyline;
import org.setpower.plan.lighting.diagram.Element.Rect;
import org.setpower.plan.lighting.diagram.Element.Symbol;
import org.setpower.plan.lighting.diagram.Element.Text;
import org.setpower.plan.lighting.input.SupplyType;

/** Symbols as IEC 60617 shows them, drawn on a line from left to right. */
final class Symbols {
  static final int THIN = 18;
  static final int LINE = 30;

  /** Lengths on the line. */
  static final int BREAKER = 500;

  static final int RCD = 280;
  static final int SOCKET = 330;
  static final int LOAD = 400;
  static final int SOURCE = 900;

  private Symbols() {}

  /** A switch that opens by itself: a blade, and a cross at its contact. */
  static Symbol breaker(int x, int y, Ink ink) {
    return new Symbol(
        "breaker",
        List.of(
            new Line(x, y, x + 70, y, ink, LINE, false),
            new Line(x + 20, y - 50, x + 120, y + 50, ink, LINE, false),
            new Line(x + 20, y + 50, x + 120, y - 50, ink, LINE, false),
            new Line(x + 80, y - 140, x + BREAKER - 60, y, ink, LINE, false),
            new Line(x + BREAKER - 60, y, x + BREAKER, y, ink, LINE, false)));
  }

  /** The ring around the conductors that compares their currents; it opens the blade before it. */
  static Symbol rcd(int x, int y, boolean blade, Ink ink) {
    Line through = new Line(x, y, x + RCD, y, ink, LINE, false);
    Arc ring = new Arc(x + 120, y, 65, 110, 0, 360, ink, THIN);
    return blade
        ? new Symbol(
            "RCD",
            List.of(
                through,
                ring,
                new Line(x + 120, y - 110, x + 120, y - 150, ink, THIN, true),
                new Line(x + 120, y - 150, x - 180, y - 150, ink, THIN, true),
                new Line(x - 180, y - 150, x - 180, y - 70, ink, THIN, true)))
        : new Symbol("RCD", List.of(through, ring));
  }

  /** A socket outlet with earth contact. */
  static Symbol socket(int x, int y, Ink ink) {
    return new Symbol(
        "socket outlet",
        List.of(
            new Line(x, y, x + 80, y, ink, LINE, false),
            new Line(x + 80, y - 110, x + 80, y + 110, ink, THIN, false),
            new Arc(x + 190, y, 110, 110, 90, 180, ink, THIN),
            new Line(x + 80, y, x + SOCKET, y, ink, LINE, false)));
  }

  /** A lamp, a motor, a heater, or the general symbol of a device. */
  static Symbol load(int x, int y, Branch.LoadKind kind, Ink ink) {
    int radius = LOAD / 2;
    int middle = x + radius;
    if (kind == Branch.LoadKind.OTHER) {
      return new Symbol("load", List.of(new Rect(x, y - 130, LOAD, 260, ink, null)));
    }
    if (kind == Branch.LoadKind.HEATER) {
      return new Symbol(
          "heater",
          List.of(
              new Rect(x, y - 100, LOAD, 200, ink, null),
              new Line(x + 130, y - 100, x + 130, y + 100, ink, THIN, false),
              new Line(x + 270, y - 100, x + 270, y + 100, ink, THIN, false)));
    }
    Arc circle = new Arc(middle, y, radius, radius, 0, 360, ink, THIN);
    if (kind == Branch.LoadKind.MOTOR) {
      return new Symbol("motor", List.of(circle, letter("M", middle, y, ink)));
    }
    int reach = (int) (radius * Math.sqrt(0.5));
    return new Symbol(
        "lamp",
        List.of(
            circle,
            new Line(middle - reach, y - reach, middle + reach, y + reach, ink, THIN, false),
            new Line(middle - reach, y + reach, middle + reach, y - reach, ink, THIN, false)));
  }

  private static Text letter(String letter, int middle, int y, Ink ink) {
    double points = DiagramLayout.SMALLEST;
    int width = Font.width(letter, points, false);
    int top = y - Font.height(points) / 2;
    return new Text(middle - width / 2, top, width, points, false, ink, letter, null);
  }

  /** A generator, a transformer of a utility supply, or a socket outlet that feeds. */
  static Symbol source(int x, int y, SupplyType type, Ink ink) {
    if (type == SupplyType.GENERATOR) {
      int middle = x + SOURCE / 2;
      int radius = 340;
      return new Symbol(
          "generator",
          List.of(
              new Arc(middle, y, radius, radius, 0, 360, ink, LINE),
              letter("G", middle, y - 90, ink),
              new Polyline(sine(middle, y + 150), ink, THIN),
              new Line(middle + radius, y, x + SOURCE, y, ink, LINE, false)));
    }
    if (type == SupplyType.SOCKET_OUTLET) {
      return new Symbol(
          "socket outlet",
          List.of(
              new Arc(x + 420, y, 300, 300, 270, 180, ink, LINE),
              new Line(x + 720, y - 300, x + 720, y + 300, ink, LINE, false),
              new Line(x + 720, y, x + SOURCE, y, ink, LINE, false)));
    }
    return new Symbol(
        "transformer",
        List.of(
            new Arc(x + 270, y, 270, 270, 0, 360, ink, LINE),
            new Arc(x + 600, y, 270, 270, 0, 360, ink, LINE),
            new Line(x + 870, y, x + SOURCE, y, ink, LINE, false)));
  }

  private static List<Point> sine(int middle, int y) {
    Point[] points = new Point[13];
    for (int i = 0; i < points.length; i++) {
      double angle = 2 * Math.PI * i / (points.length - 1);
      points[i] = new Point(middle - 150 + 25 * i, (int) Math.round(y - 70 * Math.sin(angle)));
    }
    return List.of(points);
  }

  /** A stroke for each conductor up to three, else one with their number. */
  static Symbol conductors(int x, int y, int count, Ink ink) {
    int strokes = count <= 3 ? count : 1;
    Element[] parts = new Element[strokes + (count > 3 ? 1 : 0)];
    for (int i = 0; i < strokes; i++) {
      int at = x + 80 * i;
      parts[i] = new Line(at, y + 110, at + 90, y - 110, ink, THIN, false);
    }
    if (count > 3) {
      String number = String.valueOf(count);
      double points = DiagramLayout.SMALLEST;
      int width = Font.width(number, points, false);
      parts[strokes] =
          new Text(x + 100, y - 60 - Font.height(points), width, points, false, ink, number, null);
    }
    return new Symbol("conductors", List.of(parts));
  }

  /** How much room {@link #conductors} takes. */
  static int conductorsWidth(int count) {
    return count <= 3
        ? 90 + 80 * count
        : 160 + Font.width(String.valueOf(count), DiagramLayout.SMALLEST, false);
  }
}
