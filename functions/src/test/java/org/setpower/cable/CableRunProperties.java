package org.setpower.cable;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.stream.Stream;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Assume;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import org.setpower.base.EvaluationException;
import org.setpower.base.PhaseSystem;

/** What holds for every run, whatever the figures. */
class CableRunProperties {
  private static final double VOLTS = 230;

  @Provide
  Arbitrary<CableSize> sizes() {
    List<CableSize> known =
        Stream.of(CableSize.Family.AWG, CableSize.Family.METRIC)
            .flatMap(f -> CableSize.series(f).stream())
            .filter(Conductor::isKnown)
            .toList();
    return Arbitraries.of(known);
  }

  @Property
  void drop_scales_with_length_and_amps_and_falls_with_cables(
      @ForAll("sizes") CableSize size,
      @ForAll @DoubleRange(min = 0, max = 500) double length,
      @ForAll @DoubleRange(min = 0, max = 400) double amps,
      @ForAll @IntRange(min = 1, max = 8) int parallel) {
    double one = run(size, length, PhaseSystem.ONE, 0.9, 60, 1).drop(amps);
    assertThat(run(size, 2 * length, PhaseSystem.ONE, 0.9, 60, 1).drop(amps))
        .isCloseTo(2 * one, within(1e-12 + 1e-12 * one));
    assertThat(run(size, length, PhaseSystem.ONE, 0.9, 60, 1).drop(3 * amps))
        .isCloseTo(3 * one, within(1e-12 + 1e-12 * one));
    assertThat(parallel * run(size, length, PhaseSystem.ONE, 0.9, 60, parallel).drop(amps))
        .isCloseTo(one, within(1e-12 + 1e-12 * one));
  }

  @Property
  void a_warmer_cable_loses_more(
      @ForAll("sizes") CableSize size,
      @ForAll @DoubleRange(min = -60, max = 149) double temp,
      @ForAll PhaseSystem system) {
    assertThat(run(size, 10, system, 1, temp + 1, 1).drop(10))
        .isGreaterThan(run(size, 10, system, 1, temp, 1).drop(10));
  }

  @Property
  void a_thicker_size_of_a_family_loses_less(
      @ForAll CableSize.Family family, @ForAll PhaseSystem system) {
    double thinner = Double.POSITIVE_INFINITY;
    for (CableSize size : CableSize.series(family)) {
      if (Conductor.isKnown(size)) {
        double drop = run(size, 10, system, 1, 60, 1).drop(10);
        assertThat(drop).as(size.toString()).isLessThan(thinner);
        thinner = drop;
      }
    }
  }

  @Property
  void reach_is_the_inverse_of_drop(
      @ForAll("sizes") CableSize size,
      @ForAll @DoubleRange(min = 0.1, max = 100) double amps,
      @ForAll @DoubleRange(min = 0.01, max = 0.2) double maxDrop,
      @ForAll @DoubleRange(min = 0.1, max = 1) double powerFactor) {
    double reach;
    try {
      reach =
          Sizing.reach(
              size,
              amps,
              VOLTS,
              maxDrop,
              PhaseSystem.ONE,
              powerFactor,
              60,
              new Sizing.Installed(Ampacity.Method.FLEXIBLE, 30, 2, InstallationMethod.FREELY));
    } catch (EvaluationException refusal) {
      assertThat(refusal.errorCode()).isIn(CableErrorCode.OVER_RATING, CableErrorCode.NO_RATING);
      return;
    }
    assertThat(run(size, reach, PhaseSystem.ONE, powerFactor, 60, 1).drop(amps))
        .isCloseTo(maxDrop * VOLTS, within(1e-9));
  }

  /**
   * The supply gives what the load takes and the cable turns to heat; and the volts at the load
   * plus the phasor of the drop are the supply volts.
   */
  @Property
  void energy_is_kept(
      @ForAll("sizes") CableSize size,
      @ForAll @DoubleRange(min = 0.5, max = 300) double length,
      @ForAll @DoubleRange(min = 1, max = 20000) double watts,
      @ForAll @DoubleRange(min = 0.2, max = 1) double powerFactor,
      @ForAll PhaseSystem system) {
    double pf = system == PhaseSystem.DC ? 1 : powerFactor;
    CableRun run = run(size, length, system, pf, 60, 1);
    Assume.that(watts < 0.999 * run.mostWatts(VOLTS));
    double amps = run.endAmps(watts, VOLTS);
    boolean three = system == PhaseSystem.THREE;
    double phaseVolts = run.endVolts(watts, VOLTS) / (three ? Math.sqrt(3) : 1);
    double conductors = three ? 1 : 2;
    double sine = Math.sqrt(1 - pf * pf);
    double r = conductors * run.ohms();
    double x = conductors * run.reactance();
    double real = phaseVolts + amps * (r * pf + x * sine);
    double imaginary = amps * (x * pf - r * sine);
    assertThat(Math.hypot(real, imaginary))
        .isCloseTo(VOLTS / (three ? Math.sqrt(3) : 1), within(1e-7));
    double supplyWatts = (three ? 3 : 1) * amps * (real * pf - imaginary * sine);
    assertThat(supplyWatts).isCloseTo(watts + run.heat(amps), within(1e-7 * supplyWatts));
  }

  @Property
  void just_under_the_most_arrives_and_just_over_does_not(
      @ForAll("sizes") CableSize size,
      @ForAll @DoubleRange(min = 1, max = 300) double length,
      @ForAll @DoubleRange(min = 0.2, max = 1) double powerFactor,
      @ForAll PhaseSystem system) {
    CableRun run = run(size, length, system, system == PhaseSystem.DC ? 1 : powerFactor, 60, 1);
    double most = run.mostWatts(VOLTS);
    assertThat(run.endVolts(most * 0.999999, VOLTS)).isBetween(0.35 * VOLTS, VOLTS);
    assertThat(refuses(run, most * 1.000001)).isTrue();
  }

  private static boolean refuses(CableRun run, double watts) {
    try {
      run.endVolts(watts, VOLTS);
      return false;
    } catch (EvaluationException refusal) {
      return refusal.errorCode() == CableErrorCode.CANNOT_CARRY;
    }
  }

  @Property
  void more_air_more_cables_or_more_conductors_never_raise_a_rating(
      @ForAll("sizes") CableSize size,
      @ForAll Ampacity.Method method,
      @ForAll @DoubleRange(min = -20, max = 50) double ambient,
      @ForAll @IntRange(min = 2, max = 3) int loaded,
      @ForAll @IntRange(min = 1, max = 19) int cables) {
    InstallationMethod bunch = new InstallationMethod(InstallationMethod.Kind.BUNCHED, cables);
    Ampacity rating = Ampacity.find(size, method, ambient, loaded, bunch);
    Assume.that(rating != null);
    double amps = rating.amps();
    assertThat(Ampacity.find(size, method, ambient + 5, loaded, bunch).amps())
        .isLessThanOrEqualTo(amps);
    assertThat(Ampacity.find(size, method, ambient, loaded + 1, bunch).amps())
        .isLessThanOrEqualTo(amps);
    assertThat(
            Ampacity.find(
                    size,
                    method,
                    ambient,
                    loaded,
                    new InstallationMethod(InstallationMethod.Kind.BUNCHED, cables + 1))
                .amps())
        .isLessThanOrEqualTo(amps);
  }

  /** What GAUGE answers meets drop and rating, and the next thinner size does not. */
  @Property
  void a_gauge_is_the_smallest_that_does(
      @ForAll @DoubleRange(min = 1, max = 200) double length,
      @ForAll @DoubleRange(min = 0.5, max = 60) double amps,
      @ForAll @DoubleRange(min = 0.01, max = 0.1) double maxDrop) {
    Sizing.Need need =
        new Sizing.Need(
            length,
            amps,
            VOLTS,
            maxDrop,
            PhaseSystem.ONE,
            0.9,
            30,
            2,
            Ampacity.Method.FLEXIBLE,
            InstallationMethod.FREELY,
            Protection.breaker(amps, Protection.Standard.IEC, true));
    CableSize chosen;
    try {
      chosen = Sizing.gauge(CableSize.Family.METRIC, need);
    } catch (EvaluationException refusal) {
      assertThat(refusal.errorCode()).isEqualTo(CableErrorCode.NO_SIZE_FOR_DROP);
      return;
    }
    assertThat(does(chosen, need)).isTrue();
    for (CableSize thinner : CableSize.series(CableSize.Family.METRIC)) {
      if (thinner.equals(chosen)) {
        return;
      }
      assertThat(does(thinner, need)).as(thinner.toString()).isFalse();
    }
  }

  private static boolean does(CableSize size, Sizing.Need need) {
    Ampacity rating = Ampacity.find(size, need.method(), 30, 2, InstallationMethod.FREELY);
    return rating != null
        && rating.amps() >= need.breaker()
        && run(size, need.length(), PhaseSystem.ONE, 0.9, 60, 1).drop(need.amps())
            <= need.maxDrop() * VOLTS * (1 + 1e-9);
  }

  private static CableRun run(
      CableSize size, double length, PhaseSystem system, double pf, double temp, int parallel) {
    return CableRun.of(size, length, system, system == PhaseSystem.DC ? 1 : pf, temp, parallel);
  }
}
