package org.setpower.plan.lighting.network;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.setpower.base.EvaluationException;
import org.setpower.base.Numbers;
import org.setpower.plan.common.InputRow;
import org.setpower.plan.finding.Finding;
import org.setpower.plan.finding.Identity;
import org.setpower.plan.lighting.input.Connector;
import org.setpower.plan.lighting.input.LegWord;
import org.setpower.plan.lighting.input.LightingFinding;
import org.setpower.plan.lighting.input.SupplyTables.OutletGroup;

/** Makes the outlets of the rows of Outlets and hangs them on their distros. */
final class OutletTable {
  private static final double MOST_AMPS = 6000;
  private static final int FOUR_PINS = 4; // two legs, neutral and earth
  private static final int FIVE_PINS = 5;
  private static final double LEAST_MILLIAMPS = 0.5;
  private static final double MOST_MILLIAMPS = 3000;

  private final Map<String, Node> supplies;
  private final Map<String, Node> outlets;
  private final Map<Integer, Group> groups = new HashMap<>();

  /**
   * A row of outlets as it is understood.
   *
   * @param breaker A; NaN for through and where it is not known
   * @param through whether the upstream breaker counts
   * @param nodes one for each outlet, in their order
   * @param rcdUpstream whether the RCD is said to be upstream
   * @param rcdNone whether there is said to be none
   */
  record Group(
      InputRow<OutletGroup> row,
      Node distro,
      double breaker,
      boolean through,
      Node.Rcd rcd,
      boolean rcdUpstream,
      boolean rcdNone,
      int circuits,
      List<Node> nodes,
      List<Finding> findings) {}

  OutletTable(Map<String, Node> supplies, Map<String, Node> outlets) {
    this.supplies = supplies;
    this.outlets = outlets;
  }

  Map<Integer, Group> groups() {
    return groups;
  }

  void add(InputRow<OutletGroup> row) {
    OutletGroup typed = row.value();
    List<Finding> findings = new ArrayList<>(row.findings());
    Node distro = supplies.get(Identity.of(typed.distro()));
    if (distro == null && typed.distro() != null) {
      findings.add(Finding.of(LightingFinding.DISTRO_UNKNOWN, typed.distro()));
    }
    List<Integer> numbers =
        typed.numbers() == null ? List.of() : OutletNumbers.parse(typed.numbers());
    if (numbers.isEmpty() && typed.numbers() != null) {
      findings.add(Finding.of(LightingFinding.NUMBERS_UNREADABLE, typed.numbers()));
    }
    boolean through = "THROUGH".equals(Identity.of(typed.breaker()));
    double breaker = through ? Double.NaN : amount(typed.breaker(), 0, MOST_AMPS);
    if (typed.breaker() != null && !through && Double.isNaN(breaker)) {
      findings.add(Finding.of(LightingFinding.BREAKER_UNREADABLE, typed.breaker()));
    }
    boolean upstream = "UPSTREAM".equals(Identity.of(typed.rcd()));
    boolean none = "NONE".equals(Identity.of(typed.rcd()));
    double milliamps =
        upstream || none ? Double.NaN : amount(typed.rcd(), LEAST_MILLIAMPS, MOST_MILLIAMPS);
    if (typed.rcd() != null && !upstream && !none && Double.isNaN(milliamps)) {
      findings.add(Finding.of(LightingFinding.RCD_UNREADABLE, typed.rcd()));
    }
    int circuits =
        typed.circuits() == null
            ? typed.connector() == Connector.MULTI_19 ? 6 : 1
            : (int) Math.floor(typed.circuits());
    Group group =
        new Group(
            row,
            distro,
            breaker,
            through,
            new Node.Rcd(milliamps, typed.rcdType()),
            upstream,
            none,
            circuits,
            new ArrayList<>(),
            findings);
    groups.put(row.number(), group);
    if (distro != null) {
      outlets(group, numbers);
    }
  }

  private void outlets(Group group, List<Integer> numbers) {
    int sharing = sharing(group);
    boolean shared = sharing > 1 && group.circuits() == 1;
    Node breaker = null;
    for (int i = 0; i < numbers.size(); i++) {
      String name = group.distro().name() + "-" + numbers.get(i);
      if (shared && i % sharing == 0) {
        breaker = new Node(Node.Kind.BREAKER, name, group.row().number());
        breaker.hangOn(group.distro());
        own(breaker, group);
      }
      Node outlet = new Node(Node.Kind.OUTLET, name, group.row().number());
      outlet.hangOn(shared ? breaker : group.distro());
      group.nodes().add(outlet);
      Node other = outlets.putIfAbsent(Identity.of(name), outlet);
      if (other != null) {
        other.blur();
        outlet.blur();
        group.findings().add(Finding.of(LightingFinding.NUMBERS_TWICE, name));
        Group first = groups.get(other.row());
        if (first != group) {
          first.findings().add(Finding.of(LightingFinding.NUMBERS_TWICE, name));
        }
      }
      if (group.circuits() > 1) {
        circuits(group, outlet, ".");
      } else if (!shared) {
        own(outlet, group);
      }
    }
  }

  private static int sharing(Group group) {
    Double typed = group.row().value().sharing();
    return typed == null ? 1 : (int) Math.floor(typed);
  }

  /** The circuits of a connector, or of the end of a cable that is plugged into it. */
  void circuits(Group group, Node on, String separator) {
    for (int c = 1; c <= group.circuits(); c++) {
      Node circuit = new Node(Node.Kind.CIRCUIT, on.name() + separator + c, group.row().number());
      circuit.hangOn(on);
      own(circuit, group);
      outlets.putIfAbsent(Identity.of(circuit.name()), circuit);
    }
  }

  private static void own(Node node, Group group) {
    node.protect(group.breaker(), group.row().value().curve());
    if (group.rcd().isThere()) {
      node.guard(group.rcd());
    }
  }

  /** Legs of a node of the group, from those of its distro. */
  static int legs(Group group, Node node, int ofDistro) {
    OutletGroup typed = group.row().value();
    LegWord word = typed.legs();
    if (word == null) {
      word = legs(typed.connector(), ofDistro);
    }
    if (group.circuits() > 1 && node.kind() == Node.Kind.OUTLET) {
      return ofDistro;
    }
    if (node.kind() == Node.Kind.CIRCUIT) {
      return word.legs(node.parent().children().indexOf(node), ofDistro);
    }
    Node outlet = node.kind() == Node.Kind.BREAKER ? node.children().get(0) : node;
    return word.legs(group.nodes().indexOf(outlet) / sharing(group), ofDistro);
  }

  /** Legs of an outlet that nobody decided: what its contacts are made for. */
  private static LegWord legs(Connector connector, int ofDistro) {
    int pins = connector == null ? 0 : connector.pins();
    if (pins == FIVE_PINS || pins == FOUR_PINS && Integer.bitCount(ofDistro) == 1) {
      return LegWord.ALL;
    }
    return pins == FOUR_PINS ? LegWord.PAIRS_IN_TURN : LegWord.IN_TURN;
  }

  private static double amount(String text, double least, double most) {
    if (text == null) {
      return Double.NaN;
    }
    try {
      Numbers.Amount amount = Numbers.amount("breaker", text);
      boolean unit = amount != null && amount.unit().matches("|A|mA");
      boolean within = unit && amount.value() >= least && amount.value() <= most;
      return within && amount.value() > 0 ? amount.value() : Double.NaN;
    } catch (EvaluationException ambiguous) {
      return Double.NaN;
    }
  }
}
