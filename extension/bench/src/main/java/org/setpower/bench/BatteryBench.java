package org.setpower.bench;

import com.sun.star.beans.XPropertySet;
import com.sun.star.sheet.XCellRangeAddressable;
import com.sun.star.sheet.XCellRangeData;
import com.sun.star.sheet.XCellRangeReferrer;
import com.sun.star.sheet.XNamedRanges;
import com.sun.star.sheet.XSheetCellRange;
import com.sun.star.table.CellRangeAddress;
import com.sun.star.table.XCell;
import com.sun.star.table.XCellRange;
import com.sun.star.uno.UnoRuntime;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.setpower.office.Office;

/**
 * The battery plan of a day of 20 positions, 60 batteries of four types and 10 chargers: from a
 * typed cell to all results, against a thousand calls of an empty function.
 */
final class BatteryBench {
  private static final Path TEMPLATE =
      Path.of("extension/target/sheets/templates/en/battery-plan.ots");
  private static final String[] TYPES = {"P294", "P150", "P98", "P588"};
  private static final double[] AMP_HOURS = {10.2, 5.2, 6.8, 20.4};
  private static final double[] WATT_HOURS = {294, 150, 98, 588};
  private static final double DATE = 46_420;
  private static final int POSITIONS = 20;
  private static final int CHARGERS = 10;
  private static final int CALLS = 1_000;
  private static final int ROUNDS = 25;

  /** Where a device has its watts, and how many columns of results may follow. */
  private static final int WATTS = 2;

  private static final int RESULTS = 30;

  private BatteryBench() {}

  static void run(Office office, Measurements figures) throws Exception {
    try (BenchDocument plan = new BenchDocument(office, office.open(TEMPLATE));
        BenchDocument empty =
            BenchDocument.empty(office)
                .data(0, WholeBench.data(CALLS))
                .down(6, 0, CALLS, "=EMPTY.CABLEDROP(A1;B1;C1)")) {
      fill(plan);
      XCell drawn = drawn(plan);
      List<Double> edits = new ArrayList<>();
      for (int round = -5; round < ROUNDS; round++) {
        double seconds = edit(office, plan, drawn, round);
        empty.recalculate();
        if (round >= 0) {
          edits.add(seconds);
        }
      }
      double edit = ProcessorTime.usual(edits);
      figures.atMost(
          4,
          String.format(
              Locale.ROOT,
              "battery plan of 20 positions, 60 batteries and 10 chargers, an edit: %.0f ms; to"
                  + " 1 000 empty calls (%.0f ms)",
              1e3 * edit,
              1e3 * empty.seconds()),
          edit / empty.seconds(),
          "%.2f");
    }
  }

  /** Types other watts for the first device and reads what it draws. */
  private static double edit(Office office, BenchDocument plan, XCell drawn, int round)
      throws Exception {
    XCell typed = range(plan, "Devices").getCellByPosition(WATTS, 1);
    double watts = 60 + round;
    ProcessorTime before = ProcessorTime.of(office);
    typed.setValue(watts);
    double shown = drawn.getValue();
    double seconds = before.secondsUntil(ProcessorTime.of(office));
    if (Math.abs(shown - watts) > 1e-9) {
      throw new IOException("drawn " + shown + " of " + watts);
    }
    return seconds;
  }

  /** The result in the row of the first device that says its watts. */
  private static XCell drawn(BenchDocument plan) throws Exception {
    XCellRange devices = range(plan, "Devices");
    double watts = devices.getCellByPosition(WATTS, 1).getValue();
    CellRangeAddress at =
        UnoRuntime.queryInterface(XCellRangeAddressable.class, devices).getRangeAddress();
    XCellRange sheet = UnoRuntime.queryInterface(XSheetCellRange.class, devices).getSpreadsheet();
    for (int column = at.EndColumn + 1; column < at.EndColumn + RESULTS; column++) {
      XCell cell = sheet.getCellByPosition(column, at.StartRow + 1);
      if (cell.getValue() == watts) {
        return cell;
      }
    }
    throw new IOException("no result shows " + watts);
  }

  /** A table with its row of keys. */
  private static XCellRange range(BenchDocument plan, String name) throws Exception {
    XNamedRanges names =
        UnoRuntime.queryInterface(
            XNamedRanges.class,
            UnoRuntime.queryInterface(XPropertySet.class, plan.document())
                .getPropertyValue("NamedRanges"));
    return UnoRuntime.queryInterface(XCellRangeReferrer.class, names.getByName(name))
        .getReferredCells();
  }

  private static void rows(BenchDocument plan, String name, List<Map<String, Object>> rows)
      throws Exception {
    XCellRange table = range(plan, name);
    Object[] keys = UnoRuntime.queryInterface(XCellRangeData.class, table).getDataArray()[0];
    Object[][] cells = new Object[rows.size()][keys.length];
    for (int r = 0; r < cells.length; r++) {
      for (int c = 0; c < keys.length; c++) {
        cells[r][c] = rows.get(r).getOrDefault((String) keys[c], "");
      }
    }
    UnoRuntime.queryInterface(
            XCellRangeData.class, table.getCellRangeByPosition(0, 1, keys.length - 1, rows.size()))
        .setDataArray(cells);
  }

  private static Map<String, Object> row(Object... cells) {
    Map<String, Object> row = new HashMap<>();
    for (int i = 0; i < cells.length; i += 2) {
      row.put((String) cells[i], cells[i + 1]);
    }
    return row;
  }

  private static void fill(BenchDocument plan) throws Exception {
    rows(
        plan,
        "Days",
        List.of(
            row(
                "date",
                DATE,
                "call",
                7 / 24.0,
                "wrap",
                17 / 24.0,
                "min",
                5.0,
                "max",
                12.0,
                "minFrom",
                0.2,
                "maxFrom",
                0.6,
                "breakFrom",
                0.5,
                "breakTo",
                13 / 24.0)));
    List<Map<String, Object>> types = new ArrayList<>();
    List<Map<String, Object>> stock = new ArrayList<>();
    for (int i = 0; i < TYPES.length; i++) {
      boolean twelve = i == 2;
      types.add(
          row(
              "type",
              TYPES[i],
              "chemistry",
              "Li-ion",
              "cells",
              twelve ? 4.0 : 8.0,
              "ampHours",
              AMP_HOURS[i],
              "wattHours",
              WATT_HOURS[i],
              "outputs",
              twelve ? "12" : "24",
              "maxAmps",
              40.0,
              "resistance",
              50.0,
              "health",
              0.95));
      stock.add(row("type", TYPES[i], "owned", 15.0));
    }
    rows(plan, "Types", types);
    rows(plan, "Stock", stock);
    List<Map<String, Object>> positions = new ArrayList<>();
    List<Map<String, Object>> devices = new ArrayList<>();
    for (int i = 0; i < POSITIONS; i++) {
      boolean twelve = i % TYPES.length == 2;
      String name = "position " + i;
      positions.add(
          row(
              "position",
              name,
              "volts",
              twelve ? 12.0 : 24.0,
              "type",
              TYPES[i % TYPES.length],
              "priority",
              1.0 + i));
      devices.add(
          row(
              "device",
              name,
              "position",
              name,
              "watts",
              30.0 + 5 * i % 60,
              "minVolts",
              twelve ? 10.0 : 20.0,
              "maxVolts",
              twelve ? 18.0 : 36.0));
    }
    rows(plan, "Positions", positions);
    rows(plan, "Devices", devices);
    rows(plan, "Supplies", List.of(row("supply", "socket", "watts", 3_000.0)));
    List<String> taken = Arrays.asList("P294, P150", "P98", "P588, P294");
    List<Map<String, Object>> chargers = new ArrayList<>();
    for (int i = 0; i < CHARGERS; i++) {
      chargers.add(
          row(
              "charger",
              "charger " + i,
              "supply",
              "socket",
              "channels",
              4.0,
              "amps",
              i % 3 == 1 ? 3.0 : 4.0,
              "types",
              taken.get(i % 3),
              "air",
              20.0));
    }
    rows(plan, "Chargers", chargers);
  }
}
