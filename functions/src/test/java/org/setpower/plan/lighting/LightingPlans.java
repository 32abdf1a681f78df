package org.setpower.plan.lighting;

import java.util.List;
import org.setpower.plan.common.PlanResult;
import org.setpower.plan.common.Ranges;
import org.setpower.plan.finding.Finding;
import org.setpower.plan.finding.Verdict;
import org.setpower.plan.lighting.result.LightingPapers;
import org.setpower.plan.lighting.result.LightingResults;

/** Short ways to results, for tests of rules. */
final class LightingPlans {
  private LightingPlans() {}

  /** What is wrong with the settings. */
  static List<Finding> project(Ranges ranges) {
    return ranges.calculate().rows(LightingResults.PROJECT_RESULT).get(0).reasons();
  }

  static LightingResults.RunResult run(Ranges ranges, int row) {
    return ranges.calculate().rows(LightingResults.RUN_RESULT).get(row - 1);
  }

  static LightingResults.LoadResult load(Ranges ranges, int row) {
    return ranges.calculate().rows(LightingResults.LOAD_RESULT).get(row - 1);
  }

  static LightingResults.SupplyResult supply(Ranges ranges, int row) {
    return ranges.calculate().rows(LightingResults.SUPPLY_RESULT).get(row - 1);
  }

  static LightingResults.OutletResult outlet(Ranges ranges, int row) {
    return ranges.calculate().rows(LightingResults.OUTLET_RESULT).get(row - 1);
  }

  static LightingResults.GeneratorResult generator(Ranges ranges, int row) {
    return ranges.calculate().rows(LightingResults.GENERATOR_RESULT).get(row - 1);
  }

  static List<LightingPapers.OrderRow> order(Ranges ranges) {
    return ranges.calculate().rows(LightingPapers.ORDER_ROW);
  }

  static List<String> keys(List<Finding> findings) {
    return findings.stream().map(f -> f.key().key().substring("lighting.".length())).toList();
  }

  /** The worst verdict of all issues. */
  static Verdict verdict(PlanResult result) {
    return result.rows(LightingPapers.SUMMARY).get(0).verdict();
  }
}
