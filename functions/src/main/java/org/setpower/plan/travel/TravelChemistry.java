package org.setpower.plan.travel;

import java.util.List;
import org.setpower.base.TextEnum;

/** What a battery's cells are made of, as far as the rules of carriage tell it apart. */
public enum TravelChemistry implements TextEnum {
  LI_ION("Li-ion", 350, "lithium-ion", "NMC", "NCA"),
  LFP("LFP", 250, "LiFePO4"),
  LITHIUM_METAL("lithium metal", 700, "lithium"),
  SODIUM("sodium-ion", 250, "Na-ion"),
  NICKEL("NiMH", 150, "NiCd"),
  DRY("dry cell", 300, "alkaline"),
  LEAD_SEALED("lead, sealed", 80, "AGM", "non-spillable"),
  /** A lead battery of which nobody says that it is sealed counts as one that spills. */
  LEAD_WET("lead, wet", 80, "lead", "lead-acid");

  private final String word;
  private final double mostWattHoursAKilogram;
  private final List<String> alsoWritten;

  TravelChemistry(String word, double mostWattHoursAKilogram, String... alsoWritten) {
    this.word = word;
    this.mostWattHoursAKilogram = mostWattHoursAKilogram;
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

  /**
   * More Wh a kg than any battery of these cells has: one of the two was typed wrong. From memory,
   * with room above the best cells sold.
   */
  public double mostWattHoursAKilogram() {
    return mostWattHoursAKilogram;
  }

  /**
   * Fewer Wh a kg than a battery of these cells has: the cells are half of its weight at least.
   * From memory; 0 where nothing is asked.
   */
  public double leastWattHoursAKilogram() {
    return this == LI_ION ? 50 : this == LFP ? 40 : 0;
  }

  /** Whether the limits in Wh of lithium-ion batteries hold: LFP cells are lithium-ion cells. */
  public boolean isLithiumIon() {
    return this == LI_ION || this == LFP;
  }

  /** Whether the rules judge it by the Wh of a battery. */
  public boolean isJudgedByEnergy() {
    return isLithiumIon() || this == SODIUM || this == LEAD_SEALED;
  }

  /** Whether it is a dry nickel or alkaline battery. */
  public boolean isDry() {
    return this == NICKEL || this == DRY;
  }
}
