package org.setpower.plan.register;

import java.time.LocalDate;
import java.util.List;
import org.setpower.pack.Chemistry;
import org.setpower.plan.common.Input;
import org.setpower.plan.common.InputRows;
import org.setpower.plan.common.InputTable;
import org.setpower.plan.common.NumberForm;
import org.setpower.plan.common.Table;

/**
 * The tables to fill of the register.
 *
 * @param project one row
 * @param types rows by type
 * @param limits rows by chemistry
 * @param batteries rows by serial
 * @param tests any number a serial
 * @param incidents damage, recalls and their closing
 * @param checkout serials for one job
 */
public record RegisterInputs(
    InputRows<Project> project,
    InputRows<BatteryType> types,
    InputRows<Limit> limits,
    InputRows<Battery> batteries,
    InputRows<BenchTest> tests,
    InputRows<Incident> incidents,
    InputRows<Checkout> checkout) {
  static final InputTable<Project> PROJECT = InputTable.of(Project.class);
  static final InputTable<BatteryType> TYPES = InputTable.of(BatteryType.class);
  static final InputTable<Limit> LIMITS = InputTable.of(Limit.class);
  static final InputTable<Battery> BATTERIES = InputTable.of(Battery.class);
  static final InputTable<BenchTest> TESTS = InputTable.of(BenchTest.class);
  static final InputTable<Incident> INCIDENTS = InputTable.of(Incident.class);
  static final InputTable<Checkout> CHECKOUT = InputTable.of(Checkout.class);

  /** What holds for the whole register. */
  @Table(key = "project", heading = "Project", rows = 1, upright = true)
  public record Project(
      @Input(key = "asOf", heading = "As of", help = "The day on which tests and returns are due.")
          LocalDate asOf,
      @Input(
              key = "temperatureUnit",
              heading = "Temperatures in",
              blank = "Blank: °C.",
              help = "Unit of every temperature typed in this register.")
          TemperatureUnit temperatureUnit,
      @Input(
              key = "coldestTest",
              heading = "Min. temperature of a test",
              min = -40,
              max = 140,
              blank = "Blank: 15 °C (59 °F).",
              help = "A colder battery gives less: its test is not compared.")
          Double coldestTest,
      @Input(
              key = "warmestTest",
              heading = "Max. temperature of a test",
              min = -40,
              max = 140,
              blank = "Blank: 30 °C (86 °F).",
              help = "A warmer battery gives more: its test is not compared.")
          Double warmestTest,
      @Input(
              key = "rest",
              heading = "Min. rest before a test",
              unit = "h",
              form = NumberForm.ONE_DECIMAL,
              min = 0,
              max = 100,
              blank = "Blank: 1 h.",
              help = "Hours off the charger, so that the cell voltages have settled.")
          Double rest,
      @Input(
              key = "maxLoad",
              heading = "Max. test load",
              unit = "W/Wh",
              form = NumberForm.TWO_DECIMALS,
              min = 0.01,
              max = 5,
              blank = "Blank: 0.5 W a rated Wh, empty in two hours.",
              help = "A test with a load more than 5 % above it is not compared: it gives less.")
          Double maxLoad,
      @Input(
              key = "validDays",
              heading = "Test valid",
              unit = "days",
              min = 1,
              max = 3650,
              blank = "Blank: 180 days.",
              help = "A battery whose last compared test is older is not tested.")
          Double validDays,
      @Input(
              key = "inspectionDays",
              heading = "Inspection valid",
              unit = "days",
              min = 1,
              max = 3650,
              blank = "Blank: 90 days.",
              help = "A battery whose last inspection is older does not go out before the next.")
          Double inspectionDays,
      @Input(
              key = "untested",
              heading = "Batteries not tested",
              blank = "Blank: hold.",
              help = "Whether a battery without a valid test goes out, printed as not tested.")
          UntestedRule untested,
      @Input(
              key = "retireBelow",
              heading = "Retire below health",
              form = NumberForm.SHARE,
              min = 0.3,
              max = 1,
              blank = "Blank: 80 %.",
              help = "Health at which a battery is retired.")
          Double retireBelow,
      @Input(
              key = "watchBelow",
              heading = "Watch below health",
              form = NumberForm.SHARE,
              min = 0.3,
              max = 1,
              blank = "Blank: 85 %.",
              help = "Health below which a battery is tested more often.")
          Double watchBelow,
      @Input(
              key = "job",
              heading = "Job",
              blank = "Blank: the issue list names no job.",
              help = "The job or client of the issue list, as in Out to of Batteries.")
          String job,
      @Input(
              key = "issue",
              heading = "Issue number",
              blank = "Blank: the issue list has no number.",
              help = "A new one for each issue list, such as 2027-017; printed on each page.")
          String issue,
      @Input(
              key = "jobBack",
              heading = "Back by",
              blank = "Blank: no date agreed.",
              help = "Day agreed for the return of what is on the issue list.")
          LocalDate jobBack,
      @Input(
              key = "contact",
              heading = "Contact of the house",
              blank = "Blank: the issue list names none.",
              help = "Telephone of a role, such as the rental desk; printed on the issue list.")
          String contact) {}

  /** A type of battery. */
  @Table(key = "types", heading = "Types", rows = 40)
  public record BatteryType(
      @Input(key = "type", heading = "Type", help = "One row for each type of battery.")
          String type,
      @Input(
              key = "chemistry",
              heading = "Chemistry",
              help = "What its cells are made of: it decides the limits of cell voltage.")
          Chemistry chemistry,
      @Input(
              key = "required",
              heading = "Required",
              unit = "pcs",
              min = 0,
              max = 10_000,
              blank = "Blank: none is bought.",
              help =
                  "How many must be fit to go out at a time. To buy is what is missing, without the"
                      + " batteries that only await a test, an inspection or service.")
          Double required) {}

  /** Limits of the house by chemistry; blank ones are those of {@code limits.csv}. */
  @Table(key = "limits", heading = "Limits", rows = 8)
  public record Limit(
      @Input(key = "chemistry", heading = "Chemistry", help = "One row for each chemistry.")
          Chemistry chemistry,
      @Input(
              key = "minVolts",
              heading = "Min. cell voltage",
              unit = "V",
              form = NumberForm.TWO_DECIMALS,
              min = 0,
              max = 10,
              blank = "Blank: the limit of the table of facts.",
              help =
                  "Below it a battery goes to quarantine. A lower figure than the fact's is not"
                      + " used.")
          Double minVolts,
      @Input(
              key = "maxVolts",
              heading = "Max. cell voltage",
              unit = "V",
              form = NumberForm.TWO_DECIMALS,
              min = 0,
              max = 10,
              blank = "Blank: the limit of the table of facts.",
              help =
                  "Above it a battery goes to quarantine. A higher figure than the fact's is not"
                      + " used.")
          Double maxVolts,
      @Input(
              key = "maxSpread",
              heading = "Max. cell imbalance",
              unit = "V",
              form = NumberForm.THREE_DECIMALS,
              min = 0.001,
              max = 1,
              blank = "Blank: 0.05 V.",
              help = "Between the best and the worst cell, rested; above it: service.")
          Double maxSpread,
      @Input(
              key = "maxApart",
              heading = "Cell imbalance for quarantine",
              unit = "V",
              form = NumberForm.THREE_DECIMALS,
              min = 0.05,
              max = 0.5,
              blank = "Blank: 0.3 V.",
              help =
                  "Above it a cell is damaged or has a short circuit: quarantine, and no charging.")
          Double maxApart,
      @Input(
              key = "maxResistance",
              heading = "Max. resistance against its type",
              form = NumberForm.TWO_DECIMALS,
              min = 1.05,
              max = 10,
              blank = "Blank: 1.5 times the median of its type.",
              help = "Compared are only tests at like temperature and state of charge.")
          Double maxResistance) {}

  /** One battery. */
  @Table(key = "batteries", heading = "Batteries", rows = 300)
  public record Battery(
      @Input(
              key = "serial",
              heading = "Serial",
              help = "The number on the battery, or the house's own. Each only once.")
          String serial,
      @Input(key = "type", heading = "Type", help = "A type of Types.") String type,
      @Input(
              key = "condition",
              heading = "Condition",
              blank = "Blank: not inspected, does not go out.",
              help =
                  "What hand and eye say; the worst counts. cracked (casing): quarantine. not charging:"
                      + " service. lost: in no count, never handed out.")
          Condition condition,
      @Input(
              key = "energy",
              heading = "Rated energy",
              unit = "Wh",
              min = 0.1,
              max = 100_000,
              blank = "Blank: no health, so not tested.",
              help = "The Wh on the label.")
          Double energy,
      @Input(
              key = "cycles",
              heading = "Cycles",
              min = 0,
              max = 100_000,
              blank = "Blank: no estimate of the cycles left.",
              help = "Full charges so far.")
          Double cycles,
      @Input(
              key = "inspected",
              heading = "Inspected on",
              blank = "Blank: not inspected, does not go out.",
              help = "Day of the last inspection by hand and eye.")
          LocalDate inspected,
      @Input(
              key = "inspectedBy",
              heading = "Inspected by",
              blank = "Blank: not inspected, does not go out.",
              help = "A role, no name.")
          String inspectedBy,
      @Input(
              key = "place",
              heading = "Place",
              blank = "Blank: no place.",
              help = "Where it lies when it is in.")
          String place,
      @Input(
              key = "outTo",
              heading = "Out to",
              blank = "Blank: it is in.",
              help = "The job or client that has it.")
          String outTo,
      @Input(
              key = "backBy",
              heading = "Back by",
              blank = "Blank: no date agreed.",
              help =
                  "Day agreed for its return. Clear it after the inspection at the return; filled in"
                      + " without Out to, the battery counts as not inspected.")
          LocalDate backBy,
      @Input(
              key = "returned",
              heading = "Returned on",
              blank = "Blank: it was not out since its inspection.",
              help =
                  "Day of the last return: it goes out again after an inspection on or after it.")
          LocalDate returned,
      @Input(
              key = "un383",
              heading = "UN 38.3 summary",
              blank = "Blank: not looked for.",
              help = "Is the maker's test summary on file? Freight asks for it.")
          Boolean un383,
      @Input(
              key = "warranty",
              heading = "Warranty until",
              blank = "Blank: no warranty.",
              help = "From the invoice.")
          LocalDate warranty,
      @Input(
              key = "retired",
              heading = "Retired on",
              blank = "Blank: not retired.",
              help =
                  "The day it went to disposal. A retired battery never returns, and leaves counts"
                      + " and lists.")
          LocalDate retired,
      @Input(
              key = "decided",
              heading = "Decided",
              blank = "Blank: as proposed.",
              help = "May be stricter than what is proposed, never milder.")
          Decision decided) {}

  /** One test on the bench. */
  @Table(key = "tests", heading = "Tests", rows = 1000)
  public record BenchTest(
      @Input(key = "serial", heading = "Serial", help = "As in Batteries.") String serial,
      @Input(key = "date", heading = "Date", blank = "Blank: not compared.") LocalDate date,
      @Input(
              key = "measured",
              heading = "Measured energy",
              unit = "Wh",
              form = NumberForm.ONE_DECIMAL,
              min = 0,
              max = 100_000,
              blank = "Blank: not compared.",
              help = "What the full battery gave until it cut off.")
          Double measured,
      @Input(
              key = "load",
              heading = "Test load",
              unit = "W",
              min = 0,
              max = 100_000,
              blank = "Blank: not compared.")
          Double load,
      @Input(
              key = "temperature",
              heading = "Temperature",
              min = -60,
              max = 180,
              blank = "Blank: not compared.",
              help = "Of the battery, or of the room it lay in for half a day.")
          Double temperature,
      @Input(
              key = "charge",
              heading = "State of charge",
              form = NumberForm.SHARE,
              min = 0,
              max = 1,
              blank = "Blank: resistance and health are not compared with the type.",
              help = "At which resistance and cell voltages were read.")
          Double charge,
      @Input(
              key = "rested",
              heading = "Rested",
              unit = "h",
              form = NumberForm.ONE_DECIMAL,
              min = 0,
              max = 100_000,
              blank = "Blank: not compared.",
              help = "Hours off the charger before the test.")
          Double rested,
      @Input(
              key = "resistance",
              heading = "Resistance",
              unit = "mΩ",
              form = NumberForm.ONE_DECIMAL,
              min = 0,
              max = 1e6,
              blank = "Blank: not measured.")
          Double resistance,
      @Input(
              key = "cell",
              heading = "Cell",
              unit = "V",
              form = NumberForm.TWO_DECIMALS,
              min = -20,
              max = 20,
              count = 14,
              blank = "Blank: no such cell.",
              help = "Voltage, rested, without load.")
          List<Double> cells) {}

  /** Damage or recall of one battery, of a range of serials, or of a type. */
  @Table(key = "incidents", heading = "Incidents", rows = 100)
  public record Incident(
      @Input(
              key = "number",
              heading = "No.",
              min = 1,
              max = 99_999,
              blank = "Blank: a cleared row is not noticed, so this is a check.",
              help = "1, 2, 3 and so on. Never clear a row: a missing number is a check.")
          Double number,
      @Input(
              key = "serial",
              heading = "Serial",
              blank = "Blank: all of the type.",
              help = "The battery, or the first of a range.")
          String serial,
      @Input(
              key = "lastSerial",
              heading = "Last serial",
              blank = "Blank: one battery.",
              help =
                  "Last of a range: same letters as the first, then as many digits. A serial with"
                      + " fewer or more digits is compared by hand. Clear it where only the first is"
                      + " meant.")
          String lastSerial,
      @Input(
              key = "type",
              heading = "Type",
              blank = "Blank: by serial.",
              help = "For a recall of a type; beside serials: only those of this type.")
          String type,
      @Input(key = "happened", heading = "What happened", help = "A word of Condition, not fine.")
          Condition happened,
      @Input(
              key = "date",
              heading = "Date",
              help = "The day it happened, or of the maker's notice.")
          LocalDate date,
      @Input(
              key = "reportedBy",
              heading = "Reported by",
              blank = "Blank: cannot be closed.",
              help = "A role, no name.")
          String reportedBy,
      @Input(
              key = "closed",
              heading = "Closed on",
              blank = "Blank: open.",
              help =
                  "After an inspection and a compared test with all cell voltages, both later than"
                      + " the incident.")
          LocalDate closed,
      @Input(
              key = "closedBy",
              heading = "Closed by",
              blank = "Blank: open.",
              help = "technician, or technician with a number; not who reported it.")
          String closedBy,
      @Input(
              key = "reason",
              heading = "Reason for closing",
              blank = "Blank: open.",
              help = "Why it is sound.")
          String reason,
      @Input(
              key = "reference",
              heading = "Maker's reference",
              blank = "Blank: a recall stays open.",
              help = "Number or date of the maker's written answer.")
          String reference) {}

  /** A battery that is to go out with a job. */
  @Table(key = "checkout", heading = "Check-out", rows = 60)
  public record Checkout(
      @Input(key = "serial", heading = "Serial", help = "As in Batteries; a list can be pasted.")
          String serial) {}
}
