package org.setpower.registry.groups;

import java.util.List;
import org.setpower.base.CalculationStep;
import org.setpower.base.Unit;
import org.setpower.charge.ChargeErrorCode;
import org.setpower.charge.Charging;
import org.setpower.pack.PackErrorCode;
import org.setpower.registry.Arguments;
import org.setpower.registry.FunctionGroup;
import org.setpower.registry.FunctionSpec;

/** CHARGE: packs on the charger. */
public final class ChargeFunctions {
  private ChargeFunctions() {}

  static final FunctionGroup GROUP = new FunctionGroup("CHARGE", "battery packs on the charger");

  public static final FunctionSpec HOURS =
      GROUP
          .function("HOURS")
          .description("Returns the charging time of a lithium battery")
          .parameters(
              PackParameters.AMP_HOURS,
              PackParameters.CHARGE_AMPS,
              PackParameters.CHEMISTRY,
              Parameters.BATTERY_TEMP,
              PackParameters.FROM,
              PackParameters.TO,
              PackParameters.CELLS.orElse(1.0),
              PackParameters.MILLIOHMS.orElse(null, "300/Ah for each cell"))
          .returns(Unit.HOUR, "Charging time")
          .formula(
              "constant current to 4.20 (LFP 3.65) V a cell, then Δt = R/m · ln((V − E₀)/(V − E₁))"
                  + " to the target or 0.05 C, whichever is first")
          .source(
              "CC-CV on the curve of Chen et al., J. Electrochem. Soc. 167 (2020) 080534 (Li-ion),"
                  + " ARTS-Lab 2023 (LFP); 0.3/Ah Ω: sustained resistance of measured cells; no less than"
                  + " 0.25/Ah Ω counts on the charger")
          .caution(
              "Do not charge a lithium battery below 0 °C (32 °F). Do not exceed the "
                  + "charging current that its maker permits. 100 % means a current of 0.05 C."
                  + " Measured new cells from 0 to 45 °C: a whole charge within 3 %; until 95 % of"
                  + " it is in, with the resistance within 5 %, without it up to 10 % too many hours.")
          .errorCodes(
              ChargeErrorCode.TOO_COLD,
              ChargeErrorCode.TOO_FAST,
              ChargeErrorCode.NOT_CC_CV,
              ChargeErrorCode.BACKWARDS,
              PackErrorCode.NO_COLD_DATA,
              PackErrorCode.TOO_HOT)
          .example("=CHARGE.HOURS(10.2;5;\"Li-ion\";25)", 2.3596)
          .steps(
              a ->
                  List.of(
                      new CalculationStep(
                          "",
                          "state of charge at which the current starts to fall",
                          charging(a).turningCharge(),
                          Unit.SHARE,
                          "E + I·R = full voltage of the cell")))
          .implementation(
              a -> charging(a).hours(a.get(PackParameters.FROM), a.get(PackParameters.TO)));

  private static Charging charging(Arguments a) {
    return Charging.of(
        a.get(PackParameters.CHEMISTRY),
        a.get(PackParameters.CELLS),
        a.get(PackParameters.AMP_HOURS),
        a.get(PackParameters.MILLIOHMS),
        a.get(PackParameters.CHARGE_AMPS),
        a.get(Parameters.BATTERY_TEMP));
  }

  public static final FunctionSpec MAINS =
      GROUP
          .function("MAINS")
          .description("Returns the mains energy to charge a battery")
          .parameters(
              Parameters.WATT_HOURS,
              PackParameters.FROM,
              PackParameters.TO,
              Parameters.EFFICIENCY.orElse(0.85))
          .returns(Unit.WATT_HOUR, "Energy from the mains")
          .formula("Wh · (to − from) / efficiency")
          .source("energy balance; 85 % for charger and cells together: common practice")
          .errorCodes(ChargeErrorCode.BACKWARDS)
          .example("=CHARGE.MAINS(294)", 345.882)
          .implementation(
              a ->
                  Charging.wallWattHours(
                      a.get(Parameters.WATT_HOURS),
                      a.get(PackParameters.FROM),
                      a.get(PackParameters.TO),
                      a.get(Parameters.EFFICIENCY)));

  public static final FunctionSpec CHANNELS =
      GROUP
          .function("CHANNELS")
          .description("Returns the charger channels required for a number of batteries")
          .parameters(
              PackParameters.PACK_COUNT, PackParameters.HOURS_FREE, PackParameters.HOURS_EACH)
          .returns(Unit.PIECES, "Channels")
          .formula("packs / floor(hours_free / hours_each), rounded up")
          .source("division; a battery is not split between channels")
          .errorCodes(ChargeErrorCode.NO_TURN)
          .example("=CHARGE.CHANNELS(10;8;2.5)", 4.0)
          .implementation(
              a ->
                  Charging.channels(
                      a.get(PackParameters.PACK_COUNT),
                      a.get(PackParameters.HOURS_FREE),
                      a.get(PackParameters.HOURS_EACH)));
}
