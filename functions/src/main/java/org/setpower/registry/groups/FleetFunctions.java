package org.setpower.registry.groups;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.setpower.base.CalculationStep;
import org.setpower.base.Checks;
import org.setpower.base.EvaluationException;
import org.setpower.base.Unit;
import org.setpower.fleet.Ageing;
import org.setpower.fleet.FleetErrorCode;
import org.setpower.fleet.ForecastBound;
import org.setpower.fleet.OutlierDetection;
import org.setpower.registry.ArgumentParsers;
import org.setpower.registry.Arguments;
import org.setpower.registry.FunctionGroup;
import org.setpower.registry.FunctionSpec;
import org.setpower.registry.Parameter;
import org.setpower.registry.RangeTable;

/** FLEET: a stock of packs. */
public final class FleetFunctions {
  private FleetFunctions() {}

  static final FunctionGroup GROUP = new FunctionGroup("FLEET", "a stock of battery packs");

  private static final Parameter<Double> MEASURED_WH =
      Parameters.notNegative(
          "measured_wh", "Wh that the full battery gave at room temperature", Unit.WATT_HOUR);
  private static final Parameter<Double> RATED_WH =
      Parameters.positive("rated_wh", "Wh on the label", Unit.WATT_HOUR);

  public static final FunctionSpec HEALTH =
      GROUP
          .function("HEALTH")
          .description("Returns the state of health of a battery from a capacity test")
          .parameters(MEASURED_WH, RATED_WH)
          .returns(Unit.SHARE, "State of health")
          .formula("measured_wh / rated_wh")
          .source("definition of state of health used here")
          .caution(
              "Hot, smoking, leaking or smelling: do not touch it. Clear the area. Call the"
                  + " fire service. Quarantine a cold battery that was dropped, got wet or is "
                  + "swollen, whatever this figure says. A test in the cold or at a high load "
                  + "reads low: compare like with like")
          .errorCodes(FleetErrorCode.OVER_RATING)
          .example("=FLEET.HEALTH(250;294)", 0.8503)
          .implementation(a -> Ageing.health(a.get(MEASURED_WH), a.get(RATED_WH)));

  private static final Parameter<Double> CYCLES =
      Parameters.positive("cycles", "Cycles so far", Unit.NONE);
  private static final Parameter<Double> RETIRE_AT =
      Parameter.of(
              "retire_at",
              "State of health at which it is retired",
              Unit.SHARE,
              Parameter.Shape.SINGLE,
              ArgumentParsers.number((n, v) -> Checks.above(n, Checks.share(n, v), 0)))
          .orElse(0.8);

  public static final FunctionSpec FADE =
      GROUP
          .function("FADE")
          .description("Returns the loss of state of health in 100 cycles, on average since new")
          .parameters(CYCLES, Parameters.HEALTH.required())
          .returns(Unit.SHARE, "State of health lost in 100 cycles")
          .formula("100 · (1 − health) / cycles")
          .source("an average since new")
          .caution("Capacity falls faster near end of life: the next 100 cycles may cost more")
          .example("=FLEET.FADE(200;90%)", 0.05)
          .implementation(a -> Ageing.lossInHundred(a.get(CYCLES), a.get(Parameters.HEALTH)));

  private static final Parameter<ForecastBound> OUTLOOK =
      Parameter.of(
              "outlook",
              "\"least\" or \"most\": lower or upper end of the range",
              Unit.NONE,
              Parameter.Shape.SINGLE,
              ArgumentParsers.word(ForecastBound.class))
          .orElse(ForecastBound.LEAST);

  public static final FunctionSpec CYCLESLEFT =
      GROUP
          .function("CYCLESLEFT")
          .description("Returns the min. or max. remaining cycles of a battery")
          .parameters(CYCLES, Parameters.HEALTH.required(), RETIRE_AT, OUTLOOK)
          .returns(Unit.NONE, "Remaining cycles")
          .formula(
              "least: 0.6 · the min., most: 1.4 · the max. of cycles ·"
                  + " (n(retire_at)/n(health) − 1), n: cycles of each of six measured cells")
          .source(
              "T. Baumhöfer et al., J. Power Sources 247 (2014) 332,"
                  + " doi:10.1016/j.jpowsour.2013.08.108; 0.6 and 1.4 cover each of the six"
                  + " foretold from the other five")
          .caution(
              "The cells were NMC of one type, cycled one way: LFP, lead, heat, storage at"
                  + " full charge and uncounted cycles change it. Plan with \"least\", and test"
                  + " again every 50 cycles")
          .errorCodes(FleetErrorCode.TOO_EARLY, FleetErrorCode.BELOW_MEASURED)
          .example("=FLEET.CYCLESLEFT(200;90%)", 81.9048)
          .example("=FLEET.CYCLESLEFT(200;90%;80%;\"most\")", 256.0)
          .steps(
              a ->
                  List.of(
                      new CalculationStep(
                          "",
                          "lower end of cycles left",
                          cyclesLeft(a, ForecastBound.LEAST),
                          Unit.NONE,
                          "0.6 · the min."),
                      new CalculationStep(
                          "",
                          "upper end of cycles left",
                          cyclesLeft(a, ForecastBound.MOST),
                          Unit.NONE,
                          "1.4 · the max.")))
          .implementation(a -> cyclesLeft(a, a.get(OUTLOOK)));

  private static double cyclesLeft(Arguments a, ForecastBound outlook) {
    return Ageing.cyclesLeft(a.get(CYCLES), a.get(Parameters.HEALTH), a.get(RETIRE_AT), outlook);
  }

  private static final Parameter<Object> HEALTHS =
      Parameters.range("healths", "State of health of each battery", Unit.SHARE);
  private static final Parameter<Double> LIMIT =
      Parameters.positive("limit", "Score above which a battery is an outlier", Unit.NONE)
          .orElse(3.5);
  private static final Parameter<Object> KINDS =
      Parameters.range("types", "Type of each battery", Unit.NONE).orElse(null, "all of one type");

  public static final FunctionSpec OUTLIER =
      GROUP
          .function("OUTLIER")
          .description("Returns 1 for each outlier in state of health, otherwise 0")
          .parameters(HEALTHS, LIMIT, KINDS)
          .returnsTable("Outliers", "outlier (1 or 0)")
          .formula("|0.6745 · (health − median) / MAD| > limit")
          .source(
              "B. Iglewicz, D. Hoaglin, How to Detect and Handle Outliers (ASQC, 1993): modified"
                  + " z-score")
          .caution(
              "An outlier may be better than the others; #N/A for a type of fewer than 5"
                  + " batteries")
          .errorCodes(FleetErrorCode.TOO_FEW)
          .example("=FLEET.OUTLIER({0.95|0.94|0.96|0.93|0.71})", 0.0)
          .implementation(FleetFunctions::odd);

  private static final Parameter<Object> CELL_VOLTS =
      Parameters.range(
          "cell_volts", "Voltages of the cells, rested for an hour, no load", Unit.VOLT);

  public static final FunctionSpec IMBALANCE =
      GROUP
          .function("IMBALANCE")
          .description("Returns the voltage imbalance between the cells of a battery")
          .parameters(CELL_VOLTS)
          .returns(Unit.VOLT, "Imbalance")
          .formula("highest − lowest")
          .source("arithmetic")
          .caution("LFP shows its imbalance only when full or nearly empty: its curve is flat")
          .errorCodes(FleetErrorCode.ONE_CELL)
          .example("=FLEET.IMBALANCE({3.98;3.97;3.91;3.98})", 0.07)
          .implementation(FleetFunctions::spread);

  private static Object[][] odd(Arguments a) {
    boolean byKind = a.get(KINDS) != null;
    RangeTable table =
        byKind
            ? RangeTable.beside(
                "the batteries", new String[] {"healths", "types"}, a.get(HEALTHS), a.get(KINDS))
            : RangeTable.beside("the batteries", new String[] {"healths"}, a.get(HEALTHS));
    Map<String, List<RangeTable.Row>> kinds = new LinkedHashMap<>();
    for (RangeTable.Row row : table.filledRows()) {
      if (!row.leavesOut(0)) {
        kinds.computeIfAbsent(byKind ? row.text(1).strip() : "", k -> new ArrayList<>()).add(row);
      }
    }
    Object[][] shape = a.get(HEALTHS) instanceof Object[][] range ? range : new Object[1][1];
    Object[] flat = new Object[shape.length * shape[0].length];
    Arrays.fill(flat, "");
    for (List<RangeTable.Row> kind : kinds.values()) {
      Object[] answers = standApart(kind, a.get(LIMIT), !byKind);
      for (int i = 0; i < answers.length; i++) {
        flat[kind.get(i).number() - 1] = answers[i];
      }
    }
    Object[][] result = new Object[shape.length][shape[0].length];
    for (int i = 0; i < flat.length; i++) {
      result[i / shape[0].length][i % shape[0].length] = flat[i];
    }
    return result;
  }

  /** 1, 0 or the error of the whole type for each of its packs. */
  private static Object[] standApart(List<RangeTable.Row> kind, double limit, boolean only) {
    Object[] answers = new Object[kind.size()];
    double[] healths = new double[answers.length];
    for (int i = 0; i < healths.length; i++) {
      RangeTable.Row row = kind.get(i);
      healths[i] =
          Checks.atMost(row.nameOf(0), Checks.atLeast(row.nameOf(0), row.number(0), 0), 1.1);
    }
    try {
      double[] scores = OutlierDetection.scores(healths);
      for (int i = 0; i < answers.length; i++) {
        answers[i] = Math.abs(scores[i]) > limit ? 1.0 : 0.0;
      }
    } catch (EvaluationException tooFew) {
      if (only) {
        throw tooFew;
      }
      Arrays.fill(answers, tooFew);
    }
    return answers;
  }

  private static double spread(Arguments a) {
    double lowest = Double.MAX_VALUE;
    double highest = 0;
    List<RangeTable.Row> cells =
        RangeTable.beside("the cells", new String[] {"cell_volts"}, a.get(CELL_VOLTS)).filledRows();
    if (cells.size() < 2) {
      throw new EvaluationException(FleetErrorCode.ONE_CELL, "cell_volts");
    }
    for (RangeTable.Row cell : cells) {
      double volts =
          Checks.atMost(cell.nameOf(0), Checks.atLeast(cell.nameOf(0), cell.number(0), 0), 5);
      lowest = Math.min(lowest, volts);
      highest = Math.max(highest, volts);
    }
    return highest - lowest;
  }
}
