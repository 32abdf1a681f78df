package org.setpower.plan.lighting.load;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.regex.Pattern;
import org.setpower.plan.common.InputRow;
import org.setpower.plan.finding.Finding;
import org.setpower.plan.finding.Identity;
import org.setpower.plan.lighting.input.Connection;
import org.setpower.plan.lighting.input.InrushClass;
import org.setpower.plan.lighting.input.LegWord;
import org.setpower.plan.lighting.input.LightingFinding;
import org.setpower.plan.lighting.input.LightingInputs;
import org.setpower.plan.lighting.input.LoadTables.Equipment;
import org.setpower.plan.lighting.input.LoadTables.Load;
import org.setpower.plan.lighting.input.ProjectTables.LoadGroup;
import org.setpower.plan.lighting.load.Timeline.Span;
import org.setpower.plan.lighting.load.Timeline.Window;
import org.setpower.plan.lighting.network.Network;
import org.setpower.plan.lighting.network.Node;

/** Understands the rows of Loads: item, place, legs, hours. */
public final class LoadTable {
  private static final Set<String> DAYS = Set.of("fromDay", "toDay");

  private static final double POWER_FACTOR = 0.9;

  /** Words for discharge lamps in the names of lamps. */
  private static final Pattern DISCHARGE =
      Pattern.compile("(?i)\\b(HMI|MSR|HID|discharge|metal halide)\\b");

  private final Network network;
  private final Timeline timeline;
  private final SupplyHours hours;
  private final Map<String, Equipment> equipment = new HashMap<>();
  private final Set<String> known = new HashSet<>();
  private final Set<String> off = new HashSet<>();
  private final List<PlannedLoad> loads = new ArrayList<>();
  private final Map<Node, List<String>> offForSound = new HashMap<>();

  /**
   * @param stops names of equipment whose row is a stop
   */
  public LoadTable(
      LightingInputs inputs,
      Network network,
      Timeline timeline,
      SupplyHours hours,
      Set<String> stops) {
    this.network = network;
    this.timeline = timeline;
    this.hours = hours;
    for (InputRow<Equipment> row : LightingInputs.sorted(inputs.equipment())) {
      String item = Identity.of(row.value().item());
      known.add(item);
      if (!stops.contains(item)) {
        equipment.put(item, row.value());
      }
    }
    for (InputRow<LoadGroup> row : LightingInputs.sorted(inputs.groups())) {
      if (Boolean.FALSE.equals(row.value().on())) {
        off.add(Identity.of(row.value().group()));
      }
    }
    LightingInputs.sorted(inputs.loads()).forEach(r -> loads.add(load(r)));
  }

  /** The rows in an order that does not depend on where they stand. */
  public List<PlannedLoad> loads() {
    return loads;
  }

  /** By generator, when rows go off with it for sound: an entry a row. */
  public Map<Node, List<String>> offForSound() {
    return offForSound;
  }

  private PlannedLoad load(InputRow<Load> row) {
    Load typed = row.value();
    List<Finding> findings = new ArrayList<>(row.findings());
    Equipment device = equipment(typed, findings);
    List<Node> nodes = typed.place() == null ? List.of() : network.place(typed.place());
    if (typed.place() != null && nodes.isEmpty()) {
      findings.add(Finding.of(LightingFinding.PLACE_UNKNOWN, typed.place()));
    }
    nodes.stream().flatMap(n -> Network.trust(n).stream()).distinct().forEach(findings::add);
    boolean readable = DAYS.containsAll(row.unreadable()) && typed.item() != null;
    Connection connection = connection(typed, device, nodes);
    List<PlannedLoad.Part> parts = parts(typed, connection, nodes, findings);
    List<Span> spans = spans(row, device, nodes, findings);
    double level = typed.level() == null ? 1 : typed.level();
    double watts = device == null || !readable ? Double.NaN : device.watts() * level;
    InrushClass inrush = device == null ? null : device.inrush();
    boolean plain = inrush == InrushClass.NONE || inrush == InrushClass.TUNGSTEN;
    double powerFactor = plain ? 1 : POWER_FACTOR;
    if (device != null && device.powerFactor() != null) {
      powerFactor = device.powerFactor();
    }
    double harmonic = device == null ? 0 : ThirdHarmonic.of(device, powerFactor);
    if (PhaseDimmer.cuts(device, level)) {
      powerFactor *= PhaseDimmer.current(level);
      harmonic = device.harmonic() == null ? PhaseDimmer.thirdHarmonic(level) : harmonic;
    }
    PlannedLoad load =
        new PlannedLoad(
            row, device, connection, parts, spans, watts, powerFactor, harmonic, findings);
    parts.forEach(p -> draw(load, p));
    return load;
  }

  private Equipment equipment(Load typed, List<Finding> findings) {
    String item = Identity.of(typed.item());
    Equipment device = equipment.get(item);
    if (typed.item() != null && !known.contains(item)) {
      findings.add(Finding.of(LightingFinding.EQUIPMENT_UNKNOWN, typed.item()));
    } else if (typed.item() != null && device == null) {
      findings.add(Finding.of(LightingFinding.WATTS_UNKNOWN, typed.item()));
    }
    return device;
  }

  private static Connection connection(Load typed, Equipment device, List<Node> nodes) {
    if (typed.connection() != null) {
      return typed.connection();
    }
    if (device != null && device.connection() != null) {
      return device.connection();
    }
    boolean pair =
        !nodes.isEmpty()
            && Integer.bitCount(nodes.get(0).legs()) == 2
            && !nodes.get(0).hasNeutral();
    return pair ? Connection.LINE_LINE : Connection.LINE_NEUTRAL;
  }

  /**
   * Pieces go to the places of a range in turn; where legs are left open, those of one place to
   * several legs.
   */
  private List<PlannedLoad.Part> parts(
      Load typed, Connection connection, List<Node> nodes, List<Finding> findings) {
    double quantity = typed.quantity() == null ? 1 : Math.ceil(typed.quantity());
    List<PlannedLoad.Part> parts = new ArrayList<>();
    for (int i = 0; i < nodes.size(); i++) {
      Node node = nodes.get(i);
      double own = Math.floor((quantity - i + nodes.size() - 1) / nodes.size());
      if (own <= 0 && i > 0) {
        continue;
      }
      int there = node.legs();
      int spanned = Integer.bitCount(there);
      boolean possible =
          spanned >= connection.legs()
              && (connection != Connection.LINE_NEUTRAL || spanned == 1 || node.hasNeutral())
              && (connection != Connection.LINE_LINE || spanned != 1);
      if (there != 0 && !possible) {
        add(
            findings,
            Finding.of(LightingFinding.PAIR_MISSING, connection.word(), LegWord.text(there)));
      }
      int decided = typed.leg() == null ? 0 : typed.leg().legs(0, there);
      boolean fits = (decided & ~there) == 0 && Integer.bitCount(decided) == connection.legs();
      if (there != 0 && decided != 0 && possible && !fits) {
        add(
            findings,
            Finding.of(LightingFinding.LEG_CONTRADICTS, typed.leg().word(), LegWord.text(there)));
      }
      boolean fixed = spanned == connection.legs();
      int legs = !possible ? there : fixed ? there : fits ? decided : 0;
      boolean open = possible && !fixed && !fits;
      int shares = open ? Math.max(1, Math.min((int) own, spanned)) : 1;
      for (int share = 0; share < shares; share++) {
        double pieces = Math.floor((Math.max(0, own) - share + shares - 1) / shares);
        parts.add(new PlannedLoad.Part(node, pieces, legs, open));
      }
    }
    return parts;
  }

  private static void add(List<Finding> findings, Finding finding) {
    if (!findings.contains(finding)) {
      findings.add(finding);
    }
  }

  /** A load counts on all days while one of its dates cannot be read: no sum is too low. */
  private List<Span> spans(
      InputRow<Load> row, Equipment device, List<Node> nodes, List<Finding> findings) {
    Load typed = row.value();
    boolean every = DAYS.stream().anyMatch(row.unreadable()::contains);
    if (typed.fromDay() != null
        && typed.toDay() != null
        && typed.toDay().isBefore(typed.fromDay())) {
      findings.add(Finding.of(LightingFinding.DAYS_CROSSED));
    }
    if (typed.group() != null && off.contains(Identity.of(typed.group()))) {
      return List.of();
    }
    List<Span> spans =
        timeline.spans(
            every ? null : typed.fromDay(), every ? null : typed.toDay(), typed.from(), typed.to());
    clock(typed, findings);
    if (!nodes.isEmpty() && nodes.get(0).isFed()) {
      Node source = nodes.get(0).root();
      sound(source, device, spans, findings);
      if (typed.from() == null && typed.to() == null) {
        spans = hours.within(source, spans);
      } else {
        spans = hours.withoutQuiet(source, spans);
        for (Span span : spans) {
          int quarter = hours.firstOff(source, span);
          if (quarter >= 0 && !every) {
            add(
                findings,
                Finding.of(
                    LightingFinding.SUPPLY_OFF, Network.shown(source), Timeline.text(quarter)));
            break;
          }
        }
      }
    }
    boolean crossed = findings.stream().anyMatch(f -> f.key() == LightingFinding.DAYS_CROSSED);
    if (spans.isEmpty() && !crossed) {
      findings.add(Finding.of(LightingFinding.NEVER_ON));
    } else {
      away(typed, findings);
    }
    return spans;
  }

  /** A date before the first or after the last day, such as one of another year. */
  private void away(Load typed, List<Finding> findings) {
    for (LocalDate date : new LocalDate[] {typed.fromDay(), typed.toDay()}) {
      if (date != null && timeline.isAway(date)) {
        add(
            findings,
            Finding.of(LightingFinding.DAY_AWAY, date, timeline.first(), timeline.last()));
      }
    }
  }

  /** Says of times away from call and wrap how they are understood. */
  private void clock(Load typed, List<Finding> findings) {
    Window day = timeline.away(typed.fromDay(), typed.toDay(), typed.from(), typed.to());
    if (day != null) {
      findings.add(
          Finding.of(
              Timeline.isUnclear(day, typed.from(), typed.to())
                  ? LightingFinding.LOAD_MORNING
                  : LightingFinding.LOAD_CLOCK,
              Timeline.text(typed.from()),
              typed.to() == null ? Timeline.text(day.wrap()) : Timeline.text(typed.to()),
              Timeline.text(day.call()),
              Timeline.text(day.wrap())));
    }
  }

  /** What goes off is said once, at its generator; a discharge lamp is dark for longer. */
  private void sound(Node source, Equipment device, List<Span> spans, List<Finding> findings) {
    String off = hours.offForSound(source, spans);
    if (off != null) {
      offForSound.computeIfAbsent(source, k -> new ArrayList<>()).add(off);
      if (device != null && isDischarge(device)) {
        findings.add(Finding.of(LightingFinding.LOAD_RESTRIKE, Network.shown(source), off));
      }
    }
  }

  /** A kind that is not known may be one; of electronics only what its name says is one. */
  private static boolean isDischarge(Equipment device) {
    InrushClass kind = device.inrush();
    boolean named = device.item() != null && DISCHARGE.matcher(device.item()).find();
    return kind == null || kind == InrushClass.DISCHARGE || named && !kind.isSine();
  }

  /** Currents of a part, once its legs are known. */
  void draw(PlannedLoad load, PlannedLoad.Part part) {
    if (part.legs() == 0 || !part.node().isFed() || Double.isNaN(load.watts())) {
      return;
    }
    Node root = part.node().root();
    boolean leading = load.equipment() != null && Boolean.TRUE.equals(load.equipment().leading());
    part.draw(
        LegCurrents.load(
            part.legs(),
            load.watts() * part.quantity(),
            load.powerFactor(),
            leading,
            load.harmonic(),
            network.legVolts(root),
            network.isThreePhase(root)));
  }
}
