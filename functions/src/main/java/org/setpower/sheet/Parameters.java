package org.setpower.sheet;

import static org.setpower.sheet.Parameter.Shape.RANGE;
import static org.setpower.sheet.Parameter.Shape.SINGLE;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Currency;
import java.util.List;
import org.setpower.bank.Joined;
import org.setpower.base.BaseReason;
import org.setpower.base.Dates;
import org.setpower.base.Length;
import org.setpower.base.PhaseSystem;
import org.setpower.base.Refusal;
import org.setpower.base.Require;
import org.setpower.base.Temperature;
import org.setpower.base.Unit;
import org.setpower.cable.Ampacity;
import org.setpower.cable.CableSize;
import org.setpower.cable.Laid;
import org.setpower.cable.Metal;
import org.setpower.cable.Protection;
import org.setpower.flight.Carried;
import org.setpower.flight.FlightChemistry;
import org.setpower.flight.Packing;
import org.setpower.flight.RuleBook;
import org.setpower.hire.Money;
import org.setpower.pack.Chemistry;
import org.setpower.pack.PlateFeed;
import org.setpower.supply.Engine;
import org.setpower.supply.Feed;
import org.setpower.supply.Fuel;
import org.setpower.supply.Neutral;

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

  public static final Parameter<Double> AMPS =
      notNegative("amps", "Current in a line", Unit.AMPERE);

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

  public static final Parameter<Metal> METAL =
      Parameter.of("metal", "\"Cu\" or \"Al\"", Unit.NONE, SINGLE, Readers.word(Metal.class));

  public static final Parameter<Double> SUPPLY_VOLTS =
      positive("supply_volts", "Volts where the cable starts", Unit.VOLT);

  public static final Parameter<Double> MAX_DROP =
      Parameter.of(
          "max_drop",
          "Largest drop allowed, share of the volts",
          Unit.SHARE,
          SINGLE,
          Readers.number((n, v) -> Require.above(n, Require.share(n, v), 0)));

  public static final Parameter<CableSize.Family> FAMILY =
      Parameter.of(
          "family",
          "Series of sizes: \"AWG\" or \"mm²\"",
          Unit.NONE,
          SINGLE,
          Readers.word(CableSize.Family.class));

  public static final Parameter<Double> AMBIENT =
      temperature("ambient", "Air around the cable at its hottest");

  public static final Parameter<Double> LOADED_CONDUCTORS =
      Parameter.of(
          "loaded_conductors",
          "Conductors that carry current: 2, 3, or 4 where the neutral carries harmonics",
          Unit.PIECES,
          SINGLE,
          Readers.number(
              (n, v) ->
                  Require.atMost(
                      n, Require.atLeast(n, Require.whole(n, v), 2), Ampacity.MOST_LOADED)));

  public static final Parameter<Ampacity.Method> METHOD =
      Parameter.of(
          "method",
          "Kind of cable: \"flexible\", \"cord\", \"rubber\", \"feeder\" (single cores not"
              + " touching) or \"building\"",
          Unit.NONE,
          SINGLE,
          Readers.word(Ampacity.Method.class));

  public static final Parameter<Laid> LAID =
      Parameter.of(
          "laid",
          "How it lies: \"free\", \"bunched 6\" (cables), \"drum 2 layers\", \"radial drum\" or"
              + " \"radial drum ventilated\"",
          Unit.NONE,
          SINGLE,
          (name, raw) -> Laid.parse(name, Readers.asText(name, raw)));

  public static final Parameter<Double> BREAKER =
      positive("breaker", "Rating of the breaker ahead of the cable", Unit.AMPERE);

  public static final Parameter<Protection.Standard> STANDARD =
      Parameter.of(
          "standard",
          "Whose ratings: \"IEC\" or \"NEC\"",
          Unit.NONE,
          SINGLE,
          Readers.word(Protection.Standard.class));

  public static final Parameter<Boolean> CONTINUOUS =
      flag("continuous", "Whether the load lasts 3 hours or more (NEC only)");

  public static final Parameter<Double> SOURCE_OHMS =
      positive("source_ohms", "Loop of the supply, measured or from the set's maker", Unit.OHM);

  public static final Parameter<CableSize> EARTH_SIZE =
      SIZE.named("earth_size", "Size of the earth conductor");

  public static final Parameter<Double> LOOP_OHMS =
      positive("loop_ohms", "Line-to-earth loop at the end of the cable, cold", Unit.OHM);

  public static final Parameter<Protection.Curve> CURVE =
      Parameter.of(
          "curve",
          "Curve of the breaker: \"B\", \"C\" or \"D\"",
          Unit.NONE,
          SINGLE,
          Readers.word(Protection.Curve.class));

  public static final Parameter<Double> VOLTS_TO_EARTH =
      positive("volts_to_earth", "Volts of a line to earth", Unit.VOLT);

  // --- electrical ------------------------------------------------------------------------------

  public static final Parameter<Double> WATTS = notNegative("watts", "Power", Unit.WATT);

  // --- batteries -------------------------------------------------------------------------------

  public static final Parameter<Double> VOLTS = positive("volts", "Nominal voltage", Unit.VOLT);

  public static final Parameter<Double> AMP_HOURS =
      positive("amp_hours", "Rated amp-hours of one pack", Unit.AMPERE_HOUR);

  public static final Parameter<Double> WATT_HOURS =
      positive("watt_hours", "Watt-hours of one pack, as rated", Unit.WATT_HOUR);

  public static final Parameter<Double> CELLS =
      count("cells", "Number of cells in series, as seen at the output used");

  public static final Parameter<Double> MILLIOHMS =
      notNegative("milliohms", "Resistance of one pack today, sustained load", Unit.MILLIOHM);

  public static final Parameter<Double> LEAD_MILLIOHMS =
      notNegative("lead_milliohms", "Resistance of the lead, out and back", Unit.MILLIOHM)
          .orElse(0.0);

  public static final Parameter<Double> MAX_AMPS =
      positive("max_amps", "Highest current of one pack", Unit.AMPERE);

  public static final Parameter<Double> SERIES =
      count("series", "Number of equal packs in series").orElse(1.0);

  public static final Parameter<Double> PARALLEL_PACKS =
      count("parallel", "Number of equal packs in parallel").orElse(1.0);

  public static final Parameter<Chemistry> CHEMISTRY =
      Parameter.of(
          "chemistry",
          "Chemistry of the cells: \"Li-ion\", \"LFP\", \"NiMH\" or \"lead\"",
          Unit.NONE,
          SINGLE,
          Readers.word(Chemistry.class));

  /** Up to 1.1 is accepted and counts as 1. */
  public static final Parameter<Double> HEALTH =
      Parameter.of(
              "health",
              "Share of its rating that a full pack still gives at room temperature",
              Unit.SHARE,
              SINGLE,
              Readers.number(
                  (n, v) -> v > 1.1 ? Require.share(n, v) : Math.min(1, Require.above(n, v, 0))))
          .orElse(1.0);

  public static final Parameter<Double> EFFICIENCY =
      Parameter.of(
          "efficiency",
          "Share of the power that gets through what sits between",
          Unit.SHARE,
          SINGLE,
          Readers.number((n, v) -> Require.above(n, Require.share(n, v), 0)));

  public static final Parameter<Double> TEMP =
      temperature("temp", "Temperature of the cells when the job starts");

  public static final Parameter<Double> RESERVE =
      share("reserve", "Share of the pack that is not used").orElse(0.0);

  public static final Parameter<List<Double>> OUTPUTS =
      Parameter.of(
          "outputs",
          "Volts classes the pack gives: \"12/24\", \"24\", a number or a range",
          Unit.VOLT,
          RANGE,
          Parameters::outputs);

  public static final Parameter<Double> PLATE_VOLTS =
      positive("plate_volts", "Volts class the plate asks for: 12, 24 or 48", Unit.VOLT);

  public static final Parameter<Double> HOURS =
      notNegative("hours", "Length of the job", Unit.HOUR);

  public static final Parameter<Double> RUNTIME =
      positive("runtime", "Hours that one pack lasts", Unit.HOUR);

  public static final Parameter<Double> SPARE = share("spare", "Share on top, to be safe");

  public static final Parameter<Double> CUTOFF_VOLTS =
      notNegative("cutoff_volts", "Voltage at the device below which it goes dark", Unit.VOLT);

  public static final Parameter<Double> START =
      share("start", "Share of its charge that the pack starts with").orElse(1.0);

  public static final Parameter<Double> CHARGE_LEFT =
      share("charge_left", "Share of its charge at which the job is stopped").orElse(0.0);

  public static final Parameter<Double> STEPS =
      count("steps", "Number of steps between the first row and the last").orElse(24.0);

  public static final Parameter<Double> START_WATTS =
      positive("start_watts", "Power while the device starts", Unit.WATT);

  public static final Parameter<Double> RATED_HOURS =
      positive("rated_hours", "Hours of the rate that the amp-hours are given for", Unit.HOUR);

  public static final Parameter<Double> EXPONENT =
      Parameter.of(
          "exponent",
          "Peukert exponent",
          Unit.NONE,
          SINGLE,
          Readers.number((n, v) -> Require.atLeast(n, v, 1)));

  public static final Parameter<Double> CHARGE_AMPS =
      positive("charge_amps", "Current of the charger", Unit.AMPERE);

  public static final Parameter<Double> FROM =
      share("from", "Share of its charge that the pack has when it goes on").orElse(0.0);

  public static final Parameter<Double> TO =
      share("to", "Share of its charge to reach; 100 % is a current of 0.05 C").orElse(1.0);

  public static final Parameter<Double> PACK_COUNT = count("packs", "Number of packs");

  public static final Parameter<Double> HOURS_FREE =
      positive("hours_free", "Hours that the channels are free", Unit.HOUR);

  public static final Parameter<Double> HOURS_EACH =
      positive("hours_each", "Hours that one pack takes", Unit.HOUR);

  public static final Parameter<Table> PACKS_AT_REST =
      Parameter.of(
          "packs",
          "Rows: volts of the resting pack (V), resistance (mΩ)",
          Unit.NONE,
          RANGE,
          (name, raw) -> Table.of(name, raw, "open-circuit volts", "milliohms"));

  public static final Parameter<Table> PACKS_OF_BANK =
      Parameter.of(
          "packs",
          "Rows: chemistry, cells, Ah held when full today, resistance (mΩ), share of charge",
          Unit.NONE,
          RANGE,
          (name, raw) ->
              Table.of(name, raw, "chemistry", "cells", "amp-hours", "milliohms", "charge"));

  public static final Parameter<Joined> JOINED =
      Parameter.of(
          "joined",
          "How the packs are joined: \"hot-swap\" (ideal diodes) or \"parallel\" (hard)",
          Unit.NONE,
          SINGLE,
          Readers.word(Joined.class));

  public static final Parameter<Double> FULL_VOLTS =
      positive("full_volts", "Voltage just off the charger", Unit.VOLT);

  // --- dates ---------------------------------------------------------------------------------

  public static final Parameter<LocalDate> ON_DATE = date("on_date", "Day that counts");

  // --- flight ----------------------------------------------------------------------------------

  /** Wh on the label of a pack, for rules that go by it; 0 means that none is printed. */
  public static final Parameter<Double> LABEL_WATT_HOURS =
      notNegative(
          "watt_hours",
          "Watt-hours printed on one pack as it stands (0: none are printed)",
          Unit.WATT_HOUR);

  public static final Parameter<Carried> CARRIED =
      Parameter.of(
          "carried",
          "How it is carried: \"spare\", \"in equipment\", \"power bank\" or \"damaged\"",
          Unit.NONE,
          SINGLE,
          Readers.word(Carried.class));

  public static final Parameter<FlightChemistry> FLIGHT_CHEMISTRY =
      Parameter.of(
          "chemistry",
          "\"Li-ion\", \"LFP\", \"NiMH\", \"lead\" or \"sodium-ion\"",
          Unit.NONE,
          SINGLE,
          Readers.word(FlightChemistry.class));

  public static final Parameter<RuleBook> RULES =
      Parameter.of(
          "rules",
          "Whose rules: \"ICAO\" (most airlines) or \"US\"",
          Unit.NONE,
          SINGLE,
          Readers.word(RuleBook.class));

  public static final Parameter<Packing> PACKING =
      Parameter.of(
          "packing",
          "How the packs are packed: \"alone\", \"with equipment\" or \"in equipment\"",
          Unit.NONE,
          SINGLE,
          Readers.word(Packing.class));

  // --- supply ----------------------------------------------------------------------------------

  public static final Parameter<Double> LINE_VOLTS =
      positive("volts", "Volts of the supply; three-phase: line to line", Unit.VOLT);

  public static final Parameter<Double> LEG_1 = leg("a1");
  public static final Parameter<Double> LEG_2 = leg("a2");
  public static final Parameter<Double> LEG_3 = leg("a3");

  public static final Parameter<Double> PF_1 = legPowerFactor("pf1");
  public static final Parameter<Double> PF_2 = legPowerFactor("pf2");
  public static final Parameter<Double> PF_3 = legPowerFactor("pf3");

  public static final Parameter<Double> THIRD_HARMONIC =
      share("third_harmonic", "Third harmonic of the current, share of the fundamental");

  public static final Parameter<Feed> SUPPLY =
      Parameter.of(
          "supply",
          "\"3PH\", or \"split\" for two legs of opposite sign (120/240 V)",
          Unit.NONE,
          SINGLE,
          Readers.word(Feed.class));

  public static final Parameter<Double> ALTITUDE =
      Parameter.of(
          "altitude",
          "Altitude of the place; also text such as \"1500 ft\"",
          Unit.METRE,
          SINGLE,
          Readers.amount(
              Length::metres, (n, v) -> Require.atMost(n, Require.atLeast(n, v, -500), 9000)));

  public static final Parameter<Double> AIR_TEMP =
      temperature("air_temp", "Air at the set's intake at its hottest");

  public static final Parameter<Engine> ENGINE =
      Parameter.of(
          "engine",
          "\"diesel turbo\", \"diesel\" (naturally aspirated) or \"petrol\"",
          Unit.NONE,
          SINGLE,
          Readers.word(Engine.class));

  public static final Parameter<Double> KVA =
      notNegative("kva", "Apparent power of the set", Unit.KILOVOLT_AMPERE);

  public static final Parameter<Double> KW = notNegative("kw", "Load", Unit.KILOWATT);

  public static final Parameter<Double> RATED_KW =
      positive("rated_kw", "Rated power of the set", Unit.KILOWATT);

  public static final Parameter<Fuel> FUEL =
      Parameter.of(
          "fuel", "\"diesel\", \"petrol\" or \"HVO\"", Unit.NONE, SINGLE, Readers.word(Fuel.class));

  public static final Parameter<Double> LITRES = notNegative("litres", "Fuel burnt", Unit.LITRE);

  // --- hire ------------------------------------------------------------------------------------

  public static final Parameter<LocalDate> OUT_DATE = date("out_date", "Day it goes out");

  public static final Parameter<LocalDate> BACK_DATE = date("back_date", "Day it comes back");

  public static final Parameter<Double> LEAST_DAYS =
      notNegative("least_days", "Fewest days charged", Unit.DAY).orElse(0.0);

  public static final Parameter<Double> DAY_RATE =
      notNegative("day_rate", "Price of one piece for a day", Unit.MONEY);

  public static final Parameter<Currency> CURRENCY =
      Parameter.of(
          "currency",
          "Currency, three letters of ISO 4217",
          Unit.NONE,
          SINGLE,
          (n, raw) -> Money.currency(n, Readers.asText(n, raw)));

  // --- how they are made -----------------------------------------------------------------------

  private static Parameter<Double> leg(String name) {
    return notNegative(name, "Current of leg " + name.charAt(1) + ", true rms", Unit.AMPERE);
  }

  private static Parameter<Double> legPowerFactor(String name) {
    return Parameter.of(
        name,
        "Displacement power factor of leg " + name.charAt(2) + ", negative when it leads",
        Unit.SHARE,
        SINGLE,
        Readers.number(Neutral::requirePowerFactor));
  }

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

  /** TRUE or FALSE, which a sheet passes as 1 or 0. */
  static Parameter<Boolean> flag(String name, String phrase) {
    return Parameter.of(
        name,
        phrase + ": TRUE or FALSE",
        Unit.NONE,
        SINGLE,
        (n, raw) ->
            Require.atMost(n, Require.atLeast(n, Require.whole(n, Readers.asNumber(n, raw)), 0), 1)
                == 1);
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

  /** A date: a day number (day 0 is 1899-12-30) or text such as "2027-01-28". */
  static Parameter<LocalDate> date(String name, String phrase) {
    return Parameter.of(
            name, phrase + "; also text such as \"2027-01-28\"", Unit.NONE, SINGLE, Dates::of)
        .asDate();
  }

  /** A range as it comes, for a function that reads several ranges side by side. */
  static Parameter<Object> range(String name, String phrase, Unit unit) {
    return Parameter.of(name, phrase, unit, RANGE, (n, raw) -> raw);
  }

  private static CableSize cableSize(String name, Object raw) {
    return raw instanceof Double d
        ? CableSize.ofArea(d)
        : CableSize.parse(Readers.asText(name, raw));
  }

  private static List<Double> outputs(String name, Object raw) {
    List<Double> all = new ArrayList<>();
    for (Object[] row : raw instanceof Object[][] range ? range : new Object[][] {{raw}}) {
      for (Object cell : row) {
        if (cell instanceof Double d) {
          all.add(d);
        } else if (cell instanceof String s && !s.isBlank()) {
          all.addAll(PlateFeed.outputs(name, s));
        }
      }
    }
    if (all.isEmpty()) {
      throw new Refusal(BaseReason.NO_ROWS, name);
    }
    return all;
  }
}
