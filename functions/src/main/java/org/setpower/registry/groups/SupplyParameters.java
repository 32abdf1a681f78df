package org.setpower.registry.groups;

import static org.setpower.registry.Parameter.Shape.SINGLE;

import org.setpower.base.Checks;
import org.setpower.base.Length;
import org.setpower.base.Unit;
import org.setpower.registry.ArgumentParsers;
import org.setpower.registry.Parameter;
import org.setpower.supply.Engine;
import org.setpower.supply.Feed;
import org.setpower.supply.Fuel;
import org.setpower.supply.Neutral;

/** The parameters of the supply: PHASE and GENSET. */
final class SupplyParameters {
  private SupplyParameters() {}

  static final Parameter<Double> LEG_1 = leg("a1");

  static final Parameter<Double> LEG_2 = leg("a2");

  static final Parameter<Double> LEG_3 = leg("a3");

  static final Parameter<Double> PF_1 = legPowerFactor("pf1");

  static final Parameter<Double> PF_2 = legPowerFactor("pf2");

  static final Parameter<Double> PF_3 = legPowerFactor("pf3");

  static final Parameter<Double> THIRD_HARMONIC =
      Parameters.share("third_harmonic", "Third harmonic of the current, share of the fundamental");

  static final Parameter<Feed> SUPPLY =
      Parameter.of(
          "supply",
          "\"3PH\", or \"split\" for two legs of opposite sign (120/240 V)",
          Unit.NONE,
          SINGLE,
          ArgumentParsers.word(Feed.class));

  static final Parameter<Double> ALTITUDE =
      Parameter.of(
          "altitude",
          "Altitude of the place; also text such as \"1500 ft\"",
          Unit.METRE,
          SINGLE,
          ArgumentParsers.amount(
              Length::metres, (n, v) -> Checks.atMost(n, Checks.atLeast(n, v, -500), 9000)));

  static final Parameter<Double> AIR_TEMP =
      Parameters.temperature("air_temp", "Maximum intake air temperature of the generator")
          .zeroIsBlank();

  static final Parameter<Engine> ENGINE =
      Parameter.of(
          "engine",
          "\"diesel turbo\", \"diesel\" (naturally aspirated) or \"petrol\"",
          Unit.NONE,
          SINGLE,
          ArgumentParsers.word(Engine.class));

  static final Parameter<Double> KVA =
      Parameters.positive("kva", "Apparent power of the generator", Unit.KILOVOLT_AMPERE);

  static final Parameter<Double> KW = Parameters.notNegative("kw", "Load", Unit.KILOWATT);

  static final Parameter<Double> RATED_KW =
      Parameters.positive("rated_kw", "Rated power of the generator", Unit.KILOWATT);

  static final Parameter<Fuel> FUEL =
      Parameter.of(
          "fuel",
          "\"diesel\", \"petrol\" or \"HVO\"",
          Unit.NONE,
          SINGLE,
          ArgumentParsers.word(Fuel.class));

  static final Parameter<Double> LITRES =
      Parameters.notNegative("litres", "Fuel consumed", Unit.LITRE);

  private static Parameter<Double> leg(String name) {
    return Parameters.notNegative(
        name, "Current of leg " + name.charAt(1) + ", true rms", Unit.AMPERE);
  }

  private static Parameter<Double> legPowerFactor(String name) {
    return Parameter.of(
        name,
        "Displacement power factor of leg " + name.charAt(2) + ", negative when it leads",
        Unit.SHARE,
        SINGLE,
        ArgumentParsers.number(Neutral::requirePowerFactor));
  }
}
