package org.setpower.plan.common;

import java.util.Collection;
import java.util.Locale;
import java.util.stream.Collectors;
import org.setpower.plan.finding.Finding;

/** What a plan says, in the language of the document. */
public interface Messages {
  /**
   * The messages of a language; English where there is none.
   *
   * @param locale an ISO 639 code, with or without a country: de, en-US
   */
  static Messages in(String locale) {
    return CatalogMessages.of(locale);
  }

  /** A heading, a rule, a help or another text of a declaration. */
  String text(String english);

  /** The sentence: what is wrong, the figures, what to do. */
  String sentence(Finding finding, Locale locale);

  /** The words of a phrase. */
  String phrase(Phrase phrase, Locale locale);

  /** The sentences of all findings, in their order, one blank between them. */
  default String sentences(Collection<Finding> findings, Locale locale) {
    if (findings.isEmpty()) {
      return "";
    }
    return findings.stream().map(f -> sentence(f, locale)).collect(Collectors.joining(" "));
  }
}
