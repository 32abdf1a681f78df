package org.setpower.supply;

import java.util.List;
import org.setpower.base.TextEnum;

/** A supply with a neutral that its legs share. */
public enum Feed implements TextEnum {
  /** Three legs, 120° apart. */
  THREE_PHASE("3PH"),
  /** Two legs of opposite sign, as 120/240 V. */
  SPLIT("split");

  private final String word;

  Feed(String word) {
    this.word = word;
  }

  @Override
  public String word() {
    return word;
  }

  @Override
  public List<String> alsoWritten() {
    return this == SPLIT ? List.of("split phase") : List.of("3 phase", "three phase");
  }
}
