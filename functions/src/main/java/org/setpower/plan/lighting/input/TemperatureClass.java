package org.setpower.plan.lighting.input;

import java.util.List;
import org.setpower.base.TextEnum;

/** Conductor temperature that a cable is marked for, °C. */
public enum TemperatureClass implements TextEnum {
  C60("60"),
  C75("75"),
  C90("90");

  private final String word;
  private final List<String> alsoWritten;

  TemperatureClass(String word, String... alsoWritten) {
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

  /** °C. */
  public int celsius() {
    return Integer.parseInt(word);
  }
}
