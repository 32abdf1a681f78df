package org.setpower.registry.groups;

import static org.setpower.registry.groups.HireParameters.BACK_DATE;
import static org.setpower.registry.groups.HireParameters.CURRENCY;
import static org.setpower.registry.groups.HireParameters.DAY_RATE;
import static org.setpower.registry.groups.HireParameters.MIN_DAYS;
import static org.setpower.registry.groups.HireParameters.OUT_DATE;
import static org.setpower.registry.groups.Parameters.EFFICIENCY;
import static org.setpower.registry.groups.Parameters.WATT_HOURS;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Currency;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.setpower.base.CalculationStep;
import org.setpower.base.Checks;
import org.setpower.base.EvaluationException;
import org.setpower.base.Unit;
import org.setpower.hire.BreakEven;
import org.setpower.hire.HireDays;
import org.setpower.hire.HireErrorCode;
import org.setpower.hire.Money;
import org.setpower.hire.OrderTax;
import org.setpower.hire.Weekend;
import org.setpower.registry.ArgumentParsers;
import org.setpower.registry.Arguments;
import org.setpower.registry.FunctionGroup;
import org.setpower.registry.FunctionSpec;
import org.setpower.registry.Parameter;
import org.setpower.registry.RangeTable;

/** HIRE: hire money. */
public final class HireFunctions {
  private HireFunctions() {}

  static final FunctionGroup GROUP = new FunctionGroup("HIRE", "hire and money");

  private static final String TRADE = "trade practice of rental houses; it varies by house";
  private static final String ROUNDING = "ISO 4217 minor units; half up, in decimals";

  private static final Parameter<Double> DAYS_PER_WEEK =
      Parameter.of(
              "days_per_week",
              "Days charged for a week",
              Unit.DAY,
              Parameter.Shape.SINGLE,
              ArgumentParsers.number((n, v) -> Checks.atMost(n, Checks.above(n, v, 0), 7)))
          .orElse(3.0);

  private static final Parameter<Weekend> WEEKEND =
      Parameter.of(
              "weekend",
              "How Saturday and Sunday count: \"two days\", \"one day\", or \"Friday to Monday\""
                  + " (one day, and pick-up on Friday and return on Monday count none)",
              Unit.NONE,
              Parameter.Shape.SINGLE,
              ArgumentParsers.word(Weekend.class))
          .orElse(Weekend.TWO_DAYS);

  public static final FunctionSpec DAYS =
      GROUP
          .function("DAYS")
          .description("Returns the charged days of a hire; the days out and back both count")
          .parameters(OUT_DATE, BACK_DATE, DAYS_PER_WEEK, MIN_DAYS, WEEKEND)
          .returns(Unit.DAY, "Charged days")
          .formula(
              "whole weeks · days_per_week + the rest, at most days_per_week; at least min_days")
          .source(TRADE)
          .errorCodes(HireErrorCode.BACK_BEFORE_OUT, HireErrorCode.TOO_LONG)
          .example("=HIRE.DAYS(\"2027-01-28\";\"2027-02-09\")", 6.0)
          .steps(
              a ->
                  List.of(
                      new CalculationStep(
                          "n",
                          "calendar days, out and back included",
                          (double) HireDays.calendar(a.get(OUT_DATE), a.get(BACK_DATE)),
                          Unit.DAY,
                          "")))
          .implementation(
              a ->
                  HireDays.charged(
                      a.get(OUT_DATE),
                      a.get(BACK_DATE),
                      a.get(DAYS_PER_WEEK),
                      a.get(MIN_DAYS),
                      a.get(WEEKEND)));

  private static final Parameter<Object> DATES =
      Parameters.range("dates", "Days of the schedule; a day may have several rows", Unit.NONE)
          .asDate();
  private static final Parameter<Object> KIND_RANGE =
      Parameters.range("kinds", "Type of each day: \"shoot\", \"prep\", \"travel\" …", Unit.NONE);
  private static final Parameter<Map<String, Double>> KIND_SHARES =
      Parameter.of(
          "kind_shares",
          "Two columns: type of day, share of a day charged",
          Unit.NONE,
          Parameter.Shape.RANGE,
          HireFunctions::kindShares);
  private static final Parameter<LocalDate> FIRST =
      OUT_DATE.orElse(null, "the first day of the schedule");
  private static final Parameter<LocalDate> LAST =
      BACK_DATE.orElse(null, "the last day of the schedule");

  public static final FunctionSpec KINDS =
      GROUP
          .function("KINDS")
          .description("Returns the charged days of a schedule by type of day; a date counts once")
          .parameters(DATES, KIND_RANGE, KIND_SHARES, FIRST, LAST, MIN_DAYS)
          .returns(Unit.DAY, "Charged days")
          .formula("Σ over the dates of the highest share of their types; at least min_days")
          .source(TRADE)
          .errorCodes(
              HireErrorCode.UNKNOWN_KIND,
              HireErrorCode.KIND_TWICE,
              HireErrorCode.BACK_BEFORE_OUT,
              HireErrorCode.TOO_LONG)
          .example(
              "=HIRE.KINDS({\"2027-02-05\"|\"2027-02-05\"|\"2027-02-09\"};"
                  + "{\"shoot\"|\"shoot\"|\"travel\"};{\"shoot\";1|\"travel\";0.5})",
              1.5)
          .implementation(
              a ->
                  HireDays.byKind(
                      schedule(a), a.get(KIND_SHARES), a.get(FIRST), a.get(LAST), a.get(MIN_DAYS)));

  private static final Parameter<Double> QUANTITY =
      Parameter.of(
          "quantity",
          "Quantity",
          Unit.PIECES,
          Parameter.Shape.SINGLE,
          ArgumentParsers.number((n, v) -> Checks.atLeast(n, v, 0)));

  private static final Parameter<Double> CHARGEABLE_DAYS =
      Parameters.notNegative("chargeable_days", "Days charged", Unit.DAY);

  private static final Parameter<Double> DISCOUNT =
      Parameters.share("discount", "Share taken off the line").orElse(0.0);

  private static final Parameter<Currency> EURO =
      CURRENCY.orElse(Currency.getInstance("EUR"), "EUR");

  public static final FunctionSpec FEE =
      GROUP
          .function("FEE")
          .description("Returns the fee of a hire line, rounded to the minor unit of the currency")
          .parameters(DAY_RATE, QUANTITY, CHARGEABLE_DAYS, DISCOUNT, EURO)
          .returns(Unit.MONEY, "Fee")
          .formula("day_rate · quantity · chargeable_days · (1 − discount), rounded half up")
          .source(ROUNDING)
          .errorCodes(HireErrorCode.UNKNOWN_CURRENCY, HireErrorCode.NO_MINOR_UNIT)
          .example("=HIRE.FEE(14;10;6;10%)", 756.0)
          .implementation(
              a ->
                  Money.fee(
                          a.get(DAY_RATE),
                          a.get(QUANTITY),
                          a.get(CHARGEABLE_DAYS),
                          a.get(DISCOUNT),
                          a.get(EURO))
                      .doubleValue());

  private static final Parameter<Double> AMOUNT =
      Parameter.of(
          "amount",
          "Amount",
          Unit.MONEY,
          Parameter.Shape.SINGLE,
          ArgumentParsers.number((n, v) -> v));

  public static final FunctionSpec ROUND =
      GROUP
          .function("ROUND")
          .description("Returns an amount rounded half up to the minor unit of its currency")
          .parameters(AMOUNT, CURRENCY)
          .returns(Unit.MONEY, "Rounded amount")
          .source(ROUNDING)
          .errorCodes(HireErrorCode.UNKNOWN_CURRENCY, HireErrorCode.NO_MINOR_UNIT)
          .example("=HIRE.ROUND(1.005;\"EUR\")", 1.01)
          .implementation(
              a -> Money.rounded(Money.decimal(a.get(AMOUNT)), a.get(CURRENCY)).doubleValue());

  private static final Parameter<Double> EXCHANGE_RATE =
      Parameters.positive(
          "exchange_rate",
          "Price of one unit of the other currency in the local currency",
          Unit.MONEY);

  public static final FunctionSpec CONVERT =
      GROUP
          .function("CONVERT")
          .description(
              "Returns an amount converted to the local currency, rounded to its minor unit")
          .parameters(AMOUNT, EXCHANGE_RATE, EURO)
          .returns(Unit.MONEY, "Amount in the local currency")
          .formula("amount · exchange_rate, rounded half up")
          .source(ROUNDING)
          .caution("Enter the exchange rate yourself; bank charges are not included")
          .errorCodes(HireErrorCode.UNKNOWN_CURRENCY, HireErrorCode.NO_MINOR_UNIT)
          .example("=HIRE.CONVERT(1250;0.0875)", 109.38)
          .implementation(
              a -> Money.converted(a.get(AMOUNT), a.get(EXCHANGE_RATE), a.get(EURO)).doubleValue());

  private static final Parameter<Double> INSTALMENT_NUMBER =
      Parameter.of(
          "number",
          "Number of the instalment, from 1",
          Unit.NONE,
          Parameter.Shape.SINGLE,
          ArgumentParsers.number((n, v) -> Checks.atLeast(n, Checks.whole(n, v), 1)));

  private static final Parameter<Double> INSTALMENTS =
      Parameter.of(
          "instalments",
          "Number of instalments",
          Unit.NONE,
          Parameter.Shape.SINGLE,
          ArgumentParsers.number(
              (n, v) -> Checks.atMost(n, Checks.atLeast(n, Checks.whole(n, v), 1), 1000)));

  public static final FunctionSpec INSTALMENT =
      GROUP
          .function("INSTALMENT")
          .description("Returns one of equal instalments; their sum is exactly the amount")
          .parameters(AMOUNT, INSTALMENT_NUMBER, INSTALMENTS, EURO)
          .returns(Unit.MONEY, "Instalment")
          .formula(
              "rounded(amount · number/instalments) − rounded(amount · (number − 1)/instalments)")
          .source(ROUNDING)
          .errorCodes(HireErrorCode.UNKNOWN_CURRENCY, HireErrorCode.NO_MINOR_UNIT)
          .example("=HIRE.INSTALMENT(100;2;3)", 33.34)
          .implementation(
              a -> {
                int of = a.get(INSTALMENTS).intValue();
                int number = (int) Checks.atMost("number", a.get(INSTALMENT_NUMBER), of);
                return Money.instalment(a.get(AMOUNT), number, of, a.get(EURO)).doubleValue();
              });

  private static final Parameter<Double> HOURLY_RATE =
      Parameters.notNegative("hourly_rate", "Pay per hour", Unit.MONEY);

  private static final Parameter<Double> HOURS_WORKED =
      Parameters.notNegative("hours_worked", "Total hours worked", Unit.HOUR);

  private static final Parameter<Double> HOURS_A_DAY =
      Parameter.of(
          "hours_a_day",
          "Hours of one day; all days count as equally long",
          Unit.HOUR,
          Parameter.Shape.SINGLE,
          ArgumentParsers.number((n, v) -> Checks.atMost(n, Checks.above(n, v, 0), 24)));

  private static final Parameter<Double> OVERTIME_AFTER =
      Parameters.notNegative("overtime_after", "Hours of a day at the plain rate", Unit.HOUR);

  private static final Parameter<Double> OVERTIME_MORE =
      Parameter.of(
          "overtime_more",
          "Share paid on top in overtime: 50 % for one and a half times the rate",
          Unit.SHARE,
          Parameter.Shape.SINGLE,
          ArgumentParsers.number((n, v) -> Checks.atMost(n, Checks.atLeast(n, v, 0), 4)));

  public static final FunctionSpec OVERTIME =
      GROUP
          .function("OVERTIME")
          .description("Returns the overtime supplement on the pay of hours worked")
          .parameters(HOURLY_RATE, HOURS_WORKED, HOURS_A_DAY, OVERTIME_AFTER, OVERTIME_MORE, EURO)
          .returns(Unit.MONEY, "Overtime supplement")
          .formula(
              "hourly_rate · hours_worked · max(0, 1 − overtime_after/hours_a_day) · overtime_more")
          .source("arithmetic; the hours and the share stand in the crew's agreement")
          .caution("Night, rest and holiday rules of an agreement are not included")
          .errorCodes(HireErrorCode.UNKNOWN_CURRENCY, HireErrorCode.NO_MINOR_UNIT)
          .example("=HIRE.OVERTIME(38;23.5;11.75;10;50%)", 66.5)
          .implementation(
              a ->
                  Money.overtime(
                          a.get(HOURLY_RATE),
                          a.get(HOURS_WORKED),
                          a.get(HOURS_A_DAY),
                          a.get(OVERTIME_AFTER),
                          a.get(OVERTIME_MORE),
                          a.get(EURO))
                      .doubleValue());

  private static final Parameter<Object> AMOUNTS =
      Parameters.range("amounts", "Net amounts of the lines", Unit.MONEY);
  private static final Parameter<Object> RATES =
      Parameters.range("rates", "Rate of tax of each line", Unit.SHARE);
  private static final Parameter<Object> ORDER_DISCOUNT =
      Parameters.range(
              "order_discount", "Share taken off the order; one value, or one a line", Unit.SHARE)
          .orElse(0.0);

  public static final FunctionSpec TAX =
      GROUP
          .function("TAX")
          .description(
              "Returns the tax of an order by rate, each on the rounded base after the discount")
          .parameters(AMOUNTS, RATES, ORDER_DISCOUNT, EURO)
          .returnsTable("Tax by rate", "rate", "base (money)", "tax (money)", "gross (money)")
          .formula("base = rounded Σ amount · (1 − order_discount); tax = rounded base · rate")
          .source(ROUNDING)
          .caution("Enter the tax rates yourself; ask an accountant whether tax is due, and where")
          .errorCodes(HireErrorCode.UNKNOWN_CURRENCY, HireErrorCode.NO_MINOR_UNIT)
          .example("=HIRE.TAX({100|50};{0.2|0.2};5%)", 0.2)
          .implementation(HireFunctions::tax);

  public static final FunctionSpec TOTAL =
      GROUP
          .function("TOTAL")
          .description("Returns the total of an order with discount and tax")
          .parameters(AMOUNTS, RATES, ORDER_DISCOUNT, EURO)
          .returns(Unit.MONEY, "Total with tax")
          .formula("the sum of base and tax over the rates of HIRE.TAX")
          .source(ROUNDING)
          .caution("Enter the tax rates yourself; ask an accountant whether tax is due, and where")
          .errorCodes(HireErrorCode.UNKNOWN_CURRENCY, HireErrorCode.NO_MINOR_UNIT)
          .example("=HIRE.TOTAL({100|50};{0.2|0};5%)", 161.5)
          .implementation(a -> OrderTax.total(lines(a), a.get(EURO)).doubleValue());

  private static final Parameter<Double> PURCHASE =
      Parameters.notNegative("purchase", "Purchase price", Unit.MONEY);
  private static final Parameter<Double> RESALE =
      Parameters.notNegative("resale", "Resale price", Unit.MONEY);
  private static final Parameter<Double> UPKEEP_PER_DAY =
      Parameters.notNegative(
              "upkeep_per_day", "Maintenance of owned equipment per day of use", Unit.MONEY)
          .orElse(0.0);

  public static final FunctionSpec BREAKEVEN =
      GROUP
          .function("BREAKEVEN")
          .description("Returns the hire days after which owning is cheaper")
          .parameters(PURCHASE, RESALE, DAY_RATE, UPKEEP_PER_DAY)
          .returns(Unit.DAY, "Hire days")
          .formula("(purchase − resale) / (day_rate − upkeep_per_day)")
          .source("arithmetic; storage, interest and idle days are not included")
          .errorCodes(HireErrorCode.NEVER_PAYS)
          .example("=HIRE.BREAKEVEN(690;200;14)", 35.0)
          .implementation(
              a ->
                  BreakEven.breakEvenDays(
                      a.get(PURCHASE), a.get(RESALE), a.get(DAY_RATE), a.get(UPKEEP_PER_DAY)));

  private static final Parameter<Double> PRICE =
      Parameters.notNegative("price", "Price of the battery", Unit.MONEY);
  private static final Parameter<Double> CYCLES =
      Parameters.positive("cycles", "Full cycles over the battery's life", Unit.NONE);
  private static final Parameter<Double> HEALTH_AT_END =
      Parameter.of(
              "health_at_end",
              "State of health at the end of life",
              Unit.SHARE,
              Parameter.Shape.SINGLE,
              ArgumentParsers.number((n, v) -> Checks.above(n, Checks.share(n, v), 0)))
          .orElse(0.8);
  private static final Parameter<Double> GETS_THROUGH = EFFICIENCY.orElse(1.0);

  public static final FunctionSpec PERKWH =
      GROUP
          .function("PERKWH")
          .description("Returns lifetime cost per kWh delivered")
          .parameters(PRICE, WATT_HOURS, CYCLES, HEALTH_AT_END, GETS_THROUGH)
          .returns(Unit.MONEY, "Cost per kWh delivered")
          .formula("price / (Wh/1000 · cycles · (1 + health_at_end)/2 · efficiency)")
          .source("arithmetic; mean capacity over the life")
          .caution("The electricity for charging is not included")
          .example("=HIRE.PERKWH(690;294;500)", 5.2154)
          .implementation(
              a ->
                  BreakEven.perKilowattHour(
                      a.get(PRICE),
                      a.get(WATT_HOURS),
                      a.get(CYCLES),
                      a.get(HEALTH_AT_END),
                      a.get(GETS_THROUGH)));

  private static Map<String, Double> kindShares(String name, Object raw) {
    Map<String, Double> shares = new HashMap<>();
    for (RangeTable.Row row : RangeTable.of(name, raw, "kind", "share").filledRows()) {
      double share = Checks.share(row.nameOf(1), row.number(1));
      Double before = shares.put(HireDays.plain(row.text(0)), share);
      if (before != null && before != share) {
        throw new EvaluationException(HireErrorCode.KIND_TWICE, row.text(0), before, share);
      }
    }
    return shares;
  }

  private static List<HireDays.Day> schedule(Arguments a) {
    String[] columns = {"dates", "kinds"};
    List<HireDays.Day> days = new ArrayList<>();
    for (RangeTable.Row row :
        RangeTable.beside("the days", columns, a.get(DATES), a.get(KIND_RANGE)).filledRows()) {
      days.add(new HireDays.Day(row.number(), row.date(0), row.text(1)));
    }
    return days;
  }

  private static List<OrderTax.Line> lines(Arguments a) {
    String[] columns = {"amounts", "rates", "order_discount"};
    Object discount = a.get(ORDER_DISCOUNT);
    if (discount instanceof Object[][] cells && cells.length * cells[0].length == 1) {
      discount = cells[0][0];
    }
    boolean each = discount instanceof Object[][];
    double shared =
        each ? 0 : Checks.share(columns[2], ArgumentParsers.asNumber(columns[2], discount));
    RangeTable table =
        each
            ? RangeTable.beside("the lines", columns, a.get(AMOUNTS), a.get(RATES), discount)
            : RangeTable.beside(
                "the lines", Arrays.copyOf(columns, 2), a.get(AMOUNTS), a.get(RATES));
    List<OrderTax.Line> lines = new ArrayList<>();
    for (RangeTable.Row row : table.filledRows()) {
      lines.add(
          new OrderTax.Line(
              Checks.finite(row.nameOf(0), row.number(0)),
              Checks.share(row.nameOf(1), row.number(1)),
              each ? Checks.share(row.nameOf(2), row.number(2)) : shared));
    }
    return lines;
  }

  private static Object[][] tax(Arguments a) {
    return OrderTax.rates(lines(a), a.get(EURO)).stream()
        .map(
            r ->
                new Object[] {
                  r.rate().doubleValue(),
                  r.base().doubleValue(),
                  r.tax().doubleValue(),
                  r.gross().doubleValue()
                })
        .toArray(Object[][]::new);
  }
}
