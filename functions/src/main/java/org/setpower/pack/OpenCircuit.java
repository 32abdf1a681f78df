package org.setpower.pack;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.setpower.base.EvaluationException;
import org.setpower.base.ReferenceTable;

/**
 * The volts of one resting cell against the share of its charge: straight lines between the points
 * of the table {@code open_circuit.csv}, rising from 0 to 100 %.
 */
public final class OpenCircuit {
  private final double[] charge;
  private final double[] volts;

  private OpenCircuit(List<ReferenceTable.Row> rows) {
    charge = PiecewiseLine.rising(column(rows, "charge"));
    volts = PiecewiseLine.rising(column(rows, "volts"));
  }

  private static double[] column(List<ReferenceTable.Row> rows, String name) {
    return rows.stream().mapToDouble(r -> r.number(name)).toArray();
  }

  /** The curve of a chemistry; NiMH has none and is refused. */
  public static OpenCircuit of(Chemistry chemistry) {
    OpenCircuit curve = Curves.BY_CHEMISTRY.get(chemistry);
    if (curve == null) {
      throw new EvaluationException(PackErrorCode.NO_CURVE, chemistry.word());
    }
    return curve;
  }

  /** Volts of a cell at a share of its charge, 0…1. */
  public double volts(double share) {
    int i = segmentAbove(charge, share);
    return volts[i] + (volts[i + 1] - volts[i]) * (share - charge[i]) / (charge[i + 1] - charge[i]);
  }

  /** Share of the charge at which a resting cell has these volts; 0 below the curve, 1 above it. */
  public double charge(double cellVolts) {
    if (cellVolts <= lowest()) {
      return 0;
    }
    if (cellVolts >= highest()) {
      return 1;
    }
    int i = segmentAbove(volts, cellVolts);
    return charge[i]
        + (charge[i + 1] - charge[i]) * (cellVolts - volts[i]) / (volts[i + 1] - volts[i]);
  }

  /**
   * Share of the charge of a pack whose cells rest, by its volts. Of lead, where flooded and gel
   * batteries differ, the lower of the two. Cold NCA and lead rest lower by what was measured; of
   * other cells that is not known, and they read low.
   *
   * @param cells in series
   * @param restVolts V of the pack, without load, rested for an hour
   * @param temp °C of the resting pack
   * @throws EvaluationException for LFP, whose curve is flat; below an empty cell; above a cell
   *     just off the charger
   */
  public static double chargeAtRest(
      Chemistry chemistry, double cells, double restVolts, double temp) {
    OpenCircuit curve = of(chemistry);
    if (chemistry == Chemistry.LFP) {
      throw new EvaluationException(PackErrorCode.FLAT, chemistry.word());
    }
    double cellVolts = restVolts / cells;
    double warmVolts = cellVolts + TemperatureDerating.restDrop(chemistry, temp);
    if (warmVolts < curve.lowest()) {
      throw new EvaluationException(
          PackErrorCode.BELOW_EMPTY, restVolts, cellVolts, curve.lowest());
    }
    if (cellVolts > chemistry.fullVolts()) {
      throw new EvaluationException(
          PackErrorCode.OVER_FULL,
          restVolts,
          cells,
          chemistry.word(),
          cells * chemistry.fullVolts());
    }
    return chemistry == Chemistry.LEAD
        ? Math.min(curve.charge(warmVolts), Curves.GEL.charge(warmVolts))
        : curve.charge(warmVolts);
  }

  /** Volts of an empty cell. */
  public double lowest() {
    return volts[0];
  }

  /** Volts of a full cell. */
  public double highest() {
    return volts[volts.length - 1];
  }

  /** The number of straight lines. */
  public int segments() {
    return charge.length - 1;
  }

  /** The line that a share lies on; on a point between two lines, the lower one. */
  public int segmentBelow(double share) {
    int i = segments() - 1;
    while (i > 0 && share <= charge[i]) {
      i--;
    }
    return i;
  }

  /** The share where a line starts ({@code segment}) or ends ({@code segment + 1}). */
  public double chargeAt(int point) {
    return charge[point];
  }

  /** The cell volts where a line starts ({@code segment}) or ends ({@code segment + 1}). */
  public double voltsAt(int point) {
    return volts[point];
  }

  private static int segmentAbove(double[] points, double value) {
    int i = 0;
    while (i < points.length - 2 && value >= points[i + 1]) {
      i++;
    }
    return i;
  }

  /** The curves of the table. */
  static Map<Chemistry, OpenCircuit> read() {
    List<ReferenceTable.Row> rows = ReferenceTable.read(OpenCircuit.class, "open_circuit.csv");
    Map<Chemistry, OpenCircuit> curves = new EnumMap<>(Chemistry.class);
    for (Chemistry chemistry : Chemistry.values()) {
      List<ReferenceTable.Row> own = chemistry.rows(rows);
      if (!own.isEmpty()) {
        curves.put(chemistry, new OpenCircuit(own));
      }
    }
    return curves;
  }

  /** The curves, read at first use. */
  private static final class Curves {
    static final Map<Chemistry, OpenCircuit> BY_CHEMISTRY = read();
    static final OpenCircuit GEL =
        new OpenCircuit(
            ReferenceTable.read(OpenCircuit.class, "open_circuit.csv").stream()
                .filter(r -> r.text("chemistry").equals("lead, gel"))
                .toList());
  }
}
