package org.setpower.plan.lighting.input;

import java.util.List;
import org.setpower.base.TextEnum;

/** Units of every length, temperature and volume typed in a plan. */
public enum MeasureSystem implements TextEnum {
  /** m, °C, L. */
  METRIC("metric"),
  /** ft, °F, US gal. */
  US("US", "imperial");

  private final String word;
  private final List<String> alsoWritten;

  MeasureSystem(String word, String... alsoWritten) {
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
