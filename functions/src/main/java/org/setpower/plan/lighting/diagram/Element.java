package org.setpower.plan.lighting.diagram;

import java.util.List;
import org.setpower.plan.finding.Verdict;

/** What is drawn. Lengths are in 1/100 mm from the upper left corner of the page. */
public sealed interface Element {
  /** The smallest rectangle around it. */
  Box box();

  /** A rectangle in the page. */
  record Box(int left, int top, int right, int bottom) {
    /** Whether they have an area in common. */
    public boolean meets(Box other) {
      return left < other.right && other.left < right && top < other.bottom && other.top < bottom;
    }

    /** Whether the other stands in it. */
    public boolean holds(Box other) {
      return left <= other.left
          && top <= other.top
          && right >= other.right
          && bottom >= other.bottom;
    }

    Box with(Box other) {
      return new Box(
          Math.min(left, other.left),
          Math.min(top, other.top),
          Math.max(right, other.right),
          Math.max(bottom, other.bottom));
    }
  }

  /** A corner. */
  record Point(int x, int y) {}

  /** A straight line. */
  record Line(int fromX, int fromY, int toX, int toY, Ink ink, int width, boolean dashed)
      implements Element {
    @Override
    public Box box() {
      return new Box(
          Math.min(fromX, toX), Math.min(fromY, toY), Math.max(fromX, toX), Math.max(fromY, toY));
    }
  }

  /** Lines from corner to corner. */
  record Polyline(List<Point> corners, Ink ink, int width) implements Element {
    public Polyline {
      corners = List.copyOf(corners);
    }

    @Override
    public Box box() {
      return corners.stream().map(c -> new Box(c.x, c.y, c.x, c.y)).reduce(Box::with).orElseThrow();
    }
  }

  /**
   * A part of an ellipse, or all of it.
   *
   * @param x its middle
   * @param from where it begins, in degrees against the clock from the right
   * @param sweep degrees against the clock; 360 for all of it
   */
  record Arc(int x, int y, int radiusX, int radiusY, int from, int sweep, Ink ink, int width)
      implements Element {
    /** Whether it is closed. */
    public boolean isWhole() {
      return sweep == 360;
    }

    @Override
    public Box box() {
      return new Box(x - radiusX, y - radiusY, x + radiusX, y + radiusY);
    }
  }

  /**
   * An area.
   *
   * @param border null without a border
   * @param ground null without a ground
   */
  record Rect(int x, int y, int width, int height, Ink border, Ink ground) implements Element {
    @Override
    public Box box() {
      return new Box(x, y, x + width, y + height);
    }
  }

  /**
   * A line of text.
   *
   * @param x its left end
   * @param y its upper edge
   * @param width as estimated
   * @param subject the row it stands for; null where it stands for none
   */
  record Text(
      int x, int y, int width, double points, boolean bold, Ink ink, String words, Subject subject)
      implements Element {
    @Override
    public Box box() {
      return new Box(x, y, x + width, y + Font.height(points));
    }
  }

  /**
   * A symbol made of lines.
   *
   * @param name what it stands for, such as breaker
   */
  record Symbol(String name, List<Element> parts) implements Element {
    public Symbol {
      parts = List.copyOf(parts);
    }

    @Override
    public Box box() {
      return parts.stream().map(Element::box).reduce(Box::with).orElseThrow();
    }
  }

  /**
   * The row that a text stands for.
   *
   * @param table key of its table
   * @param row number, from 1
   * @param quantity pieces; NaN for rows that are not counted
   */
  record Subject(String table, int row, Verdict verdict, double quantity) {}
}
