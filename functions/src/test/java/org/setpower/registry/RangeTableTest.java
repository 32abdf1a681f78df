package org.setpower.registry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.setpower.base.BaseErrorCode;
import org.setpower.base.ErrorCode;
import org.setpower.base.EvaluationException;
import org.setpower.base.PhaseSystem;
import org.setpower.base.TextEnum;

/** A range read row by row. */
class RangeTableTest {
  private static void assertRefused(ErrorCode reason, String words, Runnable call) {
    assertThatThrownBy(call::run)
        .hasMessageContaining(words)
        .isInstanceOfSatisfying(
            EvaluationException.class,
            refusal -> assertThat(refusal.errorCode()).isEqualTo(reason));
  }

  @Test
  void blank_rows_are_skipped_and_the_others_keep_their_number() {
    Object[][] cells = {{"", null}, {1.0, "DC"}, {" ", ""}, {2.0, "3PH"}};
    List<RangeTable.Row> rows = RangeTable.of("runs", cells, "amps", "system").filledRows();
    assertThat(rows).extracting(RangeTable.Row::number).containsExactly(2, 4);
    assertThat(rows.get(1).number(0)).isEqualTo(2);
    assertThat(rows.get(1).text(1)).isEqualTo("3PH");
    assertThat(rows.get(1).word(1, new TextEnum.Lookup<>(PhaseSystem.class)))
        .isEqualTo(PhaseSystem.THREE);
    assertThat(rows.get(1).nameOf(0)).isEqualTo("amps in row 4 of runs");
  }

  @Test
  void a_single_value_is_a_range_of_one() {
    List<RangeTable.Row> rows = RangeTable.of("runs", 3.0, "amps").filledRows();
    assertThat(rows).hasSize(1);
    assertThat(rows.get(0).number()).isEqualTo(1);
    assertThat(rows.get(0).number(0)).isEqualTo(3);
  }

  @Test
  void what_does_not_fit_is_refused_by_its_row() {
    RangeTable.Row row =
        RangeTable.of("runs", new Object[][] {{1.0, "", "2027-01-28", "x"}}, "a", "b", "c", "d")
            .filledRows()
            .get(0);
    assertThat(row.leavesOut(0)).isFalse();
    assertThat(row.leavesOut(1)).isTrue();
    assertThat(row.date(2)).isEqualTo(LocalDate.of(2027, 1, 28));
    assertRefused(BaseErrorCode.ROW_BLANK_CELL, "b", () -> row.number(1));
    assertRefused(BaseErrorCode.ROW_BLANK_CELL, "b", () -> row.text(1));
    assertRefused(BaseErrorCode.ROW_BLANK_CELL, "b", () -> row.date(1));
    assertRefused(BaseErrorCode.ROW_NOT_A_NUMBER, "x", () -> row.number(3));
    assertRefused(BaseErrorCode.ROW_WIDTH, "a, b", () -> RangeTable.of("runs", 3.0, "a", "b"));
    Object[][] blank = {{"", ""}};
    assertRefused(
        BaseErrorCode.NO_ROWS, "runs", () -> RangeTable.of("runs", blank, "a", "b").filledRows());
    assertRefused(
        BaseErrorCode.NO_ROWS,
        "runs",
        () -> RangeTable.of("runs", new Object[0][], "a").filledRows());
  }

  /** 200 000 cells are read, a row more is not. */
  @Test
  void more_cells_than_a_sheet_of_ours_holds_are_refused() {
    assertThat(RangeTable.of("runs", new Object[100_000][2], "a", "b")).isNotNull();
    assertRefused(
        BaseErrorCode.TOO_MANY_CELLS,
        "200002",
        () -> RangeTable.of("runs", new Object[100_001][2], "a", "b"));
  }

  @Test
  void ranges_side_by_side_are_read_together() {
    String[] columns = {"amps", "hours"};
    Object[][] column = {{1.0}, {2.0}, {""}};
    Object[][] row = {{10.0, 20.0, null}};
    List<RangeTable.Row> rows = RangeTable.beside("the loads", columns, column, row).filledRows();
    assertThat(rows).hasSize(2);
    assertThat(rows.get(1).number()).isEqualTo(2);
    assertThat(rows.get(1).number(0)).isEqualTo(2);
    assertThat(rows.get(1).number(1)).isEqualTo(20);
    assertThat(RangeTable.beside("the loads", columns, 1.0, 10.0).filledRows()).hasSize(1);
    assertRefused(
        BaseErrorCode.LENGTHS_DIFFER,
        "hours",
        () -> RangeTable.beside("the loads", columns, column, 10.0));
  }
}
