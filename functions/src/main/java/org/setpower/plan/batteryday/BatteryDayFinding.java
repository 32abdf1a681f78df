package org.setpower.plan.batteryday;

import org.setpower.plan.finding.FindingKey;
import org.setpower.plan.finding.Severity;

/** What can be wrong in a battery plan. */
public enum BatteryDayFinding implements FindingKey {
  NO_DAY("project.noDay", Severity.STOP),
  /** Arguments: date. */
  DAY_UNKNOWN("project.day", Severity.STOP),
  /** Arguments: date. */
  DAY_UNCLEAR("project.dayUnclear", Severity.STOP),
  /** Arguments: date. */
  DAY_BEFORE_UNCLEAR("project.before", Severity.CHECK),
  /** Arguments: time, call, wrap. */
  NOW_OUTSIDE("project.now", Severity.STOP),
  /** Arguments: pieces, the most. */
  TOO_LARGE("project.tooLarge", Severity.STOP),
  TOO_MANY_CHANGES("project.changes", Severity.STOP),
  NOT_PROVEN("project.notProven", Severity.CHECK),
  /** Arguments: date shown. */
  TODAY_BLANK("project.todayBlank", Severity.CHECK),
  /** Arguments: date of Today, date shown. */
  TODAY_OTHER("project.todayOther", Severity.STOP),
  /** Arguments: batteries, time. */
  NOT_READY("project.notReady", Severity.CHECK),
  /** Arguments: time, position, position, how often. */
  CHANGED_TOGETHER("project.together", Severity.CHECK),

  /** Arguments: time. */
  DAY_TIMES("days.times", Severity.STOP),
  DAY_OVERLAP("days.overlap", Severity.STOP),
  /** Arguments: dark hours and minutes. */
  DAY_DARK("days.dark", Severity.STOP),
  /** Arguments: °C assumed. */
  MIN_BLANK("days.minBlank", Severity.CHECK),
  /** Arguments: °C. */
  DAY_HOT("days.hot", Severity.CHECK),
  MAX_BLANK("days.maxBlank", Severity.CHECK),
  MAX_UNUSED("days.maxUnused", Severity.CHECK),
  DAY_CROSSED("days.crossed", Severity.STOP),
  BREAK_HALF("days.breakHalf", Severity.CHECK),
  /** Arguments: from, to. */
  BREAK_OUTSIDE("days.breakOutside", Severity.CHECK),

  /** Arguments: what is typed. */
  TYPE_OUTPUTS("types.outputs", Severity.STOP),
  /** Arguments: Wh, Ah, V of them, nominal V. */
  TYPE_VOLTS("types.volts", Severity.STOP),
  /** Arguments: Wh, Wh of cells and Ah. */
  TYPE_ENERGY("types.energy", Severity.CHECK),
  HEALTH_BLANK("types.health", Severity.CHECK),

  /** Arguments: type. */
  TYPE_UNKNOWN("type.unknown", Severity.STOP),
  /** Arguments: type. */
  TYPE_UNCLEAR("type.unclear", Severity.STOP),

  /** Arguments: column, pieces. */
  NOT_WHOLE("stock.whole", Severity.STOP),
  /** Arguments: pieces. */
  STOCK_NONE("stock.none", Severity.CHECK),
  /** Arguments: what is typed. */
  NUMBERS_UNREADABLE("stock.numbers", Severity.DANGER),
  /** Arguments: number, first, last. */
  NUMBER_NOT_HERE("stock.notHere", Severity.DANGER),
  /** Arguments: number. */
  NUMBER_TWICE("stock.twice", Severity.DANGER),
  /** Arguments: reserve, batteries. */
  RESERVE_TOO_LARGE("stock.reserve", Severity.STOP),
  LENT_TO_BLANK("stock.lentTo", Severity.CHECK),
  LENT_DATES("stock.lentDates", Severity.STOP),
  /** Arguments: date, department. */
  LENT_OVERDUE("stock.overdue", Severity.CHECK),
  /** Arguments: needed, to plan with, short. */
  SHORT_OF("stock.short", Severity.CHECK),
  /** Arguments: needed, to plan with, short. */
  SHORT_NOT_PROVEN("stock.shortNotProven", Severity.CHECK),
  /** Arguments: needed, to plan with, numbers of the reserve. */
  SHORT_RESERVE("stock.shortReserve", Severity.CHECK),
  /** Arguments: the same, and short with them. */
  SHORT_WITH_RESERVE("stock.shortWithReserve", Severity.CHECK),
  /** Arguments: how many more. */
  SHORT_CARRIED("stock.shortCarried", Severity.CHECK),
  /** Arguments: needed. */
  STOCK_LASTS("stock.lasts", Severity.CHECK),
  /** Arguments: time. */
  SHORT_FROM_NOW("stock.shortFromNow", Severity.CHECK),
  /** Arguments: time, numbers of the reserve. */
  RESERVE_FROM_NOW("stock.reserveFromNow", Severity.CHECK),
  /** Arguments: first battery, its number. */
  NUMBERS_MOVE("stock.move", Severity.CHECK),
  /** Arguments: batteries hired above, first battery without and with them, its number. */
  NUMBERS_MOVED("stock.moved", Severity.CHECK),
  IN_HAND_HALF("stock.inHand", Severity.STOP),
  /** Arguments: positions. */
  STOCK_WITHOUT("stock.without", Severity.CHECK),

  BATTERY_QUARANTINE("battery.quarantine", Severity.DANGER),
  BATTERY_LENT("battery.lent", Severity.HOLD),
  /** Arguments: date. */
  BATTERY_COMES("battery.comes", Severity.HOLD),
  BATTERY_RESERVE("battery.reserve", Severity.HOLD),
  BATTERY_ROW("battery.row", Severity.STOP),

  /** Arguments: mount of the battery, mount of the position. */
  MOUNT("position.mount", Severity.STOP),
  /** Arguments: voltages of the battery, voltage asked of each. */
  NO_OUTPUT("position.output", Severity.STOP),
  CONNECTION_BLANK("position.connection", Severity.STOP),
  /** Arguments: connection. */
  CONNECTION_ALONE("position.alone", Severity.STOP),
  NO_LOAD("position.noLoad", Severity.STOP),
  /** Arguments: what is typed. */
  INPUT_VOLTS("position.input", Severity.STOP),
  /** Arguments: device. */
  DEVICE_STOPS("position.device", Severity.STOP),
  /** Arguments: V, limit V. */
  TOUCH("position.touch", Severity.DANGER),
  /** Arguments: A, limit A. */
  AMPS("position.amps", Severity.DANGER),
  /** Arguments: A, limit A. */
  HOT_SWAP_AMPS("position.hotSwapAmps", Severity.DANGER),
  CABLE_SIZE("position.cableSize", Severity.STOP),
  /** Arguments: what is typed. */
  CABLE_UNKNOWN("position.cableUnknown", Severity.STOP),
  /** Arguments: A, rating A. */
  CABLE_AMPS("position.cableAmps", Severity.DANGER),
  /** Arguments: W. */
  CABLE_CARRY("position.cableCarry", Severity.STOP),
  /** Arguments: chemistry, °C. */
  TEMPERATURE("position.temperature", Severity.STOP),
  /** Arguments: °C, hottest in °C and °F. */
  TOO_HOT("position.hot", Severity.DANGER),
  /** Arguments: W, °C. */
  NO_START("position.noStart", Severity.STOP),
  /** Arguments: min. */
  TOO_SHORT("position.short", Severity.STOP),
  /** Arguments: hours and minutes typed, Wh that they are, Wh of the label, hours and minutes. */
  MEASURED_LONG("position.measuredLong", Severity.CHECK),
  /** Arguments: hours and minutes typed, calculated. */
  MEASURED_FAR("position.measuredFar", Severity.CHECK),
  MEASURED_ZERO("position.measuredZero", Severity.STOP),
  /** Arguments: hours and minutes calculated, hours and minutes by the energy on the label. */
  RUNTIME_BY_LABEL("position.byLabel", Severity.CHECK),
  /** Arguments: share typed, share used. */
  CHANGE_EARLIER("position.changeEarlier", Severity.CHECK),
  DAYS_CROSSED("position.days", Severity.STOP),
  /** Arguments: type. */
  NO_STOCK("position.noStock", Severity.STOP),
  /** Arguments: W of the row, W in all. */
  BOTH_POWERS("position.bothPowers", Severity.CHECK),
  /** Arguments: pieces, hours and minutes, time at which it begins. */
  RUNS_DRY("position.dark", Severity.STOP),
  /** Arguments: the same, and numbers of the reserve. */
  RUNS_DRY_RESERVE("position.darkReserve", Severity.STOP),

  /** Arguments: position. */
  POSITION_UNKNOWN("device.position", Severity.STOP),
  VOLTS_BLANK("device.volts", Severity.STOP),
  /** Arguments: V, max. V. */
  OVER_VOLTS("device.over", Severity.DANGER),
  /** Arguments: V, min. V. */
  UNDER_VOLTS("device.under", Severity.STOP),
  VOLTS_CROSSED("device.crossed", Severity.STOP),
  /** Arguments: call, wrap. */
  OUTSIDE_DAY("device.times", Severity.CHECK),

  GONE_HALF("supply.goneHalf", Severity.STOP),
  /** Arguments: W, dark hours and minutes with more, and as planned; W that do. */
  SUPPLY_ENOUGH("supply.enough", Severity.CHECK),

  /** Arguments: supply. */
  SUPPLY_UNKNOWN("charger.supply", Severity.STOP),
  /** Arguments: supply. */
  SUPPLY_UNCLEAR("charger.supplyUnclear", Severity.STOP),
  TAKES_NOTHING("charger.nothing", Severity.CHECK),
  /** Arguments: type, A, max. A. */
  TOO_FAST("charger.fast", Severity.DANGER),
  /** Arguments: type, chemistry. */
  NOT_CHARGED("charger.chemistry", Severity.STOP),
  /** Arguments: °C. */
  CHARGES_COLD("charger.cold", Severity.DANGER),
  /** Arguments: °C. */
  CHARGES_HOT("charger.hot", Severity.DANGER),
  /** Arguments: °C. */
  CHARGES_WARM("charger.warm", Severity.CHECK),
  /** Arguments: °C, share. */
  CHARGES_COOL("charger.cool", Severity.CHECK),
  /** Arguments: °C. */
  AIR_BLANK("charger.air", Severity.CHECK),
  /** Arguments: °C. */
  WARM_UP_BLANK("charger.warmUpBlank", Severity.DANGER),
  /** Arguments: h, least h. */
  WARM_UP_IMPOSSIBLE("charger.warmUpImpossible", Severity.DANGER),
  /** Arguments: h. */
  WARM_UP_SHORT("charger.warmUpShort", Severity.CHECK),
  /** Arguments: type, V. */
  CHARGE_VOLTS_BLANK("charger.voltsBlank", Severity.CHECK),
  /** Arguments: type, V typed. */
  CHARGE_VOLTS_UNKNOWN("charger.volts", Severity.STOP),
  /** Arguments: type, W, W of the supply. */
  NO_WATTS("charger.watts", Severity.STOP),
  HOURS_HALF("charger.hours", Severity.STOP),
  /** Arguments: supply. */
  HOURS_APART("charger.apart", Severity.STOP),
  /** Arguments: time until which it charges. */
  CHARGES_AT_NIGHT("charger.night", Severity.CHECK),
  /** Arguments: charger, its supply. */
  CHARGER_MOVED("charger.moved", Severity.CHECK),
  /** Arguments: at a time, channels. */
  CHANNELS("charger.atOnce", Severity.CHECK),
  /** Arguments: type, channels at a time, channels, W of one, W of the supply. */
  CHANNEL_WATTS("charger.channelWatts", Severity.CHECK),

  /** Arguments: number. */
  FOUND_UNKNOWN("found.number", Severity.STOP),
  /** Arguments: number. */
  FOUND_TWICE("found.twice", Severity.STOP),
  /** Arguments: position. */
  FOUND_POSITION("found.position", Severity.STOP),
  /** Arguments: type of the battery, type of the position. */
  FOUND_TYPE("found.type", Severity.STOP),
  /** Arguments: position, batteries, the most. */
  FOUND_FULL("found.full", Severity.STOP),
  /** Arguments: number. */
  FOUND_PLACES("found.places", Severity.STOP),
  /** Arguments: position, batteries of a set. */
  FOUND_SET("found.set", Severity.STOP),
  /** Arguments: position. */
  FOUND_AWAY("found.away", Severity.STOP),
  FOUND_NO_NOW("found.noNow", Severity.STOP),
  /** Arguments: position, time. */
  FOUND_OFF("found.off", Severity.STOP),
  /** Arguments: number. */
  FOUND_WITHHELD("found.withheld", Severity.CHECK),
  /** Arguments: number. */
  FOUND_RESERVE("found.reserve", Severity.CHECK),
  /** Arguments: number, position. */
  FOUND_WITHHELD_ON("found.withheldOn", Severity.STOP),
  /** Arguments: number, position. */
  FOUND_QUARANTINE("found.quarantine", Severity.DANGER),
  /** Arguments: number. */
  FOUND_NOTHING("found.nothing", Severity.CHECK),
  /** Arguments: number, position. */
  FOUND_CHARGE("found.charge", Severity.CHECK),
  /** Arguments: number. */
  FOUND_CHARGE_MOVED("found.chargeMoved", Severity.CHECK),
  /** Arguments: number. */
  FOUND_TWO_PLACES("found.twoPlaces", Severity.STOP),
  /** Arguments: charger. */
  FOUND_CHARGER("found.charger", Severity.STOP),
  /** Arguments: type of the battery, charger. */
  FOUND_NOT_CHARGED("found.notCharged", Severity.STOP),
  /** Arguments: number, charger. */
  FOUND_WITHHELD_CHARGES("found.withheldCharges", Severity.STOP),
  /** Arguments: number, charger. */
  FOUND_QUARANTINE_CHARGES("found.quarantineCharges", Severity.DANGER),

  /** Arguments: °C. */
  COLD_CELLS("disposables.cold", Severity.CHECK);

  private final String key;
  private final Severity severity;

  BatteryDayFinding(String key, Severity severity) {
    this.key = "batteries." + key;
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
      case RUNS_DRY,
          RUNS_DRY_RESERVE,
          SHORT_OF,
          SHORT_NOT_PROVEN,
          SHORT_RESERVE,
          SHORT_WITH_RESERVE,
          STOCK_LASTS,
          STOCK_WITHOUT,
          SHORT_FROM_NOW,
          SHORT_CARRIED,
          RESERVE_FROM_NOW,
          DAY_DARK,
          SUPPLY_ENOUGH ->
          true;
      default -> false;
    };
  }
}
