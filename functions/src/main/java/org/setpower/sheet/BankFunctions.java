package org.setpower.sheet;

import org.setpower.bank.EqualPacks;
import org.setpower.base.Unit;
import org.setpower.pack.Chemistry;

/** BANK: packs joined together. */
public final class BankFunctions {
  private BankFunctions() {}

  static final Group GROUP = new Group("BANK", "packs joined together");

  private static final String STRING_CAUTION =
      "Series only where the maker allows it: one pack's switch then sees the whole string. Over"
          + " 60 V DC in the dry, 30 V in the wet, bare parts are not safe to touch; never unplug under"
          + " load above 60 V.";

  private static final String PARALLEL_CAUTION =
      "Packs of different charge joined without diodes charge each other at once, limited only by"
          + " their resistance: join equal packs of equal charge only.";

  private static final String CIRCUIT = "series and parallel circuit";

  public static final FunctionSpec VOLTS =
      GROUP
          .function("VOLTS")
          .says("Returns the nominal voltage of equal packs in series")
          .takes(Parameters.VOLTS, Parameters.SERIES)
          .gives(Unit.VOLT, "Nominal voltage of the bank")
          .formula("V · series")
          .source(CIRCUIT)
          .caution(STRING_CAUTION)
          .example("=BANK.VOLTS(28.8;2)", 57.6)
          .by(a -> EqualPacks.volts(a.get(Parameters.VOLTS), a.get(Parameters.SERIES)));

  public static final FunctionSpec AMPHOURS =
      GROUP
          .function("AMPHOURS")
          .says("Returns the amp-hours of equal packs in parallel")
          .takes(Parameters.AMP_HOURS, Parameters.PARALLEL_PACKS)
          .gives(Unit.AMPERE_HOUR, "Amp-hours of the bank")
          .formula("Ah · parallel")
          .source(CIRCUIT)
          .caution(PARALLEL_CAUTION)
          .example("=BANK.AMPHOURS(10.2;3)", 30.6)
          .by(
              a ->
                  EqualPacks.ampHours(
                      a.get(Parameters.AMP_HOURS), a.get(Parameters.PARALLEL_PACKS)));

  public static final FunctionSpec WATTHOURS =
      GROUP
          .function("WATTHOURS")
          .says("Returns the watt-hours of a bank of equal packs")
          .takes(
              Parameters.VOLTS, Parameters.AMP_HOURS, Parameters.SERIES, Parameters.PARALLEL_PACKS)
          .gives(Unit.WATT_HOUR, "Watt-hours of the bank")
          .formula("V · Ah · series · parallel")
          .source("energy = voltage · charge")
          .example("=BANK.WATTHOURS(28.8;10.2;2;3)", 1762.56)
          .by(
              a ->
                  EqualPacks.wattHours(
                      a.get(Parameters.VOLTS),
                      a.get(Parameters.AMP_HOURS),
                      a.get(Parameters.SERIES),
                      a.get(Parameters.PARALLEL_PACKS)));

  public static final FunctionSpec MAXAMPS =
      GROUP
          .function("MAXAMPS")
          .says("Returns the highest current of equal packs in parallel")
          .takes(Parameters.MAX_AMPS, Parameters.PARALLEL_PACKS)
          .gives(Unit.AMPERE, "Highest current of the bank")
          .formula("A · parallel")
          .source(CIRCUIT)
          .caution(
              "Holds for equal packs joined hard in parallel. Behind a hot-swap plate one pack may"
                  + " carry it all: write parallel = 1.")
          .example("=BANK.MAXAMPS(30;2)", 60.0)
          .by(
              a ->
                  EqualPacks.maxAmps(a.get(Parameters.MAX_AMPS), a.get(Parameters.PARALLEL_PACKS)));

  public static final FunctionSpec MILLIOHMS =
      GROUP
          .function("MILLIOHMS")
          .says("Returns the resistance of a bank of equal packs")
          .takes(Parameters.MILLIOHMS, Parameters.SERIES, Parameters.PARALLEL_PACKS)
          .gives(Unit.MILLIOHM, "Resistance of the bank")
          .formula("mΩ · series / parallel")
          .source(CIRCUIT)
          .caution(PARALLEL_CAUTION)
          .example("=BANK.MILLIOHMS(45;2;3)", 30.0)
          .by(
              a ->
                  EqualPacks.milliohms(
                      a.get(Parameters.MILLIOHMS),
                      a.get(Parameters.SERIES),
                      a.get(Parameters.PARALLEL_PACKS)));

  public static final FunctionSpec FULLVOLTS =
      GROUP
          .function("FULLVOLTS")
          .says("Returns the voltage of packs in series just off the charger")
          .takes(Parameters.CELLS, Parameters.SERIES, Parameters.CHEMISTRY.orElse(Chemistry.LI_ION))
          .gives(Unit.VOLT, "Voltage just off the charger")
          .formula("cells · series · 4.20 V (Li-ion), 3.65 V (LFP), 2.45 V (lead), 1.5 V (NiMH)")
          .source("Chen et al. 2020 (4.2 V class); battery handbooks (Linden and Reddy)")
          .caution(STRING_CAUTION)
          .example("=BANK.FULLVOLTS(8;2)", 67.2)
          .example("=BANK.FULLVOLTS(4;1;\"LFP\")", 14.6)
          .by(
              a ->
                  EqualPacks.fullVolts(
                      a.get(Parameters.CELLS),
                      a.get(Parameters.SERIES),
                      a.get(Parameters.CHEMISTRY)));

  public static final FunctionSpec SHORTAMPS =
      GROUP
          .function("SHORTAMPS")
          .says("Returns the prospective short-circuit current of a pack or bank")
          .takes(Parameters.FULL_VOLTS, Parameters.MILLIOHMS, Parameters.LEAD_MILLIOHMS)
          .gives(Unit.AMPERE, "Prospective short-circuit current")
          .formula("I = V / (R + R lead)")
          .source("Ohm's law")
          .caution(
              "A fuse at the pack must break this current at the pack's full DC volts, and be no larger"
                  + " than the lead's rating; an AC breaker may not break it. The first instant may"
                  + " be higher: a sustained resistance is larger than a momentary one.")
          .example("=BANK.SHORTAMPS(33.6;30)", 1120.0)
          .by(
              a ->
                  EqualPacks.shortAmps(
                      a.get(Parameters.FULL_VOLTS),
                      a.get(Parameters.MILLIOHMS),
                      a.get(Parameters.LEAD_MILLIOHMS)));
}
