package org.setpower.plan.lighting.protection;

import java.util.ArrayList;
import java.util.List;
import org.setpower.base.EvaluationException;
import org.setpower.base.Numbers;

/** Lengths of the pieces of a cable run, as typed: 20+25, or 2 x 25. */
public final class Pieces {
  private static final double LONGEST = 5000;
  private static final int MOST = 200;

  private Pieces() {}

  /** The lengths as typed; empty where they cannot be read. */
  public static List<Double> parse(String text) {
    List<Double> pieces = new ArrayList<>();
    for (String part : Numbers.plainSpaces(text).split("\\+", -1)) {
      String[] times = part.split("[x×*]", -1);
      double count = times.length == 2 ? number(times[0]) : 1;
      double length = number(times[times.length - 1]);
      boolean whole = count >= 1 && count == Math.rint(count) && pieces.size() + count <= MOST;
      if (times.length > 2 || !whole || !(length > 0 && length <= LONGEST)) {
        return List.of();
      }
      for (int i = 0; i < count; i++) {
        pieces.add(length);
      }
    }
    return pieces;
  }

  private static double number(String text) {
    try {
      Numbers.Amount amount = Numbers.amount("pieces", text);
      return amount != null && amount.unit().matches("|m|ft|'") ? amount.value() : Double.NaN;
    } catch (EvaluationException ambiguous) {
      return Double.NaN;
    }
  }
}
