package org.setpower.plan.batteries;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.Deque;
import java.util.List;
import java.util.TreeMap;

/**
 * The rules of the charging cart played through minute by minute, for plans whose moments all fall
 * on whole minutes. Knows nothing of the plan that it checks.
 */
final class MinuteSimulation {
  /** A device: minutes from and to, how many minutes its packs last, their size, how many. */
  record Load(int from, int to, int lasts, int size, int atOnce) {}

  private record Slot(int size, int left) {}

  final List<String> log = new ArrayList<>();
  int minutesDark;

  /**
   * @param pieces packs of each size
   * @param chargeMinutes of each size
   * @param mains whether there is mains in a minute
   */
  MinuteSimulation(
      List<Load> loads,
      TreeMap<Integer, Integer> pieces,
      int channels,
      TreeMap<Integer, Integer> chargeMinutes,
      boolean[] mains) {
    TreeMap<Integer, Integer> full = new TreeMap<>(pieces);
    Deque<Integer> queue = new ArrayDeque<>();
    List<Slot> charging = new ArrayList<>();
    int n = loads.size();
    int[] left = new int[n];
    int[] held = new int[n];
    int[] darkSince = new int[n];
    boolean[] begun = new boolean[n];
    Arrays.fill(darkSince, -1);
    for (int now = 0; now < mains.length; now++) {
      for (Slot s : List.copyOf(charging)) {
        if (s.left == 0) {
          charging.remove(s);
          full.merge(s.size, 1, Integer::sum);
          log.add(now + " back " + s.size);
        }
      }
      List<Integer> wanting = new ArrayList<>();
      for (int i = 0; i < n; i++) {
        if (darkSince[i] >= 0 && now < loads.get(i).to) {
          wanting.add(i);
        }
      }
      int waited = wanting.size();
      for (int i = 0; i < n; i++) {
        Load l = loads.get(i);
        if (held[i] > 0 && left[i] == 0 && now < l.to) {
          for (int k = 0; k < held[i]; k++) {
            queue.add(l.size);
          }
          held[i] = 0;
          wanting.add(i);
        } else if (now == l.from) {
          wanting.add(i);
        }
      }
      for (int i = 0; i < n; i++) {
        Load l = loads.get(i);
        if (now == l.to) {
          for (int k = 0; k < held[i]; k++) {
            queue.add(l.size);
          }
          held[i] = 0;
          darkSince[i] = -1;
          log.add(now + " ends " + (i + 1));
        }
      }
      while (!queue.isEmpty() && charging.size() < channels) {
        int size = queue.poll();
        charging.add(new Slot(size, chargeMinutes.get(size)));
      }
      // Those that are dark longest first, then this minute's by row.
      List<Integer> order = new ArrayList<>(wanting.subList(0, waited));
      order.sort(Comparator.comparingInt((Integer i) -> darkSince[i]).thenComparing(i -> i));
      List<Integer> fresh = new ArrayList<>(wanting.subList(waited, wanting.size()));
      fresh.sort(null);
      order.addAll(fresh);
      for (int i : order) {
        Load l = loads.get(i);
        if (full.getOrDefault(l.size, 0) >= l.atOnce) {
          full.merge(l.size, -l.atOnce, Integer::sum);
          held[i] = l.atOnce;
          left[i] = l.lasts;
          String what = begun[i] ? darkSince[i] >= 0 ? "on again" : "swap" : "starts";
          begun[i] = true;
          darkSince[i] = -1;
          for (int k = 0; k < l.atOnce; k++) {
            log.add(now + " " + what + " " + (i + 1));
          }
        } else if (darkSince[i] < 0) {
          darkSince[i] = now;
          log.add(now + " runs dry " + (i + 1));
        }
      }
      for (int i = 0; i < n; i++) {
        left[i] -= held[i] > 0 ? 1 : 0;
        minutesDark += darkSince[i] >= 0 ? 1 : 0;
      }
      if (mains[now]) {
        charging.replaceAll(s -> new Slot(s.size, s.left - 1));
      }
    }
  }
}
