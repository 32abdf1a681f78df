package org.setpower.command.csv;

import java.io.IOException;
import java.io.StringReader;
import java.io.UncheckedIOException;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import org.setpower.base.Numbers;
import org.setpower.command.message.UserMessageException;

/**
 * Tables as CSV files. Written in UTF-8 with a mark at the start, so that spreadsheets know; a text
 * that a spreadsheet might run as a formula gets an apostrophe, which reading takes away again.
 */
final class CsvText {
  private static final char MARK = '\uFEFF';
  private static final String DANGEROUS = "=+-@\t\r";

  /**
   * A line.
   *
   * @param number where it stands in the file, from 1
   */
  record Line(long number, List<String> cells) {}

  private CsvText() {}

  static byte[] write(List<String> headings, List<Object[]> rows) {
    StringBuilder text = new StringBuilder().append(MARK);
    try {
      var printer = CSVFormat.DEFAULT.print(text);
      printer.printRecord(headings);
      for (Object[] row : rows) {
        List<String> cells = new ArrayList<>();
        for (Object cell : row) {
          cells.add(cell instanceof Double number ? plain(number) : harmless(cell.toString()));
        }
        printer.printRecord(cells);
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return text.toString().getBytes(StandardCharsets.UTF_8);
  }

  /** Three decimals get a fourth, so that reading does not take them for thousands. */
  private static String plain(double number) {
    if (number == Math.rint(number) && Math.abs(number) < 1e15) {
      return String.valueOf((long) number);
    }
    String text = String.valueOf(number);
    return Numbers.isAmbiguous(text) ? text + "0" : text;
  }

  private static String harmless(String text) {
    boolean dangerous = !text.isEmpty() && DANGEROUS.indexOf(text.charAt(0)) >= 0;
    return dangerous ? "'" + text : text;
  }

  /** The lines that are not blank; commas, semicolons or tabs stand between the cells. */
  static List<Line> read(byte[] bytes) {
    String text = decoded(bytes);
    String first = text.lines().findFirst().orElse("");
    char delimiter = ',';
    for (char candidate : new char[] {';', '\t'}) {
      if (count(first, candidate) > count(first, delimiter)) {
        delimiter = candidate;
      }
    }
    CSVFormat format = CSVFormat.DEFAULT.builder().setDelimiter(delimiter).setTrim(true).build();
    List<Line> lines = new ArrayList<>();
    try (CSVParser parser = new CSVParser(new StringReader(text), format)) {
      long before = 0;
      for (CSVRecord record : parser) {
        List<String> cells = record.stream().map(CsvText::plain).toList();
        if (cells.stream().anyMatch(c -> !c.isEmpty())) {
          lines.add(new Line(before + 1, cells));
        }
        before = parser.getCurrentLineNumber();
      }
    } catch (IOException | UncheckedIOException | IllegalStateException e) {
      throw new UserMessageException("The file is not proper CSV: {}", e.getMessage()).because(e);
    }
    return lines;
  }

  private static long count(String text, char what) {
    return text.chars().filter(c -> c == what).count();
  }

  private static String plain(String cell) {
    return cell.length() > 1 && cell.charAt(0) == '\'' && DANGEROUS.indexOf(cell.charAt(1)) >= 0
        ? cell.substring(1)
        : cell;
  }

  private static String decoded(byte[] bytes) {
    ByteBuffer buffer = ByteBuffer.wrap(bytes);
    try {
      String text = StandardCharsets.UTF_8.newDecoder().decode(buffer).toString();
      if (text.indexOf('\0') < 0) {
        return !text.isEmpty() && text.charAt(0) == MARK ? text.substring(1) : text;
      }
    } catch (CharacterCodingException e) {
      // told below
    }
    long line = 1;
    for (int i = 0; i < Math.min(buffer.position(), bytes.length); i++) {
      line += bytes[i] == '\n' ? 1 : 0;
    }
    throw new UserMessageException(
        "The file is not in UTF-8 (first seen in line {}). Save it again as CSV with the character"
            + " set UTF-8; nothing was changed.",
        Numbers.format(line));
  }
}
