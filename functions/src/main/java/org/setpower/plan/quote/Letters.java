package org.setpower.plan.quote;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import org.setpower.hire.Weekend;
import org.setpower.plan.common.InputRows;
import org.setpower.plan.common.Phrase;
import org.setpower.plan.finding.Finding;
import org.setpower.plan.finding.Verdict;
import org.setpower.plan.quote.QuoteInputs.Client;
import org.setpower.plan.quote.QuoteInputs.House;
import org.setpower.plan.quote.QuoteInputs.Order;
import org.setpower.plan.quote.QuoteInputs.Term;
import org.setpower.plan.quote.terms.DayCounting;
import org.setpower.plan.quote.terms.LineType;
import org.setpower.plan.quote.terms.RateBasis;
import org.setpower.plan.quote.terms.WaivedLoss;

/** Head and foot of the client's page. */
final class Letters {
  private static final int SIGNED = 18; // strokes to write on

  private Letters() {}

  static QuoteResults.Letter of(QuoteRules rules, List<Finding> withheld, List<QuoteLine> fit) {
    if (!withheld.isEmpty()) {
      return QuoteResults.LETTER.row(Finding.verdict(withheld), withheld);
    }
    House house = rules.house();
    Client client = rules.client();
    Order order = rules.order();
    boolean byDates = rules.counted() == DayCounting.BY_DATES;
    return new QuoteResults.Letter(
        Verdict.OK,
        List.of(),
        house.name(),
        house.address(),
        house.taxNumber(),
        house.contact(),
        client.name(),
        client.contact(),
        client.billing(),
        client.delivery(),
        client.site(),
        client.purchaseOrder(),
        client.taxNumber(),
        order.number(),
        order.revision(),
        order.replaces(),
        order.date(),
        order.statedOn(),
        order.validUntil(),
        rules.currency().getCurrencyCode(),
        order.out(),
        order.back(),
        rules.counted(),
        byDates ? (Double) rules.daysPerWeek() : null,
        byDates ? rules.weekend() : null,
        rules.minDays(),
        order.taxName() == null ? "VAT" : order.taxName(),
        house.payment(),
        house.bank(),
        onRequest(fit));
  }

  private static int onRequest(List<QuoteLine> fit) {
    return (int) fit.stream().filter(l -> l.basis() == RateBasis.ON_REQUEST).count();
  }

  /** What stands below the lines, in order. */
  static List<QuoteResults.ClosingLine> closing(
      QuoteRules rules, OrderSums sums, List<QuoteLine> fit, InputRows<Term> terms) {
    List<Phrase> all = new ArrayList<>(List.of(days(rules, fit)));
    boolean isByWeek = fit.stream().anyMatch(Letters::isByWeek);
    if (isByWeek) {
      all.add(PageText.WEEKS_BEGUN.of());
    }
    if (fit.stream().anyMatch(l -> l.type() == LineType.HIRED)) {
      PageText byDay = isByWeek ? PageText.LATE_DAYS_AND_WEEKS : PageText.LATE_DAYS;
      all.add((rules.everyLateDay() ? byDay : PageText.LATE_AS_HIRE).of());
    }
    if (onRequest(fit) > 0) {
      all.add(PageText.EXCLUDED.of((double) onRequest(fit)));
    }
    if (rules.isWaivedInstead()) {
      boolean isBelow = rules.excess().isPresent() || terms.filled().findAny().isPresent();
      all.add((isBelow ? PageText.WAIVED : PageText.WAIVED_OPEN).of());
    }
    rules.excess().ifPresent(e -> all.addAll(waiver(rules, e)));
    if (rules.house().payment() != null) {
      all.add(PageText.PAYMENT.of(rules.house().payment()));
    }
    if (rules.house().bank() != null) {
      all.add(PageText.BANK.of(rules.house().bank()));
    }
    terms.filled().forEach(t -> all.add(PageText.PLAIN.of(t.value().paragraph())));
    all.add(acceptance(rules, sums));
    all.add(PageText.SIGNATURE.of("_".repeat(SIGNED)));
    return all.stream().map(QuoteResults.ClosingLine::new).toList();
  }

  /** What is signed names what it is, as it may stand on a page of its own. */
  private static Phrase acceptance(QuoteRules rules, OrderSums sums) {
    String currency = rules.currency().getCurrencyCode();
    Order order = rules.order();
    if (order.number() == null) {
      return PageText.ACCEPTANCE.of(currency, sums.total());
    }
    Object quote =
        order.revision() == null
            ? order.number()
            : PageText.QUOTED.of(order.number(), order.revision());
    return PageText.ACCEPTANCE_OF.of(quote, currency, sums.total());
  }

  /** What a client who pays the waiver is still charged. */
  private static List<Phrase> waiver(QuoteRules rules, BigDecimal excess) {
    boolean isLossLimited = rules.house().waivedLoss() == WaivedLoss.UP_TO_EXCESS;
    return List.of(
        PageText.WAIVER_EXCESS.of(excess),
        isLossLimited ? PageText.WAIVER_LOSS_EXCESS.of(excess) : PageText.WAIVER_LOSS_FULL.of());
  }

  /** How days are charged, in words: as agreed, and the rule only where some row follows it. */
  private static Phrase days(QuoteRules rules, List<QuoteLine> fit) {
    List<QuoteLine> byDay = fit.stream().filter(l -> l.basis() == RateBasis.DAY).toList();
    boolean isServedByDay =
        rules.counted() == DayCounting.BY_DATES
            && byDay.stream().anyMatch(l -> l.type() == LineType.SERVICE && isByRule(l));
    Phrase rule = isServedByDay ? PageText.SERVICES_EVERY_DAY.of(daysRule(rules)) : daysRule(rules);
    boolean isAgreed = byDay.stream().anyMatch(QuoteLine::isAsAgreedForOrder);
    boolean isAgreedByRow = byDay.stream().anyMatch(l -> l.item().agreedDays() != null);
    boolean isByRule = byDay.isEmpty() || byDay.stream().anyMatch(Letters::isByRule);
    Phrase agreed;
    if (isAgreed) {
      PageText how = isAgreedByRow ? PageText.AGREED_MOSTLY : PageText.AGREED;
      agreed = how.of(rules.order().agreedDays());
    } else if (isAgreedByRow) {
      agreed = (isByRule ? PageText.AGREED_IN_SOME : PageText.AGREED_BY_ROW).of();
    } else {
      return PageText.DAYS.of(rule);
    }
    return PageText.DAYS.of(isByRule ? PageText.AGREED_ELSE.of(agreed, rule) : agreed);
  }

  private static boolean isByWeek(QuoteLine line) {
    return line.type() == LineType.HIRED && line.basis() == RateBasis.WEEK;
  }

  private static boolean isByRule(QuoteLine line) {
    return !line.isAsAgreedForOrder() && line.item().agreedDays() == null;
  }

  /** The rule of the house, in words. */
  private static Phrase daysRule(QuoteRules rules) {
    boolean byDates = rules.counted() == DayCounting.BY_DATES;
    Phrase rule = byDates ? PageText.BY_DATES.of(rules.daysPerWeek()) : PageText.BY_DAY_TYPE.of();
    Phrase weekend =
        byDates && rules.weekend() != Weekend.TWO_DAYS ? PageText.ONE_DAY_WEEKEND.of(rule) : rule;
    return rules.minDays() > 1 ? PageText.MIN_DAYS.of(weekend, rules.minDays()) : weekend;
  }
}
