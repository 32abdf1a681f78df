package org.setpower.plan.transfer;

import java.util.List;

/**
 * Rows of a source for one table.
 *
 * @param withheld names of rows that are a stop in the source, or have no name: not brought in
 */
public record TransferBatch(TransferTarget target, List<TransferRow> rows, List<String> withheld) {
  public TransferBatch {
    rows = List.copyOf(rows);
    withheld = List.copyOf(withheld);
  }
}
