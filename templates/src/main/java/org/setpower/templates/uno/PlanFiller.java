package org.setpower.templates.uno;

import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Map;
import java.util.function.Predicate;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import org.setpower.base.ReferenceTable;
import org.setpower.plan.common.InputColumn;
import org.setpower.templates.example.ExampleTables;
import org.setpower.templates.layout.PlanLayout.Place;
import org.setpower.templates.plan.InputCells;
import org.setpower.templates.plan.PlanFields;
import org.setpower.templates.plan.PlanNotes;
import org.setpower.templates.plan.PlanTable;
import org.setpower.templates.plan.PlanWorkbook;
import org.setpower.templates.spec.CellFormat;
import org.setpower.templates.spec.FieldSpec;
import org.setpower.text.MessageCatalog;

/**
 * Fills a drawn workbook with the example of its folder, {@code example/<plan>}: a CSV file for
 * each table, whose first line holds the keys of its columns, and {@code cells.csv} with single
 * cells by key, by {@code table.key} where two tables have it, or by heading where no plan reads
 * them. Dates are written 2027-02-01, times 17:30.
 */
public final class PlanFiller {
  private static final LocalDate DAY_ZERO = LocalDate.of(1899, 12, 30);
  private static final double SECONDS_A_DAY = 86_400;

  private static final String INITIAL = "/org/setpower/templates/initial/";

  private final PlanWriter drawing;
  private final String folder;

  public PlanFiller(PlanWriter drawing) {
    this.drawing = drawing;
    folder = "/org/setpower/templates/example/" + drawing.workbook().model().name() + "/";
  }

  /** Fills everything that the example has. */
  public PlanFiller example() {
    return example(t -> true);
  }

  /** Fills the cells and some tables of the example. */
  public PlanFiller example(Predicate<PlanTable> tables) {
    cells();
    for (PlanTable table : drawing.workbook().parts(PlanTable.class).toList()) {
      List<Map<String, String>> lines = lines(table.inputs().key());
      if (!lines.isEmpty() && tables.test(table)) {
        rows(table, lines);
      }
    }
    return this;
  }

  /**
   * Fills what a new file begins with, {@code initial/<plan>}: a CSV file for each table, a second
   * one for a language whose country has other plugs, {@code equipment_en-US.csv}.
   */
  public PlanFiller initial() {
    for (PlanTable table : drawing.workbook().parts(PlanTable.class).toList()) {
      MessageCatalog words = drawing.layout().words();
      List<Map<String, String>> lines = initial(drawing.workbook(), table, words.tag());
      lines.forEach(l -> l.computeIfPresent(table.translated(), (key, text) -> words.of(text)));
      if (!lines.isEmpty()) {
        rows(table, lines);
      }
    }
    return this;
  }

  /** What a new file in a language begins with in a table. */
  public static List<Map<String, String>> initial(
      PlanWorkbook workbook, PlanTable table, String language) {
    String name = workbook.model().name() + "/" + table.inputs().key() + "_" + language + ".csv";
    List<CSVRecord> own = read(INITIAL + name);
    return own.isEmpty() ? initial(workbook, table) : own.stream().map(CSVRecord::toMap).toList();
  }

  /** What a new file begins with in a table. */
  public static List<Map<String, String>> initial(PlanWorkbook workbook, PlanTable table) {
    String name = workbook.model().name() + "/" + table.inputs().key() + ".csv";
    return read(INITIAL + name).stream().map(CSVRecord::toMap).toList();
  }

  /** The lines of a table of the example by column; none where there is no file. */
  public List<Map<String, String>> lines(String table) {
    return new ExampleTables(drawing.workbook().model()).lines(table);
  }

  private static List<CSVRecord> read(String resource) {
    try (InputStream in = PlanFiller.class.getResourceAsStream(resource)) {
      if (in == null) {
        return List.of();
      }
      try (CSVParser parser =
          ReferenceTable.FORMAT.parse(new InputStreamReader(in, StandardCharsets.UTF_8))) {
        return parser.getRecords();
      }
    } catch (IOException e) {
      throw new UncheckedIOException(resource, e);
    }
  }

  /** Fills the first rows of a table; what stood there before goes. */
  public PlanFiller rows(PlanTable table, List<Map<String, String>> lines) {
    List<InputColumn> columns = table.inputs().columns();
    List<String> keys = columns.stream().map(InputColumn::key).toList();
    lines.stream()
        .flatMap(l -> l.keySet().stream())
        .filter(k -> !keys.contains(k))
        .findFirst()
        .ifPresent(PlanFiller::unknown);
    drawing.fill(
        table,
        lines.stream()
            .map(
                line ->
                    columns.stream().map(c -> value(c, line.getOrDefault(c.key(), ""))).toArray())
            .toArray(Object[][]::new));
    return this;
  }

  private static void unknown(String key) {
    throw new IllegalStateException("there is no cell to fill named " + key);
  }

  private void cells() {
    for (CSVRecord line : read(folder + "cells.csv")) {
      String key = line.get("cell");
      String text = line.get("value");
      if (!note(key, text) && !field(key, text)) {
        unknown(key);
      }
    }
  }

  private boolean note(String heading, String text) {
    for (PlanNotes notes : drawing.workbook().parts(PlanNotes.class).toList()) {
      for (FieldSpec cell : notes.cells()) {
        if (cell.heading().equals(heading)) {
          Object value = cell.format() == CellFormat.TEXT ? text : (Object) Double.valueOf(text);
          drawing.fill(drawing.layout().place(notes, cell), value);
          return true;
        }
      }
    }
    return false;
  }

  private boolean field(String key, String text) {
    for (PlanFields fields : drawing.workbook().parts(PlanFields.class).toList()) {
      for (InputColumn column : fields.columns()) {
        if (column.key().equals(key) || column.path().equals(key)) {
          Place place = drawing.layout().place(column);
          drawing.fill(place, value(column, text));
          return true;
        }
      }
    }
    return false;
  }

  private static Object value(InputColumn column, String text) {
    if (text.isEmpty()) {
      return "";
    }
    if (column.type() == LocalDate.class) {
      return (double) ChronoUnit.DAYS.between(DAY_ZERO, LocalDate.parse(text));
    }
    if (InputCells.of(column).format() == CellFormat.TIME) {
      return LocalTime.parse(text).toSecondOfDay() / SECONDS_A_DAY;
    }
    return column.type() == Double.class ? (Object) Double.valueOf(text) : text;
  }
}
