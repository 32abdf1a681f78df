package org.setpower.plan.transfer;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import org.setpower.plan.finding.Identity;
import org.setpower.plan.transfer.TransferChange.Kind;

/**
 * Brings rows in again: what nobody touched here is updated; what changed here and there is kept as
 * it is here unless the user decides otherwise; what is gone there is kept and reported. Only the
 * columns of the target are ever written.
 */
public final class ThreeWayMerge {
  private static final double ROUNDING = 1e-9;
  private static final String ACCOUNT = "account";

  private final TransferTarget target;
  private final Map<String, BroughtRow> last = new LinkedHashMap<>();
  private final Map<String, TransferRow> there = new LinkedHashMap<>();
  private final List<TargetRow> here;
  private final Map<String, Object> blanks;
  private final Set<String> known;
  private final Map<String, TargetRow> links;
  private final List<TransferChange> changes = new ArrayList<>();

  /**
   * The table into which rows are brought.
   *
   * @param rows those that are filled
   * @param ofOthers numbers of rows that other sources have brought in
   * @param blanks what a blank cell of a column stands for
   * @param known names that the file knows; empty where any name will do
   */
  public record Table(
      List<TargetRow> rows, Set<Integer> ofOthers, Map<String, Object> blanks, Set<String> known) {}

  /**
   * A cell to be typed.
   *
   * @param row number of the row in its table, from 1
   * @param value null to clear the cell
   */
  public record Write(int row, String column, Object value) {}

  /**
   * What is to be done.
   *
   * @param writes cells to be typed
   * @param brought what is to be remembered until next time
   */
  public record Merged(List<Write> writes, List<BroughtRow> brought) {}

  /**
   * Compares.
   *
   * @param last as the rows were brought in last time
   * @param there as the source has them now
   */
  public ThreeWayMerge(
      TransferTarget target, Table table, List<BroughtRow> last, List<TransferRow> there) {
    this.target = target;
    this.here = List.copyOf(table.rows());
    this.blanks = Map.copyOf(table.blanks());
    this.known = new HashSet<>();
    table.known().forEach(k -> known.add(Identity.of(k)));
    last.forEach(b -> this.last.put(numbered(b.key(), this.last.keySet()), b));
    there.forEach(r -> this.there.put(numbered(r.key(), this.there.keySet()), r));
    links = new RowLinks(target, here, table.ofOthers()).of(this.last, this.there);
    this.there.forEach(this::compare);
    this.last.keySet().forEach(this::gone);
    changes.sort(Comparator.comparing(TransferChange::kind));
  }

  /** Rows that share a key are numbered, so that none is lost. */
  private static String numbered(String key, Set<String> taken) {
    String numbered = key;
    for (int n = 2; taken.contains(numbered); n++) {
      numbered = key + "#" + n;
    }
    return numbered;
  }

  /** The differences, in the order of their kinds. */
  public List<TransferChange> changes() {
    return List.copyOf(changes);
  }

  private static String name(TransferTarget target, Map<String, Object> cells) {
    Object name = cells.get(target.nameColumn());
    return name == null ? "" : String.valueOf(name);
  }

  private void compare(String key, TransferRow row) {
    TargetRow own = links.get(key);
    if (own == null) {
      add(key, row);
    } else {
      for (String column : target.followed()) {
        compare(key, own, column, row.cells().get(column));
      }
      fillAccount(key, own, row);
    }
  }

  /** A blank account gets that of its group, once the user has typed it for another row. */
  private void fillAccount(String key, TargetRow own, TransferRow row) {
    if (own.cells().get(ACCOUNT) == null && !own.calculated().contains(ACCOUNT)) {
      account(row)
          .ifPresent(
              a ->
                  changes.add(
                      new TransferChange(
                          Kind.UPDATED,
                          key,
                          name(target, own.cells()),
                          own.number(),
                          ACCOUNT,
                          null,
                          a,
                          true)));
    }
  }

  private void add(String key, TransferRow row) {
    String name = name(target, row.cells());
    Kind kind = Kind.ADDED;
    if (last.containsKey(key)) {
      kind = Kind.LEFT_OUT;
    } else if (!known.isEmpty() && !known.contains(Identity.of(name))) {
      kind = Kind.UNKNOWN;
    }
    boolean isUsual =
        kind == Kind.ADDED
            && !row.group().equals(TransferRow.UNFIT)
            && !(row.group().equals(TransferRow.DEVICE) && isHere(name));
    changes.add(new TransferChange(kind, key, name, 0, "", null, null, isUsual));
  }

  private boolean isHere(String name) {
    return here.stream()
        .anyMatch(r -> Identity.of(name(target, r.cells())).equals(Identity.of(name)));
  }

  private void compare(String key, TargetRow own, String column, Object theirs) {
    BroughtRow brought = last.get(key);
    Object mine = own.cells().get(column);
    Object before = brought == null ? null : brought.cells().get(column);
    boolean isFirst = brought == null;
    if (isSame(column, mine, theirs)) {
      return;
    }
    Kind kind;
    if (target.isStricter(column, theirs, mine)) {
      kind = Kind.STRICTER;
    } else if (!isFirst && isSame(column, before, theirs)) {
      return;
    } else if (isFirst && theirs == null) {
      return;
    } else {
      boolean isUntouched =
          !own.calculated().contains(column)
              && (isFirst ? mine == null : isSame(column, mine, before));
      kind = isUntouched ? Kind.UPDATED : Kind.CONFLICT;
    }
    changes.add(
        new TransferChange(
            kind,
            key,
            name(target, own.cells()),
            own.number(),
            column,
            mine,
            theirs,
            kind != Kind.CONFLICT));
  }

  private boolean isSame(String column, Object one, Object other) {
    Object first = one == null ? blanks.get(column) : one;
    Object second = other == null ? blanks.get(column) : other;
    if (first instanceof Double a && second instanceof Double b) {
      return Math.abs(a - b) <= ROUNDING * Math.max(Math.abs(a), Math.abs(b));
    }
    if (column.equals(target.nameColumn()) && first != null && second != null) {
      return Identity.of(String.valueOf(first)).equals(Identity.of(String.valueOf(second)));
    }
    return Objects.equals(first, second);
  }

  private void gone(String key) {
    TargetRow own = links.get(key);
    if (own != null && !there.containsKey(key)) {
      changes.add(
          new TransferChange(
              Kind.GONE, key, name(target, own.cells()), own.number(), "", null, null, false));
    }
  }

  /** Numbers of the rows here that are rows of the source. */
  public Set<Integer> places() {
    Set<Integer> places = new HashSet<>();
    links.values().forEach(r -> places.add(r.number()));
    return places;
  }

  /** What a row of the source fills in a row that is added; nothing where it is gone. */
  public Map<String, Object> written(String key) {
    Map<String, Object> written = new LinkedHashMap<>();
    TransferRow row = there.get(key);
    if (row != null) {
      written.putAll(row.cells());
      written.keySet().removeIf(c -> !target.followed().contains(c) && !isOnce(c));
    }
    return written;
  }

  /** How many rows are added by these changes. */
  public int added(Set<TransferChange> accepted) {
    return (int) accepted.stream().filter(c -> c.row() == 0).count();
  }

  /**
   * What comes of it.
   *
   * @param accepted the changes that are to be written
   * @param free numbers of blank rows, as many as are added
   */
  public Merged merged(Set<TransferChange> accepted, List<Integer> free) {
    List<Write> writes = new ArrayList<>();
    Map<String, Integer> places = new LinkedHashMap<>();
    links.forEach((key, row) -> places.put(key, row.number()));
    int next = 0;
    for (TransferChange change : changes) {
      boolean isWritten = change.kind() == Kind.STRICTER || accepted.contains(change);
      if (!isWritten || change.kind() == Kind.GONE) {
        continue;
      }
      if (change.row() == 0) {
        int row = free.get(next++);
        places.put(change.key(), row);
        written(change.key()).forEach((c, value) -> writes.add(new Write(row, c, value)));
        account(there.get(change.key())).ifPresent(a -> writes.add(new Write(row, ACCOUNT, a)));
      } else {
        writes.add(new Write(change.row(), change.column(), change.there()));
      }
    }
    return new Merged(List.copyOf(writes), brought(places));
  }

  private boolean isOnce(String column) {
    return target.once().contains(column);
  }

  /** The account that the user has typed for another row of the group, which maps it once. */
  private Optional<Object> account(TransferRow row) {
    if (!isOnce(ACCOUNT) || row.cells().containsKey(ACCOUNT) || row.group().isEmpty()) {
      return Optional.empty();
    }
    return last.entrySet().stream()
        .filter(b -> b.getValue().group().equals(row.group()) && links.containsKey(b.getKey()))
        .map(b -> links.get(b.getKey()).cells().get(ACCOUNT))
        .filter(Objects::nonNull)
        .findFirst();
  }

  /** What the source holds now; rows that are gone there stay remembered while they stand here. */
  private List<BroughtRow> brought(Map<String, Integer> places) {
    List<BroughtRow> brought = new ArrayList<>();
    Set<String> unknown = new HashSet<>();
    changes.stream().filter(c -> c.kind() == Kind.UNKNOWN).forEach(c -> unknown.add(c.key()));
    there.forEach(
        (key, row) -> {
          int place = places.getOrDefault(key, 0);
          // once its name is known here, it is new
          if (place > 0 || !unknown.contains(key)) {
            brought.add(new BroughtRow(key, row.group(), place, row.cells()));
          }
        });
    last.forEach(
        (key, row) -> {
          if (!there.containsKey(key) && links.containsKey(key)) {
            brought.add(new BroughtRow(key, row.group(), places.get(key), row.cells()));
          }
        });
    return List.copyOf(brought);
  }
}
