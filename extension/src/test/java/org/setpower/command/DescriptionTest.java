package org.setpower.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.setpower.text.MessageCatalog;

/** What the office's list of extensions shows comes from files that are there. */
class DescriptionTest {
  private static final Path SHIPPED = Path.of("src/main/oxt");
  private static final Pattern TEXT =
      Pattern.compile("<(?:src|license-text) lang=\"(\\w+)\" xlink:href=\"([^\"]+)\"");

  private static String read(String file) throws IOException {
    return Files.readString(SHIPPED.resolve(file));
  }

  @Test
  void says_version_publisher_licence_and_what_it_is_in_four_languages() throws IOException {
    String description = read("description.xml");
    assertThat(description).contains("${project.version}", "<publisher>", "setpower_32.png");
    List<MatchResult> texts = TEXT.matcher(description).results().toList();
    assertThat(texts)
        .extracting(t -> t.group(2))
        .containsExactly(
            "about-en.txt",
            "about-de.txt",
            "about-fr.txt",
            "about-es.txt",
            "licence-en.txt",
            "licence-de.txt",
            "licence-fr.txt",
            "licence-es.txt");
    String packed = Files.readString(Path.of("src/main/assembly/functions.xml"));
    for (MatchResult text : texts) {
      assertThat(packed).contains("/" + text.group(2) + "<");
    }
  }

  /** Whoever installs it reads two lines, not sixteen pages. */
  @ParameterizedTest
  @ValueSource(strings = {"en", "de", "fr", "es"})
  void the_licence_is_named_in_two_lines_and_its_full_text_ships(String language)
      throws IOException {
    String licence = read("licence-" + language + ".txt");
    assertThat(licence.lines()).hasSize(2);
    assertThat(licence)
        .contains("Mozilla Public License 2.0", "http://mozilla.org/MPL/2.0/", "LICENSE");
    assertThat(Files.readString(Path.of("../LICENSE")))
        .startsWith("Mozilla Public License Version 2.0")
        .contains("http://mozilla.org/MPL/2.0/");
    assertThat(Files.readString(Path.of("src/main/assembly/functions.xml")))
        .contains("../LICENSE<");
  }

  /** The description, which About shows too, sends people to the entry of our own menu. */
  @ParameterizedTest
  @ValueSource(strings = {"en", "de", "fr", "es"})
  void the_description_points_to_the_menu_as_it_is_called(String language) throws IOException {
    MessageCatalog words =
        language.equals(MessageCatalog.ENGLISH)
            ? MessageCatalog.english()
            : MessageCatalog.in(language, MessageCatalog.Speaker.COMMANDS);
    String entry = words.of("~New from template…").replace("~", "");
    assertThat(read("about-" + language + ".txt")).contains("Set Power - " + entry);
  }

  @Test
  void every_library_inside_is_named_with_its_licence() throws IOException {
    String packed = Files.readString(Path.of("src/main/assembly/functions.xml"));
    String notice = read("NOTICE.txt");
    Pattern library = Pattern.compile("<include>[\\w.]+:([\\w-]+):jar</include>");
    List<String> names = library.matcher(packed).results().map(m -> m.group(1) + ".jar").toList();
    assertThat(names).isNotEmpty().allSatisfy(name -> assertThat(notice).contains(name));
    assertThat(notice).contains("Mozilla Public License 2.0", "Apache");
  }
}
