package org.setpower.plan.common;

import java.lang.annotation.ElementType;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;

/**
 * Declares a column to fill, on a record's component. The component's type says what may be typed:
 * {@code String} text, {@code Double} a number, {@code LocalDate} a date, {@code LocalTime} a time
 * of the clock, {@code Boolean} yes or no, an enum of {@link org.setpower.base.TextEnum}s one of
 * its words, {@code List<Double>} several columns of numbers.
 */
@Retention(RetentionPolicy.RUNTIME)
@Target(ElementType.RECORD_COMPONENT)
public @interface Input {
  /** Stable key; never changed once released. Several columns are {@code key1}, {@code key2} … */
  String key();

  /**
   * The record of another plan that declares the same column, by its key: what is not said here is
   * as there, so that it is said once.
   */
  Class<? extends Record> like() default Record.class;

  /** Heading in the key language, without the unit; of several columns without the number. */
  String heading() default "";

  /** Unit of the number, such as {@code Wh}; empty without one. */
  String unit() default "";

  /** Smallest number allowed. */
  double min() default -1e9;

  /** Largest number allowed. */
  double max() default 1e9;

  /** How the number is shown. */
  NumberForm form() default NumberForm.WHOLE;

  /** How many columns a list has. */
  int count() default 1;

  /** What a blank cell means, as a sentence; empty where a blank is a {@code stop}. */
  String blank() default "";

  /** What to type, for the cell's help. */
  String help() default "";

  /**
   * Key of the table whose rows the number names; empty for any other number. It follows its row
   * where the commands insert or delete rows there.
   */
  String rowOf() default "";
}
