package org.setpower.plan.batteryday.simulation;

import java.util.List;
import org.setpower.base.TextEnum;

/** How the batteries of one position are connected. */
public enum BatteryConnection implements TextEnum {
  ONE("one"),
  /** One supplies while another is changed; they are emptied one after the other. */
  HOT_SWAP("hot-swap"),
  PARALLEL("parallel"),
  SERIES("series");

  private final String word;

  BatteryConnection(String word) {
    this.word = word;
  }

  @Override
  public String word() {
    return word;
  }

  @Override
  public List<String> alsoWritten() {
    return this == HOT_SWAP ? List.of("hotswap") : List.of();
  }
}
