package org.setpower.command.diagram;

import com.sun.star.awt.Point;
import com.sun.star.beans.XPropertySet;
import com.sun.star.container.XIndexAccess;
import com.sun.star.container.XNameContainer;
import com.sun.star.document.XDocumentPropertiesSupplier;
import com.sun.star.frame.XController;
import com.sun.star.sheet.XNamedRange;
import com.sun.star.sheet.XNamedRanges;
import com.sun.star.sheet.XPrintAreas;
import com.sun.star.sheet.XSheetPageBreak;
import com.sun.star.sheet.XSpreadsheet;
import com.sun.star.sheet.XSpreadsheetView;
import com.sun.star.style.XStyleFamiliesSupplier;
import com.sun.star.table.CellAddress;
import com.sun.star.table.CellRangeAddress;
import com.sun.star.table.XCell;
import com.sun.star.table.XColumnRowRange;
import com.sun.star.uno.Exception;
import com.sun.star.util.XProtectable;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import org.setpower.command.CommandContext;
import org.setpower.command.document.CalcDocument;
import org.setpower.command.document.ReportSheet;
import org.setpower.command.message.CommandMessages;
import org.setpower.command.message.UserMessageException;
import org.setpower.command.plan.PlanFile;
import org.setpower.plan.common.Messages;
import org.setpower.plan.common.PlanResult;
import org.setpower.plan.lighting.diagram.DiagramLayout;
import org.setpower.plan.lighting.diagram.DiagramPage;
import org.setpower.plan.lighting.diagram.DiagramPlan;
import org.setpower.plan.lighting.diagram.Paper;
import org.setpower.plan.lighting.input.MeasureSystem;
import org.setpower.text.MessageCatalog;
import org.setpower.uno.Uno;

/** The tab of the diagram: its pages below its title, each a print range with a page of its own. */
final class DiagramSheet {
  private static final String SHEET = "Diagram";
  private static final String STYLE = "Set Power diagram";

  /** Names the first cell of the first page. */
  private static final String TOP = "Diagram_top";

  /**
   * Names a sum that changes with results and names: shorter than the sum in each page's notice.
   */
  private static final String NOW = "Diagram_now";

  private static final String CHANGED =
      "The plan has changed since this was drawn: choose Set Power ▸ Draw diagram.";

  /** The row of the line that names the job, and the first row below title and notices. */
  private static final int STAMP = 2;

  private static final int FIRST = 5;
  private static final int COLUMNS = 20;
  private static final int ROWS = 40;

  /** The printer's rounding must not add a page. */
  private static final int SLACK = 50;

  private final PlanFile plan;
  private final CalcDocument book;
  private final XSpreadsheet sheet;

  private DiagramSheet(PlanFile plan, XSpreadsheet sheet) {
    this.plan = plan;
    book = plan.book();
    this.sheet = sheet;
  }

  /** The tab of a plan, made where there is none. */
  static DiagramSheet of(PlanFile plan) throws Exception {
    Optional<DiagramSheet> there = in(plan);
    if (there.isPresent()) {
      return there.get();
    }
    String language = plan.locale().toLanguageTag();
    return new DiagramSheet(plan, plan.book().sheet(CommandMessages.in(language).of(SHEET)));
  }

  /** The tab of a plan; empty where it was deleted. */
  static Optional<DiagramSheet> in(PlanFile plan) throws Exception {
    for (String name : names()) {
      if (plan.book().sheets().hasByName(name)) {
        return Optional.of(new DiagramSheet(plan, plan.book().sheet(name)));
      }
    }
    return Optional.empty();
  }

  private static Set<String> names() {
    Set<String> names = new LinkedHashSet<>(ReportSheet.names(SHEET));
    MessageCatalog.files()
        .forEach(l -> names.add(MessageCatalog.in(l, MessageCatalog.Speaker.SHEETS).of(SHEET)));
    return names;
  }

  /** Whether a diagram has been drawn. */
  static boolean isDrawn(PlanFile plan) throws Exception {
    return plan.address(TOP) != null;
  }

  String name() {
    return CalcDocument.name(sheet);
  }

  /** Draws all pages in place of the former; gives how many. */
  int draw(CommandContext desk) throws Exception {
    XProtectable lock = Uno.as(XProtectable.class, sheet);
    boolean locked = lock.isProtected();
    if (locked) {
      unlock(lock);
    }
    try {
      return drawPages(desk);
    } finally {
      if (locked) {
        lock.protect("");
      }
    }
  }

  private void unlock(XProtectable lock) {
    String sentence =
        "The sheet “{}” is protected with a password: take the protection off and ask again.";
    try {
      lock.unprotect("");
    } catch (com.sun.star.lang.IllegalArgumentException hasPassword) {
      throw new UserMessageException(sentence, name()).because(hasPassword);
    }
    if (lock.isProtected()) {
      throw new UserMessageException(sentence, name());
    }
  }

  private int drawPages(CommandContext desk) throws Exception {
    PlanResult result = plan.calculated();
    MeasureSystem units =
        result.part(DiagramPlan.class).map(DiagramPlan::units).orElse(MeasureSystem.METRIC);
    Paper paper = paper(units);
    Locale locale = plan.locale();
    List<DiagramPage> pages =
        DiagramLayout.of(result, paper, Messages.in(locale.toLanguageTag()), locale, title());
    DiagramShapes shapes = new DiagramShapes(desk, book, sheet);
    Uno.set(sheet, "PageStyle", style(paper));
    rows(pages.size(), paper);
    List<DiagramShapes.Placed> placed = new ArrayList<>();
    for (int p = 0; p < pages.size(); p++) {
      Point corner = (Point) Uno.get(sheet.getCellByPosition(0, top(p) + 1), "Position");
      placed.add(new DiagramShapes.Placed(pages.get(p), p + 1, corner));
    }
    printed(pages.size());
    shapes.replace(placed);
    return pages.size();
  }

  private static int top(int page) {
    return FIRST + page * (ROWS + 1);
  }

  /** What the tab says it belongs to; the title of the document where it says nothing. */
  private DiagramLayout.Title title() throws Exception {
    String stamp = CalcDocument.shown(sheet.getCellByPosition(0, STAMP));
    String title =
        Uno.as(XDocumentPropertiesSupplier.class, book.document())
            .getDocumentProperties()
            .getTitle();
    return new DiagramLayout.Title(stamp.isBlank() ? title : stamp, "");
  }

  /** The paper that somebody chose for it; else Letter where units are US, A4 elsewhere. */
  private Paper paper(MeasureSystem units) throws Exception {
    XNameContainer styles = styles();
    if (styles.hasByName(STYLE)) {
      Object style = styles.getByName(STYLE);
      Paper chosen = Paper.of((int) Uno.get(style, "Width"), (int) Uno.get(style, "Height"));
      if (chosen != Paper.A4 && chosen != Paper.LETTER) {
        return chosen;
      }
    }
    return units == MeasureSystem.US ? Paper.LETTER : Paper.A4;
  }

  private XNameContainer styles() throws Exception {
    return Uno.as(
        XNameContainer.class,
        Uno.as(XStyleFamiliesSupplier.class, book.document())
            .getStyleFamilies()
            .getByName("PageStyles"));
  }

  private String style(Paper paper) throws Exception {
    XNameContainer styles = styles();
    if (!styles.hasByName(STYLE)) {
      styles.insertByName(STYLE, book.factory().createInstance("com.sun.star.style.PageStyle"));
    }
    XPropertySet style = Uno.as(XPropertySet.class, styles.getByName(STYLE));
    style.setPropertyValue("IsLandscape", true);
    style.setPropertyValue("Width", paper.width());
    style.setPropertyValue("Height", paper.height());
    for (String side : List.of("Left", "Right", "Top", "Bottom")) {
      style.setPropertyValue(side + "Margin", Paper.MARGIN - SLACK);
    }
    style.setPropertyValue("HeaderIsOn", false);
    style.setPropertyValue("FooterIsOn", false);
    style.setPropertyValue("PageScale", (short) 100);
    style.setPropertyValue("CenterHorizontally", true);
    return STYLE;
  }

  /** Cells as wide and as high as the pages, with a line above each that says when it is old. */
  private void rows(int pages, Paper paper) throws Exception {
    XIndexAccess columns =
        Uno.as(XIndexAccess.class, Uno.as(XColumnRowRange.class, sheet).getColumns());
    for (int c = 0; c < COLUMNS; c++) {
      Uno.set(columns.getByIndex(c), "Width", paper.innerWidth() / COLUMNS);
    }
    var rows = Uno.as(XColumnRowRange.class, sheet).getRows();
    String changed = changed();
    for (int p = 0; p < pages; p++) {
      Uno.set(rows.getByIndex(top(p)), "Height", Paper.NOTICE);
      for (int r = 1; r <= ROWS; r++) {
        Uno.set(rows.getByIndex(top(p) + r), "Height", paper.innerHeight() / ROWS);
      }
      XCell notice = sheet.getCellByPosition(0, top(p));
      notice.setFormula(changed);
      Uno.set(notice, "CharHeight", 8f);
      Uno.set(notice, "CharColor", 0x9B1C1C);
    }
    for (int p = pages; !sheet.getCellByPosition(0, top(p)).getFormula().isEmpty(); p++) {
      sheet.getCellByPosition(0, top(p)).setFormula("");
    }
    XNamedRanges names = Uno.as(XNamedRanges.class, Uno.get(book.document(), "NamedRanges"));
    if (!names.hasByName(TOP)) {
      String tab = "$'" + name().replace("'", "''") + "'";
      names.addNewByName(TOP, tab + ".$A$" + (FIRST + 1), new CellAddress(), 0);
    }
  }

  /** A formula that shows a sentence once results or names differ from what was drawn. */
  private String changed() throws Exception {
    String now = "";
    for (String name :
        List.of(
            "Results_runs",
            "Results_loads",
            "Results_outlets",
            "Results_supplies",
            "Runs",
            "Loads",
            "Outlets",
            "Supplies")) {
      if (plan.address(name) != null) {
        now += (now.isEmpty() ? "" : "+") + "SUMPRODUCT(LEN(" + name + "))+SUM(" + name + ")";
      }
    }
    XNamedRanges names = Uno.as(XNamedRanges.class, Uno.get(book.document(), "NamedRanges"));
    if (names.hasByName(NOW)) {
      Uno.as(XNamedRange.class, names.getByName(NOW)).setContent(now);
    } else {
      names.addNewByName(NOW, now, new CellAddress(), 0);
    }
    XCell scratch = sheet.getCellByPosition(0, FIRST);
    scratch.setFormula("=" + NOW);
    double drawn = scratch.getValue();
    String words = CommandMessages.in(plan.locale().toLanguageTag()).of(CHANGED);
    return "=IF(IFERROR(ABS(" + NOW + "-" + drawn + ")<0.000001;FALSE());\"\";\"" + words + "\")";
  }

  private void printed(int pages) throws Exception {
    int index = 0;
    for (XSpreadsheet other : book.all()) {
      if (CalcDocument.name(other).equals(name())) {
        break;
      }
      index++;
    }
    CellRangeAddress[] areas = new CellRangeAddress[pages];
    for (int p = 0; p < pages; p++) {
      areas[p] = new CellRangeAddress((short) index, 0, top(p), COLUMNS - 1, top(p) + ROWS);
    }
    Uno.as(XSheetPageBreak.class, sheet).removeAllManualPageBreaks();
    XPrintAreas printed = Uno.as(XPrintAreas.class, sheet);
    printed.setPrintTitleRows(false);
    printed.setPrintTitleColumns(false);
    printed.setPrintAreas(areas);
  }

  void unhide() throws Exception {
    Uno.set(sheet, "IsVisible", true);
  }

  void show(XController controller) throws Exception {
    XSpreadsheetView view = Uno.as(XSpreadsheetView.class, controller);
    if (view != null) {
      view.setActiveSheet(sheet);
    }
  }
}
