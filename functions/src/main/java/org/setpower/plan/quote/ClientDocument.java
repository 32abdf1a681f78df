package org.setpower.plan.quote;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.setpower.hire.Money;
import org.setpower.plan.common.Phrase;
import org.setpower.plan.finding.Finding;
import org.setpower.plan.finding.Identity;
import org.setpower.plan.finding.Verdict;
import org.setpower.plan.quote.QuoteInputs.Item;
import org.setpower.plan.quote.QuoteResults.DocumentLine;
import org.setpower.plan.quote.terms.DiscountBasis;
import org.setpower.plan.quote.terms.LineType;
import org.setpower.plan.quote.terms.RateBasis;

/**
 * The client's page as lines, without a layout: each amount is on it, and the lines add up to the
 * smallest coin. While something stops it, it has one line, which says so.
 */
final class ClientDocument {
  private static final String NO_SECTION = "other";

  private final QuoteRules rules;
  private final OrderSums sums;
  private final List<DocumentLine> lines = new ArrayList<>();
  private boolean hasNetPrices;

  private ClientDocument(QuoteRules rules, OrderSums sums) {
    this.rules = rules;
    this.sums = sums;
  }

  /** The page of a quote that may not be issued. */
  static List<DocumentLine> withheld(List<Finding> why) {
    List<Finding> sorted = why.stream().sorted(Finding.WORST_FIRST).toList();
    return List.of(
        new DocumentLine(
            Finding.verdict(sorted),
            sorted,
            LineKind.NOT_ISSUED,
            PageText.PLAIN.of(sorted.get(0)),
            null,
            null,
            null,
            null,
            null,
            null,
            null,
            null,
            null,
            null,
            null,
            null,
            null,
            null,
            null,
            null,
            null,
            null,
            null));
  }

  /**
   * The page.
   *
   * @param fit rows that are ordered, in the order of the quote
   * @param options rows that are offered only
   */
  static List<DocumentLine> of(
      QuoteRules rules, OrderSums sums, List<QuoteLine> fit, List<QuoteLine> options) {
    ClientDocument document = new ClientDocument(rules, sums);
    document.hasNetPrices = fit.stream().anyMatch(l -> isNet(rules, l));
    document.addSections(fit);
    document.addReductions();
    document.addGroups(fit, LineType.SOLD, LineKind.SOLD, PageText.SOLD);
    document.addGroups(fit, LineType.SERVICE, LineKind.SERVICE, PageText.SERVICES);
    document.addTotals();
    if (!rules.isWaivedInstead()) {
      document.addValue(fit.stream().filter(QuoteLine::isHired).toList());
    }
    document.addOptions(options);
    return List.copyOf(document.lines);
  }

  /** Rows that are not hired, under the headings that they have, else under what they are. */
  private void addGroups(List<QuoteLine> fit, LineType type, LineKind kind, PageText otherwise) {
    Map<String, List<QuoteLine>> groups = new LinkedHashMap<>();
    fit.stream()
        .filter(l -> l.type() == type)
        .forEach(
            l ->
                groups
                    .computeIfAbsent(Identity.of(l.item().section()), k -> new ArrayList<>())
                    .add(l));
    for (List<QuoteLine> group : groups.values()) {
      String heading = group.get(0).item().section();
      boolean isHiredToo =
          fit.stream().anyMatch(l -> l.isHired() && isSame(l.item().section(), heading));
      PageText also = type == LineType.SOLD ? PageText.ALSO_SOLD : PageText.ALSO_SERVICES;
      Phrase shown =
          heading == null ? otherwise.of() : (isHiredToo ? also : PageText.PLAIN).of(heading);
      add(LineKind.SECTION, shown, heading, null, null, null);
      group.forEach(l -> add(kind, l));
    }
  }

  private static boolean isSame(String one, String other) {
    return one != null && Identity.of(one).equals(Identity.of(other));
  }

  /** What is offered with its price and counts in no sum. */
  private void addOptions(List<QuoteLine> options) {
    if (!options.isEmpty()) {
      add(LineKind.SECTION, options(options).of(), null, null, null, null);
      options.forEach(l -> add(LineKind.OPTION, l));
    }
  }

  /** Whether an option that is chosen gets discount and waiver: its line has neither. */
  private PageText options(List<QuoteLine> options) {
    boolean isWaived = rules.isWaived() && options.stream().anyMatch(QuoteLine::isHired);
    boolean isDiscounted =
        rules.isDiscounted() && options.stream().anyMatch(QuoteLine::isDiscounted);
    if (isDiscounted) {
      return isWaived ? PageText.OPTIONS_BOTH : PageText.OPTIONS_DISCOUNT;
    }
    return isWaived ? PageText.OPTIONS_WAIVER : PageText.OPTIONS;
  }

  private void addSections(List<QuoteLine> fit) {
    Map<String, List<QuoteLine>> sections = new LinkedHashMap<>();
    fit.stream()
        .filter(QuoteLine::isHired)
        .forEach(
            l -> sections.computeIfAbsent(Identity.of(section(l)), k -> new ArrayList<>()).add(l));
    for (List<QuoteLine> section : sections.values()) {
      String heading = section(section.get(0));
      Phrase shown = heading.equals(NO_SECTION) ? PageText.OTHER.of() : PageText.PLAIN.of(heading);
      add(LineKind.SECTION, shown, heading, null, null, null);
      section.forEach(l -> add(LineKind.ITEM, l));
      BigDecimal subtotal =
          section.stream()
              .map(QuoteLine::amount)
              .filter(a -> a != null)
              .reduce(rules.rounded(BigDecimal.ZERO), BigDecimal::add);
      add(LineKind.SUBTOTAL, PageText.SUBTOTAL.of(shown), heading, null, null, subtotal);
    }
    if (!sections.isEmpty()) {
      add(LineKind.HIRE, PageText.HIRE.of(), null, null, null, sums.hire());
    }
  }

  private static String section(QuoteLine line) {
    return line.item().section() == null ? NO_SECTION : line.item().section();
  }

  private void addReductions() {
    if (sums.discount().signum() > 0) {
      BigDecimal share = share(rules.order().discount());
      PageText basis =
          hasNetPrices
              ? PageText.DISCOUNT_NET
              : rules.house().discountOn() == DiscountBasis.UNDISCOUNTED
                  ? PageText.DISCOUNT_UNDISCOUNTED
                  : PageText.DISCOUNT;
      Phrase label = basis.of(PageText.percent(share), sums.discountable());
      add(LineKind.DISCOUNT, label, null, share, null, sums.discount().negate());
    }
    if (sums.minimum().signum() > 0) {
      TaxRate rate = rate(OrderSums.MINIMUM);
      add(LineKind.MINIMUM, PageText.MINIMUM.of(), null, null, rate, sums.minimum());
    }
    if (sums.waiver().signum() > 0) {
      BigDecimal share = share(rules.order().waiver());
      Phrase label = PageText.WAIVER.of(PageText.percent(share), sums.waived());
      add(LineKind.WAIVER, label, null, share, rate(OrderSums.WAIVER), sums.waiver());
    }
  }

  private static BigDecimal share(Double typed) {
    return QuoteRules.share(typed);
  }

  /** The rate in which a part that has only one is booked. */
  private TaxRate rate(String part) {
    return sums.rates().entrySet().stream()
        .filter(e -> e.getValue().part(part).signum() != 0)
        .map(Map.Entry::getKey)
        .findFirst()
        .orElse(null);
  }

  private void addTotals() {
    add(LineKind.NET, PageText.NET.of(), null, null, null, sums.net());
    // with one rate its net is the line above; a rate of 0 says why
    boolean isOne = sums.rates().size() == 1;
    sums.rates()
        .forEach(
            (rate, sum) -> {
              if (!isOne || rate.share().signum() == 0) {
                add(LineKind.BASE, base(rate), null, null, null, sum.base());
              }
              Phrase tax = PageText.TAX.of(taxName(), PageText.percent(rate.share()));
              add(LineKind.TAX, tax, null, rate.share(), null, sum.tax());
            });
    Phrase total = PageText.TOTAL.of(rules.currency().getCurrencyCode());
    add(LineKind.TOTAL, total, null, null, null, sums.total());
    if (sums.downPayment().signum() > 0) {
      BigDecimal share = share(rules.order().downPayment());
      Phrase label = PageText.DOWN_PAYMENT.of(PageText.percent(share));
      add(LineKind.DOWN_PAYMENT, label, null, share, null, sums.downPayment());
      add(LineKind.BALANCE, PageText.BALANCE.of(), null, null, null, sums.balance());
    }
    if (sums.security().signum() > 0) {
      add(LineKind.SECURITY, PageText.SECURITY.of(), null, null, null, sums.security());
    }
  }

  /** What the client insures: the pieces quoted, whatever was picked. */
  private void addValue(List<QuoteLine> hired) {
    List<BigDecimal> values =
        hired.stream().flatMap(l -> l.value(l.item().qty()).stream()).toList();
    BigDecimal toInsure = values.stream().reduce(BigDecimal.ZERO, BigDecimal::add);
    int withoutValue = hired.size() - values.size();
    if (toInsure.signum() > 0) {
      Phrase label =
          withoutValue == 0
              ? PageText.VALUE.of()
              : PageText.VALUE_INCOMPLETE.of((double) withoutValue);
      add(LineKind.VALUE, label, null, null, null, toInsure);
    }
  }

  private Object taxName() {
    return rules.order().taxName() == null ? PageText.VAT.of() : rules.order().taxName();
  }

  private static Phrase base(TaxRate rate) {
    if (rate.share().signum() > 0) {
      return PageText.NET_AT.of(PageText.percent(rate.share()));
    }
    if (rate.reason().isEmpty()) {
      return PageText.NOT_TAXED.of();
    }
    boolean waiver = rate.reason().equals(LineKind.WAIVER.word());
    return PageText.NOT_TAXED_WHY.of(waiver ? PageText.DAMAGE_WAIVER.of() : rate.reason());
  }

  private void add(
      LineKind kind, Phrase label, String text, BigDecimal share, TaxRate rate, BigDecimal amount) {
    lines.add(
        new DocumentLine(
            Verdict.OK,
            List.of(),
            kind,
            label,
            null,
            text,
            null,
            null,
            null,
            null,
            null,
            null,
            null,
            null,
            null,
            null,
            null,
            null,
            null,
            share,
            rate == null ? null : rate.share(),
            reason(rate),
            amount));
  }

  private static String reason(TaxRate rate) {
    return rate == null || rate.reason().isEmpty() ? null : rate.reason();
  }

  private void add(LineKind kind, QuoteLine line) {
    Item item = line.item();
    boolean weekly = line.weeks() != null;
    BigDecimal discount = item.discount() == null ? null : Money.decimal(item.discount());
    lines.add(
        new DocumentLine(
            Verdict.OK,
            List.of(),
            kind,
            label(line),
            line.row().number(),
            item.item(),
            item.insteadOf(),
            item.qty(),
            kind == LineKind.ITEM || line.basis() != RateBasis.ONCE ? line.out() : null,
            kind == LineKind.ITEM || line.basis() != RateBasis.ONCE ? line.back() : null,
            line.days(),
            line.basis(),
            per(line.basis()).of(),
            line.rate(),
            weekly ? rules.rounded(line.weeks().first()) : line.rate(),
            weekly ? line.weeks().first() : null,
            weekly ? line.weeks().later() : null,
            line.each(),
            discount,
            discount,
            line.tax().share(),
            reason(line.tax()),
            line.amount()));
  }

  private static PageText per(RateBasis basis) {
    return switch (basis) {
      case DAY -> PageText.PER_DAY;
      case WEEK -> PageText.PER_WEEK;
      case ONCE -> PageText.EACH;
      case ON_REQUEST -> PageText.UNPRICED;
    };
  }

  /** Whether the page marks a row as one without the order discount, for whatever reason. */
  private static boolean isNet(QuoteRules rules, QuoteLine line) {
    return rules.isDiscounted() && line.isHired() && line.amount() != null && line.isNetPriced();
  }

  private Phrase label(QuoteLine line) {
    Item item = line.item();
    Phrase typed =
        item.insteadOf() == null
            ? PageText.PLAIN.of(item.item())
            : PageText.INSTEAD.of(item.item(), item.insteadOf());
    Phrase name = isNet(rules, line) ? PageText.NET_PRICE.of(typed) : typed;
    if (line.basis() == RateBasis.ON_REQUEST) {
      return PageText.ON_REQUEST.of(name);
    }
    if (line.weeks() == null) {
      return name;
    }
    BigDecimal first = rules.rounded(line.weeks().first());
    BigDecimal later = rules.rounded(line.weeks().later());
    return line.weeks().day() == null
        ? PageText.BY_WEEK.of(name, first, later)
        : PageText.BY_WEEK_DAY.of(name, first, later, rules.rounded(line.weeks().day()));
  }
}
