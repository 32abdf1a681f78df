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
import com.sun.star.drawing.XDrawPage;
import com.sun.star.drawing.XDrawPageSupplier;
import com.sun.star.drawing.XShape;
import com.sun.star.lang.XMultiServiceFactory;
import com.sun.star.sheet.XSpreadsheet;
import com.sun.star.table.CellRangeAddress;
import com.sun.star.table.XCellRange;
import com.sun.star.table.XTableChart;
import com.sun.star.table.XTableCharts;
import com.sun.star.table.XTableChartsSupplier;
import java.util.List;
import org.setpower.templates.spec.BarChart;
import org.setpower.templates.spec.CellStyle;

/**
 * Draws a chart: flat, no frame, one colour a series, a legend only where there are several. Bars
 * differ in how dark they are and have an edge, lines in their marks, so that they are told apart
 * without colour.
 */
final class ChartWriter {
  private static final float LETTERS = 9f;
  private static final int THICK = 80;
  private static final int THIN = 40;
  private static final int MARK = 170;

  private ChartWriter() {}

  /** What a chart looks like. */
  private record Look(boolean lines, List<Integer> colours, int series, boolean broken) {}

  /** Draws over these cells; the ranges hold names and values with their headings. */
  static void draw(
      XSpreadsheet sheet,
      String name,
      XCellRange over,
      CellRangeAddress[] ranges,
      BarChart chart,
      String axis) {
    Look look = new Look(chart.lines(), chart.colours(), chart.series().size(), true);
    draw(sheet, name, over, ranges, look, axis);
  }

  /** Draws lines over these cells; names that do not fit are left out. */
  static void lines(
      XSpreadsheet sheet, String name, XCellRange over, CellRangeAddress[] ranges, String axis) {
    Look look = new Look(true, CellStyle.Ink.LINES, ranges.length - 1, false);
    draw(sheet, name, over, ranges, look, axis);
  }

  private static void draw(
      XSpreadsheet sheet,
      String name,
      XCellRange over,
      CellRangeAddress[] ranges,
      Look chart,
      String axis) {
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
    String type = "com.sun.star.chart." + (chart.lines() ? "LineDiagram" : "BarDiagram");
    XDiagram diagram =
        UnoAccess.ask(
            () ->
                UnoAccess.as(
                    XDiagram.class,
                    UnoAccess.as(XMultiServiceFactory.class, document).createInstance(type)));
    UnoAccess.set(document, "IncludeHiddenCells", true);
    document.setDiagram(diagram);
    UnoAccess.set(document, "HasMainTitle", false);
    UnoAccess.set(document, "HasLegend", chart.series() > 1);
    UnoAccess.set(document.getArea(), "LineStyle", LineStyle.NONE);
    UnoAccess.set(document.getArea(), "FillColor", 0xFFFFFF);
    if (chart.series() > 1) {
      UnoAccess.set(document.getLegend(), "Alignment", ChartLegendPosition.TOP);
      UnoAccess.set(document.getLegend(), "LineStyle", LineStyle.NONE);
      UnoAccess.set(document.getLegend(), "FillStyle", FillStyle.NONE);
      letters(document.getLegend());
    }
    plot(diagram, chart, axis);
  }

  /** Puts a chart back over its cells, which move when rows above them have grown. */
  static void place(XSpreadsheet sheet, int number, XCellRange over) {
    XDrawPage page = UnoAccess.as(XDrawPageSupplier.class, sheet).getDrawPage();
    XShape shape = UnoAccess.as(XShape.class, UnoAccess.ask(() -> page.getByIndex(number)));
    shape.setPosition((Point) UnoAccess.get(over, "Position"));
  }

  private static void plot(XDiagram diagram, Look chart, String valueTitle) {
    Object wall = UnoAccess.as(X3DDisplay.class, diagram).getWall();
    UnoAccess.set(wall, "FillStyle", FillStyle.NONE);
    UnoAccess.set(wall, "LineStyle", LineStyle.NONE);
    Object value = UnoAccess.as(XAxisYSupplier.class, diagram).getYAxis();
    Object names = UnoAccess.as(XAxisXSupplier.class, diagram).getXAxis();
    for (Object axis : new Object[] {value, names}) {
      letters(axis);
      UnoAccess.set(axis, "LineColor", CellStyle.Ink.HAIRLINE);
    }
    UnoAccess.set(names, "TextBreak", chart.broken());
    UnoAccess.set(names, "TextRotation", 0);
    UnoAccess.set(value, "Min", 0.0);
    UnoAccess.set(diagram, "HasYAxisTitle", true);
    Object title = UnoAccess.as(XAxisYSupplier.class, diagram).getYAxisTitle();
    UnoAccess.set(title, "String", valueTitle);
    letters(title);
    Object lines = UnoAccess.as(XAxisYSupplier.class, diagram).getYMainGrid();
    UnoAccess.set(lines, "LineColor", CellStyle.Ink.HAIRLINE);
    for (int i = 0; i < chart.series(); i++) {
      int index = i;
      Object series = UnoAccess.ask(() -> diagram.getDataRowProperties(index));
      int colour = chart.colours().get(i);
      UnoAccess.set(series, "FillColor", colour); // also that of a line
      if (chart.lines()) {
        line(series, colour, i);
      } else {
        UnoAccess.set(series, "LineStyle", LineStyle.SOLID);
        UnoAccess.set(series, "LineColor", CellStyle.Ink.SECONDARY);
        UnoAccess.set(series, "LineWidth", 0);
      }
    }
    if (!chart.lines()) {
      UnoAccess.set(diagram, "Vertical", false);
    }
  }

  private static void line(Object series, int colour, int number) {
    UnoAccess.set(series, "LineColor", colour);
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
