package org.setpower.plan.budget;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.setpower.hire.Money;
import org.setpower.plan.budget.BudgetInputs.Option;
import org.setpower.plan.budget.BudgetInputs.Project;
import org.setpower.plan.common.InputRow;
import org.setpower.plan.common.InputRows;
import org.setpower.plan.finding.Finding;
import org.setpower.supply.Emissions;
import org.setpower.supply.Fuel;

/** What each way to power the same days costs, and its CO2. */
final class OptionCosts {
  private final BudgetRules rules;
  private final Map<Integer, State> states = new LinkedHashMap<>();

  /**
   * An option.
   *
   * @param cost without tax; null where it is not known
   * @param co2 kg; null where it is not known
   * @param weight kg; null where it is not known
   */
  record State(String name, List<Finding> findings, BigDecimal cost, Double co2, Double weight) {}

  OptionCosts(BudgetRules rules, InputRows<Option> options) {
    this.rules = rules;
    options.filled().forEach(r -> states.put(r.number(), judge(r)));
  }

  State state(int row) {
    return states.get(row);
  }

  /** The name of the first of the cheapest that are known; null for none. */
  String lowest() {
    return states.values().stream()
        .filter(s -> s.cost() != null)
        .min(Comparator.comparing(State::cost))
        .map(State::name)
        .orElse(null);
  }

  /** How much more a row costs than the cheapest that is known; null where it is not. */
  BigDecimal more(int row) {
    BigDecimal own = states.get(row).cost();
    return own == null
        ? null
        : states.values().stream()
            .map(State::cost)
            .filter(Objects::nonNull)
            .reduce(BigDecimal::min)
            .map(own::subtract)
            .orElse(null);
  }

  /** How much heavier a row is than the lightest that is known; null where it is not. */
  Double heavier(int row) {
    Double own = states.get(row).weight();
    return own == null
        ? null
        : (Double)
            (own
                - states.values().stream()
                    .map(State::weight)
                    .filter(Objects::nonNull)
                    .mapToDouble(w -> w)
                    .min()
                    .orElse(own));
  }

  private State judge(InputRow<Option> row) {
    List<Finding> findings = new ArrayList<>(row.findings());
    Option option = row.value();
    Project project = rules.project();
    need(findings, option.fuel(), project.fuelPrice(), "fuelPrice");
    need(findings, option.energy(), project.energyPrice(), "energyPrice");
    need(findings, option.crew(), project.crewHour(), "crewHour");
    boolean known = findings.stream().noneMatch(BudgetPlan::isStop) && rules.currency() != null;
    if (row.findings().isEmpty() && option.risk() == null) {
      findings.add(Finding.of(BudgetFinding.OPTION_RISK));
    }
    return new State(
        option.option(),
        findings,
        known ? cost(option, project) : null,
        known ? co2(option) : null,
        known ? option.weight() : null);
  }

  private static void need(List<Finding> findings, Double amount, Double price, String key) {
    if (amount != null && amount > 0 && price == null) {
      findings.add(Finding.of(BudgetFinding.OPTION_PRICE, BudgetInputs.PROJECT.column(key)));
    }
  }

  private BigDecimal cost(Option option, Project project) {
    BigDecimal days = Money.decimal(option.days() == null ? 1 : option.days());
    BigDecimal kept = BigDecimal.ONE.subtract(decimal(option.discount()));
    BigDecimal hire = rules.rounded(decimal(option.hire()).multiply(days).multiply(kept));
    return hire.add(product(option.fuel(), project.fuelPrice()))
        .add(product(option.energy(), project.energyPrice()))
        .add(product(option.crew(), project.crewHour()))
        .add(rules.rounded(decimal(option.other())));
  }

  private BigDecimal product(Double amount, Double price) {
    return rules.rounded(decimal(amount).multiply(decimal(price)));
  }

  private static BigDecimal decimal(Double typed) {
    return BudgetRules.decimal(typed);
  }

  private Double co2(Option option) {
    double energy = option.energy() == null ? 0 : option.energy();
    Double grid = rules.project().gridCo2();
    if (energy > 0 && grid == null) {
      return null;
    }
    double fuel = option.fuel() == null ? 0 : option.fuel();
    return Emissions.ofFuel(fuel, Fuel.DIESEL) + (energy > 0 ? energy * grid : 0);
  }
}
