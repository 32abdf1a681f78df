package org.setpower.bank;

import java.util.List;
import org.setpower.base.TextEnum;

/** How the packs of a bank are joined. */
public enum ParallelConnection implements TextEnum {
  /** Through ideal diodes: the highest voltage carries, none is charged by another. */
  HOT_SWAP("hot-swap"),
  /** Hard in parallel: the packs equalise through each other. */
  PARALLEL("parallel");

  private final String word;

  ParallelConnection(String word) {
    this.word = word;
  }

  @Override
  public String word() {
    return word;
  }

  @Override
  public List<String> alsoWritten() {
    return this == HOT_SWAP ? List.of("hotswap", "diodes") : List.of();
  }
}
