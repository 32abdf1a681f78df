package org.setpower.pack;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.setpower.base.EvaluationException;
import org.setpower.base.ReferenceTable;
import org.setpower.base.Temperature;

/**
 * What the cold leaves of a pack, from measured cells: a share of the figure at 25 °C, straight
 * between the measured temperatures. No credit for warmth above 25 °C; nothing below the coldest
 * cell measured.
 */
public final class TemperatureDerating {
  private TemperatureDerating() {}

  /**
   * The share of the energy that a discharge at about 1C still gives, 0…1.
   *
   * @param temp °C of the cells when the job starts
   */
  public static double energyLeft(Chemistry chemistry, double temp) {
    return read(Tables.ENERGY, chemistry, temp);
  }

  /** The share of its charge that a slow discharge still gives, 0…1. */
  public static double chargeLeft(Chemistry chemistry, double temp) {
    return read(Tables.CHARGE, chemistry, temp);
  }

  /**
   * The share of its charge that the weakest measured cell gives at about 1C with the usual
   * resistance, its own warmth included, 0…1: for a pack of which only the label is known.
   */
  static double labelChargeLeft(Chemistry chemistry, double temp) {
    return read(Tables.LABEL, chemistry, temp);
  }

  /**
   * The share of its charge that a pack takes which is charged at this temperature until the
   * charger says full, 0…1.
   *
   * @throws EvaluationException below the coldest charge that was measured
   */
  public static double chargeTaken(Chemistry chemistry, double temp) {
    PiecewiseLine line = Tables.TAKEN.get(chemistry);
    if (line == null || temp < line.first()) {
      throw new EvaluationException(
          PackErrorCode.CHARGED_COLD, Temperature.format(temp), chemistry.word());
    }
    return line.at(temp);
  }

  /** V by which a cell rests lower than at 25 °C; 0 where that was not measured. */
  static double restDrop(Chemistry chemistry, double temp) {
    return Tables.REST.containsKey(chemistry) ? read(Tables.REST, chemistry, temp) : 0;
  }

  /** How many times its resistance at 25 °C a pack has, 1 or more. */
  public static double resistance(Chemistry chemistry, double temp) {
    return read(Tables.RESISTANCE, chemistry, temp);
  }

  /**
   * The figures that {@link #energyLeft} lies between: the nearest colder and the nearest warmer
   * temperature of the table, or the one that is met.
   */
  public static List<Measured> measuredAround(Chemistry chemistry, double temp) {
    List<Measured> all =
        Tables.rows(chemistry, "energy").stream()
            .map(r -> new Measured(r.number("temp"), r.number("ratio"), r.source(), r.basis()))
            .toList();
    List<Measured> around = new ArrayList<>();
    for (Measured m : all) {
      if (m.temp() <= temp) {
        around.clear();
      }
      around.add(m);
      if (m.temp() >= temp) {
        break;
      }
    }
    return List.copyOf(around);
  }

  /**
   * A figure of the table.
   *
   * @param ratio share of the energy left
   */
  public record Measured(double temp, double ratio, String source, String basis) {}

  private static double read(
      Map<Chemistry, PiecewiseLine> table, Chemistry chemistry, double temp) {
    PiecewiseLine line = table.get(chemistry);
    if (temp < line.first()) {
      throw new EvaluationException(
          PackErrorCode.NO_COLD_DATA,
          Temperature.format(temp),
          chemistry.word(),
          Temperature.format(line.first()));
    }
    if (temp > chemistry.hottest()) {
      throw new EvaluationException(
          PackErrorCode.TOO_HOT,
          Temperature.format(temp),
          chemistry.word(),
          Temperature.format(chemistry.hottest()));
    }
    return line.at(temp);
  }

  /** The tables, read at first use. */
  private static final class Tables {
    private static final List<ReferenceTable.Row> ROWS =
        ReferenceTable.read(TemperatureDerating.class, "cold.csv");
    static final Map<Chemistry, PiecewiseLine> ENERGY = of("energy");
    static final Map<Chemistry, PiecewiseLine> CHARGE = of("charge");
    static final Map<Chemistry, PiecewiseLine> RESISTANCE = of("resistance");
    static final Map<Chemistry, PiecewiseLine> LABEL = label();
    static final Map<Chemistry, PiecewiseLine> TAKEN = of("taken");
    static final Map<Chemistry, PiecewiseLine> REST = of("rest");

    /** A chemistry without weaker cells than those of the slow discharge goes by these. */
    private static Map<Chemistry, PiecewiseLine> label() {
      Map<Chemistry, PiecewiseLine> lines = new EnumMap<>(CHARGE);
      lines.putAll(of("label"));
      return lines;
    }

    private static Map<Chemistry, PiecewiseLine> of(String quantity) {
      Map<Chemistry, PiecewiseLine> lines = new EnumMap<>(Chemistry.class);
      for (Chemistry chemistry : Chemistry.values()) {
        List<ReferenceTable.Row> rows = rows(chemistry, quantity);
        if (!rows.isEmpty()) {
          lines.put(
              chemistry,
              new PiecewiseLine(
                  rows.stream().mapToDouble(r -> r.number("temp")).toArray(),
                  rows.stream().mapToDouble(r -> r.number("ratio")).toArray()));
        }
      }
      return lines;
    }

    /** The rows of a table from cold to warm. */
    static List<ReferenceTable.Row> rows(Chemistry chemistry, String quantity) {
      return chemistry
          .rows(ROWS.stream().filter(r -> r.text("quantity").equals(quantity)).toList())
          .stream()
          .sorted(Comparator.comparingDouble(r -> r.number("temp")))
          .toList();
    }
  }
}
