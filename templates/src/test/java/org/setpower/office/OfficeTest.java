package org.setpower.office;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.Locale;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What is said when there is no office. */
class OfficeTest {
  @AfterEach
  void forget() {
    System.clearProperty("setpower.office");
  }

  @Test
  void names_the_package_when_there_is_no_office() {
    System.setProperty("setpower.office", "/nowhere/soffice");
    assertThatThrownBy(Office::start)
        .isInstanceOf(OfficeMissing.class)
        .hasMessageContaining("/nowhere/soffice")
        .hasMessageContaining("libreoffice-calc");
  }

  /** In Turkish a small I has no dot: SETPOWER_OFFICE would not become setpower.office. */
  @Test
  void settings_are_found_whatever_the_language_of_the_machine() {
    Locale before = Locale.getDefault();
    System.setProperty("setpower.office", "/of/the/test");
    try {
      Locale.setDefault(Locale.forLanguageTag("tr"));
      assertThat(OfficeHost.setting("SETPOWER_OFFICE", "")).isEqualTo("/of/the/test");
    } finally {
      Locale.setDefault(before);
    }
  }

  @Test
  void asks_for_java_support_when_the_installer_is_missing(@TempDir Path folder)
      throws IOException {
    Path soffice = Files.createFile(folder.resolve("soffice"));
    assertThat(soffice.toFile().setExecutable(true)).isTrue();
    System.setProperty("setpower.office", soffice.toString());
    OfficeHost host = new OfficeHost();
    try {
      assertThatThrownBy(() -> host.run(Duration.ofSeconds(1), "unopkg", "add"))
          .isInstanceOf(OfficeMissing.class)
          .hasMessageContaining("libreoffice-java-common");
    } finally {
      host.deleteWork();
    }
    assertThat(host.work()).doesNotExist();
  }
}
