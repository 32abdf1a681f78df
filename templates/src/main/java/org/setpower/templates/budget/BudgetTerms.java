package org.setpower.templates.budget;

import static org.setpower.templates.spec.Formula.calc;
import static org.setpower.templates.spec.Formula.call;
import static org.setpower.templates.spec.Formula.or;
import static org.setpower.templates.spec.Formula.say;

import org.setpower.registry.groups.HireFunctions;
import org.setpower.templates.shared.JobSheet;
import org.setpower.templates.spec.CellFormat;
import org.setpower.templates.spec.CellSpec;
import org.setpower.templates.spec.ColumnSpec;
import org.setpower.templates.spec.FieldBlock;
import org.setpower.templates.spec.FieldSpec;
import org.setpower.templates.spec.Formula;
import org.setpower.templates.spec.SheetSpec;
import org.setpower.templates.spec.TableSpec;
import org.setpower.templates.spec.ValidationRule;

/** What holds for the whole budget: currency, tax, prices. */
final class BudgetTerms {
  final JobSheet job = new JobSheet();

  final FieldSpec currency =
      JobSheet.currency().help("Three letters: EUR, USD, GBP. All sums of this file are in it.");
  final FieldSpec tax =
      FieldSpec.input("Tax")
          .share()
          .help("The usual rate; a row of Lines may have its own. None: 0%.")
          .rangeName("Job_Tax");
  final FieldSpec taxIs =
      FieldSpec.input("Tax is")
          .options("reclaimed", "a cost")
          .is("reclaimed")
          .help("a cost: it counts in the budget. Ask your accountant.");
  final FieldSpec contingency =
      FieldSpec.input("Contingency")
          .share()
          .is(0)
          .help("Percentage of all lines held for unforeseen costs.")
          .rangeName("Job_Contingency");

  final FieldSpec fuel =
      FieldSpec.input("Fuel")
          .options("diesel", "HVO", "petrol")
          .is("diesel")
          .help("What the generator burns.");
  final FieldSpec fuelPrice =
      price("Fuel price", "Of a litre, delivered: ask whoever brings it.")
          .rangeName("Job_Fuel_price");
  final FieldSpec energyPrice =
      price("Energy price", "Of a kWh from the grid: contract of the house or the quay.")
          .rangeName("Job_Energy_price");
  final FieldSpec kilometrePrice = price("Truck", "Of a kilometre.").rangeName("Job_Truck");
  final FieldSpec crewPrice = price("Crew", "Of an hour.").rangeName("Job_Crew");
  final FieldSpec operatorPrice = price("Operator", "Of an hour with the generator.");
  final FieldSpec grid =
      FieldSpec.input("Grid of")
          .help("Country whose grid feeds the house supply and the chargers: France, or FR.");

  final FieldSpec overtimeAfter =
      FieldSpec.input("Overtime after")
          .unit("h")
          .number(CellFormat.TWO, 0, 24)
          .help("Hours of a day at the plain rate, from the crew's agreement. Blank: no overtime.");
  final FieldSpec overtimeMore =
      FieldSpec.input("Overtime premium")
          .share(0, 4)
          .help("On top of the rate: 50% for one and a half times the rate.");

  final FieldSpec ordered = date("Ordered on", "For what is paid with order.");
  final FieldSpec delivered = date("Delivered on", "For what is paid on delivery, or each week.");
  final FieldSpec back = date("Back on", "For what is paid on return, each week, or days after.");
  final FieldSpec daysAfter =
      FieldSpec.input("Days after")
          .unit("days")
          .number(CellFormat.WHOLE, 0, 365)
          .is(30)
          .help("Time to pay a bill, counted from Back on.");

  final ColumnSpec other =
      ColumnSpec.input("Currency").required().width(52).help("Three letters: USD, GBP, NOK.");
  final ColumnSpec rate =
      ColumnSpec.input("Costs")
          .unit(currency)
          .number(CellFormat.RATE, 0.000001, 1_000_000)
          .required()
          .width(38)
          .help("What one of it costs in the currency of this file, at your bank.");
  final ColumnSpec asOf =
      ColumnSpec.input("As of").format(CellFormat.DATE).width(20).help("Date of the rate.");
  final TableSpec rates = TableSpec.of("Exchange rates (only for prices in another currency)", 4);

  BudgetTerms() {
    rates
        .columns(other, rate, asOf)
        .checks(
            ValidationRule.wrong(
                calc("COUNTIF({};{})>1", other.all(), other),
                say("Duplicate: {}. One row for each currency.", other)),
            ValidationRule.wrong(
                calc("{}={}", other, currency),
                say("{} is the currency of this file: it needs no rate.", other)),
            ValidationRule.check(
                calc("AND({}<>\"\";{}=\"\")", rate, or(asOf, "")),
                Formula.of("Note the date of the rate.")))
        .reasonWide(40);
  }

  private static FieldSpec date(String heading, String help) {
    return FieldSpec.input(heading).format(CellFormat.DATE).help(help);
  }

  /** An amount of another currency in that of the file; a blank currency is that of the file. */
  Formula inOwn(Formula amount, ColumnSpec of) {
    return calc(
        "IF({}=\"\";{};{})",
        or(of, ""),
        amount,
        call(HireFunctions.CONVERT, amount, rate.lookup(other, or(of, "")), currency));
  }

  /** True when a currency has no rate. */
  Formula noRate(ColumnSpec of) {
    return calc("COUNTIFS({};{};{};\">0\")=0", other.all(), of, rate.all());
  }

  /** The Monday of the week of a date. */
  static Formula weekOf(Formula date) {
    return calc("({}-WEEKDAY({};3))", date, date);
  }

  private FieldSpec price(String heading, String help) {
    return FieldSpec.input(heading)
        .unit(currency)
        .number(CellFormat.MONEY, 0, 1_000_000)
        .help(help);
  }

  /** So many at a price, rounded; a blank price or number counts as nothing. */
  Formula fee(Object price, Object count) {
    return call(HireFunctions.FEE, filled(price), filled(count), 1, 0, currency);
  }

  /** Says that something is used whose price is not on Job. */
  ValidationRule unpriced(ColumnSpec used, FieldSpec price) {
    return ValidationRule.stop(
        calc("AND({}>0;{}=\"\")", used, or(price, "")),
        say("{} counts as free: fill in its price on Job.", Formula.of(used.heading())));
  }

  private static Object filled(Object value) {
    return value instanceof CellSpec<?> item && item.isInput() ? Formula.or(item, 0) : value;
  }

  /** A column of money. */
  ColumnSpec money(String heading, Formula formula) {
    return ColumnSpec.result(heading, formula).unit(currency).format(CellFormat.MONEY).width(24);
  }

  /** A column of money to fill. */
  ColumnSpec moneyInput(String heading) {
    return ColumnSpec.input(heading)
        .unit(currency)
        .number(CellFormat.MONEY, 0, 100_000_000)
        .width(22);
  }

  /** An amount, rounded. */
  Formula rounded(Formula amount) {
    return call(HireFunctions.ROUND, amount, currency);
  }

  SheetSpec tab() {
    return job.tab(
        "Power budget",
        "What the power of a job costs. Fill the yellow cells: money here, then From the plan, then"
            + " Lines; Result is the page to send.",
        FieldBlock.of("Money", currency, tax, taxIs, contingency),
        FieldBlock.of("When it is paid", ordered, delivered, back, daysAfter),
        FieldBlock.of("Overtime of the crew", overtimeAfter, overtimeMore),
        FieldBlock.of(
            "Prices for Options and What if",
            fuel,
            fuelPrice,
            energyPrice,
            kilometrePrice,
            crewPrice,
            operatorPrice,
            grid),
        rates);
  }
}
