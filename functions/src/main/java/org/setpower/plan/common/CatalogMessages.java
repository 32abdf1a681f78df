package org.setpower.plan.common;

import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import org.setpower.text.MessageCatalog;

/** The messages of a language, from its PO file. */
final class CatalogMessages extends EnglishMessages {
  private static final Messages ENGLISH = new EnglishMessages();
  private static final Map<String, Messages> READ = new ConcurrentHashMap<>();

  private final MessageCatalog words;

  private CatalogMessages(MessageCatalog words) {
    this.words = words;
  }

  /** The messages of a language, made once; English where it has no texts. */
  static Messages of(String locale) {
    String known = MessageCatalog.known(locale);
    Messages read = READ.get(known);
    if (read != null) {
      return read;
    }
    MessageCatalog words = MessageCatalog.in(known, MessageCatalog.Speaker.PLANS);
    if (words.translated().isEmpty()) {
      return ENGLISH;
    }
    READ.putIfAbsent(known, new CatalogMessages(words));
    return READ.get(known);
  }

  @Override
  public String text(String english) {
    return words.of(english);
  }
}
