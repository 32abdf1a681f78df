package org.setpower.plan.lighting;

import java.util.List;
import org.setpower.plan.common.InputRow;
import org.setpower.plan.common.InputTable;
import org.setpower.plan.common.IssueRow;
import org.setpower.plan.common.Issues;
import org.setpower.plan.finding.Finding;
import org.setpower.plan.finding.Gate;
import org.setpower.plan.lighting.input.BatteryTables;
import org.setpower.plan.lighting.input.CableTables;
import org.setpower.plan.lighting.input.LightingFinding;
import org.setpower.plan.lighting.input.LightingInputs;
import org.setpower.plan.lighting.input.LoadTables;
import org.setpower.plan.lighting.input.ProjectTables;
import org.setpower.plan.lighting.input.SupplyTables;
import org.setpower.plan.lighting.paper.VoltageComparison;
import org.setpower.plan.lighting.result.LightingPapers;
import org.setpower.plan.lighting.result.LightingResults;

/** Collects what is wrong in a plan, one issue a cause. */
final class LightingIssues {
  private final LightingCalculation plan;
  private final Issues issues = new Issues();

  LightingIssues(LightingCalculation plan) {
    this.plan = plan;
  }

  List<IssueRow> rows(List<LightingResults.ReadingResult> readings) {
    LightingInputs inputs = plan.inputs();
    issues.add(ProjectTables.PROJECT.heading(), "1", plan.projectFindings());
    inputs
        .days()
        .filled()
        .forEach(
            r ->
                issues.add(
                    ProjectTables.DAYS.heading(),
                    name(r.value().date(), r.number()),
                    plan.dayFindings(r)));
    inputs.groups().filled().forEach(r -> own(ProjectTables.GROUPS, r));
    inputs.sizes().filled().forEach(r -> own(ProjectTables.SIZES, r));
    inputs
        .stock()
        .filled()
        .forEach(
            r ->
                issues.add(
                    CableTables.STOCK.heading(),
                    "#" + r.number(),
                    LightingCalculation.stockFindings(r)));
    plan.supplies().all().forEach(j -> add(SupplyTables.SUPPLIES, j, j.item().value().name()));
    plan.outlets()
        .all()
        .forEach(
            j ->
                add(
                    SupplyTables.OUTLETS,
                    j,
                    j.item().value().distro() + " " + j.item().value().numbers()));
    plan.runs().all().forEach(j -> add(CableTables.RUNS, j, j.item().value().to()));
    plan.loadGate().all().forEach(j -> add(LoadTables.LOADS, j, j.item().value().item()));
    plan.equipment().all().forEach(j -> add(LoadTables.EQUIPMENT, j, j.item().value().item()));
    plan.generators().all().forEach(j -> add(SupplyTables.GENERATORS, j, j.item().value().name()));
    VoltageComparison comparison =
        new VoltageComparison(inputs.comparison(), plan.settings().units());
    inputs
        .comparison()
        .filled()
        .forEach(r -> add(CableTables.COMPARISON, r, null, comparison.result(r).reasons()));
    inputs
        .batteryTypes()
        .filled()
        .forEach(r -> add(BatteryTables.TYPES, r, r.value().type(), plan.batteries().ofType(r)));
    inputs
        .batteryLoads()
        .filled()
        .forEach(r -> add(BatteryTables.LOADS, r, r.value().item(), plan.batteries().ofLoad(r)));
    inputs
        .batteryChargers()
        .filled()
        .forEach(
            r ->
                add(BatteryTables.CHARGERS, r, r.value().charger(), plan.batteries().ofCharger(r)));
    inputs
        .readings()
        .filled()
        .forEach(
            r ->
                issues.add(
                    LoadTables.READINGS.heading(),
                    name(r.value().place(), r.number()),
                    readings.get(r.number() - 1).reasons()));
    return issues.rows(LightingPapers.ISSUES.rows());
  }

  private void own(InputTable<?> table, InputRow<?> row) {
    issues.add(table.heading(), "#" + row.number(), row.findings());
  }

  private void add(InputTable<?> table, InputRow<?> row, String name, List<Finding> findings) {
    issues.add(
        table.heading(),
        name(name, row.number()),
        findings.stream().filter(f -> !plan.settings().stops().contains(f)).toList());
  }

  /** What Project stops is one issue of Project, what another row stops one of that row. */
  private <T> void add(InputTable<?> table, Gate.Judged<InputRow<T>> judged, String name) {
    List<Finding> own =
        judged.findings().stream()
            .filter(f -> !plan.settings().stops().contains(f))
            .filter(f -> f.key() != LightingFinding.LOAD_UPSTREAM)
            .toList();
    issues.add(table.heading(), name(name, judged.row()), own);
  }

  private static String name(Object name, int row) {
    return name == null ? "#" + row : name.toString();
  }
}
