package org.setpower.plan.common;

import java.time.LocalDate;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.setpower.base.TextEnum;
import org.setpower.plan.finding.CommonFinding;
import org.setpower.plan.finding.Finding;
import org.setpower.plan.finding.FindingKey;

/**
 * A column to fill, as templates, user guide, import and random tests need it.
 *
 * @param table key of its table
 * @param key stable key in the row of keys
 * @param heading name in the key language
 * @param unit unit of the number, empty without one
 * @param type {@code String}, {@code Double}, {@code LocalDate}, {@code LocalTime}, {@code Boolean}
 *     or an enum
 * @param min smallest number
 * @param max largest number
 * @param form how it is shown
 * @param words words of the list, empty without one
 * @param blank what a blank means, empty where it is a stop
 * @param help what to type
 * @param rowOf key of the table whose rows the number names, empty for any other
 */
public record InputColumn(
    String table,
    String key,
    String heading,
    String unit,
    Class<?> type,
    double min,
    double max,
    NumberForm form,
    List<String> words,
    String blank,
    String help,
    String rowOf) {
  /** Characters of a text cell; more is no name of anything and takes time. */
  public static final int LONGEST_TEXT = 255;

  private static final Pattern NUMBERED = Pattern.compile("(.+) (\\d+)");
  private static final LocalDate DAY_ZERO = LocalDate.of(1899, 12, 30);

  /** A date whose day cannot be taken for its month, and its form that is read everywhere. */
  private static final TypedDate EXAMPLE = new TypedDate(LocalDate.of(2026, 12, 31));

  private static final String ISO = EXAMPLE.date().toString();
  private static final double FIRST_DAY = 32_874; // 1 Jan 1990
  private static final double LAST_DAY = 109_574; // 31 Dec 2199
  private static final long MINUTES_A_DAY = 1440;
  private static final double PER_CENT = 100;

  /** The heading in a language; the number of a column of a list stays. */
  public String heading(Messages messages) {
    Matcher numbered = NUMBERED.matcher(heading);
    return numbered.matches() && key.endsWith(numbered.group(2))
        ? messages.text(numbered.group(1)) + " " + numbered.group(2)
        : messages.text(heading);
  }

  /** Whether a blank is a stop. */
  public boolean isRequired() {
    return blank.isEmpty();
  }

  /** Table and key, as traces name it. */
  public String path() {
    return table + "." + key;
  }

  @Override
  public String toString() {
    return path();
  }

  /** What changes the meaning of typed cells: path, type, unit, domain, words. */
  public String layout() {
    return String.join(
        "|", path(), type.getSimpleName(), unit, min + ".." + max, String.join(",", words));
  }

  /** What is typed, without blanks around it; null for a blank cell. */
  static Object trimmed(Object cell) {
    if (cell instanceof String text) {
      if (text.isEmpty()) {
        return null;
      }
      String stripped = text.replace('\u00a0', ' ').strip();
      return stripped.isEmpty() ? null : stripped;
    }
    return cell;
  }

  /**
   * The value of a cell.
   *
   * @param cell not blank
   * @param findings gets what is wrong with the cell
   * @return null when the cell cannot be read
   */
  Object read(Object cell, List<Finding> findings) {
    Object typed = cell instanceof Number n ? (Object) n.doubleValue() : cell;
    boolean number = typed instanceof Double d && Double.isFinite(d);
    if (!number && !(typed instanceof String) || "#".equals(typed)) {
      return refuse(findings, CommonFinding.UNREADABLE_CELL);
    }
    if (typed instanceof String text && text.length() > LONGEST_TEXT) {
      return refuse(findings, CommonFinding.TOO_LONG, LONGEST_TEXT);
    }
    if (type == String.class) {
      return number ? plain((Double) typed) : typed;
    }
    if (type == Double.class) {
      return number
          ? inRange((Double) typed, findings)
          : refuse(findings, CommonFinding.NOT_A_NUMBER, TextEnum.shortened((String) typed));
    }
    if (type == LocalDate.class) {
      return date(typed, findings);
    }
    if (type == LocalTime.class) {
      return time(typed, findings);
    }
    return word(typed, findings);
  }

  /**
   * A typed cell in the one form in which cells of two files are compared: String, Double,
   * LocalDate; as it is typed where it cannot be read, null where it is blank.
   */
  public Object compared(Object cell) {
    Object typed = trimmed(cell);
    Object value = typed == null ? null : read(typed, new ArrayList<>());
    if (value instanceof TextEnum word) {
      return word.word();
    }
    if (value instanceof Boolean yes) {
      return yes ? "yes" : "no";
    }
    boolean isKept = value instanceof Double || value instanceof LocalDate;
    return isKept || value instanceof String ? value : typed;
  }

  private Double inRange(Double value, List<Finding> findings) {
    if (value < min || value > max) {
      boolean isShare = form == NumberForm.SHARE || form == NumberForm.FINE_SHARE;
      double shown = isShare ? PER_CENT : 1;
      String suffix = isShare ? " %" : unit.isEmpty() ? "" : " " + unit;
      refuse(findings, CommonFinding.OUT_OF_RANGE, value * shown, min * shown, max * shown, suffix);
      return null;
    }
    return value;
  }

  /** Only a cell that the spreadsheet knows as a date, or ISO 8601: other texts are guesses. */
  private LocalDate date(Object typed, List<Finding> findings) {
    if (typed instanceof Double serial && serial >= FIRST_DAY && serial < LAST_DAY + 1) {
      return DAY_ZERO.plusDays((long) Math.floor(serial));
    }
    if (typed instanceof String text && text.matches("\\d{4}-\\d{2}-\\d{2}")) {
      try {
        double serial = serial(LocalDate.parse(text));
        if (serial >= FIRST_DAY && serial <= LAST_DAY) {
          return LocalDate.parse(text);
        }
      } catch (java.time.format.DateTimeParseException e) {
        // A day that the calendar does not have is refused below.
      }
    }
    refuse(findings, CommonFinding.NOT_A_DATE, TextEnum.shortened(shown(typed)), EXAMPLE, ISO);
    return null;
  }

  /** A part of a day, as the spreadsheet holds times, or a text such as 07:00; 24:00 is 00:00. */
  private LocalTime time(Object typed, List<Finding> findings) {
    if (typed instanceof Double share && share >= 0 && share <= 1) {
      return LocalTime.ofSecondOfDay(Math.round(share * MINUTES_A_DAY) % MINUTES_A_DAY * 60);
    }
    if (typed instanceof String text && text.matches("([01]?\\d|2[0-3]):[0-5]\\d")) {
      return LocalTime.parse(text.length() == 4 ? "0" + text : text);
    }
    boolean isLate = typed instanceof Double share && share > 1 && share < 2;
    refuse(
        findings,
        CommonFinding.NOT_A_TIME,
        TextEnum.shortened(isLate ? hours((Double) typed) : shown(typed)));
    return null;
  }

  /** A time past midnight as it is typed: 27:00. */
  private static String hours(double share) {
    long minutes = Math.round(share * MINUTES_A_DAY);
    return "%d:%02d".formatted(minutes / 60, minutes % 60);
  }

  private Object word(Object typed, List<Finding> findings) {
    String text = shown(typed).toLowerCase(Locale.ROOT);
    if (type == Boolean.class) {
      if ("yes".equals(text) || "no".equals(text)) {
        return "yes".equals(text);
      }
    } else {
      for (Object constant : type.getEnumConstants()) {
        TextEnum word = (TextEnum) constant;
        if (word.word().toLowerCase(Locale.ROOT).equals(text)
            || word.alsoWritten().stream().anyMatch(w -> w.toLowerCase(Locale.ROOT).equals(text))) {
          return constant;
        }
      }
    }
    return refuse(
        findings,
        CommonFinding.UNKNOWN_WORD,
        TextEnum.shortened(shown(typed)),
        String.join(", ", words));
  }

  private Object refuse(List<Finding> findings, FindingKey key, Object... arguments) {
    Object[] all = new Object[arguments.length + 1];
    all[0] = this;
    System.arraycopy(arguments, 0, all, 1, arguments.length);
    findings.add(Finding.of(key, all));
    return null;
  }

  /** The part of a day, as cells hold a time. */
  public static double share(LocalTime time) {
    return time.toSecondOfDay() / (60.0 * MINUTES_A_DAY);
  }

  /** The day number of a date, as cells hold it. */
  public static double serial(LocalDate date) {
    return date.toEpochDay() - DAY_ZERO.toEpochDay();
  }

  private static String shown(Object typed) {
    return typed instanceof Double d ? plain(d) : typed.toString();
  }

  /** A number typed where text belongs: a serial of digits only keeps them all. */
  private static String plain(double number) {
    return number == Math.rint(number) && Math.abs(number) < 1e15
        ? Long.toString((long) number)
        : Double.toString(number);
  }

  /** A date as it is typed: day, month and year in the digits and the order of a language. */
  record TypedDate(LocalDate date) {}
}
