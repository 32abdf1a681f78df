package org.setpower.plan.quote;

import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.zip.CRC32;
import org.setpower.plan.finding.Finding;
import org.setpower.plan.finding.Identity;
import org.setpower.plan.quote.QuoteInputs.Order;
import org.setpower.plan.quote.QuoteResults.ClosingLine;
import org.setpower.plan.quote.QuoteResults.DocumentLine;
import org.setpower.plan.quote.QuoteResults.Letter;

/**
 * What the client's page says, so that other content under the same number and revision is noticed:
 * an export writes it into the order.
 *
 * @param revision number and revision
 * @param total of the page
 * @param key a number worked out of what stands on the page
 */
public record SentQuote(String revision, BigDecimal total, long key) {
  static SentQuote of(
      Order order,
      Letter letter,
      List<DocumentLine> lines,
      List<ClosingLine> closing,
      BigDecimal total) {
    List<Object> page = new ArrayList<>();
    page.add(letter.clientName());
    page.add(letter.billingAddress());
    page.add(letter.hireOut());
    page.add(letter.hireBack());
    page.add(letter.inCurrency());
    for (DocumentLine line : lines) {
      page.add(line.label());
      page.add(line.pieces());
      page.add(line.outOn());
      page.add(line.backOn());
      page.add(line.days());
      page.add(line.amount());
    }
    closing.forEach(l -> page.add(l.text()));
    CRC32 sum = new CRC32();
    sum.update(page.toString().getBytes(StandardCharsets.UTF_8));
    String number = Objects.requireNonNullElse(order.number(), "–");
    String revision = Objects.requireNonNullElse(order.revision(), "–");
    return new SentQuote(number + " / " + revision, total, sum.getValue());
  }

  /** A finding where an order was exported with other content under this number and revision. */
  Optional<Finding> judge(Order order, BigDecimal sentTotal) {
    boolean isSent = order.sentKey() != null && order.sentRevision() != null;
    if (!isSent
        || !Identity.of(order.sentRevision()).equals(Identity.of(revision))
        || order.sentKey() == key) {
      return Optional.empty();
    }
    return Optional.of(
        sentTotal == null || sentTotal.compareTo(total) == 0
            ? Finding.of(QuoteFinding.SENT_OTHER, revision, total)
            : Finding.of(QuoteFinding.SENT_TOTAL, revision, sentTotal, total));
  }
}
