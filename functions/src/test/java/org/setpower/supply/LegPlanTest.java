package org.setpower.supply;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.setpower.ReferenceTool;

/** Leg plans against every plan there is, against the solver GLPK, and against themselves. */
class LegPlanTest {
  /** Loads and what the legs carry before. */
  record Job(List<LegPlan.Load> loads, double[] taken) {
    @Override
    public String toString() {
      return loads + " on " + Arrays.toString(taken);
    }
  }

  @Provide
  Arbitrary<Job> smallJobs() {
    return Arbitraries.integers()
        .between(1, 3)
        .flatMap(
            legs ->
                Combinators.combine(
                        Arbitraries.integers().between(0, 200), Arbitraries.of(1, 1, 1, 2, 3))
                    .as((amps, span) -> new LegPlan.Load(amps / 10.0, Math.min(span, legs)))
                    .list()
                    .ofMinSize(1)
                    .ofMaxSize(8)
                    .flatMap(
                        loads ->
                            Arbitraries.integers()
                                .between(0, 300)
                                .array(int[].class)
                                .ofSize(legs)
                                .map(
                                    taken ->
                                        new Job(
                                            loads,
                                            Arrays.stream(taken)
                                                .mapToDouble(t -> t / 10.0)
                                                .toArray()))));
  }

  @Property(tries = 300)
  void no_plan_at_all_is_better(@ForAll("smallJobs") Job job) {
    LegPlan plan = LegPlan.of(job.loads, job.taken);
    double mean = mean(job);
    assertThat(plan.proven()).isTrue();
    assertThat(plan.highest())
        .isBetween(
            lowestOfAll(job, 0, job.taken.clone()) - 1e-6,
            lowestOfAll(job, 0, job.taken.clone()) + LegPlan.TOLERANCE * mean + 1e-6);
    assertThat(plan.bound()).isLessThanOrEqualTo(plan.highest() + 1e-6);
    assertIsAPlan(job, plan);
  }

  private static double mean(Job job) {
    return (Arrays.stream(job.taken).sum()
            + job.loads.stream().mapToDouble(l -> l.amps() * l.span()).sum())
        / job.taken.length;
  }

  private static double lowestOfAll(Job job, int i, double[] legs) {
    if (i == job.loads.size()) {
      return Arrays.stream(legs).max().orElse(0);
    }
    LegPlan.Load load = job.loads.get(i);
    double lowest = Double.POSITIVE_INFINITY;
    for (int set = 1; set < 1 << legs.length; set++) {
      if (Integer.bitCount(set) == load.span()) {
        double[] more = legs.clone();
        for (int leg = 0; leg < legs.length; leg++) {
          more[leg] += (set >> leg & 1) * load.amps();
        }
        lowest = Math.min(lowest, lowestOfAll(job, i + 1, more));
      }
    }
    return lowest;
  }

  private static void assertIsAPlan(Job job, LegPlan plan) {
    double[] legs = job.taken.clone();
    for (int i = 0; i < job.loads.size(); i++) {
      int set = plan.legs().get(i);
      assertThat(Integer.bitCount(set)).isEqualTo(job.loads.get(i).span());
      for (int leg = 0; leg < legs.length; leg++) {
        legs[leg] += (set >> leg & 1) * job.loads.get(i).amps();
      }
    }
    for (int leg = 0; leg < legs.length; leg++) {
      assertThat(plan.amps().get(leg)).isCloseTo(legs[leg], within(1e-6));
    }
  }

  @Example
  void forty_loads_of_a_set_are_proven_and_the_plan_is_always_the_same() {
    Random random = new Random(40);
    double[] kinds = {1.74, 2.83, 7.1, 0.65, 13.04, 3.91, 0.22, 6.52};
    for (int k = 0; k < 4; k++) {
      List<LegPlan.Load> loads = new ArrayList<>();
      for (int i = 0; i < LegPlan.PROVEN_LOADS; i++) {
        loads.add(new LegPlan.Load(kinds[random.nextInt(kinds.length)], 1));
      }
      Job job = new Job(loads, new double[] {12, 12, 12});
      LegPlan plan = LegPlan.of(loads, job.taken);
      assertThat(plan.proven()).isTrue();
      assertThat(plan.highest())
          .isLessThanOrEqualTo(plan.bound() + LegPlan.TOLERANCE * mean(job) + 1e-6);
      assertIsAPlan(job, plan);
      assertThat(LegPlan.of(loads, job.taken)).isEqualTo(plan);
    }
  }

  /**
   * 14, 28 … 560 A are 11 480 A. With 7 A on one leg the mean is 3 829 A, where that leg could end
   * (7 + 273 × 14); but the others end at multiples of 14, at most 3 822, and 3 829 + 2 × 3 822 =
   * 11 473 A do not hold 11 487. The next end of a leg is 274 × 14 = 3 836 A.
   */
  @Example
  void the_steps_of_the_loads_are_counted_from_what_a_leg_carries() {
    List<LegPlan.Load> loads = new ArrayList<>();
    for (int i = 1; i <= 40; i++) {
      loads.add(new LegPlan.Load(14 * i, 1));
    }
    LegPlan plan = LegPlan.of(loads, 7, 0, 0);
    assertThat(plan.highest()).isCloseTo(3836, within(1e-6));
    assertThat(plan.proven()).isTrue();
  }

  /** Every sum that two legs can reach, for loads of whole amps. */
  @Example
  void no_plan_of_up_to_forty_loads_is_better() {
    Random random = new Random(3);
    for (int k = 0; k < 12; k++) {
      int n = 11 + random.nextInt(LegPlan.PROVEN_LOADS - 10);
      int most = k % 3 == 0 ? 40 : 12;
      List<LegPlan.Load> loads = new ArrayList<>();
      for (int i = 0; i < n; i++) {
        int span = random.nextInt(5) == 0 ? 2 + random.nextInt(2) : 1;
        loads.add(new LegPlan.Load(1 + random.nextInt(most), span));
      }
      Job job = new Job(loads, new double[] {random.nextInt(30), random.nextInt(30), 0});
      LegPlan plan = LegPlan.of(loads, job.taken);
      assertThat(plan.proven()).isTrue();
      assertThat(plan.highest()).as(job.toString()).isEqualTo(lowestOfSums(job));
      assertIsAPlan(job, plan);
    }
  }

  /** The hardest of 263 000 jobs that were drawn like this: without its bounds no search ends. */
  @Example
  void the_hardest_jobs_of_many_are_proven() {
    for (int seed : new int[] {130193, 676980, 693997, 96566, 222010, 829485, 701544}) {
      Random random = new Random(seed);
      int n = 20 + random.nextInt(21);
      double step = Math.pow(10, random.nextInt(3));
      List<LegPlan.Load> loads = new ArrayList<>();
      for (int i = 0; i < n; i++) {
        double amps = Math.round((0.2 + 16 * random.nextDouble()) * step) / step;
        loads.add(new LegPlan.Load(amps <= 0 ? 1 : amps, random.nextInt(6) == 0 ? 2 : 1));
      }
      Job job = new Job(loads, new double[] {random.nextInt(20), 0, 0});
      LegPlan plan = LegPlan.of(loads, job.taken);
      assertThat(plan.proven()).as(job.toString()).isTrue();
      assertIsAPlan(job, plan);
      if (step == 1) {
        assertThat(plan.highest()).isEqualTo(lowestOfSums(job));
      }
    }
  }

  private static double lowestOfSums(Job job) {
    int total = (int) Math.round(3 * mean(job));
    boolean[][] reached = new boolean[total + 1][total + 1];
    reached[(int) job.taken[0]][(int) job.taken[1]] = true;
    for (LegPlan.Load load : job.loads) {
      boolean[][] next = new boolean[total + 1][total + 1];
      int amps = (int) load.amps();
      for (int a = 0; a <= total; a++) {
        for (int b = 0; a + b <= total; b++) {
          for (int set = 1; reached[a][b] && set < 8; set++) {
            if (Integer.bitCount(set) == load.span()) {
              next[a + (set & 1) * amps][b + (set >> 1 & 1) * amps] = true;
            }
          }
        }
      }
      reached = next;
    }
    int lowest = total;
    for (int a = 0; a <= total; a++) {
      for (int b = 0; a + b <= total; b++) {
        if (reached[a][b]) {
          lowest = Math.min(lowest, Math.max(a, Math.max(b, total - a - b)));
        }
      }
    }
    return lowest;
  }

  @Example
  void two_hundred_loads_have_a_stated_bound() {
    Random random = new Random(200);
    List<LegPlan.Load> loads = new ArrayList<>();
    for (int i = 0; i < 200; i++) {
      loads.add(new LegPlan.Load(0.2 + 10 * random.nextDouble(), 1 + random.nextInt(2)));
    }
    Job job = new Job(loads, new double[] {5, 0, 7});
    LegPlan plan = LegPlan.of(loads, job.taken);
    assertIsAPlan(job, plan);
    assertThat(plan.highest()).isBetween(plan.bound(), 1.001 * mean(job));
  }

  /** GLPK solves the same question as an integer programme. */
  @Example
  void glpk_finds_the_same_highest_leg() {
    Random random = new Random(12);
    for (int k = 0; k < 6; k++) {
      List<LegPlan.Load> loads = new ArrayList<>();
      for (int i = 0; i < 9 + k % 3; i++) {
        loads.add(
            new LegPlan.Load((5 + random.nextInt(150)) / 10.0, random.nextInt(4) == 0 ? 2 : 1));
      }
      Job job = new Job(loads, new double[] {random.nextInt(9), random.nextInt(9), 0});
      assertThat(LegPlan.of(loads, job.taken).highest())
          .as(job.toString())
          .isCloseTo(highestOfGlpk(job), within(LegPlan.TOLERANCE * mean(job) + 1e-6));
    }
  }

  private static double highestOfGlpk(Job job) {
    StringBuilder rows = new StringBuilder("minimize\nobj: top\nsubject to\n");
    StringBuilder binaries = new StringBuilder("binary\n");
    for (int i = 0; i < job.loads.size(); i++) {
      rows.append(
          String.format(
              "span%1$d: x%1$d_0 + x%1$d_1 + x%1$d_2 = %2$d%n", i, job.loads.get(i).span()));
      binaries.append(String.format("x%1$d_0 x%1$d_1 x%1$d_2%n", i));
    }
    for (int leg = 0; leg < 3; leg++) {
      rows.append("leg").append(leg).append(": top");
      for (int i = 0; i < job.loads.size(); i++) {
        rows.append(String.format(Locale.ROOT, " - %.1f x%d_%d", job.loads.get(i).amps(), i, leg));
      }
      rows.append(String.format(Locale.ROOT, " >= %.1f%n", job.taken[leg]));
    }
    String printed = ReferenceTool.solve(rows.toString() + binaries + "end\n");
    Matcher m = Pattern.compile("(?m)^s mip \\d+ \\d+ o (\\S+)$").matcher(printed);
    assertThat(m.find()).as(printed).isTrue();
    return Double.parseDouble(m.group(1));
  }

  /** The smallest number above 0: powers of ten run out below it. */
  @Example
  void next_to_no_current_hangs_on_the_first_leg() {
    LegPlan plan = LegPlan.of(List.of(new LegPlan.Load(Double.MIN_VALUE, 1)), 0, 0, 0);
    assertThat(plan.legs()).containsExactly(1);
    assertThat(plan.proven()).isTrue();
  }

  /**
   * Of four large pieces two must share a leg, so that no plan is below the two smallest of them,
   * far above the mean of 406.6 / 3. The many small ones are too many to try every plan.
   */
  @Example
  void a_bound_knows_that_large_loads_must_share_a_leg() {
    List<LegPlan.Load> loads = new ArrayList<>();
    for (double amps : new double[] {100, 101, 102, 103}) {
      loads.add(new LegPlan.Load(amps, 1));
    }
    for (int i = 0; i < 60; i++) {
      loads.add(new LegPlan.Load(0.01, 1));
    }
    LegPlan plan = LegPlan.of(loads, 0, 0, 0);
    assertThat(plan.highest()).isCloseTo(201, within(0.03));
    assertThat(plan.proven()).isTrue();
    assertThat(plan.bound()).isBetween(201 - 0.03, 201 + 1e-6);
  }

  /** 301 loads of 7 A: one leg has at least 101 of them, so that 707 A is the least there is. */
  @Example
  void a_bound_knows_that_no_leg_ends_between_the_steps_of_equal_loads() {
    LegPlan plan = LegPlan.of(Collections.nCopies(301, new LegPlan.Load(7, 1)), 0, 0, 0);
    assertThat(plan.highest()).isCloseTo(707, within(1e-6));
    assertThat(plan.proven()).isTrue();
    assertThat(plan.bound()).isCloseTo(707, within(707 * LegPlan.TOLERANCE));
  }

  /** One leg has at least 22 of 64 loads, all of next to 1 A: 22 A, though the mean is 21.3 A. */
  @Example
  void a_bound_knows_how_many_loads_a_leg_must_take() {
    List<LegPlan.Load> loads = new ArrayList<>();
    for (int i = 0; i < 64; i++) {
      loads.add(new LegPlan.Load(1 + i * i * 1e-8, 1));
    }
    LegPlan plan = LegPlan.of(loads, 0, 0, 0);
    assertThat(plan.highest()).isCloseTo(22, within(22 * LegPlan.TOLERANCE));
    assertThat(plan.proven()).isTrue();
    assertThat(plan.bound()).isBetween(22 * (1 - LegPlan.TOLERANCE), plan.highest() + 1e-6);
  }

  /** 90 A are on a leg already; 64 loads of 4/3 A share the other two. */
  @Example
  void a_bound_counts_what_the_legs_carry() {
    LegPlan plan = LegPlan.of(Collections.nCopies(64, new LegPlan.Load(1 + 1 / 3.0, 1)), 90, 0, 0);
    assertThat(plan.highest()).isCloseTo(90, within(1e-6));
    assertThat(plan.proven()).isTrue();
    assertThat(plan.amps().get(1)).isCloseTo(32 * 4 / 3.0, within(1e-6));
    assertThat(plan.amps().get(2)).isCloseTo(32 * 4 / 3.0, within(1e-6));
  }

  /** 20 A stand on one leg; the other 10 A are 5 and 5 on the others, not 10 and 0. */
  @Example
  void legs_below_the_highest_are_evened_out() {
    List<LegPlan.Load> loads = new ArrayList<>();
    for (double amps : new double[] {20, 4, 3, 2, 1}) {
      loads.add(new LegPlan.Load(amps, 1));
    }
    LegPlan plan = LegPlan.of(loads, 0, 0, 0);
    assertThat(plan.amps().stream().sorted().toList()).containsExactly(5.0, 5.0, 20.0);
  }
}
