package org.setpower.command.settings;

import java.util.List;

/**
 * A default that a user may set for every new file. Each fills the cells of its names, where they
 * are there.
 */
public enum Setting {
  UNITS("~Units", "Job_Units Project_units", List.of("metric", "US")),
  WIRE_FAMILY("Cable ~sizes in", "Job_Wire_family", List.of("mm2", "AWG")),
  FLIGHT_RULES("~Flight rules", "Project_flightRules", List.of("ICAO", "US")),
  CURRENCY("~Currency", "Job_Currency Order_currency", List.of()),
  MAX_DROP("Max. voltage ~drop (%)", "Project_maxDrop", List.of()),
  HOUSE_NAME("Our ~name", "House_name", List.of()),
  HOUSE_ADDRESS("Our a~ddress", "House_address", List.of()),
  HOUSE_TAX_NUMBER("Our ta~x number", "House_taxNumber", List.of()),
  HOUSE_CONTACT("Our con~tact", "House_contact", List.of()),
  HOUSE_BANK("Our ~bank", "House_bank", List.of()),
  HOUSE_PAYMENT("Our pa~yment terms", "House_payment", List.of());

  private final String label;
  private final List<String> cells;
  private final List<String> choices;

  Setting(String label, String cells, List<String> choices) {
    this.label = label;
    this.cells = List.of(cells.split(" "));
    this.choices = choices;
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
