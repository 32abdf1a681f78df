package org.setpower.plan;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;
import org.ojalgo.optimisation.Expression;
import org.ojalgo.optimisation.ExpressionsBasedModel;
import org.ojalgo.optimisation.Optimisation;
import org.ojalgo.optimisation.Variable;
import org.ojalgo.optimisation.integer.IntegerStrategy;
import org.setpower.base.Numbers;
import org.setpower.base.Refusal;

/**
 * The cheapest mix of packs that covers the energy and the power of a job: an integer programme,
 * solved to its proven optimum.
 *
 * <p>Of mixes of one price it takes the lightest. The search runs on one thread and without a
 * clock, so the same question always gets the same answer.
 */
public final class CheapestMix {
  /** More options than a proof can be promised for. */
  static final int MOST_OPTIONS = 12;

  private static final int MOST_NODES = 3000;

  /**
   * Branching only. With the Gomory cuts of ojAlgo 56 about one small question in a hundred got a
   * dearer mix that was called optimal; without them, none of many thousands.
   */
  private static final IntegerStrategy EXACT =
      IntegerStrategy.newConfigurable()
          .withParallelism(() -> 1)
          .withGMICutConfiguration(
              new IntegerStrategy.GMICutConfiguration()
                  .withFractionality(0.499999)
                  .withViolation(BigDecimal.valueOf(1_000_000)));

  /** Prices and masses closer than this share are the same. */
  private static final double SAME = 1e-9;

  private CheapestMix() {}

  /**
   * A kind of pack to choose from.
   *
   * @param row its place in the list, from 1
   * @param cabinLimit how many a person may take into the cabin; infinite for no limit. Options
   *     with the same or a lower limit count together, as the rules of the air do: with 2 and 20,
   *     at most 2 of the first kind and 20 in all
   */
  public record Option(
      int row,
      double wattHours,
      double maxWatts,
      double kilograms,
      double price,
      double cabinLimit) {}

  /**
   * What the mix must do.
   *
   * @param wattHours energy it holds at least
   * @param watts power it gives at least
   * @param maxKilograms mass it must not pass; infinite for no limit
   * @param people travellers who carry it; infinite if nobody flies
   */
  public record Job(double wattHours, double watts, double maxKilograms, double people) {}

  /**
   * How many of each option.
   *
   * @throws Refusal when no mix does it, and when the options are too many or too alike
   */
  public static int[] of(List<Option> options, Job job) {
    if (options.size() > MOST_OPTIONS) {
      throw new Refusal(PlanReason.MIX_TOO_LARGE, options.size(), MOST_OPTIONS);
    }
    double[] prices = options.stream().mapToDouble(Option::price).toArray();
    double[] masses = options.stream().mapToDouble(Option::kilograms).toArray();
    Optimisation.Result cheapest = solve(options, job, prices, Double.POSITIVE_INFINITY);
    if (cheapest.getState() == Optimisation.State.INFEASIBLE) {
      throw new Refusal(PlanReason.NO_MIX, job.wattHours, job.watts, limits(job));
    }
    if (!cheapest.getState().isOptimal()) {
      throw new Refusal(PlanReason.MIX_TOO_HARD);
    }
    double price = cheapest.getValue();
    Optimisation.Result lightest = solve(options, job, masses, price + SAME * Math.abs(price));
    return whole(lightest.getState().isOptimal() ? lightest : cheapest);
  }

  private static Optimisation.Result solve(
      List<Option> options, Job job, double[] goal, double mostPrice) {
    ExpressionsBasedModel model = new ExpressionsBasedModel();
    model.options.iterations_abort = MOST_NODES;
    model.options.integer(EXACT);
    List<Variable> pieces = new ArrayList<>();
    for (int i = 0; i < options.size(); i++) {
      Option o = options.get(i);
      double most = Math.max(job.wattHours / o.wattHours, job.watts / o.maxWatts);
      pieces.add(
          model
              .newVariable("n" + i)
              .integer()
              .lower(0)
              .upper(Numbers.wholeUp(most))
              .weight(goal[i]));
    }
    sum(model, "Wh", pieces, options.stream().mapToDouble(Option::wattHours).toArray())
        .lower(job.wattHours * (1 - SAME));
    sum(model, "W", pieces, options.stream().mapToDouble(Option::maxWatts).toArray())
        .lower(job.watts * (1 - SAME));
    if (Double.isFinite(job.maxKilograms)) {
      sum(model, "kg", pieces, options.stream().mapToDouble(Option::kilograms).toArray())
          .upper(job.maxKilograms * (1 + SAME));
    }
    if (Double.isFinite(job.people)) {
      cabin(model, pieces, options, job.people);
    }
    if (Double.isFinite(mostPrice)) {
      sum(model, "price", pieces, options.stream().mapToDouble(Option::price).toArray())
          .upper(mostPrice);
    }
    return model.minimise();
  }

  private static void cabin(
      ExpressionsBasedModel model, List<Variable> pieces, List<Option> options, double people) {
    TreeSet<Double> limits = new TreeSet<>();
    options.stream().map(Option::cabinLimit).filter(Double::isFinite).forEach(limits::add);
    for (double limit : limits) {
      double[] counted = options.stream().mapToDouble(o -> o.cabinLimit <= limit ? 1 : 0).toArray();
      sum(model, "cabin" + limit, pieces, counted).upper(limit * people);
    }
  }

  private static Expression sum(
      ExpressionsBasedModel model, String name, List<Variable> pieces, double[] factors) {
    Expression sum = model.newExpression(name);
    for (int i = 0; i < factors.length; i++) {
      sum.set(pieces.get(i), factors[i]);
    }
    return sum;
  }

  private static int[] whole(Optimisation.Result result) {
    int[] mix = new int[result.size()];
    for (int i = 0; i < mix.length; i++) {
      mix[i] = (int) Math.round(result.doubleValue(i));
    }
    return mix;
  }

  private static String limits(Job job) {
    String mass =
        Double.isFinite(job.maxKilograms) ? Numbers.words(job.maxKilograms) + " kg" : "any mass";
    return Double.isFinite(job.people)
        ? mass + " and the cabin limits of " + Numbers.words(job.people) + " people"
        : mass;
  }
}
