package org.setpower.plan.batteryday.simulation;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.concurrent.ConcurrentHashMap;

/**
 * How few batteries light a day, all full at call.
 *
 * <p>More batteries of a type never hurt. So each way of charging has its fewest: of a type alone
 * from above, by one fewer until something goes dark; of all types together from there upwards, by
 * one more of the type that is missing first. The fewest of the day are those of the best way.
 * Leaving a charger out, or some watts of a supply, is among the ways, so that one more charger or
 * more watts never ask for more.
 */
final class FewestSearch {
  /** Figures looked at in a search; a day of 20 positions takes a fraction. */
  private static final long MOST_EFFORT = 3_000_000;

  /** More than that, so that a number comes even where the effort is spent. */
  private static final long MOST_OVERDRAWN = 1_000_000;

  private static final int MOST_KEPT = 1000;

  /** Results of the searches of the last plans, by all that they depend on. */
  private static final Map<DaySpec.Key, Kept> KEPT = new ConcurrentHashMap<>();

  /** The same of all types together: an edit of the stock or of Today changes none of them. */
  private static final Map<DaySpec.Key, KeptTogether> TOGETHER = new ConcurrentHashMap<>();

  private final DaySpec day;
  private final Effort effort = new Effort(MOST_EFFORT);
  private final Map<Integer, Least> leasts = new TreeMap<>();
  private DayPlanner.Fewest fewest;
  private DayPolicy policy;

  /** The same, for the chargers of the search. */
  private DayPolicy way;

  /**
   * What was found.
   *
   * @param cost what it took, so that a plan calculated again is no better proven
   */
  private record Kept(int number, long cost) {}

  /** The same of all types together, by which way. */
  private record KeptTogether(Map<Integer, Integer> stock, DayPolicy way, long cost) {}

  /** The fewest of a type without a charger and with them; 0 where no number helps. */
  private record Least(int uncharged, int charged) {}

  FewestSearch(DaySpec day) {
    this.day = day;
  }

  /** Whether there are fewer of a type than it needs with all chargers to itself, all full. */
  boolean isShort(List<BatterySpec> batteries) {
    for (int type : types(day)) {
      long there = batteries.stream().filter(b -> b.type() == type).count();
      int needed = least(type).charged;
      if (!effort.isSpent() && (needed == 0 || there < needed)) {
        return true;
      }
    }
    return false;
  }

  /** The way by which the fewest last; null if no number helps. */
  DayPolicy policy() {
    fewest();
    return policy;
  }

  DayPlanner.Fewest fewest() {
    if (fewest == null) {
      fewest = found();
    }
    return fewest;
  }

  private DayPlanner.Fewest found() {
    Map<Integer, Integer> uncharged = new TreeMap<>();
    Map<Integer, Integer> alone = new TreeMap<>();
    for (int type : types(day)) {
      Least own = least(type);
      if (own.uncharged > 0) {
        uncharged.put(type, own.uncharged);
        alone.put(type, own.charged);
      }
    }
    Map<Integer, Integer> together = uncharged;
    if (!uncharged.isEmpty()) {
      together = keptTogether(only(List.copyOf(alone.keySet()), day.chargers()), alone, uncharged);
    }
    return new DayPlanner.Fewest(uncharged, alone, together, !effort.isSpent());
  }

  private Least least(int type) {
    return leasts.computeIfAbsent(
        type,
        t -> {
          int uncharged = leastOf(t, List.of(), fresh(t));
          if (uncharged == 0) {
            uncharged = leastOf(t, List.of(), DayPlanner.MOST_BATTERIES);
          }
          int charged = uncharged > 0 ? leastOf(t, day.chargers(), uncharged) : 0;
          return new Least(uncharged, charged > 0 ? charged : uncharged);
        });
  }

  /** Batteries of a type if each is used once, from full to empty. */
  private int fresh(int type) {
    int sum = 0;
    for (UnitWork unit : day.units()) {
      if (unit.spec().type() == type) {
        sum += unit.fresh(DayPlanner.MOST_BATTERIES);
      }
    }
    return Math.min(DayPlanner.MOST_BATTERIES, sum);
  }

  /**
   * The fewest of a type where nothing of another type competes for chargers and watts: the others
   * are enough without a charger. 0 if none help. An edit changes few of them, so those of the last
   * plans are kept.
   */
  private int leastOf(int type, List<ChargerSpec> chargers, int most) {
    DaySpec own = only(List.of(type), chargers);
    DaySpec.Key key = own.key(most);
    Kept kept = KEPT.get(key);
    if (kept != null && kept.cost() < effort.left()) {
      effort.spend(kept.cost());
      return kept.number();
    }
    long before = effort.left();
    int number = smallest(own, type, most);
    if (!effort.isSpent()) {
      if (KEPT.size() >= MOST_KEPT) {
        KEPT.clear();
      }
      KEPT.put(key, new Kept(number, before - effort.left()));
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

  /**
   * The number of a type with which a schedule is found, and with one fewer none; 0 if none is
   * found with any. Batteries that a schedule never touches change nothing in it: so the next
   * number tried is one fewer than it touches. A way that failed with more is not tried with fewer.
   */
  private int smallest(DaySpec own, int type, int most) {
    int least = atOnce(own);
    int smallest = 0;
    int number = most;
    List<DayRun> dark = new ArrayList<>();
    for (DayPolicy way : DayPolicy.all(own)) {
      while (number >= least && dark.stream().noneMatch(r -> r.isSameBy(way))) {
        if (effort.isSpent() && smallest + dark.size() > 0) {
          return smallest;
        }
        DayRun run =
            DayRun.toFirstDark(own.with(full(Map.of(type, number)), own.chargers()), way, effort);
        if (run.isLit()) {
          smallest = run.touched(type);
          number = smallest - 1;
        } else {
          dark.add(run);
        }
      }
    }
    return smallest;
  }

  /** The most batteries of a day of one type that are on at a time. */
  private static int atOnce(DaySpec own) {
    int most = 0;
    for (UnitWork at : own.units()) {
      int sum = 0;
      for (UnitWork unit : own.units()) {
        int least = unit.spec().isHotSwap() ? 1 : unit.spec().batteries();
        sum += unit.isOn(at.from()) ? least : 0;
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

  static int sum(Map<Integer, Integer> stock) {
    return stock.values().stream().mapToInt(n -> n).sum();
  }

  private Map<Integer, Integer> keptTogether(
      DaySpec all, Map<Integer, Integer> alone, Map<Integer, Integer> enough) {
    DaySpec.Key key = all.key(0);
    KeptTogether kept = TOGETHER.get(key);
    if (kept == null || kept.cost() >= effort.left()) {
      long before = effort.left();
      Map<Integer, Integer> stock = together(all, alone, enough);
      kept = new KeptTogether(stock, way, before - effort.left());
      if (!effort.isSpent()) {
        if (TOGETHER.size() >= MOST_KEPT) {
          TOGETHER.clear();
        }
        TOGETHER.put(key, kept);
      }
    } else {
      effort.spend(kept.cost());
    }
    policy = kept.way() == null ? null : ofDay(kept.way(), all.chargers());
    return kept.stock();
  }

  /**
   * The fewest in all, none of a type below what it needs alone.
   *
   * @param enough without a charger
   */
  private Map<Integer, Integer> together(
      DaySpec all, Map<Integer, Integer> alone, Map<Integer, Integer> enough) {
    Map<Integer, Integer> best = enough;
    Map<Map<Integer, Integer>, List<DayRun>> dark = new HashMap<>();
    for (DayPolicy tried : DayPolicy.all(all)) {
      Map<Integer, Integer> stock = alone;
      while (stock != null && (way == null || sum(stock) < sum(best))) {
        if (effort.left() <= (way == null ? -MOST_OVERDRAWN : 0)) {
          return best;
        }
        List<DayRun> before = dark.computeIfAbsent(stock, s -> new ArrayList<>());
        DayRun run = before.stream().filter(r -> r.isSameBy(tried)).findFirst().orElse(null);
        if (run == null) {
          run = DayRun.toFirstDark(all.with(full(stock), all.chargers()), tried, effort);
          if (run.isLit()) {
            best = stock;
            way = tried;
            break;
          }
          before.add(run);
        }
        stock = raised(stock, run.darkType(), enough);
      }
    }
    return best;
  }

  /** A way for all chargers of the day; those that take no battery of the day are never asked. */
  private DayPolicy ofDay(DayPolicy way, List<ChargerSpec> asked) {
    boolean[] used = new boolean[day.chargers().size()];
    for (int i = 0; i < used.length; i++) {
      int place = asked.indexOf(day.chargers().get(i));
      used[i] = place < 0 || way.used()[place];
    }
    return new DayPolicy(way.toBreaks(), way.chargePartUsed(), used, way.share(), way.toPowerEnd());
  }

  /** One more of a type; null where it is not that which helps. */
  private static Map<Integer, Integer> raised(
      Map<Integer, Integer> stock, int type, Map<Integer, Integer> enough) {
    if (type == 0 || stock.get(type) >= enough.get(type)) {
      return null;
    }
    Map<Integer, Integer> raised = new TreeMap<>(stock);
    raised.put(type, stock.get(type) + 1);
    return raised;
  }
}
