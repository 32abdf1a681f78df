package org.setpower.supply;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.LongStream;
import org.setpower.base.EvaluationException;

/**
 * Which leg each load hangs on, so that the highest leg is as low as it can be.
 *
 * @param legs for each load the set of its legs: bit 0 for leg 1, bit 1 for leg 2, bit 2 for leg 3
 * @param amps of each leg, what was taken before included
 * @param bound no plan has a highest leg below this
 * @param proven whether no plan is better by more than {@link #TOLERANCE}
 */
public record LegPlan(List<Integer> legs, List<Double> amps, double bound, boolean proven) {
  /** A plan counts as the best if no other is better by this share of the mean leg. */
  public static final double TOLERANCE = 1e-4;

  /** Up to this many loads the search takes the time that a proof nearly always needs. */
  public static final int PROVEN_LOADS = 40;

  /** More loads than hang on one supply. */
  public static final int MOST_LOADS = 1000;

  /** The most legs a supply has. */
  public static final int MOST_LEGS = 3;

  /**
   * One load.
   *
   * @param amps on each of its legs
   * @param span how many legs it hangs across: 1 line to neutral, 2 line to line, 3 three-phase
   */
  public record Load(double amps, int span) {}

  /**
   * The best plan: branch and bound, the largest load first, each on the legs that carry least.
   * Deterministic. Amps of loads across two legs are added as numbers, which is never too little.
   *
   * @param loads what hangs on the supply
   * @param taken A that each leg carries already
   */
  public static LegPlan of(List<Load> loads, double... taken) {
    if (loads.size() > MOST_LOADS) {
      throw new EvaluationException(SupplyErrorCode.TOO_MANY_LOADS, loads.size(), MOST_LOADS);
    }
    for (Load load : loads) {
      if (load.span > taken.length) {
        throw new EvaluationException(SupplyErrorCode.TOO_FEW_LEGS, load.span, taken.length);
      }
    }
    Search search = new Search(loads, taken);
    search.run();
    return search.plan();
  }

  /** Highest leg, A. */
  public double highest() {
    return amps.stream().mapToDouble(a -> a).max().orElse(0);
  }

  /** The legs of a load as the digits of a number: 2 is leg 2, 13 are legs 1 and 3. */
  public static double digits(int set) {
    int digits = 0;
    for (int leg = 0; leg < MOST_LEGS; leg++) {
      if ((set >> leg & 1) == 1) {
        digits = 10 * digits + leg + 1;
      }
    }
    return digits;
  }

  /**
   * The search, with the state that it works on. Amounts are whole quanta, so that sums are exact.
   * The largest loads are placed one by one; the smallest, for which every way to place them is
   * listed once, are looked up together.
   */
  static final class Search {
    private static final int DIGITS = 9;

    /** Amps that count as nothing; below it powers of ten run out. */
    private static final double LEAST = 1e-30;

    static final int LISTED_LOADS = 8;
    static final int EFFORT_OF_A_STEP = 20;
    static final long EFFORT_OF_A_TRY = 5_000_000;
    private static final long MOST_EFFORT = 400_000_000;
    static final long MOST_EFFORT_OF_MANY = 60_000_000;

    private final List<Load> loads;
    private final double[] carried;
    private final int legCount;
    private final double quantum;
    private final long[] taken;
    private final int[] order;
    private final long[] amps;
    private final int[] span;
    private final long[] remaining;
    private final int placed;
    private final Rest rest;
    private final double bound;
    private final long tolerance;

    private final long[] leg;
    private final int[] choice;
    private int[] best = new int[0];
    private long bestHighest = Long.MAX_VALUE / 4;
    private boolean fullestFirst;
    private boolean proven;
    private long steps;
    private long lookedUp;
    private long effortEnd;

    Search(List<Load> loads, double[] carried) {
      this.loads = loads;
      this.carried = carried;
      legCount = carried.length;
      int n = loads.size();
      double total = Arrays.stream(carried).sum();
      for (Load load : loads) {
        total += load.amps * load.span;
      }
      quantum =
          total > 0 ? Math.max(LEAST, Math.pow(10, Math.floor(Math.log10(total)) - DIGITS)) : 1;
      taken = Arrays.stream(carried).mapToLong(this::quanta).toArray();
      order =
          IntStream.range(0, n)
              .boxed()
              .sorted(
                  Comparator.<Integer>comparingDouble(i -> -loads.get(i).amps)
                      .thenComparingInt(i -> -loads.get(i).span)
                      .thenComparingInt(i -> i))
              .mapToInt(i -> i)
              .toArray();
      amps = Arrays.stream(order).mapToLong(i -> quanta(loads.get(i).amps)).toArray();
      span = Arrays.stream(order).map(i -> loads.get(i).span).toArray();
      remaining = new long[n + 1];
      for (int i = n - 1; i >= 0; i--) {
        remaining[i] = remaining[i + 1] + amps[i] * span[i];
      }
      placed = Math.max(0, n - LISTED_LOADS);
      rest = new Rest(legCount, amps, span, placed);
      bound = bound();
      tolerance = (long) (TOLERANCE * (LongStream.of(taken).sum() + remaining[0]) / legCount);
      leg = taken.clone();
      choice = new int[n];
    }

    private long quanta(double amount) {
      return Math.round(amount / quantum);
    }

    /**
     * No plan is below this: what the largest pieces force together, what the numbers of pieces a
     * leg force, and no leg ends between the steps that all amounts share.
     */
    private double bound() {
      long[] pieces =
          IntStream.range(0, amps.length)
              .flatMap(i -> IntStream.generate(() -> i).limit(span[i]))
              .mapToLong(i -> amps[i])
              .toArray();
      long[] filled = taken.clone();
      Arrays.sort(filled);
      double level = Math.max(filled[legCount - 1], byCount(pieces, filled));
      for (int last = 0, together = 1; last < pieces.length; last += legCount, together++) {
        long sum = filled[0];
        for (int i = last; i > last - together; i--) {
          sum += pieces[i];
        }
        level = Math.max(level, sum);
      }
      return attainable((long) Math.ceil(level - 1e-3));
    }

    /**
     * The lowest highest leg, from a level on, that holds everything: what is added to a leg is a
     * multiple of the step that all loads share.
     */
    private long attainable(long level) {
      long step = LongStream.of(amps).reduce(0, Search::gcd);
      if (step == 0) {
        return level;
      }
      long all = LongStream.of(taken).sum() + remaining[0];
      long end = endOfALeg(level, step);
      while (held(end, step) < all) {
        end = endOfALeg(end + 1, step);
      }
      return end;
    }

    /** The lowest amount from a level on at which a leg can end. */
    private long endOfALeg(long level, long step) {
      return LongStream.of(taken)
          .map(t -> t + (level - t + step - 1) / step * step)
          .min()
          .orElse(0);
    }

    /** What the legs hold when none is above a level. */
    private long held(long level, long step) {
      return LongStream.of(taken).map(t -> t + (level - t) / step * step).sum();
    }

    /**
     * Whatever the numbers of pieces on the legs are, the j legs with most of them hold at least
     * that many of the smallest pieces, and the highest of them at least the mean.
     */
    private double byCount(long[] pieces, long[] filled) {
      int n = pieces.length;
      long[] smallest = new long[n + 1];
      for (int i = 1; i <= n; i++) {
        smallest[i] = smallest[i - 1] + pieces[n - i];
      }
      double mean = (smallest[n] + LongStream.of(filled).sum()) / (double) legCount;
      double least = Double.POSITIVE_INFINITY;
      for (int a = (n + legCount - 1) / legCount; a <= n; a++) {
        double one = smallest[a] + filled[0];
        if (legCount < 3 || one >= least) {
          return Math.min(least, Math.max(one, mean));
        }
        for (int b = (n - a + 1) / 2; b <= Math.min(a, n - a); b++) {
          double two = (smallest[a + b] + filled[0] + filled[1]) / 2.0;
          least = Math.min(least, Math.max(one, Math.max(two, mean)));
        }
      }
      return least;
    }

    private static long gcd(long a, long b) {
      return b == 0 ? a : gcd(b, a % b);
    }

    /** Spreads the loads, then packs the legs one after the other, then searches to the end. */
    void run() {
      search(false, EFFORT_OF_A_TRY);
      search(true, EFFORT_OF_A_TRY);
      search(false, amps.length <= PROVEN_LOADS ? MOST_EFFORT : MOST_EFFORT_OF_MANY);
      proven = effort() < effortEnd || isGoodEnough();
      even();
    }

    private void search(boolean packs, long most) {
      fullestFirst = packs;
      effortEnd = effort() + most;
      place(0, 0);
    }

    /**
     * Evens out the legs below the highest one: single loads move, or two change places, as long as
     * that lowers the sum of squares. An amount then goes from one leg to a lower one and leaves it
     * lower than the first was, so that no leg gets higher than the highest.
     */
    private void even() {
      long[] legs = taken.clone();
      for (int i = 0; i < best.length; i++) {
        add(legs, best[i], amps[i]);
      }
      boolean changed = true;
      while (changed) {
        changed = false;
        for (int i = 0; i < best.length; i++) {
          for (int set = 1; set < 1 << legCount; set++) {
            if (Integer.bitCount(set) == span[i]) {
              changed |= improves(legs, i, set, -1);
            }
          }
          for (int other = i + 1; other < best.length; other++) {
            changed |= span[i] == span[other] && improves(legs, i, best[other], other);
          }
        }
      }
    }

    /** Moves load i to the set, and the other one (if any) to the set of i, if that is better. */
    private boolean improves(long[] legs, int i, int set, int other) {
      int from = best[i];
      if (from == set) {
        return false;
      }
      long[] moved = legs.clone();
      add(moved, from, -amps[i]);
      add(moved, set, amps[i]);
      if (other >= 0) {
        add(moved, set, -amps[other]);
        add(moved, from, amps[other]);
      }
      if (squares(moved) >= squares(legs)) {
        return false;
      }
      System.arraycopy(moved, 0, legs, 0, legCount);
      best[i] = set;
      if (other >= 0) {
        best[other] = from;
      }
      return true;
    }

    private static double squares(long[] legs) {
      return LongStream.of(legs).mapToDouble(a -> (double) a * a).sum();
    }

    LegPlan plan() {
      int[] sets = new int[order.length];
      for (int i = 0; i < order.length; i++) {
        sets[order[i]] = best[i];
      }
      rename(sets);
      double[] legs = carried.clone();
      for (int i = 0; i < sets.length; i++) {
        for (int j = 0; j < legCount; j++) {
          legs[j] += (sets[i] >> j & 1) * loads.get(i).amps;
        }
      }
      double lowest = proven ? Math.max(bound, bestHighest - tolerance) : bound;
      return new LegPlan(
          Arrays.stream(sets).boxed().toList(),
          Arrays.stream(legs).boxed().toList(),
          lowest * quantum,
          proven);
    }

    /** Of legs that carry the same before, the first load gets the first, and so on. */
    private void rename(int[] sets) {
      int[] newName = new int[legCount];
      Arrays.fill(newName, -1);
      int given = 0;
      for (int set : Arrays.copyOf(sets, sets.length + 1)) {
        for (int j = 0; j < legCount; j++) {
          boolean last = set == 0;
          if ((last || (set >> j & 1) == 1) && newName[j] < 0) {
            int name = 0;
            while (taken[name] != taken[j] || (given >> name & 1) == 1) {
              name++;
            }
            newName[j] = name;
            given |= 1 << name;
          }
        }
      }
      for (int i = 0; i < sets.length; i++) {
        int renamed = 0;
        for (int j = 0; j < legCount; j++) {
          renamed |= (sets[i] >> j & 1) << newName[j];
        }
        sets[i] = renamed;
      }
    }

    /** A no plan is below, known before the search. */
    double boundAmps() {
      return bound * quantum;
    }

    /** How often a load was placed, the beginnings counted in. */
    long steps() {
      return steps;
    }

    /** What it took so far. */
    long effort() {
      return EFFORT_OF_A_STEP * steps + lookedUp;
    }

    private boolean isGoodEnough() {
      return bestHighest <= bound + tolerance;
    }

    /** Places load i; equal loads take their sets in rising order, so that none is tried twice. */
    private void place(int i, int least) {
      steps++;
      if (effort() >= effortEnd) {
        return;
      }
      if (i == placed) {
        lookUp();
        return;
      }
      boolean sameAsBefore = i > 0 && amps[i] == amps[i - 1] && span[i] == span[i - 1];
      int tried = 0;
      while (!isGoodEnough()) {
        int set = next(span[i], tried, sameAsBefore ? least : 0, !sameAsBefore);
        if (set == 0) {
          return;
        }
        tried |= 1 << set;
        if (highest(leg, set) + amps[i] < limit()) {
          choice[i] = set;
          add(leg, set, amps[i]);
          place(i + 1, set);
          add(leg, set, -amps[i]);
        }
      }
    }

    /** Where a leg must end: below the best plan, when packing at the bound. */
    private double limit() {
      double better = bestHighest - tolerance;
      return fullestFirst ? Math.min(better, bound + tolerance + 1) : better;
    }

    /** The best way to place the rest, if it is better than what was found. */
    private void lookUp() {
      int found = rest.best(leg, bestHighest - tolerance);
      lookedUp += rest.seen();
      if (found >= 0) {
        best = choice.clone();
        rest.choices(found, best);
        long[] legs = leg.clone();
        for (int i = placed; i < best.length; i++) {
          add(legs, best[i], amps[i]);
        }
        bestHighest = LongStream.of(legs).max().orElse(0);
      }
    }

    private static void add(long[] legs, int set, long amount) {
      for (int j = 0; j < legs.length; j++) {
        if ((set >> j & 1) == 1) {
          legs[j] += amount;
        }
      }
    }

    private static long highest(long[] legs, int set) {
      long highest = 0;
      for (int j = 0; j < legs.length; j++) {
        if ((set >> j & 1) == 1) {
          highest = Math.max(highest, legs[j]);
        }
      }
      return highest;
    }

    /** The set of legs to try next: the one that carries least, or most; 0 when none is left. */
    private int next(int size, int tried, int least, boolean skipTwins) {
      int next = 0;
      long lowest = Long.MAX_VALUE;
      for (int set = Math.max(1, least); set < 1 << legCount; set++) {
        if (Integer.bitCount(set) != size
            || (tried >> set & 1) == 1
            || (skipTwins && size == 1 && isTwinOfTried(set, tried))) {
          continue;
        }
        long sum = 0;
        for (int j = 0; j < legCount; j++) {
          sum += (set >> j & 1) * leg[j];
        }
        long rank = fullestFirst ? -sum : sum;
        if (rank < lowest) {
          lowest = rank;
          next = set;
        }
      }
      return next;
    }

    /** Whether a leg that carries the same was tried for this load: it would give the same. */
    private boolean isTwinOfTried(int set, int tried) {
      long own = leg[Integer.numberOfTrailingZeros(set)];
      for (int j = 0; j < legCount; j++) {
        if ((tried >> (1 << j) & 1) == 1 && leg[j] == own) {
          return true;
        }
      }
      return false;
    }
  }

  /** Every way to place the smallest loads, by what leg 1 gets from it. */
  static final class Rest {
    private final int[] span;
    private final int from;
    private final int legCount;
    private final long total;
    private final long[] first;
    private final long[] second;
    private final int[] code;
    private int seen;

    Rest(int legCount, long[] amps, int[] span, int from) {
      this.legCount = legCount;
      this.span = span;
      this.from = from;
      List<long[]> ways = new ArrayList<>();
      ways.add(new long[3]);
      long all = 0;
      for (int i = from; i < amps.length; i++) {
        ways = with(ways, amps[i], sets(span[i]));
        all += amps[i] * span[i];
      }
      total = all;
      first = ways.stream().mapToLong(w -> w[0]).toArray();
      second = ways.stream().mapToLong(w -> w[1]).toArray();
      code = ways.stream().mapToInt(w -> (int) w[2]).toArray();
    }

    /** The ways with one load more, sorted, those that load the legs alike only once. */
    private static List<long[]> with(List<long[]> ways, long amps, int[] sets) {
      List<long[]> more = new ArrayList<>(ways.size() * sets.length);
      for (long[] way : ways) {
        for (int s = 0; s < sets.length; s++) {
          more.add(
              new long[] {
                way[0] + (sets[s] & 1) * amps,
                way[1] + (sets[s] >> 1 & 1) * amps,
                way[2] * sets.length + s
              });
        }
      }
      more.sort(Comparator.<long[]>comparingLong(w -> w[0]).thenComparingLong(w -> w[1]));
      List<long[]> once = new ArrayList<>(more.size());
      long[] last = null;
      for (long[] way : more) {
        if (last == null || way[0] != last[0] || way[1] != last[1]) {
          once.add(way);
          last = way;
        }
      }
      return once;
    }

    private int[] sets(int size) {
      return IntStream.range(1, 1 << legCount).filter(s -> Integer.bitCount(s) == size).toArray();
    }

    /** The way with the lowest highest leg, if that is below the limit; −1 if none is. */
    int best(long[] leg, long limit) {
      long l1 = leg[0];
      long l2 = legCount > 1 ? leg[1] : 0;
      long l3 = legCount > 2 ? leg[2] : 0;
      int found = -1;
      long highest = limit;
      long least = l3 + total - limit - (limit - l2);
      int start = lowerBound(legCount > 2 ? least : 0);
      seen = 0;
      for (int i = start; i < first.length; i++, seen++) {
        long h1 = l1 + first[i];
        if (h1 >= highest) {
          break;
        }
        long h2 = l2 + second[i];
        long h3 = l3 + (legCount > 2 ? total - first[i] - second[i] : 0);
        long h = Math.max(h1, Math.max(h2, h3));
        if (h < highest) {
          highest = h;
          found = i;
        }
      }
      return found;
    }

    /** How many ways the last look-up went through. */
    int seen() {
      return seen;
    }

    private int lowerBound(long value) {
      int low = 0;
      int high = first.length;
      while (low < high) {
        int middle = (low + high) >>> 1;
        if (first[middle] < value) {
          low = middle + 1;
        } else {
          high = middle;
        }
      }
      return low;
    }

    /** Writes the sets of a way into the plan. */
    void choices(int way, int[] sets) {
      int left = code[way];
      for (int i = sets.length - 1; i >= from; i--) {
        int[] possible = sets(span[i]);
        sets[i] = possible[left % possible.length];
        left /= possible.length;
      }
    }
  }
}
