package org.setpower.templates.spec;

import java.util.List;

/** A block with columns: a heading row and room for rows. */
public abstract sealed class TableBase implements Block permits TableSpec, ArrayResult {
  private final String title;
  private final int room;

  TableBase(String title, int room) {
    this.title = title;
    this.room = room;
  }

  @Override
  public String title() {
    return title;
  }

  /** How many rows it has. */
  public int room() {
    return room;
  }

  /** All columns from left to right. */
  public abstract List<ColumnSpec> columns();

  /** How many rows stand above the heading row. */
  public int before() {
    return 0;
  }

  @Override
  public int height() {
    return before() + 1 + room;
  }
}
