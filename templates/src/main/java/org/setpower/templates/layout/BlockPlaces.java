package org.setpower.templates.layout;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;

/**
 * Where each table of results stands in the block: short ones below each other beside the long
 * ones, so that the block has few cells. Each of them takes time at every calculation.
 *
 * @param all places of the tables, the longest table first
 * @param columns of the block
 */
record BlockPlaces(List<Place> all, int columns) {
  private static final int FEWEST_COLUMNS = 2; // the state of the block and its reasons

  /** A table of results: its key, how many rows and columns it has. */
  record Size(String table, int rows, int columns) {}

  /** A table with its first row below that of the block, and its first column, both from 0. */
  record Place(String table, int rows, int columns, int top, int left) {}

  BlockPlaces {
    all = List.copyOf(all);
  }

  /** The places that take the fewest cells of those tried: every width of the block. */
  static BlockPlaces of(List<Size> tables) {
    List<Size> sorted =
        tables.stream()
            .sorted(
                Comparator.comparing(Size::rows)
                    .thenComparing(Size::columns)
                    .reversed()
                    .thenComparing(Size::table))
            .toList();
    int widest = sorted.stream().mapToInt(Size::columns).max().orElse(1);
    long longest = sorted.stream().mapToInt(Size::rows).max().orElse(1);
    BlockPlaces best = packed(sorted, Math.max(widest, FEWEST_COLUMNS));
    for (int width = best.columns + 1; width * longest < best.cells(); width++) {
      BlockPlaces tried = packed(sorted, width);
      best = tried.cells() < best.cells() ? tried : best;
    }
    return best;
  }

  /** Each table as high as it can stand, then as far left. */
  private static BlockPlaces packed(List<Size> tables, int width) {
    int[] used = new int[width]; // rows taken of each column
    List<Place> places = new ArrayList<>();
    for (Size table : tables) {
      int left =
          IntStream.rangeClosed(0, width - table.columns())
              .boxed()
              .min(Comparator.comparing(c -> top(used, c, table.columns())))
              .orElseThrow();
      int top = top(used, left, table.columns());
      places.add(new Place(table.table(), table.rows(), table.columns(), top, left));
      IntStream.range(left, left + table.columns()).forEach(c -> used[c] = top + table.rows());
    }
    return new BlockPlaces(places, width);
  }

  private static int top(int[] used, int left, int columns) {
    return IntStream.range(left, left + columns).map(c -> used[c]).max().orElseThrow();
  }

  /** Rows below the first of the block. */
  int rows() {
    return all.stream().mapToInt(p -> p.top() + p.rows()).max().orElse(0);
  }

  private long cells() {
    return (long) columns * rows();
  }
}
