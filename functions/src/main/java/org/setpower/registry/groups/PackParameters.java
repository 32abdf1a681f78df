package org.setpower.registry.groups;

import static org.setpower.registry.Parameter.Shape.RANGE;
import static org.setpower.registry.Parameter.Shape.SINGLE;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import org.setpower.bank.ParallelConnection;
import org.setpower.base.BaseErrorCode;
import org.setpower.base.Checks;
import org.setpower.base.EvaluationException;
import org.setpower.base.Unit;
import org.setpower.pack.Chemistry;
import org.setpower.pack.PlateFeed;
import org.setpower.registry.ArgumentParsers;
import org.setpower.registry.Parameter;
import org.setpower.registry.RangeTable;

/** The parameters of batteries: PACK, BANK and CHARGE. */
final class PackParameters {
  private PackParameters() {}

  static final Parameter<Double> VOLTS = Parameters.positive("volts", "Nominal voltage", Unit.VOLT);

  static final Parameter<Double> AMP_HOURS =
      Parameters.positive("amp_hours", "Capacity of one battery", Unit.AMPERE_HOUR);

  static final Parameter<Double> CELLS =
      Parameters.count("cells", "Number of cells in series, as seen at the output used");

  static final Parameter<Double> MILLIOHMS =
      Parameters.positive(
          "milliohms", "Resistance of one battery today, sustained load", Unit.MILLIOHM);

  /** Empty where only the label of the battery is known. */
  static final Parameter<OptionalDouble> MILLIOHMS_OR_LABEL =
      Parameter.of(
          "milliohms",
          "Resistance of one battery today, sustained load; \"label\" if it is not known",
          Unit.MILLIOHM,
          SINGLE,
          (name, raw) ->
              raw instanceof String s && s.trim().equalsIgnoreCase("label")
                  ? OptionalDouble.empty()
                  : OptionalDouble.of(Checks.filled(name, ArgumentParsers.asNumber(name, raw))));

  static final Parameter<Double> CABLE_MILLIOHMS =
      Parameters.notNegative(
              "cable_milliohms", "Resistance of the DC cable, out and back", Unit.MILLIOHM)
          .orElse(0.0, "0, no cable");

  static final Parameter<Double> MAX_AMPS =
      Parameters.positive("max_amps", "Max. current of one battery", Unit.AMPERE);

  static final Parameter<Double> SERIES =
      Parameters.count("series", "Number of equal batteries in series").orElse(1.0);

  static final Parameter<Double> PARALLEL_PACKS =
      Parameters.count("parallel", "Number of equal batteries in parallel").orElse(1.0);

  static final Parameter<Chemistry> CHEMISTRY =
      Parameter.of(
          "chemistry",
          "Chemistry of the cells: \"Li-ion\", \"NCA\", \"LFP\", \"NiMH\" or \"lead\"",
          Unit.NONE,
          SINGLE,
          ArgumentParsers.word(Chemistry.class));

  static final Parameter<Double> RESERVE =
      Parameters.share("reserve", "Share of the energy that is not used")
          .orElse(0.0, "0, until empty");

  static final Parameter<List<Double>> OUTPUTS =
      Parameter.of(
          "outputs",
          "Nominal voltages of the battery's outputs: \"12/24\", \"24\", a number or a" + " range",
          Unit.VOLT,
          RANGE,
          PackParameters::outputs);

  static final Parameter<Double> PLATE_VOLTS =
      Parameters.positive(
          "plate_volts", "Nominal voltage that the plate requires: 12, 24 or 48", Unit.VOLT);

  static final Parameter<Double> HOURS =
      Parameters.notNegative("hours", "Length of the job", Unit.HOUR);

  static final Parameter<Double> RUNTIME =
      Parameters.positive("runtime", "Runtime of one battery", Unit.HOUR);

  static final Parameter<Double> CUTOFF_VOLTS =
      Parameters.notNegative("cutoff_volts", "Cut-off voltage of the device", Unit.VOLT);

  static final Parameter<Double> START = Parameters.share("start", "State of charge at the start");

  static final Parameter<Double> CHARGED_TEMP =
      Parameters.temperature("charged_temp", "Temperature at which the battery was charged")
          .orElse(25.0, "25 °C, charged in a warm room");

  static final Parameter<Double> REST_TEMP =
      Parameters.temperature("battery_temp", "Temperature of the resting battery")
          .orElse(25.0, "25 °C (a colder battery then reads low)");

  static final Parameter<Double> CHARGE_LEFT =
      Parameters.share(
              "charge_left",
              "Share left at the end of what the battery can give at its temperature")
          .orElse(0.0, "0, until empty");

  static final Parameter<Double> STEPS =
      Parameters.count("steps", "Number of steps between the first row and the last").orElse(24.0);

  static final Parameter<Double> START_WATTS =
      Parameters.positive("start_watts", "Starting power", Unit.WATT);

  static final Parameter<Double> RATED_HOURS =
      Parameters.positive("rated_hours", "Discharge time of the rated capacity", Unit.HOUR);

  static final Parameter<Double> EXPONENT =
      Parameter.of(
          "exponent",
          "Peukert exponent",
          Unit.NONE,
          SINGLE,
          ArgumentParsers.number((n, v) -> Checks.atLeast(n, v, 1)));

  static final Parameter<Double> CHARGE_AMPS =
      Parameters.positive("charge_amps", "Current of the charger", Unit.AMPERE);

  static final Parameter<Double> FROM =
      Parameters.share("from", "State of charge at the start of charging").orElse(0.0);

  static final Parameter<Double> TO =
      Parameter.of(
              "to",
              "State of charge to reach; 100 % is a current of 0.05 C",
              Unit.SHARE,
              SINGLE,
              ArgumentParsers.number((n, v) -> Checks.filled(n, Checks.share(n, v))))
          .orElse(1.0);

  static final Parameter<Double> PACK_COUNT = Parameters.count("packs", "Number of batteries");

  static final Parameter<Double> HOURS_FREE =
      Parameters.positive("hours_free", "Time that the channels are free", Unit.HOUR);

  static final Parameter<Double> HOURS_EACH =
      Parameters.positive("hours_each", "Charge time per battery", Unit.HOUR);

  static final Parameter<RangeTable> PACKS_AT_REST =
      Parameter.of(
          "packs",
          "Rows: voltage of the resting battery (V), resistance (mΩ)",
          Unit.NONE,
          RANGE,
          (name, raw) -> RangeTable.of(name, raw, "open-circuit voltage", "milliohms"));

  static final Parameter<RangeTable> PACKS_OF_BANK =
      Parameter.of(
          "packs",
          "Rows: chemistry, cells, capacity today (Ah), resistance (mΩ), state of charge",
          Unit.NONE,
          RANGE,
          (name, raw) ->
              RangeTable.of(name, raw, "chemistry", "cells", "amp-hours", "milliohms", "charge"));

  static final Parameter<ParallelConnection> JOINED =
      Parameter.of(
          "joined",
          "How the batteries are joined: \"hot-swap\" (ideal diodes) or \"parallel\"" + " (hard)",
          Unit.NONE,
          SINGLE,
          ArgumentParsers.word(ParallelConnection.class));

  static final Parameter<Double> FULL_VOLTS =
      Parameters.positive("full_volts", "Full-charge voltage", Unit.VOLT);

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
      throw new EvaluationException(BaseErrorCode.NO_ROWS, name);
    }
    return all;
  }
}
