package org.setpower.plan.batteryday;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.setpower.base.EvaluationException;
import org.setpower.base.TextEnum;
import org.setpower.pack.Chemistry;
import org.setpower.pack.PlateFeed;
import org.setpower.plan.batteryday.BatteryDayInputs.BatteryType;
import org.setpower.plan.batteryday.typed.LabelVolts;
import org.setpower.plan.common.InputRow;
import org.setpower.plan.common.InputRows;
import org.setpower.plan.finding.CommonFinding;
import org.setpower.plan.finding.Finding;
import org.setpower.plan.finding.Gate;
import org.setpower.plan.finding.Identity;

/** The types of battery, and which of them can be planned with. */
final class TypeList {
  /** V of a cell, by which Wh and Ah on a label are compared: from 3.2 V (LFP) to 3.85 V. */
  private static final double LEAST_CELL = 1.1;

  private static final double MOST_CELL = 4;

  /**
   * How far energy over capacity may lie from the nominal voltage: labels round, and count cells at
   * 3.2 to 3.85 V.
   */
  private static final double TOLERANCE = 0.15;

  /** Plates for 12 V take batteries of 10.8 V to 14.8 V, those for 24 and 48 V the same twice. */
  private static final double LEAST_OF_PLATE = 10.8 / 12;

  private static final double MOST_OF_PLATE = 14.8 / 12;

  private static final double MOST_VOLTS = 96;

  private final Gate<InputRow<BatteryType>> gate;
  private final Map<Integer, Label> labels = new HashMap<>();
  private final Map<String, TypeFacts> facts = new HashMap<>();

  private final Double usualHealth;

  /**
   * What its label says of a type.
   *
   * @param chemistry null where it is not clear
   * @param cells in series; null where they are not clear
   * @param outputs nominal voltages; empty where they are not clear
   */
  private record Label(Chemistry chemistry, Double cells, List<Double> outputs) {}

  /**
   * @param usualHealth of a type that says nothing; null where that is not known
   */
  TypeList(InputRows<BatteryType> rows, Double usualHealth) {
    this.usualHealth = usualHealth;
    List<Gate.Candidate<InputRow<BatteryType>>> candidates = new ArrayList<>();
    rows.filled()
        .forEach(
            r ->
                candidates.add(
                    new Gate.Candidate<>(
                        r.number(), r, Identity.of(r.value().type()), findings(r), false)));
    gate = new Gate<>(candidates, List.of());
    gate.all().stream().filter(Gate.Judged::fit).forEach(this::keep);
  }

  private List<Finding> findings(InputRow<BatteryType> row) {
    List<Finding> findings = new ArrayList<>(row.findings());
    BatteryType type = row.value();
    Label label = label(row, findings);
    labels.put(row.number(), label);
    boolean labelled = type.ampHours() != null && type.wattHours() != null;
    if (labelled) {
      addBlank(row, "chemistry", label.chemistry == null, findings);
      addBlank(row, "cells", label.chemistry != null && label.cells == null, findings);
      addBlank(row, "outputs", type.outputs() == null && label.outputs.isEmpty(), findings);
    }
    if (labelled && type.outputs() != null && !label.outputs.isEmpty()) {
      addVolts(type, label.outputs.stream().mapToDouble(o -> o).max().orElseThrow(), findings);
    }
    if (label.cells != null && labelled) {
      double perCell = type.wattHours() / type.ampHours() / label.cells;
      if (perCell < LEAST_CELL || perCell > MOST_CELL) {
        findings.add(
            Finding.of(
                BatteryDayFinding.TYPE_ENERGY, type.wattHours(), type.ampHours(), label.cells));
      }
    }
    if (type.health() == null && usualHealth == null && !row.unreadable().contains("health")) {
      findings.add(Finding.of(BatteryDayFinding.HEALTH_BLANK, TypeFacts.ASSUMED_HEALTH));
    }
    return findings;
  }

  /** The capacity is that at the highest of the nominal voltages. */
  private static void addVolts(BatteryType type, double nominal, List<Finding> findings) {
    boolean plate = PlateFeed.isClass(nominal);
    double volts = type.wattHours() / type.ampHours();
    double least = nominal * (plate ? LEAST_OF_PLATE : 1) * (1 - TOLERANCE);
    double most = nominal * (plate ? MOST_OF_PLATE : 1) * (1 + TOLERANCE);
    if (volts < least || volts > most) {
      findings.add(
          Finding.of(
              BatteryDayFinding.TYPE_VOLTS, type.wattHours(), type.ampHours(), volts, nominal));
    }
  }

  private static void addBlank(
      InputRow<BatteryType> row, String key, boolean unclear, List<Finding> findings) {
    if (unclear && !row.unreadable().contains(key)) {
      findings.add(Finding.of(CommonFinding.BLANK_CELL, BatteryDayInputs.TYPES.column(key)));
    }
  }

  private static Label label(InputRow<BatteryType> row, List<Finding> findings) {
    BatteryType type = row.value();
    boolean labelled = type.ampHours() != null && type.wattHours() != null;
    double volts = labelled ? type.wattHours() / type.ampHours() : Double.NaN;
    boolean liIon = type.chemistry() == null && !row.unreadable().contains("chemistry");
    Chemistry chemistry =
        liIon && labelled && LabelVolts.isLiIonOnly(type.wattHours(), type.ampHours())
            ? Chemistry.LI_ION
            : type.chemistry();
    Double cells = type.cells();
    if (cells == null && chemistry != null && labelled && !row.unreadable().contains("cells")) {
      cells = chemistry.cells(volts);
    }
    List<Double> outputs = List.of();
    if (type.outputs() != null) {
      try {
        List<Double> read = PlateFeed.outputs("outputs", type.outputs());
        if (read.size() > 1) {
          read.forEach(o -> PlateFeed.volts(read, o));
        }
        boolean known = read.stream().allMatch(o -> o >= 1 && o <= MOST_VOLTS);
        outputs = known ? read : List.of();
        if (!known) {
          findings.add(
              Finding.of(BatteryDayFinding.TYPE_OUTPUTS, TextEnum.shortened(type.outputs())));
        }
      } catch (EvaluationException e) {
        findings.add(
            Finding.of(BatteryDayFinding.TYPE_OUTPUTS, TextEnum.shortened(type.outputs())));
      }
    } else if (labelled && !row.unreadable().contains("outputs")) {
      outputs = LabelVolts.nominal(type.wattHours(), type.ampHours());
    }
    return new Label(chemistry, cells, outputs);
  }

  private void keep(Gate.Judged<InputRow<BatteryType>> judged) {
    BatteryType type = judged.item().value();
    Label label = labels.get(judged.row());
    facts.put(
        Identity.of(type.type()),
        new TypeFacts(
            judged.row(),
            type.type(),
            label.chemistry,
            label.cells,
            type.ampHours(),
            type.wattHours(),
            label.outputs,
            type.maxAmps(),
            type.mount() == null ? "" : type.mount(),
            type.resistance(),
            DaySettings.or(type.health(), DaySettings.or(usualHealth, TypeFacts.ASSUMED_HEALTH))));
  }

  Gate.Judged<InputRow<BatteryType>> row(int number) {
    return gate.row(number);
  }

  /** A type that can be planned with; null for one that is not known or not clear. */
  TypeFacts find(String name) {
    return facts.get(Identity.of(name));
  }

  /** The type of a row; null for one that is not clear. */
  TypeFacts ofRow(int row) {
    return facts.values().stream().filter(f -> f.row() == row).findFirst().orElse(null);
  }

  /** Whether a row of Battery types is not clear. */
  boolean isUnclear() {
    return gate.all().stream().anyMatch(t -> !t.fit());
  }

  /** Why a name is no type that can be planned with. */
  Finding refused(String name) {
    boolean known =
        gate.all().stream()
            .anyMatch(t -> Identity.of(t.item().value().type()).equals(Identity.of(name)));
    return Finding.of(
        known ? BatteryDayFinding.TYPE_UNCLEAR : BatteryDayFinding.TYPE_UNKNOWN,
        TextEnum.shortened(name));
  }
}
