package org.setpower.supply;

import java.util.List;
import org.setpower.base.TextEnum;

/** What a generator burns. */
public enum Fuel implements TextEnum {
  DIESEL("diesel"),
  PETROL("petrol"),
  /** Hydrotreated vegetable oil. */
  HVO("HVO");

  private final String word;

  Fuel(String word) {
    this.word = word;
  }

  @Override
  public String word() {
    return word;
  }

  @Override
  public List<String> alsoWritten() {
    return this == PETROL ? List.of("gasoline") : List.of();
  }
}
