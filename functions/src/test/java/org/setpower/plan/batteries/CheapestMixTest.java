package org.setpower.plan.batteries;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Locale;
import java.util.Random;
import java.util.function.ToDoubleFunction;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.junit.jupiter.api.Test;
import org.setpower.ReferenceTool;
import org.setpower.base.EvaluationException;

/** The cheapest mix against trying every mix, and against GLPK. */
class CheapestMixTest {
  record Question(List<CheapestMix.Option> options, CheapestMix.Job job) {}

  @Provide
  Arbitrary<Question> small() {
    Arbitrary<CheapestMix.Option> option =
        Combinators.combine(
                Arbitraries.integers().between(50, 300),
                Arbitraries.integers().between(50, 400),
                Arbitraries.integers().between(2, 40),
                Arbitraries.integers().between(0, 30),
                Arbitraries.of(0.0, 1.0, 2.0, 20.0, Double.POSITIVE_INFINITY),
                Arbitraries.of(0.0, 1.0, 3.0, Double.POSITIVE_INFINITY))
            .as(
                (wh, w, kg, price, limit, there) ->
                    new CheapestMix.Option(1, wh, w, kg / 10.0, price, limit, there));
    Arbitrary<CheapestMix.Job> job =
        Combinators.combine(
                Arbitraries.integers().between(0, 900),
                Arbitraries.integers().between(0, 800),
                Arbitraries.of(5.0, 12.0, Double.POSITIVE_INFINITY),
                Arbitraries.of(1.0, 3.0, Double.POSITIVE_INFINITY))
            .as((wh, w, kg, people) -> new CheapestMix.Job(wh, w, kg, people));
    return Combinators.combine(option.list().ofMinSize(1).ofMaxSize(3), job).as(Question::new);
  }

  @Property(tries = 300)
  void a_dearer_mix_is_never_chosen(@ForAll("small") Question q) {
    double[] best = byTrying(q, 0, new int[q.options.size()], null);
    int[] mix;
    try {
      mix = CheapestMix.of(q.options, q.job);
    } catch (EvaluationException refusal) {
      assertThat(refusal.errorCode()).isEqualTo(BatteryPlanErrorCode.NO_MIX);
      assertThat(best).as("no mix in %s", q).isNull();
      return;
    }
    assertThat(best).isNotNull();
    assertThat(does(q, mix)).as("%s does %s", mix, q).isTrue();
    double[] figures = figures(q, mix);
    assertThat(figures[0]).isCloseTo(best[0], within(1e-6));
    assertThat(figures[1]).as("the lightest of one price").isCloseTo(best[1], within(1e-6));
    assertThat(CheapestMix.of(q.options, q.job)).isEqualTo(mix);
  }

  /** Price and mass of the best mix, by trying all; null if none does it. */
  private static double[] byTrying(Question q, int at, int[] mix, double[] best) {
    if (at == mix.length) {
      double[] figures = figures(q, mix);
      return does(q, mix) && (best == null || before(figures, best)) ? figures : best;
    }
    CheapestMix.Option o = q.options.get(at);
    double[] found = best;
    double most =
        Math.ceil(Math.max(q.job.wattHours() / o.wattHours(), q.job.watts() / o.maxWatts()));
    for (int n = 0; n <= most; n++) {
      mix[at] = n;
      found = byTrying(q, at + 1, mix, found);
    }
    mix[at] = 0;
    return found;
  }

  private static boolean before(double[] a, double[] b) {
    for (int i = 0; i < a.length; i++) {
      if (Math.abs(a[i] - b[i]) > 1e-9) {
        return a[i] < b[i];
      }
    }
    return false;
  }

  private static double[] figures(Question q, int[] mix) {
    double price = 0;
    double kilograms = 0;
    for (int i = 0; i < mix.length; i++) {
      price += mix[i] * q.options.get(i).price();
      kilograms += mix[i] * q.options.get(i).kilograms();
    }
    return new double[] {price, kilograms};
  }

  private static boolean does(Question q, int[] mix) {
    double wattHours = 0;
    double watts = 0;
    boolean cabin = true;
    for (int i = 0; i < mix.length; i++) {
      CheapestMix.Option o = q.options.get(i);
      wattHours += mix[i] * o.wattHours();
      watts += mix[i] * o.maxWatts();
      int counted = 0;
      for (int k = 0; k < mix.length; k++) {
        counted += q.options.get(k).cabinLimit() <= o.cabinLimit() ? mix[k] : 0;
      }
      cabin &= mix[i] <= o.available();
      cabin &=
          Double.isInfinite(o.cabinLimit())
              || Double.isInfinite(q.job.people())
              || counted <= o.cabinLimit() * q.job.people();
    }
    return wattHours >= q.job.wattHours() - 1e-6
        && watts >= q.job.watts() - 1e-6
        && figures(q, mix)[1] <= q.job.maxKilograms() + 1e-6
        && cabin;
  }

  private static final double ANY = Double.POSITIVE_INFINITY;

  /** Without a limit in the cabin. */
  private static CheapestMix.Option option(double wh, double watts, double kg, double price) {
    return new CheapestMix.Option(1, wh, watts, kg, price, ANY, ANY);
  }

  private static void assertBranches(
      int branches, CheapestMix.Job job, CheapestMix.Option... options) {
    assertThat(CheapestMix.searched(List.of(options), job).branches()).isEqualTo(branches);
  }

  /**
   * Ten of the good option do the job, in whatever order the options stand; with nine or fewer the
   * rest would be dearer even in fractions of the other. So it takes the beginning and the eleven
   * numbers of the good one.
   */
  @Test
  void a_dear_branch_is_left() {
    CheapestMix.Option good = option(100, 100, 1, 10);
    CheapestMix.Option dear = option(10, 10, 0.1, 2);
    for (CheapestMix.Job job :
        List.of(
            new CheapestMix.Job(1000, 0, ANY, ANY),
            new CheapestMix.Job(0, 1000, ANY, ANY),
            new CheapestMix.Job(1000, 1000, ANY, ANY))) {
      assertBranches(12, job, dear, good);
      assertBranches(12, job, good, dear);
    }
  }

  /** The rest from the other option costs and weighs as much: no better, so it is not tried. */
  @Test
  void a_branch_that_is_as_good_is_left() {
    CheapestMix.Option one = option(100, 100, 1, 10);
    assertBranches(12, new CheapestMix.Job(1000, 0, ANY, ANY), one, one);
    assertBranches(12, new CheapestMix.Job(0, 1000, ANY, ANY), one, one);
  }

  /** 1000 Wh weigh 10 kg at the least, 1000 W too: with less allowed there is nothing to try. */
  @Test
  void a_heavy_branch_is_left() {
    CheapestMix.Option light = option(100, 100, 1, 20);
    CheapestMix.Option heavy = option(100, 100, 2, 10);
    assertBranches(1, new CheapestMix.Job(1000, 0, 9.9, ANY), light, heavy);
    assertBranches(1, new CheapestMix.Job(0, 1000, 9.9, ANY), light, heavy);
    // one heavy one and nine light ones are 11 kg: only none of the heavy ones is gone on with
    assertBranches(1 + 11 + 11, new CheapestMix.Job(1000, 0, 10.5, ANY), light, heavy);
    assertBranches(1 + 11 + 11, new CheapestMix.Job(0, 1000, 10.5, ANY), light, heavy);
  }

  /** Larger questions than can be tried out; GLPK names the least price. */
  @Test
  void glpk_finds_no_cheaper_mix() {
    Random random = new Random(20270204);
    for (int round = 0; round < 40; round++) {
      int n = 4 + random.nextInt(5);
      List<CheapestMix.Option> options =
          IntStream.range(0, n)
              .mapToObj(
                  i -> {
                    double wh = 90 + random.nextInt(1200);
                    return new CheapestMix.Option(
                        1,
                        wh,
                        wh * (1 + random.nextInt(4)),
                        Math.round(wh * (6 + random.nextInt(4)) / 100) / 10.0,
                        Math.round(wh * (30 + random.nextInt(40)) / 1000),
                        wh <= 100 ? 20 : wh <= 160 ? 2 : 0,
                        ANY);
                  })
              .toList();
      CheapestMix.Job job =
          new CheapestMix.Job(
              1000 + random.nextInt(9000),
              500 + random.nextInt(3000),
              120,
              Double.POSITIVE_INFINITY);
      Question q = new Question(options, job);
      Double least = glpk(q);
      try {
        int[] mix = CheapestMix.of(options, job);
        assertThat(least).as("GLPK finds no mix for %s", q).isNotNull();
        assertThat(does(q, mix)).isTrue();
        assertThat(figures(q, mix)[0]).as("%s", q).isCloseTo(least, within(1e-6 * least));
      } catch (EvaluationException refusal) {
        assertThat(refusal.errorCode()).as("%s", q).isEqualTo(BatteryPlanErrorCode.NO_MIX);
        assertThat(least).as("GLPK finds a mix for %s", q).isNull();
      }
    }
  }

  /** "o" where the optimum is proven, "n" where there is no solution; then the price. */
  private static final Pattern SOLUTION = Pattern.compile("s mip \\d+ \\d+ ([on]) (\\S+)");

  private static Double glpk(Question q) {
    StringBuilder lp = new StringBuilder("Minimize\n price: ");
    lp.append(sum(q, CheapestMix.Option::price)).append("\nSubject To\n");
    lp.append(" wh: ").append(sum(q, CheapestMix.Option::wattHours));
    lp.append(" >= ").append(q.job.wattHours()).append('\n');
    lp.append(" w: ").append(sum(q, CheapestMix.Option::maxWatts));
    lp.append(" >= ").append(q.job.watts()).append('\n');
    lp.append(" kg: ").append(sum(q, CheapestMix.Option::kilograms));
    lp.append(" <= ").append(q.job.maxKilograms()).append("\nGeneral\n");
    IntStream.range(0, q.options.size()).forEach(i -> lp.append(" n").append(i));
    lp.append("\nEnd\n");
    Matcher solution = SOLUTION.matcher(ReferenceTool.solve(lp.toString()));
    assertThat(solution.find()).isTrue();
    return solution.group(1).equals("o") ? Double.valueOf(solution.group(2)) : null;
  }

  private static String sum(Question q, ToDoubleFunction<CheapestMix.Option> of) {
    StringBuilder text = new StringBuilder();
    for (int i = 0; i < q.options.size(); i++) {
      text.append(String.format(Locale.ROOT, " + %.6f n%d", of.applyAsDouble(q.options.get(i)), i));
    }
    return text.toString();
  }
}
