package org.setpower.plan.transfer;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * What a file remembers of a table of another file, as rows of texts and numbers that a sheet
 * keeps.
 *
 * @param way from which plan into which
 * @param file name of the source, without its folder
 * @param revision of the source
 * @param on day of bringing in, as text; empty where it is not known
 * @param target into which table
 * @param rows as they were then
 */
public record BroughtTable(
    TransferWay way,
    String file,
    String revision,
    String on,
    TransferTarget target,
    List<BroughtRow> rows) {
  /** Cells of a row that a sheet keeps. */
  public static final int WIDTH = 9;

  private static final char NUMBER = '#';
  private static final char DATE = '@';
  private static final char TEXT = '=';

  public BroughtTable {
    rows = List.copyOf(rows);
  }

  /** Whether it is the same table of the same file. */
  public boolean isOf(TransferWay otherWay, String otherFile, TransferTarget otherTarget) {
    return way == otherWay && file.equals(otherFile) && target == otherTarget;
  }

  /** All tables as a sheet keeps them. */
  public static List<Object[]> written(List<BroughtTable> tables) {
    List<Object[]> written = new ArrayList<>();
    for (BroughtTable table : tables) {
      for (BroughtRow row : table.rows) {
        written.add(
            new Object[] {
              table.way.name(),
              table.file,
              table.revision,
              table.on,
              table.target.name(),
              (double) row.row(),
              row.key(),
              row.group(),
              encoded(row.cells())
            });
      }
    }
    return written;
  }

  /** Reads what a sheet keeps; a row that is none of ours is passed over. */
  public static List<BroughtTable> read(Object[][] cells) {
    Map<List<String>, List<BroughtRow>> tables = new LinkedHashMap<>();
    for (Object[] row : cells) {
      if (row.length >= WIDTH && isRow(row)) {
        tables
            .computeIfAbsent(
                List.of(text(row[0]), text(row[1]), text(row[2]), text(row[3]), text(row[4])),
                k -> new ArrayList<>())
            .add(
                new BroughtRow(
                    text(row[6]), text(row[7]), ((Double) row[5]).intValue(), decoded(row[8])));
      }
    }
    List<BroughtTable> read = new ArrayList<>();
    tables.forEach(
        (head, rows) ->
            read.add(
                new BroughtTable(
                    TransferWay.valueOf(head.get(0)),
                    head.get(1),
                    head.get(2),
                    head.get(3),
                    TransferTarget.valueOf(head.get(4)),
                    rows)));
    return read;
  }

  private static boolean isRow(Object[] row) {
    try {
      TransferWay.valueOf(text(row[0]));
      TransferTarget.valueOf(text(row[4]));
    } catch (IllegalArgumentException e) {
      return false;
    }
    return row[5] instanceof Double;
  }

  private static String text(Object cell) {
    if (cell instanceof Double number && number == Math.rint(number)) {
      return Long.toString(number.longValue());
    }
    return cell == null ? "" : String.valueOf(cell);
  }

  /** One cell a line, as {@code qty#4.0}, {@code out@2027-02-01}, {@code item=tube}. */
  private static String encoded(Map<String, Object> cells) {
    List<String> lines = new ArrayList<>();
    cells.forEach(
        (column, value) -> {
          char kind = TEXT;
          if (value instanceof Double) {
            kind = NUMBER;
          } else if (value instanceof LocalDate) {
            kind = DATE;
          }
          lines.add(
              column + kind + String.valueOf(value).replace("\\", "\\\\").replace("\n", "\\n"));
        });
    return String.join("\n", lines);
  }

  private static Map<String, Object> decoded(Object cell) {
    Map<String, Object> cells = new LinkedHashMap<>();
    for (String line : text(cell).split("\n")) {
      int kind = 0;
      while (kind < line.length() && Character.isLetterOrDigit(line.charAt(kind))) {
        kind++;
      }
      if (kind > 0 && kind < line.length()) {
        value(line.charAt(kind), line.substring(kind + 1), line.substring(0, kind), cells);
      }
    }
    return cells;
  }

  private static void value(char kind, String text, String column, Map<String, Object> cells) {
    try {
      if (kind == NUMBER) {
        cells.put(column, Double.valueOf(text));
      } else if (kind == DATE) {
        cells.put(column, LocalDate.parse(text));
      } else {
        cells.put(column, unescaped(text));
      }
    } catch (NumberFormatException | java.time.format.DateTimeParseException e) {
      // somebody has typed into the sheet: the cell counts as not brought in
    }
  }

  private static String unescaped(String text) {
    StringBuilder plain = new StringBuilder();
    for (int i = 0; i < text.length(); i++) {
      boolean isEscape = text.charAt(i) == '\\' && i + 1 < text.length();
      if (isEscape) {
        i++;
        plain.append(text.charAt(i) == 'n' ? '\n' : text.charAt(i));
      } else {
        plain.append(text.charAt(i));
      }
    }
    return plain.toString();
  }
}
