package org.setpower.plan.travel;

import org.setpower.plan.finding.Finding;
import org.setpower.plan.finding.FindingKey;
import org.setpower.plan.finding.Severity;

/**
 * What a paper states. A statement says what somebody has written or ticked; none says that a thing
 * may be carried.
 */
public enum TravelStatement implements FindingKey {
  /** Arguments: flight, pieces a person, reference, day of the answer. */
  ANSWER("paper.answer"),
  /** Arguments: flight, pieces a person, reference. */
  ANSWER_UNDATED("paper.answerUndated"),
  /** Arguments: date, carrier. */
  FLIGHT("paper.flight"),
  /** Arguments: date, carrier, route. */
  FLIGHT_ROUTE("paper.flightRoute"),
  /** Arguments: edition, its last day. */
  RULES("paper.rules"),
  /** Arguments: flights. */
  FLIGHTS("paper.flights"),
  /** Arguments: spares, over 100 Wh, power banks, reference. */
  WRITTEN("paper.written"),
  /** Arguments: spares, over 100 Wh, power banks that count of what is written. */
  USED("paper.used"),
  /** Arguments: flight, pieces a person that count of what is answered. */
  ANSWER_USED("paper.answerUsed"),
  /** Arguments: flight, pieces, max. */
  COUNT_SPARES("paper.countSpares"),
  /** Arguments: flight, pieces. */
  COUNT_SPARES_OPEN("paper.countSparesOpen"),
  /** Arguments: pieces, max. */
  COUNT_LARGE("paper.countLarge"),
  /** Arguments: pieces, max. */
  COUNT_BANKS("paper.countBanks"),
  /** Arguments: edition, its last day. */
  EDITION_ENDED("paper.editionEnded"),
  TERMINALS("paper.terminals"),
  OWN_WORK("paper.ownWork"),
  /** Arguments: Wh, V, Ah. */
  WORKED_OUT("paper.workedOut"),
  CONFIRM("paper.confirm"),
  /** Arguments: pieces of own spares, of own power banks. */
  OWN("paper.own"),
  /** Arguments: rows. */
  WITHHELD("paper.withheld"),
  FREIGHT_DATA("paper.freightData"),
  /** Arguments: contact. */
  CONTACT("paper.contact"),
  CABIN_ONLY("paper.cabinOnly"),
  /** Arguments: rows. */
  DAMAGED_ROAD("paper.damagedRoad"),
  /** Arguments: points. */
  POINTS("paper.points"),
  /** Arguments: reference. */
  TRANSPORT("paper.transport");

  private final String key;

  TravelStatement(String key) {
    this.key = "travel." + key;
  }

  Finding of(Object... arguments) {
    return Finding.of(this, arguments);
  }

  @Override
  public String key() {
    return key;
  }

  @Override
  public Severity severity() {
    return Severity.CHECK;
  }
}
