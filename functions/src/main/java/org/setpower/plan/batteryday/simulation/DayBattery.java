package org.setpower.plan.batteryday.simulation;

/** A battery while the day runs. */
final class DayBattery {
  /** Where it is. */
  enum Place {
    SHELF,
    ON,
    CHARGING,
    /** Neither used nor charged. */
    AWAY
  }

  final int number;
  final int type;
  double charge;
  Place place = Place.SHELF;
  DayEvent.Charge charging;

  /** Whether it lies on the shelf until a channel is free. */
  boolean waits;

  /** Whether it comes from work: it is as cold as outdoors until it is charged. */
  boolean cold;

  /** Hour at which it arrives; infinite: it is there, or never will be. */
  double arrives = Double.POSITIVE_INFINITY;

  /** Hour from which it is as full as a charger makes it; negative infinity: from call on. */
  double ready = Double.NEGATIVE_INFINITY;

  /** Whether it was on anything. */
  boolean touched;

  DayBattery(BatterySpec spec) {
    number = spec.number();
    type = spec.type();
    charge = spec.charge();
    if (Double.isFinite(spec.from())) {
      arrives = spec.from();
      place = Place.AWAY;
    }
  }

  /** Its state of charge at an hour, while it is on a charger; straight between the steps. */
  double chargeAt(double hour) {
    return charging == null ? charge : at(charging, charge, hour);
  }

  private static double at(DayEvent.Charge c, double from, double hour) {
    if (hour <= c.start()) {
      return from;
    }
    double full = Math.max(from, c.fullCharge());
    if (hour >= c.full()) {
      return full;
    }
    double usable = Math.max(from, Math.min(full, c.usableCharge()));
    if (hour < c.usable()) {
      return from + (usable - from) * (hour - c.start()) / (c.usable() - c.start());
    }
    return usable + (full - usable) * (hour - c.usable()) / (c.full() - c.usable());
  }
}
