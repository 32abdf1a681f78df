package org.setpower.templates.uno;

import com.sun.star.awt.Point;
import com.sun.star.awt.Rectangle;
import com.sun.star.awt.Size;
import com.sun.star.chart.ChartLegendPosition;
import com.sun.star.chart.ChartSymbolType;
import com.sun.star.chart.X3DDisplay;
import com.sun.star.chart.XAxisXSupplier;
import com.sun.star.chart.XAxisYSupplier;
import com.sun.star.chart.XChartDocument;
import com.sun.star.chart.XDiagram;
import com.sun.star.document.XEmbeddedObjectSupplier;
import com.sun.star.drawing.FillStyle;
import com.sun.star.drawing.LineStyle;
import com.sun.star.lang.XMultiServiceFactory;
import com.sun.star.sheet.XSpreadsheet;
import com.sun.star.table.CellRangeAddress;
import com.sun.star.table.XCellRange;
import com.sun.star.table.XTableChart;
import com.sun.star.table.XTableCharts;
import com.sun.star.table.XTableChartsSupplier;
import org.setpower.templates.spec.CellStyle;

/**
 * Draws a chart of lines: flat, no frame, one colour a series; lines differ in their marks too, so
 * that they are told apart without colour.
 */
final class ChartWriter {
  /** Of the series, in order: printed in grey, no two beside each other are alike. */
  private static final int[] COLOURS = {0x1F5F6B, 0xB87A12, 0x5A6B70, 0x8A4B3C, 0x4E7D5B};

  private static final float LETTERS = 9f;
  private static final int THICK = 80;
  private static final int THIN = 40;
  private static final int MARK = 170;

  private ChartWriter() {}

  /** Draws over these cells; the ranges hold names and values with their headings. */
  static void lines(
      XSpreadsheet sheet, String name, XCellRange over, CellRangeAddress[] ranges, String axis) {
    Point at = (Point) UnoAccess.get(over, "Position");
    Size size = (Size) UnoAccess.get(over, "Size");
    XTableCharts charts = UnoAccess.as(XTableChartsSupplier.class, sheet).getCharts();
    charts.addNewByName(
        name, new Rectangle(at.X, at.Y, size.Width, size.Height), ranges, true, true);
    XTableChart made = UnoAccess.ask(() -> UnoAccess.as(XTableChart.class, charts.getByName(name)));
    XChartDocument document =
        UnoAccess.as(
            XChartDocument.class,
            UnoAccess.as(XEmbeddedObjectSupplier.class, made).getEmbeddedObject());
    XDiagram diagram =
        UnoAccess.ask(
            () ->
                UnoAccess.as(
                    XDiagram.class,
                    UnoAccess.as(XMultiServiceFactory.class, document)
                        .createInstance("com.sun.star.chart.LineDiagram")));
    UnoAccess.set(document, "IncludeHiddenCells", true);
    document.setDiagram(diagram);
    UnoAccess.set(document, "HasMainTitle", false);
    UnoAccess.set(document, "HasLegend", true);
    UnoAccess.set(document.getArea(), "LineStyle", LineStyle.NONE);
    UnoAccess.set(document.getArea(), "FillColor", 0xFFFFFF);
    UnoAccess.set(document.getLegend(), "Alignment", ChartLegendPosition.TOP);
    UnoAccess.set(document.getLegend(), "LineStyle", LineStyle.NONE);
    UnoAccess.set(document.getLegend(), "FillStyle", FillStyle.NONE);
    letters(document.getLegend());
    plot(diagram, ranges.length - 1, axis);
  }

  private static void plot(XDiagram diagram, int lines, String valueTitle) {
    Object wall = UnoAccess.as(X3DDisplay.class, diagram).getWall();
    UnoAccess.set(wall, "FillStyle", FillStyle.NONE);
    UnoAccess.set(wall, "LineStyle", LineStyle.NONE);
    Object value = UnoAccess.as(XAxisYSupplier.class, diagram).getYAxis();
    Object names = UnoAccess.as(XAxisXSupplier.class, diagram).getXAxis();
    for (Object axis : new Object[] {value, names}) {
      letters(axis);
      UnoAccess.set(axis, "LineColor", CellStyle.Ink.HAIRLINE);
    }
    UnoAccess.set(names, "TextBreak", false);
    UnoAccess.set(names, "TextRotation", 0);
    UnoAccess.set(value, "Min", 0.0);
    UnoAccess.set(diagram, "HasYAxisTitle", true);
    Object title = UnoAccess.as(XAxisYSupplier.class, diagram).getYAxisTitle();
    UnoAccess.set(title, "String", valueTitle);
    letters(title);
    Object grid = UnoAccess.as(XAxisYSupplier.class, diagram).getYMainGrid();
    UnoAccess.set(grid, "LineColor", CellStyle.Ink.HAIRLINE);
    for (int i = 0; i < lines; i++) {
      int index = i;
      line(UnoAccess.ask(() -> diagram.getDataRowProperties(index)), i);
    }
  }

  private static void line(Object series, int number) {
    UnoAccess.set(series, "FillColor", COLOURS[number]); // also that of a line
    UnoAccess.set(series, "LineColor", COLOURS[number]);
    UnoAccess.set(series, "LineWidth", number == 0 ? THICK : THIN);
    UnoAccess.set(series, "SymbolType", number == 0 ? ChartSymbolType.NONE : number - 1);
    UnoAccess.set(series, "SymbolSize", new Size(MARK, MARK));
  }

  private static void letters(Object text) {
    UnoAccess.set(text, "CharHeight", LETTERS);
    UnoAccess.set(text, "CharFontName", CellStyle.FONT);
    UnoAccess.set(text, "CharColor", CellStyle.Ink.SECONDARY);
  }
}
