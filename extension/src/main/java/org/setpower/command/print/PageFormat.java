package org.setpower.command.print;

import com.sun.star.container.XNameContainer;
import com.sun.star.style.XStyleFamiliesSupplier;
import com.sun.star.uno.Exception;
import org.setpower.command.document.CalcDocument;
import org.setpower.command.document.JobCell;
import org.setpower.text.PaperSize;
import org.setpower.uno.Uno;

/**
 * Paper follows the units of a job: Letter where they are US, else A4. Where a sheet has none, it
 * follows the country of its words.
 */
public final class PageFormat {
  private static final int PERCENT = 100;

  private PageFormat() {}

  /** Sets it in the page styles of our templates; any other size that was chosen stays. */
  public static void of(CalcDocument book) throws Exception {
    of(book, JobCell.UNITS.in(book));
  }

  static void of(CalcDocument book, String units) throws Exception {
    XNameContainer styles =
        Uno.as(
            XNameContainer.class,
            Uno.as(XStyleFamiliesSupplier.class, book.document())
                .getStyleFamilies()
                .getByName("PageStyles"));
    PaperSize paper = PaperSize.ofJob(units, book.language());
    PaperSize other = paper == PaperSize.A4 ? PaperSize.LETTER : PaperSize.A4;
    for (String name : styles.getElementNames()) {
      Object style = styles.getByName(name);
      int width = (int) Uno.get(style, "Width");
      int height = (int) Uno.get(style, "Height");
      if (name.startsWith("Set Power") && other.is(width, height)) {
        boolean landscape = (boolean) Uno.get(style, "IsLandscape");
        Uno.set(style, "Width", paper.width(landscape));
        Uno.set(style, "Height", paper.height(landscape));
      }
    }
  }

  /**
   * What a page holds of a sheet that is fitted to a number of pages beside each other, of which
   * each begins with the first column.
   *
   * @param columns how many columns stand on the first of them
   * @param height how much of the sheet stands on one from its top to its foot
   * @param onePage whether all of the sheet is fitted to one
   */
  record Fit(int columns, double height, boolean onePage) {}

  /** What a page of this style holds of columns of these widths. */
  static Fit fit(Object style, double... widths) throws Exception {
    double tall = size(style, "Height") - size(style, "TopMargin") - size(style, "BottomMargin");
    double wide = size(style, "Width") - size(style, "LeftMargin") - size(style, "RightMargin");
    if ((boolean) Uno.get(style, "FooterIsOn")) {
      tall -= size(style, "FooterHeight");
    }
    int across = Math.max(1, (short) Uno.get(style, "ScaleToPagesX"));
    int percent = PERCENT;
    while (percent > 1 && pages(wide * PERCENT / percent, widths) > across) {
      percent--;
    }
    double page = wide * PERCENT / percent;
    int columns = 0;
    double used = 0;
    while (columns < widths.length && used + widths[columns] <= page) {
      used += widths[columns];
      columns++;
    }
    boolean onePage = (short) Uno.get(style, "ScaleToPagesY") == 1;
    return new Fit(columns, tall * PERCENT / percent, onePage);
  }

  private static int pages(double page, double... widths) {
    int pages = 1;
    double used = widths[0];
    for (int i = 1; i < widths.length; i++) {
      if (used + widths[i] > page) {
        pages++;
        used = widths[0];
      }
      used += widths[i];
    }
    return pages;
  }

  private static int size(Object style, String property) throws Exception {
    return (int) Uno.get(style, property);
  }
}
