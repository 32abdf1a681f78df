package org.setpower.cable;

import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.setpower.base.BaseErrorCode;
import org.setpower.base.BoundedCache;
import org.setpower.base.EvaluationException;
import org.setpower.base.TextEnum;

/**
 * How a cable lies while it is loaded.
 *
 * @param kind by itself, in a bunch, or on a drum
 * @param count cables in the bunch, or layers on the drum
 */
public record InstallationMethod(Kind kind, int count) {
  /** The ways a cable can lie. */
  public enum Kind {
    /** Off the drum, by itself. */
    FREE(""),
    /** With other loaded cables, tied or under one cover. */
    BUNCHED("cables"),
    /** On a ventilated drum. */
    DRUM("drum layers"),
    RADIAL_DRUM("radial drum"),
    RADIAL_DRUM_VENTILATED("radial drum ventilated");

    private final String factor;

    Kind(String factor) {
      this.factor = factor;
    }

    /** The kind of factor in the table. */
    String factor() {
      return factor;
    }
  }

  /** By itself. */
  public static final InstallationMethod FREELY = new InstallationMethod(Kind.FREE, 1);

  /**
   * Tied to one other loaded cable: 0.8, NEC 310.15(C)(1) and IEC 60364-5-52 B.52.17. What counts
   * where nobody says, as few cables of a set lie alone.
   */
  public static final InstallationMethod BESIDE_ANOTHER = new InstallationMethod(Kind.BUNCHED, 2);

  private static final int MOST_CABLES = 20;
  private static final int MOST_LAYERS = 4;
  private static final String KNOWN =
      "\"free\", \"bunched 2\" to \"bunched 20\", \"drum 1 layer\" to \"drum 4 layers\","
          + " \"radial drum\", \"radial drum ventilated\"";
  private static final BoundedCache<InstallationMethod> TEXTS = new BoundedCache<>();
  private static final Pattern BUNCHED = Pattern.compile("bunched(\\d{1,3})(?:cables?)?");
  private static final Pattern DRUM = Pattern.compile("drum(\\d{1,3})(?:layers?)?");

  /** Reads "free", "bunched 6", "drum 2 layers", "radial drum", "radial drum ventilated". */
  public static InstallationMethod parse(String name, String text) {
    return TEXTS.read(text, t -> read(name, t));
  }

  private static InstallationMethod read(String name, String text) {
    String plain =
        text.length() > 60 ? "" : text.toLowerCase(Locale.ROOT).replaceAll("[\\s\\u00a0,-]+", "");
    Matcher bunched = BUNCHED.matcher(plain);
    if (bunched.matches()) {
      return new InstallationMethod(
          Kind.BUNCHED, count(name, bunched, MOST_CABLES, "cables in a bunch"));
    }
    Matcher drum = DRUM.matcher(plain);
    if (drum.matches()) {
      return new InstallationMethod(Kind.DRUM, count(name, drum, MOST_LAYERS, "layers on a drum"));
    }
    return switch (plain) {
      case "free" -> FREELY;
      case "radialdrum" -> new InstallationMethod(Kind.RADIAL_DRUM, 1);
      case "radialdrumventilated" -> new InstallationMethod(Kind.RADIAL_DRUM_VENTILATED, 1);
      case "closeddrum" -> throw new EvaluationException(CableErrorCode.CLOSED_DRUM);
      default ->
          throw new EvaluationException(
              BaseErrorCode.UNKNOWN_WORD, name, TextEnum.shortened(text), KNOWN);
    };
  }

  private static int count(String name, Matcher matcher, int most, String what) {
    int count = Integer.parseInt(matcher.group(1));
    if (count < 1) {
      throw new EvaluationException(BaseErrorCode.TOO_SMALL, name, count, 1);
    }
    if (count > most) {
      throw new EvaluationException(CableErrorCode.LAID_BEYOND_TABLE, count, what, most);
    }
    return count;
  }
}
