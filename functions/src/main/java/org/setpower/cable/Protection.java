package org.setpower.cable;

import java.util.EnumMap;
import java.util.Map;
import org.setpower.base.EvaluationException;
import org.setpower.base.ReferenceTable;
import org.setpower.base.TextEnum;

/**
 * What stands ahead of a cable: alternating-current breakers and the earth loop that makes them
 * trip.
 */
public final class Protection {
  private Protection() {}

  /** Whose standard ratings. */
  public enum Standard implements TextEnum {
    IEC("IEC", 1),
    NEC("NEC", 1.25);

    private final String word;
    private final double continuousFactor;

    Standard(String word, double continuousFactor) {
      this.word = word;
      this.continuousFactor = continuousFactor;
    }

    @Override
    public String word() {
      return word;
    }

    /** The standard that goes with a family of sizes. */
    public static Standard of(CableSize.Family family) {
      return family == CableSize.Family.METRIC ? IEC : NEC;
    }
  }

  /** The highest multiple of its rating at which a breaker trips at once. IEC 60898-1. */
  public enum Curve implements TextEnum {
    B(5),
    C(10),
    D(20);

    private final double multiple;

    Curve(double multiple) {
      this.multiple = multiple;
    }

    @Override
    public String word() {
      return name();
    }
  }

  /** A loop measured cold grows when the cable is warm: BS 7671 Appendix 3. */
  private static final double COLD_LOOP = 0.8;

  private static final double ROUNDING = 1e-9;

  /**
   * The smallest standard rating that carries the amps. IEC: rating ≥ amps (IEC 60364-4-43: Ib ≤
   * In); NEC: rating ≥ 1.25 × amps where the load lasts 3 h or more (210.20).
   */
  public static double breaker(double amps, Standard standard, boolean continuous) {
    double needed = amps * (continuous ? standard.continuousFactor : 1);
    double[] ratings = Tables.RATINGS.get(standard);
    for (double rating : ratings) {
      if (rating >= needed * (1 - ROUNDING)) {
        return rating;
      }
    }
    throw new EvaluationException(
        CableErrorCode.NO_BREAKER, needed, standard.word(), ratings[ratings.length - 1]);
  }

  /**
   * Line-to-earth loop at 20 °C, Ω: source + L·(R line + R earth).
   *
   * @param sourceOhms measured at the supply, or from the set's maker
   */
  public static double loop(CableSize size, double length, double sourceOhms, CableSize earthSize) {
    double perKm = Conductor.of(size).ohms(20) + Conductor.of(earthSize).ohms(20);
    return sourceOhms + length / 1000 * perKm;
  }

  /** The amps that flow in a dead earth fault, with the margin for a loop measured cold. */
  public static double faultAmps(double loopOhms, double voltsToEarth) {
    return COLD_LOOP * voltsToEarth / loopOhms;
  }

  /** The amps from which a breaker surely trips at once. */
  public static double tripAmps(double breaker, Curve curve) {
    return curve.multiple * breaker;
  }

  /** Whether a dead earth fault trips the breaker at once. */
  public static boolean trips(double loopOhms, double breaker, Curve curve, double voltsToEarth) {
    return faultAmps(loopOhms, voltsToEarth) >= tripAmps(breaker, curve) * (1 - ROUNDING);
  }

  /** The ratings, read once. */
  private static final class Tables {
    static final Map<Standard, double[]> RATINGS = new EnumMap<>(Standard.class);

    static {
      var rows = ReferenceTable.read(Protection.class, "breakers.csv");
      for (Standard standard : Standard.values()) {
        RATINGS.put(
            standard,
            rows.stream()
                .filter(r -> r.text("standard").equals(standard.word()))
                .mapToDouble(r -> r.number("amps"))
                .sorted()
                .toArray());
      }
    }
  }
}
