package org.setpower.plan.lighting.paper;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.setpower.base.EvaluationException;
import org.setpower.base.PhaseSystem;
import org.setpower.cable.CableRun;
import org.setpower.cable.CableSize;
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
      return new ComparisonRow(
          Finding.verdict(List.of()), List.of(), amps, drop, drop / volts, loss);
    } catch (EvaluationException beyond) {
      Finding refused = Finding.of(LightingFinding.SIZE_UNREADABLE, all.size());
      return new ComparisonRow(
          Finding.verdict(List.of(refused)), List.of(refused), amps, null, null, null);
    }
  }
}
