package org.setpower.registry.groups;

import static org.setpower.registry.Parameter.Shape.RANGE;
import static org.setpower.registry.Parameter.Shape.SINGLE;

import java.util.ArrayList;
import java.util.List;
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

/** The words of packs: PACK, BANK and CHARGE. */
final class PackParameters {
  private PackParameters() {}

  static final Parameter<Double> VOLTS = Parameters.positive("volts", "Nominal voltage", Unit.VOLT);

  static final Parameter<Double> AMP_HOURS =
      Parameters.positive("amp_hours", "Rated amp-hours of one pack", Unit.AMPERE_HOUR);

  static final Parameter<Double> CELLS =
      Parameters.count("cells", "Number of cells in series, as seen at the output used");

  static final Parameter<Double> MILLIOHMS =
      Parameters.positive(
          "milliohms", "Resistance of one pack today, sustained load", Unit.MILLIOHM);

  static final Parameter<Double> CABLE_MILLIOHMS =
      Parameters.notNegative(
              "cable_milliohms", "Resistance of the lead, out and back", Unit.MILLIOHM)
          .orElse(0.0);

  static final Parameter<Double> MAX_AMPS =
      Parameters.positive("max_amps", "Highest current of one pack", Unit.AMPERE);

  static final Parameter<Double> SERIES =
      Parameters.count("series", "Number of equal packs in series").orElse(1.0);

  static final Parameter<Double> PARALLEL_PACKS =
      Parameters.count("parallel", "Number of equal packs in parallel").orElse(1.0);

  static final Parameter<Chemistry> CHEMISTRY =
      Parameter.of(
          "chemistry",
          "Chemistry of the cells: \"Li-ion\", \"LFP\", \"NiMH\" or \"lead\"",
          Unit.NONE,
          SINGLE,
          ArgumentParsers.word(Chemistry.class));

  static final Parameter<Double> RESERVE =
      Parameters.share("reserve", "Share of the pack that is not used").orElse(0.0);

  static final Parameter<List<Double>> OUTPUTS =
      Parameter.of(
          "outputs",
          "Volts classes the pack gives: \"12/24\", \"24\", a number or a range",
          Unit.VOLT,
          RANGE,
          PackParameters::outputs);

  static final Parameter<Double> PLATE_VOLTS =
      Parameters.positive("plate_volts", "Volts class the plate asks for: 12, 24 or 48", Unit.VOLT);

  static final Parameter<Double> HOURS =
      Parameters.notNegative("hours", "Length of the job", Unit.HOUR);

  static final Parameter<Double> RUNTIME =
      Parameters.positive("runtime", "Hours that one pack lasts", Unit.HOUR);

  static final Parameter<Double> CUTOFF_VOLTS =
      Parameters.notNegative(
          "cutoff_volts", "Voltage at the device below which it goes dark", Unit.VOLT);

  static final Parameter<Double> START =
      Parameters.share("start", "Share of its charge that the pack starts with").orElse(1.0);

  static final Parameter<Double> CHARGE_LEFT =
      Parameters.share(
              "charge_left",
              "Share left of what it can give at its temperature when the job is stopped")
          .orElse(0.0);

  static final Parameter<Double> STEPS =
      Parameters.count("steps", "Number of steps between the first row and the last").orElse(24.0);

  static final Parameter<Double> START_WATTS =
      Parameters.positive("start_watts", "Power while the device starts", Unit.WATT);

  static final Parameter<Double> RATED_HOURS =
      Parameters.positive(
          "rated_hours", "Hours of the rate that the amp-hours are given for", Unit.HOUR);

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
      Parameters.share("from", "Share of its charge that the pack has when it goes on").orElse(0.0);

  static final Parameter<Double> TO =
      Parameter.of(
              "to",
              "Share of its charge to reach; 100 % is a current of 0.05 C",
              Unit.SHARE,
              SINGLE,
              ArgumentParsers.number((n, v) -> Checks.filled(n, Checks.share(n, v))))
          .orElse(1.0);

  static final Parameter<Double> PACK_COUNT = Parameters.count("packs", "Number of packs");

  static final Parameter<Double> HOURS_FREE =
      Parameters.positive("hours_free", "Hours that the channels are free", Unit.HOUR);

  static final Parameter<Double> HOURS_EACH =
      Parameters.positive("hours_each", "Hours that one pack takes", Unit.HOUR);

  static final Parameter<RangeTable> PACKS_AT_REST =
      Parameter.of(
          "packs",
          "Rows: volts of the resting pack (V), resistance (mΩ)",
          Unit.NONE,
          RANGE,
          (name, raw) -> RangeTable.of(name, raw, "open-circuit volts", "milliohms"));

  static final Parameter<RangeTable> PACKS_OF_BANK =
      Parameter.of(
          "packs",
          "Rows: chemistry, cells, Ah held when full today, resistance (mΩ), share of charge",
          Unit.NONE,
          RANGE,
          (name, raw) ->
              RangeTable.of(name, raw, "chemistry", "cells", "amp-hours", "milliohms", "charge"));

  static final Parameter<ParallelConnection> JOINED =
      Parameter.of(
          "joined",
          "How the packs are joined: \"hot-swap\" (ideal diodes) or \"parallel\" (hard)",
          Unit.NONE,
          SINGLE,
          ArgumentParsers.word(ParallelConnection.class));

  static final Parameter<Double> FULL_VOLTS =
      Parameters.positive("full_volts", "Voltage just off the charger", Unit.VOLT);

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
