package org.setpower.plan.batteryday;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.setpower.plan.batteryday.BatteryDayInputs.Position;
import org.setpower.plan.batteryday.word.BatteryUse;
import org.setpower.plan.batteryday.word.ScheduleEntry;
import org.setpower.plan.common.Phrase;

/** Words and rows of the papers. */
final class BatteryDayPapers {
  static final String SHELF = "shelf";
  static final String QUARANTINE = "quarantine";
  static final String AWAY = "not there any more";

  static final String NOT_CHARGED = "not charged";

  /** The charger has no power yet. */
  static final String LATER = "shelf; {0} from {1}";

  /** A battery that is on its charger already. */
  static final String SINCE = "on since {0}";

  /** Hours from and to. */
  static final String HOURS = "{0} to {1}";

  static final String ALSO = "{0}; {1}";

  private static final String AT_CALL = "at call";
  private static final String DARK_UNTIL = "no power until {0}";
  private static final String ALONE = "{0}, one battery until {1}";
  private static final String TAKEN = "from {1}";
  private static final String DAY = "{0}, call {1}, wrap {2}";
  private static final String DAY_AT = "{0}, {3}, call {1}, wrap {2}";
  private static final String AGAIN = "{0}, planned again at {1}";
  private static final String BOTH = "{0}, {1}";

  /** A box to tick on paper. */
  private static final String BOX = "☐";

  private BatteryDayPapers() {}

  /** The patterns of all phrases. */
  static List<String> phrases() {
    List<String> all =
        new ArrayList<>(
            List.of(
                "{0}",
                SHELF,
                AWAY,
                QUARANTINE,
                NOT_CHARGED,
                LATER,
                SINCE,
                HOURS,
                ALSO,
                AT_CALL,
                DARK_UNTIL,
                ALONE,
                TAKEN,
                DAY,
                DAY_AT,
                AGAIN,
                BOTH));
    for (ScheduleEntry entry : ScheduleEntry.values()) {
      all.add(entry.word());
    }
    for (BatteryUse use : BatteryUse.values()) {
      all.add(use.word());
    }
    all.addAll(List.of("yes", "no")); // a battery is ready, a plate carries it
    return all;
  }

  /** A time of the clock; after midnight with the date of the next morning. */
  static Phrase time(double hour, DayFrame day) {
    long days = (long) Math.floor((hour + 1e-6) / 24);
    return days == 0
        ? Phrase.of("{0}", DaySettings.time(hour))
        : Phrase.of(BOTH, DaySettings.time(hour), day.date().plusDays(days));
  }

  /** The day shown, in one line for the head of each page. */
  static Phrase heading(DayFrame day, double now) {
    Phrase heading = heading(day);
    return Double.isInfinite(now) ? heading : Phrase.of(AGAIN, heading, DaySettings.time(now));
  }

  private static Phrase heading(DayFrame day) {
    return Phrase.of(
        day.location().isEmpty() ? DAY : DAY_AT,
        day.date(),
        DaySettings.time(day.call()),
        DaySettings.time(day.wrap()),
        day.location());
  }

  /** Places with commas between them, one where all are the same; null for none. */
  static Phrase joined(List<Phrase> places) {
    Phrase all = null;
    boolean same = places.stream().distinct().count() == 1;
    for (Phrase phrase : same ? places.subList(0, 1) : places) {
      all = all == null ? phrase : Phrase.of(BOTH, all, phrase);
    }
    return all;
  }

  /**
   * The rows of the schedule for paper, from the hour of planning again on: what was before has its
   * own paper. Those without a time come last.
   */
  static List<BatteryDayResults.CardRow> card(
      List<BatteryDayResults.ScheduleRow> schedule, DayBuild build, BatteryDayPlan plan) {
    DayFrame day = plan.calendar().shown();
    double from = Double.isInfinite(plan.now()) ? Double.NEGATIVE_INFINITY : plan.now();
    Map<String, String> departments = new HashMap<>();
    Map<String, String> types = new HashMap<>();
    build
        .positions()
        .all()
        .forEach(
            p -> {
              Position position = p.item().row().value();
              departments.put(position.position(), position.department());
              types.put(position.position(), position.type());
            });
    List<BatteryDayResults.CardRow> rows = new ArrayList<>();
    List<BatteryDayResults.CardRow> notPlanned = new ArrayList<>();
    for (BatteryDayResults.ScheduleRow row : schedule) {
      if (row.what() == ScheduleEntry.END && row.off().isEmpty()) {
        continue; // it was dark until then, and the paper has said so
      }
      boolean planned = row.what() != ScheduleEntry.NOT_PLANNED;
      if (planned && row.hour() < from - 1e-9) {
        continue;
      }
      boolean nothingToDo =
          row.what() == ScheduleEntry.FOUND || row.on().isEmpty() && row.off().isEmpty();
      (planned ? rows : notPlanned)
          .add(
              new BatteryDayResults.CardRow(
                  planned ? row.at() : null,
                  departments.get(row.position()),
                  row.position(),
                  row.piece(),
                  types.get(row.position()),
                  what(row, day),
                  row.on(),
                  row.off(),
                  row.to(),
                  nothingToDo ? "" : BOX));
    }
    // the crew must not take them for planned
    rows.addAll(notPlanned);
    return rows;
  }

  private static Phrase what(BatteryDayResults.ScheduleRow row, DayFrame day) {
    boolean atCall = row.what() == ScheduleEntry.START && row.hour() <= day.call() + 1e-9;
    Phrase what = Phrase.of(atCall ? AT_CALL : row.what().word());
    if (row.what() == ScheduleEntry.DARK && row.until() != null) {
      return Phrase.of(DARK_UNTIL, row.until());
    }
    if (!row.taken().isEmpty()) {
      what = Phrase.of(TAKEN, what, row.taken());
    }
    return row.until() == null ? what : Phrase.of(ALONE, what, row.until());
  }
}
