package org.setpower.plan.lighting.result;

/** The tables to fill, as result columns name what they are made of. */
final class Source {
  static final String PROJECT = "project.*";
  static final String DAYS = "days.*";
  static final String GROUPS = "groups.*";
  static final String SIZES = "sizes.*";
  static final String SUPPLIES = "supplies.*";
  static final String OUTLETS = "outlets.*";
  static final String RUNS = "runs.*";
  static final String LOADS = "loads.*";
  static final String EQUIPMENT = "equipment.*";
  static final String GENERATORS = "generators.*";
  static final String STOCK = "cableStock.*";
  static final String READINGS = "readings.*";
  static final String COMPARISON = "comparison.*";
  static final String BATTERY_TYPES = "batteryTypes.*";
  static final String BATTERY_LOADS = "batteryLoads.*";
  static final String BATTERY_CHARGERS = "batteryChargers.*";

  private Source() {}
}
