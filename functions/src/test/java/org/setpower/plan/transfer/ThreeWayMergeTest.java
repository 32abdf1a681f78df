package org.setpower.plan.transfer;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.setpower.plan.transfer.ThreeWayMerge.Merged;
import org.setpower.plan.transfer.ThreeWayMerge.Write;
import org.setpower.plan.transfer.TransferChange.Kind;

/** Rows brought in a second time. What is asked and what is kept: MONEY, common practice. */
class ThreeWayMergeTest {
  static Map<String, Object> cells(Object... cells) {
    Map<String, Object> map = new LinkedHashMap<>();
    for (int i = 0; i < cells.length; i += 2) {
      map.put((String) cells[i], cells[i + 1]);
    }
    return map;
  }

  private static BroughtRow last(String key, int row, Object... cells) {
    return new BroughtRow(key, "", row, cells(cells));
  }

  private static TargetRow here(int number, Object... cells) {
    return new TargetRow(number, cells(cells));
  }

  private static TransferRow there(String key, Object... cells) {
    return new TransferRow(key, cells(cells));
  }

  private static ThreeWayMerge merge(
      TransferTarget target, List<BroughtRow> last, List<TargetRow> here, TransferRow... there) {
    return new ThreeWayMerge(
        target, new ThreeWayMerge.Table(here, Set.of(), Map.of(), Set.of()), last, List.of(there));
  }

  private static ThreeWayMerge items(
      List<BroughtRow> last, List<TargetRow> here, TransferRow... there) {
    return merge(TransferTarget.QUOTE_ITEMS, last, here, there);
  }

  static Set<TransferChange> usual(ThreeWayMerge merge) {
    return merge.changes().stream()
        .filter(TransferChange::isUsual)
        .collect(Collectors.toCollection(LinkedHashSet::new));
  }

  private static Merged usually(ThreeWayMerge merge) {
    List<Integer> free = new ArrayList<>();
    for (int i = 0; i < merge.added(usual(merge)); i++) {
      free.add(50 + i);
    }
    return merge.merged(usual(merge), free);
  }

  /** Section to account is mapped once: rows that stand there already get it too. */
  @Test
  void a_blank_account_gets_that_of_another_row_of_its_section() {
    List<BroughtRow> last = new ArrayList<>();
    List<TransferRow> rows = new ArrayList<>();
    for (String name : List.of("panel", "tube", "lead", "battery")) {
      String section = name.equals("battery") ? "power" : "lights";
      Map<String, Object> cells = cells("description", name, "qty", 2.0);
      last.add(new BroughtRow(name, section, last.size() + 1, cells));
      rows.add(new TransferRow(name, section, cells));
    }
    List<TargetRow> here =
        List.of(
            here(1, "description", "panel", "qty", 2.0, "account", "3110"),
            here(2, "description", "tube", "qty", 2.0),
            new TargetRow(3, cells("description", "lead", "qty", 2.0), Set.of("account")),
            here(4, "description", "battery", "qty", 2.0));
    ThreeWayMerge merge =
        merge(TransferTarget.BUDGET_LINES, last, here, rows.toArray(TransferRow[]::new));
    assertThat(usually(merge).writes()).containsExactly(new Write(2, "account", "3110"));
  }

  /** A lamp of the lighting plan and on a battery may be one lamp: nobody pays twice unasked. */
  @Test
  void a_device_that_another_file_brought_in_is_added_only_if_the_user_says_so() {
    TransferRow device =
        new TransferRow("TUBE", TransferRow.DEVICE, cells("item", "tube", "qty", 8.0));
    List<TargetRow> rows = List.of(here(1, "item", "Tube", "qty", 4.0));
    ThreeWayMerge.Table ofOther =
        new ThreeWayMerge.Table(rows, Set.of(1), Map.of(), Set.of("tube"));
    ThreeWayMerge merge =
        new ThreeWayMerge(TransferTarget.QUOTE_ITEMS, ofOther, List.of(), List.of(device));
    assertThat(merge.changes())
        .extracting(TransferChange::kind, TransferChange::isUsual)
        .containsExactly(tuple(Kind.ADDED, false));
    ThreeWayMerge battery =
        new ThreeWayMerge(
            TransferTarget.QUOTE_ITEMS,
            ofOther,
            List.of(),
            List.of(there("TUBE", "item", "tube", "qty", 8.0)));
    assertThat(usual(battery)).hasSize(1);
    assertThat(usual(items(List.of(), List.of(), device))).hasSize(1);
  }

  @Test
  void what_nobody_touched_here_is_updated() {
    ThreeWayMerge merge =
        items(
            List.of(last("P98", 4, "item", "P98", "qty", 2.0)),
            List.of(here(4, "item", "P98", "qty", 2.0, "rate", 5.0)),
            there("P98", "item", "P98", "qty", 3.0));
    assertThat(merge.changes())
        .containsExactly(new TransferChange(Kind.UPDATED, "P98", "P98", 4, "qty", 2.0, 3.0, true));
    assertThat(usually(merge).writes()).containsExactly(new Write(4, "qty", 3.0));
  }

  @Test
  void what_changed_here_and_there_stays_unless_the_user_decides() {
    ThreeWayMerge merge =
        items(
            List.of(last("P98", 1, "item", "P98", "qty", 2.0)),
            List.of(here(1, "item", "P98", "qty", 5.0)),
            there("P98", "item", "P98", "qty", 3.0));
    assertThat(merge.changes())
        .containsExactly(
            new TransferChange(Kind.CONFLICT, "P98", "P98", 1, "qty", 5.0, 3.0, false));
    assertThat(usually(merge).writes()).isEmpty();
    assertThat(merge.merged(Set.copyOf(merge.changes()), List.of()).writes())
        .containsExactly(new Write(1, "qty", 3.0));
  }

  /** What was refused is asked again only when the source changes again. */
  @Test
  void a_refusal_is_remembered() {
    List<TargetRow> mine = List.of(here(1, "item", "P98", "qty", 5.0));
    TransferRow theirs = there("P98", "item", "P98", "qty", 3.0);
    ThreeWayMerge first = items(List.of(last("P98", 1, "item", "P98", "qty", 2.0)), mine, theirs);
    List<BroughtRow> brought = first.merged(Set.of(), List.of()).brought();
    assertThat(items(brought, mine, theirs).changes()).isEmpty();
    assertThat(items(brought, mine, there("P98", "item", "P98", "qty", 4.0)).changes())
        .extracting(TransferChange::kind)
        .containsExactly(Kind.CONFLICT);
  }

  @Test
  void the_same_change_here_and_there_is_none() {
    assertThat(
            items(
                    List.of(last("P98", 1, "item", "P98", "qty", 2.0)),
                    List.of(here(1, "item", "P98", "qty", 3.0)),
                    there("P98", "item", "P98", "qty", 3.0))
                .changes())
        .isEmpty();
  }

  @Test
  void what_is_gone_there_is_kept_and_reported_until_it_is_removed_here() {
    List<TargetRow> rows = List.of(here(1, "item", "P98", "qty", 2.0), here(2, "item", "own"));
    ThreeWayMerge merge = items(List.of(last("P98", 1, "item", "P98", "qty", 2.0)), rows);
    assertThat(merge.changes())
        .containsExactly(new TransferChange(Kind.GONE, "P98", "P98", 1, "", null, null, false));
    Merged merged = merge.merged(Set.copyOf(merge.changes()), List.of());
    assertThat(merged.writes()).isEmpty();
    assertThat(items(merged.brought(), rows).changes()).hasSize(1);
    assertThat(items(merged.brought(), rows.subList(1, 2)).changes()).isEmpty();
  }

  @Test
  void new_rows_are_added_and_removed_ones_stay_away() {
    ThreeWayMerge merge =
        items(
            List.of(last("P98", 1, "item", "P98", "qty", 2.0)),
            List.of(),
            there("P98", "item", "P98", "qty", 2.0),
            there("P150", "item", "P150", "qty", 1.0, "section", "batteries", "rate", 9.0));
    assertThat(merge.changes())
        .extracting(TransferChange::kind, TransferChange::name, TransferChange::isUsual)
        .containsExactly(tuple(Kind.ADDED, "P150", true), tuple(Kind.LEFT_OUT, "P98", false));
    // a rate is none of the plan's business
    assertThat(usually(merge).writes())
        .containsExactlyInAnyOrder(
            new Write(50, "item", "P150"),
            new Write(50, "qty", 1.0),
            new Write(50, "section", "batteries"));
  }

  /** Two spellings that a person reads as one name are no difference. */
  @Test
  void a_name_spelt_otherwise_is_the_same_name() {
    assertThat(
            items(
                    List.of(),
                    List.of(here(1, "item", "haze  machine", "qty", 1.0)),
                    there("HAZEMACHINE", "item", "Haze machine", "qty", 1.0))
                .changes())
        .isEmpty();
  }

  @Test
  void a_row_is_found_where_it_was_sorted_to() {
    List<BroughtRow> last =
        List.of(
            last("P98", 1, "item", "P98", "qty", 2.0), last("P150", 2, "item", "P150", "qty", 1.0));
    List<TargetRow> sorted =
        List.of(here(7, "item", "P150", "qty", 1.0), here(8, "item", "p 98", "qty", 2.0));
    ThreeWayMerge merge =
        items(
            last,
            sorted,
            there("P98", "item", "P98", "qty", 2.0),
            there("P150", "item", "P150", "qty", 4.0));
    assertThat(usually(merge).writes()).containsExactly(new Write(7, "qty", 4.0));
    assertThat(usually(merge).brought())
        .extracting(BroughtRow::key, BroughtRow::row)
        .containsExactly(tuple("P98", 8), tuple("P150", 7));
  }

  @Test
  void a_renamed_row_keeps_its_new_name() {
    ThreeWayMerge merge =
        items(
            List.of(last("SET", 3, "item", "generator 25 kVA", "qty", 1.0)),
            List.of(here(3, "item", "set, silenced", "qty", 1.0)),
            there("SET", "item", "generator 25 kVA", "qty", 2.0));
    assertThat(usually(merge).writes()).containsExactly(new Write(3, "qty", 2.0));
  }

  /** A row in the place of a removed one is another row. */
  @Test
  void another_row_in_the_same_place_is_no_renamed_one() {
    ThreeWayMerge merge =
        items(
            List.of(last("P98", 3, "item", "P98", "qty", 10.0)),
            List.of(here(3, "item", "crane", "qty", 1.0)),
            there("P98", "item", "P98", "qty", 12.0));
    assertThat(merge.changes()).extracting(TransferChange::kind).containsExactly(Kind.LEFT_OUT);
    assertThat(usually(merge).writes()).isEmpty();
  }

  @Test
  void rows_that_stood_here_before_are_compared_by_name() {
    ThreeWayMerge merge =
        items(
            List.of(),
            List.of(here(1, "item", "P98", "qty", 8.0), here(2, "item", "P150")),
            there("P98", "item", "P98", "qty", 10.0),
            there("P150", "item", "P150", "qty", 3.0));
    assertThat(merge.changes())
        .extracting(TransferChange::kind, TransferChange::row)
        .containsExactly(tuple(Kind.UPDATED, 2), tuple(Kind.CONFLICT, 1));
  }

  @Test
  void rows_of_another_source_are_not_taken() {
    ThreeWayMerge merge =
        new ThreeWayMerge(
            TransferTarget.QUOTE_ITEMS,
            new ThreeWayMerge.Table(
                List.of(here(1, "item", "tube", "qty", 8.0)), Set.of(1), Map.of(), Set.of()),
            List.of(),
            List.of(there("TUBE", "item", "tube", "qty", 2.0)));
    assertThat(merge.changes()).extracting(TransferChange::kind).containsExactly(Kind.ADDED);
  }

  @Test
  void a_name_that_the_file_does_not_know_is_listed_and_not_guessed() {
    ThreeWayMerge merge =
        new ThreeWayMerge(
            TransferTarget.QUOTE_ITEMS,
            new ThreeWayMerge.Table(List.of(), Set.of(), Map.of(), Set.of("P98")),
            List.of(),
            List.of(there("P98", "item", "P98", "qty", 1.0), there("X", "item", "X", "qty", 1.0)));
    assertThat(merge.changes())
        .extracting(TransferChange::kind, TransferChange::isUsual)
        .containsExactly(tuple(Kind.ADDED, true), tuple(Kind.UNKNOWN, false));
    // until the price list has it, it is listed again as unknown
    assertThat(usually(merge).brought()).extracting(BroughtRow::key).containsExactly("P98");
  }

  @Test
  void a_formula_belongs_to_the_user() {
    TargetRow own = new TargetRow(1, cells("item", "P98", "qty", 2.0), Set.of("qty"));
    ThreeWayMerge merge =
        items(
            List.of(last("P98", 1, "item", "P98", "qty", 2.0)),
            List.of(own),
            there("P98", "item", "P98", "qty", 3.0));
    assertThat(merge.changes()).extracting(TransferChange::kind).containsExactly(Kind.CONFLICT);
    assertThat(usually(merge).writes()).isEmpty();
  }

  @Test
  void a_blank_cell_is_what_it_stands_for() {
    ThreeWayMerge merge =
        new ThreeWayMerge(
            TransferTarget.BUDGET_LINES,
            new ThreeWayMerge.Table(
                List.of(here(1, "description", "P98", "price", 5.0)),
                Set.of(),
                cells("currency", "EUR", "tax", 0.2),
                Set.of()),
            List.of(),
            List.of(
                there("P98", "description", "P98", "price", 5.0, "currency", "EUR", "tax", 0.2)));
    assertThat(merge.changes()).isEmpty();
  }

  @Test
  void what_production_decides_is_never_touched() {
    ThreeWayMerge merge =
        merge(
            TransferTarget.BUDGET_LINES,
            List.of(last("P98", 1, "description", "P98", "price", 10.0, "budget", 5.0)),
            List.of(here(1, "description", "P98", "price", 10.0, "budget", 20.0, "po", "P9")),
            there("P98", "description", "P98", "price", 11.0, "budget", 6.0, "po", "P2"));
    assertThat(usually(merge).writes()).containsExactly(new Write(1, "price", 11.0));
    assertThat(TransferTarget.BUDGET_LINES.followed())
        .doesNotContain("budget", "changes", "po", "ordered", "invoice", "invoiced", "paid");
  }

  /** An account that was typed for a section once holds for its later rows. */
  @Test
  void a_section_is_mapped_to_an_account_once() {
    ThreeWayMerge merge =
        merge(
            TransferTarget.BUDGET_LINES,
            List.of(new BroughtRow("P98", "batteries", 1, cells("description", "P98"))),
            List.of(here(1, "description", "P98", "account", "2200")),
            new TransferRow("P98", "batteries", cells("description", "P98")),
            new TransferRow("P150", "batteries", cells("description", "P150")),
            new TransferRow("tube", "lights", cells("description", "tube")));
    assertThat(usually(merge).writes())
        .contains(new Write(50, "account", "2200"))
        .filteredOn(w -> w.column().equals("account"))
        .hasSize(1);
  }

  /** People can get hurt: what the register withholds is withheld here, whatever is typed. */
  @Test
  void a_worse_state_is_written_whatever_stands_here() {
    for (String typed : List.of("keep", "watch", "nonsense", "service")) {
      ThreeWayMerge merge =
          merge(
              TransferTarget.TRAVEL_BATTERIES,
              List.of(last("P98-06", 2, "battery", "P98-06", "register", "quarantine")),
              List.of(here(2, "battery", "P98-06", "register", typed, "condition", "fine")),
              there(
                  "P98-06", "battery", "P98-06", "register", "quarantine", "condition", "swollen"));
      assertThat(merge.changes())
          .extracting(TransferChange::kind)
          .containsExactly(Kind.STRICTER, Kind.STRICTER);
      assertThat(merge.changes()).noneMatch(TransferChange::isOpen);
      assertThat(merge.merged(Set.of(), List.of()).writes())
          .containsExactlyInAnyOrder(
              new Write(2, "register", "quarantine"), new Write(2, "condition", "swollen"));
    }
  }

  @Test
  void a_milder_state_does_not_lift_what_was_typed_here() {
    ThreeWayMerge merge =
        merge(
            TransferTarget.TRAVEL_BATTERIES,
            List.of(last("P98-06", 2, "battery", "P98-06", "condition", "fine")),
            List.of(here(2, "battery", "P98-06", "condition", "dropped", "register", "service")),
            there("P98-06", "battery", "P98-06", "register", "keep", "condition", "fine"));
    assertThat(usually(merge).writes()).isEmpty();
  }

  @Test
  void a_battery_that_may_not_be_used_is_added_only_where_the_user_wants_it() {
    ThreeWayMerge merge =
        merge(
            TransferTarget.TRAVEL_BATTERIES,
            List.of(),
            List.of(),
            new TransferRow("A", TransferRow.UNFIT, cells("battery", "A", "register", "service")),
            new TransferRow("B", cells("battery", "B", "register", "keep")));
    assertThat(usual(merge)).extracting(TransferChange::name).containsExactly("B");
  }

  @Test
  void rows_of_one_key_are_not_lost() {
    TransferRow[] twice = {
      there("a", "item", "a", "qty", 1.0), there("a", "item", "a", "qty", 2.0)
    };
    ThreeWayMerge first = items(List.of(), List.of(), twice);
    assertThat(first.changes()).hasSize(2);
    List<TargetRow> rows =
        List.of(here(50, "item", "a", "qty", 1.0), here(51, "item", "a", "qty", 2.0));
    assertThat(items(usually(first).brought(), rows, twice).changes()).isEmpty();
    twice[1] = there("a", "item", "a", "qty", 4.0);
    assertThat(usually(items(usually(first).brought(), rows, twice)).writes())
        .containsExactly(new Write(51, "qty", 4.0));
  }
}
