package org.setpower.plan.lighting.input;

import java.time.LocalDate;
import java.time.LocalTime;
import org.setpower.pack.Chemistry;
import org.setpower.plan.batteryday.BatteryDayInputs;
import org.setpower.plan.common.Input;
import org.setpower.plan.common.InputTable;
import org.setpower.plan.common.Table;

/** What is filled for lights on batteries: types, lights, chargers. */
public final class BatteryTables {
  public static final InputTable<BatteryType> TYPES = InputTable.of(BatteryType.class);
  public static final InputTable<BatteryLoad> LOADS = InputTable.of(BatteryLoad.class);
  public static final InputTable<BatteryCharger> CHARGERS = InputTable.of(BatteryCharger.class);

  private BatteryTables() {}

  /** A type of battery and how many there are. */
  @Table(key = "batteryTypes", heading = "Battery types", rows = 8)
  public record BatteryType(
      @Input(key = "type", like = BatteryDayInputs.BatteryType.class) String type,
      @Input(key = "chemistry", like = BatteryDayInputs.BatteryType.class) Chemistry chemistry,
      @Input(key = "ampHours", like = BatteryDayInputs.BatteryType.class) Double ampHours,
      @Input(key = "wattHours", like = BatteryDayInputs.BatteryType.class) Double wattHours,
      @Input(key = "outputs", like = BatteryDayInputs.BatteryType.class) String outputs,
      @Input(key = "maxAmps", like = BatteryDayInputs.BatteryType.class) Double maxAmps,
      @Input(
              key = "owned",
              heading = "In stock",
              unit = "pcs",
              min = 0,
              max = 200,
              blank = "Blank: none.",
              help = "Batteries that the lights may use, numbered B1, B2 … down the rows.")
          Double owned,
      @Input(key = "cells", like = BatteryDayInputs.BatteryType.class) Double cells,
      @Input(key = "resistance", like = BatteryDayInputs.BatteryType.class) Double resistance,
      @Input(
              key = "health",
              like = BatteryDayInputs.BatteryType.class,
              blank = "Blank: 80 % is assumed; check.")
          Double health) {}

  /** Lights that work on batteries, each piece on its own. */
  @Table(key = "batteryLoads", heading = "Lights on batteries", rows = 24)
  public record BatteryLoad(
      @Input(key = "item", heading = "Item", help = "From Equipment; there it has its watts.")
          String item,
      @Input(key = "battery", heading = "Battery type", help = "A type of Battery types.")
          String battery,
      @Input(
              key = "quantity",
              like = BatteryDayInputs.Position.class,
              help = "Pieces alike, each with its own battery.")
          Double quantity,
      @Input(
              key = "watts",
              like = BatteryDayInputs.PowerDraw.class,
              blank = "Blank: as on Equipment; a stop without that.")
          Double watts,
      @Input(key = "minVolts", like = BatteryDayInputs.PowerDraw.class) Double minVolts,
      @Input(key = "maxVolts", like = BatteryDayInputs.PowerDraw.class) Double maxVolts,
      @Input(
              key = "from",
              heading = "On from",
              unit = ProjectTables.CLOCK,
              min = 0,
              max = 1,
              blank = "Blank: from call.",
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
              blank = "Blank: to wrap.",
              help = "When it is switched off. At or before On from: next morning.")
          Double to,
      @Input(key = "converter", like = BatteryDayInputs.PowerDraw.class) Double converter,
      @Input(
              key = "volts",
              like = BatteryDayInputs.Position.class,
              blank = "Blank: that of the battery type, if it has only one; else a stop.")
          Double volts,
      @Input(key = "measured", like = BatteryDayInputs.Position.class) LocalTime measured,
      @Input(
              key = "fromDay",
              heading = "From day",
              blank = "Blank: first day.",
              help = "First day on which it is used.")
          LocalDate fromDay,
      @Input(
              key = "toDay",
              heading = "To day",
              blank = "Blank: last day.",
              help = "Last day on which it is used.")
          LocalDate toDay,
      @Input(
              key = "group",
              heading = "Group",
              blank = "Blank: always counted.",
              help = "Scene or set, switched in Groups.")
          String group) {}

  /** A kind of charger; each row of Loads with its name is one or several of it. */
  @Table(key = "batteryChargers", heading = "Chargers", rows = 8)
  public record BatteryCharger(
      @Input(
              key = "charger",
              heading = "Charger",
              help = "An item of Loads: there it has its place, its hours and how many there are.")
          String charger,
      @Input(
              key = "channels",
              like = BatteryDayInputs.Charger.class,
              help = "How many batteries one of them holds.")
          Double channels,
      @Input(key = "amps", like = BatteryDayInputs.Charger.class) Double amps,
      @Input(key = "volts", like = BatteryDayInputs.Charger.class) Double volts,
      @Input(
              key = "air",
              like = BatteryDayInputs.Charger.class,
              blank = "Blank: as cold as outdoors; check.")
          Double air,
      @Input(key = "types", like = BatteryDayInputs.Charger.class, blank = "Blank: every type.")
          String types,
      @Input(key = "atOnce", like = BatteryDayInputs.Charger.class) Double atOnce,
      @Input(key = "efficiency", like = BatteryDayInputs.Charger.class) Double efficiency,
      @Input(key = "roundTrip", like = BatteryDayInputs.Charger.class) Double roundTrip,
      @Input(
              key = "warmUp",
              like = BatteryDayInputs.Charger.class,
              blank = "Blank: none; below 0 °C (32 °F) outdoors a stop.")
          Double warmUp) {}
}
