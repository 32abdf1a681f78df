package org.setpower.plan.lighting.load;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.setpower.plan.finding.Finding;
import org.setpower.plan.lighting.input.LegWord;
import org.setpower.plan.lighting.input.LightingFinding;
import org.setpower.plan.lighting.network.Network;
import org.setpower.plan.lighting.network.Node;

/**
 * Suggests legs for loads whose outlet leaves them open: the largest first, each on legs that no
 * upstream breaker is too small for, of these on those of its source that carry least while it is
 * on. Decided loads stay.
 */
final class LegSuggestion {
  private static final double OVER_FIRST = 1e6;
  private static final int[][] CHOICES = {{1, 2, 4}, {3, 6, 5}};

  private final List<PlannedLoad> loads;
  private final LoadTable table;

  /** Quarter hours to amps of each leg, by source, as a step function over changes. */
  private final Map<Node, List<Placed>> placed = new HashMap<>();

  private final Network network;

  private record Placed(PlannedLoad load, int legs, double amps) {}

  private record Open(PlannedLoad load, PlannedLoad.Part part, double size) {}

  LegSuggestion(LoadTable table, Network network) {
    this.table = table;
    this.network = network;
    loads = table.loads();
  }

  void suggest() {
    List<Open> open = new ArrayList<>();
    for (PlannedLoad load : loads) {
      for (PlannedLoad.Part part : load.parts()) {
        double size = load.watts() * part.quantity() / load.powerFactor();
        if (!part.node().isFed() || Double.isNaN(size) || load.spans().isEmpty()) {
          continue;
        }
        if (part.isOpen()) {
          open.add(new Open(load, part, size));
        } else {
          place(load, part.node(), part.legs(), size);
        }
      }
    }
    open.sort(Comparator.comparingDouble((Open o) -> o.size()).reversed());
    for (Open o : open) {
      int best = best(o);
      o.part().suggest(best);
      table.draw(o.load(), o.part());
      place(o.load(), o.part().node(), best, o.size());
      Finding finding = Finding.of(LightingFinding.LEG_OPEN, LegWord.text(best));
      if (!o.load().findings().contains(finding)) {
        o.load().findings().add(finding);
      }
    }
  }

  private void place(PlannedLoad load, Node place, int legs, double size) {
    Placed piece = new Placed(load, legs, size / Math.max(1, Integer.bitCount(legs)));
    for (Node node = place; node != null; node = node.parent()) {
      if (node.parent() == null || isBreaker(node)) {
        placed.computeIfAbsent(node, k -> new ArrayList<>()).add(piece);
      }
    }
  }

  private static boolean isBreaker(Node node) {
    return node.breaker() < Double.POSITIVE_INFINITY;
  }

  /** VA of each leg of a place while a load is on. */
  private double[] carried(Node place, PlannedLoad load) {
    double[] carried = new double[LegCurrents.LEGS];
    for (Placed p : placed.getOrDefault(place, List.of())) {
      if (overlap(p.load(), load)) {
        for (int leg = 0; leg < LegCurrents.LEGS; leg++) {
          carried[leg] += (p.legs() >> leg & 1) * p.amps();
        }
      }
    }
    return carried;
  }

  /**
   * By how much each leg of a place is over the upstream breakers with a piece more, VA at most.
   */
  private double[] excess(Open open) {
    double[] excess = new double[LegCurrents.LEGS];
    Node root = open.part().node().root();
    double piece = open.size() / open.load().connection().legs();
    for (Node node = open.part().node(); node != null; node = node.parent()) {
      if (isBreaker(node)) {
        double[] carried = carried(node, open.load());
        double most = node.breaker() * network.legVolts(root);
        for (int leg = 0; leg < LegCurrents.LEGS; leg++) {
          excess[leg] = Math.max(excess[leg], carried[leg] + piece - most);
        }
      }
    }
    return excess;
  }

  private int best(Open open) {
    double[] carried = carried(open.part().node().root(), open.load());
    double[] excess = excess(open);
    int best = 0;
    double least = Double.POSITIVE_INFINITY;
    for (int legs : CHOICES[open.load().connection().legs() - 1]) {
      if ((legs & ~open.part().node().legs()) == 0) {
        double highest = 0;
        double sum = 0;
        double over = 0;
        for (int leg = 0; leg < LegCurrents.LEGS; leg++) {
          if ((legs >> leg & 1) == 1) {
            highest = Math.max(highest, carried[leg]);
            sum += carried[leg];
            over = Math.max(over, excess[leg]);
          }
        }
        double rank = over * OVER_FIRST + highest + sum * 1e-3;
        if (rank < least - 1e-9) {
          least = rank;
          best = legs;
        }
      }
    }
    return best;
  }

  private static boolean overlap(PlannedLoad one, PlannedLoad other) {
    if (one.spans().equals(other.spans())) {
      return true;
    }
    return one.spans().stream()
        .anyMatch(
            a -> other.spans().stream().anyMatch(b -> a.from() < b.to() && b.from() < a.to()));
  }
}
