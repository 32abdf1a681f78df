package org.setpower.registry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import org.junit.jupiter.api.Test;
import org.setpower.base.BaseErrorCode;
import org.setpower.base.ErrorCode;
import org.setpower.base.EvaluationException;
import org.setpower.registry.groups.FunctionRegistry;

/** Ranges in the place of single values, as native functions take them in array formulas. */
class RangeBroadcastTest {
  private static final Object[][] TWO_BY_TWO = {{1.0, 2.0}, {3.0, 4.0}};

  private static Object[][] call(String function, Object... arguments) {
    return (Object[][]) FunctionRegistry.find(function).orElseThrow().call(arguments);
  }

  private static double one(String function, Object... arguments) {
    return (Double) FunctionRegistry.find(function).orElseThrow().call(arguments);
  }

  private static void assertRefused(ErrorCode reason, String words, String f, Object... arguments) {
    assertThatThrownBy(() -> call(f, arguments))
        .hasMessageContaining(words)
        .isInstanceOfSatisfying(
            EvaluationException.class,
            refusal -> assertThat(refusal.errorCode()).isEqualTo(reason));
  }

  private static Object[][] column(int rows, Object value) {
    Object[][] column = new Object[rows][];
    Arrays.fill(column, new Object[] {value});
    return column;
  }

  @Test
  void a_range_gives_a_range_of_its_shape() {
    assertThat(call("CABLE.AREA", new Object[] {new Object[][] {{"2.5 mm²", 4.0, "16 mm2"}}}))
        .isEqualTo(new Object[][] {{2.5, 4.0, 16.0}});
    assertThat(call("CABLE.AREA", new Object[] {new Object[][] {{"2.5 mm²"}, {4.0}}}))
        .isEqualTo(new Object[][] {{2.5}, {4.0}});
  }

  /** The drop of direct current is in proportion to metres and to amps. */
  @Test
  void a_column_and_a_row_meet_in_every_cell() {
    Object[][] metres = {{10.0}, {20.0}, {30.0}};
    Object[][] amps = {{1.0, 5.0}};
    double unit = one("CABLE.DROP", "12 AWG", 10.0, 1.0, "DC");
    Object[][] drops = call("CABLE.DROP", "12 AWG", metres, amps, "DC");
    assertThat(drops).hasDimensions(3, 2);
    for (int r = 0; r < 3; r++) {
      assertThat((Double) drops[r][0]).isCloseTo(unit * (r + 1), within(1e-12));
      assertThat((Double) drops[r][1]).isCloseTo(unit * (r + 1) * 5, within(1e-12));
    }
  }

  @Test
  void a_single_cell_or_row_serves_a_larger_range() {
    double unit = one("CABLE.DROP", "12 AWG", 10.0, 1.0, "DC");
    Object[][] drops = call("CABLE.DROP", "12 AWG", new Object[][] {{10.0}}, TWO_BY_TWO, "DC", 1.0);
    assertThat((Double) drops[0][1]).isCloseTo(2 * unit, within(1e-12));
    assertThat((Double) drops[1][0]).isCloseTo(3 * unit, within(1e-12));
    Object[][] both = call("CABLE.DROP", "12 AWG", new Object[][] {{10.0, 20.0}}, TWO_BY_TWO, "DC");
    assertThat((Double) both[1][1]).isCloseTo(8 * unit, within(1e-12));
  }

  @Test
  void ranges_that_do_not_fit_are_refused() {
    assertRefused(
        BaseErrorCode.SHAPES_DIFFER,
        "3 × 1",
        "CABLE.DROP",
        "12 AWG",
        column(3, 10.0),
        column(2, 5.0));
    assertRefused(
        BaseErrorCode.SHAPES_DIFFER,
        "1 × 3",
        "CABLE.DROP",
        "12 AWG",
        new Object[][] {{10.0, 20.0, 30.0}},
        new Object[][] {{1.0, 2.0}});
  }

  @Test
  void more_cells_than_anybody_fills_are_refused() {
    Object[][] row = {new Object[600]};
    Arrays.fill(row[0], 1.0);
    assertRefused(
        BaseErrorCode.TOO_MANY_CELLS, "240", "CABLE.DROP", "12 AWG", column(400, 10.0), row);
    assertThat(call("CABLE.AREA", new Object[] {column(200_000, 4.0)})).hasNumberOfRows(200_000);
    assertRefused(
        BaseErrorCode.TOO_MANY_CELLS, "200", "CABLE.AREA", new Object[] {column(200_001, 4.0)});
  }

  @Test
  void a_blank_gives_a_blank_where_it_must_be_given_and_the_default_elsewhere() {
    assertThat(call("CABLE.AREA", new Object[] {new Object[][] {{""}, {4.0}, {null}}}))
        .isEqualTo(new Object[][] {{""}, {4.0}, {""}});
    Object[][] drops =
        call(
            "CABLE.DROP",
            "12 AWG",
            10.0,
            1.0,
            "DC",
            1.0,
            60.0,
            new Object[][] {{""}, {1.0}, {2.0}});
    assertThat(drops[0][0]).isEqualTo(drops[1][0]);
    assertThat((Double) drops[2][0] * 2).isCloseTo((Double) drops[1][0], within(1e-9));
  }

  @Test
  void a_refused_cell_stands_alone() {
    Object[][] areas =
        call("CABLE.AREA", new Object[] {new Object[][] {{"2.5 mm²"}, {3.0}, {4.0}}});
    assertThat(areas[0][0]).isEqualTo(2.5);
    assertThat(areas[1][0]).isInstanceOf(EvaluationException.class);
    assertThat(areas[2][0]).isEqualTo(4.0);
  }

  @Test
  void what_is_the_same_for_all_cells_refuses_the_whole() {
    assertRefused(
        BaseErrorCode.NOT_ABOVE, "amps", "CABLE.DROP", "12 AWG", column(3, 10.0), -1.0, "DC");
  }

  @Test
  void a_cell_does_not_hold_a_table() {
    assertRefused(
        BaseErrorCode.ONE_VALUE,
        "PACK.CURVE",
        "PACK.CURVE",
        8.0,
        10.2,
        45.0,
        column(2, 92.0),
        24.0,
        "Li-ion",
        1.0,
        1.0,
        25.0);
  }

  @Test
  void rows_of_different_lengths_are_refused() {
    Object[][] ragged = {{4.0}, {4.0, 6.0}};
    assertRefused(BaseErrorCode.NOT_A_RECTANGLE, "size", "CABLE.AREA", new Object[] {ragged});
    assertRefused(
        BaseErrorCode.NOT_A_RECTANGLE, "size", "CABLE.AREA", new Object[] {new Object[0][]});
    assertRefused(
        BaseErrorCode.NOT_A_RECTANGLE,
        "size",
        "CABLE.AREA",
        new Object[] {new Object[][] {{}, {}}});
  }

  @Test
  void an_answer_beyond_all_numbers_is_refused() {
    assertRefused(BaseErrorCode.RESULT_NOT_FINITE, "", "CABLE.DROP", "12 AWG", 1e200, 1e200, "DC");
  }
}
