package org.setpower.templates.uno;

import com.sun.star.table.XCellRange;
import com.sun.star.table.XColumnRowRange;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import org.setpower.base.ReferenceTable;
import org.setpower.templates.layout.Layout;
import org.setpower.templates.spec.CellSpec;
import org.setpower.templates.spec.ColumnSpec;
import org.setpower.templates.spec.FieldSpec;
import org.setpower.templates.spec.SheetSpec;
import org.setpower.templates.spec.TableBase;
import org.setpower.templates.spec.TableSpec;
import org.setpower.text.MessageCatalog;

/**
 * Fills a drawn template with rows of CSV files, whose heading line names the columns (without
 * units). Dates are written 2027-02-01, times 17:30, shares 60% or 0.6; numbers with a point.
 */
public final class ExampleLoader {
  private static final LocalDate DAY_ZERO = LocalDate.of(1899, 12, 30);
  private static final String SCENARIO = "/org/setpower/templates/example/";
  private static final int LETTERS_OF_A_FIELD = 24;

  private final WorkbookWriter drawing;
  private final MessageCatalog words;

  public ExampleLoader(WorkbookWriter drawing) {
    this(drawing, MessageCatalog.english());
  }

  /** Fills in the language of these words; words that are compared stay. */
  ExampleLoader(WorkbookWriter drawing, MessageCatalog words) {
    this.drawing = drawing;
    this.words = words;
  }

  /** Fills one cell. */
  public ExampleLoader put(FieldSpec field, Object value) {
    Layout.CellPosition spot = drawing.layout().spot(field);
    XCellRange cell = drawing.range(spot.tab(), spot.column(), spot.row(), 1, 1);
    set(cell, 0, field, value.toString());
    if (!spot.tab().isGrid() && value.toString().length() > LETTERS_OF_A_FIELD) {
      UnoAccess.set(UnoAccess.as(XColumnRowRange.class, cell).getRows(), "OptimalHeight", true);
    }
    return this;
  }

  /** Fills the cells of a template from a file of the scenario, with lines "field,value". */
  public ExampleLoader fields(String scenario) {
    String resource = scenarioFile(scenario);
    for (CSVRecord line : read(ExampleLoader.class, resource)) {
      FieldSpec field =
          drawing.template().fields().stream()
              .filter(f -> f.isInput() && f.heading().equals(line.get("field")))
              .findFirst()
              .orElseThrow(() -> unknown(resource, line.get("field")));
      put(field, line.get("value"));
    }
    return this;
  }

  /** Fills the first rows of a table from a file of the scenario. */
  public ExampleLoader rows(TableSpec table, String scenario) {
    return rows(table, ExampleLoader.class, scenarioFile(scenario));
  }

  /** Fills the first rows of a table; what stood there before goes. */
  ExampleLoader rows(TableSpec table, Class<?> beside, String resource) {
    return rows(table, resource, lines(beside, resource));
  }

  /** Fills the first rows of a table; {@code source} is named when something does not fit. */
  public ExampleLoader rows(TableSpec table, String source, List<Map<String, String>> lines) {
    if (lines.size() > table.room()) {
      throw new IllegalStateException(source + " has more rows than " + table.room());
    }
    List<String> headings = table.inputs().stream().map(CellSpec::heading).toList();
    for (String heading : lines.isEmpty() ? Set.<String>of() : lines.get(0).keySet()) {
      if (!headings.contains(heading)) {
        throw unknown(source, heading);
      }
    }
    for (ColumnSpec column : table.inputs()) {
      XCellRange cells = drawing.cells(column);
      WorkbookWriter.clear(cells);
      for (int i = 0; i < lines.size(); i++) {
        set(cells, i, column, lines.get(i).getOrDefault(column.heading(), ""));
      }
    }
    drawing.filled(table, lines.size());
    return this;
  }

  /** Fills a table with the rows that it starts with. */
  void start(TableSpec table) {
    if (table.startsBeside() != null) {
      rows(table, table.startsBeside(), table.startsFrom());
    }
  }

  /** Says that a table of results shows so many rows, for its print. */
  public ExampleLoader shows(TableBase results, int rows) {
    drawing.filled(results, rows);
    return this;
  }

  /** Says that a table of results shows as many rows as another has filled, for its print. */
  public ExampleLoader shows(TableSpec results, TableSpec filled) {
    drawing.filled(results, drawing.filled(filled));
    return this;
  }

  private static IllegalStateException unknown(String resource, String heading) {
    return new IllegalStateException(resource + ": there is no cell to fill named " + heading);
  }

  /** The file of a table of the scenario: those of a sheet stand in a folder of their own. */
  private static String scenarioFile(String table) {
    int dash = table.indexOf('-');
    return SCENARIO + (dash < 0 ? "" : table.substring(0, dash) + "/") + table + ".csv";
  }

  /** The rows of a file of the scenario by the headings of its columns. */
  public static List<Map<String, String>> lines(String scenario) {
    return lines(ExampleLoader.class, scenarioFile(scenario));
  }

  private static List<Map<String, String>> lines(Class<?> beside, String resource) {
    return read(beside, resource).stream().map(CSVRecord::toMap).toList();
  }

  private static List<CSVRecord> read(Class<?> beside, String resource) {
    try (InputStream in = beside.getResourceAsStream(resource)) {
      if (in == null) {
        throw new IllegalStateException("no file " + resource + " beside " + beside.getName());
      }
      try (CSVParser parser =
          ReferenceTable.FORMAT.parse(new InputStreamReader(in, StandardCharsets.UTF_8))) {
        return parser.getRecords();
      }
    } catch (IOException e) {
      throw new UncheckedIOException(resource, e);
    }
  }

  /** The texts that a table starts with, in these words. */
  public static List<String> ask(TableSpec table, MessageCatalog words) {
    List<String> texts = new ArrayList<>();
    if (table.startsFrom() != null) {
      for (CSVRecord line : read(table.startsBeside(), table.startsFrom())) {
        for (ColumnSpec column : table.inputs()) {
          String text = line.isSet(column.heading()) ? line.get(column.heading()) : "";
          texts.add(column.format().isText() ? inWords(column, text, words) : text);
        }
      }
    }
    return texts;
  }

  private static String inWords(CellSpec<?> item, String text, MessageCatalog words) {
    return item.options().isEmpty() && text.matches(".*\\p{Lower}{3}.*") ? words.of(text) : text;
  }

  private void set(XCellRange cells, int row, CellSpec<?> item, String text) {
    if (text.isEmpty()) {
      return;
    }
    UnoAccess.tell(
        () -> {
          var cell = cells.getCellByPosition(0, row);
          if (item.format().isText()) {
            UnoAccess.as(com.sun.star.text.XText.class, cell).setString(inWords(item, text, words));
          } else {
            cell.setValue(value(item, text));
          }
        });
  }

  private static double value(CellSpec<?> item, String text) {
    return switch (item.format()) {
      case DATE, DAY -> ChronoUnit.DAYS.between(DAY_ZERO, LocalDate.parse(text));
      case TIME -> LocalTime.parse(text).toSecondOfDay() / 86_400.0;
      default ->
          text.endsWith("%")
              ? Double.parseDouble(text.substring(0, text.length() - 1)) / 100
              : Double.parseDouble(text);
    };
  }

  /** Recalculates everything and lets rows grow with their text. */
  public ExampleLoader calculated() {
    drawing.calculate();
    for (SheetSpec tab : drawing.template().tabs()) {
      for (TableBase rows : tab.isGrid() ? List.<TableBase>of() : tab.tables()) {
        Object lines =
            UnoAccess.as(
                    XColumnRowRange.class,
                    drawing.range(tab, 0, drawing.layout().firstRow(rows), 1, rows.room()))
                .getRows();
        UnoAccess.set(lines, "OptimalHeight", true);
      }
    }
    return this;
  }
}
