package org.setpower.plan.batteryday;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.setpower.base.TextEnum;
import org.setpower.plan.batteryday.typed.BatteryAbsence;
import org.setpower.plan.batteryday.typed.BatteryNumbers;
import org.setpower.plan.common.InputRow;
import org.setpower.plan.finding.Finding;

/**
 * Batteries that are found otherwise than planned, at call or at the hour of planning again. What
 * contradicts itself or cannot be read counts as the worse: the lower charge, quarantine.
 */
final class FoundBatteries {
  private final Map<Integer, List<Finding>> findings = new LinkedHashMap<>();
  private final Map<Integer, Double> charges = new HashMap<>();
  private final Map<Integer, BatteryAbsence> gone = new HashMap<>();
  private final Map<Integer, Integer> rowOf = new HashMap<>();
  private final Map<Integer, Integer> numbers = new HashMap<>();

  /**
   * Reads a row.
   *
   * @param known numbers of all batteries
   * @return the battery's number; 0 if it is not known
   */
  int add(
      InputRow<?> row, String number, Double charge, BatteryAbsence absence, Set<Integer> known) {
    List<Finding> own = new ArrayList<>(row.findings());
    findings.put(row.number(), own);
    int battery = number == null ? 0 : BatteryNumbers.one(number);
    if (battery == 0 || !known.contains(battery)) {
      if (number != null) {
        own.add(Finding.of(BatteryDayFinding.FOUND_UNKNOWN, TextEnum.shortened(number)));
      }
      return 0;
    }
    numbers.put(row.number(), battery);
    Integer other = rowOf.put(battery, row.number());
    if (other != null) {
      Finding twice = Finding.of(BatteryDayFinding.FOUND_TWICE, BatteryNumbers.shown(battery));
      own.add(twice);
      if (!findings.get(other).contains(twice)) {
        findings.get(other).add(twice);
      }
    }
    if (row.unreadable().contains("charge")) {
      charges.put(battery, 0.0);
    } else if (charge != null) {
      charges.merge(battery, charge, Math::min);
    }
    BatteryAbsence worst =
        row.unreadable().contains("absence") ? BatteryAbsence.QUARANTINE : absence;
    if (worst != null) {
      gone.merge(battery, worst, (a, b) -> a.compareTo(b) > 0 ? a : b);
    }
    return battery;
  }

  /** A row that has a number only; what was meant is not known. */
  void addNothing(InputRow<?> row, int battery) {
    if (battery > 0 && row.cells().size() == 1) {
      add(row.number(), Finding.of(BatteryDayFinding.FOUND_NOTHING, BatteryNumbers.shown(battery)));
    }
  }

  void add(int row, Finding finding) {
    findings.get(row).add(finding);
  }

  /** The battery of a row; 0 if it is not known. */
  int number(int row) {
    return numbers.getOrDefault(row, 0);
  }

  /** State of charge by number. */
  Map<Integer, Double> charges() {
    return charges;
  }

  /** Batteries that are not there, by number. */
  Map<Integer, BatteryAbsence> gone() {
    return gone;
  }

  List<Finding> findings(int row) {
    return findings.get(row);
  }
}
