package org.setpower.plan.lighting;

import java.util.ArrayList;
import java.util.List;
import org.setpower.plan.common.InputTable;
import org.setpower.plan.common.PlanModel;
import org.setpower.plan.common.PlanResult;
import org.setpower.plan.common.ResultTable;
import org.setpower.plan.finding.FindingKey;
import org.setpower.plan.lighting.battery.BatteryResults;
import org.setpower.plan.lighting.diagram.DiagramLayout;
import org.setpower.plan.lighting.diagram.DiagramPlan;
import org.setpower.plan.lighting.input.LightingFinding;
import org.setpower.plan.lighting.input.LightingInputs;
import org.setpower.plan.lighting.result.GeneratorPapers;
import org.setpower.plan.lighting.result.LightingPapers;
import org.setpower.plan.lighting.result.LightingResults;

/** The lighting power plan as the function of the sheet and the tests see it. */
public final class LightingModel implements PlanModel {
  /** The model of the sheet. */
  public static final PlanModel MODEL = new LightingModel();

  private LightingModel() {}

  @Override
  public String name() {
    return "lighting";
  }

  @Override
  public String title() {
    return "lighting power plan";
  }

  @Override
  public List<InputTable<?>> inputs() {
    return LightingInputs.TABLES;
  }

  @Override
  public List<ResultTable<?>> results() {
    return List.of(
        LightingResults.PROJECT_RESULT,
        LightingResults.DAY_RESULT,
        LightingResults.GROUP_RESULT,
        LightingResults.SIZE_RESULT,
        LightingResults.SUPPLY_RESULT,
        LightingResults.OUTLET_RESULT,
        LightingResults.RUN_RESULT,
        LightingResults.LOAD_RESULT,
        LightingResults.EQUIPMENT_RESULT,
        LightingResults.GENERATOR_RESULT,
        LightingResults.STOCK_RESULT,
        LightingResults.READING_RESULT,
        LightingPapers.SUMMARY,
        LightingPapers.ISSUES,
        LightingPapers.PLACE_ROW,
        LightingPapers.PLUGGING_ROW,
        LightingPapers.PULL_ROW,
        LightingPapers.LENGTH_ROW,
        LightingPapers.LABEL_ROW,
        LightingPapers.LEG_ROW,
        LightingPapers.BALANCE_ROW,
        LightingPapers.ORDER_ROW,
        LightingPapers.HOUR_ROW,
        GeneratorPapers.SHEET_ROW,
        GeneratorPapers.NIGHT_ROW,
        LightingPapers.COMPARISON_ROW,
        BatteryResults.TYPE_RESULT,
        BatteryResults.LOAD_RESULT,
        BatteryResults.CHARGER_RESULT,
        BatteryResults.CHANGE_ROW);
  }

  @Override
  public List<FindingKey> findings() {
    return List.of(LightingFinding.values());
  }

  @Override
  public List<String> phrases() {
    List<String> phrases = new ArrayList<>(DiagramLayout.words());
    phrases.addAll(DistroLabel.words());
    phrases.addAll(Nights.words());
    phrases.add(GeneratorSheet.OFF);
    phrases.addAll(LightingHandouts.words());
    return phrases;
  }

  @Override
  public PlanResult calculate(List<?> ranges) {
    LightingInputs inputs = LightingInputs.read(ranges);
    if (inputs.all().stream().anyMatch(r -> r.fault().isPresent())) {
      return new PlanResult(inputs.all(), results(), List::of, (table, row, source) -> new int[0]);
    }
    LightingCalculation plan = new LightingCalculation(inputs);
    return new PlanResult(
            inputs.all(),
            results(),
            new LightingTables(plan)::tables,
            new LightingRelations(plan)::rows)
        .with(DiagramPlan.class, () -> LightingDiagram.of(plan))
        .with(SourceUse.All.class, () -> SourceUse.of(plan));
  }
}
