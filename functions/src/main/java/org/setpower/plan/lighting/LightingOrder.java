package org.setpower.plan.lighting;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.setpower.base.Numbers;
import org.setpower.plan.common.InputRow;
import org.setpower.plan.common.Phrase;
import org.setpower.plan.finding.Gate;
import org.setpower.plan.finding.Identity;
import org.setpower.plan.lighting.generator.GeneratorJudge;
import org.setpower.plan.lighting.input.CableTables.Run;
import org.setpower.plan.lighting.input.CableType;
import org.setpower.plan.lighting.input.Connector;
import org.setpower.plan.lighting.input.LightingFinding;
import org.setpower.plan.lighting.input.LightingInputs;
import org.setpower.plan.lighting.input.LoadTables.Equipment;
import org.setpower.plan.lighting.input.LoadTables.Load;
import org.setpower.plan.lighting.input.SupplyTables.Generator;
import org.setpower.plan.lighting.input.SupplyTables.OutletGroup;
import org.setpower.plan.lighting.input.SupplyTables.Supply;
import org.setpower.plan.lighting.input.SupplyType;
import org.setpower.plan.lighting.load.Flows;
import org.setpower.plan.lighting.load.PlannedLoad;
import org.setpower.plan.lighting.network.Network;
import org.setpower.plan.lighting.network.Node;
import org.setpower.plan.lighting.paper.OrderList;
import org.setpower.plan.lighting.result.LightingPapers;

/** What a plan needs on all its days: what is fit by type and size, and what is a stop. */
final class LightingOrder {
  private static final String PLAIN = "{0}";
  private static final String CONDUCTOR = "{0}, {1}";
  private static final String CORES = "{0}, cores: {1}";
  private static final String DEVICES = "{0}. Breakers / RCDs: {1}";
  private static final String MAIN = "{0}, main breaker {1}";
  private static final String RCD = "{0}, RCD {1}";
  private static final String TANK = "{0}, tank {1,number,0.#} {2}";
  private static final String PREHEATED = "{0}, with engine preheating";
  private static final String WITH_BREAKER = "{0}, with breaker {1,number,0.#} A";

  private final LightingCalculation plan;
  private final Network network;
  private final Flows flows;
  private final OrderList orders;
  private final List<InputRow<Supply>> supplies;

  /** By the identity of what they hang on. */
  private final Map<String, List<OutletGroup>> outlets;

  LightingOrder(LightingCalculation plan) {
    this.plan = plan;
    network = plan.network();
    flows = plan.flows();
    orders = new OrderList(plan.settings(), network);
    supplies = LightingInputs.sorted(plan.inputs().supplies());
    outlets =
        plan.inputs()
            .outlets()
            .filled()
            .map(InputRow::value)
            .collect(Collectors.groupingBy(g -> Identity.of(g.distro())));
  }

  /** What stands in it. */
  static List<String> words() {
    List<String> words = new ArrayList<>(CableType.names());
    words.addAll(
        List.of(PLAIN, CONDUCTOR, CORES, DEVICES, MAIN, RCD, TANK, PREHEATED, WITH_BREAKER));
    return words;
  }

  List<LightingPapers.OrderRow> rows() {
    plan.runStates()
        .forEach(
            (row, s) -> {
              if (plan.ownRuns().row(row).fit()) {
                orders.addCable(s.cable());
              }
            });
    flows.loads().stream().filter(PlannedLoad::isCounted).forEach(orders::addLoad);
    plan.plugs().split().forEach(n -> orders.addSplitter(n, plan.plugs().at(n)));
    for (InputRow<Supply> row : supplies) {
      Node place = network.supplies().get(row.number());
      orders.addDistro(row.value(), outlets(row.value()), inlet(place));
    }
    for (Gate.Judged<InputRow<Generator>> row : plan.generators().all()) {
      GeneratorJudge.State state = plan.generatorStates().get(row.row());
      if (row.fit() && state.node() != null && state.size() != null) {
        orders.addGenerator(state.node().name(), state.size());
      }
    }
    Map<String, Double> atOnce =
        LightingTables.atOnce(flows, l -> plan.loadGate().row(l.row().number()).fit());
    for (Gate.Judged<InputRow<Equipment>> row : plan.equipment().all()) {
      double most = atOnce.getOrDefault(Identity.of(row.item().value().item()), 0.0);
      // two rows of one name are a stop, and nothing of them is known
      most += row.fit() ? plan.batteries().lights(row.item().value().item()) : 0;
      if (most > 0) {
        orders.addDevices(row.item().value(), (int) Math.ceil(most));
      }
    }
    plan.batteries().orders().forEach(orders::addBattery);
    addStops();
    orders.takeStock(plan.inputs());
    return orders.lines().stream()
        .map(
            l ->
                new LightingPapers.OrderRow(
                    l.kind(),
                    l.what(),
                    l.size(),
                    l.cores(),
                    article(l),
                    sized(l),
                    l.connector(),
                    LightingTables.known(l.length()),
                    l.required(),
                    l.spare(),
                    LightingTables.known(l.stock()),
                    l.shortOf(),
                    LightingTables.known(l.breaker())))
        .toList();
  }

  /** What is ordered, with the breaker that an adaptor needs. */
  private Phrase article(OrderList.Line line) {
    for (CableType type : CableType.values()) {
      if (line.kind().equals("cable") && line.what().equals(type.word())) {
        return Phrase.of(type.name(network.isUs()));
      }
    }
    if (!Double.isNaN(line.breaker())) {
      return Phrase.of(WITH_BREAKER, line.what(), line.breaker());
    }
    Phrase all = Phrase.of(PLAIN, line.what());
    for (InputRow<Supply> row : supplies) {
      Supply typed = row.value();
      boolean named =
          typed.name() != null
              && (line.what().equals(typed.name()) || line.what().startsWith(typed.name() + ", "));
      if (named && line.kind().equals("distro") && typed.type() == SupplyType.DISTRO) {
        return devices(all, typed);
      }
      if (named && line.kind().equals("generator") && typed.type() == SupplyType.GENERATOR) {
        return generator(all, typed);
      }
    }
    return all;
  }

  private List<OutletGroup> outlets(Supply supply) {
    return outlets.getOrDefault(Identity.of(supply.name()), List.of());
  }

  /** A distro with the breakers and RCDs of its outlets. */
  private Phrase devices(Phrase all, Supply typed) {
    String devices =
        outlets(typed).stream()
            .filter(g -> g.numbers() != null && (g.breaker() != null || g.rcd() != null))
            .map(
                g ->
                    g.numbers()
                        + ": "
                        + Stream.of(
                                device(g.breaker(), "A", g.curve() == null ? "" : g.curve().name()),
                                device(
                                    g.rcd(), "mA", g.rcdType() == null ? "" : g.rcdType().word()))
                            .filter(Objects::nonNull)
                            .collect(Collectors.joining(" / ")))
            .sorted()
            .collect(Collectors.joining("; "));
    return devices.isEmpty() ? all : Phrase.of(DEVICES, all, devices);
  }

  /** A generator with what it has to have. */
  private Phrase generator(Phrase all, Supply typed) {
    Phrase article = all;
    if (typed.system() != null && typed.volts() != null) {
      article =
          Phrase.of(
              CONDUCTOR,
              article,
              typed.system().word() + " " + Numbers.format(typed.volts()) + " V");
    }
    if (typed.breaker() != null) {
      String curve = typed.curve() == null ? "" : typed.curve().name();
      article = Phrase.of(MAIN, article, device(Numbers.format(typed.breaker()), "A", curve));
    }
    if (typed.rcd() != null) {
      String type = typed.rcdType() == null ? "" : typed.rcdType().word();
      article = Phrase.of(RCD, article, device(Numbers.format(typed.rcd()), "mA", type));
    }
    for (Gate.Judged<InputRow<Generator>> row : plan.generators().all()) {
      Generator set = row.item().value();
      boolean own = row.fit() && Identity.of(set.name()).equals(Identity.of(typed.name()));
      if (own && set.tank() != null) {
        article = Phrase.of(TANK, article, set.tank(), network.isUs() ? "US gal" : "L");
      }
      if (own && row.findings().stream().anyMatch(f -> f.key() == LightingFinding.GENERATOR_COLD)) {
        article = Phrase.of(PREHEATED, article);
      }
    }
    return article;
  }

  /** A rating as typed, with its unit where it is a number. */
  private static String device(String rating, String unit, String kind) {
    if (rating == null) {
      return null;
    }
    boolean number = Character.isDigit(rating.charAt(0));
    return (number ? rating + " " + unit + " " + kind : rating).strip();
  }

  /** Size and cores of what is ordered; null where neither counts. */
  private static Phrase sized(OrderList.Line line) {
    if (line.cores().isEmpty()) {
      return line.size().isEmpty() ? null : Phrase.of(PLAIN, line.size());
    }
    boolean number = Character.isDigit(line.cores().charAt(0));
    return Phrase.of(number ? CORES : CONDUCTOR, line.size(), line.cores());
  }

  /** The connector of the cable that feeds a distro; null where it is not known. */
  private Connector inlet(Node distro) {
    Node run = distro.parent();
    return run == null || run.kind() != Node.Kind.RUN || run.parent() == null
        ? null
        : orders.connector(plan.runStates().get(run.row()).cable());
  }

  /** Rows of Loads and Cable runs that are not in the order. */
  private void addStops() {
    Map<String, Double> most =
        LightingTables.atOnce(flows, l -> !plan.loadGate().row(l.row().number()).fit());
    Map<String, Double> pieces = new TreeMap<>();
    Map<String, String> names = new HashMap<>();
    for (Gate.Judged<InputRow<Load>> row : plan.loadGate().all()) {
      PlannedLoad load = plan.loads().get(row.row());
      String item = Identity.of(row.item().value().item());
      if (!row.fit() && row.item().value().item() != null) {
        names.putIfAbsent(item, row.item().value().item());
        pieces.merge(item, load.isCounted() ? 0 : load.quantity(), Double::sum);
      }
    }
    pieces.forEach(
        (item, own) ->
            orders.addStop(
                names.get(item),
                null,
                Double.NaN,
                (int) Math.ceil(own + most.getOrDefault(item, 0.0))));
    for (Gate.Judged<InputRow<Run>> row : plan.ownRuns().all()) {
      Run typed = row.item().value();
      if (!row.fit()) {
        double length = typed.length() == null ? Double.NaN : typed.length();
        orders.addStop(typed.to(), typed.size(), length, 1);
      }
    }
  }
}
