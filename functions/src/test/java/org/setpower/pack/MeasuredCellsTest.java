package org.setpower.pack;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.assertj.core.data.Percentage;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.setpower.base.ReferenceTable;

/**
 * The model of a pack against cells that others have discharged at constant current. The target:
 * hours within 5 % at 15 to 45 °C and 0.1C to 2C, within 10 % in the cold.
 *
 * <p>It is met in all 38 runs. What the cold leaves of the charge at −10 and −20 °C was set with
 * four of these cells in view, so their runs there are no check of that figure; that one figure
 * does for cells that lie a quarter apart is the doing of {@link SelfHeating}, whose own figures
 * come from case temperatures, not from hours. Cells that were charged in the cold were not full:
 * their charge at the start is read from the volts at rest, against those of the same cell charged
 * in the warm.
 *
 * <p>Left out: used cells of unknown chemistry and health (NASA 2007). A lead battery of 100 Ah at
 * 10 A gave 9.05 h to 10.8 V (V. Mehra and A. C. M., 2016) where the curve alone says 10: see
 * {@link Peukert}, which is for that.
 */
class MeasuredCellsTest {
  static List<ReferenceTable.Row> runs() {
    return ReferenceTable.read(MeasuredCellsTest.class, "measured_discharge.csv");
  }

  private static Pack cell(ReferenceTable.Row run) {
    return Pack.of(
        chemistry(run),
        1,
        run.number("ah"),
        run.number("milliohms"),
        run.number("health"),
        run.number("temp"));
  }

  /** Share of the charge before the run. */
  private static double start(ReferenceTable.Row run) {
    return run.blank("rest_volts")
        ? 1
        : charge(run, run.number("rest_volts")) / charge(run, run.number("rest_volts_warm"));
  }

  private static double charge(ReferenceTable.Row run, double restVolts) {
    return OpenCircuit.of(chemistry(run)).charge(restVolts);
  }

  private static Discharge discharge(ReferenceTable.Row run) {
    return Discharge.warming(
        cell(run), new ConstantAmps(run.number("amps"), run.number("cutoff")), start(run), 0);
  }

  private static Chemistry chemistry(ReferenceTable.Row run) {
    return run.text("chemistry").equals("LFP") ? Chemistry.LFP : Chemistry.LI_ION;
  }

  @ParameterizedTest
  @MethodSource("runs")
  void hours_at_constant_current(ReferenceTable.Row run) {
    double measured = run.number("hours");
    double hours = discharge(run).hours();
    String name = run.text("cell") + " at " + run.text("temp") + " °C, " + run.text("amps") + " A";
    assertThat(hours).as(name).isCloseTo(measured, Percentage.withPercentage(run.number("within")));
  }

  /** The curve and the resistance: the volts in the middle of the run. */
  @ParameterizedTest
  @MethodSource("runs")
  void volts_at_half_the_charge(ReferenceTable.Row run) {
    Discharge discharge = discharge(run);
    double volts = discharge.at((start(run) + discharge.endCharge()) / 2).deviceVolts();
    assertThat(volts)
        .as(run.text("cell") + " at " + run.text("temp") + " °C, " + run.text("amps") + " A")
        .isCloseTo(
            run.number("half_volts"), Percentage.withPercentage(run.number("temp") < 15 ? 8 : 5));
  }

  /**
   * G. L. Plett, 26650 LFP cell: V after 12 min at C/2 from full. The model stays below; the cell's
   * 41 mΩ are from its run at 25 °C: 3.3518 V at rest less 3.3048 V, over 1.147 A.
   */
  @ParameterizedTest
  @CsvSource({"5, 3.2677, 2", "-15, 3.1592, 5", "-25, 2.9745, 9"})
  void volts_of_cold_lfp_at_half_its_ah(double temp, double measured, double percentBelow) {
    Pack cell = Pack.of(Chemistry.LFP, 1, 2.3, 41, 0.8957, temp);
    double volts =
        Discharge.of(cell, new ConstantAmps(1.147, 2), 1, 0)
            .at(1 - 0.2 * 1.147 / cell.heldAmpHours())
            .deviceVolts();
    assertThat(volts).isBetween(measured * (1 - percentBelow / 100), measured);
  }

  /** 100 Ah sealed lead battery at 10 A: 90.5 Ah to 10.8 V; k of 1.05 to 1.15 is usual for AGM. */
  @ParameterizedTest
  @MethodSource("exponents")
  void a_lead_battery_above_its_rated_current(double exponent) {
    assertThat(Peukert.hours(100, 20, exponent, 10)).isCloseTo(9.05, Percentage.withPercentage(7));
  }

  static List<Double> exponents() {
    return List.of(1.05, 1.10, 1.15);
  }
}
