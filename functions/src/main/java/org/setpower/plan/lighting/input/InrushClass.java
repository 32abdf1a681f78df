package org.setpower.plan.lighting.input;

import java.util.List;
import org.setpower.base.TextEnum;

/** What kind of load a device is: it decides start, third harmonic, what low voltage does. */
public enum InrushClass implements TextEnum {
  NONE("heater", "none"),
  TUNGSTEN("tungsten"),
  /** With electronics between mains and lamp: LED, chargers. */
  ELECTRONIC("electronic", "LED"),
  /** With a ballast; once off it stays dark until it has cooled down. */
  DISCHARGE("discharge", "HMI"),
  MOTOR("motor");

  private final String word;
  private final List<String> alsoWritten;

  InrushClass(String word, String... alsoWritten) {
    this.word = word;
    this.alsoWritten = List.of(alsoWritten);
  }

  /** Whether its current follows the voltage, so that it has next to no harmonics. */
  public boolean isSine() {
    return this != ELECTRONIC && this != DISCHARGE;
  }

  @Override
  public String word() {
    return word;
  }

  @Override
  public List<String> alsoWritten() {
    return alsoWritten;
  }
}
