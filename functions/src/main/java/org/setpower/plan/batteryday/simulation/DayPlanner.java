package org.setpower.plan.batteryday.simulation;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.concurrent.ConcurrentHashMap;

/**
 * Plans a day: of the schedules that the rules allow, the first in which nothing goes dark; and how
 * few batteries of each type such a schedule needs.
 */
public final class DayPlanner {
  /** A fleet that no set has. */
  public static final int MOST_BATTERIES = 400;

  /** Hours; a battery that works for less is no plan. */
  public static final double SHORTEST = DayRun.SHORTEST;

  private static final int MOST_AFTERNOONS = 40;

  /** Nobody hires so many more for a day that was planned. */
  private static final int MOST_MISSING = 60;

  /** W; nobody hires a supply by the watt. */
  private static final double WATT_STEP = 10;

  /** Hours of darkness that make no difference. */
  private static final double LEAST_DARK = 1 / 60.0;

  /** Figures looked at for the schedule; a day of 20 positions takes a fraction. */
  private static final long MOST_EFFORT = 1_500_000;

  private final DaySpec day;
  private final List<DayPolicy> policies;
  private final Effort effort = new Effort(MOST_EFFORT);
  private final FewestSearch search;
  private DayOutcome planned;

  /** Outcomes of dates that are not shown: an edit changes few of them. */
  private static final Map<DaySpec.Key, DayOutcome> KEPT = new ConcurrentHashMap<>();

  private static final int MOST_KEPT = 60;

  /** A date that is not shown, as it is planned; it is not planned again. */
  public static DayOutcome ofOther(DaySpec day) {
    DaySpec.Key key = day.key(0);
    DayOutcome kept = KEPT.get(key);
    if (kept == null) {
      kept = new DayPlanner(day).plan();
      if (KEPT.size() >= MOST_KEPT) {
        KEPT.clear();
      }
      KEPT.put(key, kept);
    }
    return kept;
  }

  /** How few batteries do on a date that is not shown. */
  public static Fewest fewestOf(DaySpec day) {
    return new FewestSearch(day).fewest();
  }

  public DayPlanner(DaySpec day) {
    this.day = day;
    policies = DayPolicy.all(day);
    search = new FewestSearch(day);
  }

  /**
   * The day as it is planned. Before the hour of planning again it does not depend on what is found
   * then.
   */
  public DayOutcome plan() {
    if (planned == null) {
      planned = planned();
    }
    return planned;
  }

  private DayOutcome planned() {
    DaySpec planned =
        new DaySpec(
            day.call(),
            day.until(),
            day.air(),
            day.shelf(),
            day.breaks(),
            day.near(),
            day.units(),
            day.batteries().stream().filter(b -> !b.isPutIn() || b.from() <= day.call()).toList(),
            day.isAgain()
                ? day.chargers().stream().map(ChargerSpec::asPlanned).toList()
                : day.chargers(),
            day.supplies(),
            Double.POSITIVE_INFINITY,
            List.of());
    DayPolicy morning = first(planned);
    DayOutcome outcome = DayRun.of(day, morning, morning);
    if (!day.isAgain() || outcome.isLit()) {
      return outcome;
    }
    for (int i = 0; i < Math.min(MOST_AFTERNOONS, policies.size()); i++) {
      DayPolicy afternoon = policies.get(i);
      DayOutcome other = DayRun.of(day, morning, afternoon);
      if (darkFrom(other) == 0) {
        return other;
      }
    }
    return outcome;
  }

  /**
   * Dark hours of the day as it is planned, but with a supply whose watts never bind: less than the
   * plan has where these watts are what keeps batteries from charging.
   */
  public double darkWithout(int supply) {
    return darkWith(supply, Double.POSITIVE_INFINITY);
  }

  /**
   * Watts of a supply, in steps of ten, with which the day has no more dark hours than with any
   * watts; found by halving. NaN if not even all its channels at the same time do.
   */
  public double wattsEnough(int supply) {
    double given = watts(supply);
    double goal = darkWithout(supply) + LEAST_DARK;
    double all =
        day.chargers().stream()
            .filter(c -> c.supply() == supply)
            .mapToDouble(
                c ->
                    c.channels()
                        * c.types().values().stream()
                            .mapToDouble(ChargerSpec.Rate::watts)
                            .max()
                            .orElse(0))
            .sum();
    int low = (int) Math.floor(given / WATT_STEP);
    int high = (int) Math.ceil(all / WATT_STEP);
    if (high <= low || darkWith(supply, high * WATT_STEP) > goal) {
      return Double.NaN;
    }
    while (high - low > 1) {
      int middle = (low + high) >>> 1;
      if (darkWith(supply, middle * WATT_STEP) > goal) {
        low = middle;
      } else {
        high = middle;
      }
    }
    return high * WATT_STEP;
  }

  private double watts(int supply) {
    return day.supplies().stream()
        .filter(s -> s.row() == supply)
        .mapToDouble(SupplySpec::watts)
        .findFirst()
        .orElseThrow();
  }

  private double darkWith(int supply, double watts) {
    List<SupplySpec> fed =
        day.supplies().stream()
            .map(s -> s.row() == supply ? new SupplySpec(s.row(), watts, s.wattHours()) : s)
            .toList();
    DaySpec other =
        new DaySpec(
            day.call(),
            day.until(),
            day.air(),
            day.shelf(),
            day.breaks(),
            day.near(),
            day.units(),
            day.batteries(),
            day.chargers(),
            fed,
            day.now(),
            day.found());
    DayPolicy usual = policies.get(0);
    return Arrays.stream(DayRun.of(other, usual, usual).darkHours()).sum();
  }

  private long darkFrom(DayOutcome outcome) {
    return outcome.events().stream()
        .filter(e -> e.what() == DayEvent.What.DARK && e.hour() >= day.now())
        .count();
  }

  private DayPolicy first(DaySpec planned) {
    DayPolicy usual = policies.get(0);
    if (DayRun.toFirstDark(planned, usual, effort).isLit() || search.isShort(planned.batteries())) {
      return usual;
    }
    // the schedule by which the fewest last may be one that is not found within the effort
    DayPolicy known = search.policy();
    if (known != null && DayRun.toFirstDark(planned, known, effort).isLit()) {
      return known;
    }
    DayRun lit = DayRun.firstLit(planned, policies, effort);
    return lit == null ? usual : lit.policy();
  }

  /**
   * How many full batteries more than there are, by type, so that nothing goes dark; none where the
   * usual schedule does not get there with any. They need not be the fewest.
   */
  public Map<Integer, Integer> missing() {
    Map<Integer, Integer> missing = new TreeMap<>();
    List<BatterySpec> there = new ArrayList<>(day.batteries());
    int number = there.stream().mapToInt(BatterySpec::number).max().orElse(0);
    Effort own = new Effort(MOST_EFFORT);
    for (int i = 0; i <= MOST_MISSING; i++) {
      DayRun run = DayRun.toFirstDark(day.with(there, day.chargers()), policies.get(0), own);
      if (run.isLit()) {
        return missing;
      }
      if (run.darkType() == 0 || own.isSpent()) {
        break;
      }
      number++;
      there.add(new BatterySpec(number, run.darkType(), 1));
      missing.merge(run.darkType(), 1, Integer::sum);
    }
    return Map.of();
  }

  /**
   * How few batteries do.
   *
   * @param uncharged by type, without a charger; types that no number helps are left out
   * @param alone by type, where there is enough of every other
   * @param together by type, so that nothing goes dark with these and no more
   * @param proven whether the search came to its end: with fewer it knows no schedule
   */
  public record Fewest(
      Map<Integer, Integer> uncharged,
      Map<Integer, Integer> alone,
      Map<Integer, Integer> together,
      boolean proven) {}

  /**
   * The fewest batteries with which nothing goes dark, all full at call. Where the search came to
   * no end, what the schedule uses may be fewer than it found.
   */
  public Fewest fewest() {
    Fewest found = search.fewest();
    if (found.proven() || Double.isFinite(day.now()) || !plan().isLit()) {
      return found;
    }
    Map<Integer, Integer> used = new TreeMap<>();
    found.together().keySet().forEach(t -> used.put(t, 0));
    Set<Integer> numbers = new HashSet<>();
    plan().events().forEach(e -> numbers.addAll(e.on()));
    day.batteries().stream()
        .filter(b -> numbers.contains(b.number()))
        .forEach(b -> used.merge(b.type(), 1, Integer::sum));
    return FewestSearch.sum(used) < FewestSearch.sum(found.together())
        ? new Fewest(found.uncharged(), found.alone(), used, false)
        : found;
  }
}
