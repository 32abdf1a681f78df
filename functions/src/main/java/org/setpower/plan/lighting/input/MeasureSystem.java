package org.setpower.plan.lighting.input;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.setpower.base.TextEnum;
import org.setpower.plan.finding.Identity;

/** Units of every length, temperature and volume typed in a plan. */
public enum MeasureSystem implements TextEnum {
  /** m, °C, L. */
  METRIC("metric", "m, °C, L"),
  /** ft, °F, US gal. */
  US("US", "ft, °F, US gal", "imperial");

  private final String word;
  private final String figures;
  private final List<String> alsoWritten;

  MeasureSystem(String word, String figures, String... alsoWritten) {
    this.word = word;
    this.figures = figures;
    List<String> all = new ArrayList<>(List.of(alsoWritten));
    all.add(asked());
    this.alsoWritten = List.copyOf(all);
  }

  /** The units of lengths, temperatures and volumes. */
  public String figures() {
    return figures;
  }

  /**
   * What is picked instead of the word while figures are typed and no units are picked: a statement
   * about these figures, so that a pick never gives them another meaning unnoticed.
   */
  public String asked() {
    return word + " (figures are " + figures + ")";
  }

  /** The same of a word; the word itself where it is none of these. */
  public static String asked(String word) {
    return Arrays.stream(values())
        .filter(u -> u.word.equals(word))
        .map(u -> u.asked())
        .findFirst()
        .orElse(word);
  }

  /** Whether a cell holds such a statement, which somebody has to confirm. */
  static boolean isAsked(Object cell) {
    return cell instanceof String text
        && Arrays.stream(values()).anyMatch(u -> Identity.of(u.asked()).equals(Identity.of(text)));
  }

  @Override
  public String word() {
    return word;
  }

  @Override
  public List<String> alsoWritten() {
    return alsoWritten;
  }

  private static final double FOOT = 0.3048;
  private static final double GALLON = 3.785411784;

  /** Metres of a typed length. */
  public double toMetres(double typed) {
    return this == US ? typed * FOOT : typed;
  }

  /** A length as it is shown. */
  public double fromMetres(double metres) {
    return this == US ? metres / FOOT : metres;
  }

  /** °C of a typed temperature. */
  public double toCelsius(double typed) {
    return this == US ? (typed - 32) / 1.8 : typed;
  }

  /** A temperature as it is shown. */
  public double fromCelsius(double celsius) {
    return this == US ? celsius * 1.8 + 32 : celsius;
  }

  /** Litres of a typed volume. */
  public double toLitres(double typed) {
    return this == US ? typed * GALLON : typed;
  }

  /** A volume as it is shown. */
  public double fromLitres(double litres) {
    return this == US ? litres / GALLON : litres;
  }
}
