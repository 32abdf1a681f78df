package org.setpower.plan.lighting;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.setpower.cable.Ampacity;
import org.setpower.plan.common.InputRow;
import org.setpower.plan.common.Phrase;
import org.setpower.plan.finding.Finding;
import org.setpower.plan.finding.Gate;
import org.setpower.plan.finding.Identity;
import org.setpower.plan.finding.Severity;
import org.setpower.plan.finding.Verdict;
import org.setpower.plan.lighting.battery.BatteryDays;
import org.setpower.plan.lighting.generator.GeneratorJudge;
import org.setpower.plan.lighting.input.CableTables.CableStock;
import org.setpower.plan.lighting.input.CableTables.Run;
import org.setpower.plan.lighting.input.Connector;
import org.setpower.plan.lighting.input.LightingFinding;
import org.setpower.plan.lighting.input.LightingInputs;
import org.setpower.plan.lighting.input.LightingSettings;
import org.setpower.plan.lighting.input.LoadTables.Equipment;
import org.setpower.plan.lighting.input.LoadTables.Load;
import org.setpower.plan.lighting.input.LoadTables.Reading;
import org.setpower.plan.lighting.input.MeasureSystem;
import org.setpower.plan.lighting.input.ProjectTables.ShootDay;
import org.setpower.plan.lighting.input.SupplyTables.Generator;
import org.setpower.plan.lighting.input.SupplyTables.OutletGroup;
import org.setpower.plan.lighting.input.SupplyTables.Supply;
import org.setpower.plan.lighting.input.SupplyType;
import org.setpower.plan.lighting.load.DayClock;
import org.setpower.plan.lighting.load.Flows;
import org.setpower.plan.lighting.load.LoadTable;
import org.setpower.plan.lighting.load.PlannedLoad;
import org.setpower.plan.lighting.load.SupplyHours;
import org.setpower.plan.lighting.load.ThirdHarmonic;
import org.setpower.plan.lighting.load.Timeline;
import org.setpower.plan.lighting.load.UsedLegs;
import org.setpower.plan.lighting.network.Network;
import org.setpower.plan.lighting.network.Node;
import org.setpower.plan.lighting.protection.LoadJudge;
import org.setpower.plan.lighting.protection.OutletJudge;
import org.setpower.plan.lighting.protection.Plugs;
import org.setpower.plan.lighting.protection.RunCable;
import org.setpower.plan.lighting.protection.RunJudge;
import org.setpower.plan.lighting.protection.SupplyJudge;

/** Everything a lighting power plan knows, calculated once: tree, flows, verdicts. */
final class LightingCalculation {
  /** In findings. */
  static final String RUN_TO = "cable run to {0}";

  private static final String ARROW = "→ ";
  private static final double HOUSEHOLD = 20;

  /** °C; the highest air temperature measured is 56.7: World Meteorological Organization, 1913. */
  private static final double HOTTEST = 57;

  private static final double LARGE_PLUG = 100;
  private static final double SMALL_PLUG = 5;

  private final LightingInputs inputs;
  private final LightingSettings settings;
  private final Timeline timeline;
  private final Network network;
  private final Gate<InputRow<Equipment>> equipment;
  private final Flows flows;
  private final Map<Node, List<String>> offForSound;
  private final UsedLegs usedLegs;
  private final Nights nights;
  private final Plugs plugs;
  private final OutletJudge outletJudge;
  private final LoadJudge loadJudge;
  private final Map<Integer, PlannedLoad> loads = new TreeMap<>();
  private final Map<Integer, RunJudge.State> runStates = new TreeMap<>();
  private final Map<Integer, GeneratorJudge.State> generatorStates = new TreeMap<>();
  private final Gate<InputRow<Supply>> ownSupplies;
  private final Gate<InputRow<Supply>> supplies;
  private final Gate<InputRow<OutletGroup>> outlets;
  private final Gate<InputRow<Run>> ownRuns;
  private final Gate<InputRow<Run>> runs;
  private final Gate<InputRow<Load>> loadGate;
  private final Gate<InputRow<Generator>> generators;
  private final BatteryDays batteries;

  LightingCalculation(LightingInputs inputs) {
    this.inputs = inputs;
    settings = LightingSettings.of(inputs.project().rows().get(0));
    timeline = new Timeline(inputs.days(), settings.units());
    network = new Network(inputs, settings.units());
    SupplyHours hours = new SupplyHours(inputs, network, timeline);
    equipment = equipmentGate();
    Set<String> stops =
        equipment.all().stream()
            .filter(e -> !e.fit())
            .map(e -> Identity.of(e.item().value().item()))
            .collect(Collectors.toSet());
    LoadTable table = new LoadTable(inputs, network, timeline, hours, stops);
    offForSound = table.offForSound();
    Map<Integer, RunCable> cables = new HashMap<>();
    network
        .runs()
        .forEach((row, node) -> cables.put(row, RunCable.of(node, network.run(node), settings)));
    flows = new Flows(network, timeline, table, settings, n -> cables.get(n.row()).impedance());
    flows.loads().forEach(l -> loads.put(l.row().number(), l));
    usedLegs = new UsedLegs(flows.loads());
    nights = new Nights(flows.loads(), timeline, settings.dayShown());
    plugs = new Plugs(network, flows);
    outletJudge = new OutletJudge(network, settings, flows, plugs);
    Map<Integer, Double> kva = judgeGenerators(hours);
    RunJudge runJudge = new RunJudge(network, settings, flows, timeline, plugs, cables, kva);
    cables.keySet().forEach(row -> runStates.put(row, runJudge.judge(row)));
    Set<String> named =
        inputs
            .generators()
            .filled()
            .map(g -> Identity.of(g.value().name()))
            .collect(Collectors.toSet());
    SupplyJudge supplyJudge = new SupplyJudge(network, flows, outletJudge, named);
    loadJudge = new LoadJudge(network, settings, flows);
    flows.loads().forEach(loadJudge::judge);
    ownSupplies =
        gate(inputs.supplies().filled().toList(), r -> r.value().name(), supplyJudge::judge);
    outlets =
        gate(
            inputs.outlets().filled().toList(),
            r -> "#" + r.number(),
            r -> outletJudge.judge(r.number(), r.value()));
    ownRuns =
        gate(
            inputs.runs().filled().toList(),
            r -> r.value().to() == null ? null : "#" + r.number(),
            r -> runFindings(r, supplyJudge));
    supplies =
        gate(inputs.supplies().filled().toList(), r -> r.value().name(), this::supplyFindings);
    runs =
        gate(
            inputs.runs().filled().toList(),
            r -> r.value().to() == null ? null : "#" + r.number(),
            r ->
                withUpstream(
                    ownRuns.row(r.number()).findings(), network.runs().get(r.number()).parent()));
    loadGate =
        gate(
            inputs.loads().filled().toList(),
            r -> r.value().item() == null ? null : "#" + r.number(),
            r -> loadFindings(loads.get(r.number())));
    generators =
        gate(inputs.generators().filled().toList(), r -> r.value().name(), this::generatorFindings);
    batteries =
        new BatteryDays(
            inputs,
            settings,
            flows.loads().stream()
                .filter(l -> l.isCounted() && loadGate.row(l.row().number()).fit())
                .toList());
  }

  private <T extends Record> Gate<InputRow<T>> gate(
      List<InputRow<T>> rows,
      Function<InputRow<T>, String> name,
      Function<InputRow<T>, List<Finding>> findings) {
    return new Gate<>(
        rows.stream()
            .map(
                r ->
                    new Gate.Candidate<>(
                        r.number(), r, Identity.of(name.apply(r)), findings.apply(r), false))
            .toList(),
        settings.stops());
  }

  /** What is wrong with a load; where nothing stops it, what feeds it and is a stop. */
  private List<Finding> loadFindings(PlannedLoad load) {
    List<Finding> findings = load.findings();
    for (PlannedLoad.Part part : load.parts()) {
      findings = withUpstream(findings, part.node());
    }
    return findings;
  }

  /** Adds what stands between a place and the source and is a stop, to what is none itself. */
  private List<Finding> withUpstream(List<Finding> own, Node place) {
    if (place == null || Finding.verdict(own) == Verdict.STOP) {
      return own;
    }
    for (Node node : place.path()) {
      List<Finding> upstream =
          switch (node.kind()) {
            case SUPPLY -> ownSupplies.row(node.row()).findings();
            case RUN -> ownRuns.row(node.row()).findings();
            default -> outlets.row(node.row()).findings();
          };
      if (upstream.stream().anyMatch(f -> stopsLoads(f, node))) {
        List<Finding> findings = new ArrayList<>(own);
        findings.add(Finding.of(LightingFinding.LOAD_UPSTREAM, feeder(node)));
        return findings;
      }
    }
    return own;
  }

  /** What is wrong with a source or distro; where nothing stops it, any stop that feeds it. */
  private List<Finding> supplyFindings(InputRow<Supply> row) {
    List<Finding> own = ownSupplies.row(row.number()).findings();
    String stop = stopUpstream(network.supplies().get(row.number()).parent());
    if (stop == null || Finding.verdict(own) == Verdict.STOP) {
      return own;
    }
    List<Finding> findings = new ArrayList<>(own);
    boolean run = stop.startsWith(ARROW);
    findings.add(
        Finding.of(
            LightingFinding.LOAD_UPSTREAM,
            run ? Phrase.of(RUN_TO, stop.substring(ARROW.length())) : stop));
    return findings;
  }

  /** The name of what feeds a place, without what it is. */
  static String name(Object feeder) {
    return String.valueOf(feeder instanceof Phrase run ? run.arguments().get(0) : feeder);
  }

  /** What feeds a place; a cable run has the name of what it feeds. */
  private static Object feeder(Node node) {
    String name = Network.shown(node);
    return node.kind() == Node.Kind.RUN ? Phrase.of(RUN_TO, name) : name;
  }

  /**
   * The name of what is a stop, its sum included, nearest to a place on the way to its source; null
   * without one. A cable run has an arrow before what it feeds.
   */
  String stopUpstream(Node place) {
    for (Node n = place; n != null; n = n.parent()) {
      Node at = n;
      boolean fit =
          switch (n.kind()) {
            case SUPPLY -> ownSupplies.row(n.row()).fit();
            case RUN -> ownRuns.row(n.row()).fit();
            default -> outlets.row(n.row()).findings().stream().noneMatch(f -> stopsLoads(f, at));
          };
      if (!fit) {
        return (n.kind() == Node.Kind.RUN ? ARROW : "") + Network.shown(n);
      }
    }
    return null;
  }

  /** A generator that feeds loads without a known current, or that may, is too small by them. */
  private List<Finding> generatorFindings(InputRow<Generator> row) {
    GeneratorJudge.State state = generatorStates.get(row.number());
    List<Finding> findings = new ArrayList<>(state.findings());
    int uncounted = 0;
    for (PlannedLoad load : loads.values()) {
      boolean mayHang =
          load.parts().isEmpty()
              || load.parts().stream()
                  .anyMatch(p -> !p.node().isFed() || p.node().root() == state.node());
      if (load.isMissing() && mayHang) {
        uncounted++;
      }
    }
    if (uncounted > 0) {
      findings.add(Finding.of(LightingFinding.GENERATOR_UNCOUNTED, uncounted));
    }
    List<String> off = offForSound.getOrDefault(state.node(), List.of());
    off.stream()
        .max(Comparator.comparing(String::length).thenComparing(t -> t))
        .ifPresent(t -> findings.add(Finding.of(LightingFinding.GENERATOR_SOUND, t, off.size())));
    return findings;
  }

  /**
   * Whether loads behind a row may not be plugged in either. Not for a load whose current is not
   * known, which has its own stop, nor for the sum of a whole supply; an outlet that carries too
   * much is no fault of the others in its row.
   */
  private boolean stopsLoads(Finding finding, Node node) {
    if (finding.severity().compareTo(Severity.STOP) < 0
        || finding.key() == LightingFinding.NOT_COUNTED
        || finding.key() == LightingFinding.SUPPLY_OVER
        || settings.stops().contains(finding)) {
      return false;
    }
    return finding.key() != LightingFinding.OUTLET_OVER
        || finding.arguments().get(0).equals(node.name());
  }

  private List<Finding> runFindings(InputRow<Run> row, SupplyJudge supplyJudge) {
    List<Finding> findings = new ArrayList<>(row.findings());
    findings.addAll(runStates.get(row.number()).findings());
    findings.addAll(supplyJudge.uncounted(network.runs().get(row.number())));
    return findings;
  }

  private Gate<InputRow<Equipment>> equipmentGate() {
    Set<String> used =
        inputs
            .loads()
            .filled()
            .map(r -> Identity.of(r.value().item()))
            .collect(Collectors.toCollection(HashSet::new));
    return new Gate<>(
        inputs
            .equipment()
            .filled()
            .map(
                r ->
                    new Gate.Candidate<>(
                        r.number(),
                        r,
                        Identity.of(r.value().item()),
                        equipmentFindings(r, used),
                        false))
            .toList(),
        List.of());
  }

  private static List<Finding> equipmentFindings(InputRow<Equipment> row, Set<String> used) {
    List<Finding> findings = new ArrayList<>(row.findings());
    Equipment typed = row.value();
    if (typed.watts() != null && typed.watts() < leastWatts(typed.plug())) {
      findings.add(Finding.of(LightingFinding.WATTS_SMALL, typed.watts()));
    }
    if (ThirdHarmonic.isOpen(typed)
        && !row.unreadable().contains("harmonic")
        && used.contains(Identity.of(typed.item()))) {
      findings.add(
          Finding.of(
              LightingFinding.HARMONIC_OPEN,
              typed.powerFactor(),
              ThirdHarmonic.of(typed, typed.powerFactor())));
    }
    return findings;
  }

  /** Less is kilowatts typed as watts: 1 % of a large plug, 5 W of others; common practice. */
  private static double leastWatts(Connector plug) {
    return plug != null && plug.amps() > HOUSEHOLD ? LARGE_PLUG : SMALL_PLUG;
  }

  private Map<Integer, Double> judgeGenerators(SupplyHours hours) {
    double[] onOffer =
        inputs
            .sizes()
            .filled()
            .filter(r -> r.value().kva() != null)
            .mapToDouble(r -> r.value().kva())
            .sorted()
            .toArray();
    GeneratorJudge judge = new GeneratorJudge(network, flows, settings, timeline, hours, onOffer);
    Map<String, Node> byName = new HashMap<>();
    for (Node node : network.supplies().values()) {
      if (network.supply(node).type() == SupplyType.GENERATOR) {
        byName.putIfAbsent(Identity.of(node.name()), node);
      }
    }
    Map<Integer, Double> kva = new HashMap<>();
    for (InputRow<Generator> row : LightingInputs.sorted(inputs.generators())) {
      Node node = byName.get(Identity.of(row.value().name()));
      GeneratorJudge.State state = judge.judge(row, node);
      generatorStates.put(row.number(), state);
      if (state.node() != null && state.size() != null) {
        kva.merge(node.row(), state.size(), Math::min);
      }
    }
    return kva;
  }

  /** What is wrong with a row of Days. */
  List<Finding> dayFindings(InputRow<ShootDay> row) {
    List<Finding> findings = new ArrayList<>(row.findings());
    double hottest = settings.units().fromCelsius(HOTTEST);
    if (row.value().warmest() != null && row.value().warmest() > hottest) {
      String unit = settings.units() == MeasureSystem.US ? "°F" : "°C";
      findings.add(
          Finding.of(LightingFinding.DAY_HOT, "%.0f %s".formatted(row.value().warmest(), unit)));
    }
    inputs
        .days()
        .filled()
        .filter(r -> r.number() != row.number() && overlap(r.value(), row.value()))
        .map(r -> time(r.value().call(), 0) + "–" + time(r.value().wrap(), 1))
        .sorted()
        .findFirst()
        .ifPresent(t -> findings.add(Finding.of(LightingFinding.DAY_OVERLAP, t)));
    if (row.value().warmest() == null && !row.unreadable().contains("warmest")) {
      findings.add(Finding.of(LightingFinding.DAY_TEMPERATURE_OPEN));
    }
    Double coldest = row.value().coldest();
    Double warmest = row.value().warmest();
    if (coldest != null && warmest != null && coldest > warmest) {
      findings.add(Finding.of(LightingFinding.DAY_TEMPERATURES, coldest, warmest));
    }
    return findings;
  }

  /** Whether two rows are of one date and have hours in common: they are no move. */
  private static boolean overlap(ShootDay one, ShootDay other) {
    if (one.date() == null || !one.date().equals(other.date())) {
      return false;
    }
    DayClock first = DayClock.of(one.call(), one.wrap());
    DayClock second = DayClock.of(other.call(), other.wrap());
    return first.call() < second.wrap() && second.call() < first.wrap();
  }

  private static String time(Double typed, double blank) {
    double clock = typed == null ? blank : typed;
    return clock == 1 ? "24:00" : Timeline.text(clock);
  }

  /** What is wrong with a row of Cable stock. */
  static List<Finding> stockFindings(InputRow<CableStock> row) {
    List<Finding> findings = new ArrayList<>(row.findings());
    CableStock typed = row.value();
    findings.addAll(RunCable.sheath(typed.size(), typed.type(), typed.cores()));
    return findings;
  }

  /** What is wrong with Project. */
  List<Finding> projectFindings() {
    List<Finding> findings = new ArrayList<>(settings.findings());
    if (settings.dayShown() != null && nights.shown() == null) {
      findings.add(Finding.of(LightingFinding.DAY_SHOWN_UNKNOWN));
    }
    if (!settings.compared()) {
      findings.addAll(fromMemory());
    }
    return findings.stream().sorted(Finding.WORST_FIRST).toList();
  }

  /** The tables from memory by which cables were found protected: one check each. */
  private List<Finding> fromMemory() {
    Map<String, Integer> runs = new TreeMap<>();
    for (RunJudge.State state : runStates.values()) {
      if (Boolean.TRUE.equals(state.protects())) {
        Ampacity.unconfirmed(state.rating().source()).forEach(t -> runs.merge(t, 1, Integer::sum));
      }
    }
    return runs.entrySet().stream()
        .map(e -> Finding.of(LightingFinding.RATING_MEMORY, e.getKey(), e.getValue()))
        .toList();
  }

  /** The places of a reading; its planned currents are those of the first. */
  Node place(InputRow<Reading> row) {
    List<Node> places =
        row.value().place() == null ? List.of() : network.place(row.value().place());
    return places.size() == 1 && places.get(0).isFed() ? places.get(0) : null;
  }

  LightingInputs inputs() {
    return inputs;
  }

  LightingSettings settings() {
    return settings;
  }

  Timeline timeline() {
    return timeline;
  }

  Network network() {
    return network;
  }

  Flows flows() {
    return flows;
  }

  UsedLegs usedLegs() {
    return usedLegs;
  }

  Nights nights() {
    return nights;
  }

  Plugs plugs() {
    return plugs;
  }

  OutletJudge outletJudge() {
    return outletJudge;
  }

  LoadJudge loadJudge() {
    return loadJudge;
  }

  /** By row. */
  Map<Integer, PlannedLoad> loads() {
    return loads;
  }

  /** By row. */
  Map<Integer, RunJudge.State> runStates() {
    return runStates;
  }

  /** By row. */
  Map<Integer, GeneratorJudge.State> generatorStates() {
    return generatorStates;
  }

  Gate<InputRow<Equipment>> equipment() {
    return equipment;
  }

  Gate<InputRow<Supply>> supplies() {
    return supplies;
  }

  Gate<InputRow<OutletGroup>> outlets() {
    return outlets;
  }

  Gate<InputRow<Run>> runs() {
    return runs;
  }

  /** Runs by what is wrong with them alone, whatever stands between them and the source. */
  Gate<InputRow<Run>> ownRuns() {
    return ownRuns;
  }

  Gate<InputRow<Load>> loadGate() {
    return loadGate;
  }

  BatteryDays batteries() {
    return batteries;
  }

  Gate<InputRow<Generator>> generators() {
    return generators;
  }
}
