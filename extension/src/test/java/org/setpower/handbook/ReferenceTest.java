package org.setpower.handbook;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/**
 * The function reference in the repository against what the declarations give. Where it fails,
 * build with {@code -Dreference.write=true} and commit what changed.
 */
class ReferenceTest {
  private static final String WHAT_TO_DO =
      "build with -Dreference.write=true and commit functions/reference";

  @Test
  void the_reference_is_what_the_declarations_give() throws IOException {
    Map<String, String> given = texts(Path.of("target/generated/reference"));
    Map<String, String> committed = texts(Path.of("../functions/reference"));
    assertThat(given).isNotEmpty();
    assertThat(committed.keySet()).as(WHAT_TO_DO).isEqualTo(given.keySet());
    assertThat(given.keySet().stream().filter(n -> !given.get(n).equals(committed.get(n))))
        .as(WHAT_TO_DO)
        .isEmpty();
  }

  private static Map<String, String> texts(Path folder) throws IOException {
    Map<String, String> texts = new TreeMap<>();
    try (Stream<Path> files = Files.list(folder)) {
      for (Path file : files.toList()) {
        texts.put(file.getFileName().toString(), Files.readString(file));
      }
    }
    return texts;
  }
}
