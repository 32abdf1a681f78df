package org.setpower.plan.lighting.input;

import java.util.List;
import org.setpower.base.TextEnum;

/** The legs of an outlet or of a load. */
public enum LegWord implements TextEnum {
  L1("L1", "1"),
  L2("L2", "2"),
  L3("L3", "3"),
  L1_L2("L1-L2", "L2-L1", "12"),
  L2_L3("L2-L3", "L3-L2", "23"),
  L3_L1("L3-L1", "L1-L3", "13"),
  ALL("all"),
  /** One leg after the other from L1. */
  IN_TURN("in turn", "in turn from L1"),
  PAIRS_IN_TURN("pairs in turn");

  private final String word;
  private final List<String> alsoWritten;

  LegWord(String word, String... alsoWritten) {
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

  private static final int[] PAIRS = {3, 6, 5};

  /**
   * Legs as bits, of one outlet of a row of outlets.
   *
   * @param place of the outlet in its row, from 0
   * @param supply legs of the supply
   */
  public int legs(int place, int supply) {
    boolean split = supply == 3;
    return switch (this) {
      case L1 -> 1;
      case L2 -> 2;
      case L3 -> 4;
      case L1_L2 -> 3;
      case L2_L3 -> 6;
      case L3_L1 -> 5;
      case ALL -> supply;
      case IN_TURN -> Integer.bitCount(supply) == 1 ? supply : 1 << place % (split ? 2 : 3);
      case PAIRS_IN_TURN -> split ? 3 : PAIRS[place % 3];
    };
  }

  /** Legs in words, such as L2 or L1-L2. */
  public static String text(int legs) {
    return switch (legs) {
      case 1 -> "L1";
      case 2 -> "L2";
      case 4 -> "L3";
      case 3 -> "L1-L2";
      case 6 -> "L2-L3";
      case 5 -> "L3-L1";
      case 7 -> "L1-L2-L3";
      default -> "";
    };
  }
}
