package org.setpower;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** What holds for the source folders of all modules, so that a class is found by its name. */
class SourceTreeTest {
  private static final int MOST_FILES = 25;
  private static final List<Path> MODULES =
      List.of(Path.of("."), Path.of("../templates"), Path.of("../extension"));

  private static List<Path> sources(String ending) throws IOException {
    List<Path> all = new java.util.ArrayList<>();
    for (Path module : MODULES) {
      try (Stream<Path> files = Files.walk(module)) {
        files
            .map(Path::normalize)
            .filter(f -> f.toString().endsWith(ending))
            .filter(f -> f.toString().replace('\\', '/').matches("(.*/)?src/.*/org/setpower/.*"))
            .filter(f -> !f.toString().contains("target"))
            .forEach(all::add);
      }
    }
    return all;
  }

  private static Map<String, List<Path>> by(Function<Path, String> key, Collection<Path> files) {
    return files.stream().collect(Collectors.groupingBy(key, TreeMap::new, Collectors.toList()));
  }

  @Test
  void all_modules_are_looked_at() throws IOException {
    assertThat(sources(".java"))
        .anyMatch(f -> f.endsWith("base/ErrorCode.java"))
        .anyMatch(f -> f.endsWith("plan/PlanWorkbook.java"))
        .anyMatch(f -> f.endsWith("generator/CodeGenerator.java"))
        .anyMatch(f -> f.endsWith("bench/OfficeBench.java"));
  }

  @Test
  void no_folder_holds_more_than_can_be_surveyed() throws IOException {
    for (String ending : List.of(".java", ".csv")) {
      by(f -> f.getParent().toString(), sources(ending))
          .forEach(
              (folder, files) -> assertThat(files).as(folder).hasSizeLessThanOrEqualTo(MOST_FILES));
    }
  }

  @Test
  void no_class_name_stands_for_two_classes() throws IOException {
    List<Path> classes =
        sources(".java").stream().filter(f -> !f.endsWith("package-info.java")).toList();
    by(f -> f.getFileName().toString(), classes)
        .forEach((name, files) -> assertThat(files).as(name).hasSize(1));
  }
}
