package org.setpower.plan.batteryday;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.setpower.base.Numbers;
import org.setpower.plan.batteryday.BatteryDayInputs.Disposable;
import org.setpower.plan.common.InputRow;
import org.setpower.plan.common.InputRows;
import org.setpower.plan.finding.Finding;
import org.setpower.plan.finding.Identity;
import org.setpower.plan.finding.Severity;

/**
 * How many cells are used up: each piece begins each day with a fresh set, and has another whenever
 * one is empty; common practice of sound and radio.
 */
final class DisposableCells {
  private final Map<Integer, BatteryDayResults.DisposableResult> results = new HashMap<>();
  private final Map<String, BatteryDayResults.CellRow> cells = new TreeMap<>();

  DisposableCells(InputRows<Disposable> rows, DayCalendar calendar) {
    rows.filled().forEach(r -> add(r, calendar));
  }

  private void add(InputRow<Disposable> row, DayCalendar calendar) {
    Disposable item = row.value();
    List<Finding> findings = new ArrayList<>(row.findings());
    DayFrame shown = calendar.shown();
    if (shown != null && shown.air().lowest() < 0) {
      findings.add(Finding.of(BatteryDayFinding.COLD_CELLS, shown.air().lowest()));
    }
    findings = findings.stream().distinct().sorted(Finding.WORST_FIRST).toList();
    boolean clear = findings.stream().allMatch(f -> f.severity() == Severity.CHECK);
    Integer sets = null;
    Integer day = null;
    Integer all = null;
    if (clear) {
      double each = Math.ceil(item.cells()) * Math.ceil(DaySettings.or(item.quantity(), 1));
      double sum = 0;
      for (double hours : calendar.lengths().values()) {
        sum += each * sets(item, hours);
      }
      all = (int) sum;
      if (shown != null) {
        sets = (int) sets(item, shown.wrap() - shown.call());
        day = (int) (each * sets);
      }
      BatteryDayResults.CellRow before = cells.get(Identity.of(item.cell()));
      cells.put(
          Identity.of(item.cell()),
          new BatteryDayResults.CellRow(
              before == null ? item.cell() : before.cell(),
              day == null ? null : (Integer) (day + (before == null ? 0 : before.day())),
              all + (before == null ? 0 : before.all())));
    }
    results.put(
        row.number(),
        new BatteryDayResults.DisposableResult(
            Finding.verdict(findings), findings, sets, day, all));
  }

  private static double sets(Disposable item, double length) {
    return Numbers.wholeUp(DaySettings.or(item.use(), length) / item.hours());
  }

  /** Beside a row. */
  BatteryDayResults.DisposableResult result(int row) {
    return results.get(row);
  }

  /** Cells to buy, by what they are called. */
  List<BatteryDayResults.CellRow> cells() {
    return List.copyOf(cells.values());
  }
}
