package org.setpower.plan.common;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * What the sheet's block asks for. In the sheet it is a range: its first row holds the language of
 * the document, the hash of the layout and the columns of the block; each further row a band: its
 * number of rows, its place below the first row of the block and from its left, then result keys,
 * blanks behind them. Older files have neither the columns nor the places: their bands stand one
 * below the other.
 *
 * @param language code of the document's language, such as {@code de}
 * @param layout hash of the tables that the document was made for
 * @param bands parts of the block, none over another
 * @param width columns of the block
 */
public record Answer(String language, String layout, List<Band> bands, int width) {
  private static final int MOST_ROWS = 50_000;
  private static final int MOST_CELLS = 2_000_000;
  private static final int PLACED = 3; // cells before the keys of a band with a place

  /**
   * A part of the block.
   *
   * @param keys {@code table.key} of result columns, from the left
   * @param rows how many rows it has
   * @param top its first row, from 0 below the first row of the block
   * @param left its first column, from 0
   */
  public record Band(List<String> keys, int rows, int top, int left) {
    public Band {
      keys = List.copyOf(keys);
    }

    private boolean overlaps(Band other) {
      return left < other.left + other.keys.size()
          && other.left < left + keys.size()
          && top < other.top + other.rows
          && other.top < top + rows;
    }
  }

  public Answer {
    bands = List.copyOf(bands);
  }

  /** One band of keys in English. */
  public Answer(List<String> keys, int rows) {
    this("en", "", List.of(new Band(keys, rows, 0, 0)), keys.size());
  }

  /** Rows of the block below its first. */
  public int rows() {
    return bands.stream().mapToInt(b -> b.top() + b.rows()).max().orElse(0);
  }

  /** Reads the range; empty when it is none. */
  public static Optional<Answer> read(Object range) {
    if (!(range instanceof Object[][] cells)
        || cells.length < 2
        || cells[0] == null
        || cells[0].length < 2) {
      return Optional.empty();
    }
    boolean placed = cells[0].length > PLACED && cells[0][2] instanceof Double;
    int width = placed ? whole(cells[0][2], 1) : cells[0].length - 1;
    List<Band> bands = new ArrayList<>();
    long rows = 0;
    for (int i = 1; i < cells.length; i++) {
      Object[] row = cells[i];
      if (row == null || row.length != cells[0].length || whole(row[0], 1) < 0) {
        return Optional.empty();
      }
      int count = whole(row[0], 1);
      int top = placed ? whole(row[1], 0) : (int) rows;
      int left = placed ? whole(row[2], 0) : 0;
      Band band = new Band(keys(placed ? PLACED : 1, row), count, top, left);
      boolean outside = top < 0 || left < 0 || left + band.keys().size() > width;
      if (outside || placed && bands.stream().anyMatch(band::overlaps)) {
        return Optional.empty();
      }
      bands.add(band);
      rows = Math.max(rows, (long) top + count);
      if (rows * width > MOST_CELLS) {
        return Optional.empty();
      }
    }
    return width < 1
        ? Optional.empty()
        : Optional.of(new Answer(text(cells[0][0]), text(cells[0][1]), bands, width));
  }

  /** A cell that counts; −1 where it does not. */
  private static int whole(Object cell, int least) {
    return cell instanceof Double count
            && count >= least
            && count <= MOST_ROWS
            && count == Math.rint(count)
        ? count.intValue()
        : -1;
  }

  /** The keys up to the last that is not blank; a blank between them is a key that none knows. */
  private static List<String> keys(int first, Object... row) {
    List<String> keys = new ArrayList<>();
    int blanks = 0;
    for (int c = first; c < row.length; c++) {
      String key = text(row[c]);
      if (key.isEmpty()) {
        blanks++;
      } else {
        for (; blanks > 0; blanks--) {
          keys.add("");
        }
        keys.add(key);
      }
    }
    return keys;
  }

  private static String text(Object cell) {
    Object trimmed = InputColumn.trimmed(cell);
    return trimmed == null ? "" : trimmed.toString();
  }
}
