package org.setpower.plan.common;

import java.lang.annotation.ElementType;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;
import org.setpower.plan.finding.Finding;
import org.setpower.plan.finding.Verdict;

/**
 * Declares a result column, on a record's component. A {@link Verdict} becomes its code, a list of
 * {@link Finding}s its sentences, the {@link Issues.Place} of an issue and a {@link Phrase} their
 * words, a {@link org.setpower.base.TextEnum} its word, a {@link
 * org.setpower.plan.finding.ResultWord} its word in the document's language, a date its day number,
 * a time its part of a day, true and false yes and no; null becomes a blank.
 */
@Retention(RetentionPolicy.RUNTIME)
@Target(ElementType.RECORD_COMPONENT)
public @interface Result {
  /** Stable key; never changed once released. */
  String key();

  /**
   * The record of another plan that declares the same column, by its key: heading, unit, form and
   * rule are as there where they are not said here.
   */
  Class<? extends Record> like() default Record.class;

  /** Heading in the key language, without the unit. */
  String heading() default "";

  /** Unit of the number; empty without one. */
  String unit() default "";

  /**
   * Whether the word of a {@link org.setpower.base.TextEnum}, yes and no are translated: on paper
   * they are.
   */
  boolean translated() default false;

  /** How the number is shown. */
  NumberForm form() default NumberForm.WHOLE;

  /**
   * What the figure is made of: {@code table.key} of input and result columns. One that ends in *
   * names all input columns that begin so. From here a figure is retraced.
   */
  String[] from() default {};

  /** How it is made of them, as a sentence; or the name of the leaf function. */
  String rule() default "";
}
