package org.setpower.plan.lighting.battery;

import java.time.LocalDate;
import java.time.LocalTime;
import java.util.List;
import org.setpower.plan.batteryday.BatteryDayResults;
import org.setpower.plan.common.Phrase;
import org.setpower.plan.common.Result;
import org.setpower.plan.common.ResultTable;
import org.setpower.plan.common.Table;
import org.setpower.plan.finding.Finding;
import org.setpower.plan.finding.Verdict;

/** What the days on batteries come to. */
public final class BatteryResults {
  /** Loads say what power chargers have, so that batteries depend on the whole plan. */
  private static final List<String> PLAN =
      List.of(
          "project.*",
          "days.*",
          "groups.*",
          "sizes.*",
          "supplies.*",
          "outlets.*",
          "runs.*",
          "loads.*",
          "equipment.*",
          "generators.*",
          "batteryTypes.*",
          "batteryLoads.*",
          "batteryChargers.*");

  public static final ResultTable<TypeResult> TYPE_RESULT = ResultTable.of(TypeResult.class, PLAN);
  public static final ResultTable<LoadResult> LOAD_RESULT = ResultTable.of(LoadResult.class, PLAN);
  public static final ResultTable<ChargerResult> CHARGER_RESULT =
      ResultTable.of(ChargerResult.class, PLAN);
  public static final ResultTable<ChangeRow> CHANGE_ROW = ResultTable.of(ChangeRow.class, PLAN);

  private BatteryResults() {}

  /** Beside a type. */
  @Table(key = "batteryTypes", heading = "Battery types", rows = 8)
  public record TypeResult(
      @Result(
              key = "verdict",
              heading = "Status",
              from = "batteryTypes.reasons",
              rule = "The worst of the reasons.")
          Verdict verdict,
      @Result(
              key = "reasons",
              heading = "Reason",
              from = {},
              rule = "What is wrong with the row, and how many are short of the type.")
          List<Finding> reasons,
      @Result(
              key = "fewest",
              like = BatteryDayResults.StockResult.class,
              rule =
                  "The most of all days: with these numbers of every type, all full at call,"
                      + " nothing is without power.")
          Integer fewest,
      @Result(
              key = "uncharged",
              like = BatteryDayResults.StockResult.class,
              rule = "The most of all days without a charger.")
          Integer uncharged,
      @Result(
              key = "shortOf",
              like = BatteryDayResults.StockResult.class,
              rule = "Min. required less what is there, the most of all days.")
          Integer shortOf) {}

  /** Beside lights on batteries. */
  @Table(key = "batteryLoads", heading = "Lights on batteries", rows = 24)
  public record LoadResult(
      @Result(
              key = "verdict",
              heading = "Status",
              from = "batteryLoads.reasons",
              rule = "The worst of the reasons.")
          Verdict verdict,
      @Result(
              key = "reasons",
              heading = "Reason",
              from = {},
              rule = "What is wrong with the row on any day, and what is without power.")
          List<Finding> reasons,
      @Result(
              key = "runtime",
              like = BatteryDayResults.PositionResult.class,
              rule = "At the lowest temperature of the coldest day.")
          Double runtime,
      @Result(
              key = "changes",
              like = BatteryDayResults.PositionResult.class,
              heading = "Battery changes",
              rule = "Of the day shown, or the most of a day.")
          Integer changes,
      @Result(
              key = "dark",
              like = BatteryDayResults.PositionResult.class,
              rule = "Hours without a battery, all pieces, of the day shown or the worst.")
          Double dark) {}

  /** Beside a charger. */
  @Table(key = "batteryChargers", heading = "Chargers", rows = 8)
  public record ChargerResult(
      @Result(
              key = "verdict",
              heading = "Status",
              from = "batteryChargers.reasons",
              rule = "The worst of the reasons.")
          Verdict verdict,
      @Result(
              key = "reasons",
              heading = "Reason",
              from = {},
              rule = "What is wrong with the row on any day.")
          List<Finding> reasons,
      @Result(
              key = "power",
              heading = "Power from the mains",
              unit = "W",
              from = {},
              rule = "What its rows of Loads take together, the most of a day.")
          Double power,
      @Result(
              key = "charges",
              like = BatteryDayResults.ChargerResult.class,
              heading = "Charges",
              rule = "Batteries that it charges on the day shown, or the most of a day.")
          Integer charges) {}

  /** A paper: what goes on and comes off, in order of time. */
  @Table(key = "batteryChanges", heading = "Battery changes", rows = 600)
  public record ChangeRow(
      @Result(
              key = "date",
              heading = "Date",
              from = {},
              rule = "Of the day shown, or of all days; after midnight that of the morning.")
          LocalDate date,
      @Result(key = "by", like = BatteryDayResults.CardRow.class, rule = "By this time.")
          LocalTime by,
      @Result(
              key = "item",
              heading = "Item",
              from = {},
              rule = "From Lights on batteries.")
          String item,
      @Result(key = "piece", like = BatteryDayResults.CardRow.class, rule = "Of several alike.")
          Integer piece,
      @Result(
              key = "what",
              like = BatteryDayResults.CardRow.class,
              rule = "Start, change, no battery, on again.")
          Phrase what,
      @Result(
              key = "on",
              like = BatteryDayResults.CardRow.class,
              rule =
                  "The least charged battery that lasts, else the fullest; where none is left,"
                      + " no power.")
          String on,
      @Result(
              key = "off",
              like = BatteryDayResults.CardRow.class,
              rule = "The battery that was on.")
          String off,
      @Result(
              key = "to",
              like = BatteryDayResults.CardRow.class,
              rule = "The charger that has it back first; shelf if none does.")
          Phrase to,
      @Result(
              key = "tick",
              heading = "Done",
              from = {},
              rule = "A box to tick.")
          String tick) {}
}
