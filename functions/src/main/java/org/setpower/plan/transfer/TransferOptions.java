package org.setpower.plan.transfer;

import java.util.function.UnaryOperator;

/**
 * How rows are brought in.
 *
 * @param onlyShort only what is short, not the whole list
 * @param daysOfUse whether the days of use become out and back
 * @param words English words in the language of the document that is written to
 * @param items names of another file as this file calls the item
 */
public record TransferOptions(
    boolean onlyShort,
    boolean daysOfUse,
    UnaryOperator<String> words,
    UnaryOperator<String> items) {
  /** The whole list, by the dates of the order, in English, by the names of the other file. */
  public static final TransferOptions USUAL = new TransferOptions(false, false, w -> w);

  /** By the names of the other file. */
  public TransferOptions(boolean onlyShort, boolean daysOfUse, UnaryOperator<String> words) {
    this(onlyShort, daysOfUse, words, n -> n);
  }

  /** The same, by the names of the file that is written to. */
  public TransferOptions with(UnaryOperator<String> names) {
    return new TransferOptions(onlyShort, daysOfUse, words, names);
  }

  String word(String english) {
    return words.apply(english);
  }

  String item(String name) {
    return items.apply(name);
  }
}
