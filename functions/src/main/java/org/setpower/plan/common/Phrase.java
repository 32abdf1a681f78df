package org.setpower.plan.common;

import java.util.List;

/**
 * Words on a paper with figures in them, without a language: a label of a line, a line of terms.
 *
 * @param pattern the English text, as {@link java.text.MessageFormat} takes it; one of {@link
 *     PlanModel#phrases()}
 * @param arguments texts, numbers, dates, other phrases, in the order of the pattern
 */
public record Phrase(String pattern, List<Object> arguments) {
  public Phrase {
    arguments = List.copyOf(arguments);
  }

  public static Phrase of(String pattern, Object... arguments) {
    return new Phrase(pattern, List.of(arguments));
  }
}
