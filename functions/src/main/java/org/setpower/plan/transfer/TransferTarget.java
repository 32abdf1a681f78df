package org.setpower.plan.transfer;

import java.util.EnumSet;
import java.util.List;
import org.setpower.plan.register.Condition;
import org.setpower.plan.register.Status;

/** A table to fill into which rows are brought. */
public enum TransferTarget {
  QUOTE_ITEMS("items", "item", List.of("item", "qty"), List.of("section", "out", "back"), "stock"),
  BUDGET_COUNTS("counts", "count", List.of("count", "value", "inAll"), List.of(), ""),
  BUDGET_LINES(
      "lines",
      "description",
      List.of("description", "qty", "unit", "times", "price", "currency", "discount", "tax"),
      List.of("type", "supplier", "account"),
      ""),
  BUDGET_DEPOSITS("deposits", "to", List.of("to", "amount"), List.of(), ""),
  BATTERY_STOCK("stock", "type", List.of("type", "owned"), List.of(), "types"),
  TRAVEL_BATTERIES(
      "batteries",
      "battery",
      List.of("battery", "type", "energy", "condition", "register", "un383"),
      List.of("quantity", "chemistry"),
      "");

  private final String table;
  private final String nameColumn;
  private final List<String> followed;
  private final List<String> once;
  private final String known;

  TransferTarget(
      String table, String nameColumn, List<String> followed, List<String> once, String known) {
    this.table = table;
    this.nameColumn = nameColumn;
    this.followed = followed;
    this.once = once;
    this.known = known;
  }

  /** Key of the table. */
  public String table() {
    return table;
  }

  /** The column by which a row is found. */
  public String nameColumn() {
    return nameColumn;
  }

  /** Columns that are compared each time. */
  public List<String> followed() {
    return followed;
  }

  /** Columns that are filled when a row is added, and belong to the user from then on. */
  public List<String> once() {
    return once;
  }

  /**
   * Whether a value says of a battery that it is worse than another says: it is written whatever
   * stands there. An unknown or blank word is no worse than any other.
   */
  public boolean isStricter(String column, Object value, Object than) {
    return this == TRAVEL_BATTERIES
        && strictness(column, value) > strictness(column, than)
        && strictness(column, value) > 0;
  }

  /** 0 for what may go out, and for what is no word of the column. */
  private static int strictness(String column, Object value) {
    if ("register".equals(column)) {
      for (Status status : Status.values()) {
        if (status.word().equals(value) && status.compareTo(Status.NOT_TESTED) > 0) {
          return status.ordinal();
        }
      }
    }
    boolean isBad =
        "condition".equals(column)
            && EnumSet.complementOf(EnumSet.of(Condition.FINE)).stream()
                .anyMatch(c -> c.word().equals(value));
    return isBad ? 1 : 0;
  }

  /** The table whose names a row has to be among; empty without one. */
  public String known() {
    return known;
  }
}
