package org.setpower.templates.layout;

import java.util.Set;
import org.setpower.text.MessageCatalog;

/**
 * Where the long words of headings may be divided. They are in the PO file of the language, with |
 * between the syllables.
 */
public final class Hyphenation {
  private final MessageCatalog words;

  private Hyphenation(MessageCatalog words) {
    this.words = words;
  }

  /** The words of a language; none where its file has none. */
  public static Hyphenation in(String language) {
    return new Hyphenation(MessageCatalog.in(language, MessageCatalog.Speaker.SYLLABLES));
  }

  /** All words of the list. */
  public Set<String> known() {
    return words.translated();
  }

  /**
   * The word with hyphens, so that each part stands in a column of a width and holds as much as it
   * can; as it is where the list does not have it. Brackets and commas around it do not matter.
   */
  public String divided(String word, int width) {
    String bare = bare(word);
    String[] syllables = words.of(bare).split("\\|");
    if (syllables.length == 1) {
      return word;
    }
    int at = word.indexOf(bare);
    String after = word.substring(at + bare.length());
    StringBuilder divided = new StringBuilder();
    String part = word.substring(0, at);
    for (int i = 0; i < syllables.length; i++) {
      boolean last = i == syllables.length - 1;
      String longer = part + syllables[i];
      if (!part.isEmpty() && !HeadingLayout.fits(longer + (last ? after : "-"), width)) {
        divided.append(part).append('-');
        longer = syllables[i];
      }
      part = longer;
    }
    return divided.append(part).append(after).toString();
  }

  /** A word without what stands around it. */
  public static String bare(String word) {
    return word.replaceAll("^\\P{L}+|\\P{L}+$", "");
  }
}
