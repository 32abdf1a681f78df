package org.setpower.plan.lighting.load;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.setpower.plan.lighting.network.Node;

/** The legs on which the loads of each place hang: of an outlet with five pins perhaps only one. */
public final class UsedLegs {
  private final Map<Node, Integer> legs = new HashMap<>();

  public UsedLegs(List<PlannedLoad> loads) {
    for (PlannedLoad load : loads) {
      for (PlannedLoad.Part part : load.isCounted() ? load.parts() : List.<PlannedLoad.Part>of()) {
        part.node().path().forEach(n -> legs.merge(n, part.legs(), (a, b) -> a | b));
      }
    }
  }

  /** Legs as bits; those that the place has where nothing hangs on it. */
  public int of(Node place) {
    return legs.getOrDefault(place, place.legs());
  }
}
