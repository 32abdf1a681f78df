package org.setpower.cable;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;
import org.setpower.base.EvaluationException;
import org.setpower.base.ReferenceTable;
import org.setpower.base.Temperature;
import org.setpower.base.TextEnum;

/**
 * The amps that one cable carries without growing too hot: a table value, times a factor for the
 * air around it, times a factor for the loaded conductors and how it lies.
 *
 * @param tableAmps the rating in the table, A
 * @param ambientFactor by band of temperature; no credit below the table's base
 * @param laidFactor for more than three loaded conductors, bunches and drums
 * @param amps what is left, A
 * @param source the table, with a mark where the figure is from memory
 */
public record Ampacity(
    double tableAmps, double ambientFactor, double laidFactor, double amps, String source) {
  /** Which kind of cable, hence which tables. */
  public enum Method implements TextEnum {
    /** The lower of cord and rubber, or the one that has the size. */
    FLEXIBLE("flexible"),
    /** Light cord: NEC 400.5(A)(1), BS 7671 Table 4F3A. */
    CORD("cord"),
    /** Heavy multi-core rubber: 30 CFR 18 Appendix I, BS 7671 Table 4F1A. */
    RUBBER("rubber"),
    /** Single cores that do not touch: NEC 400.5(A)(2), BS 7671 Table 4F1A. */
    FEEDER("feeder"),
    /** Fixed wiring: NEC 310.16 with 240.4(D). */
    BUILDING("building");

    private final String word;

    Method(String word) {
      this.word = word;
    }

    @Override
    public String word() {
      return word;
    }
  }

  /** Behind the source of a figure that nobody has compared with its table. */
  private static final String MARK = " (from memory: check)";

  /** Between tables of a source that has several. */
  private static final String BETWEEN = " | ";

  private static final String DRUMS = "VDE 0298-4, cables wound on drums";

  /** The air temperature that ratings start from, °C. */
  public static final double USUAL_AMBIENT = 30;

  /** The air temperature where nobody says one, °C: common practice for a hot day or a hot roof. */
  public static final double HOT_AMBIENT = 40;

  /** Conductors that tables count; a fourth is a neutral with harmonics. */
  public static final int MOST_LOADED = 4;

  /**
   * The rating of a size; one that no table of the method holds is refused, and so is air hotter
   * than the table of factors reaches.
   *
   * @param ambient °C
   * @param loaded conductors that carry current: 2, 3, or 4 where the neutral carries harmonics
   */
  public static Ampacity of(
      CableSize size, Method method, double ambient, int loaded, InstallationMethod laid) {
    Ampacity rating = find(size, method, ambient, loaded, laid);
    if (rating == null) {
      throw new EvaluationException(CableErrorCode.NO_RATING, size, method.word());
    }
    return rating;
  }

  /**
   * A maker's rating at 30 °C for one cable by itself, derated as a table's.
   *
   * @param column conductor temperature it is given for, °C: 60, 75 or 90
   */
  public static Ampacity ofMaker(
      double amps,
      double column,
      String source,
      double ambient,
      int loaded,
      InstallationMethod laid) {
    return new Row(amps, USUAL_AMBIENT, column, Double.POSITIVE_INFINITY, source)
        .rate(ambient, loaded, laid);
  }

  /** The rating, or {@code null} where no table of the method holds the size. */
  static Ampacity find(
      CableSize size, Method method, double ambient, int loaded, InstallationMethod laid) {
    if (method != Method.FLEXIBLE) {
      return one(size, method, ambient, loaded, laid);
    }
    Ampacity cord = one(size, Method.CORD, ambient, loaded, laid);
    Ampacity rubber = one(size, Method.RUBBER, ambient, loaded, laid);
    if (cord == null || rubber == null) {
      return cord == null ? rubber : cord;
    }
    return rubber.amps < cord.amps ? rubber : cord;
  }

  private static Ampacity one(
      CableSize size, Method method, double ambient, int loaded, InstallationMethod laid) {
    Row row = Tables.RATINGS.get(new Key(method, size, Math.min(loaded, 3)));
    return row == null ? null : row.rate(ambient, loaded, laid);
  }

  private static double ambientFactor(Row rating, double ambient) {
    if (ambient <= rating.base) {
      return 1;
    }
    double hottest = rating.base;
    for (Factor f : Tables.FACTORS.get("ambient")) {
      if (f.base == rating.base && f.column == rating.column) {
        if (ambient <= f.upTo) {
          return f.factor;
        }
        hottest = f.upTo;
      }
    }
    throw new EvaluationException(
        CableErrorCode.TOO_HOT, Temperature.format(ambient), Temperature.format(hottest));
  }

  /**
   * Loaded conductors of a bunch are counted together (NEC 310.15(C)(1)); where the table of
   * bunched cables (IEC 60364-5-52 B.52.17) gives less, it counts. A drum takes its own share.
   */
  private static double laidFactor(int loaded, InstallationMethod laid) {
    double own = band("conductors", loaded);
    return switch (laid.kind()) {
      case FREE -> own;
      case BUNCHED ->
          Math.min(band("conductors", loaded * laid.count()), own * band("cables", laid.count()));
      case DRUM, RADIAL_DRUM, RADIAL_DRUM_VENTILATED ->
          own * band(laid.kind().factor(), laid.count());
    };
  }

  /** The same by the lower factors that VDE 0298-4 has for layers on a drum. */
  Ampacity onDrumOfVde(InstallationMethod laid) {
    if (laid.kind() != InstallationMethod.Kind.DRUM) {
      return this;
    }
    double share = band("drum layers VDE", laid.count()) / band("drum layers", laid.count());
    return new Ampacity(
        tableAmps,
        ambientFactor,
        laidFactor * share,
        amps * share,
        source + BETWEEN + DRUMS + MARK);
  }

  /** The tables of a source whose figures are from memory. */
  public static List<String> unconfirmed(String source) {
    return Arrays.stream(source.split(Pattern.quote(BETWEEN)))
        .filter(t -> t.endsWith(MARK))
        .map(t -> t.substring(0, t.length() - MARK.length()))
        .toList();
  }

  private static double band(String kind, int count) {
    for (Factor f : Tables.FACTORS.get(kind)) {
      if (count <= f.upTo) {
        return f.factor;
      }
    }
    throw new IllegalStateException("no factor of " + kind + " for " + count);
  }

  private record Key(Method method, CableSize size, int loaded) {}

  /**
   * A row of a table of ratings.
   *
   * @param base air that the table counts with, °C
   * @param column conductor temperature of the column, °C
   * @param mostAmps breaker above which the cable must not stand
   */
  record Row(double amps, double base, double column, double mostAmps, String source) {
    static Row of(ReferenceTable.Row row) {
      return new Row(
          row.number("amps"),
          row.number("base_c"),
          row.number("column_c"),
          orElse(row, "most_amps", Double.POSITIVE_INFINITY),
          row.source() + (row.basis().equals("memory") ? MARK : ""));
    }

    /** The rating in that air, with so many loaded conductors, laid so. */
    Ampacity rate(double ambient, int loaded, InstallationMethod laid) {
      double air = ambientFactor(this, ambient);
      double lying = laidFactor(loaded, laid);
      return new Ampacity(amps, air, lying, Math.min(amps * air * lying, mostAmps), source);
    }
  }

  private record Factor(double upTo, double factor, double base, double column) {}

  /** The tables, read once. */
  private static final class Tables {
    static final Map<Key, Row> RATINGS = ratings();
    static final Map<String, List<Factor>> FACTORS = factors();

    private static Map<Key, Row> ratings() {
      TextEnum.Lookup<Method> methods = new TextEnum.Lookup<>(Method.class);
      Map<Key, Row> ratings = new HashMap<>();
      for (ReferenceTable.Row row : ReferenceTable.read(Ampacity.class, "ampacity.csv")) {
        Method method = methods.read("method", row.text("method"));
        CableSize size = CableSize.parse(row.text("size"));
        Row rating = Row.of(row);
        for (int loaded = 2; loaded <= 3; loaded++) {
          if (orElse(row, "loaded", loaded) == loaded) {
            ratings.put(new Key(method, size, loaded), rating);
          }
        }
      }
      return ratings;
    }

    private static Map<String, List<Factor>> factors() {
      Map<String, List<Factor>> factors = new HashMap<>();
      for (ReferenceTable.Row row : ReferenceTable.read(Ampacity.class, "ampacity_factors.csv")) {
        factors
            .computeIfAbsent(row.text("kind"), k -> new ArrayList<>())
            .add(
                new Factor(
                    row.number("up_to"),
                    row.number("factor"),
                    orElse(row, "base_c", 0),
                    orElse(row, "column_c", 0)));
      }
      return factors;
    }
  }

  private static double orElse(ReferenceTable.Row row, String column, double otherwise) {
    return row.blank(column) ? otherwise : row.number(column);
  }
}
