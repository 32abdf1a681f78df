package org.setpower.plan.register;

import java.time.LocalDate;
import java.util.List;
import org.setpower.plan.common.IssueRow;
import org.setpower.plan.common.NumberForm;
import org.setpower.plan.common.Result;
import org.setpower.plan.common.ResultTable;
import org.setpower.plan.common.Table;
import org.setpower.plan.finding.Finding;
import org.setpower.plan.finding.Verdict;

/** The tables of results of the register; a result column is a component. */
public final class RegisterResults {
  static final ResultTable<ProjectResult> PROJECT = ResultTable.of(ProjectResult.class);
  static final ResultTable<TypeResult> TYPES = ResultTable.of(TypeResult.class);
  static final ResultTable<LimitResult> LIMITS = ResultTable.of(LimitResult.class);
  static final ResultTable<BatteryResult> BATTERIES = ResultTable.of(BatteryResult.class);
  static final ResultTable<TestResult> TESTS = ResultTable.of(TestResult.class);
  static final ResultTable<IncidentResult> INCIDENTS = ResultTable.of(IncidentResult.class);
  static final ResultTable<ActionRow> ACTIONS = ResultTable.of(ActionRow.class);
  static final ResultTable<StocktakeRow> STOCKTAKE = ResultTable.of(StocktakeRow.class);
  static final ResultTable<CheckoutResult> CHECKOUT = ResultTable.of(CheckoutResult.class);
  static final ResultTable<Slip> SLIP = ResultTable.of(Slip.class);
  static final ResultTable<Handover> HANDOVER = ResultTable.of(Handover.class);
  static final ResultTable<Summary> SUMMARY = ResultTable.of(Summary.class);
  static final ResultTable<IssueRow> ISSUES =
      IssueRow.table(
          60,
          "project.reasons",
          "handover.reasons",
          "types.reasons",
          "limits.reasons",
          "batteries.reasons",
          "tests.reasons",
          "incidents.reasons",
          "checkout.reasons",
          "types.type",
          "limits.chemistry",
          "batteries.serial",
          "tests.serial",
          "incidents.serial",
          "incidents.type",
          "checkout.serial");

  private RegisterResults() {}

  /** Beside the settings. */
  @Table(key = "project", heading = "Project", rows = 1)
  public record ProjectResult(
      @Result(
              key = "verdict",
              heading = "Status of the entries here",
              from = "project.reasons",
              rule = "The worst of the reasons.")
          Verdict verdict,
      @Result(
              key = "reasons",
              heading = "Reason",
              from = "project.*",
              rule = "What is wrong with the settings; an unreadable one stops every battery.")
          List<Finding> reasons) {}

  /** Beside a type. */
  @Table(key = "types", heading = "Types", rows = 40)
  public record TypeResult(
      @Result(
              key = "verdict",
              heading = "Status",
              from = "types.reasons",
              rule = "The worst of the reasons.")
          Verdict verdict,
      @Result(
              key = "reasons",
              heading = "Reason",
              from = {"types.*", "types.fit"},
              rule = "What is wrong with the row, and whether fewer are fit than are required.")
          List<Finding> reasons,
      @Result(
              key = "batteries",
              heading = "Batteries",
              unit = "pcs",
              from = {
                "types.type",
                "batteries.type",
                "batteries.retired",
                "batteries.condition",
                "project.asOf"
              },
              rule = "Rows of Batteries of the type that are neither retired nor lost.")
          Integer batteries,
      @Result(
              key = "out",
              heading = "Out",
              unit = "pcs",
              from = {
                "types.type",
                "batteries.type",
                "batteries.outTo",
                "batteries.retired",
                "batteries.condition",
                "project.asOf"
              },
              rule = "Of these with Out to filled in.")
          Integer out,
      @Result(
              key = "fit",
              heading = "Fit to go out",
              unit = "pcs",
              from = {"types.type", "batteries.type", "batteries.fit"},
              rule = "Batteries of the type that are fit to go out, out ones too.")
          Integer fit,
      @Result(
              key = "fitIn",
              heading = "Fit and in the house",
              unit = "pcs",
              from = {"types.type", "batteries.type", "batteries.fit", "batteries.outTo"},
              rule = "Batteries of the type that are fit to go out and not out.")
          Integer fitIn,
      @Result(
              key = "service",
              heading = "In service",
              unit = "pcs",
              from = {"types.type", "batteries.type", "batteries.status"},
              rule = "Batteries of the type whose status is service.")
          Integer service,
      @Result(
              key = "quarantine",
              heading = "In quarantine",
              unit = "pcs",
              from = {"types.type", "batteries.type", "batteries.status"},
              rule = "Batteries of the type whose status is quarantine.")
          Integer quarantine,
      @Result(
              key = "meanHealth",
              heading = "Mean health",
              form = NumberForm.SHARE,
              from = {
                "types.type",
                "batteries.type",
                "batteries.health",
                "batteries.retired",
                "batteries.condition",
                "project.asOf"
              },
              rule = "Mean of the health of its batteries.")
          Double meanHealth,
      @Result(
              key = "lowestHealth",
              heading = "Lowest health",
              form = NumberForm.SHARE,
              from = {
                "types.type",
                "batteries.type",
                "batteries.health",
                "batteries.retired",
                "batteries.condition",
                "project.asOf"
              },
              rule = "Lowest health of its batteries.")
          Double lowestHealth,
      @Result(
              key = "toBuy",
              heading = "To buy",
              unit = "pcs",
              from = {
                "types.required",
                "types.fit",
                "types.type",
                "batteries.type",
                "batteries.status"
              },
              rule =
                  "Required less fit, less what can come back: in service, not tested, not"
                      + " inspected, unclear.")
          Integer toBuy) {}

  /** Beside the limits of a chemistry. */
  @Table(key = "limits", heading = "Limits", rows = 8)
  public record LimitResult(
      @Result(
              key = "verdict",
              heading = "Status",
              from = "limits.reasons",
              rule = "The worst of the reasons.")
          Verdict verdict,
      @Result(
              key = "reasons",
              heading = "Reason",
              from = "limits.*",
              rule = "What is wrong with the row.")
          List<Finding> reasons,
      @Result(
              key = "usedMin",
              heading = "Min. cell voltage used",
              unit = "V",
              form = NumberForm.TWO_DECIMALS,
              from = {"limits.chemistry", "limits.minVolts", "limits.verdict"},
              rule = "The higher of the house's limit and the table of facts.")
          Double usedMin,
      @Result(
              key = "usedMax",
              heading = "Max. cell voltage used",
              unit = "V",
              form = NumberForm.TWO_DECIMALS,
              from = {"limits.chemistry", "limits.maxVolts", "limits.verdict"},
              rule = "The lower of the house's limit and the table of facts.")
          Double usedMax) {}

  /** Beside a battery. */
  @Table(key = "batteries", heading = "Batteries", rows = 300)
  public record BatteryResult(
      @Result(
              key = "verdict",
              heading = "Status",
              from = "batteries.reasons",
              rule = "The worst of the reasons.")
          Verdict verdict,
      @Result(
              key = "status",
              heading = "State",
              from = {
                "batteries.proposed",
                "batteries.decided",
                "batteries.retired",
                "batteries.reasons"
              },
              rule = "What is proposed, or a stricter decision.")
          Status status,
      @Result(
              key = "proposed",
              heading = "Proposed",
              from = {"project.*", "types.*", "limits.*", "batteries.*", "tests.*", "incidents.*"},
              rule =
                  "Quarantine by condition, incident, recall, cell voltage, cells far apart or a"
                      + " serial twice; else"
                      + " retire by health; else service; else not inspected, not tested, watch or"
                      + " keep.")
          Status proposed,
      @Result(
              key = "fit",
              heading = "Fit to go out",
              from = "batteries.reasons",
              rule = "Yes if no reason is a stop or keeps it back by the house's rule.")
          Boolean fit,
      @Result(
              key = "reasons",
              heading = "Reason",
              from = {"project.*", "types.*", "limits.*", "batteries.*", "tests.*", "incidents.*"},
              rule = "What is wrong, the worst first.")
          List<Finding> reasons,
      @Result(
              key = "action",
              heading = "Action",
              from = {"batteries.status", "batteries.reasons", "batteries.outTo"},
              rule = "The most urgent thing to do.")
          Action action,
      @Result(
              key = "tested",
              heading = "Last compared test",
              from = {"project.*", "batteries.serial", "batteries.energy", "tests.*"},
              rule = "The newest test that can be compared.")
          LocalDate tested,
      @Result(
              key = "due",
              heading = "Test due",
              from = {"batteries.tested", "project.validDays"},
              rule = "Last compared test and the days it is valid.")
          LocalDate due,
      @Result(
              key = "health",
              heading = "Health",
              form = NumberForm.SHARE,
              from = {"batteries.tested", "batteries.serial", "tests.measured", "batteries.energy"},
              rule = "FLEET.HEALTH of that test; the lower of two on one day.")
          Double health,
      @Result(
              key = "cyclesLeft",
              heading = "Cycles left, min.",
              from = {
                "batteries.cycles",
                "batteries.health",
                "project.retireBelow",
                "batteries.type",
                "types.*"
              },
              rule =
                  "FLEET.CYCLESLEFT for Li-ion; blank above a health of 97 % and for other"
                      + " chemistries.")
          Double cyclesLeft,
      @Result(
              key = "imbalance",
              heading = "Cell imbalance",
              unit = "V",
              form = NumberForm.THREE_DECIMALS,
              from = {
                "batteries.serial",
                "batteries.type",
                "project.asOf",
                "tests.serial",
                "tests.date",
                "tests.cell*",
                "incidents.*"
              },
              rule =
                  "FLEET.IMBALANCE of the newest test with cell voltages, later than any damage.")
          Double imbalance,
      @Result(
              key = "resistance",
              heading = "Resistance",
              unit = "mΩ",
              form = NumberForm.ONE_DECIMAL,
              from = {
                "batteries.serial",
                "batteries.type",
                "project.asOf",
                "tests.serial",
                "tests.date",
                "tests.resistance",
                "incidents.*"
              },
              rule =
                  "Of the newest test with a resistance, later than any damage; the higher of two"
                      + " on one day.")
          Double resistance,
      @Result(
              key = "timesType",
              heading = "Resistance against its type",
              form = NumberForm.TWO_DECIMALS,
              from = {"batteries.resistance", "batteries.compared", "tests.*"},
              rule =
                  "Resistance over the median of its type, at like temperature (5 K) and state of"
                      + " charge (10 %).")
          Double timesType,
      @Result(
              key = "compared",
              heading = "Compared with its type",
              from = {
                "project.*",
                "types.*",
                "limits.*",
                "batteries.type",
                "batteries.serial",
                "batteries.energy",
                "tests.*",
                "incidents.*"
              },
              rule = "No with fewer than five like tests of its type.")
          Boolean compared) {}

  /** Beside a test. */
  @Table(key = "tests", heading = "Tests", rows = 1000)
  public record TestResult(
      @Result(
              key = "verdict",
              heading = "Status",
              from = "tests.reasons",
              rule = "The worst of the reasons.")
          Verdict verdict,
      @Result(
              key = "reasons",
              heading = "Reason",
              from = {"project.*", "tests.*", "batteries.serial", "batteries.energy"},
              rule = "What is wrong with the row.")
          List<Finding> reasons,
      @Result(
              key = "compared",
              heading = "Compared",
              from = "tests.reasons",
              rule = "Yes if nothing is wrong with the row.")
          Boolean compared,
      @Result(
              key = "health",
              heading = "Health",
              form = NumberForm.SHARE,
              from = {
                "tests.compared",
                "tests.serial",
                "tests.measured",
                "batteries.serial",
                "batteries.energy"
              },
              rule = "FLEET.HEALTH of measured and rated energy.")
          Double health) {}

  /** Beside an incident. */
  @Table(key = "incidents", heading = "Incidents", rows = 100)
  public record IncidentResult(
      @Result(
              key = "verdict",
              heading = "Status",
              from = "incidents.reasons",
              rule = "The worst of the reasons.")
          Verdict verdict,
      @Result(
              key = "reasons",
              heading = "Reason",
              from = {"project.*", "incidents.*", "batteries.*", "types.*", "limits.*", "tests.*"},
              rule = "What is wrong with the row, and what is missing for closing it.")
          List<Finding> reasons,
      @Result(
              key = "batteries",
              heading = "Batteries",
              unit = "pcs",
              from = {"incidents.*", "batteries.serial", "batteries.type"},
              rule = "Batteries that the incident is about.")
          Integer batteries,
      @Result(
              key = "open",
              heading = "Open",
              unit = "pcs",
              from = {"project.*", "incidents.*", "batteries.*", "types.*", "limits.*", "tests.*"},
              rule = "Of these, those that are neither released nor retired.")
          Integer open) {}

  /** A paper: what is to be done, the worst first. */
  @Table(key = "actions", heading = "Actions", rows = 300)
  public record ActionRow(
      @Result(
              key = "serial",
              heading = "Serial",
              from = {"batteries.serial", "batteries.action"},
              rule = "A battery with something to do.")
          String serial,
      @Result(
              key = "type",
              heading = "Type",
              from = {"batteries.type", "batteries.action"},
              rule = "From Batteries.")
          String type,
      @Result(
              key = "place",
              heading = "Place",
              from = {"batteries.place", "batteries.action"},
              rule = "From Batteries.")
          String place,
      @Result(
              key = "outTo",
              heading = "Out to",
              from = {"batteries.outTo", "batteries.action"},
              rule = "From Batteries.")
          String outTo,
      @Result(
              key = "action",
              heading = "Action",
              from = "batteries.action",
              rule = "From Batteries.")
          Action action,
      @Result(
              key = "verdict",
              heading = "Status",
              from = {"batteries.verdict", "batteries.action"},
              rule = "From Batteries.")
          Verdict verdict,
      @Result(
              key = "reasons",
              heading = "Reason",
              from = {"batteries.reasons", "batteries.action"},
              rule = "From Batteries.")
          List<Finding> reasons) {}

  /** A paper: for the walk along the shelves. */
  @Table(key = "stocktake", heading = "Stocktake list", rows = 300)
  public record StocktakeRow(
      @Result(
              key = "place",
              heading = "Place",
              from = {
                "batteries.place",
                "batteries.serial",
                "batteries.retired",
                "batteries.condition",
                "project.asOf",
                "batteries.outTo"
              },
              rule = "From Batteries.")
          String place,
      @Result(
              key = "outTo",
              heading = "Out to",
              from = {
                "batteries.place",
                "batteries.serial",
                "batteries.outTo",
                "batteries.retired",
                "batteries.condition",
                "project.asOf"
              },
              rule = "From Batteries.")
          String outTo,
      @Result(
              key = "serial",
              heading = "Serial",
              from = {
                "batteries.place",
                "batteries.serial",
                "batteries.retired",
                "batteries.condition",
                "project.asOf",
                "batteries.outTo"
              },
              rule = "By place; what is out comes last.")
          String serial,
      @Result(
              key = "type",
              heading = "Type",
              from = {
                "batteries.place",
                "batteries.serial",
                "batteries.type",
                "batteries.retired",
                "batteries.condition",
                "project.asOf",
                "batteries.outTo"
              },
              rule = "From Batteries.")
          String type,
      @Result(
              key = "status",
              heading = "State",
              translated = true,
              from = {
                "batteries.place",
                "batteries.serial",
                "batteries.status",
                "batteries.retired",
                "batteries.condition",
                "project.asOf",
                "batteries.outTo"
              },
              rule = "From Batteries.")
          Status status,
      @Result(
              key = "verdict",
              heading = "Status",
              from = {
                "batteries.place",
                "batteries.serial",
                "batteries.verdict",
                "batteries.retired",
                "batteries.condition",
                "project.asOf",
                "batteries.outTo"
              },
              rule = "From Batteries.")
          Verdict verdict,
      @Result(
              key = "fit",
              heading = "Fit to go out",
              translated = true,
              from = {
                "batteries.place",
                "batteries.serial",
                "batteries.fit",
                "batteries.retired",
                "batteries.condition",
                "project.asOf",
                "batteries.outTo"
              },
              rule = "From Batteries.")
          Boolean fit,
      @Result(
              key = "backBy",
              heading = "Back by",
              from = {
                "batteries.place",
                "batteries.serial",
                "batteries.backBy",
                "batteries.retired",
                "batteries.condition",
                "project.asOf",
                "batteries.outTo"
              },
              rule = "From Batteries.")
          LocalDate backBy,
      @Result(
              key = "counted",
              heading = "Counted",
              from = {
                "batteries.place",
                "batteries.serial",
                "batteries.retired",
                "batteries.condition",
                "project.asOf",
                "batteries.outTo"
              },
              rule = "A box to tick on paper.")
          String counted) {}

  /** Beside a serial that is to go out. */
  @Table(key = "checkout", heading = "Check-out", rows = 60)
  public record CheckoutResult(
      @Result(
              key = "verdict",
              heading = "Status",
              from = "checkout.reasons",
              rule = "The worst of the reasons.")
          Verdict verdict,
      @Result(
              key = "reasons",
              heading = "Reason",
              from = {
                "checkout.serial",
                "project.job",
                "batteries.serial",
                "batteries.reasons",
                "batteries.outTo",
                "incidents.number"
              },
              rule =
                  "Of the battery; a stop if Batteries has no such serial, or if it is out to"
                      + " another job; a check if numbers of Incidents are missing.")
          List<Finding> reasons,
      @Result(
              key = "mayGoOut",
              heading = "May go out",
              from = {
                "checkout.serial",
                "project.job",
                "batteries.serial",
                "batteries.fit",
                "batteries.outTo"
              },
              rule = "Yes only if the battery is fit and not out to another job.")
          Boolean mayGoOut) {}

  /** A paper: goes with the batteries of a job, each serial once, and only what may go out. */
  @Table(key = "slip", heading = "Issue list", rows = 60)
  public record Slip(
      @Result(
              key = "serial",
              heading = "Serial",
              from = {"checkout.serial", "checkout.mayGoOut"},
              rule = "Of Check-out, where it may go out.")
          String serial,
      @Result(
              key = "type",
              heading = "Type",
              from = {"slip.serial", "batteries.type"},
              rule = "From Batteries.")
          String type,
      @Result(
              key = "energy",
              heading = "Rated energy",
              unit = "Wh",
              from = {"slip.serial", "batteries.energy"},
              rule = "From Batteries.")
          Double energy,
      @Result(
              key = "health",
              heading = "Health",
              form = NumberForm.SHARE,
              from = {"slip.serial", "batteries.status", "batteries.health"},
              rule = "Of a battery that has a valid test.")
          Double health,
      @Result(
              key = "tested",
              heading = "Last test",
              from = {"slip.serial", "batteries.status", "batteries.tested"},
              rule = "Of a battery that has a valid test.")
          LocalDate tested,
      @Result(
              key = "state",
              heading = "Test",
              translated = true,
              from = {"slip.serial", "batteries.status"},
              rule = "Says so where no test is valid.")
          Status state,
      @Result(
              key = "taken",
              heading = "Taken",
              from = "slip.serial",
              rule = "A box to tick on paper.")
          String taken,
      @Result(
              key = "back",
              heading = "Back, condition",
              from = "slip.serial",
              rule = "A box to tick on paper, and room to write.")
          String back) {}

  /** The head of the issue list. */
  @Table(key = "handover", heading = "Issue list", rows = 1)
  public record Handover(
      @Result(
              key = "verdict",
              heading = "Status of the issue list",
              from = "handover.reasons",
              rule = "The worst of the reasons.")
          Verdict verdict,
      @Result(
              key = "reasons",
              heading = "Reason",
              from = {
                "checkout.*",
                "project.job",
                "project.issue",
                "project.jobBack",
                "project.asOf"
              },
              rule = "What its head lacks, once there are serials on it.")
          List<Finding> reasons,
      @Result(key = "job", heading = "Job", from = "project.job", rule = "From Check-out.")
          String job,
      @Result(
              key = "issue",
              heading = "Issue number",
              from = "project.issue",
              rule = "From Check-out.")
          String issue,
      @Result(
              key = "backBy",
              heading = "Back by",
              from = "project.jobBack",
              rule = "From Check-out.")
          LocalDate backBy,
      @Result(
              key = "contact",
              heading = "Contact of the house",
              from = "project.contact",
              rule = "From Check-out.")
          String contact,
      @Result(
              key = "issued",
              heading = "Issued on",
              from = "project.asOf",
              rule = "The day of the register.")
          LocalDate issued,
      @Result(
              key = "out",
              heading = "May go out",
              unit = "pcs",
              from = "slip.serial",
              rule = "Serials of the list.")
          Integer out,
      @Result(
              key = "held",
              heading = "Held back",
              unit = "pcs",
              from = {"checkout.serial", "checkout.mayGoOut"},
              rule = "Serials of Check-out that do not go out.")
          Integer held) {}

  /** The head figures. */
  @Table(key = "summary", heading = "Summary", rows = 1)
  public record Summary(
      @Result(
              key = "verdict",
              heading = "Status",
              from = {"issues.verdict"},
              rule = "The worst of the open issues.")
          Verdict verdict,
      @Result(
              key = "batteries",
              heading = "Batteries",
              unit = "pcs",
              from = {"batteries.*", "project.asOf"},
              rule =
                  "Rows of Batteries in which something is typed and that are neither retired nor lost.")
          Integer batteries,
      @Result(
              key = "fit",
              heading = "Fit to go out",
              unit = "pcs",
              from = "batteries.fit",
              rule = "Batteries that are fit.")
          Integer fit,
      @Result(
              key = "fitIn",
              heading = "Fit and in the house",
              unit = "pcs",
              from = {"batteries.fit", "batteries.outTo"},
              rule = "Batteries that are fit and not out.")
          Integer fitIn,
      @Result(
              key = "withheld",
              heading = "Withheld",
              unit = "pcs",
              from = "batteries.fit",
              rule = "Batteries that are not fit; see Batteries.")
          Integer withheld,
      @Result(
              key = "quarantine",
              heading = "In quarantine",
              unit = "pcs",
              from = "batteries.status",
              rule = "Batteries whose state is quarantine.")
          Integer quarantine,
      @Result(
              key = "retire",
              heading = "To retire",
              unit = "pcs",
              from = "batteries.status",
              rule = "Batteries whose state is retire.")
          Integer retire,
      @Result(
              key = "service",
              heading = "In service",
              unit = "pcs",
              from = "batteries.status",
              rule = "Batteries whose state is service.")
          Integer service,
      @Result(
              key = "notInspected",
              heading = "Not inspected",
              unit = "pcs",
              from = "batteries.status",
              rule = "Batteries whose state is not inspected.")
          Integer notInspected,
      @Result(
              key = "notTested",
              heading = "Not tested",
              unit = "pcs",
              from = "batteries.status",
              rule = "Batteries whose state is not tested.")
          Integer notTested,
      @Result(
              key = "unclear",
              heading = "Unclear",
              unit = "pcs",
              from = "batteries.status",
              rule = "Batteries whose row, type, limits or tests cannot be read.")
          Integer unclear,
      @Result(
              key = "lost",
              heading = "Lost",
              unit = "pcs",
              from = {"batteries.status", "batteries.condition"},
              rule = "Batteries whose condition is lost; they are in no other count.")
          Integer lost,
      @Result(
              key = "incidentsMissing",
              heading = "Incidents missing",
              unit = "rows",
              from = "incidents.number",
              rule = "Numbers of Incidents from 1 to the highest that no row has.")
          Integer incidentsMissing,
      @Result(
              key = "meanHealth",
              heading = "Mean health",
              form = NumberForm.SHARE,
              from = {
                "batteries.health",
                "batteries.retired",
                "batteries.condition",
                "project.asOf"
              },
              rule = "Mean of the health of all batteries with one.")
          Double meanHealth,
      @Result(
              key = "toBuy",
              heading = "To buy",
              unit = "pcs",
              from = "types.toBuy",
              rule = "Sum over the types.")
          Integer toBuy,
      @Result(
              key = "notCompared",
              heading = "Tests not compared",
              unit = "rows",
              from = "tests.compared",
              rule = "Rows of Tests that are not compared.")
          Integer notCompared) {}
}
