package org.setpower.templates.spec;

import java.util.List;

/** Single cells, one a row: label, cell, help. */
public record Fields(String title, List<Field> fields) implements Block {
  public static Fields of(String title, Field... fields) {
    return new Fields(title, List.of(fields));
  }

  @Override
  public int height() {
    return fields.size();
  }
}
