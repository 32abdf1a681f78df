package org.setpower.command.diagram;

import com.sun.star.awt.Point;
import com.sun.star.awt.Size;
import com.sun.star.container.XIndexAccess;
import com.sun.star.document.XUndoManager;
import com.sun.star.document.XUndoManagerSupplier;
import com.sun.star.drawing.CircleKind;
import com.sun.star.drawing.FillStyle;
import com.sun.star.drawing.LineDash;
import com.sun.star.drawing.LineStyle;
import com.sun.star.drawing.TextHorizontalAdjust;
import com.sun.star.drawing.TextVerticalAdjust;
import com.sun.star.drawing.XDrawPage;
import com.sun.star.drawing.XDrawPageSupplier;
import com.sun.star.drawing.XShape;
import com.sun.star.drawing.XShapeGrouper;
import com.sun.star.drawing.XShapes;
import com.sun.star.sheet.XSpreadsheet;
import com.sun.star.text.XText;
import com.sun.star.uno.Exception;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.setpower.command.CommandContext;
import org.setpower.command.document.CalcDocument;
import org.setpower.command.message.FallibleAction;
import org.setpower.plan.lighting.diagram.DiagramPage;
import org.setpower.plan.lighting.diagram.Element;
import org.setpower.plan.lighting.diagram.Ink;
import org.setpower.uno.HeldShapes;
import org.setpower.uno.Uno;

/** Draws elements with the office's own shapes; those of a page are one group. */
final class DiagramShapes {
  /** What the names of groups begin with; by it the former drawing is found. */
  static final String NAME = "Set Power diagram";

  private static final String SEED = "Seed of a Set Power diagram";

  private static final String FONT = "Liberation Sans";
  private static final float BOLD = 150;
  private static final int BORDER = 18;

  private final CommandContext desk;
  private final CalcDocument book;
  private final XDrawPage onto;
  private final XSpreadsheet sheet;
  private final List<XShape> made = new ArrayList<>();
  private Point corner;
  private XShapes into;

  /** Lines of one kind, that are one shape. */
  private record Pen(Ink ink, int width, boolean dashed) {}

  DiagramShapes(CommandContext desk, CalcDocument book, XSpreadsheet sheet) {
    this.desk = desk;
    this.book = book;
    this.sheet = sheet;
    onto = Uno.as(XDrawPageSupplier.class, sheet).getDrawPage();
  }

  /** Whether a shape is a page of the diagram. */
  static boolean isOurs(XShape shape) throws Exception {
    return String.valueOf(Uno.get(shape, "Name")).startsWith(NAME);
  }

  /** A page, and where it stands on its tab. */
  record Placed(DiagramPage page, int number, Point corner) {}

  /**
   * Draws pages in place of the former ones. The office remembers for Undo that a group is made and
   * that one is removed, not that a shape is added: so each page is a group made of one empty
   * shape, to which all others are added.
   */
  void replace(List<Placed> pages) throws Exception {
    removeFormer();
    for (Placed page : pages) {
      draw(page.page(), page.number(), page.corner());
    }
  }

  private void removeFormer() throws Exception {
    XIndexAccess shapes = Uno.as(XIndexAccess.class, onto);
    for (int i = shapes.getCount() - 1; i >= 0; i--) {
      XShape shape = HeldShapes.hold(shapes.getByIndex(i));
      if (isOurs(shape)) {
        Uno.as(XShapes.class, onto).remove(shape);
      }
    }
  }

  /**
   * Draws a page with its upper left corner here. What is set of its shapes need not be undone, and
   * must not be: LibreOffice 7.4 ends when a step is undone that names a shape and sets a print
   * range.
   */
  private void draw(DiagramPage page, int number, Point where) throws Exception {
    corner = where;
    made.clear();
    XShape group = group();
    into = Uno.as(XShapes.class, group);
    notUndone(
        () -> {
          // tied to the tab, not to a cell, which moves it
          Uno.set(group, "Anchor", sheet);
          group.setPosition(corner);
          fill(page);
          Uno.set(group, "Name", NAME + " " + number);
          Uno.set(group, "Title", page.title());
          Uno.set(group, "Description", page.description());
        });
  }

  private void notUndone(FallibleAction change) throws Exception {
    XUndoManager undo = Uno.as(XUndoManagerSupplier.class, book.document()).getUndoManager();
    undo.lock();
    try {
      change.run();
    } finally {
      undo.unlock();
    }
  }

  private void fill(DiagramPage page) throws Exception {
    Map<Pen, List<Point[]>> lines = new LinkedHashMap<>();
    for (Element element : page.elements()) {
      if (element instanceof Element.Line line) {
        collect(line, lines);
      } else {
        draw(element);
      }
    }
    for (Map.Entry<Pen, List<Point[]>> pen : lines.entrySet()) {
      polylines(pen.getKey(), pen.getValue());
    }
  }

  /** A group of an empty shape; Undo leaves that shape on the tab, the next drawing takes it. */
  private XShape group() throws Exception {
    XShape former = looseSeed();
    XShape seed =
        former == null
            ? HeldShapes.hold(book.factory().createInstance("com.sun.star.drawing.LineShape"))
            : former;
    notUndone(
        () -> {
          if (former == null) {
            Uno.as(XShapes.class, onto).add(seed);
            Uno.set(seed, "Name", SEED);
            Uno.set(seed, "LineStyle", LineStyle.NONE);
          }
          seed.setPosition(corner);
        });
    // a document does not make collections of shapes, the office does
    XShapes all = desk.service(XShapes.class, "com.sun.star.drawing.ShapeCollection");
    all.add(seed);
    return HeldShapes.hold(Uno.as(XShapeGrouper.class, onto).group(all));
  }

  private XShape looseSeed() throws Exception {
    XIndexAccess shapes = Uno.as(XIndexAccess.class, onto);
    for (int i = 0; i < shapes.getCount(); i++) {
      XShape shape = HeldShapes.hold(shapes.getByIndex(i));
      if (SEED.equals(Uno.get(shape, "Name"))) {
        return shape;
      }
    }
    return null;
  }

  private Point at(int x, int y) {
    return new Point(corner.X + x, corner.Y + y);
  }

  private void collect(Element.Line line, Map<Pen, List<Point[]>> lines) {
    lines
        .computeIfAbsent(new Pen(line.ink(), line.width(), line.dashed()), k -> new ArrayList<>())
        .add(new Point[] {at(line.fromX(), line.fromY()), at(line.toX(), line.toY())});
  }

  private void draw(Element element) throws Exception {
    if (element instanceof Element.Line line) {
      polylines(
          new Pen(line.ink(), line.width(), line.dashed()),
          List.<Point[]>of(
              new Point[] {at(line.fromX(), line.fromY()), at(line.toX(), line.toY())}));
    } else if (element instanceof Element.Polyline polyline) {
      Point[] points = polyline.corners().stream().map(c -> at(c.x(), c.y())).toArray(Point[]::new);
      polylines(new Pen(polyline.ink(), polyline.width(), false), List.<Point[]>of(points));
    } else if (element instanceof Element.Arc arc) {
      arc(arc);
    } else if (element instanceof Element.Rect rect) {
      rect(rect);
    } else if (element instanceof Element.Text text) {
      text(text);
    } else if (element instanceof Element.Symbol symbol) {
      symbol(symbol);
    }
  }

  /** Lines of one kind of a symbol are one shape, with the symbol's name. */
  private void symbol(Element.Symbol symbol) throws Exception {
    int before = made.size();
    Map<Pen, List<Point[]>> lines = new LinkedHashMap<>();
    for (Element part : symbol.parts()) {
      if (part instanceof Element.Line line) {
        collect(line, lines);
      } else {
        draw(part);
      }
    }
    for (Map.Entry<Pen, List<Point[]>> pen : lines.entrySet()) {
      polylines(pen.getKey(), pen.getValue());
    }
    for (XShape shape : made.subList(before, made.size())) {
      Uno.set(shape, "Name", symbol.name());
    }
  }

  private XShape shape(String kind) throws Exception {
    XShape shape = HeldShapes.hold(book.factory().createInstance("com.sun.star.drawing." + kind));
    into.add(shape);
    made.add(shape);
    return shape;
  }

  private XShape shape(String kind, Element.Box box) throws Exception {
    XShape shape = shape(kind);
    place(shape, box);
    return shape;
  }

  private void place(XShape shape, Element.Box box) throws Exception {
    try {
      shape.setSize(new Size(box.right() - box.left(), box.bottom() - box.top()));
    } catch (com.sun.star.beans.PropertyVetoException fixed) {
      throw new com.sun.star.uno.RuntimeException(fixed.getMessage());
    }
    shape.setPosition(at(box.left(), box.top()));
  }

  private void polylines(Pen pen, List<Point[]> points) throws Exception {
    XShape shape = shape("PolyLineShape");
    Uno.set(shape, "PolyPolygon", points.toArray(Point[][]::new));
    line(shape, pen.ink(), pen.width());
    if (pen.dashed()) {
      LineDash dash = new LineDash();
      dash.Dashes = 1;
      dash.DashLen = 60;
      dash.Distance = 40;
      Uno.set(shape, "LineStyle", LineStyle.DASH);
      Uno.set(shape, "LineDash", dash);
    }
  }

  private static void line(XShape shape, Ink ink, int width) throws Exception {
    if (ink == null) {
      Uno.set(shape, "LineStyle", LineStyle.NONE);
    } else {
      Uno.set(shape, "LineStyle", LineStyle.SOLID);
      Uno.set(shape, "LineColor", ink.colour());
      Uno.set(shape, "LineWidth", width);
    }
  }

  private void arc(Element.Arc arc) throws Exception {
    XShape shape = shape("EllipseShape", arc.box());
    Uno.set(shape, "FillStyle", FillStyle.NONE);
    line(shape, arc.ink(), arc.width());
    if (!arc.isWhole()) {
      Uno.set(shape, "CircleKind", CircleKind.ARC);
      Uno.set(shape, "CircleStartAngle", arc.from() * 100);
      Uno.set(shape, "CircleEndAngle", (arc.from() + arc.sweep()) % 360 * 100);
    }
  }

  private void rect(Element.Rect rect) throws Exception {
    XShape shape = shape("RectangleShape", rect.box());
    if (rect.ground() == null) {
      Uno.set(shape, "FillStyle", FillStyle.NONE);
    } else {
      Uno.set(shape, "FillStyle", FillStyle.SOLID);
      Uno.set(shape, "FillColor", rect.ground().colour());
    }
    line(shape, rect.border(), BORDER);
  }

  private void text(Element.Text text) throws Exception {
    XShape shape = shape("TextShape", text.box());
    for (String side : List.of("Left", "Right", "Upper", "Lower")) {
      Uno.set(shape, "Text" + side + "Distance", 0);
    }
    Uno.set(shape, "TextAutoGrowHeight", true);
    Uno.set(shape, "TextAutoGrowWidth", true);
    Uno.set(shape, "TextHorizontalAdjust", TextHorizontalAdjust.LEFT);
    Uno.set(shape, "TextVerticalAdjust", TextVerticalAdjust.TOP);
    Uno.as(XText.class, shape).setString(text.words());
    for (String script : List.of("", "Asian", "Complex")) {
      Uno.set(shape, "CharHeight" + script, (float) text.points());
      Uno.set(shape, "CharWeight" + script, text.bold() ? BOLD : 100f);
    }
    Uno.set(shape, "CharFontName", FONT);
    Uno.set(shape, "CharColor", text.ink().colour());
    if (text.subject() != null) {
      Element.Subject row = text.subject();
      Uno.set(shape, "Name", row.table() + " " + row.row() + " " + row.verdict().code());
    }
    place(shape, text.box());
  }
}
