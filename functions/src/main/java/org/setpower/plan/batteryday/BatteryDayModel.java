package org.setpower.plan.batteryday;

import java.util.List;
import java.util.stream.IntStream;
import org.setpower.plan.common.InputRows;
import org.setpower.plan.common.InputTable;
import org.setpower.plan.common.PlanModel;
import org.setpower.plan.common.PlanResult;
import org.setpower.plan.common.ResultRows;
import org.setpower.plan.common.ResultTable;
import org.setpower.plan.finding.FindingKey;

/** The battery plan as the function of the sheet and the tests see it. */
final class BatteryDayModel implements PlanModel {
  @Override
  public String name() {
    return "batteries";
  }

  @Override
  public String title() {
    return "battery plan";
  }

  @Override
  public List<InputTable<?>> inputs() {
    return List.of(
        BatteryDayInputs.PROJECT,
        BatteryDayInputs.DAYS,
        BatteryDayInputs.TYPES,
        BatteryDayInputs.STOCK,
        BatteryDayInputs.POSITIONS,
        BatteryDayInputs.DEVICES,
        BatteryDayInputs.SUPPLIES,
        BatteryDayInputs.CHARGERS,
        BatteryDayInputs.AT_CALL,
        BatteryDayInputs.AT_NOW,
        BatteryDayInputs.DISPOSABLES);
  }

  @Override
  public List<ResultTable<?>> results() {
    return List.of(
        BatteryDayResults.PROJECT,
        BatteryDayResults.DAYS,
        BatteryDayResults.TYPES,
        BatteryDayResults.STOCK,
        BatteryDayResults.BATTERIES,
        BatteryDayResults.POSITIONS,
        BatteryDayResults.DEVICES,
        BatteryDayResults.SUPPLIES,
        BatteryDayResults.CHARGERS,
        BatteryDayResults.AT_CALL,
        BatteryDayResults.AT_NOW,
        BatteryDayResults.TODAY,
        BatteryDayResults.RUN,
        BatteryDayResults.SCHEDULE,
        BatteryDayResults.CARD,
        BatteryDayResults.CHARGING,
        BatteryDayResults.LENT_OUT,
        BatteryDayResults.TIMELINE,
        BatteryDayResults.HOURS,
        BatteryDayResults.DISPOSABLES,
        BatteryDayResults.CELLS,
        BatteryDayResults.VOLTAGES,
        BatteryDayResults.HOT_SWAP,
        BatteryDayResults.SUMMARY,
        BatteryDayResults.ISSUES);
  }

  @Override
  public List<FindingKey> findings() {
    return List.of(BatteryDayFinding.values());
  }

  @Override
  public List<String> phrases() {
    return BatteryDayPapers.phrases();
  }

  @Override
  public PlanResult calculate(List<?> ranges) {
    BatteryDayInputs read = BatteryDayInputs.read(ranges);
    List<InputRows<?>> all = read.all();
    if (all.stream().anyMatch(r -> r.fault().isPresent())) {
      return new PlanResult(all, results(), List::of, (table, row, source) -> new int[0]);
    }
    BatteryDayTables tables = new BatteryDayTables(new BatteryDayPlan(read.named()));
    List<ResultRows<?>> filled = tables.all();
    return new PlanResult(
        all,
        results(),
        () -> filled,
        (table, row, source) -> related(all, filled, table, row, source));
  }

  /** The rows behind a row: itself, the one row of Project, Day and Summary, else all filled. */
  private static int[] related(
      List<InputRows<?>> inputs,
      List<ResultRows<?>> results,
      String table,
      int row,
      String source) {
    if (table.equals(source)) {
      return new int[] {row};
    }
    for (InputRows<?> input : inputs) {
      if (input.table().key().equals(source)) {
        return input.filled().mapToInt(r -> r.number()).toArray();
      }
    }
    for (ResultRows<?> result : results) {
      if (result.table().key().equals(source)) {
        return IntStream.rangeClosed(1, result.rows().size())
            .filter(i -> result.rows().get(i - 1) != null)
            .toArray();
      }
    }
    return new int[0];
  }
}
