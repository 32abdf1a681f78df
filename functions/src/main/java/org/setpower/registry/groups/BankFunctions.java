package org.setpower.registry.groups;

import java.util.List;
import org.setpower.bank.BankDischarge;
import org.setpower.bank.BankErrorCode;
import org.setpower.bank.BankEvent;
import org.setpower.bank.BankPack;
import org.setpower.bank.BankState;
import org.setpower.bank.CurrentSharing;
import org.setpower.bank.EqualPacks;
import org.setpower.base.CalculationStep;
import org.setpower.base.Checks;
import org.setpower.base.EvaluationException;
import org.setpower.base.TextEnum;
import org.setpower.base.Unit;
import org.setpower.pack.Chemistry;
import org.setpower.pack.DeviceLoad;
import org.setpower.pack.PackErrorCode;
import org.setpower.registry.Arguments;
import org.setpower.registry.FunctionGroup;
import org.setpower.registry.FunctionSpec;
import org.setpower.registry.RangeTable;

/** BANK: packs joined together. */
public final class BankFunctions {
  private BankFunctions() {}

  static final FunctionGroup GROUP =
      new FunctionGroup("BANK", "several battery packs joined together");

  private static final String STRING_CAUTION =
      "Do not touch bare parts above 60 V DC in the dry, 30 V DC in the wet. Do not"
          + " unplug under load above 60 V DC. Connect in series only batteries of the "
          + "same type and state of charge, where the maker permits it: the switch in "
          + "each sees the whole string.";

  private static final String PARALLEL_CAUTION =
      "Do not connect batteries at different states of charge directly in parallel:"
          + " uncontrolled current flows between them. Connect equal batteries of equal "
          + "charge only.";

  private static final String CIRCUIT = "series and parallel circuit";

  public static final FunctionSpec VOLTS =
      GROUP
          .function("VOLTS")
          .description("Returns the nominal voltage of equal batteries in series")
          .parameters(PackParameters.VOLTS, PackParameters.SERIES)
          .returns(Unit.VOLT, "Nominal voltage of the bank")
          .formula("V · series")
          .source(CIRCUIT)
          .caution(STRING_CAUTION)
          .example("=BANK.VOLTS(28.8;2)", 57.6)
          .implementation(
              a -> EqualPacks.volts(a.get(PackParameters.VOLTS), a.get(PackParameters.SERIES)));

  public static final FunctionSpec AMPHOURS =
      GROUP
          .function("AMPHOURS")
          .description("Returns the capacity of equal batteries in parallel")
          .parameters(PackParameters.AMP_HOURS, PackParameters.PARALLEL_PACKS)
          .returns(Unit.AMPERE_HOUR, "Capacity of the bank")
          .formula("Ah · parallel")
          .source(CIRCUIT)
          .caution(PARALLEL_CAUTION)
          .example("=BANK.AMPHOURS(10.2;3)", 30.6)
          .implementation(
              a ->
                  EqualPacks.ampHours(
                      a.get(PackParameters.AMP_HOURS), a.get(PackParameters.PARALLEL_PACKS)));

  public static final FunctionSpec WATTHOURS =
      GROUP
          .function("WATTHOURS")
          .description("Returns the watt-hours of a bank of equal batteries")
          .parameters(
              PackParameters.VOLTS,
              PackParameters.AMP_HOURS,
              PackParameters.SERIES,
              PackParameters.PARALLEL_PACKS)
          .returns(Unit.WATT_HOUR, "Watt-hours of the bank")
          .formula("V · Ah · series · parallel")
          .source("energy = voltage · capacity")
          .example("=BANK.WATTHOURS(28.8;10.2;2;3)", 1762.56)
          .implementation(
              a ->
                  EqualPacks.wattHours(
                      a.get(PackParameters.VOLTS),
                      a.get(PackParameters.AMP_HOURS),
                      a.get(PackParameters.SERIES),
                      a.get(PackParameters.PARALLEL_PACKS)));

  public static final FunctionSpec MAXAMPS =
      GROUP
          .function("MAXAMPS")
          .description("Returns the max. current of equal batteries in parallel")
          .parameters(PackParameters.MAX_AMPS, PackParameters.PARALLEL_PACKS)
          .returns(Unit.AMPERE, "Max. current of the bank")
          .formula("A · parallel")
          .source(CIRCUIT)
          .caution(
              "Use this only for equal batteries of equal charge in direct parallel. Behind"
                  + " a hot-swap plate one battery may carry it all: enter parallel = 1.")
          .example("=BANK.MAXAMPS(30;2)", 60.0)
          .implementation(
              a ->
                  EqualPacks.maxAmps(
                      a.get(PackParameters.MAX_AMPS), a.get(PackParameters.PARALLEL_PACKS)));

  public static final FunctionSpec RESISTANCE =
      GROUP
          .function("RESISTANCE")
          .description("Returns the resistance of a bank of equal batteries")
          .parameters(
              PackParameters.MILLIOHMS, PackParameters.SERIES, PackParameters.PARALLEL_PACKS)
          .returns(Unit.MILLIOHM, "Resistance of the bank")
          .formula("mΩ · series / parallel")
          .source(CIRCUIT)
          .caution(PARALLEL_CAUTION)
          .example("=BANK.RESISTANCE(45;2;3)", 30.0)
          .implementation(
              a ->
                  EqualPacks.milliohms(
                      a.get(PackParameters.MILLIOHMS),
                      a.get(PackParameters.SERIES),
                      a.get(PackParameters.PARALLEL_PACKS)));

  public static final FunctionSpec FULLVOLTS =
      GROUP
          .function("FULLVOLTS")
          .description("Returns the full-charge voltage of equal batteries in series")
          .parameters(
              PackParameters.CELLS,
              PackParameters.SERIES,
              PackParameters.CHEMISTRY.orElse(Chemistry.LI_ION))
          .returns(Unit.VOLT, "Full-charge voltage")
          .formula("cells · series · 4.20 V (Li-ion), 3.65 V (LFP), 2.45 V (lead), 1.5 V (NiMH)")
          .source("Chen et al. 2020 (4.2 V class); battery handbooks (Linden and Reddy)")
          .caution(STRING_CAUTION)
          .example("=BANK.FULLVOLTS(8;2)", 67.2)
          .example("=BANK.FULLVOLTS(4;1;\"LFP\")", 14.6)
          .implementation(
              a ->
                  EqualPacks.fullVolts(
                      a.get(PackParameters.CELLS),
                      a.get(PackParameters.SERIES),
                      a.get(PackParameters.CHEMISTRY)));

  public static final FunctionSpec SHORTAMPS =
      GROUP
          .function("SHORTAMPS")
          .description("Returns the prospective short-circuit current of a battery or bank")
          .parameters(
              PackParameters.FULL_VOLTS, PackParameters.MILLIOHMS, PackParameters.CABLE_MILLIOHMS)
          .returns(Unit.AMPERE, "Prospective short-circuit current")
          .formula("I = V / (R + R cable)")
          .source("Ohm's law")
          .caution(
              "Do not use an AC breaker for DC. Fit a fuse at the battery, rated to break "
                  + "this current at the full DC voltage and no larger than the rating of the "
                  + "cable. The first instant may be higher: a sustained resistance is larger "
                  + "than a momentary one.")
          .example("=BANK.SHORTAMPS(33.6;30)", 1120.0)
          .implementation(
              a ->
                  EqualPacks.shortAmps(
                      a.get(PackParameters.FULL_VOLTS),
                      a.get(PackParameters.MILLIOHMS),
                      a.get(PackParameters.CABLE_MILLIOHMS)));

  public static final FunctionSpec SHARE =
      GROUP
          .function("SHARE")
          .description("Returns the present current of each battery of a hard-parallel bank")
          .parameters(PackParameters.PACKS_AT_REST, Parameters.WATTS_OR_NONE)
          .returnsTable("Current of each battery, negative if it is being charged", "current (A)")
          .formula("Σ (E − V)/R = P/V; current of each battery: (E − V)/R")
          .source("Kirchhoff's laws")
          .caution(
              "Do not connect batteries at different states of charge directly in parallel:"
                  + " uncontrolled current flows between them, and charges a cold lithium battery"
                  + " that must not be charged.")
          .errorCodes(BankErrorCode.CANNOT_CARRY, BankErrorCode.TOO_MANY_PACKS)
          .example("=BANK.SHARE({33.6;45|30.8965;45|28.9936;45};92)", 55.13)
          .implementation(BankFunctions::share);

  private static final String RUN_SOURCE =
      "node and circuit laws on the curves of PACK.DISCHARGE; several unlike"
          + " batteries at once: Dormand and Prince, J. Comput. Appl. Math. 6 (1980) 19";
  private static final String RUN_CAUTION =
      "Do not connect in parallel if a battery is charged by its neighbours at over"
          + " 0.5 C, or at all below 0 °C: BANK.EVENTS reports it in its first row. "
          + "Behind a hot-swap plate one battery may carry it all. Self-heating in the "
          + "cold is not counted.";

  public static final FunctionSpec DISCHARGE =
      GROUP
          .function("DISCHARGE")
          .description(
              "Returns runtime of several batteries to the device cut-off voltage (constant"
                  + " power)")
          .parameters(
              PackParameters.PACKS_OF_BANK,
              Parameters.WATTS,
              PackParameters.CUTOFF_VOLTS,
              PackParameters.JOINED,
              Parameters.BATTERY_TEMP,
              PackParameters.CABLE_MILLIOHMS)
          .returns(Unit.HOUR, "Runtime to the cut-off")
          .mapsAtMost(100)
          .formula(
              "hot-swap: the battery with the highest voltage supplies the load; parallel:"
                  + " dq/dt = −(E(q) − V)/R")
          .source(RUN_SOURCE)
          .caution(RUN_CAUTION)
          .errorCodes(
              BankErrorCode.DOES_NOT_START,
              BankErrorCode.PACKS_DIFFER,
              BankErrorCode.TOO_MANY_PACKS,
              BankErrorCode.NOT_FOLLOWED,
              PackErrorCode.NO_CURVE,
              PackErrorCode.NO_COLD_DATA,
              PackErrorCode.TOO_HOT)
          .example(
              "=BANK.DISCHARGE({\"Li-ion\";8;10.2;45;1|\"Li-ion\";8;10.2;45;0.62};92;20;\"hot-swap\";25)",
              5.0368)
          .steps(
              a ->
                  events(a).stream()
                      .map(
                          e ->
                              new CalculationStep(
                                  "t",
                                  (e.pack() == 0 ? "" : "battery " + e.pack() + " ") + e.what(),
                                  e.hours(),
                                  Unit.HOUR,
                                  ""))
                      .toList())
          .implementation(
              a -> {
                List<BankEvent> events = events(a);
                return events.get(events.size() - 1).hours();
              });

  public static final FunctionSpec EVENTS =
      GROUP
          .function("EVENTS")
          .description("Returns the events of a bank until the device switches off")
          .parameters(
              PackParameters.PACKS_OF_BANK,
              Parameters.WATTS,
              PackParameters.CUTOFF_VOLTS,
              PackParameters.JOINED,
              Parameters.BATTERY_TEMP,
              PackParameters.CABLE_MILLIOHMS)
          .returnsTable(
              "Events in order; battery 0 is the device",
              "time (h)",
              "battery",
              "current of the battery (A)",
              "what")
          .formula("as BANK.DISCHARGE")
          .source(RUN_SOURCE)
          .caution(RUN_CAUTION)
          .errorCodes(
              BankErrorCode.DOES_NOT_START,
              BankErrorCode.PACKS_DIFFER,
              BankErrorCode.TOO_MANY_PACKS,
              BankErrorCode.NOT_FOLLOWED,
              PackErrorCode.NO_CURVE,
              PackErrorCode.NO_COLD_DATA,
              PackErrorCode.TOO_HOT)
          .example(
              "=BANK.EVENTS({\"Li-ion\";8;10.2;45;1|\"Li-ion\";8;10.2;45;0.62};92;20;\"hot-swap\";25)",
              0.0)
          .implementation(
              a ->
                  events(a).stream()
                      .map(e -> new Object[] {e.hours(), (double) e.pack(), e.amps(), e.what()})
                      .toArray(Object[][]::new));

  public static final FunctionSpec CURVE =
      GROUP
          .function("CURVE")
          .description(
              "Returns voltage, current and state of charge of each battery until the device"
                  + " switches off")
          .parameters(
              PackParameters.PACKS_OF_BANK,
              Parameters.WATTS,
              PackParameters.CUTOFF_VOLTS,
              PackParameters.JOINED,
              Parameters.BATTERY_TEMP,
              PackParameters.CABLE_MILLIOHMS,
              PackParameters.STEPS)
          .returnsTable(
              "Discharge in equal steps of time; one more column for each further battery",
              "time (h)",
              "at the device (V)",
              "current (A)",
              "charge of the first battery (share)")
          .formula("as BANK.DISCHARGE")
          .source(RUN_SOURCE)
          .caution(RUN_CAUTION)
          .errorCodes(
              PackErrorCode.TOO_MANY_STEPS,
              BankErrorCode.DOES_NOT_START,
              BankErrorCode.PACKS_DIFFER,
              BankErrorCode.TOO_MANY_PACKS,
              BankErrorCode.NOT_FOLLOWED,
              PackErrorCode.NO_CURVE,
              PackErrorCode.NO_COLD_DATA,
              PackErrorCode.TOO_HOT)
          .example(
              "=BANK.CURVE({\"Li-ion\";8;10.2;45;1|\"Li-ion\";8;10.2;45;0.62};92;20;\"hot-swap\";25)",
              0.0)
          .implementation(BankFunctions::curve);

  private static Object[][] share(Arguments a) {
    List<RangeTable.Row> rows = a.get(PackParameters.PACKS_AT_REST).filledRows();
    if (rows.size() > BankDischarge.MOST_PACKS) {
      throw new EvaluationException(
          BankErrorCode.TOO_MANY_PACKS, rows.size(), BankDischarge.MOST_PACKS);
    }
    double[] volts = new double[rows.size()];
    double[] ohms = new double[rows.size()];
    for (int i = 0; i < volts.length; i++) {
      RangeTable.Row row = rows.get(i);
      volts[i] = Checks.above(row.nameOf(0), row.number(0), 0);
      ohms[i] = Checks.above(row.nameOf(1), row.number(1), 0) / 1000;
    }
    double[] amps = CurrentSharing.amps(volts, ohms, a.get(Parameters.WATTS_OR_NONE));
    Object[][] result = new Object[rows.get(rows.size() - 1).number()][1];
    for (Object[] cell : result) {
      cell[0] = "";
    }
    for (int i = 0; i < amps.length; i++) {
      result[rows.get(i).number() - 1][0] = amps[i];
    }
    return result;
  }

  /** Packs that can be followed in a second; no pack for a set lies outside. */
  private static final double LEAST_MILLIOHMS = 0.1;

  private static final double LEAST_AMP_HOURS = 0.1;
  private static final double MOST_AMP_HOURS = 100_000;

  private static double between(RangeTable.Row row, int column, double least, double most) {
    String name = row.nameOf(column);
    return Checks.atMost(name, Checks.atLeast(name, row.number(column), least), most);
  }

  private static final TextEnum.Lookup<Chemistry> CHEMISTRIES =
      new TextEnum.Lookup<>(Chemistry.class);

  private static List<BankEvent> events(Arguments a) {
    return BankDischarge.events(
        members(a), load(a), a.get(PackParameters.JOINED), a.get(Parameters.BATTERY_TEMP));
  }

  private static Object[][] curve(Arguments a) {
    int steps = PackFunctions.steps(a);
    return BankDischarge.moments(
            members(a),
            load(a),
            a.get(PackParameters.JOINED),
            a.get(Parameters.BATTERY_TEMP),
            steps)
        .stream()
        .map(BankFunctions::row)
        .toArray(Object[][]::new);
  }

  private static Object[] row(BankState moment) {
    Object[] row = new Object[3 + moment.charges().length];
    row[0] = moment.hours();
    row[1] = moment.deviceVolts();
    row[2] = moment.amps();
    for (int i = 0; i < moment.charges().length; i++) {
      row[3 + i] = moment.charges()[i];
    }
    return row;
  }

  private static List<BankPack> members(Arguments a) {
    return a.get(PackParameters.PACKS_OF_BANK).filledRows().stream()
        .map(BankFunctions::member)
        .toList();
  }

  private static DeviceLoad load(Arguments a) {
    return new DeviceLoad(
        a.get(Parameters.WATTS),
        a.get(PackParameters.CUTOFF_VOLTS),
        a.get(PackParameters.CABLE_MILLIOHMS) / 1000);
  }

  private static BankPack member(RangeTable.Row row) {
    return new BankPack(
        row.number(),
        CHEMISTRIES.read(row.nameOf(0), row.text(0)),
        Checks.atLeast(row.nameOf(1), Checks.whole(row.nameOf(1), row.number(1)), 1),
        between(row, 2, LEAST_AMP_HOURS, MOST_AMP_HOURS),
        Checks.atLeast(row.nameOf(3), row.number(3), LEAST_MILLIOHMS),
        Checks.share(row.nameOf(4), row.number(4)));
  }
}
