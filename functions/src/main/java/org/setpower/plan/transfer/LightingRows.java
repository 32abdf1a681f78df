package org.setpower.plan.transfer;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.setpower.base.Numbers;
import org.setpower.plan.common.InputRow;
import org.setpower.plan.finding.Identity;
import org.setpower.plan.finding.Verdict;
import org.setpower.plan.lighting.SourceUse;
import org.setpower.plan.lighting.input.LoadTables.Load;
import org.setpower.plan.lighting.input.MeasureSystem;
import org.setpower.plan.lighting.input.SupplyTables.Generator;
import org.setpower.plan.lighting.input.SupplyTables.Supply;
import org.setpower.plan.lighting.input.SupplyType;
import org.setpower.plan.lighting.result.LightingPapers;
import org.setpower.plan.lighting.result.LightingPapers.OrderRow;
import org.setpower.plan.transfer.PlanToQuote.PlanItem;

/** What a lighting power plan has for others: its order list, its quantities. */
final class LightingRows {
  private final TransferSource plan;
  private final TransferOptions options;

  private LightingRows(TransferSource plan, TransferOptions options) {
    this.plan = plan;
    this.options = options;
  }

  /** The order list as rows of a quote. */
  static List<TransferBatch> quote(TransferSource plan, TransferOptions options) {
    return List.of(new LightingRows(plan, options).items());
  }

  /** Hours, fuel and energy as counts of a budget. */
  static List<TransferBatch> budget(TransferSource plan, TransferOptions options) {
    return List.of(new LightingRows(plan, options).counts());
  }

  private TransferBatch items() {
    List<PlanItem> items = new ArrayList<>();
    for (OrderRow row : plan.result().rows(LightingPapers.ORDER_ROW)) {
      if (row.kind().equals(Verdict.STOP.code())) {
        continue; // what is not ordered is withheld below
      }
      Days days = days(row);
      items.add(
          new PlanItem(
              name(row),
              options.word(row.kind().equals("load") ? "lighting" : "power"),
              row.required() + row.spare(),
              row.shortOf(),
              days.from,
              days.to));
    }
    List<String> withheld = new ArrayList<>();
    withhold("loads", "item", withheld);
    withhold("runs", "to", withheld);
    withhold("generators", "name", withheld);
    return PlanToQuote.batch(items, options, withheld);
  }

  private void withhold(String table, String name, List<String> withheld) {
    plan.typed(table)
        .filter(r -> !plan.isFit(r, table))
        .forEach(r -> withheld.add(lacking(r, name)));
  }

  /** What of a plan is not in the list: name, pieces, row, as other rows of that name may be. */
  private static String lacking(InputRow<?> row, String name) {
    Object qty = row.cells().getOrDefault("quantity", row.cells().get("pieces"));
    String pieces = qty instanceof Double number ? " × " + Numbers.format(number) : "";
    return row.cells().getOrDefault(name, "?") + pieces + " (#" + row.number() + ")";
  }

  /** The name under which it may stand on a price list: without what it is called on set. */
  private String name(OrderRow row) {
    List<String> parts = new ArrayList<>();
    switch (row.kind()) {
      case "load", "battery" -> parts.add(row.what());
      case "splitter" -> parts.add(options.word("splitter") + " " + row.what());
      case "generator" -> parts.add(options.word("generator") + " " + row.size());
      case "distro" -> {
        parts.add((options.word("distro") + " " + row.size()).strip());
        parts.add(outlets(row.what()));
      }
      case "adaptor" -> {
        parts.add(options.word("adaptor") + " " + row.what());
        parts.add(row.breaker() == null ? "" : Numbers.format(row.breaker()) + " A");
      }
      default -> {
        parts.add(options.word("cable") + " " + row.what());
        parts.add(row.cores() + " × " + row.size());
        parts.add(
            row.length() == null ? "" : Numbers.format(row.length()) + (isUs() ? " ft" : " m"));
        parts.add(row.connector());
      }
    }
    parts.removeIf(String::isEmpty);
    return String.join(", ", parts);
  }

  private String outlets(String what) {
    return supplies().stream()
        .filter(s -> s.name() != null && what.startsWith(s.name() + ", "))
        .map(s -> what.substring(s.name().length() + 2))
        .min(java.util.Comparator.comparingInt(String::length))
        .orElse("");
  }

  private boolean isUs() {
    return plan.typed("project")
        .anyMatch(r -> MeasureSystem.US.word().equals(String.valueOf(r.cells().get("units"))));
  }

  private List<Supply> supplies() {
    return values("supplies", Supply.class);
  }

  private <T> List<T> values(String table, Class<T> type) {
    return plan.typed(table).map(InputRow::value).map(type::cast).toList();
  }

  /** Days on which it is in use; null at both ends for all. */
  private record Days(LocalDate from, LocalDate to) {
    static final Days ALL = new Days(null, null);
  }

  private Days days(OrderRow row) {
    return switch (row.kind()) {
      case "load" ->
          around(
              values("loads", Load.class).stream()
                  .filter(l -> Identity.of(l.item()).equals(Identity.of(row.what())))
                  .map(l -> new Days(l.fromDay(), l.toDay()))
                  .toList());
      case "generator" ->
          around(
              values("generators", Generator.class).stream()
                  .filter(g -> Identity.of(g.name()).equals(Identity.of(row.what())))
                  .map(g -> new Days(g.fromDay(), g.toDay()))
                  .toList());
      default -> Days.ALL;
    };
  }

  private static Days around(List<Days> all) {
    if (all.isEmpty() || all.stream().anyMatch(d -> d.from == null || d.to == null)) {
      return Days.ALL;
    }
    return new Days(
        all.stream().map(Days::from).min(LocalDate::compareTo).orElseThrow(),
        all.stream().map(Days::to).max(LocalDate::compareTo).orElseThrow());
  }

  private TransferBatch counts() {
    List<TransferRow> rows = new ArrayList<>();
    List<String> withheld = new ArrayList<>();
    String volume = isUs() ? "gal" : "L";
    plan.typed("generators")
        .forEach(
            r -> {
              String name = ((Generator) r.value()).name();
              Map<String, Object> result = plan.beside(r, "generators");
              if (plan.isFit(r, "generators") && name != null) {
                count(rows, name, "fuel", volume, (Double) result.get("fuel"));
                count(rows, name, "running time", "h", (Double) result.get("hours"));
              } else {
                withheld.add(name == null ? "?" : name);
              }
            });
    List<SourceUse> uses =
        plan.result().part(SourceUse.All.class).map(SourceUse.All::sources).orElse(List.of());
    for (SourceUse use : uses) {
      boolean isGenerator =
          supplies().stream()
              .anyMatch(
                  s ->
                      s.type() == SupplyType.GENERATOR
                          && Identity.of(s.name()).equals(Identity.of(use.source())));
      if (isGenerator) {
        count(rows, use.source(), "hours on site", "h", use.onSite());
      } else {
        count(rows, use.source(), "energy", "kWh", use.kilowattHours());
      }
    }
    plan.typed("supplies")
        .filter(r -> !plan.isFit(r, "supplies"))
        .filter(r -> ((Supply) r.value()).type() != SupplyType.DISTRO)
        .forEach(r -> withheld.add(String.valueOf(r.cells().getOrDefault("name", "?"))));
    return new TransferBatch(
        TransferTarget.BUDGET_COUNTS, rows, withheld.stream().distinct().toList());
  }

  /** A quantity of all days, to two decimals. */
  private void count(
      List<TransferRow> rows, String source, String what, String unit, Double value) {
    if (value != null && value > 0) {
      Map<String, Object> cells = new LinkedHashMap<>();
      cells.put("count", source + ": " + options.word(what) + ", " + unit);
      cells.put("value", Math.round(value * 100) / 100.0);
      cells.put("inAll", "yes");
      rows.add(new TransferRow(Identity.of(source) + "|" + what, cells));
    }
  }
}
