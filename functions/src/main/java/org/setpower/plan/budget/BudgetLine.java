package org.setpower.plan.budget;

import java.math.BigDecimal;
import java.math.MathContext;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Currency;
import java.util.List;
import java.util.Optional;
import org.setpower.hire.Money;
import org.setpower.plan.budget.BudgetInputs.Count;
import org.setpower.plan.budget.BudgetInputs.Line;
import org.setpower.plan.common.InputRow;
import org.setpower.plan.finding.Finding;
import org.setpower.plan.finding.FindingKey;

/** A budget line: what it is planned to cost, and what it costs by the cost report. */
final class BudgetLine {
  /** Hours of a day that hardly anybody works without overtime: common practice. */
  private static final double LONG_DAY = 10;

  private static final int WEEK = 7;

  /** Days on a calendar for each day worked: a week of five days has seven. */
  private static final double REST = 1.4;

  private static final int TRAVEL_DAYS = 2;

  private final InputRow<Line> row;
  private final Line line;
  private final BudgetRules rules;
  private final List<Finding> findings = new ArrayList<>();
  private final Count count;
  private final Currency own;
  private CostTax tax;
  private Plan plan;
  private Report report;
  private CostTax.Taxed cash;
  private BigDecimal planned;

  /**
   * What a line is planned to cost, as amounts are typed.
   *
   * @param counted quantity × count
   * @param times × days charged
   * @param paidHours of a day; null where hours are not typed
   * @param inOwn its price in its own currency
   */
  record Plan(
      BigDecimal counted,
      BigDecimal times,
      BigDecimal paidHours,
      BigDecimal inOwn,
      BigDecimal pay,
      BigDecimal fringes,
      BigDecimal perDiems) {
    BigDecimal all() {
      return pay.add(fringes).add(perDiems);
    }
  }

  /** The cost report of a line, in its basis. */
  record Report(
      BigDecimal budget,
      BigDecimal ordered,
      BigDecimal invoiced,
      BigDecimal costToDate,
      BigDecimal finalCost) {
    BigDecimal open() {
      return costToDate.subtract(invoiced);
    }

    BigDecimal toComplete() {
      return finalCost.subtract(costToDate);
    }

    /** Minus is over. */
    BigDecimal variance() {
      return budget.subtract(finalCost);
    }
  }

  BudgetLine(InputRow<Line> row, BudgetRules rules) {
    this.row = row;
    this.line = row.value();
    this.rules = rules;
    count = line.count() == null ? null : rules.count(line.count()).orElse(null);
    own =
        line.currency() == null
            ? rules.currency()
            : BudgetRules.known(line.currency()).orElse(null);
    judge();
    boolean clear = row.findings().isEmpty() && rules.stops().isEmpty();
    if (clear && findings.stream().noneMatch(f -> BudgetPlan.isStop(f))) {
      tax = CostTax.of(rules.project(), line, rules.currency());
      plan = plan(line.price(), BigDecimal.ZERO, BigDecimal.ZERO);
      planned = tax.reported(plan.all());
      report = reported();
      cash = tax.taxed(finalTyped());
      judgeReport();
    }
  }

  private void add(FindingKey key, Object... arguments) {
    findings.add(Finding.of(key, arguments));
  }

  private void judge() {
    if (line.currency() != null && own == null) {
      add(BudgetFinding.CURRENCY_UNKNOWN, line.currency());
    } else if (own != null && rules.currency() != null && rules.rate(own).isEmpty()) {
      add(BudgetFinding.NO_EXCHANGE, own.getCurrencyCode());
    }
    if (line.count() != null && count == null) {
      add(BudgetFinding.COUNT_UNKNOWN, line.count());
    } else if (isInAll() && (line.times() != null || line.minTimes() != null)) {
      double typed = line.times() == null ? line.minTimes() : line.times();
      add(BudgetFinding.COUNT_IN_ALL, line.count(), typed);
    }
    if (isStruck() && line.ordered() != null && line.ordered() != 0) {
      add(BudgetFinding.STRUCK_ORDERED);
    }
    boolean hoursInAll = line.unit() == PriceUnit.HOUR && line.hours() == null;
    boolean personsKnown = !hoursInAll && !isInAll();
    if (isCrew() && line.daysAway() != null && !personsKnown) {
      add(BudgetFinding.PERSONS_UNKNOWN);
    }
    if (isCrew() && line.hours() != null && rules.areTiersUnclear()) {
      add(BudgetFinding.TIERS_UNCLEAR);
    }
    if (!isStruck()) {
      judgeBlanks();
      judgeHours();
      judgeSign();
    }
    judgeNumbers();
    findings.addAll(rules.far(BudgetInputs.LINES.column("dueOn"), line.dueOn()));
  }

  private void judgeBlanks() {
    if (line.price() == null) {
      add(BudgetFinding.PRICE_BLANK);
    }
    boolean repeated =
        line.unit() == PriceUnit.DAY
            || line.unit() == PriceUnit.WEEK
            || line.unit() == PriceUnit.HOUR && line.hours() != null;
    if (repeated && line.times() == null && !isInAll()) {
      add(BudgetFinding.TIMES_BLANK, line.unit().word());
    }
    long days = rules.longestDays();
    if (line.unit() == PriceUnit.DAY && line.times() != null && days > 0 && line.times() > days) {
      add(BudgetFinding.DAYS_BEYOND, line.times(), (double) days);
    }
    judgeDaysAway();
    long weeks = rules.weeks();
    if (isByWeek() && line.times() != null && weeks > 0 && line.times() > 2 * weeks) {
      add(BudgetFinding.WEEKS_AS_DAYS, line.times(), (double) weeks);
    }
    boolean crewCells =
        line.hours() != null
            || line.coveredHours() != null
            || line.fringe() != null
            || line.daysAway() != null
            || line.perDiem() != null;
    if (!isCrew() && crewCells) {
      add(BudgetFinding.CREW_ONLY);
    }
  }

  /** Days away are those of one person: with days of rest and travel hardly twice those worked. */
  private void judgeDaysAway() {
    boolean isByDays = isByPeriod() || isByHour() && line.hours() != null;
    if (isCrew() && isByDays && line.daysAway() != null && line.times() != null) {
      double worked = line.times() * (isByWeek() ? WEEK : 1);
      if (line.daysAway() > worked * REST + TRAVEL_DAYS) {
        add(BudgetFinding.DAYS_AWAY_MANY, line.daysAway(), worked);
      }
    }
  }

  private void judgeSign() {
    double price = line.price() == null ? 0 : line.price();
    if (price < 0 && line.type() != null && line.type() != CostType.REDUCTION) {
      add(BudgetFinding.SIGN_MINUS, line.type().word());
    } else if (price > 0 && line.type() == CostType.REDUCTION) {
      add(BudgetFinding.SIGN_PLUS);
    }
  }

  private void judgeHours() {
    if (!isCrew() || line.hours() == null) {
      return;
    }
    if (isByHour()) {
      long days = rules.days();
      if (line.times() != null && days > 0 && line.times() > days) {
        add(BudgetFinding.HOURS_AS_DAYS, line.times(), (double) days);
      }
      if (rules.paidHours().isWithoutTiers() && line.hours() > LONG_DAY) {
        add(BudgetFinding.NO_TIERS_HOURLY, line.hours());
      }
    } else if (!isByPeriod()) {
      add(BudgetFinding.HOURS_UNUSED);
    } else {
      if (line.coveredHours() == null) {
        add(BudgetFinding.COVERED_BLANK, line.hours());
      } else if (rules.paidHours().isWithoutTiers() && line.hours() > line.coveredHours()) {
        add(BudgetFinding.NO_TIERS, line.hours(), line.coveredHours());
      }
    }
  }

  private void judgeNumbers() {
    boolean ordered = line.ordered() != null && line.ordered() != 0;
    if (ordered && line.po() == null) {
      add(BudgetFinding.NO_PO);
    }
    if (ordered && line.supplier() == null) {
      add(BudgetFinding.NO_SUPPLIER);
    }
    boolean invoiced = line.invoiced() != null && line.invoiced() != 0;
    if (invoiced && line.invoice() == null && !isCrew()) {
      add(BudgetFinding.NO_INVOICE);
    }
    if (isComplete() && ordered && line.ordered() > 0) {
      judgeCompleteOrder();
    }
    if (isOver() && line.estimate() != null && line.estimate() != 0) {
      add(BudgetFinding.ESTIMATE_AFTER_END, line.estimate());
    }
    boolean approved =
        line.budget() != null || line.changes() != null || line.fromContingency() != null;
    if (rules.isDraft() && approved) {
      add(BudgetFinding.STILL_DRAFT);
    } else if (isAddedLater()) {
      add(BudgetFinding.ADDED_LATER);
    }
    BigDecimal from = BudgetRules.decimal(line.fromContingency());
    BigDecimal changes = BudgetRules.decimal(line.changes());
    if (!rules.isDraft() && from.signum() > 0 && from.compareTo(changes) > 0) {
      add(BudgetFinding.FROM_CONTINGENCY, shown(from), shown(changes));
    }
  }

  private boolean isAddedLater() {
    boolean changed = line.changes() != null && line.changes() != 0;
    return !rules.isDraft() && line.budget() == null && !changed && !isStruck();
  }

  /** An order is no saving because somebody ticks the line: that is the invoice's to say. */
  private void judgeCompleteOrder() {
    BigDecimal ordered = Money.decimal(line.ordered());
    BigDecimal invoiced = BudgetRules.decimal(line.invoiced());
    if (invoiced.signum() <= 0) {
      add(BudgetFinding.COMPLETE_NO_INVOICE, shown(ordered));
    } else if (invoiced.compareTo(ordered) < 0 && !Boolean.TRUE.equals(line.poClosed())) {
      add(BudgetFinding.COMPLETE_LESS, shown(ordered.subtract(invoiced)));
    }
  }

  /** An amount with the coins of the budget's currency, where that is known. */
  private BigDecimal shown(BigDecimal amount) {
    return rules.currency() == null ? amount : rules.rounded(amount);
  }

  private boolean isInAll() {
    return count != null && Boolean.TRUE.equals(count.inAll());
  }

  boolean isStruck() {
    return Boolean.TRUE.equals(line.struck());
  }

  private boolean isComplete() {
    return Boolean.TRUE.equals(line.complete());
  }

  /** Whether nothing more is planned to come. */
  private boolean isOver() {
    return isStruck() || isComplete();
  }

  /** Whether it is struck and nothing was ever approved, ordered, invoiced or paid on it. */
  boolean isQuiet() {
    return isStruck()
        && report != null
        && report.budget().signum() == 0
        && changes().signum() == 0
        && report.ordered().signum() == 0
        && report.finalCost().signum() == 0
        && BudgetRules.decimal(line.paid()).signum() == 0;
  }

  private boolean isCrew() {
    return line.type() == CostType.CREW;
  }

  /**
   * Whether pay stands without what an employer adds, and nobody has said that there is nothing.
   */
  boolean isWithoutFringes() {
    return isCrew()
        && !isStruck()
        && plan.pay().signum() > 0
        && line.fringe() == null
        && rules.project().fringe() == null;
  }

  private boolean isByHour() {
    return line.unit() == PriceUnit.HOUR;
  }

  boolean isByWeek() {
    return line.unit() == PriceUnit.WEEK;
  }

  /** By the day or by the week: the rate covers so many hours of each day. */
  private boolean isByPeriod() {
    return line.unit() == PriceUnit.DAY || isByWeek();
  }

  private Plan plan(Double price, BigDecimal moreTimes, BigDecimal moreDays) {
    BigDecimal counted = Money.decimal(line.qty() == null ? 1 : line.qty());
    if (count != null) {
      counted = counted.multiply(Money.decimal(count.value()));
    }
    BigDecimal times =
        Money.decimal(line.times() == null ? 1 : line.times())
            .add(moreTimes)
            .max(BudgetRules.decimal(line.minTimes()))
            .max(BigDecimal.ZERO);
    BigDecimal zero = rules.rounded(BigDecimal.ZERO);
    if (isStruck()) {
      return new Plan(counted, times, null, zero, zero, zero, zero);
    }
    BigDecimal rate = BudgetRules.decimal(price);
    BigDecimal paidHours = paidHours();
    BigDecimal each = rate;
    if (paidHours != null) {
      each = rate.multiply(paidHours);
      if (isByPeriod()) {
        BigDecimal covered = Money.decimal(line.coveredHours());
        each = each.divide(covered, MathContext.DECIMAL128);
      } else if (isInAll()) {
        // hours of all days: each hour is paid as one of an equal day
        each = each.divide(Money.decimal(line.hours()), MathContext.DECIMAL128);
      }
    }
    BigDecimal full =
        each.multiply(counted)
            .multiply(times)
            .multiply(BigDecimal.ONE.subtract(BudgetRules.decimal(line.discount())));
    BigDecimal inOwn = Money.rounded(full, own);
    BigDecimal exchange = Money.decimal(rules.rate(own).orElseThrow());
    BigDecimal pay = rules.rounded(inOwn.multiply(exchange));
    return new Plan(
        counted, times, paidHours, inOwn, pay, fringes(pay, counted), perDiems(counted, moreDays));
  }

  /** Whether it is paid once, or by an amount, such as litres, that is not said to be of a day. */
  private boolean isWholeAmount() {
    boolean byDays = line.unit() == PriceUnit.HOUR || isByPeriod();
    return line.unit() == null
        || line.unit() == PriceUnit.ONCE
        || !byDays && line.times() == null && line.minTimes() == null;
  }

  /**
   * Whether it costs more on more days: not what is paid once, is counted for all days, or is
   * complete, nor hours that are not those of a day.
   */
  boolean changesWithDays() {
    boolean byOtherHours = isByHour() && line.hours() == null;
    return !isComplete() && !isInAll() && !byOtherHours && !isWholeAmount();
  }

  /** Paid hours of a day; null where pay does not depend on hours. */
  private BigDecimal paidHours() {
    if (!isCrew() || line.hours() == null || !isByHour() && !isByPeriod()) {
      return null;
    }
    if (isByPeriod() && (line.coveredHours() == null || rules.paidHours().isWithoutTiers())) {
      return null;
    }
    BigDecimal covered = isByPeriod() ? Money.decimal(line.coveredHours()) : BigDecimal.ZERO;
    return rules.paidHours().paid(rules.paidHours().counted(line.hours(), covered));
  }

  /** The hours that the price is for where pay depends on hours; null where it is for one. */
  Double hoursOfPrice() {
    if (isByPeriod()) {
      return line.coveredHours();
    }
    return isInAll() ? line.hours() : null;
  }

  /** On pay with overtime, up to the ceiling of each person; never on per diem. */
  private BigDecimal fringes(BigDecimal pay, BigDecimal persons) {
    Double share = line.fringe() == null ? rules.project().fringe() : line.fringe();
    if (!isCrew() || share == null) {
      return rules.rounded(BigDecimal.ZERO);
    }
    Double ceiling = rules.project().ceiling();
    BigDecimal on = ceiling == null ? pay : pay.min(Money.decimal(ceiling).multiply(persons));
    return rules.rounded(on.multiply(Money.decimal(share)));
  }

  private BigDecimal perDiems(BigDecimal persons, BigDecimal moreDays) {
    Double each = line.perDiem() == null ? rules.project().perDiem() : line.perDiem();
    if (!isCrew() || each == null || line.daysAway() == null) {
      return rules.rounded(BigDecimal.ZERO);
    }
    BigDecimal days = Money.decimal(line.daysAway()).add(moreDays).max(BigDecimal.ZERO);
    return rules.rounded(Money.decimal(each).multiply(days).multiply(persons));
  }

  /**
   * The cost report. Amounts are put together as typed and brought to the basis of the report once,
   * so that equal amounts typed give a variance of 0.
   */
  private Report reported() {
    BigDecimal ordered = BudgetRules.decimal(line.ordered());
    BigDecimal invoiced = BudgetRules.decimal(line.invoiced());
    BigDecimal toDate = toDate();
    BigDecimal budget =
        rules.isDraft()
            ? plan.all()
            : BudgetRules.decimal(line.budget()).add(BudgetRules.decimal(line.changes()));
    return new Report(
        tax.reported(budget),
        tax.reported(ordered),
        tax.reported(invoiced),
        tax.reported(toDate),
        tax.reported(finalTyped()));
  }

  /** What was approved after the budget, in the basis of the report. */
  BigDecimal changes() {
    BigDecimal before = rules.isDraft() ? plan.all() : BudgetRules.decimal(line.budget());
    return report.budget().subtract(tax.reported(before));
  }

  /** Its approved budget without later changes, in the basis of the report; 0 in a draft. */
  BigDecimal approvedBudget() {
    return tax.reported(BudgetRules.decimal(line.budget()));
  }

  /** What of its changes comes out of the contingency, in the basis of the report. */
  BigDecimal fromContingency() {
    return tax.reported(BudgetRules.decimal(line.fromContingency()));
  }

  /** The estimated final cost, as amounts are typed. */
  private BigDecimal finalTyped() {
    BigDecimal toDate = toDate();
    return toDate.add(estimate(toDate));
  }

  private BigDecimal toDate() {
    BigDecimal invoiced = BudgetRules.decimal(line.invoiced());
    boolean closed = Boolean.TRUE.equals(line.poClosed()) || isComplete();
    boolean isOrdered = line.ordered() != null && line.ordered() != 0;
    BigDecimal open =
        isOrdered ? left(Money.decimal(line.ordered()).subtract(invoiced)) : BigDecimal.ZERO;
    return closed ? invoiced : invoiced.add(open);
  }

  /** What a cost is planned beyond cost to date; a reduction comes until it is credited. */
  private BigDecimal estimate(BigDecimal toDate) {
    if (line.estimate() != null) {
      return Money.decimal(line.estimate());
    }
    return isOver() ? BigDecimal.ZERO : left(plan.all().subtract(toDate));
  }

  /** What is still to come: not below 0; of a reduction, which is minus, not above. */
  private BigDecimal left(BigDecimal amount) {
    return line.type() == CostType.REDUCTION && plan.all().signum() < 0
        ? amount.min(BigDecimal.ZERO)
        : amount.max(BigDecimal.ZERO);
  }

  private void judgeReport() {
    judgeVariance();
    judgeOrder();
    boolean keeps = line.recoverable() != null && line.recoverable() < 1;
    boolean net = rules.project().columns() != TaxBasis.COST;
    if (!isStruck() && keeps && net && tax.share().signum() > 0) {
      add(BudgetFinding.TAX_LEFT_OUT_LINE);
    }
    if (!isStruck() && report.finalCost().signum() == 0 && report.budget().signum() > 0) {
      add(BudgetFinding.SAVED, report.budget());
    }
    BigDecimal paid = BudgetRules.decimal(line.paid());
    BigDecimal toDate = tax.taxed(toDate()).gross();
    if (paid.signum() < 0 && line.type() != CostType.REDUCTION) {
      add(BudgetFinding.PAID_MINUS, rules.rounded(paid));
    }
    if (paid.signum() > 0 && paid.compareTo(toDate) > 0) {
      add(BudgetFinding.PAID_OVER, rules.rounded(paid), toDate);
    }
  }

  /** Over its budget; not where a minus that does not belong there made the budget. */
  private void judgeVariance() {
    boolean isMinus = findings.stream().anyMatch(f -> f.key() == BudgetFinding.SIGN_MINUS);
    if (report.variance().signum() >= 0 || isAddedLater() || isMinus) {
      return;
    }
    BigDecimal over = report.variance().negate();
    boolean isAbroad = !own.equals(rules.currency()) && line.estimate() == null;
    if (isAbroad && report.ordered().signum() > 0 && report.toComplete().signum() > 0) {
      add(
          BudgetFinding.OVERSPENT_ABROAD,
          report.finalCost(),
          report.budget(),
          over,
          own.getCurrencyCode(),
          rules.rate(own).orElseThrow(),
          rules.currency().getCurrencyCode());
    } else {
      add(BudgetFinding.OVERSPENT, report.finalCost(), report.budget(), over);
    }
  }

  /**
   * An invoice beyond its order, an order in the wrong currency, a closed order with more to come.
   */
  private void judgeOrder() {
    BigDecimal ordered = BudgetRules.decimal(line.ordered());
    BigDecimal invoiced = BudgetRules.decimal(line.invoiced());
    if (ordered.signum() > 0 && invoiced.compareTo(ordered) > 0) {
      add(
          BudgetFinding.INVOICED_OVER,
          rules.rounded(invoiced),
          rules.rounded(ordered),
          rules.rounded(invoiced.subtract(ordered)));
    }
    if (own != null && !own.equals(rules.currency())) {
      for (BigDecimal typed : List.of(ordered, invoiced)) {
        if (isNear(typed, plan.inOwn()) && !isNear(typed, plan.pay())) {
          add(
              BudgetFinding.FOREIGN_AMOUNT,
              rules.rounded(typed),
              own.getCurrencyCode(),
              rules.currency().getCurrencyCode());
          break;
        }
      }
    }
    boolean closed = Boolean.TRUE.equals(line.poClosed()) && !isOver();
    if (closed && line.estimate() == null && report.toComplete().signum() > 0) {
      add(BudgetFinding.CLOSED_TO_COME, report.toComplete());
    }
  }

  /** Whether two amounts are the same but for a hundredth. */
  private static boolean isNear(BigDecimal one, BigDecimal other) {
    BigDecimal off = one.subtract(other).abs();
    return one.signum() != 0 && off.movePointRight(2).compareTo(one.abs()) <= 0;
  }

  /** What the estimated final cost comes to with tax. */
  CostTax.Taxed cash() {
    return cash;
  }

  /**
   * What the line costs more, in the basis of the report: the price changes only what is not
   * invoiced yet, and a complete line changes no more.
   */
  BigDecimal more(Double dearer, Double moreDays) {
    if (isComplete()) {
      return rules.rounded(BigDecimal.ZERO);
    }
    double factor = 1 + (dearer == null ? 0 : dearer);
    Double price =
        line.price() == null
            ? null
            : (Double) Money.decimal(line.price()).multiply(Money.decimal(factor)).doubleValue();
    BigDecimal days = changesWithDays() ? BudgetRules.decimal(moreDays) : BigDecimal.ZERO;
    BigDecimal now = plan.all();
    BigDecimal priced = plan(price, BigDecimal.ZERO, BigDecimal.ZERO).all();
    BigDecimal longer = plan(price, times(days), days).all().subtract(priced);
    BigDecimal extra = priced.subtract(now).multiply(shareToCome()).add(longer);
    return tax.reported(now.add(extra)).subtract(planned);
  }

  /** So many days in the unit of × days: of a week its share where its days are known. */
  private BigDecimal times(BigDecimal days) {
    Double week = rules.weekDays(line.type());
    return isByWeek() && week != null
        ? days.divide(Money.decimal(week), MathContext.DECIMAL128)
        : days;
  }

  /** What is not invoiced yet of what is planned, as a share. */
  private BigDecimal shareToCome() {
    BigDecimal now = plan.all();
    if (now.signum() == 0) {
      return BigDecimal.ZERO;
    }
    BigDecimal toCome = finalTyped().subtract(BudgetRules.decimal(line.invoiced()));
    return toCome.divide(now, MathContext.DECIMAL128).max(BigDecimal.ZERO);
  }

  PaymentDue due() {
    if (line.due() != null) {
      return line.due();
    }
    return isCrew() ? PaymentDue.EACH_WEEK : PaymentDue.ON_DELIVERY;
  }

  /** Whether it is paid in weekly parts. */
  boolean isWeekly() {
    return due() == PaymentDue.EACH_WEEK && line.dueOn() == null;
  }

  /** The day on which it is paid; empty for weekly payments and where the date is missing. */
  Optional<LocalDate> paidOn() {
    return Optional.ofNullable(line.dueOn() == null ? rules.day(due()) : line.dueOn());
  }

  void add(Finding finding) {
    findings.add(finding);
  }

  /** What is wrong with the row, its cells included. */
  List<Finding> findings() {
    List<Finding> all = new ArrayList<>(row.findings());
    all.addAll(findings);
    return all;
  }

  /** Whether the amount invoiced is that of its own order or plan. */
  boolean isInvoicedAsPlanned() {
    BigDecimal invoiced = BudgetRules.decimal(line.invoiced());
    return invoiced.compareTo(BudgetRules.decimal(line.ordered())) == 0
        || plan != null && invoiced.compareTo(plan.all()) == 0;
  }

  /** The currency of its price; null where it is not known. */
  Currency own() {
    return own;
  }

  InputRow<Line> row() {
    return row;
  }

  Line line() {
    return line;
  }

  /** Null where the line stops. */
  Plan plan() {
    return plan;
  }

  /** Null where the line stops. */
  Report report() {
    return report;
  }

  /** What it is planned to cost, in the basis of the report. */
  BigDecimal planned() {
    return planned;
  }
}
