package org.setpower.registry.groups;

import org.setpower.base.Unit;
import org.setpower.registry.FunctionGroup;
import org.setpower.registry.FunctionSpec;
import org.setpower.supply.SteadyLoad;

/** LOAD: what is plugged in. */
public final class LoadFunctions {
  private LoadFunctions() {}

  static final FunctionGroup GROUP = new FunctionGroup("LOAD", "loads");

  public static final FunctionSpec AMPS =
      GROUP
          .function("AMPS")
          .description("Returns the current of a load in each leg")
          .parameters(
              Parameters.WATTS_OR_NONE,
              Parameters.LINE_VOLTS,
              Parameters.SYSTEM,
              Parameters.LINE_POWER_FACTOR)
          .returns(Unit.AMPERE, "Current in one leg")
          .formula("P/(U·pf), three-phase P/(√3·U·pf)")
          .source("identities of alternating current")
          .caution(
              "Keep the earth (ground) leakage of all drivers below 30 % of the RCD's rating:"
                  + " no function checks it. For a battery enter the cut-off voltage: the current"
                  + " is highest when it is nearly empty. Inrush of LED drivers and motors is not"
                  + " included")
          .example("=LOAD.AMPS(1600;230;\"1PH\";0.98)", 7.0985)
          .implementation(
              a ->
                  SteadyLoad.amps(
                      a.get(Parameters.WATTS_OR_NONE),
                      a.get(Parameters.LINE_VOLTS),
                      a.get(Parameters.SYSTEM),
                      Parameters.linePowerFactor(a)));

  public static final FunctionSpec VA =
      GROUP
          .function("VA")
          .description("Returns the apparent power of a load")
          .parameters(Parameters.WATTS_OR_NONE, Parameters.POWER_FACTOR)
          .returns(Unit.VOLT_AMPERE, "Apparent power")
          .formula("P/pf")
          .source("identity of alternating current")
          .example("=LOAD.VA(400;0.96)", 416.667)
          .implementation(
              a ->
                  SteadyLoad.voltAmperes(
                      a.get(Parameters.WATTS_OR_NONE), a.get(Parameters.POWER_FACTOR)));
}
