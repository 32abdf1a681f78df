package org.setpower.templates.spec;

import java.util.ArrayList;
import java.util.List;

/** The first rows of a table with some of its columns, for the result page. */
public final class Excerpt {
  private final Table table;
  private final List<Column> from = new ArrayList<>();
  private final List<Column> shown = new ArrayList<>();

  private Excerpt(Table table) {
    this.table = table;
  }

  /** An excerpt of a table; {@link #column} adds its columns. */
  public static Excerpt of(Table table) {
    return new Excerpt(table);
  }

  /** Shows a column, so wide. */
  public Excerpt column(Column column, int millimetres) {
    from.add(column);
    shown.add(column.copy(Column.result(column.heading())).wide(millimetres).mayBeBlank());
    return this;
  }

  /** The column of the excerpt that shows this one, for charts. */
  public Column shown(Column column) {
    return shown.get(from.indexOf(column));
  }

  /** The table with room for so many rows. */
  public Table rows(String title, int room) {
    Column number = Column.working("No.");
    number.by(number.rowNumber());
    for (int i = 0; i < from.size(); i++) {
      Formula cell = Formula.calc("INDEX({};{})", from.get(i).all(), number);
      shown.get(i).by(Formula.calc("IF({}=\"\";\"\";{})", cell, cell));
    }
    int status = from.indexOf(table.status());
    return Table.of(title, room)
        .columns(shown.toArray(new Column[0]))
        .columns(number)
        .listing(status < 0 ? null : shown.get(status));
  }
}
