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
import org.setpower.templates.layout.PlanNames;
import org.setpower.templates.spec.CellFormat;
import org.setpower.templates.spec.CellStyle;
import org.setpower.text.MessageCatalog;
import org.setpower.text.PaperSize;

/** The cell and page styles of a document, made from {@link CellStyle}. */
final class StyleWriter {
  private static final String WORDS_ONLY = ";;;@"; // no lone 0 where the extension is missing
  private static final int FRAME = 53; // 1.5 pt
  private static final int HAIRLINE = 9; // 0.25 pt in 1/100 mm
  private static final short INDENT = 150;
  private static final int MARGIN = 1000;

  private final Object document;
  private final Locale language;
  private final XNameContainer cells;
  private final XNameContainer pages;
  private final Set<String> made = new HashSet<>();
  private final PaperSize paper;

  /**
   * The styles of a document.
   *
   * @param tag its language, with or without a country: de, en-US
   */
  StyleWriter(Object document, String tag) {
    this.document = document;
    paper = PaperSize.ofLanguage(tag);
    String[] parts = tag.split("-");
    String country = parts[parts.length - 1].toUpperCase(java.util.Locale.ROOT);
    language = new Locale(parts[0], country, "");
    var families = UnoAccess.as(XStyleFamiliesSupplier.class, document).getStyleFamilies();
    cells = family(families, "CellStyles");
    pages = family(families, "PageStyles");
    Object base = UnoAccess.ask(() -> cells.getByName("Default"));
    if (!tag.equals(MessageCatalog.ENGLISH)) {
      UnoAccess.set(document, "CharLocale", this.language);
      UnoAccess.set(base, "CharLocale", this.language);
    }
    UnoAccess.set(base, "CharFontName", CellStyle.FONT);
    UnoAccess.set(base, "CharHeight", 10f);
    UnoAccess.set(base, "CharColor", CellStyle.Ink.INK);
    UnoAccess.set(
        base, "CellBackColor", CellStyle.Ink.PAPER); // an office in the dark would paint it black
    UnoAccess.set(base, "VertJustify", CellVertJustify2.CENTER);
  }

  private static XNameContainer family(com.sun.star.container.XNameAccess families, String name) {
    return UnoAccess.ask(() -> UnoAccess.as(XNameContainer.class, families.getByName(name)));
  }

  /** The name of the style of a cell that shows no value of its own. */
  String of(CellStyle style) {
    String name = style.styleName();
    if (made.add(name)) {
      Object created = create(cells, "com.sun.star.style.CellStyle", name, "Default");
      UnoAccess.set(created, "CharHeight", (float) style.points());
      UnoAccess.set(created, "CharWeight", style.bold() ? FontWeight.BOLD : FontWeight.NORMAL);
      UnoAccess.set(created, "CharColor", style.colour());
      if (style.fill() != CellStyle.Ink.NONE) {
        UnoAccess.set(created, "CellBackColor", style.fill());
      }
      if (style.line() != CellStyle.Ink.NONE) {
        UnoAccess.set(created, "BottomBorder", line(style.line()));
      }
      shape(style, created);
    }
    return name;
  }

  private void shape(CellStyle style, Object created) {
    switch (style) {
      case HEADING -> {
        UnoAccess.set(created, "IsTextWrapped", true);
        UnoAccess.set(created, "VertJustify", CellVertJustify2.BOTTOM);
      }
      case REASON -> {
        UnoAccess.set(created, "IsTextWrapped", true);
        UnoAccess.set(created, "VertJustify", CellVertJustify2.TOP);
      }
      case MISSING -> UnoAccess.set(created, "NumberFormat", key(WORDS_ONLY));
      case LETTERHEAD -> UnoAccess.set(created, "ShrinkToFit", true);
      case LETTER -> {
        UnoAccess.set(created, "IsTextWrapped", true);
        UnoAccess.set(created, "VertJustify", CellVertJustify2.TOP);
      }
      case LETTER_LABEL -> {
        UnoAccess.set(created, "VertJustify", CellVertJustify2.TOP);
        UnoAccess.set(created, "ShrinkToFit", true);
      }
      case NOTE, CAUTION, RESULT, GROUP, SUM, TOTAL ->
          UnoAccess.set(created, "IsTextWrapped", true);
      case HINT, HINT_SECTION -> {
        CellProtection unprinted = new CellProtection();
        unprinted.IsLocked = true;
        unprinted.IsPrintHidden = true;
        UnoAccess.set(created, "CellProtection", unprinted);
        UnoAccess.set(created, "IsTextWrapped", style == CellStyle.HINT);
      }
      case FINDING -> {
        UnoAccess.set(created, "IsTextWrapped", true);
        UnoAccess.set(created, "NumberFormat", key(WORDS_ONLY));
      }
      case LABEL -> UnoAccess.set(created, "ShrinkToFit", true);
      case FIGURE_LABEL -> {
        UnoAccess.set(created, "ShrinkToFit", true);
        UnoAccess.set(created, "ParaRightMargin", 2 * INDENT);
      }
      case HELP -> {
        UnoAccess.set(created, "HoriJustify", CellHoriJustify.LEFT);
        UnoAccess.set(created, "ParaIndent", INDENT);
      }
      case WORD -> UnoAccess.set(created, "HoriJustify", CellHoriJustify.CENTER);
      case FIGURE -> {
        UnoAccess.set(created, "HoriJustify", CellHoriJustify.LEFT);
        UnoAccess.set(created, "ShrinkToFit", true);
      }
      case BLANK -> UnoAccess.set(created, "BottomBorder", new BorderLine2());
      case TO_FILL -> {
        CellProtection unlocked = new CellProtection();
        unlocked.IsLocked = false;
        UnoAccess.set(created, "CellProtection", unlocked);
        UnoAccess.set(created, "IsTextWrapped", true);
      }
      default -> {}
    }
  }

  /** The name of the style that colours a status word; it keeps the letters of the cell's style. */
  String status(CellStyle status, CellStyle over) {
    String name = status.styleName() + " " + over.points();
    if (made.add(name)) {
      Object created = create(cells, "com.sun.star.style.CellStyle", name, of(status));
      UnoAccess.set(created, "CharHeight", (float) over.points());
    }
    return name;
  }

  /** The name of the style of a cell with a value of this format. */
  String of(CellStyle style, CellFormat format) {
    String parent = of(style);
    String name = parent + " " + format.name().toLowerCase(java.util.Locale.ROOT);
    if (made.add(name)) {
      Object created = create(cells, "com.sun.star.style.CellStyle", name, parent);
      boolean general = format.isText() && style != CellStyle.TO_FILL;
      UnoAccess.set(created, "NumberFormat", key(general ? "General" : format.code()));
      if (style != CellStyle.FIGURE) {
        UnoAccess.set(
            created, "HoriJustify", format.isLeft() ? CellHoriJustify.LEFT : CellHoriJustify.RIGHT);
        if (format.isLeft()) { // 7.4 draws that of numbers below each other in some rows only
          UnoAccess.set(created, "ParaIndent", INDENT);
        }
      }
      if (!format.isText() && style != CellStyle.HEADING) {
        UnoAccess.set(created, "IsTextWrapped", false);
      }
    }
    return name;
  }

  /** The same with another number of decimals, for amounts. */
  String money(CellStyle style, int decimals) {
    String parent = of(style, CellFormat.MONEY);
    String name = parent + " " + decimals;
    if (made.add(name)) {
      Object created = create(cells, "com.sun.star.style.CellStyle", name, parent);
      UnoAccess.set(created, "NumberFormat", key(CellFormat.money(decimals)));
    }
    return name;
  }

  /** A heading over words stands left, over numbers right. */
  String heading(CellFormat format) {
    return of(CellStyle.HEADING, format);
  }

  private int key(String code) {
    XNumberFormats formats =
        UnoAccess.as(XNumberFormatsSupplier.class, document).getNumberFormats();
    if (!language.Language.equals(UnoAccess.ENGLISH.Language)) {
      // an ordinal has a dot in German
      boolean isGerman = language.Language.equals("de");
      String local = isGerman ? code.replace("d mmm", "d\". \"mmm") : code;
      return UnoAccess.ask(() -> formats.addNewConverted(local, UnoAccess.ENGLISH, language));
    }
    int known = formats.queryKey(code, UnoAccess.ENGLISH, false);
    return known >= 0 ? known : UnoAccess.ask(() -> formats.addNew(code, UnoAccess.ENGLISH));
  }

  private Object create(XNameContainer family, String service, String name, String parent) {
    Object created =
        UnoAccess.ask(
            () -> UnoAccess.as(XMultiServiceFactory.class, document).createInstance(service));
    UnoAccess.tell(() -> family.insertByName(name, created));
    if (!parent.isEmpty()) {
      UnoAccess.tell(() -> UnoAccess.as(XStyle.class, created).setParentStyle(parent));
    }
    return created;
  }

  /** Draws a line around cells. */
  void frame(XCellRange cells) {
    BorderLine2 line = line(CellStyle.Ink.ACCENT);
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
    UnoAccess.set(cells, "TableBorder2", border);
  }

  private static BorderLine2 line(int colour) {
    BorderLine2 line = new BorderLine2();
    line.Color = colour;
    line.LineWidth = HAIRLINE;
    line.OuterLineWidth = (short) HAIRLINE;
    return line;
  }

  /**
   * The name of a page style: A4, in the United States Letter, fitted to so many pages across or
   * wholly to one page, a footer that names what it is.
   */
  String page(boolean portrait, boolean onePage, int across) {
    return page(portrait, onePage, across, false);
  }

  /** The name of the style of a letter: upright, its pages numbered from 1, nothing else. */
  String letter() {
    return page(true, false, 1, true);
  }

  private String page(boolean portrait, boolean onePage, int across, boolean letter) {
    String name =
        (letter
                ? PlanNames.LETTER
                : "Set Power " + (onePage ? "page" : portrait ? "upright" : "landscape"))
            + (across == 1 ? "" : " " + across + " across");
    if (made.add(name)) {
      Object page = create(pages, "com.sun.star.style.PageStyle", name, "");
      UnoAccess.set(page, "IsLandscape", !portrait);
      UnoAccess.set(page, "Width", paper.width(!portrait));
      UnoAccess.set(page, "Height", paper.height(!portrait));
      UnoAccess.set(page, "ScaleToPagesX", (short) across);
      UnoAccess.set(page, "ScaleToPagesY", (short) (onePage ? 1 : 0));
      UnoAccess.set(page, "PrintDownFirst", false);
      // 0 goes on from the sheet before
      UnoAccess.set(page, "FirstPageNumber", (short) (letter ? 1 : 0));
      for (String side : new String[] {"LeftMargin", "RightMargin", "TopMargin", "BottomMargin"}) {
        UnoAccess.set(page, side, MARGIN);
      }
      UnoAccess.set(page, "HeaderIsOn", false);
      UnoAccess.set(page, "FooterIsOn", true);
      if (letter) {
        new PageFooter(document, page).number();
      } else {
        new PageFooter(document, page).write();
      }
    }
    return name;
  }
}
