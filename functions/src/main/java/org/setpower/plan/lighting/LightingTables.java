package org.setpower.plan.lighting;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.BiFunction;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import org.setpower.plan.common.InputRow;
import org.setpower.plan.common.InputRows;
import org.setpower.plan.common.IssueRow;
import org.setpower.plan.common.ResultRows;
import org.setpower.plan.finding.Finding;
import org.setpower.plan.finding.Gate;
import org.setpower.plan.finding.Identity;
import org.setpower.plan.finding.Verdict;
import org.setpower.plan.lighting.battery.BatteryResults;
import org.setpower.plan.lighting.generator.GeneratorJudge;
import org.setpower.plan.lighting.input.CableTables.CableStock;
import org.setpower.plan.lighting.input.CableTables.Run;
import org.setpower.plan.lighting.input.LegWord;
import org.setpower.plan.lighting.input.LightingFinding;
import org.setpower.plan.lighting.input.LightingSettings;
import org.setpower.plan.lighting.input.LoadTables.Equipment;
import org.setpower.plan.lighting.input.LoadTables.Load;
import org.setpower.plan.lighting.input.LoadTables.Reading;
import org.setpower.plan.lighting.input.MeasureSystem;
import org.setpower.plan.lighting.input.ProjectTables.ShootDay;
import org.setpower.plan.lighting.input.SupplySystem;
import org.setpower.plan.lighting.input.SupplyTables.Generator;
import org.setpower.plan.lighting.input.SupplyTables.OutletGroup;
import org.setpower.plan.lighting.input.SupplyTables.Supply;
import org.setpower.plan.lighting.input.SupplyType;
import org.setpower.plan.lighting.load.Drop;
import org.setpower.plan.lighting.load.Flows;
import org.setpower.plan.lighting.load.LoadState;
import org.setpower.plan.lighting.load.Peak;
import org.setpower.plan.lighting.load.PlannedLoad;
import org.setpower.plan.lighting.load.Timeline;
import org.setpower.plan.lighting.network.Network;
import org.setpower.plan.lighting.network.Node;
import org.setpower.plan.lighting.paper.VoltageComparison;
import org.setpower.plan.lighting.protection.RunJudge;
import org.setpower.plan.lighting.result.GeneratorPapers;
import org.setpower.plan.lighting.result.LightingPapers;
import org.setpower.plan.lighting.result.LightingResults;
import org.setpower.supply.GeneratorRating;
import org.setpower.supply.Neutral;

/** Makes the tables of results of a calculated plan. */
final class LightingTables {
  /** A reading this far from the plan is looked at: common practice. */
  private static final double READING_AMPS = 3;

  private static final double READING_SHARE = 0.1;

  private final LightingCalculation plan;
  private final Network network;
  private final Flows flows;
  private final LightingSettings settings;
  private final MeasureSystem units;

  LightingTables(LightingCalculation plan) {
    this.plan = plan;
    network = plan.network();
    flows = plan.flows();
    settings = plan.settings();
    units = settings.units();
  }

  List<ResultRows<?>> tables() {
    List<LightingResults.ReadingResult> readings = align(plan.inputs().readings(), this::reading);
    List<IssueRow> issues = new LightingIssues(plan).rows(readings);
    LightingHandouts handouts = new LightingHandouts(plan);
    GeneratorSheet generatorSheet = new GeneratorSheet(plan);
    List<Finding> project = plan.projectFindings();
    VoltageComparison comparison =
        new VoltageComparison(plan.inputs().comparison(), settings.units());
    return List.of(
        new ResultRows<>(
            LightingResults.PROJECT_RESULT,
            List.of(new LightingResults.ProjectResult(Finding.verdict(project), project))),
        new ResultRows<>(LightingResults.DAY_RESULT, align(plan.inputs().days(), this::day)),
        new ResultRows<>(
            LightingResults.GROUP_RESULT,
            align(plan.inputs().groups(), r -> typed(r, LightingResults.GroupResult::new))),
        new ResultRows<>(
            LightingResults.SIZE_RESULT,
            align(plan.inputs().sizes(), r -> typed(r, LightingResults.SizeResult::new))),
        new ResultRows<>(
            LightingResults.SUPPLY_RESULT, align(plan.inputs().supplies(), this::supply)),
        new ResultRows<>(
            LightingResults.OUTLET_RESULT, align(plan.inputs().outlets(), this::outlet)),
        new ResultRows<>(LightingResults.RUN_RESULT, align(plan.inputs().runs(), this::run)),
        new ResultRows<>(LightingResults.LOAD_RESULT, align(plan.inputs().loads(), this::load)),
        new ResultRows<>(LightingResults.EQUIPMENT_RESULT, equipment()),
        new ResultRows<>(
            LightingResults.GENERATOR_RESULT, align(plan.inputs().generators(), this::generator)),
        new ResultRows<>(
            LightingResults.STOCK_RESULT, align(plan.inputs().stock(), LightingTables::stock)),
        new ResultRows<>(LightingResults.READING_RESULT, readings),
        new ResultRows<>(LightingPapers.SUMMARY, List.of(handouts.summary(issues))),
        new ResultRows<>(LightingPapers.ISSUES, issues),
        new ResultRows<>(LightingPapers.PLACE_ROW, handouts.distribution()),
        new ResultRows<>(LightingPapers.PLUGGING_ROW, handouts.plugging()),
        new ResultRows<>(LightingPapers.PULL_ROW, handouts.pull()),
        new ResultRows<>(LightingPapers.LENGTH_ROW, handouts.lengths()),
        new ResultRows<>(LightingPapers.LABEL_ROW, handouts.labels()),
        new ResultRows<>(LightingPapers.LEG_ROW, legs()),
        new ResultRows<>(LightingPapers.BALANCE_ROW, handouts.balance()),
        new ResultRows<>(LightingPapers.ORDER_ROW, new LightingOrder(plan).rows()),
        new ResultRows<>(LightingPapers.HOUR_ROW, handouts.hours()),
        new ResultRows<>(GeneratorPapers.SHEET_ROW, generatorSheet.rows()),
        new ResultRows<>(GeneratorPapers.NIGHT_ROW, generatorSheet.nights()),
        new ResultRows<>(
            LightingPapers.COMPARISON_ROW, align(plan.inputs().comparison(), comparison::result)),
        new ResultRows<>(
            BatteryResults.TYPE_RESULT,
            align(plan.inputs().batteryTypes(), plan.batteries()::type)),
        new ResultRows<>(
            BatteryResults.LOAD_RESULT,
            align(plan.inputs().batteryLoads(), plan.batteries()::load)),
        new ResultRows<>(
            BatteryResults.CHARGER_RESULT,
            align(plan.inputs().batteryChargers(), plan.batteries()::charger)),
        new ResultRows<>(BatteryResults.CHANGE_ROW, plan.batteries().changeRows()));
  }

  /** One result a row of the table, null for blank rows. */
  private static <T extends Record, R> List<R> align(
      InputRows<T> rows, Function<InputRow<T>, R> result) {
    List<R> results = new ArrayList<>(rows.rows().size());
    rows.rows().forEach(r -> results.add(r.isBlank() ? null : result.apply(r)));
    return results;
  }

  /** The result of a row that only its own cells decide. */
  private static <R> R typed(InputRow<?> row, BiFunction<Verdict, List<Finding>, R> result) {
    List<Finding> findings = row.findings().stream().sorted(Finding.WORST_FIRST).toList();
    return result.apply(Finding.verdict(findings), findings);
  }

  private static LightingResults.StockResult stock(InputRow<CableStock> row) {
    List<Finding> findings =
        LightingCalculation.stockFindings(row).stream().sorted(Finding.WORST_FIRST).toList();
    return new LightingResults.StockResult(Finding.verdict(findings), findings);
  }

  /** Legs of all sources, then of all distros. */
  private List<LightingPapers.LegRow> legs() {
    return plan.inputs()
        .supplies()
        .filled()
        .sorted(
            Comparator.comparing((InputRow<Supply> r) -> r.value().type() == SupplyType.DISTRO)
                .thenComparing(r -> Identity.of(r.value().name()))
                .thenComparing(InputRow::number))
        .map(this::legs)
        .toList();
  }

  private LightingPapers.LegRow legs(InputRow<Supply> row) {
    LightingResults.SupplyResult result = supply(row);
    SupplyType type = row.value().type();
    return new LightingPapers.LegRow(
        result.verdict(),
        row.value().name(),
        type == null ? null : type.word(),
        result.amps1(),
        result.amps2(),
        result.amps3(),
        result.neutral(),
        result.imbalance(),
        result.available(),
        result.headroom(),
        result.peakDate(),
        result.peakAt());
  }

  /** Blank for what is not known or has no end. */
  static Double known(double value) {
    return Double.isFinite(value) ? value : null;
  }

  private LightingResults.DayResult day(InputRow<ShootDay> row) {
    List<Finding> findings = plan.dayFindings(row).stream().sorted(Finding.WORST_FIRST).toList();
    return new LightingResults.DayResult(Finding.verdict(findings), findings);
  }

  private LightingResults.SupplyResult supply(InputRow<Supply> row) {
    Gate.Judged<InputRow<Supply>> judged = plan.supplies().row(row.number());
    Node node = network.supplies().get(row.number());
    String fedFrom = fedFrom(node);
    if (!node.isFed()) {
      return new LightingResults.SupplyResult(
          judged.verdict(),
          judged.findings(),
          judged.fit(),
          fedFrom,
          null,
          null,
          null,
          null,
          null,
          null,
          null,
          null,
          null);
    }
    Peak peak = flows.shown(node);
    double available = flows.available(node);
    LocalDate date = peak.amps() > 0 ? plan.timeline().date(peak.quarter()) : null;
    return new LightingResults.SupplyResult(
        judged.verdict(),
        judged.findings(),
        judged.fit(),
        fedFrom,
        known(available),
        leg(node, 0),
        leg(node, 1),
        leg(node, 2),
        node.hasNeutral() ? (Double) flows.shownNeutral(node) : null,
        date,
        peak.amps() > 0 ? (Double) Timeline.clock(peak.quarter()) : null,
        known(available - legs(node)),
        imbalance(node));
  }

  private double legs(Node node) {
    double most = 0;
    for (int leg = 0; leg < 3; leg++) {
      most = Math.max(most, flows.shown(node, leg));
    }
    return most;
  }

  static String fedFrom(Node node) {
    Node run = node.parent();
    return run == null || run.parent() == null ? null : run.parent().name();
  }

  private Double leg(Node node, int leg) {
    return (node.legs() >> leg & 1) == 1 ? (Double) flows.shown(node, leg) : null;
  }

  private Double imbalance(Node node) {
    double[] legs = new double[Integer.bitCount(node.legs())];
    int i = 0;
    double sum = 0;
    for (int leg = 0; leg < 3; leg++) {
      if ((node.legs() >> leg & 1) == 1) {
        legs[i] = flows.shown(node, leg);
        sum += legs[i++];
      }
    }
    return sum > 0 && legs.length > 1 ? (Double) Neutral.unbalance(legs) : null;
  }

  private LightingResults.OutletResult outlet(InputRow<OutletGroup> row) {
    Gate.Judged<InputRow<OutletGroup>> judged = plan.outlets().row(row.number());
    List<Node> nodes = network.ofGroup(row.number());
    List<Node> outlets = nodes.stream().filter(n -> n.kind() == Node.Kind.OUTLET).toList();
    Node peak = null;
    for (Node node : nodes) {
      boolean over =
          node.isFed()
              && (peak == null || flows.shown(node).amps() > flows.shown(peak).amps() + 1e-9);
      peak = over ? node : peak;
    }
    boolean flowing = peak != null && flows.shown(peak).amps() > 0;
    return new LightingResults.OutletResult(
        judged.verdict(),
        judged.findings(),
        outlets.size(),
        (int) outlets.stream().filter(plan.outletJudge()::isUsed).count(),
        legsOf(outlets),
        peak == null ? null : (Double) flows.shown(peak).amps(),
        flowing ? peak.name() : null,
        peak == null ? null : known(Network.protectedPlace(peak).protectingBreaker()));
  }

  /** Numbers by leg, such as L1: 1, 4; the leg alone where all outlets have the same. */
  private static String legsOf(List<Node> outlets) {
    Map<Integer, List<String>> byLegs = new LinkedHashMap<>();
    for (Node outlet : outlets) {
      String number = outlet.name().substring(outlet.name().lastIndexOf('-') + 1);
      byLegs.computeIfAbsent(outlet.legs(), k -> new ArrayList<>()).add(number);
    }
    byLegs.remove(0);
    if (byLegs.size() == 1) {
      return LegWord.text(byLegs.keySet().iterator().next());
    }
    return byLegs.entrySet().stream()
        .map(e -> LegWord.text(e.getKey()) + ": " + String.join(", ", e.getValue()))
        .collect(Collectors.joining(" · "));
  }

  private LightingResults.RunResult run(InputRow<Run> row) {
    Gate.Judged<InputRow<Run>> judged = plan.runs().row(row.number());
    RunJudge.State state = plan.runStates().get(row.number());
    Node node = state.cable().node();
    boolean flowing = node.isFed() && flows.shown(node).amps() > 0;
    Drop drop = node.isFed() ? flows.shownDrop(node) : null;
    boolean drops = flowing && drop.total() > 0;
    double total = node.isFed() ? flows.shownDropShare(node, node.legs()) : Double.NaN;
    return new LightingResults.RunResult(
        judged.verdict(),
        judged.findings(),
        judged.fit(),
        known(state.breaker()),
        state.protects() == null ? null : state.protects() ? "yes" : "no",
        known(state.rating().amps()),
        state.rating().source(),
        units.fromCelsius(state.air()),
        node.isFed() ? (Double) flows.shown(node).amps() : null,
        flowing ? (Double) Timeline.clock(flows.shown(node).quarter()) : null,
        node.isFed() ? (Double) flows.shownNeutral(node) : null,
        known(state.cable().metres()),
        SupplySystem.ONE.word(),
        drops ? (Double) drop.equalAmps() : null,
        drops ? (Double) drop.powerFactor() : null,
        drops ? (Double) (drop.own() * flows.dropVolts(node)) : null,
        known(total),
        node.isFed() ? (Double) (flows.dropVolts(node) * (1 - total)) : null,
        state.minSize() == null ? null : state.minSize().toString(),
        known(units.fromMetres(state.maxMetres())),
        state.disconnection(),
        known(state.loopOhms()));
  }

  private LightingResults.LoadResult load(InputRow<Load> row) {
    Gate.Judged<InputRow<Load>> judged = plan.loadGate().row(row.number());
    PlannedLoad load = plan.loads().get(row.number());
    double watts = load.watts() * load.quantity();
    double upstream = Double.POSITIVE_INFINITY;
    double shared = Double.NaN;
    for (PlannedLoad.Part part : load.parts()) {
      upstream = Math.min(upstream, part.node().protectingBreaker());
      if (part.node().isFed()) {
        shared = Math.max(Double.isNaN(shared) ? 0 : shared, flows.shown(part.node()).amps());
      }
    }
    return new LightingResults.LoadResult(
        judged.verdict(),
        judged.findings(),
        judged.fit(),
        LightingHandouts.legs(load),
        known(watts),
        known(watts / load.powerFactor()),
        LightingHandouts.amps(load, plan),
        known(plan.loadJudge().shownVolts(load)),
        known(upstream),
        known(shared));
  }

  private List<LightingResults.EquipmentResult> equipment() {
    Map<String, Double> atOnce = atOnce(flows, l -> true);
    return align(plan.inputs().equipment(), r -> equipment(r, atOnce));
  }

  /** By item the most pieces that are on at one time. */
  static Map<String, Double> atOnce(Flows flows, Predicate<PlannedLoad> counted) {
    List<PlannedLoad> loads = flows.loads();
    Map<String, Integer> places = new HashMap<>();
    int[] items = new int[loads.size()];
    double[] pieces = new double[items.length];
    for (int i = 0; i < items.length; i++) {
      PlannedLoad load = loads.get(i);
      String item = counted.test(load) ? Identity.of(load.row().value().item()) : null;
      pieces[i] = load.quantity();
      items[i] = item == null ? -1 : places.computeIfAbsent(item, k -> places.size());
    }
    double[] most = new double[places.size()];
    double[] now = new double[most.length];
    for (LoadState state : flows.states()) {
      Arrays.fill(now, 0);
      for (int i : state.on()) {
        if (items[i] >= 0) {
          now[items[i]] += pieces[i];
        }
      }
      for (int i = 0; i < most.length; i++) {
        most[i] = Math.max(most[i], now[i]);
      }
    }
    Map<String, Double> atOnce = new HashMap<>();
    places.forEach((item, place) -> atOnce.put(item, most[place]));
    return atOnce;
  }

  private LightingResults.EquipmentResult equipment(
      InputRow<Equipment> row, Map<String, Double> atOnce) {
    Gate.Judged<InputRow<Equipment>> judged = plan.equipment().row(row.number());
    double most = atOnce.getOrDefault(Identity.of(row.value().item()), 0.0);
    Double stock = row.value().stock();
    return new LightingResults.EquipmentResult(
        judged.verdict(),
        judged.findings(),
        most,
        Math.max(0, most - LightingSettings.or(stock, 0.0)));
  }

  private LightingResults.GeneratorResult generator(InputRow<Generator> row) {
    Gate.Judged<InputRow<Generator>> judged = plan.generators().row(row.number());
    GeneratorJudge.State state = plan.generatorStates().get(row.number());
    int refuel = state.fuel().refuelAt();
    return new LightingResults.GeneratorResult(
        judged.verdict(),
        judged.findings(),
        units.fromCelsius(state.air()),
        known(state.derate()),
        state.loadKva(),
        state.loadKw(),
        state.startKva(),
        known(state.requiredKva()),
        state.proposed(),
        known(state.leftKva()),
        known(state.leftKva() * GeneratorRating.RATED_POWER_FACTOR),
        known(state.share()),
        known(state.imbalance()),
        state.fuel().hours(),
        state.fuel().meanKw(),
        known(units.fromLitres(state.fuel().litres())),
        known(state.fuel().cost()),
        known(state.fuel().co2()),
        refuel < 0 ? null : plan.timeline().date(refuel),
        refuel < 0 ? null : (Double) Timeline.clock(refuel));
  }

  private LightingResults.ReadingResult reading(InputRow<Reading> row) {
    Reading typed = row.value();
    List<Finding> findings = new ArrayList<>(row.findings());
    Node place = plan.place(row);
    if (place == null && typed.place() != null) {
      findings.add(Finding.of(LightingFinding.READING_PLACE, typed.place()));
    }
    Double[] planned = new Double[3];
    Double[] read = {typed.l1(), typed.l2(), typed.l3()};
    if (place != null && typed.date() != null && typed.time() != null) {
      int state = flows.stateAt(plan.timeline().quarter(typed.date(), typed.time()));
      for (int leg = 0; leg < 3; leg++) {
        if ((place.legs() >> leg & 1) == 1) {
          planned[leg] = flows.amps(state, place, leg);
          double apart = read[leg] == null ? 0 : Math.abs(read[leg] - planned[leg]);
          if (apart > Math.max(READING_AMPS, READING_SHARE * planned[leg])) {
            findings.add(
                Finding.of(
                    LightingFinding.READING_OFF, LegWord.text(1 << leg), read[leg], planned[leg]));
          }
        }
      }
    }
    List<Finding> sorted = findings.stream().sorted(Finding.WORST_FIRST).toList();
    return new LightingResults.ReadingResult(
        Finding.verdict(sorted), sorted, planned[0], planned[1], planned[2]);
  }
}
