package org.setpower.cable;

import java.util.HashMap;
import java.util.Map;
import org.setpower.base.EvaluationException;
import org.setpower.base.ReferenceTable;
import org.setpower.base.TextEnum;

/**
 * The rating of a cable by a rule and by the temperature class it is marked with. A class without a
 * row of its own is rated by the next lower one.
 */
public final class CableRating {
  /** The class that cords and rubber cables have where nothing is marked, °C. */
  public static final int LOWEST_CLASS = 60;

  private static final int[] CLASSES = {90, 75, LOWEST_CLASS};

  private CableRating() {}

  /**
   * The rating as the cable is laid; refused where no table holds the size.
   *
   * @param temperatureClass °C, as the cable is marked
   * @param ambient °C
   * @param loaded conductors that carry current
   */
  public static Ampacity of(
      RatingRule rule,
      Ampacity.Method method,
      CableSize size,
      int temperatureClass,
      double ambient,
      int loaded,
      InstallationMethod laid) {
    Ampacity rating = find(rule, method, size, temperatureClass, ambient, loaded, laid);
    if (rating == null) {
      throw new EvaluationException(CableErrorCode.NO_RATING, size, method.word());
    }
    return rating;
  }

  /** The rating, or {@code null} where no table of the rule holds the size. */
  public static Ampacity find(
      RatingRule rule,
      Ampacity.Method method,
      CableSize size,
      int temperatureClass,
      double ambient,
      int loaded,
      InstallationMethod laid) {
    RatingRule used = rule.of(size.family());
    if (used == RatingRule.VDE_0298 && method == Ampacity.Method.FLEXIBLE) {
      return find(rule, Ampacity.Method.RUBBER, size, temperatureClass, ambient, loaded, laid);
    }
    for (int marked : CLASSES) {
      Ampacity.Row row =
          marked > temperatureClass
              ? null
              : Tables.ROWS.get(new Key(used, method, size, marked, Math.min(loaded, 3)));
      if (row != null) {
        Ampacity rating = row.rate(ambient, loaded, laid);
        return used == RatingRule.VDE_0298 ? rating.onDrumOfVde(laid) : rating;
      }
    }
    return used == RatingRule.VDE_0298 ? null : Ampacity.find(size, method, ambient, loaded, laid);
  }

  private record Key(
      RatingRule rule, Ampacity.Method method, CableSize size, int temperatureClass, int loaded) {}

  /** The table, read once. */
  private static final class Tables {
    static final Map<Key, Ampacity.Row> ROWS = rows();

    private static Map<Key, Ampacity.Row> rows() {
      TextEnum.Lookup<Ampacity.Method> methods = new TextEnum.Lookup<>(Ampacity.Method.class);
      TextEnum.Lookup<RatingRule> rules = new TextEnum.Lookup<>(RatingRule.class);
      Map<Key, Ampacity.Row> rows = new HashMap<>();
      for (ReferenceTable.Row row : ReferenceTable.read(CableRating.class, "ratings_by_rule.csv")) {
        for (int loaded = 2; loaded <= 3; loaded++) {
          if (row.blank("loaded") || row.number("loaded") == loaded) {
            rows.put(
                new Key(
                    rules.read("rule", row.text("rule")),
                    methods.read("method", row.text("method")),
                    CableSize.parse(row.text("size")),
                    (int) row.number("class_c"),
                    loaded),
                Ampacity.Row.of(row));
          }
        }
      }
      return rows;
    }
  }
}
