package org.setpower.templates.budget;

import static org.setpower.templates.spec.Formula.calc;
import static org.setpower.templates.spec.Formula.call;
import static org.setpower.templates.spec.Formula.or;
import static org.setpower.templates.spec.Formula.say;

import org.setpower.registry.groups.HireFunctions;
import org.setpower.templates.shared.Job;
import org.setpower.templates.spec.Check;
import org.setpower.templates.spec.Column;
import org.setpower.templates.spec.Field;
import org.setpower.templates.spec.Fields;
import org.setpower.templates.spec.Format;
import org.setpower.templates.spec.Formula;
import org.setpower.templates.spec.Item;
import org.setpower.templates.spec.Tab;
import org.setpower.templates.spec.Table;

/** What holds for the whole budget: currency, tax, prices. */
final class Terms {
  final Job job = new Job();

  final Field currency =
      Job.currency().help("Three letters: EUR, USD, GBP. All sums of this file are in it.");
  final Field tax =
      Field.input("Tax")
          .share()
          .help("The usual rate; a row of Lines may have its own. None: 0%.")
          .named("Job_Tax");
  final Field taxIs =
      Field.input("Tax is")
          .oneOf("reclaimed", "a cost")
          .is("reclaimed")
          .help("a cost: it counts in the budget. Ask your accountant.");
  final Field contingency =
      Field.input("Contingency")
          .share()
          .is(0)
          .help("Share of all lines that is kept for what nobody foresaw.")
          .named("Job_Contingency");

  final Field fuel =
      Field.input("Fuel")
          .oneOf("diesel", "HVO", "petrol")
          .is("diesel")
          .help("What the generator burns.");
  final Field fuelPrice =
      price("Fuel price", "Of a litre, delivered: ask whoever brings it.").named("Job_Fuel_price");
  final Field energyPrice =
      price("Energy price", "Of a kWh from the grid: contract of the house or the quay.")
          .named("Job_Energy_price");
  final Field kilometrePrice = price("Truck", "Of a kilometre.").named("Job_Truck");
  final Field crewPrice = price("Crew", "Of an hour.").named("Job_Crew");
  final Field operatorPrice = price("Operator", "Of an hour with the generator.");
  final Field grid =
      Field.input("Grid of")
          .help("Country whose grid feeds the house supply and the chargers: France, or FR.");

  final Field overtimeAfter =
      Field.input("Overtime after")
          .unit("h")
          .number(Format.TWO, 0, 24)
          .help("Hours of a day at the plain rate, from the crew's agreement. Blank: no overtime.");
  final Field overtimeMore =
      Field.input("Overtime pays more")
          .share(0, 4)
          .help("On top of the rate: 50% for one and a half times the rate.");

  final Field ordered = date("Ordered on", "For what is paid with order.");
  final Field delivered = date("Delivered on", "For what is paid on delivery, or each week.");
  final Field back = date("Back on", "For what is paid on return, each week, or days after.");
  final Field daysAfter =
      Field.input("Days after")
          .unit("days")
          .number(Format.WHOLE, 0, 365)
          .is(30)
          .help("Time to pay a bill, counted from Back on.");

  final Column other =
      Column.input("Currency").needed().wide(52).help("Three letters: USD, GBP, NOK.");
  final Column rate =
      Column.input("Costs")
          .unit(currency)
          .number(Format.RATE, 0.000001, 1_000_000)
          .needed()
          .wide(38)
          .help("What one of it costs in the currency of this file, at your bank.");
  final Column asOf = Column.input("As of").as(Format.DATE).wide(20).help("Date of the rate.");
  final Table rates = Table.of("Exchange rates (only for prices in another currency)", 4);

  Terms() {
    rates
        .columns(other, rate, asOf)
        .checks(
            Check.wrong(
                calc("COUNTIF({};{})>1", other.all(), other),
                say("{} stands here twice: one row for each currency.", other)),
            Check.wrong(
                calc("{}={}", other, currency),
                say("{} is the currency of this file: it needs no rate.", other)),
            Check.look(
                calc("AND({}<>\"\";{}=\"\")", rate, or(asOf, "")),
                Formula.of("Note the date of the rate.")))
        .reasonWide(40);
  }

  private static Field date(String heading, String help) {
    return Field.input(heading).as(Format.DATE).help(help);
  }

  /** An amount of another currency in that of the file; a blank currency is that of the file. */
  Formula inOwn(Formula amount, Column of) {
    return calc(
        "IF({}=\"\";{};{})",
        or(of, ""),
        amount,
        call(HireFunctions.CONVERT, amount, rate.where(other, or(of, "")), currency));
  }

  /** True when a currency has no rate. */
  Formula noRate(Column of) {
    return calc("COUNTIFS({};{};{};\">0\")=0", other.all(), of, rate.all());
  }

  /** The Monday of the week of a date. */
  static Formula weekOf(Formula date) {
    return calc("({}-WEEKDAY({};3))", date, date);
  }

  private Field price(String heading, String help) {
    return Field.input(heading).unit(currency).number(Format.MONEY, 0, 1_000_000).help(help);
  }

  /** So many at a price, rounded; a blank price or number counts as nothing. */
  Formula fee(Object price, Object count) {
    return call(HireFunctions.FEE, filled(price), filled(count), 1, 0, currency);
  }

  /** Says that something is used whose price is not on Job. */
  Check unpriced(Column used, Field price) {
    return Check.stop(
        calc("AND({}>0;{}=\"\")", used, or(price, "")),
        say("{} counts as free: fill in its price on Job.", Formula.of(used.heading())));
  }

  private static Object filled(Object value) {
    return value instanceof Item<?> item && item.isInput() ? Formula.or(item, 0) : value;
  }

  /** A column of money. */
  Column money(String heading, Formula formula) {
    return Column.result(heading, formula).unit(currency).as(Format.MONEY).wide(24);
  }

  /** A column of money to fill. */
  Column moneyInput(String heading) {
    return Column.input(heading).unit(currency).number(Format.MONEY, 0, 100_000_000).wide(22);
  }

  /** An amount, rounded. */
  Formula rounded(Formula amount) {
    return call(HireFunctions.ROUND, amount, currency);
  }

  Tab tab() {
    return job.tab(
        "Power budget",
        "What the power of a job costs. Fill the yellow cells: money here, then From the plan, then"
            + " Lines; Result is the page to send.",
        Fields.of("Money", currency, tax, taxIs, contingency),
        Fields.of("When it is paid", ordered, delivered, back, daysAfter),
        Fields.of("Overtime of the crew", overtimeAfter, overtimeMore),
        Fields.of(
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
