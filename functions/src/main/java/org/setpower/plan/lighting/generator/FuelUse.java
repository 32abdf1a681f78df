package org.setpower.plan.lighting.generator;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.setpower.base.EvaluationException;
import org.setpower.plan.lighting.input.LightingSettings;
import org.setpower.plan.lighting.input.MeasureSystem;
import org.setpower.plan.lighting.input.SupplyTables.Generator;
import org.setpower.plan.lighting.load.Flows;
import org.setpower.plan.lighting.load.LoadState;
import org.setpower.plan.lighting.load.Timeline;
import org.setpower.plan.lighting.load.Timeline.Span;
import org.setpower.plan.lighting.network.Node;
import org.setpower.supply.Emissions;
import org.setpower.supply.Engine;
import org.setpower.supply.Fuel;
import org.setpower.supply.FuelChart;
import org.setpower.supply.GeneratorRating;

/**
 * What a generator burns while it runs.
 *
 * @param hours running
 * @param meanKw mean load while it runs
 * @param litres in all; NaN where the chart does not have it
 * @param cost NaN without a price
 * @param co2 kg
 * @param refuelAt by when the tank must be filled again: the start before, or where a full tank
 *     does not last a run, when it is empty; −1 never
 * @param dry the first run that no full tank lasts; null for none
 * @param begins hour of the clock at which it starts on the day with the largest energy
 * @param profile mean kW of each hour of the clock on that day, which ends with its night
 * @param date that day: the one shown, or that of most energy
 * @param nights each day that it runs
 */
public record FuelUse(
    double hours,
    double meanKw,
    double litres,
    double cost,
    double co2,
    int refuelAt,
    DryRun dry,
    int begins,
    List<Double> profile,
    LocalDate date,
    List<Night> nights) {
  static final FuelUse NONE =
      new FuelUse(
          0, 0, Double.NaN, Double.NaN, Double.NaN, -1, null, 0, List.of(), null, List.of());

  /**
   * A day with its night.
   *
   * @param date null where the plan has no days
   * @param from quarter hour in which it starts
   * @param to quarter hour behind the last
   * @param hours running
   * @param meanKw while it runs
   * @param mostKw highest load
   * @param litres NaN where the chart does not have it
   */
  public record Night(
      LocalDate date,
      int from,
      int to,
      double hours,
      double meanKw,
      double mostKw,
      double litres) {}

  /**
   * A run without a stop for which a full tank is too small.
   *
   * @param hours that the tank lasts
   * @param run hours
   * @param empty quarter hour
   */
  public record DryRun(double hours, double run, int empty) {}

  private static final double USABLE = 0.9;
  private static final double QUARTER = 0.25;

  /** It must not be refuelled while it is hot: quarter hours of a stop in which it cools down. */
  private static final int COOL = 4;

  private static final int HOURS = 24;

  /** Hours of a shooting day with its night. */
  private static final int NIGHT = 3 * HOURS;

  /** Energy of the hours of a shooting day. */
  private static final class DayLoad {
    private final double[] kilowattHours = new double[NIGHT];
    private final boolean[] runs = new boolean[NIGHT];
    private int first = Integer.MAX_VALUE;
    private int last;
    private int quarters;
    private double most;
    private double litres;

    void add(int quarter, int hour, double kilowatts, double burnt) {
      int at = Math.min(NIGHT - 1, hour);
      kilowattHours[at] += kilowatts * QUARTER;
      runs[at] = true;
      first = Math.min(first, quarter);
      last = Math.max(last, quarter);
      quarters++;
      most = Math.max(most, kilowatts);
      litres += burnt * QUARTER;
    }

    Night night(LocalDate date, double off, double least) {
      double hours = quarters * QUARTER;
      double saved = Math.min(hours, off);
      return new Night(
          date, first, last + 1, hours - saved, sum() / hours, most, litres - saved * least);
    }

    double sum() {
      return Arrays.stream(kilowattHours).sum();
    }

    int begins() {
      int first = 0;
      while (!runs[first]) {
        first++;
      }
      return first;
    }

    /** By hour of the clock; of a day that is longer than that the higher load. */
    List<Double> byClock() {
      Double[] hours = new Double[HOURS];
      Arrays.fill(hours, 0.0);
      for (int h = 0; h < NIGHT; h++) {
        hours[h % HOURS] = Math.max(hours[h % HOURS], kilowattHours[h]);
      }
      return List.of(hours);
    }
  }

  static FuelUse of(
      Generator typed,
      Node node,
      Double kva,
      Flows flows,
      List<Span> running,
      Timeline timeline,
      LightingSettings settings) {
    MeasureSystem units = settings.units();
    if (running == null || running.isEmpty()) {
      return NONE;
    }
    Map<Integer, Integer> states = new HashMap<>();
    for (int s = 0; s < flows.states().size(); s++) {
      LoadState state = flows.states().get(s);
      for (int[] span : state.spans()) {
        for (int q = span[0]; q < span[1]; q++) {
          states.put(q, s);
        }
      }
    }
    Map<Integer, DayLoad> days = new TreeMap<>();
    double[] burnt = new double[flows.states().size() + 1];
    double[] kilowatts = new double[burnt.length];
    for (int s = 0; s < burnt.length; s++) {
      kilowatts[s] = kilowatts(flows, node, s - 1);
      burnt[s] = litresPerHour(typed, kva, kilowatts[s], units);
    }
    double litres = 0;
    double energy = 0;
    int quarters = 0;
    int refuel = -1;
    DryRun dry = null;
    double sinceFull = 0;
    double tank =
        typed.tank() == null
            ? Double.POSITIVE_INFINITY
            : units.toLitres(typed.tank()) * LightingSettings.or(typed.usable(), USABLE);
    double least = Double.POSITIVE_INFINITY;
    for (List<Span> run : withoutStops(running)) {
      double now = 0;
      int done = 0;
      boolean lasted = dry == null;
      int all = run.stream().mapToInt(r -> r.to() - r.from()).sum();
      for (Span span : run) {
        for (int q = span.from(); q < span.to(); q++) {
          int s = states.getOrDefault(q, -1) + 1;
          litres += burnt[s] * QUARTER;
          least = Math.min(least, burnt[s]);
          energy += kilowatts[s] * QUARTER;
          quarters++;
          now += burnt[s] * QUARTER;
          if (dry == null && now > tank) {
            dry = new DryRun(done * QUARTER, all * QUARTER, q);
          }
          done++;
          int midnight = timeline.midnight(q);
          days.computeIfAbsent(midnight, k -> new DayLoad())
              .add(q, (q - midnight) / 4, kilowatts[s], burnt[s]);
        }
      }
      if (lasted && refuel < 0 && sinceFull > 0 && sinceFull + now > tank) {
        refuel = run.get(0).from();
      }
      sinceFull += now;
    }
    if (dry != null && (refuel < 0 || dry.empty() < refuel)) {
      refuel = dry.empty();
    }
    double mean = energy / (quarters * QUARTER);
    double off =
        Math.min(
            quarters * QUARTER,
            LightingSettings.or(typed.offMinutes(), 0.0)
                / 60
                * timeline.windows(typed.fromDay(), typed.toDay()).size());
    double hours = quarters * QUARTER - off;
    // it is not known when these minutes are: they save what it burns at its lowest load
    litres -= off * least;
    double cost =
        typed.fuelPrice() == null ? Double.NaN : units.fromLitres(litres) * typed.fuelPrice();
    LocalDate shown = timeline.shown(settings.dayShown());
    double offEach = LightingSettings.or(typed.offMinutes(), 0.0) / 60;
    List<Night> nights = new ArrayList<>();
    DayLoad most = null;
    LocalDate date = null;
    for (Map.Entry<Integer, DayLoad> entry : days.entrySet()) {
      LocalDate own = timeline.date(entry.getKey());
      DayLoad day = entry.getValue();
      nights.add(day.night(own, offEach, least));
      boolean chosen = own != null && own.equals(shown);
      boolean more = most == null || day.sum() > most.sum();
      if (chosen || more && (date == null || !date.equals(shown))) {
        most = day;
        date = own;
      }
    }
    return new FuelUse(
        hours,
        mean,
        litres,
        cost,
        Emissions.ofFuel(litres, Fuel.DIESEL),
        refuel,
        dry,
        most.begins(),
        most.byClock(),
        date,
        nights);
  }

  /** Hours between two stops that are long enough to refuel in. */
  private static List<List<Span>> withoutStops(List<Span> running) {
    List<List<Span>> runs = new ArrayList<>();
    Span before = null;
    for (Span span : running) {
      if (before == null || span.from() - before.to() >= COOL) {
        runs.add(new ArrayList<>());
      }
      runs.get(runs.size() - 1).add(span);
      before = span;
    }
    return runs;
  }

  private static double kilowatts(Flows flows, Node node, int state) {
    double watts = 0;
    double existing = flows.existing(node);
    for (int leg = 0; leg < 3; leg++) {
      if ((node.legs() >> leg & 1) == 1) {
        watts += state < 0 ? 0 : flows.watts(state, node, leg);
        watts += existing > 0 ? existing * flows.legVolts(node) : 0;
      }
    }
    return Math.max(0, watts) / 1000;
  }

  private static double litresPerHour(
      Generator typed, Double kva, double kilowatts, MeasureSystem units) {
    if (kva == null || typed.engine() == Engine.PETROL && typed.consumption() == null) {
      return Double.NaN;
    }
    double rated = kva * GeneratorRating.RATED_POWER_FACTOR;
    try {
      return typed.consumption() == null
          ? FuelChart.litresPerHour(kilowatts, rated, Fuel.DIESEL)
          : FuelChart.litresPerHour(kilowatts, rated, units.toLitres(typed.consumption()));
    } catch (EvaluationException outside) {
      return Double.NaN;
    }
  }
}
