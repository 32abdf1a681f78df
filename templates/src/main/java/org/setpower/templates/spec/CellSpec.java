package org.setpower.templates.spec;

import java.util.List;
import java.util.stream.Stream;
import org.setpower.text.MessageCatalog;

/**
 * What a {@link FieldSpec} (one cell) and a {@link ColumnSpec} (a cell in every row) have in
 * common: a heading with its unit, a format, and either what may be typed into it or how it is
 * worked out.
 *
 * @param <T> the kind itself
 */
public abstract class CellSpec<T extends CellSpec<T>> implements Formula {
  private static final double FIRST_DAY = 36_526; // 2000-01-01
  private static final int CHOSEN_UNIT = 6; // letters of a unit that follows a choice
  private static final double LAST_DAY = 73_050; // 2099-12-31

  private final String heading;
  private final boolean input;
  private Formula formula;
  private Formula unit;
  private CellFormat format = CellFormat.TEXT;
  private String help = "";
  private double least = Double.NEGATIVE_INFINITY;
  private double most = Double.POSITIVE_INFINITY;
  private List<String> words = List.of();
  private ColumnSpec wordsFrom;
  private boolean onlyListed = true;
  private boolean needed;
  private boolean mayBeBlank;
  private String failure;
  private boolean waits;
  private String rangeName = "";

  CellSpec(String heading, boolean input) {
    this.heading = heading;
    this.input = input;
  }

  abstract T self();

  /** How a result is worked out. */
  public T formula(Formula how) {
    if (input) {
      throw new IllegalStateException(heading + " is a cell to fill");
    }
    formula = how;
    return self();
  }

  /** Gives another item the look of this one. */
  <U extends CellSpec<U>> U copy(U other) {
    CellSpec<U> to = other;
    to.unit = unit;
    to.format = format;
    return other;
  }

  /** The unit that stands in brackets in the heading. */
  public T unit(String text) {
    return unit(Formula.of(text));
  }

  /** A unit that follows a choice of the user. */
  public T unit(Formula text) {
    unit = text;
    return self();
  }

  /** How values look. */
  public T format(CellFormat how) {
    format = how;
    if (how.isDate()) { // a bare number that is typed for a date lies outside
      least = FIRST_DAY;
      most = LAST_DAY;
    } else if (how == CellFormat.TIME) {
      least = 0;
      most = 1;
    }
    return self();
  }

  /** A number within limits. */
  public T number(CellFormat how, double from, double to) {
    least = from;
    most = to;
    return format(how);
  }

  /** A share from 0 to 1, typed as percent. */
  public T share() {
    return share(0, 1);
  }

  /** A share within limits, typed as percent. */
  public T share(double from, double to) {
    return number(CellFormat.SHARE, from, to);
  }

  /** One of these words. */
  public T options(String... listed) {
    words = List.of(listed);
    return self();
  }

  /** One of the entries of a column. */
  public T options(ColumnSpec entries) {
    wordsFrom = entries;
    return self();
  }

  /** Something else than the entries of the list may be typed too. */
  public T orOther() {
    onlyListed = false;
    return self();
  }

  /** The input help: what it is and where a stranger finds the figure. */
  public T help(String sentence) {
    help = sentence;
    return self();
  }

  /** Must be filled before the row is worked out. */
  public T required() {
    needed = true;
    return self();
  }

  /** A blank result is no fault: nothing is said about it. */
  public T mayBeBlank() {
    mayBeBlank = true;
    return self();
  }

  /**
   * What is said when the result cannot be worked out; calls of our functions say it themselves.
   */
  public T errorMessage(String sentence) {
    failure = sentence;
    return self();
  }

  /**
   * What is said when the result cannot be worked out because something before it is not settled: a
   * look, so that the list of stops begins with the cause.
   */
  public T pendingMessage(String sentence) {
    waits = true;
    return errorMessage(sentence);
  }

  boolean waits() {
    return waits;
  }

  /** The name of its cells in the document, for what people refer to. */
  public T rangeName(String name) {
    rangeName = name;
    return self();
  }

  /** The heading without its unit; also the name of the column in files that fill it. */
  public String heading() {
    return heading;
  }

  /** How it is worked out; {@code null} for a cell to fill. */
  public Formula formula() {
    return formula;
  }

  public boolean isInput() {
    return input;
  }

  public CellFormat format() {
    return format;
  }

  public String help() {
    return help;
  }

  /** Whether the row waits for it. */
  public boolean isRequired() {
    return needed;
  }

  boolean saysNothingWhenBlank() {
    return mayBeBlank;
  }

  String failure() {
    return failure;
  }

  public String rangeName() {
    return rangeName;
  }

  public Formula unit() {
    return unit;
  }

  public List<String> options() {
    return words;
  }

  public ColumnSpec wordsFrom() {
    return wordsFrom;
  }

  public boolean onlyListed() {
    return onlyListed;
  }

  public double least() {
    return least;
  }

  public double most() {
    return most;
  }

  public boolean isList() {
    return !words.isEmpty() || wordsFrom != null;
  }

  /** The heading with its unit, as text or as a formula. */
  public String headingText(CellContext place) {
    String words = place.words().of(heading);
    if (format == CellFormat.SHARE && unit == null) {
      return words + " (%)";
    }
    if (unit == null) {
      return words;
    }
    if (unit instanceof Formula.Literal literal) {
      return words + " (" + place.words().of(literal.text().replace("\"", "")) + ")";
    }
    return "=\"" + words.replace("\"", "\"\"") + " (\"&" + unit.text(place) + "&\")\"";
  }

  /** About how many letters the heading has. */
  public int headingLength(CellContext place) {
    boolean fixed = unit == null || unit instanceof Formula.Literal;
    return fixed ? headingText(place).length() : place.words().of(heading).length() + CHOSEN_UNIT;
  }

  /** The sentence that is shown when something wrong is typed. */
  public String error(MessageCatalog language) {
    String name = language.of(heading);
    if (!words.isEmpty() && onlyListed) {
      return language.say("Pick {} from the list: {}.", name, String.join(", ", words));
    }
    return switch (format) {
      case TEXT -> language.say(isList() ? "Pick {} from the list." : "{} is a text.", name);
      case DATE, DAY -> language.say("{} is a date, such as 2027-02-01.", name);
      case TIME -> language.say("{} is a time of day, such as 17:30.", name);
      case SHARE ->
          language.say(
              "{} is a share of the whole: write it with its % sign, from {} % to {} % (3 % or"
                  + " 0.03, not 3).",
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

  @Override
  public Stream<CellSpec<?>> needs() {
    return Stream.of(this);
  }

  @Override
  public String toString() {
    return heading;
  }
}
