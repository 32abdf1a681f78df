package org.setpower.registry.groups;

import java.util.List;
import java.util.OptionalDouble;
import org.setpower.base.CalculationStep;
import org.setpower.base.EvaluationException;
import org.setpower.base.Numbers;
import org.setpower.base.Unit;
import org.setpower.pack.Chemistry;
import org.setpower.pack.DeviceLoad;
import org.setpower.pack.Discharge;
import org.setpower.pack.EnergyRuntime;
import org.setpower.pack.OpenCircuit;
import org.setpower.pack.Pack;
import org.setpower.pack.PackErrorCode;
import org.setpower.pack.Peukert;
import org.setpower.pack.PlateFeed;
import org.setpower.pack.TemperatureDerating;
import org.setpower.registry.Arguments;
import org.setpower.registry.FunctionGroup;
import org.setpower.registry.FunctionSpec;
import org.setpower.registry.Parameter;

/** PACK: one battery pack. */
public final class PackFunctions {
  private PackFunctions() {}

  static final FunctionGroup GROUP = new FunctionGroup("PACK", "one battery pack");

  private static final String COLD_SOURCE =
      "measured cells: a 5 Ah 21700 cell of the type in Chen et al. 2020 (0 °C),"
          + " cold-chamber cells of 2024 (−10…−30 °C, lower quartile of four), ARTS-Lab"
          + " 2023 (LFP at 20 °C; colder it is assumed no better than Li-ion); lead: IEEE 485"
          + " Table 1, US Army TM 10-6140-200-14";

  public static final FunctionSpec WATTHOURS =
      GROUP
          .function("WATTHOURS")
          .description("Returns the watt-hours of a battery from nominal voltage and capacity")
          .parameters(PackParameters.VOLTS, PackParameters.AMP_HOURS)
          .returns(Unit.WATT_HOUR, "Watt-hours of the battery")
          .formula("Wh = V · Ah")
          .source("energy = voltage · capacity")
          .caution("For flight rules use the watt-hours printed on the battery, not this figure.")
          .example("=PACK.WATTHOURS(14.4;6.8)", 97.92)
          .implementation(
              a ->
                  EnergyRuntime.wattHours(
                      a.get(PackParameters.VOLTS), a.get(PackParameters.AMP_HOURS)));

  public static final FunctionSpec FEED =
      GROUP
          .function("FEED")
          .description("Returns the nominal voltage that a battery plate gets from a battery")
          .parameters(PackParameters.OUTPUTS, PackParameters.PLATE_VOLTS)
          .returns(Unit.VOLT, "Nominal voltage at the plate")
          .formula("the plate's nominal voltage if the battery has that output; otherwise no power")
          .source("nominal voltages of battery plates on set: 12, 24, 48 V")
          .caution(
              "Check the device's maximum input against BANK.FULLVOLTS: a full battery of 8"
                  + " cells has 33.6 V on a 24 V plate.")
          .errorCodes(
              PackErrorCode.NO_POWER, PackErrorCode.NOT_A_CLASS, PackErrorCode.NOT_AN_OUTPUT)
          .example("=PACK.FEED(\"12/24\";12)", 12.0)
          .implementation(
              a ->
                  PlateFeed.volts(
                      a.get(PackParameters.OUTPUTS), a.get(PackParameters.PLATE_VOLTS)));

  public static final FunctionSpec COLD =
      GROUP
          .function("COLD")
          .description("Returns usable energy of a cold battery as a percentage")
          .parameters(PackParameters.CHEMISTRY, Parameters.BATTERY_TEMP)
          .returns(Unit.SHARE, "Usable share of the energy")
          .formula("linear between the measured temperatures; never above 1")
          .source(COLD_SOURCE)
          .caution(
              "Single cells at about 1C, charged warm or cold; a battery may give more or"
                  + " less. Self-heating is not counted.")
          .errorCodes(PackErrorCode.NO_COLD_DATA, PackErrorCode.TOO_HOT)
          .example("=PACK.COLD(\"Li-ion\";-10)", 0.7378)
          .steps(
              a ->
                  TemperatureDerating.measuredAround(
                          a.get(PackParameters.CHEMISTRY), a.get(Parameters.BATTERY_TEMP))
                      .stream()
                      .map(
                          m ->
                              new CalculationStep(
                                  "",
                                  "at " + Numbers.format(m.temp()) + " °C",
                                  m.ratio(),
                                  Unit.SHARE,
                                  m.basis() + ": " + m.source()))
                      .toList())
          .implementation(
              a ->
                  TemperatureDerating.energyLeft(
                      a.get(PackParameters.CHEMISTRY), a.get(Parameters.BATTERY_TEMP)));

  public static final FunctionSpec RUNTIME =
      GROUP
          .function("RUNTIME")
          .description("Returns battery runtime from its watt-hours")
          .parameters(
              Parameters.WATT_HOURS,
              Parameters.WATTS,
              Parameters.EFFICIENCY,
              Parameters.HEALTH,
              Parameters.BATTERY_TEMP,
              PackParameters.CHEMISTRY,
              PackParameters.RESERVE)
          .returns(Unit.HOUR, "Runtime until empty, or until the reserve")
          .formula("h = Wh · health · (1 − reserve) · cold · efficiency / W")
          .source("energy balance; cold: PACK.COLD")
          .caution(
              "By energy only: a device with a cut-off voltage may stop sooner. Where both"
                  + " are known, use the shorter of this and PACK.DISCHARGE.")
          .errorCodes(PackErrorCode.NO_COLD_DATA, PackErrorCode.TOO_HOT)
          .example("=PACK.RUNTIME(294;92;1;1;25;\"Li-ion\")", 3.1957)
          .example("=PACK.RUNTIME(98;38;92%;90%;0;\"Li-ion\")", 1.8561)
          .steps(
              a ->
                  List.of(
                      new CalculationStep(
                          "cold",
                          "usable share of the energy in the cold",
                          TemperatureDerating.energyLeft(
                              a.get(PackParameters.CHEMISTRY), a.get(Parameters.BATTERY_TEMP)),
                          Unit.SHARE,
                          COLD_SOURCE),
                      new CalculationStep(
                          "E",
                          "watt-hours that reach the load",
                          usable(a),
                          Unit.WATT_HOUR,
                          "Wh · health · (1 − reserve) · cold · efficiency")))
          .implementation(a -> EnergyRuntime.hours(usable(a), a.get(Parameters.WATTS)));

  private static double usable(Arguments a) {
    return EnergyRuntime.usable(
        a.get(Parameters.WATT_HOURS),
        a.get(Parameters.EFFICIENCY),
        a.get(Parameters.HEALTH),
        a.get(Parameters.BATTERY_TEMP),
        a.get(PackParameters.RESERVE),
        a.get(PackParameters.CHEMISTRY));
  }

  public static final FunctionSpec COUNT =
      GROUP
          .function("COUNT")
          .description("Returns the number of batteries for a job without recharging")
          .parameters(
              PackParameters.HOURS, PackParameters.RUNTIME, Parameters.HEADROOM.orElse(0.2, "20 %"))
          .returns(Unit.PIECES, "Batteries")
          .formula("n = hours · (1 + headroom) / runtime, rounded up")
          .source("division")
          .example("=PACK.COUNT(10;3.2;10%)", 4.0)
          .implementation(
              a ->
                  EnergyRuntime.packs(
                      a.get(PackParameters.HOURS),
                      a.get(PackParameters.RUNTIME),
                      a.get(Parameters.HEADROOM)));

  private static final String CURVE_SOURCE =
      "P = (E − I·R)·I, integrated; curves: Chen et al., J. Electrochem. Soc. 167"
          + " (2020) 080534 (Li-ion), ARTS-Lab 2023 (LFP), Kollmeyer 2018 (NCA), handbook rest"
          + " volts (lead); cold: Kollmeyer 2018 and the cells of PACK.COLD; LFP in the cold is"
          + " computed from ARTS-Lab 2023 and the NCA cell";
  private static final String CURVE_CAUTION =
      "Enter milliohms of the battery today under a sustained load: 1.5 times a 10 s"
          + " pulse figure; a 1 kHz meter reads far too low. If it is not known, enter"
          + " \"label\": the usual resistance, and of the rated capacity no more than the weakest"
          + " cell measured gave, warm or cold. Self-heating of a cold Li-ion"
          + " battery of known resistance is counted as in wind, in surroundings as cold as the"
          + " battery; if they are colder, enter their temperature. Against 38 measured"
          + " discharges of new cells from −20 to 50 °C: with milliohms within 5 % from 15 °C,"
          + " within 10 % in the cold; with \"label\" at most 8 % too many hours, half of them"
          + " within 6 %, and up to 47 % too few in the cold, where most cells give more than the"
          + " weakest. Cells that the figures were not made from: at most 8 % too many, half"
          + " within 7 %. Seven runs of used cells whose charge was measured: none too many. LFP below 20 °C is computed; one cell at a thirtieth of its capacity"
          + " agrees within 2 %; at a higher load only its voltage was measured. charge_left is a share of what the battery can"
          + " give at its temperature; what it cannot give in the cold remains as well: at"
          + " −20 °C, where that is 28 %, 20 % end the job at a state of charge of 42.4 %"
          + " (1 − 0.8 · 0.72). A battery charged in the cold is not full: give charged_temp;"
          + " below 0 °C take start from PACK.CHARGE. Entered as full and warm, one such cell got"
          + " 64 % too many hours. A used battery"
          + " needs its health. For lead well above its rated current use the shorter of this and"
          + " PACK.PEUKERT. Where the watt-hours are known too, use the shorter of this and"
          + " PACK.RUNTIME.";
  private static final PackErrorCode[] CURVE_REASONS = {
    PackErrorCode.DOES_NOT_START,
    PackErrorCode.NOTHING_TO_USE,
    PackErrorCode.NO_CURVE,
    PackErrorCode.NO_COLD_DATA,
    PackErrorCode.CHARGED_COLD,
    PackErrorCode.TOO_HOT
  };

  public static final FunctionSpec DISCHARGE =
      GROUP
          .function("DISCHARGE")
          .description("Returns battery runtime to the device cut-off voltage (constant power)")
          .parameters(
              PackParameters.CELLS,
              PackParameters.AMP_HOURS,
              PackParameters.MILLIOHMS_OR_LABEL,
              Parameters.WATTS,
              PackParameters.CUTOFF_VOLTS,
              PackParameters.CHEMISTRY,
              PackParameters.START,
              Parameters.HEALTH,
              Parameters.BATTERY_TEMP,
              PackParameters.CABLE_MILLIOHMS,
              PackParameters.CHARGE_LEFT,
              PackParameters.CHARGED_TEMP)
          .returns(Unit.HOUR, "Runtime to the cut-off")
          .formula(
              "∫dQ/I with I = (E − √(E² − 4RP))/2R on the open-circuit curve, until the"
                  + " device's cut-off, the battery's own cut-off, the charge to be left, or empty")
          .source(CURVE_SOURCE)
          .caution(CURVE_CAUTION)
          .errorCodes(CURVE_REASONS)
          .example("=PACK.DISCHARGE(8;10.2;45;92;20;\"Li-ion\";1;1;25)", 3.1873)
          .example("=PACK.DISCHARGE(8;10.2;\"label\";92;20;\"Li-ion\";1;1;-10)", 2.0565)
          .steps(PackFunctions::dischargeSteps)
          .implementation(a -> discharge(a).hours());

  public static final FunctionSpec CURVE =
      GROUP
          .function("CURVE")
          .description("Returns state of charge, voltage and current until the device switches off")
          .parameters(
              PackParameters.CELLS,
              PackParameters.AMP_HOURS,
              PackParameters.MILLIOHMS_OR_LABEL,
              Parameters.WATTS,
              PackParameters.CUTOFF_VOLTS,
              PackParameters.CHEMISTRY,
              PackParameters.START,
              Parameters.HEALTH,
              Parameters.BATTERY_TEMP,
              PackParameters.CABLE_MILLIOHMS,
              PackParameters.STEPS,
              PackParameters.CHARGE_LEFT,
              PackParameters.CHARGED_TEMP)
          .returnsTable(
              "Discharge in equal steps of charge",
              "time (h)",
              "charge (share)",
              "at the device (V)",
              "current (A)",
              "what")
          .formula("as PACK.DISCHARGE")
          .source(CURVE_SOURCE)
          .caution(CURVE_CAUTION)
          .errorCodes(
              PackErrorCode.TOO_MANY_STEPS,
              PackErrorCode.DOES_NOT_START,
              PackErrorCode.NOTHING_TO_USE,
              PackErrorCode.NO_CURVE,
              PackErrorCode.NO_COLD_DATA,
              PackErrorCode.CHARGED_COLD,
              PackErrorCode.TOO_HOT)
          .example("=PACK.CURVE(8;10.2;45;92;20;\"Li-ion\";1;1;25;;12)", 0.0)
          .steps(PackFunctions::dischargeSteps)
          .implementation(PackFunctions::curve);

  private static final Parameter<Double> REST_VOLTS =
      Parameters.notNegative(
          "rest_volts", "Voltage of the battery without load, rested for an hour", Unit.VOLT);

  public static final FunctionSpec CHARGE =
      GROUP
          .function("CHARGE")
          .description("Returns the state of charge of a resting battery from its voltage")
          .parameters(
              PackParameters.CELLS, REST_VOLTS, PackParameters.CHEMISTRY, PackParameters.REST_TEMP)
          .returns(Unit.SHARE, "State of charge")
          .formula("read on the open-circuit curve; lead: the lower of flooded and gel")
          .source(
              "Chen et al., J. Electrochem. Soc. 167 (2020) 080534 (Li-ion); Kollmeyer 2018 (NCA);"
                  + " handbook rest volts of flooded and gel batteries (lead)")
          .caution(
              "Rest the battery for an hour, off the charger and without load. Compared with"
                  + " measured cells: NCA within 10 points from −20 °C, if battery_temp is given, and"
                  + " up to 15 too low without it; an NCA cell entered as Li-ion up to 11 too low at"
                  + " 25 °C and 17 at −20 °C, and below 10 % up to 6 too high. Gel lead within 10"
                  + " points with battery_temp; flooded lead reads up to 20 too low, and all lead"
                  + " lower in the cold without it. A gauge in the battery is more accurate.")
          .errorCodes(
              PackErrorCode.NO_CURVE,
              PackErrorCode.FLAT,
              PackErrorCode.BELOW_EMPTY,
              PackErrorCode.OVER_FULL,
              PackErrorCode.NO_COLD_DATA,
              PackErrorCode.TOO_HOT)
          .example("=PACK.CHARGE(8;31.5;\"Li-ion\")", 0.6903)
          .example("=PACK.CHARGE(8;31;\"NCA\";-20)", 0.7744)
          .implementation(
              a ->
                  OpenCircuit.chargeAtRest(
                      a.get(PackParameters.CHEMISTRY),
                      a.get(PackParameters.CELLS),
                      a.get(REST_VOLTS),
                      a.get(PackParameters.REST_TEMP)));

  public static final FunctionSpec STARTS =
      GROUP
          .function("STARTS")
          .description("Returns the minimum state of charge at which a device starts")
          .parameters(
              PackParameters.CELLS,
              PackParameters.MILLIOHMS,
              PackParameters.START_WATTS,
              PackParameters.CUTOFF_VOLTS,
              PackParameters.CHEMISTRY,
              Parameters.BATTERY_TEMP,
              PackParameters.CABLE_MILLIOHMS)
          .returns(Unit.SHARE, "Minimum state of charge")
          .formula(
              "E = V + R·P/V at the device's or the battery's own cut-off, read on the"
                  + " open-circuit curve")
          .source(CURVE_SOURCE)
          .caution(
              "Enter the starting power for as long as it lasts: an inrush of a few"
                  + " milliseconds is not included.")
          .errorCodes(
              PackErrorCode.DOES_NOT_START,
              PackErrorCode.NO_CURVE,
              PackErrorCode.NO_COLD_DATA,
              PackErrorCode.TOO_HOT)
          .example("=PACK.STARTS(8;45;400;24;\"Li-ion\";25)", 0.0481)
          .implementation(
              a ->
                  Discharge.startsAbove(
                      Pack.of(
                          a.get(PackParameters.CHEMISTRY),
                          a.get(PackParameters.CELLS),
                          1,
                          a.get(PackParameters.MILLIOHMS),
                          1,
                          a.get(Parameters.BATTERY_TEMP)),
                      load(a, PackParameters.START_WATTS)));

  public static final FunctionSpec PEUKERT =
      GROUP
          .function("PEUKERT")
          .description("Returns runtime of a lead battery at constant current")
          .parameters(
              PackParameters.AMP_HOURS,
              PackParameters.RATED_HOURS,
              PackParameters.EXPONENT,
              Parameters.AMPS)
          .returns(Unit.HOUR, "Runtime")
          .formula("t = H · (C/(I·H))^k; below the rated current t = C/I")
          .source("Peukert's law in the hour-rate form; limits: Doerffel and Abu Sharkh 2006")
          .caution("Lead only, near room temperature, constant current.")
          .example("=PACK.PEUKERT(100;20;1.2;10)", 8.706)
          .implementation(
              a ->
                  Peukert.hours(
                      a.get(PackParameters.AMP_HOURS),
                      a.get(PackParameters.RATED_HOURS),
                      a.get(PackParameters.EXPONENT),
                      a.get(Parameters.AMPS)));

  /** The max. number of rows, more than a chart can show. */
  private static final int MOST_STEPS = 2000;

  private static Pack pack(Arguments a) {
    Chemistry chemistry = a.get(PackParameters.CHEMISTRY);
    double cells = a.get(PackParameters.CELLS);
    double ampHours = a.get(PackParameters.AMP_HOURS);
    double health = a.get(Parameters.HEALTH);
    double temp = a.get(Parameters.BATTERY_TEMP);
    OptionalDouble milliohms = a.get(PackParameters.MILLIOHMS_OR_LABEL);
    return milliohms.isPresent()
        ? Pack.of(chemistry, cells, ampHours, milliohms.getAsDouble(), health, temp)
        : Pack.byLabel(chemistry, cells, ampHours, health, temp);
  }

  private static DeviceLoad load(Arguments a, Parameter<Double> watts) {
    return new DeviceLoad(
        a.get(watts),
        a.get(PackParameters.CUTOFF_VOLTS),
        a.get(PackParameters.CABLE_MILLIOHMS) / 1000);
  }

  /** No more than it took at the temperature at which it was charged. */
  private static double start(Arguments a) {
    return Math.min(
        a.get(PackParameters.START),
        TemperatureDerating.chargeTaken(
            a.get(PackParameters.CHEMISTRY), a.get(PackParameters.CHARGED_TEMP)));
  }

  private static Discharge discharge(Arguments a) {
    Pack pack = pack(a);
    return Discharge.warming(
        pack, load(a, Parameters.WATTS), start(a), pack.held(a.get(PackParameters.CHARGE_LEFT)));
  }

  /** The steps of a curve, as many as a chart can show. */
  static int steps(Arguments a) {
    double steps = a.get(PackParameters.STEPS);
    if (steps > MOST_STEPS) {
      throw new EvaluationException(PackErrorCode.TOO_MANY_STEPS, steps, MOST_STEPS);
    }
    return (int) steps;
  }

  private static Object[][] curve(Arguments a) {
    int steps = steps(a);
    Discharge discharge = discharge(a);
    Discharge.Moment[] moments = discharge.moments(steps);
    Object[][] rows = new Object[moments.length][];
    for (int i = 0; i < rows.length; i++) {
      String what = i == 0 ? "starts" : i < rows.length - 1 ? "" : discharge.end().text();
      Discharge.Moment m = moments[i];
      rows[i] = new Object[] {m.hours(), m.charge(), m.deviceVolts(), m.amps(), what};
    }
    return rows;
  }

  private static List<CalculationStep> dischargeSteps(Arguments a) {
    Pack pack = pack(a);
    Discharge discharge = discharge(a);
    Discharge.Moment first = discharge.at(start(a));
    Discharge.Moment last = discharge.at(discharge.endCharge());
    return List.of(
        new CalculationStep(
            "",
            "usable share of the capacity in the cold, at a slow rate",
            pack.chargeLeft(),
            Unit.SHARE,
            "measured cells"),
        new CalculationStep(
            "",
            "times the resistance at 25 °C",
            TemperatureDerating.resistance(
                a.get(PackParameters.CHEMISTRY), a.get(Parameters.BATTERY_TEMP)),
            Unit.NONE,
            "measured cells"),
        new CalculationStep(
            "Q",
            "capacity of the full battery at this temperature",
            pack.ampHours(),
            Unit.AMPERE_HOUR,
            "rated · health · slow-rate cold ratio"),
        new CalculationStep(
            "R",
            "resistance of battery and cable at the start",
            pack.ohms() + a.get(PackParameters.CABLE_MILLIOHMS) / 1000,
            Unit.OHM,
            "battery · cold ratio + cable"),
        new CalculationStep(
            "E₀",
            "resting battery at the start",
            pack.restVolts(pack.usable(start(a))),
            Unit.VOLT,
            "open-circuit curve"),
        new CalculationStep(
            "I₀", "current at the start", first.amps(), Unit.AMPERE, "(E − √(E² − 4RP))/2R"),
        new CalculationStep(
            "",
            "battery at the end; above 25 °C as at 25 °C",
            discharge.endTemp(),
            Unit.CELSIUS,
            "its own loss I²R less the loss to cold surroundings"),
        new CalculationStep("", "it ends at", discharge.end().text(), Unit.NONE, ""),
        new CalculationStep(
            "E₁", "resting battery at the end", discharge.endVolts(), Unit.VOLT, "V + R·P/V"),
        new CalculationStep(
            "", "state of charge at the end", last.charge(), Unit.SHARE, "open-circuit curve"),
        new CalculationStep(
            "V₁", "voltage at the device at the end", last.deviceVolts(), Unit.VOLT, ""),
        new CalculationStep("I₁", "current at the end", last.amps(), Unit.AMPERE, ""));
  }
}
