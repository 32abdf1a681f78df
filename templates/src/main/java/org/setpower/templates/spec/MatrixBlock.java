package org.setpower.templates.spec;

/**
 * A matrix of working figures from one native array formula, on a working tab.
 *
 * @param title what it holds
 * @param rows how many rows
 * @param columns how many columns
 * @param formula the array formula
 */
public record MatrixBlock(String title, int rows, int columns, Formula formula) implements Block {
  @Override
  public int height() {
    return rows;
  }

  /** The whole matrix. */
  public Formula all() {
    return place -> place.layout().grid(this);
  }
}
