package org.setpower.plan.lighting.protection;

import java.util.List;
import java.util.Map;
import org.setpower.cable.Protection;
import org.setpower.cable.Protection.Curve;
import org.setpower.plan.finding.Finding;
import org.setpower.plan.lighting.input.LightingFinding;
import org.setpower.plan.lighting.input.SupplySystem;
import org.setpower.plan.lighting.input.SupplyTables.Supply;
import org.setpower.plan.lighting.input.SupplyType;
import org.setpower.plan.lighting.network.Network;
import org.setpower.plan.lighting.network.Node;

/**
 * Whether an earth fault at the end of a cable is disconnected in time: IEC 60364-4-41, by the loop
 * and the curve of a breaker upstream, or by an RCD.
 */
final class FaultCheck {
  /** Times its rated current that a generator sustains in a fault, from memory. */
  private static final double SUSTAINED = 3;

  private final Network network;
  private final Map<Integer, RunCable> cables;
  private final Map<Integer, Double> generatorKva;

  /**
   * The answer for one run.
   *
   * @param ohms loop with source; NaN where it is not known
   */
  record Answer(Disconnection disconnection, double ohms) {}

  /** The least and the most that an upstream breaker needs to open at once, A. */
  private record Trip(double least, double most) {}

  /**
   * @param cables by row of Cable runs
   * @param generatorKva size by row of Sources & distro, where it is decided
   */
  FaultCheck(Network network, Map<Integer, RunCable> cables, Map<Integer, Double> generatorKva) {
    this.network = network;
    this.cables = cables;
    this.generatorKva = generatorKva;
  }

  Answer check(Node run, List<Finding> findings) {
    Node root = run.root();
    Supply source = network.supply(root);
    double cable = 0;
    for (Node n : run.path()) {
      if (n.kind() == Node.Kind.RUN) {
        cable += cables.get(n.row()).loopOhms();
      }
    }
    if (Double.isNaN(cable)) {
      return new Answer(Disconnection.UNKNOWN, Double.NaN);
    }
    boolean generator = source.type() == SupplyType.GENERATOR;
    Double kva = generatorKva.get(root.row());
    double limit =
        generator && kva != null ? sustained(source, root, kva) : Double.POSITIVE_INFINITY;
    double zs = source.zs() == null ? 0 : source.zs();
    boolean known = source.zs() != null && (!generator || kva != null);
    double fault = Protection.faultAmps(zs + cable, network.legVolts(root));
    double amps = Math.min(limit, fault);
    Trip trip = trip(run);
    Disconnection answer;
    if (known && amps >= trip.most()) {
      answer = Disconnection.YES;
    } else if (hasRcd(run)) {
      answer = Disconnection.BY_RCD;
    } else if (amps < trip.least()) {
      answer = Disconnection.NO;
      if (!Double.isInfinite(trip.least())) {
        findings.add(
            Finding.of(
                limit < fault ? LightingFinding.FAULT_GENERATOR : LightingFinding.FAULT_SLOW,
                amps,
                trip.least()));
      }
    } else {
      answer = Disconnection.UNKNOWN;
      // the NEC goes by the size of the earth conductor (250.122) and asks for no loop impedance
      if (!network.isAmerican(root) || source.zs() != null) {
        findings.add(Finding.of(LightingFinding.FAULT_OPEN));
      }
    }
    return new Answer(answer, source.zs() == null ? Double.NaN : zs + cable);
  }

  private double sustained(Supply source, Node root, double kva) {
    double volts =
        source.system() == SupplySystem.THREE
            ? 3 * network.legVolts(root)
            : source.system() == SupplySystem.SPLIT
                ? 2 * network.legVolts(root)
                : network.legVolts(root);
    return SUSTAINED * kva * 1000 / volts;
  }

  /** Any breaker between the fault and the source may open: the most sensitive one counts. */
  private static Trip trip(Node run) {
    double least = Double.POSITIVE_INFINITY;
    double most = Double.POSITIVE_INFINITY;
    Node circuit =
        run.children().stream().filter(c -> c.kind() == Node.Kind.CIRCUIT).findFirst().orElse(run);
    for (Node n : circuit.path()) {
      boolean upstream = n == circuit && circuit != run || n != circuit && n != run;
      if (upstream && !Double.isNaN(n.breaker())) {
        Curve fast = n.curve() == null ? Curve.B : n.curve();
        Curve slow = n.curve() == null ? Curve.D : n.curve();
        least = Math.min(least, Protection.tripAmps(n.breaker(), fast));
        most = Math.min(most, Protection.tripAmps(n.breaker(), slow));
      }
    }
    return new Trip(least, most);
  }

  private static boolean hasRcd(Node run) {
    return run.path().stream().skip(1).anyMatch(n -> n.rcd().isThere())
        || run.children().stream()
            .anyMatch(c -> c.kind() == Node.Kind.CIRCUIT && c.rcd().isThere());
  }
}
