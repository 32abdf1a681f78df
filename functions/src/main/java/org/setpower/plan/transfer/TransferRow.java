package org.setpower.plan.transfer;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;

/**
 * A row to be typed into a table to fill.
 *
 * @param key names the row in its source, so that it is found again next time
 * @param cells by column key: texts and numbers; a blank cell is not in it
 */
public record TransferRow(String key, Map<String, Object> cells) {
  public TransferRow {
    cells = Collections.unmodifiableMap(new LinkedHashMap<>(cells));
  }
}
