package org.setpower.command.export;

import com.sun.star.beans.PropertyAttribute;
import com.sun.star.beans.XPropertyContainer;
import com.sun.star.beans.XPropertySet;
import com.sun.star.document.XDocumentProperties;
import com.sun.star.document.XDocumentPropertiesSupplier;
import com.sun.star.uno.Exception;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.ArrayList;
import java.util.HexFormat;
import java.util.List;
import java.util.Locale;
import org.setpower.command.document.CalcDocument;
import org.setpower.plan.common.EnglishMessages;
import org.setpower.plan.common.PlanResult;
import org.setpower.plan.quote.QuoteResults;
import org.setpower.plan.quote.QuoteResults.DocumentLine;
import org.setpower.plan.quote.QuoteResults.Letter;
import org.setpower.uno.Uno;

/**
 * What a quote said when it was exported last, so that other content under the same revision is
 * noticed. The document keeps a digest of it; the files for the client have none.
 *
 * @param revision number and revision
 * @param content digest of the page
 */
record SentQuote(String revision, String content) {
  private static final String PROPERTY = "SetPowerQuoteExported";
  private static final int DIGITS = 32;

  /** What would be exported now. */
  static SentQuote of(PlanResult result) {
    Letter letter = result.rows(QuoteResults.LETTER).get(0);
    EnglishMessages words = new EnglishMessages();
    List<Object> page = new ArrayList<>();
    page.add(letter.clientName());
    page.add(letter.billingAddress());
    page.add(letter.hireOut());
    page.add(letter.hireBack());
    page.add(letter.inCurrency());
    for (DocumentLine line : result.rows(QuoteResults.DOCUMENT)) {
      page.add(words.phrase(line.label(), Locale.ROOT));
      page.add(line.pieces());
      page.add(line.outOn());
      page.add(line.backOn());
      page.add(line.days());
      page.add(line.amount());
    }
    result.rows(QuoteResults.CLOSING).forEach(l -> page.add(words.phrase(l.text(), Locale.ROOT)));
    return new SentQuote(
        letter.quoteNumber() + "|" + letter.quoteRevision(), digest(page.toString()));
  }

  private static String digest(String text) {
    try {
      byte[] digest =
          MessageDigest.getInstance("SHA-256").digest(text.getBytes(StandardCharsets.UTF_8));
      return HexFormat.of().formatHex(digest).substring(0, DIGITS);
    } catch (NoSuchAlgorithmException missing) {
      throw new IllegalStateException(missing);
    }
  }

  /** Whether the document was exported under this revision with other content. */
  boolean isChangedIn(CalcDocument book) throws Exception {
    XPropertySet kept = Uno.as(XPropertySet.class, properties(book));
    if (!kept.getPropertySetInfo().hasPropertyByName(PROPERTY)) {
      return false;
    }
    String last = String.valueOf(kept.getPropertyValue(PROPERTY));
    return last.startsWith(revision + "|") && !last.equals(revision + "|" + content);
  }

  /** Keeps in the document what was exported. */
  void keepIn(CalcDocument book) throws Exception {
    XPropertyContainer kept = properties(book);
    String value = revision + "|" + content;
    if (Uno.as(XPropertySet.class, kept).getPropertySetInfo().hasPropertyByName(PROPERTY)) {
      Uno.as(XPropertySet.class, kept).setPropertyValue(PROPERTY, value);
    } else {
      kept.addProperty(PROPERTY, PropertyAttribute.REMOVABLE, value);
    }
  }

  private static XPropertyContainer properties(CalcDocument book) {
    XDocumentProperties properties =
        Uno.as(XDocumentPropertiesSupplier.class, book.document()).getDocumentProperties();
    return properties.getUserDefinedProperties();
  }
}
