package org.setpower.pack;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.setpower.base.ReferenceTable;

/**
 * The charge of a resting cell by its volts: of NCA and gel batteries within 10 points down to −20
 * °C if their temperature is given; without it a cold one reads lower, as does a flooded one. None
 * reads more than 10 points too high.
 */
class MeasuredRestTest {
  static List<ReferenceTable.Row> cells() {
    return ReferenceTable.read(MeasuredRestTest.class, "measured_rest.csv");
  }

  private static double points(ReferenceTable.Row cell, double temp) {
    Chemistry chemistry = cell.text("chemistry").equals("NCA") ? Chemistry.NCA : Chemistry.LEAD;
    double empty =
        OpenCircuit.of(chemistry).lowest() - TemperatureDerating.restDrop(chemistry, temp);
    double volts = Math.max(cell.number("volts"), empty);
    return 100 * (OpenCircuit.chargeAtRest(chemistry, 1, volts, temp) - cell.number("charge"));
  }

  @ParameterizedTest
  @MethodSource("cells")
  void charge_of_a_resting_cell(ReferenceTable.Row cell) {
    assertThat(points(cell, 25)).isBetween(-cell.number("too_low"), cell.number("too_high"));
  }

  @ParameterizedTest
  @MethodSource("cells")
  void charge_of_a_resting_cell_of_known_temperature(ReferenceTable.Row cell) {
    double low = cell.text("kind").equals("lead, flooded") ? 20 : 10;
    assertThat(points(cell, cell.number("temp"))).isBetween(-low, 10.0);
  }
}
