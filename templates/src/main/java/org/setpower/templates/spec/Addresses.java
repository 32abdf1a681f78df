package org.setpower.templates.spec;

import java.util.List;
import org.setpower.text.MessageCatalog;

/** Where the parts of a file stand once it is laid out: what formulas are written with. */
public interface Addresses {
  /** The language that it is laid out in. */
  MessageCatalog words();

  /** Whether a text is typed into cells, so that it is the same in all languages. */
  boolean isTyped(String word);

  /** The name of a tab in this language. */
  String name(SheetSpec tab);

  /** The tab that a block stands on. */
  SheetSpec tab(Block block);

  /** The tab that a single cell stands on. */
  SheetSpec tab(FieldSpec field);

  /** A single cell, as an absolute reference. */
  String address(FieldSpec field);

  /** A cell of a column, seen from another cell. */
  String cell(ColumnSpec column, CellContext place);

  /** Some rows of a column, seen from a cell. */
  String range(ColumnSpec column, ColumnSpec.Part.Extent extent, CellContext place);

  /** The cells of one row from the first of these columns to the last. */
  String rowRange(List<ColumnSpec> from, CellContext place);

  /** All cells of a matrix. */
  String grid(MatrixBlock grid);
}
