package org.setpower.plan.batteryday.simulation;

import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;

/** Results of the searches of the last plans, by all that they depend on. */
final class KeptSearch {
  private static final int MOST_KEPT = 300;

  private static final Map<Key, Found> KEPT = new ConcurrentHashMap<>();

  private KeptSearch() {}

  /** What a search depends on. */
  record Key(
      double call,
      double until,
      AirTemperature air,
      double shelf,
      List<DaySpec.Pause> breaks,
      double near,
      List<UnitSpec> units,
      List<ChargerSpec> chargers,
      List<SupplySpec> supplies,
      int type,
      int most) {}

  /**
   * What was found.
   *
   * @param cost what it took, so that a plan calculated again is no better proven
   */
  record Found(int number, long cost) {}

  static Key key(DaySpec day, int type, int most) {
    return new Key(
        day.call(),
        day.until(),
        day.air(),
        day.shelf(),
        day.breaks(),
        day.near(),
        day.units().stream().map(UnitWork::spec).toList(),
        day.chargers(),
        day.chargers().isEmpty() ? List.of() : day.supplies(),
        type,
        most);
  }

  static Found get(Key key) {
    return KEPT.get(key);
  }

  static void keep(Key key, Found found) {
    if (KEPT.size() >= MOST_KEPT) {
      KEPT.clear();
    }
    KEPT.put(key, found);
  }
}
