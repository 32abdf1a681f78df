package org.setpower.templates;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class BuildTemplatesTest {
  @TempDir Path folder;

  @Test
  void what_no_workbook_declares_any_more_is_removed() throws IOException {
    List<String> kept =
        List.of(
            "templates/en/new-plan.ots",
            "templates/de/new-plan.ots",
            "examples/new-plan-example.ods",
            "examples/new-plan-example.pdf",
            "marks/new-plan/en");
    for (String file : kept) {
      write(file);
      write(file.replace("new-plan", "old-plan"));
    }

    BuildTemplates.removeOthers(folder, Set.of("new-plan"));

    try (Stream<Path> files = Files.walk(folder)) {
      assertThat(files.filter(Files::isRegularFile).map(f -> folder.relativize(f).toString()))
          .containsExactlyInAnyOrderElementsOf(kept);
    }
  }

  @Test
  void a_folder_that_is_not_there_yet_is_no_mistake() throws IOException {
    Path missing = folder.resolve("sheets");

    BuildTemplates.removeOthers(missing, Set.of("new-plan"));

    assertThat(missing).doesNotExist();
  }

  private void write(String file) throws IOException {
    Path path = folder.resolve(file);
    Files.createDirectories(path.getParent());
    Files.writeString(path, "drawn");
  }
}
