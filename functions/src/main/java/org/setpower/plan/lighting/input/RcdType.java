package org.setpower.plan.lighting.input;

import java.util.List;
import org.setpower.base.TextEnum;

/** Type of an RCD (IEC 61008-1, 62423); S waits, so that one behind it opens first. */
public enum RcdType implements TextEnum {
  AC("AC"),
  A("A"),
  F("F"),
  B("B"),
  A_S("A S", "AS", "S A"),
  F_S("F S", "FS", "S F"),
  B_S("B S", "BS", "S B"),
  /** Time-delayed; of which type is not known. */
  S("S", "delayed");

  private final String word;
  private final List<String> alsoWritten;

  RcdType(String word, String... alsoWritten) {
    this.word = word;
    this.alsoWritten = List.of(alsoWritten);
  }

  /** Whether one behind it opens first. */
  public boolean isDelayed() {
    return word.endsWith(S.word);
  }

  @Override
  public String word() {
    return word;
  }

  @Override
  public List<String> alsoWritten() {
    return alsoWritten;
  }
}
