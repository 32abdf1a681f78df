package org.setpower.cable;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.setpower.base.Checks;
import org.setpower.base.EvaluationException;
import org.setpower.base.ReferenceTable;
import org.setpower.base.TextEnum;

/**
 * One stranded conductor of a standard size, as its table gives it.
 *
 * @param size its size
 * @param tableOhms direct-current resistance in Ω/km at the table's temperature
 * @param tableTemp the table's temperature, °C
 * @param alpha change of resistance per kelvin, a share of {@code tableOhms}
 * @param reactance Ω/km at mains frequency, for conductors of one cable; single cores laid apart
 *     have more
 * @param source the table
 */
public record Conductor(
    CableSize size,
    double tableOhms,
    double tableTemp,
    double alpha,
    double reactance,
    String source) {
  /** The line of resistance over temperature is straight from here, °C. */
  public static final double COLDEST = -60;

  /** The line of resistance over temperature is straight up to here, °C. */
  public static final double HOTTEST = 150;

  private static final double FEET_PER_KM = 1 / 0.3048;

  /** The copper conductor of this size; one that no table holds is refused. */
  public static Conductor of(CableSize size) {
    return of(size, Metal.COPPER);
  }

  /** The conductor of this size and metal; one that no table holds is refused. */
  public static Conductor of(CableSize size, Metal metal) {
    Conductor conductor = (metal == Metal.COPPER ? Tables.COPPER : Tables.ALUMINIUM).get(size);
    if (conductor == null) {
      throw new EvaluationException(CableErrorCode.NO_RESISTANCE, size, metal.word());
    }
    return conductor;
  }

  /** Whether a table holds this size in copper. */
  public static boolean isKnown(CableSize size) {
    return Tables.COPPER.containsKey(size);
  }

  /**
   * Resistance in Ω/km at a conductor temperature: R·(1 + α·(T − T₀)). Refused outside {@link
   * #COLDEST} to {@link #HOTTEST}. Source of the form: NEC Chapter 9 Table 8 note 2; IEC 60028.
   */
  public double ohms(double conductorTemp) {
    Checks.atMost(
        "conductor_temp", Checks.atLeast("conductor_temp", conductorTemp, COLDEST), HOTTEST);
    return tableOhms * (1 + alpha * (conductorTemp - tableTemp));
  }

  /** The tables, read once. */
  private static final class Tables {
    private static final Map<CableSize, Double> REACTANCE = new HashMap<>();
    private static double metricReactance;
    static final Map<CableSize, Conductor> COPPER;
    static final Map<CableSize, Conductor> ALUMINIUM;

    static {
      readReactance();
      List<ReferenceTable.Row> rows = ReferenceTable.read(Conductor.class, "resistance.csv");
      COPPER = read(rows, Metal.COPPER);
      ALUMINIUM = read(rows, Metal.ALUMINIUM);
    }

    private static void readReactance() {
      for (ReferenceTable.Row row : ReferenceTable.read(Conductor.class, "reactance.csv")) {
        if (row.text("size").equals(CableSize.Family.METRIC.word())) {
          metricReactance = perKm(row);
        } else {
          REACTANCE.put(CableSize.parse(row.text("size")), perKm(row));
        }
      }
    }

    private static Map<CableSize, Conductor> read(List<ReferenceTable.Row> rows, Metal metal) {
      TextEnum.Lookup<Metal> words = new TextEnum.Lookup<>(Metal.class);
      Map<CableSize, Conductor> conductors = new HashMap<>();
      for (ReferenceTable.Row row : rows) {
        if (words.read("metal", row.text("metal")) == metal) {
          CableSize size = CableSize.parse(row.text("size"));
          conductors.put(
              size,
              new Conductor(
                  size,
                  perKm(row),
                  row.number("temp_c"),
                  row.number("alpha"),
                  reactance(size),
                  row.source()));
        }
      }
      return conductors;
    }

    /** A gauge thinner than the table's thinnest has the reactance of that one. */
    private static double reactance(CableSize size) {
      if (size.family() == CableSize.Family.METRIC) {
        return metricReactance;
      }
      Double own = REACTANCE.get(size);
      return own != null ? own : REACTANCE.get(CableSize.ofGauge(14));
    }

    private static double perKm(ReferenceTable.Row row) {
      double ohms = row.number("ohms");
      return row.text("per").equals("kft") ? ohms * FEET_PER_KM : ohms;
    }
  }
}
