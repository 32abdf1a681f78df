package org.setpower.bench;

import com.sun.star.beans.PropertyValue;
import com.sun.star.beans.XPropertySet;
import com.sun.star.container.XEnumeration;
import com.sun.star.container.XEnumerationAccess;
import com.sun.star.container.XNameAccess;
import com.sun.star.frame.XStorable;
import com.sun.star.sheet.CellFlags;
import com.sun.star.sheet.XCellAddressable;
import com.sun.star.sheet.XCellRangeAddressable;
import com.sun.star.sheet.XCellRangesQuery;
import com.sun.star.sheet.XNamedRange;
import com.sun.star.sheet.XSheetCellCursor;
import com.sun.star.sheet.XSheetCellRange;
import com.sun.star.sheet.XSpreadsheet;
import com.sun.star.sheet.XSpreadsheetDocument;
import com.sun.star.table.CellAddress;
import com.sun.star.table.CellRangeAddress;
import com.sun.star.table.XCell;
import com.sun.star.uno.UnoRuntime;
import java.nio.file.FileSystem;
import java.nio.file.FileSystems;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import org.setpower.command.export.ValuesExport;
import org.setpower.command.message.Progress;
import org.setpower.office.Office;
import org.setpower.templates.FullExamples;

/**
 * The lighting plan filled to its last row: its recalculation against as many calls of an empty
 * function and its native formulas, which are timed in a copy whose other cells hold values.
 */
final class StressBench {
  private static final Pattern NAME = Pattern.compile("[A-Za-z_][\\w.]*");
  private static final Pattern FORMULA = Pattern.compile(" table:formula=\"[^\"]*\"");
  private static final Pattern NAMED =
      Pattern.compile(
          "<table:named-expression table:name=\"([^\"]+)\"[^>]*table:expression=\"([^\"]*)\"");
  private static final String OURS = "ORG.SETPOWER.FUNCTIONS.";
  private static final int ROUNDS = 5;
  private static final int CALLS = 5_000;

  private StressBench() {}

  static void run(Office office, Path folder, Measurements figures) throws Exception {
    Path file = FullExamples.lighting().draw(office, folder);
    try (BenchDocument full = new BenchDocument(office, office.open(file));
        BenchDocument rest =
            new BenchDocument(office, office.open(withoutOurs(office, full, folder)));
        BenchDocument empty =
            BenchDocument.empty(office)
                .data(0, WholeBench.data(CALLS))
                .down(6, 0, CALLS, "=EMPTY.CABLEDROP(A1;B1;C1)")) {
      int calls = calls(full);
      BenchDocument.inTurn(ROUNDS, full, rest, empty);
      double call = empty.seconds() / CALLS;
      figures.atMost(
          1.3,
          String.format(
              Locale.ROOT,
              "lighting plan of 200 loads, 100 runs, 60 packs: %.0f ms; to %d empty calls of"
                  + " %.0f µs and the native formulas (%.0f ms)",
              1e3 * full.seconds(),
              calls,
              1e6 * call,
              1e3 * rest.seconds()),
          full.seconds() / (calls * call + rest.seconds()),
          "%.2f");
      copies(office, full, figures);
    }
  }

  /** How long a copy without formulas takes in all kinds of file, against storing the document. */
  private static void copies(Office office, BenchDocument full, Measurements figures)
      throws Exception {
    Path folder = office.newFolder();
    long begin = System.nanoTime();
    UnoRuntime.queryInterface(XStorable.class, full.document())
        .storeToURL(office.address(folder.resolve("stored.ods")), new PropertyValue[0]);
    double stored = (System.nanoTime() - begin) / 1e9;
    Map<ValuesExport.Kind, String> targets = new EnumMap<>(ValuesExport.Kind.class);
    for (ValuesExport.Kind kind : ValuesExport.Kind.values()) {
      targets.put(kind, office.address(folder.resolve("copy." + kind.suffix())));
    }
    begin = System.nanoTime();
    new ValuesExport(office.context(), full.document(), Set.of(), false, Progress.NONE)
        .write(targets);
    double copied = (System.nanoTime() - begin) / 1e9;
    figures.atMost(
        5,
        String.format(
            Locale.ROOT,
            "copy without formulas of the same plan as .ods, .xlsx and .pdf: %.1f s; to storing it"
                + " (%.1f s)",
            copied,
            stored),
        copied / stored,
        "%.1f");
  }

  /** The stored document, with values in the place of the formulas with functions of ours. */
  private static Path withoutOurs(Office office, BenchDocument full, Path folder) throws Exception {
    Path stored = office.newFolder().resolve("stored.ods");
    UnoRuntime.queryInterface(XStorable.class, full.document())
        .storeToURL(office.address(stored), new PropertyValue[0]);
    Path copy =
        Files.copy(
            stored, folder.resolve("native-formulas.ods"), StandardCopyOption.REPLACE_EXISTING);
    try (FileSystem zip = FileSystems.newFileSystem(copy)) {
      Path content = zip.getPath("content.xml");
      Files.writeString(content, withoutOurs(Files.readString(content)));
    }
    return copy;
  }

  private static String withoutOurs(String content) {
    Set<String> names = new LinkedHashSet<>(Set.of(OURS));
    NAMED
        .matcher(content)
        .results()
        .filter(name -> name.group(2).toUpperCase(Locale.ROOT).contains(OURS))
        .forEach(name -> names.add(name.group(1)));
    return FORMULA
        .matcher(content)
        .replaceAll(formula -> names.stream().anyMatch(formula.group()::contains) ? "" : "$0");
  }

  /** How many calls of our functions the cells of a document make, by names too. */
  private static int calls(BenchDocument book) throws Exception {
    Map<String, Integer> named = new HashMap<>();
    XNameAccess names =
        UnoRuntime.queryInterface(
            XNameAccess.class,
            UnoRuntime.queryInterface(XPropertySet.class, book.document())
                .getPropertyValue("NamedRanges"));
    for (String name : names.getElementNames()) {
      named.put(
          name,
          calls(
              UnoRuntime.queryInterface(XNamedRange.class, names.getByName(name)).getContent(),
              Map.of()));
    }
    int calls = 0;
    XNameAccess sheets =
        UnoRuntime.queryInterface(XSpreadsheetDocument.class, book.document()).getSheets();
    for (String name : sheets.getElementNames()) {
      XSpreadsheet sheet = UnoRuntime.queryInterface(XSpreadsheet.class, sheets.getByName(name));
      XEnumerationAccess cells =
          UnoRuntime.queryInterface(XCellRangesQuery.class, sheet)
              .queryContentCells((short) CellFlags.FORMULA)
              .getCells();
      for (XEnumeration e = cells.createEnumeration(); e.hasMoreElements(); ) {
        XCell cell = UnoRuntime.queryInterface(XCell.class, e.nextElement());
        String formula = cell.getFormula();
        if (!formula.startsWith("{") || isFirstOfArray(sheet, cell)) {
          calls += calls(formula, named);
        }
      }
    }
    return calls;
  }

  private static boolean isFirstOfArray(XSpreadsheet sheet, XCell cell) {
    XSheetCellCursor array =
        sheet.createCursorByRange(UnoRuntime.queryInterface(XSheetCellRange.class, cell));
    array.collapseToCurrentArray();
    CellRangeAddress all =
        UnoRuntime.queryInterface(XCellRangeAddressable.class, array).getRangeAddress();
    CellAddress own = UnoRuntime.queryInterface(XCellAddressable.class, cell).getCellAddress();
    return all.StartColumn == own.Column && all.StartRow == own.Row;
  }

  private static int calls(String formula, Map<String, Integer> named) {
    return formula.split(OURS, -1).length
        - 1
        + NAME.matcher(formula)
            .results()
            .map(MatchResult::group)
            .mapToInt(word -> named.getOrDefault(word, 0))
            .sum();
  }
}
