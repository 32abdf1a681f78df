package org.setpower.plan.travel.packing;

import java.util.List;

/**
 * A question of packing: like pieces, travellers by number, limits.
 *
 * @param items like pieces
 * @param limits how many of some items a traveller may take
 * @param room kg that each traveller may still take; infinite for any
 * @param load kg that each traveller has already
 */
public record Party(List<Item> items, List<Limit> limits, double[] room, double[] load) {
  /**
   * Like pieces.
   *
   * @param count how many
   * @param priority 1 is carried first
   * @param over whether few of them should be carried
   * @param limitKilograms weight of one as far as it is known; 0 if it is not
   * @param balanceKilograms weight of one by which loads are shared
   * @param user the traveller who works with it; −1 for anyone
   * @param fitted whether it is in equipment, which its user brings anyway
   * @param first who takes it first where nothing else decides
   * @param caps how many each traveller may take
   * @param last how many each traveller had in the last proposal
   */
  public record Item(
      int count,
      double wattHours,
      int priority,
      boolean over,
      double limitKilograms,
      double balanceKilograms,
      int user,
      boolean fitted,
      int first,
      int[] caps,
      int[] last) {
    /** What one weighs where loads are shared. */
    double load(int traveller) {
      return fitted && traveller == user ? 0 : balanceKilograms;
    }
  }

  /**
   * A limit of a traveller.
   *
   * @param items which items count
   * @param most how many of these together
   */
  public record Limit(int traveller, boolean[] items, int most) {}

  /** How many travellers there are. */
  public int travellers() {
    return room.length;
  }
}
