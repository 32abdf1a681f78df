package org.setpower.plan.lighting.input;

import java.time.LocalDate;
import org.setpower.pack.Chemistry;
import org.setpower.plan.common.Input;
import org.setpower.plan.common.InputTable;
import org.setpower.plan.common.NumberForm;
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
      @Input(key = "type", heading = "Type", help = "One row for each type of battery.")
          String type,
      @Input(key = "chemistry", heading = "Chemistry", help = "What its cells are made of.")
          Chemistry chemistry,
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
              help = "12, 24 or 48; several with a slash: 12/24.")
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
              key = "owned",
              heading = "In stock",
              unit = "pcs",
              min = 0,
              max = 200,
              blank = "Blank: none.",
              help = "Batteries that the lights may use, numbered B1, B2 … down the rows.")
          Double owned,
      @Input(
              key = "cells",
              heading = "Cells in series",
              min = 1,
              max = 200,
              blank = "Blank: from energy and capacity; a stop where that is not clear.",
              help = "At its highest voltage.")
          Double cells,
      @Input(
              key = "health",
              heading = "Health",
              form = NumberForm.SHARE,
              min = 0.3,
              max = 1,
              blank = "Blank: 80 % is assumed; check.",
              help = "Share of the rated capacity that a full battery still gives.")
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
              heading = "Quantity",
              unit = "pcs",
              min = 1,
              max = 40,
              blank = "Blank: 1.",
              help = "Pieces alike, each with its own battery.")
          Double quantity,
      @Input(
              key = "watts",
              heading = "Power",
              form = NumberForm.ONE_DECIMAL,
              unit = "W",
              min = 0.1,
              max = 20_000,
              blank = "Blank: as on Equipment; a stop without that.",
              help = "Of one piece, as it works.")
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
              help = "When it is switched off. At or before From: next morning.")
          Double to,
      @Input(
              key = "converter",
              heading = "Converter efficiency",
              form = NumberForm.SHARE,
              min = 0.3,
              max = 1,
              blank = "Blank: no converter.",
              help = "Of what sits between battery and device, from its label.")
          Double converter,
      @Input(
              key = "volts",
              heading = "Nominal voltage",
              form = NumberForm.ONE_DECIMAL,
              unit = "V",
              min = 1,
              max = 96,
              blank = "Blank: that of the battery type, if it has only one; else a stop.",
              help = "12, 24 or 48: what plate or cable ask for.")
          Double volts,
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
              heading = "Channels",
              min = 1,
              max = 24,
              help = "How many batteries one of them holds.")
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
              key = "air",
              heading = "Air there",
              form = NumberForm.ONE_DECIMAL,
              unit = ProjectTables.TEMPERATURE,
              min = -60,
              max = 140,
              blank = "Blank: as cold as outdoors; check.",
              help = "Where it charges.")
          Double air,
      @Input(
              key = "types",
              heading = "Takes types",
              blank = "Blank: every type.",
              help = "Types of Battery types, with commas between them.")
          String types,
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
              key = "roundTrip",
              heading = "Round trip",
              unit = "min",
              min = 0,
              max = 1440,
              blank = "Blank: it stands on set.",
              help = "From set to this charger and back.")
          Double roundTrip,
      @Input(
              key = "warmUp",
              heading = "Warm-up",
              form = NumberForm.TWO_DECIMALS,
              unit = "h",
              min = 0,
              max = 24,
              blank = "Blank: none; below 0 °C (32 °F) outdoors a stop.",
              help =
                  "Until the whole battery is above 0 °C (32 °F). Measure; large ones take over"
                      + " an hour.")
          Double warmUp) {}
}
