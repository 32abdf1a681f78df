package org.setpower.supply;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.IntStream;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.setpower.supply.LegPlan.Load;
import org.setpower.supply.LegPlan.Rest;
import org.setpower.supply.LegPlan.Search;

/** The parts of the search for legs, each against hand-made figures or against trying all. */
class LegSearchTest {
  private static final double[] EMPTY = {0, 0, 0};

  /** Ways to place {@link Search#LISTED_LOADS} loads on three legs: 3⁸. */
  private static final long MOST_WAYS = 6561;

  private static List<Load> loads(double... amps) {
    return Arrays.stream(amps).mapToObj(a -> new Load(a, 1)).toList();
  }

  private static List<Load> with(List<Load> some, Load... others) {
    List<Load> all = new ArrayList<>(some);
    all.addAll(List.of(others));
    return all;
  }

  private static Search searched(List<Load> loads, double... taken) {
    Search search = new Search(loads, taken);
    search.run();
    return search;
  }

  // --- the bound ---------------------------------------------------------------------------------

  private static void assertBound(double amps, List<Load> loads, double... taken) {
    assertThat(new Search(loads, taken).boundAmps()).isCloseTo(amps, within(1e-6));
  }

  /** Of four pieces on three legs two share one: 100 + 101; of seven, three: 3 · 10. */
  @Example
  void large_pieces_share_a_leg() {
    assertBound(201, loads(103, 100, 102, 101), EMPTY);
    assertBound(30, Collections.nCopies(7, new Load(10, 1)), EMPTY);
    assertBound(204, loads(103, 100, 102, 101), 3, 5, 4);
  }

  /** Eight pieces: two legs hold six or more of them, at least 4 · 9 + 2 · 10 A, so 28 on one. */
  @Example
  void two_legs_hold_two_thirds_of_the_pieces() {
    List<Load> eight = loads(10, 9, 10, 9, 10, 9, 10, 9);
    assertBound(28, eight, EMPTY);
    // with 4 and 5 A on them already: 65/2 = 32.5, in steps of 1 A 33
    assertBound(33, eight, 4, 6, 5);
  }

  /** Pieces of 1 to 6 A: two legs with 3 of them each have 21/2, but 5 and 0 may stand alone. */
  @Example
  void the_mean_is_a_bound() {
    assertBound(6, loads(5, 3, 2, 2), 0, 0);
    assertBound(7, loads(1, 2, 3, 4, 5, 6), EMPTY);
    assertBound(8, loads(1, 2, 3, 4, 5, 6), 1, 2, 0);
    assertBound(17, loads(10, 7), 0);
    assertBound(19, loads(10, 7), 2);
  }

  /** Of five pieces one of two legs has three or more: the three smallest, 1 + 9 + 9 A. */
  @Example
  void one_of_two_legs_holds_half_of_the_pieces() {
    assertBound(28, loads(9, 10, 9, 10, 10), 0, 0);
    assertBound(31, loads(9, 10, 9, 10, 10), 3, 4);
  }

  /** 14, 14, 7, 7 and 7 A: the mean is 16.3, two legs with 2 each have 17.5, sums of 7 are 21. */
  @Example
  void no_leg_ends_between_the_steps_of_all_amounts() {
    assertBound(21, loads(14, 7, 14, 7, 7), EMPTY);
    assertBound(21, loads(14, 7, 14, 7), 0, 7, 0);
    // 3 A there already: two legs of two pieces 17.5; that leg ends at 17 or 24 A, the others at 21
    assertBound(21, loads(14, 7, 14, 7, 7), 3, 0, 0);
  }

  /** What stands on a leg stays there. */
  @Example
  void no_leg_is_below_what_it_carries() {
    assertBound(50, loads(3, 2, 1), 0, 50, 0);
    assertBound(50, List.of(), 0, 50, 0);
    assertBound(0, loads(0, 0), EMPTY);
  }

  /** 5 A on each leg and 10, 9, 8 A: 42/3; 10 A across two legs and 4, 4, 4 A: 32/3, in 2 A 12. */
  @Example
  void a_load_across_legs_is_a_piece_on_each() {
    assertBound(14, with(loads(10, 9, 8), new Load(5, 3)), EMPTY);
    assertBound(12, with(loads(4, 4, 4), new Load(10, 2)), EMPTY);
  }

  // --- the effort --------------------------------------------------------------------------------

  /**
   * Where placing each load on the emptiest leg, and the last eight as well as can be, meets the
   * bound, the search is over: a step for each load placed and for the beginning of each of the
   * three searches, and one look-up.
   */
  private static void assertFoundAtOnce(List<Load> loads, double... taken) {
    int placed = Math.max(0, loads.size() - Search.LISTED_LOADS);
    Search search = searched(loads, taken);
    assertThat(search.steps()).as("%s", search.plan()).isEqualTo(placed + 3);
    assertThat(search.effort() - (placed + 3L) * Search.EFFORT_OF_A_STEP).isBetween(1L, MOST_WAYS);
    assertThat(search.plan().proven()).isTrue();
    assertThat(search.plan().highest())
        .isCloseTo(search.boundAmps(), within(search.boundAmps() * LegPlan.TOLERANCE));
  }

  /** Loads of 1 to n steps, across as many legs. */
  private static List<Load> rising(int n, double step, int span) {
    return IntStream.rangeClosed(1, n).mapToObj(i -> new Load(i * step, span)).toList();
  }

  @Example
  void a_plan_that_meets_the_bound_ends_the_search() {
    assertFoundAtOnce(Collections.nCopies(12, new Load(1, 1)), EMPTY);
    assertFoundAtOnce(Collections.nCopies(64, new Load(4, 1)), 300, 0, 0);
    assertFoundAtOnce(rising(64, 1, 1), EMPTY);
    assertFoundAtOnce(rising(64, 1, 1), 5, 0, 90);
    assertFoundAtOnce(rising(64, 1, 1), 5, 90);
    assertFoundAtOnce(rising(40, 14, 1), EMPTY);
    assertFoundAtOnce(rising(30, 1, 2), EMPTY);
    assertFoundAtOnce(rising(30, 1, 2), 3, 0, 50);
    assertFoundAtOnce(with(rising(64, 1, 1), new Load(100, 3), new Load(30, 2)), 5, 0, 90);
    List<Load> small = rising(60, 1e-4, 1);
    assertFoundAtOnce(with(small, loads(100, 101, 102, 103).toArray(Load[]::new)), EMPTY);
    List<Load> next = IntStream.range(0, 64).mapToObj(i -> new Load(1 + i * i * 1e-8, 1)).toList();
    assertFoundAtOnce(next, EMPTY);
  }

  /**
   * Whole amps that do not go by three, and 0.01 A more: the mean, a bound, is never met, and the
   * least is the next whole ampere. All is tried, but nothing twice: four loads of one kind can be
   * on three like legs in 1, 3, 6 and 10 ways (the first on any leg), four unlike ones in 1, 2, 5
   * and 14.
   */
  @Example
  void like_ways_are_tried_once() {
    Load[] small = loads(6, 6, 5, 5, 4, 4, 3, 0.01).toArray(Load[]::new);
    // 28 + 33 = 61: 21 A on a leg; 34 + 33 = 67: 23 A
    assertTries(1 + 1 + 3 + 6 + 10, 21, with(loads(7, 7, 7, 7), small));
    assertTries(1 + 1 + 2 + 5 + 14, 23, with(loads(10, 9, 8, 7), small));
  }

  private static void assertTries(int steps, double highest, List<Load> loads) {
    Search search = searched(loads, EMPTY);
    assertThat(search.plan().highest()).isCloseTo(highest, within(1e-6));
    assertThat(search.plan().proven()).isTrue();
    assertThat(search.steps()).isLessThanOrEqualTo(3L * steps);
  }

  /**
   * Ten loads of each of 7, 11, 13, 17 and 19 A are 670 A, so that one leg has 224 A or more; with
   * 0.01 A beside them no bound says so, and there are too many plans to try all.
   */
  @Example
  void a_search_that_finds_no_proof_gives_up_and_says_so() {
    List<Load> loads = new ArrayList<>();
    for (int amps : new int[] {7, 11, 13, 17, 19}) {
      loads.addAll(Collections.nCopies(10, new Load(amps, 1)));
    }
    loads.add(new Load(0.01, 1));
    Search search = searched(loads, EMPTY);
    assertThat(search.plan().highest()).isCloseTo(224, within(1e-6));
    assertThat(search.plan().proven()).isFalse();
    assertThat(search.plan().bound()).isBetween(670.01 / 3 - 1e-6, 224.0);
    long most = 2 * Search.EFFORT_OF_A_TRY + Search.MOST_EFFORT_OF_MANY;
    long unwinding = 3L * (3 * loads.size() * Search.EFFORT_OF_A_STEP + MOST_WAYS);
    assertThat(search.effort()).isBetween(most, most + unwinding);
  }

  // --- the smallest loads ------------------------------------------------------------------------

  /** The last loads, what the legs carry before them, and where a leg must stay below. */
  record Question(long[] amps, int[] span, long[] leg, long limit) {}

  @Provide
  Arbitrary<Question> questions() {
    return Arbitraries.integers()
        .between(1, 3)
        .flatMap(
            legs ->
                Combinators.combine(
                        Arbitraries.longs().between(0, 9).array(long[].class).ofSize(6),
                        Arbitraries.integers().between(1, legs).array(int[].class).ofSize(6),
                        Arbitraries.longs().between(0, 30).array(long[].class).ofSize(legs),
                        Arbitraries.longs().between(10, 60))
                    .as(Question::new));
  }

  /** The first load is placed already, the other five are looked up. */
  @Property(tries = 300)
  void a_look_up_finds_the_lowest_of_all_ways(@ForAll("questions") Question q) {
    Rest rest = new Rest(q.leg.length, q.amps, q.span, 1);
    int[] sets = new int[q.amps.length];
    sets[0] = 99;
    int found = rest.best(q.leg, q.limit);
    long lowest = lowest(q, 1, q.leg.clone());
    if (found < 0) {
      assertThat(lowest).isGreaterThanOrEqualTo(q.limit);
    } else {
      rest.choices(found, sets);
      assertThat(rest.seen()).isPositive();
      assertThat(sets[0]).isEqualTo(99);
      assertThat(lowest).isLessThan(q.limit);
      assertThat(highest(q, sets)).isEqualTo(lowest);
    }
    assertThat(rest.seen()).isLessThanOrEqualTo(worthALook(q).size());
  }

  private static long lowest(Question q, int i, long[] legs) {
    if (i == q.amps.length) {
      return Arrays.stream(legs).max().orElse(0);
    }
    long lowest = Long.MAX_VALUE;
    for (int set = 1; set < 1 << legs.length; set++) {
      if (Integer.bitCount(set) == q.span[i]) {
        lowest = Math.min(lowest, lowest(q, i + 1, with(legs, set, q.amps[i])));
      }
    }
    return lowest;
  }

  private static long[] with(long[] legs, int set, long amps) {
    long[] more = legs.clone();
    for (int leg = 0; leg < legs.length; leg++) {
      more[leg] += (set >> leg & 1) * amps;
    }
    return more;
  }

  private static long highest(Question q, int[] sets) {
    long[] legs = q.leg.clone();
    for (int i = 1; i < sets.length; i++) {
      assertThat(Integer.bitCount(sets[i])).isEqualTo(q.span[i]);
      legs = with(legs, sets[i], q.amps[i]);
    }
    return Arrays.stream(legs).max().orElse(0);
  }

  /** Ways that load the legs differently, leave leg 1 below the limit and two others room. */
  private static Set<List<Long>> worthALook(Question q) {
    Set<List<Long>> ways = new HashSet<>();
    ways.add(Arrays.stream(q.leg).boxed().toList());
    for (int i = 1; i < q.amps.length; i++) {
      Set<List<Long>> more = new HashSet<>();
      for (List<Long> way : ways) {
        for (int set = 1; set < 1 << q.leg.length; set++) {
          if (Integer.bitCount(set) == q.span[i]) {
            long[] legs = way.stream().mapToLong(a -> a).toArray();
            more.add(Arrays.stream(with(legs, set, q.amps[i])).boxed().toList());
          }
        }
      }
      ways = more;
    }
    ways.removeIf(w -> w.get(0) >= q.limit);
    ways.removeIf(w -> w.size() == 3 && w.get(1) + w.get(2) > 2 * q.limit);
    return ways;
  }

  // --- evening out, names ------------------------------------------------------------------------

  /** A job in whole amps. */
  record Job(List<Load> loads, double[] taken) {}

  @Provide
  Arbitrary<Job> jobs() {
    return Arbitraries.integers()
        .between(1, 3)
        .flatMap(
            legs ->
                Combinators.combine(
                        Combinators.combine(
                                Arbitraries.integers().between(1, 40), Arbitraries.of(1, 1, 1, 2))
                            .as((amps, span) -> new Load(amps, Math.min(span, legs)))
                            .list()
                            .ofMinSize(1)
                            .ofMaxSize(12),
                        Arbitraries.of(0.0, 0.0, 5.0, 60.0).array(double[].class).ofSize(legs))
                    .as(Job::new));
  }

  @Property(tries = 200)
  void no_move_and_no_change_of_places_evens_the_legs_out(@ForAll("jobs") Job job) {
    LegPlan plan = LegPlan.of(job.loads, job.taken);
    List<Integer> sets = plan.legs();
    for (int i = 0; i < sets.size(); i++) {
      for (int set = 1; set < 1 << job.taken.length; set++) {
        if (Integer.bitCount(set) == job.loads.get(i).span()) {
          List<Integer> moved = new ArrayList<>(sets);
          moved.set(i, set);
          assertNoBetter(job, plan, moved);
        }
      }
      for (int other = 0; other < i; other++) {
        if (job.loads.get(i).span() == job.loads.get(other).span()) {
          List<Integer> swapped = new ArrayList<>(sets);
          Collections.swap(swapped, i, other);
          assertNoBetter(job, plan, swapped);
        }
      }
    }
  }

  private static void assertNoBetter(Job job, LegPlan plan, List<Integer> sets) {
    double[] legs = job.taken.clone();
    for (int i = 0; i < sets.size(); i++) {
      for (int leg = 0; leg < legs.length; leg++) {
        legs[leg] += (sets.get(i) >> leg & 1) * job.loads.get(i).amps();
      }
    }
    if (Arrays.stream(legs).max().orElse(0) <= plan.highest() + 1e-6) {
      assertThat(squares(Arrays.stream(legs).boxed().toList()))
          .as("%s instead of %s for %s", sets, plan, job)
          .isGreaterThanOrEqualTo(squares(plan.amps()) - 1e-6);
    }
  }

  private static double squares(List<Double> legs) {
    return legs.stream().mapToDouble(a -> a * a).sum();
  }

  /** Of legs that carry the same before, the one that gets a load first comes first. */
  @Property(tries = 200)
  void like_legs_are_taken_in_order(@ForAll("jobs") Job job) {
    LegPlan plan = LegPlan.of(job.loads, job.taken);
    for (int leg = 1; leg < job.taken.length; leg++) {
      for (int before = 0; before < leg; before++) {
        if (job.taken[leg] == job.taken[before]) {
          assertThat(firstOn(plan, before)).as("%s", plan).isLessThanOrEqualTo(firstOn(plan, leg));
        }
      }
    }
  }

  private static int firstOn(LegPlan plan, int leg) {
    int i = 0;
    while (i < plan.legs().size() && (plan.legs().get(i) >> leg & 1) == 0) {
      i++;
    }
    return i;
  }
}
