package org.setpower.plan.common;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * What the sheet's block asks for. In the sheet it is a range: its first row holds the language of
 * the document and the hash of the layout, each further row a band: a number of rows, then result
 * keys, blanks behind them.
 *
 * @param language code of the document's language, such as {@code de}
 * @param layout hash of the tables that the document was made for
 * @param bands parts of the block, one below the other
 * @param width columns of the block
 */
public record Answer(String language, String layout, List<Band> bands, int width) {
  private static final int MOST_ROWS = 50_000;
  private static final int MOST_CELLS = 2_000_000;

  /**
   * A part of the block.
   *
   * @param keys {@code table.key} of result columns, from the left
   * @param rows how many rows it has
   */
  public record Band(List<String> keys, int rows) {
    public Band {
      keys = List.copyOf(keys);
    }
  }

  public Answer {
    bands = List.copyOf(bands);
  }

  /** One band of keys in English. */
  public Answer(List<String> keys, int rows) {
    this("en", "", List.of(new Band(keys, rows)), keys.size());
  }

  /** All rows of the bands. */
  public int rows() {
    return bands.stream().mapToInt(Band::rows).sum();
  }

  /** Reads the range; empty when it is none. */
  static Optional<Answer> read(Object range) {
    if (!(range instanceof Object[][] cells) || cells.length < 2 || cells[0] == null) {
      return Optional.empty();
    }
    int width = cells[0].length - 1;
    List<Band> bands = new ArrayList<>();
    long rows = 0;
    for (int i = 1; i < cells.length; i++) {
      Object[] row = cells[i];
      boolean whole = row != null && row.length == width + 1;
      if (!whole || !(row[0] instanceof Double count) || !(count >= 1 && count <= MOST_ROWS)) {
        return Optional.empty();
      }
      bands.add(new Band(keys(row), count.intValue()));
      rows += count.intValue();
    }
    return width < 1 || rows * width > MOST_CELLS
        ? Optional.empty()
        : Optional.of(new Answer(text(cells[0][0]), text(cells[0][1]), bands, width));
  }

  /** The keys up to the last that is not blank; a blank between them is a key that none knows. */
  private static List<String> keys(Object... row) {
    List<String> keys = new ArrayList<>();
    int blanks = 0;
    for (int c = 1; c < row.length; c++) {
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
