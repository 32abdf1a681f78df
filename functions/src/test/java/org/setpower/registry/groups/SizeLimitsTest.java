package org.setpower.registry.groups;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.setpower.bank.BankErrorCode;
import org.setpower.base.BaseErrorCode;
import org.setpower.base.ErrorCode;
import org.setpower.base.EvaluationException;
import org.setpower.pack.PackErrorCode;
import org.setpower.plan.batteries.BatteryPlanErrorCode;
import org.setpower.supply.SupplyErrorCode;

/** What is too large to be answered soon is refused with a reason, and what is not, is answered. */
class SizeLimitsTest {
  private static final Object[][] PACKS = {
    {"Li-ion", 8.0, 10.2, 45.0, 1.0}, {"Li-ion", 8.0, 10.2, 45.0, 0.0}
  };
  private static final double HOPELESS = 0.01;

  private static Object[][] rows(int count, Object... row) {
    Object[][] rows = new Object[count][];
    Arrays.fill(rows, row);
    return rows;
  }

  private static Object call(String function, Object... arguments) {
    return FunctionRegistry.find(function).orElseThrow().call(arguments);
  }

  private static void assertRefused(ErrorCode reason, String function, Object... arguments) {
    assertThatThrownBy(() -> call(function, arguments))
        .isInstanceOfSatisfying(
            EvaluationException.class,
            refusal -> assertThat(refusal.errorCode()).isEqualTo(reason));
  }

  @Test
  void as_many_loads_as_there_may_be_are_shared_out_evenly() {
    Object[][] legs = (Object[][]) call("PHASE.ASSIGN", rows(1000, 1.5), 2.0);
    assertThat(legs).hasNumberOfRows(1000);
    assertThat(Arrays.stream(legs).filter(leg -> leg[0].equals(1.0))).hasSize(500);
    assertThat(Arrays.stream(legs).filter(leg -> leg[0].equals(2.0))).hasSize(500);
  }

  @ParameterizedTest
  @CsvSource({"1001", "10000", "200000"})
  void more_loads_are_refused(int count) {
    assertRefused(SupplyErrorCode.TOO_MANY_LOADS, "PHASE.ASSIGN", rows(count, 1.5), 3.0);
  }

  @Test
  void more_devices_than_a_set_has_are_refused() {
    Object[] device = {49.0, 7.0, 8.0, 98.0, 1.0};
    Object[][] stock = {{98.0, 2000.0, 1.0}};
    assertRefused(
        BatteryPlanErrorCode.TOO_MANY_DEVICES,
        "PLAN.DAY",
        rows(1001, device),
        stock,
        4.0,
        3.0,
        25.0);
    assertRefused(
        BatteryPlanErrorCode.TOO_MANY_DEVICES, "PLAN.PACKS", rows(1001, device), 4.0, 3.0, 25.0);
    assertThat((Object[][]) call("PLAN.PACKS", rows(1000, device), 4.0, 3.0, 25.0))
        .isDeepEqualTo(new Object[][] {{98.0, 1000.0}});
  }

  @Test
  void a_search_is_mapped_over_a_hundred_cells() {
    assertRefused(
        BaseErrorCode.TOO_MANY_CELLS,
        "BANK.DISCHARGE",
        PACKS,
        rows(101, 92.0),
        20.0,
        "hot-swap",
        25.0);
    Object[][] hours =
        (Object[][]) call("BANK.DISCHARGE", PACKS, rows(100, 92.0), 20.0, "hot-swap", 25.0);
    assertThat(hours).hasNumberOfRows(100);
    assertThat(Arrays.stream(hours).map(row -> row[0])).hasOnlyElementsOfType(Double.class);
  }

  @Test
  void a_search_given_up_for_two_cells_goes_on_and_for_three_does_not() {
    Object[][] answers =
        (Object[][])
            call(
                "BANK.DISCHARGE",
                PACKS,
                new Object[][] {{HOPELESS, HOPELESS, 92.0}},
                20.0,
                "parallel",
                25.0);
    assertThat(answers[0][0]).isInstanceOf(EvaluationException.class);
    assertThat(answers[0][2]).isInstanceOf(Double.class);
    assertRefused(
        BankErrorCode.NOT_FOLLOWED,
        "BANK.DISCHARGE",
        PACKS,
        rows(50, HOPELESS),
        20.0,
        "parallel",
        25.0);
  }

  @Test
  void a_table_is_not_mapped_cell_by_cell() {
    assertRefused(
        BaseErrorCode.ONE_VALUE, "BANK.EVENTS", PACKS, rows(50_000, 92.0), 20.0, "hot-swap", 25.0);
  }

  /** Sixty times 50 W: as two like packs at 100 W, I = (30 − V) / 0.05, V = 29.916434. */
  @Test
  void as_many_packs_as_there_may_be_share_a_load_evenly() {
    Object[][] amps = (Object[][]) call("BANK.SHARE", rows(60, 30.0, 50.0), 3000.0);
    assertThat(amps).hasNumberOfRows(60);
    assertThat((Double) amps[0][0]).isCloseTo(1.671322, within(1e-5));
    assertRefused(BankErrorCode.TOO_MANY_PACKS, "BANK.SHARE", rows(61, 30.0, 50.0), 3000.0);
  }

  /** A step more has a row more; the first is the start, at nought hours. */
  @Test
  void a_curve_has_as_many_steps_as_a_chart_shows() {
    Object[][] curve = (Object[][]) curve(2000);
    assertThat(curve.length).isBetween(2001, 2003);
    assertThat(curve[0][0]).isEqualTo(0.0);
    assertThatThrownBy(() -> curve(2001))
        .isInstanceOfSatisfying(
            EvaluationException.class,
            refusal -> assertThat(refusal.errorCode()).isEqualTo(PackErrorCode.TOO_MANY_STEPS));
  }

  private static Object curve(int steps) {
    return Calls.call("PACK.CURVE", 8, 10.2, 45, 92, 20, "Li-ion", 1, 1, 25, null, steps);
  }
}
