package org.setpower.command.diagram;

import com.sun.star.awt.Point;
import com.sun.star.awt.Size;
import com.sun.star.container.XIndexAccess;
import com.sun.star.drawing.CircleKind;
import com.sun.star.drawing.FillStyle;
import com.sun.star.drawing.LineStyle;
import com.sun.star.drawing.XDrawPage;
import com.sun.star.drawing.XShape;
import com.sun.star.text.XText;
import com.sun.star.uno.Exception;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.setpower.plan.finding.Verdict;
import org.setpower.plan.lighting.diagram.DiagramPage;
import org.setpower.plan.lighting.diagram.Element;
import org.setpower.plan.lighting.diagram.Ink;
import org.setpower.plan.lighting.diagram.Paper;
import org.setpower.uno.Uno;

/** Reads a drawing back from its shapes, so that Undo can draw it again. */
final class DiagramReader {
  private static final Pattern ROW = Pattern.compile("(\\w+)\\s(\\d+)\\s(ok|check|stop)");

  private final Point corner;

  private DiagramReader(Point corner) {
    this.corner = corner;
  }

  /** A page, and where it stands on its tab. */
  record Drawn(DiagramPage page, int number, Point corner) {}

  /** All pages of ours on a tab. */
  static List<Drawn> all(XDrawPage from) throws Exception {
    XIndexAccess shapes = Uno.as(XIndexAccess.class, from);
    List<Drawn> all = new ArrayList<>();
    for (int i = 0; i < shapes.getCount(); i++) {
      XShape group = Uno.as(XShape.class, shapes.getByIndex(i));
      if (DiagramShapes.isOurs(group)) {
        Point corner = group.getPosition();
        DiagramPage page =
            new DiagramPage(
                Paper.A4,
                String.valueOf(Uno.get(group, "Title")),
                new DiagramReader(corner).elements(Uno.as(XIndexAccess.class, group)));
        String number = String.valueOf(Uno.get(group, "Name")).replaceAll("\\D", "");
        all.add(new Drawn(page, number.isEmpty() ? 1 : Integer.parseInt(number), corner));
      }
    }
    return all;
  }

  private List<Element> elements(XIndexAccess shapes) throws Exception {
    List<Element> elements = new ArrayList<>();
    for (int i = 0; i < shapes.getCount(); i++) {
      XShape shape = Uno.as(XShape.class, shapes.getByIndex(i));
      String name = String.valueOf(Uno.get(shape, "Name"));
      List<Element> parts = parts(shape, name);
      if (name.isEmpty() || ROW.matcher(name).matches()) {
        elements.addAll(parts);
      } else if (!parts.isEmpty()) {
        elements.add(new Element.Symbol(name, parts));
      }
    }
    return elements;
  }

  private List<Element> parts(XShape shape, String name) throws Exception {
    String type = shape.getShapeType().replaceFirst(".*\\.", "");
    Point at = shape.getPosition();
    Size size = shape.getSize();
    int x = at.X - corner.X;
    int y = at.Y - corner.Y;
    return switch (type) {
      case "PolyLineShape" -> lines(shape);
      case "EllipseShape" -> List.of(arc(shape, x, y, size));
      case "RectangleShape" ->
          List.of(new Element.Rect(x, y, size.Width, size.Height, border(shape), ground(shape)));
      case "TextShape" -> List.of(text(shape, x, y, size.Width, name));
      default -> List.of();
    };
  }

  private List<Element> lines(XShape shape) throws Exception {
    List<Element> lines = new ArrayList<>();
    Ink ink = ink(Uno.get(shape, "LineColor"));
    int width = (int) Uno.get(shape, "LineWidth");
    boolean dashed = Uno.get(shape, "LineStyle") == LineStyle.DASH;
    for (Point[] points : (Point[][]) Uno.get(shape, "PolyPolygon")) {
      if (points.length == 2) {
        lines.add(
            new Element.Line(
                points[0].X - corner.X,
                points[0].Y - corner.Y,
                points[1].X - corner.X,
                points[1].Y - corner.Y,
                ink,
                width,
                dashed));
      } else {
        List<Element.Point> corners = new ArrayList<>();
        for (Point point : points) {
          corners.add(new Element.Point(point.X - corner.X, point.Y - corner.Y));
        }
        lines.add(new Element.Polyline(corners, ink, width));
      }
    }
    return lines;
  }

  private static Element arc(XShape shape, int x, int y, Size size) throws Exception {
    boolean whole = Uno.get(shape, "CircleKind") != CircleKind.ARC;
    int from = whole ? 0 : (int) Uno.get(shape, "CircleStartAngle") / 100;
    int to = whole ? 360 : (int) Uno.get(shape, "CircleEndAngle") / 100;
    return new Element.Arc(
        x + size.Width / 2,
        y + size.Height / 2,
        size.Width / 2,
        size.Height / 2,
        from,
        whole ? 360 : Math.floorMod(to - from, 360),
        ink(Uno.get(shape, "LineColor")),
        (int) Uno.get(shape, "LineWidth"));
  }

  private static Ink border(XShape shape) throws Exception {
    return Uno.get(shape, "LineStyle") == LineStyle.NONE ? null : ink(Uno.get(shape, "LineColor"));
  }

  private static Ink ground(XShape shape) throws Exception {
    return Uno.get(shape, "FillStyle") == FillStyle.NONE ? null : ink(Uno.get(shape, "FillColor"));
  }

  private static Element text(XShape shape, int x, int y, int width, String name) throws Exception {
    Matcher row = ROW.matcher(name);
    Element.Subject subject =
        row.matches()
            ? new Element.Subject(
                row.group(1),
                Integer.parseInt(row.group(2)),
                Verdict.valueOf(row.group(3).toUpperCase(java.util.Locale.ROOT)),
                Double.NaN)
            : null;
    return new Element.Text(
        x,
        y,
        width,
        (float) Uno.get(shape, "CharHeight"),
        (float) Uno.get(shape, "CharWeight") > 100,
        ink(Uno.get(shape, "CharColor")),
        Uno.as(XText.class, shape).getString(),
        subject);
  }

  private static Ink ink(Object colour) {
    for (Ink ink : Ink.values()) {
      if (Integer.valueOf(ink.colour()).equals(colour)) {
        return ink;
      }
    }
    return Ink.PLAIN;
  }
}
