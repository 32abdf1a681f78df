package org.setpower.plan.lighting.input;

import java.util.List;
import org.setpower.base.TextEnum;

/** What a row of Sources & distro is. */
public enum SupplyType implements TextEnum {
  GENERATOR("generator", "genny"),
  UTILITY("utility", "utility supply"),
  HOUSE_POWER("house power"),
  SOCKET_OUTLET("socket outlet"),
  DISTRO("distro", "distribution box");

  private final String word;
  private final List<String> alsoWritten;

  SupplyType(String word, String... alsoWritten) {
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
