package org.setpower.templates.spec;

import java.util.List;
import org.setpower.text.Words;

/** Where the parts of a file stand once it is laid out: what formulas are written with. */
public interface Addresses {
  /** The language that it is laid out in. */
  Words words();

  /** Whether a text is typed into cells, so that it is the same in all languages. */
  boolean isTyped(String word);

  /** The name of a tab in this language. */
  String name(Tab tab);

  /** The tab that a block stands on. */
  Tab tab(Block block);

  /** The tab that a single cell stands on. */
  Tab tab(Field field);

  /** A single cell, as an absolute reference. */
  String address(Field field);

  /** A cell of a column, seen from another cell. */
  String cell(Column column, CellContext place);

  /** Some rows of a column, seen from a cell. */
  String range(Column column, Column.Part.Extent extent, CellContext place);

  /** The cells of one row from the first of these columns to the last. */
  String rowRange(List<Column> from, CellContext place);

  /** All cells of a matrix. */
  String grid(Grid grid);
}
