package org.setpower.plan.lighting.input;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import org.setpower.base.EvaluationException;
import org.setpower.cable.InstallationMethod;
import org.setpower.cable.RatingRule;
import org.setpower.plan.common.InputRow;
import org.setpower.plan.finding.CommonFinding;
import org.setpower.plan.finding.Finding;
import org.setpower.plan.finding.Severity;
import org.setpower.plan.lighting.input.ProjectTables.Project;

/**
 * The settings of Project, blanks replaced by what they mean.
 *
 * @param installation null where it cannot be read: then cables without their own are a stop
 * @param dayShown null for all days
 * @param compared whether somebody has compared tables from memory with the standards
 * @param findings what is wrong with them
 */
public record LightingSettings(
    MeasureSystem units,
    RatingRule rule,
    InstallationMethod installation,
    double maxDrop,
    LocalDate dayShown,
    double spareCable,
    double headroom,
    double maxImbalance,
    boolean compared,
    List<Finding> findings) {
  private static final double MAX_DROP = 0.05;
  private static final double HEADROOM = 0.2;

  /** Common practice. */
  private static final double MAX_IMBALANCE = 0.25;

  /** Whether the National Electrical Code is the one that holds. */
  public boolean isAmerican() {
    return units == MeasureSystem.US || rule == RatingRule.NEC;
  }

  /** Reads the row of Project. */
  public static LightingSettings of(InputRow<Project> row) {
    List<Finding> findings = new ArrayList<>(row.findings());
    Project typed = row.isBlank() ? ProjectTables.PROJECT.none() : row.value();
    if (row.isBlank()) {
      findings.add(Finding.of(CommonFinding.BLANK_CELL, ProjectTables.PROJECT.column("units")));
    }
    InstallationMethod installation = InstallationMethod.BESIDE_ANOTHER;
    if (typed.installation() != null) {
      installation = installation(typed.installation());
      if (installation == null) {
        findings.add(Finding.of(LightingFinding.INSTALLATION_WRONG, typed.installation()));
      }
    } else if (row.isBlank() || !row.unreadable().contains("installation")) {
      findings.add(Finding.of(LightingFinding.INSTALLATION_OPEN));
    }
    if (MeasureSystem.isAsked(row.cells().get("units"))) {
      findings.add(
          Finding.of(LightingFinding.UNITS_LATE, typed.units().word(), typed.units().figures()));
    }
    return new LightingSettings(
        or(typed.units(), MeasureSystem.METRIC),
        or(typed.rule(), RatingRule.BS_7671),
        installation,
        or(typed.maxDrop(), MAX_DROP),
        typed.dayShown(),
        or(typed.spareCable(), 0.0),
        or(typed.headroom(), HEADROOM),
        or(typed.maxImbalance(), MAX_IMBALANCE),
        typed.tablesCompared() != null,
        findings);
  }

  /** How a cable lies, as typed; null where it is not known or no table covers it. */
  public static InstallationMethod installation(String typed) {
    try {
      return InstallationMethod.parse("installation", typed);
    } catch (EvaluationException unknown) {
      return null;
    }
  }

  /** The typed value, or what its blank means. */
  public static <V> V or(V typed, V otherwise) {
    return typed == null ? otherwise : typed;
  }

  /** Findings that stop every row: without a known rule nothing can pass. */
  public List<Finding> stops() {
    return findings.stream().filter(f -> f.severity().compareTo(Severity.STOP) >= 0).toList();
  }
}
