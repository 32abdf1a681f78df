package org.setpower.plan.budget;

import java.time.LocalDate;
import java.util.List;
import java.util.Random;
import org.setpower.plan.common.InputColumn;
import org.setpower.plan.common.RandomTables;
import org.setpower.plan.common.Ranges;

/** Budgets to begin tests from: the invented production of the demo. */
final class BudgetSamples {
  private static final LocalDate DAY_ZERO = LocalDate.of(1899, 12, 30);

  private BudgetSamples() {}

  /** A date as a cell holds it. */
  static double day(String iso) {
    return LocalDate.parse(iso).toEpochDay() - DAY_ZERO.toEpochDay();
  }

  /** A project with all its dates; no line. */
  static Ranges empty() {
    return Ranges.of(BudgetPlan.MODEL)
        .row("project", "currency", "EUR", "tax", 0.2, "ordered", day("2027-01-18"))
        .set("project", 1, "delivered", day("2027-01-28"), "back", day("2027-02-09"));
  }

  /** One line planned at a price. */
  static Ranges line(double price) {
    return empty().row("lines", "description", "lamps", "type", "rental", "price", price);
  }

  /** A budget in which every column counts. */
  static Ranges full() {
    Ranges ranges =
        empty()
            .set("project", 1, "recoverable", 0.8, "columns", "with unrecoverable tax")
            .set("project", 1, "amounts", "with tax", "contingency", 0.08)
            .set("project", 1, "approved", day("2027-01-10"), "daysAfter", 30)
            .set("project", 1, "approvedTotal", 1400, "asAt", day("2027-01-30"), "weekDays", 3)
            .set("project", 1, "crewWeekDays", 5)
            .set("project", 1, "firstDay", day("2027-02-01"), "lastDay", day("2027-02-12"))
            .set("project", 1, "reclaimAfter", 60, "minimumCall", 8, "rounding", 0.5)
            .set("project", 1, "fringe", 0.25, "ceiling", 1500, "perDiem", 40)
            .row("counts", "count", "operator hours", "value", 57.5, "inAll", "yes")
            .row("counts", "count", "litres a day", "value", 61.2)
            .row("exchange", "currency", "GBP", "rate", 1.17, "date", day("2027-01-05"))
            .row("tiers", "after", 10, "factor", 1.5)
            .row("tiers", "after", 12, "factor", 2);
    ranges
        .row("lines", "description", "lamps", "type", "rental", "account", "2200", "qty", 4)
        .set("lines", 1, "department", "electric", "supplier", "rental desk", "unit", "day")
        .set("lines", 1, "times", 6, "minTimes", 7, "price", 55, "discount", 0.1)
        .set("lines", 1, "budget", 1400, "changes", 20, "po", "P1", "ordered", 1400)
        .set("lines", 1, "invoice", "I1", "invoiced", 700, "paid", 500, "estimate", 10)
        .set("lines", 1, "fromContingency", 20)
        .row("lines", "description", "gaffer", "type", "crew", "account", "2300", "qty", 2)
        .set("lines", 2, "unit", "day", "times", 5, "price", 340, "hours", 12.2)
        .set("lines", 2, "coveredHours", 10, "daysAway", 3, "due", "each week")
        .row("lines", "description", "operator", "type", "crew", "account", "2300")
        .set("lines", 3, "count", "operator hours", "unit", "hour", "price", 38, "fringe", 0.3)
        .row("lines", "description", "diesel", "type", "fuel", "account", "2400", "unit", "litre")
        .set("lines", 4, "count", "litres a day", "times", 4, "price", 1.62, "tax", 0.1)
        .set("lines", 4, "recoverable", 0.5, "due", "days after", "complete", "yes")
        .set("lines", 4, "ordered", 300, "po", "P2", "invoiced", 250, "invoice", "I2")
        .row("lines", "description", "crane", "type", "sub-hire", "currency", "GBP", "price", 900)
        .set("lines", 5, "due", "on return", "ordered", 1000, "poClosed", "yes", "po", "P3")
        .row("lines", "description", "not needed", "type", "loss", "struck", "yes", "price", 9)
        .row("lines", "description", "best boy", "type", "crew", "unit", "hour", "price", 34)
        .set("lines", 7, "qty", 1, "times", 5, "hours", 11, "daysAway", 2, "perDiem", 50)
        .set("lines", 7, "dueOn", day("2027-03-05"))
        .row("lines", "description", "by the week", "type", "crew", "unit", "week", "price", 900)
        .set("lines", 8, "times", 2, "hours", 11, "coveredHours", 10)
        .row("deposits", "to", "rental desk", "amount", 1000, "out", day("2027-01-20"))
        .set("deposits", 1, "back", day("2027-02-20"))
        .row("scenarios", "scenario", "diesel dearer", "type", "fuel", "dearer", 0.15)
        .row("scenarios", "scenario", "a night more", "type", "crew", "moreTimes", 1)
        .set("scenarios", 2, "other", 100)
        .set("project", 1, "fuelPrice", 1.62, "energyPrice", 0.31, "crewHour", 34)
        .set("project", 1, "gridCo2", 0.056039)
        .row("options", "option", "batteries", "hire", 382, "days", 2, "discount", 0.145)
        .set("options", 1, "energy", 10, "crew", 4, "weight", 62.3, "risk", "cold")
        .row("options", "option", "generator", "hire", 140, "fuel", 19, "other", 305)
        .set("options", 2, "crew", 11.25, "weight", 980)
        .row("mix", "energy", 900, "power", 600, "usable", 0.8, "maxWeight", 9, "travellers", 2)
        .row("batteries", "battery", "P98", "wattHours", 98, "maxWatts", 170, "price", 5)
        .set("batteries", 1, "weight", 0.75, "available", 10, "perTraveller", 20)
        .row("batteries", "battery", "P150", "wattHours", 150, "maxWatts", 570, "price", 8)
        .set("batteries", 2, "weight", 1.1, "available", 8, "perTraveller", 2);
    return ranges;
  }

  /** One of every fault that is not met by chance. */
  static Ranges faults() {
    return empty()
        .set("project", 1, "delivered", day("2027-02-10"), "ordered", "")
        .row("options", "option", "generator", "fuel", 19)
        .row("exchange", "currency", "EURO", "rate", 1)
        .row("exchange", "currency", "SEK", "rate", 0.1)
        .row("counts", "count", "hours", "value", 50, "inAll", "yes")
        .row("tiers", "after", 10, "factor", "twice")
        .row("lines", "description", "a", "type", "fuel", "currency", "USD", "price", 1)
        .row("lines", "description", "b", "type", "fuel", "currency", "EURO", "price", 1)
        .row("lines", "description", "c", "type", "fuel", "count", "litres", "price", 1)
        .row("lines", "description", "d", "type", "fuel", "count", "hours", "price", 1)
        .set("lines", 4, "times", 36)
        .row("lines", "description", "e", "type", "fuel", "unit", "week", "struck", "yes")
        .set("lines", 5, "ordered", 5)
        .row("lines", "description", "f", "type", "crew", "unit", "day", "hours", 12)
        .row("lines", "description", "g", "type", "fuel", "unit", "day", "hours", 12)
        .set("lines", 7, "price", 10, "budget", 5, "invoiced", 50, "paid", 99)
        .row("lines", "description", "h", "type", "loss", "price", 10, "complete", "yes")
        .set("lines", 8, "estimate", 5, "due", "each week")
        .row("lines", "description", "i", "type", "crew", "unit", "hour", "daysAway", 5)
        .row("lines", "description", "j", "type", "crew", "unit", "hour", "hours", 12, "times", 5)
        .set("lines", 10, "price", 30)
        .row("deposits", "to", "desk", "amount", 10)
        .row("deposits", "to", "quay", "amount", 10, "out", day("2027-02-10"))
        .set("deposits", 2, "back", day("2027-02-01"))
        .row("scenarios", "scenario", "none", "type", "insurance", "dearer", 1)
        .row("scenarios", "scenario", "nothing", "dearer", 1)
        .row("scenarios", "scenario", "over", "other", 1)
        .row("mix", "energy", 900, "maxWeight", 1, "travellers", 1.5)
        .row("batteries", "battery", "P98", "wattHours", 98, "maxWatts", 170, "price", 5)
        .row("batteries", "battery", "P150", "wattHours", 150, "maxWatts", 570, "price", 8)
        .set("batteries", 2, "weight", 1.1, "available", 0.5);
  }

  /** What is typed after an approval: another share, another rate, a payment taken back. */
  static Ranges later() {
    return empty()
        .set("project", 1, "approved", day("2027-01-10"), "approvedTotal", 900, "approvalKey", 1)
        .set("project", 1, "contingency", 0.2, "approvedContingency", 90)
        .row("exchange", "currency", "GBP", "rate", 117, "date", day("2027-01-05"))
        .row("lines", "description", "a", "type", "rental", "currency", "GBP", "price", 100)
        .set("lines", 1, "ordered", 100, "po", "P", "supplier", "S", "budget", 500)
        .row("lines", "description", "b", "type", "rental", "price", 400, "budget", 400)
        .set("lines", 2, "paid", -5);
  }

  /** The same, its day cleared and its total with it. */
  static Ranges cleared() {
    return line(400).set("project", 1, "approvals", "10 Jan 2027: 400.00");
  }

  /** An approval that moved, with wages, sales tax and orders that contradict themselves. */
  static Ranges moved() {
    return empty()
        .set("project", 1, "currency", "USD", "approved", day("2027-01-10"))
        .set("project", 1, "approvedTotal", 900, "approvedContingency", 50, "contingency", 0.1)
        .set("project", 1, "approvalKey", 1)
        .set("project", 1, "firstDay", day("2027-02-12"), "lastDay", day("2027-02-01"))
        .row("lines", "description", "a", "type", "rental", "unit", "week", "times", 2)
        .set("lines", 1, "price", 100, "budget", 500, "changes", 40, "fromContingency", 60)
        .set("lines", 1, "paid", 10, "due", "each week")
        .row("lines", "description", "b", "type", "rental", "price", -5, "budget", 300)
        .set("lines", 2, "ordered", 50, "complete", "yes", "po", "P")
        .row("lines", "description", "c", "type", "reduction", "price", 5, "ordered", 50)
        .set("lines", 3, "complete", "yes", "invoiced", 20)
        .row("lines", "description", "d", "type", "crew", "hours", 12, "price", 5)
        .row("lines", "description", "e", "type", "crew", "unit", "hour", "hours", 12, "times", 60)
        .set("lines", 5, "price", 5)
        .row("scenarios", "scenario", "a day more", "type", "rental", "moreTimes", 1)
        .row("scenarios", "scenario", "over", "other", 9000)
        .row("scenarios", "scenario", "not a number", "other", "much")
        .set("project", 1, "lastDay", day("2027-06-01"), "firstDay", day("2027-06-12"))
        .row("batteries", "battery", "P98", "wattHours", 98, "maxWatts", 170, "price", 5);
  }

  /** Weekly payments over years, a long day without overtime, a line after the approval. */
  static Ranges more() {
    return empty()
        .set("project", 1, "back", day("2030-01-01"), "approved", day("2027-01-01"))
        .row("lines", "description", "a", "type", "fuel", "price", 1, "due", "each week")
        .row("lines", "description", "b", "type", "crew", "price", 1, "unit", "day", "times", 1)
        .set("lines", 2, "hours", 12, "coveredHours", 10, "budget", 1)
        .row("lines", "description", "c", "type", "crew", "price", 1, "unit", "day", "times", 1)
        .set("lines", 3, "hours", 12, "budget", 1)
        .row("exchange", "currency", "GBP", "rate", 1.17, "date", day("2027-01-05"))
        .row("lines", "description", "d", "type", "rental", "price", 950, "currency", "GBP")
        .set("lines", 4, "ordered", 950, "poClosed", "yes", "invoiced", 960, "budget", 2000)
        .row("mix", "energy", 900, "travellers", 1)
        .row("batteries", "battery", "P98", "wattHours", 98, "maxWatts", 170, "price", 5)
        .set("batteries", 1, "available", 2)
        .row("batteries", "battery", "P150", "wattHours", 150, "maxWatts", 570);
  }

  /** Twelve types so alike that their mixes cannot be told apart in time. */
  static Ranges alike() {
    Ranges ranges = empty().row("mix", "energy", 9001, "usable", 1);
    for (int i = 0; i < 12; i++) {
      ranges
          .row("batteries", "battery", "P" + i, "wattHours", 98 + 2 * i, "maxWatts", 200)
          .set("batteries", i + 1, "price", (98 + 2 * i) / 10.0);
    }
    return ranges;
  }

  /** A currency that does not exist. */
  static Ranges unknownCurrency() {
    return line(1).set("project", 1, "currency", "XXX");
  }

  /** A valid random budget whose rows meet. */
  static Ranges random(int seed, int rows) {
    return new RandomTables(BudgetPlan.MODEL, BudgetSamples::values, new Random(seed)).valid(rows);
  }

  /** Cells that make rows of random tables meet. */
  static List<Object> values(InputColumn column) {
    return switch (column.path()) {
      case "project.currency" -> List.of("EUR", "EUR", "JPY");
      case "exchange.currency" -> List.of("GBP", "USD", "SEK", "GBP", "none");
      case "lines.currency" -> List.of("", "", "", "EUR", "GBP", "USD");
      case "counts.count" -> List.of("hours", "litres", "kWh");
      case "lines.count" -> List.of("", "", "", "hours", "litres", "kWh");
      case "tiers.after" -> List.of(8.0, 10.0, 12.0, 14.0);
      case "tiers.factor" -> List.of(1.25, 1.5, 2.0);
      case "lines.hours" -> List.of(8.0, 10.0, 12.25, 14.0);
      case "lines.coveredHours" -> List.of(8.0, 10.0, 11.0);
      case "lines.times", "lines.minTimes" -> List.of("", 1.0, 5.0, 6.5);
      case "lines.qty" -> List.of(1.0, 2.0, 12.0, 250.0);
      case "lines.price" -> List.of(34.0, 0.335, 1.62, 140.0, -50.0);
      case "lines.unit" -> List.of("day", "hour", "litre", "once", "week");
      case "lines.type" -> List.of("crew", "crew", "rental", "fuel", "transport", "loss");
      case "lines.struck" -> List.of("", "", "", "", "no", "yes");
      case "lines.tax", "project.tax" -> List.of(0.0, 0.1, 0.2, 0.055);
      case "lines.ordered", "lines.invoiced", "lines.budget" ->
          List.of(0.0, 100.0, 2000.0, 2450.0, 1500.55, -20.0);
      case "project.approvedTotal" -> List.of(0.0, 2000.0, 2450.0);
      case "project.approvedContingency" -> List.of(100.0, 250.0);
      case "lines.fromContingency" -> List.of("", "", 20.0);
      case "project.weekDays", "project.crewWeekDays" -> List.of(3.0, 5.0, 6.0);
      case "lines.changes", "lines.estimate", "lines.paid" -> List.of(0.0, 250.0, 33.33);
      case "project.contingency" -> List.of(0.0, 0.08, 0.1);
      case "project.rounding" -> List.of(0.25, 0.5, 1.0);
      case "project.ceiling" -> List.of(100.0, 1500.0);
      case "project.fringe", "lines.fringe" -> List.of(0.0, 0.22, 0.3);
      case "project.perDiem", "lines.perDiem" -> List.of(40.0, 52.5);
      case "lines.daysAway" -> List.of(1.0, 3.0);
      case "scenarios.dearer" -> List.of(0.15, -0.1);
      case "scenarios.moreTimes" -> List.of(1.0, -2.0);
      case "scenarios.other" -> List.of(100.0, -50.0, 5000.0);
      case "deposits.amount" -> List.of(1000.0, 250.5);
      case "mix.energy" -> List.of(500.0, 900.0, 2000.0);
      case "mix.power" -> List.of(0.0, 400.0);
      case "mix.maxWeight" -> List.of("", 20.0, 60.0);
      case "mix.travellers" -> List.of("", "", 2.0);
      case "batteries.wattHours" -> List.of(98.0, 150.0, 294.0);
      case "batteries.maxWatts" -> List.of(170.0, 570.0);
      case "batteries.available", "batteries.perTraveller" -> List.of("", 2.0, 20.0);
      case "batteries.weight" -> List.of(0.75, 1.1, 2.1);
      case "batteries.price" -> List.of(5.0, 8.0, 14.0);
      default -> List.of();
    };
  }
}
