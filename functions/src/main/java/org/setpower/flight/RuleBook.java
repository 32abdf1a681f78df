package org.setpower.flight;

import java.util.List;
import org.setpower.base.TextEnum;

/** Whose rules are asked. */
public enum RuleBook implements TextEnum {
  /** ICAO Technical Instructions and the IATA regulations that follow them. */
  ICAO("ICAO"),
  /** 49 CFR 175.10 and the guidance of the FAA. */
  US("US");

  private final String word;

  RuleBook(String word) {
    this.word = word;
  }

  @Override
  public String word() {
    return word;
  }

  @Override
  public List<String> alsoWritten() {
    return this == ICAO ? List.of("IATA") : List.of("FAA", "USA");
  }
}
