package org.setpower.flight;

import java.util.List;
import org.setpower.base.TextEnum;

/** Kinds of cell that the rules of the air tell apart. */
public enum FlightChemistry implements TextEnum {
  LITHIUM_ION("Li-ion", "lithium-ion", "NMC"),
  LFP("LFP", "LiFePO4"),
  NIMH("NiMH", "NiCd"),
  LEAD("lead", "lead-acid"),
  SODIUM_ION("sodium-ion", "Na-ion");

  private final String word;
  private final List<String> alsoWritten;

  FlightChemistry(String word, String... alsoWritten) {
    this.word = word;
    this.alsoWritten = List.of(alsoWritten);
  }

  /** The kind whose rules apply: LFP is a lithium-ion cell. */
  public FlightChemistry ruledAs() {
    return this == LFP ? LITHIUM_ION : this;
  }

  /** Whether the lithium rules apply. */
  public boolean isLithium() {
    return ruledAs() == LITHIUM_ION;
  }

  @Override
  public String word() {
    return word;
  }

  @Override
  public List<String> alsoWritten() {
    return alsoWritten;
  }
}
