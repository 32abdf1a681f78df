package org.setpower.command.settings;

import java.util.List;

/**
 * A default that a user may set for every new file. Each fills the cell of one name, if it is
 * there.
 */
public enum Setting {
  UNITS("~Units", "Job_Units", List.of("metric", "US")),
  WIRE_FAMILY("Cable ~sizes in", "Job_Wire_family", List.of("mm2", "AWG")),
  MAINS("~Mains standard", "Job_Mains", List.of("230/400 V", "120/208 V")),
  FLIGHT_RULES("~Flight rules", "Project_flightRules", List.of("ICAO", "US")),
  CURRENCY("~Currency", "Job_Currency", List.of()),
  LIMIT_HOUSE("Max. drop, utility su~pply (%)", "Job_Drop_limit_house", List.of()),
  LIMIT_OWN("Max. drop, ~generator (%)", "Job_Drop_limit_own", List.of());

  private final String label;
  private final String cell;
  private final List<String> choices;

  Setting(String label, String cell, List<String> choices) {
    this.label = label;
    this.cell = cell;
    this.choices = choices;
  }

  /** What it is called, with a tilde before the letter for the keyboard. */
  public String label() {
    return label;
  }

  /** The name of the cell it fills. */
  public String cell() {
    return cell;
  }

  /** Whether it is a share that people write in per cent. */
  boolean isPercent() {
    return this == LIMIT_HOUSE || this == LIMIT_OWN;
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
