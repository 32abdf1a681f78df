package org.setpower.templates.budget;

import org.setpower.plan.budget.BudgetPlan;
import org.setpower.templates.example.PlanTemplate;
import org.setpower.templates.plan.PlanNotes;
import org.setpower.templates.plan.PlanTab;
import org.setpower.templates.plan.PlanText;
import org.setpower.templates.plan.PlanWorkbook;
import org.setpower.templates.spec.CellFormat;
import org.setpower.templates.spec.CellStyle;
import org.setpower.templates.spec.FieldSpec;

/** The budget of the power of a production as a cost report, with options, scenarios and cash. */
public final class PowerBudget implements PlanTemplate {
  private static final int FINE = 24;
  private static final int NARROW = 48;
  private static final int DETAILED = 64;

  /** Open issues that Summary has room for: more are in the menu. */
  private static final int ISSUES = 6;

  private final PlanWorkbook book =
      PlanWorkbook.of("power-budget", "Power budget", BudgetPlan.MODEL)
          .purpose(
              "What power costs a production: budget, orders, cost to date and estimated final cost"
                  + " by account.")
          .decimals("summary.decimals")
          .closedUp()
          .basis("project.basis");

  /** Declares the budget. */
  public PowerBudget() {
    book.with(
        project(),
        PlanTab.of(
                "Imported",
                "Quantities from a plan: of all days, with yes under Total, or of one day. Lines"
                    + " pick them under Count.")
            .with(book.table("counts").width("count", 60)),
        lines(),
        summary(),
        byLine(),
        options(),
        cash(),
        orders(),
        mix(),
        assumptions());
  }

  private PlanTab project() {
    return PlanTab.of(
            "Project",
            "What the power of a production costs. Fill in currency, tax and dates here, then"
                + " Budget lines; read Summary.")
        .first()
        .with(
            PlanNotes.of(
                "The job",
                FieldSpec.input("Production").help("Its title; on all papers."),
                FieldSpec.input("Revision")
                    .number(CellFormat.COUNT, 0, 999)
                    .help("Add one whenever a paper goes out."),
                FieldSpec.input("Plan").help("The plan and its revision that Imported is from.")),
            book.fields(
                "Money",
                "project",
                "currency",
                "tax",
                "recoverable",
                "columns",
                "amounts",
                "contingency",
                "approved",
                "approvedTotal",
                "approvedContingency",
                "approvalKey",
                "approvals"),
            book.fields(
                "Dates",
                "project",
                "asAt",
                "ordered",
                "delivered",
                "back",
                "firstDay",
                "lastDay",
                "daysAfter",
                "reclaimAfter",
                "weekDays",
                "crewWeekDays"),
            book.fields(
                "Prices for Options", "project", "fuelPrice", "energyPrice", "crewHour", "gridCo2"),
            book.lines("", "project", "verdict", "reasons"),
            book.table("deposits").titled("Deposits"));
  }

  private PlanTab lines() {
    return PlanTab.of(
            "Budget lines",
            "One row for each cost. Fill in description, type, quantity and price; orders and"
                + " invoices stand in the second closed group.")
        .with(
            book.table("lines")
                .optional("count", "struck")
                .optional("po", "fromContingency")
                .pick("count", "counts.count")
                .translated("description")
                .width("description", 50)
                .width("account", 22)
                .width("department", 20)
                .width("type", 20)
                .width("unit", 13)
                .width("price", 20)
                .width("count", 50)
                .width("supplier", 22)
                .width("budgetNow", 20)
                .width("finalCost", 20)
                .width("variance", 20)
                .width("reasons", 80)
                .shows("budgetNow", "finalCost", "variance")
                .more(
                    "counted",
                    "timesCharged",
                    "paidHours",
                    "pay",
                    "fringes",
                    "perDiems",
                    "plannedTyped",
                    "planned",
                    "orderedNow",
                    "invoicedNow",
                    "open",
                    "costToDate",
                    "toComplete",
                    "gross",
                    "reclaimed",
                    "toPay",
                    "paidOn"));
  }

  private PlanTab options() {
    return PlanTab.of(
            "Options & scenarios",
            "Ways to power the same days side by side, without tax; below, one change each beside"
                + " the plan, which does not change.")
        .with(
            book.table("options")
                .titled("Options")
                .width("option", 40)
                .width("hire", 18)
                .width("risk", 64)
                .width("other", 18)
                .width("reasons", 44)
                .optional("risk", "other")
                .shows("cost", "more", "co2", "heavier"),
            book.table("scenarios")
                .titled("Scenarios")
                .width("scenario", 40)
                .width("type", 18)
                .width("other", 18)
                .width("reasons", 64)
                .shows("more", "left"));
  }

  private PlanTab cash() {
    return PlanTab.page(
            "Cash flow",
            "When the money is needed, with tax: by Due of each line and the dates of Project."
                + " Deposits are filled in on Project; they are no cost.")
        .basis("project.cashBasis")
        .flowing()
        .prints(40)
        .grid(FINE)
        .with(
            book.lines("", "summary", "gross", "inCash", "notInCash", "paid", "toPay", "peak"),
            book.list(
                    "weeks",
                    "label",
                    "payments",
                    "depositsOut",
                    "depositsBack",
                    "reclaim",
                    "cash",
                    "soFar")
                .width("label", 40)
                .width("payments", 24)
                .width("depositsOut", 24)
                .width("depositsBack", 24)
                .width("reclaim", 24)
                .width("cash", 32)
                .width("soFar", 24));
  }

  private PlanTab summary() {
    return PlanTab.page("Summary", "The cost report, and the open issues, stops first.")
        .prints(30)
        .grid(NARROW)
        .result()
        .with(
            book.figures(
                4,
                "summary",
                "verdict",
                "budgetBefore",
                "changes",
                "budget",
                "finalCost",
                "variance",
                "contingencyBefore",
                "drawn",
                "contingencyLeft",
                "approved",
                "withheld",
                "lowestOption"),
            book.list("Open issues", ISSUES, "issues", "verdict", "where", "rows", "reasons")
                .width("verdict", 16)
                .width("where", 64)
                .width("rows", 16)
                .width("reasons", 96),
            PlanText.moreTabs(
                "Orders & invoices, Battery mix and Assumptions are hidden: show them with Set"
                    + " Power ▸ Show tabs…, or with Show Sheet in the menu of a tab."),
            PlanText.signatures("Budget approved by, date: ................................"),
            book.list(
                    "report",
                    "label",
                    "budget",
                    "invoiced",
                    "open",
                    "costToDate",
                    "toComplete",
                    "finalCost",
                    "variance")
                .width("label", 40)
                .width("budget", 24)
                .width("invoiced", 20)
                .width("open", 24)
                .width("costToDate", 20)
                .width("toComplete", 20)
                .width("finalCost", 20)
                .width("variance", 24)
                .look("kind", "heading", CellStyle.GROUP)
                .look("kind", "difference", CellStyle.SUM)
                .look("kind", "subtotal", CellStyle.SUM)
                .look("kind", "contingency", CellStyle.SUM)
                .look("kind", "total", CellStyle.TOTAL));
  }

  private PlanTab byLine() {
    return PlanTab.page(
            "Cost report by line", "Cost to date is what is invoiced and what is still on order.")
        .flowing()
        .prints(50)
        .grid(DETAILED, 4)
        .with(
            book.list(
                    "byLine",
                    "label",
                    "account",
                    "department",
                    "worked",
                    "budget",
                    "changes",
                    "costToDate",
                    "toComplete",
                    "finalCost",
                    "variance")
                .tall(2)
                .width("label", 36)
                .width("account", 28)
                .width("department", 24)
                .width("worked", 36)
                .width("budget", 24)
                .width("changes", 24)
                .width("costToDate", 20)
                .width("toComplete", 20)
                .width("finalCost", 20)
                .width("variance", 24)
                .look("kind", "difference", CellStyle.SUM)
                .look("kind", "subtotal", CellStyle.SUM)
                .look("kind", "contingency", CellStyle.SUM)
                .look("kind", "total", CellStyle.TOTAL));
  }

  private PlanTab orders() {
    return PlanTab.page(
            "Orders & invoices",
            "For the accountant: suppliers, numbers and exchange rates. Ordered and invoiced are"
                + " in the basis of the cost report, paid is with tax.")
        .hidden()
        .flowing()
        .kept()
        .grid(NARROW)
        .with(
            book.list(
                    "booked",
                    "account",
                    "label",
                    "worked",
                    "supplier",
                    "po",
                    "invoice",
                    "ordered",
                    "invoiced",
                    "paid")
                .width("account", 20)
                .width("label", 24)
                .width("worked", 20)
                .width("supplier", 24)
                .width("po", 20)
                .width("invoice", 24)
                .width("ordered", 20)
                .width("invoiced", 20)
                .width("paid", 20)
                .look("kind", "total", CellStyle.TOTAL));
  }

  private PlanTab mix() {
    return PlanTab.of(
            "Battery mix",
            "The cheapest mix of batteries that gives energy and power of a job. Type its cost as"
                + " Day rate of an option.")
        .hidden()
        .with(
            book.fields("The job", "mix", "energy", "power", "usable", "maxWeight", "travellers"),
            book.lines(
                "Cheapest mix",
                "mix",
                "verdict",
                "reasons",
                "pieces",
                "cost",
                "usableEnergy",
                "maxPower",
                "weight"),
            book.table("batteries")
                .titled("Batteries to choose from")
                .width("battery", 40)
                .width("reasons", 80)
                .shows("pieces", "cost"));
  }

  private PlanTab assumptions() {
    return PlanTab.of(
            "Assumptions", "Overtime, fringes, per diem and exchange rates of the whole budget.")
        .hidden()
        .with(
            book.fields(
                "Crew", "project", "minimumCall", "rounding", "fringe", "ceiling", "perDiem"),
            book.table("tiers").titled("Overtime"),
            book.table("exchange").titled("Exchange rates"));
  }

  @Override
  public PlanWorkbook workbook() {
    return book;
  }

  @Override
  public String exampleTitle() {
    return "The Salt Road – power budget";
  }
}
