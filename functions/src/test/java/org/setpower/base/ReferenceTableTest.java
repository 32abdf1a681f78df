package org.setpower.base;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Every row of every table of facts says where its figure comes from. */
class ReferenceTableTest {
  private static final Path RESOURCES = Path.of("src/main/resources");

  static Stream<Path> tables() throws IOException {
    try (Stream<Path> files = Files.walk(RESOURCES)) {
      List<Path> tables =
          files.filter(f -> f.toString().endsWith(".csv")).map(RESOURCES::relativize).toList();
      assertThat(tables).isNotEmpty();
      return tables.stream();
    }
  }

  @ParameterizedTest
  @MethodSource("tables")
  void a_row_names_its_source_and_basis(Path table) {
    assertThat(
            ReferenceTable.read(
                ReferenceTableTest.class, "/" + table.toString().replace('\\', '/')))
        .isNotEmpty()
        .allSatisfy(
            row -> {
              assertThat(row.source()).isNotBlank();
              assertThat(row.basis()).isIn("published", "memory", "trade", "own");
            });
  }
}
