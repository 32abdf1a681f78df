package org.setpower.plan.common;

import org.setpower.text.MessageCatalog;

/** The messages of a language, from its PO file. */
final class CatalogMessages extends EnglishMessages {
  private final MessageCatalog words;

  CatalogMessages(MessageCatalog words) {
    this.words = words;
  }

  @Override
  public String text(String english) {
    return words.of(english);
  }
}
