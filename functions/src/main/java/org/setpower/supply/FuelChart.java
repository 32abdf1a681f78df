package org.setpower.supply;

import java.util.ArrayList;
import java.util.List;
import org.setpower.base.EvaluationException;
import org.setpower.base.ReferenceTable;

/**
 * What a diesel set burns, from the common approximate chart of quarter loads, 20 to 200 kW.
 * Straight between quarter loads, and from a quarter down to idle.
 */
public final class FuelChart {
  /** A set left running without load burns this share of its full-load fuel (trade: 25 to 30 %). */
  public static final double IDLE = 0.27;

  private static final double ROUNDING = 1e-9;

  private FuelChart() {}

  /**
   * Litres per hour. A set between two sizes of the chart counts as the thirstier of its neighbours
   * at the same kW (above the smaller one's rating: at its full load), because the chart is not
   * smooth and more load never burns less.
   *
   * @param kw load; 0 is a set left running
   * @param ratedKw of the set
   */
  public static double litresPerHour(double kw, double ratedKw, Fuel fuel) {
    if (fuel != Fuel.DIESEL) {
      throw new EvaluationException(SupplyErrorCode.NO_CHART, fuel.word());
    }
    List<Curve> sizes = Tables.SIZES;
    double smallest = sizes.get(0).ratedKw;
    double largest = sizes.get(sizes.size() - 1).ratedKw;
    if (ratedKw < smallest * (1 - ROUNDING) || ratedKw > largest * (1 + ROUNDING)) {
      throw new EvaluationException(SupplyErrorCode.OUTSIDE_CHART, ratedKw, smallest, largest);
    }
    if (kw > ratedKw * (1 + ROUNDING)) {
      throw new EvaluationException(SupplyErrorCode.OVERLOADED, kw, ratedKw);
    }
    int above = 0;
    while (sizes.get(above).ratedKw < ratedKw * (1 - ROUNDING)) {
      above++;
    }
    double litres = sizes.get(above).at(kw);
    boolean between = sizes.get(above).ratedKw > ratedKw * (1 + ROUNDING);
    if (between) {
      Curve below = sizes.get(above - 1);
      litres = Math.max(litres, below.at(Math.min(kw, below.ratedKw)));
    }
    return litres;
  }

  /** The part of its rated power at which makers state what a set burns. */
  private static final double STATED = 0.75;

  /**
   * Litres per hour of a set whose maker states what it burns at three quarters of its rated power:
   * the curve of the chart for its size, or for the nearest, through that point.
   *
   * @param kw load; 0 is a set left running
   * @param ratedKw of the set
   * @param stated litres per hour at three quarters of it
   */
  public static double litresPerHour(double kw, double ratedKw, double stated) {
    if (kw > ratedKw * (1 + ROUNDING)) {
      throw new EvaluationException(SupplyErrorCode.OVERLOADED, kw, ratedKw);
    }
    List<Curve> sizes = Tables.SIZES;
    double nearest =
        Math.max(sizes.get(0).ratedKw, Math.min(ratedKw, sizes.get(sizes.size() - 1).ratedKw));
    return stated
        * litresPerHour(Math.min(1, kw / ratedKw) * nearest, nearest, Fuel.DIESEL)
        / litresPerHour(STATED * nearest, nearest, Fuel.DIESEL);
  }

  /** One size of the chart: litres per hour at 0 and at rising kW. */
  private record Curve(double ratedKw, List<double[]> points) {
    double at(double kw) {
      int next = 1;
      while (next < points.size() - 1 && points.get(next)[0] < kw) {
        next++;
      }
      double[] from = points.get(next - 1);
      double[] to = points.get(next);
      return from[1] + (to[1] - from[1]) * (kw - from[0]) / (to[0] - from[0]);
    }
  }

  /** The chart, read once; its rows stand by rising size and load. */
  private static final class Tables {
    static final List<Curve> SIZES = sizes();

    private static List<Curve> sizes() {
      List<Curve> sizes = new ArrayList<>();
      List<double[]> points = new ArrayList<>();
      for (ReferenceTable.Row row : ReferenceTable.read(FuelChart.class, "generator_fuel.csv")) {
        double rated = row.number("rated_kw");
        double litres = row.number("litres_per_hour");
        points.add(new double[] {rated * row.number("load"), litres});
        if (row.number("load") == 1) {
          points.add(0, new double[] {0, IDLE * litres});
          sizes.add(new Curve(rated, List.copyOf(points)));
          points.clear();
        }
      }
      return sizes;
    }
  }
}
