package org.setpower.plan.common;

import java.util.Collection;
import java.util.Locale;
import java.util.stream.Collectors;
import org.setpower.plan.finding.Finding;

/** Makes sentences of findings, in the language of the document. */
public interface Messages {
  /** The sentence: what is wrong, the figures, what to do. */
  String sentence(Finding finding, Locale locale);

  /** The sentences of all findings, in their order, one blank between them. */
  default String sentences(Collection<Finding> findings, Locale locale) {
    return findings.stream().map(f -> sentence(f, locale)).collect(Collectors.joining(" "));
  }
}
