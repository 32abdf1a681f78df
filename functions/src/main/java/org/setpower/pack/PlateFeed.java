package org.setpower.pack;

import java.util.Arrays;
import java.util.List;
import java.util.stream.Collectors;
import org.setpower.base.BoundedCache;
import org.setpower.base.EvaluationException;
import org.setpower.base.Numbers;
import org.setpower.base.ReferenceTable;
import org.setpower.base.TextEnum;

/**
 * What a battery plate gets from a pack. A plate asks for one class of volts (12, 24 or 48); a pack
 * without that output gives it nothing. Classes are names, not the volts of the moment.
 */
public final class PlateFeed {
  private static final BoundedCache<List<Double>> TEXTS = new BoundedCache<>();

  private PlateFeed() {}

  /**
   * The class of volts at the plate.
   *
   * @param outputs the classes the pack has
   * @param plate the class the plate asks for
   */
  public static double volts(List<Double> outputs, double plate) {
    checkClass("plate_volts", plate);
    outputs.forEach(o -> checkClass("outputs", o));
    if (!outputs.contains(plate)) {
      throw new EvaluationException(PackErrorCode.NO_POWER, joined(outputs, " and "), plate);
    }
    return plate;
  }

  /** The classes in a text such as "12/24", "24 V". */
  public static List<Double> outputs(String name, String text) {
    return TEXTS.read(text, t -> read(name, t));
  }

  private static List<Double> read(String name, String text) {
    return Arrays.stream(text.split("[/;,]", -1))
        .map(
            part -> {
              Numbers.Amount amount = text.length() > 60 ? null : Numbers.amount(name, part);
              if (amount == null || !amount.unit().matches("(?i)v?")) {
                throw new EvaluationException(
                    PackErrorCode.NOT_AN_OUTPUT, name, TextEnum.shortened(text));
              }
              return amount.value();
            })
        .toList();
  }

  /** Whether volts name a class of plates. */
  public static boolean isClass(double volts) {
    return Classes.KNOWN.contains(volts);
  }

  private static void checkClass(String name, double volts) {
    if (!Classes.KNOWN.contains(volts)) {
      throw new EvaluationException(
          PackErrorCode.NOT_A_CLASS, name, volts, joined(Classes.KNOWN, " or "));
    }
  }

  private static String joined(List<Double> classes, String joint) {
    return classes.stream().map(Numbers::format).collect(Collectors.joining(joint));
  }

  /** The classes, read at first use. */
  private static final class Classes {
    static final List<Double> KNOWN =
        ReferenceTable.read(PlateFeed.class, "plate_class.csv").stream()
            .map(r -> r.number("class"))
            .toList();
  }
}
