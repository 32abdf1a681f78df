package org.setpower.plan.common;

import java.util.List;

/**
 * What the sheet's block asks for.
 *
 * @param keys {@code table.key} of result columns, in the order of the block
 * @param rows rows of the block below its row of keys
 */
public record Answer(List<String> keys, int rows) {
  public Answer {
    keys = List.copyOf(keys);
  }
}
