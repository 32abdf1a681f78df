package org.setpower.command.newfile;

import com.sun.star.awt.Size;
import com.sun.star.drawing.XShape;
import com.sun.star.graphic.XGraphic;
import com.sun.star.graphic.XGraphicProvider;
import com.sun.star.lang.XComponent;
import com.sun.star.sheet.XPrintAreas;
import com.sun.star.sheet.XSpreadsheet;
import com.sun.star.table.CellRangeAddress;
import com.sun.star.table.XColumnRowRange;
import com.sun.star.uno.Exception;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.Optional;
import org.setpower.command.CommandContext;
import org.setpower.command.document.CalcDocument;
import org.setpower.command.export.PagePictures;
import org.setpower.command.plan.PlanFile;
import org.setpower.plan.quote.QuotePlan;
import org.setpower.uno.Uno;

/** The picture of the house above the client's page of a new quote. */
final class HouseLogo {
  private static final int WIDEST = 8000; // 1/100 mm
  private static final int TALLEST = 2000;
  private static final int MARGIN = 150;
  private static final String LIST = "Top_document";

  private HouseLogo() {}

  /**
   * Places it in a quote; other sheets have no place for it.
   *
   * @param file path or address of a picture on this machine; empty for none
   * @return whether it could be read, where one is asked for
   */
  static boolean place(CommandContext desk, XComponent document, String file) throws Exception {
    CalcDocument book = new CalcDocument(document);
    Optional<PlanFile> quote = PlanFile.of(book).filter(f -> f.model() == QuotePlan.MODEL);
    if (file.isEmpty() || quote.isEmpty()) {
      return true;
    }
    XGraphic picture = picture(desk, file);
    if (picture == null) {
      return false;
    }
    XSpreadsheet tab = book.sheet(quote.get().address(LIST).Sheet);
    CellRangeAddress[] printed = Uno.as(XPrintAreas.class, tab).getPrintAreas();
    int row = printed.length == 0 ? 0 : printed[0].StartRow;
    Size size = size(picture);
    Object line = Uno.as(XColumnRowRange.class, tab).getRows().getByIndex(row);
    Uno.set(line, "Height", size.Height + 2 * MARGIN);
    XShape shape = PagePictures.add(book, tab, picture, size, row, MARGIN);
    Uno.set(shape, "Title", "logo");
    return true;
  }

  private static XGraphic picture(CommandContext desk, String file) throws Exception {
    try {
      boolean isAddress = file.startsWith("file:");
      String url = isAddress ? file : Path.of(file).toUri().toString();
      return desk.service(XGraphicProvider.class, "com.sun.star.graphic.GraphicProvider")
          .queryGraphic(Uno.properties(Uno.property("URL", url)));
    } catch (InvalidPathException
        | com.sun.star.io.IOException
        | com.sun.star.lang.IllegalArgumentException e) {
      return null;
    }
  }

  /** As large as the letterhead has room for. */
  private static Size size(XGraphic picture) throws Exception {
    Size dots = (Size) Uno.get(picture, "SizePixel");
    double wide = Math.max(1, dots.Width);
    double tall = Math.max(1, dots.Height);
    double scale = Math.min(WIDEST / wide, TALLEST / tall);
    return new Size((int) (wide * scale), (int) (tall * scale));
  }
}
