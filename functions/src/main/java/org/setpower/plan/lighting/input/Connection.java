package org.setpower.plan.lighting.input;

import java.util.List;
import org.setpower.base.TextEnum;

/** Which conductors a device uses. */
public enum Connection implements TextEnum {
  LINE_NEUTRAL("line-neutral", "1PH"),
  LINE_LINE("line-line"),
  THREE_PHASE("three-phase", "3PH");

  private final String word;
  private final List<String> alsoWritten;

  Connection(String word, String... alsoWritten) {
    this.word = word;
    this.alsoWritten = List.of(alsoWritten);
  }

  @Override
  public String word() {
    return word;
  }

  @Override
  public List<String> alsoWritten() {
    return alsoWritten;
  }

  /** How many legs it uses. */
  public int legs() {
    return ordinal() + 1;
  }
}
