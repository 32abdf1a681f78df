package org.setpower.registry;

import java.util.Arrays;
import java.util.List;
import org.setpower.base.BaseErrorCode;
import org.setpower.base.CalculationStep;
import org.setpower.base.EvaluationException;
import org.setpower.base.Unit;
import org.setpower.registry.groups.Parameters;

/**
 * A parameter that functions share: a name, a noun phrase, a unit, and how to read what a sheet
 * passes. Declared once in {@link Parameters}; a function takes it and may give it a default.
 *
 * @param <T> what the call gets
 */
public final class Parameter<T> {
  /** What may be passed. */
  public enum Shape {
    /** One value; a range maps the function over it. */
    SINGLE,
    /** A range as a whole. */
    RANGE,
    /** All that follows, as it comes. */
    REST
  }

  /** Turns a value from a sheet (Double, String, or Object[][] for a range) into what is meant. */
  @FunctionalInterface
  public interface Reader<T> {
    T read(String name, Object raw);
  }

  /** What a 0 is, which a blank cell arrives as. */
  private enum Zero {
    /** Left out where the reader refuses it. */
    AS_READ,
    /** Always what was given. */
    GIVEN,
    /** Always left out. */
    OMITTED
  }

  private final String name;
  private final String phrase;
  private final Unit unit;
  private final Shape shape;
  private final Reader<T> reader;
  private final boolean date;
  private final boolean optional;
  private final T fallback;

  /** {@code null} where the default needs no words. */
  private final String fallbackWords;

  private final Zero zero;

  private final Parameter<T> key;

  private Parameter(
      Parameter<T> key,
      String name,
      String phrase,
      Unit unit,
      Shape shape,
      Reader<T> reader,
      boolean date,
      boolean optional,
      T fallback,
      String fallbackWords,
      Zero zero) {
    this.key = key == null ? this : key;
    this.name = name;
    this.phrase = phrase;
    this.unit = unit;
    this.shape = shape;
    this.reader = reader;
    this.date = date;
    this.optional = optional;
    this.fallback = fallback;
    this.fallbackWords = fallbackWords;
    this.zero = zero;
  }

  public static <T> Parameter<T> of(
      String name, String phrase, Unit unit, Shape shape, Reader<T> reader) {
    return new Parameter<>(
        null, name, phrase, unit, shape, reader, false, false, null, "", Zero.AS_READ);
  }

  /**
   * The same parameter, read as a date: a number is a day of the document's own calendar. The date
   * decides which rule holds, so a blank cell is refused, not taken as left out.
   */
  public Parameter<T> asDate() {
    return new Parameter<>(
        null,
        name,
        phrase,
        unit,
        shape,
        reader,
        true,
        optional,
        fallback,
        fallbackWords,
        Zero.GIVEN);
  }

  /** The same parameter, which may be left out; {@code words} say what counts then. */
  public Parameter<T> orElse(T value, String words) {
    return new Parameter<>(key, name, phrase, unit, shape, reader, date, true, value, words, zero);
  }

  /** The same parameter, with this default. */
  public Parameter<T> orElse(T value) {
    return orElse(value, null);
  }

  /** The same parameter, which must be given. */
  public Parameter<T> required() {
    return new Parameter<>(key, name, phrase, unit, shape, reader, date, false, null, "", zero);
  }

  /** The same parameter, where a 0 may be meant and must not turn into the default. */
  public Parameter<T> zeroIsGiven() {
    return new Parameter<>(
        key,
        name,
        phrase,
        unit,
        shape,
        reader,
        date,
        optional,
        fallback,
        fallbackWords,
        Zero.GIVEN);
  }

  /**
   * The same parameter, where the number 0 is a blank cell: 0 °C of the air at a cable would be the
   * best of all answers. Who means it writes "0 °C".
   */
  public Parameter<T> zeroIsBlank() {
    return new Parameter<>(
        key,
        name,
        phrase,
        unit,
        shape,
        reader,
        date,
        optional,
        fallback,
        fallbackWords,
        Zero.OMITTED);
  }

  /** The same parameter under another name and phrase in the function that takes it. */
  public Parameter<T> named(String otherName, String otherPhrase) {
    return new Parameter<>(
        null,
        otherName,
        otherPhrase,
        unit,
        shape,
        reader,
        date,
        optional,
        fallback,
        fallbackWords,
        zero);
  }

  /** Reads a value; one that is left out gives the default or is refused. */
  T read(Object raw) {
    if (isOmitted(raw)) {
      if (!optional) {
        throw new EvaluationException(BaseErrorCode.MISSING, name);
      }
      return fallback;
    }
    return reader.read(name, raw);
  }

  /**
   * Left out, or an empty text or range where leaving out is allowed, or the 0 of a blank cell
   * where 0 is outside what is allowed.
   */
  private boolean isOmitted(Object raw) {
    return raw == null
        || (optional && (isBlank(raw) || (isZero(raw) && zero == Zero.AS_READ && refusesZero())))
        || (isZero(raw) && zero == Zero.OMITTED);
  }

  private static boolean isZero(Object raw) {
    return raw instanceof Double d && d == 0;
  }

  private boolean refusesZero() {
    try {
      reader.read(name, 0.0);
      return false;
    } catch (EvaluationException refusal) {
      return true;
    }
  }

  private boolean isBlank(Object raw) {
    if (raw instanceof Object[][] range) {
      return shape == Shape.RANGE
          && Arrays.stream(range).flatMap(Arrays::stream).allMatch(c -> c == null || isBlank(c));
    }
    return raw instanceof String s && s.isBlank();
  }

  /** The input as the first calculation steps show it. */
  CalculationStep step(Object raw) {
    if (isOmitted(raw)) {
      Object value = fallback instanceof Double ? fallback : fallbackWords();
      return new CalculationStep(name, phrase, value, unit, "default");
    }
    if (raw instanceof Object[][] range) {
      String size = range.length + " rows × " + (range.length == 0 ? 0 : range[0].length);
      return new CalculationStep(name, phrase, size, unit, "given");
    }
    return new CalculationStep(name, phrase, raw, unit, "given");
  }

  boolean is(Parameter<?> other) {
    return key == other.key;
  }

  /** The name: lower case, words joined by underscores. */
  public String name() {
    return name;
  }

  /** What it is: a noun phrase without unit. */
  public String phrase() {
    return phrase;
  }

  /** The words it accepts, in order; empty where it takes no words of a list. */
  public List<String> words() {
    return reader instanceof ArgumentParsers.WordReader<?> w ? w.words().known() : List.of();
  }

  public Unit unit() {
    return unit;
  }

  public Shape shape() {
    return shape;
  }

  public boolean isOptional() {
    return optional;
  }

  /** Whether numbers are days of the document's calendar. */
  public boolean isDate() {
    return date;
  }

  /** What counts when it is left out. */
  public String fallbackWords() {
    return fallbackWords == null ? Words.of(fallback) : fallbackWords;
  }

  /**
   * The words of the wizard: phrase, unit, default, or that it is required, since Calc itself calls
   * each argument optional that takes a value or a range.
   */
  public String description() {
    return description(phrase, unit.symbol(), "required", "if left out", fallbackWords());
  }

  /** The same with words of another language. */
  public String description(
      String otherPhrase,
      String otherUnit,
      String required,
      String ifLeftOut,
      String otherFallback) {
    StringBuilder text = new StringBuilder(otherPhrase);
    if (!otherUnit.isEmpty()) {
      text.append(" (").append(otherUnit).append(')');
    }
    if (!optional && shape != Shape.REST) {
      text.append("; ").append(required);
    } else if (optional && !fallbackWords().isEmpty()) {
      text.append("; ").append(ifLeftOut).append(": ").append(otherFallback);
    }
    return text.toString();
  }

  /** Defaults in words. */
  private static final class Words {
    static String of(Object value) {
      if (value instanceof Number n) {
        return org.setpower.base.Numbers.format(n.doubleValue());
      }
      if (value instanceof org.setpower.base.TextEnum w) {
        return w.word();
      }
      return String.valueOf(value);
    }
  }
}
