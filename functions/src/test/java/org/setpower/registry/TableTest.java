package org.setpower.registry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.setpower.base.BaseReason;
import org.setpower.base.PhaseSystem;
import org.setpower.base.Reason;
import org.setpower.base.Refusal;
import org.setpower.base.Word;

/** A range read row by row. */
class TableTest {
  private static void assertRefused(Reason reason, String words, Runnable call) {
    assertThatThrownBy(call::run)
        .hasMessageContaining(words)
        .isInstanceOfSatisfying(
            Refusal.class, refusal -> assertThat(refusal.reason()).isEqualTo(reason));
  }

  @Test
  void blank_rows_are_skipped_and_the_others_keep_their_number() {
    Object[][] cells = {{"", null}, {1.0, "DC"}, {" ", ""}, {2.0, "3PH"}};
    List<Table.Row> rows = Table.of("runs", cells, "amps", "system").filledRows();
    assertThat(rows).extracting(Table.Row::number).containsExactly(2, 4);
    assertThat(rows.get(1).number(0)).isEqualTo(2);
    assertThat(rows.get(1).text(1)).isEqualTo("3PH");
    assertThat(rows.get(1).word(1, new Word.Words<>(PhaseSystem.class)))
        .isEqualTo(PhaseSystem.THREE);
    assertThat(rows.get(1).nameOf(0)).isEqualTo("amps in row 4 of runs");
  }

  @Test
  void a_single_value_is_a_range_of_one() {
    List<Table.Row> rows = Table.of("runs", 3.0, "amps").filledRows();
    assertThat(rows).hasSize(1);
    assertThat(rows.get(0).number()).isEqualTo(1);
    assertThat(rows.get(0).number(0)).isEqualTo(3);
  }

  @Test
  void what_does_not_fit_is_refused_by_its_row() {
    Table.Row row =
        Table.of("runs", new Object[][] {{1.0, "", "2027-01-28", "x"}}, "a", "b", "c", "d")
            .filledRows()
            .get(0);
    assertThat(row.leavesOut(0)).isFalse();
    assertThat(row.leavesOut(1)).isTrue();
    assertThat(row.date(2)).isEqualTo(LocalDate.of(2027, 1, 28));
    assertRefused(BaseReason.ROW_BLANK_CELL, "b", () -> row.number(1));
    assertRefused(BaseReason.ROW_BLANK_CELL, "b", () -> row.text(1));
    assertRefused(BaseReason.ROW_BLANK_CELL, "b", () -> row.date(1));
    assertRefused(BaseReason.ROW_NOT_A_NUMBER, "x", () -> row.number(3));
    assertRefused(BaseReason.ROW_WIDTH, "a, b", () -> Table.of("runs", 3.0, "a", "b"));
    Object[][] blank = {{"", ""}};
    assertRefused(BaseReason.NO_ROWS, "runs", () -> Table.of("runs", blank, "a", "b").filledRows());
    assertRefused(
        BaseReason.NO_ROWS, "runs", () -> Table.of("runs", new Object[0][], "a").filledRows());
  }

  /** 200 000 cells are read, a row more is not. */
  @Test
  void more_cells_than_a_sheet_of_ours_holds_are_refused() {
    assertThat(Table.of("runs", new Object[100_000][2], "a", "b")).isNotNull();
    assertRefused(
        BaseReason.TOO_MANY_CELLS,
        "200002",
        () -> Table.of("runs", new Object[100_001][2], "a", "b"));
  }

  @Test
  void ranges_side_by_side_are_read_together() {
    String[] columns = {"amps", "hours"};
    Object[][] column = {{1.0}, {2.0}, {""}};
    Object[][] row = {{10.0, 20.0, null}};
    List<Table.Row> rows = Table.beside("the loads", columns, column, row).filledRows();
    assertThat(rows).hasSize(2);
    assertThat(rows.get(1).number()).isEqualTo(2);
    assertThat(rows.get(1).number(0)).isEqualTo(2);
    assertThat(rows.get(1).number(1)).isEqualTo(20);
    assertThat(Table.beside("the loads", columns, 1.0, 10.0).filledRows()).hasSize(1);
    assertRefused(
        BaseReason.LENGTHS_DIFFER, "hours", () -> Table.beside("the loads", columns, column, 10.0));
  }
}
