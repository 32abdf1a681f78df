package org.setpower.command.help;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.URI;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.setpower.addin.SharedOffice;
import org.setpower.command.CommandDriver;
import org.setpower.office.Office;
import org.setpower.registry.groups.SheetFunctions;

/** Commands that show what ships with the extension. */
@ExtendWith(SharedOffice.class)
class HelpIT {
  @Test
  void about_tells_version_licence_and_libraries(Office office) {
    assertThat(CommandDriver.command(office, null, "about"))
        .contains((String) SheetFunctions.VERSION.call(), "Mozilla Public License", "Commons CSV")
        .contains("competent person");
  }

  @Test
  void the_handbook_is_a_page_of_the_extension(Office office) {
    String page = CommandDriver.command(office, null, "handbook");
    assertThat(page).startsWith("file:///").endsWith("handbook/index.html");
    Path root = Path.of(System.getProperty("setpower.office.root", "/"));
    Path file = root.resolve(Path.of(URI.create(page)).toString().substring(1));
    assertThat(Files.exists(file)).isTrue();
  }
}
