package org.setpower.pack;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;

/** The cold takes, warmth gives nothing back. */
class TemperatureDeratingProperties {
  @Provide
  Arbitrary<Double> temperatures() {
    return Arbitraries.doubles().between(-20, 50);
  }

  @Property(tries = 300)
  void colder_is_never_better(
      @ForAll("temperatures") double one, @ForAll("temperatures") double other) {
    double cold = Math.min(one, other);
    double warm = Math.max(one, other);
    Chemistry li = Chemistry.LI_ION;
    assertThat(TemperatureDerating.energyLeft(li, cold))
        .isLessThanOrEqualTo(TemperatureDerating.energyLeft(li, warm));
    assertThat(TemperatureDerating.chargeLeft(li, cold))
        .isLessThanOrEqualTo(TemperatureDerating.chargeLeft(li, warm));
    assertThat(TemperatureDerating.resistance(li, cold))
        .isGreaterThanOrEqualTo(TemperatureDerating.resistance(li, warm));
  }

  /** A fast discharge keeps no more of its energy than a slow one of its charge. */
  @Property(tries = 300)
  void shares_stay_between_0_and_1(@ForAll("temperatures") double temp) {
    double energy = TemperatureDerating.energyLeft(Chemistry.LI_ION, temp);
    double charge = TemperatureDerating.chargeLeft(Chemistry.LI_ION, temp);
    assertThat(energy).isPositive().isLessThanOrEqualTo(charge);
    assertThat(charge).isLessThanOrEqualTo(1);
    assertThat(TemperatureDerating.resistance(Chemistry.LI_ION, temp)).isGreaterThanOrEqualTo(1);
  }

  @Property(tries = 300)
  void a_share_lies_between_the_figures_that_are_shown(@ForAll("temperatures") double temp) {
    List<TemperatureDerating.Measured> around =
        TemperatureDerating.measuredAround(Chemistry.LI_ION, temp);
    assertThat(around).hasSizeBetween(1, 2);
    assertThat(TemperatureDerating.energyLeft(Chemistry.LI_ION, temp))
        .isBetween(around.get(0).ratio(), around.get(around.size() - 1).ratio());
    if (around.size() == 2) {
      assertThat(temp).isBetween(around.get(0).temp(), around.get(1).temp());
    }
  }

  @Example
  void a_measured_temperature_is_shown_alone() {
    assertThat(TemperatureDerating.measuredAround(Chemistry.LI_ION, -10))
        .singleElement()
        .satisfies(m -> assertThat(m.ratio()).isEqualTo(0.7378));
    assertThat(TemperatureDerating.measuredAround(Chemistry.LI_ION, 40))
        .singleElement()
        .satisfies(m -> assertThat(m.temp()).isEqualTo(25));
    assertThat(TemperatureDerating.measuredAround(Chemistry.LI_ION, -6))
        .extracting(TemperatureDerating.Measured::temp)
        .containsExactly(-10.0, 0.0);
  }
}
