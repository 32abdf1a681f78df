package org.setpower.plan.quote;

import java.math.BigDecimal;
import java.util.Arrays;
import java.util.List;
import org.setpower.plan.common.Phrase;

/** What the client's page says beside what is typed. */
enum PageText {
  OTHER("Other items"),
  PER_DAY("a day"),
  PER_WEEK("a week"),
  EACH("each"),
  UNPRICED("on request"),
  SOLD("Sold"),
  SERVICES("Services"),
  PLAIN("{0}"),
  INSTEAD("{0} (instead of {1})"),
  BY_WEEK("{0}: first week {1}, each later week {2}"),
  BY_WEEK_DAY("{0}: first week {1}, each later week {2}, further days {3} each, at most a week"),
  ON_REQUEST("{0}: price on request, not in the total"),
  SUBTOTAL("Subtotal {0}"),
  HIRE("Hire"),
  DISCOUNT("Order discount {0,number,0.##} % of {1}"),
  DISCOUNT_NET("Order discount {0,number,0.##} % of {1}, on hire without net prices"),
  NET_PRICE("{0}, net price"),
  ALSO_SOLD("{0} (sold)"),
  ALSO_SERVICES("{0} (services)"),
  OPTIONS("Options, not in the total"),
  OPTIONS_DISCOUNT("Options, not in the total; order discount applies to their hire"),
  OPTIONS_WAIVER("Options, not in the total; damage waiver applies to their hire"),
  OPTIONS_BOTH("Options, not in the total; order discount and damage waiver apply to their hire"),
  DISCOUNT_UNDISCOUNTED("Order discount {0,number,0.##} % of {1}, rows without own discount"),
  MINIMUM("Difference to the minimum hire"),
  WAIVER("Damage waiver {0,number,0.##} % of {1}, not insurance"),
  NET("Net"),
  NET_AT("Net at {0,number,0.##} %"),
  NOT_TAXED("Net, not taxed"),
  NOT_TAXED_WHY("Net, not taxed: {0}"),
  DAMAGE_WAIVER("damage waiver"),
  VAT("VAT"),
  TAX("{0} {1,number,0.##} %"),
  TOTAL("Total {0}"),
  DOWN_PAYMENT("Deposit {0,number,0.##} %"),
  BALANCE("Balance"),
  SECURITY("Security deposit, not part of the total"),
  VALUE("Replacement value to insure"),
  VALUE_INCOMPLETE("Replacement value to insure, incomplete: rows without a value: {0,number,0}"),
  DAYS("Charged days: {0}"),
  BY_DATES("every day from out to back, both included; of seven days at most {0,number,0.#}."),
  BY_DAY_TYPE("each day of the schedule by its type."),
  AGREED("{0,number,0.#}, as agreed."),
  AGREED_MOSTLY("{0,number,0.#}, as agreed; in some rows other days, agreed for them."),
  AGREED_BY_ROW("as agreed, in the rows."),
  AGREED_IN_SOME("in some rows as agreed."),
  AGREED_ELSE("{0} All other rows: {1}"),
  MIN_DAYS("{0} At least {1,number,0.#} days."),
  SERVICES_EVERY_DAY("{0} Services by the day: every day."),
  ONE_DAY_WEEKEND("{0} A weekend counts as one day."),
  WEEKS_BEGUN("By the week: a part of a week costs at most a whole one."),
  LATE_DAYS("Late return: each day late at its day rate, less the same discounts."),
  LATE_DAYS_AND_WEEKS(
      "Late return: each day late at its day rate; what is hired by the week, by the rule of the"
          + " hire; both less the same discounts."),
  LATE_AS_HIRE(
      "Late return: days late are charged by the rule of the hire, less the same discounts."),
  WAIVED(
      "A damage waiver is charged, so no certificate of insurance is asked for. It is not"
          + " insurance: what it covers is below."),
  WAIVED_OPEN(
      "A damage waiver is charged, so no certificate of insurance is asked for. It is not"
          + " insurance."),
  WAIVER_EXCESS("Damage to hired items: with the waiver at most {0} is charged for each piece."),
  WAIVER_LOSS_FULL("Loss and theft are charged in full: the waiver does not cover them."),
  WAIVER_LOSS_EXCESS("Loss and theft: with the waiver at most {0} is charged for each piece."),
  PAYMENT("Payment: {0}"),
  BANK("Bank: {0}"),
  QUOTED("{0}, revision {1}"),
  ACCEPTANCE("Accepted: total {0} {1}."),
  ACCEPTANCE_OF("Accepted: quote {0}, total {1} {2}."),
  SIGNATURE("Place and date {0}   Name {0}   Signature {0}"),
  RETURNED("{0}: {1}"),
  AND("{0}; {1}"),
  LATE("late"),
  LATE_BY_DAY("late, {0,number,0.##} of {1,number,0} days charged at {2}"),
  LATE_BY_WEEK("late, hire of {0,number,0} days {1} less hire of {2,number,0} days {3}"),
  LATE_FREE("late, free of charge"),
  LESS("{0}, less {1,number,0.##} %"),
  LOST("lost"),
  LOST_EXCESS("loss of {0}, charged up to the excess"),
  DAMAGED("damaged"),
  DAMAGED_EXCESS("damage of {0}, charged up to the excess"),
  CHARGED("other charge"),
  NOT_BACK("not back"),
  SUM("Total"),
  SUM_WITHOUT_WEIGHT("Total, incomplete: rows without a weight: {0,number,0}"),
  SUM_WITHOUT_VALUE("Total, incomplete: rows without a value: {0,number,0}"),
  SUM_INCOMPLETE("Total, incomplete: rows without a weight or value: {0,number,0}"),
  CHARGES("Charges"),
  CHARGES_SO_FAR("Charges so far; points still open: {0,number,0}"),
  LESS_SECURITY("Less security deposit"),
  GIVE_BACK("Security deposit to give back"),
  GIVE_BACK_SO_FAR("Security deposit to give back, so far"),
  TO_PAY("Still to pay"),
  TO_PAY_SO_FAR("Still to pay, so far"),
  APART("Balance of the quote, due apart from this"),
  EXCLUDED("Rows on request: {0,number,0}. Their price is not in the total.");

  private static final BigDecimal HUNDRED = BigDecimal.valueOf(100);

  private final String pattern;

  PageText(String pattern) {
    this.pattern = pattern;
  }

  Phrase of(Object... arguments) {
    return Phrase.of(pattern, arguments);
  }

  /** A share as a percentage; money is shown with all its decimals, a double as the text says. */
  static double percent(BigDecimal share) {
    return share.multiply(HUNDRED).doubleValue();
  }

  /** Those that have words: the others are the same in every language. */
  static List<String> patterns() {
    return Arrays.stream(values())
        .map(t -> t.pattern)
        .filter(p -> !p.replaceAll("\\{[^}]*}|[ %]", "").isEmpty())
        .toList();
  }
}
