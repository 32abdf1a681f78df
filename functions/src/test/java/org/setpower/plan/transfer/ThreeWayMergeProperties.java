package org.setpower.plan.transfer;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Random;
import java.util.Set;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.setpower.plan.transfer.ThreeWayMerge.Merged;
import org.setpower.plan.transfer.ThreeWayMerge.Write;

/** Random tables, sources and edits: no cell that a user typed is lost without a word. */
class ThreeWayMergeProperties {
  private static final TransferTarget TARGET = TransferTarget.QUOTE_ITEMS;
  private static final String[] NAMES = {"P98", "P150", "tube", "crane", "set"};
  private static final String[] COLUMNS = {"item", "qty", "section", "rate"};

  private final Map<Integer, Map<String, Object>> table = new LinkedHashMap<>();
  private final List<TransferRow> source = new ArrayList<>();

  private static Object value(Random random, String column) {
    if (column.equals("item")) {
      return NAMES[random.nextInt(NAMES.length)];
    }
    return column.equals("section") ? "s" + random.nextInt(3) : (Object) (double) random.nextInt(4);
  }

  private static Map<String, Object> cells(Random random) {
    Map<String, Object> cells = new LinkedHashMap<>();
    for (String column : COLUMNS) {
      if (column.equals("item") || random.nextInt(4) > 0) {
        cells.put(column, value(random, column));
      }
    }
    return cells;
  }

  private List<TargetRow> rows() {
    List<TargetRow> rows = new ArrayList<>();
    table.forEach((number, cells) -> rows.add(new TargetRow(number, cells)));
    return rows;
  }

  private void changeSource(Random random) {
    source.removeIf(r -> random.nextInt(5) == 0);
    for (int i = 0; i < source.size(); i++) {
      if (random.nextInt(3) == 0) {
        Map<String, Object> cells = new LinkedHashMap<>(source.get(i).cells());
        cells.put("qty", value(random, "qty"));
        source.set(i, new TransferRow(source.get(i).key(), cells));
      }
    }
    for (int i = random.nextInt(3); i > 0; i--) {
      Map<String, Object> cells = cells(random);
      source.add(new TransferRow("k" + cells.get("item"), cells));
    }
  }

  /** Types, clears, removes, sorts. */
  private void edit(Random random) {
    for (Map<String, Object> row : table.values()) {
      if (random.nextInt(3) == 0) {
        String column = COLUMNS[random.nextInt(COLUMNS.length)];
        if (random.nextInt(4) == 0) {
          row.remove(column);
        } else {
          row.put(column, value(random, column));
        }
      }
    }
    table.values().removeIf(r -> r.isEmpty() || random.nextInt(8) == 0);
    if (random.nextInt(3) == 0) {
      table.put(100 + random.nextInt(20), cells(random));
    }
    if (random.nextInt(3) == 0) {
      List<Map<String, Object>> sorted = new ArrayList<>(table.values());
      java.util.Collections.shuffle(sorted, random);
      table.clear();
      for (int i = 0; i < sorted.size(); i++) {
        table.put(i + 1, sorted.get(i));
      }
    }
  }

  private static Object before(List<BroughtRow> last, String column, String key) {
    return last.stream()
        .filter(b -> b.key().equals(key))
        .findFirst()
        .map(b -> b.cells().get(column))
        .orElse(null);
  }

  @Property(tries = 2000)
  void what_a_user_typed_is_kept_or_asked_for(@ForAll long seed) {
    Random random = new Random(seed);
    table.clear();
    source.clear();
    List<BroughtRow> last = List.of();
    for (int round = 0; round < 5; round++) {
      changeSource(random);
      edit(random);
      ThreeWayMerge merge =
          new ThreeWayMerge(
              TARGET, new ThreeWayMerge.Table(rows(), Set.of(), Map.of(), Set.of()), last, source);
      Set<TransferChange> usual = ThreeWayMergeTest.usual(merge);
      List<Integer> free = new ArrayList<>();
      for (int n = 1; free.size() < merge.added(usual); n++) {
        if (!table.containsKey(n)) {
          free.add(n);
        }
      }
      Merged merged = merge.merged(usual, free);
      Set<String> places = new LinkedHashSet<>();
      for (Write write : merged.writes()) {
        assertThat(places.add(write.row() + write.column())).as("written twice").isTrue();
        assertThat(write.column()).isNotEqualTo("rate");
        Object mine = table.getOrDefault(write.row(), Map.of()).get(write.column());
        if (free.contains(write.row())) {
          assertThat(table).doesNotContainKey(write.row());
        } else {
          TransferChange change =
              merge.changes().stream()
                  .filter(c -> c.row() == write.row() && c.column().equals(write.column()))
                  .findFirst()
                  .orElseThrow();
          Object before = before(last, write.column(), change.key());
          // only what is as it was brought in, or blank, is written over
          assertThat(mine == null || Objects.equals(mine, before))
              .as("%s was %s, brought in as %s", write, mine, before)
              .isTrue();
          assertThat(change.here()).isEqualTo(mine);
          assertThat(change.there()).isEqualTo(write.value());
        }
      }
      for (Write write : merged.writes()) {
        Map<String, Object> row = table.computeIfAbsent(write.row(), n -> new LinkedHashMap<>());
        if (write.value() == null) {
          row.remove(write.column());
        } else {
          row.put(write.column(), write.value());
        }
      }
      last = merged.brought();
      ThreeWayMerge again =
          new ThreeWayMerge(
              TARGET, new ThreeWayMerge.Table(rows(), Set.of(), Map.of(), Set.of()), last, source);
      assertThat(again.changes())
          .as("the same source again writes nothing")
          .noneMatch(TransferChange::isUsual);
      assertThat(again.changes()).allMatch(c -> !c.isDifference() || !c.isOpen());
    }
  }
}
