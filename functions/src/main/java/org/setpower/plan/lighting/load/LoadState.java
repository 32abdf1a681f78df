package org.setpower.plan.lighting.load;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.Collections;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.setpower.plan.lighting.load.Timeline.Span;

/**
 * Loads that are on together, with all hours in which just these are.
 *
 * @param on indexes of the loads, rising
 * @param spans quarter hours from and to, in rising order
 */
public record LoadState(int[] on, List<int[]> spans) {
  /** All states of the plan, each once, in the order in which they begin. */
  static List<LoadState> of(List<PlannedLoad> loads) {
    TreeMap<Integer, List<int[]>> changes = new TreeMap<>();
    for (int i = 0; i < loads.size(); i++) {
      if (loads.get(i).isCounted()) {
        for (Span span : loads.get(i).spans()) {
          changes.computeIfAbsent(span.from(), k -> new ArrayList<>()).add(new int[] {i, 1});
          changes.computeIfAbsent(span.to(), k -> new ArrayList<>()).add(new int[] {i, -1});
        }
      }
    }
    Map<BitSet, LoadState> states = new LinkedHashMap<>();
    BitSet active = new BitSet(loads.size());
    Map<Integer, Integer> open = new HashMap<>();
    Integer from = null;
    for (Map.Entry<Integer, List<int[]>> change : changes.entrySet()) {
      if (from != null && !active.isEmpty()) {
        states
            .computeIfAbsent(
                (BitSet) active.clone(),
                a -> new LoadState(a.stream().toArray(), new ArrayList<>()))
            .spans
            .add(new int[] {from, change.getKey()});
      }
      for (int[] c : change.getValue()) {
        // two rows of Days for one date may overlap: a load is on while any of them has it on
        active.set(c[0], open.merge(c[0], c[1], Integer::sum) > 0);
      }
      from = change.getKey();
    }
    return states.isEmpty()
        ? Collections.singletonList(new LoadState(new int[0], new ArrayList<>()))
        : List.copyOf(states.values());
  }

  /** The first quarter hour. */
  public int first() {
    return spans.isEmpty() ? 0 : spans.get(0)[0];
  }

  /** Quarter hours in all. */
  public int quarters() {
    return spans.stream().mapToInt(s -> s[1] - s[0]).sum();
  }

  /** The longest time without a change, quarter hours. */
  public int longest() {
    return spans.stream().mapToInt(s -> s[1] - s[0]).max().orElse(0);
  }

  /** Whether it holds in a quarter hour. */
  public boolean holds(int quarter) {
    return spans.stream().anyMatch(s -> s[0] <= quarter && quarter < s[1]);
  }
}
