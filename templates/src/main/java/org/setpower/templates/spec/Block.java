package org.setpower.templates.spec;

/** A part of a tab; parts stand below each other. */
public sealed interface Block
    permits FieldBlock, TableBase, KeyFigures, BarChart, TextBlock, MatrixBlock {
  /** The heading above it; empty for none. */
  String title();

  /** How many rows it takes, its heading not counted. */
  int height();
}
