package org.setpower.plan.lighting.network;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.setpower.plan.common.InputRow;
import org.setpower.plan.finding.Finding;
import org.setpower.plan.finding.Identity;
import org.setpower.plan.lighting.input.CableTables.Run;
import org.setpower.plan.lighting.input.CableType;
import org.setpower.plan.lighting.input.Connector;
import org.setpower.plan.lighting.input.LegWord;
import org.setpower.plan.lighting.input.LightingFinding;
import org.setpower.plan.lighting.input.LightingInputs;
import org.setpower.plan.lighting.input.MeasureSystem;
import org.setpower.plan.lighting.input.SupplySystem;
import org.setpower.plan.lighting.input.SupplyTables.OutletGroup;
import org.setpower.plan.lighting.input.SupplyTables.Supply;
import org.setpower.plan.lighting.input.SupplyType;

/** The tree of the distribution, from the sources to the places where loads are plugged in. */
public final class Network {
  private static final Pattern RANGE =
      Pattern.compile("(.+)-(\\d{1,3})(?:\\.{2,3}|-|TO)(\\d{1,3})");

  /**
   * V from a leg to neutral in North America: 120 V, range A of ANSI C84.1, from memory. 100 V and
   * 127 V are of countries that go by IEC 60364.
   */
  private static final double LEAST_AMERICAN = 114;

  private static final double MOST_AMERICAN = 126;

  private final boolean us;
  private final Map<Integer, Node> supplyNodes = new LinkedHashMap<>();
  private final Map<Integer, Supply> supplies = new HashMap<>();
  private final Map<Integer, Node> runNodes = new LinkedHashMap<>();
  private final Map<Integer, Run> runs = new HashMap<>();
  private final Map<String, Integer> runsTo = new HashMap<>();
  private final Map<String, Node> suppliesByName = new HashMap<>();
  private final Map<String, Node> places = new HashMap<>();
  private final OutletTable outlets = new OutletTable(suppliesByName, places);
  private final Map<Integer, List<Finding>> supplyFindings = new HashMap<>();
  private final Map<Integer, List<Finding>> runFindings = new HashMap<>();
  private final List<Node> nodes = new ArrayList<>();

  /** Builds the tree; what does not fit becomes findings of its rows. */
  public Network(LightingInputs inputs, MeasureSystem units) {
    us = units == MeasureSystem.US;
    for (InputRow<Supply> row : LightingInputs.sorted(inputs.supplies())) {
      addSupply(row);
    }
    for (InputRow<OutletGroup> row : LightingInputs.sorted(inputs.outlets())) {
      outlets.add(row);
    }
    List<InputRow<Run>> runRows = LightingInputs.sorted(inputs.runs());
    runRows.forEach(this::addRun);
    runRows.forEach(this::connect);
    cutLoops();
    for (Node supply : supplyNodes.values()) {
      if (supply.parent() == null && isSource(supply)) {
        number(supply);
      }
    }
    findUnfed();
  }

  private void addSupply(InputRow<Supply> row) {
    Supply typed = row.value();
    String name = typed.name() == null ? "" : typed.name();
    Node node = new Node(Node.Kind.SUPPLY, name, row.number());
    supplyNodes.put(row.number(), node);
    supplies.put(row.number(), typed);
    supplyFindings.put(row.number(), new ArrayList<>());
    node.protect(typed.breaker() == null ? Double.NaN : typed.breaker(), typed.curve());
    if (typed.rcd() != null) {
      node.guard(new Node.Rcd(typed.rcd(), typed.rcdType()));
    }
    if (!row.unreadable().isEmpty() || name.isEmpty() || typed.type() == null) {
      node.blur();
    }
    if (!name.isEmpty()) {
      Node other = suppliesByName.putIfAbsent(Identity.of(name), node);
      if (other != null) {
        other.blur();
        node.blur();
      }
    }
  }

  private void addRun(InputRow<Run> row) {
    String name = row.value().to() == null ? "" : row.value().to();
    Node node = new Node(Node.Kind.RUN, name, row.number());
    runNodes.put(row.number(), node);
    runs.put(row.number(), row.value());
    runFindings.put(row.number(), new ArrayList<>());
    runsTo.merge(Identity.of(name), 1, Integer::sum);
    Node supply = suppliesByName.get(Identity.of(name));
    if (!name.isEmpty() && supply == null) {
      Node other = places.putIfAbsent(Identity.of(name), node);
      if (other != null) {
        other.blur();
        node.blur();
      }
    }
  }

  private void connect(InputRow<Run> row) {
    Node node = runNodes.get(row.number());
    List<Finding> findings = runFindings.get(row.number());
    if (row.value().from() != null) {
      List<Node> from = place(row.value().from());
      if (from.isEmpty() || from.get(0) == node) {
        findings.add(Finding.of(LightingFinding.PLACE_UNKNOWN, row.value().from()));
      } else if (from.size() > 1) {
        findings.add(Finding.of(LightingFinding.RANGE_ON_RUN, row.value().from()));
      } else {
        node.hangOn(from.get(0));
        plugMultiCircuit(node, from.get(0), row.value(), findings);
      }
    }
    Node distro = suppliesByName.get(Identity.of(row.value().to()));
    int same = runsTo.getOrDefault(Identity.of(row.value().to()), 0);
    if (row.value().to() != null && same > 1) {
      findings.add(Finding.of(LightingFinding.SUPPLY_TWICE, row.value().to(), (double) same));
      node.blur();
    }
    if (distro == null) {
      return;
    }
    if (isSource(distro)) {
      findings.add(Finding.of(LightingFinding.SUPPLY_FED, distro.name()));
      supplyFindings.get(distro.row()).add(Finding.of(LightingFinding.SUPPLY_FED, distro.name()));
      distro.blur();
    } else if (distro.parent() == null) {
      distro.hangOn(node);
    } else {
      supplyFindings
          .get(distro.row())
          .add(Finding.of(LightingFinding.SUPPLY_TWICE, distro.name(), (double) same));
    }
  }

  /** A multi-circuit cable carries the circuits of its connector; others need one circuit. */
  private void plugMultiCircuit(Node node, Node from, Run run, List<Finding> findings) {
    OutletTable.Group group =
        from.kind() == Node.Kind.OUTLET ? outlets.groups().get(from.row()) : null;
    boolean connector = group != null && group.circuits() > 1;
    if (connector && run.type() == CableType.MULTI_CIRCUIT) {
      outlets.circuits(group, node, "-");
    } else if (connector) {
      findings.add(Finding.of(LightingFinding.PLACE_UNKNOWN, run.from() + ".?"));
    }
  }

  /** Whether it makes power; a distro only hands it on. */
  private boolean isSource(Node supply) {
    SupplyType type = supplies.get(supply.row()).type();
    return type != null && type != SupplyType.DISTRO;
  }

  private void cutLoops() {
    for (Node start : runNodes.values()) {
      Set<Node> seen = new HashSet<>();
      Node at = start;
      while (at != null && seen.add(at)) {
        at = at.parent();
      }
      if (at != null) {
        runFindings.get(start.row()).add(Finding.of(LightingFinding.SUPPLY_LOOP, start.name()));
        start.blur();
        start.cut();
      }
    }
  }

  /** Numbers the nodes from the source on, and hands down legs and neutral. */
  private void number(Node node) {
    node.number(nodes.size());
    nodes.add(node);
    conductors(node);
    node.children().forEach(this::number);
  }

  private void conductors(Node node) {
    Node above = node.parent();
    switch (node.kind()) {
      case SUPPLY -> supplyConductors(node, above);
      case BREAKER -> node.conductors(above.legs(), above.hasNeutral());
      case RUN -> node.conductors(above.legs(), above.hasNeutral());
      default -> outletConductors(node, above);
    }
  }

  private void supplyConductors(Node node, Node above) {
    SupplySystem system = supplies.get(node.row()).system();
    List<Finding> findings = supplyFindings.get(node.row());
    if (above == null) {
      if (system == null) {
        findings.add(Finding.of(LightingFinding.SYSTEM_BLANK));
        node.blur();
      }
      node.conductors(system == null ? 0 : system.legs(), true);
      return;
    }
    boolean fits =
        system == null
            || switch (system) {
              case ONE -> Integer.bitCount(above.legs()) == 1;
              case SPLIT -> Integer.bitCount(above.legs()) == 2 && above.hasNeutral();
              case THREE -> above.legs() == 7;
            };
    if (!fits) {
      findings.add(
          Finding.of(LightingFinding.SYSTEM_MISMATCH, system.word(), LegWord.text(above.legs())));
      node.blur();
    }
    node.conductors(above.legs(), above.hasNeutral());
  }

  private void outletConductors(Node node, Node above) {
    OutletTable.Group group = outlets.groups().get(node.row());
    int ofDistro = group.distro().legs();
    int legs = OutletTable.legs(group, node, ofDistro);
    if ((legs & ~ofDistro) != 0 && ofDistro != 0) {
      Finding missing = Finding.of(LightingFinding.LEGS_MISSING, LegWord.text(legs & ~ofDistro));
      if (!group.findings().contains(missing)) {
        group.findings().add(missing);
      }
      node.blur();
      legs &= ofDistro;
    }
    boolean pair = Integer.bitCount(legs) == 2;
    boolean four =
        group.row().value().connector() != null && group.row().value().connector().pins() > 3;
    boolean multi = node.kind() == Node.Kind.CIRCUIT;
    node.conductors(legs, above.hasNeutral() && (!pair || four && !multi));
  }

  private void findUnfed() {
    for (Node supply : supplyNodes.values()) {
      if (!supply.isFed() && !isSource(supply) && supplies.get(supply.row()).type() != null) {
        supplyFindings
            .get(supply.row())
            .add(Finding.of(LightingFinding.SUPPLY_NONE, supply.name()));
      }
    }
    for (Node run : runNodes.values()) {
      if (!run.isFed() && run.parent() != null) {
        runFindings.get(run.row()).add(Finding.of(LightingFinding.NO_SUPPLY, run.parent().name()));
      } else if (run.isFed() && run.parent().isUnclear()) {
        runFindings
            .get(run.row())
            .add(Finding.of(LightingFinding.SUPPLY_UNCLEAR, shown(run.parent().firstUnclear())));
      }
    }
  }

  /** The name of a node as a sentence shows it. */
  public static String shown(Node node) {
    return node.name().isEmpty() ? "—" : node.name();
  }

  /** The nodes that a cell names: one, several for a range, none where there is no such place. */
  public List<Node> place(String text) {
    String id = Identity.of(text);
    Node one = one(id);
    if (one != null) {
      return List.of(one);
    }
    Matcher range = RANGE.matcher(id);
    if (!range.matches()) {
      return List.of();
    }
    int from = Integer.parseInt(range.group(2));
    int to = Integer.parseInt(range.group(3));
    List<Node> all = new ArrayList<>();
    for (int n = from; n <= to; n++) {
      Node outlet = one(range.group(1) + "-" + n);
      if (outlet == null) {
        return List.of();
      }
      all.add(outlet);
    }
    return all;
  }

  private Node one(String id) {
    Node supply = suppliesByName.get(id);
    return supply != null ? supply : places.get(id);
  }

  /** All nodes that a source feeds; a node stands behind its parent. */
  public List<Node> nodes() {
    return nodes;
  }

  /** The nodes of rows of Sources & distro, by row. */
  public Map<Integer, Node> supplies() {
    return supplyNodes;
  }

  /** The nodes of rows of Cable runs, by row. */
  public Map<Integer, Node> runs() {
    return runNodes;
  }

  /** The row of Sources & distro behind a node of it. */
  public Supply supply(Node node) {
    return supplies.get(node.row());
  }

  /** The row of Cable runs behind a node of it. */
  public Run run(Node node) {
    return runs.get(node.row());
  }

  /** The row of Outlets behind an outlet, a circuit or a shared breaker. */
  public OutletGroup outlet(Node node) {
    return outlets.groups().get(node.row()).row().value();
  }

  /** The connector at a place: that of an outlet, or of the cable that ends there; else null. */
  public Connector connector(Node node) {
    if (node == null || node.kind() == Node.Kind.SUPPLY) {
      return null;
    }
    if (node.kind() == Node.Kind.RUN) {
      Connector own = run(node).connector();
      return own == null ? connector(node.parent()) : own;
    }
    // a circuit of a multi-circuit connector is reached by a breakout
    return node.kind() == Node.Kind.CIRCUIT ? null : outlet(node).connector();
  }

  /** Nodes of a row of Outlets: breakers that are shared, outlets and circuits. */
  public List<Node> ofGroup(int row) {
    OutletTable.Group group = outlets.groups().get(row);
    return group == null || group.distro() == null
        ? List.of()
        : group.distro().below().stream()
            .filter(n -> n.kind() != Node.Kind.SUPPLY && n.kind() != Node.Kind.RUN)
            .filter(n -> n.row() == row)
            .toList();
  }

  /** Whether a row of Outlets says that the upstream breaker counts. */
  public boolean isThrough(int row) {
    return outlets.groups().get(row).through();
  }

  /** Whether a row of Outlets says that its RCD is upstream. */
  public boolean isRcdUpstream(int row) {
    return outlets.groups().get(row).rcdUpstream();
  }

  /** Whether a row of Outlets says that it has no RCD. */
  public boolean isRcdNone(int row) {
    return outlets.groups().get(row).rcdNone();
  }

  /** What building the tree found wrong with a row of Sources & distro. */
  public List<Finding> supplyFindings(int row) {
    return supplyFindings.get(row);
  }

  /** What is wrong with a row of Outlets, its unreadable cells included. */
  public List<Finding> outletFindings(int row) {
    return outlets.groups().get(row).findings();
  }

  /** What building the tree found wrong with a row of Cable runs. */
  public List<Finding> runFindings(int row) {
    return runFindings.get(row);
  }

  /** Why nothing may rely on a place: no source behind it, or an unclear one. */
  public static List<Finding> trust(Node node) {
    if (!node.isFed()) {
      return List.of(Finding.of(LightingFinding.NO_SUPPLY, shown(node)));
    }
    return node.isUnclear()
        ? List.of(Finding.of(LightingFinding.SUPPLY_UNCLEAR, shown(node.firstUnclear())))
        : List.of();
  }

  /** Whether its source has the 120 V from a leg to neutral of North America. */
  public boolean isAmerican(Node node) {
    double volts = legVolts(node.root());
    return volts >= LEAST_AMERICAN && volts <= MOST_AMERICAN;
  }

  /** Whether lengths are in feet. */
  public boolean isUs() {
    return us;
  }

  /** The place whose breaker and RCD protect an outlet: a connector has one of each a circuit. */
  public static Node protectedPlace(Node outlet) {
    return outlet.kind() == Node.Kind.OUTLET
        ? outlet.children().stream()
            .filter(c -> c.kind() == Node.Kind.CIRCUIT)
            .findFirst()
            .orElse(outlet)
        : outlet;
  }

  /** Voltage of a source between a leg and neutral. */
  public double legVolts(Node root) {
    Supply source = supply(root);
    SupplySystem system = source.system() == null ? SupplySystem.ONE : source.system();
    double volts = source.volts() == null ? system.usualVolts(us) : source.volts();
    return system.legVolts(volts);
  }

  /** Voltage of a source between two legs. */
  public double lineVolts(Node root) {
    return supply(root).system() == SupplySystem.SPLIT
        ? 2 * legVolts(root)
        : Math.sqrt(3) * legVolts(root);
  }

  /** Whether the legs of a source are 120° apart. */
  public boolean isThreePhase(Node root) {
    return supply(root).system() == SupplySystem.THREE;
  }
}
