package org.setpower.plan.transfer;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;

/**
 * A row to be typed into a table to fill.
 *
 * @param key names the row in its source, so that it is found again next time
 * @param group what rows of a kind share in the source, such as a section; empty without one
 * @param cells by column key: String, Double, LocalDate; a blank cell is not in it
 */
public record TransferRow(String key, String group, Map<String, Object> cells) {
  /** The group of rows that may not be used: added only where the user wants it. */
  public static final String UNFIT = "unfit";

  /** The group of devices, which another file may have brought in: not added twice unasked. */
  public static final String DEVICE = "device";

  public TransferRow {
    cells = Collections.unmodifiableMap(new LinkedHashMap<>(cells));
  }

  /** A row without a group. */
  public TransferRow(String key, Map<String, Object> cells) {
    this(key, "", cells);
  }
}
