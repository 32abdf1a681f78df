package org.setpower.plan.lighting;

import static org.setpower.plan.lighting.LightingSamples.clock;
import static org.setpower.plan.lighting.LightingSamples.day;

import org.setpower.plan.common.Ranges;

/** Lights on batteries beside the mains, on the night of the salt pans. */
final class BatterySamples {
  private BatterySamples() {}

  /** Eight tubes of 50 W on 14.4 V batteries of 98 Wh, a charging station of two channels. */
  static Ranges tubes() {
    return LightingSamples.quay()
        .set("days", 1, "coldest", 15, "warmest", 20)
        .row("groups", "group", "dike", "on", "yes")
        .row("equipment", "item", "LED tube", "watts", 50, "inrush", "electronic", "harmonic", 0.1)
        .row(
            "equipment",
            "item",
            "charging station",
            "watts",
            300,
            "powerFactor",
            0.95,
            "inrush",
            "electronic",
            "harmonic",
            0.1)
        .row(
            "loads",
            "item",
            "charging station",
            "place",
            "A-3",
            "from",
            clock(7, 0),
            "to",
            clock(6, 0))
        .row(
            "batteryTypes",
            "type",
            "98 Wh",
            "chemistry",
            "NMC",
            "ampHours",
            6.8,
            "wattHours",
            98,
            "outputs",
            "12",
            "maxAmps",
            12,
            "owned",
            6,
            "health",
            1)
        .row(
            "batteryLoads",
            "item",
            "LED tube",
            "battery",
            "98 Wh",
            "quantity",
            2,
            "minVolts",
            11,
            "maxVolts",
            17,
            "from",
            clock(8, 0),
            "to",
            clock(11, 0))
        .row(
            "batteryChargers",
            "charger",
            "charging station",
            "channels",
            2,
            "amps",
            3,
            "air",
            15,
            "warmUp",
            0);
  }

  /** Every cell of the three tables is filled. */
  static Ranges filled() {
    return tubes()
        .set("batteryTypes", 1, "cells", 4)
        .set(
            "batteryLoads",
            1,
            "watts",
            40,
            "converter",
            0.9,
            "volts",
            12,
            "fromDay",
            day("2027-02-01"),
            "toDay",
            day("2027-02-01"),
            "group",
            "dike")
        .set(
            "batteryChargers",
            1,
            "types",
            "98 Wh",
            "atOnce",
            1,
            "efficiency",
            0.85,
            "roundTrip",
            20);
  }

  /** One tube all day on two batteries and a small charger: what charges later leaves it dark. */
  static Ranges tight() {
    return filled()
        .set("equipment", 3, "watts", 60)
        .set("batteryTypes", 1, "owned", 2)
        .set("batteryLoads", 1, "quantity", 1, "from", "", "to", "", "converter", "", "watts", 50)
        .set("batteryChargers", 1, "efficiency", 0.9, "atOnce", "", "channels", 1, "warmUp", 0.5)
        .row(
            "days",
            "date",
            day("2027-02-02"),
            "call",
            clock(7, 0),
            "wrap",
            clock(18, 0),
            "warmest",
            20,
            "coldest",
            15)
        .row(
            "comparison",
            "system",
            "1PH",
            "volts",
            230,
            "watts",
            2000,
            "length",
            50,
            "size",
            "2.5 mm²");
  }

  /** Four tubes at once and a charger with power for all its channels. */
  static Ranges channels() {
    return tight()
        .set("equipment", 3, "watts", 600)
        .set("batteryTypes", 1, "owned", 6)
        .set("batteryLoads", 1, "quantity", 4)
        .set("batteryChargers", 1, "channels", 2, "roundTrip", 5);
  }

  /** The second of two days is too cold to charge in, and has too few batteries. */
  static Ranges frost() {
    return tubes()
        .set("batteryTypes", 1, "owned", 4)
        .set("batteryChargers", 1, "air", "")
        .row(
            "days",
            "date",
            day("2027-02-02"),
            "call",
            clock(7, 0),
            "wrap",
            clock(18, 0),
            "warmest",
            2,
            "coldest",
            -6);
  }
}
