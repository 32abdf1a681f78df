package org.setpower.command.menu;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.setpower.command.settings.Setting;
import org.setpower.text.MessageCatalog;

/** In every language each label of a window and each entry of the menu has a letter of its own. */
class AcceleratorKeysTest {
  private static final Path CODE = Path.of("src/main/java/org/setpower");
  private static final Pattern LABEL = Pattern.compile("\"([^\"\\n]*~[^\"\\n~]+)\"");
  private static final List<String> OF_EVERY_TEXT = List.of("~Copy", "C~lose");

  /** The labels that stand in one window together. */
  private static final Map<String, List<String>> WINDOWS =
      Map.ofEntries(
          Map.entry("Copy written", List.of("~Open", "Open ~folder", "C~lose")),
          Map.entry(
              "Export values-only copy",
              List.of(
                  "~Sheets (Ctrl+click for several)",
                  "~OpenDocument spreadsheet (.ods)",
                  "~Excel workbook (.xlsx)",
                  "~PDF, as it prints (.pdf)",
                  "The ~working of each figure as a note in its cell",
                  "~Folder",
                  "C~hoose…",
                  "~Name",
                  "W~rite",
                  "~Cancel")),
          Map.entry(
              "Show calculation", with(OF_EVERY_TEXT, "~Working: {}", "~Insert into document")),
          Map.entry("About Set Power", with(OF_EVERY_TEXT, "~Version, licence, libraries")),
          Map.entry(
              "User guide", with(OF_EVERY_TEXT, "If no browser opens, open ~this file in one:")),
          Map.entry("New sheet", List.of("~Start from", "C~reate", "~Cancel")),
          Map.entry(
              "Bring in rows",
              List.of(
                  "~From",
                  "Only what is ~short",
                  "~Days of use as Out and Back of new rows",
                  "C~ompare…",
                  "~Cancel")),
          Map.entry(
              "Names of another file",
              List.of("~Name there", "~Item here", "~Same item", "C~ontinue", "~Cancel")),
          Map.entry(
              "What differs",
              List.of(
                  "~What is written: yes or no",
                  "~The chosen line in full",
                  "~Yes",
                  "~No",
                  "Yes to ~all",
                  "No to a~ll",
                  "~Bring in",
                  "~Cancel")),
          Map.entry("Show tabs", List.of("~Hidden tabs", "~Show", "~Cancel")),
          Map.entry(
              "Add distro",
              List.of(
                  "~Name", "~Type", "~Fed from", "~Length (m)", "Ca~ble size", "~Add", "~Cancel")),
          Map.entry(
              "Add distro in feet",
              List.of(
                  "~Name", "~Type", "~Fed from", "~Length (ft)", "Ca~ble size", "~Add", "~Cancel")),
          Map.entry(
              "Mark as inspected",
              List.of("~Day of the inspection", "~Role, no name", "~Mark", "~Cancel")),
          Map.entry("Settings of Set Power", settings()));

  private static List<String> with(List<String> some, String... more) {
    return Stream.concat(some.stream(), Stream.of(more)).toList();
  }

  private static List<String> settings() {
    List<String> labels = new ArrayList<>(List.of("~OK", "C~ancel"));
    for (Setting setting : Setting.values()) {
      labels.add(setting.label());
    }
    return labels;
  }

  private static MessageCatalog words(String language) {
    return language.equals(MessageCatalog.ENGLISH)
        ? MessageCatalog.english()
        : MessageCatalog.in(language, MessageCatalog.Speaker.COMMANDS);
  }

  /** The letter behind the tilde, as a keyboard has it. */
  private static String letter(String label) {
    Matcher letter = Pattern.compile("~([\\p{L}\\d])").matcher(label);
    assertThat(letter.find()).as("a letter in “%s”", label).isTrue();
    assertThat(letter.group(1)).as("a letter of every keyboard in “%s”", label).matches("[A-Za-z]");
    return letter.group(1).toLowerCase(Locale.ROOT);
  }

  @ParameterizedTest
  @ValueSource(strings = {"en", "de", "fr", "es"})
  void no_two_labels_of_a_window_share_one(String language) {
    MessageCatalog words = words(language);
    WINDOWS.forEach(
        (window, labels) ->
            assertThat(labels.stream().map(words::of).map(AcceleratorKeysTest::letter))
                .as("%s in %s: %s", window, language, labels.stream().map(words::of).toList())
                .doesNotHaveDuplicates());
  }

  @ParameterizedTest
  @ValueSource(strings = {"en", "de", "fr", "es"})
  void no_two_entries_of_the_menu_share_one(String language) throws IOException {
    MessageCatalog words = words(language);
    String menu = Files.readString(Path.of("src/main/oxt/Addons.xcu"));
    menu = menu.substring(menu.indexOf("Submenu"), menu.indexOf("OfficeToolBar"));
    List<String> titles =
        Pattern.compile("en-US\">([^<]*)<")
            .matcher(menu)
            .results()
            .map(m -> words.of(m.group(1)))
            .toList();
    assertThat(titles.stream().map(AcceleratorKeysTest::letter))
        .as("%s", titles)
        .doesNotHaveDuplicates();
  }

  @Test
  void no_label_is_forgotten_here() throws IOException {
    Set<String> written = new TreeSet<>();
    try (Stream<Path> files = Files.walk(CODE)) {
      for (Path file : files.filter(f -> f.toString().endsWith(".java")).toList()) {
        LABEL.matcher(Files.readString(file)).results().forEach(m -> written.add(m.group(1)));
      }
    }
    Set<String> known = new TreeSet<>();
    WINDOWS.values().forEach(known::addAll);
    assertThat(known).isEqualTo(written);
  }
}
