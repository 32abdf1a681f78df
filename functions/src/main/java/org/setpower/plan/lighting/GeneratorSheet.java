package org.setpower.plan.lighting;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.setpower.base.Numbers;
import org.setpower.plan.common.InputRow;
import org.setpower.plan.common.Phrase;
import org.setpower.plan.finding.Gate;
import org.setpower.plan.finding.Identity;
import org.setpower.plan.lighting.generator.FuelUse;
import org.setpower.plan.lighting.generator.GeneratorJudge;
import org.setpower.plan.lighting.input.Connector;
import org.setpower.plan.lighting.input.MeasureSystem;
import org.setpower.plan.lighting.input.SupplyTables.Generator;
import org.setpower.plan.lighting.input.SupplyTables.Supply;
import org.setpower.plan.lighting.load.Timeline;
import org.setpower.plan.lighting.network.Node;
import org.setpower.plan.lighting.paper.OrderList;
import org.setpower.plan.lighting.result.GeneratorPapers;

/** The rows that the operator of a generator is handed. */
final class GeneratorSheet {
  /** Said of a generator in place of its figures. */
  static final String OFF = "off on this day";

  private final LightingCalculation plan;
  private final OrderList orders;

  GeneratorSheet(LightingCalculation plan) {
    this.plan = plan;
    orders = new OrderList(plan.settings(), plan.network());
  }

  private List<Gate.Judged<InputRow<Generator>>> byName() {
    return plan.generators().all().stream()
        .filter(g -> plan.generatorStates().get(g.row()).node() != null)
        .sorted(
            Comparator.comparing(
                    (Gate.Judged<InputRow<Generator>> g) -> Identity.of(g.item().value().name()))
                .thenComparing(g -> g.item().cells().toString()))
        .toList();
  }

  List<GeneratorPapers.SheetRow> rows() {
    return byName().stream().map(this::row).toList();
  }

  private GeneratorPapers.SheetRow row(Gate.Judged<InputRow<Generator>> judged) {
    GeneratorJudge.State state = plan.generatorStates().get(judged.row());
    Node node = state.node();
    Supply supply = plan.network().supply(node);
    int refuel = state.fuel().refuelAt();
    boolean off = isOff(state);
    return new GeneratorPapers.SheetRow(
        judged.verdict(),
        node.name(),
        supply.location(),
        supply.electrician(),
        state.size(),
        device(supply.breaker(), "A", supply.curve() == null ? "" : supply.curve().name()),
        device(supply.rcd(), "mA", supply.rcdType() == null ? "" : supply.rcdType().word()),
        outlets(node),
        judged.item().value().bond(),
        off ? Phrase.of(OFF) : null,
        off ? null : leg(node, 0),
        off ? null : leg(node, 1),
        off ? null : leg(node, 2),
        off || !node.hasNeutral() ? null : (Double) plan.flows().shownNeutral(node),
        off ? null : (Double) state.startKva(),
        LightingTables.known(state.leftKva()),
        off ? null : LightingTables.known(state.share()),
        refuel < 0 ? null : plan.timeline().date(refuel),
        refuel < 0 ? null : (Double) Timeline.clock(refuel),
        judged.findings());
  }

  /** Whether it runs on other days than the one shown only; what carries a current does not. */
  private boolean isOff(GeneratorJudge.State state) {
    LocalDate shown = plan.nights().shown();
    List<FuelUse.Night> nights = state.fuel().nights();
    return shown != null
        && !nights.isEmpty()
        && nights.stream().noneMatch(n -> n.date() == null || shown.equals(n.date()))
        && IntStream.range(0, 3).allMatch(l -> plan.flows().shown(state.node(), l) == 0);
  }

  private static String device(Double rating, String unit, String kind) {
    return rating == null ? null : (Numbers.format(rating) + " " + unit + " " + kind).strip();
  }

  /** Its outlets in use, and connectors of the cable runs straight from it. */
  private String outlets(Node source) {
    String outlets =
        source.below().stream()
            .filter(n -> isFirst(n, source))
            .map(n -> n.kind() == Node.Kind.RUN ? connector(n) : outlet(n))
            .filter(Objects::nonNull)
            .distinct()
            .sorted()
            .collect(Collectors.joining(", "));
    return outlets.isEmpty() ? null : outlets;
  }

  /** Whether a run or an outlet hangs on a source with at most a breaker between. */
  private static boolean isFirst(Node node, Node source) {
    Node at = node.parent();
    boolean first =
        at == source || at != null && at.kind() == Node.Kind.BREAKER && at.parent() == source;
    return first && (node.kind() == Node.Kind.RUN || node.kind() == Node.Kind.OUTLET);
  }

  private String connector(Node run) {
    Connector connector =
        plan.runs().row(run.row()).fit()
            ? orders.connector(plan.runStates().get(run.row()).cable())
            : null;
    return connector == null ? null : connector.word();
  }

  private String outlet(Node outlet) {
    Connector connector = plan.network().connector(outlet);
    return connector == null || !plan.outletJudge().isUsed(outlet)
        ? null
        : outlet.name() + " " + connector.word();
  }

  private Double leg(Node node, int leg) {
    return (node.legs() >> leg & 1) == 1 ? (Double) plan.flows().shown(node, leg) : null;
  }

  /** The nights of the day shown, or all. */
  List<GeneratorPapers.NightRow> nights() {
    MeasureSystem units = plan.settings().units();
    List<GeneratorPapers.NightRow> rows = new ArrayList<>();
    for (Gate.Judged<InputRow<Generator>> judged : byName()) {
      GeneratorJudge.State state = plan.generatorStates().get(judged.row());
      for (FuelUse.Night night : state.fuel().nights()) {
        if (plan.nights().shown() == null || plan.nights().shown().equals(night.date())) {
          rows.add(
              new GeneratorPapers.NightRow(
                  state.node().name(),
                  night.date(),
                  Timeline.clock(night.from()),
                  Timeline.clock(night.to()),
                  night.hours(),
                  night.meanKw(),
                  night.mostKw(),
                  LightingTables.known(units.fromLitres(night.litres())),
                  null,
                  null));
        }
      }
    }
    return rows;
  }
}
