package org.setpower.plan.transfer;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;

/**
 * What a source held of a row when it was brought in last.
 *
 * @param key names the row in its source
 * @param group of the row in its source
 * @param row where it was written, from 1; 0 for a row that was left out
 * @param cells by column key, as they were in the source
 */
public record BroughtRow(String key, String group, int row, Map<String, Object> cells) {
  public BroughtRow {
    cells = Collections.unmodifiableMap(new LinkedHashMap<>(cells));
  }
}
