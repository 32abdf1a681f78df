package org.setpower.bench;

import com.sun.star.container.XNameAccess;
import com.sun.star.lang.XComponent;
import com.sun.star.sheet.XCalculatable;
import com.sun.star.sheet.XCellRangeData;
import com.sun.star.sheet.XSpreadsheet;
import com.sun.star.sheet.XSpreadsheetDocument;
import com.sun.star.table.XCell;
import com.sun.star.uno.UnoRuntime;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import java.util.zip.ZipEntry;
import java.util.zip.ZipFile;
import org.setpower.office.Office;

/**
 * The sheets against those of the build of commit 28a9e3b, whose verdicts were formulas in cells:
 * the same example, or the same register filled to its last row, in an office each, in turn.
 */
public final class EarlierBench {
  private static final int EDITS = 25;
  private static final int OPENINGS = 5;
  private static final int STORINGS = 3;
  private static final int BATTERIES = 300;
  private static final int TESTS = 1_000;
  private static final double ONE_DAY_IN_2026 = 46_300;

  private EarlierBench() {}

  /** A file within a packed extension, and what of it is filled, typed and read. */
  private record Book(
      String file, List<Filling> fillings, String tab, String typed, double usual, String shown) {
    Book(String file, String tab, String typed, double usual, String shown) {
      this(file, List.of(), tab, typed, usual, shown);
    }
  }

  /** Values that are put in at a cell. */
  private record Filling(String tab, int column, int row, Object[][] values) {}

  /** One sheet before and now; a limit where one is set. */
  private record Pair(
      String name, Book before, Book now, OptionalDouble edit, OptionalDouble opening) {}

  private static final List<Pair> PAIRS =
      List.of(
          new Pair(
              "battery register, 300 batteries, 1 000 tests",
              new Book(
                  "examples/fleet-register-example.ods",
                  List.of(
                      new Filling("Packs", 0, 5, batteries(List.of("", ""))),
                      new Filling("Packs", 9, 5, column(BATTERIES, "fine")),
                      new Filling("Tests", 0, 5, tests(false))),
                  "Packs",
                  "E6",
                  98,
                  "P6"),
              new Book(
                  "examples/battery-register-example.ods",
                  List.of(
                      new Filling("Batteries", 1, 7, batteries(List.of("fine"))),
                      new Filling("Tests", 1, 7, tests(true))),
                  "Batteries",
                  "E8",
                  98,
                  "T8"),
              OptionalDouble.of(1),
              OptionalDouble.of(1)),
          new Pair(
              "battery plan, example",
              new Book("examples/battery-day-example.ods", "Devices", "C6", 1, "H6"),
              new Book("examples/battery-plan-example.ods", "Positions", "E9", 92, "X9"),
              OptionalDouble.empty(),
              OptionalDouble.empty()),
          new Pair(
              "lighting plan, example",
              new Book("examples/lighting-power-plan-example.ods", "Loads", "E6", 1, "N6"),
              new Book("examples/lighting-power-plan-example.ods", "Loads", "D8", 1, "T8"),
              OptionalDouble.of(0.1),
              OptionalDouble.of(1.0 / 3)),
          new Pair(
              "rental quote, example",
              new Book("examples/rental-quote-example.ods", "Quote", "C6", 1, "Q6"),
              new Book("examples/rental-quote-example.ods", "Quote", "D8", 1, "Y8"),
              OptionalDouble.empty(),
              OptionalDouble.empty()),
          new Pair(
              "power budget, example",
              new Book("examples/power-budget-example.ods", "Options", "C6", 382, "N6"),
              new Book("examples/power-budget-example.ods", "Options & scenarios", "C9", 382, "L9"),
              OptionalDouble.empty(),
              OptionalDouble.empty()),
          new Pair(
              "battery travel list, example",
              new Book("examples/flight-packing-list-example.ods", "Packs", "C6", 10, "S6"),
              new Book("examples/battery-travel-list-example.ods", "Batteries", "D8", 8, "AB8"),
              OptionalDouble.empty(),
              OptionalDouble.empty()));

  /** Arguments: the packed extension, the packed extension of then, the folder for the table. */
  public static void main(String[] args) throws Exception {
    Path now = Path.of(args[0]);
    Path then = Path.of(args[1]);
    Path folder = Path.of(args[2]);
    Measurements figures =
        new Measurements(
            folder.resolve("earlier.md"),
            "Sheets against those of commit 28a9e3b, work of the processor, the lower quarter of"
                + " several in turn");
    try (Office earlier = Office.start(Duration.ofHours(2), then);
        Office ours = Office.start(Duration.ofHours(2), now)) {
      for (Pair pair : PAIRS) {
        Side before = new Side(earlier, pair.before, unpacked(then, folder, "then", pair.before));
        Side after = new Side(ours, pair.now, unpacked(now, folder, "now", pair.now));
        for (int round = -1; round < OPENINGS; round++) {
          before.open(round >= 0);
          after.open(round >= 0);
        }
        for (int round = -3; round < EDITS; round++) {
          before.edit(round);
          after.edit(round);
        }
        for (int round = 0; round < STORINGS; round++) {
          before.store(folder);
          after.store(folder);
        }
        add(
            figures,
            pair.name + ": an edit, to the cell that answers",
            before.answers,
            after.answers,
            OptionalDouble.empty());
        add(figures, pair.name + ": an edit, all cells", before.edits, after.edits, pair.edit);
        add(figures, pair.name + ": opening", before.openings, after.openings, pair.opening);
        add(
            figures,
            pair.name + ": storing",
            before.storings,
            after.storings,
            OptionalDouble.empty());
        figures.add(
            pair.name + ": its file as shipped",
            "%.0f kB, %.0f kB then",
            after.bytes / 1e3,
            before.bytes / 1e3);
        before.close();
        after.close();
      }
    }
    figures.write();
  }

  private static void add(
      Measurements figures,
      String what,
      List<Double> then,
      List<Double> now,
      OptionalDouble limit) {
    double before = ProcessorTime.usual(then);
    double after = ProcessorTime.usual(now);
    String whole =
        String.format(Locale.ROOT, "%s: %.0f ms, %.0f ms then", what, 1e3 * after, 1e3 * before);
    if (limit.isPresent()) {
      figures.atMost(limit.getAsDouble(), whole, after / before, "%.3f");
    } else {
      figures.add(whole, "%.3f", after / before);
    }
  }

  private static Path unpacked(Path oxt, Path folder, String subfolder, Book book)
      throws IOException {
    try (ZipFile zip = new ZipFile(oxt.toFile())) {
      ZipEntry entry = zip.getEntry(book.file);
      if (entry == null) {
        throw new IOException("no " + book.file + " in " + oxt);
      }
      Path file = folder.resolve(subfolder + "-" + Path.of(book.file).getFileName());
      try (InputStream in = zip.getInputStream(entry)) {
        Files.write(file, in.readAllBytes());
      }
      return file;
    }
  }

  /** A book that is open in one of the offices. */
  private static final class Side {
    private final Office office;
    private final Book book;
    private final Path file;
    private final List<Double> openings = new ArrayList<>();
    private final List<Double> answers = new ArrayList<>();
    private final List<Double> edits = new ArrayList<>();
    private final List<Double> storings = new ArrayList<>();
    private final long bytes;
    private XComponent document;
    private double before = Double.NaN;

    Side(Office office, Book book, Path file) throws Exception {
      this.office = office;
      this.book = book;
      this.bytes = Files.size(file);
      this.file = file;
      if (!book.fillings.isEmpty()) {
        document = office.open(file);
        for (Filling filling : book.fillings) {
          fill(filling);
        }
        office.store(document, "calc8", file);
        close();
      }
    }

    private void fill(Filling filling) throws Exception {
      Object[][] values = filling.values;
      UnoRuntime.queryInterface(
              XCellRangeData.class,
              sheet(filling.tab)
                  .getCellRangeByPosition(
                      filling.column,
                      filling.row,
                      filling.column + values[0].length - 1,
                      filling.row + values.length - 1))
          .setDataArray(values);
    }

    private XSpreadsheet sheet(String name) throws Exception {
      XNameAccess sheets =
          UnoRuntime.queryInterface(
              XNameAccess.class,
              UnoRuntime.queryInterface(XSpreadsheetDocument.class, document).getSheets());
      return UnoRuntime.queryInterface(XSpreadsheet.class, sheets.getByName(name));
    }

    private XCell cell(String address) throws Exception {
      return sheet(book.tab).getCellRangeByName(address).getCellByPosition(0, 0);
    }

    /** What an edit has left to do, and what is calculated at every calculation once more. */
    private void calculate() {
      UnoRuntime.queryInterface(XCalculatable.class, document).calculate();
    }

    void open(boolean counts) throws Exception {
      close();
      ProcessorTime start = ProcessorTime.of(office);
      document = office.open(file);
      calculate();
      if (counts) {
        openings.add(start.secondsUntil(ProcessorTime.of(office)));
      }
    }

    void edit(int round) throws Exception {
      XCell typed = cell(book.typed);
      XCell shown = cell(book.shown);
      ProcessorTime start = ProcessorTime.of(office);
      typed.setValue(book.usual + Math.abs(round) % 2);
      double after = shown.getValue();
      double answer = start.secondsUntil(ProcessorTime.of(office));
      calculate();
      double all = start.secondsUntil(ProcessorTime.of(office));
      if (after == before) {
        throw new IOException(book.file + ": an edit of " + book.typed + " changes nothing");
      }
      before = after;
      if (round >= 0) {
        answers.add(answer);
        edits.add(all);
      }
    }

    void store(Path folder) throws IOException {
      ProcessorTime start = ProcessorTime.of(office);
      office.store(document, "calc8", folder.resolve("stored.ods"));
      storings.add(start.secondsUntil(ProcessorTime.of(office)));
    }

    void close() {
      if (document != null) {
        Office.discard(document);
        document = null;
      }
    }
  }

  private static String serial(int i) {
    return "P98-" + (100 + i);
  }

  /** Serial, type, the columns between, rated energy and cycles. */
  private static Object[][] batteries(List<Object> between) {
    Object[][] rows = new Object[BATTERIES][];
    for (int i = 0; i < BATTERIES; i++) {
      List<Object> row = new ArrayList<>(List.of(serial(i), "P98"));
      row.addAll(between);
      row.addAll(List.of(98.0, 100.0));
      rows[i] = row.toArray();
    }
    return rows;
  }

  private static Object[][] column(int rows, Object value) {
    Object[][] column = new Object[rows][];
    for (int i = 0; i < rows; i++) {
      column[i] = new Object[] {value};
    }
    return column;
  }

  private static Object[][] tests(boolean charge) {
    Object[][] rows = new Object[TESTS][];
    for (int i = 0; i < TESTS; i++) {
      List<Object> row =
          new ArrayList<>(
              List.of(
                  serial(i % BATTERIES),
                  ONE_DAY_IN_2026 + i / BATTERIES,
                  93.0 - i / 300.0,
                  45.0,
                  20.0));
      if (charge) {
        row.add(1.0);
      }
      row.addAll(List.of(2.0, 63.0, 4.15, 4.15, 4.15, 4.15));
      rows[i] = row.toArray();
    }
    return rows;
  }
}
