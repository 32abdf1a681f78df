package org.setpower.generator;

import java.util.List;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** What the extension is packed from: the sheets of every language in a folder of its own. */
final class AssemblyDescriptor {
  private static final Pattern ENGLISH =
      Pattern.compile("(?s) *<fileSet>\\s*<directory>[^<]*/templates/en</directory>.*?</fileSet>\n");

  private AssemblyDescriptor() {}

  /** The descriptor with the set of files of English repeated for each language. */
  static String of(String descriptor, List<String> languages) {
    Matcher english = ENGLISH.matcher(descriptor);
    if (!english.find()) {
      throw new IllegalStateException("no set of files with templates/en");
    }
    StringBuilder sets = new StringBuilder(english.group());
    for (String language : languages) {
      Locale locale = Locale.forLanguageTag(language);
      sets.append(
          english
              .group()
              .replace("templates/en", "templates/" + language)
              .replace(
                  "Set Power Sheets<",
                  "Set Power Sheets (" + locale.getDisplayName(locale) + ")<"));
    }
    return descriptor.replace(english.group(), sets);
  }
}
