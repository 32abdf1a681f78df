package org.setpower.plan.lighting.result;

import java.util.List;

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

  /** What decides the distribution: most figures are made of all of it. */
  static final List<String> PLAN =
      List.of(PROJECT, DAYS, GROUPS, SUPPLIES, OUTLETS, RUNS, LOADS, EQUIPMENT, GENERATORS);

  /** The same, with the sizes that generators come in. */
  static final List<String> PLAN_AND_SIZES =
      List.of(PROJECT, DAYS, GROUPS, SUPPLIES, OUTLETS, RUNS, LOADS, EQUIPMENT, GENERATORS, SIZES);

  private Source() {}
}
