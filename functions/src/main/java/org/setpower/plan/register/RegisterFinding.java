package org.setpower.plan.register;

import org.setpower.plan.finding.FindingKey;
import org.setpower.plan.finding.Severity;

/** What can be wrong in a register. */
public enum RegisterFinding implements FindingKey {
  /** A condition that is no word of the list. */
  CONDITION_UNKNOWN("condition.unknown", Severity.DANGER),
  /** Arguments: condition. */
  DAMAGED("damaged", Severity.DANGER),
  /** Arguments: condition. */
  RETIRE_ONLY("retireOnly", Severity.DANGER),
  RECALLED("recalled", Severity.DANGER),
  /** Arguments: condition. */
  NEEDS_SERVICE("service", Severity.STOP),
  NOT_INSPECTED("notInspected", Severity.STOP),
  LOST("lost", Severity.STOP),
  /** It takes no charge. */
  NOT_CHARGING("notCharging", Severity.STOP),
  /** Fine without day and role. */
  INSPECTION_BLANK("inspection.blank", Severity.STOP),
  /** Fine with one of the two. Arguments: heading of the other. */
  INSPECTION_PART("inspection.part", Severity.STOP),
  /** Arguments: date, days an inspection is valid. */
  INSPECTION_OLD("inspection.old", Severity.STOP),
  /** Arguments: date of the return, date of the inspection. */
  INSPECTION_BEFORE_RETURN("inspection.return", Severity.STOP),
  /** In again without a booked return. Arguments: the day agreed for it. */
  RETURN_PART("inspection.backBy", Severity.STOP),
  /** Returned after its inspection and still out. Arguments: date of the return, who has it. */
  RETURNED_OUT("returnedOut", Severity.HOLD),
  /** Arguments: date of the return. */
  RETURNED_LATER("returnedLater", Severity.STOP),
  /** Arguments: condition, date or —. */
  INCIDENT_OPEN("incident.open", Severity.DANGER),
  /** A closing that does not count. Arguments: condition, date or —, what is missing. */
  INCIDENT_NOT_CLOSED("incident.notClosed", Severity.DANGER),
  /** Arguments: condition, date or —. */
  INCIDENT_SERVICE("incident.service", Severity.STOP),
  /** An incident whose row cannot be read. Arguments: row below the headings. */
  INCIDENT_UNCLEAR("incident.unclear", Severity.DANGER),
  /** An incident of this serial with another type. Arguments: condition or –, date, type. */
  INCIDENT_OTHER_TYPE("incident.otherType", Severity.DANGER),
  /** Arguments: first serial. */
  RECALL_BY_HAND("recallByHand", Severity.HOLD),
  /** A condition that is not fine and has no incident. Arguments: condition, next number. */
  ENTER_INCIDENT("enterIncident", Severity.STOP),
  /** A condition whose incident is closed. Arguments: condition, date, next number. */
  CONDITION_CLOSED("conditionClosed", Severity.STOP),
  /** Arguments: V, lowest V, highest V. */
  CELL_OUTSIDE("cellOutside", Severity.DANGER),
  /** Arguments: V between best and worst cell, limit V. */
  CELLS_APART("cellsApart", Severity.DANGER),
  /** Fewer cells than in tests of its type. Arguments: cells typed, cells of the type. */
  CELLS_MISSING("cellsMissing", Severity.CHECK),
  /** No cell measured while a test is valid, though its type has them. Arguments: days. */
  CELLS_NONE("cellsNone", Severity.CHECK),
  /** Arguments: V, state of charge. */
  CELLS_CHARGE("cellsCharge", Severity.HOLD),
  /** Arguments: V, limit V. */
  IMBALANCE("imbalance", Severity.STOP),
  /** Arguments: mΩ, median mΩ of the type, limit as a multiple. */
  RESISTANCE("resistance", Severity.STOP),
  /** Arguments: mΩ, median mΩ of the type. */
  RESISTANCE_LOW("resistanceLow", Severity.CHECK),
  /** Arguments: Wh, median Wh of the type. */
  RATED_UNLIKE("ratedUnlike", Severity.HOLD),
  /** Arguments: health, limit. */
  HEALTH_HIGH("healthHigh", Severity.CHECK),
  /** Two tests of one day that differ. Arguments: date, lower health. */
  SAME_DAY("sameDay", Severity.CHECK),
  /** Arguments: health, limit. */
  BELOW_RETIRE("belowRetire", Severity.STOP),
  /** Arguments: health, limit. */
  BELOW_WATCH("belowWatch", Severity.CHECK),
  /** Arguments: health. */
  BELOW_TYPE("belowType", Severity.CHECK),
  /** Arguments: health, limit. */
  BELOW_TYPE_AND_WATCH("belowTypeAndWatch", Severity.CHECK),
  /** Arguments: days a test is valid. */
  NOT_TESTED_HELD("notTested.held", Severity.HOLD),
  /** Arguments: days a test is valid. */
  NOT_TESTED("notTested", Severity.CHECK),
  /** Watched and held. Arguments: health, limit, days a test is valid. */
  WATCH_UNTESTED_HELD("watchUntested.held", Severity.HOLD),
  /** Arguments: health, limit, days a test is valid. */
  WATCH_UNTESTED("watchUntested", Severity.CHECK),
  /** A newer test that is not compared. Arguments: date, why. */
  NEWER_TEST("newerTest", Severity.CHECK),
  /** A newer test that is not compared and is low or not known. Arguments: date, why. */
  NEWER_TEST_LOW("newerTest.low", Severity.HOLD),
  /** A test without a date, which may be the newest. Arguments: why. */
  UNDATED_TEST("undatedTest", Severity.CHECK),
  /** A test without a date that is low or not known. Arguments: why. */
  UNDATED_TEST_LOW("undatedTest.low", Severity.HOLD),
  /** Arguments: row of the test below the headings. */
  TEST_UNCLEAR("test.unclear", Severity.STOP),
  /** A serial that came as a number. Arguments: serial, the same with zeros. */
  SERIAL_ZEROS("serialZeros", Severity.HOLD),
  /** Arguments: type. */
  TYPE_UNKNOWN("type.unknown", Severity.STOP),
  /** Arguments: type. */
  TYPE_TWICE("type.twice", Severity.STOP),
  /** Arguments: type. */
  TYPE_CHEMISTRY("type.chemistry", Severity.STOP),
  /** Arguments: type, chemistry. */
  TYPE_LIMITS("type.limits", Severity.STOP),
  /** Arguments: date. */
  RETIRED("retired", Severity.STOP),
  /** Arguments: date. */
  RETIRED_LATER("retired.later", Severity.STOP),
  /** One that is out and can hurt: nobody moves it. Arguments: who has it. */
  OUT_DANGER("awayDanger", Severity.DANGER),
  /** One that is out and may be moved. Arguments: who has it. */
  OUT_UNFIT("outUnfit", Severity.DANGER),
  /** Arguments: who has it, date. */
  OVERDUE("overdue", Severity.CHECK),
  /** Arguments: date. */
  WARRANTY("warranty", Severity.CHECK),
  NO_SUMMARY("noSummary", Severity.CHECK),
  /** Arguments: date. */
  INSPECTED_LATER("inspectedLater", Severity.STOP),
  /** Arguments: decision. */
  DECIDED("decided", Severity.STOP),
  DECIDED_QUARANTINE("decided.quarantine", Severity.DANGER),
  DECIDED_WATCH("decided.watch", Severity.CHECK),
  /** Arguments: days a test is valid. */
  DECIDED_WATCH_UNTESTED("decided.watchUntested", Severity.CHECK),
  /** Arguments: days a test is valid. */
  DECIDED_WATCH_UNTESTED_HELD("decided.watchUntested.held", Severity.HOLD),
  /** Arguments: decision, what is proposed. */
  DECISION_MILDER("decided.milder", Severity.CHECK),

  /** Arguments: serial. */
  TEST_SERIAL("test.serial", Severity.STOP),
  /** Arguments: date. */
  TEST_LATER("test.later", Severity.STOP),
  /** Arguments: heading. */
  TEST_INCOMPLETE("test.incomplete", Severity.CHECK),
  /** A row without a reading. */
  TEST_EMPTY("test.empty", Severity.CHECK),
  /** Arguments: serial. */
  TEST_NO_RATING("test.noRating", Severity.CHECK),
  /** Arguments: degrees, lowest, highest, unit. */
  TEST_TEMPERATURE("test.temperature", Severity.CHECK),
  /** In the other unit it would do. Arguments: degrees, unit, other unit. */
  TEST_UNIT("test.unit", Severity.CHECK),
  /** Arguments: h, limit h. */
  TEST_REST("test.rest", Severity.CHECK),
  /** Arguments: W, limit W. */
  TEST_LOAD("test.load", Severity.CHECK),
  /** Arguments: W, lowest W. */
  TEST_LOAD_LOW("test.loadLow", Severity.CHECK),
  /** Likely in Ω. Arguments: mΩ. */
  TEST_RESISTANCE("test.resistance", Severity.CHECK),
  /** Arguments: measured Wh, rated Wh. */
  TEST_OVER_RATING("test.overRating", Severity.CHECK),
  /** Likely another unit. Arguments: measured Wh, lowest share, rated Wh. */
  TEST_UNDER_RATING("test.underRating", Severity.CHECK),

  /** No whole number. Arguments: next number. */
  INCIDENT_NUMBER("incident.number", Severity.CHECK),
  /** Arguments: number, rows, next number. */
  INCIDENT_NUMBER_TWICE("incident.numberTwice", Severity.CHECK),
  /** Numbers before this row that no row has. Arguments: numbers. */
  INCIDENT_MISSING("incident.missing", Severity.CHECK),
  /** Arguments: condition, date or —. */
  INCIDENT_RETIRE_ONLY("incident.retireOnly", Severity.DANGER),
  INCIDENT_NOWHERE("incident.nowhere", Severity.STOP),
  /** Arguments: serial. */
  INCIDENT_SERIAL("incident.serial", Severity.STOP),
  /** Arguments: type. */
  INCIDENT_TYPE("incident.type", Severity.STOP),
  /** Arguments: first and last serial. */
  INCIDENT_RANGE("incident.range", Severity.STOP),
  /** Serials that are there, none of the type. Arguments: type. */
  INCIDENT_DISAGREES("incident.disagrees", Severity.STOP),
  /** A range or a type without a battery. */
  INCIDENT_NOBODY("incident.nobody", Severity.CHECK),
  /** Arguments: first and last serial. */
  INCIDENT_TURNED("incident.turned", Severity.CHECK),
  /** Arguments: batteries. */
  INCIDENT_BY_HAND("incident.byHand", Severity.CHECK),
  /** What happened is fine. */
  INCIDENT_FINE("incident.fine", Severity.STOP),
  /** Arguments: date. */
  INCIDENT_LATER("incident.later", Severity.STOP),
  /** Arguments: batteries. */
  INCIDENT_ROW_OPEN("incident.rowOpen", Severity.CHECK),
  /** Closed by somebody who may not. Arguments: who, or —. */
  CLOSING_ROLE("closing.role", Severity.STOP),
  /** Arguments: who closed it. */
  CLOSING_REPORTER("closing.reporter", Severity.STOP),
  /** Reported by is blank. */
  CLOSING_UNREPORTED("closing.unreported", Severity.STOP),
  CLOSING_REASON("closing.reason", Severity.STOP),
  /** Closed on no day. */
  CLOSING_DATE("closing.date", Severity.STOP),
  /** Arguments: closed on, date of the incident. */
  CLOSING_BEFORE("closing.before", Severity.STOP),
  /** Arguments: closed on. */
  CLOSING_LATER("closing.later", Severity.STOP),
  CLOSING_REFERENCE("closing.reference", Severity.STOP),
  /** Arguments: condition. */
  CLOSING_NEVER("closing.never", Severity.STOP),
  /** Arguments: serial. */
  CLOSING_INSPECTION("closing.inspection", Severity.STOP),
  /** Arguments: serial, who inspected it. */
  CLOSING_INSPECTOR("closing.inspector", Severity.STOP),
  /** Arguments: serial. */
  CLOSING_TEST("closing.test", Severity.STOP),
  /** Tested after it was closed. Arguments: serial, closed on. */
  CLOSING_TEST_LATER("closing.testLater", Severity.STOP),
  /** Arguments: serial, cell voltages of the test, those it must have. */
  CLOSING_CELLS("closing.cells", Severity.STOP),

  /** Arguments: V typed, V used. */
  LIMIT_MILD("limit.mild", Severity.CHECK),
  LIMIT_CROSSED("limit.crossed", Severity.STOP),
  WATCH_BELOW_RETIRE("project.watch", Severity.CHECK),
  TEST_TEMPERATURES_CROSSED("project.temperatures", Severity.STOP),
  /** Arguments: required, fit, those that can come back, to buy. */
  TYPE_SHORT("type.short", Severity.CHECK),
  /** Arguments: required, fit, those that can come back. */
  TYPE_AWAITS("type.awaits", Severity.CHECK),
  SLIP_JOB("slip.job", Severity.CHECK),
  SLIP_NUMBER("slip.number", Severity.CHECK),
  /** Arguments: date. */
  SLIP_BACK_PAST("slip.back", Severity.CHECK),
  /** Numbers of Incidents without a row. Arguments: how many. */
  SLIP_INCIDENTS("slip.incidents", Severity.CHECK),
  /** Arguments: serial. */
  SLIP_SERIAL("slip.serial", Severity.STOP),
  /** Arguments: who has it. */
  SLIP_OUT("slip.out", Severity.STOP),
  /** Arguments: rows. */
  SLIP_TWICE("slip.twice", Severity.CHECK);

  private final String key;
  private final Severity severity;

  RegisterFinding(String key, Severity severity) {
    this.key = "register." + key;
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
