package org.setpower.plan.lighting.paper;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.regex.Pattern;
import org.setpower.base.Numbers;
import org.setpower.cable.CableSize;
import org.setpower.plan.common.InputRow;
import org.setpower.plan.finding.Verdict;
import org.setpower.plan.lighting.battery.BatteryDays;
import org.setpower.plan.lighting.input.CableTables.CableStock;
import org.setpower.plan.lighting.input.Connector;
import org.setpower.plan.lighting.input.CoreSet;
import org.setpower.plan.lighting.input.LegWord;
import org.setpower.plan.lighting.input.LightingInputs;
import org.setpower.plan.lighting.input.LightingSettings;
import org.setpower.plan.lighting.input.LoadTables.Equipment;
import org.setpower.plan.lighting.input.SupplyTables.OutletGroup;
import org.setpower.plan.lighting.input.SupplyTables.Supply;
import org.setpower.plan.lighting.input.SupplyType;
import org.setpower.plan.lighting.load.PlannedLoad;
import org.setpower.plan.lighting.network.Network;
import org.setpower.plan.lighting.network.Node;
import org.setpower.plan.lighting.protection.Pieces;
import org.setpower.plan.lighting.protection.RunCable;

/** What to order: generators, distros, cable by type, size and cores, adaptors, devices. */
public final class OrderList {
  private static final Pattern NUMBER = Pattern.compile("(?<![.,\\d])\\d+");
  private static final int DIGITS = 5;
  private static final double ROUNDING = 1e-9;
  private static final String STOP = Verdict.STOP.code();

  private static final List<Connector> METRIC_ONE_LEG =
      List.of(Connector.CEE_16_3, Connector.CEE_32_3, Connector.CEE_63_3);
  private static final List<Connector> METRIC_THREE_LEGS =
      List.of(Connector.CEE_16_5, Connector.CEE_32_5, Connector.CEE_63_5, Connector.CEE_125_5);
  private static final List<Connector> US_ONE_LEG =
      List.of(Connector.STAGE_PIN_20, Connector.STAGE_PIN_60, Connector.STAGE_PIN_100);
  private static final List<Connector> US_TWO_LEGS =
      List.of(Connector.FOUR_WIRE_50, Connector.FOUR_WIRE_100);

  /** Sizes and lengths as they sort, each made once. */
  private final Map<String, String> sizes = new HashMap<>();

  private final Map<Double, String> lengths = new HashMap<>();
  private final LightingSettings settings;
  private final Network network;
  private final Map<String, Line> lines = new TreeMap<>();

  /**
   * A line of the order.
   *
   * @param kind generator, distro, cable, adaptor, splitter, battery or load; stop for what is not
   *     ordered
   * @param size of cable or generator, empty for others
   * @param cores of cable; for a set of single-core cables the conductor
   * @param length of a piece as typed; NaN for others
   * @param breaker rating of the breaker that an adaptor needs; NaN where none is needed
   * @param stock NaN where it is not known
   */
  public record Line(
      String kind,
      String what,
      String size,
      String cores,
      String connector,
      double length,
      int required,
      int spare,
      double stock,
      double breaker) {
    /** Pieces that are missing; 0 where stock is not known to be enough. */
    public double shortOf() {
      return kind.equals(STOP)
          ? 0
          : Math.max(0, required + spare - (Double.isNaN(stock) ? 0 : stock));
    }
  }

  public OrderList(LightingSettings settings, Network network) {
    this.settings = settings;
    this.network = network;
  }

  /** The lines, sorted. */
  public List<Line> lines() {
    return List.copyOf(lines.values());
  }

  /** A size by its numbers: 2.5 mm² comes before 16 mm². */
  private String byNumber(String size) {
    return sizes.computeIfAbsent(
        size,
        k ->
            NUMBER
                .matcher(k)
                .replaceAll(m -> "0".repeat(Math.max(0, DIGITS - m.group().length())) + m.group()));
  }

  private String byLength(double length) {
    return lengths.computeIfAbsent(
        length, k -> Double.isNaN(k) ? "" : "%012.3f".formatted(k.doubleValue()));
  }

  private void add(Line line) {
    String key =
        String.join(
            "|",
            line.kind(),
            line.what(),
            byNumber(line.size()),
            line.cores(),
            line.connector(),
            byLength(line.length()),
            Double.isNaN(line.breaker()) ? "" : "" + line.breaker());
    Line before = lines.get(key);
    int required = line.required() + (before == null ? 0 : before.required());
    boolean spared = line.kind().equals("cable") || line.kind().equals("adaptor");
    int spare = spared ? (int) Math.ceil(required * settings.spareCable() - ROUNDING) : 0;
    lines.put(
        key,
        new Line(
            line.kind(),
            line.what(),
            line.size(),
            line.cores(),
            line.connector(),
            line.length(),
            required,
            spare,
            line.stock(),
            line.breaker()));
  }

  /** Adds a generator of a size that is decided or proposed. */
  public void addGenerator(String name, double kva) {
    add(
        new Line(
            "generator",
            name,
            Numbers.format(kva) + " kVA",
            "",
            "",
            Double.NaN,
            1,
            0,
            Double.NaN,
            Double.NaN));
  }

  /** Adds devices of a type. */
  public void addDevices(Equipment device, int pieces) {
    add(
        new Line(
            "load",
            device.item(),
            "",
            "",
            device.plug() == null ? "" : device.plug().word(),
            Double.NaN,
            pieces,
            0,
            device.stock() == null ? Double.NaN : device.stock(),
            Double.NaN));
  }

  /** Names what a stop leaves out, so that the order is not short of it silently. */
  public void addStop(String what, String size, double length, int pieces) {
    add(
        new Line(
            STOP,
            what == null ? "" : what,
            size == null ? "" : size,
            "",
            "",
            length,
            pieces,
            0,
            Double.NaN,
            Double.NaN));
  }

  /** The connectors of a run: as typed, of its outlet, or what its source needs; null for none. */
  public Connector connector(RunCable cable) {
    Connector own = cable.typed().connector();
    Connector used = own == null ? network.connector(cable.node().parent()) : own;
    return used == null ? ofSource(cable) : used;
  }

  /** Adds a splitter from one plug to several. */
  public void addSplitter(Node place, int plugs) {
    Connector connector = network.connector(place);
    String of = connector == null ? "" : connector.word() + ", ";
    add(
        new Line(
            "splitter",
            of + "1 to " + plugs,
            "",
            "",
            "",
            Double.NaN,
            1,
            0,
            Double.NaN,
            Double.NaN));
  }

  /** Adds batteries of a type. */
  public void addBattery(BatteryDays.Order batteries) {
    add(
        new Line(
            "battery",
            batteries.type(),
            "",
            "",
            "",
            Double.NaN,
            batteries.pieces(),
            0,
            batteries.stock(),
            Double.NaN));
  }

  /** Adds the pieces of a run, a set of single-core cables by conductor. */
  public void addCable(RunCable cable) {
    if (cable.size() == null || cable.typed().type() == null || Double.isNaN(cable.metres())) {
      return;
    }
    List<Double> pieces =
        cable.typed().pieces() == null
            ? List.of(cable.typed().length())
            : Pieces.parse(cable.typed().pieces());
    Connector own = cable.typed().connector();
    Connector outlet = network.connector(cable.node().parent());
    Connector used = connector(cable);
    String connector = used == null ? "" : used.word();
    for (double piece : pieces) {
      for (Map.Entry<String, Integer> cores : conductors(cable.cores()).entrySet()) {
        add(
            new Line(
                "cable",
                cable.typed().type().word(),
                cable.size().toString(),
                cores.getKey(),
                connector,
                piece,
                cores.getValue() * cable.parallel(),
                0,
                Double.NaN,
                Double.NaN));
      }
    }
    if (own != null && outlet != null && own != outlet) {
      double breaker = cable.node().parent().protectingBreaker();
      adaptor(outlet, own, "", breaker, 1);
    }
  }

  private static Map<String, Integer> conductors(CoreSet cores) {
    if (!cores.isSingle()) {
      return Map.of(cores.word(), 1);
    }
    Map<String, Integer> conductors = new TreeMap<>();
    conductors.put("earth", 1);
    if (cores.neutrals() > 0) {
      conductors.put("neutral", cores.neutrals());
    }
    for (int leg = 1; leg <= cores.legs(); leg++) {
      conductors.put("L" + leg, 1);
    }
    return conductors;
  }

  /**
   * The connector of a cable straight from a source, whose own is not typed: a set for single
   * cores, else the smallest one that is made for the upstream breaker; null where none is.
   */
  private Connector ofSource(RunCable cable) {
    Node from = cable.node().parent();
    if (from == null || from.kind() != Node.Kind.SUPPLY) {
      return null;
    }
    int legs = Integer.bitCount(cable.node().legs());
    double breaker = from.protectingBreaker();
    List<Connector> made =
        cable.cores().isSingle()
            ? List.of(Connector.SINGLE_POLE)
            : network.isUs()
                ? legs == 1 ? US_ONE_LEG : legs == 2 ? US_TWO_LEGS : List.of()
                : legs == 3 ? METRIC_THREE_LEGS : legs == 1 ? METRIC_ONE_LEG : List.of();
    return made.stream().filter(c -> c.amps() >= breaker).findFirst().orElse(null);
  }

  /** Adds the adaptors of a load. */
  public void addLoad(PlannedLoad load) {
    if (load.equipment() == null || load.equipment().plug() == null) {
      return;
    }
    for (PlannedLoad.Part part : load.parts()) {
      Connector there = network.connector(part.node());
      if (there != null && there != load.equipment().plug() && part.quantity() > 0) {
        adaptor(
            there,
            load.equipment().plug(),
            wired(part),
            part.node().protectingBreaker(),
            (int) part.quantity());
      }
    }
  }

  /** The leg that an adaptor is made for, where the outlet has more. */
  private static String wired(PlannedLoad.Part part) {
    boolean some = part.legs() != 0 && part.legs() != part.node().legs();
    return some ? ", " + LegWord.text(part.legs()) : "";
  }

  /** A plug that is made for less than the breaker needs a smaller breaker in its adaptor. */
  private void adaptor(Connector from, Connector to, String leg, double breaker, int pieces) {
    add(
        new Line(
            "adaptor",
            from.word() + " to " + to.word() + leg,
            "",
            "",
            "",
            Double.NaN,
            pieces,
            0,
            Double.NaN,
            to.amps() < breaker ? to.amps() : Double.NaN));
  }

  /** Adds a distro with its outlets; the inlet is that of its cable, null where not known. */
  public void addDistro(Supply typed, List<OutletGroup> groups, Connector inlet) {
    if (typed.type() != SupplyType.DISTRO || typed.name() == null) {
      return;
    }
    List<String> outlets = new ArrayList<>();
    for (OutletGroup group : groups) {
      if (group.connector() != null && group.numbers() != null) {
        outlets.add(group.numbers() + ": " + group.connector().word());
      }
    }
    outlets.sort(null);
    String main = typed.breaker() == null ? "" : Numbers.format(typed.breaker()) + " A";
    add(
        new Line(
            "distro",
            typed.name() + (outlets.isEmpty() ? "" : ", " + String.join(", ", outlets)),
            main,
            "",
            inlet == null ? "" : inlet.word(),
            Double.NaN,
            1,
            0,
            Double.NaN,
            Double.NaN));
  }

  /** Takes stock off, earth first, then neutral, then legs. */
  public void takeStock(LightingInputs inputs) {
    for (InputRow<CableStock> row : LightingInputs.sorted(inputs.stock())) {
      CableStock typed = row.value();
      CableSize size = RunCable.size(typed.size());
      if (!row.findings().isEmpty()
          || size == null
          || !RunCable.sheath(typed.size(), typed.type(), typed.cores()).isEmpty()) {
        continue;
      }
      int marked = CableSize.cores(typed.size());
      double left = typed.pieces();
      for (Map.Entry<String, Line> entry : byConductor()) {
        Line line = entry.getValue();
        boolean single = isConductor(line.cores());
        boolean same =
            line.kind().equals("cable")
                && line.what().equals(typed.type().word())
                && line.size().equals(size.toString())
                && (typed.cores() == null
                    ? marked > 1 ? line.cores().equals("" + marked) : single
                    : typed.cores().isSingle() ? single : typed.cores().word().equals(line.cores()))
                && Math.abs(line.length() - typed.length()) < 1e-6;
        if (same) {
          double before = Double.isNaN(line.stock()) ? 0 : line.stock();
          double wanted = single ? line.required() + line.spare() - before : left;
          double taken = Math.max(0, Math.min(left, wanted));
          left -= taken;
          entry.setValue(withStock(line, before + taken));
        }
      }
    }
  }

  private List<Map.Entry<String, Line>> byConductor() {
    List<Map.Entry<String, Line>> entries = new ArrayList<>(lines.entrySet());
    entries.sort(
        java.util.Comparator.comparingInt(
            e -> List.of("earth", "neutral", "L1", "L2", "L3").indexOf(e.getValue().cores())));
    return entries;
  }

  private static boolean isConductor(String cores) {
    return List.of("earth", "neutral", "L1", "L2", "L3").contains(cores);
  }

  private static Line withStock(Line line, double stock) {
    return new Line(
        line.kind(),
        line.what(),
        line.size(),
        line.cores(),
        line.connector(),
        line.length(),
        line.required(),
        line.spare(),
        stock,
        line.breaker());
  }
}
