package org.setpower.registry.groups;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.setpower.base.CalculationStep;
import org.setpower.base.Checks;
import org.setpower.base.EvaluationException;
import org.setpower.base.Unit;
import org.setpower.registry.ArgumentParsers;
import org.setpower.registry.Arguments;
import org.setpower.registry.FunctionGroup;
import org.setpower.registry.FunctionSpec;
import org.setpower.registry.Parameter;
import org.setpower.registry.RangeTable;
import org.setpower.supply.Feed;
import org.setpower.supply.LegPlan;
import org.setpower.supply.Neutral;
import org.setpower.supply.SupplyErrorCode;

/** PHASE: legs and neutral. */
public final class PhaseFunctions {
  private PhaseFunctions() {}

  static final FunctionGroup GROUP = new FunctionGroup("PHASE", "legs and neutral");

  private static final Parameter<Object> LOADS =
      Parameters.range(
          "loads",
          "Current (or VA) of each load on each of its legs, one load per row",
          Unit.AMPERE);

  private static final Parameter<Double> LEGS =
      Parameter.of(
          "legs",
          "Number of legs of the supply",
          Unit.PIECES,
          Parameter.Shape.SINGLE,
          ArgumentParsers.number(
              (n, v) ->
                  Checks.atMost(n, Checks.atLeast(n, Checks.whole(n, v), 1), LegPlan.MOST_LEGS)));

  private static final Parameter<Object> TAKEN =
      Parameters.range(
          "taken", "Current (or VA) that each leg carries already, one cell per leg", Unit.AMPERE);

  private static final Parameter<Object> SPANS =
      Parameters.range(
          "spans",
          "Number of legs of each load: 1 line to neutral, 2 line to line, 3 three-phase;"
              + " blank is 1",
          Unit.PIECES);

  public static final FunctionSpec NEUTRAL =
      GROUP
          .function("NEUTRAL")
          .description("Returns the neutral current of a three-phase or split supply")
          .parameters(
              SupplyParameters.LEG_1,
              SupplyParameters.LEG_2,
              SupplyParameters.LEG_3,
              SupplyParameters.PF_1,
              SupplyParameters.PF_2,
              SupplyParameters.PF_3,
              SupplyParameters.THIRD_HARMONIC,
              SupplyParameters.SUPPLY.orElse(Feed.THREE_PHASE))
          .returns(Unit.AMPERE, "Neutral current")
          .formula("√(|Σ I₁|² + (h·Σ I₁)²), I₁ = I/√(1+h²); split: the legs subtract")
          .source("circuit identities; third harmonics in phase: the worst case")
          .caution(
              "Switch the supply off before connecting or disconnecting single cores. "
                  + "Connect earth (ground) first, then neutral, then phases. Disconnect in "
                  + "reverse order. A lost neutral can put up to the line-to-line voltage on the "
                  + "smallest load. Use a larger neutral where this exceeds the amps of a leg: no"
                  + " breaker protects it")
          .errorCodes(SupplyErrorCode.THIRD_LEG, SupplyErrorCode.NO_POWER_FACTOR)
          .example("=PHASE.NEUTRAL(10;8;6;1;1;1;0)", 3.4641)
          .steps(PhaseFunctions::neutralSteps)
          .implementation(a -> neutral(a).amps());

  public static final FunctionSpec UNBALANCE =
      GROUP
          .function("UNBALANCE")
          .description("Returns phase unbalance")
          .parameters(SupplyParameters.LEG_1, SupplyParameters.LEG_2, SupplyParameters.LEG_3)
          .returns(Unit.SHARE, "Largest deviation from the mean, over the mean")
          .formula("max |I − mean| / mean")
          .source("NEMA MG 1 form of unbalance, applied to currents")
          .caution(
              "Check the neutral too: third harmonics add up in it even when the legs are "
                  + "equal")
          .errorCodes(SupplyErrorCode.ALL_ZERO)
          .example("=PHASE.UNBALANCE(10;8;6)", 0.25)
          .implementation(
              a ->
                  Neutral.unbalance(
                      a.get(SupplyParameters.LEG_1),
                      a.get(SupplyParameters.LEG_2),
                      a.get(SupplyParameters.LEG_3)));

  public static final FunctionSpec ASSIGN =
      GROUP
          .function("ASSIGN")
          .description("Returns the leg of each load for the lowest possible peak leg current")
          .parameters(
              LOADS, LEGS, TAKEN.orElse(null, "nothing"), SPANS.orElse(null, "1 for each load"))
          .returnsTable(
              "Leg of each load; two or three digits are the legs it is connected across", "leg")
          .formula("min. of the highest leg, by branch and bound")
          .source(
              "own search, proven to 0.01 % of the mean leg for nearly all jobs of up to 40 loads;"
                  + " where it is not, the working states how far from the best it can be at most")
          .caution(
              "Loads line to line count with their own current on each of their legs."
                  + " Currents are added as numbers, which never gives too little")
          .errorCodes(
              SupplyErrorCode.TOO_FEW_LEGS,
              SupplyErrorCode.TAKEN_CELLS,
              SupplyErrorCode.TOO_MANY_LOADS,
              SupplyErrorCode.SPAN_NOT_POSSIBLE)
          .example("=PHASE.ASSIGN({7|5|4|4|3};3)", 1.0)
          .steps(PhaseFunctions::planSteps)
          .implementation(PhaseFunctions::assign);

  private static List<RangeTable.Row> loadRows(Arguments a) {
    Object loads = a.get(LOADS);
    Object spans = a.get(SPANS);
    return spans == null
        ? RangeTable.beside("the loads", new String[] {"loads"}, loads).filledRows()
        : RangeTable.beside("the loads", new String[] {"loads", "spans"}, loads, spans)
            .filledRows();
  }

  private static LegPlan plan(Arguments a) {
    boolean spans = a.get(SPANS) != null;
    List<LegPlan.Load> loads =
        loadRows(a).stream()
            .map(
                row ->
                    new LegPlan.Load(
                        Checks.atLeast(row.nameOf(0), row.number(0), 0),
                        spans && !row.leavesOut(1) ? span(row) : 1))
            .toList();
    return LegPlan.of(loads, taken(a));
  }

  private static int span(RangeTable.Row row) {
    double span = row.number(1);
    if (span != 1 && span != 2 && span != 3) {
      throw new EvaluationException(SupplyErrorCode.SPAN_NOT_POSSIBLE, row.nameOf(1), span);
    }
    return (int) span;
  }

  private static double[] taken(Arguments a) {
    int legs = a.get(LEGS).intValue();
    double[] taken = new double[legs];
    if (a.get(TAKEN) != null) {
      Object[] cells = flat(a.get(TAKEN));
      if (cells.length != legs) {
        throw new EvaluationException(SupplyErrorCode.TAKEN_CELLS, cells.length, legs);
      }
      for (int leg = 0; leg < legs; leg++) {
        boolean blank = cells[leg] == null || "".equals(cells[leg]);
        String name = "taken of leg " + (leg + 1);
        double amps = blank ? 0 : ArgumentParsers.asNumber(name, cells[leg]);
        taken[leg] = Checks.atLeast(name, amps, 0);
      }
    }
    return taken;
  }

  private static Object[] flat(Object raw) {
    return raw instanceof Object[][] range
        ? Arrays.stream(range).flatMap(Arrays::stream).toArray()
        : new Object[] {raw};
  }

  /** As many rows as the range of loads has cells; a blank one stays blank. */
  private static Object[][] assign(Arguments a) {
    LegPlan plan = plan(a);
    Object[][] legs = new Object[flat(a.get(LOADS)).length][1];
    for (Object[] row : legs) {
      row[0] = "";
    }
    List<RangeTable.Row> rows = loadRows(a);
    for (int i = 0; i < rows.size(); i++) {
      legs[rows.get(i).number() - 1][0] = LegPlan.digits(plan.legs().get(i));
    }
    return legs;
  }

  private static List<CalculationStep> planSteps(Arguments a) {
    LegPlan plan = plan(a);
    List<CalculationStep> steps = new ArrayList<>();
    for (int leg = 0; leg < plan.amps().size(); leg++) {
      steps.add(
          new CalculationStep(
              "I" + (leg + 1),
              "leg " + (leg + 1) + " with all its loads",
              plan.amps().get(leg),
              Unit.AMPERE,
              ""));
    }
    steps.add(
        new CalculationStep(
            "bound", "no plan has a lower highest leg", plan.bound(), Unit.AMPERE, ""));
    steps.add(
        new CalculationStep(
            "",
            "is it the best",
            plan.proven() ? "proven to 0.01 % of the mean leg" : "not proven",
            Unit.NONE,
            ""));
    return steps;
  }

  private static Neutral neutral(Arguments a) {
    double pf1 = a.get(SupplyParameters.PF_1);
    double pf2 = or(a.get(SupplyParameters.PF_2), pf1);
    double pf3 = or(a.get(SupplyParameters.PF_3), pf2);
    return Neutral.of(
        new double[] {
          a.get(SupplyParameters.LEG_1),
          a.get(SupplyParameters.LEG_2),
          a.get(SupplyParameters.LEG_3)
        },
        new double[] {pf1, pf2, pf3},
        a.get(SupplyParameters.THIRD_HARMONIC),
        a.get(SupplyParameters.SUPPLY));
  }

  private static double or(Double given, double otherwise) {
    return given == null ? otherwise : given;
  }

  private static List<CalculationStep> neutralSteps(Arguments a) {
    Neutral n = neutral(a);
    return List.of(
        new CalculationStep(
            "|Σ I₁|", "phasor sum of the fundamentals", n.fundamental(), Unit.AMPERE, ""),
        new CalculationStep("h·Σ I₁", "third harmonics in phase", n.triplen(), Unit.AMPERE, ""));
  }
}
