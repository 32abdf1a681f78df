package org.setpower.pack;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Assume;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.assertj.core.data.Percentage;
import org.setpower.OdeReference;
import org.setpower.base.EvaluationException;

/** What holds for every pack and device; the hours against an integrator. */
class DischargeProperties {
  /** A pack and a device as anybody could type them. */
  record Job(
      Chemistry chemistry,
      double cells,
      double ampHours,
      double milliohms,
      double temp,
      double rate,
      double cutoffPerCell,
      double leadMilliohms,
      double start) {
    Pack pack() {
      return Pack.of(chemistry, cells, ampHours, milliohms, 1, temp);
    }

    double watts() {
      return rate * ampHours * cells * 3.5;
    }

    DeviceLoad load() {
      return new DeviceLoad(watts(), cutoffPerCell * cells, leadMilliohms / 1000);
    }

    /** The discharge; jobs that do not start are left out. */
    Discharge discharge() {
      try {
        return Discharge.of(pack(), load(), start, 0);
      } catch (EvaluationException refusal) {
        requireCannotRun(refusal);
        Assume.that(false);
        throw refusal;
      }
    }

    Job with(double factor, double milliohmFactor) {
      return new Job(
          chemistry,
          cells,
          ampHours * factor,
          milliohms * milliohmFactor,
          temp,
          rate,
          cutoffPerCell,
          leadMilliohms * milliohmFactor,
          start);
    }
  }

  @Provide
  Arbitrary<Job> jobs() {
    Arbitrary<Chemistry> chemistries =
        Arbitraries.of(Chemistry.LI_ION, Chemistry.LFP, Chemistry.LEAD);
    return chemistries.flatMap(
        c ->
            Combinators.combine(
                    Arbitraries.integers().between(1, 16),
                    Arbitraries.doubles().between(1, 100),
                    Arbitraries.doubles().between(0, 80),
                    Arbitraries.doubles().between(c == Chemistry.LI_ION ? -20 : 20, 45),
                    Arbitraries.doubles().between(0.02, 2).ofScale(6),
                    Arbitraries.doubles().between(0, 1.2),
                    Arbitraries.doubles().between(0, 100),
                    Arbitraries.doubles().between(0.05, 1))
                .as(
                    (cells, ah, r, temp, rate, cutoff, lead, start) ->
                        new Job(
                            c,
                            cells,
                            ah,
                            r * cells / ah,
                            temp,
                            rate,
                            cutoff * c.floorVolts(),
                            lead / ah,
                            start)));
  }

  /**
   * The amps that deliver the watts behind the resistance, found by repetition: I = P/(E − I·R).
   */
  private static double amps(double watts, double ohms, double volts) {
    double amps = watts / volts;
    double before = 0;
    for (int i = 0; i < 10_000 && Math.abs(amps - before) > 1e-15 * amps; i++) {
      before = amps;
      amps = watts / (volts - amps * ohms);
    }
    return amps;
  }

  /** dt = dq/I, integrated over the charge line by line, since the curve has kinks. */
  @Property(tries = 200)
  void an_integrator_takes_as_long_as_the_closed_form(@ForAll("jobs") Job job) {
    Discharge discharge = job.discharge();
    Assume.that(discharge.end() != Discharge.End.COLLAPSE);
    Pack pack = job.pack();
    double ohms = pack.ohms() + job.leadMilliohms / 1000;
    double hours = 0;
    double upper = pack.usable(job.start);
    double end = pack.usable(discharge.endCharge());
    for (int i = pack.curve().segmentBelow(upper); i >= 0; i--) {
      double lower = Math.max(end, pack.curve().chargeAt(i));
      if (upper > lower) {
        hours +=
            OdeReference.after(
                upper - lower,
                new double[] {0, upper},
                t -> {
                  double amps = amps(job.watts(), ohms, pack.restVolts(Math.max(0, t[1])));
                  return new double[] {pack.ampHours() / amps, -1};
                })[0];
      }
      if (lower == end) {
        break;
      }
      upper = lower;
    }
    assertThat(discharge.hours()).isCloseTo(hours, Percentage.withPercentage(1e-7));
  }

  /** Watt-hours at the device and heat in pack and lead are what the open circuit has given. */
  @Property(tries = 200)
  void no_energy_is_lost(@ForAll("jobs") Job job) {
    Discharge discharge = job.discharge();
    Assume.that(discharge.end() != Discharge.End.COLLAPSE);
    Pack pack = job.pack();
    double ohms = pack.ohms() + job.leadMilliohms / 1000;
    double given = 0;
    double heat = 0;
    double upper = pack.usable(job.start);
    double end = pack.usable(discharge.endCharge());
    for (int i = pack.curve().segmentBelow(upper); i >= 0; i--) {
      double lower = Math.max(end, pack.curve().chargeAt(i));
      given +=
          (pack.restVolts(upper) + pack.restVolts(lower)) / 2 * (upper - lower) * pack.ampHours();
      heat += heat(discharge, pack.held(upper), pack.held(lower)) * pack.heldAmpHours() * ohms;
      if (lower == end) {
        break;
      }
      upper = lower;
    }
    assertThat(job.watts() * discharge.hours() + heat)
        .isCloseTo(given, Percentage.withPercentage(1e-6));
  }

  /** ∫ I dq by Simpson's rule. */
  private static double heat(Discharge discharge, double upper, double lower) {
    int panels = 200;
    double sum = 0;
    for (int i = 0; i <= panels; i++) {
      double weight = i == 0 || i == panels ? 1 : i % 2 == 0 ? 2 : 4;
      double charge = i == panels ? lower : upper + (lower - upper) * i / panels;
      sum += weight * discharge.at(charge).amps();
    }
    return sum * (upper - lower) / (3 * panels);
  }

  private static Discharge warming(Job job) {
    try {
      return Discharge.warming(job.pack(), job.load(), job.start, 0);
    } catch (EvaluationException refusal) {
      requireCannotRun(refusal);
      Assume.that(false);
      throw refusal;
    }
  }

  /** Charge, hours and warmth of a pack that warms itself, integrated over the charge. */
  @Property(tries = 100)
  void an_integrator_warms_a_cold_pack_as_much(@ForAll("jobs") Job job) {
    Assume.that(job.chemistry == Chemistry.LI_ION && job.temp < 20);
    Discharge discharge = warming(job);
    Assume.that(discharge.end() != Discharge.End.COLLAPSE);
    Pack cold = job.pack();
    double lead = job.leadMilliohms / 1000;
    double size = job.cells * job.ampHours;
    double[] state = {0, job.temp, job.start};
    int parts = 40;
    for (int i = 0; i < parts; i++) {
      state =
          OdeReference.after(
              (job.start - discharge.endCharge()) / parts,
              state,
              t -> {
                Pack pack = cold.at(t[1]);
                double amps =
                    amps(job.watts(), pack.ohms() + lead, pack.restVolts(pack.usable(t[2])));
                double hours = cold.heldAmpHours() / amps;
                double kelvin =
                    (amps * amps * pack.ohms() - 0.058 * size * (t[1] - job.temp)) / (18 * size);
                return new double[] {hours, kelvin * 3600 * hours, -1};
              });
    }
    assertThat(discharge.hours()).isCloseTo(state[0], Percentage.withPercentage(0.5));
    assertThat(discharge.endTemp()).isCloseTo(Math.min(25, state[1]), within(0.5));
    Pack end = cold.at(state[1]);
    double limit = end.usable(discharge.endCharge()) == 0 ? 0 : job.load().endVolts(end);
    assertThat(discharge.endVolts())
        .isCloseTo(
            Math.max(limit, end.restVolts(end.usable(discharge.endCharge()))),
            Percentage.withPercentage(1));
  }

  @Property(tries = 300)
  void a_pack_that_warms_itself_never_gives_less(@ForAll("jobs") Job job) {
    assertThat(warming(job).hours()).isGreaterThanOrEqualTo(job.discharge().hours() * (1 - 1e-9));
  }

  @Property(tries = 300)
  void without_a_loss_it_stays_cold(@ForAll("jobs") Job job) {
    Job lossless = job.with(1, 0);
    Assume.that(lossless.temp < 25);
    assertThat(warming(lossless).hours())
        .isCloseTo(lossless.discharge().hours(), Percentage.withPercentage(1e-9));
    assertThat(warming(lossless).endTemp()).isCloseTo(job.temp, within(1e-9));
  }

  @Property(tries = 300)
  void a_pack_k_times_the_size_feeds_k_times_the_watts_as_long(
      @ForAll("jobs") Job job, @ForAll("factors") double k) {
    assertThat(job.with(k, 1 / k).discharge().hours())
        .isCloseTo(job.discharge().hours(), Percentage.withPercentage(1e-9));
  }

  @Provide
  Arbitrary<Double> factors() {
    return Arbitraries.doubles().between(1.01, 10);
  }

  @Property(tries = 300)
  void more_resistance_never_lasts_longer(@ForAll("jobs") Job job, @ForAll("factors") double k) {
    assertThat(hoursOrNone(job.with(1, k), job.with(1, k).load()))
        .isLessThanOrEqualTo(job.discharge().hours() * (1 + 1e-12));
  }

  @Property(tries = 300)
  void more_watts_or_a_higher_cutoff_never_last_longer(
      @ForAll("jobs") Job job, @ForAll("factors") double k) {
    double hours = job.discharge().hours();
    DeviceLoad harder =
        new DeviceLoad(job.watts() * k, job.load().cutoffVolts(), job.load().leadOhms());
    DeviceLoad fussier =
        new DeviceLoad(job.watts(), job.load().cutoffVolts() * k, job.load().leadOhms());
    assertThat(hoursOrNone(job, harder)).isLessThanOrEqualTo(hours / k * (1 + 1e-9));
    assertThat(hoursOrNone(job, fussier)).isLessThanOrEqualTo(hours * (1 + 1e-12));
  }

  /** 0 only where the device cannot run at all; any other refusal is a fault of the calculation. */
  private static double hoursOrNone(Job job, DeviceLoad load) {
    try {
      return Discharge.of(job.pack(), load, job.start, 0).hours();
    } catch (EvaluationException refusal) {
      requireCannotRun(refusal);
      return 0;
    }
  }

  private static void requireCannotRun(EvaluationException refusal) {
    assertThat(refusal.errorCode())
        .as(refusal.getMessage())
        .isIn(PackErrorCode.DOES_NOT_START, PackErrorCode.NOTHING_TO_USE);
  }

  @Property(tries = 300)
  void a_job_in_two_parts_takes_as_long_as_in_one(
      @ForAll("jobs") Job job, @ForAll("shares") double share) {
    Discharge whole = job.discharge();
    double middle = whole.endCharge() + (job.start - whole.endCharge()) * share;
    double first = Discharge.of(job.pack(), job.load(), job.start, middle).hours();
    double second = Discharge.of(job.pack(), job.load(), middle, 0).hours();
    assertThat(first + second).isCloseTo(whole.hours(), Percentage.withPercentage(1e-9));
    assertThat(whole.at(middle).hours()).isCloseTo(first, Percentage.withPercentage(1e-9));
  }

  @Provide
  Arbitrary<Double> shares() {
    return Arbitraries.doubles().between(0.05, 0.95);
  }

  @Property(tries = 300)
  void it_starts_just_above_the_share_that_is_named_and_not_below(@ForAll("jobs") Job job) {
    double share = 0;
    try {
      share = Discharge.startsAbove(job.pack(), job.load());
    } catch (EvaluationException refusal) {
      requireCannotRun(refusal);
      Assume.that(false);
    }
    Assume.that(share > 1e-6 && share < 1 - 1e-6);
    assertThat(hoursFrom(job, share + 1e-9)).isPositive();
    assertThat(hoursFrom(job, share - 1e-9)).isZero();
  }

  private static double hoursFrom(Job job, double start) {
    try {
      return Discharge.of(job.pack(), job.load(), start, 0).hours();
    } catch (EvaluationException refusal) {
      requireCannotRun(refusal);
      return 0;
    }
  }

  @Property(tries = 300)
  void the_device_sees_its_watts_at_every_moment(
      @ForAll("jobs") Job job, @ForAll("shares") double share) {
    Discharge d = job.discharge();
    Discharge.Moment m = d.at(d.endCharge() + (job.start - d.endCharge()) * share);
    assertThat(m.deviceVolts() * m.amps()).isCloseTo(job.watts(), Percentage.withPercentage(1e-9));
    assertThat(m.deviceVolts()).isGreaterThanOrEqualTo(job.load().cutoffVolts() * (1 - 1e-12));
  }
}
