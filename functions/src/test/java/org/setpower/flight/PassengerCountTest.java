package org.setpower.flight;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** The fewest travellers against handing out the packs one by one in every way. */
class PassengerCountTest {
  @ParameterizedTest
  @EnumSource(RuleBook.class)
  void the_fewest_travellers_are_those_that_trying_finds(RuleBook rules) {
    for (int small = 0; small <= 45; small++) {
      for (int large = 0; large <= 9; large++) {
        assertThat(fewest(small, large, rules))
            .as("%d up to 100 Wh, %d over, %s", small, large, rules)
            .isEqualTo(byTrying(small, large, rules));
      }
    }
  }

  /** More and more people, each taking every mix the rules allow, until nothing is left. */
  private static int byTrying(int small, int large, RuleBook rules) {
    int people = 0;
    while (!canCarry(people, small, large, rules)) {
      people++;
    }
    return people;
  }

  private static boolean canCarry(int people, int small, int large, RuleBook rules) {
    if (small == 0 && large == 0) {
      return true;
    }
    if (people == 0) {
      return false;
    }
    // Table 2.3.A: 20 spares of all kinds, 2 over 100 Wh; US: 2 over 100 Wh only.
    int most = rules == RuleBook.ICAO ? 20 : Integer.MAX_VALUE;
    for (int l = Math.min(2, large); l >= 0; l--) {
      // Taking fewer small ones than one may never helps those who come after.
      int s = Math.min(small, most - l);
      if (canCarry(people - 1, small - s, large - l, rules)) {
        return true;
      }
    }
    return false;
  }

  @Property(tries = 200)
  void one_pack_more_never_needs_fewer_people(
      @ForAll @IntRange(max = 300) int small, @ForAll @IntRange(max = 60) int large) {
    long before = fewest(small, large, RuleBook.ICAO);
    assertThat(fewest(small + 1, large, RuleBook.ICAO)).isBetween(before, before + 1);
    assertThat(fewest(small, large + 1, RuleBook.ICAO)).isBetween(before, before + 1);
  }

  private static long fewest(int small, int large, RuleBook rules) {
    List<PassengerCount.Packs> packs =
        List.of(new PassengerCount.Packs(1, 98, small), new PassengerCount.Packs(2, 150, large));
    return PassengerCount.fewest(packs, rules, null);
  }
}
