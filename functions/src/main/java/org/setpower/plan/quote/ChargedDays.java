package org.setpower.plan.quote;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.setpower.hire.HireDays;
import org.setpower.hire.Money;
import org.setpower.plan.common.InputRow;
import org.setpower.plan.common.InputRows;
import org.setpower.plan.finding.Finding;
import org.setpower.plan.finding.Gate;
import org.setpower.plan.finding.Identity;
import org.setpower.plan.quote.QuoteInputs.DayShare;
import org.setpower.plan.quote.QuoteInputs.ScheduleDay;
import org.setpower.plan.quote.terms.DayCounting;

/** The house's rule of charged days. */
final class ChargedDays {
  private final QuoteRules rules;
  private final Gate<InputRow<DayShare>> shares;
  private final Map<Integer, List<Finding>> scheduleFindings = new HashMap<>();
  private final List<HireDays.Day> days = new ArrayList<>();
  private final Map<String, Double> shareByType = new HashMap<>();

  ChargedDays(QuoteRules rules, InputRows<ScheduleDay> schedule, InputRows<DayShare> typed) {
    this.rules = rules;
    shares =
        new Gate<>(
            typed
                .filled()
                .map(
                    r ->
                        new Gate.Candidate<>(
                            r.number(), r, Identity.of(r.value().dayType()), r.findings(), false))
                .toList(),
            List.of());
    shares
        .paper(r -> true)
        .fit()
        .forEach(j -> shareByType.put(plain(j.item().value().dayType()), j.item().value().share()));
    schedule.filled().forEach(this::read);
  }

  private static String plain(String type) {
    return HireDays.plain(Identity.of(type));
  }

  private void read(InputRow<ScheduleDay> row) {
    List<Finding> findings = new ArrayList<>(row.findings());
    if (findings.isEmpty()) {
      String type = plain(row.value().dayType());
      if (shareByType.containsKey(type)) {
        days.add(new HireDays.Day(row.number(), row.value().date(), type));
      } else {
        findings.add(Finding.of(QuoteFinding.DAY_TYPE_UNKNOWN, row.value().dayType()));
      }
    }
    scheduleFindings.put(row.number(), findings);
  }

  List<Finding> scheduleFindings(int row) {
    return scheduleFindings.get(row);
  }

  Gate.Judged<InputRow<DayShare>> share(int row) {
    return shares.row(row);
  }

  /** Whether the rule cannot be trusted because of the schedule. */
  boolean isUnclear() {
    return rules.counted() == DayCounting.BY_DAY_TYPE
        && (scheduleFindings.values().stream().anyMatch(f -> !f.isEmpty())
            || !shares.paper(r -> true).withheld().isEmpty());
  }

  /** Whether the schedule has a day within a hire, where days are counted by it. */
  boolean isScheduled(LocalDate out, LocalDate back) {
    return rules.counted() == DayCounting.BY_DATES
        || days.stream().anyMatch(d -> !d.date().isBefore(out) && !d.date().isAfter(back));
  }

  /** Charged days of a service: those who work are paid each day, no cap of the kit holds. */
  BigDecimal everyDay(LocalDate out, LocalDate back) {
    return rules.counted() == DayCounting.BY_DATES
        ? BigDecimal.valueOf(HireDays.calendar(out, back))
        : count(out, back);
  }

  /** Charged days from the day out to the day back, which are in order. */
  BigDecimal count(LocalDate out, LocalDate back) {
    double minDays = rules.minDays();
    return Money.decimal(
        rules.counted() == DayCounting.BY_DATES
            ? HireDays.charged(out, back, rules.daysPerWeek(), minDays, rules.weekend())
            : HireDays.byKind(days, shareByType, out, back, minDays));
  }
}
