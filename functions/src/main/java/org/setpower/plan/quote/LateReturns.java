package org.setpower.plan.quote;

import java.math.BigDecimal;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.setpower.plan.common.InputRow;
import org.setpower.plan.common.InputRows;
import org.setpower.plan.finding.Finding;
import org.setpower.plan.finding.FindingKey;
import org.setpower.plan.finding.Identity;
import org.setpower.plan.quote.QuoteInputs.Return;
import org.setpower.plan.quote.terms.RateBasis;

/** What came back, row by row of the quote: late days, their fee, what is missing. */
final class LateReturns {
  private final Map<Integer, QuoteLine> lines;
  private final QuoteRules rules;
  private final Map<Integer, State> states = new HashMap<>();
  private final Map<Integer, Double> back = new HashMap<>();

  /**
   * A return.
   *
   * @param line row of the quote; null where it is not known
   * @param days late, counted even where they cost nothing; null where not known
   * @param fee net, after the discounts of the hire
   * @param tax on the fee
   * @param replacement value of what is lost
   */
  record State(
      List<Finding> findings,
      QuoteLine line,
      Long days,
      BigDecimal fee,
      BigDecimal tax,
      BigDecimal replacement) {}

  LateReturns(QuoteRules rules, Map<Integer, QuoteLine> lines, InputRows<Return> returns) {
    this.rules = rules;
    this.lines = lines;
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
    if (typed.line() != null && !isHired(line, typed)) {
      add(findings, QuoteFinding.RETURN_LINE, typed.line());
      line = null;
    } else if (line != null && typed.item() != null && !isSame(line, typed)) {
      String item = line.item().item() == null ? "—" : line.item().item();
      add(findings, QuoteFinding.RETURN_ITEM, typed.line(), item);
    } else if (line != null) {
      check(findings, line, typed);
    }
    return findings.isEmpty()
        ? charge(findings, line, typed)
        : new State(findings, line, null, null, null, null);
  }

  private static boolean isHired(QuoteLine line, Return typed) {
    return line != null && line.isHired() && typed.line() == Math.rint(typed.line());
  }

  private static boolean isSame(QuoteLine line, Return typed) {
    String own = Identity.of(line.item().item());
    return own.equals(Identity.of(typed.item()));
  }

  private static void add(List<Finding> findings, FindingKey key, Object... arguments) {
    findings.add(Finding.of(key, arguments));
  }

  private void check(List<Finding> findings, QuoteLine line, Return typed) {
    Double out = line.item().qty();
    double all = back.getOrDefault(number(typed), 0.0);
    if (out != null && all > out) {
      add(findings, QuoteFinding.RETURN_TOO_MANY, all, out);
    }
    if (typed.qty() != null && typed.qty() != Math.rint(typed.qty())) {
      add(findings, QuoteFinding.NOT_WHOLE, typed.qty());
    }
    if (typed.date() != null && line.out() != null && typed.date().isBefore(line.out())) {
      add(findings, QuoteFinding.RETURN_EARLY, typed.date(), line.out());
    } else if (line.out() != null && typed.date() != null) {
      QuoteRules.dates(line.out(), typed.date()).ifPresent(findings::add);
    }
  }

  private State charge(List<Finding> findings, QuoteLine line, Return typed) {
    if (line.back() == null || line.amount() == null && line.basis() != RateBasis.ON_REQUEST) {
      add(findings, QuoteFinding.RETURN_NO_PRICE, (double) line.row().number());
      return new State(findings, line, null, null, null, null);
    }
    long days = Math.max(0, ChronoUnit.DAYS.between(line.back(), typed.date()));
    BigDecimal fee = null;
    if (days > 0) {
      Optional<BigDecimal> charged = line.lateFee(typed.qty(), typed.date());
      fee = charged.orElse(null);
      if (fee == null) {
        add(findings, QuoteFinding.RETURN_NO_PRICE, (double) line.row().number());
      } else if (fee.signum() == 0) {
        add(findings, QuoteFinding.LATE_FREE, (double) days);
      } else {
        add(findings, QuoteFinding.LATE, (double) days, fee);
      }
    }
    BigDecimal replacement = null;
    if (typed.state() == ReturnState.LOST) {
      replacement = line.value(typed.qty()).orElse(null);
      add(findings, QuoteFinding.LOST, typed.qty());
    } else if (typed.state() == ReturnState.DAMAGED) {
      add(findings, QuoteFinding.DAMAGED, typed.qty());
    }
    BigDecimal tax = fee == null ? null : rules.rounded(fee.multiply(line.tax().share()));
    return new State(findings, line, days, fee, tax, replacement);
  }

  /** Pieces out are those back and those missing, once something has come back. */
  private void judgeMissing(QuoteLine line) {
    Double out = line.item().qty();
    if (!back.isEmpty() && line.isHired() && out != null) {
      double missing = out - back.getOrDefault(line.row().number(), 0.0);
      if (missing > 0) {
        line.add(Finding.of(QuoteFinding.NOT_BACK, missing));
      }
    }
  }
}
