package org.setpower.plan.lighting.input;

import java.util.List;
import org.setpower.base.TextEnum;

/** The conductors of a cable, earth included, or of a set of single-core cables. */
public enum CoreSet implements TextEnum {
  THREE("3", 3, 1, 1, false),
  FOUR("4", 4, 3, 0, false),
  FIVE("5", 5, 3, 1, false),
  /** Two legs and earth. */
  LINE_TO_LINE("3 line to line", 3, 2, 0, false),
  /** Two legs, neutral and earth. */
  SPLIT("4 split", 4, 2, 1, false),
  THREE_SINGLE("3 single", 3, 1, 1, true),
  /** Two legs, neutral and earth. */
  FOUR_SINGLE("4 single", 4, 2, 1, true),
  FIVE_SINGLE("5 single", 5, 3, 1, true, "5x1"),
  /** Three legs, a double neutral and earth. */
  SIX_SINGLE("6 single", 6, 3, 2, true);

  private final String word;
  private final int count;
  private final int legs;
  private final int neutrals;
  private final boolean single;
  private final List<String> alsoWritten;

  CoreSet(String word, int count, int legs, int neutrals, boolean single, String... alsoWritten) {
    this.word = word;
    this.count = count;
    this.legs = legs;
    this.neutrals = neutrals;
    this.single = single;
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

  public int count() {
    return count;
  }

  public int legs() {
    return legs;
  }

  public int neutrals() {
    return neutrals;
  }

  public boolean isSingle() {
    return single;
  }
}
