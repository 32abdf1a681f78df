package org.setpower.pack;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.setpower.base.ReferenceTable;

/**
 * The charge of a resting cell by its volts: of NCA from 0 °C and of gel batteries at 21 to 27 °C
 * within 10 points; a colder or a flooded one reads lower, none more than 10 points too high.
 */
class MeasuredRestTest {
  static List<ReferenceTable.Row> cells() {
    return ReferenceTable.read(MeasuredRestTest.class, "measured_rest.csv");
  }

  @ParameterizedTest
  @MethodSource("cells")
  void charge_of_a_resting_cell(ReferenceTable.Row cell) {
    Chemistry chemistry = cell.text("chemistry").equals("NCA") ? Chemistry.NCA : Chemistry.LEAD;
    double volts = Math.max(cell.number("volts"), OpenCircuit.of(chemistry).lowest());
    double points = 100 * (OpenCircuit.chargeAtRest(chemistry, 1, volts) - cell.number("charge"));
    assertThat(points)
        .as(cell.text("kind") + " at " + cell.text("temp") + " °C, " + volts + " V")
        .isBetween(-cell.number("too_low"), cell.number("too_high"));
  }
}
