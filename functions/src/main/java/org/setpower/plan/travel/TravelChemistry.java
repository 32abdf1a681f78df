package org.setpower.plan.travel;

import java.util.List;
import org.setpower.base.TextEnum;

/** What a battery's cells are made of, as far as the rules of carriage tell it apart. */
public enum TravelChemistry implements TextEnum {
  LI_ION("Li-ion", "lithium-ion", "NMC", "NCA"),
  LFP("LFP", "LiFePO4"),
  LITHIUM_METAL("lithium metal", "lithium"),
  SODIUM("sodium-ion", "Na-ion"),
  NICKEL("NiMH", "NiCd"),
  DRY("dry cell", "alkaline"),
  LEAD_SEALED("lead, sealed", "AGM", "non-spillable"),
  /** A lead battery of which nobody says that it is sealed counts as one that spills. */
  LEAD_WET("lead, wet", "lead", "lead-acid");

  private final String word;
  private final List<String> alsoWritten;

  TravelChemistry(String word, String... alsoWritten) {
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
