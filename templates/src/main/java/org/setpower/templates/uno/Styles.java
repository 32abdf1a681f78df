package org.setpower.templates.uno;

import com.sun.star.awt.FontWeight;
import com.sun.star.container.XNameContainer;
import com.sun.star.lang.Locale;
import com.sun.star.lang.XMultiServiceFactory;
import com.sun.star.style.XStyle;
import com.sun.star.style.XStyleFamiliesSupplier;
import com.sun.star.table.BorderLine2;
import com.sun.star.table.CellHoriJustify;
import com.sun.star.table.CellVertJustify2;
import com.sun.star.table.TableBorder2;
import com.sun.star.table.XCellRange;
import com.sun.star.util.CellProtection;
import com.sun.star.util.XNumberFormats;
import com.sun.star.util.XNumberFormatsSupplier;
import java.util.HashSet;
import java.util.Set;
import org.setpower.templates.spec.Format;
import org.setpower.templates.spec.Style;
import org.setpower.templates.spec.Tab;
import org.setpower.text.Words;

/** The cell and page styles of a document, made from {@link Style}. */
final class Styles {
  private static final String WORDS_ONLY = ";;;@"; // no lone 0 where the extension is missing
  private static final int FRAME = 53; // 1.5 pt
  private static final int HAIRLINE = 9; // 0.25 pt in 1/100 mm
  private static final short INDENT = 150;
  private static final int MARGIN = 1000;
  private static final int A4_SHORT = 21000;
  private static final int A4_LONG = 29700;

  private final Object document;
  private final Locale language;
  private final XNameContainer cells;
  private final XNameContainer pages;
  private final Set<String> made = new HashSet<>();

  /** The styles of a document in a language. */
  Styles(Object document, String language) {
    this.document = document;
    this.language = new Locale(language, language.toUpperCase(java.util.Locale.ROOT), "");
    var families = Uno.as(XStyleFamiliesSupplier.class, document).getStyleFamilies();
    cells = family(families, "CellStyles");
    pages = family(families, "PageStyles");
    Object base = Uno.ask(() -> cells.getByName("Default"));
    if (!language.equals(Words.ENGLISH)) {
      Uno.set(document, "CharLocale", this.language);
      Uno.set(base, "CharLocale", this.language);
    }
    Uno.set(base, "CharFontName", Style.FONT);
    Uno.set(base, "CharHeight", 10f);
    Uno.set(base, "CharColor", Style.Ink.INK);
    Uno.set(base, "CellBackColor", Style.Ink.PAPER); // an office in the dark would paint it black
    Uno.set(base, "VertJustify", CellVertJustify2.CENTER);
  }

  private static XNameContainer family(com.sun.star.container.XNameAccess families, String name) {
    return Uno.ask(() -> Uno.as(XNameContainer.class, families.getByName(name)));
  }

  /** The name of the style of a cell that shows no value of its own. */
  String of(Style style) {
    String name = style.styleName();
    if (made.add(name)) {
      Object created = create(cells, "com.sun.star.style.CellStyle", name, "Default");
      Uno.set(created, "CharHeight", (float) style.points());
      Uno.set(created, "CharWeight", style.bold() ? FontWeight.BOLD : FontWeight.NORMAL);
      Uno.set(created, "CharColor", style.colour());
      if (style.fill() != Style.Ink.NONE) {
        Uno.set(created, "CellBackColor", style.fill());
      }
      if (style.line() != Style.Ink.NONE) {
        Uno.set(created, "BottomBorder", line(style.line()));
      }
      shape(style, created);
    }
    return name;
  }

  private void shape(Style style, Object created) {
    switch (style) {
      case HEADING -> {
        Uno.set(created, "IsTextWrapped", true);
        Uno.set(created, "VertJustify", CellVertJustify2.BOTTOM);
      }
      case NOTE, CAUTION, MISSING, RESULT -> Uno.set(created, "IsTextWrapped", true);
      case FINDING -> {
        Uno.set(created, "IsTextWrapped", true);
        Uno.set(created, "NumberFormat", key(WORDS_ONLY));
      }
      case LABEL -> Uno.set(created, "ShrinkToFit", true);
      case FIGURE_LABEL -> {
        Uno.set(created, "ShrinkToFit", true);
        Uno.set(created, "ParaRightMargin", 2 * INDENT);
      }
      case HELP -> {
        Uno.set(created, "HoriJustify", CellHoriJustify.LEFT);
        Uno.set(created, "ParaIndent", INDENT);
      }
      case WORD -> Uno.set(created, "HoriJustify", CellHoriJustify.CENTER);
      case FIGURE -> {
        Uno.set(created, "HoriJustify", CellHoriJustify.LEFT);
        Uno.set(created, "ShrinkToFit", true);
      }
      case BLANK -> Uno.set(created, "BottomBorder", new BorderLine2());
      case FIGURE_NOTE -> {
        Uno.set(created, "IsTextWrapped", true);
        Uno.set(created, "ParaRightMargin", 2 * INDENT);
        Uno.set(created, "VertJustify", CellVertJustify2.TOP);
      }
      case TO_FILL -> {
        CellProtection unlocked = new CellProtection();
        unlocked.IsLocked = false;
        Uno.set(created, "CellProtection", unlocked);
        Uno.set(created, "IsTextWrapped", true);
      }
      default -> {}
    }
  }

  /** The name of the style that colours a status word; it keeps the letters of the cell's style. */
  String status(Style status, Style over) {
    String name = status.styleName() + " " + over.points();
    if (made.add(name)) {
      Object created = create(cells, "com.sun.star.style.CellStyle", name, of(status));
      Uno.set(created, "CharHeight", (float) over.points());
    }
    return name;
  }

  /** The name of the style of a cell with a value of this format. */
  String of(Style style, Format format) {
    String parent = of(style);
    String name = parent + " " + format.name().toLowerCase(java.util.Locale.ROOT);
    if (made.add(name)) {
      Object created = create(cells, "com.sun.star.style.CellStyle", name, parent);
      boolean general = format.isText() && style != Style.TO_FILL;
      Uno.set(created, "NumberFormat", key(general ? "General" : format.code()));
      if (style != Style.FIGURE) {
        Uno.set(
            created, "HoriJustify", format.isLeft() ? CellHoriJustify.LEFT : CellHoriJustify.RIGHT);
        Uno.set(created, "ParaIndent", INDENT);
      }
      if (!format.isText() && style != Style.HEADING) {
        Uno.set(created, "IsTextWrapped", false);
      }
    }
    return name;
  }

  /** A heading over words stands left, over numbers right. */
  String heading(Format format) {
    return of(Style.HEADING, format);
  }

  private int key(String code) {
    XNumberFormats formats = Uno.as(XNumberFormatsSupplier.class, document).getNumberFormats();
    if (!language.Language.equals(Uno.ENGLISH.Language)) {
      return Uno.ask(() -> formats.addNewConverted(code, Uno.ENGLISH, language));
    }
    int known = formats.queryKey(code, Uno.ENGLISH, false);
    return known >= 0 ? known : Uno.ask(() -> formats.addNew(code, Uno.ENGLISH));
  }

  private Object create(XNameContainer family, String service, String name, String parent) {
    Object created =
        Uno.ask(() -> Uno.as(XMultiServiceFactory.class, document).createInstance(service));
    Uno.tell(() -> family.insertByName(name, created));
    if (!parent.isEmpty()) {
      Uno.tell(() -> Uno.as(XStyle.class, created).setParentStyle(parent));
    }
    return created;
  }

  /** Draws a line around cells. */
  void frame(XCellRange cells) {
    BorderLine2 line = line(Style.Ink.ACCENT);
    line.LineWidth = FRAME;
    line.OuterLineWidth = (short) FRAME;
    TableBorder2 border = new TableBorder2();
    border.TopLine = line;
    border.BottomLine = line;
    border.LeftLine = line;
    border.RightLine = line;
    border.IsTopLineValid = true;
    border.IsBottomLineValid = true;
    border.IsLeftLineValid = true;
    border.IsRightLineValid = true;
    Uno.set(cells, "TableBorder2", border);
  }

  private static BorderLine2 line(int colour) {
    BorderLine2 line = new BorderLine2();
    line.Color = colour;
    line.LineWidth = HAIRLINE;
    line.OuterLineWidth = (short) HAIRLINE;
    return line;
  }

  /**
   * The name of a page style: A4, fitted to so many pages across or wholly to one page, a footer
   * that names what it is.
   */
  String page(Tab tab, int across) {
    boolean portrait = tab.isPortrait();
    String name =
        "Set Power "
            + (tab.isOnePage() ? "page" : portrait ? "upright" : "landscape")
            + (across == 1 ? "" : " " + across + " across");
    if (made.add(name)) {
      Object page = create(pages, "com.sun.star.style.PageStyle", name, "");
      Uno.set(page, "IsLandscape", !portrait);
      Uno.set(page, "Width", portrait ? A4_SHORT : A4_LONG);
      Uno.set(page, "Height", portrait ? A4_LONG : A4_SHORT);
      Uno.set(page, "ScaleToPagesX", (short) across);
      Uno.set(page, "ScaleToPagesY", (short) (tab.isOnePage() ? 1 : 0));
      Uno.set(page, "PrintDownFirst", false);
      Uno.set(page, "FirstPageNumber", (short) 0); // goes on from the sheet before
      for (String side : new String[] {"LeftMargin", "RightMargin", "TopMargin", "BottomMargin"}) {
        Uno.set(page, side, MARGIN);
      }
      Uno.set(page, "HeaderIsOn", false);
      Uno.set(page, "FooterIsOn", true);
      new Footer(document, page).write();
    }
    return name;
  }
}
