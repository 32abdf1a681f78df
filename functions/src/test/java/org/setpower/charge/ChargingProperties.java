package org.setpower.charge;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.TreeSet;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.DoubleRange;
import org.assertj.core.data.Percentage;
import org.setpower.OdeReference;
import org.setpower.pack.Chemistry;
import org.setpower.pack.Pack;

/** What holds for every pack on every charger; the hours against an integrator. */
class ChargingProperties {
  private static final double AMP_HOURS = 10;
  private static final double MILLIOHMS = 40;

  private static Charging charging(Chemistry chemistry, double rate) {
    return Charging.of(chemistry, 1, AMP_HOURS, MILLIOHMS, rate * AMP_HOURS, 25);
  }

  @Provide
  Arbitrary<Chemistry> lithium() {
    return Arbitraries.of(Chemistry.LI_ION, Chemistry.LFP);
  }

  @Provide
  Arbitrary<Double> rates() {
    return Arbitraries.doubles().between(0.02, 1);
  }

  @Provide
  Arbitrary<Double> shares() {
    return Arbitraries.doubles().between(0, 0.95);
  }

  /** dt = dq/I, integrated over the charge between the kinks of the curve and of the charger. */
  @Property(tries = 100)
  void an_integrator_takes_as_long_as_the_closed_form(
      @ForAll("lithium") Chemistry chemistry,
      @ForAll("rates") double rate,
      @ForAll("shares") double from) {
    Charging charging = charging(chemistry, rate);
    Pack cell = Pack.of(chemistry, 1, AMP_HOURS, MILLIOHMS, 1, 25);
    double limit = chemistry.fullVolts();
    double amps = rate * AMP_HOURS;
    double endAmps = Math.min(amps, Charging.END_RATE * AMP_HOURS);
    double end = cell.curve().charge(limit - endAmps * MILLIOHMS / 1000);
    TreeSet<Double> kinks = new TreeSet<>(List.of(from, charging.turningCharge(), end));
    for (int i = 0; i <= cell.curve().segments(); i++) {
      kinks.add(cell.curve().chargeAt(i));
    }
    double hours = 0;
    double before = from;
    for (double kink : kinks.tailSet(from, false).headSet(Math.max(from, end), true)) {
      boolean falling = before >= charging.turningCharge();
      hours +=
          OdeReference.after(
              kink - before,
              new double[] {0, before},
              t -> {
                double most = (limit - cell.restVolts(t[1])) / (MILLIOHMS / 1000);
                return new double[] {AMP_HOURS / (falling ? most : amps), 1};
              })[0];
      before = kink;
    }
    assertThat(charging.hours(from, 1)).isCloseTo(hours, within(1e-9 * (1 + hours)));
  }

  @Property(tries = 10000)
  void two_charges_take_as_long_as_one(
      @ForAll("lithium") Chemistry chemistry,
      @ForAll("rates") double rate,
      @ForAll("shares") double a,
      @ForAll("shares") double b) {
    Charging charging = charging(chemistry, rate);
    double from = Math.min(a, b);
    double middle = Math.max(a, b);
    assertThat(charging.hours(from, middle) + charging.hours(middle, 1))
        .isCloseTo(charging.hours(from, 1), within(1e-9));
    double wall = Charging.wallWattHours(100, from, middle, 0.8);
    assertThat(wall + Charging.wallWattHours(100, middle, 1, 0.8))
        .isCloseTo(Charging.wallWattHours(100, from, 1, 0.8), Percentage.withPercentage(1e-9));
  }

  @Property(tries = 10000)
  void no_charge_is_quicker_than_its_amps(
      @ForAll("lithium") Chemistry chemistry,
      @ForAll("rates") double rate,
      @ForAll("shares") double to) {
    Charging charging = charging(chemistry, rate);
    double least = to / rate;
    if (to <= charging.turningCharge()) {
      assertThat(charging.hours(0, to)).isCloseTo(least, within(1e-9));
    }
    assertThat(charging.hours(0, 1))
        .isGreaterThanOrEqualTo(charging.turningCharge() / rate * (1 - 1e-12));
  }

  @Property(tries = 10000)
  void the_cold_never_shortens_a_charge(
      @ForAll("rates") double rate,
      @ForAll("shares") double from,
      @ForAll @DoubleRange(min = 0, max = 25) double temp,
      @ForAll @DoubleRange(min = 0.1, max = 300) double milliohms) {
    double warm =
        Charging.of(Chemistry.LI_ION, 1, AMP_HOURS, milliohms, rate * AMP_HOURS, 25).hours(from, 1);
    double cold =
        Charging.of(Chemistry.LI_ION, 1, AMP_HOURS, milliohms, rate * AMP_HOURS, temp)
            .hours(from, 1);
    assertThat(cold).isGreaterThanOrEqualTo(warm);
  }

  @Property(tries = 10000)
  void a_stronger_charger_is_never_slower(
      @ForAll("lithium") Chemistry chemistry,
      @ForAll("rates") double rate,
      @ForAll("rates") double other) {
    double slow = charging(chemistry, Math.min(rate, other)).hours(0, 0.9);
    double fast = charging(chemistry, Math.max(rate, other)).hours(0, 0.9);
    assertThat(fast).isLessThanOrEqualTo(slow * (1 + 1e-12));
  }
}
