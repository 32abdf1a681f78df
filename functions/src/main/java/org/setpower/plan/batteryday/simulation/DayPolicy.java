package org.setpower.plan.batteryday.simulation;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;

/**
 * What the rules leave open. All that is tried are schedules that a crew can follow.
 *
 * @param toBreaks whether changes soon after a break are made in it
 * @param chargePartUsed whether a part-used battery goes on a free channel at once
 * @param used which chargers are used, by their place in the day's list
 * @param share of each supply's watts that is used
 * @param toPowerEnd whether a battery charges until the power ends, where it is not full by then
 */
record DayPolicy(
    boolean toBreaks, boolean chargePartUsed, boolean[] used, double share, boolean toPowerEnd) {
  private static final int MOST_SUBSETS = 16;

  static DayPolicy all(int chargers) {
    boolean[] used = new boolean[chargers];
    Arrays.fill(used, true);
    return new DayPolicy(true, true, used, 1, true);
  }

  /** The ways that are tried on a day, the usual one first; of chargers alike only how many. */
  static List<DayPolicy> all(DaySpec day) {
    List<DayPolicy> all = new ArrayList<>();
    List<boolean[]> subsets = subsets(day.chargers());
    for (boolean[] used : subsets) {
      add(all, day, used, 1, true);
    }
    if (day.chargers().stream()
        .anyMatch(c -> c.isLost() || !c.power().equals(PowerHours.always()))) {
      add(all, day, subsets.get(0), 1, false);
    }
    for (double share : shares(day)) {
      add(all, day, subsets.get(0), share, true);
    }
    return List.copyOf(all);
  }

  /** The ways of one choice of chargers that differ on this day. */
  private static void add(
      List<DayPolicy> all, DaySpec day, boolean[] used, double share, boolean toPowerEnd) {
    boolean charges = left(used) < used.length;
    for (int i = 0; i < 4; i++) {
      boolean toBreaks = i < 2;
      boolean partUsed = i % 2 == 0;
      if ((toBreaks || !day.breaks().isEmpty()) && (partUsed || charges)) {
        all.add(new DayPolicy(toBreaks, partUsed, used, share, toPowerEnd));
      }
    }
  }

  /** Which chargers are used: all, then fewer; of chargers alike only how many. */
  private static List<boolean[]> subsets(List<ChargerSpec> chargers) {
    List<List<Integer>> groups = new ArrayList<>();
    for (int i = 0; i < chargers.size(); i++) {
      ChargerSpec charger = chargers.get(i);
      List<Integer> group = null;
      for (List<Integer> known : groups) {
        group = chargers.get(known.get(0)).isLike(charger) ? known : group;
      }
      if (group == null) {
        group = new ArrayList<>();
        groups.add(group);
      }
      group.add(i);
    }
    List<boolean[]> all = new ArrayList<>(List.of(all(chargers.size()).used()));
    for (List<Integer> group : groups) {
      List<boolean[]> before = List.copyOf(all);
      for (int without = 1; without <= group.size() && all.size() < MOST_SUBSETS; without++) {
        for (boolean[] used : before) {
          boolean[] fewer = used.clone();
          for (int k = 0; k < without; k++) {
            fewer[group.get(group.size() - 1 - k)] = false;
          }
          all.add(fewer);
        }
      }
    }
    all.sort(Comparator.comparingInt(DayPolicy::left));
    return all;
  }

  private static int left(boolean[] used) {
    int left = 0;
    for (boolean one : used) {
      left += one ? 0 : 1;
    }
    return left;
  }

  /** Parts of the watts that let fewer channels charge at a time. */
  private static List<Double> shares(DaySpec day) {
    List<Double> shares = new ArrayList<>();
    for (SupplySpec supply : day.supplies()) {
      for (ChargerSpec charger : day.chargers()) {
        for (ChargerSpec.Rate rate : charger.types().values()) {
          boolean limited = charger.supply() == supply.row() && !Double.isInfinite(supply.watts());
          for (int n = 1; limited && n * rate.watts() < supply.watts() && n <= 8; n++) {
            shares.add(n * rate.watts() / supply.watts());
          }
        }
      }
    }
    return shares.stream().distinct().limit(6).toList();
  }
}
