package org.setpower.command.settings;

import java.util.List;

/**
 * A default that a user may set for every new file. Each fills the cells of its names, where they
 * are.
 */
public enum Setting {
  UNITS("~Units", List.of("metric", "US"), "Job_Units", "Project_units"),
  WIRE_FAMILY("Cable ~sizes in", List.of("mm2", "AWG"), "Job_Wire_family"),
  FLIGHT_RULES("~Flight rules", List.of("ICAO", "US"), "Job_Flight_rules"),
  CURRENCY("~Currency", List.of(), "Job_Currency"),
  MAX_DROP("Max. voltage ~drop (%)", List.of(), "Project_maxDrop");

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
