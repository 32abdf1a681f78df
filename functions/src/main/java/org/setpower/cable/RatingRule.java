package org.setpower.cable;

import java.util.List;
import org.setpower.base.TextEnum;

/** By whose tables a cable is rated. Wire gauges always go by the NEC. */
public enum RatingRule implements TextEnum {
  BS_7671("BS 7671", "BS7671"),
  VDE_0298("VDE 0298-4", "HD 60364", "VDE 0298"),
  NEC("NEC");

  private final String word;
  private final List<String> alsoWritten;

  RatingRule(String word, String... alsoWritten) {
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

  /** The rule whose tables hold sizes of a family: the NEC has none in mm². */
  public RatingRule of(CableSize.Family family) {
    if (family != CableSize.Family.METRIC) {
      return NEC;
    }
    return this == NEC ? BS_7671 : this;
  }
}
