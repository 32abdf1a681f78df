package org.setpower.fleet;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Size;
import org.junit.jupiter.api.Test;
import org.setpower.base.EvaluationException;
import org.setpower.registry.groups.FunctionRegistry;

class OutlierDetectionTest {
  @Property(tries = 300)
  void scores_do_not_depend_on_shift_or_scale(
      @ForAll @Size(min = 5, max = 20) List<@IntRange(min = 300, max = 1100) Integer> perMille) {
    double[] scores = OutlierDetection.scores(healths(perMille, 1, 0));
    double[] others = OutlierDetection.scores(healths(perMille, 3, 2));
    for (int i = 0; i < scores.length; i++) {
      assertThat(others[i]).isCloseTo(scores[i], within(1e-6 * (1 + Math.abs(scores[i]))));
    }
  }

  private static double[] healths(List<Integer> perMille, double scale, double shift) {
    return perMille.stream().mapToDouble(h -> scale * h / 1000 + shift).toArray();
  }

  @Test
  void a_kind_of_too_few_packs_is_refused_alone() {
    Object[][] healths = {{0.95}, {0.94}, {0.96}, {0.93}, {0.71}, {0.5}};
    Object[][] kinds = {{"a"}, {"a"}, {"a"}, {"a"}, {"a"}, {"b"}};
    Object[][] odd =
        (Object[][])
            FunctionRegistry.find("FLEET.OUTLIER").orElseThrow().call(healths, null, kinds);
    assertThat(odd[4][0]).isEqualTo(1.0);
    assertThat(odd[5][0])
        .isInstanceOfSatisfying(
            EvaluationException.class,
            r -> assertThat(r.getMessage()).contains("5 batteries").contains("has 1"));
  }
}
