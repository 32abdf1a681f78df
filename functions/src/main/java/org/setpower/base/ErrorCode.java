package org.setpower.base;

/**
 * Why a call is refused: one constant of an enum, which stands beside the formula that refuses.
 * {@code {0}}, {@code {1}} … in the sentence are replaced by the values given to {@link
 * EvaluationException}.
 */
public interface ErrorCode {
  /** What the cell shows. */
  ErrorKind kind();

  /** The sentence, in plain words, with the value and the limit. */
  String sentence();
}
