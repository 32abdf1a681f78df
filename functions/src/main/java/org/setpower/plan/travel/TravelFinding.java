package org.setpower.plan.travel;

import org.setpower.plan.finding.FindingKey;
import org.setpower.plan.finding.Severity;

/** What can be wrong in a battery travel list. */
public enum TravelFinding implements FindingKey {
  /** Nothing says by which rules anybody flies. */
  NO_FLIGHTS("noFlights", Severity.STOP),
  NO_TRAVELLERS("noTravellers", Severity.STOP),
  NOT_PROVEN("notProven", Severity.CHECK),

  /** Arguments: edition, its last day. */
  EDITION_PAST("edition.past", Severity.STOP),
  /** Arguments: edition, its last day, reference. */
  EDITION_WRITTEN("edition.written", Severity.CHECK),
  /** Arguments: edition, its first day. */
  EDITION_BEFORE("edition.before", Severity.STOP),
  /** Arguments: date of issue. */
  FLIGHT_PASSED("flight.passed", Severity.CHECK),
  /** Nobody is on it. */
  FLIGHT_EMPTY("flight.empty", Severity.CHECK),
  WRITTEN_UNREFERENCED("written.unreferenced", Severity.CHECK),
  /** Arguments: spares, over 100 Wh, power banks as written; the same as used. */
  WRITTEN_MORE("written.more", Severity.CHECK),

  /** Arguments: two flights, their day. */
  TRAVELLER_TWICE("traveller.twice", Severity.STOP),
  /** Arguments: flight, its From. */
  TRAVELLER_BROKEN("traveller.broken", Severity.CHECK),
  /** Arguments: flight, its date, the flight named before it, that one's date. */
  TRAVELLER_ORDER("traveller.order", Severity.CHECK),
  /** Arguments: flight, its date, its From, where the trip begins. */
  TRAVELLER_START("traveller.start", Severity.CHECK),
  /** Arguments: the first flight by date, its date. */
  ORDER_UNKNOWN("orderUnknown", Severity.CHECK),
  /** Arguments: flights, pieces, these by battery. */
  TRAVELLER_NO_RETURN("traveller.noReturn", Severity.CHECK),
  /** Arguments: pieces. */
  NO_RETURN("noReturn", Severity.CHECK),
  /** Arguments: pieces. */
  OWN_LARGE("ownLarge", Severity.CHECK),
  /** Arguments: flight. */
  TRAVELLER_FLIGHT("traveller.flight", Severity.STOP),
  /** Arguments: pieces, max., flight. */
  OVER_SPARES("over.spares", Severity.STOP),
  /** Arguments: pieces, max., flight. */
  OVER_LARGE("over.large", Severity.STOP),
  /** Arguments: pieces, max., flight. */
  OVER_BANKS("over.banks", Severity.STOP),
  /** Arguments: pieces, max., flight. */
  OVER_DEVICES("over.devices", Severity.STOP),
  /** Arguments: pieces, max., flight. */
  OVER_LEAD("over.lead", Severity.STOP),
  /** Arguments: pieces, max., flight. */
  OVER_ANSWER("over.answer", Severity.STOP),
  /** Arguments: kg, max. kg. */
  OVER_WEIGHT("over.weight", Severity.CHECK),

  /** Arguments: flight. */
  ANSWER_FLIGHT("answer.flight", Severity.STOP),
  /** Arguments: flight, its operating carrier. */
  ANSWER_CARRIER("answer.carrier", Severity.STOP),
  /** Arguments: flight, its date. */
  ANSWER_DATE("answer.date", Severity.STOP),
  /** Arguments: date. */
  ANSWER_DATE2("answer.date2", Severity.STOP),
  /** Arguments: traveller. */
  ANSWER_TRAVELLER("answer.traveller", Severity.STOP),
  /** Arguments: type. */
  ANSWER_TYPE("answer.type", Severity.CHECK),
  /** Arguments: Wh of the answer, Wh of the type. */
  ANSWER_ENERGY("answer.energy", Severity.CHECK),
  /** Arguments: day of the answer. */
  ANSWER_LATE("answer.late", Severity.STOP),
  /** Arguments: Wh of the answer, Wh of the type, the limit between them. */
  ANSWER_ACROSS("answer.across", Severity.CHECK),
  ANSWER_UNDATED("answer.undated", Severity.CHECK),
  /** Arguments: day of the answer. */
  ANSWER_OLD("answer.old", Severity.CHECK),
  ANSWER_REFUSED("answer.refused", Severity.CHECK),
  /** Arguments: pieces of the answer, flight, pieces that count. */
  ANSWER_MORE("answer.more", Severity.CHECK),

  /** Arguments: condition. */
  DAMAGED("damaged", Severity.DANGER),
  RECALLED("recalled", Severity.DANGER),
  LOST("lost", Severity.STOP),
  /** Arguments: condition. */
  SERVICE("service", Severity.STOP),
  /** Arguments: state in the register. */
  REGISTER_HELD("register.held", Severity.DANGER),
  REGISTER_NOT_TESTED("register.notTested", Severity.CHECK),
  /** Arguments: pieces. */
  SERIAL_QUANTITY("serialQuantity", Severity.STOP),
  NO_ENERGY("noEnergy", Severity.STOP),
  ZERO_ENERGY("zeroEnergy", Severity.STOP),
  /** Arguments: Wh, V, Ah. */
  ENERGY_WORKED_OUT("energy.workedOut", Severity.CHECK),
  /** Arguments: Wh on the label, Wh from V and Ah, tolerance. */
  ENERGY_DIFFERS("energy.differs", Severity.CHECK),
  /** Arguments: Wh on the label, V × Ah, the limit between them, tolerance. */
  ENERGY_ACROSS("energy.across", Severity.STOP),
  /** Arguments: Wh, kg, Wh a kg, the most of its chemistry. */
  ENERGY_WEIGHT("energyWeight", Severity.CHECK),
  /** Arguments: Wh, kg, Wh a kg, least Wh a kg of such batteries. */
  ENERGY_LOW("energyLow", Severity.CHECK),
  /** Arguments: Wh, kg, Wh a kg, least and most Wh a kg of any battery. */
  ENERGY_IMPOSSIBLE("energyImpossible", Severity.STOP),
  /** Arguments: Wh, ten times as many. */
  ENERGY_UNCONFIRMED("energyUnconfirmed", Severity.CHECK),
  NO_LITHIUM("noLithium", Severity.STOP),
  NO_VOLTS("noVolts", Severity.STOP),
  SPILLABLE("spillable", Severity.STOP),
  OUTPUTS("outputs", Severity.CHECK),
  NAMED_BANK("namedBank", Severity.CHECK),
  TERMINALS_OPEN("terminals", Severity.STOP),
  TERMINALS_BLANK("terminalsBlank", Severity.CHECK),
  UN383_NO("un383.no", Severity.STOP),
  UN383_BLANK("un383.blank", Severity.CHECK),
  /** Arguments: user. */
  USER_UNKNOWN("user", Severity.CHECK),
  NO_WEIGHT("noWeight", Severity.CHECK),
  /** Arguments: Wh up to which it is baggage, its way. */
  NOT_BAGGAGE("notBaggage", Severity.CHECK),
  /** Arguments: its way. */
  CARGO_ONLY("cargoOnly", Severity.CHECK),
  /** Arguments: flights. */
  RULE_NICKEL("rule.nickel", Severity.CHECK),
  /** Arguments: flights. */
  RULE_LEAD("rule.lead", Severity.CHECK),
  /** Arguments: flights. */
  RULE_BANKS_OVER("rule.banksOver", Severity.CHECK),
  /** Arguments: flights. */
  RULE_BANKS_APART("rule.banksApart", Severity.CHECK),
  /** Arguments: flights. */
  RULE_SODIUM("rule.sodium", Severity.CHECK),
  /** Arguments: flights. */
  UNANSWERED("unanswered", Severity.CHECK),
  /** Arguments: flights. */
  REFUSED("refused", Severity.CHECK),
  /** Arguments: pieces. */
  HELD_BACK("heldBack", Severity.CHECK),
  /** Arguments: row of Packing. */
  PACKING_UNCLEAR("packing.unclear", Severity.STOP),

  /** Arguments: battery. */
  PACKED_BATTERY("packed.battery", Severity.STOP),
  /** Arguments: traveller. */
  PACKED_TRAVELLER("packed.traveller", Severity.STOP),
  /** Arguments: way. */
  PACKED_WAY("packed.way", Severity.STOP),
  /** Arguments: pieces decided, pieces there. */
  PACKED_TOO_MANY("packed.tooMany", Severity.STOP),
  /** Arguments: pieces. */
  PACKED_PART("packed.part", Severity.STOP),
  PACKED_HOLD("packed.hold", Severity.DANGER),

  /** Arguments: flight. */
  LINE_FLIGHT("line.flight", Severity.STOP),
  /** Arguments: traveller. */
  LINE_TRAVELLER("line.traveller", Severity.STOP),
  /** Arguments: battery. */
  LINE_BATTERY("line.battery", Severity.STOP),
  /** Arguments: way. */
  LINE_GOES_BY("line.goesBy", Severity.STOP),
  /** Arguments: flight, class. */
  LINE_CLASS("line.class", Severity.STOP),
  /** Arguments: flight, carrier. */
  LINE_UNANSWERED("line.unanswered", Severity.STOP),
  /** Arguments: row of the answers. */
  LINE_ANSWER_UNCLEAR("line.answerUnclear", Severity.STOP),

  FREIGHT_NO_DATE("freight.noDate", Severity.STOP),
  /** Arguments: last day. */
  FREIGHT_PAST("freight.past", Severity.STOP),
  /** Arguments: chemistry. */
  FREIGHT_NO_RULE("freight.noRule", Severity.STOP),
  FREIGHT_PASSENGER("freight.passenger", Severity.STOP),
  /** Arguments: state of charge, least that is believed. */
  FREIGHT_CHARGE_LOW("freight.chargeLow", Severity.STOP),
  /** Arguments: state of charge, max., Wh to take out of each. */
  FREIGHT_CHARGE("freight.charge", Severity.STOP),
  /** Arguments: pieces stated, pieces shipped, state of charge, pieces left, Wh out of each. */
  FREIGHT_CHARGE_PIECES("freight.chargePieces", Severity.STOP),
  /** Arguments: pieces stated, pieces there. */
  FREIGHT_CHARGE_MANY("freight.chargeMany", Severity.STOP),
  /** Arguments: max., Wh to take out of each if full. */
  FREIGHT_CHARGE_BLANK("freight.chargeBlank", Severity.STOP),
  /** Arguments: max., Wh to take out of each if full. */
  FREIGHT_BACK_BLANK("freight.backBlank", Severity.STOP),
  /** Arguments: day of the way back, handed over on. */
  BACK_EARLY("backEarly", Severity.STOP),
  /** Arguments: pieces. */
  NO_WAY_BACK("noWayBack", Severity.CHECK),
  /** Arguments: recommended state of charge. */
  FREIGHT_RECOMMENDED("freight.recommended", Severity.CHECK),
  FREIGHT_NO_CONTACT("freight.noContact", Severity.STOP),
  FREIGHT_NO_WEIGHT("freight.noWeight", Severity.STOP),
  FREIGHT_NO_SUMMARY("freight.noSummary", Severity.STOP),
  FREIGHT_NO_CELLS("freight.noCells", Severity.CHECK),
  /** Arguments: kg of one, max. kg a package. */
  FREIGHT_TOO_HEAVY("freight.tooHeavy", Severity.STOP),
  /** Arguments: packing instruction, parts of it. */
  FREIGHT_CONFIRM("freight.confirm", Severity.CHECK),
  ROAD_CONFIRM("road.confirm", Severity.CHECK),
  FREIGHT_NO_SETS("freight.noSets", Severity.STOP),
  /** Arguments: pieces, max. pieces. */
  FREIGHT_SETS("freight.sets", Severity.STOP),
  /** Arguments: handed over on, hand over by. */
  HANDED_OVER_LATE("handedOverLate", Severity.CHECK),
  /** Arguments: handed over on, date of issue. */
  HAND_OVER_BEFORE("handOverBefore", Severity.CHECK),
  /** Arguments: handed over on, day of the last flight. */
  HAND_OVER_AFTER("handOverAfter", Severity.CHECK),
  /** Arguments: hand over by, date of issue. */
  HAND_OVER_PASSED("handOverPassed", Severity.CHECK),
  /** Arguments: kg, max. kg. */
  ROAD_OVER("road.over", Severity.STOP),
  /** Arguments: kg, max. kg, reference. */
  ROAD_OVER_ANSWERED("road.overAnswered", Severity.CHECK),
  ROAD_REGULATED("road.regulated", Severity.STOP),
  /** Arguments: reference. */
  ROAD_REGULATED_ANSWERED("road.regulatedAnswered", Severity.CHECK),
  /** Arguments: last day. */
  ROAD_PAST("road.past", Severity.STOP),
  /** Arguments: last day, reference. */
  ROAD_PAST_ANSWERED("road.pastAnswered", Severity.CHECK),
  /** Arguments: chemistry. */
  ROAD_NO_RULE("road.noRule", Severity.STOP);

  private final String key;
  private final Severity severity;

  TravelFinding(String key, Severity severity) {
    this.key = "travel." + key;
    this.severity = severity;
  }

  @Override
  public String key() {
    return key;
  }

  @Override
  public Severity severity() {
    return severity;
  }
}
