package org.setpower.command.bringin;

import static org.setpower.command.message.CommandMessages.say;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.setpower.base.Numbers;
import org.setpower.command.message.CommandMessages;
import org.setpower.plan.common.InputColumn;
import org.setpower.plan.common.NumberForm;
import org.setpower.plan.transfer.TransferChange;
import org.setpower.text.DateText;

/**
 * A difference as a user reads it.
 *
 * @param sentence what differs, and what is written
 */
record Difference(TransferChange change, String sentence) {
  private static final double PER_CENT = 100;

  /**
   * The sentence of a change.
   *
   * @param cells of the row in the source
   */
  static Difference of(TransferChange change, TargetTable table, Map<String, Object> cells) {
    return new Difference(change, sentence(change, table, cells));
  }

  private static String sentence(
      TransferChange change, TargetTable table, Map<String, Object> cells) {
    String name = change.name();
    return switch (change.kind()) {
      case ADDED -> say("New: {}. {}", name, cells(table, cells));
      case UPDATED -> say("Changed there: {}, row {}. {}", name, change.row(), both(change, table));
      case CONFLICT -> say("Differs here: {}, row {}. {}", name, change.row(), both(change, table));
      case STRICTER ->
          say(
              "Worse there, is written in any case: {}, row {}. {}",
              name,
              change.row(),
              both(change, table));
      case GONE ->
          say(
              "Not there any more: {}, row {} of {}. It stays; check it.",
              name,
              change.row(),
              table.heading());
      case UNKNOWN -> say("Not on {}: {}. {}", table.knownHeading(), name, cells(table, cells));
      case LEFT_OUT -> say("Removed here or left out before: {}. {}", name, cells(table, cells));
    };
  }

  private static String cells(TargetTable table, Map<String, Object> cells) {
    List<String> shown = new ArrayList<>();
    cells.forEach(
        (key, value) -> {
          if (!key.equals(table.nameColumn())) {
            InputColumn column = table.column(key);
            shown.add(column.heading(TargetTable.words()) + ": " + shown(column, value));
          }
        });
    return String.join(" · ", shown);
  }

  private static String both(TransferChange change, TargetTable table) {
    InputColumn column = table.column(change.column());
    return say(
        "{}: {} here, {} there.",
        column.heading(TargetTable.words()),
        shown(column, change.here()),
        shown(column, change.there()));
  }

  private static String shown(InputColumn column, Object value) {
    if (value == null) {
      return say("blank");
    }
    if (value instanceof LocalDate date) {
      return DateText.of(date, locale());
    }
    if (value instanceof Double number) {
      boolean isShare = column.form() == NumberForm.SHARE || column.form() == NumberForm.FINE_SHARE;
      return isShare ? Numbers.format(number * PER_CENT) + " %" : Numbers.format(number);
    }
    return String.valueOf(value);
  }

  private static Locale locale() {
    return Locale.forLanguageTag(CommandMessages.language());
  }
}
