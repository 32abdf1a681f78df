package org.setpower.templates.spec;

import java.util.ArrayList;
import java.util.List;

/** The first rows of a table with some of its columns, for the result page. */
public final class TableExcerpt {
  private final TableSpec table;
  private final List<ColumnSpec> from = new ArrayList<>();
  private final List<ColumnSpec> shown = new ArrayList<>();

  private TableExcerpt(TableSpec table) {
    this.table = table;
  }

  /** An excerpt of a table; {@link #column} adds its columns. */
  public static TableExcerpt of(TableSpec table) {
    return new TableExcerpt(table);
  }

  /** Shows a column, so wide. */
  public TableExcerpt column(ColumnSpec column, int millimetres) {
    from.add(column);
    shown.add(column.copy(ColumnSpec.result(column.heading())).width(millimetres).mayBeBlank());
    return this;
  }

  /** The column of the excerpt that shows this one, for charts. */
  public ColumnSpec shown(ColumnSpec column) {
    return shown.get(from.indexOf(column));
  }

  /** The table with room for so many rows. */
  public TableSpec rows(String title, int room) {
    ColumnSpec number = ColumnSpec.working("No.");
    number.formula(number.rowNumber());
    for (int i = 0; i < from.size(); i++) {
      Formula cell = Formula.calc("INDEX({};{})", from.get(i).all(), number);
      shown.get(i).formula(Formula.calc("IF({}=\"\";\"\";{})", cell, cell));
    }
    int status = from.indexOf(table.status());
    return TableSpec.of(title, room)
        .columns(shown.toArray(new ColumnSpec[0]))
        .columns(number)
        .listing(status < 0 ? null : shown.get(status));
  }
}
