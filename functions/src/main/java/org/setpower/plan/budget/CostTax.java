package org.setpower.plan.budget;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.Currency;
import org.setpower.hire.Money;
import org.setpower.plan.budget.BudgetInputs.Line;
import org.setpower.plan.budget.BudgetInputs.Project;

/**
 * The tax of a line, and how its amounts as typed become those of the cost report and of cash.
 *
 * @param share of the net
 * @param recoverable share of the tax that comes back
 */
record CostTax(
    BigDecimal share,
    BigDecimal recoverable,
    TypedAmounts typed,
    TaxBasis basis,
    Currency currency) {

  static CostTax of(Project project, Line line, Currency currency) {
    boolean wages = line.tax() == null && line.type() == CostType.CREW;
    Double tax = line.tax() == null ? project.tax() : line.tax();
    BigDecimal back =
        line.recoverable() == null
            ? BudgetRules.recoverable(project, currency)
            : Money.decimal(line.recoverable());
    return of(project, wages ? BigDecimal.ZERO : Money.decimal(tax), back, currency);
  }

  /** The usual tax of the project. */
  static CostTax of(Project project, Currency currency) {
    BigDecimal back = BudgetRules.recoverable(project, currency);
    return of(project, Money.decimal(project.tax()), back, currency);
  }

  private static CostTax of(
      Project project, BigDecimal tax, BigDecimal recoverable, Currency currency) {
    return new CostTax(
        tax,
        recoverable,
        project.amounts() == null ? TypedAmounts.NET : project.amounts(),
        project.columns() == null ? TaxBasis.NET : project.columns(),
        currency);
  }

  /**
   * An amount with its tax.
   *
   * @param reclaimed part of the tax that comes back
   */
  record Taxed(BigDecimal net, BigDecimal tax, BigDecimal reclaimed) {
    BigDecimal gross() {
      return net.add(tax);
    }
  }

  Taxed taxed(BigDecimal amount) {
    BigDecimal typedAmount = Money.rounded(amount, currency);
    BigDecimal net = typedAmount;
    BigDecimal tax;
    if (typed == TypedAmounts.GROSS) {
      BigDecimal factor = BigDecimal.ONE.add(share);
      net = Money.rounded(typedAmount.divide(factor, MathContext.DECIMAL128), currency);
      tax = typedAmount.subtract(net);
    } else {
      tax = Money.rounded(net.multiply(share), currency);
    }
    return new Taxed(net, tax, Money.rounded(tax.multiply(recoverable), currency));
  }

  /** An amount as typed, in the basis of the cost report. */
  BigDecimal reported(BigDecimal amount) {
    Taxed taxed = taxed(amount);
    return basis == TaxBasis.NET ? taxed.net : taxed.gross().subtract(taxed.reclaimed);
  }
}
