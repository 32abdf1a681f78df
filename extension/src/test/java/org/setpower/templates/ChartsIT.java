package org.setpower.templates;

import static org.assertj.core.api.Assertions.assertThat;

import com.sun.star.awt.Point;
import com.sun.star.drawing.XDrawPageSupplier;
import com.sun.star.drawing.XShape;
import com.sun.star.lang.XComponent;
import com.sun.star.sheet.XSpreadsheet;
import com.sun.star.sheet.XSpreadsheetDocument;
import com.sun.star.table.XCellRange;
import com.sun.star.table.XColumnRowRange;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;
import org.setpower.addin.SharedOffice;
import org.setpower.command.CommandDriver;
import org.setpower.office.Office;
import org.setpower.templates.layout.Layout;
import org.setpower.templates.spec.BarChart;
import org.setpower.templates.spec.SheetSpec;
import org.setpower.templates.spec.WorkbookSpec;
import org.setpower.templates.uno.UnoAccess;

/** A chart stands over its cells; when rows above it have grown it is put back there. */
@ExtendWith(SharedOffice.class)
class ChartsIT {
  private static final Path SHEETS = Path.of("target/sheets");
  private static final int TALL = 6000; // 1/100 mm
  private static final int NEAR = 60; // a dot on the screen or two
  private static final int IN_ANOTHER_FORMAT = 600; // heights of rows are rounded there

  /** The line of the stamp, as the office counts: every chart stands lower. */
  private static final int GROWING_ROW = 3;

  @TestFactory
  Stream<DynamicTest> charts_go_with_their_cells(Office office, @TempDir Path folder) {
    return TemplateRegistry.all().stream()
        .filter(w -> charts(w.template()).size() > 0)
        .map(
            w -> {
              String file = "examples/" + w.template().fileName() + "-example.ods";
              return DynamicTest.dynamicTest(
                  file, () -> goWithTheirCells(office, file, w.template(), folder));
            });
  }

  private static void goWithTheirCells(
      Office office, String file, WorkbookSpec template, Path folder) throws Exception {
    XComponent document = office.open(SHEETS.resolve(file));
    try {
      grow(office, document, template, NEAR);
      store(office, document, template, folder.resolve("again.ods"), "calc8", NEAR);
      store(
          office,
          document,
          template,
          folder.resolve("again.xlsx"),
          "Calc Office Open XML",
          IN_ANOTHER_FORMAT);
    } finally {
      Office.discard(document);
    }
  }

  /** After a round trip every chart still stands over its cells, and goes back there. */
  private static void store(
      Office office, XComponent document, WorkbookSpec template, Path file, String filter, int near)
      throws Exception {
    office.store(document, filter, file);
    XComponent again = office.open(file);
    try {
      grow(office, again, template, near);
    } finally {
      Office.discard(again);
    }
  }

  /** A row above each chart grows; before printing the charts stand over their cells again. */
  private static void grow(Office office, XComponent document, WorkbookSpec template, int near)
      throws Exception {
    Layout layout = new Layout(template);
    Map<SheetSpec, List<BarChart>> charts = charts(template);
    for (SheetSpec tab : charts.keySet()) {
      XSpreadsheet sheet = sheet(document, layout.name(tab));
      standOver(sheet, layout, charts.get(tab), near);
      XCellRange row = UnoAccess.ask(() -> sheet.getCellRangeByName("A" + GROWING_ROW));
      Object rows = UnoAccess.as(XColumnRowRange.class, row).getRows();
      int top = shape(sheet, 0).getPosition().Y;
      int before = (Integer) UnoAccess.get(rows, "Height");
      UnoAccess.set(rows, "Height", before + TALL);
      CommandDriver.command(office, document, "fit");
      assertThat(shape(sheet, 0).getPosition().Y)
          .as(tab.name() + ": the top of the chart")
          .isGreaterThanOrEqualTo(top + TALL - near);
      standOver(sheet, layout, charts.get(tab), NEAR);
      UnoAccess.set(rows, "Height", before);
      CommandDriver.command(office, document, "fit");
    }
  }

  /** Each chart covers the cells left free for it, and none beyond the first and last row. */
  private static void standOver(
      XSpreadsheet sheet, Layout layout, List<BarChart> charts, int near) {
    for (int i = 0; i < charts.size(); i++) {
      int first = layout.spot(charts.get(i)).row();
      int below = first + charts.get(i).height();
      XShape shape = shape(sheet, i);
      int top = shape.getPosition().Y;
      int bottom = top + shape.getSize().Height;
      assertThat(top)
          .as(charts.get(i).title())
          .isBetween(y(sheet, first) - near, y(sheet, first) + near);
      assertThat(bottom).as(charts.get(i).title()).isLessThanOrEqualTo(y(sheet, below) + near);
    }
  }

  private static int y(XSpreadsheet sheet, int row) {
    return ((Point) UnoAccess.get(UnoAccess.ask(() -> sheet.getCellByPosition(0, row)), "Position"))
        .Y;
  }

  private static XShape shape(XSpreadsheet sheet, int number) {
    return UnoAccess.as(
        XShape.class,
        UnoAccess.ask(
            () -> UnoAccess.as(XDrawPageSupplier.class, sheet).getDrawPage().getByIndex(number)));
  }

  private static XSpreadsheet sheet(XComponent document, String name) {
    return UnoAccess.ask(
        () ->
            UnoAccess.as(
                XSpreadsheet.class,
                UnoAccess.as(XSpreadsheetDocument.class, document).getSheets().getByName(name)));
  }

  private static Map<SheetSpec, List<BarChart>> charts(WorkbookSpec template) {
    Map<SheetSpec, List<BarChart>> charts = new LinkedHashMap<>();
    for (SheetSpec tab : template.tabs()) {
      List<BarChart> here =
          tab.blocks().stream()
              .filter(BarChart.class::isInstance)
              .map(BarChart.class::cast)
              .toList();
      if (!here.isEmpty()) {
        charts.put(tab, here);
      }
    }
    return charts;
  }
}
