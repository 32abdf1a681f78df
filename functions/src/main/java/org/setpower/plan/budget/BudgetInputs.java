package org.setpower.plan.budget;

import java.time.LocalDate;
import java.util.List;
import org.setpower.plan.common.Input;
import org.setpower.plan.common.InputRows;
import org.setpower.plan.common.InputTable;
import org.setpower.plan.common.NumberForm;
import org.setpower.plan.common.Table;

/**
 * The tables to fill of a power budget.
 *
 * @param project what holds for the whole budget
 * @param counts quantities from a plan
 * @param exchange what other currencies cost
 * @param tiers overtime of the crew
 * @param lines one row for each thing that is paid for
 * @param deposits money that comes back
 * @param scenarios one change each, beside the plan
 * @param options ways to power the same days, side by side
 * @param mix what batteries have to do, for the cheapest mix of them
 * @param batteries types to choose from, for the mix
 */
public record BudgetInputs(
    InputRows<Project> project,
    InputRows<Count> counts,
    InputRows<ExchangeRate> exchange,
    InputRows<Tier> tiers,
    InputRows<Line> lines,
    InputRows<Deposit> deposits,
    InputRows<Scenario> scenarios,
    InputRows<Option> options,
    InputRows<Mix> mix,
    InputRows<Battery> batteries) {
  static final InputTable<Project> PROJECT = InputTable.of(Project.class);
  static final InputTable<Count> COUNTS = InputTable.of(Count.class);
  static final InputTable<ExchangeRate> EXCHANGE = InputTable.of(ExchangeRate.class);
  static final InputTable<Tier> TIERS = InputTable.of(Tier.class);
  static final InputTable<Line> LINES = InputTable.of(Line.class);
  static final InputTable<Deposit> DEPOSITS = InputTable.of(Deposit.class);
  static final InputTable<Scenario> SCENARIOS = InputTable.of(Scenario.class);
  static final InputTable<Option> OPTIONS = InputTable.of(Option.class);
  static final InputTable<Mix> MIX = InputTable.of(Mix.class);
  static final InputTable<Battery> BATTERIES = InputTable.of(Battery.class);

  /** All tables, in the order of the function's arguments. */
  List<InputRows<?>> all() {
    return List.of(
        project, counts, exchange, tiers, lines, deposits, scenarios, options, mix, batteries);
  }

  /** What holds for the whole budget. */
  @Table(key = "project", heading = "Project", rows = 1, upright = true)
  public record Project(
      @Input(
              key = "currency",
              heading = "Currency",
              help = "Three letters of ISO 4217: EUR, USD, GBP. All sums are in it.")
          String currency,
      @Input(
              key = "tax",
              heading = "Tax",
              form = NumberForm.FINE_SHARE,
              min = 0,
              max = 1,
              help = "Usual rate. Type 0 where there is none.")
          Double tax,
      @Input(
              key = "recoverable",
              heading = "Tax reclaimed",
              form = NumberForm.FINE_SHARE,
              min = 0,
              max = 1,
              blank = "Blank: all of it; in USD none, check.",
              help = "Share of the tax that comes back. Ask your accountant.")
          Double recoverable,
      @Input(
              key = "columns",
              heading = "Cost report",
              blank = "Blank: net.",
              help = "Net, where tax is reclaimed, or with the tax that does not come back.")
          TaxBasis columns,
      @Input(
              key = "amounts",
              heading = "Amounts typed",
              blank = "Blank: without tax.",
              help = "How prices, orders, invoices and estimates are typed, everywhere.")
          TypedAmounts amounts,
      @Input(
              key = "contingency",
              heading = "Contingency",
              form = NumberForm.FINE_SHARE,
              min = 0,
              max = 1,
              blank = "Blank: none.",
              help =
                  "Share of the budget of all lines, a line of its own; once approved the amount"
                      + " stays.")
          Double contingency,
      @Input(
              key = "approved",
              heading = "Budget approved on",
              blank = "Blank: draft: the budget column is the plan.",
              help = "Written by Approve budget.")
          LocalDate approved,
      @Input(
              key = "approvedTotal",
              heading = "Total approved",
              form = NumberForm.MONEY,
              min = -1_000_000_000,
              max = 1_000_000_000,
              blank = "Blank: check once the budget is approved.",
              help = "Of all lines. Written by Approve budget; other amounts below are a stop.")
          Double approvedTotal,
      @Input(
              key = "approvedContingency",
              heading = "Contingency approved",
              form = NumberForm.MONEY,
              min = 0,
              max = 1_000_000_000,
              blank = "Blank: the share of the budget.",
              help = "Written by Approve budget.")
          Double approvedContingency,
      @Input(
              key = "approvalKey",
              heading = "Approval key",
              form = NumberForm.EXACT,
              min = 0,
              max = 4_294_967_295.0,
              blank = "Blank: changes by hand of what was approved may pass unnoticed.",
              help = "Written by Approve budget, worked out of what it wrote.")
          Double approvalKey,
      @Input(
              key = "approvals",
              heading = "All approvals",
              blank = "Blank: none yet.",
              help = "Day and amounts of each, the last one first. Written by Approve budget.")
          String approvals,
      @Input(
              key = "asAt",
              heading = "Report as at",
              blank = "Blank: Cash flow shows the whole plan; check where something is paid.",
              help = "Day of the cost report; Cash flow shows what is still to pay from then on.")
          LocalDate asAt,
      @Input(
              key = "ordered",
              heading = "Ordered on",
              blank = "Blank: lines due then are not in Cash flow, check.",
              help = "When what is due with order is paid.")
          LocalDate ordered,
      @Input(
              key = "delivered",
              heading = "Delivered on",
              blank = "Blank: lines due then are not in Cash flow, check.",
              help = "When what is due on delivery is paid.")
          LocalDate delivered,
      @Input(
              key = "back",
              heading = "Back on",
              blank = "Blank: lines due then are not in Cash flow, check.",
              help = "When what is due on return is paid.")
          LocalDate back,
      @Input(
              key = "firstDay",
              heading = "First day",
              blank = "Blank: Delivered on.",
              help = "Of shooting: first week of weekly payments.")
          LocalDate firstDay,
      @Input(
              key = "lastDay",
              heading = "Last day",
              blank = "Blank: Back on.",
              help = "Of shooting: last week of weekly payments.")
          LocalDate lastDay,
      @Input(
              key = "weekDays",
              heading = "Days in a rental week",
              unit = "days",
              form = NumberForm.EXACT,
              min = 1,
              max = 7,
              blank = "Blank: a day more costs a whole week, check.",
              help = "That a price for a week covers, of all but crew, for scenarios.")
          Double weekDays,
      @Input(
              key = "crewWeekDays",
              heading = "Days in a crew week",
              unit = "days",
              form = NumberForm.EXACT,
              min = 1,
              max = 7,
              blank = "Blank: a day more costs a whole week, check.",
              help = "That a rate for a week covers, of crew, for scenarios.")
          Double crewWeekDays,
      @Input(
              key = "daysAfter",
              heading = "Days after",
              unit = "days",
              form = NumberForm.EXACT,
              min = 0,
              max = 365,
              blank = "Blank: 30 days.",
              help = "Counted from Back on; from an invoice: type Due on in the line.")
          Double daysAfter,
      @Input(
              key = "reclaimAfter",
              heading = "Tax back after",
              unit = "days",
              form = NumberForm.EXACT,
              min = 0,
              max = 365,
              blank = "Blank: 30 days.",
              help = "From payment to the week in which reclaimed tax comes back.")
          Double reclaimAfter,
      @Input(
              key = "minimumCall",
              heading = "Minimum call",
              unit = "h",
              form = NumberForm.EXACT,
              min = 0,
              max = 24,
              blank = "Blank: none.",
              help = "Fewest hours paid for a day.")
          Double minimumCall,
      @Input(
              key = "rounding",
              heading = "Time rounded up to",
              unit = "h",
              form = NumberForm.EXACT,
              min = 0.01,
              max = 4,
              blank = "Blank: not rounded.",
              help = "0.25: to the next quarter of an hour.")
          Double rounding,
      @Input(
              key = "fringe",
              heading = "Fringes",
              form = NumberForm.FINE_SHARE,
              min = 0,
              max = 2,
              blank = "Blank: none.",
              help = "Share on crew pay, overtime included. A line may have its own.")
          Double fringe,
      @Input(
              key = "ceiling",
              heading = "Fringe ceiling",
              form = NumberForm.MONEY,
              min = 0,
              max = 100_000_000,
              blank = "Blank: none.",
              help = "Pay of one person beyond which no fringes are due, in the budget's currency.")
          Double ceiling,
      @Input(
              key = "perDiem",
              heading = "Per diem",
              form = NumberForm.MONEY,
              min = 0,
              max = 100_000,
              blank = "Blank: none.",
              help =
                  "Of one person and day away, in the budget's currency. A line may have its own.")
          Double perDiem,
      @Input(
              key = "fuelPrice",
              heading = "Fuel price",
              form = NumberForm.EXACT,
              min = 0,
              max = 1000,
              blank = "Blank: none; an option with fuel is a stop.",
              help = "Of a litre, for Options.")
          Double fuelPrice,
      @Input(
              key = "energyPrice",
              heading = "Energy price",
              form = NumberForm.EXACT,
              min = 0,
              max = 1000,
              blank = "Blank: none; an option with energy is a stop.",
              help = "Of a kWh, for Options.")
          Double energyPrice,
      @Input(
              key = "crewHour",
              heading = "Crew hour",
              form = NumberForm.MONEY,
              min = 0,
              max = 100_000,
              blank = "Blank: none; an option with crew hours is a stop.",
              help = "For Options.")
          Double crewHour,
      @Input(
              key = "gridCo2",
              heading = "CO2 of the grid",
              unit = "kg/kWh",
              form = NumberForm.EXACT,
              min = 0,
              max = 3,
              blank = "Blank: the CO2 of an option with energy is not known.",
              help = "Of the country, as its authority publishes it.")
          Double gridCo2) {}

  /** Quantities from a plan. */
  @Table(key = "counts", heading = "Imported", rows = 60)
  public record Count(
      @Input(key = "count", heading = "Count", help = "Picked by lines: generator hours, litres.")
          String count,
      @Input(
              key = "value",
              heading = "Value",
              form = NumberForm.EXACT,
              min = 0,
              max = 10_000_000,
              help = "As the plan says.")
          Double value,
      @Input(
              key = "inAll",
              heading = "Total",
              blank = "Blank: no: a day or a piece.",
              help = "Yes where the plan has already counted all days.")
          Boolean inAll) {}

  /** What other currencies cost. */
  @Table(key = "exchange", heading = "Exchange rates", rows = 12)
  public record ExchangeRate(
      @Input(key = "currency", heading = "Currency", help = "Three letters.") String currency,
      @Input(
              key = "rate",
              heading = "Rate",
              form = NumberForm.EXACT,
              min = 0.000001,
              max = 1_000_000,
              help = "What one of it is in the budget's currency.")
          Double rate,
      @Input(key = "date", heading = "Date", blank = "Blank: check.", help = "Day of the rate.")
          LocalDate date) {}

  /** Overtime of the crew. */
  @Table(key = "tiers", heading = "Overtime", rows = 6)
  public record Tier(
      @Input(
              key = "after",
              heading = "After",
              unit = "h",
              form = NumberForm.EXACT,
              min = 0,
              max = 24,
              help = "Hours of a day after which the factor counts.")
          Double after,
      @Input(
              key = "factor",
              heading = "Factor",
              form = NumberForm.EXACT,
              min = 1,
              max = 5,
              help = "1.5: time and a half.")
          Double factor) {}

  /** One row for each thing that is paid for. */
  @Table(key = "lines", heading = "Budget lines", rows = 200)
  public record Line(
      @Input(
              key = "description",
              heading = "Description",
              help = "As it will stand on the invoice.")
          String description,
      @Input(
              key = "account",
              heading = "Account",
              blank = "Blank: other.",
              help = "Of your chart of accounts.")
          String account,
      @Input(
              key = "department",
              heading = "Department",
              blank = "Blank: other.",
              help = "Who answers for it.")
          String department,
      @Input(key = "type", heading = "Type", help = "What sort of cost it is.") CostType type,
      @Input(
              key = "qty",
              heading = "Qty",
              form = NumberForm.EXACT,
              min = 0,
              max = 1_000_000,
              blank = "Blank: 1.",
              help = "Pieces, persons, litres, km.")
          Double qty,
      @Input(
              key = "unit",
              heading = "Price for",
              blank = "Blank: once.",
              help = "What the price is for.")
          PriceUnit unit,
      @Input(
              key = "times",
              heading = "× days",
              form = NumberForm.EXACT,
              min = 0,
              max = 3660,
              blank = "Blank: 1; check where the price is for a day, a week or an hour.",
              help =
                  "What Price for says: days, weeks or hours. By the hour with Hours a day: days.")
          Double times,
      @Input(
              key = "price",
              heading = "Price",
              form = NumberForm.MONEY,
              min = -100_000_000,
              max = 100_000_000,
              blank = "Blank: costs nothing, check.",
              help = "Quote or price list, of one, in the line's currency; minus for a reduction.")
          Double price,
      @Input(
              key = "count",
              heading = "Count",
              blank = "Blank: none.",
              help = "A row of Imported, by which the quantity is multiplied.")
          String count,
      @Input(
              key = "minTimes",
              heading = "Min. charged",
              form = NumberForm.EXACT,
              min = 0,
              max = 3660,
              blank = "Blank: none.",
              help = "Fewest days or weeks charged.")
          Double minTimes,
      @Input(key = "currency", heading = "Currency", blank = "Blank: that of Project.")
          String currency,
      @Input(
              key = "discount",
              heading = "Discount",
              form = NumberForm.FINE_SHARE,
              min = 0,
              max = 1,
              blank = "Blank: none.",
              help = "Share off the line.")
          Double discount,
      @Input(
              key = "tax",
              heading = "Tax",
              form = NumberForm.FINE_SHARE,
              min = 0,
              max = 1,
              blank = "Blank: that of Project; crew has none.")
          Double tax,
      @Input(
              key = "recoverable",
              heading = "Tax reclaimed",
              form = NumberForm.FINE_SHARE,
              min = 0,
              max = 1,
              blank = "Blank: that of Project.")
          Double recoverable,
      @Input(
              key = "due",
              heading = "Due",
              blank = "Blank: on delivery; crew each week.",
              help = "When it is paid.")
          PaymentDue due,
      @Input(
              key = "dueOn",
              heading = "Due on",
              blank = "Blank: by Due.",
              help = "Day agreed or on the invoice.")
          LocalDate dueOn,
      @Input(
              key = "hours",
              heading = "Hours a day",
              unit = "h",
              form = NumberForm.EXACT,
              min = 0.25,
              max = 24,
              blank = "Blank: no overtime.",
              help = "Crew: hours worked a day.")
          Double hours,
      @Input(
              key = "coveredHours",
              heading = "Hours in the day rate",
              unit = "h",
              form = NumberForm.EXACT,
              min = 0.5,
              max = 24,
              blank = "Blank: check where hours are typed.",
              help = "Crew by the day or week: paid hours of a day that the rate covers.")
          Double coveredHours,
      @Input(
              key = "fringe",
              heading = "Fringes",
              form = NumberForm.FINE_SHARE,
              min = 0,
              max = 2,
              blank = "Blank: that of Assumptions.",
              help = "Crew: share on pay.")
          Double fringe,
      @Input(
              key = "daysAway",
              heading = "Days away",
              unit = "days",
              form = NumberForm.EXACT,
              min = 0,
              max = 3660,
              blank = "Blank: none.",
              help = "Crew: days with a per diem, of each person.")
          Double daysAway,
      @Input(
              key = "perDiem",
              heading = "Per diem",
              form = NumberForm.MONEY,
              min = 0,
              max = 100_000,
              blank = "Blank: that of Assumptions.",
              help = "Crew.")
          Double perDiem,
      @Input(
              key = "struck",
              heading = "Struck",
              blank = "Blank: no.",
              help = "Yes: looked at and not needed.")
          Boolean struck,
      @Input(
              key = "supplier",
              heading = "Supplier",
              blank = "Blank: check where something is ordered.")
          String supplier,
      @Input(key = "po", heading = "PO no.", blank = "Blank: check where something is ordered.")
          String po,
      @Input(
              key = "ordered",
              heading = "Ordered",
              form = NumberForm.MONEY,
              min = -100_000_000,
              max = 100_000_000,
              blank = "Blank: nothing.",
              help = "Amount of the purchase order, in the budget's currency.")
          Double ordered,
      @Input(
              key = "poClosed",
              heading = "PO closed",
              blank = "Blank: no.",
              help = "Yes: nothing more comes on it.")
          Boolean poClosed,
      @Input(
              key = "invoice",
              heading = "Invoice no.",
              blank = "Blank: check where something is invoiced.")
          String invoice,
      @Input(
              key = "invoiced",
              heading = "Invoiced",
              form = NumberForm.MONEY,
              min = -100_000_000,
              max = 100_000_000,
              blank = "Blank: nothing.",
              help = "All invoices so far, in the budget's currency, credit notes negative.")
          Double invoiced,
      @Input(
              key = "complete",
              heading = "Complete",
              blank = "Blank: no.",
              help = "Yes: nothing more comes on this line.")
          Boolean complete,
      @Input(
              key = "estimate",
              heading = "Estimate to complete",
              form = NumberForm.MONEY,
              min = -100_000_000,
              max = 100_000_000,
              blank = "Blank: what is planned less cost to date, not beyond 0.",
              help = "0: nothing more comes.")
          Double estimate,
      @Input(
              key = "paid",
              heading = "Paid",
              form = NumberForm.MONEY,
              min = -100_000_000,
              max = 100_000_000,
              blank = "Blank: nothing.",
              help = "So far, with tax. For Cash flow only.")
          Double paid,
      @Input(
              key = "budget",
              heading = "Budget approved",
              form = NumberForm.MONEY,
              min = -100_000_000,
              max = 100_000_000,
              blank = "Blank: 0 once the budget is approved.",
              help = "Written by Approve budget; do not type here.")
          Double budget,
      @Input(
              key = "changes",
              heading = "Approved changes",
              form = NumberForm.MONEY,
              min = -100_000_000,
              max = 100_000_000,
              blank = "Blank: none.",
              help = "Approved after the budget, minus is less.")
          Double changes,
      @Input(
              key = "fromContingency",
              heading = "From contingency",
              form = NumberForm.MONEY,
              min = 0,
              max = 100_000_000,
              blank = "Blank: nothing.",
              help = "Part of the approved changes that comes out of the contingency.")
          Double fromContingency) {}

  /** Money that comes back. */
  @Table(key = "deposits", heading = "Deposits", rows = 12)
  public record Deposit(
      @Input(key = "to", heading = "Deposit to", help = "Who asks for it.") String to,
      @Input(
              key = "amount",
              heading = "Amount",
              form = NumberForm.MONEY,
              min = 0,
              max = 100_000_000,
              help = "What is not given back later is a line of the type loss.")
          Double amount,
      @Input(key = "out", heading = "Out on", blank = "Blank: Ordered on of Project.")
          LocalDate out,
      @Input(
              key = "back",
              heading = "Back on",
              blank = "Blank: it counts as out, check.",
              help = "As agreed.")
          LocalDate back) {}

  /** One change each, beside the plan. */
  @Table(key = "scenarios", heading = "Scenarios", rows = 12)
  public record Scenario(
      @Input(
              key = "scenario",
              heading = "Scenario",
              help = "A day over, a night more, a late return.")
          String scenario,
      @Input(
              key = "type",
              heading = "Type",
              blank = "Blank: all lines.",
              help = "Lines that it changes.")
          CostType type,
      @Input(
              key = "dearer",
              heading = "Dearer",
              form = NumberForm.FINE_SHARE,
              min = -1,
              max = 10,
              blank = "Blank: no.",
              help = "Share on the price of what is not invoiced yet.")
          Double dearer,
      @Input(
              key = "moreTimes",
              heading = "More days",
              form = NumberForm.EXACT,
              min = -3660,
              max = 3660,
              blank = "Blank: none.",
              help =
                  "Days more for these lines; what is paid once, counted in all or complete stays.")
          Double moreTimes,
      @Input(
              key = "other",
              heading = "Other",
              form = NumberForm.MONEY,
              min = -100_000_000,
              max = 100_000_000,
              blank = "Blank: nothing.",
              help = "Anything else it costs.")
          Double other) {}

  /** Ways to power the same days, side by side. */
  @Table(key = "options", heading = "Options", rows = 8)
  public record Option(
      @Input(key = "option", heading = "Option", help = "Batteries, generator, utility supply.")
          String option,
      @Input(
              key = "hire",
              heading = "Day rate",
              form = NumberForm.MONEY,
              min = 0,
              max = 10_000_000,
              blank = "Blank: none.",
              help = "Of all its kit, without tax, in the budget's currency.")
          Double hire,
      @Input(
              key = "days",
              heading = "Days",
              form = NumberForm.EXACT,
              min = 0,
              max = 3660,
              blank = "Blank: 1.",
              help = "Days charged.")
          Double days,
      @Input(
              key = "discount",
              heading = "Discount",
              form = NumberForm.FINE_SHARE,
              min = 0,
              max = 1,
              blank = "Blank: none.",
              help = "Share off the hire.")
          Double discount,
      @Input(
              key = "fuel",
              heading = "Fuel",
              unit = "L",
              form = NumberForm.EXACT,
              min = 0,
              max = 1_000_000,
              blank = "Blank: none.",
              help = "Diesel.")
          Double fuel,
      @Input(
              key = "energy",
              heading = "Energy",
              unit = "kWh",
              form = NumberForm.EXACT,
              min = 0,
              max = 1_000_000,
              blank = "Blank: none.",
              help = "From a supply, charging included.")
          Double energy,
      @Input(
              key = "crew",
              heading = "Crew",
              unit = "h",
              form = NumberForm.EXACT,
              min = 0,
              max = 100_000,
              blank = "Blank: none.",
              help = "Hours of work, of all persons.")
          Double crew,
      @Input(
              key = "risk",
              heading = "Risks",
              blank = "Blank: check: every option can fail.",
              help = "In words, for whoever decides.")
          String risk,
      @Input(
              key = "other",
              heading = "Other",
              form = NumberForm.MONEY,
              min = 0,
              max = 10_000_000,
              blank = "Blank: none.",
              help = "Connections, calls, transport, operator.")
          Double other,
      @Input(
              key = "weight",
              heading = "Weight",
              unit = "kg",
              form = NumberForm.EXACT,
              min = 0,
              max = 1_000_000,
              blank = "Blank: not known.",
              help = "Of all its kit.")
          Double weight) {}

  /** What batteries have to do. */
  @Table(key = "mix", heading = "Battery mix", rows = 1, upright = true)
  public record Mix(
      @Input(
              key = "energy",
              heading = "Energy",
              unit = "Wh",
              form = NumberForm.EXACT,
              min = 1,
              max = 1_000_000,
              help = "Of the part of the day without mains or charging.")
          Double energy,
      @Input(
              key = "power",
              heading = "Power",
              unit = "W",
              form = NumberForm.EXACT,
              min = 0,
              max = 1_000_000,
              blank = "Blank: 0.",
              help = "Peak of all devices together.")
          Double power,
      @Input(
              key = "usable",
              heading = "Usable energy",
              form = NumberForm.FINE_SHARE,
              min = 0.05,
              max = 1,
              blank = "Blank: all of it, check.",
              help = "Share of the rated Wh that age and cold leave.")
          Double usable,
      @Input(
              key = "maxWeight",
              heading = "Max. weight",
              unit = "kg",
              form = NumberForm.EXACT,
              min = 0.1,
              max = 1_000_000,
              blank = "Blank: no limit.",
              help = "Of the mix.")
          Double maxWeight,
      @Input(
              key = "travellers",
              heading = "Travellers",
              form = NumberForm.EXACT,
              min = 1,
              max = 1000,
              blank = "Blank: they do not fly.",
              help = "Persons who take them as carry-on; rules: battery travel list.")
          Double travellers) {}

  /** Types of batteries to choose from. */
  @Table(key = "batteries", heading = "Batteries", rows = 12)
  public record Battery(
      @Input(key = "battery", heading = "Battery", help = "Type, as the rental house names it.")
          String battery,
      @Input(
              key = "wattHours",
              heading = "Energy of one",
              unit = "Wh",
              form = NumberForm.EXACT,
              min = 1,
              max = 100_000,
              help = "As on its label.")
          Double wattHours,
      @Input(
              key = "maxWatts",
              heading = "Max. power of one",
              unit = "W",
              form = NumberForm.EXACT,
              min = 1,
              max = 100_000,
              help = "Volts × max. amps of one.")
          Double maxWatts,
      @Input(
              key = "price",
              heading = "Price of one",
              form = NumberForm.MONEY,
              min = 0,
              max = 1_000_000,
              help = "For the job, in the budget's currency; 0 for your own.")
          Double price,
      @Input(
              key = "weight",
              heading = "Weight of one",
              unit = "kg",
              form = NumberForm.EXACT,
              min = 0.01,
              max = 10_000,
              blank = "Blank: not known; a stop where Max. weight is filled in.")
          Double weight,
      @Input(
              key = "available",
              heading = "Available",
              form = NumberForm.EXACT,
              min = 0,
              max = 100_000,
              blank = "Blank: as many as needed.",
              help = "Whole pieces.")
          Double available,
      @Input(
              key = "perTraveller",
              heading = "Max. per traveller",
              form = NumberForm.EXACT,
              min = 0,
              max = 100,
              blank = "Blank: no limit; check where Travellers is filled in.",
              help = "Whole pieces; types with the same or a lower limit count together.")
          Double perTraveller) {}
}
