package org.setpower.base;

import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVRecord;

/**
 * A reference table: a CSV resource beside the class that reads it. Every row names its source and
 * its basis (published, memory, trade, or own for a bound that we set ourselves). Lines that start
 * with # are remarks.
 */
public final class ReferenceTable {
  /** The format of the tables: a heading line, commas, remarks after #. */
  public static final CSVFormat FORMAT =
      CSVFormat.DEFAULT
          .builder()
          .setHeader()
          .setSkipHeaderRecord(true)
          .setCommentMarker('#')
          .setIgnoreEmptyLines(true)
          .setTrim(true)
          .build();

  private ReferenceTable() {}

  /** All rows of the resource, in order. */
  public static List<Row> read(Class<?> beside, String resource) {
    try (InputStream in = beside.getResourceAsStream(resource)) {
      if (in == null) {
        throw new IllegalStateException("no table " + resource + " beside " + beside.getName());
      }
      return rows(resource, in);
    } catch (IOException e) {
      throw new UncheckedIOException(resource, e);
    }
  }

  private static List<Row> rows(String resource, InputStream in) throws IOException {
    List<Row> rows = new ArrayList<>();
    for (CSVRecord record : FORMAT.parse(new InputStreamReader(in, StandardCharsets.UTF_8))) {
      rows.add(new Row(resource, record));
    }
    return List.copyOf(rows);
  }

  /** One row of a table. */
  public static final class Row {
    private final String resource;
    private final CSVRecord cells;

    Row(String resource, CSVRecord cells) {
      this.resource = resource;
      this.cells = cells;
    }

    /** The text of a column; empty when the cell is. */
    public String text(String column) {
      return cells.get(column);
    }

    /** Whether the cell is empty. */
    public boolean blank(String column) {
      return text(column).isEmpty();
    }

    /** The number in a column. */
    public double number(String column) {
      try {
        return Double.parseDouble(text(column));
      } catch (NumberFormatException e) {
        throw new IllegalStateException(
            resource + ", record " + cells.getRecordNumber() + ": no number in " + column, e);
      }
    }

    /** Where the figure comes from. */
    public String source() {
      return text("source");
    }

    /** "published", "memory", "trade" or "own". */
    public String basis() {
      return text("basis");
    }
  }
}
