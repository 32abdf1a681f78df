package org.setpower.plan.batteryday;

import java.time.LocalDate;
import java.time.LocalTime;
import java.util.Arrays;
import java.util.List;
import org.setpower.plan.batteryday.word.BatteryUse;
import org.setpower.plan.batteryday.word.ScheduleEntry;
import org.setpower.plan.common.IssueRow;
import org.setpower.plan.common.NumberForm;
import org.setpower.plan.common.Phrase;
import org.setpower.plan.common.Result;
import org.setpower.plan.common.ResultTable;
import org.setpower.plan.common.Table;
import org.setpower.plan.finding.Finding;
import org.setpower.plan.finding.Verdict;

/** The tables of results of the battery plan; a result column is a component. */
public final class BatteryDayResults {
  static final ResultTable<ProjectResult> PROJECT = ResultTable.of(ProjectResult.class);
  static final ResultTable<DayResult> DAYS = ResultTable.of(DayResult.class);
  static final ResultTable<TypeResult> TYPES = ResultTable.of(TypeResult.class);
  static final ResultTable<StockResult> STOCK = ResultTable.of(StockResult.class);
  static final ResultTable<BatteryResult> BATTERIES = ResultTable.of(BatteryResult.class);
  static final ResultTable<PositionResult> POSITIONS = ResultTable.of(PositionResult.class);
  static final ResultTable<DeviceResult> DEVICES = ResultTable.of(DeviceResult.class);
  static final ResultTable<SupplyResult> SUPPLIES = ResultTable.of(SupplyResult.class);
  static final ResultTable<ChargerResult> CHARGERS = ResultTable.of(ChargerResult.class);
  static final ResultTable<AtCallResult> AT_CALL = ResultTable.of(AtCallResult.class);
  static final ResultTable<AtNowResult> AT_NOW = ResultTable.of(AtNowResult.class);
  static final ResultTable<TodayResult> TODAY = ResultTable.of(TodayResult.class);
  static final ResultTable<RunResult> RUN = ResultTable.of(RunResult.class);
  static final ResultTable<ScheduleRow> SCHEDULE = ResultTable.of(ScheduleRow.class);
  static final ResultTable<CardRow> CARD = ResultTable.of(CardRow.class);
  static final ResultTable<ChargingRow> CHARGING = ResultTable.of(ChargingRow.class);
  static final ResultTable<LentRow> LENT_OUT = ResultTable.of(LentRow.class);
  static final ResultTable<TimelineRow> TIMELINE = ResultTable.of(TimelineRow.class);
  static final ResultTable<HourRow> HOURS = ResultTable.of(HourRow.class);
  static final ResultTable<DisposableResult> DISPOSABLES = ResultTable.of(DisposableResult.class);
  static final ResultTable<CellRow> CELLS = ResultTable.of(CellRow.class);
  static final ResultTable<VoltageRow> VOLTAGES = ResultTable.of(VoltageRow.class);
  static final ResultTable<HotSwapRow> HOT_SWAP = ResultTable.of(HotSwapRow.class);
  static final ResultTable<SummaryResult> SUMMARY = ResultTable.of(SummaryResult.class);
  static final ResultTable<IssueRow> ISSUES =
      IssueRow.table(
          80,
          "project.reasons",
          "days.reasons",
          "types.reasons",
          "stock.reasons",
          "batteries.reasons",
          "positions.reasons",
          "devices.reasons",
          "supplies.reasons",
          "chargers.reasons",
          "atCall.reasons",
          "atNow.reasons",
          "disposables.reasons",
          "project.*",
          "days.*",
          "types.*",
          "stock.*",
          "positions.*",
          "devices.*",
          "supplies.*",
          "chargers.*",
          "atCall.*",
          "atNow.*",
          "disposables.*");

  private BatteryDayResults() {}

  /** Beside the settings. */
  @Table(key = "project", heading = "Project", rows = 1)
  public record ProjectResult(
      @Result(
              key = "verdict",
              heading = "Status",
              from = "project.reasons",
              rule = "The worst of the reasons.")
          Verdict verdict,
      @Result(
              key = "reasons",
              heading = "Reason",
              from = {
                "project.*",
                "days.*",
                "types.*",
                "stock.*",
                "positions.*",
                "devices.*",
                "supplies.*",
                "chargers.*",
                "atCall.*",
                "atNow.*"
              },
              rule = "What is wrong with the settings, and with the day shown as a whole.")
          List<Finding> reasons) {}

  /** Beside a day. */
  @Table(key = "days", heading = "Days", rows = 24)
  public record DayResult(
      @Result(
              key = "verdict",
              heading = "Status",
              from = "days.reasons",
              rule = "The worst of the reasons.")
          Verdict verdict,
      @Result(
              key = "reasons",
              heading = "Reason",
              from = {
                "project.*",
                "days.*",
                "types.*",
                "stock.*",
                "positions.*",
                "devices.*",
                "supplies.*",
                "chargers.*",
                "atCall.*",
                "atNow.*"
              },
              rule =
                  "What is wrong with the row and with the move between two rows of one date, and"
                      + " whether a date that is not shown has downtime.")
          List<Finding> reasons,
      @Result(
              key = "shown",
              heading = "Shown",
              from = {"project.*", "days.*"},
              rule = "Yes for the date that is planned.")
          Boolean shown,
      @Result(
              key = "dark",
              heading = "Downtime",
              form = NumberForm.DURATION_UP,
              unit = "h",
              from = {
                "project.*",
                "days.*",
                "types.*",
                "stock.*",
                "positions.*",
                "devices.*",
                "supplies.*",
                "chargers.*",
                "atCall.*",
                "atNow.*"
              },
              rule = "Of all positions on the date; blank where a stop keeps one out.")
          Double dark) {}

  /** Beside a type. */
  @Table(key = "types", heading = "Battery types", rows = 16)
  public record TypeResult(
      @Result(
              key = "verdict",
              heading = "Status",
              from = "types.reasons",
              rule = "The worst of the reasons.")
          Verdict verdict,
      @Result(
              key = "reasons",
              heading = "Reason",
              from = {"project.*", "types.*"},
              rule = "What is wrong with the row.")
          List<Finding> reasons) {}

  /** Beside a row of batteries. */
  @Table(key = "stock", heading = "Battery stock", rows = 24)
  public record StockResult(
      @Result(
              key = "verdict",
              heading = "Status",
              from = "stock.reasons",
              rule = "The worst of the reasons.")
          Verdict verdict,
      @Result(
              key = "reasons",
              heading = "Reason",
              from = {
                "project.*",
                "days.*",
                "types.*",
                "stock.*",
                "positions.*",
                "devices.*",
                "supplies.*",
                "chargers.*",
                "atCall.*",
                "run.entries"
              },
              rule = "What is wrong with the row, and how many are short of the type.")
          List<Finding> reasons,
      @Result(
              key = "fromNumber",
              heading = "From number",
              from = "stock.*",
              rule = "The first number, or the one after the row above.")
          String fromNumber,
      @Result(
              key = "toNumber",
              heading = "To number",
              from = "stock.*",
              rule = "One number for each battery owned or hired.")
          String toNumber,
      @Result(
              key = "planned",
              heading = "To plan with",
              unit = "pcs",
              from = "batteries.use",
              rule = "Batteries of the row that are there and no reserve.")
          Integer planned,
      @Result(
              key = "fewest",
              heading = "Min. required",
              unit = "pcs",
              from = "run.entries",
              rule =
                  "With these numbers of every type, all full at call, nothing is without power;"
                      + " with one fewer of a type the plan knows no schedule. Where that is not"
                      + " proven, the smallest number found that lasts.")
          Integer fewest,
      @Result(
              key = "fewestOfAll",
              heading = "Min. required, all dates",
              unit = "pcs",
              from = "run.entries",
              rule = "The highest Min. required of the dates of Days that can be planned.")
          Integer fewestOfAll,
      @Result(
              key = "fewestAlone",
              heading = "Min. required, enough of the others",
              unit = "pcs",
              from = "run.entries",
              rule =
                  "With one fewer of this type the plan knows no schedule,"
                      + " whatever there is of the others.")
          Integer fewestAlone,
      @Result(
              key = "uncharged",
              heading = "Min. required, nothing charged",
              unit = "pcs",
              from = "run.entries",
              rule = "The same without a charger.")
          Integer uncharged,
      @Result(
              key = "shortOf",
              heading = "Short",
              unit = "pcs",
              from = {"stock.fewest", "batteries.use", "stock.type"},
              rule =
                  "Min. required less what is to plan with, over all rows of the type; none where"
                      + " nothing is without power. Where not all are full at call, how many full ones"
                      + " more are enough.")
          Integer shortOf) {}

  /** A numbered battery. */
  @Table(key = "batteries", heading = "Batteries", rows = 400)
  public record BatteryResult(
      @Result(
              key = "number",
              heading = "Battery",
              from = "stock.*",
              rule = "Numbers run through the rows of Battery stock.")
          String number,
      @Result(
              key = "type",
              heading = "Type",
              from = {"stock.*", "types.*"},
              rule = "From Battery stock.")
          String type,
      @Result(
              key = "verdict",
              heading = "Status",
              from = "batteries.reasons",
              rule = "The worst of the reasons.")
          Verdict verdict,
      @Result(
              key = "reasons",
              heading = "Reason",
              from = {"project.*", "days.*", "types.*", "stock.*", "atCall.*", "atNow.*"},
              rule = "Why the plan does not use it.")
          List<Finding> reasons,
      @Result(
              key = "use",
              heading = "Use",
              from = "batteries.reasons",
              rule = "In the plan, or why not.")
          BatteryUse use,
      @Result(
              key = "atCall",
              heading = "Charge at call",
              form = NumberForm.SHARE,
              from = "run.entries",
              rule = "Full, as the day before leaves it, or as found.")
          Double atCall,
      @Result(
              key = "atEnd",
              heading = "Charge at wrap",
              form = NumberForm.SHARE,
              from = "run.entries",
              rule = "When the last position ends.")
          Double atEnd,
      @Result(
              key = "next",
              heading = "Charge at the next call",
              form = NumberForm.SHARE,
              from = "run.entries",
              rule = "After charging overnight; blank if Days has no later date: add it.")
          Double next) {}

  /** Beside a position. */
  @Table(key = "positions", heading = "Positions", rows = 40)
  public record PositionResult(
      @Result(
              key = "verdict",
              heading = "Status",
              from = "positions.reasons",
              rule = "The worst of the reasons.")
          Verdict verdict,
      @Result(
              key = "reasons",
              heading = "Reason",
              from = {
                "project.*",
                "days.*",
                "types.*",
                "stock.*",
                "positions.*",
                "devices.*",
                "supplies.*",
                "chargers.*",
                "atCall.*",
                "run.entries"
              },
              rule = "What is wrong with the row, and what is without power.")
          List<Finding> reasons,
      @Result(
              key = "watts",
              heading = "Peak power",
              form = NumberForm.ONE_DECIMAL,
              unit = "W",
              from = {
                "project.*",
                "days.*",
                "types.*",
                "stock.*",
                "positions.*",
                "devices.*",
                "supplies.*",
                "chargers.*",
                "atCall.*"
              },
              rule = "Sum of the devices that are on together, over their converters.")
          Double watts,
      @Result(
              key = "arrives",
              heading = "Voltage at the device",
              form = NumberForm.ONE_DECIMAL,
              unit = "V",
              from = {
                "project.*",
                "days.*",
                "types.*",
                "stock.*",
                "positions.*",
                "devices.*",
                "supplies.*",
                "chargers.*",
                "atCall.*"
              },
              rule = "Nominal voltage less voltage drop: CABLE.LOADVOLTS.")
          Double arrives,
      @Result(
              key = "amps",
              heading = "Current at cut-off",
              form = NumberForm.ONE_DECIMAL,
              unit = "A",
              from = {
                "project.*",
                "days.*",
                "types.*",
                "stock.*",
                "positions.*",
                "devices.*",
                "supplies.*",
                "chargers.*",
                "atCall.*"
              },
              rule = "Peak power over the lowest voltage at which it works.")
          Double amps,
      @Result(
              key = "maxAmps",
              heading = "Max. current",
              form = NumberForm.ONE_DECIMAL,
              unit = "A",
              from = {
                "project.*",
                "days.*",
                "types.*",
                "stock.*",
                "positions.*",
                "devices.*",
                "supplies.*",
                "chargers.*",
                "atCall.*"
              },
              rule =
                  "What the batteries may supply: one of them with hot-swap and series,"
                      + " all in parallel.")
          Double maxAmps,
      @Result(
              key = "runtime",
              heading = "Runtime",
              form = NumberForm.DURATION,
              unit = "h",
              from = {
                "project.*",
                "days.*",
                "types.*",
                "stock.*",
                "positions.*",
                "devices.*",
                "supplies.*",
                "chargers.*",
                "atCall.*"
              },
              rule =
                  "Of one full battery or set at peak power and min. temperature, to"
                      + " Change at: the shorter by voltage and by energy. In the cold that of the"
                      + " weakest measured cell; Measured runtime corrects it.")
          Double runtime,
      @Result(
              key = "changeBelow",
              heading = "Changed at",
              form = NumberForm.SHARE,
              from = {
                "project.*",
                "days.*",
                "types.*",
                "stock.*",
                "positions.*",
                "devices.*",
                "supplies.*",
                "chargers.*",
                "atCall.*"
              },
              rule =
                  "The higher of Change at and the charge below which it does not start at"
                      + " min. temperature.")
          Double changeBelow,
      @Result(
              key = "onHours",
              heading = "On",
              form = NumberForm.DURATION,
              unit = "h",
              from = {
                "project.*",
                "days.*",
                "types.*",
                "stock.*",
                "positions.*",
                "devices.*",
                "supplies.*",
                "chargers.*",
                "atCall.*"
              },
              rule = "Hours of the day shown, of one piece.")
          Double onHours,
      @Result(
              key = "changes",
              heading = "Changes",
              from = {"schedule.what", "schedule.position"},
              rule =
                  "Entries of the schedule in which a battery goes on after the start, of all"
                      + " pieces.")
          Integer changes,
      @Result(
              key = "dark",
              heading = "Downtime",
              form = NumberForm.DURATION_UP,
              unit = "h",
              from = "run.entries",
              rule = "Hours of all pieces without a battery.")
          Double dark) {}

  /** Beside a device. */
  @Table(key = "devices", heading = "Devices", rows = 80)
  public record DeviceResult(
      @Result(
              key = "verdict",
              heading = "Status",
              from = "devices.reasons",
              rule = "The worst of the reasons.")
          Verdict verdict,
      @Result(
              key = "reasons",
              heading = "Reason",
              from = {
                "project.*",
                "days.*",
                "types.*",
                "stock.*",
                "positions.*",
                "devices.*",
                "supplies.*",
                "chargers.*",
                "atCall.*"
              },
              rule = "What is wrong with the row.")
          List<Finding> reasons,
      @Result(
              key = "drawn",
              heading = "From the battery",
              form = NumberForm.ONE_DECIMAL,
              unit = "W",
              from = "devices.*",
              rule = "Power times quantity, over the efficiency of the converter.")
          Double drawn) {}

  /** Beside a supply. */
  @Table(key = "supplies", heading = "Supplies", rows = 10)
  public record SupplyResult(
      @Result(
              key = "verdict",
              heading = "Status",
              from = "supplies.reasons",
              rule = "The worst of the reasons.")
          Verdict verdict,
      @Result(
              key = "reasons",
              heading = "Reason",
              from = {"supplies.*", "run.entries"},
              rule =
                  "What is wrong with the row, and whether its watts leave positions without power.")
          List<Finding> reasons,
      @Result(
              key = "peak",
              heading = "Peak power",
              unit = "W",
              from = "run.entries",
              rule = "Of all chargers on it, until the next call.")
          Double peak) {}

  /** Beside a charger. */
  @Table(key = "chargers", heading = "Chargers", rows = 20)
  public record ChargerResult(
      @Result(
              key = "verdict",
              heading = "Status",
              from = "chargers.reasons",
              rule = "The worst of the reasons.")
          Verdict verdict,
      @Result(
              key = "reasons",
              heading = "Reason",
              from = {
                "project.*",
                "days.*",
                "types.*",
                "stock.*",
                "positions.*",
                "devices.*",
                "supplies.*",
                "chargers.*",
                "atCall.*",
                "run.entries"
              },
              rule = "What is wrong with the row, and whether it charges at night.")
          List<Finding> reasons,
      @Result(
              key = "hours",
              heading = "Hours of a charge",
              form = NumberForm.DURATION,
              unit = "h",
              from = {
                "project.*",
                "days.*",
                "types.*",
                "stock.*",
                "positions.*",
                "devices.*",
                "supplies.*",
                "chargers.*",
                "atCall.*"
              },
              rule = "CHARGE.HOURS of the type that takes longest, from empty to full.")
          Double hours,
      @Result(
              key = "charges",
              heading = "Batteries",
              from = "run.entries",
              rule = "Charges from call to the next call.")
          Integer charges) {}

  /** Beside a battery found at call. */
  @Table(key = "atCall", heading = "Found at call", rows = 12)
  public record AtCallResult(
      @Result(
              key = "verdict",
              heading = "Status",
              from = "atCall.reasons",
              rule = "The worst of the reasons.")
          Verdict verdict,
      @Result(
              key = "reasons",
              heading = "Reason",
              from = {"project.*", "days.*", "types.*", "stock.*", "atCall.*"},
              rule = "What is wrong with the row.")
          List<Finding> reasons) {}

  /** Beside a battery found at the hour of planning again. */
  @Table(key = "atNow", heading = "Found now", rows = 16)
  public record AtNowResult(
      @Result(
              key = "verdict",
              heading = "Status",
              from = "atNow.reasons",
              rule = "The worst of the reasons.")
          Verdict verdict,
      @Result(
              key = "reasons",
              heading = "Reason",
              from = {
                "project.*",
                "days.*",
                "types.*",
                "stock.*",
                "positions.*",
                "devices.*",
                "supplies.*",
                "chargers.*",
                "atCall.*",
                "atNow.*"
              },
              rule = "What is wrong with the row.")
          List<Finding> reasons) {}

  /** Beside date and time of Today. */
  @Table(key = "dayToday", heading = "Today", rows = 1)
  public record TodayResult(
      @Result(
              key = "verdict",
              heading = "Status",
              from = "dayToday.reasons",
              rule = "The worst of the reasons.")
          Verdict verdict,
      @Result(
              key = "reasons",
              heading = "Reason",
              from = {"project.*", "days.*", "atCall.*", "atNow.*"},
              rule = "What is wrong with the date of Today or with Now.")
          List<Finding> reasons) {}

  /** The day shown. */
  @Table(key = "run", heading = "Day", rows = 1)
  public record RunResult(
      @Result(
              key = "date",
              heading = "Date",
              from = {"project.*", "days.*"},
              rule = "The day shown, or the coldest.")
          LocalDate date,
      @Result(
              key = "location",
              heading = "Location",
              from = {"project.*", "days.*"},
              rule = "Of the date, in the order of the day.")
          String location,
      @Result(
              key = "call",
              heading = "Call",
              from = {"project.*", "days.*"},
              rule = "The first of the date.")
          LocalTime call,
      @Result(
              key = "wrap",
              heading = "Wrap",
              from = {"project.*", "days.*"},
              rule = "The last of the date.")
          LocalTime wrap,
      @Result(
              key = "coldest",
              heading = "Min. temperature",
              form = NumberForm.ONE_DECIMAL,
              unit = "°C",
              from = {"project.*", "days.*"},
              rule = "Of the date.")
          Double coldest,
      @Result(
              key = "warmest",
              heading = "Max. temperature",
              form = NumberForm.ONE_DECIMAL,
              unit = "°C",
              from = {"project.*", "days.*"},
              rule = "Of the date.")
          Double warmest,
      @Result(
              key = "day",
              heading = "Day",
              from = {"project.*", "days.*"},
              rule = "Date, location, call and wrap, printed on each page.")
          Phrase day,
      @Result(
              key = "entries",
              heading = "Entries of the schedule",
              unit = "rows",
              from = {
                "project.*",
                "days.*",
                "types.*",
                "stock.*",
                "positions.*",
                "devices.*",
                "supplies.*",
                "chargers.*",
                "atCall.*",
                "atNow.*"
              },
              rule = "The day run battery by battery, by the rules of the user guide.")
          Integer entries,
      @Result(
              key = "attended",
              heading = "Chargers attended",
              from = {"charging.from", "charging.until"},
              rule = "The hours from wrap to the next call at which something charges.")
          Phrase attended) {}

  /** What happens at a position, in order of time. */
  @Table(key = "schedule", heading = "Change schedule", rows = 600)
  public record ScheduleRow(
      @Result(key = "at", heading = "Time", from = "run.entries", rule = "By this time.")
          LocalTime at,
      @Result(
              key = "hour",
              heading = "Hour",
              form = NumberForm.TWO_DECIMALS,
              unit = "h",
              from = "run.entries",
              rule = "After the midnight that begins the date, for the chart.")
          Double hour,
      @Result(
              key = "position",
              heading = "Position",
              from = "run.entries",
              rule = "From Positions.")
          String position,
      @Result(key = "piece", heading = "Piece", from = "run.entries", rule = "Of several alike.")
          Integer piece,
      @Result(
              key = "what",
              heading = "What",
              from = "run.entries",
              rule =
                  "Start, change; put on and take off where the other batteries of a plate work; no"
                      + " battery, on again, found at Now, end; not planned where it has a stop.")
          ScheduleEntry what,
      @Result(
              key = "on",
              heading = "Goes on",
              from = "run.entries",
              rule = "The least charged battery that reaches the next break, else the fullest.")
          String on,
      @Result(
              key = "taken",
              heading = "Taken from",
              from = "run.entries",
              rule = "The position that a battery going on is taken from.")
          String taken,
      @Result(
              key = "off",
              heading = "Comes off",
              from = "run.entries",
              rule = "The battery that was on.")
          String off,
      @Result(
              key = "to",
              heading = "Goes to",
              from = "run.entries",
              rule =
                  "The charger that has it back first, or the position that takes it; shelf if none"
                      + " does.")
          Phrase to,
      @Result(
              key = "until",
              heading = "No power or one battery until",
              from = "run.entries",
              rule =
                  "When a battery goes on again, or the position ends; of a hot-swap plate also how"
                      + " long it stands on one battery.")
          LocalTime until) {}

  /** A paper: all that goes on and comes off, in order of time. */
  @Table(key = "card", heading = "Change card", rows = 600)
  public record CardRow(
      @Result(
              key = "by",
              heading = "By",
              from = {"schedule.at", "schedule.what"},
              rule = "From Change schedule.")
          LocalTime by,
      @Result(
              key = "department",
              heading = "Department",
              from = {"schedule.position", "schedule.what", "positions.department"},
              rule = "From Positions.")
          String department,
      @Result(
              key = "position",
              heading = "Position",
              from = {"schedule.position", "schedule.what"},
              rule = "From Change schedule.")
          String position,
      @Result(
              key = "piece",
              heading = "Piece",
              from = {"schedule.piece", "schedule.what"},
              rule = "From Change schedule.")
          Integer piece,
      @Result(
              key = "type",
              heading = "Type",
              from = {"schedule.position", "positions.*"},
              rule = "Battery type of the position.")
          String type,
      @Result(
              key = "what",
              heading = "What",
              from = {"schedule.what", "schedule.taken", "schedule.until"},
              rule = "From Change schedule.")
          Phrase what,
      @Result(
              key = "on",
              heading = "Goes on",
              from = {"schedule.on", "schedule.what"},
              rule = "From Change schedule.")
          String on,
      @Result(
              key = "off",
              heading = "Comes off",
              from = {"schedule.off", "schedule.what"},
              rule = "From Change schedule.")
          String off,
      @Result(
              key = "to",
              heading = "Goes to",
              from = {"schedule.to", "schedule.what"},
              rule = "From Change schedule.")
          Phrase to,
      @Result(
              key = "done",
              heading = "Done",
              from = "schedule.what",
              rule = "A box to tick on paper.")
          String done) {
    /** Whether a position ends. */
    public boolean isEnd() {
      return what.pattern().equals(ScheduleEntry.END.word());
    }

    /** Whether a battery is changed: these are counted. */
    public boolean isChange() {
      Object word = what;
      while (word instanceof Phrase phrase) {
        word = phrase.arguments().isEmpty() ? phrase.pattern() : phrase.arguments().get(0);
      }
      String entry = word.toString();
      return Arrays.stream(ScheduleEntry.values())
          .anyMatch(e -> e.isChange() && e.word().equals(entry));
    }
  }

  /** A paper: what charges after wrap. */
  @Table(key = "charging", heading = "Charging", rows = 400)
  public record ChargingRow(
      @Result(
              key = "battery",
              heading = "Battery",
              from = "run.entries",
              rule = "In the plan and not full.")
          String battery,
      @Result(key = "type", heading = "Type", from = "run.entries", rule = "From Battery stock.")
          String type,
      @Result(
              key = "charger",
              heading = "Charger",
              from = "run.entries",
              rule = "From Chargers; not charged: none takes it before the next call.")
          Phrase charger,
      @Result(
              key = "channel",
              heading = "Channel",
              from = "run.entries",
              rule = "Of those that charge at a time.")
          Integer channel,
      @Result(
              key = "from",
              heading = "From",
              from = "run.entries",
              rule =
                  "When the channel is free, the battery there and warmed up, and power on; with"
                      + " the date after midnight. Since when, of what is on it as the day is planned"
                      + " again.")
          Phrase from,
      @Result(
              key = "until",
              heading = "Until",
              from = "run.entries",
              rule =
                  "Full, after CHARGE.HOURS; or the power ends, and it goes on in another row,"
                      + " if for more than a quarter of an hour.")
          Phrase until,
      @Result(
              key = "ready",
              heading = "Ready by next call",
              translated = true,
              from = "run.entries",
              rule =
                  "Back on set before the next call of Days; blank if Days has none, and of what"
                      + " charges before wrap.")
          Boolean ready) {}

  /** A paper: which batteries go on what, and who has which. */
  @Table(key = "lentOut", heading = "Positions and lent-out", rows = 140)
  public record LentRow(
      @Result(
              key = "battery",
              heading = "Position or battery",
              from = {
                "stock.*",
                "atCall.*",
                "atNow.*",
                "project.*",
                "days.*",
                "types.*",
                "positions.position",
                "positions.fromDay",
                "positions.toDay"
              },
              rule = "The positions of the day shown, then what is lent on it.")
          String battery,
      @Result(
              key = "type",
              heading = "Battery type",
              from = {
                "stock.*",
                "atCall.*",
                "atNow.*",
                "project.*",
                "days.*",
                "types.*",
                "positions.type",
                "positions.fromDay",
                "positions.toDay"
              },
              rule = "From Positions, or from Battery stock.")
          String type,
      @Result(
              key = "to",
              heading = "Department, or lent to",
              from = {
                "stock.*",
                "atCall.*",
                "atNow.*",
                "project.*",
                "days.*",
                "types.*",
                "positions.department",
                "positions.fromDay",
                "positions.toDay"
              },
              rule = "From Positions, or from Battery stock.")
          String to,
      @Result(
              key = "backOn",
              heading = "Back on",
              from = {"stock.*", "atCall.*", "atNow.*", "project.*", "days.*", "types.*"},
              rule = "From Battery stock.")
          LocalDate backOn,
      @Result(
              key = "pieces",
              heading = "Pieces",
              unit = "pcs",
              from = {"positions.quantity", "positions.verdict"},
              rule = "From Positions; blank with a stop.")
          Integer pieces,
      @Result(
              key = "runtime",
              heading = "Runtime",
              form = NumberForm.DURATION,
              unit = "h",
              from = {"positions.runtime", "positions.verdict"},
              rule = "From Positions; blank with a stop.")
          Double runtime,
      @Result(
              key = "changeAt",
              heading = "Change at",
              form = NumberForm.SHARE,
              from = {"positions.changeBelow", "positions.verdict"},
              rule = "From Positions, in the coldest of the day; blank with a stop.")
          Double changeAt,
      @Result(
              key = "changes",
              heading = "Changes",
              from = {"positions.changes", "positions.verdict"},
              rule = "From Positions; blank with a stop.")
          Integer changes,
      @Result(
              key = "verdict",
              heading = "Status",
              from = "positions.verdict",
              rule = "From Positions.")
          Verdict verdict) {}

  /** A bar of the chart: a battery, or a set, on a position. */
  @Table(key = "timeline", heading = "Timeline", rows = 600)
  public record TimelineRow(
      @Result(
              key = "position",
              heading = "Position",
              from = "run.entries",
              rule = "From Positions.")
          String position,
      @Result(key = "piece", heading = "Piece", from = "run.entries", rule = "Of several alike.")
          Integer piece,
      @Result(key = "type", heading = "Type", from = "run.entries", rule = "From Positions.")
          String type,
      @Result(
              key = "batteries",
              heading = "Batteries",
              from = "run.entries",
              rule = "That went on.")
          String batteries,
      @Result(key = "from", heading = "From", from = "run.entries", rule = "When it goes on.")
          LocalTime from,
      @Result(key = "to", heading = "To", from = "run.entries", rule = "When it comes off.")
          LocalTime to) {}

  /** A half hour of the chart: where the batteries are. */
  @Table(key = "hours", heading = "Where the batteries are", rows = 48)
  public record HourRow(
      @Result(
              key = "at",
              heading = "Time",
              from = "run.entries",
              rule = "Every half hour of the date.")
          LocalTime at,
      @Result(
              key = "on",
              heading = "On positions",
              unit = "pcs",
              from = "run.entries",
              rule = "Batteries that work, by the schedule.")
          Integer on,
      @Result(
              key = "charging",
              heading = "On chargers",
              unit = "pcs",
              from = "run.entries",
              rule = "Batteries between the start of a charge and full.")
          Integer charging,
      @Result(
              key = "shelf",
              heading = "On the shelf",
              unit = "pcs",
              from = "run.entries",
              rule = "Planned batteries that neither work nor charge.")
          Integer shelf,
      @Result(
              key = "dark",
              heading = "Pieces without a battery",
              unit = "pcs",
              from = "run.entries",
              rule = "Without power at that time.")
          Integer dark) {}

  /** Beside what runs on cells that are thrown away. */
  @Table(key = "disposables", heading = "Disposables", rows = 20)
  public record DisposableResult(
      @Result(
              key = "verdict",
              heading = "Status",
              from = "disposables.reasons",
              rule = "The worst of the reasons.")
          Verdict verdict,
      @Result(
              key = "reasons",
              heading = "Reason",
              from = {"project.*", "days.*", "disposables.*"},
              rule = "What is wrong with the row, and cells in the cold.")
          List<Finding> reasons,
      @Result(
              key = "sets",
              heading = "Sets a day",
              unit = "pcs",
              from = {"project.*", "days.*", "disposables.*"},
              rule =
                  "On the day shown, a fresh set first: hours over what a set lasts, rounded up.")
          Integer sets,
      @Result(
              key = "day",
              heading = "Cells, day shown",
              unit = "pcs",
              from = {"disposables.sets", "disposables.*"},
              rule = "Sets, times cells, times pieces.")
          Integer day,
      @Result(
              key = "all",
              heading = "Cells, all days",
              unit = "pcs",
              from = {"project.*", "days.*", "disposables.*"},
              rule = "The same, summed over the dates of Days.")
          Integer all) {}

  /** Cells to buy. */
  @Table(key = "cells", heading = "Cells to buy", rows = 20)
  public record CellRow(
      @Result(key = "cell", heading = "Cell", from = "disposables.*", rule = "From Disposables.")
          String cell,
      @Result(
              key = "day",
              heading = "Day shown",
              unit = "pcs",
              from = {"disposables.day", "disposables.*"},
              rule = "Sum of its rows.")
          Integer day,
      @Result(
              key = "all",
              heading = "All days",
              unit = "pcs",
              from = {"disposables.all", "disposables.*"},
              rule = "Sum of its rows.")
          Integer all) {}

  /** A position at a nominal voltage. */
  @Table(key = "voltages", heading = "Voltage comparison", rows = 120)
  public record VoltageRow(
      @Result(
              key = "position",
              heading = "Position",
              from = {
                "project.*",
                "days.*",
                "types.*",
                "stock.*",
                "positions.*",
                "devices.*",
                "supplies.*",
                "chargers.*",
                "atCall.*"
              },
              rule = "From Positions.")
          String position,
      @Result(
              key = "watts",
              heading = "Peak power",
              form = NumberForm.ONE_DECIMAL,
              unit = "W",
              from = "positions.watts",
              rule = "From Positions.")
          Double watts,
      @Result(
              key = "volts",
              heading = "Nominal voltage",
              unit = "V",
              from = {
                "project.*",
                "days.*",
                "types.*",
                "stock.*",
                "positions.*",
                "devices.*",
                "supplies.*",
                "chargers.*",
                "atCall.*"
              },
              rule = "12, 24 and 48 V.")
          Double volts,
      @Result(
              key = "amps",
              heading = "Current",
              form = NumberForm.ONE_DECIMAL,
              unit = "A",
              from = {
                "project.*",
                "days.*",
                "types.*",
                "stock.*",
                "positions.*",
                "devices.*",
                "supplies.*",
                "chargers.*",
                "atCall.*"
              },
              rule =
                  "Peak power over the voltage at the device; blank where the cable cannot carry"
                      + " it.")
          Double amps,
      @Result(
              key = "drop",
              heading = "Voltage drop",
              form = NumberForm.TWO_DECIMALS,
              unit = "V",
              from = {
                "project.*",
                "days.*",
                "types.*",
                "stock.*",
                "positions.*",
                "devices.*",
                "supplies.*",
                "chargers.*",
                "atCall.*"
              },
              rule = "In its DC cable; 0 without one.")
          Double drop,
      @Result(
              key = "lost",
              heading = "Lost in the cable",
              form = NumberForm.ONE_DECIMAL,
              unit = "W",
              from = {"voltages.amps", "voltages.drop"},
              rule = "Current times voltage drop.")
          Double lost,
      @Result(
              key = "has",
              heading = "The battery gives it",
              translated = true,
              from = {
                "project.*",
                "days.*",
                "types.*",
                "stock.*",
                "positions.*",
                "devices.*",
                "supplies.*",
                "chargers.*",
                "atCall.*"
              },
              rule = "Yes where its nominal voltages, or those of its set in series, hold it.")
          Boolean has) {}

  /** A hot-swap plate. */
  @Table(key = "hotSwap", heading = "Hot-swap stack", rows = 40)
  public record HotSwapRow(
      @Result(
              key = "position",
              heading = "Position",
              from = {
                "project.*",
                "days.*",
                "types.*",
                "stock.*",
                "positions.*",
                "devices.*",
                "supplies.*",
                "chargers.*",
                "atCall.*"
              },
              rule = "From Positions.")
          String position,
      @Result(
              key = "batteries",
              heading = "Batteries at once",
              unit = "pcs",
              from = {
                "project.*",
                "days.*",
                "types.*",
                "stock.*",
                "positions.*",
                "devices.*",
                "supplies.*",
                "chargers.*",
                "atCall.*"
              },
              rule = "From Positions.")
          Integer batteries,
      @Result(
              key = "amps",
              heading = "Current at cut-off",
              form = NumberForm.ONE_DECIMAL,
              unit = "A",
              from = "positions.amps",
              rule = "One of them carries it alone.")
          Double amps,
      @Result(
              key = "maxAmps",
              heading = "Max. current of one",
              form = NumberForm.ONE_DECIMAL,
              unit = "A",
              from = "positions.maxAmps",
              rule = "From Battery types.")
          Double maxAmps,
      @Result(
              key = "carries",
              heading = "One carries it",
              translated = true,
              from = {"hotSwap.amps", "hotSwap.maxAmps"},
              rule = "No: do not use this plate with these batteries.")
          Boolean carries,
      @Result(
              key = "one",
              heading = "Time for a change",
              form = NumberForm.DURATION,
              unit = "h",
              from = "positions.runtime",
              rule = "What one full battery lasts at the min. temperature.")
          Double one,
      @Result(
              key = "stack",
              heading = "Without a change",
              form = NumberForm.DURATION,
              unit = "h",
              from = {"positions.runtime", "hotSwap.batteries"},
              rule = "All of them full, one after the other.")
          Double stack) {}

  /** The head figures. */
  @Table(key = "summary", heading = "Summary", rows = 1)
  public record SummaryResult(
      @Result(
              key = "verdict",
              heading = "Status",
              from = "issues.verdict",
              rule = "The worst of the open issues.")
          Verdict verdict,
      @Result(
              key = "changes",
              heading = "Changes",
              from = "schedule.what",
              rule = "Entries of the schedule in which a battery goes on after the start.")
          Integer changes,
      @Result(
              key = "dark",
              heading = "Downtime",
              form = NumberForm.DURATION_UP,
              unit = "h",
              from = {"positions.dark", "positions.verdict"},
              rule = "Sum over the positions; blank where a stop keeps one out of the schedule.")
          Double dark,
      @Result(
              key = "planned",
              heading = "Batteries in the plan",
              unit = "pcs",
              from = "batteries.use",
              rule = "Batteries that are there and no reserve.")
          Integer planned,
      @Result(
              key = "withheld",
              heading = "Batteries withheld",
              unit = "pcs",
              from = "batteries.use",
              rule = "Lent, reserve, quarantine or not clear; see Batteries.")
          Integer withheld,
      @Result(
              key = "shortOf",
              heading = "Short",
              unit = "pcs",
              from = {"stock.shortOf", "positions.verdict"},
              rule = "Sum over the types; blank where a stop keeps a position out of the schedule.")
          Integer shortOf,
      @Result(
              key = "stopped",
              heading = "Positions stopped",
              unit = "rows",
              from = "positions.verdict",
              rule = "See Positions.")
          Integer stopped,
      @Result(
              key = "notReady",
              heading = "Not full in time",
              unit = "pcs",
              from = "charging.ready",
              rule =
                  "Batteries of Charging that are not ready; blank if Days has no later"
                      + " date: add it.")
          Integer notReady) {}
}
