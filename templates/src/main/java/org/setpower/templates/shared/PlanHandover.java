package org.setpower.templates.shared;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.setpower.templates.spec.CellFormat;
import org.setpower.templates.spec.ColumnSpec;
import org.setpower.templates.spec.Formula;
import org.setpower.templates.spec.TableSpec;

/**
 * What a plan hands on to a budget. The rows stand on the plan's result page and on the budget's
 * tab "From the plan", in this order, so that the columns "A day" and "Days" can be copied as
 * values from one to the other.
 */
public enum PlanHandover {
  HOUSE_ENERGY("energy from house and street", "kWh"),
  SET_ENERGY("energy from the generator", "kWh"),
  FUEL("fuel of the generator", "litres"),
  RUN_HOURS("generator runs", "hours"),
  OPERATOR("generator operator", "hours"),
  PACKS("packs to charge", "pieces"),
  CHARGING("energy to charge packs", "kWh"),
  CREW("crew, call to wrap", "hours"),
  MASS("mass of lights and packs", "kg");

  /** The heading of the tab, and of the column with the words of each row. */
  public static final String TITLE = "From the plan";

  /** The headings of the columns, from left to right. */
  public static final String MEASURE = "Measure";

  public static final String DAILY = "A day";
  public static final String DAYS = "Days";

  /** The names of both columns in both files. */
  public static final String DAILY_NAME = "Plan_A_day";

  public static final String DAYS_NAME = "Plan_Days";

  private final String words;
  private final String measure;

  PlanHandover(String words, String measure) {
    this.words = words;
    this.measure = measure;
  }

  /** What the row is called, in both files. */
  public String text() {
    return words;
  }

  /** What is counted; the same whatever units are chosen on Job. */
  public String measure() {
    return measure;
  }

  /** The measures of all rows, each once. */
  public static List<String> measures() {
    return Arrays.stream(values()).map(PlanHandover::measure).distinct().toList();
  }

  /**
   * A row of a plan.
   *
   * @param daily so much on each of the days; blank when there is none
   * @param days on so many days
   */
  public record Row(Formula daily, Formula days) {}

  /** The block of a plan's result page. */
  public static TableSpec block(String title, Map<PlanHandover, Row> rows) {
    Map<PlanHandover, Row> all = new EnumMap<>(rows);
    if (all.size() < values().length) {
      throw new IllegalArgumentException("every row is handed on, also an empty one");
    }
    ColumnSpec number = ColumnSpec.working("No.");
    number.formula(number.rowNumber());
    ColumnSpec what =
        ColumnSpec.result(TITLE, choose(number, all.keySet().stream().map(r -> r.words)));
    ColumnSpec measure =
        ColumnSpec.result(MEASURE, choose(number, all.keySet().stream().map(r -> r.measure)));
    ColumnSpec daily =
        ColumnSpec.result(DAILY, choose(number, all.values().stream().map(Row::daily)))
            .rangeName(DAILY_NAME)
            .format(CellFormat.ONE)
            .unit("units");
    ColumnSpec days =
        ColumnSpec.result(DAYS, choose(number, all.values().stream().map(Row::days)))
            .rangeName(DAYS_NAME)
            .format(CellFormat.ONE)
            .unit("days");
    ColumnSpec sum =
        ColumnSpec.result("In all", Formula.calc("{}*{}", daily, days))
            .format(CellFormat.ONE)
            .unit("units");
    return TableSpec.of(title, values().length)
        .columns(what.width(75), measure.width(30), daily.width(15), days.width(15), sum.width(30))
        .columns(number)
        .listing(null);
  }

  private static Formula choose(ColumnSpec number, Stream<?> parts) {
    List<Object> all = new ArrayList<>(List.of(number));
    parts.forEach(all::add);
    Formula chosen = Formula.calc("CHOOSE({}" + ";{}".repeat(all.size() - 1) + ")", all.toArray());
    return chosen::text; // a blank cell that one row needs leaves the others alone
  }
}
