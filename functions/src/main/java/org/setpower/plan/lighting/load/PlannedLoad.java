package org.setpower.plan.lighting.load;

import java.util.List;
import org.setpower.plan.common.InputRow;
import org.setpower.plan.finding.Finding;
import org.setpower.plan.lighting.input.Connection;
import org.setpower.plan.lighting.input.InrushClass;
import org.setpower.plan.lighting.input.LightingFinding;
import org.setpower.plan.lighting.input.LoadTables.Equipment;
import org.setpower.plan.lighting.input.LoadTables.Load;
import org.setpower.plan.lighting.load.Timeline.Span;
import org.setpower.plan.lighting.network.Node;

/** A row of Loads as it is understood; what is not known of it is null. */
public final class PlannedLoad {
  private final InputRow<Load> row;
  private final Equipment equipment;
  private final Connection connection;
  private final List<Part> parts;
  private final List<Span> spans;
  private final double watts;
  private final double powerFactor;
  private final double harmonic;
  private final List<Finding> findings;

  /** What of a row hangs on one place. */
  public static final class Part {
    private final Node node;
    private final double quantity;
    private int legs;
    private final boolean open;
    private double[] currents;

    Part(Node node, double quantity, int legs, boolean open) {
      this.node = node;
      this.quantity = quantity;
      this.legs = legs;
      this.open = open;
    }

    public Node node() {
      return node;
    }

    public double quantity() {
      return quantity;
    }

    /** Legs it hangs on as bits; 0 while they are not known. */
    public int legs() {
      return legs;
    }

    /** Whether its legs are suggested, not decided by outlet or person. */
    public boolean isOpen() {
      return open;
    }

    void suggest(int suggested) {
      legs = suggested;
    }

    /** Currents of all its pieces, as {@link LegCurrents} lays them out. */
    double[] currents() {
      return currents;
    }

    /** The most of a leg, A; 0 where it is not counted. */
    public double amps() {
      double most = 0;
      for (int leg = 0; currents != null && leg < LegCurrents.LEGS; leg++) {
        most = Math.max(most, LegCurrents.amps(currents, 0, leg));
      }
      return most;
    }

    void draw(double[] drawn) {
      currents = drawn;
    }
  }

  PlannedLoad(
      InputRow<Load> row,
      Equipment equipment,
      Connection connection,
      List<Part> parts,
      List<Span> spans,
      double watts,
      double powerFactor,
      double harmonic,
      List<Finding> findings) {
    this.row = row;
    this.equipment = equipment;
    this.connection = connection;
    this.parts = parts;
    this.spans = spans;
    this.watts = watts;
    this.powerFactor = powerFactor;
    this.harmonic = harmonic;
    this.findings = findings;
  }

  public InputRow<Load> row() {
    return row;
  }

  /** The row of Equipment; null where it is not known or a stop. */
  public Equipment equipment() {
    return equipment;
  }

  public Connection connection() {
    return connection;
  }

  /** What hangs on each place; empty where the place is not known. */
  public List<Part> parts() {
    return parts;
  }

  /** When it is on; empty where it is never counted. */
  public List<Span> spans() {
    return spans;
  }

  /** Watts of one, at its level; NaN where they are not known. */
  public double watts() {
    return watts;
  }

  public double powerFactor() {
    return powerFactor;
  }

  /** Whether it is planned below full level, to which somebody may turn it up. */
  public boolean isDimmed() {
    Double level = row.value().level();
    return level != null && level > 0 && level < 1;
  }

  /** Its current at full level as a multiple of that planned. */
  public double atFullLevel() {
    double level = isDimmed() ? row.value().level() : 1;
    return 1 / (PhaseDimmer.cuts(equipment, level) ? PhaseDimmer.current(level) : level);
  }

  public double harmonic() {
    return harmonic;
  }

  /** What is wrong with it, to be added to. */
  public List<Finding> findings() {
    return findings;
  }

  /**
   * Whether it draws the same power at every voltage, and so more current at a low one; heaters and
   * tungsten lamps do not.
   */
  public boolean isConstantPower() {
    return equipment == null
        || equipment.inrush() != InrushClass.NONE && equipment.inrush() != InrushClass.TUNGSTEN;
  }

  /** How many pieces. */
  public double quantity() {
    return row.value().quantity() == null ? 1 : Math.ceil(row.value().quantity());
  }

  /** Whether it is part of the sums: its watts, place, legs and hours are known. */
  public boolean isCounted() {
    return !Double.isNaN(watts)
        && !spans.isEmpty()
        && !parts.isEmpty()
        && parts.stream().allMatch(p -> p.node().isFed() && p.legs() != 0);
  }

  /** Whether sums are too low without it: it may be on and cannot be counted. */
  public boolean isMissing() {
    return !isCounted()
        && (!spans.isEmpty()
            || findings.stream().anyMatch(f -> f.key() == LightingFinding.DAYS_CROSSED));
  }
}
