package org.setpower.plan.transfer;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.setpower.plan.finding.Identity;

/** The order list of a plan as rows of a quote. */
public final class PlanToQuote {
  private PlanToQuote() {}

  /**
   * A row of a plan's order list.
   *
   * @param required pieces in all, spares included
   * @param inStock pieces that need no hire
   * @param from first day in use; null for the whole order
   * @param to last day in use
   */
  public record PlanItem(
      String item, String section, double required, double inStock, LocalDate from, LocalDate to) {
    private double missing() {
      return Math.max(0, required - inStock);
    }
  }

  /** Whether everything is quoted or only what is short. */
  public enum Extent {
    WHOLE_LIST,
    SHORT
  }

  /**
   * What is brought in, and what is not.
   *
   * @param unmatched rows without an item, listed and never guessed
   */
  public record Brought(List<TransferRow> rows, List<PlanItem> unmatched) {}

  /** Rows of the quote: item, section, quantity, out and back. Prices are those of the house. */
  public static Brought rows(List<PlanItem> items, Extent extent) {
    List<TransferRow> rows = new ArrayList<>();
    List<PlanItem> unmatched = new ArrayList<>();
    for (PlanItem item : items) {
      double qty = extent == Extent.SHORT ? item.missing() : item.required;
      if (Identity.of(item.item).isEmpty()) {
        unmatched.add(item);
      } else if (qty > 0) {
        rows.add(new TransferRow(key(item), cells(item, qty)));
      }
    }
    return new Brought(List.copyOf(rows), List.copyOf(unmatched));
  }

  private static String key(PlanItem item) {
    String dates = item.from == null ? "" : "|" + item.from + "|" + item.to;
    return Identity.of(item.item) + dates;
  }

  private static Map<String, Object> cells(PlanItem item, double qty) {
    Map<String, Object> cells = new LinkedHashMap<>();
    cells.put("item", item.item);
    if (item.section != null) {
      cells.put("section", item.section);
    }
    // hired pieces are whole: half a piece more is one piece
    cells.put("qty", Math.ceil(qty));
    if (item.from != null && item.to != null) {
      cells.put("out", item.from.toString());
      cells.put("back", item.to.toString());
    }
    return cells;
  }
}
