package org.setpower.plan.lighting.input;

import java.util.List;
import org.setpower.base.TextEnum;

/** Where neutral and earth of a generator are bonded. */
public enum NeutralBond implements TextEnum {
  GENERATOR("at generator"),
  DISTRO("at distro"),
  BOTH("both"),
  NONE("none");

  private final String word;
  private final List<String> alsoWritten;

  NeutralBond(String word, String... alsoWritten) {
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
}
