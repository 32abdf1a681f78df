package org.setpower.registry.groups;

import java.util.List;
import org.setpower.base.CalculationStep;
import org.setpower.base.Checks;
import org.setpower.base.Unit;
import org.setpower.registry.ArgumentParsers;
import org.setpower.registry.Arguments;
import org.setpower.registry.FunctionGroup;
import org.setpower.registry.FunctionSpec;
import org.setpower.registry.Parameter;
import org.setpower.registry.RangeTable;
import org.setpower.supply.Emissions;
import org.setpower.supply.Engine;
import org.setpower.supply.Fuel;
import org.setpower.supply.FuelChart;
import org.setpower.supply.GeneratorRating;
import org.setpower.supply.SupplyErrorCode;

/** GENSET: generator. */
public final class GensetFunctions {
  private GensetFunctions() {}

  static final FunctionGroup GROUP = new FunctionGroup("GENSET", "generator");

  private static final String AT_THE_SET =
      "Do not run a generator indoors. Do not connect two sources to one distro without a"
          + " changeover switch. Have neutral and earth (ground) connected by a competent person."
          + " Provide RCD protection: its short-circuit current is small and brief";

  private static final Parameter<Double> START =
      Parameters.notNegative("start_watts", "Peak starting power of all loads together", Unit.WATT);

  private static final Parameter<Double> HEADROOM =
      Parameters.HEADROOM.named("headroom", "Headroom above the running watts");

  private static final Parameter<Double> RATED_PF =
      Parameters.POWER_FACTOR.named("rated_pf", "Power factor of the rating");

  private static final Parameter<Object> SIZES =
      Parameters.range("sizes", "Available sizes", Unit.KILOVOLT_AMPERE);

  private static final Parameter<Object> KW_RANGE =
      Parameters.range("kw_range", "Load of each period", Unit.KILOWATT);

  private static final Parameter<Object> HOURS_RANGE =
      Parameters.range("hours_range", "Length of each period", Unit.HOUR);

  private static final Parameter<Double> KILOWATT_HOURS =
      Parameters.notNegative("kilowatt_hours", "Energy from the grid", Unit.KILOWATT_HOUR);

  private static final Parameter<String> COUNTRY =
      Parameter.of(
          "country",
          "Country: English name or two letters (ISO 3166-1)",
          Unit.NONE,
          Parameter.Shape.SINGLE,
          ArgumentParsers::asText);

  private static final Parameter<Double> YEAR =
      Parameter.of(
          "year",
          "Year of the figure",
          Unit.NONE,
          Parameter.Shape.SINGLE,
          ArgumentParsers.number(
              (n, v) -> Checks.atMost(n, Checks.atLeast(n, Checks.whole(n, v), 1990), 2200)));

  public static final FunctionSpec DERATE =
      GROUP
          .function("DERATE")
          .description(
              "Returns the derating factor of a generator for altitude and air temperature")
          .parameters(SupplyParameters.ALTITUDE, SupplyParameters.AIR_TEMP, SupplyParameters.ENGINE)
          .returns(Unit.SHARE, "Share of the rating that remains")
          .formula("(1 − loss by altitude) × (1 − loss by temperature)")
          .source(
              "US Army TM 9-6115-673-13&P Table 2-3 (diesel, heat); operator manual of a portable"
                  + " set (petrol); rules of thumb from memory (diesel, altitude: check)")
          .caution(
              "Use the maker's own table where there is one. Enter the air at the intake: behind"
                  + " sound screens it is hotter")
          .errorCodes(SupplyErrorCode.BEYOND_DERATE)
          .example("=GENSET.DERATE(1500;25;\"petrol\")", 0.97)
          .steps(GensetFunctions::derateSteps)
          .implementation(GensetFunctions::derate);

  public static final FunctionSpec KVA =
      GROUP
          .function("KVA")
          .description("Returns the required kVA rating of a generator")
          .parameters(
              Parameters.WATTS,
              SupplyParameters.ALTITUDE,
              SupplyParameters.AIR_TEMP,
              SupplyParameters.ENGINE,
              Parameters.POWER_FACTOR.orElse(GeneratorRating.RATED_POWER_FACTOR),
              HEADROOM.orElse(0.2, "20 %"),
              START.orElse(0.0, "0, no load starts with more than it runs"))
          .returns(Unit.KILOVOLT_AMPERE, "Required rating")
          .formula("max(W·(1 + headroom), start) as max(P/pf, P/0.8), over the derate")
          .source("ISO 8528-1: sets are rated at power factor 0.8; see GENSET.DERATE")
          .caution(AT_THE_SET + ". On three phases enter 3 × the watts of the busiest leg")
          .errorCodes(SupplyErrorCode.BEYOND_DERATE)
          .example("=GENSET.KVA(40000;0;25;\"diesel turbo\";0.96;0)", 50.0)
          .steps(GensetFunctions::derateSteps)
          .implementation(
              a ->
                  GeneratorRating.kva(
                      a.get(Parameters.WATTS),
                      a.get(Parameters.POWER_FACTOR),
                      a.get(HEADROOM),
                      a.get(START),
                      derate(a)));

  public static final FunctionSpec KW =
      GROUP
          .function("KW")
          .description("Returns the rated kW of a generator")
          .parameters(SupplyParameters.KVA, RATED_PF.orElse(GeneratorRating.RATED_POWER_FACTOR))
          .returns(Unit.KILOWATT, "Rated power")
          .formula("kVA × rated pf")
          .source("MIL-DTL-32496 (2014) 1.3; ISO 8528-1")
          .example("=GENSET.KW(25)", 20.0)
          .implementation(a -> a.get(SupplyParameters.KVA) * a.get(RATED_PF));

  public static final FunctionSpec SIZE =
      GROUP
          .function("SIZE")
          .description("Returns the smallest sufficient size from a list")
          .parameters(SupplyParameters.KVA, SIZES)
          .returns(Unit.KILOVOLT_AMPERE, "Size of the generator")
          .formula("smallest size ≥ kVA")
          .source("comparison")
          .caution(
              AT_THE_SET
                  + ". Do not take one much too large: under 30 % load a diesel risks wet stacking")
          .errorCodes(SupplyErrorCode.NO_SET)
          .example("=GENSET.SIZE(31;{25;37.5;50;75})", 37.5)
          .implementation(a -> GeneratorRating.pick(a.get(SupplyParameters.KVA), sizes(a)));

  public static final FunctionSpec LOADSHARE =
      GROUP
          .function("LOADSHARE")
          .description("Returns the load of a generator as a share of its rating")
          .parameters(SupplyParameters.KW, SupplyParameters.RATED_KW)
          .returns(Unit.SHARE, "Load share")
          .formula("kW / rated kW")
          .source("ISO 8528-1 (mean of a day up to 70 % of prime); 30 % against wet stacking")
          .caution(
              "Do not load it over 100 % of the derated kW: it stalls. Keep the day's mean below 70"
                  + " %, its prime rating. Under 30 % a diesel risks wet stacking")
          .example("=GENSET.LOADSHARE(8.66;20)", 0.433)
          .implementation(a -> a.get(SupplyParameters.KW) / a.get(SupplyParameters.RATED_KW));

  public static final FunctionSpec FUEL =
      GROUP
          .function("FUEL")
          .description("Returns the fuel consumption of a generator in litres per hour")
          .parameters(SupplyParameters.KW, SupplyParameters.RATED_KW, SupplyParameters.FUEL)
          .returns(Unit.LITRE_PER_HOUR, "Fuel per hour")
          .formula("linear between quarter loads; idle = 27 % of the consumption at full load")
          .source("common approximate diesel chart, 20 to 200 kW; idle: trade, 25 to 30 %")
          .caution("Use the readings of hour meter and tank where there are any")
          .errorCodes(
              SupplyErrorCode.NO_CHART, SupplyErrorCode.OUTSIDE_CHART, SupplyErrorCode.OVERLOADED)
          .example("=GENSET.FUEL(10;20;\"diesel\")", 3.4)
          .implementation(
              a ->
                  FuelChart.litresPerHour(
                      a.get(SupplyParameters.KW),
                      a.get(SupplyParameters.RATED_KW),
                      a.get(SupplyParameters.FUEL)));

  public static final FunctionSpec FUELFOR =
      GROUP
          .function("FUELFOR")
          .description("Returns the fuel that a generator consumes over a schedule of loads")
          .parameters(KW_RANGE, HOURS_RANGE, SupplyParameters.RATED_KW, SupplyParameters.FUEL)
          .returns(Unit.LITRE, "Fuel")
          .formula("Σ GENSET.FUEL × hours")
          .source("see GENSET.FUEL")
          .caution(
              "0 kW is an idling generator, which still uses fuel; leave out the hours when"
                  + " it is off")
          .errorCodes(
              SupplyErrorCode.NO_CHART, SupplyErrorCode.OUTSIDE_CHART, SupplyErrorCode.OVERLOADED)
          .example("=GENSET.FUELFOR({10|5};{8|4};20;\"diesel\")", 36.4)
          .implementation(GensetFunctions::fuelFor);

  public static final FunctionSpec CO2 =
      GROUP
          .function("CO2")
          .description("Returns the CO2 from burning fuel")
          .parameters(SupplyParameters.LITRES, SupplyParameters.FUEL.orElse(Fuel.DIESEL))
          .returns(Unit.KILOGRAM, "CO2")
          .formula("litres × factor")
          .source("EPA 2021 (diesel), EIA 2013 (petrol), DESNZ 2024 (HVO, from memory: check)")
          .caution(
              "Production and transport of the fuel are not included, nor is the plant carbon"
                  + " of HVO")
          .example("=GENSET.CO2(100)", 270.0)
          .steps(
              a -> {
                Fuel fuel = a.get(SupplyParameters.FUEL);
                return List.of(
                    new CalculationStep(
                        "kg/L",
                        "CO2 of a litre",
                        Emissions.ofFuel(1, fuel),
                        Unit.KILOGRAM,
                        Emissions.sourceOf(fuel)));
              })
          .implementation(
              a -> Emissions.ofFuel(a.get(SupplyParameters.LITRES), a.get(SupplyParameters.FUEL)));

  public static final FunctionSpec GRIDCO2 =
      GROUP
          .function("GRIDCO2")
          .description("Returns the CO2 of energy from the public grid")
          .parameters(KILOWATT_HOURS, COUNTRY, YEAR.orElse(null, "the newest year held"))
          .returns(Unit.KILOGRAM, "CO2 equivalent")
          .formula("kWh × factor of the country's grid in that year")
          .source(
              "Our World in Data carbon intensity (life cycle); United Kingdom 2024 and 2025: DESNZ"
                  + " (generation only)")
          .caution("A mean of one year and country; a contract or an hour can differ greatly")
          .errorCodes(SupplyErrorCode.NO_GRID_YEAR)
          .example("=GENSET.GRIDCO2(100;\"FR\")", 5.6039)
          .steps(
              a -> {
                Emissions.Grid grid = grid(a);
                return List.of(
                    new CalculationStep(
                        "kg/kWh",
                        grid.country() + " " + grid.year(),
                        grid.kgPerKwh(),
                        Unit.KILOGRAM,
                        grid.source()));
              })
          .implementation(a -> a.get(KILOWATT_HOURS) * grid(a).kgPerKwh());

  private static double derate(Arguments a) {
    return GeneratorRating.derate(
        a.get(SupplyParameters.ALTITUDE),
        a.get(SupplyParameters.AIR_TEMP),
        a.get(SupplyParameters.ENGINE));
  }

  private static List<CalculationStep> derateSteps(Arguments a) {
    Engine engine = a.get(SupplyParameters.ENGINE);
    return List.of(
        new CalculationStep(
            "f₁",
            "share that remains at the altitude",
            GeneratorRating.altitudeFactor(a.get(SupplyParameters.ALTITUDE), engine),
            Unit.SHARE,
            ""),
        new CalculationStep(
            "f₂",
            "share that remains at the air temperature",
            GeneratorRating.temperatureFactor(a.get(SupplyParameters.AIR_TEMP), engine),
            Unit.SHARE,
            ""));
  }

  private static double[] sizes(Arguments a) {
    return RangeTable.beside("the sizes", new String[] {"sizes"}, a.get(SIZES))
        .filledRows()
        .stream()
        .mapToDouble(row -> Checks.above(row.nameOf(0), row.number(0), 0))
        .toArray();
  }

  private static double fuelFor(Arguments a) {
    String[] columns = {"kw_range", "hours_range"};
    double litres = 0;
    for (RangeTable.Row row :
        RangeTable.beside("the schedule", columns, a.get(KW_RANGE), a.get(HOURS_RANGE))
            .filledRows()) {
      double kw = Checks.atLeast(row.nameOf(0), row.number(0), 0);
      double hours = Checks.atLeast(row.nameOf(1), row.number(1), 0);
      litres +=
          hours
              * FuelChart.litresPerHour(
                  kw, a.get(SupplyParameters.RATED_KW), a.get(SupplyParameters.FUEL));
    }
    return litres;
  }

  private static Emissions.Grid grid(Arguments a) {
    Double year = a.get(YEAR);
    return Emissions.grid(a.get(COUNTRY), year == null ? null : year.intValue());
  }
}
