package org.setpower.plan.batteryday.simulation;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;

/**
 * Plans a day: of the schedules that the rules allow, the first in which nothing goes dark; and how
 * few batteries of each type such a schedule needs.
 *
 * <p>The fewest are found by trying: with one fewer of the type no schedule is among those tried,
 * whatever there is of other types. Leaving a charger out, or some watts of a supply, is among what
 * is tried, so that one more charger or more watts never ask for more.
 */
public final class DayPlanner {
  /** A fleet that no set has. */
  public static final int MOST_BATTERIES = 400;

  /** Hours; a battery that works for less is no plan. */
  public static final double SHORTEST = DayRun.SHORTEST;

  private static final int MOST_SUBSETS = 16;

  private static final int MOST_MORE = 4;
  private static final int MOST_AFTERNOONS = 40;

  /** Figures looked at in a search; a day of 20 positions takes a fraction. */
  private static final long MOST_EFFORT = 3_000_000;

  private final DaySpec day;
  private final List<DayPolicy> policies;
  private final Effort effort = new Effort(MOST_EFFORT);
  private final Map<Integer, Least> leasts = new TreeMap<>();

  /** The fewest of a type without a charger and with them; 0 where no number helps. */
  private record Least(int uncharged, int charged) {}

  public DayPlanner(DaySpec day) {
    this.day = day;
    policies = policies(day);
  }

  private static List<DayPolicy> policies(DaySpec day) {
    List<DayPolicy> all = new ArrayList<>();
    List<boolean[]> subsets = subsets(day.chargers());
    for (boolean[] used : subsets) {
      add(all, day, used, 1);
    }
    for (double share : shares(day)) {
      add(all, day, subsets.get(0), share);
    }
    return List.copyOf(all);
  }

  /** The ways of one choice of chargers that differ on this day. */
  private static void add(List<DayPolicy> all, DaySpec day, boolean[] used, double share) {
    boolean charges = left(used) < used.length;
    for (int i = 0; i < 4; i++) {
      boolean toBreaks = i < 2;
      boolean partUsed = i % 2 == 0;
      if ((toBreaks || !day.breaks().isEmpty()) && (partUsed || charges)) {
        all.add(new DayPolicy(toBreaks, partUsed, used, share));
      }
    }
  }

  /** Which chargers are used: all, then fewer; of chargers alike only how many. */
  private static List<boolean[]> subsets(List<ChargerSpec> chargers) {
    List<List<Integer>> groups = new ArrayList<>();
    for (int i = 0; i < chargers.size(); i++) {
      ChargerSpec charger = chargers.get(i);
      List<Integer> group = null;
      for (List<Integer> known : groups) {
        group = chargers.get(known.get(0)).isLike(charger) ? known : group;
      }
      if (group == null) {
        group = new ArrayList<>();
        groups.add(group);
      }
      group.add(i);
    }
    List<boolean[]> all = new ArrayList<>(List.of(DayPolicy.all(chargers.size()).used()));
    for (List<Integer> group : groups) {
      List<boolean[]> before = List.copyOf(all);
      for (int without = 1; without <= group.size() && all.size() < MOST_SUBSETS; without++) {
        for (boolean[] used : before) {
          boolean[] fewer = used.clone();
          for (int k = 0; k < without; k++) {
            fewer[group.get(group.size() - 1 - k)] = false;
          }
          all.add(fewer);
        }
      }
    }
    all.sort(Comparator.comparingInt(DayPlanner::left));
    return all;
  }

  private static int left(boolean[] used) {
    int left = 0;
    for (boolean one : used) {
      left += one ? 0 : 1;
    }
    return left;
  }

  /** Parts of the watts that let fewer channels charge at a time. */
  private static List<Double> shares(DaySpec day) {
    List<Double> shares = new ArrayList<>();
    for (SupplySpec supply : day.supplies()) {
      for (ChargerSpec charger : day.chargers()) {
        for (ChargerSpec.Rate rate : charger.types().values()) {
          boolean limited = charger.supply() == supply.row() && !Double.isInfinite(supply.watts());
          for (int n = 1; limited && n * rate.watts() < supply.watts() && n <= 8; n++) {
            shares.add(n * rate.watts() / supply.watts());
          }
        }
      }
    }
    return shares.stream().distinct().limit(6).toList();
  }

  /**
   * The day as it is planned. Before the hour of planning again it does not depend on what is found
   * then.
   */
  public DayOutcome plan() {
    DaySpec planned =
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
            day.supplies(),
            Double.POSITIVE_INFINITY,
            List.of());
    DayPolicy morning = first(planned);
    DayOutcome outcome = DayRun.of(day, morning, morning);
    if (Double.isInfinite(day.now()) || outcome.isLit()) {
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
    List<SupplySpec> fed =
        day.supplies().stream()
            .map(
                s ->
                    s.row() == supply
                        ? new SupplySpec(s.row(), Double.POSITIVE_INFINITY, s.wattHours())
                        : s)
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
    DayRun lit = firstLit(planned, policies.subList(0, 1));
    if (lit == null && !isShort()) {
      lit = firstLit(planned, policies);
    }
    return lit == null ? policies.get(0) : lit.policy();
  }

  /** Whether there are fewer of a type than it needs with all chargers to itself, all full. */
  private boolean isShort() {
    for (int type : types(day)) {
      long there = day.batteries().stream().filter(b -> b.type() == type).count();
      int needed = least(type).charged;
      if (!effort.isSpent() && (needed == 0 || there < needed)) {
        return true;
      }
    }
    return false;
  }

  private Least least(int type) {
    return leasts.computeIfAbsent(
        type,
        t -> {
          int uncharged = leastOf(t, List.of(), MOST_BATTERIES);
          int charged = uncharged > 0 ? leastOf(t, day.chargers(), uncharged) : 0;
          return new Least(uncharged, charged > 0 ? charged : uncharged);
        });
  }

  /**
   * The first run in which nothing goes dark; null without one, or where the effort is spent. A
   * policy by which a day would run as it did before is not tried.
   */
  private DayRun firstLit(DaySpec tryOut, List<DayPolicy> tried) {
    List<DayRun> dark = new ArrayList<>();
    for (DayPolicy policy : tried) {
      if (effort.isSpent()) {
        return null;
      }
      if (dark.stream().noneMatch(r -> r.isSameBy(policy))) {
        DayRun run = DayRun.toFirstDark(tryOut, policy, effort);
        if (run.isLit()) {
          return run;
        }
        dark.add(run);
      }
    }
    return null;
  }

  /**
   * How few batteries do.
   *
   * @param uncharged by type, without a charger; types that no number helps are left out
   * @param alone by type, where there is enough of every other
   * @param together by type, so that nothing goes dark with these and no more
   * @param proven whether the search came to its end
   */
  public record Fewest(
      Map<Integer, Integer> uncharged,
      Map<Integer, Integer> alone,
      Map<Integer, Integer> together,
      boolean proven) {}

  /** The fewest batteries with which nothing goes dark, all full at call. */
  public Fewest fewest() {
    Map<Integer, Integer> uncharged = new TreeMap<>();
    Map<Integer, Integer> least = new TreeMap<>();
    for (int type : types(day)) {
      Least own = least(type);
      if (own.uncharged > 0) {
        uncharged.put(type, own.uncharged);
        least.put(type, own.charged);
      }
    }
    DaySpec all = only(List.copyOf(least.keySet()), day.chargers());
    List<DayPolicy> tried = policies(all);
    if (firstLit(all.with(full(least), all.chargers()), tried) != null) {
      return new Fewest(uncharged, least, least, !effort.isSpent());
    }
    Map<Integer, Integer> alone = new TreeMap<>();
    uncharged.forEach(
        (type, most) -> {
          DaySpec near = only(sharing(type, uncharged.keySet()), day.chargers());
          int number = smallest(near, policies(near), type, uncharged, least.get(type));
          alone.put(type, number > 0 ? Math.min(number, most) : most);
        });
    return new Fewest(uncharged, alone, together(all, tried, alone, uncharged), !effort.isSpent());
  }

  /**
   * The fewest of a type where nothing of another type competes for chargers and watts; 0 if none
   * help. An edit changes few of them, so those of the last plans are kept.
   */
  private int leastOf(int type, List<ChargerSpec> chargers, int most) {
    DaySpec own = only(List.of(type), chargers);
    KeptSearch.Key key = KeptSearch.key(own, type, most);
    KeptSearch.Found kept = KeptSearch.get(key);
    if (kept != null && kept.cost() < effort.left()) {
      effort.spend(kept.cost());
      return kept.number();
    }
    long before = effort.left();
    int number = smallest(own, policies(own), type, Map.of(type, most), 1);
    if (!effort.isSpent()) {
      KeptSearch.keep(key, new KeptSearch.Found(number, before - effort.left()));
    }
    return number;
  }

  private static List<Integer> types(DaySpec day) {
    return day.units().stream().map(u -> u.spec().type()).distinct().sorted().toList();
  }

  /** The units of some types, with the chargers that take any of these. */
  private DaySpec only(List<Integer> types, List<ChargerSpec> chargers) {
    return new DaySpec(
        day.call(),
        day.until(),
        day.air(),
        day.shelf(),
        day.breaks(),
        day.near(),
        day.units().stream().filter(u -> types.contains(u.spec().type())).toList(),
        List.of(),
        chargers.stream()
            .filter(c -> c.types().keySet().stream().anyMatch(types::contains))
            .toList(),
        day.supplies(),
        Double.POSITIVE_INFINITY,
        List.of());
  }

  /** The types that compete with a type for chargers or watts, and the type itself. */
  private List<Integer> sharing(int type, Set<Integer> all) {
    Set<Integer> sharing = new TreeSet<>(Set.of(type));
    int before = 0;
    while (before < sharing.size()) {
      before = sharing.size();
      Set<Integer> supplies = new TreeSet<>();
      for (ChargerSpec charger : day.chargers()) {
        if (charger.types().keySet().stream().anyMatch(sharing::contains)) {
          sharing.addAll(charger.types().keySet());
          supplies.add(charger.supply());
        }
      }
      for (ChargerSpec charger : day.chargers()) {
        if (isLimited(charger.supply()) && supplies.contains(charger.supply())) {
          sharing.addAll(charger.types().keySet());
        }
      }
    }
    sharing.retainAll(all);
    return List.copyOf(sharing);
  }

  private boolean isLimited(int supply) {
    return day.supplies().stream()
        .anyMatch(
            s ->
                s.row() == supply
                    && !(Double.isInfinite(s.watts()) && Double.isInfinite(s.wattHours())));
  }

  /**
   * The number of a type with which a schedule is found, and with one fewer none; 0 if none is
   * found with any. Batteries that a schedule never touches change nothing in it: so the next
   * number tried is one fewer than it touches.
   *
   * @param enough batteries by type, the most that are tried
   * @param known fewer are known not to do
   */
  private int smallest(
      DaySpec near, List<DayPolicy> tried, int type, Map<Integer, Integer> enough, int known) {
    Map<Integer, Integer> stock = new TreeMap<>(enough);
    stock.keySet().retainAll(types(near));
    int least = Math.max(known, atOnce(near, type));
    int smallest = 0;
    int number = enough.get(type);
    while (number >= least) {
      stock.put(type, number);
      DayRun lit = firstLit(near.with(full(stock), near.chargers()), tried);
      if (lit == null) {
        return smallest;
      }
      smallest = lit.touched(type);
      number = smallest - 1;
    }
    return smallest;
  }

  /** The most batteries of a type that are on at a time. */
  private static int atOnce(DaySpec near, int type) {
    int most = 0;
    for (UnitWork at : near.units()) {
      int sum = 0;
      for (UnitWork unit : near.units()) {
        boolean on = unit.spec().type() == type && unit.isOn(at.from());
        int least = unit.spec().isHotSwap() ? 1 : unit.spec().batteries();
        sum += on ? least : 0;
      }
      most = Math.max(most, sum);
    }
    return most;
  }

  /** Batteries by type, all full. */
  private static List<BatterySpec> full(Map<Integer, Integer> stock) {
    List<BatterySpec> full = new ArrayList<>();
    stock.forEach(
        (type, number) -> {
          for (int i = 0; i < number; i++) {
            full.add(new BatterySpec(full.size() + 1, type, 1));
          }
        });
    return full;
  }

  /** The fewest in all, none of a type below what it needs alone. */
  private Map<Integer, Integer> together(
      DaySpec all,
      List<DayPolicy> tried,
      Map<Integer, Integer> alone,
      Map<Integer, Integer> enough) {
    List<Map<Integer, Integer>> level = List.of(alone);
    for (int more = 0; more <= MOST_MORE; more++) {
      Set<Map<Integer, Integer>> next = new LinkedHashSet<>();
      for (Map<Integer, Integer> stock : level) {
        if (firstLit(all.with(full(stock), all.chargers()), tried) != null) {
          return stock;
        }
        stock.forEach(
            (type, number) -> {
              if (number < enough.get(type)) {
                Map<Integer, Integer> raised = new TreeMap<>(stock);
                raised.put(type, number + 1);
                next.add(raised);
              }
            });
      }
      level = List.copyOf(next);
    }
    return enough;
  }
}
