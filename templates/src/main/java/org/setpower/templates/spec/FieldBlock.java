package org.setpower.templates.spec;

import java.util.List;

/** Single cells, one a row: label, cell, help. */
public record FieldBlock(String title, List<FieldSpec> fields) implements Block {
  public static FieldBlock of(String title, FieldSpec... fields) {
    return new FieldBlock(title, List.of(fields));
  }

  @Override
  public int height() {
    return fields.size();
  }
}
