package org.setpower.registry.groups;

import static org.setpower.registry.Parameter.Shape.SINGLE;

import java.time.LocalDate;
import org.setpower.base.Unit;
import org.setpower.flight.CarriageMode;
import org.setpower.flight.FlightChemistry;
import org.setpower.flight.Packing;
import org.setpower.flight.RuleBook;
import org.setpower.registry.ArgumentParsers;
import org.setpower.registry.Parameter;

/** The parameters of FLIGHT: batteries on aircraft. */
final class FlightParameters {
  private FlightParameters() {}

  static final Parameter<LocalDate> ON_DATE =
      Parameters.date("on_date", "Date for which the rules apply");

  /** Wh on the label of a pack, for rules that go by it; 0 means that none is printed. */
  static final Parameter<Double> LABEL_WATT_HOURS =
      Parameters.notNegative(
          "watt_hours", "Watt-hours printed on one battery (0: none are printed)", Unit.WATT_HOUR);

  static final Parameter<CarriageMode> CARRIED =
      Parameter.of(
          "carried",
          "How it is carried: \"spare\", \"in equipment\", \"power bank\" or \"damaged\"",
          Unit.NONE,
          SINGLE,
          ArgumentParsers.word(CarriageMode.class));

  static final Parameter<FlightChemistry> FLIGHT_CHEMISTRY =
      Parameter.of(
          "chemistry",
          "\"Li-ion\", \"LFP\", \"NiMH\", \"lead\" or \"sodium-ion\"",
          Unit.NONE,
          SINGLE,
          ArgumentParsers.word(FlightChemistry.class));

  static final Parameter<RuleBook> RULES =
      Parameter.of(
          "rules",
          "Rules: \"ICAO\" (most airlines) or \"US\"",
          Unit.NONE,
          SINGLE,
          ArgumentParsers.word(RuleBook.class));

  static final Parameter<Packing> PACKING =
      Parameter.of(
          "packing",
          "How the batteries are packed: \"alone\", \"with equipment\" or \"in" + " equipment\"",
          Unit.NONE,
          SINGLE,
          ArgumentParsers.word(Packing.class));
}
