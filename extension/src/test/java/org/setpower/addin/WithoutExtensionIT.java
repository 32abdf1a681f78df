package org.setpower.addin;

import static java.util.stream.Collectors.groupingBy;
import static java.util.stream.Collectors.toList;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assumptions.assumeThat;

import com.sun.star.lang.XComponent;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.setpower.office.Office;

/** What somebody sees who has a sheet of ours but not the extension. */
@ExtendWith(SharedOffice.class)
class WithoutExtensionIT {
  private static final Path SHEETS = Path.of("target/sheets");
  private static final String NOTICE = "Set Power Sheets or Java is not installed";

  /** The notice by the folder that a template lies in; English elsewhere. */
  private static final Map<String, String> NOTICES =
      Map.of(
          "de", "Set Power Sheets oder Java ist nicht installiert",
          "fr", "Set Power Sheets ou Java n’est pas installé",
          "es", "Set Power Sheets o Java no está instalado");

  @Test
  void the_first_sheet_says_so_in_words() throws IOException {
    assertThat(english()).hasSizeGreaterThanOrEqualTo(12);
    saySo(english());
  }

  /** The words are drawn the same way on every sheet: one sheet a language, each another. */
  @Test
  @Tag("one-office")
  void it_says_so_in_every_language() throws IOException {
    Map<String, List<Path>> languages =
        files()
            .filter(file -> !isEnglish(file))
            .collect(groupingBy(WithoutExtensionIT::folder, TreeMap::new, toList()));
    assumeThat(languages).as("sheets drawn in other languages").isNotEmpty();
    List<Path> others = new ArrayList<>();
    for (List<Path> sheets : languages.values()) {
      others.add(sheets.get(others.size() % sheets.size()));
    }
    saySo(others);
  }

  private static void saySo(List<Path> files) throws IOException {
    try (Office without = Office.start()) {
      for (Path file : files) {
        assertThat(firstColumn(without, file)).as(file.toString()).contains(notice(file));
      }
    }
  }

  @Test
  @Tag("one-office")
  void with_the_extension_nothing_is_said(Office with) throws IOException {
    for (Path file : english()) {
      assertThat(firstColumn(with, file)).as(file.toString()).doesNotContain(notice(file));
    }
  }

  private static String notice(Path file) {
    return NOTICES.getOrDefault(folder(file), NOTICE);
  }

  private static boolean isEnglish(Path file) {
    return Set.of("en", "examples").contains(folder(file));
  }

  private static String folder(Path file) {
    return file.getParent().getFileName().toString();
  }

  private static List<Path> english() throws IOException {
    return files().filter(WithoutExtensionIT::isEnglish).toList();
  }

  private static Stream<Path> files() throws IOException {
    try (Stream<Path> found = Files.walk(SHEETS)) {
      return found.filter(f -> f.toString().matches(".*\\.(ots|ods)")).sorted().toList().stream();
    }
  }

  private static String firstColumn(Office office, Path file) throws IOException {
    XComponent document = office.open(file);
    try {
      TestSheet sheet = TestSheet.firstOf(document);
      sheet.calculate();
      return Arrays.deepToString(sheet.data("A1:A6"));
    } finally {
      Office.discard(document);
    }
  }
}
