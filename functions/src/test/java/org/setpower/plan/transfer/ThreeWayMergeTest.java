package org.setpower.plan.transfer;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.setpower.plan.transfer.ThreeWayMerge.Change;
import org.setpower.plan.transfer.ThreeWayMerge.Kind;
import org.setpower.plan.transfer.ThreeWayMerge.Merged;

/** Rows brought in a second time. */
class ThreeWayMergeTest {
  private static final ThreeWayMerge BUDGET = ThreeWayMerge.ofBudget();

  private static TransferRow row(String key, Object... cells) {
    Map<String, Object> map = new LinkedHashMap<>();
    for (int i = 0; i < cells.length; i += 2) {
      map.put((String) cells[i], cells[i + 1]);
    }
    return new TransferRow(key, map);
  }

  @Test
  void what_nobody_touched_here_is_updated() {
    TransferRow last = row("a", "qty", 2.0, "price", 10.0, "discount", 0.1);
    TransferRow there = row("a", "qty", 3.0, "price", 10.0);
    Merged merged = BUDGET.merge(List.of(last), List.of(last), List.of(there));
    assertThat(merged.rows()).containsExactly(there);
    assertThat(merged.changes())
        .containsExactlyInAnyOrder(
            new Change(Kind.UPDATED, "a", "qty", 2.0, 3.0),
            new Change(Kind.UPDATED, "a", "discount", 0.1, null));
  }

  @Test
  void what_changed_here_and_there_stays_and_is_asked() {
    TransferRow last = row("a", "qty", 2.0, "price", 10.0);
    TransferRow here = row("a", "qty", 5.0, "price", 9.0);
    TransferRow there = row("a", "qty", 3.0, "price", 10.0);
    Merged merged = BUDGET.merge(List.of(last), List.of(here), List.of(there));
    assertThat(merged.rows()).containsExactly(here);
    assertThat(merged.changes()).containsExactly(new Change(Kind.CONFLICT, "a", "qty", 5.0, 3.0));
  }

  @Test
  void the_same_change_here_and_there_is_none() {
    Merged merged =
        BUDGET.merge(
            List.of(row("a", "qty", 2.0)),
            List.of(row("a", "qty", 3.0)),
            List.of(row("a", "qty", 3.0)));
    assertThat(merged.changes()).isEmpty();
  }

  @Test
  void what_is_gone_there_is_kept_and_reported() {
    TransferRow gone = row("a", "qty", 2.0);
    TransferRow own = row("typed here", "qty", 7.0);
    Merged merged = BUDGET.merge(List.of(gone), List.of(gone, own), List.of());
    assertThat(merged.rows()).containsExactly(gone, own);
    assertThat(merged.changes()).containsExactly(new Change(Kind.GONE, "a", "", null, null));
  }

  @Test
  void new_rows_are_added_and_removed_ones_stay_away() {
    TransferRow removed = row("a", "qty", 2.0);
    TransferRow added = row("b", "qty", 1.0, "budget", 99.0);
    Merged merged = BUDGET.merge(List.of(removed), List.of(), List.of(removed, added));
    assertThat(merged.rows()).containsExactly(row("b", "qty", 1.0));
    assertThat(merged.changes().stream().map(Change::kind))
        .containsExactly(Kind.ADDED, Kind.REMOVED_HERE);
  }

  @Test
  void what_production_decides_is_never_touched() {
    TransferRow last = row("a", "price", 10.0, "budget", 5.0, "po", "P1");
    TransferRow here = row("a", "price", 10.0, "budget", 20.0, "po", "P9", "invoiced", 4.0);
    TransferRow there = row("a", "price", 11.0, "budget", 6.0, "po", "P2", "invoiced", 1.0);
    Merged merged = BUDGET.merge(List.of(last), List.of(here), List.of(there));
    assertThat(merged.rows().get(0).cells())
        .containsEntry("price", 11.0)
        .containsEntry("budget", 20.0)
        .containsEntry("po", "P9")
        .containsEntry("invoiced", 4.0);
  }

  @Test
  void rows_of_one_key_are_not_lost() {
    List<TransferRow> twice = List.of(row("a", "qty", 1.0), row("a", "qty", 2.0));
    Merged merged = BUDGET.merge(twice, twice, List.of(row("a", "qty", 1.0), row("a", "qty", 4.0)));
    assertThat(merged.rows()).containsExactly(row("a", "qty", 1.0), row("a", "qty", 4.0));
  }

  @Test
  void bringing_in_the_same_again_changes_nothing() {
    List<TransferRow> rows = List.of(row("a", "qty", 1.0), row("b", "price", 2.0));
    Merged merged = BUDGET.merge(rows, rows, rows);
    assertThat(merged.rows()).isEqualTo(rows);
    assertThat(merged.changes()).isEmpty();
  }
}
