package org.setpower.registry;

import java.util.function.BiFunction;
import org.setpower.base.BaseErrorCode;
import org.setpower.base.Checks;
import org.setpower.base.EvaluationException;
import org.setpower.base.TextEnum;

/** How single values of a sheet are read: Double, String, or a range where one value is meant. */
public final class ArgumentParsers {
  private ArgumentParsers() {}

  /** A check of a number that has been read; returns it or refuses. */
  @FunctionalInterface
  public interface Check {
    double of(String name, double value);
  }

  public static Parameter.Reader<Double> number(Check check) {
    return (name, raw) -> check.of(name, Checks.finite(name, asNumber(name, raw)));
  }

  /** A number, or text with a unit. */
  public static Parameter.Reader<Double> amount(
      BiFunction<String, String, Double> fromText, Check check) {
    return (name, raw) -> {
      double value = raw instanceof String s ? fromText.apply(name, s) : asNumber(name, raw);
      return check.of(name, Checks.finite(name, value));
    };
  }

  /** A word of an enum; {@link Parameter#words()} lists what is accepted. */
  public static <E extends Enum<E> & TextEnum> Parameter.Reader<E> word(Class<E> type) {
    return new WordReader<>(new TextEnum.Lookup<>(type));
  }

  /** Reads one of the words it lists. */
  record WordReader<E extends Enum<E> & TextEnum>(TextEnum.Lookup<E> words)
      implements Parameter.Reader<E> {
    @Override
    public E read(String name, Object raw) {
      return words.read(name, asText(name, raw));
    }
  }

  public static double asNumber(String name, Object raw) {
    if (raw instanceof Double d) {
      return d;
    }
    if (raw instanceof String s) {
      throw new EvaluationException(BaseErrorCode.NOT_A_NUMBER, name, TextEnum.shortened(s));
    }
    throw notOneValue(name, raw);
  }

  public static String asText(String name, Object raw) {
    if (raw instanceof String s) {
      return s;
    }
    if (raw instanceof Double d) {
      throw d == 0
          ? new EvaluationException(BaseErrorCode.MISSING, name) // a blank cell
          : new EvaluationException(BaseErrorCode.NOT_A_TEXT, name, d);
    }
    throw notOneValue(name, raw);
  }

  private static EvaluationException notOneValue(String name, Object raw) {
    Object[][] range = (Object[][]) raw;
    return new EvaluationException(
        BaseErrorCode.ONE_VALUE, name, range.length * (range.length == 0 ? 0 : range[0].length));
  }
}
