package org.setpower.plan.transfer;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.setpower.plan.finding.Identity;

/** What a plan needs as rows of a quote. Prices are those of the house. */
public final class PlanToQuote {
  private PlanToQuote() {}

  /**
   * What a plan needs of an item.
   *
   * @param section heading on the client's page; null without one
   * @param required pieces of the whole list, spares included
   * @param missing pieces that are short
   * @param from first day in use; null for the whole order
   * @param to last day in use; null for the whole order
   * @param isDevice whether it is only known to run on batteries, whoever owns it
   */
  public record PlanItem(
      String item,
      String section,
      double required,
      double missing,
      LocalDate from,
      LocalDate to,
      boolean isDevice) {
    /** Something to be hired. */
    public PlanItem(
        String item,
        String section,
        double required,
        double missing,
        LocalDate from,
        LocalDate to) {
      this(item, section, required, missing, from, to, false);
    }

    private PlanItem named(String name) {
      return new PlanItem(name, section, required, missing, from, to, isDevice);
    }

    /** Both together: pieces add up, days cover both. */
    private PlanItem with(PlanItem other) {
      return new PlanItem(
          item,
          section,
          required + other.required,
          missing + other.missing,
          from == null || other.from == null ? null : from.isBefore(other.from) ? from : other.from,
          to == null || other.to == null ? null : to.isAfter(other.to) ? to : other.to,
          isDevice && other.isDevice);
    }
  }

  /**
   * One row an item: section, quantity, out and back.
   *
   * @param withheld names that the plan withholds, listed and never guessed
   */
  public static TransferBatch batch(
      List<PlanItem> items, TransferOptions options, List<String> withheld) {
    Map<String, PlanItem> byName = new LinkedHashMap<>();
    for (PlanItem item : items) {
      if (!Identity.of(item.item).isEmpty()) {
        PlanItem here = item.named(options.item(item.item));
        byName.merge(Identity.of(here.item), here, PlanItem::with);
      }
    }
    List<TransferRow> rows = new ArrayList<>();
    byName.forEach(
        (key, item) -> {
          double qty = options.onlyShort() ? item.missing : item.required;
          if (qty > 0) {
            String group = item.isDevice ? TransferRow.DEVICE : "";
            rows.add(new TransferRow(key, group, cells(item, qty, options)));
          }
        });
    return new TransferBatch(TransferTarget.QUOTE_ITEMS, rows, withheld);
  }

  private static Map<String, Object> cells(PlanItem item, double qty, TransferOptions options) {
    Map<String, Object> cells = new LinkedHashMap<>();
    cells.put("item", item.item);
    if (item.section != null) {
      cells.put("section", item.section);
    }
    // hired pieces are whole: half a piece more is one piece
    cells.put("qty", Math.ceil(qty));
    if (options.daysOfUse() && item.from != null && item.to != null) {
      cells.put("out", item.from);
      cells.put("back", item.to);
    }
    return cells;
  }
}
