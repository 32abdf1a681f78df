package org.setpower.plan.lighting.input;

import java.util.List;
import org.setpower.base.TextEnum;

/** What a cable is made as; it decides the table of ratings. */
public enum CableType implements TextEnum {
  /** Light cord of H05 types, or of type SJ. */
  CORD("cord"),
  /** Heavy rubber cable of H07RN-F, or of types S and W. */
  RUBBER("rubber"),
  /** Single-core cable. */
  FEEDER("feeder", "single-core"),
  /** Fixed wiring. */
  BUILDING("building"),
  /** Several circuits in one sheath, as a 19-pin cable. */
  MULTI_CIRCUIT("multi-circuit", "19-pin");

  private final String word;
  private final List<String> alsoWritten;

  CableType(String word, String... alsoWritten) {
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

  /** The tables of ratings. */
  public org.setpower.cable.Ampacity.Method method() {
    return switch (this) {
      case CORD -> org.setpower.cable.Ampacity.Method.CORD;
      case RUBBER -> org.setpower.cable.Ampacity.Method.RUBBER;
      case FEEDER -> org.setpower.cable.Ampacity.Method.FEEDER;
      case BUILDING -> org.setpower.cable.Ampacity.Method.BUILDING;
      case MULTI_CIRCUIT -> org.setpower.cable.Ampacity.Method.FLEXIBLE;
    };
  }
}
