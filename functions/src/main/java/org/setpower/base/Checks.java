package org.setpower.base;

/** Checks of values passed to a trade package, with the error codes that parameters use. */
public final class Checks {
  private Checks() {}

  /** A finite number. */
  public static double finite(String name, double value) {
    if (Double.isNaN(value) || Double.isInfinite(value)) {
      throw new EvaluationException(BaseErrorCode.NOT_FINITE, name);
    }
    return value;
  }

  /** A finite number of {@code least} or more. */
  public static double atLeast(String name, double value, double least) {
    if (finite(name, value) < least) {
      throw new EvaluationException(BaseErrorCode.TOO_SMALL, name, value, least);
    }
    return value;
  }

  /** A finite number above {@code limit}. */
  public static double above(String name, double value, double limit) {
    if (finite(name, value) <= limit) {
      throw new EvaluationException(BaseErrorCode.NOT_ABOVE, name, value, limit);
    }
    return value;
  }

  /** A number above 0 from a single cell; a blank cell, too, arrives as 0. */
  public static double filled(String name, double value) {
    if (value == 0) {
      throw new EvaluationException(BaseErrorCode.ZERO_OR_BLANK, name);
    }
    return above(name, value, 0);
  }

  /** A finite number of {@code most} or less. */
  public static double atMost(String name, double value, double most) {
    if (finite(name, value) > most) {
      throw new EvaluationException(BaseErrorCode.TOO_LARGE, name, value, most);
    }
    return value;
  }

  /** A whole number. */
  public static double whole(String name, double value) {
    if (finite(name, value) != Math.rint(value)) {
      throw new EvaluationException(BaseErrorCode.NOT_WHOLE, name, value);
    }
    return value;
  }

  /** A share from 0 to 1; 3 for "3 %" is refused with the way to write it. */
  public static double share(String name, double value) {
    if (atLeast(name, value, 0) > 1) {
      throw new EvaluationException(BaseErrorCode.NOT_A_SHARE, name, value, value, value / 100);
    }
    return value;
  }
}
