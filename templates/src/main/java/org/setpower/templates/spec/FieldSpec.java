package org.setpower.templates.spec;

import java.util.List;
import org.setpower.text.MessageCatalog;

/** What is typed into a cell: its heading, its format, limits or list, its help. */
public final class FieldSpec {
  private static final double FIRST_DAY = 36_526; // 2000-01-01
  private static final double LAST_DAY = 73_050; // 2099-12-31

  private final String heading;
  private CellFormat format = CellFormat.TEXT;
  private String help = "";
  private double least = Double.NEGATIVE_INFINITY;
  private double most = Double.POSITIVE_INFINITY;
  private List<String> words = List.of();

  private FieldSpec(String heading) {
    this.heading = heading;
  }

  /** A cell to fill. */
  public static FieldSpec input(String heading) {
    return new FieldSpec(heading);
  }

  /** How values look. */
  public FieldSpec format(CellFormat how) {
    format = how;
    if (how.isDate()) { // a bare number that is typed for a date lies outside
      least = FIRST_DAY;
      most = LAST_DAY;
    } else if (how == CellFormat.TIME) {
      least = 0;
      most = 1;
    }
    return this;
  }

  /** A number within limits. */
  public FieldSpec number(CellFormat how, double from, double to) {
    least = from;
    most = to;
    return format(how);
  }

  /** One of these words. */
  public FieldSpec options(String... listed) {
    words = List.of(listed);
    return this;
  }

  /** The input help: what it is and where a stranger finds the figure. */
  public FieldSpec help(String sentence) {
    help = sentence;
    return this;
  }

  public String heading() {
    return heading;
  }

  public CellFormat format() {
    return format;
  }

  public String help() {
    return help;
  }

  public List<String> options() {
    return words;
  }

  public double least() {
    return least;
  }

  public double most() {
    return most;
  }

  /** The sentence that is shown when something wrong is typed. */
  public String error(MessageCatalog language) {
    String name = language.of(heading);
    if (!words.isEmpty()) {
      return language.say("Pick {} from the list: {}.", name, String.join(", ", words));
    }
    return switch (format) {
      case TEXT -> language.say("{} is a text.", name);
      case DATE, DAY -> language.say("{} is a date, such as 2027-02-01.", name);
      case TIME -> language.say("{} is a time of day, such as 17:30.", name);
      case SHARE, FINE_SHARE ->
          language.say(
              "{} is a share of the whole: write it with its % sign, from {} % to {} % (3 %,"
                  + " not 0.03).",
              name, bound(100 * least, language), bound(100 * most, language));
      case COUNT ->
          language.say(
              within(
                  "{} is a whole number from {} to {}.",
                  "{} is a whole number of {} or more.",
                  "{} is a whole number."),
              name,
              bound(least, language),
              bound(most, language));
      default ->
          language.say(
              within(
                  "{} is a number from {} to {}, typed without its unit.",
                  "{} is a number of {} or more, typed without its unit.",
                  "{} is a number, typed without its unit."),
              name,
              bound(least, language),
              bound(most, language));
    };
  }

  private String within(String both, String from, String free) {
    if (Double.isInfinite(least)) {
      return free;
    }
    return Double.isInfinite(most) ? from : both;
  }

  private static String bound(double value, MessageCatalog language) {
    double shown = Math.round(value * 1e9) / 1e9; // 110 %, not 110.00000000000001 %
    String plain = shown == Math.rint(shown) ? String.valueOf((long) shown) : String.valueOf(shown);
    return language.isEnglish() ? plain : plain.replace('.', ',');
  }
}
