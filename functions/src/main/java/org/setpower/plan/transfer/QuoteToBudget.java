package org.setpower.plan.transfer;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.function.UnaryOperator;
import org.setpower.plan.budget.CostType;
import org.setpower.plan.budget.PriceUnit;
import org.setpower.plan.finding.Identity;
import org.setpower.plan.quote.LineKind;
import org.setpower.plan.quote.QuoteResults;
import org.setpower.plan.quote.QuoteResults.DocumentLine;
import org.setpower.plan.quote.QuoteResults.Letter;
import org.setpower.plan.quote.QuoteResults.TaxLine;
import org.setpower.plan.quote.terms.RateBasis;

/**
 * A client's quote as budget lines: its rows, and the order discount by tax rate, the minimum, the
 * waiver as lines of their own. Their net sums are those of the quote to the smallest coin.
 */
public final class QuoteToBudget {
  private final Letter letter;
  private final UnaryOperator<String> words;
  private final List<TransferRow> rows = new ArrayList<>();

  private QuoteToBudget(Letter letter, UnaryOperator<String> words) {
    this.letter = letter;
    this.words = words;
  }

  /** Rows of the quote, and its security deposit; nothing while it may not be issued. */
  static List<TransferBatch> batches(TransferSource quote, TransferOptions options) {
    List<Letter> letters = quote.result().rows(QuoteResults.LETTER);
    List<DocumentLine> page =
        quote.result().rows(QuoteResults.DOCUMENT).stream().filter(Objects::nonNull).toList();
    List<TaxLine> taxes =
        quote.result().rows(QuoteResults.TAXES).stream().filter(Objects::nonNull).toList();
    Letter letter = letters.isEmpty() ? null : letters.get(0);
    if (letter == null) {
      return List.of();
    }
    List<TransferRow> deposits = new ArrayList<>();
    BigDecimal security = quote.result().rows(QuoteResults.SUMMARY).get(0).security();
    if (security != null && security.signum() > 0) {
      Map<String, Object> cells = new LinkedHashMap<>();
      String house = letter.houseName() == null ? "" : letter.houseName();
      cells.put("to", house.isEmpty() ? options.word("security deposit") : house);
      cells.put("amount", security.doubleValue());
      deposits.add(new TransferRow("security", cells));
    }
    return List.of(
        new TransferBatch(
            TransferTarget.BUDGET_LINES, lines(page, taxes, letter, options::word), List.of()),
        new TransferBatch(TransferTarget.BUDGET_DEPOSITS, deposits, List.of()));
  }

  /**
   * The budget lines.
   *
   * @param page the client's page; one that may not be issued gives no line
   * @param taxes its net by rate
   * @param words English words in the language of the budget
   */
  public static List<TransferRow> lines(
      List<DocumentLine> page, List<TaxLine> taxes, Letter letter, UnaryOperator<String> words) {
    QuoteToBudget transfer = new QuoteToBudget(letter, words);
    String section = null;
    for (DocumentLine line : page) {
      if (line.kind() == LineKind.SECTION) {
        section = line.text();
      } else if (line.kind() == LineKind.ITEM) {
        transfer.add(line, CostType.RENTAL, section);
      } else if (line.kind() == LineKind.SOLD) {
        transfer.add(line, CostType.PURCHASE, null);
      } else if (line.kind() == LineKind.SERVICE) {
        transfer.add(line, CostType.SERVICE, null);
      }
    }
    for (TaxLine rate : taxes) {
      transfer.add(LineKind.DISCOUNT, CostType.REDUCTION, rate, rate.discount());
      transfer.add(LineKind.MINIMUM, CostType.RENTAL, rate, rate.minimum());
      transfer.add(LineKind.WAIVER, CostType.INSURANCE, rate, rate.waiver());
    }
    return List.copyOf(transfer.rows);
  }

  private void add(DocumentLine line, CostType type, String section) {
    Map<String, Object> cells = common(line.text(), type, line.taxRate());
    cells.put("qty", line.pieces());
    if (line.rateFor() == RateBasis.DAY) {
      cells.put("unit", PriceUnit.DAY.word());
      cells.put("times", line.days().doubleValue());
      cells.put("price", line.rate().doubleValue());
    } else if (line.each() != null) {
      // a price by week is that of the whole hire: its weeks differ
      cells.put("unit", PriceUnit.ONCE.word());
      cells.put("price", line.each().doubleValue());
    }
    if (line.share() != null) {
      cells.put("discount", line.share().doubleValue());
    }
    String group = section == null ? type.word() : section;
    rows.add(new TransferRow(Identity.of(line.text()), group, cells));
  }

  private void add(LineKind kind, CostType type, TaxLine rate, BigDecimal amount) {
    if (amount.signum() != 0) {
      Map<String, Object> cells = common(words.apply(kind.word()), type, rate.rate());
      cells.put("unit", PriceUnit.ONCE.word());
      cells.put("price", amount.doubleValue());
      String reason = rate.reason() == null ? "" : "|" + Identity.of(rate.reason());
      String key = kind.word() + " " + rate.rate().toPlainString() + reason;
      rows.add(new TransferRow(key, type.word(), cells));
    }
  }

  private Map<String, Object> common(String description, CostType type, BigDecimal tax) {
    Map<String, Object> cells = new LinkedHashMap<>();
    cells.put("description", description);
    cells.put("type", type.word());
    if (letter.houseName() != null) {
      cells.put("supplier", letter.houseName());
    }
    cells.put("currency", letter.inCurrency());
    cells.put("tax", tax.doubleValue());
    return cells;
  }
}
