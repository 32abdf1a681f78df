package org.setpower.plan.lighting;

import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.function.Predicate;
import org.setpower.plan.common.InputRow;
import org.setpower.plan.common.InputRows;
import org.setpower.plan.finding.Identity;
import org.setpower.plan.lighting.load.PlannedLoad;
import org.setpower.plan.lighting.network.Network;
import org.setpower.plan.lighting.network.Node;

/** Which rows a figure is made of: what hangs on its place, and what feeds it. */
final class LightingRelations {
  private final LightingCalculation plan;
  private final Network network;

  LightingRelations(LightingCalculation plan) {
    this.plan = plan;
    network = plan.network();
  }

  int[] rows(String table, int row, String source) {
    if (table.equals(source) || "project".equals(source)) {
      return new int[] {table.equals(source) ? row : 1};
    }
    Set<Node> places = places(table, row);
    if (places.isEmpty()) {
      return filled(source, r -> true);
    }
    Set<Integer> loads = loads(table, row, places);
    Set<Node> path = new HashSet<>();
    places.forEach(p -> path.addAll(p.path()));
    loads.forEach(l -> plan.loads().get(l).parts().forEach(p -> path.addAll(p.node().path())));
    return switch (source) {
      case "loads" -> filled(source, r -> loads.contains(r.number()));
      case "equipment" -> {
        Set<String> items = new HashSet<>();
        loads.forEach(l -> items.add(Identity.of(plan.loads().get(l).row().value().item())));
        yield plan.inputs()
            .equipment()
            .filled()
            .filter(r -> items.contains(Identity.of(r.value().item())))
            .mapToInt(InputRow::number)
            .toArray();
      }
      case "supplies" -> of(path, source, Node.Kind.SUPPLY);
      case "runs" -> of(path, source, Node.Kind.RUN);
      case "outlets" -> of(path, source, Node.Kind.BREAKER, Node.Kind.OUTLET, Node.Kind.CIRCUIT);
      default -> filled(source, r -> true);
    };
  }

  private int[] of(Set<Node> path, String source, Node.Kind... kinds) {
    Set<Integer> rows = new HashSet<>();
    for (Node node : path) {
      if (List.of(kinds).contains(node.kind())) {
        rows.add(node.row());
      }
    }
    return filled(source, r -> rows.contains(r.number()));
  }

  private Set<Node> places(String table, int row) {
    Set<Node> places = new LinkedHashSet<>();
    switch (table) {
      case "supplies" -> places.add(network.supplies().get(row));
      case "runs" -> places.add(network.runs().get(row));
      case "outlets" -> places.addAll(network.ofGroup(row));
      case "loads" -> plan.loads().get(row).parts().forEach(p -> places.add(p.node()));
      default -> {}
    }
    places.remove(null);
    return places;
  }

  private Set<Integer> loads(String table, int row, Set<Node> places) {
    Set<Integer> loads = new LinkedHashSet<>();
    if ("loads".equals(table)) {
      loads.add(row);
    }
    for (PlannedLoad load : plan.loads().values()) {
      boolean on =
          load.parts().stream().anyMatch(p -> p.node().path().stream().anyMatch(places::contains));
      if (on) {
        loads.add(load.row().number());
      }
    }
    return loads;
  }

  private int[] filled(String source, Predicate<InputRow<?>> belongs) {
    for (InputRows<?> rows : plan.inputs().all()) {
      if (rows.table().key().equals(source)) {
        return rows.filled().filter(belongs).mapToInt(InputRow::number).toArray();
      }
    }
    return new int[0];
  }
}
