package org.setpower.plan.batteryday.typed;

import java.util.List;
import org.setpower.base.TextEnum;

/** Why a battery is neither used nor charged. */
public enum BatteryAbsence implements TextEnum {
  LENT("lent"),
  /** Dropped, wet, swollen, hot or without output. */
  QUARANTINE("quarantine");

  private final String word;

  BatteryAbsence(String word) {
    this.word = word;
  }

  @Override
  public String word() {
    return word;
  }

  @Override
  public List<String> alsoWritten() {
    return this == QUARANTINE ? List.of("out of service") : List.of();
  }
}
