package org.setpower.plan.transfer;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;

/**
 * Brings rows in again: what nobody touched here is updated; what changed here and there is kept as
 * it is here and reported; what is gone there is kept and reported. Some columns are never touched.
 */
public final class ThreeWayMerge {
  private final Set<String> untouchable;

  /** What happened to a row or a cell. */
  public enum Kind {
    ADDED,
    UPDATED,
    /** Changed here and there: here stays, unless the user picks the other. */
    CONFLICT,
    /** Not in the source any more: kept, to be checked. */
    GONE,
    /** Removed here: not brought back, unless the user wants it. */
    REMOVED_HERE
  }

  /**
   * A change.
   *
   * @param row key of the row
   * @param column key of the column; empty for a whole row
   * @param here what stands here, null for blank
   * @param there what the source holds now, null for blank
   */
  public record Change(Kind kind, String row, String column, Object here, Object there) {}

  /**
   * What comes of it.
   *
   * @param rows those here in their order, then added ones
   */
  public record Merged(List<TransferRow> rows, List<Change> changes) {}

  /**
   * @param untouchable column keys that a source never writes: approved budget, PO, invoiced
   */
  public ThreeWayMerge(Set<String> untouchable) {
    this.untouchable = Set.copyOf(untouchable);
  }

  /** For budget lines: what production decides and accounts stays. */
  public static ThreeWayMerge ofBudget() {
    return new ThreeWayMerge(
        Set.of(
            "budget",
            "changes",
            "po",
            "ordered",
            "poClosed",
            "invoice",
            "invoiced",
            "complete",
            "estimate",
            "paid",
            "struck"));
  }

  /**
   * Merges rows of one source.
   *
   * @param last as they were brought in last time
   * @param here as they stand now
   * @param there as the source has them now
   */
  public Merged merge(List<TransferRow> last, List<TransferRow> here, List<TransferRow> there) {
    List<Change> changes = new ArrayList<>();
    Map<String, TransferRow> before = byKey(last);
    Map<String, TransferRow> mine = byKey(here);
    Map<String, TransferRow> theirs = byKey(there);
    List<TransferRow> rows = new ArrayList<>();
    for (Map.Entry<String, TransferRow> own : mine.entrySet()) {
      TransferRow row = own.getValue();
      TransferRow now = theirs.get(own.getKey());
      TransferRow then = before.get(own.getKey());
      if (now != null) {
        rows.add(cells(row, then, now, changes));
      } else {
        if (then != null) {
          changes.add(new Change(Kind.GONE, row.key(), "", null, null));
        }
        rows.add(row);
      }
    }
    for (Map.Entry<String, TransferRow> other : theirs.entrySet()) {
      TransferRow row = other.getValue();
      if (!mine.containsKey(other.getKey())) {
        boolean removed = before.containsKey(other.getKey());
        changes.add(
            new Change(removed ? Kind.REMOVED_HERE : Kind.ADDED, row.key(), "", null, null));
        if (!removed) {
          rows.add(new TransferRow(row.key(), writable(row.cells())));
        }
      }
    }
    return new Merged(
        List.copyOf(rows),
        changes.stream()
            .sorted(Comparator.comparing(Change::kind).thenComparing(Change::row))
            .toList());
  }

  /** By key; rows that share one are numbered, so that none is lost. */
  private static Map<String, TransferRow> byKey(List<TransferRow> rows) {
    Map<String, TransferRow> byKey = new LinkedHashMap<>();
    for (TransferRow row : rows) {
      int number = 1;
      while (byKey.containsKey(row.key() + "#" + number)) {
        number++;
      }
      byKey.put(row.key() + "#" + number, row);
    }
    return byKey;
  }

  private Map<String, Object> writable(Map<String, Object> cells) {
    Map<String, Object> writable = new LinkedHashMap<>(cells);
    writable.keySet().removeAll(untouchable);
    return writable;
  }

  private TransferRow cells(
      TransferRow here, TransferRow last, TransferRow there, List<Change> changes) {
    Map<String, Object> cells = new LinkedHashMap<>(here.cells());
    Map<String, Object> before = last == null ? Map.of() : last.cells();
    Set<String> columns = new LinkedHashSet<>(there.cells().keySet());
    columns.addAll(before.keySet());
    columns.removeAll(untouchable);
    for (String column : columns) {
      Object mine = here.cells().get(column);
      Object theirs = there.cells().get(column);
      if (Objects.equals(mine, theirs) || Objects.equals(before.get(column), theirs)) {
        continue;
      }
      boolean untouched = Objects.equals(mine, before.get(column));
      changes.add(
          new Change(untouched ? Kind.UPDATED : Kind.CONFLICT, here.key(), column, mine, theirs));
      if (untouched && theirs == null) {
        cells.remove(column);
      } else if (untouched) {
        cells.put(column, theirs);
      }
    }
    return new TransferRow(here.key(), cells);
  }
}
