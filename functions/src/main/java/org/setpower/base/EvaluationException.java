package org.setpower.base;

import java.util.List;

/** A call that is refused, with its reason in words. Has no stack trace, because it is a result. */
public final class EvaluationException extends RuntimeException {
  private static final long serialVersionUID = 1L;

  private final transient ErrorCode reason;
  private final transient List<Object> values;

  /**
   * @param reason why
   * @param values what replaces {@code {0}}, {@code {1}} … in the sentence; numbers are shortened
   */
  public EvaluationException(ErrorCode reason, Object... values) {
    super(null, null, false, false);
    this.reason = reason;
    this.values = List.of(values);
  }

  public ErrorCode errorCode() {
    return reason;
  }

  public ErrorKind kind() {
    return reason.kind();
  }

  /** The sentence for the user. */
  @Override
  public String getMessage() {
    String sentence = reason.sentence();
    for (int i = 0; i < values.size(); i++) {
      Object value = values.get(i);
      String words = value instanceof Number n ? Numbers.format(n.doubleValue()) : value.toString();
      sentence = sentence.replace("{" + i + "}", words);
    }
    return sentence;
  }
}
