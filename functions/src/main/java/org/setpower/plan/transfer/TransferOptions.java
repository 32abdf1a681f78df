package org.setpower.plan.transfer;

import java.util.function.UnaryOperator;

/**
 * How rows are brought in.
 *
 * @param onlyShort only what is short, not the whole list
 * @param daysOfUse whether the days of use become out and back
 * @param words English words in the language of the document that is written to
 */
public record TransferOptions(boolean onlyShort, boolean daysOfUse, UnaryOperator<String> words) {
  /** The whole list, by the dates of the order, in English. */
  public static final TransferOptions USUAL = new TransferOptions(false, false, w -> w);

  String word(String english) {
    return words.apply(english);
  }
}
