package org.setpower.plan.batteryday;

import java.util.List;
import java.util.Map;
import org.setpower.plan.common.InputRow;
import org.setpower.plan.common.InputTable;
import org.setpower.plan.common.IssueRow;
import org.setpower.plan.common.Issues;
import org.setpower.plan.finding.Finding;

/** The open issues of a plan: one a cause and table, stops first. */
final class BatteryDayIssues {
  private final BatteryDayPlan plan;
  private final Issues issues = new Issues();

  BatteryDayIssues(
      BatteryDayPlan plan,
      List<Finding> project,
      Map<Integer, List<Finding>> positions,
      Map<Integer, List<Finding>> stock,
      Map<Integer, List<Finding>> supplies,
      Map<Integer, List<Finding>> chargers,
      DisposableCells disposables) {
    this.plan = plan;
    BatteryDayInputs inputs = plan.inputs();
    List<Finding> today = project.stream().filter(BatteryDayTables::isOfToday).toList();
    List<Finding> others = project.stream().filter(f -> !today.contains(f)).toList();
    issues.add(BatteryDayInputs.PROJECT.heading(), "1", others);
    issues.add(BatteryDayResults.TODAY.heading(), "1", today);
    for (InputRow<BatteryDayInputs.Day> row : inputs.days().filled().toList()) {
      String date = row.value().date() == null ? null : row.value().date().toString();
      add(BatteryDayInputs.DAYS, row, date, plan.ofDay(row));
    }
    for (InputRow<BatteryDayInputs.BatteryType> row : inputs.types().filled().toList()) {
      List<Finding> own = plan.types().row(row.number()).findings();
      add(BatteryDayInputs.TYPES, row, row.value().type(), own);
    }
    for (InputRow<BatteryDayInputs.Stock> row : inputs.stock().filled().toList()) {
      add(BatteryDayInputs.STOCK, row, row.value().type(), stock.get(row.number()));
    }
    for (InputRow<BatteryDayInputs.Position> row : inputs.positions().filled().toList()) {
      add(BatteryDayInputs.POSITIONS, row, row.value().position(), positions.get(row.number()));
    }
    addEquipment(inputs, supplies, chargers);
    addFound(inputs);
    for (InputRow<BatteryDayInputs.Disposable> row : inputs.disposables().filled().toList()) {
      List<Finding> own = disposables.result(row.number()).reasons();
      add(BatteryDayInputs.DISPOSABLES, row, row.value().item(), own);
    }
  }

  private void addEquipment(
      BatteryDayInputs inputs,
      Map<Integer, List<Finding>> supplies,
      Map<Integer, List<Finding>> chargers) {
    DayBuild build = plan.build();
    for (InputRow<BatteryDayInputs.PowerDraw> row : inputs.devices().filled().toList()) {
      List<Finding> own = build.devices().row(row.number()).findings().stream().distinct().toList();
      add(BatteryDayInputs.DEVICES, row, row.value().device(), own);
    }
    for (InputRow<BatteryDayInputs.Supply> row : inputs.supplies().filled().toList()) {
      List<Finding> own = supplies.get(row.number());
      add(BatteryDayInputs.SUPPLIES, row, row.value().supply(), own);
    }
    for (InputRow<BatteryDayInputs.Charger> row : inputs.chargers().filled().toList()) {
      List<Finding> own = chargers.get(row.number());
      add(BatteryDayInputs.CHARGERS, row, row.value().charger(), own);
    }
    // a battery that is lent, kept as reserve or in quarantine is ordinary business, and why the
    // row of another is not clear is an issue there
  }

  private void addFound(BatteryDayInputs inputs) {
    for (InputRow<BatteryDayInputs.AtCall> row : inputs.atCall().filled().toList()) {
      List<Finding> own = plan.atCall().findings(row.number()).stream().distinct().toList();
      add(BatteryDayInputs.AT_CALL, row, row.value().number(), own);
    }
    for (InputRow<BatteryDayInputs.AtNow> row : inputs.atNow().filled().toList()) {
      List<Finding> own = plan.atNow().findings(row.number()).stream().distinct().toList();
      add(BatteryDayInputs.AT_NOW, row, row.value().number(), own);
    }
  }

  private void add(InputTable<?> table, InputRow<?> row, String name, List<Finding> findings) {
    issues.add(
        table.heading(),
        name == null ? "#" + row.number() : name,
        findings.stream().filter(f -> !isSaidElsewhere(f)).toList());
  }

  /** Whether it follows from a stop in another row, which is an issue there. */
  private boolean isSaidElsewhere(Finding finding) {
    return finding.key() == BatteryDayFinding.TYPE_UNCLEAR
        || finding.key() == BatteryDayFinding.SUPPLY_UNCLEAR
        || finding.key() == BatteryDayFinding.TAKES_NOTHING && plan.types().isUnclear();
  }

  List<IssueRow> rows() {
    return issues.rows(BatteryDayResults.ISSUES.rows());
  }
}
