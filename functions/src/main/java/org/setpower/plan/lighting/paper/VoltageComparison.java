package org.setpower.plan.lighting.paper;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.setpower.base.EvaluationException;
import org.setpower.base.PhaseSystem;
import org.setpower.cable.Ampacity;
import org.setpower.cable.CableRating;
import org.setpower.cable.CableRun;
import org.setpower.cable.CableSize;
import org.setpower.cable.InstallationMethod;
import org.setpower.cable.RatingRule;
import org.setpower.plan.common.InputRow;
import org.setpower.plan.common.InputRows;
import org.setpower.plan.finding.CommonFinding;
import org.setpower.plan.finding.Finding;
import org.setpower.plan.lighting.input.CableTables;
import org.setpower.plan.lighting.input.CableTables.Comparison;
import org.setpower.plan.lighting.input.LightingFinding;
import org.setpower.plan.lighting.input.MeasureSystem;
import org.setpower.plan.lighting.input.SupplySystem;
import org.setpower.plan.lighting.protection.RunCable;
import org.setpower.plan.lighting.result.LightingPapers.ComparisonRow;

/** The same power over the same cable on several systems. */
public final class VoltageComparison {
  /** What a blank cell takes from the row above. */
  private static final Set<String> HANDED_DOWN = Set.of("watts", "length", "size");

  private static final int HOTTEST_CLASS = 90;

  private final MeasureSystem units;
  private final Map<Integer, Comparison> completed = new HashMap<>();

  public VoltageComparison(InputRows<Comparison> rows, MeasureSystem units) {
    this.units = units;
    Comparison above = new Comparison(null, null, null, null, null);
    for (InputRow<Comparison> row : rows.filled().toList()) {
      Comparison typed = row.value();
      above =
          new Comparison(
              typed.system(),
              typed.volts(),
              handed(row, "watts", typed.watts(), above.watts()),
              handed(row, "length", typed.length(), above.length()),
              handed(row, "size", typed.size(), above.size()));
      completed.put(row.number(), above);
    }
  }

  private static <V> V handed(InputRow<?> row, String key, V typed, V above) {
    return typed == null && !row.unreadable().contains(key) ? above : typed;
  }

  /** Beside a row; without figures where something is missing. */
  public ComparisonRow result(InputRow<Comparison> row) {
    Comparison all = completed.get(row.number());
    List<Finding> findings = new ArrayList<>(row.findings());
    for (String key : HANDED_DOWN.stream().sorted().toList()) {
      Object cell =
          key.equals("watts") ? all.watts() : key.equals("length") ? all.length() : all.size();
      if (cell == null && !row.unreadable().contains(key)) {
        findings.add(Finding.of(CommonFinding.BLANK_CELL, CableTables.COMPARISON.column(key)));
      }
    }
    CableSize size = RunCable.size(all.size(), units);
    if (size == null && all.size() != null) {
      findings.add(Finding.of(LightingFinding.SIZE_UNREADABLE, all.size()));
    }
    List<Finding> sorted = findings.stream().sorted(Finding.WORST_FIRST).toList();
    if (!sorted.isEmpty()) {
      return new ComparisonRow(Finding.verdict(sorted), sorted, null, null, null, null);
    }
    return compared(all, size);
  }

  /** The most that any table allows a size: a cable by itself, at 30 °C. */
  private static double most(CableSize size) {
    double most = 0;
    for (RatingRule rule : RatingRule.values()) {
      for (Ampacity.Method method : Ampacity.Method.values()) {
        Ampacity rating =
            CableRating.find(
                rule,
                method,
                size,
                HOTTEST_CLASS,
                Ampacity.USUAL_AMBIENT,
                2,
                InstallationMethod.FREELY);
        most = rating == null ? most : Math.max(most, rating.amps());
      }
    }
    return most > 0 ? most : Double.POSITIVE_INFINITY;
  }

  private ComparisonRow compared(Comparison all, CableSize size) {
    boolean three = all.system() == SupplySystem.THREE;
    double volts = all.volts();
    double amps = all.watts() / volts / (three ? Math.sqrt(3) : 1);
    try {
      CableRun run =
          CableRun.of(
              size,
              units.toMetres(all.length()),
              three ? PhaseSystem.THREE : PhaseSystem.ONE,
              1,
              CableRun.LOADED_TEMP,
              1);
      double drop = run.drop(amps);
      double loss = run.ohms() * amps * amps * (three ? 3 : 2);
      double most = most(size);
      List<Finding> findings =
          amps > most
              ? List.of(Finding.of(LightingFinding.COMPARISON_OVER, amps, most))
              : List.of();
      return new ComparisonRow(Finding.verdict(findings), findings, amps, drop, drop / volts, loss);
    } catch (EvaluationException beyond) {
      Finding refused = Finding.of(LightingFinding.SIZE_UNREADABLE, all.size());
      return new ComparisonRow(
          Finding.verdict(List.of(refused)), List.of(refused), amps, null, null, null);
    }
  }
}
