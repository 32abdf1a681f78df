package org.setpower.command.export;

import com.sun.star.awt.Point;
import com.sun.star.awt.Size;
import com.sun.star.drawing.XDrawPage;
import com.sun.star.drawing.XDrawPageSupplier;
import com.sun.star.drawing.XShape;
import com.sun.star.graphic.XGraphic;
import com.sun.star.graphic.XGraphicProvider;
import com.sun.star.io.XSeekable;
import com.sun.star.io.XStream;
import com.sun.star.lang.XServiceInfo;
import com.sun.star.sheet.XSpreadsheet;
import com.sun.star.uno.Exception;
import java.util.ArrayList;
import java.util.List;
import org.setpower.command.CommandContext;
import org.setpower.command.document.CalcDocument;
import org.setpower.uno.HeldShapes;
import org.setpower.uno.Uno;

/** Pictures of a letterhead. */
public final class PagePictures {
  private static final String SHAPE = "com.sun.star.drawing.GraphicObjectShape";

  private PagePictures() {}

  /** Adds a picture at the left edge of a row. */
  public static XShape add(
      CalcDocument book, XSpreadsheet sheet, XGraphic picture, Size size, int row, int margin)
      throws Exception {
    Point at = (Point) Uno.get(sheet.getCellByPosition(0, row), "Position");
    XShape shape = HeldShapes.hold(book.factory().createInstance(SHAPE));
    page(sheet).add(shape);
    shape.setSize(size);
    shape.setPosition(new Point(at.X + margin, at.Y + margin));
    Uno.set(shape, "Graphic", picture);
    return shape;
  }

  /** Pictures of a sheet that begin above a row. */
  static List<XShape> above(XSpreadsheet sheet, int row) throws Exception {
    int limit = ((Point) Uno.get(sheet.getCellByPosition(0, row), "Position")).Y;
    XDrawPage page = page(sheet);
    List<XShape> pictures = new ArrayList<>();
    for (int i = 0; i < page.getCount(); i++) {
      XShape shape = HeldShapes.hold(page.getByIndex(i));
      boolean isPicture = Uno.as(XServiceInfo.class, shape).supportsService(SHAPE);
      if (isPicture && shape.getPosition().Y < limit) {
        pictures.add(shape);
      }
    }
    return pictures;
  }

  /** The dots of a picture alone: nothing of its file, which may name a camera, a place, a user. */
  static XGraphic plain(CommandContext desk, XShape shape) throws Exception {
    XGraphicProvider provider =
        desk.service(XGraphicProvider.class, "com.sun.star.graphic.GraphicProvider");
    XStream stream = desk.service(XStream.class, "com.sun.star.io.TempFile");
    provider.storeGraphic(
        Uno.as(XGraphic.class, Uno.get(shape, "Graphic")),
        Uno.properties(
            Uno.property("OutputStream", stream.getOutputStream()),
            Uno.property("MimeType", "image/png")));
    Uno.as(XSeekable.class, stream).seek(0);
    return provider.queryGraphic(
        Uno.properties(Uno.property("InputStream", stream.getInputStream())));
  }

  private static XDrawPage page(XSpreadsheet sheet) {
    return Uno.as(XDrawPageSupplier.class, sheet).getDrawPage();
  }
}
