package org.setpower.plan.lighting;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Font;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.geom.Arc2D;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.awt.image.BufferedImage;
import org.setpower.plan.lighting.diagram.DiagramPage;
import org.setpower.plan.lighting.diagram.Element;
import org.setpower.plan.lighting.diagram.Ink;
import org.setpower.plan.lighting.diagram.Paper;

/** Paints a page of the diagram, to be looked at without an office. */
final class DiagramPicture {
  /** Points of the picture in 1/100 mm. */
  private static final double SCALE = 0.06;

  private final Graphics2D paint;

  private DiagramPicture(Graphics2D paint) {
    this.paint = paint;
  }

  static BufferedImage of(DiagramPage page) {
    BufferedImage image =
        new BufferedImage(
            (int) (page.paper().width() * SCALE),
            (int) (page.paper().height() * SCALE),
            BufferedImage.TYPE_INT_RGB);
    Graphics2D paint = image.createGraphics();
    paint.setColor(Color.WHITE);
    paint.fillRect(0, 0, image.getWidth(), image.getHeight());
    paint.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
    paint.setRenderingHint(
        RenderingHints.KEY_FRACTIONALMETRICS, RenderingHints.VALUE_FRACTIONALMETRICS_ON);
    paint.scale(SCALE, SCALE);
    paint.translate(Paper.MARGIN, Paper.MARGIN);
    page.elements().forEach(new DiagramPicture(paint)::draw);
    paint.dispose();
    return image;
  }

  private void pen(Ink ink, int width, boolean dashed) {
    paint.setColor(new Color(ink.colour()));
    paint.setStroke(
        dashed
            ? new BasicStroke(
                width, BasicStroke.CAP_BUTT, BasicStroke.JOIN_MITER, 10, new float[] {60, 40}, 0)
            : new BasicStroke(width, BasicStroke.CAP_BUTT, BasicStroke.JOIN_MITER));
  }

  private void draw(Element element) {
    if (element instanceof Element.Line l) {
      pen(l.ink(), l.width(), l.dashed());
      paint.draw(new Line2D.Double(l.fromX(), l.fromY(), l.toX(), l.toY()));
    } else if (element instanceof Element.Polyline p) {
      pen(p.ink(), p.width(), false);
      Path2D path = new Path2D.Double();
      path.moveTo(p.corners().get(0).x(), p.corners().get(0).y());
      p.corners().forEach(c -> path.lineTo(c.x(), c.y()));
      paint.draw(path);
    } else if (element instanceof Element.Arc a) {
      pen(a.ink(), a.width(), false);
      paint.draw(
          new Arc2D.Double(
              a.x() - a.radiusX(),
              a.y() - a.radiusY(),
              2 * a.radiusX(),
              2 * a.radiusY(),
              a.from(),
              a.sweep(),
              Arc2D.OPEN));
    } else if (element instanceof Element.Rect r) {
      Rectangle2D rectangle = new Rectangle2D.Double(r.x(), r.y(), r.width(), r.height());
      if (r.ground() != null) {
        paint.setColor(new Color(r.ground().colour()));
        paint.fill(rectangle);
      }
      if (r.border() != null) {
        pen(r.border(), 18, false);
        paint.draw(rectangle);
      }
    } else if (element instanceof Element.Text t) {
      double size = t.points() * 2540 / 72;
      paint.setColor(new Color(t.ink().colour()));
      paint.setFont(
          new Font("Liberation Sans", t.bold() ? Font.BOLD : Font.PLAIN, 1)
              .deriveFont((float) size));
      paint.drawString(t.words(), t.x(), (float) (t.y() + 0.93 * size));
    } else if (element instanceof Element.Symbol s) {
      s.parts().forEach(this::draw);
    }
  }
}
