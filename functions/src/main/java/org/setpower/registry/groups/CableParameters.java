package org.setpower.registry.groups;

import static org.setpower.registry.Parameter.Shape.SINGLE;

import org.setpower.base.Checks;
import org.setpower.base.Length;
import org.setpower.base.Unit;
import org.setpower.cable.Ampacity;
import org.setpower.cable.CableSize;
import org.setpower.cable.InstallationMethod;
import org.setpower.cable.Metal;
import org.setpower.cable.Protection;
import org.setpower.registry.ArgumentParsers;
import org.setpower.registry.Parameter;

/** The parameters of CABLE: wire and runs. */
final class CableParameters {
  private CableParameters() {}

  static final Parameter<CableSize> SIZE =
      Parameter.of(
          "size",
          "Cable size: \"12 AWG\", \"2/0\", \"2.5 mm²\", \"5G2.5\", or a number, which is mm²",
          Unit.NONE,
          SINGLE,
          CableParameters::cableSize);

  static final Parameter<Double> LENGTH =
      Parameter.of(
          "length",
          "Cable length, one way; also text such as \"100 ft\"",
          Unit.METRE,
          SINGLE,
          ArgumentParsers.amount(Length::metres, Checks::filled));

  static final Parameter<Double> CONDUCTOR_TEMP =
      Parameters.temperature("conductor_temp", "Temperature of the conductor");

  static final Parameter<Double> PARALLEL =
      Parameters.count("parallel", "Number of equal cables in parallel");

  static final Parameter<Metal> METAL =
      Parameter.of(
          "metal", "\"Cu\" or \"Al\"", Unit.NONE, SINGLE, ArgumentParsers.word(Metal.class));

  static final Parameter<Double> SUPPLY_VOLTS =
      Parameters.positive("supply_volts", "Voltage at the start of the cable", Unit.VOLT);

  static final Parameter<Double> MAX_DROP =
      Parameter.of(
          "max_drop",
          "Max. voltage drop, share of the supply voltage",
          Unit.SHARE,
          SINGLE,
          ArgumentParsers.number((n, v) -> Checks.filled(n, Checks.share(n, v))));

  static final Parameter<CableSize.Family> FAMILY =
      Parameter.of(
          "family",
          "Series of sizes: \"AWG\" or \"mm²\"",
          Unit.NONE,
          SINGLE,
          ArgumentParsers.word(CableSize.Family.class));

  static final Parameter<Double> AIR_TEMP =
      Parameters.temperature("air_temp", "Maximum air temperature around the cable").zeroIsBlank();

  static final Parameter<Double> LOADED_CONDUCTORS =
      Parameter.of(
          "loaded_conductors",
          "Conductors that carry current: 2, 3, or 4 where the neutral carries harmonics",
          Unit.PIECES,
          SINGLE,
          ArgumentParsers.number(
              (n, v) ->
                  Checks.atMost(
                      n, Checks.atLeast(n, Checks.whole(n, v), 2), Ampacity.MOST_LOADED)));

  static final Parameter<Ampacity.Method> METHOD =
      Parameter.of(
          "method",
          "Type of cable: \"flexible\", \"cord\", \"rubber\", \"feeder\" (single cores"
              + " not touching) or \"building\"",
          Unit.NONE,
          SINGLE,
          ArgumentParsers.word(Ampacity.Method.class));

  static final Parameter<InstallationMethod> LAID =
      Parameter.of(
          "laid",
          "How it is laid: \"free\", \"bunched 6\" (cables), \"drum 2 layers\", \"radial"
              + " drum\" or \"radial drum ventilated\"",
          Unit.NONE,
          SINGLE,
          (name, raw) -> InstallationMethod.parse(name, ArgumentParsers.asText(name, raw)));

  static final Parameter<Double> BREAKER =
      Parameters.positive("breaker", "Rating of the upstream breaker", Unit.AMPERE);

  static final Parameter<Protection.Standard> STANDARD =
      Parameter.of(
          "standard",
          "Standard of the ratings: \"IEC\" or \"NEC\"",
          Unit.NONE,
          SINGLE,
          ArgumentParsers.word(Protection.Standard.class));

  static final Parameter<Boolean> CONTINUOUS =
      Parameters.flag("continuous", "Whether the load lasts 3 hours or more (NEC only)");

  static final Parameter<Double> SOURCE_OHMS =
      Parameters.positive(
          "source_ohms",
          "Loop impedance of the supply, measured or from the generator's maker",
          Unit.OHM);

  static final Parameter<CableSize> EARTH_SIZE =
      SIZE.named("earth_size", "Size of the earth conductor");

  static final Parameter<Double> LOOP_OHMS =
      Parameters.positive(
          "loop_ohms", "Earth loop impedance at the end of the cable, cold", Unit.OHM);

  static final Parameter<Protection.Curve> CURVE =
      Parameter.of(
          "curve",
          "Trip curve of the breaker: \"B\", \"C\" or \"D\"",
          Unit.NONE,
          SINGLE,
          ArgumentParsers.word(Protection.Curve.class));

  static final Parameter<Double> VOLTS_TO_EARTH =
      Parameters.positive("volts_to_earth", "Voltage of a leg to earth", Unit.VOLT);

  private static CableSize cableSize(String name, Object raw) {
    return raw instanceof Double d
        ? CableSize.ofArea(d)
        : CableSize.parse(ArgumentParsers.asText(name, raw));
  }
}
