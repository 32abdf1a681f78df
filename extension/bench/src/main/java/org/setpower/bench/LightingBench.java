package org.setpower.bench;

import com.sun.star.beans.PropertyValue;
import com.sun.star.beans.XPropertySet;
import com.sun.star.frame.XStorable;
import com.sun.star.lang.XComponent;
import com.sun.star.sheet.XCellRangeData;
import com.sun.star.sheet.XCellRangeReferrer;
import com.sun.star.sheet.XNamedRanges;
import com.sun.star.table.XCell;
import com.sun.star.table.XCellRange;
import com.sun.star.uno.UnoRuntime;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import org.setpower.command.export.ValuesExport;
import org.setpower.command.message.Progress;
import org.setpower.office.Office;

/**
 * The lighting power plan, as its example and with 200 loads: from a typed quantity to all results,
 * against a thousand calls of an empty function; its copies against storing it.
 */
final class LightingBench {
  private static final Path EXAMPLE =
      Path.of("extension/target/sheets/examples/lighting-power-plan-example.ods");
  private static final int CALLS = 1_000;
  private static final int ROUNDS = 25;
  private static final long MOST_BYTES = 150_000;

  private final Office office;
  private final XComponent document;

  private LightingBench(Office office, XComponent document) {
    this.office = office;
    this.document = document;
  }

  static void run(Office office, Measurements figures) throws Exception {
    try (BenchDocument plan = new BenchDocument(office, office.open(EXAMPLE));
        BenchDocument empty =
            BenchDocument.empty(office)
                .data(0, WholeBench.data(CALLS))
                .down(6, 0, CALLS, "=EMPTY.CABLEDROP(A1;B1;C1)")) {
      LightingBench bench = new LightingBench(office, plan.document());
      bench.edits("as its example", empty, figures);
      bench.repeatLoads();
      bench.edits("with 200 loads", empty, figures);
      bench.copies(figures);
    }
    figures.atMost(
        1,
        "size of the lighting example, to 150 kB",
        (double) Files.size(EXAMPLE) / MOST_BYTES,
        "%.2f");
  }

  private XCellRange range(String name) throws com.sun.star.uno.Exception {
    XNamedRanges names =
        UnoRuntime.queryInterface(
            XNamedRanges.class,
            UnoRuntime.queryInterface(XPropertySet.class, document)
                .getPropertyValue("NamedRanges"));
    return UnoRuntime.queryInterface(XCellRangeReferrer.class, names.getByName(name))
        .getReferredCells();
  }

  private static Object[][] data(XCellRange cells) {
    return UnoRuntime.queryInterface(XCellRangeData.class, cells).getDataArray();
  }

  /** The loads of the example again and again, to the last row of the table. */
  private void repeatLoads() throws com.sun.star.uno.Exception {
    XCellRange table = range("Loads");
    Object[][] cells = data(table);
    int filled = 1;
    while (!"".equals(cells[filled][0])) {
      filled++;
    }
    for (int row = filled; row < cells.length - 1; row++) {
      cells[row] = cells[1 + (row - 1) % (filled - 1)].clone();
    }
    // the rows of keys and end are protected
    int last = cells.length - 2;
    UnoRuntime.queryInterface(
            XCellRangeData.class, table.getCellRangeByPosition(0, 1, cells[0].length - 1, last))
        .setDataArray(Arrays.copyOfRange(cells, 1, last + 1));
  }

  private void edits(String filled, BenchDocument empty, Measurements figures) throws Exception {
    XCellRange table = range("Loads");
    int quantity = Arrays.asList(data(table)[0]).indexOf("quantity");
    XCell typed = table.getCellByPosition(quantity, 1);
    XCell power = range("Result_Power").getCellByPosition(0, 0);
    List<Double> edits = new ArrayList<>();
    double before = Double.NaN;
    for (int round = -4; round < ROUNDS; round++) {
      ProcessorTime start = ProcessorTime.of(office);
      typed.setValue(1 + Math.abs(round) % 2);
      double after = power.getValue();
      double seconds = start.secondsUntil(ProcessorTime.of(office));
      if (after == before) {
        throw new IOException("an edit changes nothing");
      }
      before = after;
      empty.recalculate();
      if (round >= 0) {
        edits.add(seconds);
      }
    }
    double edit = ProcessorTime.usual(edits);
    figures.atMost(
        8,
        String.format(
            Locale.ROOT,
            "lighting plan %s, an edit: %.0f ms; to 1 000 empty calls (%.0f ms)",
            filled,
            1e3 * edit,
            1e3 * empty.seconds()),
        edit / empty.seconds(),
        "%.2f");
  }

  /** How long a copy without formulas takes in all kinds of file, against storing the document. */
  private void copies(Measurements figures) throws Exception {
    Path folder = office.newFolder();
    long begin = System.nanoTime();
    UnoRuntime.queryInterface(XStorable.class, document)
        .storeToURL(office.address(folder.resolve("stored.ods")), new PropertyValue[0]);
    double stored = (System.nanoTime() - begin) / 1e9;
    Map<ValuesExport.Kind, String> targets = new EnumMap<>(ValuesExport.Kind.class);
    for (ValuesExport.Kind kind : ValuesExport.Kind.values()) {
      targets.put(kind, office.address(folder.resolve("copy." + kind.suffix())));
    }
    begin = System.nanoTime();
    new ValuesExport(office.context(), document, Set.of(), false, Progress.NONE).write(targets);
    double copied = (System.nanoTime() - begin) / 1e9;
    figures.atMost(
        15,
        String.format(
            Locale.ROOT,
            "copy without formulas of the same plan as .ods, .xlsx and .pdf: %.1f s; to storing it"
                + " (%.1f s)",
            copied,
            stored),
        copied / stored,
        "%.1f");
  }
}
