package org.setpower.plan.quote;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.setpower.hire.Money;
import org.setpower.plan.common.InputRow;
import org.setpower.plan.common.InputRows;
import org.setpower.plan.common.Phrase;
import org.setpower.plan.finding.CommonFinding;
import org.setpower.plan.finding.Finding;
import org.setpower.plan.finding.FindingKey;
import org.setpower.plan.quote.QuoteInputs.Return;
import org.setpower.plan.quote.terms.RateBasis;
import org.setpower.plan.quote.terms.ReturnState;
import org.setpower.plan.quote.terms.WaivedLoss;

/** What came back, row by row of the quote: late days, their fee, what is missing. */
final class LateReturns {
  /** Half a year. */
  private static final int FAR_DAYS = 183;

  private final Map<Integer, QuoteLine> lines;
  private final QuoteRules rules;
  private final Map<Integer, State> states = new HashMap<>();
  private final PickedRows picked;
  private final Map<Integer, Double> back = new HashMap<>();

  /**
   * A return.
   *
   * @param line row of the quote; null where it is not known
   * @param on the day of return; of a loss without one the day due
   * @param days late, counted even where they cost nothing; null where not known
   * @param fee net, after the discounts of the hire
   * @param how the fee came about; null where there is none
   * @param tax on the fee
   * @param damage or loss in full; null where nothing is, or nobody knows yet
   * @param charged for the pieces: the damage or loss, at most the excess; null where not known
   * @param subCost what the other house charges for late days; null for our own
   */
  record State(
      List<Finding> findings,
      QuoteLine line,
      LocalDate on,
      Long days,
      BigDecimal fee,
      Phrase how,
      BigDecimal tax,
      BigDecimal damage,
      BigDecimal charged,
      BigDecimal subCost) {
    /** Of a return that a stop holds back. */
    private static State withheld(List<Finding> findings, QuoteLine line) {
      return new State(findings, line, null, null, null, null, null, null, null, null);
    }

    /** Whether the client pays less than the damage. */
    boolean isLimited() {
      return charged != null && damage != null && charged.compareTo(damage) < 0;
    }
  }

  LateReturns(
      QuoteRules rules,
      Map<Integer, QuoteLine> lines,
      PickedRows picked,
      InputRows<Return> returns) {
    this.rules = rules;
    this.lines = lines;
    this.picked = picked;
    returns
        .filled()
        .filter(r -> r.value().line() != null && r.value().qty() != null)
        .forEach(r -> back.merge(number(r.value()), r.value().qty(), Double::sum));
    returns.filled().forEach(r -> states.put(r.number(), judge(r)));
    lines.values().forEach(this::judgeMissing);
  }

  private static int number(Return typed) {
    return (int) Math.rint(typed.line());
  }

  State state(int row) {
    return states.get(row);
  }

  private State judge(InputRow<Return> row) {
    List<Finding> findings = new ArrayList<>(row.findings());
    Return typed = row.value();
    QuoteLine line = typed.line() == null ? null : lines.get(number(typed));
    if (!row.cells().containsKey("date") && typed.state() != ReturnState.LOST) {
      add(findings, CommonFinding.BLANK_CELL, QuoteInputs.RETURNS.column("date"));
    }
    if (typed.line() != null && !isHired(line, typed)) {
      add(findings, QuoteFinding.RETURN_LINE, typed.line());
      line = null;
    } else if (line != null && typed.item() != null && !line.isCalled(typed.item())) {
      String item = line.item().item() == null ? "—" : line.item().item();
      add(findings, QuoteFinding.RETURN_ITEM, typed.line(), item);
    } else if (line != null) {
      check(findings, line, typed);
    }
    return findings.isEmpty() ? charge(findings, line, typed) : State.withheld(findings, line);
  }

  private static boolean isHired(QuoteLine line, Return typed) {
    return line != null
        && line.isHired()
        && line.isOrdered()
        && typed.line() == Math.rint(typed.line());
  }

  private static void add(List<Finding> findings, FindingKey key, Object... arguments) {
    findings.add(Finding.of(key, arguments));
  }

  private void check(List<Finding> findings, QuoteLine line, Return typed) {
    Double out = picked.pieces(line);
    double all = back.getOrDefault(number(typed), 0.0);
    if (out != null && all > out) {
      add(findings, QuoteFinding.RETURN_TOO_MANY, all, out);
    }
    if (typed.qty() != null && typed.qty() != Math.rint(typed.qty())) {
      add(findings, QuoteFinding.NOT_WHOLE, typed.qty());
    }
    if (typed.date() != null && line.out() != null && typed.date().isBefore(line.out())) {
      add(findings, QuoteFinding.RETURN_EARLY, typed.date(), line.out());
    } else if (isOtherYear(line, typed.date())) {
      add(findings, QuoteFinding.RETURN_FAR, typed.date(), line.back());
    } else if (line.out() != null && typed.date() != null) {
      QuoteRules.dates(line.out(), typed.date()).ifPresent(findings::add);
    }
  }

  /** Whether a day of return lies months after the day due: hardly a late return, a wrong year. */
  private static boolean isOtherYear(QuoteLine line, LocalDate returned) {
    return returned != null
        && line.back() != null
        && returned.isAfter(line.back().plusDays(FAR_DAYS));
  }

  private State charge(List<Finding> findings, QuoteLine line, Return typed) {
    if (!rules.stops().isEmpty()) {
      // the cause stands there, once
      findings.addAll(rules.stops());
      return State.withheld(findings, line);
    }
    if (line.back() == null || line.amount() == null && line.basis() != RateBasis.ON_REQUEST) {
      add(findings, QuoteFinding.RETURN_NO_PRICE, (double) line.row().number());
      return State.withheld(findings, line);
    }
    LocalDate on = typed.date() == null ? line.back() : typed.date();
    long days = Math.max(0, ChronoUnit.DAYS.between(line.back(), on));
    LateFee late = null;
    BigDecimal fee = null;
    BigDecimal subCost = null;
    if (days > 0) {
      subCost = line.lateSubCost(typed.qty(), on).orElse(null);
      if (subCost != null) {
        add(findings, QuoteFinding.RETURN_SUB_HIRE, (double) days, subCost);
      }
      late = line.lateFee(typed.qty(), on).orElse(null);
      fee = late == null ? null : late.amount();
      if (fee == null) {
        add(findings, QuoteFinding.RETURN_NO_PRICE, (double) line.row().number());
      } else if (fee.signum() == 0) {
        add(findings, QuoteFinding.LATE_FREE, (double) days);
      } else {
        boolean every = rules.everyLateDay() && line.isByRate();
        add(findings, every ? QuoteFinding.LATE_EVERY_DAY : QuoteFinding.LATE, (double) days, fee);
      }
    }
    BigDecimal tax = fee == null ? null : rules.rounded(fee.multiply(line.tax().share()));
    addSame(findings, line, on);
    BigDecimal damage = damage(findings, line, typed);
    BigDecimal charged =
        damage == null || !rules.isWaived() ? damage : waived(findings, typed, damage);
    Phrase how = late == null ? null : late.how();
    return new State(findings, line, on, days, fee, how, tax, damage, charged, subCost);
  }

  /** Of several rows with the item the day due may show which is meant; else the number alone. */
  private void addSame(List<Finding> findings, QuoteLine line, LocalDate on) {
    boolean isShown =
        on.equals(line.back())
            && lines.values().stream()
                .filter(l -> l != line && PickedRows.isSame(l, line))
                .noneMatch(l -> on.equals(l.back()));
    if (!isShown) {
      PickedRows.others(lines, line)
          .ifPresent(o -> add(findings, QuoteFinding.RETURN_SAME_ITEM, rowOf(line), o));
    }
  }

  private static double rowOf(QuoteLine line) {
    return line.row().number();
  }

  /** What the pieces themselves cost; null where nothing is charged, or nobody knows yet. */
  private BigDecimal damage(List<Finding> findings, QuoteLine line, Return typed) {
    boolean isKnown = typed.charge() != null && rules.currency() != null;
    BigDecimal charged = isKnown ? rules.rounded(Money.decimal(typed.charge())) : null;
    if (typed.state() == ReturnState.LOST) {
      charged = charged == null ? line.value(typed.qty()).orElse(null) : charged;
      add(findings, charged == null ? QuoteFinding.LOST_NO_VALUE : QuoteFinding.LOST, typed.qty());
    } else if (typed.state() == ReturnState.DAMAGED && charged == null) {
      add(findings, QuoteFinding.DAMAGED, typed.qty());
    }
    return charged;
  }

  /**
   * What is charged to a client who pays the waiver: the excess of each piece at most, and in full
   * where the house has no rule. Of several pieces in a row nobody knows which is damaged how.
   */
  private BigDecimal waived(List<Finding> findings, Return typed, BigDecimal charged) {
    boolean isLost = typed.state() == ReturnState.LOST;
    if (!isLost && typed.state() != ReturnState.DAMAGED) {
      return charged;
    }
    if (isLost && rules.house().waivedLoss() == null) {
      add(findings, QuoteFinding.RETURN_LOSS_RULE);
    }
    if (isLost && rules.house().waivedLoss() != WaivedLoss.UP_TO_EXCESS) {
      return charged;
    }
    Optional<BigDecimal> excess = rules.excess();
    if (excess.isEmpty()) {
      add(findings, QuoteFinding.RETURN_NO_EXCESS);
      return charged;
    }
    BigDecimal most = rules.rounded(excess.get().multiply(Money.decimal(typed.qty())));
    if (charged.compareTo(excess.get()) > 0) {
      add(findings, QuoteFinding.RETURN_EXCESS, charged, charged.min(most), excess.get());
    }
    return charged.min(most);
  }

  /** Pieces out are those back and those missing, once something has come back. */
  private void judgeMissing(QuoteLine line) {
    double missing = open(line).orElse(0.0);
    if (isBegun() && missing > 0) {
      line.add(Finding.of(QuoteFinding.NOT_BACK, missing));
    }
  }

  /** Whether anything has come back. */
  boolean isBegun() {
    return !back.isEmpty() || isRestBack();
  }

  private boolean isRestBack() {
    return Boolean.TRUE.equals(rules.order().restBack());
  }

  /** Pieces of a hired row that are not back; empty where nobody knows how many went out. */
  Optional<Double> open(QuoteLine line) {
    Double out = line.isHired() && line.isOrdered() && line.isSome() ? picked.pieces(line) : null;
    return Optional.ofNullable(out)
        .map(o -> isRestBack() ? 0 : Math.max(0, o - back.getOrDefault(line.row().number(), 0.0)));
  }

  /** Rows of which something is not back, with the pieces. */
  Map<QuoteLine, Double> missing() {
    Map<QuoteLine, Double> missing = new LinkedHashMap<>();
    lines.values().forEach(l -> open(l).filter(p -> p > 0).ifPresent(p -> missing.put(l, p)));
    return missing;
  }
}
