package org.setpower.templates.spec;

import static org.setpower.templates.spec.Formula.Patterns.quoted;

import java.util.List;

/**
 * The rows of an array result, which a sheet cannot spill: a block of fixed room that shows blanks
 * past the end, a line that says why there is nothing or that there is more than room, and texts
 * that can be looked up.
 */
public final class ArrayResult extends TableBase {
  private final Formula.Call call;
  private final List<ColumnSpec> columns;

  private ArrayResult(String title, int room, Formula.Call call, List<ColumnSpec> columns) {
    super(title, room);
    this.call = call;
    this.columns = columns;
    columns.forEach(c -> c.ownedBy(this));
  }

  /**
   * The result of a call; the columns are {@link ColumnSpec#result(String)}s without formula, in
   * the order of the array's.
   */
  public static ArrayResult of(String title, int room, Formula call, ColumnSpec... columns) {
    return new ArrayResult(title, room, (Formula.Call) call, List.of(columns));
  }

  @Override
  public List<ColumnSpec> columns() {
    return columns;
  }

  @Override
  public int before() {
    return 1;
  }

  /** How many rows the array has: a formula for the count cell. */
  public String countText(CellContext place) {
    return "IFERROR(ROWS(" + call.text(place) + ");0)";
  }

  /** The line above the block. */
  public String stateText(String count, CellContext place) {
    Formula counted = at -> count;
    return "IF("
        + count
        + "=0;IFERROR("
        + call.whyText(place)
        + ";"
        + quoted(place.words().of("an input is in error"))
        + ");IF("
        + count
        + ">"
        + room()
        + ";"
        + Formula.say("check: {} rows, room for {}", counted, room()).text(place)
        + ";\"\"))";
  }

  /** The array formula of the block; columns that the array does not have stay blank. */
  public String arrayText(String count, String block, CellContext place) {
    String first = block.substring(0, block.indexOf(':'));
    String row = "ROW(" + block + ")-ROW(" + first + ")+1";
    String column = "COLUMN(" + block + ")-COLUMN(" + first + ")+1";
    return "IF("
        + row
        + ">"
        + count
        + ";\"\";IFERROR(INDEX("
        + call.text(place)
        + ";"
        + row
        + ";"
        + column
        + ");\"\"))";
  }
}
