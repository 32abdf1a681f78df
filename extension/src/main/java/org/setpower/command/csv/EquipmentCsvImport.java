package org.setpower.command.csv;

import static org.setpower.command.message.CommandMessages.plural;
import static org.setpower.command.message.CommandMessages.say;

import com.sun.star.uno.Exception;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.StringJoiner;
import org.setpower.command.message.UserMessageException;

/** What a CSV file holds for an equipment list: valid rows, and what is wrong with the others. */
final class EquipmentCsvImport {
  private static final int MOST_COMPLAINTS = 100;

  private final EquipmentTable table;
  private final CsvHeadings meanings;
  private final List<Object[]> rows = new ArrayList<>();
  private final List<String> complaints = new ArrayList<>();
  private int[] places;

  private EquipmentCsvImport(EquipmentTable table, CsvHeadings meanings) {
    this.table = table;
    this.meanings = meanings;
  }

  /** Finds the list by the headings in the first line. */
  static EquipmentCsvImport of(
      List<CsvText.Line> lines, List<EquipmentTable> tables, CsvHeadings meanings)
      throws Exception {
    if (lines.isEmpty()) {
      throw new UserMessageException("The file is empty.");
    }
    List<String> headings = lines.get(0).cells();
    EquipmentTable best = null;
    long most = 0;
    for (EquipmentTable table : tables) {
      long known = headings.stream().filter(h -> place(table, h, meanings) >= 0).count();
      if (known > most && headings.stream().anyMatch(h -> place(table, h, meanings) == 0)) {
        best = table;
        most = known;
      }
    }
    if (best == null) {
      StringJoiner firsts = new StringJoiner(say("” or “"), say("“"), say("”"));
      tables.forEach(t -> firsts.add(t.headings().get(0)));
      throw new UserMessageException(
          "The first line must hold the headings, one of them {}.", firsts);
    }
    EquipmentCsvImport reading = new EquipmentCsvImport(best, meanings);
    reading.headings(headings);
    lines.subList(1, lines.size()).forEach(reading::line);
    return reading;
  }

  private static int place(EquipmentTable table, String heading, CsvHeadings meanings) {
    for (int i = 0; i < table.headings().size(); i++) {
      if (meanings.sameColumn(table.headings().get(i), heading)) {
        return i;
      }
    }
    return -1;
  }

  private void headings(List<String> headings) {
    places = new int[headings.size()];
    for (int i = 0; i < places.length; i++) {
      String heading = headings.get(i);
      places[i] = place(table, heading, meanings);
      if (places[i] < 0) {
        if (!heading.isEmpty()) {
          complaints.add(say("The column “{}” is not known here and was left out.", heading));
        }
        continue;
      }
      String here = table.headings().get(places[i]);
      if (!meanings.sameUnit(heading, here)) {
        throw new UserMessageException(
            "The file has “{}”, this sheet “{}”: choose the same units on Job, or convert the file."
                + " Nothing was changed.",
            heading,
            here);
      }
    }
  }

  private void line(CsvText.Line line) {
    Object[] row = new Object[table.headings().size()];
    Arrays.fill(row, "");
    for (int i = 0; i < places.length && i < line.cells().size(); i++) {
      if (places[i] >= 0) {
        try {
          row[places[i]] = table.rule(places[i]).value(line.cells().get(i));
        } catch (UserMessageException wrong) {
          complain(line, table.headings().get(places[i]) + ": " + wrong.getMessage());
          return;
        }
      }
    }
    if ("".equals(row[0])) {
      complain(line, say("{} is blank", table.headings().get(0)));
    } else if (rows.size() == table.room()) {
      complain(line, say("the list has room for {} rows only", table.room()));
    } else {
      rows.add(row);
    }
  }

  private void complain(CsvText.Line line, String what) {
    complaints.add(say("Line {}, {}. The line was left out.", line.number(), what));
  }

  /** How it went, with a line for everything that is wrong. */
  String report() {
    String good = plural("{} row is good", "{} rows are good", rows.size());
    StringBuilder text = new StringBuilder(table.title()).append(": ").append(good);
    text.append(complaints.isEmpty() ? say(", nothing is wrong.") : ".");
    complaints.stream().limit(MOST_COMPLAINTS).forEach(c -> text.append('\n').append(c));
    if (complaints.size() > MOST_COMPLAINTS) {
      text.append('\n').append(say("… and {} more.", complaints.size() - MOST_COMPLAINTS));
    }
    return text.toString();
  }

  boolean isUseful() {
    return !rows.isEmpty();
  }

  void write() throws Exception {
    table.replace(rows);
  }
}
