package org.setpower.templates.spec;

import java.util.List;

/** A column of a table: in a formula of the same table it stands for the cell of the row. */
public final class ColumnSpec extends CellSpec<ColumnSpec> {
  private int width = 20;
  private boolean working;
  private boolean unguarded;
  private TableBase owner;

  private ColumnSpec(String heading, boolean input) {
    super(heading, input);
  }

  /** Cells to fill. */
  public static ColumnSpec input(String heading) {
    return new ColumnSpec(heading, true);
  }

  /** Cells that are worked out in every row; {@link #formula} says how. */
  public static ColumnSpec result(String heading) {
    return new ColumnSpec(heading, false);
  }

  /** Cells that are worked out in every row. */
  public static ColumnSpec result(String heading, Formula formula) {
    return result(heading).formula(formula);
  }

  /** A result that nobody reads: hidden, never printed; {@link #formula} says how. */
  public static ColumnSpec working(String heading) {
    ColumnSpec column = result(heading);
    column.working = true;
    return column.mayBeBlank();
  }

  /** A result that nobody reads: hidden, never printed. */
  public static ColumnSpec working(String heading, Formula formula) {
    return working(heading).formula(formula);
  }

  /**
   * The formula stands as it is, also in blank rows: for figures that a {@link MatrixBlock} or
   * another row reads as numbers.
   */
  public ColumnSpec inBlankRowsToo() {
    unguarded = true;
    return this;
  }

  boolean isUnguarded() {
    return unguarded;
  }

  /** The width in millimetres. */
  public ColumnSpec width(int millimetres) {
    width = millimetres;
    return this;
  }

  public int width() {
    return width;
  }

  public boolean isWorking() {
    return working;
  }

  public TableBase owner() {
    return owner;
  }

  void ownedBy(TableBase rows) {
    if (owner != null && owner != rows) {
      throw new IllegalStateException(this + " stands in two tables");
    }
    owner = rows;
  }

  @Override
  ColumnSpec self() {
    return this;
  }

  @Override
  public String text(CellContext place) {
    return place.layout().cell(this, place);
  }

  /** The whole column. */
  public Formula all() {
    return new Part(this, Part.Extent.ALL);
  }

  /**
   * The heading and the rows above this one. A column may hand values down through its own rows
   * above; do not lead that way through a second column of plain arithmetic, which Calc reckons as
   * a whole and then finds a circle.
   */
  public Formula above() {
    return new Part(this, Part.Extent.ABOVE);
  }

  /**
   * The number of the row in its table, from 1. Not by ROW(): LibreOffice 25.2 then reckons columns
   * that build on it as a whole and may find 0 in them.
   */
  public Formula rowNumber() {
    return place -> "ROWS(" + above().text(place) + ")";
  }

  /** The rows below this one. */
  public Formula below() {
    return new Part(this, Part.Extent.BELOW);
  }

  /** The cells of the row from this column to another. */
  public Formula to(ColumnSpec last) {
    return place -> place.layout().rowRange(List.of(this, last), place);
  }

  /** All rows of the columns from this one to another, which stand beside each other. */
  public Formula block(ColumnSpec last) {
    return place -> {
      String first = all().text(place);
      String other = last.all().text(place);
      return first.substring(0, first.indexOf(':')) + other.substring(other.indexOf(':'));
    };
  }

  /** What this column says in the row in which another has its most. */
  public Formula lookupAtMax(ColumnSpec other) {
    return whereIs("MAX", other);
  }

  /** What this column says in the row in which another has its least. */
  public Formula lookupAtMin(ColumnSpec other) {
    return whereIs("MIN", other);
  }

  private Formula whereIs(String function, ColumnSpec other) {
    return Formula.calc(
        "INDEX({};MATCH(" + function + "({});{};0))", all(), other.all(), other.all());
  }

  /** The value of this column in the row whose {@code key} is {@code value}. */
  public Formula lookup(ColumnSpec key, Object value) {
    return Formula.calc("INDEX({};MATCH({};{};0))", all(), value, key.all());
  }

  /** Cells of one column. */
  public record Part(ColumnSpec column, Extent extent) implements Formula {
    public enum Extent {
      ALL,
      ABOVE,
      BELOW
    }

    @Override
    public String text(CellContext place) {
      return place.layout().range(column, extent, place);
    }
  }
}
