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
import org.setpower.templates.spec.BarChart;
import org.setpower.templates.spec.Style;

/**
 * Draws a chart: flat, no frame, one colour a series, a legend only where there are several. Bars
 * differ in how dark they are and have an edge, lines in their marks, so that they are told apart
 * without colour.
 */
final class Charts {
  private static final float LETTERS = 9f;
  private static final int THICK = 80;
  private static final int THIN = 40;
  private static final int MARK = 170;

  private Charts() {}

  /** Draws over these cells; the ranges hold names and values with their headings. */
  static void draw(
      XSpreadsheet sheet,
      String name,
      XCellRange over,
      CellRangeAddress[] ranges,
      BarChart chart,
      String axis) {
    Point at = (Point) Uno.get(over, "Position");
    Size size = (Size) Uno.get(over, "Size");
    XTableCharts charts = Uno.as(XTableChartsSupplier.class, sheet).getCharts();
    charts.addNewByName(
        name, new Rectangle(at.X, at.Y, size.Width, size.Height), ranges, true, true);
    XTableChart made = Uno.ask(() -> Uno.as(XTableChart.class, charts.getByName(name)));
    XChartDocument document =
        Uno.as(
            XChartDocument.class, Uno.as(XEmbeddedObjectSupplier.class, made).getEmbeddedObject());
    String type = "com.sun.star.chart." + (chart.lines() ? "LineDiagram" : "BarDiagram");
    XDiagram diagram =
        Uno.ask(
            () ->
                Uno.as(
                    XDiagram.class,
                    Uno.as(XMultiServiceFactory.class, document).createInstance(type)));
    Uno.set(document, "IncludeHiddenCells", true);
    document.setDiagram(diagram);
    Uno.set(document, "HasMainTitle", false);
    Uno.set(document, "HasLegend", chart.series().size() > 1);
    Uno.set(document.getArea(), "LineStyle", LineStyle.NONE);
    Uno.set(document.getArea(), "FillColor", 0xFFFFFF);
    if (chart.series().size() > 1) {
      Uno.set(document.getLegend(), "Alignment", ChartLegendPosition.TOP);
      Uno.set(document.getLegend(), "LineStyle", LineStyle.NONE);
      Uno.set(document.getLegend(), "FillStyle", FillStyle.NONE);
      letters(document.getLegend());
    }
    plot(diagram, chart, axis);
  }

  /** Puts a chart back over its cells, which move when rows above them have grown. */
  static void place(XSpreadsheet sheet, int number, XCellRange over) {
    XDrawPage page = Uno.as(XDrawPageSupplier.class, sheet).getDrawPage();
    XShape shape = Uno.as(XShape.class, Uno.ask(() -> page.getByIndex(number)));
    shape.setPosition((Point) Uno.get(over, "Position"));
  }

  private static void plot(XDiagram diagram, BarChart chart, String valueTitle) {
    Object wall = Uno.as(X3DDisplay.class, diagram).getWall();
    Uno.set(wall, "FillStyle", FillStyle.NONE);
    Uno.set(wall, "LineStyle", LineStyle.NONE);
    Object value = Uno.as(XAxisYSupplier.class, diagram).getYAxis();
    Object names = Uno.as(XAxisXSupplier.class, diagram).getXAxis();
    for (Object axis : new Object[] {value, names}) {
      letters(axis);
      Uno.set(axis, "LineColor", Style.Ink.HAIRLINE);
    }
    Uno.set(names, "TextBreak", true);
    Uno.set(names, "TextRotation", 0);
    Uno.set(value, "Min", 0.0);
    Uno.set(diagram, "HasYAxisTitle", true);
    Object title = Uno.as(XAxisYSupplier.class, diagram).getYAxisTitle();
    Uno.set(title, "String", valueTitle);
    letters(title);
    Object lines = Uno.as(XAxisYSupplier.class, diagram).getYMainGrid();
    Uno.set(lines, "LineColor", Style.Ink.HAIRLINE);
    for (int i = 0; i < chart.series().size(); i++) {
      int index = i;
      Object series = Uno.ask(() -> diagram.getDataRowProperties(index));
      int colour = chart.colours().get(i);
      Uno.set(series, "FillColor", colour); // also that of a line
      if (chart.lines()) {
        line(series, colour, i);
      } else {
        Uno.set(series, "LineStyle", LineStyle.SOLID);
        Uno.set(series, "LineColor", Style.Ink.SECONDARY);
        Uno.set(series, "LineWidth", 0);
      }
    }
    if (!chart.lines()) {
      Uno.set(diagram, "Vertical", false);
    }
  }

  private static void line(Object series, int colour, int number) {
    Uno.set(series, "LineColor", colour);
    Uno.set(series, "LineWidth", number == 0 ? THICK : THIN);
    Uno.set(series, "SymbolType", number == 0 ? ChartSymbolType.NONE : number - 1);
    Uno.set(series, "SymbolSize", new Size(MARK, MARK));
  }

  private static void letters(Object text) {
    Uno.set(text, "CharHeight", LETTERS);
    Uno.set(text, "CharFontName", Style.FONT);
    Uno.set(text, "CharColor", Style.Ink.SECONDARY);
  }
}
