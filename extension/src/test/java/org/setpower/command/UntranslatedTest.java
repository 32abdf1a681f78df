package org.setpower.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.setpower.text.Allowance;
import org.setpower.text.MessageCatalog;

/** Texts of the commands that stay English, as the build lists them. */
class UntranslatedTest {
  private static final Path LISTS = Path.of("target/generated/untranslated");
  private static final Pattern TEXT = Pattern.compile("(?m)^msgid \"(.*)\"$");

  static List<String> languages() {
    return MessageCatalog.LANGUAGES;
  }

  @ParameterizedTest
  @MethodSource("languages")
  void no_more_texts_are_missing_than_allowed(String language) throws IOException {
    String list = Files.readString(LISTS.resolve(MessageCatalog.file(language)));
    Set<String> missing = new TreeSet<>();
    TEXT.matcher(list).results().forEach(m -> missing.add(m.group(1).translateEscapes()));
    Allowance.check(language, MessageCatalog.Speaker.COMMANDS, missing);
  }

  /** American texts are of commands that there are. */
  @Test
  void american_texts_belong_to_a_command() {
    Set<String> american = MessageCatalog.in("en-US", MessageCatalog.Speaker.COMMANDS).translated();
    assertThat(american).isNotEmpty();
    assertThat(MessageCatalog.in("de", MessageCatalog.Speaker.COMMANDS).translated())
        .containsAll(american);
  }
}
