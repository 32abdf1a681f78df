package org.setpower.plan.register;

import java.util.List;
import org.setpower.base.TextEnum;

/**
 * The result of an inspection, and the type of an incident. Common practice of rental houses;
 * damaged and recalled lithium batteries are kept apart as the dangerous-goods rules ask (UN 3480
 * special provision 376, from memory).
 */
public enum Condition implements TextEnum {
  FINE("fine", Consequence.NONE),
  DROPPED("dropped", Consequence.QUARANTINE),
  WET("wet", Consequence.QUARANTINE),
  SWOLLEN("swollen", Consequence.RETIRE_ONLY, "puffed"),
  LEAKING("leaking", Consequence.RETIRE_ONLY),
  HOT("hot", Consequence.RETIRE_ONLY),
  BURNT("burnt", Consequence.RETIRE_ONLY, "burned"),
  CRACKED("cracked", Consequence.QUARANTINE, "cracked casing"),
  RECALLED("recalled", Consequence.QUARANTINE),
  CELL_VOLTAGE("cell voltage", Consequence.QUARANTINE),
  CONTACTS("contacts", Consequence.SERVICE),
  LABEL_UNREADABLE("label unreadable", Consequence.SERVICE),
  NOT_CHARGING("not charging", Consequence.SERVICE, "will not charge"),
  LOST("lost", Consequence.LOST, "stolen");

  /** What a condition leads to. */
  enum Consequence {
    NONE,
    SERVICE,
    /** Until an incident is closed. */
    QUARANTINE,
    /** In no count and on no list; once found, in quarantine until an incident is closed. */
    LOST,
    /** In quarantine until it is disposed of: no incident of this kind can be closed. */
    RETIRE_ONLY
  }

  private final String word;
  private final Consequence consequence;
  private final List<String> alsoWritten;

  Condition(String word, Consequence consequence, String... alsoWritten) {
    this.word = word;
    this.consequence = consequence;
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

  Consequence consequence() {
    return consequence;
  }
}
