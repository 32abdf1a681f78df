package org.setpower.plan.register;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import org.setpower.plan.common.InputRow;
import org.setpower.plan.finding.CommonFinding;
import org.setpower.plan.finding.Finding;
import org.setpower.plan.finding.Severity;
import org.setpower.plan.register.RegisterInputs.Project;

/**
 * The settings of Project, blanks replaced by what they mean. The figures are common practice of
 * rental houses, not a standard.
 *
 * @param asOf the register's day; the last day there is where it is not known, and then every
 *     battery stops
 * @param coldest °C
 * @param warmest °C
 * @param rest hours
 * @param maxLoad W for each rated Wh
 * @param findings what is wrong with the settings
 */
record Settings(
    LocalDate asOf,
    TemperatureUnit unit,
    double coldest,
    double warmest,
    double rest,
    double maxLoad,
    long validDays,
    long inspectionDays,
    UntestedRule untested,
    double retireBelow,
    double watchBelow,
    String job,
    String issue,
    LocalDate jobBack,
    String contact,
    List<Finding> findings) {
  private static final double COLDEST = 15;
  private static final double WARMEST = 30;
  private static final double REST = 1;
  private static final double MAX_LOAD = 0.5;
  private static final double VALID_DAYS = 180;

  /** Common practice of rental houses: at least each quarter. */
  private static final double INSPECTION_DAYS = 90;

  private static final double RETIRE_BELOW = 0.8;
  private static final double WATCH_BELOW = 0.85;

  static Settings of(InputRow<Project> row) {
    List<Finding> findings = new ArrayList<>(row.findings());
    Project typed = row.isBlank() ? RegisterInputs.PROJECT.none() : row.value();
    if (row.isBlank()) {
      findings.add(Finding.of(CommonFinding.BLANK_CELL, RegisterInputs.PROJECT.column("asOf")));
    }
    TemperatureUnit unit = or(typed.temperatureUnit(), TemperatureUnit.CELSIUS);
    double coldest = typed.coldestTest() == null ? COLDEST : unit.toCelsius(typed.coldestTest());
    double warmest = typed.warmestTest() == null ? WARMEST : unit.toCelsius(typed.warmestTest());
    if (coldest >= warmest) {
      findings.add(Finding.of(RegisterFinding.TEST_TEMPERATURES_CROSSED));
    }
    double retireBelow = or(typed.retireBelow(), RETIRE_BELOW);
    double watchBelow = or(typed.watchBelow(), Math.max(WATCH_BELOW, retireBelow));
    if (watchBelow < retireBelow) {
      findings.add(Finding.of(RegisterFinding.WATCH_BELOW_RETIRE));
    }
    return new Settings(
        or(typed.asOf(), LocalDate.MAX),
        unit,
        coldest,
        warmest,
        or(typed.rest(), REST),
        or(typed.maxLoad(), MAX_LOAD),
        (long) Math.floor(or(typed.validDays(), VALID_DAYS)),
        (long) Math.floor(or(typed.inspectionDays(), INSPECTION_DAYS)),
        or(typed.untested(), UntestedRule.HOLD),
        retireBelow,
        watchBelow,
        typed.job(),
        typed.issue(),
        typed.jobBack(),
        typed.contact(),
        List.copyOf(findings));
  }

  private static <V> V or(V typed, V otherwise) {
    return typed == null ? otherwise : typed;
  }

  /** The findings that stop every battery: without a known rule no battery can pass. */
  List<Finding> stops() {
    return findings.stream().filter(f -> f.severity().compareTo(Severity.STOP) >= 0).toList();
  }
}
