package org.setpower.plan.travel;

import java.time.LocalDate;
import java.util.List;
import org.setpower.flight.FlightClass;
import org.setpower.plan.common.IssueRow;
import org.setpower.plan.common.NumberForm;
import org.setpower.plan.common.Result;
import org.setpower.plan.common.ResultTable;
import org.setpower.plan.common.Table;
import org.setpower.plan.finding.Finding;
import org.setpower.plan.finding.Verdict;

/** The results beside the tables to fill, the proposal, and what is summed up. */
public final class TravelResults {
  /** Whoever carries a battery less leaves room for another: all depends on the whole list. */
  static final List<String> LIST =
      List.of("project.*", "flights.*", "travellers.*", "answers.*", "batteries.*", "packing.*");

  static final ResultTable<ProjectResult> PROJECT = ResultTable.of(ProjectResult.class, LIST);
  static final ResultTable<FlightResult> FLIGHTS = ResultTable.of(FlightResult.class, LIST);
  static final ResultTable<TravellerResult> TRAVELLERS =
      ResultTable.of(TravellerResult.class, LIST);
  static final ResultTable<AnswerResult> ANSWERS = ResultTable.of(AnswerResult.class, LIST);
  static final ResultTable<BatteryResult> BATTERIES = ResultTable.of(BatteryResult.class, LIST);
  static final ResultTable<PackedResult> PACKING = ResultTable.of(PackedResult.class, LIST);
  static final ResultTable<LineRow> LINES = ResultTable.of(LineRow.class, LIST);
  static final ResultTable<RuleRow> RULES = ResultTable.of(RuleRow.class, LIST);
  static final ResultTable<Summary> SUMMARY = ResultTable.of(Summary.class, LIST);
  static final ResultTable<IssueRow> ISSUES = IssueRow.table(200, LIST.toArray(String[]::new));

  private TravelResults() {}

  /** Beside the settings. */
  @Table(key = "project", heading = "Project", rows = 1)
  public record ProjectResult(
      @Result(
              key = "verdict",
              heading = "Status",
              from = "project.reasons",
              rule = "The worst of the reasons.")
          Verdict verdict,
      @Result(
              key = "reasons",
              heading = "Reason",
              from = {},
              rule = "What is wrong with the settings, and with the list as a whole.")
          List<Finding> reasons) {}

  /** Beside a flight. */
  @Table(key = "flights", heading = "Flights", rows = 12)
  public record FlightResult(
      @Result(
              key = "verdict",
              heading = "Status",
              from = "flights.reasons",
              rule = "The worst of the reasons.")
          Verdict verdict,
      @Result(
              key = "reasons",
              heading = "Reason",
              from = {"flights.*", "travellers.*", "project.issued", "project.flightRules"},
              rule = "What is wrong with the flight, or with the rules held for its day.")
          List<Finding> reasons,
      @Result(
              key = "rulesUsed",
              heading = "Rules used",
              from = {"flights.rules", "project.flightRules"},
              rule = "Those typed, else those of Project; ICAO where none are.")
          TripRules rulesUsed,
      @Result(
              key = "edition",
              heading = "Edition",
              from = {"flights.rules", "flights.date", "project.flightRules"},
              rule = "The edition in force on the day, or the nearest held.")
          String edition,
      @Result(
              key = "until",
              heading = "Edition until",
              from = {"flights.rules", "flights.date", "project.flightRules"},
              rule = "Last day for which the edition answers.")
          LocalDate until,
      @Result(
              key = "maxSpares",
              heading = "Max. spares",
              unit = "pcs",
              from = {"flights.*", "project.issued", "project.flightRules"},
              rule = "The rules' figure or the carrier's, whichever is less.")
          Integer maxSpares,
      @Result(
              key = "maxOver",
              heading = "Max. over 100 Wh",
              unit = "pcs",
              from = {"flights.*", "project.issued", "project.flightRules"},
              rule =
                  "The rules' figure or the carrier's, whichever is less; each type also needs an answer.")
          Integer maxOver,
      @Result(
              key = "maxBanks",
              heading = "Max. power banks",
              unit = "pcs",
              from = {"flights.*", "project.issued", "project.flightRules"},
              rule = "The rules' figure or the carrier's, whichever is less.")
          Integer maxBanks,
      @Result(
              key = "maxDevices",
              heading = "Max. in equipment",
              unit = "pcs",
              from = {"flights.*", "project.issued", "project.flightRules"},
              rule = "The rules' figure.")
          Integer maxDevices) {}

  /** Beside a traveller. */
  @Table(key = "travellers", heading = "Travellers", rows = 30)
  public record TravellerResult(
      @Result(
              key = "verdict",
              heading = "Status",
              from = "travellers.reasons",
              rule = "The worst of the reasons.")
          Verdict verdict,
      @Result(
              key = "reasons",
              heading = "Reason",
              from = {},
              rule = "What is wrong with the row, and what is too much on any of the flights.")
          List<Finding> reasons,
      @Result(
              key = "pieces",
              heading = "Batteries",
              unit = "pcs",
              from = {},
              rule = "Pieces on all lines of the traveller.")
          Integer pieces,
      @Result(
              key = "wattHours",
              heading = "Energy",
              unit = "Wh",
              from = {},
              rule = "Wh on all lines of the traveller.")
          Double wattHours,
      @Result(
              key = "weight",
              heading = "Weight",
              form = NumberForm.TWO_DECIMALS,
              unit = "kg",
              from = {},
              rule = "Weight of these batteries, as far as it is known.")
          Double weight) {}

  /** Beside an answer. */
  @Table(key = "answers", heading = "Carriers' answers", rows = 40)
  public record AnswerResult(
      @Result(
              key = "verdict",
              heading = "Status",
              from = "answers.reasons",
              rule = "The worst of the reasons.")
          Verdict verdict,
      @Result(
              key = "reasons",
              heading = "Reason",
              from = {},
              rule = "Why the answer covers less than it seems to, or nothing.")
          List<Finding> reasons) {}

  /** Beside a battery. */
  @Table(key = "batteries", heading = "Batteries", rows = 120)
  public record BatteryResult(
      @Result(
              key = "verdict",
              heading = "Status",
              from = "batteries.reasons",
              rule = "The worst of the reasons.")
          Verdict verdict,
      @Result(
              key = "reasons",
              heading = "Reason",
              from = {},
              rule = "What is wrong with the battery, wherever it goes.")
          List<Finding> reasons,
      @Result(
              key = "usedEnergy",
              heading = "Energy used",
              unit = "Wh",
              from = {"batteries.energy", "batteries.volts", "batteries.ampHours"},
              rule = "The Wh of the label; without them V × Ah.")
          Double usedEnergy,
      @Result(
              key = "carriage",
              heading = "Carriage",
              from = {},
              rule = "The strictest class over all flights, before any answer.")
          FlightClass carriage,
      @Result(
              key = "maxCarried",
              heading = "Max. a traveller",
              unit = "pcs",
              from = {},
              rule = "The least of the limits of any traveller on any flight.")
          Integer maxCarried,
      @Result(
              key = "carriedPieces",
              heading = "Carried",
              unit = "pcs",
              from = {},
              rule = "Pieces on lines that are not stopped.")
          Integer carriedPieces,
      @Result(
              key = "heldPieces",
              heading = "Held back",
              unit = "pcs",
              from = {},
              rule = "Pieces that appear on no paper.")
          Integer heldPieces,
      @Result(
              key = "freightPieces",
              heading = "Air freight",
              unit = "pcs",
              from = {},
              rule = "Pieces left for air freight that are not stopped.")
          Integer freightPieces,
      @Result(
              key = "roadPieces",
              heading = "Road",
              unit = "pcs",
              from = {},
              rule = "Pieces left for the road that are not stopped.")
          Integer roadPieces,
      @Result(
              key = "stayPieces",
              heading = "Stays",
              unit = "pcs",
              from = {},
              rule = "Pieces left that stay.")
          Integer stayPieces) {}

  /** Beside a row of Packing. */
  @Table(key = "packing", heading = "Packing", rows = 240)
  public record PackedResult(
      @Result(
              key = "verdict",
              heading = "Status",
              from = "packing.reasons",
              rule = "The worst of the reasons.")
          Verdict verdict,
      @Result(
              key = "reasons",
              heading = "Reason",
              from = {},
              rule = "What is wrong with the row, and with what it decides.")
          List<Finding> reasons) {}

  /** Pieces of a battery with a traveller, or on another way. */
  @Table(key = "lines", heading = "Where each battery goes", rows = 240)
  public record LineRow(
      @Result(
              key = "verdict",
              heading = "Status",
              from = "lines.reasons",
              rule = "The worst of the reasons.")
          Verdict verdict,
      @Result(
              key = "traveller",
              heading = "Traveller or way",
              from = {},
              rule = "Who carries; else the way of its row in Batteries, else that of Project.")
          String traveller,
      @Result(
              key = "battery",
              heading = "Battery",
              from = {},
              rule = "What travels.")
          String battery,
      @Result(
              key = "pieces",
              heading = "Pieces",
              unit = "pcs",
              from = {},
              rule =
                  "As decided; else the most needed Wh, fewest over 100 Wh, smallest heaviest load to 0.5 kg, with the user, fewest changes; the rest on its way.")
          Integer pieces,
      @Result(
              key = "bag",
              heading = "Bag",
              from = {},
              rule = "As decided; cabin in a proposal.")
          Bag bag,
      @Result(
              key = "energy",
              heading = "Energy",
              form = NumberForm.ONE_DECIMAL,
              unit = "Wh",
              from = {},
              rule = "Wh of these pieces.")
          Double energy,
      @Result(
              key = "discharge",
              heading = "Discharge each by",
              form = NumberForm.ONE_DECIMAL,
              unit = "Wh",
              from = {},
              rule = "State of charge above the mandatory limit, in Wh.")
          Double discharge,
      @Result(
              key = "decided",
              heading = "Decided",
              from = {},
              rule = "yes where a row of Packing decides it, no for a proposal.")
          Boolean decided,
      @Result(
              key = "reasons",
              heading = "Reason",
              from = {},
              rule =
                  "What the rules, the answers and the counts say of it on each flight, or what stands against the other way.")
          List<Finding> reasons) {}

  /** A battery under the rules of a flight. */
  @Table(key = "rules", heading = "Rule check", rows = 400)
  public record RuleRow(
      @Result(
              key = "flight",
              heading = "Flight",
              from = {},
              rule = "Each flight.")
          String flight,
      @Result(
              key = "battery",
              heading = "Battery",
              from = {},
              rule = "Each battery.")
          String battery,
      @Result(
              key = "carriage",
              heading = "Carriage",
              from = {},
              rule = "Class under the edition, before any answer.")
          FlightClass carriage,
      @Result(
              key = "edition",
              heading = "Edition",
              from = {},
              rule = "Edition used.")
          String edition,
      @Result(
              key = "confirm",
              heading = "Confirm",
              from = {},
              rule = "yes where the limit is from memory.")
          Boolean confirm,
      @Result(
              key = "source",
              heading = "Source",
              from = {},
              rule = "Where the limits of the edition stand.")
          String source) {}

  /** What is counted. Counts pass the gate. */
  @Table(key = "summary", heading = "Summary", rows = 1)
  public record Summary(
      @Result(
              key = "verdict",
              heading = "Status",
              from = "issues.verdict",
              rule = "The worst of all issues.")
          Verdict verdict,
      @Result(
              key = "pieces",
              heading = "Batteries",
              unit = "pcs",
              from = {},
              rule = "Total of the pieces.")
          Integer pieces,
      @Result(
              key = "carried",
              heading = "Carried",
              unit = "pcs",
              from = {},
              rule = "Pieces carried by travellers.")
          Integer carried,
      @Result(
              key = "over",
              heading = "Over 100 Wh carried",
              unit = "pcs",
              from = {},
              rule = "Of these over 100 Wh.")
          Integer over,
      @Result(
              key = "freight",
              heading = "Air freight",
              unit = "pcs",
              from = {},
              rule = "Pieces by air freight.")
          Integer freight,
      @Result(
              key = "road",
              heading = "Road",
              unit = "pcs",
              from = {},
              rule = "Pieces by road.")
          Integer road,
      @Result(
              key = "stay",
              heading = "Stays",
              unit = "pcs",
              from = {},
              rule = "Pieces that stay.")
          Integer stay,
      @Result(
              key = "held",
              heading = "Held back",
              unit = "pcs",
              from = {},
              rule = "Pieces that appear on no paper.")
          Integer held,
      @Result(
              key = "fewestTravellers",
              heading = "Min. travellers by the rules",
              from = {},
              rule =
                  "The fewest that may carry all that the rules of any flight leave to travellers, answers apart.")
          Integer fewestTravellers,
      @Result(
              key = "heaviest",
              heading = "Heaviest load",
              form = NumberForm.TWO_DECIMALS,
              unit = "kg",
              from = {},
              rule = "Of all travellers, as far as weights are known.")
          Double heaviest,
      @Result(
              key = "toCharge",
              heading = "To charge there",
              unit = "Wh",
              from = {},
              rule =
                  "Wh that freight and road batteries lack of full on arrival; above a mandatory state of charge as if discharged to it.")
          Double toCharge,
      @Result(
              key = "chargeHours",
              heading = "Hours to charge",
              form = NumberForm.ONE_DECIMAL,
              unit = "h",
              from = {"summary.toCharge", "project.chargers"},
              rule = "These Wh by 85 % of the chargers' watts.")
          Double chargeHours,
      @Result(
              key = "handOverBy",
              heading = "Hand over by",
              from = {"summary.chargeHours", "project.needed", "project.transit"},
              rule = "The day needed less the days on the way and of charging, whole days.")
          LocalDate handOverBy) {}
}
