package org.setpower.plan.lighting.input;

import java.util.List;
import java.util.stream.Stream;
import org.setpower.base.TextEnum;

/** What a cable is made as; it decides the table of ratings. */
public enum CableType implements TextEnum {
  /** Light cord of H05 types, or of type SJ. */
  CORD("cord", "light cord"),
  /** Heavy rubber cable of H07RN-F, or of types S and W. */
  RUBBER("rubber", "rubber cable", "H07RN-F"),
  /** Single-core cable. */
  FEEDER("feeder", "single-core cable", "single-core"),
  /** Fixed wiring. */
  BUILDING("building", "building cable"),
  /** Several circuits in one sheath, as a 19-pin cable. */
  MULTI_CIRCUIT("multi-circuit", "multi-circuit cable", "19-pin");

  /** A rental house in Europe knows it by its type; others by its sheath. */
  private static final String HARMONISED = "rubber cable H07RN-F";

  private final String word;
  private final String name;
  private final List<String> alsoWritten;

  CableType(String word, String name, String... alsoWritten) {
    this.word = word;
    this.name = name;
    this.alsoWritten = List.of(alsoWritten);
  }

  /** What all types are called on an order. */
  public static List<String> names() {
    return Stream.concat(Stream.of(HARMONISED), Stream.of(values()).map(t -> t.name)).toList();
  }

  /** What it is called on an order. */
  public String name(boolean us) {
    return this == RUBBER && !us ? HARMONISED : name;
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
