package org.setpower.plan.lighting.protection;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.setpower.plan.finding.Finding;
import org.setpower.plan.lighting.input.Connector;
import org.setpower.plan.lighting.input.LightingFinding;
import org.setpower.plan.lighting.input.SupplyType;
import org.setpower.plan.lighting.load.Flows;
import org.setpower.plan.lighting.load.LoadState;
import org.setpower.plan.lighting.load.PlannedLoad;
import org.setpower.plan.lighting.network.Network;
import org.setpower.plan.lighting.network.Node;

/** How many plugs of loads and cable runs are in a place at one time. */
public final class Plugs {
  private final Network network;
  private final int[] most;

  public Plugs(Network network, Flows flows) {
    this.network = network;
    int count = network.nodes().size();
    int[] runs = new int[count];
    for (Node node : network.nodes()) {
      runs[node.index()] =
          (int) node.children().stream().filter(c -> c.kind() == Node.Kind.RUN).count();
    }
    most = runs.clone();
    int[] now = new int[count];
    for (LoadState state : flows.states()) {
      System.arraycopy(runs, 0, now, 0, count);
      for (int i : state.on()) {
        for (PlannedLoad.Part part : flows.loads().get(i).parts()) {
          now[part.node().index()] += (int) part.quantity();
        }
      }
      Arrays.setAll(most, n -> Math.max(most[n], now[n]));
    }
  }

  /** Plugs in a place; a place with terminals, or with one circuit after another, has room. */
  public int at(Node node) {
    return node.isFed() && isSingle(node) ? most[node.index()] : 0;
  }

  /** Whether one plug fits: an outlet, the end of a cable, the socket of a house or a ship. */
  private boolean isSingle(Node node) {
    return switch (node.kind()) {
      case SUPPLY -> network.supply(node).type() == SupplyType.SOCKET_OUTLET;
      case RUN -> node.children().stream().allMatch(c -> c.kind() == Node.Kind.RUN) && isPlug(node);
      case OUTLET ->
          node.children().stream().noneMatch(c -> c.kind() == Node.Kind.CIRCUIT) && isPlug(node);
      default -> false;
    };
  }

  private boolean isPlug(Node node) {
    Connector connector = network.connector(node);
    return connector == null ? node.kind() == Node.Kind.RUN : connector.isPlug();
  }

  /** What to say of places with several plugs. */
  Optional<Finding> finding(List<Node> places) {
    if (places.isEmpty()) {
      return Optional.empty();
    }
    List<String> names = new ArrayList<>();
    places.forEach(n -> names.add(n.name()));
    int plugs = places.stream().mapToInt(this::at).max().orElse(0);
    return Optional.of(Finding.of(LightingFinding.SPLITTER, String.join(", ", names), plugs));
  }

  /** Places that need a splitter. */
  public List<Node> split() {
    return network.nodes().stream().filter(n -> at(n) > 1).toList();
  }
}
