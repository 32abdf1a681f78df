package org.setpower.cable;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.setpower.base.BoundedCache;
import org.setpower.base.EvaluationException;
import org.setpower.base.Numbers;
import org.setpower.base.TextEnum;

/**
 * A standard conductor size: a wire gauge (AWG 24 to 4/0), a metric size of IEC 60228 (0.5 to 240
 * mm²) or a kcmil size.
 *
 * @param family which series it belongs to
 * @param value AWG: the gauge number n, with 0, −1, −2, −3 for 1/0 to 4/0; mm²: the nominal area;
 *     kcmil: thousands of circular mils
 */
public record CableSize(Family family, double value) {
  /** A series of standard sizes. */
  public enum Family implements TextEnum {
    AWG("AWG"),
    METRIC("mm²"),
    KCMIL("kcmil");

    private final String word;

    Family(String word) {
      this.word = word;
    }

    @Override
    public String word() {
      return word;
    }

    @Override
    public List<String> alsoWritten() {
      return this == METRIC ? List.of("mm2", "metric") : List.of();
    }
  }

  private static final int THINNEST_GAUGE = 24;
  private static final int THICKEST_GAUGE = -3;
  private static final List<Double> AREAS =
      List.of(
          0.5, 0.75, 1.0, 1.5, 2.5, 4.0, 6.0, 10.0, 16.0, 25.0, 35.0, 50.0, 70.0, 95.0, 120.0,
          150.0, 185.0, 240.0);

  private static final Pattern GAUGE =
      Pattern.compile("(?:awg|#)?\\s*(\\d{1,2})(/0)?\\s*(?:awg)?", Pattern.CASE_INSENSITIVE);

  /** Cores before an area, as on the sheath of a cable: "5G2.5", "3 × 1.5". */
  private static final Pattern CORES_FIRST =
      Pattern.compile("([1-9]\\d?)\\s*[gx×*]\\s*(?=\\d)(.*)", Pattern.CASE_INSENSITIVE);

  /** Cores behind a gauge, as on the sheath of a cord: "12/3". */
  private static final Pattern CORES_LAST =
      Pattern.compile("(\\d{1,2})/([1-9]\\d?)\\s*(?:awg)?", Pattern.CASE_INSENSITIVE);

  /** A harmonised type (HD 361) before the size, as on the sheath of a cable: "H07RN-F 5G2.5". */
  private static final Pattern TYPE_FIRST =
      Pattern.compile(
          "([HA]0[1357][A-Z0-9]{1,6}-[A-Z])\\s*(?=[\\d])(.*)", Pattern.CASE_INSENSITIVE);

  private static final BoundedCache<CableSize> TEXTS = new BoundedCache<>();

  /** The size of this area in mm²; one outside the standard series is refused, not rounded. */
  public static CableSize ofArea(double area) {
    if (!AREAS.contains(area)) {
      throw new EvaluationException(CableErrorCode.NOT_A_STANDARD_AREA, "size", area, areas());
    }
    return new CableSize(Family.METRIC, area);
  }

  /** A gauge, with 0, −1, −2, −3 for 1/0 to 4/0. */
  public static CableSize ofGauge(int gauge) {
    if (gauge > THINNEST_GAUGE || gauge < THICKEST_GAUGE) {
      throw new EvaluationException(CableErrorCode.NOT_A_GAUGE, "size", gauge);
    }
    return new CableSize(Family.AWG, gauge);
  }

  /**
   * Reads "12 AWG", "AWG 12", "#12", "2/0", "250 kcmil", "2.5 mm²", "2,5 mm2", "2.5", and with
   * cores, which do not count, "5G2.5", "3 × 1.5", "12/3", "H07RN-F 5G2.5". A bare number that
   * stands in the series of gauges and in that of areas is refused.
   */
  public static CableSize parse(String text) {
    return TEXTS.read(text, CableSize::read);
  }

  /** Cores that a text names besides its size, such as 5 of "5G2.5"; 0 where it names none. */
  public static int cores(String text) {
    String plain = size(text);
    Matcher cord = CORES_LAST.matcher(plain);
    // 4/0 is a gauge
    if (cord.matches()) {
      return Integer.parseInt(cord.group(2));
    }
    Matcher cores = CORES_FIRST.matcher(plain);
    return cores.matches() ? Integer.parseInt(cores.group(1)) : 0;
  }

  /** The type that a text names before its size, such as H07RN-F; empty where it names none. */
  public static String type(String text) {
    Matcher type = TYPE_FIRST.matcher(plain(text));
    return type.matches() ? type.group(1).toUpperCase(Locale.ROOT) : "";
  }

  private static String plain(String text) {
    return text.length() > 40 ? "" : Numbers.plainSpaces(text);
  }

  private static String size(String text) {
    String plain = plain(text);
    Matcher type = TYPE_FIRST.matcher(plain);
    return type.matches() ? type.group(2) : plain;
  }

  private static CableSize read(String text) {
    String plain = size(text);
    Matcher cord = CORES_LAST.matcher(plain);
    if (cord.matches()) {
      return gauge(text, Integer.parseInt(cord.group(1)), false);
    }
    Matcher cores = CORES_FIRST.matcher(plain);
    boolean withCores = cores.matches();
    if (withCores) {
      plain = cores.group(2);
    }
    Matcher gauge = GAUGE.matcher(plain);
    boolean named = plain.toLowerCase(Locale.ROOT).contains("awg") || plain.startsWith("#");
    if (gauge.matches() && (named || gauge.group(2) != null)) {
      return gauge(text, Integer.parseInt(gauge.group(1)), gauge.group(2) != null);
    }
    Numbers.Amount amount = Numbers.amount("size", plain);
    if (amount == null) {
      throw new EvaluationException(CableErrorCode.UNKNOWN_SIZE, "size", TextEnum.shortened(text));
    }
    if (amount.unit().isEmpty() && !withCores && isGaugeAndArea(amount.value())) {
      throw new EvaluationException(
          CableErrorCode.GAUGE_OR_AREA, "size", TextEnum.shortened(text), amount.value());
    }
    return switch (amount.unit().toLowerCase(Locale.ROOT).replace(" ", "")) {
      case "", "mm²", "mm2", "mm^2", "sqmm", "qmm" -> ofArea(amount.value());
      case "kcmil", "mcm" -> new CableSize(Family.KCMIL, amount.value());
      default ->
          throw new EvaluationException(
              CableErrorCode.UNKNOWN_SIZE, "size", TextEnum.shortened(text));
    };
  }

  private static boolean isGaugeAndArea(double number) {
    return number == Math.rint(number) && number <= THINNEST_GAUGE && AREAS.contains(number);
  }

  private static CableSize gauge(String text, int number, boolean ought) {
    int n = ought ? 1 - number : number;
    if ((ought && number == 0) || n > THINNEST_GAUGE || n < THICKEST_GAUGE) {
      throw new EvaluationException(CableErrorCode.NOT_A_GAUGE, "size", TextEnum.shortened(text));
    }
    return new CableSize(Family.AWG, n);
  }

  /** All standard sizes of a family, thinnest first; kcmil has none here. */
  public static List<CableSize> series(Family family) {
    return switch (family) {
      case AWG -> gauges();
      case METRIC -> AREAS.stream().map(a -> new CableSize(Family.METRIC, a)).toList();
      case KCMIL -> List.of();
    };
  }

  private static List<CableSize> gauges() {
    List<CableSize> gauges = new ArrayList<>();
    for (int n = THINNEST_GAUGE; n >= THICKEST_GAUGE; n--) {
      gauges.add(new CableSize(Family.AWG, n));
    }
    return List.copyOf(gauges);
  }

  /**
   * Cross-section in mm². AWG: π/4·d² with d = 0.127·92^((36−n)/39) mm (ASTM B258); kcmil: exact, a
   * circular mil being the area of a circle of 0.001 in; metric: the nominal area.
   */
  public double area() {
    return switch (family) {
      case AWG -> circle(0.127 * Math.pow(92, (36 - value) / 39));
      case KCMIL -> value * 1000 * circle(0.0254);
      case METRIC -> value;
    };
  }

  private static double circle(double diameter) {
    return Math.PI / 4 * diameter * diameter;
  }

  /** As it is written: "12 AWG", "2/0 AWG", "2.5 mm²". */
  @Override
  public String toString() {
    return switch (family) {
      case AWG -> (value > 0 ? Numbers.format(value) : Numbers.format(1 - value) + "/0") + " AWG";
      case METRIC -> Numbers.format(value) + " mm²";
      case KCMIL -> Numbers.format(value) + " kcmil";
    };
  }

  private static String areas() {
    return AREAS.stream().map(Numbers::format).collect(Collectors.joining(", "));
  }
}
