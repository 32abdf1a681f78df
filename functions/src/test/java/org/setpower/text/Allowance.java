package org.setpower.text;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * How many texts of a language may stay English: a number a language and speaker in {@code
 * untranslated.tsv}, none where no line is. It only goes down.
 */
public final class Allowance {
  private static final Path LIST =
      Path.of("../functions/src/test/resources/org/setpower/text/untranslated.tsv");

  private Allowance() {}

  /** Fails when more texts are missing than allowed, or fewer, so that the number follows. */
  public static void check(String language, MessageCatalog.Speaker speaker, Set<String> missing)
      throws IOException {
    Map<String, Integer> allowed =
        Files.readAllLines(LIST).stream()
            .filter(l -> !l.startsWith("#") && !l.isBlank())
            .map(l -> l.split("\t"))
            .collect(Collectors.toMap(l -> l[0] + " " + l[1], l -> Integer.parseInt(l[2])));
    String context = speaker.name().toLowerCase(Locale.ROOT);
    assertThat(missing)
        .as(
            "%s.po, to translate, or the number in untranslated.tsv to lower:\n%s",
            language,
            missing.stream()
                .map(t -> MessageCatalog.entry(speaker, t))
                .collect(Collectors.joining("\n")))
        .hasSize(allowed.getOrDefault(language + " " + context, 0));
  }
}
