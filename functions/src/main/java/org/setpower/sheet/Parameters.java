package org.setpower.sheet;

import static org.setpower.sheet.Parameter.Shape.SINGLE;

import org.setpower.base.Length;
import org.setpower.base.Require;
import org.setpower.base.Temperature;
import org.setpower.base.Unit;
import org.setpower.cable.CableSize;
import org.setpower.cable.PhaseSystem;

/**
 * The words that functions share, each declared once. A function takes them and may set defaults.
 */
public final class Parameters {
  private Parameters() {}

  // --- cable -----------------------------------------------------------------------------------

  public static final Parameter<CableSize> SIZE =
      Parameter.of(
          "size",
          "Cable size: \"12 AWG\", \"2/0\", \"2.5 mm²\", or a number in mm²",
          Unit.NONE,
          SINGLE,
          Parameters::cableSize);

  public static final Parameter<Double> LENGTH =
      Parameter.of(
          "length",
          "Cable length, one way; also text such as \"100 ft\"",
          Unit.METRE,
          SINGLE,
          Readers.amount(Length::metres, (n, v) -> Require.atLeast(n, v, 0)));

  public static final Parameter<Double> AMPS = positive("amps", "Current in a line", Unit.AMPERE);

  public static final Parameter<PhaseSystem> SYSTEM =
      Parameter.of(
          "system",
          "\"DC\", \"1PH\" or \"3PH\" (three-phase: volts line to line, amps of one line)",
          Unit.NONE,
          SINGLE,
          Readers.word(PhaseSystem.class));

  public static final Parameter<Double> POWER_FACTOR =
      Parameter.of(
          "power_factor",
          "Power factor, lagging",
          Unit.SHARE,
          SINGLE,
          Readers.number((n, v) -> Require.above(n, Require.share(n, v), 0)));

  public static final Parameter<Double> CONDUCTOR_TEMP =
      temperature("conductor_temp", "Temperature of the conductor");

  public static final Parameter<Double> PARALLEL =
      count("parallel", "Number of equal cables side by side");

  // --- electrical ------------------------------------------------------------------------------

  public static final Parameter<Double> WATTS = notNegative("watts", "Power", Unit.WATT);

  // --- how they are made -----------------------------------------------------------------------

  /** A number of 0 or more. */
  static Parameter<Double> notNegative(String name, String phrase, Unit unit) {
    return Parameter.of(
        name, phrase, unit, SINGLE, Readers.number((n, v) -> Require.atLeast(n, v, 0)));
  }

  /** A number above 0. */
  static Parameter<Double> positive(String name, String phrase, Unit unit) {
    return Parameter.of(
        name, phrase, unit, SINGLE, Readers.number((n, v) -> Require.above(n, v, 0)));
  }

  /** A share from 0 to 1. */
  static Parameter<Double> share(String name, String phrase) {
    return Parameter.of(name, phrase, Unit.SHARE, SINGLE, Readers.number(Require::share));
  }

  /** A whole number of 1 or more. */
  static Parameter<Double> count(String name, String phrase) {
    return Parameter.of(
        name,
        phrase,
        Unit.PIECES,
        SINGLE,
        Readers.number((n, v) -> Require.atLeast(n, Require.whole(n, v), 1)));
  }

  /** A temperature, also as text with a unit. */
  static Parameter<Double> temperature(String name, String phrase) {
    return Parameter.of(
        name,
        phrase + "; also text such as \"23 °F\"",
        Unit.CELSIUS,
        SINGLE,
        Readers.amount(
            Temperature::celsius,
            (n, v) -> Require.atMost(n, Require.atLeast(n, v, Temperature.ABSOLUTE_ZERO), 1000)));
  }

  private static CableSize cableSize(String name, Object raw) {
    return raw instanceof Double d
        ? CableSize.ofArea(d)
        : CableSize.parse(Readers.asText(name, raw));
  }
}
