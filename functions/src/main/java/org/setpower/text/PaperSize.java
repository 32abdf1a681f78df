package org.setpower.text;

/**
 * Paper of printed pages, in 1/100 mm: Letter where units or words are those of the US, else A4.
 */
public enum PaperSize {
  A4(21_000, 29_700),
  LETTER(21_590, 27_940);

  private static final int ROUNDING = 50;

  private final int shortSide;
  private final int longSide;

  PaperSize(int shortSide, int longSide) {
    this.shortSide = shortSide;
    this.longSide = longSide;
  }

  /** The paper of a language, with or without a country: de, en-US. */
  public static PaperSize ofLanguage(String tag) {
    return tag.equals("en-US") ? LETTER : A4;
  }

  /** The paper of a job's units; where none are chosen, of the language of its words. */
  public static PaperSize ofJob(String units, String tag) {
    return units.isEmpty() ? ofLanguage(tag) : units.equals("US") ? LETTER : A4;
  }

  /** Whether a page of this width and height is of this size, either way up. */
  public boolean is(int width, int height) {
    return Math.abs(Math.max(width, height) - longSide) < ROUNDING;
  }

  public int width(boolean landscape) {
    return landscape ? longSide : shortSide;
  }

  public int height(boolean landscape) {
    return landscape ? shortSide : longSide;
  }
}
