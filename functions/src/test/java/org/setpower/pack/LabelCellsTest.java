package org.setpower.pack;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.TreeMap;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.setpower.base.EvaluationException;

/**
 * A pack of which only the label is known, against the measured discharges of new cells from −20 to
 * 50 °C. The target: a median error of 8 % at most, and nowhere more than 10 % too many hours. What
 * is reached and asserted is what the guide says. The same for a cell that the figures were not
 * made from: they are made here without it, by the rule that {@code chemistry.csv} and {@code
 * cold.csv} state.
 *
 * <p>No run of the reference from −20 to 45 °C is left out. A cell that was charged in the cold was
 * not full: it starts from its rest volts, as PACK.CHARGE reads them, or from the temperature at
 * which it was charged; below 0 °C, where that alone says nothing, there is no answer. Of a used
 * cell no label tells the health: it has that of the charge that was put in before the run. NiMH
 * has no answer.
 */
class LabelCellsTest {
  /** Measured hours at constant amps. */
  private record Run(
      String cell,
      Chemistry chemistry,
      double ampHours,
      double temp,
      double amps,
      double cutoff,
      Double restVolts,
      double hours) {
    double share() {
      return hours * amps / ampHours;
    }
  }

  /** What a set of cells says of a chemistry. */
  private record Fit(double newShare, PiecewiseLine left) {
    static Fit of(List<Run> cells, Chemistry chemistry) {
      List<Run> own = cells.stream().filter(r -> r.chemistry == chemistry).toList();
      double newShare =
          own.stream()
              .filter(r -> r.temp >= 20)
              .collect(Collectors.groupingBy(Run::cell))
              .values()
              .stream()
              .mapToDouble(c -> c.stream().mapToDouble(Run::share).max().orElseThrow())
              .min()
              .orElse(chemistry.newShare());
      TreeMap<Double, Double> left = new TreeMap<>();
      left.put(25.0, 1.0);
      left.put(100.0, 1.0);
      if (chemistry == Chemistry.LI_ION) {
        own.stream()
            .filter(r -> r.temp < 20)
            .forEach(r -> left.merge(r.temp, left(r, newShare), Math::min));
      } else {
        own.stream()
            .filter(r -> r.temp < 20)
            .forEach(r -> left.put(r.temp, TemperatureDerating.chargeLeft(chemistry, r.temp)));
      }
      return new Fit(
          newShare,
          new PiecewiseLine(
              left.keySet().stream().mapToDouble(t -> t).toArray(),
              left.values().stream().mapToDouble(l -> l).toArray()));
    }

    /** The share of its charge with which the model gives the measured hours. */
    private static double left(Run run, double newShare) {
      Pack full = Pack.byLabel(run.chemistry, 1, run.ampHours, newShare, run.temp, 1);
      double end = full.charge(run.cutoff + run.amps * full.ohms());
      return Math.min(1, run.share() / newShare / (1 - end));
    }

    /** Relative error of the hours; positive is too many. */
    double error(Run run, double start) {
      Pack pack =
          Pack.byLabel(run.chemistry, 1, run.ampHours, newShare, run.temp, left.at(run.temp));
      return hours(pack, run, start) / run.hours - 1;
    }
  }

  private static double hours(Pack pack, Run run, double start) {
    return Discharge.warming(pack, new ConstantAmps(run.amps, run.cutoff), start, 0).hours();
  }

  /** V. Mehra and A. C. M. (2016): 12 V 100 Ah sealed lead battery, 92.29 Ah at 10 A to 10.45 V. */
  private static final Run LEAD =
      new Run("100 Ah AGM", Chemistry.LEAD, 100, 24, 10, 10.45 / 6, null, 9.229);

  private static List<Run> runs() {
    return Stream.concat(
            MeasuredCellsTest.runs().stream()
                .map(
                    r ->
                        new Run(
                            r.text("cell"),
                            r.text("chemistry").equals("LFP") ? Chemistry.LFP : Chemistry.LI_ION,
                            r.number("ah"),
                            r.number("temp"),
                            r.number("amps"),
                            r.number("cutoff"),
                            r.blank("rest_volts") ? null : r.number("rest_volts"),
                            r.number("hours"))),
            Stream.of(LEAD))
        .filter(r -> r.temp >= -20)
        .toList();
  }

  /** As PACK.CHARGE reads it, where the cell was charged in the cold. */
  private static double start(Run run) {
    return run.restVolts == null
        ? 1
        : OpenCircuit.chargeAtRest(run.chemistry, 1, run.restVolts, 25);
  }

  private static double median(double[] errors) {
    double[] sizes = Arrays.stream(errors).map(Math::abs).sorted().toArray();
    return (sizes[(sizes.length - 1) / 2] + sizes[sizes.length / 2]) / 2;
  }

  private static double[] errors(Predicate<Run> of) {
    return runs().stream()
        .filter(of)
        .mapToDouble(
            r -> hours(Pack.byLabel(r.chemistry, 1, r.ampHours, 1, r.temp), r, 1) / r.hours - 1)
        .toArray();
  }

  @Test
  void hours_from_the_label() {
    double[] errors = errors(r -> true);
    assertThat(errors).hasSize(38);
    assertThat(median(errors)).isLessThan(0.06);
    assertThat(Arrays.stream(errors)).allMatch(e -> e > -0.475 && e < 0.08);
  }

  /** No cell in the cold gave less than its label is taken for; the others gave more. */
  @Test
  void hours_in_the_cold_are_those_of_the_weakest_cell() {
    double[] errors = errors(r -> r.temp <= -10 && r.chemistry == Chemistry.LI_ION);
    assertThat(errors).hasSize(12);
    assertThat(Arrays.stream(errors).max().orElseThrow()).isCloseTo(0, within(0.002));
  }

  /** The errors of each cell by figures that were made without it. */
  private static List<Double> leftOut() {
    List<Run> all = runs();
    List<Double> errors = new ArrayList<>();
    for (Run run : all) {
      List<Run> others = all.stream().filter(r -> !r.cell.equals(run.cell)).toList();
      errors.add(Fit.of(others, run.chemistry).error(run, start(run)));
    }
    return errors;
  }

  @Test
  void hours_of_a_cell_that_was_left_out() {
    double[] errors = leftOut().stream().mapToDouble(e -> e).toArray();
    assertThat(median(errors)).isLessThan(0.07);
    assertThat(Arrays.stream(errors)).allMatch(e -> e < 0.08);
  }

  /**
   * Of a cell that was left out, where nothing is known but the temperature at which it was
   * charged: at most 10 % too many hours, or no answer. Entered as full and charged warm, which it
   * was not, one cell would get 64 % too many: that is why the temperature is asked for.
   */
  @Test
  void hours_of_a_cell_charged_in_the_cold_that_was_left_out() {
    List<Run> all = runs();
    int cold = 0;
    int refused = 0;
    double worstAsFull = 0;
    for (Run run : all) {
      List<Run> others = all.stream().filter(r -> !r.cell.equals(run.cell)).toList();
      Fit fit = Fit.of(others, run.chemistry);
      if (run.restVolts == null) {
        assertThat(fit.error(run, 1)).as(run.cell).isLessThan(0.10);
      } else if (run.temp < 0) {
        refused++;
        worstAsFull = Math.max(worstAsFull, fit.error(run, 1));
        assertThatThrownBy(() -> TemperatureDerating.chargeTaken(run.chemistry, run.temp))
            .hasMessageContaining("PACK.CHARGE");
      } else {
        cold++;
        double start = TemperatureDerating.chargeTaken(run.chemistry, run.temp);
        assertThat(fit.error(run, start)).as(run.cell).isLessThan(0.10);
      }
    }
    assertThat(cold).isEqualTo(4);
    assertThat(refused).isEqualTo(12);
    assertThat(worstAsFull).isCloseTo(0.644, within(0.005));
  }

  /**
   * Used cells, by the charge that was put in before the run: B. Saha and K. Goebel, Battery Data
   * Set, NASA Ames, 2007 (third charge and discharge of six cells), and P. Kollmeyer 2018, the NCA
   * cell after 110 cycles.
   */
  @ParameterizedTest
  @CsvSource({
    "2, 43, 1.8813, 4.023, 1.89, 27.8",
    "2, 43, 1.8475, 3.975, 2.43, 27.6",
    "2, 4, 1.0101, 1.006, 1.99, 61.2",
    "2, 4, 1.5455, 1.007, 2.20, 92.8",
    "2, 4, 1.6630, 2.012, 2.00, 49.3",
    "2, 4, 1.3974, 2.013, 1.96, 41.7",
    "2.9, 25, 2.3531, 2.899, 2.5, 50.4"
  })
  void hours_of_a_used_cell(
      double ampHours, double temp, double putIn, double amps, double cutoff, double minutes) {
    Pack pack = Pack.byLabel(Chemistry.LI_ION, 1, ampHours, putIn / ampHours, temp);
    double hours = Discharge.warming(pack, new ConstantAmps(amps, cutoff), 1, 0).hours();
    assertThat(hours).isBetween(0.92 * minutes / 60, minutes / 60);
  }

  /** Two runs of an AA cell at room temperature have no answer. */
  @Test
  void nimh_has_no_answer() {
    assertThatThrownBy(() -> Pack.byLabel(Chemistry.NIMH, 1, 2, 1, 20))
        .isInstanceOf(EvaluationException.class);
  }

  /** The tables hold what the rule makes of all cells. */
  @Test
  void the_tables_follow_the_rule() {
    for (Chemistry chemistry : List.of(Chemistry.LI_ION, Chemistry.LFP, Chemistry.LEAD)) {
      Fit fit = Fit.of(runs(), chemistry);
      assertThat(chemistry.newShare()).isCloseTo(fit.newShare, within(1e-3));
    }
    Fit fit = Fit.of(runs(), Chemistry.LI_ION);
    for (double temp : new double[] {0, -10, -15, -20}) {
      assertThat(TemperatureDerating.labelChargeLeft(Chemistry.LI_ION, temp))
          .isCloseTo(fit.left.at(temp), within(6e-4));
    }
  }

  @Test
  void health_above_that_of_the_weakest_new_cell_does_not_count() {
    assertThat(Pack.byLabel(Chemistry.LFP, 4, 20, 1, 25).heldAmpHours())
        .isCloseTo(20 * 0.8588, within(1e-9));
    assertThat(Pack.byLabel(Chemistry.LFP, 4, 20, 0.8, 25).heldAmpHours())
        .isCloseTo(16, within(1e-9));
  }
}
