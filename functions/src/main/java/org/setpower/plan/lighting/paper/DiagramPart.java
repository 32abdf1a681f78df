package org.setpower.plan.lighting.paper;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.Function;
import org.setpower.plan.finding.Finding;
import org.setpower.plan.finding.Severity;
import org.setpower.plan.lighting.input.LegWord;
import org.setpower.plan.lighting.load.Flows;
import org.setpower.plan.lighting.load.PlannedLoad;
import org.setpower.plan.lighting.network.Network;
import org.setpower.plan.lighting.network.Node;
import org.setpower.plan.lighting.protection.RunJudge;

/**
 * A part of the single-line diagram, as data: what it is, what it hangs on, its texts.
 *
 * @param kind source, distro, outlet, run, loads or idle
 * @param above number of the part it hangs on, from 1; 0 for a source
 * @param over text above its line
 * @param under text below its line
 * @param stops what is a stop, to be boxed
 */
public record DiagramPart(
    String kind, String name, int above, String over, String under, List<Finding> stops) {
  /** Makes the parts of all sources, from left to right and top to bottom. */
  public static List<DiagramPart> of(
      Network network,
      Flows flows,
      Map<Integer, RunJudge.State> runs,
      Function<Node, List<Finding>> findings) {
    Builder builder = new Builder(network, flows, runs, findings);
    network.nodes().stream().filter(n -> n.parent() == null).forEach(n -> builder.add(n, 0));
    return builder.parts;
  }

  /** Walks the tree. */
  private static final class Builder {
    private final Network network;
    private final Flows flows;
    private final Map<Integer, RunJudge.State> runs;
    private final Function<Node, List<Finding>> findings;
    private final List<DiagramPart> parts = new ArrayList<>();
    private final Map<Node, Map<String, Double>> loads = new HashMap<>();

    Builder(
        Network network,
        Flows flows,
        Map<Integer, RunJudge.State> runs,
        Function<Node, List<Finding>> findings) {
      this.network = network;
      this.flows = flows;
      this.runs = runs;
      this.findings = findings;
      for (PlannedLoad load : flows.loads()) {
        for (PlannedLoad.Part part : load.parts()) {
          loads
              .computeIfAbsent(part.node(), k -> new LinkedHashMap<>())
              .merge(String.valueOf(load.row().value().item()), part.quantity(), Math::max);
        }
      }
    }

    void add(Node node, int above) {
      boolean idle =
          node.kind() != Node.Kind.SUPPLY && node.kind() != Node.Kind.RUN && isIdle(node);
      if (idle) {
        return;
      }
      if (node.kind() == Node.Kind.BREAKER) {
        node.children().forEach(c -> add(c, above));
        return;
      }
      List<Finding> stops =
          findings.apply(node).stream()
              .filter(f -> f.severity().compareTo(Severity.STOP) >= 0)
              .toList();
      parts.add(new DiagramPart(kind(node), node.name(), above, over(node), under(node), stops));
      int own = parts.size();
      Map<String, Double> here = loads.getOrDefault(node, Map.of());
      if (!here.isEmpty()) {
        List<String> texts = new ArrayList<>();
        here.forEach((item, quantity) -> texts.add("%.0f × %s".formatted(quantity, item)));
        parts.add(new DiagramPart("loads", "", own, String.join(", ", texts), "", List.of()));
      }
      node.children().forEach(c -> add(c, own));
      if (node.kind() == Node.Kind.SUPPLY) {
        idle(node, own);
      }
    }

    private boolean isIdle(Node node) {
      return node.below().stream()
          .allMatch(n -> n.kind() != Node.Kind.RUN && !loads.containsKey(n));
    }

    /** Idle outlets are one row. */
    private void idle(Node distro, int above) {
      List<String> idle = new ArrayList<>();
      for (Node child : distro.children()) {
        List<Node> outlets = child.kind() == Node.Kind.BREAKER ? child.children() : List.of(child);
        outlets.stream()
            .filter(o -> o.kind() == Node.Kind.OUTLET && isIdle(o))
            .forEach(o -> idle.add(o.name()));
      }
      if (!idle.isEmpty()) {
        parts.add(new DiagramPart("idle", "", above, String.join(", ", idle), "", List.of()));
      }
    }

    private String kind(Node node) {
      return switch (node.kind()) {
        case SUPPLY -> node.parent() == null ? "source" : "distro";
        case RUN -> "run";
        default -> "outlet";
      };
    }

    private String over(Node node) {
      List<String> texts = new ArrayList<>();
      texts.add(node.name());
      if (!Double.isNaN(node.breaker())) {
        String curve = node.curve() == null ? "" : node.curve().word();
        texts.add(curve + number(node.breaker()) + (curve.isEmpty() ? " A" : ""));
      }
      if (node.rcd().isThere()) {
        texts.add(number(node.rcd().milliamps()) + " mA");
      }
      if (node.kind() == Node.Kind.SUPPLY) {
        for (int leg = 0; leg < 3; leg++) {
          if ((node.legs() >> leg & 1) == 1) {
            texts.add(String.format(Locale.ROOT, "L%d %.1f A", leg + 1, flows.shown(node, leg)));
          }
        }
      } else {
        texts.add(
            String.format(
                Locale.ROOT, "%s %.1f A", LegWord.text(node.legs()), flows.shown(node).amps()));
      }
      return String.join(" · ", texts);
    }

    private String under(Node node) {
      if (node.kind() != Node.Kind.RUN) {
        return "";
      }
      RunJudge.State state = runs.get(node.row());
      List<String> texts = new ArrayList<>();
      if (state.cable().size() != null) {
        texts.add(state.cable().cores().word() + " × " + state.cable().size());
      }
      if (state.cable().typed().length() != null) {
        texts.add(number(state.cable().typed().length()) + (network.isUs() ? " ft" : " m"));
      }
      double own = state.dropShare() - flows.dropShare(node.parent(), node.legs());
      texts.add(
          String.format(Locale.ROOT, "%.1f %%, total %.1f %%", 100 * own, 100 * state.dropShare()));
      return String.join(" · ", texts);
    }

    private static String number(double value) {
      return org.setpower.base.Numbers.format(value);
    }
  }
}
