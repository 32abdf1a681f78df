package org.setpower.plan.lighting;

import java.time.LocalTime;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.setpower.base.Numbers;
import org.setpower.cable.CableSize;
import org.setpower.cable.InstallationMethod;
import org.setpower.plan.common.InputRow;
import org.setpower.plan.common.IssueRow;
import org.setpower.plan.common.Phrase;
import org.setpower.plan.finding.Gate;
import org.setpower.plan.finding.Identity;
import org.setpower.plan.finding.Verdict;
import org.setpower.plan.lighting.generator.GeneratorJudge;
import org.setpower.plan.lighting.input.CableTables.Run;
import org.setpower.plan.lighting.input.Connection;
import org.setpower.plan.lighting.input.Connector;
import org.setpower.plan.lighting.input.LegWord;
import org.setpower.plan.lighting.input.LoadTables.Load;
import org.setpower.plan.lighting.input.SupplyTables.OutletGroup;
import org.setpower.plan.lighting.input.SupplyTables.Supply;
import org.setpower.plan.lighting.input.SupplyType;
import org.setpower.plan.lighting.load.Flows;
import org.setpower.plan.lighting.load.LoadState;
import org.setpower.plan.lighting.load.PlannedLoad;
import org.setpower.plan.lighting.load.UsedLegs;
import org.setpower.plan.lighting.network.Network;
import org.setpower.plan.lighting.network.Node;
import org.setpower.plan.lighting.paper.BalanceProposal;
import org.setpower.plan.lighting.paper.OrderList;
import org.setpower.plan.lighting.protection.RunCable;
import org.setpower.plan.lighting.result.LightingPapers;

/** Makes what a plan hands out; only what the gate lets pass is printed as fit. */
final class LightingHandouts {
  private static final Pattern NUMBER = Pattern.compile("\\d+");
  private static final int DIGITS = 5;

  /** A box to tick on paper. */
  private static final String TICK = "☐";

  private static final String PLAIN = "{0}";
  private static final String DISTRO = "distro, outlets in use: {0,number,0}";
  private static final String CONDUCTOR = "{0}, {1}";
  private static final String CORES = "{0}, cores: {1}";
  private static final String ALONE = "alone, not touching others";
  private static final String TOGETHER = "max. {0,number,0} together";
  private static final String ON_DRUM = "drum, max. layers: {0,number,0}";
  private static final String ON_RADIAL = "radial drum";
  private static final String ON_VENTILATED = "radial drum, ventilated";
  private static final String PIECES = "{0}. Pieces: {1}";
  private static final String PROTECTED = "{0} · {1,number,0.#} A";
  private static final String STOPPED = "{0}. Stop upstream: {1}";
  private static final String STOP_ALONE = "Stop upstream: {0}";
  private static final String SINGLES = "{0}, cores: {1}, connect earth first";

  private final LightingCalculation plan;
  private final Network network;
  private final Flows flows;
  private final Nights nights;
  private final OrderList orders;
  private final UsedLegs usedLegs;
  private List<RunCable> laid;
  private List<LightingPapers.PlaceRow> placeRows;
  private Map<Node, Map<String, Double>> mostAtOnce;

  LightingHandouts(LightingCalculation plan) {
    this.plan = plan;
    network = plan.network();
    flows = plan.flows();
    nights = plan.nights();
    orders = new OrderList(plan.settings(), network);
    usedLegs = plan.usedLegs();
  }

  /** What stands on papers. */
  static List<String> words() {
    List<String> words = new ArrayList<>(LightingOrder.words());
    words.addAll(
        List.of(
            PLAIN,
            DISTRO,
            CONDUCTOR,
            CORES,
            LightingCalculation.RUN_TO,
            ALONE,
            TOGETHER,
            ON_DRUM,
            ON_RADIAL,
            ON_VENTILATED,
            PIECES,
            PROTECTED,
            STOPPED,
            STOP_ALONE,
            SINGLES));
    return words;
  }

  /** Legs of a load in words; several where a range has several. */
  static String legs(PlannedLoad load) {
    TreeSet<String> legs = new TreeSet<>();
    load.parts().forEach(p -> legs.add(LegWord.text(p.legs())));
    legs.remove("");
    return legs.isEmpty() ? null : String.join(", ", legs);
  }

  /** Current of one leg on the place that has most pieces, at the voltage there; of a day. */
  static Double amps(PlannedLoad load, LightingCalculation plan) {
    Network network = plan.network();
    Flows flows = plan.flows();
    if (!load.isCounted()) {
      return null;
    }
    if (!plan.nights().isShown(load)) {
      return 0.0;
    }
    double most = 0;
    for (PlannedLoad.Part part : load.parts()) {
      Node root = part.node().root();
      double volts =
          load.connection() == Connection.LINE_LINE
              ? network.lineVolts(root)
              : network.legVolts(root) * load.connection().legs();
      double nominal = load.watts() * part.quantity() / (volts * load.powerFactor());
      most = Math.max(most, nominal * flows.shownRise(load, part));
    }
    return most;
  }

  LightingPapers.Summary summary(List<IssueRow> issues) {
    Gate.Paper<InputRow<Load>> loads = plan.loadGate().paper(l -> true);
    Gate.Paper<InputRow<Run>> runs = plan.runs().paper(r -> true);
    double most = 0;
    for (var state : flows.shownStates()) {
      most =
          Math.max(
              most,
              IntStream.of(state.on())
                  .mapToObj(flows.loads()::get)
                  .mapToDouble(l -> l.watts() * l.quantity())
                  .sum());
    }
    return new LightingPapers.Summary(
        IssueRow.worst(issues),
        (int) issues.stream().filter(i -> i.verdict() == Verdict.STOP).count(),
        (int) issues.stream().filter(i -> i.verdict() == Verdict.CHECK).count(),
        loads.fit().size(),
        loads.withheld().size(),
        runs.fit().size(),
        runs.withheld().size(),
        most,
        nights.head(),
        nights.period());
  }

  /** Outlets in use; made once. */
  List<LightingPapers.PlaceRow> distribution() {
    placeRows = placeRows == null ? places() : placeRows;
    return placeRows;
  }

  private List<LightingPapers.PlaceRow> places() {
    Map<Node, List<String>> plugged = new HashMap<>();
    Map<Node, Map<String, Double>> items = pluggedAtOnce();
    Map<Node, Integer> withheld = new HashMap<>();
    for (Gate.Judged<InputRow<Run>> run : plan.runs().all()) {
      Node at = network.runs().get(run.row()).parent();
      if (!nights.isShown(network.runs().get(run.row()))) {
        continue;
      }
      if (at != null && run.fit()) {
        String end = atEnd(network.runs().get(run.row()), items);
        plugged
            .computeIfAbsent(at, k -> new ArrayList<>())
            .add("→ " + run.item().value().to() + (end.isEmpty() ? "" : ": " + end));
      } else if (at != null) {
        withheld.merge(at, 1, Integer::sum);
      }
    }
    for (Gate.Judged<InputRow<Load>> load : plan.loadGate().all()) {
      if (!load.fit() && nights.isShown(plan.loads().get(load.row()))) {
        plan.loads().get(load.row()).parts().stream()
            .map(p -> outletOrNull(p.node()))
            .filter(Objects::nonNull)
            .distinct()
            .forEach(n -> withheld.merge(n, 1, Integer::sum));
      }
    }
    items.forEach(
        (node, here) -> plugged.computeIfAbsent(node, k -> new ArrayList<>()).addAll(pieces(here)));
    return network.nodes().stream()
        .filter(n -> n.kind() == Node.Kind.OUTLET || n.kind() == Node.Kind.CIRCUIT)
        .filter(n -> plugged.containsKey(n) || withheld.containsKey(n))
        .sorted(Comparator.comparing(Node::row))
        .map(n -> place(n, plugged.getOrDefault(n, List.of()), withheld.getOrDefault(n, 0)))
        .toList();
  }

  private static List<String> pieces(Map<String, Double> items) {
    return items.entrySet().stream()
        .map(i -> "%.0f × %s".formatted(i.getValue(), i.getKey()))
        .toList();
  }

  /** The loads at the end of a run and of the runs behind it; not those of a distro it feeds. */
  private static String atEnd(Node run, Map<Node, Map<String, Double>> items) {
    Map<String, Double> all = new TreeMap<>();
    run.below().stream()
        .filter(n -> isBeforeDistro(run, n))
        .forEach(
            n -> items.getOrDefault(n, Map.of()).forEach((i, q) -> all.merge(i, q, Double::sum)));
    return String.join(", ", pieces(all));
  }

  private static boolean isBeforeDistro(Node run, Node below) {
    for (Node n = below; n != run; n = n.parent()) {
      if (n.kind() == Node.Kind.SUPPLY) {
        return false;
      }
    }
    return true;
  }

  /** The outlet or circuit on which a place hangs; null where it hangs on none. */
  private static Node outletOrNull(Node place) {
    Node at = place;
    while (at != null && at.kind() == Node.Kind.RUN) {
      at = at.parent();
    }
    boolean outlet =
        at != null && (at.kind() == Node.Kind.OUTLET || at.kind() == Node.Kind.CIRCUIT);
    return outlet ? at : null;
  }

  /** By place the most pieces of each item that are in use at one time and fit. */
  private Map<Node, Map<String, Double>> pluggedAtOnce() {
    mostAtOnce = mostAtOnce == null ? countAtOnce() : mostAtOnce;
    return mostAtOnce;
  }

  private Map<Node, Map<String, Double>> countAtOnce() {
    List<PlannedLoad> loads = flows.loads();
    Map<Node, Map<String, Integer>> places = new HashMap<>();
    int[][] slots = new int[loads.size()][];
    int count = 0;
    for (int i = 0; i < slots.length; i++) {
      PlannedLoad load = loads.get(i);
      boolean fit = plan.loadGate().row(load.row().number()).fit();
      slots[i] = new int[fit ? load.parts().size() : 0];
      for (int p = 0; p < slots[i].length; p++) {
        Map<String, Integer> items =
            places.computeIfAbsent(load.parts().get(p).node(), k -> new TreeMap<>());
        Integer slot = items.putIfAbsent(load.row().value().item(), count);
        slots[i][p] = slot == null ? count++ : slot;
      }
    }
    double[] most = new double[count];
    double[] now = new double[count];
    for (LoadState state : flows.shownStates()) {
      Arrays.fill(now, 0);
      for (int i : state.on()) {
        for (int p = 0; p < slots[i].length; p++) {
          now[slots[i][p]] += loads.get(i).parts().get(p).quantity();
        }
      }
      for (int i = 0; i < count; i++) {
        most[i] = Math.max(most[i], now[i]);
      }
    }
    Map<Node, Map<String, Double>> plugged = new HashMap<>();
    places.forEach(
        (node, items) ->
            items.forEach(
                (item, slot) -> {
                  if (most[slot] > 0) {
                    plugged.computeIfAbsent(node, k -> new TreeMap<>()).put(item, most[slot]);
                  }
                }));
    return plugged;
  }

  private LightingPapers.PlaceRow place(Node node, List<String> plugged, int withheld) {
    OutletGroup group = network.outlet(node);
    return new LightingPapers.PlaceRow(
        group.distro(),
        node.name(),
        group.connector() == null ? null : group.connector().word(),
        LightingTables.known(Network.protectedPlace(node).protectingBreaker()),
        rcd(Network.protectedPlace(node)),
        String.join(", ", plugged.stream().sorted().toList()),
        LegWord.text(usedLegs.of(node)),
        flows.shown(node).amps(),
        node.hasNeutral() ? (Double) flows.shownNeutral(node) : null,
        null,
        withheld,
        nights.of(node),
        plan.stopUpstream(node));
  }

  private static Double rcd(Node node) {
    return node.path().stream()
        .filter(n -> n.rcd().isThere())
        .map(n -> n.rcd().milliamps())
        .findFirst()
        .orElse(null);
  }

  List<LightingPapers.PluggingRow> plugging() {
    return plan.loadGate().paper(l -> true).fit().stream()
        .filter(j -> plan.loads().get(j.row()).isCounted())
        .filter(j -> nights.isShown(plan.loads().get(j.row())))
        .filter(j -> !plan.loads().get(j.row()).parts().isEmpty())
        .map(
            j -> {
              Load typed = j.item().value();
              PlannedLoad load = plan.loads().get(j.row());
              Node first = load.parts().get(0).node();
              Node outlet = outlet(first);
              String upstream = upstream(load);
              return new LightingPapers.PluggingRow(
                  typed.place(),
                  outlet == first ? typed.place() : outlet.name(),
                  LightingTables.known(Network.protectedPlace(outlet).protectingBreaker()),
                  cables(first),
                  typed.item(),
                  load.quantity(),
                  legs(load),
                  amps(load, plan),
                  typed.department(),
                  typed.location(),
                  upstream == null ? j.verdict() : Verdict.STOP,
                  protectedOutlet(outlet == first ? typed.place() : outlet.name(), outlet),
                  stopped(Phrase.of(PLAIN, typed.item()), upstream),
                  nights.on(load),
                  TICK,
                  upstream);
            })
        .sorted(
            Comparator.comparing((LightingPapers.PluggingRow r) -> byNumber(r.outlet()))
                .thenComparing(r -> byNumber(r.place()))
                .thenComparing(LightingPapers.PluggingRow::toString))
        .toList();
  }

  /** An outlet with what protects it. */
  private static Phrase protectedOutlet(String name, Node outlet) {
    Double breaker = LightingTables.known(Network.protectedPlace(outlet).protectingBreaker());
    return breaker == null ? Phrase.of(PLAIN, name) : Phrase.of(PROTECTED, name, breaker);
  }

  /** What stands on a paper, with the stop that feeds it, if any. */
  private static Phrase stopped(Phrase what, String upstream) {
    if (upstream == null) {
      return what;
    }
    return what == null ? Phrase.of(STOP_ALONE, upstream) : Phrase.of(STOPPED, what, upstream);
  }

  /** A stop above a place of a load; null without one. */
  private String upstream(PlannedLoad load) {
    return load.parts().stream()
        .map(p -> plan.stopUpstream(p.node()))
        .filter(Objects::nonNull)
        .findFirst()
        .orElse(null);
  }

  /** The outlet of a distro through which a place is fed, else the source. */
  private static Node outlet(Node place) {
    return place.path().stream()
        .filter(n -> n.kind() != Node.Kind.RUN)
        .filter(n -> n.kind() != Node.Kind.CIRCUIT || !isOfRun(n))
        .findFirst()
        .orElse(place);
  }

  private static boolean isOfRun(Node circuit) {
    return circuit.parent() != null && circuit.parent().kind() == Node.Kind.RUN;
  }

  /** The runs between outlet and place, from the outlet on: name, size, length. */
  private String cables(Node place) {
    List<String> cables = new ArrayList<>();
    Node end = outlet(place);
    for (Node n = place; n != end; n = n.parent()) {
      if (n.kind() == Node.Kind.RUN) {
        Run run = network.run(n);
        String unit = network.isUs() ? " ft" : " m";
        String length = run.length() == null ? null : Numbers.format(run.length()) + unit;
        cables.add(
            0,
            Stream.of(run.to(), run.size(), length)
                .filter(t -> t != null)
                .collect(Collectors.joining(" · ")));
      }
    }
    return String.join(" → ", cables);
  }

  /** A name by its numbers: A-2 comes before A-10. */
  private static String byNumber(String name) {
    return NUMBER
        .matcher(Identity.of(name))
        .replaceAll(m -> "0".repeat(Math.max(0, DIGITS - m.group().length())) + m.group());
  }

  List<LightingPapers.PullRow> pull() {
    Map<Node, Map<String, Double>> items = pluggedAtOnce();
    List<RunCable> cables = laid();
    List<LightingPapers.PullRow> rows = new ArrayList<>();
    for (RunCable cable : cables) {
      Run typed = cable.typed();
      Connector connector = orders.connector(cable);
      String upstream = plan.stopUpstream(cable.node());
      rows.add(
          new LightingPapers.PullRow(
              typed.to(),
              typed.from(),
              typed.length(),
              typed.pieces(),
              typed.size(),
              cable.cores().word(),
              cable(cable),
              cable.cores().isSingle() ? true : null,
              end(typed.to(), location(cable.node())),
              laying(cable),
              stopped(feeds(cable.node(), items), upstream),
              location(cable.node()),
              upstream == null ? plan.runs().row(cable.node().row()).verdict() : Verdict.STOP,
              connector == null ? null : connector.word(),
              nights.of(cable.node()),
              TICK,
              upstream));
    }
    return rows;
  }

  private static Phrase end(String name, String location) {
    return location == null ? Phrase.of(PLAIN, name) : Phrase.of(CONDUCTOR, name, location);
  }

  /** How it has to be laid for its rating to count; null where nobody has decided. */
  private static Phrase laying(RunCable cable) {
    InstallationMethod laid = cable.laid();
    return laid == null
        ? null
        : switch (laid.kind()) {
          case FREE -> Phrase.of(ALONE);
          case BUNCHED -> Phrase.of(TOGETHER, laid.count());
          case DRUM -> Phrase.of(ON_DRUM, laid.count());
          case RADIAL_DRUM -> Phrase.of(ON_RADIAL);
          case RADIAL_DRUM_VENTILATED -> Phrase.of(ON_VENTILATED);
        };
  }

  /** Size and cores as its sheath has them, pieces; single cores are laid as a set. */
  private static Phrase cable(RunCable cable) {
    String size = cable.typed().size();
    String cores = cable.cores().word();
    if (size == null) {
      return null;
    }
    Phrase all =
        cable.cores().isSingle()
            ? Phrase.of(SINGLES, size, cores)
            : CableSize.cores(size) > 0 ? Phrase.of(PLAIN, size) : Phrase.of(CORES, size, cores);
    String pieces = cable.typed().pieces();
    return pieces == null ? all : Phrase.of(PIECES, all, pieces);
  }

  /** Runs on papers, from the source outward; made once. */
  private List<RunCable> laid() {
    if (laid == null) {
      Map<String, RunCable> sorted = new TreeMap<>();
      plan.runs().paper(r -> true).fit().stream()
          .map(j -> plan.runStates().get(j.row()).cable())
          .filter(c -> nights.isShown(c.node()))
          .forEach(c -> sorted.put(fromSource(c.node()), c));
      laid = List.copyOf(sorted.values());
    }
    return laid;
  }

  /** What stands at the end of a run: how many outlets of its distro are used, or its loads. */
  private Phrase feeds(Node run, Map<Node, Map<String, Double>> items) {
    for (Node child : run.children()) {
      if (child.kind() == Node.Kind.SUPPLY) {
        long used =
            child.below().stream()
                .filter(n -> n.kind() == Node.Kind.OUTLET)
                .filter(n -> network.outlet(n).distro() != null)
                .filter(n -> isOf(n, child) && plan.outletJudge().isUsed(n) && nights.isShown(n))
                .count();
        return Phrase.of(DISTRO, used);
      }
    }
    String end = atEnd(run, items);
    return end.isEmpty() ? null : Phrase.of(PLAIN, end);
  }

  private static boolean isOf(Node outlet, Node distro) {
    Node at = outlet.parent();
    return at == distro || at != null && at.kind() == Node.Kind.BREAKER && at.parent() == distro;
  }

  /** All lengths of a size together. */
  List<LightingPapers.LengthRow> lengths() {
    Map<String, List<RunCable>> bySize = new TreeMap<>();
    for (RunCable cable : laid()) {
      if (cable.size() != null && cable.typed().length() != null) {
        String size = cable.size() + "|" + cable.cores().word();
        bySize.computeIfAbsent(byNumber(size), k -> new ArrayList<>()).add(cable);
      }
    }
    List<LightingPapers.LengthRow> rows = new ArrayList<>();
    for (List<RunCable> same : bySize.values()) {
      RunCable first = same.get(0);
      double[] lengths =
          same.stream().mapToDouble(c -> c.typed().length() * c.parallel()).sorted().toArray();
      rows.add(
          new LightingPapers.LengthRow(
              first.size().toString(),
              first.cores().word(),
              DoubleStream.of(lengths).sum(),
              same.size()));
    }
    return rows;
  }

  /** What sorts a place behind what feeds it, by names. */
  private static String fromSource(Node place) {
    String own = byNumber(place.name()) + "\u0001" + place.row();
    return place.parent() == null ? own : fromSource(place.parent()) + "\u0000" + own;
  }

  /** Where the distro that a run feeds stands, else the loads at its end. */
  private String location(Node run) {
    for (Node child : run.children()) {
      if (child.kind() == Node.Kind.SUPPLY) {
        return network.supply(child).location();
      }
    }
    String places =
        plan.loadGate().paper(l -> true).fit().stream()
            .filter(
                j ->
                    plan.loads().get(j.row()).parts().stream()
                        .map(PlannedLoad.Part::node)
                        .anyMatch(n -> n.path().contains(run) && isBeforeDistro(run, n)))
            .map(j -> j.item().value().location())
            .filter(l -> l != null)
            .distinct()
            .sorted()
            .collect(Collectors.joining(", "));
    return places.isEmpty() ? null : places;
  }

  /** A label for each distro; one that is a stop says so and lists nothing. */
  List<LightingPapers.LabelRow> labels() {
    List<LightingPapers.LabelRow> rows = new ArrayList<>();
    List<LightingPapers.PlaceRow> places = distribution();
    plan.supplies().all().stream()
        .filter(j -> j.item().value().type() == SupplyType.DISTRO)
        .filter(j -> j.item().value().name() != null)
        .filter(j -> nights.isShown(network.supplies().get(j.row())))
        .sorted(
            Comparator.comparing(
                    (Gate.Judged<InputRow<Supply>> j) -> Identity.of(j.item().value().name()))
                .thenComparing(Gate.Judged::row))
        .forEach(j -> rows.addAll(DistroLabel.of(j, plan, places)));
    return rows;
  }

  List<LightingPapers.BalanceRow> balance() {
    List<LightingPapers.BalanceRow> rows = new ArrayList<>();
    for (Node node : network.nodes()) {
      BalanceProposal best =
          node.kind() == Node.Kind.SUPPLY ? BalanceProposal.of(node, flows) : null;
      if (best != null) {
        Load first = best.first().row().value();
        Load second = best.second() == null ? null : best.second().row().value();
        rows.add(
            new LightingPapers.BalanceRow(
                node.name(),
                first.item(),
                first.place(),
                best.firstLeg(),
                second == null ? null : second.item(),
                second == null ? null : second.place(),
                best.secondLeg(),
                best.before(),
                best.after()));
      }
    }
    return rows;
  }

  /** Every hour of a day and its night with the load of the first generators by name. */
  List<LightingPapers.HourRow> hours() {
    List<LightingPapers.HourRow> rows = new ArrayList<>();
    List<GeneratorJudge.State> states =
        plan.generatorStates().values().stream()
            .filter(s -> s.node() != null)
            .sorted(
                Comparator.comparing((GeneratorJudge.State s) -> Identity.of(s.node().name()))
                    .thenComparing(s -> s.fuel().profile().toString()))
            .toList();
    Double[] load = new Double[4];
    int begins = states.stream().mapToInt(s -> s.fuel().begins()).min().orElse(0);
    for (int h : clock(begins)) {
      for (int g = 0; g < load.length; g++) {
        GeneratorJudge.State state = g < states.size() ? states.get(g) : null;
        boolean known = state != null && h < state.fuel().profile().size();
        load[g] = known ? state.fuel().profile().get(h) : null;
      }
      rows.add(new LightingPapers.HourRow(LocalTime.of(h, 0), load[0], load[1], load[2], load[3]));
    }
    return rows;
  }

  /** The hours of the clock from one on, past midnight. */
  private static int[] clock(int begins) {
    return IntStream.range(begins, begins + 24).map(h -> h % 24).toArray();
  }
}
