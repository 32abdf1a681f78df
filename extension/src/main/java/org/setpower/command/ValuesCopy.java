package org.setpower.command;

import static org.setpower.command.Say.say;

import com.sun.star.beans.PropertyValue;
import com.sun.star.beans.XPropertySet;
import com.sun.star.frame.XComponentLoader;
import com.sun.star.frame.XStorable;
import com.sun.star.lang.XComponent;
import com.sun.star.sheet.XCalculatable;
import com.sun.star.uno.Exception;
import com.sun.star.uno.XComponentContext;
import com.sun.star.util.XCloseable;
import java.util.EnumMap;
import java.util.Map;

/**
 * Writes copies of a document in which cells with our functions hold their values, for people who
 * do not have the extension. Everything else stays a formula; the document itself is not touched.
 * Works inside the office and, over the bridge, from outside. All files appear at once, at the end,
 * or none.
 */
public final class ValuesCopy {
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

  private final Desk desk;
  private final boolean withWorking;
  private final Progress progress;

  /**
   * A copy of a spreadsheet document.
   *
   * @param withWorking whether each value gets its working as a note in its cell
   */
  public ValuesCopy(
      XComponentContext context, XComponent document, boolean withWorking, Progress progress) {
    desk = new Desk(context, document);
    this.withWorking = withWorking;
    this.progress = progress;
  }

  /**
   * Writes the files.
   *
   * @param targets the address of each file wanted; files that are there are replaced
   * @return how many cells hold values now
   */
  public int write(Map<Kind, String> targets) throws Exception {
    desk.book();
    FileStore files = new FileStore(desk);
    Map<Kind, String> parts = new EnumMap<>(Kind.class);
    targets.forEach((kind, target) -> parts.put(kind, FileStore.part(target)));
    try {
      int cells = writeParts(parts);
      for (Map.Entry<Kind, String> part : parts.entrySet()) {
        files.access().move(part.getValue(), targets.get(part.getKey()));
      }
      return cells;
    } finally {
      for (String part : parts.values()) {
        files.remove(part);
      }
    }
  }

  private int writeParts(Map<Kind, String> parts) throws Exception {
    progress.at(2, say("A copy of the document"));
    XComponent copy = copied();
    try {
      Uno.as(XCalculatable.class, copy).calculateAll();
      Book book = new Book(copy);
      WorkingNotes notes = withWorking ? WorkingNotes.read(book, within(10, 40)) : null;
      Uno.as(XCalculatable.class, copy).enableAutomaticCalculation(false);
      int cells = new Freezer(book).freeze(within(40, 70));
      if (withWorking) {
        notes.write();
      }
      if (book.isFromTemplate()) {
        PrintFit.in(book);
      }
      Uno.as(XCalculatable.class, copy).enableAutomaticCalculation(true);
      int done = 0;
      for (Map.Entry<Kind, String> part : parts.entrySet()) {
        progress.at(
            70 + 30 * done++ / parts.size(), say("Writing the .{}", part.getKey().suffix()));
        store(copy, part.getKey(), part.getValue(), cells);
      }
      progress.at(99, say("Putting the files in their place"));
      return cells;
    } finally {
      Uno.as(XCloseable.class, copy).close(true);
    }
  }

  private Progress within(int from, int to) {
    return (percent, words) -> progress.at(from + (to - from) * percent / 100, words);
  }

  /** The document, stored to a temporary file and opened from there without a window. */
  private XComponent copied() throws Exception {
    XPropertySet file = desk.service(XPropertySet.class, "com.sun.star.io.TempFile");
    String url = (String) Uno.get(file, "Uri");
    Uno.as(XStorable.class, desk.document())
        .storeToURL(url, Uno.properties(Uno.property("FilterName", Kind.ODS.filter)));
    XComponent copy =
        Uno.as(XComponentLoader.class, desk.desktop())
            .loadComponentFromURL(
                url,
                "_blank",
                0,
                Uno.properties(
                    Uno.property("Hidden", true), Uno.property("FilterName", Kind.ODS.filter)));
    if (copy == null) {
      throw new Sorry("The office could not open its own copy of the document.");
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
