package org.setpower.registry.groups;

import java.util.ArrayList;
import java.util.List;
import org.setpower.base.CalculationStep;
import org.setpower.base.PhaseSystem;
import org.setpower.base.Unit;
import org.setpower.cable.Ampacity;
import org.setpower.cable.CableErrorCode;
import org.setpower.cable.CableRun;
import org.setpower.cable.CableSize;
import org.setpower.cable.Conductor;
import org.setpower.cable.InstallationMethod;
import org.setpower.cable.Metal;
import org.setpower.cable.Protection;
import org.setpower.cable.Sizing;
import org.setpower.registry.Arguments;
import org.setpower.registry.FunctionGroup;
import org.setpower.registry.FunctionSpec;
import org.setpower.registry.Parameter;

/** CABLE: wire and runs. */
public final class CableFunctions {
  private CableFunctions() {}

  static final FunctionGroup GROUP = new FunctionGroup("CABLE", "cable runs");

  private static final String PARALLEL_CAUTION =
      "Give each parallel cable its own protection, or a rating for the whole "
          + "current: when one plug comes out the others carry all";

  /** What counts where nobody says: hot air, a neutral with harmonics, a neighbour. */
  private static final Parameter<Double> HOT_AIR =
      CableParameters.AIR_TEMP.orElse(Ampacity.HOT_AMBIENT);

  private static final Parameter<Double> LOADED =
      CableParameters.LOADED_CONDUCTORS.orElse(null, "2, with 3PH 4");
  private static final Parameter<Ampacity.Method> SOME_METHOD =
      CableParameters.METHOD.orElse(Ampacity.Method.FLEXIBLE);
  private static final Parameter<InstallationMethod> BESIDE_ANOTHER =
      CableParameters.LAID.orElse(InstallationMethod.BESIDE_ANOTHER, "bunched 2");

  private static final Parameter<Double> LOADED_TEMP =
      CableParameters.CONDUCTOR_TEMP.orElse(CableRun.LOADED_TEMP).zeroIsBlank();

  private static final Parameter<?>[] END_PARAMETERS = {
    CableParameters.SIZE,
    CableParameters.LENGTH,
    Parameters.WATTS,
    CableParameters.SUPPLY_VOLTS,
    Parameters.SYSTEM,
    Parameters.LINE_POWER_FACTOR,
    LOADED_TEMP,
    CableParameters.PARALLEL.orElse(1.0)
  };

  public static final FunctionSpec AREA =
      GROUP
          .function("AREA")
          .description("Returns the cross-section of a cable size")
          .parameters(CableParameters.SIZE)
          .returns(Unit.SQUARE_MILLIMETRE, "Cross-section of one conductor")
          .formula("AWG: π/4·d², d = 0.127·92^((36−n)/39) mm")
          .source("ASTM B258; IEC 60228 nominal areas")
          .errorCodes(
              CableErrorCode.UNKNOWN_SIZE,
              CableErrorCode.GAUGE_OR_AREA,
              CableErrorCode.NOT_A_GAUGE,
              CableErrorCode.NOT_A_STANDARD_AREA)
          .example("=CABLE.AREA(\"2.5 mm²\")", 2.5)
          .implementation(a -> a.get(CableParameters.SIZE).area());

  public static final FunctionSpec RESISTANCE =
      GROUP
          .function("RESISTANCE")
          .description("Returns the direct-current resistance of one conductor, per kilometre")
          .parameters(
              CableParameters.SIZE,
              CableParameters.CONDUCTOR_TEMP.orElse(20.0),
              CableParameters.METAL.orElse(Metal.COPPER))
          .returns(
              Unit.OHM_PER_KILOMETRE,
              "Resistance of one conductor, of copper at 20 °C if nothing else is entered")
          .formula("R·(1 + α·(T − T₀)), R the table value at T₀")
          .source(
              "NEC Chapter 9 Table 8, stranded, and its note 2 (24 to 20 AWG: FAA AC 43.13-1B Table"
                  + " 11-9); IEC 60228 class 5 (Al: class 2), maximum at 20 °C")
          .errorCodes(CableErrorCode.NO_RESISTANCE)
          .example("=CABLE.RESISTANCE(\"2.5 mm²\")", 7.98)
          .steps(CableFunctions::resistanceSteps)
          .implementation(a -> conductor(a).ohms(a.get(CableParameters.CONDUCTOR_TEMP)));

  public static final FunctionSpec DROP =
      GROUP
          .function("DROP")
          .description("Returns the voltage drop of a cable run")
          .parameters(
              CableParameters.SIZE,
              CableParameters.LENGTH,
              Parameters.AMPS,
              Parameters.SYSTEM,
              Parameters.LINE_POWER_FACTOR,
              LOADED_TEMP,
              CableParameters.PARALLEL.orElse(1.0))
          .returns(Unit.VOLT, "Voltage drop of the run")
          .formula("k·I·L·(R cos φ + X sin φ)/parallel, k = 2, 2, √3")
          .source("UFC 3-520-01 (2002) Appendix B-2; IEC 60364-5-52 Annex G")
          .caution(
              "Loads of constant power draw more current as the voltage falls: size cable and"
                  + " breaker on CABLE.LOADAMPS. "
                  + PARALLEL_CAUTION)
          .errorCodes(CableErrorCode.NO_RESISTANCE)
          .example("=CABLE.DROP(\"12 AWG\";10;8.33;\"DC\")", 1.03)
          .steps(a -> runSteps(a, run(a)))
          .implementation(a -> run(a).drop(a.get(Parameters.AMPS)));

  public static final FunctionSpec LOADVOLTS =
      GROUP
          .function("LOADVOLTS")
          .description("Returns the voltage at a load of constant power at the end of a cable")
          .parameters(END_PARAMETERS)
          .returns(Unit.VOLT, "Voltage at the load")
          .formula("upper root of V⁴ + V²·(2(PR+QX) − Vs²) + (P²+Q²)(R²+X²) = 0, per phase")
          .source("exact solution of the circuit; three-phase: line-to-line voltage")
          .caution(PARALLEL_CAUTION)
          .errorCodes(CableErrorCode.NO_RESISTANCE, CableErrorCode.CANNOT_CARRY)
          .example("=CABLE.LOADVOLTS(\"12 AWG\";10;200;24;\"DC\")", 22.92)
          .steps(CableFunctions::endSteps)
          .implementation(
              a -> run(a).endVolts(a.get(Parameters.WATTS), a.get(CableParameters.SUPPLY_VOLTS)));

  public static final FunctionSpec LOADAMPS =
      GROUP
          .function("LOADAMPS")
          .description("Returns the current of a load of constant power at the end of a cable")
          .parameters(END_PARAMETERS)
          .returns(Unit.AMPERE, "Current in one leg")
          .formula("P/(V·pf), three-phase P/(√3·V·pf), V = CABLE.LOADVOLTS")
          .source("exact solution of the circuit")
          .caution(
              "Size cable and breaker on this, not on watts over nominal voltage. "
                  + PARALLEL_CAUTION)
          .errorCodes(CableErrorCode.NO_RESISTANCE, CableErrorCode.CANNOT_CARRY)
          .example("=CABLE.LOADAMPS(\"12 AWG\";10;200;12;\"DC\")", 21.37)
          .steps(CableFunctions::endSteps)
          .implementation(
              a -> run(a).endAmps(a.get(Parameters.WATTS), a.get(CableParameters.SUPPLY_VOLTS)));

  public static final FunctionSpec HEAT =
      GROUP
          .function("HEAT")
          .description("Returns the heat loss of a cable run")
          .parameters(
              CableParameters.SIZE,
              CableParameters.LENGTH,
              Parameters.AMPS,
              Parameters.SYSTEM,
              LOADED_TEMP,
              CableParameters.PARALLEL.orElse(1.0))
          .returns(Unit.WATT, "Heat loss in the cable")
          .formula("n·I²·R·L/parallel, n = 2, 2, 3")
          .source("Joule's law; a loaded neutral comes on top")
          .caution(
              "Do not apply this to a cable on a drum or in a bundle: heat cannot escape, "
                  + "see CABLE.AMPACITY. "
                  + PARALLEL_CAUTION)
          .errorCodes(CableErrorCode.NO_RESISTANCE)
          .example("=CABLE.HEAT(\"12 AWG\";10;8.33;\"DC\")", 8.5783)
          .steps(a -> runSteps(a, run(a, 1)))
          .implementation(a -> run(a, 1).heat(a.get(Parameters.AMPS)));

  public static final FunctionSpec AMPACITY =
      GROUP
          .function("AMPACITY")
          .description("Returns the current-carrying capacity (ampacity) of a cable")
          .parameters(
              CableParameters.SIZE,
              CableParameters.METHOD,
              CableParameters.AIR_TEMP,
              CableParameters.LOADED_CONDUCTORS,
              CableParameters.LAID)
          .returns(Unit.AMPERE, "Cable rating of one circuit")
          .formula("table rating × factor for air temperature × factor for grouping")
          .source(
              "NEC 400.5(A), 310.16 with 240.4(D), 310.15; 30 CFR 18 Appendix I; BS 7671 Tables"
                  + " 4F1A and 4F3A; IEC 60364-5-52 B.52.17. 60 °C columns (building 75 °C above 1"
                  + " AWG)")
          .caution(
              "Do not load a cable on its drum: unwind it. Use \"feeder\" only for single "
                  + "cores that do not touch, never for multi-core. For parallel cables use the "
                  + "rating of one; the NEC permits them from 1/0 AWG only")
          .errorCodes(
              CableErrorCode.NO_RATING,
              CableErrorCode.TOO_HOT,
              CableErrorCode.LAID_BEYOND_TABLE,
              CableErrorCode.CLOSED_DRUM)
          .example("=CABLE.AMPACITY(\"2.5 mm²\";\"cord\";30;2;\"drum 3 layers\")", 11.25)
          .steps(CableFunctions::ampacitySteps)
          .implementation(a -> ampacity(a).amps());

  public static final FunctionSpec BREAKER =
      GROUP
          .function("BREAKER")
          .description("Returns the next higher standard breaker rating")
          .parameters(
              Parameters.AMPS,
              CableParameters.STANDARD,
              CableParameters.CONTINUOUS.orElse(true, "TRUE"))
          .returns(Unit.AMPERE, "Rating of the breaker")
          .formula("IEC: smallest rating ≥ amps; NEC: ≥ 1.25 × amps when continuous")
          .source("IEC 60898-1, IEC 60947-2, IEC 60364-4-43; NEC 240.6(A), 210.20")
          .caution(
              "Do not use an AC breaker for DC. Use a cable rated for the breaker: "
                  + "otherwise it is not protected. Breakers grouped in a distro in the sun trip "
                  + "early; inrush trips curve B")
          .errorCodes(CableErrorCode.NO_BREAKER)
          .example("=CABLE.BREAKER(16;\"NEC\")", 20.0)
          .implementation(
              a ->
                  Protection.breaker(
                      a.get(Parameters.AMPS),
                      a.get(CableParameters.STANDARD),
                      a.get(CableParameters.CONTINUOUS)));

  public static final FunctionSpec REACH =
      GROUP
          .function("REACH")
          .description("Returns the max. one-way length of a cable within a voltage drop limit")
          .parameters(
              CableParameters.SIZE,
              Parameters.AMPS,
              Parameters.LINE_VOLTS,
              CableParameters.MAX_DROP,
              Parameters.SYSTEM,
              Parameters.LINE_POWER_FACTOR,
              LOADED_TEMP,
              HOT_AIR,
              LOADED,
              SOME_METHOD,
              BESIDE_ANOTHER)
          .returns(Unit.METRE, "Max. length, one way")
          .formula("inverse of CABLE.DROP")
          .source("see CABLE.DROP; rating: CABLE.AMPACITY")
          .caution("Check the earth loop too, with CABLE.TRIPS: it is not considered here")
          .errorCodes(
              CableErrorCode.NO_RESISTANCE,
              CableErrorCode.NO_RATING,
              CableErrorCode.OVER_RATING,
              CableErrorCode.TOO_HOT,
              CableErrorCode.LAID_BEYOND_TABLE,
              CableErrorCode.CLOSED_DRUM)
          .example("=CABLE.REACH(\"2.5 mm²\";16;230;5%;\"1PH\";1;;30;2;;\"free\")", 38.917)
          .implementation(
              a ->
                  Sizing.reach(
                      a.get(CableParameters.SIZE),
                      a.get(Parameters.AMPS),
                      a.get(Parameters.LINE_VOLTS),
                      a.get(CableParameters.MAX_DROP),
                      a.get(Parameters.SYSTEM),
                      Parameters.linePowerFactor(a),
                      a.get(CableParameters.CONDUCTOR_TEMP),
                      new Sizing.Installed(
                          a.get(CableParameters.METHOD),
                          a.get(CableParameters.AIR_TEMP),
                          loaded(a),
                          a.get(CableParameters.LAID))));

  public static final FunctionSpec GAUGE =
      GROUP
          .function("GAUGE")
          .description("Returns the min. standard cable size for voltage drop and rating")
          .parameters(
              CableParameters.LENGTH,
              Parameters.AMPS,
              Parameters.LINE_VOLTS,
              CableParameters.MAX_DROP,
              CableParameters.FAMILY,
              Parameters.SYSTEM,
              CableParameters.BREAKER,
              Parameters.LINE_POWER_FACTOR,
              HOT_AIR,
              LOADED,
              SOME_METHOD,
              BESIDE_ANOTHER)
          .returnsText("Cable size")
          .formula("first size with voltage drop at 60 °C ≤ limit and rating ≥ breaker")
          .source("see CABLE.DROP, CABLE.AMPACITY and CABLE.BREAKER (NEC for AWG, IEC for mm²)")
          .caution(
              "Enter the actual upstream breaker: a cable on a breaker above its rating is "
                  + "a fire hazard")
          .errorCodes(
              CableErrorCode.BREAKER_BELOW_LOAD,
              CableErrorCode.NO_SIZE_FOR_BREAKER,
              CableErrorCode.NO_SIZE_FOR_DROP,
              CableErrorCode.TOO_HOT)
          .example("=CABLE.GAUGE(30;13;230;5%;\"mm²\";\"1PH\";16;1)", "2.5 mm²")
          .steps(CableFunctions::gaugeSteps)
          .implementation(a -> Sizing.gauge(a.get(CableParameters.FAMILY), need(a)).toString());

  public static final FunctionSpec LOOP =
      GROUP
          .function("LOOP")
          .description("Returns the earth loop impedance at the end of a cable, cold")
          .parameters(
              CableParameters.SIZE,
              CableParameters.LENGTH,
              CableParameters.SOURCE_OHMS,
              CableParameters.EARTH_SIZE)
          .returns(Unit.OHM, "Earth loop impedance at 20 °C")
          .formula("source + L·(R leg + R earth)")
          .source("IEC 60364-4-41; resistances as in CABLE.RESISTANCE at 20 °C")
          .caution(
              "Planning figure only. Have loop impedance, polarity, earth (ground) "
                  + "continuity, RCD operation and insulation resistance measured by a competent "
                  + "person")
          .errorCodes(CableErrorCode.NO_RESISTANCE)
          .example("=CABLE.LOOP(\"2.5 mm²\";50;0.35;\"2.5 mm²\")", 1.148)
          .implementation(
              a ->
                  Protection.loop(
                      a.get(CableParameters.SIZE),
                      a.get(CableParameters.LENGTH),
                      a.get(CableParameters.SOURCE_OHMS),
                      a.get(CableParameters.EARTH_SIZE)));

  public static final FunctionSpec TRIPS =
      GROUP
          .function("TRIPS")
          .description("Returns 1 if an earth fault trips the breaker instantly, 0 if it does not")
          .parameters(
              CableParameters.LOOP_OHMS,
              CableParameters.BREAKER,
              CableParameters.CURVE,
              CableParameters.VOLTS_TO_EARTH)
          .returns(Unit.NONE, "1 if it trips instantly")
          .formula("0.8·U₀/Z ≥ 5, 10, 20 × breaker (curve B, C, D)")
          .source("IEC 60898-1; BS 7671 Appendix 3 (0.8 for a loop met cold)")
          .caution(
              "Do not rely on 1 behind a generator: it may not supply that current. Provide"
                  + " RCD protection there. At 0 provide RCD protection, or use a larger or "
                  + "shorter cable. Have every circuit tested")
          .example("=CABLE.TRIPS(1.148;16;\"C\";230)", 1.0)
          .steps(CableFunctions::tripSteps)
          .implementation(
              a ->
                  Protection.trips(
                          a.get(CableParameters.LOOP_OHMS),
                          a.get(CableParameters.BREAKER),
                          a.get(CableParameters.CURVE),
                          a.get(CableParameters.VOLTS_TO_EARTH))
                      ? 1.0
                      : 0.0);

  private static Ampacity ampacity(Arguments a) {
    return Ampacity.of(
        a.get(CableParameters.SIZE),
        a.get(CableParameters.METHOD),
        a.get(CableParameters.AIR_TEMP),
        a.get(CableParameters.LOADED_CONDUCTORS).intValue(),
        a.get(CableParameters.LAID));
  }

  private static List<CalculationStep> ampacitySteps(Arguments a) {
    Ampacity rating = ampacity(a);
    return ratingSteps(rating);
  }

  private static List<CalculationStep> ratingSteps(Ampacity rating) {
    return List.of(
        new CalculationStep(
            "I₀", "rating in the table", rating.tableAmps(), Unit.AMPERE, rating.source()),
        new CalculationStep(
            "f₁", "factor for air temperature", rating.ambientFactor(), Unit.SHARE, ""),
        new CalculationStep(
            "f₂",
            "factor for loaded conductors and grouping",
            rating.laidFactor(),
            Unit.SHARE,
            ""));
  }

  /** Drivers of lamps load the neutral with harmonics: with three phases it counts too. */
  private static int cautiouslyLoaded(PhaseSystem system) {
    return system == PhaseSystem.THREE ? Ampacity.MOST_LOADED : system.loadedConductors();
  }

  private static int loaded(Arguments a) {
    Double given = a.get(CableParameters.LOADED_CONDUCTORS);
    return given == null ? cautiouslyLoaded(a.get(Parameters.SYSTEM)) : given.intValue();
  }

  private static Sizing.Need need(Arguments a) {
    return new Sizing.Need(
        a.get(CableParameters.LENGTH),
        a.get(Parameters.AMPS),
        a.get(Parameters.LINE_VOLTS),
        a.get(CableParameters.MAX_DROP),
        a.get(Parameters.SYSTEM),
        Parameters.linePowerFactor(a),
        a.get(CableParameters.AIR_TEMP),
        loaded(a),
        a.get(CableParameters.METHOD),
        a.get(CableParameters.LAID),
        a.get(CableParameters.BREAKER));
  }

  private static List<CalculationStep> gaugeSteps(Arguments a) {
    Sizing.Need need = need(a);
    CableSize size = Sizing.gauge(a.get(CableParameters.FAMILY), need);
    Ampacity rating = Ampacity.of(size, need.method(), need.ambient(), need.loaded(), need.laid());
    List<CalculationStep> steps = new ArrayList<>();
    steps.add(new CalculationStep("In", "upstream breaker", need.breaker(), Unit.AMPERE, ""));
    steps.addAll(ratingSteps(rating));
    steps.add(new CalculationStep("Iz", "rating of the size", rating.amps(), Unit.AMPERE, ""));
    steps.add(
        new CalculationStep(
            "ΔU max", "max. voltage drop", need.maxDrop() * need.volts(), Unit.VOLT, ""));
    steps.add(
        new CalculationStep(
            "ΔU", "voltage drop of the size at 60 °C", Sizing.drop(size, need), Unit.VOLT, ""));
    return steps;
  }

  private static List<CalculationStep> tripSteps(Arguments a) {
    return List.of(
        new CalculationStep(
            "0.8·U₀/Z",
            "current of an earth fault",
            Protection.faultAmps(
                a.get(CableParameters.LOOP_OHMS), a.get(CableParameters.VOLTS_TO_EARTH)),
            Unit.AMPERE,
            ""),
        new CalculationStep(
            "Ia",
            "current that trips the breaker instantly",
            Protection.tripAmps(a.get(CableParameters.BREAKER), a.get(CableParameters.CURVE)),
            Unit.AMPERE,
            "IEC 60898-1"));
  }

  private static Conductor conductor(Arguments a) {
    return Conductor.of(a.get(CableParameters.SIZE), a.get(CableParameters.METAL));
  }

  private static CableRun run(Arguments a) {
    return run(a, Parameters.linePowerFactor(a));
  }

  private static CableRun run(Arguments a, double powerFactor) {
    return CableRun.of(
        a.get(CableParameters.SIZE),
        a.get(CableParameters.LENGTH),
        a.get(Parameters.SYSTEM),
        powerFactor,
        a.get(CableParameters.CONDUCTOR_TEMP),
        a.get(CableParameters.PARALLEL));
  }

  private static List<CalculationStep> resistanceSteps(Arguments a) {
    Conductor c = conductor(a);
    return List.of(
        new CalculationStep(
            "R", "resistance in the table", c.tableOhms(), Unit.OHM_PER_KILOMETRE, c.source()),
        new CalculationStep(
            "T₀", "temperature of the table", c.tableTemp(), Unit.CELSIUS, c.source()),
        new CalculationStep("α", "change per kelvin", c.alpha(), Unit.NONE, c.source()));
  }

  private static List<CalculationStep> runSteps(Arguments a, CableRun run) {
    Conductor c = Conductor.of(a.get(CableParameters.SIZE));
    double ohms = c.ohms(a.get(CableParameters.CONDUCTOR_TEMP));
    List<CalculationStep> steps = new ArrayList<>();
    steps.add(
        new CalculationStep(
            "R", "resistance of one conductor", ohms, Unit.OHM_PER_KILOMETRE, c.source()));
    steps.add(
        new CalculationStep("R·L", "of one conductor over the run", run.ohms(), Unit.OHM, ""));
    if (run.reactance() > 0) {
      steps.add(
          new CalculationStep(
              "X·L",
              "reactance of one conductor over the run",
              run.reactance(),
              Unit.OHM,
              "NEC Chapter 9 Table 9; IEC 60364-5-52 Annex G"));
    }
    return steps;
  }

  private static List<CalculationStep> endSteps(Arguments a) {
    CableRun run = run(a);
    double watts = a.get(Parameters.WATTS);
    double volts = a.get(CableParameters.SUPPLY_VOLTS);
    double amps = run.endAmps(watts, volts);
    List<CalculationStep> steps = new ArrayList<>(runSteps(a, run));
    steps.add(
        new CalculationStep("V", "voltage at the load", run.endVolts(watts, volts), Unit.VOLT, ""));
    steps.add(new CalculationStep("I", "current in one leg", amps, Unit.AMPERE, ""));
    steps.add(
        new CalculationStep("n·I²·R", "heat loss in the cable", run.heat(amps), Unit.WATT, ""));
    return steps;
  }
}
