package org.setpower.plan.lighting.input;

import org.setpower.plan.finding.FindingKey;
import org.setpower.plan.finding.Severity;

/** What can be wrong in a lighting power plan. */
public enum LightingFinding implements FindingKey {
  /** Arguments: units, the units of figures. */
  UNITS_LATE("units.late", Severity.CHECK),
  INSTALLATION_OPEN("installation.open", Severity.CHECK),
  /** Arguments: what is typed. */
  INSTALLATION_WRONG("installation.wrong", Severity.DANGER),
  DAY_SHOWN_UNKNOWN("dayShown", Severity.CHECK),
  DAY_TEMPERATURE_OPEN("day.temperature", Severity.CHECK),
  /** Arguments: min., max. */
  DAY_TEMPERATURES("day.temperatures", Severity.CHECK),
  /** Arguments: max. temperature with its unit. */
  DAY_HOT("day.hot", Severity.CHECK),
  /** Arguments: times of the other row. */
  DAY_OVERLAP("day.overlap", Severity.CHECK),
  /** Arguments: connector, V. */
  OUTLET_VOLTS("outlet.volts", Severity.DANGER),
  RCD_AC("outlet.rcdAc", Severity.CHECK),
  /** Arguments: distro. */
  SUPPLY_NONE("supply.none", Severity.DANGER),
  /** Arguments: name, runs. */
  SUPPLY_TWICE("supply.twice", Severity.DANGER),
  /** Arguments: name. */
  SUPPLY_LOOP("supply.loop", Severity.DANGER),
  /** Arguments: name. */
  SUPPLY_FED("supply.fed", Severity.DANGER),
  /** Arguments: system, legs of its run. */
  SYSTEM_MISMATCH("supply.system", Severity.DANGER),
  SYSTEM_BLANK("supply.systemBlank", Severity.DANGER),
  /** Arguments: V typed, V line to line. */
  VOLTS_TO_NEUTRAL("supply.volts", Severity.CHECK),
  MAIN_BREAKER_BLANK("supply.breaker", Severity.DANGER),
  /** Arguments: leg, A, time, breaker A. */
  SUPPLY_OVER("supply.over", Severity.DANGER),
  ZS_OPEN("supply.loopOpen", Severity.CHECK),
  /** Arguments: items. */
  NOT_COUNTED("supply.uncounted", Severity.DANGER),
  GENERATOR_MISSING("supply.noGenerator", Severity.CHECK),
  /** Arguments: distro. */
  DISTRO_UNKNOWN("outlet.distro", Severity.STOP),
  /** Arguments: what is typed. */
  NUMBERS_UNREADABLE("outlet.numbers", Severity.STOP),
  /** Arguments: outlet. */
  NUMBERS_TWICE("outlet.twice", Severity.DANGER),
  BREAKER_BLANK("outlet.breakerBlank", Severity.DANGER),
  /** Arguments: what is typed. */
  BREAKER_UNREADABLE("outlet.breakerWrong", Severity.DANGER),
  /** Arguments: legs. */
  LEGS_MISSING("outlet.legs", Severity.DANGER),
  /** Arguments: legs, connector. */
  PINS_LEGS("outlet.pins", Severity.DANGER),
  /** Arguments: places, the most plugs in one. */
  SPLITTER("outlet.splitter", Severity.CHECK),
  /** Arguments: breaker A, connector, connector A. */
  CONNECTOR_SMALL("outlet.connector", Severity.DANGER),
  /** Arguments: breaker A. */
  RCD_NONE("outlet.rcdNone", Severity.DANGER),
  RCD_OPEN("outlet.rcdOpen", Severity.CHECK),
  /** Arguments: breaker A. */
  GFCI_NONE("outlet.gfciNone", Severity.CHECK),
  /** Arguments: mA. */
  GFCI_HIGH("outlet.gfciHigh", Severity.CHECK),
  /** Arguments: what is typed. */
  RCD_UNREADABLE("outlet.rcdWrong", Severity.DANGER),
  /** Arguments: its mA, mA of those behind it, where these are. */
  RCD_SELECTIVITY("outlet.rcdSelectivity", Severity.CHECK),
  /** Arguments: place, mA, RCD mA. */
  RCD_LEAKAGE("outlet.rcdLeakage", Severity.CHECK),
  /** Arguments: place, mA, RCD mA. */
  RCD_TRIPS("outlet.rcdTrips", Severity.STOP),
  /** Arguments: the same; some of it is assumed. */
  RCD_MAY_TRIP("outlet.rcdMayTrip", Severity.CHECK),
  /** Arguments: place, A, time, breaker A. */
  OUTLET_OVER("outlet.over", Severity.DANGER),
  /** Arguments: place, A at full level, breaker A. */
  FULL_LEVEL("outlet.full", Severity.CHECK),
  /** Arguments: place, A, breaker A. */
  OUTLET_CONTINUOUS("outlet.continuous", Severity.CHECK),
  /** Arguments: what is typed. */
  PLACE_UNKNOWN("place.unknown", Severity.DANGER),
  /** Arguments: place. */
  NO_SUPPLY("place.noSupply", Severity.DANGER),
  /** Arguments: name. */
  SUPPLY_UNCLEAR("place.unclear", Severity.DANGER),
  /** Arguments: what is typed. */
  RANGE_ON_RUN("run.range", Severity.STOP),
  /** Arguments: what is typed. */
  SIZE_UNREADABLE("run.size", Severity.DANGER),
  /** Arguments: size, type, rule. */
  RATING_UNKNOWN("run.rating", Severity.DANGER),
  /** Arguments: maker's rating, A of the table. */
  MAKER_HIGH("run.makerHigh", Severity.CHECK),
  CLOSED_DRUM("run.closedDrum", Severity.DANGER),
  /** Arguments: °C. */
  TOO_HOT("run.hot", Severity.DANGER),
  /** Arguments: table, how many runs are rated by it. */
  RATING_MEMORY("rating.memory", Severity.CHECK),
  /** Arguments: breaker A, rating A, temperature class °C. */
  OVERLOAD("run.overload", Severity.DANGER),
  /** Arguments: breaker A, rating A, downstream breaker A. */
  OVERLOAD_SHORT("run.short", Severity.CHECK),
  /** Arguments: breaker A, rating A, rule, A by VDE. */
  OVERLOAD_STANDARD("run.standard", Severity.CHECK),
  /** Arguments: circuits, rating A, rule, breaker A. */
  OVERLOAD_MULTI("run.multi", Severity.CHECK),
  /** Arguments: breaker A, rating A with harmonics, rating A without. */
  OVERLOAD_HARMONIC("run.harmonic", Severity.CHECK),
  /** Arguments: A, time, rating A. */
  RUN_OVER("run.over", Severity.DANGER),
  /** Arguments: A, time, rating A. */
  NEUTRAL_OVER("run.neutral", Severity.DANGER),
  /** Arguments: what is needed, cores. */
  CORES_MISSING("run.cores", Severity.DANGER),
  /** Arguments: size, cores. */
  CORES_DIFFER("run.coresDiffer", Severity.DANGER),
  /** Arguments: size or cores as typed. */
  FEEDER_CORES("run.feederCores", Severity.DANGER),
  /** Arguments: type on the sheath, type. */
  TYPE_DIFFERS("run.typeDiffers", Severity.DANGER),
  /** Arguments: connector, cores. */
  PINS_MORE("run.pins", Severity.CHECK),
  /** Arguments: cores, connector of the outlet. */
  PINS_FEWER("run.pinsFewer", Severity.STOP),
  /** Arguments: connector of the outlet, connector of the cable, legs. */
  ADAPTOR_LEGS("run.adaptorLegs", Severity.CHECK),
  /** Arguments: pieces, length. */
  PIECES_SHORT("run.pieces", Severity.STOP),
  /** Arguments: what is typed. */
  PIECES_UNREADABLE("run.piecesWrong", Severity.STOP),
  MAKER_SOURCE("run.makersSource", Severity.CHECK),
  /** Arguments: A, A needed. */
  FAULT_SLOW("run.fault", Severity.DANGER),
  /** Arguments: A, A needed. */
  FAULT_GENERATOR("run.faultGenerator", Severity.DANGER),
  FAULT_OPEN("run.faultOpen", Severity.CHECK),
  /** Arguments: share, max. share, the run with most of it. */
  DROP_OVER("run.drop", Severity.CHECK),
  CANNOT_CARRY("run.collapse", Severity.DANGER),
  /** Arguments: item. */
  EQUIPMENT_UNKNOWN("load.equipment", Severity.STOP),
  /** Arguments: item. */
  WATTS_UNKNOWN("load.watts", Severity.STOP),
  /** Arguments: leg decided, legs of the outlet. */
  LEG_CONTRADICTS("load.leg", Severity.DANGER),
  /** Arguments: connection, legs of the outlet. */
  PAIR_MISSING("load.pair", Severity.DANGER),
  /** Arguments: leg suggested. */
  LEG_OPEN("load.legOpen", Severity.CHECK),
  DAYS_CROSSED("load.days", Severity.STOP),
  /** Arguments: date, first day, last day. */
  DAY_AWAY("load.dayAway", Severity.CHECK),
  NEVER_ON("load.never", Severity.CHECK),
  /** Arguments: plug, connector, A at full level, breaker A. */
  PLUG_LARGE("load.plug", Severity.CHECK),
  /** Arguments: from, to, call, wrap. */
  LOAD_CLOCK("load.clock", Severity.CHECK),
  /** Arguments: from, to, call, wrap. */
  LOAD_MORNING("load.morning", Severity.CHECK),
  /** Arguments: V, lowest V. */
  UNDERVOLTAGE("load.undervoltage", Severity.STOP),
  /** Arguments: V, lowest V. */
  UNDERVOLTAGE_DIM("load.dim", Severity.CHECK),
  /** Arguments: V, highest V. */
  OVERVOLTAGE("load.overvoltage", Severity.DANGER),
  /** Arguments: place. */
  LOAD_OUTLET("load.outlet", Severity.DANGER),
  /** Arguments: item, breaker A. */
  PLUG_OPEN("load.plugOpen", Severity.CHECK),
  /** Arguments: plug, breaker A. */
  LOAD_RCD("load.rcd", Severity.DANGER),
  /** Arguments: what feeds it. */
  LOAD_UPSTREAM("load.upstream", Severity.DANGER),
  /** Arguments: source, time. */
  SUPPLY_OFF("load.off", Severity.STOP),
  /** Arguments: source, when it is off. */
  LOAD_RESTRIKE("load.restrike", Severity.CHECK),
  /** Arguments: W. */
  WATTS_SMALL("equipment.watts", Severity.CHECK),
  /** Arguments: power factor, share that counts. */
  HARMONIC_OPEN("equipment.harmonic", Severity.CHECK),
  /** Arguments: name. */
  GENERATOR_UNKNOWN("generator.unknown", Severity.STOP),
  /** Arguments: loads. */
  GENERATOR_UNCOUNTED("generator.uncounted", Severity.DANGER),
  /** Arguments: kVA needed, kVA left. */
  GENERATOR_OVER("generator.over", Severity.DANGER),
  /** Arguments: kW needed, kW left. */
  ENGINE_OVER("generator.engine", Severity.DANGER),
  /** Arguments: share. */
  GENERATOR_HIGH("generator.high", Severity.CHECK),
  /** Arguments: kVA required, size kVA. */
  GENERATOR_SMALL("generator.small", Severity.CHECK),
  /** Arguments: hours the tank lasts, time, hours without a stop. */
  GENERATOR_TANK("generator.tank", Severity.CHECK),
  /** Arguments: min. temperature with its unit. */
  GENERATOR_COLD("generator.cold", Severity.CHECK),
  /** Arguments: when it is off, rows of Loads. */
  GENERATOR_SOUND("generator.sound", Severity.CHECK),
  GENERATOR_LEADING("generator.leading", Severity.CHECK),
  /** Arguments: lowest A, highest A, difference of the rated current, limit. */
  GENERATOR_IMBALANCE("generator.imbalance", Severity.CHECK),
  /** Arguments: off from, off to. */
  GENERATOR_CLOCK("generator.clock", Severity.CHECK),
  /** Arguments: share. */
  GENERATOR_WET("generator.wet", Severity.CHECK),
  GENERATOR_SIZE_OPEN("generator.size", Severity.CHECK),
  GENERATOR_FUEL_OPEN("generator.fuel", Severity.CHECK),
  ALTITUDE_OPEN("generator.altitude", Severity.CHECK),
  DERATE_UNKNOWN("generator.derate", Severity.DANGER),
  BOND_OPEN("generator.bond", Severity.CHECK),
  /** Arguments: where. */
  BOND_WRONG("generator.bondWrong", Severity.DANGER),
  /** Arguments: item. */
  BATTERY_WATTS("battery.watts", Severity.STOP),
  /** Arguments: days, what is wrong on them. */
  BATTERY_NIGHT_DANGER("battery.nightDanger", Severity.DANGER),
  /** Arguments: days, what is wrong on them. */
  BATTERY_NIGHT_STOP("battery.nightStop", Severity.STOP),
  /** Arguments: days, what is wrong on them. */
  BATTERY_NIGHT_CHECK("battery.nightCheck", Severity.CHECK),
  /** Arguments: charger. */
  CHARGER_UNPLUGGED("battery.charger", Severity.CHECK),
  /** Arguments: A, A of the table that allows most. */
  COMPARISON_OVER("comparison.over", Severity.CHECK),
  /** Arguments: what is typed. */
  READING_PLACE("reading.place", Severity.STOP),
  /** Arguments: leg, A read, A planned. */
  READING_OFF("reading.off", Severity.CHECK);

  private final String key;
  private final Severity severity;

  LightingFinding(String key, Severity severity) {
    this.key = "lighting." + key;
    this.severity = severity;
  }

  @Override
  public String key() {
    return key;
  }

  @Override
  public Severity severity() {
    return severity;
  }

  @Override
  public boolean isResult() {
    return switch (this) {
      case NO_SUPPLY, SUPPLY_UNCLEAR, NOT_COUNTED, GENERATOR_UNCOUNTED -> true;
      default -> false;
    };
  }
}
