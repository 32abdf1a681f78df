package org.setpower.plan.lighting.input;

import java.util.List;
import org.setpower.base.TextEnum;

/** What a device draws when it is switched on. */
public enum InrushClass implements TextEnum {
  /** Heaters. */
  NONE("none", "heater"),
  TUNGSTEN("tungsten"),
  ELECTRONIC("electronic", "LED"),
  MOTOR("motor");

  private final String word;
  private final List<String> alsoWritten;

  InrushClass(String word, String... alsoWritten) {
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
