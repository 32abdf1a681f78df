package org.setpower.supply;

import java.util.List;
import org.setpower.base.Checks;
import org.setpower.base.EvaluationException;
import org.setpower.base.ReferenceTable;
import org.setpower.base.TextEnum;

/** The rating of a generator. */
public final class GeneratorRating {
  /** The power factor that sets are rated at (ISO 8528-1; MIL-DTL-32496 1.3). */
  public static final double RATED_POWER_FACTOR = 0.8;

  private static final double ROUNDING = 1e-9;

  private GeneratorRating() {}

  /**
   * Share of the nameplate that is left at an altitude in m and an air temperature in °C at the
   * set's intake: the product of both. Sources: US Army TM 9-6115-673-13&P Table 2-3; an operator
   * manual; rules of thumb, marked.
   */
  public static double derate(double altitude, double airTemp, Engine engine) {
    return altitudeFactor(altitude, engine) * temperatureFactor(airTemp, engine);
  }

  /** Share left at an altitude in m. */
  public static double altitudeFactor(double altitude, Engine engine) {
    return factor("altitude", Checks.finite("altitude", altitude), engine, "m");
  }

  /** Share left at an air temperature in °C. */
  public static double temperatureFactor(double airTemp, Engine engine) {
    return factor("temperature", Checks.finite("air_temp", airTemp), engine, "°C");
  }

  private static double factor(String kind, double value, Engine engine, String unit) {
    for (Loss loss : Tables.LOSSES) {
      if (loss.engine == engine && loss.kind.equals(kind)) {
        if (value > loss.upTo) {
          throw new EvaluationException(
              SupplyErrorCode.BEYOND_DERATE, engine.word(), loss.upTo, unit, value);
        }
        return 1 - loss.share * Math.max(0, value - loss.above) / loss.per;
      }
    }
    throw new IllegalStateException("no " + kind + " for " + engine);
  }

  /**
   * The kVA of nameplate needed: max(running·(1 + spare), start) as max(P/pf, P/0.8), since near pf
   * 1 the kW of a set run out first; over the derate.
   *
   * @param watts three-phase: 3 × the busiest leg
   * @param startWatts all that draws at the worst starting moment
   */
  public static double kva(
      double watts, double powerFactor, double spare, double startWatts, double derate) {
    double most = Math.max(watts * (1 + spare), startWatts);
    return most / Math.min(powerFactor, RATED_POWER_FACTOR) / 1000 / derate;
  }

  /** The smallest of the sizes that is enough. */
  public static double pick(double kva, double... sizes) {
    double pick = Double.POSITIVE_INFINITY;
    double largest = 0;
    for (double size : sizes) {
      largest = Math.max(largest, size);
      if (size >= kva * (1 - ROUNDING)) {
        pick = Math.min(pick, size);
      }
    }
    if (pick == Double.POSITIVE_INFINITY) {
      throw new EvaluationException(SupplyErrorCode.NO_SET, kva, largest);
    }
    return pick;
  }

  private record Loss(
      Engine engine, String kind, double above, double per, double share, double upTo) {}

  /** The table, read once. */
  private static final class Tables {
    static final List<Loss> LOSSES = losses();

    private static List<Loss> losses() {
      TextEnum.Lookup<Engine> engines = new TextEnum.Lookup<>(Engine.class);
      return ReferenceTable.read(GeneratorRating.class, "generator_derate.csv").stream()
          .map(
              row ->
                  new Loss(
                      engines.read("engine", row.text("engine")),
                      row.text("kind"),
                      row.number("above"),
                      row.number("per"),
                      row.number("share"),
                      row.number("up_to")))
          .toList();
    }
  }
}
