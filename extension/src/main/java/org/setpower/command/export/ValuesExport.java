package org.setpower.command.export;

import static org.setpower.command.message.CommandMessages.say;

import com.sun.star.beans.PropertyValue;
import com.sun.star.beans.XPropertySet;
import com.sun.star.document.MacroExecMode;
import com.sun.star.document.UpdateDocMode;
import com.sun.star.frame.XComponentLoader;
import com.sun.star.frame.XStorable;
import com.sun.star.lang.XComponent;
import com.sun.star.sheet.XCalculatable;
import com.sun.star.sheet.XCellRangeAddressable;
import com.sun.star.sheet.XCellRangesAccess;
import com.sun.star.sheet.XSpreadsheet;
import com.sun.star.table.CellRangeAddress;
import com.sun.star.table.XCellRange;
import com.sun.star.uno.Exception;
import com.sun.star.uno.XComponentContext;
import com.sun.star.util.XCloseable;
import com.sun.star.util.XModifiable;
import java.time.LocalDateTime;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.setpower.command.CommandContext;
import org.setpower.command.FileStore;
import org.setpower.command.document.CalcDocument;
import org.setpower.command.document.JobCell;
import org.setpower.command.message.CommandMessages;
import org.setpower.command.message.Progress;
import org.setpower.command.message.UserMessageException;
import org.setpower.command.print.PrintAnchors;
import org.setpower.command.print.PrintRangeFitter;
import org.setpower.text.MessageCatalog;
import org.setpower.uno.Uno;

/**
 * Writes values-only copies of a document: locked values of the chosen sheets, without hidden
 * cells. The document itself is not touched. Works inside the office and, over the bridge, from
 * outside. All files appear at once, at the end, or none.
 */
public final class ValuesExport {
  /** The kinds of file. */
  public enum Kind {
    /** OpenDocument spreadsheet. */
    ODS("ods", "calc8"),
    /** Excel workbook. */
    XLSX("xlsx", "Calc MS Excel 2007 XML"),
    /** Pages as printed. */
    PDF("pdf", "calc_pdf_Export");

    private final String suffix;
    private final String filter;

    Kind(String suffix, String filter) {
      this.suffix = suffix;
      this.filter = filter;
    }

    /** The end of the file's name, without the dot. */
    public String suffix() {
      return suffix;
    }
  }

  /** Above this, the reading order that 25.2 writes into a PDF makes it forty times as large. */
  private static final int MOST_TAGGED = 5_000;

  private final CommandContext desk;
  private final Set<String> tabs;
  private final boolean withWorking;
  private final Progress progress;

  /**
   * A copy of a spreadsheet document.
   *
   * @param tabs the names of the sheets it has; all that are not hidden if none is named
   * @param withWorking whether each value gets its working as a note in its cell
   */
  public ValuesExport(
      XComponentContext context,
      XComponent document,
      Set<String> tabs,
      boolean withWorking,
      Progress progress) {
    desk = new CommandContext(context, document);
    this.tabs = tabs;
    this.withWorking = withWorking;
    this.progress = progress;
  }

  /**
   * Writes the files.
   *
   * @param targets the address of each file; files that are there are replaced
   * @return how many cells hold values now
   */
  public int write(Map<Kind, String> targets) throws Exception {
    Set<String> wanted = wanted();
    FileStore files = new FileStore(desk);
    Map<Kind, String> parts = new EnumMap<>(Kind.class);
    targets.forEach((kind, target) -> parts.put(kind, FileStore.part(target)));
    try {
      int cells = writeParts(wanted, parts);
      Map<String, String> places = new LinkedHashMap<>();
      parts.forEach((kind, part) -> places.put(part, targets.get(kind)));
      files.moveAll(places);
      return cells;
    } finally {
      for (String part : parts.values()) {
        files.remove(part);
      }
    }
  }

  /** The names of the sheets that are not hidden. */
  static List<String> visible(CalcDocument book) throws Exception {
    List<String> names = new ArrayList<>();
    for (XSpreadsheet sheet : book.all()) {
      if ((Boolean) Uno.get(sheet, "IsVisible")) {
        names.add(CalcDocument.name(sheet));
      }
    }
    return names;
  }

  private Set<String> wanted() throws Exception {
    List<String> visible = visible(desk.book());
    for (String tab : tabs) {
      if (!visible.contains(tab)) {
        throw new UserMessageException("There is no visible sheet “{}” in this document.", tab);
      }
    }
    return tabs.isEmpty() ? Set.copyOf(visible) : tabs;
  }

  private int writeParts(Set<String> wanted, Map<Kind, String> parts) throws Exception {
    progress.at(2, say("A copy of the document"));
    String line = line(desk.book());
    XPropertySet file = desk.service(XPropertySet.class, "com.sun.star.io.TempFile");
    String url = (String) Uno.get(file, "Uri");
    calculate();
    Uno.as(XStorable.class, desk.document())
        .storeToURL(url, Uno.properties(Uno.property("FilterName", Kind.ODS.filter)));
    CalculationNotes notes = withWorking ? notes(url, wanted) : null;
    PrintAnchors anchors = PrintAnchors.of(desk.book()).belowInsertedRow();
    progress.at(40, say("Formulas become values"));
    PlainPackage plain = takeFormulasOut(url, wanted);
    int cells = plain.formulas();
    progress.at(50, say("A copy of the document"));
    XComponent copy = opened(url);
    try {
      CalcDocument book = new CalcDocument(copy);
      FormulaToValueConverter freezer = new FormulaToValueConverter(book);
      if (withWorking) {
        notes.write(book);
      }
      freezer.head(line);
      if (book.isFromTemplate()) {
        PrintRangeFitter.in(book, anchors);
      }
      freezer.headPagesAcross(line);
      freezer.forgetPeople();
      freezer.lock();
      int done = 0;
      for (Map.Entry<Kind, String> part : parts.entrySet()) {
        progress.at(
            70 + 30 * done++ / parts.size(), say("Writing the .{}", part.getKey().suffix()));
        store(copy, part.getKey(), part.getValue(), cells);
        freeze(plain.panes(), part.getKey(), part.getValue(), visible(book));
      }
      progress.at(99, say("Putting the files in their place"));
      return cells;
    } finally {
      Uno.as(XCloseable.class, copy).close(true);
    }
  }

  /** Where figures are not kept up to date by themselves, they are now. */
  private void calculate() throws Exception {
    XCalculatable cells = Uno.as(XCalculatable.class, desk.document());
    if (!cells.isAutomaticCalculationEnabled()) {
      XModifiable changes = Uno.as(XModifiable.class, desk.document());
      boolean modified = changes.isModified();
      cells.calculate();
      changes.setModified(modified);
    }
  }

  /** What the copy is, and of when, in the language of its document. */
  private static String line(CalcDocument book) throws Exception {
    String now = LocalDateTime.now().format(DateTimeFormatter.ofPattern("yyyy-MM-dd HH:mm"));
    String revision = JobCell.REVISION.in(book);
    MessageCatalog words = CommandMessages.in(book.language());
    if (!revision.isBlank()) {
      return words.say(
          "Values of {}, revision {}: changing a cell changes nothing else.", now, revision);
    }
    return words.say("Values of {}: changing a cell changes nothing else.", now);
  }

  private CalculationNotes notes(String url, Set<String> wanted) throws Exception {
    XComponent whole = opened(url);
    try {
      return CalculationNotes.read(new CalcDocument(whole), wanted, within(10, 40));
    } finally {
      Uno.as(XCloseable.class, whole).close(true);
    }
  }

  private PlainPackage takeFormulasOut(String url, Set<String> wanted) throws Exception {
    FileStore files = new FileStore(desk);
    PlainPackage plain = new PlainPackage(wanted, this::shown);
    try {
      files.write(url, plain.of(files.read(url)));
    } catch (java.io.IOException e) {
      throw new UserMessageException("The office could not open its own copy of the document.")
          .because(e);
    }
    return plain;
  }

  private void freeze(FrozenPanes panes, Kind kind, String url, List<String> sheets)
      throws Exception {
    if (kind == Kind.PDF) {
      return;
    }
    FileStore files = new FileStore(desk);
    try {
      Map<String, byte[]> entries = ZipEntries.read(files.read(url));
      if (kind == Kind.ODS) {
        panes.intoOds(entries);
      } else {
        panes.intoXlsx(entries, sheets);
      }
      files.write(url, ZipEntries.write(entries));
    } catch (java.io.IOException e) {
      throw FileStore.unwritable("." + kind.suffix(), e);
    }
  }

  /** What the cells of a range of the document show. */
  private List<String> shown(String range) {
    try {
      XCellRangesAccess sheets = Uno.as(XCellRangesAccess.class, desk.book().sheets());
      List<String> shown = new ArrayList<>();
      for (XCellRange cells : sheets.getCellRangesByName(range)) {
        CellRangeAddress at = Uno.as(XCellRangeAddressable.class, cells).getRangeAddress();
        for (int row = 0; row <= at.EndRow - at.StartRow; row++) {
          for (int column = 0; column <= at.EndColumn - at.StartColumn; column++) {
            shown.add(CalcDocument.shown(cells.getCellByPosition(column, row)));
          }
        }
      }
      return shown;
    } catch (Exception e) {
      throw new UserMessageException("The labels of a chart at {} could not be read.", range)
          .because(e);
    }
  }

  private Progress within(int from, int to) {
    return (percent, words) -> progress.at(from + (to - from) * percent / 100, words);
  }

  /** A stored document, opened without a window, macros and links. */
  private XComponent opened(String url) throws Exception {
    XComponent copy =
        Uno.as(XComponentLoader.class, desk.desktop())
            .loadComponentFromURL(
                url,
                "_blank",
                0,
                Uno.properties(
                    Uno.property("Hidden", true),
                    Uno.property("MacroExecutionMode", MacroExecMode.NEVER_EXECUTE),
                    Uno.property("UpdateDocMode", UpdateDocMode.NO_UPDATE),
                    Uno.property("FilterName", Kind.ODS.filter)));
    if (copy == null) {
      throw new UserMessageException("The office could not open its own copy of the document.");
    }
    return copy;
  }

  private static void store(XComponent copy, Kind kind, String url, int cells) throws Exception {
    PropertyValue filter = Uno.property("FilterName", kind.filter);
    PropertyValue[] how =
        kind == Kind.PDF
            ? Uno.properties(
                filter,
                Uno.property(
                    "FilterData",
                    Uno.properties(Uno.property("UseTaggedPDF", cells <= MOST_TAGGED))))
            : Uno.properties(filter);
    try {
      Uno.as(XStorable.class, copy).storeToURL(url, how);
    } catch (com.sun.star.io.IOException e) {
      throw FileStore.unwritable("." + kind.suffix(), e);
    }
  }
}
