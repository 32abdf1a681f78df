package org.setpower.plan.lighting.distro;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.setpower.plan.common.InputRow;
import org.setpower.plan.common.InputRows;
import org.setpower.plan.finding.Identity;
import org.setpower.plan.lighting.input.CableTables;
import org.setpower.plan.lighting.input.CableType;
import org.setpower.plan.lighting.input.LightingInputs;
import org.setpower.plan.lighting.input.LightingSettings;
import org.setpower.plan.lighting.input.MeasureSystem;
import org.setpower.plan.lighting.input.SupplyTables;
import org.setpower.plan.lighting.input.SupplyTables.Supply;
import org.setpower.plan.lighting.input.SupplyType;
import org.setpower.plan.lighting.network.Network;
import org.setpower.plan.lighting.network.Node;
import org.setpower.plan.lighting.protection.RunCable;

/** What a plan takes when a distro is added: its row, its outlets, the cable run that feeds it. */
public final class DistroAddition {
  private static final int MOST_NUMBERS = 1000;

  private final LightingInputs inputs;
  private final MeasureSystem units;
  private final Network network;

  /** Why a distro cannot be added. */
  public enum Refusal {
    UNITS_BLANK,
    NAME_BLANK,
    NAME_TAKEN,
    PLACE_UNKNOWN,
    LENGTH,
    SIZE,
    NO_ROOM
  }

  /**
   * Cells of a new row.
   *
   * @param row its number in the table
   */
  public record NewRow(String table, int row, Map<String, Object> cells) {}

  /**
   * What is asked for.
   *
   * @param length of the cable as typed, null where it is no number
   * @param size empty for the usual one
   */
  public record Order(
      String name, DistroKind kind, String from, Double length, String size, CableType type) {}

  /** For a plan as a sheet hands it over. */
  public DistroAddition(List<?> ranges) {
    inputs = LightingInputs.read(ranges);
    units = LightingSettings.of(inputs.project().rows().get(0)).units();
    network = new Network(inputs, units);
  }

  /** Units of the plan's lengths. */
  public MeasureSystem units() {
    return units;
  }

  /** Usual distros in these units. */
  public List<DistroKind> kinds() {
    return DistroKind.of(units);
  }

  /** Places that may feed it: sources, then free outlets of distros, each in the order of names. */
  public List<String> places() {
    List<String> sources =
        network.supplies().values().stream()
            .filter(n -> network.supply(n).type() != null)
            .filter(n -> network.supply(n).type() != SupplyType.DISTRO)
            .map(Node::name)
            .filter(n -> !n.isEmpty())
            .sorted(Comparator.comparing(Identity::padded))
            .toList();
    Set<Node> loaded = new HashSet<>();
    inputs
        .loads()
        .filled()
        .filter(l -> l.value().place() != null)
        .forEach(l -> loaded.addAll(network.place(l.value().place())));
    Stream<String> outlets =
        network.nodes().stream()
            .filter(n -> n.kind() == Node.Kind.OUTLET)
            .filter(n -> n.children().isEmpty() && !loaded.contains(n))
            .map(Node::name)
            .sorted(Comparator.comparing(Identity::padded));
    return Stream.concat(sources.stream(), outlets).distinct().toList();
  }

  /** The same, those whose breaker is nearest to a kind's feed first. */
  public List<String> places(DistroKind kind) {
    return places().stream().sorted(Comparator.comparing(p -> away(p, kind))).toList();
  }

  private double away(String place, DistroKind kind) {
    List<Node> nodes = network.place(place);
    return nodes.size() == 1
        ? Math.abs(nodes.get(0).protectingBreaker() - kind.feed())
        : Double.POSITIVE_INFINITY;
  }

  private Set<String> taken() {
    return Stream.concat(
            inputs.supplies().filled().map(r -> r.value().name()),
            inputs.runs().filled().map(r -> r.value().to()))
        .map(Identity::of)
        .collect(Collectors.toSet());
  }

  /** The next name in the order of those there are: B after A, A3 after A2. */
  public String nextName() {
    List<String> distros =
        inputs
            .supplies()
            .filled()
            .map(InputRow::value)
            .filter(s -> s.type() == SupplyType.DISTRO && s.name() != null)
            .map(Supply::name)
            .toList();
    String last = distros.isEmpty() ? "" : distros.get(distros.size() - 1);
    String letters = last.replaceAll("[0-9]+$", "");
    Set<String> taken = taken();
    if (last.isEmpty() || last.length() == 1 && letters.length() == 1) {
      for (char letter = 'A'; letter <= 'Z'; letter++) {
        if (!taken.contains(String.valueOf(letter))) {
          return String.valueOf(letter);
        }
      }
    }
    for (int n = 1; n < MOST_NUMBERS; n++) {
      if (!taken.contains(Identity.of(letters + n))) {
        return letters + n;
      }
    }
    return "";
  }

  /** Why it cannot be added; empty where it can. */
  public Optional<Refusal> refusal(Order order) {
    if (inputs.project().rows().get(0).isBlank()
        || inputs.project().rows().get(0).value().units() == null) {
      return Optional.of(Refusal.UNITS_BLANK);
    }
    if (Identity.of(order.name()).isEmpty()) {
      return Optional.of(Refusal.NAME_BLANK);
    }
    if (taken().contains(Identity.of(order.name()))) {
      return Optional.of(Refusal.NAME_TAKEN);
    }
    if (network.place(order.from()).size() != 1) {
      return Optional.of(Refusal.PLACE_UNKNOWN);
    }
    boolean readable =
        order.length() != null
            && order.length() >= CableTables.RUNS.column("length").min()
            && order.length() <= CableTables.RUNS.column("length").max();
    if (!readable) {
      return Optional.of(Refusal.LENGTH);
    }
    if (!order.size().isBlank() && RunCable.size(order.size()) == null) {
      return Optional.of(Refusal.SIZE);
    }
    boolean room =
        blank(inputs.supplies(), 1).size() == 1
            && blank(inputs.runs(), 1).size() == 1
            && blank(inputs.outlets(), order.kind().outlets().size()).size()
                == order.kind().outlets().size();
    return room ? Optional.empty() : Optional.of(Refusal.NO_ROOM);
  }

  /** Numbers of the first blank rows below the last filled one. */
  private static List<Integer> blank(InputRows<?> rows, int wanted) {
    int last = rows.filled().mapToInt(InputRow::number).max().orElse(0);
    List<Integer> blank = new ArrayList<>();
    for (int n = last + 1; n <= rows.rows().size() && blank.size() < wanted; n++) {
      blank.add(n);
    }
    return blank;
  }

  /** The rows to write; only for what is not refused. */
  public List<NewRow> rows(Order order) {
    List<NewRow> rows = new ArrayList<>();
    String name = order.name().strip();
    Map<String, Object> supply = new LinkedHashMap<>();
    supply.put("name", name);
    supply.putAll(order.kind().supply());
    rows.add(new NewRow(SupplyTables.SUPPLIES.key(), blank(inputs.supplies(), 1).get(0), supply));
    List<Map<String, Object>> groups = order.kind().outlets();
    List<Integer> free = blank(inputs.outlets(), groups.size());
    for (int i = 0; i < groups.size(); i++) {
      Map<String, Object> cells = new LinkedHashMap<>();
      cells.put("distro", name);
      cells.putAll(groups.get(i));
      rows.add(new NewRow(SupplyTables.OUTLETS.key(), free.get(i), cells));
    }
    Map<String, Object> run = new LinkedHashMap<>();
    run.put("to", name);
    run.put("from", network.place(order.from()).get(0).name());
    run.put("length", order.length());
    run.putAll(order.kind().run());
    if (!order.size().isBlank()) {
      run.put("size", order.size().strip());
      // what is marked on another cable is not known
      run.remove("cores");
      run.remove("temperatureClass");
    }
    if (order.type() != null) {
      run.put("type", order.type().word());
    }
    rows.add(new NewRow(CableTables.RUNS.key(), blank(inputs.runs(), 1).get(0), run));
    return rows;
  }
}
