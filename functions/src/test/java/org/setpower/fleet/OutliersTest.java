package org.setpower.fleet;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Size;
import org.junit.jupiter.api.Test;
import org.setpower.base.Refusal;
import org.setpower.sheet.Catalogue;

class OutliersTest {
  @Property(tries = 300)
  void scores_do_not_depend_on_order_shift_or_scale(
      @ForAll @Size(min = 5, max = 20) double @DoubleRange(min = 0.3, max = 1.1) [] healths) {
    double[] scores = Outliers.scores(healths);
    double[] moved = Arrays.stream(healths).map(h -> 3 * h + 2).toArray();
    double[] other = Outliers.scores(moved);
    double spread =
        Arrays.stream(healths).max().orElseThrow() - Arrays.stream(healths).min().orElseThrow();
    for (int i = 0; i < scores.length && spread > 1e-3; i++) {
      if (Math.abs(scores[i]) < 1e6) {
        assertThat(other[i]).isCloseTo(scores[i], within(1e-6 * (1 + Math.abs(scores[i]))));
      }
    }
  }

  @Test
  void a_kind_of_too_few_packs_is_refused_alone() {
    Object[][] healths = {{0.95}, {0.94}, {0.96}, {0.93}, {0.71}, {0.5}};
    Object[][] kinds = {{"a"}, {"a"}, {"a"}, {"a"}, {"a"}, {"b"}};
    Object[][] odd =
        (Object[][]) Catalogue.find("FLEET.ODD").orElseThrow().call(healths, null, kinds);
    assertThat(odd[4][0]).isEqualTo(1.0);
    assertThat(odd[5][0])
        .isInstanceOfSatisfying(
            Refusal.class, r -> assertThat(r.getMessage()).contains("5 packs").contains("has 1"));
  }
}
