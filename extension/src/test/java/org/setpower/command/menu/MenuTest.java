package org.setpower.command.menu;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.setpower.command.settings.Setting;

/** The menu, the toolbar and the pictures call commands that are there. */
class MenuTest {
  private static final Path SHIPPED = Path.of("src/main/oxt");
  private static final Pattern CALL =
      Pattern.compile("(?:service:org.setpower.Commands\\?|org.setpower:)(\\w+)<");
  private static final Pattern PICTURE = Pattern.compile("%origin%/icons/(\\w+)_(?:16|26).png");
  private static final Pattern TITLE = Pattern.compile("en-US\">([^<]*)<");

  private static Set<String> all(Pattern pattern, String text) {
    Set<String> found = new TreeSet<>();
    pattern.matcher(text).results().forEach(m -> found.add(m.group(1)));
    return found;
  }

  @Test
  void every_command_has_its_entry_and_every_entry_its_command() throws IOException {
    String addons = Files.readString(SHIPPED.resolve("Addons.xcu"));
    assertThat(all(CALL, addons)).isEqualTo(new TreeSet<>(CommandRegistry.KNOWN.keySet()));
  }

  @Test
  void every_picture_has_its_drawing() throws IOException {
    String addons = Files.readString(SHIPPED.resolve("Addons.xcu"));
    assertThat(all(PICTURE, addons)).isNotEmpty();
    for (String name : all(PICTURE, addons)) {
      assertThat(SHIPPED.resolve("icons/" + name + ".svg")).exists();
    }
  }

  @Test
  void every_entry_of_the_menu_has_its_own_letter_for_the_keyboard() throws IOException {
    String menu = Files.readString(SHIPPED.resolve("Addons.xcu"));
    menu = menu.substring(menu.indexOf("Submenu"), menu.indexOf("OfficeToolBar"));
    List<String> letters =
        all(TITLE, menu).stream()
            .map(t -> t.substring(t.indexOf('~') + 1, t.indexOf('~') + 2).toLowerCase())
            .toList();
    assertThat(letters).doesNotHaveDuplicates().hasSize(CommandRegistry.KNOWN.size());
  }

  /** Letters of Calc's own menus in English, and letters that Calc has another use for. */
  @Test
  void the_menu_has_a_letter_that_calc_has_no_use_for() throws IOException {
    Matcher title =
        Pattern.compile("en-US\">Set [^<]*~(.)")
            .matcher(Files.readString(SHIPPED.resolve("Addons.xcu")));
    assertThat(title.find()).isTrue();
    assertThat("feviosydtwhpxc").doesNotContain(title.group(1));
  }

  @Test
  void every_setting_is_kept_under_its_key() throws IOException {
    Set<String> keys =
        all(
            Pattern.compile("<prop oor:name=\"(\\w+)\""),
            Files.readString(SHIPPED.resolve("Settings.xcs")));
    Set<String> settings = new TreeSet<>();
    for (Setting setting : Setting.values()) {
      settings.add(setting.key());
    }
    assertThat(keys).isEqualTo(settings);
  }
}
