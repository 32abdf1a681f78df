package org.setpower.plan.quote;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.function.Function;
import org.setpower.plan.common.Phrase;
import org.setpower.plan.finding.Finding;
import org.setpower.plan.quote.QuoteResults.CarnetRow;
import org.setpower.plan.quote.QuoteResults.DeliveryRow;
import org.setpower.plan.quote.QuoteResults.DueRow;
import org.setpower.plan.quote.QuoteResults.ValueRow;
import org.setpower.plan.quote.terms.LineType;

/**
 * Papers that go with the kit: delivery note, return note, insurer's and carnet list. While the
 * quote or its picking has a stop each has one line, which says so, and no sum.
 */
final class Papers {
  private final List<QuoteLine> lines;
  private final PickedRows picked;
  private final LateReturns returns;
  private final Finding withheld;

  /**
   * Papers of an order.
   *
   * @param lines rows that are fit and ordered
   * @param withheld why they may not be issued; empty when they may
   */
  Papers(
      List<QuoteLine> lines, PickedRows picked, LateReturns returns, Optional<Finding> withheld) {
    this.lines = lines;
    this.picked = picked;
    this.returns = returns;
    this.withheld = withheld.orElse(null);
  }

  /** Whether they may be issued. */
  boolean mayIssue() {
    return withheld == null;
  }

  private Phrase why() {
    return PageText.PLAIN.of(withheld);
  }

  private static Phrase name(QuoteLine line) {
    return PageText.PLAIN.of(line.item().item());
  }

  private static Phrase total(int lacking, PageText incomplete) {
    return lacking == 0 ? PageText.SUM.of() : incomplete.of((double) lacking);
  }

  private static <R> BigDecimal sum(List<R> rows, Function<R, BigDecimal> amount) {
    return rows.stream()
        .map(amount)
        .filter(Objects::nonNull)
        .reduce(BigDecimal.ZERO, BigDecimal::add);
  }

  private List<QuoteLine> hired() {
    return lines.stream().filter(QuoteLine::isHired).toList();
  }

  /** What goes out with the kit: once picking is begun, what is not picked stays in the house. */
  private List<QuoteLine> goods() {
    return lines.stream()
        .filter(l -> l.type() != LineType.SERVICE && !picked.isLeftOut(l))
        .toList();
  }

  private Optional<BigDecimal> weight(QuoteLine line) {
    return line.weight(picked.pieces(line));
  }

  private Optional<BigDecimal> value(QuoteLine line) {
    return line.value(picked.pieces(line));
  }

  /** The weight of all rows that have one; null while no paper may be issued. */
  BigDecimal weight() {
    return mayIssue() ? sum(goods(), l -> weight(l).orElse(null)) : null;
  }

  /** Hired rows that the weight lacks; what is sold need not have one. */
  int withoutWeight() {
    return (int) goods().stream().filter(l -> l.isHired() && weight(l).isEmpty()).count();
  }

  /** The value of all hired rows that have one; null while no paper may be issued. */
  BigDecimal toInsure() {
    return mayIssue() ? sum(hired(), l -> value(l).orElse(null)) : null;
  }

  int withoutValue() {
    return (int) hired().stream().filter(l -> value(l).isEmpty()).count();
  }

  List<DeliveryRow> delivery() {
    if (!mayIssue()) {
      return List.of(
          new DeliveryRow(PaperKind.NOT_ISSUED, null, why(), null, null, null, null, null, null));
    }
    List<DeliveryRow> rows = new ArrayList<>();
    for (QuoteLine line : goods()) {
      rows.add(
          new DeliveryRow(
              PaperKind.GOODS,
              line.row().number(),
              name(line),
              picked.pieces(line),
              picked.serials(line).orElse(null),
              line.isHired() ? line.out() : null,
              line.isHired() ? line.back() : null,
              weight(line).orElse(null),
              line.stock().map(QuoteInputs.Stock::caution).orElse(null)));
    }
    if (!rows.isEmpty()) {
      Phrase label = total(withoutWeight(), PageText.SUM_WITHOUT_WEIGHT);
      rows.add(new DeliveryRow(PaperKind.SUM, null, label, null, null, null, null, weight(), null));
    }
    return rows;
  }

  List<DueRow> due() {
    return mayIssue()
        ? goods().stream().filter(QuoteLine::isHired).map(this::due).toList()
        : List.of(new DueRow(PaperKind.NOT_ISSUED, null, why(), null, null, null, null, null));
  }

  private DueRow due(QuoteLine line) {
    return new DueRow(
        PaperKind.GOODS,
        line.row().number(),
        name(line),
        picked.pieces(line),
        line.back(),
        returns.open(line).orElse(null),
        QuoteResults.TO_WRITE,
        QuoteResults.TO_WRITE);
  }

  List<ValueRow> values() {
    if (!mayIssue()) {
      return List.of(new ValueRow(PaperKind.NOT_ISSUED, null, why(), null, null, null, null));
    }
    List<ValueRow> rows = new ArrayList<>();
    for (QuoteLine line : hired()) {
      rows.add(
          new ValueRow(
              PaperKind.GOODS,
              line.row().number(),
              name(line),
              picked.pieces(line),
              picked.serials(line).orElse(null),
              line.value(1.0).orElse(null),
              value(line).orElse(null)));
    }
    if (!rows.isEmpty()) {
      Phrase label = total(withoutValue(), PageText.SUM_WITHOUT_VALUE);
      rows.add(new ValueRow(PaperKind.SUM, null, label, null, null, null, toInsure()));
    }
    return rows;
  }

  List<CarnetRow> carnet() {
    if (!mayIssue()) {
      return List.of(
          new CarnetRow(PaperKind.NOT_ISSUED, null, null, why(), null, null, null, null, null));
    }
    List<QuoteLine> marked = lines.stream().filter(picked::isOnCarnet).toList();
    List<CarnetRow> rows = new ArrayList<>();
    for (QuoteLine line : marked) {
      rows.add(
          new CarnetRow(
              PaperKind.GOODS,
              rows.size() + 1,
              line.row().number(),
              name(line),
              picked.serials(line).orElse(null),
              picked.pieces(line),
              weight(line).orElse(null),
              value(line).orElse(null),
              line.stock().map(QuoteInputs.Stock::origin).orElse(null)));
    }
    if (!rows.isEmpty()) {
      int lacking =
          (int) marked.stream().filter(l -> weight(l).isEmpty() || value(l).isEmpty()).count();
      rows.add(
          new CarnetRow(
              PaperKind.SUM,
              null,
              null,
              total(lacking, PageText.SUM_INCOMPLETE),
              null,
              null,
              sum(marked, l -> weight(l).orElse(null)),
              sum(marked, l -> value(l).orElse(null)),
              null));
    }
    return rows;
  }
}
