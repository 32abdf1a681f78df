package org.setpower.plan.batteryday;

import java.time.LocalDate;
import java.time.LocalTime;
import java.util.List;
import java.util.function.BiFunction;
import org.setpower.pack.Chemistry;
import org.setpower.plan.batteryday.simulation.BatteryConnection;
import org.setpower.plan.batteryday.typed.BatteryAbsence;
import org.setpower.plan.batteryday.typed.ChargeAtCall;
import org.setpower.plan.batteryday.typed.UnitSystem;
import org.setpower.plan.common.Input;
import org.setpower.plan.common.InputRow;
import org.setpower.plan.common.InputRows;
import org.setpower.plan.common.InputTable;
import org.setpower.plan.common.NumberForm;
import org.setpower.plan.common.Table;

/**
 * The tables to fill of the battery plan.
 *
 * @param project one row
 * @param days rows by date and place
 * @param types rows by type of battery
 * @param stock rows of numbered batteries
 * @param positions what batteries are on
 * @param devices what draws power at a position
 * @param supplies what chargers hang on
 * @param chargers one row each
 * @param atCall batteries that are not full, or not there, at call
 * @param atNow batteries that are not as planned at the hour of planning again
 * @param disposables what runs on cells that are thrown away
 */
public record BatteryDayInputs(
    InputRows<Project> project,
    InputRows<Day> days,
    InputRows<BatteryType> types,
    InputRows<Stock> stock,
    InputRows<Position> positions,
    InputRows<PowerDraw> devices,
    InputRows<Supply> supplies,
    InputRows<Charger> chargers,
    InputRows<AtCall> atCall,
    InputRows<AtNow> atNow,
    InputRows<Disposable> disposables) {
  static final InputTable<Project> PROJECT = InputTable.of(Project.class);
  static final InputTable<Day> DAYS = InputTable.of(Day.class);
  static final InputTable<BatteryType> TYPES = InputTable.of(BatteryType.class);
  static final InputTable<Stock> STOCK = InputTable.of(Stock.class);
  static final InputTable<Position> POSITIONS = InputTable.of(Position.class);
  static final InputTable<PowerDraw> DEVICES = InputTable.of(PowerDraw.class);
  static final InputTable<Supply> SUPPLIES = InputTable.of(Supply.class);
  static final InputTable<Charger> CHARGERS = InputTable.of(Charger.class);
  static final InputTable<AtCall> AT_CALL = InputTable.of(AtCall.class);
  static final InputTable<AtNow> AT_NOW = InputTable.of(AtNow.class);
  static final InputTable<Disposable> DISPOSABLES = InputTable.of(Disposable.class);

  /**
   * Reads the tables.
   *
   * @param ranges in the order of the function's arguments
   */
  static BatteryDayInputs read(List<?> ranges) {
    return new BatteryDayInputs(
        PROJECT.read(ranges.get(0)),
        DAYS.read(ranges.get(1)),
        TYPES.read(ranges.get(2)),
        STOCK.read(ranges.get(3)),
        POSITIONS.read(ranges.get(4)),
        DEVICES.read(ranges.get(5)),
        SUPPLIES.read(ranges.get(6)),
        CHARGERS.read(ranges.get(7)),
        AT_CALL.read(ranges.get(8)),
        AT_NOW.read(ranges.get(9)),
        DISPOSABLES.read(ranges.get(10)));
  }

  /** All tables, in the order of the function's arguments. */
  List<InputRows<?>> all() {
    return List.of(
        project,
        days,
        types,
        stock,
        positions,
        devices,
        supplies,
        chargers,
        atCall,
        atNow,
        disposables);
  }

  /** The same, with names for supplies and chargers without one: S1, C1 … by their rows. */
  BatteryDayInputs named() {
    return new BatteryDayInputs(
        project,
        days,
        types,
        stock,
        positions,
        devices,
        named(supplies, (s, n) -> s.supply() == null ? s.named("S" + n) : s),
        named(chargers, (c, n) -> c.charger() == null ? c.named("C" + n) : c),
        atCall,
        atNow,
        disposables);
  }

  private static <T extends Record> InputRows<T> named(
      InputRows<T> rows, BiFunction<T, Integer, T> name) {
    return new InputRows<>(
        rows.table(),
        rows.rows().stream()
            .map(
                r ->
                    r.isBlank()
                        ? r
                        : new InputRow<>(
                            r.number(),
                            name.apply(r.value(), r.number()),
                            r.findings(),
                            r.unreadable(),
                            r.cells()))
            .toList(),
        rows.fault());
  }

  /** What holds for the whole plan. */
  @Table(key = "project", heading = "Project", rows = 1, upright = true)
  public record Project(
      @Input(
              key = "units",
              heading = "Units",
              blank = "Blank: metric (°C, m).",
              help = "Of every temperature and length typed in this plan.")
          UnitSystem units,
      @Input(
              key = "day",
              heading = "Day shown",
              blank = "Blank: the coldest date of Days.",
              help = "A date of Days.")
          LocalDate day,
      @Input(
              key = "now",
              heading = "Now",
              blank = "Blank: the whole day is planned.",
              help = "At lunch: from this time on the day is planned again.")
          LocalTime now,
      @Input(
              key = "today",
              heading = "Date of Today",
              blank = "Blank: the day shown; with several dates in Days a check.",
              help = "The date on which the batteries of Today are found.")
          LocalDate today,
      @Input(
              key = "near",
              heading = "Change in a break if due after it within",
              form = NumberForm.WHOLE,
              unit = "min",
              min = 0,
              max = 240,
              blank = "Blank: 30 min.",
              help = "Avoids a change soon after a break.")
          Double near,
      @Input(
              key = "touchLimit",
              heading = "Touch limit",
              form = NumberForm.ONE_DECIMAL,
              unit = "V",
              min = 1,
              max = 120,
              blank = "Blank: 60 V DC.",
              help = "Live parts above it have to be guarded.")
          Double touchLimit,
      @Input(
              key = "dayBegins",
              heading = "A day begins at",
              blank = "Blank: 04:00.",
              help = "Earlier times belong to the night before: 03:00 ends a night.")
          LocalTime dayBegins,
      @Input(
              key = "chargersAir",
              heading = "Air at the chargers",
              form = NumberForm.ONE_DECIMAL,
              unit = "°C|°F",
              min = -60,
              max = 140,
              blank = "Blank: as cold as outdoors; check.",
              help = "Of every charger whose own Air there is blank.")
          Double chargersAir,
      @Input(
              key = "warmUp",
              heading = "Warm-up",
              form = NumberForm.TWO_DECIMALS,
              unit = "h",
              min = 0,
              max = 24,
              blank = "Blank: none; below 0 °C (32 °F) outdoors a stop.",
              help = "Until the whole battery is above 0 °C (32 °F), if not on Chargers.")
          Double warmUp,
      @Input(
              key = "health",
              heading = "Health of batteries",
              form = NumberForm.SHARE,
              min = 0.3,
              max = 1,
              blank = "Blank: 80 % is assumed; check.",
              help =
                  "Share of the rated capacity that a full battery gives, if not on Battery stock.")
          Double health,
      @Input(
              key = "changeAt",
              heading = "Change at",
              form = NumberForm.SHARE,
              min = 0,
              max = 0.9,
              blank = "Blank: when the device would stop.",
              help = "Of every position whose own Change at is blank: 20 % leaves time to change.")
          Double changeAt,
      @Input(
              key = "lastChange",
              heading = "Last change at",
              blank = "Blank: chargers are changed all night.",
              help =
                  "After this time chargers are not changed until the next call: what is on stays"
                      + " on.")
          LocalTime lastChange) {}

  /** A stay at one place on one date; two rows for one date are a move. */
  @Table(key = "days", heading = "Days", rows = 24)
  public record Day(
      @Input(key = "date", heading = "Date", help = "Two rows for one date are a move.")
          LocalDate date,
      @Input(key = "call", heading = "Call", help = "When batteries are handed out.")
          LocalTime call,
      @Input(key = "wrap", heading = "Wrap", help = "When work ends here.") LocalTime wrap,
      @Input(key = "location", heading = "Location", blank = "Blank: no name.") String location,
      @Input(
              key = "min",
              heading = "Min. temperature",
              form = NumberForm.ONE_DECIMAL,
              unit = "°C|°F",
              min = -60,
              max = 140,
              blank = "Blank: −20 °C (−4 °F) is assumed; check.",
              help = "Outdoors, or where the batteries work.")
          Double min,
      @Input(
              key = "max",
              heading = "Max. temperature",
              form = NumberForm.ONE_DECIMAL,
              unit = "°C|°F",
              min = -60,
              max = 140,
              blank = "Blank: the min. temperature holds all day; check.")
          Double max,
      @Input(
              key = "minFrom",
              heading = "Min. from",
              blank = "Blank: the min. temperature holds all day.")
          LocalTime minFrom,
      @Input(key = "minTo", heading = "Min. to", blank = "Blank: as Min. from.") LocalTime minTo,
      @Input(
              key = "maxFrom",
              heading = "Max. from",
              blank = "Blank: the min. temperature holds all day.")
          LocalTime maxFrom,
      @Input(key = "maxTo", heading = "Max. to", blank = "Blank: as Max. from.") LocalTime maxTo,
      @Input(
              key = "shelf",
              heading = "Shelf",
              form = NumberForm.ONE_DECIMAL,
              unit = "°C|°F",
              min = -60,
              max = 140,
              blank = "Blank: as cold as outdoors.",
              help = "Temperature of a warm pouch or room for batteries on the shelf.")
          Double shelf,
      @Input(key = "breakFrom", heading = "Break from", blank = "Blank: no break.")
          LocalTime breakFrom,
      @Input(key = "breakTo", heading = "Break to", blank = "Blank: no break.") LocalTime breakTo,
      @Input(
              key = "atCall",
              heading = "Charge at call",
              blank = "Blank: as left.",
              help = "as left: as the plan of the date before leaves them; full on the first date.")
          ChargeAtCall atCall) {}

  /** A type of battery. */
  @Table(key = "types", heading = "Battery types", rows = 16)
  public record BatteryType(
      @Input(key = "type", heading = "Type", help = "One row for each type of battery.")
          String type,
      @Input(
              key = "chemistry",
              heading = "Chemistry",
              blank =
                  "Blank: Li-ion, where energy over capacity is a voltage of Li-ion cells only;"
                      + " else a stop.",
              help = "What its cells are made of.")
          Chemistry chemistry,
      @Input(
              key = "cells",
              heading = "Cells in series",
              min = 1,
              max = 200,
              blank = "Blank: from energy and capacity; a stop where that is not clear.",
              help = "At its highest voltage.")
          Double cells,
      @Input(
              key = "ampHours",
              heading = "Capacity",
              form = NumberForm.ONE_DECIMAL,
              unit = "Ah",
              min = 0.1,
              max = 1000,
              help = "On the label, at its highest voltage.")
          Double ampHours,
      @Input(
              key = "wattHours",
              heading = "Energy",
              form = NumberForm.ONE_DECIMAL,
              unit = "Wh",
              min = 1,
              max = 20_000,
              help = "On the label.")
          Double wattHours,
      @Input(
              key = "outputs",
              heading = "Nominal voltages",
              unit = "V",
              blank =
                  "Blank: 7.2, 12, 24 or 48 by energy over capacity; a stop where that is not"
                      + " clear.",
              help = "One, such as 7.2, or of 12, 24 and 48 several with a slash: 12/24.")
          String outputs,
      @Input(
              key = "maxAmps",
              heading = "Max. current",
              form = NumberForm.ONE_DECIMAL,
              unit = "A",
              min = 0.1,
              max = 1000,
              help = "What one battery may supply.")
          Double maxAmps,
      @Input(
              key = "mount",
              heading = "Mount",
              blank = "Blank: fits every plate and charger without a mount of its own.",
              help = "The plate or plug that it needs, in the words of your stock.")
          String mount,
      @Input(
              key = "resistance",
              heading = "Resistance",
              form = NumberForm.ONE_DECIMAL,
              unit = "mΩ",
              min = 0.1,
              max = 10_000,
              blank = "Blank: a usual value, and in the cold the weakest measured cell.",
              help = "At its highest voltage, at room temperature.")
          Double resistance,
      @Input(
              key = "health",
              heading = "Health",
              form = NumberForm.SHARE,
              min = 0.3,
              max = 1,
              blank = "Blank: Health of batteries in Project; without it 80 % is assumed, check.",
              help = "Share of the rated capacity that a full battery still gives.")
          Double health) {}

  /** Numbered batteries of one type. */
  @Table(key = "stock", heading = "Battery stock", rows = 24)
  public record Stock(
      @Input(key = "type", heading = "Type", help = "A type of Battery types.") String type,
      @Input(
              key = "owned",
              heading = "Owned",
              unit = "pcs",
              min = 0,
              max = 200,
              blank = "Blank: none.")
          Double owned,
      @Input(
              key = "hired",
              heading = "Hired",
              unit = "pcs",
              min = 0,
              max = 200,
              blank = "Blank: none.")
          Double hired,
      @Input(
              key = "reserve",
              heading = "Reserve",
              unit = "pcs",
              min = 0,
              max = 200,
              blank = "Blank: none.",
              help = "Not planned with: the highest numbers that are there.")
          Double reserve,
      @Input(
              key = "lent",
              heading = "Lent",
              blank = "Blank: none.",
              help = "Numbers of the batteries that another department has: B3, B5-B7.")
          String lent,
      @Input(key = "lentTo", heading = "Lent to", blank = "Blank: not known.") String lentTo,
      @Input(key = "lentFrom", heading = "Lent from", blank = "Blank: already lent.")
          LocalDate lentFrom,
      @Input(
              key = "backOn",
              heading = "Back on",
              blank = "Blank: not agreed.",
              help = "The last day on which they are lent.")
          LocalDate backOn,
      @Input(
              key = "inHandOn",
              heading = "In hand on",
              blank = "Blank: from the first day.",
              help = "The date on which the hired ones arrive, the highest numbers of the row.")
          LocalDate inHandOn,
      @Input(
              key = "inHandFrom",
              heading = "In hand from",
              blank = "Blank: at call.",
              help = "The time on that date. They are planned as full.")
          LocalTime inHandFrom,
      @Input(
              key = "out",
              heading = "Out of service",
              blank = "Blank: none.",
              help = "Numbers of batteries in quarantine: dropped, wet, swollen, without output.")
          String out,
      @Input(
              key = "first",
              heading = "First number",
              min = 1,
              max = 9999,
              blank = "Blank: goes on from the row above.",
              help = "12 for batteries marked B12, B13 …")
          Double first) {}

  /** What batteries are on. */
  @Table(key = "positions", heading = "Positions", rows = 40)
  public record Position(
      @Input(key = "position", heading = "Position", help = "Each only once.") String position,
      @Input(
              key = "volts",
              heading = "Nominal voltage",
              form = NumberForm.ONE_DECIMAL,
              unit = "V",
              min = 1,
              max = 96,
              blank =
                  "Blank: that of the battery type, if only one fits the input voltage; else a"
                      + " stop.",
              help = "7.2, 12, 24 or 48: what plate or cable ask for.")
          Double volts,
      @Input(key = "type", heading = "Battery type", help = "A type of Battery types.") String type,
      @Input(
              key = "power",
              heading = "Power",
              form = NumberForm.ONE_DECIMAL,
              unit = "W",
              min = 0.1,
              max = 20_000,
              blank = "Blank: as in Devices; without a device there a stop.",
              help = "Of the device that is on from call to wrap. Measure, or read the label.")
          Double power,
      @Input(
              key = "input",
              heading = "Input voltage",
              unit = "V",
              blank = "Blank: as in Devices; with a power a stop.",
              help = "Of that device, as on its label: 11-17.")
          String input,
      @Input(
              key = "measured",
              heading = "Measured runtime",
              unit = "h:mm",
              blank = "Blank: calculated.",
              help =
                  "At the lowest min. temperature of Days: from one full battery, or a full set,"
                      + " until the device stops.")
          LocalTime measured,
      @Input(
              key = "priority",
              heading = "Priority",
              min = 1,
              max = 99,
              blank = "Blank: 50.",
              help =
                  "1 is the most important. What is short loses power from the highest figure on.")
          Double priority,
      @Input(
              key = "quantity",
              heading = "Quantity",
              unit = "pcs",
              min = 1,
              max = 40,
              blank = "Blank: 1.",
              help = "Pieces alike, each with its own batteries.")
          Double quantity,
      @Input(
              key = "department",
              heading = "Department",
              blank = "Blank: no name.",
              help = "Who changes the batteries.")
          String department,
      @Input(
              key = "mount",
              heading = "Mount",
              blank = "Blank: takes every battery.",
              help = "In the words of Battery types.")
          String mount,
      @Input(
              key = "connection",
              heading = "Connection",
              blank = "Blank: one.",
              help =
                  "hot-swap: a plate that supplies from one battery while another is changed."
                      + " parallel, series: same type and charge only.")
          BatteryConnection connection,
      @Input(
              key = "atOnce",
              heading = "Batteries at once",
              unit = "pcs",
              min = 1,
              max = 8,
              blank = "Blank: 1; with a connection 2.")
          Double atOnce,
      @Input(
              key = "changeAt",
              heading = "Change at",
              form = NumberForm.SHARE,
              min = 0,
              max = 0.9,
              blank = "Blank: when the device would stop.",
              help = "State of charge at which the battery is changed.")
          Double changeAt,
      @Input(
              key = "staysOn",
              heading = "Stays on in breaks",
              blank = "Blank: no, it is switched off.")
          Boolean staysOn,
      @Input(
              key = "cable",
              heading = "DC cable",
              form = NumberForm.ONE_DECIMAL,
              unit = "m|ft",
              min = 0,
              max = 300,
              blank = "Blank: the battery sits on the device.",
              help = "From battery to device, one way.")
          Double cable,
      @Input(
              key = "cableSize",
              heading = "Cable size",
              blank = "Blank: no cable; with a length a stop.",
              help = "As printed on it: 1.5 mm², 12 AWG.")
          String cableSize,
      @Input(
              key = "touchSafe",
              heading = "Touch-safe",
              blank = "Blank: no.",
              help = "yes: above the touch limit no live part can be touched.")
          Boolean touchSafe,
      @Input(key = "fromDay", heading = "From day", blank = "Blank: from the first day.")
          LocalDate fromDay,
      @Input(key = "toDay", heading = "To day", blank = "Blank: to the last day.")
          LocalDate toDay) {}

  /** What draws power at a position. */
  @Table(key = "devices", heading = "Devices", rows = 80)
  public record PowerDraw(
      @Input(
              key = "device",
              heading = "Device",
              blank = "Blank: the name of its position.",
              help = "Its name.")
          String device,
      @Input(key = "position", heading = "Position", help = "A row of Positions.") String position,
      @Input(
              key = "watts",
              heading = "Power",
              form = NumberForm.ONE_DECIMAL,
              unit = "W",
              min = 0.1,
              max = 20_000,
              help = "Of one piece, as it works. Measure, or read the label.")
          Double watts,
      @Input(
              key = "minVolts",
              heading = "Min. voltage",
              form = NumberForm.ONE_DECIMAL,
              unit = "V",
              min = 0,
              max = 200,
              blank = "Blank: only through a converter; else a stop.",
              help = "Below it the device switches off.")
          Double minVolts,
      @Input(
              key = "maxVolts",
              heading = "Max. voltage",
              form = NumberForm.ONE_DECIMAL,
              unit = "V",
              min = 0,
              max = 200,
              blank = "Blank: only through a converter; else a stop.",
              help = "A full battery must not exceed it.")
          Double maxVolts,
      @Input(
              key = "quantity",
              heading = "Quantity",
              unit = "pcs",
              min = 1,
              max = 40,
              blank = "Blank: 1.",
              help = "At each piece of the position.")
          Double quantity,
      @Input(
              key = "converter",
              heading = "Converter efficiency",
              form = NumberForm.SHARE,
              min = 0.3,
              max = 1,
              blank = "Blank: no converter.",
              help = "Of what sits between battery and device, from its label.")
          Double converter,
      @Input(key = "from", heading = "On from", blank = "Blank: from call.") LocalTime from,
      @Input(key = "to", heading = "On to", blank = "Blank: to wrap.") LocalTime to) {}

  /** What chargers hang on. */
  @Table(key = "supplies", heading = "Supplies", rows = 10)
  public record Supply(
      @Input(
              key = "supply",
              heading = "Supply",
              blank = "Blank: S1, S2 … by its row.",
              help = "Its name: socket, inverter, generator.")
          String supply,
      @Input(
              key = "watts",
              heading = "Power",
              unit = "W",
              min = 1,
              max = 1e6,
              help = "What it gives the chargers at most.")
          Double watts,
      @Input(
              key = "wattHours",
              heading = "Energy",
              unit = "Wh",
              min = 1,
              max = 1e6,
              blank = "Blank: it does not run out.",
              help = "Of a power station that nothing feeds during the day.")
          Double wattHours,
      @Input(
              key = "powerFrom",
              heading = "Power from",
              blank = "Blank: all day.",
              help = "When it is there, every day: generator running, hotel room.")
          LocalTime powerFrom,
      @Input(key = "powerTo", heading = "Power to", blank = "Blank: all day.") LocalTime powerTo,
      @Input(
              key = "fromDay",
              heading = "From day",
              blank = "Blank: from the first day.",
              help = "A van or a base that is not there on all days.")
          LocalDate fromDay,
      @Input(key = "toDay", heading = "To day", blank = "Blank: to the last day.") LocalDate toDay,
      @Input(
              key = "goneOn",
              heading = "No power on",
              blank = "Blank: on no date.",
              help =
                  "A date on which it fails or leaves early. With Now on Today, what was planned"
                      + " before stays.")
          LocalDate goneOn,
      @Input(
              key = "goneFrom",
              heading = "No power from",
              blank = "Blank: all that day.",
              help = "The time on that date.")
          LocalTime goneFrom,
      @Input(
              key = "goneTo",
              heading = "No power to",
              blank = "Blank: until that day ends.",
              help = "The time on that date at which it is back.")
          LocalTime goneTo) {
    private Supply named(String name) {
      return new Supply(
          name, watts, wattHours, powerFrom, powerTo, fromDay, toDay, goneOn, goneFrom, goneTo);
    }
  }

  /** A charger. */
  @Table(key = "chargers", heading = "Chargers", rows = 20)
  public record Charger(
      @Input(
              key = "charger",
              heading = "Charger",
              blank = "Blank: C1, C2 … by its row; mark it so.",
              help = "Each only once. Chargers alike, side by side, may be one row.")
          String charger,
      @Input(
              key = "supply",
              heading = "Supply",
              blank = "Blank: the only one of Supplies; of several a stop.",
              help = "A row of Supplies.")
          String supply,
      @Input(
              key = "channels",
              heading = "Channels",
              min = 1,
              max = 24,
              help = "How many batteries it holds.")
          Double channels,
      @Input(
              key = "amps",
              heading = "Current of a channel",
              form = NumberForm.ONE_DECIMAL,
              unit = "A",
              min = 0.05,
              max = 100,
              help = "With all channels in use that charge at a time.")
          Double amps,
      @Input(
              key = "volts",
              heading = "Charges at",
              unit = "V",
              min = 1,
              max = 96,
              blank = "Blank: the lower voltage of batteries that have two: the longer time.",
              help =
                  "Of batteries with two voltages only: at which of them it charges, 12 or 24. Its"
                      + " label says so: 16.8 V is 12 V, 33.6 V is 24 V.")
          Double volts,
      @Input(
              key = "types",
              heading = "Takes types",
              blank = "Blank: every type of its mount.",
              help = "Types of Battery types, with commas between them.")
          String types,
      @Input(
              key = "powerFrom",
              heading = "Power from",
              blank = "Blank: as its supply.",
              help = "When it has power, every day, if not all the hours of its supply.")
          LocalTime powerFrom,
      @Input(key = "powerTo", heading = "Power to", blank = "Blank: as its supply.")
          LocalTime powerTo,
      @Input(
              key = "mount",
              heading = "Mount",
              blank = "Blank: takes every mount.",
              help = "In the words of Battery types; several with commas.")
          String mount,
      @Input(
              key = "atOnce",
              heading = "Channels at a time",
              min = 1,
              max = 24,
              blank = "Blank: all.",
              help = "How many charge at a time; the others wait.")
          Double atOnce,
      @Input(
              key = "efficiency",
              heading = "Efficiency",
              form = NumberForm.SHARE,
              min = 0.3,
              max = 1,
              blank = "Blank: 80 %.",
              help = "What goes into the battery over what the supply gives.")
          Double efficiency,
      @Input(
              key = "usable",
              heading = "Usable from",
              form = NumberForm.SHARE,
              min = 0.5,
              max = 1,
              blank = "Blank: 100 %.",
              help = "State of charge from which a battery may be taken off it.")
          Double usable,
      @Input(
              key = "offFrom",
              heading = "Off from",
              blank = "Blank: never off.",
              help = "Off for sound, every day.")
          LocalTime offFrom,
      @Input(key = "offTo", heading = "Off to", blank = "Blank: never off.") LocalTime offTo,
      @Input(
              key = "roundTrip",
              heading = "Round trip",
              unit = "min",
              min = 0,
              max = 1440,
              blank = "Blank: it stands on set.",
              help = "From set to this charger and back.")
          Double roundTrip,
      @Input(
              key = "air",
              heading = "Air there",
              form = NumberForm.ONE_DECIMAL,
              unit = "°C|°F",
              min = -60,
              max = 140,
              blank =
                  "Blank: Air at the chargers in Project; without it as cold as outdoors, check.",
              help = "Where it charges.")
          Double air,
      @Input(
              key = "warmUp",
              heading = "Warm-up",
              form = NumberForm.TWO_DECIMALS,
              unit = "h",
              min = 0,
              max = 24,
              blank =
                  "Blank: Warm-up in Project; without it none, below 0 °C (32 °F) outdoors a stop.",
              help =
                  "Until the whole battery is above 0 °C (32 °F). Measure; large ones take over"
                      + " an hour.")
          Double warmUp) {
    private Charger named(String name) {
      return new Charger(
          name,
          supply,
          channels,
          amps,
          volts,
          types,
          powerFrom,
          powerTo,
          mount,
          atOnce,
          efficiency,
          usable,
          offFrom,
          offTo,
          roundTrip,
          air,
          warmUp);
    }
  }

  /** A battery that is not full, or not there, at call. */
  @Table(key = "atCall", heading = "Found at call", rows = 12)
  public record AtCall(
      @Input(key = "number", heading = "Battery", help = "Its number: B4.") String number,
      @Input(
              key = "charge",
              heading = "State of charge",
              form = NumberForm.SHARE,
              min = 0,
              max = 1,
              blank = "Blank: as planned.")
          Double charge,
      @Input(key = "absence", heading = "Not there", blank = "Blank: it is there.")
          BatteryAbsence absence) {}

  /** A battery that is not as planned at the hour of planning again. */
  @Table(key = "atNow", heading = "Found now", rows = 16)
  public record AtNow(
      @Input(key = "number", heading = "Battery", help = "Its number: B4.") String number,
      @Input(
              key = "charge",
              heading = "State of charge",
              form = NumberForm.SHARE,
              min = 0,
              max = 1,
              blank = "Blank: as planned.")
          Double charge,
      @Input(
              key = "position",
              heading = "Is on",
              blank = "Blank: where it is planned.",
              help = "A row of Positions.")
          String position,
      @Input(
              key = "charger",
              heading = "Charges on",
              blank = "Blank: as planned.",
              help = "A row of Chargers. Its warm-up begins at Now.")
          String charger,
      @Input(
              key = "shelf",
              heading = "On shelf or cart",
              blank = "Blank: as planned.",
              help = "yes: cart, case, pouch; on no position and no charger.")
          Boolean shelf,
      @Input(key = "absence", heading = "Not there", blank = "Blank: it is there.")
          BatteryAbsence absence) {}

  /** What runs on cells that are thrown away. */
  @Table(key = "disposables", heading = "Disposables", rows = 20)
  public record Disposable(
      @Input(key = "item", heading = "Item", help = "Transmitter, headset, remote.") String item,
      @Input(key = "cell", heading = "Cell", help = "As it is bought: AA, AAA, 9 V.") String cell,
      @Input(
              key = "quantity",
              heading = "Quantity",
              unit = "pcs",
              min = 1,
              max = 200,
              blank = "Blank: 1.",
              help = "Pieces alike.")
          Double quantity,
      @Input(
              key = "cells",
              heading = "Cells each",
              unit = "pcs",
              min = 1,
              max = 24,
              help = "Cells of one set.")
          Double cells,
      @Input(
              key = "hours",
              heading = "A set lasts",
              form = NumberForm.ONE_DECIMAL,
              unit = "h",
              min = 0.1,
              max = 2000,
              help = "Measure with your cells; what makers state is in the warm.")
          Double hours,
      @Input(
              key = "use",
              heading = "Hours a day",
              form = NumberForm.ONE_DECIMAL,
              unit = "h",
              min = 0.1,
              max = 24,
              blank = "Blank: from call to wrap.")
          Double use) {}
}
