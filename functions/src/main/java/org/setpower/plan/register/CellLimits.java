package org.setpower.plan.register;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.setpower.base.ReferenceTable;
import org.setpower.pack.Chemistry;
import org.setpower.plan.common.InputRow;
import org.setpower.plan.common.InputRows;
import org.setpower.plan.finding.Finding;
import org.setpower.plan.finding.Gate;
import org.setpower.plan.register.RegisterInputs.Limit;

/**
 * The limits that are used: those of {@code limits.csv}, or stricter ones of the house.
 *
 * @param lowest V of a cell; below it the battery goes to quarantine
 * @param highest V of a cell; above it the battery goes to quarantine
 * @param spread V between the best and the worst cell; above it the battery goes to service
 * @param apart V between the best and the worst cell; above it the battery goes to quarantine
 * @param resistance times the median of its type; above it the battery goes to service
 */
record CellLimits(double lowest, double highest, double spread, double apart, double resistance) {
  private static final Map<Chemistry, CellLimits> FACTS = facts();

  private static Map<Chemistry, CellLimits> facts() {
    List<ReferenceTable.Row> rows = ReferenceTable.read(CellLimits.class, "limits.csv");
    Map<Chemistry, CellLimits> facts = new EnumMap<>(Chemistry.class);
    for (Chemistry chemistry : Chemistry.values()) {
      facts.put(
          chemistry,
          new CellLimits(
              fact(rows, chemistry, "lowest"),
              fact(rows, chemistry, "highest"),
              fact(rows, chemistry, "spread"),
              fact(rows, chemistry, "apart"),
              fact(rows, chemistry, "resistance")));
    }
    return facts;
  }

  private static double fact(List<ReferenceTable.Row> rows, Chemistry chemistry, String quantity) {
    return rows.stream()
        .filter(r -> r.text("chemistry").equals(chemistry.family().word()))
        .filter(r -> r.text("quantity").equals(quantity))
        .findFirst()
        .orElseThrow()
        .number("value");
  }

  /** The limits of a row: of house and fact the stricter voltage. */
  static CellLimits of(Limit house) {
    CellLimits fact = FACTS.get(house.chemistry());
    return new CellLimits(
        house.minVolts() == null ? fact.lowest : Math.max(fact.lowest, house.minVolts()),
        house.maxVolts() == null ? fact.highest : Math.min(fact.highest, house.maxVolts()),
        house.maxSpread() == null ? fact.spread : house.maxSpread(),
        house.maxApart() == null ? fact.apart : house.maxApart(),
        house.maxResistance() == null ? fact.resistance : house.maxResistance());
  }

  /** Cell voltages by how far they lie outside, the furthest last. */
  Comparator<Double> furthest() {
    return Comparator.comparing((Double v) -> Math.max(lowest - v, v - highest))
        .thenComparing(Comparator.naturalOrder());
  }

  /** Judges the rows of the house, one a chemistry. */
  static Gate<InputRow<Limit>> gate(InputRows<Limit> rows) {
    return new Gate<>(
        rows.filled()
            .map(
                r ->
                    new Gate.Candidate<>(
                        r.number(), r, name(r.value().chemistry()), findings(r), false))
            .toList(),
        List.of());
  }

  private static String name(Chemistry chemistry) {
    return chemistry == null ? "" : chemistry.word();
  }

  private static List<Finding> findings(InputRow<Limit> row) {
    List<Finding> findings = new ArrayList<>(row.findings());
    Limit house = row.value();
    if (house.chemistry() != null) {
      CellLimits used = of(house);
      if (house.minVolts() != null && house.minVolts() < used.lowest) {
        findings.add(Finding.of(RegisterFinding.LIMIT_MILD, house.minVolts(), used.lowest));
      }
      if (house.maxVolts() != null && house.maxVolts() > used.highest) {
        findings.add(Finding.of(RegisterFinding.LIMIT_MILD, house.maxVolts(), used.highest));
      }
      if (used.lowest >= used.highest) {
        findings.add(Finding.of(RegisterFinding.LIMIT_CROSSED));
      }
    }
    return findings;
  }

  /**
   * The limits of each chemistry; a chemistry whose row does not pass the gate has none. One that
   * the house has no row of goes by its family.
   */
  static Map<Chemistry, CellLimits> used(Gate<InputRow<Limit>> gate) {
    Map<Chemistry, CellLimits> used = new EnumMap<>(FACTS);
    Set<Chemistry> ofHouse = EnumSet.noneOf(Chemistry.class);
    for (Gate.Judged<InputRow<Limit>> row : gate.all()) {
      Chemistry chemistry = row.item().value().chemistry();
      if (chemistry != null) {
        ofHouse.add(chemistry);
        if (row.fit()) {
          used.put(chemistry, of(row.item().value()));
        } else {
          used.remove(chemistry);
        }
      }
    }
    for (Chemistry chemistry : Chemistry.values()) {
      if (!ofHouse.contains(chemistry)) {
        CellLimits family = used.get(chemistry.family());
        if (family == null) {
          used.remove(chemistry);
        } else {
          used.put(chemistry, family);
        }
      }
    }
    return used;
  }
}
