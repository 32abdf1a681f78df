package org.setpower.plan.batteries;

import org.setpower.base.Fault;
import org.setpower.base.Reason;

/** Why a plan cannot be made. */
public enum PlanReason implements Reason {
  ENDS_BEFORE_START(Fault.DOMAIN, "row {0} of {1} ends at {3} h, not after its start at {2} h"),
  NO_SUCH_PACK(
      Fault.DOMAIN, "row {0} of devices takes packs of {1} Wh; packs has none, only {2} Wh"),
  TOO_MANY_EVENTS(
      Fault.DOMAIN,
      "the plan has more than {0} events; a device empties its packs within minutes: check watts"
          + " and Wh"),
  TOO_MANY_DEVICES(Fault.DOMAIN, "there are {0} devices; at most {1} are followed"),
  TOO_MANY_PACKS(Fault.DOMAIN, "packs has more than {0} pieces; plan fewer at a time"),
  MIX_TOO_LARGE(Fault.DOMAIN, "options has {0} rows; at most {1} can be weighed to a proven end"),
  MIX_TOO_HARD(
      Fault.NO_CONVERGENCE,
      "these options are too alike to find the cheapest mix in time; leave some out"),
  NO_MIX(
      Fault.NO_ANSWER,
      "no mix of these options gives {0} Wh and {1} W within {2}; allow more or carry other packs");

  private final Fault fault;
  private final String sentence;

  PlanReason(Fault fault, String sentence) {
    this.fault = fault;
    this.sentence = sentence;
  }

  @Override
  public Fault fault() {
    return fault;
  }

  @Override
  public String sentence() {
    return sentence;
  }
}
