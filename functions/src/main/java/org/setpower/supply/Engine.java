package org.setpower.supply;

import java.util.List;
import org.setpower.base.TextEnum;

/** The engine of a generator, which says how it takes thin and hot air. */
public enum Engine implements TextEnum {
  DIESEL_TURBO("diesel turbo"),
  /** Naturally aspirated. */
  DIESEL("diesel"),
  PETROL("petrol");

  private final String word;

  Engine(String word) {
    this.word = word;
  }

  @Override
  public String word() {
    return word;
  }

  @Override
  public List<String> alsoWritten() {
    return switch (this) {
      case DIESEL_TURBO -> List.of("turbo diesel");
      case DIESEL -> List.of();
      case PETROL -> List.of("gasoline");
    };
  }
}
