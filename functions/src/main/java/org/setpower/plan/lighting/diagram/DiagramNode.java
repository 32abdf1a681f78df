package org.setpower.plan.lighting.diagram;

import java.time.LocalDate;
import java.util.List;
import org.setpower.cable.CableSize;
import org.setpower.cable.Protection.Curve;
import org.setpower.plan.finding.Finding;
import org.setpower.plan.finding.Verdict;
import org.setpower.plan.lighting.input.CableType;
import org.setpower.plan.lighting.input.CoreSet;
import org.setpower.plan.lighting.input.NeutralBond;
import org.setpower.plan.lighting.input.RcdType;
import org.setpower.plan.lighting.input.SupplySystem;
import org.setpower.plan.lighting.input.SupplyType;

/**
 * A place of the distribution with what hangs on it.
 *
 * @param row number in the table of its kind, from 1
 * @param legs as bits: bit 0 is L1
 * @param amps highest current of a leg; NaN where it is not known
 * @param supply of a source or distro, else null
 * @param cable of a cable run, else null
 * @param idle outlets on which nothing hangs
 * @param idleStops stops of rows of Outlets of which nothing is in use
 * @param see outlet at which the stops of its row stand; empty where they stand here
 * @param upstream a stop on its way to the source that its own row does not have; else empty
 */
public record DiagramNode(
    Kind kind,
    int row,
    String name,
    Verdict verdict,
    List<Finding> stops,
    Guard guard,
    int legs,
    double amps,
    Supply supply,
    Cable cable,
    List<DiagramLoad> loads,
    List<DiagramNode> children,
    List<String> idle,
    List<Finding> idleStops,
    String see,
    String upstream) {
  /** What a node stands for. */
  public enum Kind {
    SUPPLY("supplies"),
    /** A breaker that several outlets share. */
    BREAKER("outlets"),
    OUTLET("outlets"),
    CIRCUIT("outlets"),
    RUN("runs");

    private final String table;

    Kind(String table) {
      this.table = table;
    }

    /** Key of the table of its rows. */
    public String table() {
      return table;
    }
  }

  /**
   * Breaker and RCD of a node itself.
   *
   * @param breaker A; NaN without one
   * @param curve null where it is not known
   * @param rcd mA; NaN without one
   * @param rcdType null where it is not known
   */
  public record Guard(double breaker, Curve curve, double rcd, RcdType rcdType) {
    /** Whether there is a breaker. */
    public boolean hasBreaker() {
      return !Double.isNaN(breaker);
    }

    /** Whether there is an RCD. */
    public boolean hasRcd() {
      return !Double.isNaN(rcd);
    }
  }

  /**
   * A source or a distro.
   *
   * @param type null where it is not known
   * @param location null where it is not typed
   * @param system null where it is not known
   * @param volts as typed, or as usual; NaN where it is not known
   * @param kva nameplate of a generator, decided or proposed; NaN of others and where not known
   * @param bond where its neutral is bonded; null of others and where it is not known
   * @param amps highest current of each leg; NaN where there is no such leg
   * @param neutral its highest current; NaN without neutral
   * @param peakOn day of the peak; null where nothing flows
   * @param peakAt its time, such as 05:30; empty where nothing flows
   */
  public record Supply(
      SupplyType type,
      String location,
      SupplySystem system,
      double volts,
      double kva,
      NeutralBond bond,
      List<Double> amps,
      double neutral,
      LocalDate peakOn,
      String peakAt) {
    public Supply {
      amps = List.copyOf(amps);
    }

    /** Whether it makes power; a distro only hands it on. */
    public boolean isSource() {
      return type != null && type != SupplyType.DISTRO;
    }
  }

  /**
   * A cable run.
   *
   * @param type null where it is not typed
   * @param size null where it cannot be read
   * @param length as typed; NaN where it is not
   * @param own share of the voltage that it loses; NaN where it is not known
   * @param total share that is lost from the source on; NaN where it is not known
   */
  public record Cable(
      CableType type,
      CoreSet cores,
      CableSize size,
      int parallel,
      double length,
      double own,
      double total) {}

  public DiagramNode {
    stops = List.copyOf(stops);
    loads = List.copyOf(loads);
    children = List.copyOf(children);
    idle = List.copyOf(idle);
    idleStops = List.copyOf(idleStops);
  }
}
