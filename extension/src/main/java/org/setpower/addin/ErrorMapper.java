package org.setpower.addin;

import com.sun.star.lang.IllegalArgumentException;
import com.sun.star.script.CannotConvertException;
import com.sun.star.script.FailReason;
import com.sun.star.sheet.NoConvergenceException;
import com.sun.star.uno.Any;
import com.sun.star.uno.TypeClass;
import org.setpower.base.EvaluationException;

/** The only place where a reason becomes an error of Calc. */
final class ErrorMapper {
  private static final long NAN = 0x7FF8_0000_0000_0000L;

  private ErrorMapper() {}

  /** A refused call: thrown, or void, which the cell shows as #N/A. */
  static Object show(EvaluationException refusal, Object source)
      throws IllegalArgumentException, CannotConvertException, NoConvergenceException {
    String message = refusal.getMessage();
    return switch (refusal.kind()) {
      case DOMAIN -> throw new IllegalArgumentException(message, source, (short) -1);
      case WRONG_KIND ->
          throw new CannotConvertException(
              message, source, TypeClass.ANY, FailReason.TYPE_NOT_SUPPORTED, -1);
      case NO_CONVERGENCE -> throw new NoConvergenceException(message, source);
      case NO_ANSWER -> Any.VOID;
    };
  }

  /**
   * A refused cell within a matrix: a NaN that carries Calc's error code in its low bits. Calc
   * reads it so in every version tried, but does not document it; the in-office tests guard it.
   */
  static Double inMatrix(EvaluationException refusal) {
    return Double.longBitsToDouble(NAN | refusal.kind().code());
  }
}
