package org.setpower.sheet;

import java.util.ArrayList;
import java.util.List;
import org.setpower.base.PhaseSystem;
import org.setpower.base.Step;
import org.setpower.base.Unit;
import org.setpower.cable.CableReason;
import org.setpower.cable.CableRun;
import org.setpower.cable.Conductor;
import org.setpower.cable.Metal;

/** CABLE: wire and runs. */
public final class CableFunctions {
  private CableFunctions() {}

  static final Group GROUP = new Group("CABLE", "wire and runs");

  private static final Parameter<?>[] END_PARAMETERS = {
    Parameters.SIZE,
    Parameters.LENGTH,
    Parameters.WATTS,
    Parameters.SUPPLY_VOLTS,
    Parameters.SYSTEM.orElse(PhaseSystem.DC),
    Parameters.POWER_FACTOR.orElse(1.0),
    Parameters.CONDUCTOR_TEMP.orElse(CableRun.LOADED_TEMP),
    Parameters.PARALLEL.orElse(1.0)
  };

  public static final FunctionSpec AREA =
      GROUP
          .function("AREA")
          .says("Returns the cross-section of a cable size")
          .takes(Parameters.SIZE)
          .gives(Unit.SQUARE_MILLIMETRE, "Cross-section of one conductor")
          .formula("AWG: π/4·d², d = 0.127·92^((36−n)/39) mm")
          .source("ASTM B258; IEC 60228 nominal areas")
          .refuses(
              CableReason.UNKNOWN_SIZE, CableReason.NOT_A_GAUGE, CableReason.NOT_A_STANDARD_AREA)
          .example("=CABLE.AREA(\"2.5 mm²\")", 2.5)
          .by(a -> a.get(Parameters.SIZE).area());

  public static final FunctionSpec RESISTANCE =
      GROUP
          .function("RESISTANCE")
          .says("Returns the direct-current resistance of one conductor, per kilometre")
          .takes(
              Parameters.SIZE,
              Parameters.CONDUCTOR_TEMP.orElse(20.0),
              Parameters.METAL.orElse(Metal.COPPER))
          .gives(Unit.OHM_PER_KILOMETRE, "Resistance of one conductor")
          .formula("R·(1 + α·(T − T₀)), R the table value at T₀")
          .source(
              "NEC Chapter 9 Table 8, stranded, and its note 2 (24 to 20 AWG: FAA AC 43.13-1B Table"
                  + " 11-9); IEC 60228 class 5 (Al: class 2), maximum at 20 °C")
          .refuses(CableReason.NO_RESISTANCE)
          .example("=CABLE.RESISTANCE(\"2.5 mm²\")", 7.98)
          .shows(CableFunctions::resistanceSteps)
          .by(a -> conductor(a).ohms(a.get(Parameters.CONDUCTOR_TEMP)));

  public static final FunctionSpec DROP =
      GROUP
          .function("DROP")
          .says("Returns the volts lost over a cable run at a current")
          .takes(
              Parameters.SIZE,
              Parameters.LENGTH,
              Parameters.AMPS,
              Parameters.SYSTEM.orElse(PhaseSystem.DC),
              Parameters.POWER_FACTOR.orElse(1.0),
              Parameters.CONDUCTOR_TEMP.orElse(CableRun.LOADED_TEMP),
              Parameters.PARALLEL.orElse(1.0))
          .gives(Unit.VOLT, "Volts lost over the run")
          .formula("k·I·L·(R cos φ + X sin φ)/parallel, k = 2, 2, √3")
          .source("UFC 3-520-01 (2002) Appendix B-2; IEC 60364-5-52 Annex G")
          .caution(
              "Lamps and cameras that hold their watts draw more as the volts sag: size cable and"
                  + " breaker on CABLE.ENDAMPS")
          .refuses(CableReason.NO_RESISTANCE)
          .example("=CABLE.DROP(\"12 AWG\";10;8.33)", 1.03)
          .shows(a -> runSteps(a, run(a)))
          .by(a -> run(a).drop(a.get(Parameters.AMPS)));

  public static final FunctionSpec ENDVOLTS =
      GROUP
          .function("ENDVOLTS")
          .says("Returns the volts at the far end of a cable for a load that draws constant watts")
          .takes(END_PARAMETERS)
          .gives(Unit.VOLT, "Volts at the load")
          .formula("upper root of V⁴ + V²·(2(PR+QX) − Vs²) + (P²+Q²)(R²+X²) = 0, per phase")
          .source("exact solution of the circuit; three-phase: line-to-line volts")
          .refuses(CableReason.NO_RESISTANCE, CableReason.CANNOT_CARRY)
          .example("=CABLE.ENDVOLTS(\"12 AWG\";10;200;24)", 22.92)
          .shows(CableFunctions::endSteps)
          .by(a -> run(a).endVolts(a.get(Parameters.WATTS), a.get(Parameters.SUPPLY_VOLTS)));

  public static final FunctionSpec ENDAMPS =
      GROUP
          .function("ENDAMPS")
          .says("Returns the amps drawn at the far end of a cable by a load of constant watts")
          .takes(END_PARAMETERS)
          .gives(Unit.AMPERE, "Current in a line")
          .formula("P/(V·pf), three-phase P/(√3·V·pf), V = CABLE.ENDVOLTS")
          .source("exact solution of the circuit")
          .refuses(CableReason.NO_RESISTANCE, CableReason.CANNOT_CARRY)
          .example("=CABLE.ENDAMPS(\"12 AWG\";10;200;12)", 21.37)
          .shows(CableFunctions::endSteps)
          .by(a -> run(a).endAmps(a.get(Parameters.WATTS), a.get(Parameters.SUPPLY_VOLTS)));

  public static final FunctionSpec HEAT =
      GROUP
          .function("HEAT")
          .says("Returns the watts that a cable run turns to heat at a current")
          .takes(
              Parameters.SIZE,
              Parameters.LENGTH,
              Parameters.AMPS,
              Parameters.SYSTEM.orElse(PhaseSystem.DC),
              Parameters.CONDUCTOR_TEMP.orElse(CableRun.LOADED_TEMP),
              Parameters.PARALLEL.orElse(1.0))
          .gives(Unit.WATT, "Heat in the cable")
          .formula("n·I²·R·L/parallel, n = 2, 2, 3")
          .source("Joule's law; a loaded neutral comes on top")
          .refuses(CableReason.NO_RESISTANCE)
          .example("=CABLE.HEAT(\"12 AWG\";10;8.33)", 8.579)
          .shows(a -> runSteps(a, run(a, 1)))
          .by(a -> run(a, 1).heat(a.get(Parameters.AMPS)));

  private static Conductor conductor(Arguments a) {
    return Conductor.of(a.get(Parameters.SIZE), a.get(Parameters.METAL));
  }

  private static CableRun run(Arguments a) {
    return run(a, a.get(Parameters.POWER_FACTOR));
  }

  private static CableRun run(Arguments a, double powerFactor) {
    return CableRun.of(
        a.get(Parameters.SIZE),
        a.get(Parameters.LENGTH),
        a.get(Parameters.SYSTEM),
        powerFactor,
        a.get(Parameters.CONDUCTOR_TEMP),
        a.get(Parameters.PARALLEL));
  }

  private static List<Step> resistanceSteps(Arguments a) {
    Conductor c = conductor(a);
    return List.of(
        new Step("R", "resistance in the table", c.tableOhms(), Unit.OHM_PER_KILOMETRE, c.source()),
        new Step("T₀", "temperature of the table", c.tableTemp(), Unit.CELSIUS, c.source()),
        new Step("α", "change per kelvin", c.alpha(), Unit.NONE, c.source()));
  }

  private static List<Step> runSteps(Arguments a, CableRun run) {
    Conductor c = Conductor.of(a.get(Parameters.SIZE));
    double ohms = c.ohms(a.get(Parameters.CONDUCTOR_TEMP));
    List<Step> steps = new ArrayList<>();
    steps.add(
        new Step("R", "resistance of one conductor", ohms, Unit.OHM_PER_KILOMETRE, c.source()));
    steps.add(new Step("R·L", "of one conductor over the run", run.ohms(), Unit.OHM, ""));
    if (run.reactance() > 0) {
      steps.add(
          new Step(
              "X·L",
              "reactance of one conductor over the run",
              run.reactance(),
              Unit.OHM,
              "NEC Chapter 9 Table 9; IEC 60364-5-52 Annex G"));
    }
    return steps;
  }

  private static List<Step> endSteps(Arguments a) {
    CableRun run = run(a);
    double watts = a.get(Parameters.WATTS);
    double volts = a.get(Parameters.SUPPLY_VOLTS);
    double amps = run.endAmps(watts, volts);
    List<Step> steps = new ArrayList<>(runSteps(a, run));
    steps.add(new Step("V", "volts at the load", run.endVolts(watts, volts), Unit.VOLT, ""));
    steps.add(new Step("I", "amps in a line", amps, Unit.AMPERE, ""));
    steps.add(new Step("n·I²·R", "heat in the cable", run.heat(amps), Unit.WATT, ""));
    return steps;
  }
}
