package org.setpower.plan.lighting.input;

import java.time.LocalDate;
import org.setpower.plan.common.Input;
import org.setpower.plan.common.InputTable;
import org.setpower.plan.common.NumberForm;
import org.setpower.plan.common.Table;

/** What is plugged in: equipment, loads, readings of the clamp meter. */
public final class LoadTables {
  public static final InputTable<Equipment> EQUIPMENT = InputTable.of(Equipment.class);
  public static final InputTable<Load> LOADS = InputTable.of(Load.class);
  public static final InputTable<Reading> READINGS = InputTable.of(Reading.class);

  private LoadTables() {}

  /** A type of device. */
  @Table(key = "equipment", heading = "Equipment", rows = 60)
  public record Equipment(
      @Input(key = "item", heading = "Item", help = "One row for each type of device.") String item,
      @Input(
              key = "watts",
              heading = "Power",
              unit = "W",
              min = 0,
              max = 500_000,
              help = "At full level, from the type plate.")
          Double watts,
      @Input(
              key = "powerFactor",
              heading = "Power factor",
              form = NumberForm.TWO_DECIMALS,
              min = 0.1,
              max = 1,
              blank = "Blank: 0.9; 1 for heaters and tungsten.",
              help = "From the type plate.")
          Double powerFactor,
      @Input(
              key = "harmonic",
              heading = "Third harmonic",
              form = NumberForm.SHARE,
              min = 0,
              max = 1,
              blank =
                  "Blank: 0 for heaters, tungsten and motors; for electronic 30 % of the power"
                      + " factor, below power factor 0.9 up to 80 %, with a check.",
              help =
                  "Share of the fundamental current, from the data sheet; it adds up in the neutral.")
          Double harmonic,
      @Input(
              key = "leading",
              heading = "Leading",
              blank = "Blank: no.",
              help = "Whether the power factor is leading; a generator may lose control of it.")
          Boolean leading,
      @Input(
              key = "connection",
              heading = "Connection",
              blank = "Blank: line-neutral; line-line on an outlet of two legs.",
              help = "Conductors that it uses.")
          Connection connection,
      @Input(
              key = "inrush",
              heading = "Kind of load",
              blank = "Blank: electronic.",
              help = "heater, tungsten, electronic (LED, discharge, chargers) or motor.")
          InrushClass inrush,
      @Input(
              key = "start",
              heading = "Start",
              form = NumberForm.ONE_DECIMAL,
              min = 1,
              max = 20,
              blank = "Blank: 3 for motors, else 1.",
              help = "Times its power at the start of one.")
          Double start,
      @Input(
              key = "minVolts",
              heading = "Works from",
              unit = "V",
              min = 0,
              max = 700,
              blank = "Blank: any voltage.",
              help = "Lowest voltage it works on.")
          Double minVolts,
      @Input(
              key = "maxVolts",
              heading = "Works to",
              unit = "V",
              min = 0,
              max = 700,
              blank = "Blank: any voltage.",
              help = "Highest voltage it takes.")
          Double maxVolts,
      @Input(
              key = "leakage",
              heading = "Leakage",
              form = NumberForm.ONE_DECIMAL,
              unit = "mA",
              min = 0,
              max = 100,
              blank =
                  "Blank: 1 mA, from 2 A on 0.5 mA/A; heaters and tungsten 0.75 mA/kW, at least"
                      + " 0.25 mA; at most 5 mA.",
              help = "Standing earth leakage of one.")
          Double leakage,
      @Input(
              key = "plug",
              heading = "Plug",
              blank = "Blank: fits the outlet.",
              help = "Another connector than the outlet's needs an adaptor.")
          Connector plug,
      @Input(
              key = "stock",
              heading = "In stock",
              unit = "pcs",
              min = 0,
              max = 10_000,
              blank = "Blank: none, all are ordered.",
              help = "How many there are.")
          Double stock) {}

  /** Something that is plugged in. */
  @Table(key = "loads", heading = "Loads", rows = 200)
  public record Load(
      @Input(key = "item", heading = "Item", help = "Item from Equipment.") String item,
      @Input(
              key = "place",
              heading = "Place",
              help = "Outlet A1-3, range A1-1…6, or the end of a cable run.")
          String place,
      @Input(
              key = "quantity",
              heading = "Qty",
              unit = "pcs",
              min = 0,
              max = 9999,
              blank = "Blank: 1.",
              help = "How many of them; a range takes them in turn.")
          Double quantity,
      @Input(
              key = "level",
              heading = "Level",
              form = NumberForm.SHARE,
              min = 0,
              max = 1,
              blank = "Blank: 100 %.",
              help =
                  "Dimmer level they are planned at, as a share of power. Tungsten on a dimmer"
                      + " draws the root of it in amps, with third harmonics in the neutral.")
          Double level,
      @Input(
              key = "fromDay",
              heading = "From day",
              blank = "Blank: first day.",
              help = "First day it is used.")
          LocalDate fromDay,
      @Input(
              key = "toDay",
              heading = "To day",
              blank = "Blank: last day.",
              help = "Last day it is used.")
          LocalDate toDay,
      @Input(
              key = "from",
              heading = "On from",
              unit = ProjectTables.CLOCK,
              min = 0,
              max = 1,
              blank = "Blank: from Call.",
              help =
                  "When it is switched on."
                      + " A time before Call and before the Wrap of a night is the next morning.")
          Double from,
      @Input(
              key = "to",
              heading = "On to",
              unit = ProjectTables.CLOCK,
              min = 0,
              max = 1,
              blank = "Blank: to Wrap.",
              help = "When it is switched off. At or before On from: next morning.")
          Double to,
      @Input(
              key = "connection",
              heading = "Connection",
              blank = "Blank: as on Equipment.",
              help = "Where the outlet leaves it open.")
          Connection connection,
      @Input(
              key = "group",
              heading = "Group",
              blank = "Blank: always counted.",
              help = "Scene or set, switched in Groups.")
          String group,
      @Input(
              key = "department",
              heading = "Department",
              blank = "Blank: not printed.",
              help = "Who brings it.")
          String department,
      @Input(
              key = "location",
              heading = "Location",
              blank = "Blank: not printed.",
              help = "Where it stands.")
          String location,
      @Input(
              key = "leg",
              heading = "Leg decided",
              blank = "Blank: the outlet's; where it has several, the suggested one, with a check.",
              help = "Leg or pair of legs. The decision counts.")
          LegWord leg) {}

  /** What a clamp meter showed. */
  @Table(key = "readings", heading = "Clamp-meter readings", rows = 24)
  public record Reading(
      @Input(
              key = "place",
              heading = "Place",
              help = "Source, distro, outlet or end of a cable run.")
          String place,
      @Input(key = "date", heading = "Date", help = "Day of the reading.") LocalDate date,
      @Input(
              key = "time",
              heading = "Time",
              unit = ProjectTables.CLOCK,
              min = 0,
              max = 1,
              help =
                  "Time of the reading."
                      + " A time before Call and before the Wrap of a night is the next morning.")
          Double time,
      @Input(
              key = "l1",
              heading = "L1",
              form = NumberForm.ONE_DECIMAL,
              unit = "A",
              min = 0,
              max = 6000,
              blank = "Blank: not read.",
              help = "Current of L1.")
          Double l1,
      @Input(
              key = "l2",
              heading = "L2",
              form = NumberForm.ONE_DECIMAL,
              unit = "A",
              min = 0,
              max = 6000,
              blank = "Blank: not read.",
              help = "Current of L2.")
          Double l2,
      @Input(
              key = "l3",
              heading = "L3",
              form = NumberForm.ONE_DECIMAL,
              unit = "A",
              min = 0,
              max = 6000,
              blank = "Blank: not read.",
              help = "Current of L3.")
          Double l3) {}
}
