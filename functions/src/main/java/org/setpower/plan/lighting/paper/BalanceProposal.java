package org.setpower.plan.lighting.paper;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.setpower.plan.lighting.input.Connection;
import org.setpower.plan.lighting.input.LegWord;
import org.setpower.plan.lighting.load.Flows;
import org.setpower.plan.lighting.load.LoadState;
import org.setpower.plan.lighting.load.PlannedLoad;
import org.setpower.plan.lighting.network.Node;

/**
 * The exchange of two loads, or the move of one, that lowers the peak of a supply most. It is a
 * proposal; what is decided stays.
 *
 * @param first on the leg that carries most
 * @param firstLeg its leg
 * @param second null where the first one moves alone
 * @param secondLeg where it goes
 * @param before peak now, A
 * @param after peak then, A
 */
public record BalanceProposal(
    PlannedLoad first,
    String firstLeg,
    PlannedLoad second,
    String secondLeg,
    double before,
    double after) {
  private static final int LEGS = 3;

  /** Below it, nobody pulls plugs: common practice. */
  private static final double WORTH = 1;

  /** A load on one leg in the state of the peak. */
  private record Plug(PlannedLoad load, int leg, double amps) {}

  /** The best exchange below a node; null where none is worth it. */
  public static BalanceProposal of(Node node, Flows flows) {
    if (!node.isFed() || Integer.bitCount(node.legs()) < 2) {
      return null;
    }
    int state = peakState(node, flows);
    if (state < 0) {
      return null;
    }
    double[] amps = new double[LEGS];
    int high = 0;
    for (int leg = 0; leg < LEGS; leg++) {
      amps[leg] = flows.amps(state, node, leg);
      high = amps[leg] > amps[high] ? leg : high;
    }
    List<Plug> plugs = plugs(node, flows, state);
    BalanceProposal best = null;
    for (Plug one : plugs) {
      if (one.leg() != high) {
        continue;
      }
      for (int to = 0; to < LEGS; to++) {
        if (to != high && (node.legs() >> to & 1) == 1) {
          best = better(best, one, null, to, amps);
        }
      }
      for (Plug other : plugs) {
        if (other.leg() != high) {
          best = better(best, one, other, other.leg(), amps);
        }
      }
    }
    return best;
  }

  private static int peakState(Node node, Flows flows) {
    int quarter = flows.peak(node).quarter();
    return flows.peak(node).amps() > flows.existing(node) ? flows.stateAt(quarter) : -1;
  }

  private static List<Plug> plugs(Node node, Flows flows, int state) {
    LoadState now = flows.states().get(state);
    List<Plug> plugs = new ArrayList<>();
    IntStream.of(now.on())
        .mapToObj(flows.loads()::get)
        .filter(l -> l.connection() == Connection.LINE_NEUTRAL && l.parts().size() == 1)
        .filter(l -> l.parts().get(0).node().path().contains(node))
        .forEach(
            l -> {
              PlannedLoad.Part part = l.parts().get(0);
              double nominal =
                  l.watts() * part.quantity() / (flows.legVolts(node) * l.powerFactor());
              double amps = nominal * flows.rise(l, part);
              plugs.add(new Plug(l, Integer.numberOfTrailingZeros(part.legs()), amps));
            });
    return plugs;
  }

  /**
   * A move counts only if it beats an exchange, and each only if it lowers the peak by an ampere.
   */
  private static BalanceProposal better(
      BalanceProposal best, Plug one, Plug other, int to, double[] amps) {
    double moved = one.amps() - (other == null ? 0 : other.amps());
    double peak = 0;
    for (int leg = 0; leg < LEGS; leg++) {
      double then =
          leg == one.leg() ? amps[leg] - moved : leg == to ? amps[leg] + moved : amps[leg];
      peak = Math.max(peak, then);
    }
    double before = amps[one.leg()];
    double least = best == null ? before - WORTH : best.after();
    return peak < least - 1e-9
        ? new BalanceProposal(
            one.load(),
            LegWord.text(1 << one.leg()),
            other == null ? null : other.load(),
            LegWord.text(1 << to),
            before,
            peak)
        : best;
  }
}
