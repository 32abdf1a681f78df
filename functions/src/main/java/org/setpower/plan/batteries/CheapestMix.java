package org.setpower.plan.batteries;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.ToDoubleFunction;
import org.setpower.base.EvaluationException;
import org.setpower.base.Numbers;

/**
 * The cheapest mix of packs that covers the energy and the power of a job: an integer programme,
 * solved by branch and bound. Of mixes of one price it takes the lightest.
 *
 * <p>Kinds are taken up in the order of their price per Wh, each in every number that is of use. A
 * branch is left when the rest of the job cannot be had cheaply or lightly enough even in fractions
 * of the best packs that remain. So nothing cheaper is passed over, and what stands at the end is
 * the proven optimum. The same question always gets the same answer.
 */
public final class CheapestMix {
  /** The max. number of options for which an optimum is proven in time. */
  static final int MOST_OPTIONS = 12;

  private static final long MOST_BRANCHES = 2_000_000;

  /** Figures that differ by less than this share are the same. */
  private static final double SAME = 1e-9;

  /** How energy and power are weighed against each other in the bound of the price. */
  private static final double[] WEIGHTS = {0, 0.25, 0.5, 0.75, 1};

  /**
   * A kind of pack to choose from.
   *
   * @param row its place in the list, from 1
   * @param cabinLimit how many a person may take into the cabin; infinite for no limit. Options
   *     with the same or a lower limit count together, as the rules of the air do: with 2 and 20,
   *     at most 2 of the first kind and 20 in all
   * @param available how many there are; infinite for as many as needed
   */
  public record Option(
      int row,
      double wattHours,
      double maxWatts,
      double kilograms,
      double price,
      double cabinLimit,
      double available) {}

  /**
   * What the mix must do.
   *
   * @param wattHours energy it holds at least
   * @param watts power it gives at least
   * @param maxKilograms mass it must not pass; infinite for no limit
   * @param people travellers who carry it; infinite if nobody flies
   */
  public record Job(double wattHours, double watts, double maxKilograms, double people) {}

  private final Job job;
  private final List<Integer> order;
  private final List<Option> options;
  private final double[][] pricePerNeed;
  private final double[] massPerWattHour;
  private final double[] massPerWatt;
  private final int[] mix;
  private int[] best;
  private double bestPrice = Double.POSITIVE_INFINITY;
  private double bestMass = Double.POSITIVE_INFINITY;
  private long branches;

  private CheapestMix(List<Option> given, List<Integer> order, Job job) {
    this.job = job;
    this.order = order;
    options = order.stream().map(given::get).toList();
    mix = new int[options.size()];
    pricePerNeed = new double[WEIGHTS.length][];
    for (int k = 0; k < WEIGHTS.length; k++) {
      double weight = WEIGHTS[k];
      pricePerNeed[k] = leastFrom(o -> o.price / need(weight, o.wattHours, o.maxWatts));
    }
    massPerWattHour = leastFrom(o -> o.kilograms / o.wattHours);
    massPerWatt = leastFrom(o -> o.kilograms / o.maxWatts);
  }

  /**
   * How many of each option.
   *
   * @throws EvaluationException when no mix does it, and when the options are too many or too alike
   */
  public static int[] of(List<Option> options, Job job) {
    if (options.size() > MOST_OPTIONS) {
      throw new EvaluationException(
          BatteryPlanErrorCode.MIX_TOO_LARGE, options.size(), MOST_OPTIONS);
    }
    CheapestMix search = searched(options, job);
    if (search.best == null) {
      throw new EvaluationException(
          BatteryPlanErrorCode.NO_MIX, job.wattHours, job.watts, limits(job));
    }
    int[] mix = new int[options.size()];
    for (int k = 0; k < mix.length; k++) {
      mix[search.order.get(k)] = search.best[k];
    }
    return mix;
  }

  /** The search, done. */
  static CheapestMix searched(List<Option> options, Job job) {
    List<Integer> order = new ArrayList<>();
    for (int i = 0; i < options.size(); i++) {
      order.add(i);
    }
    order.sort(Comparator.comparingDouble(i -> options.get(i).price / options.get(i).wattHours));
    CheapestMix search = new CheapestMix(options, order, job);
    search.branch(0, job.wattHours, job.watts, 0, 0);
    return search;
  }

  /** How many branches it took. */
  long branches() {
    return branches;
  }

  /** Tries every useful number of the option at this place, and then those behind it. */
  private void branch(int at, double wattHours, double watts, double price, double mass) {
    if (++branches > MOST_BRANCHES) {
      throw new EvaluationException(BatteryPlanErrorCode.MIX_TOO_HARD);
    }
    if (wattHours <= job.wattHours * SAME && watts <= job.watts * SAME) {
      offer(price, mass);
      return;
    }
    if (at == mix.length
        || isHopeless(at, Math.max(0, wattHours), Math.max(0, watts), price, mass)) {
      return;
    }
    Option o = options.get(at);
    double enough = Numbers.wholeUp(Math.max(wattHours / o.wattHours, watts / o.maxWatts));
    for (int n = (int) Math.min(enough, room(at)); n >= 0; n--) {
      mix[at] = n;
      branch(
          at + 1,
          wattHours - n * o.wattHours,
          watts - n * o.maxWatts,
          price + n * o.price,
          mass + n * o.kilograms);
    }
    mix[at] = 0;
  }

  private void offer(double price, double mass) {
    boolean fits = mass <= job.maxKilograms * (1 + SAME);
    boolean cheaper = price < bestPrice - tolerance(bestPrice);
    boolean asCheap = price <= bestPrice + tolerance(bestPrice);
    if (fits && (cheaper || (asCheap && mass < bestMass - tolerance(bestMass)))) {
      best = mix.clone();
      bestPrice = price;
      bestMass = mass;
    }
  }

  private static double tolerance(double value) {
    return Double.isFinite(value) ? SAME * (1 + value) : 0;
  }

  /**
   * Whether the rest, met by fractions of the best options that remain, is too expensive or too
   * heavy.
   */
  private boolean isHopeless(int at, double wattHours, double watts, double price, double mass) {
    double leastMass = mass + Math.max(wattHours * massPerWattHour[at], watts * massPerWatt[at]);
    if (leastMass > job.maxKilograms * (1 + SAME)) {
      return true;
    }
    double leastPrice = price;
    for (int k = 0; k < WEIGHTS.length; k++) {
      leastPrice =
          Math.max(leastPrice, price + need(WEIGHTS[k], wattHours, watts) * pricePerNeed[k][at]);
    }
    return leastPrice > bestPrice + tolerance(bestPrice)
        || (leastPrice >= bestPrice - tolerance(bestPrice)
            && leastMass >= bestMass - tolerance(bestMass));
  }

  /** Energy and power as one figure: shares of the job's, weighed. */
  private double need(double weight, double wattHours, double watts) {
    double energy = job.wattHours > 0 ? wattHours / job.wattHours : 0;
    double power = job.watts > 0 ? watts / job.watts : 0;
    return weight * energy + (1 - weight) * power;
  }

  /** The least of a figure over the options from each place on; 0 where it has no meaning. */
  private double[] leastFrom(ToDoubleFunction<Option> figure) {
    double[] least = new double[options.size()];
    double sofar = Double.POSITIVE_INFINITY;
    for (int at = least.length - 1; at >= 0; at--) {
      double here = figure.applyAsDouble(options.get(at));
      sofar = Math.min(sofar, Double.isFinite(here) ? here : 0);
      least[at] = sofar;
    }
    return least;
  }

  /** How many of the option there are, or how many more of it the travellers may carry. */
  private double room(int at) {
    double room = options.get(at).available;
    for (Option level : options) {
      double limit = level.cabinLimit;
      if (Double.isFinite(job.people) && limit >= options.get(at).cabinLimit) {
        double carried = 0;
        for (int i = 0; i < at; i++) {
          carried += options.get(i).cabinLimit <= limit ? mix[i] : 0;
        }
        room = Math.min(room, limit * job.people - carried);
      }
    }
    return room;
  }

  private static String limits(Job job) {
    String mass =
        Double.isFinite(job.maxKilograms) ? Numbers.format(job.maxKilograms) + " kg" : "any mass";
    return Double.isFinite(job.people)
        ? mass + " and the cabin limits of " + Numbers.format(job.people) + " people"
        : mass;
  }
}
