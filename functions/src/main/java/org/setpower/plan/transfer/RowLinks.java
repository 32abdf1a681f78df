package org.setpower.plan.transfer;

import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import org.setpower.plan.finding.Identity;

/**
 * Which row of a table is which row of a source. Users sort, insert and rename rows: a row is found
 * by its name, by where it was written, or as the renamed row at that place.
 */
final class RowLinks {
  private final TransferTarget target;
  private final List<TargetRow> here;
  private final Map<String, TargetRow> links = new HashMap<>();
  private final Set<Integer> taken = new HashSet<>();

  RowLinks(TransferTarget target, List<TargetRow> here, Set<Integer> ofOthers) {
    this.target = target;
    this.here = here;
    taken.addAll(ofOthers);
  }

  /**
   * Links what was brought in before, then what is new.
   *
   * @param last by key
   * @param there by key
   */
  Map<String, TargetRow> of(Map<String, BroughtRow> last, Map<String, TransferRow> there) {
    last.forEach((k, b) -> at(b).filter(r -> isNamed(r, b.cells())).ifPresent(r -> link(k, r)));
    last.forEach((key, b) -> unlinked(key, b.row() > 0).ifPresent(k -> byName(k, b.cells(), b)));
    Set<String> names = new HashSet<>();
    there.values().forEach(r -> names.add(name(r.cells())));
    last.forEach(
        (key, b) ->
            unlinked(key, b.row() > 0)
                .flatMap(k -> at(b))
                .filter(r -> !taken.contains(r.number()))
                .filter(r -> !names.contains(name(r.cells())) && isRenamed(r, b))
                .ifPresent(r -> link(key, r)));
    there.forEach(
        (key, row) ->
            unlinked(key, !last.containsKey(key)).ifPresent(k -> byName(k, row.cells(), null)));
    return links;
  }

  private Optional<String> unlinked(String key, boolean isWanted) {
    return isWanted && !links.containsKey(key) ? Optional.of(key) : Optional.empty();
  }

  private void link(String key, TargetRow row) {
    if (taken.add(row.number())) {
      links.put(key, row);
    }
  }

  private Optional<TargetRow> at(BroughtRow brought) {
    return here.stream().filter(r -> r.number() == brought.row()).findFirst();
  }

  private String name(Map<String, Object> cells) {
    Object name = cells.get(target.nameColumn());
    return name == null ? "" : Identity.of(String.valueOf(name));
  }

  private boolean isNamed(TargetRow row, Map<String, Object> cells) {
    return !name(cells).isEmpty() && name(row.cells()).equals(name(cells));
  }

  /** The free row of that name that has most cells in common. */
  private void byName(String key, Map<String, Object> cells, BroughtRow brought) {
    int place = brought == null ? 0 : brought.row();
    here.stream()
        .filter(r -> !taken.contains(r.number()) && isNamed(r, cells))
        .min(
            Comparator.comparingInt((TargetRow r) -> -common(r, cells))
                .thenComparingInt(r -> Math.abs(r.number() - place)))
        .ifPresent(r -> link(key, r));
  }

  private int common(TargetRow row, Map<String, Object> cells) {
    return (int)
        target.followed().stream()
            .filter(c -> cells.get(c) != null && Objects.equals(cells.get(c), row.cells().get(c)))
            .count();
  }

  /** A row with another name whose other cells are still the same. */
  private boolean isRenamed(TargetRow row, BroughtRow brought) {
    List<String> others =
        target.followed().stream()
            .filter(c -> !c.equals(target.nameColumn()) && brought.cells().get(c) != null)
            .toList();
    return !name(row.cells()).isEmpty()
        && !others.isEmpty()
        && others.stream()
            .allMatch(c -> Objects.equals(brought.cells().get(c), row.cells().get(c)));
  }
}
