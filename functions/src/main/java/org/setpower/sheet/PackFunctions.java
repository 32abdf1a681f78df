package org.setpower.sheet;

import java.util.List;
import org.setpower.base.Step;
import org.setpower.base.Unit;
import org.setpower.pack.Chemistry;
import org.setpower.pack.Cold;
import org.setpower.pack.PackReason;
import org.setpower.pack.PlateFeed;
import org.setpower.pack.Runtime;

/** PACK: one battery pack. */
public final class PackFunctions {
  private PackFunctions() {}

  static final Group GROUP = new Group("PACK", "one battery pack");

  private static final Parameter<Double> THROUGH = Parameters.EFFICIENCY.orElse(1.0);
  private static final Parameter<Double> WARMTH = Parameters.TEMP.orElse(25.0);
  private static final Parameter<Chemistry> MADE_OF = Parameters.CHEMISTRY.orElse(Chemistry.LI_ION);

  private static final String COLD_SOURCE =
      "measured cells: PyBOP team 2021 (0 °C), lifeplay2019 2024 (−10…−30 °C, lower quartile of"
          + " four), ARTS-Lab 2023 (LFP); lead: IEEE 485 Table 1, US Army TM 10-6140-200-14";

  public static final FunctionSpec WATTHOURS =
      GROUP
          .function("WATTHOURS")
          .says("Returns the watt-hours of a pack from its nominal voltage and rated amp-hours")
          .takes(Parameters.VOLTS, Parameters.AMP_HOURS)
          .gives(Unit.WATT_HOUR, "Watt-hours of the pack")
          .formula("Wh = V · Ah")
          .source("energy = voltage · charge")
          .caution("For flight rules the watt-hours printed on the pack go before this figure.")
          .example("=PACK.WATTHOURS(14.4;6.8)", 97.92)
          .by(a -> Runtime.wattHours(a.get(Parameters.VOLTS), a.get(Parameters.AMP_HOURS)));

  public static final FunctionSpec FEED =
      GROUP
          .function("FEED")
          .says("Returns the volts class that a battery plate gets from a pack")
          .takes(Parameters.OUTPUTS, Parameters.PLATE_VOLTS)
          .gives(Unit.VOLT, "Volts class at the plate")
          .formula("the plate's class if the pack has it; else no power")
          .source("volts classes of battery plates on set: 12, 24, 48 V")
          .caution(
              "A class is a name, not the volts of the moment: a full pack of 8 cells is 33.6 V."
                  + " Check the device's highest input against BANK.FULLVOLTS.")
          .refuses(PackReason.NO_POWER, PackReason.NOT_A_CLASS, PackReason.NOT_AN_OUTPUT)
          .example("=PACK.FEED(\"12/24\";12)", 12.0)
          .by(a -> PlateFeed.volts(a.get(Parameters.OUTPUTS), a.get(Parameters.PLATE_VOLTS)));

  public static final FunctionSpec COLD =
      GROUP
          .function("COLD")
          .says("Returns the share of its energy that a cold pack still gives at about 1C")
          .takes(Parameters.CHEMISTRY, Parameters.TEMP)
          .gives(Unit.SHARE, "Share of the energy left")
          .formula("straight between the measured temperatures; never over 1")
          .source(COLD_SOURCE)
          .caution(
              "Single cells at one rate, charged warm or cold; your pack may do better or worse."
                  + " No credit for self-heating.")
          .refuses(PackReason.NO_COLD_DATA, PackReason.TOO_HOT)
          .example("=PACK.COLD(\"Li-ion\";-10)", 0.7378)
          .by(a -> Cold.energyLeft(a.get(Parameters.CHEMISTRY), a.get(Parameters.TEMP)));

  public static final FunctionSpec RUNTIME =
      GROUP
          .function("RUNTIME")
          .says("Returns the hours that a pack lasts at a load, by its watt-hours")
          .takes(
              Parameters.WATT_HOURS,
              Parameters.WATTS,
              THROUGH,
              Parameters.HEALTH,
              WARMTH,
              Parameters.RESERVE,
              MADE_OF)
          .gives(Unit.HOUR, "Hours")
          .formula("h = Wh · health · (1 − reserve) · cold · efficiency / W")
          .source("energy balance; cold: PACK.COLD")
          .caution(
              "By energy only: a device that goes dark at a voltage may stop sooner. Where both are"
                  + " known, use the shorter of this and PACK.LASTS.")
          .refuses(PackReason.NO_COLD_DATA, PackReason.TOO_HOT)
          .example("=PACK.RUNTIME(294;92)", 3.1957)
          .example("=PACK.RUNTIME(98;38;92%;90%;0)", 1.8561)
          .shows(
              a ->
                  List.of(
                      new Step(
                          "cold",
                          "share of the energy left in the cold",
                          Cold.energyLeft(a.get(Parameters.CHEMISTRY), a.get(Parameters.TEMP)),
                          Unit.SHARE,
                          COLD_SOURCE),
                      new Step(
                          "E",
                          "watt-hours that reach the load",
                          usable(a),
                          Unit.WATT_HOUR,
                          "Wh · health · (1 − reserve) · cold · efficiency")))
          .by(a -> Runtime.hours(usable(a), a.get(Parameters.WATTS)));

  private static double usable(Arguments a) {
    return Runtime.usable(
        a.get(Parameters.WATT_HOURS),
        a.get(Parameters.EFFICIENCY),
        a.get(Parameters.HEALTH),
        a.get(Parameters.TEMP),
        a.get(Parameters.RESERVE),
        a.get(Parameters.CHEMISTRY));
  }

  public static final FunctionSpec COUNT =
      GROUP
          .function("COUNT")
          .says("Returns the number of packs for a job without recharging")
          .takes(Parameters.HOURS, Parameters.RUNTIME, Parameters.SPARE.orElse(0.0))
          .gives(Unit.PIECES, "Packs")
          .formula("n = hours · (1 + spare) / runtime, rounded up")
          .source("division")
          .example("=PACK.COUNT(10;3.2;10%)", 4.0)
          .by(
              a ->
                  Runtime.packs(
                      a.get(Parameters.HOURS), a.get(Parameters.RUNTIME), a.get(Parameters.SPARE)));
}
