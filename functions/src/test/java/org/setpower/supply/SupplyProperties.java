package org.setpower.supply;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;

/** What holds for every neutral and every set, whatever the figures. */
class SupplyProperties {
  private static final double[] EQUAL = {1, 1, 1};

  @Property
  void a_neutral_without_harmonics_is_the_known_root(
      @ForAll @DoubleRange(min = 0, max = 400) double a,
      @ForAll @DoubleRange(min = 0, max = 400) double b,
      @ForAll @DoubleRange(min = 0, max = 400) double c) {
    double root = Math.sqrt(Math.max(0, a * a + b * b + c * c - a * b - b * c - c * a));
    assertThat(Neutral.of(new double[] {a, b, c}, EQUAL, 0, Feed.THREE_PHASE).amps())
        .isCloseTo(root, within(1e-5));
  }

  @Property
  void a_neutral_does_not_care_which_leg_comes_first(
      @ForAll @DoubleRange(min = 0, max = 400) double a,
      @ForAll @DoubleRange(min = 0, max = 400) double b,
      @ForAll @DoubleRange(min = 0, max = 400) double c,
      @ForAll @DoubleRange(min = 0.1, max = 1) double pf,
      @ForAll @DoubleRange(min = 0, max = 1) double h) {
    double amps =
        Neutral.of(new double[] {a, b, c}, new double[] {1, pf, -pf}, h, Feed.THREE_PHASE).amps();
    assertThat(
            Neutral.of(new double[] {c, a, b}, new double[] {-pf, 1, pf}, h, Feed.THREE_PHASE)
                .amps())
        .isCloseTo(amps, within(1e-6));
    assertThat(amps).isLessThanOrEqualTo(Math.sqrt(2) * (a + b + c) + 1e-9);
  }

  /** Not the 1e-15 A that rounding leaves of three sines. */
  @Property
  void equal_legs_leave_nothing_at_all(@ForAll @DoubleRange(min = 0, max = 400) double amps) {
    assertThat(Neutral.of(new double[] {amps, amps, amps}, EQUAL, 0, Feed.THREE_PHASE).amps())
        .isZero();
  }

  @Example
  void a_factor_says_where_it_comes_from() {
    assertThat(Emissions.sourceOf(Fuel.PETROL)).startsWith("US EIA FAQ 307").endsWith("gal");
    assertThat(Emissions.grid("AU", 2023).source()).startsWith("Our World in Data");
  }

  @Property
  void a_split_supply_leaves_the_difference(
      @ForAll @DoubleRange(min = 0, max = 400) double a,
      @ForAll @DoubleRange(min = 0, max = 400) double b,
      @ForAll @DoubleRange(min = 0, max = 1) double h) {
    assertThat(Neutral.of(new double[] {a, b, 0}, EQUAL, h, Feed.SPLIT).amps())
        .isCloseTo(Math.abs(a - b), within(1e-6));
  }

  @Property
  void more_load_never_burns_less(
      @ForAll @DoubleRange(min = 20, max = 200) double ratedKw,
      @ForAll @DoubleRange(min = 0, max = 1) double share,
      @ForAll @DoubleRange(min = 0, max = 1) double other) {
    double less = Math.min(share, other) * ratedKw;
    double more = Math.max(share, other) * ratedKw;
    assertThat(FuelChart.litresPerHour(less, ratedKw, Fuel.DIESEL))
        .isPositive()
        .isLessThanOrEqualTo(FuelChart.litresPerHour(more, ratedKw, Fuel.DIESEL) + 1e-9);
  }

  @Property
  void thinner_or_hotter_air_never_leaves_more(
      @ForAll Engine engine,
      @ForAll @DoubleRange(min = -100, max = 2900) double altitude,
      @ForAll @DoubleRange(min = -20, max = 54) double temp) {
    double left = GeneratorRating.derate(altitude, temp, engine);
    assertThat(left).isBetween(0.5, 1.0);
    assertThat(GeneratorRating.derate(altitude + 100, temp, engine)).isLessThanOrEqualTo(left);
    assertThat(GeneratorRating.derate(altitude, temp + 1, engine)).isLessThanOrEqualTo(left);
  }
}
