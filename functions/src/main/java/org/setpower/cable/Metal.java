package org.setpower.cable;

import java.util.List;
import org.setpower.base.TextEnum;

/** What a conductor is made of. */
public enum Metal implements TextEnum {
  COPPER("Cu", "copper"),
  ALUMINIUM("Al", "aluminium", "aluminum");

  private final String word;
  private final List<String> others;

  Metal(String word, String... others) {
    this.word = word;
    this.others = List.of(others);
  }

  @Override
  public String word() {
    return word;
  }

  @Override
  public List<String> alsoWritten() {
    return others;
  }
}
