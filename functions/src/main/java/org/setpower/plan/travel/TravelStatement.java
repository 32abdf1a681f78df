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
  /** Arguments: spares, over 100 Wh, power banks, reference. */
  WRITTEN("paper.written"),
  /** Arguments: spares, over 100 Wh, power banks that count of what is written. */
  USED("paper.used"),
  /** Arguments: flight, pieces a person that count of what is answered. */
  ANSWER_USED("paper.answerUsed"),
  /** Arguments: spares, over 100 Wh, power banks that a person may take. */
  TOGETHER("paper.together"),
  /** Arguments: spares, over 100 Wh, power banks, in equipment. */
  COUNTED_OWN("paper.countedOwn"),
  /** Arguments: carrier. */
  DESK("paper.desk"),
  /** Arguments: pieces. */
  HELD("paper.held"),
  SP188("paper.sp188"),
  /** Arguments: max. pieces. */
  TOGETHER_DEVICES("paper.togetherDevices"),
  /** Arguments: flight, date, carrier. */
  CARD_FLIGHT("paper.cardFlight"),
  /** Arguments: flight, date, carrier, route. */
  CARD_ROUTE("paper.cardRoute"),
  /** Arguments: pieces, max. */
  COUNT_SPARES("paper.countSpares"),
  /** Arguments: pieces. */
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
  FITTED_HOLD("paper.fittedHold"),
  /** Arguments: packing instruction, parts of it. */
  FREIGHT_CONFIRM("paper.freightConfirm"),
  ROAD_CONFIRM("paper.roadConfirm"),
  TUNNEL_CONFIRM("paper.tunnelConfirm"),
  /** Arguments: day. */
  HANDED_OVER("paper.handedOver"),
  GROSS("paper.gross"),
  PACKAGES("paper.packages"),
  /** Arguments: pieces of own spares, of own power banks. */
  OWN("paper.own"),
  /** Arguments: rows on it, rows that belong on it. */
  ROWS("paper.rows"),
  /** Arguments: production, date of issue. */
  CARD("paper.card"),
  /** Arguments: production, revision, date of issue. */
  CARD_REVISION("paper.cardRevision"),
  /** Arguments: date of issue. */
  CARD_DATE("paper.cardDate"),
  HOT("paper.hot"),
  HOT_GROUND("paper.hotGround"),
  DAMAGED("paper.damaged"),
  CARRIER("paper.carrier"),
  QUESTION("question.confirm"),
  /** Arguments: production. */
  QUESTION_PRODUCTION("question.production"),
  /** Arguments: flight, date. */
  QUESTION_FLIGHT("question.flight"),
  /** Arguments: type, chemistry, Wh, how carried, pieces a person, pieces, travellers. */
  QUESTION_TYPE("question.type"),
  /** Arguments: type, chemistry, how carried, pieces a person, pieces, travellers. */
  QUESTION_TYPE_OPEN("question.typeOpen"),
  /** Arguments: types. */
  QUESTION_OUTPUTS("question.outputs"),
  QUESTION_LIMITS("question.limits"),
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
