package org.setpower.command.settings;

import java.util.List;

/**
 * A default that a user may set for every new file. Each fills the cells of its names, where they
 * are.
 */
public enum Setting {
  UNITS("~Units", List.of("metric", "US"), "Project_units"),
  FLIGHT_RULES("~Flight rules", List.of("ICAO", "US"), "Project_flightRules"),
  CURRENCY("~Currency", List.of(), "Project_currency", "Order_currency"),
  MAX_DROP("Max. voltage ~drop (%)", List.of(), "Project_maxDrop"),
  HOUSE_NAME("Our ~name", List.of(), "House_name"),
  HOUSE_ADDRESS("Our add~ress", List.of(), "House_address"),
  HOUSE_TAX_NUMBER("Our ta~x number", List.of(), "House_taxNumber"),
  HOUSE_CONTACT("Our con~tact", List.of(), "House_contact"),
  HOUSE_BANK("Our ~bank", List.of(), "House_bank"),
  HOUSE_PAYMENT("Our pa~yment terms", List.of(), "House_payment"),
  HOUSE_LOGO("Our lo~go, a picture file", List.of());

  private final String label;
  private final List<String> choices;
  private final List<String> cells;

  Setting(String label, List<String> choices, String... cells) {
    this.label = label;
    this.choices = choices;
    this.cells = List.of(cells);
  }

  /** What it is called, with a tilde before the letter for the keyboard. */
  public String label() {
    return label;
  }

  /** The names of the cells it fills. */
  public List<String> cells() {
    return cells;
  }

  /** Whether it is a share that people write in per cent. */
  boolean isPercent() {
    return this == MAX_DROP;
  }

  /** What can be chosen; empty where anything can be typed. */
  List<String> choices() {
    return choices;
  }

  /** The key under which it is kept. */
  public String key() {
    return name();
  }
}
