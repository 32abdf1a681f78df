package org.setpower.registry.groups;

import static org.setpower.registry.Parameter.Shape.RANGE;
import static org.setpower.registry.Parameter.Shape.SINGLE;

import java.time.LocalDate;
import org.setpower.base.BaseErrorCode;
import org.setpower.base.Checks;
import org.setpower.base.Dates;
import org.setpower.base.EvaluationException;
import org.setpower.base.PhaseSystem;
import org.setpower.base.Temperature;
import org.setpower.base.Unit;
import org.setpower.registry.ArgumentParsers;
import org.setpower.registry.Arguments;
import org.setpower.registry.Parameter;

/**
 * The parameters that functions share, each declared once. A function takes them and may set
 * defaults. Parameters of one trade are in a class of their own ({@link CableParameters}…), so that
 * the first call sets up only those it needs.
 */
public final class Parameters {
  private Parameters() {}

  static final Parameter<Double> AMPS = positive("amps", "Current in one leg", Unit.AMPERE);

  static final Parameter<PhaseSystem> SYSTEM =
      Parameter.of(
          "system",
          "\"DC\", \"1PH\" or \"3PH\" (three-phase: voltage line to line, current of one" + " leg)",
          Unit.NONE,
          SINGLE,
          ArgumentParsers.word(PhaseSystem.class));

  public static final Parameter<Double> POWER_FACTOR =
      Parameter.of(
          "power_factor",
          "Power factor, lagging",
          Unit.SHARE,
          SINGLE,
          ArgumentParsers.number((n, v) -> Checks.filled(n, Checks.share(n, v))));

  /** Of a line: direct current has none; of alternating current nobody can guess it. */
  static final Parameter<Double> LINE_POWER_FACTOR =
      POWER_FACTOR.orElse(null, "1 with DC, otherwise required");

  static final Parameter<Double> WATTS = positive("watts", "Power", Unit.WATT);

  /** Power where 0 is a valid value. */
  static final Parameter<Double> WATTS_OR_NONE = notNegative("watts", "Power", Unit.WATT);

  static final Parameter<Double> WATT_HOURS =
      positive("watt_hours", "Rated watt-hours of one battery", Unit.WATT_HOUR);

  /** Up to 1.1 is accepted and counts as 1. */
  public static final Parameter<Double> HEALTH =
      Parameter.of(
              "health",
              "State of health: share of its rating that a full battery gives at room"
                  + " temperature",
              Unit.SHARE,
              SINGLE,
              ArgumentParsers.number(
                  (n, v) -> v > 1.1 ? Checks.share(n, v) : Math.min(1, Checks.filled(n, v))))
          .zeroIsGiven();

  public static final Parameter<Double> EFFICIENCY =
      Parameter.of(
          "efficiency",
          "Efficiency of the converter between battery and load",
          Unit.SHARE,
          SINGLE,
          ArgumentParsers.number((n, v) -> Checks.filled(n, Checks.share(n, v))));

  static final Parameter<Double> BATTERY_TEMP =
      temperature("battery_temp", "Temperature of the battery at the start");

  static final Parameter<Double> HEADROOM = share("headroom", "Safety margin");

  static final Parameter<Double> LINE_VOLTS =
      positive("volts", "Voltage of the supply; three-phase: line to line", Unit.VOLT);

  /** The power factor of a line, which may be left out with direct current only. */
  static double linePowerFactor(Arguments a) {
    Double given = a.get(LINE_POWER_FACTOR);
    if (given == null && a.get(SYSTEM) != PhaseSystem.DC) {
      throw new EvaluationException(BaseErrorCode.MISSING, LINE_POWER_FACTOR.name());
    }
    return given == null ? 1 : given;
  }

  // --- how they are made -----------------------------------------------------------------------
  /** A number of 0 or more. */
  public static Parameter<Double> notNegative(String name, String phrase, Unit unit) {
    return Parameter.of(
        name, phrase, unit, SINGLE, ArgumentParsers.number((n, v) -> Checks.atLeast(n, v, 0)));
  }

  /** A number above 0. */
  public static Parameter<Double> positive(String name, String phrase, Unit unit) {
    return Parameter.of(name, phrase, unit, SINGLE, ArgumentParsers.number(Checks::filled));
  }

  /** A share from 0 to 1. */
  public static Parameter<Double> share(String name, String phrase) {
    return Parameter.of(name, phrase, Unit.SHARE, SINGLE, ArgumentParsers.number(Checks::share));
  }

  /** A whole number of 1 or more. */
  public static Parameter<Double> count(String name, String phrase) {
    return Parameter.of(
        name,
        phrase,
        Unit.PIECES,
        SINGLE,
        ArgumentParsers.number((n, v) -> Checks.atLeast(n, Checks.whole(n, v), 1)));
  }

  /** TRUE or FALSE, which a sheet passes as 1 or 0. */
  public static Parameter<Boolean> flag(String name, String phrase) {
    return Parameter.of(
        name,
        phrase + ": TRUE or FALSE",
        Unit.NONE,
        SINGLE,
        (n, raw) ->
            Checks.atMost(
                    n, Checks.atLeast(n, Checks.whole(n, ArgumentParsers.asNumber(n, raw)), 0), 1)
                == 1);
  }

  /** A temperature, also as text with a unit. */
  public static Parameter<Double> temperature(String name, String phrase) {
    return Parameter.of(
        name,
        phrase + "; also text such as \"23 °F\"",
        Unit.CELSIUS,
        SINGLE,
        ArgumentParsers.amount(
            Temperature::celsius,
            (n, v) -> Checks.atMost(n, Checks.atLeast(n, v, Temperature.ABSOLUTE_ZERO), 1000)));
  }

  /** A date: a day number (day 0 is 1899-12-30) or text such as "2027-01-28". */
  public static Parameter<LocalDate> date(String name, String phrase) {
    return Parameter.of(
            name, phrase + "; also text such as \"2027-01-28\"", Unit.NONE, SINGLE, Dates::of)
        .asDate();
  }

  /** A range as it comes, for a function that reads several ranges side by side. */
  public static Parameter<Object> range(String name, String phrase, Unit unit) {
    return Parameter.of(name, phrase, unit, RANGE, (n, raw) -> raw);
  }
}
