package org.setpower.plan.budget;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Currency;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;
import org.setpower.base.EvaluationException;
import org.setpower.hire.Money;
import org.setpower.hire.UsualRates;
import org.setpower.plan.budget.BudgetInputs.Count;
import org.setpower.plan.budget.BudgetInputs.ExchangeRate;
import org.setpower.plan.budget.BudgetInputs.Project;
import org.setpower.plan.budget.BudgetInputs.Tier;
import org.setpower.plan.common.InputColumn;
import org.setpower.plan.common.InputRow;
import org.setpower.plan.common.InputRows;
import org.setpower.plan.finding.CommonFinding;
import org.setpower.plan.finding.Finding;
import org.setpower.plan.finding.Gate;
import org.setpower.plan.finding.Identity;
import org.setpower.plan.finding.Severity;

/** The project, counts, exchange rates and overtime of a budget; blanks replaced. */
final class BudgetRules {
  private static final double DAYS_AFTER = 30;

  /** Half a year, in days. */
  private static final int FAR = 183;

  private static final int WEEK = 7;

  private final Project project;
  private final Currency currency;
  private final List<Finding> findings;
  private final Gate<InputRow<Count>> counts;
  private final Gate<InputRow<ExchangeRate>> exchange;
  private final Gate<InputRow<Tier>> tiers;
  private final Map<String, Count> countByName = new HashMap<>();
  private final Map<String, Double> rateByCode = new HashMap<>();
  private final PaidHours paidHours;

  BudgetRules(BudgetInputs inputs) {
    InputRow<Project> row = inputs.project().rows().get(0);
    project = row.isBlank() ? BudgetInputs.PROJECT.none() : row.value();
    findings = new ArrayList<>(row.findings());
    if (row.isBlank()) {
      BudgetInputs.PROJECT.columns().stream()
          .filter(InputColumn::isRequired)
          .forEach(c -> findings.add(Finding.of(CommonFinding.BLANK_CELL, c)));
    }
    currency = known(project.currency()).orElse(null);
    if (currency == null && project.currency() != null) {
      findings.add(Finding.of(BudgetFinding.CURRENCY_UNKNOWN, project.currency()));
    }
    if (isBackFirst()) {
      findings.add(
          Finding.of(BudgetFinding.BACK_BEFORE_DELIVERED, project.back(), project.delivered()));
    }
    judgeTax();
    if (isLastFirst()) {
      findings.add(Finding.of(BudgetFinding.SHOOT_DATES, project.lastDay(), project.firstDay()));
    }
    if (project.lastDay() != null
        && project.back() != null
        && project.lastDay().isAfter(project.back().plusDays(WEEK))) {
      findings.add(Finding.of(BudgetFinding.SHOOT_AFTER_BACK, project.lastDay(), project.back()));
    }
    judgeReportDay();
    counts = gate(inputs.counts(), Count::count, c -> List.of());
    exchange = gate(inputs.exchange(), ExchangeRate::currency, this::judge);
    tiers = gate(inputs.tiers(), BudgetRules::hours, t -> List.of());
    fit(counts).forEach(c -> countByName.put(Identity.of(c.count()), c));
    fit(exchange).forEach(e -> rateByCode.put(Identity.of(e.currency()), e.rate()));
    paidHours = new PaidHours(project, fit(tiers));
  }

  private static <T extends Record> Gate<InputRow<T>> gate(
      InputRows<T> rows, Function<T, String> name, Function<T, List<Finding>> judge) {
    return new Gate<>(
        rows.filled()
            .map(
                r -> {
                  List<Finding> all = new ArrayList<>(r.findings());
                  all.addAll(judge.apply(r.value()));
                  String typed = name.apply(r.value());
                  return new Gate.Candidate<>(r.number(), r, Identity.of(typed), typed, all, false);
                })
            .toList(),
        List.of());
  }

  private static <T extends Record> List<T> fit(Gate<InputRow<T>> gate) {
    return gate.paper(r -> true).fit().stream().map(j -> j.item().value()).toList();
  }

  private static String hours(Tier tier) {
    return tier.after() == null
        ? null
        : Money.decimal(tier.after()).stripTrailingZeros().toPlainString();
  }

  private void judgeReportDay() {
    LocalDate asAt = project.asAt();
    findings.addAll(far(BudgetInputs.PROJECT.column("asAt"), asAt));
    if (asAt != null && project.approved() != null && asAt.isBefore(project.approved())) {
      findings.add(Finding.of(BudgetFinding.APPROVED_LATER, asAt, project.approved()));
    }
  }

  /** A finding where a date is so far off the production that its year may be wrong. */
  List<Finding> far(InputColumn column, LocalDate date) {
    List<LocalDate> days =
        Stream.of(
                project.ordered(),
                project.delivered(),
                project.firstDay(),
                project.lastDay(),
                project.back())
            .filter(Objects::nonNull)
            .sorted()
            .toList();
    if (date == null || days.isEmpty()) {
      return List.of();
    }
    LocalDate first = days.get(0);
    LocalDate last = days.get(days.size() - 1);
    return date.isBefore(first.minusDays(FAR)) || date.isAfter(last.plusDays(FAR))
        ? List.of(Finding.of(BudgetFinding.DATE_FAR, column, date, first, last))
        : List.of();
  }

  private List<Finding> judge(ExchangeRate rate) {
    List<Finding> findings = new ArrayList<>();
    if (rate.currency() != null && known(rate.currency()).isEmpty()) {
      findings.add(Finding.of(BudgetFinding.CURRENCY_UNKNOWN, rate.currency()));
    }
    known(rate.currency())
        .filter(own -> currency != null && rate.rate() != null)
        .flatMap(own -> UsualRates.insteadOf(rate.rate(), own, currency))
        .ifPresent(usual -> findings.add(implausible(rate, usual)));
    if (rate.date() == null) {
      findings.add(Finding.of(BudgetFinding.RATE_UNDATED));
    }
    findings.addAll(far(BudgetInputs.EXCHANGE.column("date"), rate.date()));
    return findings;
  }

  private Finding implausible(ExchangeRate rate, double usual) {
    return Finding.of(
        BudgetFinding.RATE_IMPLAUSIBLE,
        known(rate.currency()).orElseThrow().getCurrencyCode(),
        rate.rate(),
        currency.getCurrencyCode(),
        usual);
  }

  /** The currency of a code with a minor unit. */
  static Optional<Currency> known(String code) {
    if (code == null) {
      return Optional.empty();
    }
    try {
      Currency currency = Money.currency("currency", code);
      Money.rounded(BigDecimal.ZERO, currency);
      return Optional.of(currency);
    } catch (EvaluationException unknown) {
      return Optional.empty();
    }
  }

  /** Whether the return is before the delivery. */
  boolean isBackFirst() {
    return project.back() != null
        && project.delivered() != null
        && project.back().isBefore(project.delivered());
  }

  private void judgeTax() {
    boolean taxed = project.tax() != null && project.tax() > 0;
    if (taxed && isSalesTax(currency) && project.recoverable() == null) {
      findings.add(Finding.of(BudgetFinding.SALES_TAX));
    }
    if (taxed
        && project.columns() != TaxBasis.COST
        && recoverable(project, currency).compareTo(BigDecimal.ONE) < 0) {
      findings.add(Finding.of(BudgetFinding.TAX_LEFT_OUT));
    }
  }

  /**
   * Whether tax in this currency is as a rule a sales tax, which no buyer reclaims: the United
   * States have no value added tax (common practice).
   */
  private static boolean isSalesTax(Currency of) {
    return of != null && "USD".equals(of.getCurrencyCode());
  }

  /** The share of tax that comes back where a line says nothing. */
  static BigDecimal recoverable(Project project, Currency currency) {
    if (project.recoverable() != null) {
      return Money.decimal(project.recoverable());
    }
    return isSalesTax(currency) ? BigDecimal.ZERO : BigDecimal.ONE;
  }

  /** Whether the shoot ends before it begins. */
  private boolean isLastFirst() {
    return project.firstDay() != null
        && project.lastDay() != null
        && project.lastDay().isBefore(project.firstDay());
  }

  /** The first day of weekly payments; null where it is missing. */
  LocalDate weeklyFrom() {
    return project.firstDay() == null ? project.delivered() : project.firstDay();
  }

  /** The last day of weekly payments; null where it is missing. */
  LocalDate weeklyTo() {
    return project.lastDay() == null ? project.back() : project.lastDay();
  }

  Project project() {
    return project;
  }

  /** The currency of the budget; null where it is not known, and then every line stops. */
  Currency currency() {
    return currency;
  }

  /** What amounts are in and with which tax, in one text: an approval holds for these. */
  String terms() {
    return currency
        + " "
        + Objects.requireNonNullElse(project.columns(), TaxBasis.NET)
        + " "
        + Objects.requireNonNullElse(project.amounts(), TypedAmounts.NET)
        + " "
        + Objects.requireNonNullElse(project.tax(), 0.0)
        + " "
        + recoverable(project, currency).stripTrailingZeros().toPlainString();
  }

  List<Finding> findings() {
    return findings;
  }

  /** The findings that stop every line. */
  List<Finding> stops() {
    return findings.stream().filter(f -> f.severity().compareTo(Severity.STOP) >= 0).toList();
  }

  Gate<InputRow<Count>> counts() {
    return counts;
  }

  Gate<InputRow<ExchangeRate>> exchange() {
    return exchange;
  }

  Gate<InputRow<Tier>> tiers() {
    return tiers;
  }

  PaidHours paidHours() {
    return paidHours;
  }

  /** Whether a step of overtime cannot be read. */
  boolean areTiersUnclear() {
    return !tiers.paper(r -> true).withheld().isEmpty();
  }

  Optional<Count> count(String name) {
    return Optional.ofNullable(countByName.get(Identity.of(name)));
  }

  /** The rate of a currency; 1 for the budget's own, empty where there is none. */
  Optional<Double> rate(Currency of) {
    return of.equals(currency)
        ? Optional.of(1.0)
        : Optional.ofNullable(rateByCode.get(Identity.of(of.getCurrencyCode())));
  }

  /** The setting that says how many days a week of this type has. */
  static InputColumn weekColumn(CostType type) {
    return BudgetInputs.PROJECT.column(type == CostType.CREW ? "crewWeekDays" : "weekDays");
  }

  /** How many days a week of this type has; null where it is not typed. */
  Double weekDays(CostType type) {
    return type == CostType.CREW ? project.crewWeekDays() : project.weekDays();
  }

  BigDecimal rounded(BigDecimal amount) {
    return Money.rounded(amount, currency);
  }

  /** Days from the delivery to the return, both counted; 0 where they are not known. */
  long days() {
    return project.delivered() == null || project.back() == null || isBackFirst()
        ? 0
        : ChronoUnit.DAYS.between(project.delivered(), project.back()) + 1;
  }

  /** Days from the first to the last date of the production; 0 where they are not known. */
  long longestDays() {
    List<LocalDate> days =
        Stream.of(project.delivered(), project.firstDay(), project.lastDay(), project.back())
            .filter(Objects::nonNull)
            .sorted()
            .toList();
    return days.size() < 2
        ? 0
        : ChronoUnit.DAYS.between(days.get(0), days.get(days.size() - 1)) + 1;
  }

  /** Weeks of the hire that are begun; 0 where its days are not known. */
  long weeks() {
    return (days() + WEEK - 1) / WEEK;
  }

  boolean isDraft() {
    return project.approved() == null;
  }

  /** The day on which something due then is paid; null where the project's date is missing. */
  LocalDate day(PaymentDue due) {
    return switch (due) {
      case WITH_ORDER -> project.ordered();
      case ON_DELIVERY -> project.delivered();
      case ON_RETURN -> project.back();
      case DAYS_AFTER ->
          project.back() == null ? null : project.back().plusDays(days(project.daysAfter()));
      case EACH_WEEK -> null;
    };
  }

  long reclaimAfter() {
    return days(project.reclaimAfter());
  }

  private static long days(Double typed) {
    return (long) Math.ceil(typed == null ? DAYS_AFTER : typed);
  }

  static BigDecimal decimal(Double typed) {
    return Money.decimal(typed == null ? 0 : typed);
  }
}
