package org.setpower.plan.quote;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.setpower.plan.common.InputRow;
import org.setpower.plan.common.Phrase;
import org.setpower.plan.finding.Finding;
import org.setpower.plan.quote.LateReturns.State;
import org.setpower.plan.quote.QuoteInputs.Return;
import org.setpower.plan.quote.QuoteResults.StatementLine;
import org.setpower.plan.quote.terms.ReturnState;

/**
 * What late, lost and damaged pieces cost the client, less his security deposit. What has no amount
 * yet is on it without one, and the sums say so.
 */
final class ReturnStatement {
  private final QuoteRules rules;
  private final List<StatementLine> lines = new ArrayList<>();
  private BigDecimal charges;
  private int open;

  private ReturnStatement(QuoteRules rules) {
    this.rules = rules;
  }

  /**
   * The statement of returns.
   *
   * @param rows rows of Returns that are filled
   * @param sums of the quote
   */
  static ReturnStatement of(
      QuoteRules rules, LateReturns returns, List<InputRow<Return>> rows, OrderSums sums) {
    ReturnStatement statement = new ReturnStatement(rules);
    if (!returns.isBegun()) {
      return statement;
    }
    statement.charges = rules.rounded(BigDecimal.ZERO);
    rows.forEach(r -> statement.add(r.value(), returns.state(r.number())));
    returns.missing().forEach(statement::add);
    statement.sum(sums);
    return statement;
  }

  /** A statement that may not be issued. */
  static ReturnStatement withheld(QuoteRules rules, Finding why) {
    ReturnStatement statement = new ReturnStatement(rules);
    statement.add(StatementKind.NOT_ISSUED, PageText.PLAIN.of(why), null);
    return statement;
  }

  private void add(Return typed, State state) {
    boolean isFine = typed.state() == null || typed.state() == ReturnState.FINE;
    if (isFine && state.days() == 0 && state.charged() == null) {
      return;
    }
    boolean isOpen = !isFine && state.charged() == null;
    open += isOpen ? 1 : 0;
    BigDecimal amount =
        List.of(zero(state.fee()), zero(state.tax()), zero(state.charged())).stream()
            .reduce(rules.rounded(BigDecimal.ZERO), BigDecimal::add);
    charges = charges.add(amount);
    boolean isNothing = state.fee() == null && state.charged() == null;
    lines.add(
        new StatementLine(
            StatementKind.RETURNED,
            PageText.RETURNED.of(state.line().item().item(), what(typed, state)),
            state.line().row().number(),
            state.line().back(),
            state.on(),
            typed.qty(),
            state.days(),
            state.fee(),
            state.tax(),
            state.fee() == null ? null : state.line().tax().share(),
            state.charged(),
            isNothing ? null : amount));
  }

  /** What came back late, lost or damaged, with what the amounts are made of. */
  private static Phrase what(Return typed, State state) {
    Phrase late = state.days() == 0 ? null : state.how() == null ? PageText.LATE.of() : state.how();
    Phrase pieces =
        typed.state() == ReturnState.LOST
            ? broken(state, PageText.LOST, PageText.LOST_EXCESS)
            : typed.state() == ReturnState.DAMAGED
                ? broken(state, PageText.DAMAGED, PageText.DAMAGED_EXCESS)
                : state.charged() == null ? null : PageText.CHARGED.of();
    if (late == null || pieces == null) {
      return pieces == null ? late : pieces;
    }
    return PageText.AND.of(pieces, late);
  }

  private static Phrase broken(State state, PageText plain, PageText limited) {
    return state.isLimited() ? limited.of(state.damage()) : plain.of();
  }

  private static BigDecimal zero(BigDecimal amount) {
    return Objects.requireNonNullElse(amount, BigDecimal.ZERO);
  }

  private void add(QuoteLine line, double pieces) {
    open++;
    lines.add(
        new StatementLine(
            StatementKind.NOT_BACK,
            PageText.RETURNED.of(line.item().item(), PageText.NOT_BACK.of()),
            line.row().number(),
            line.back(),
            null,
            pieces,
            null,
            null,
            null,
            null,
            null,
            null));
  }

  private void add(StatementKind kind, Phrase label, BigDecimal amount) {
    lines.add(
        new StatementLine(
            kind, label, null, null, null, null, null, null, null, null, null, amount));
  }

  private void sum(OrderSums sums) {
    Phrase label = open == 0 ? PageText.CHARGES.of() : PageText.CHARGES_SO_FAR.of((double) open);
    add(StatementKind.CHARGES, label, charges);
    if (sums.security().signum() > 0) {
      add(StatementKind.SECURITY, PageText.LESS_SECURITY.of(), sums.security().negate());
    }
    boolean isOwed = charges.compareTo(sums.security()) > 0 || sums.security().signum() == 0;
    if (isOwed) {
      add(
          StatementKind.TO_PAY,
          (open == 0 ? PageText.TO_PAY : PageText.TO_PAY_SO_FAR).of(),
          charges.subtract(sums.security()));
    } else {
      add(
          StatementKind.GIVE_BACK,
          (open == 0 ? PageText.GIVE_BACK : PageText.GIVE_BACK_SO_FAR).of(),
          sums.security().subtract(charges));
    }
    add(StatementKind.BALANCE, PageText.APART.of(), sums.balance());
  }

  List<StatementLine> lines() {
    return List.copyOf(lines);
  }

  /** Lines without an amount. */
  int open() {
    return open;
  }

  /** The amount of the line of a kind; null where there is none. */
  BigDecimal amount(StatementKind kind) {
    return lines.stream()
        .filter(l -> l.kind() == kind)
        .map(StatementLine::amount)
        .findFirst()
        .orElse(null);
  }
}
