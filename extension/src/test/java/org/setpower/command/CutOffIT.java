package org.setpower.command;

import static org.assertj.core.api.Assertions.assertThat;

import com.sun.star.frame.XStorable;
import com.sun.star.lang.XComponent;
import com.sun.star.sheet.XSpreadsheetDocument;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.time.Duration;
import java.util.HashMap;
import java.util.Map;
import java.util.Random;
import java.util.stream.Stream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.setpower.addin.SharedOffice;
import org.setpower.office.Office;
import org.setpower.uno.Uno;

/**
 * An office that is ended while it stores, exports, brings in or updates loses no file and leaves
 * none half written under a name that somebody looks for.
 */
@Tag("nightly")
class CutOffIT {
  private static final Path EXAMPLES = Path.of("target/sheets/examples");
  private static final int ROUNDS = 6;
  private static final int LONGEST = 3_000; // milliseconds until the end

  /** What an office does when it is ended. */
  private enum Work {
    STORE {
      @Override
      void in(Office office, XComponent document, Path folder) throws Exception {
        for (int i = 0; i < ROUNDS; i++) {
          Uno.as(XStorable.class, document).store();
        }
      }
    },
    EXPORT {
      @Override
      void in(Office office, XComponent document, Path folder) {
        CommandDriver.command(office, document, "client", "to", office.address(folder) + "/");
      }
    },
    BRING {
      @Override
      void in(Office office, XComponent document, Path folder) throws Exception {
        String from = office.address(folder.resolve(LIGHTING));
        CommandDriver.command(office, document, "bring", "file", from);
        Uno.as(XStorable.class, document).store();
      }
    },
    UPDATE {
      @Override
      void in(Office office, XComponent document, Path folder) throws Exception {
        OlderFile.make(document);
        CommandDriver.command(office, document, "update");
      }
    };

    abstract void in(Office office, XComponent document, Path folder) throws Exception;
  }

  private static final String LIGHTING = "lighting-power-plan-example.ods";

  private static Map<String, byte[]> files(Path folder) throws IOException {
    Map<String, byte[]> files = new HashMap<>();
    try (Stream<Path> all = Files.list(folder)) {
      for (Path file : all.filter(f -> f.toString().matches(".*\\.(ods|pdf|xlsx)")).toList()) {
        files.put(file.getFileName().toString(), Files.readAllBytes(file));
      }
    }
    return files;
  }

  @ParameterizedTest
  @CsvSource({"STORE", "EXPORT", "BRING", "UPDATE"})
  void no_file_is_lost_or_half_written(Work work) throws Exception {
    Random random = new Random(work.ordinal());
    for (int round = 0; round < ROUNDS; round++) {
      Path safe = Files.createTempDirectory("cut-off");
      try (Office office = Office.start(SharedOffice.OXT)) {
        Path folder = office.newFolder();
        String name = "rental-quote-example.ods";
        Files.copy(EXAMPLES.resolve(LIGHTING), folder.resolve(LIGHTING));
        XComponent document = office.open(EXAMPLES.resolve(name));
        Uno.as(XStorable.class, document)
            .storeAsURL(
                office.address(folder.resolve(name)),
                Uno.properties(Uno.property("FilterName", "calc8")));
        Thread working =
            new Thread(
                () -> {
                  try {
                    work.in(office, document, folder);
                  } catch (Exception cutOff) {
                    // that is what the test does
                  }
                });
        Map<String, byte[]> before = files(folder);
        working.start();
        Thread.sleep(random.nextInt(LONGEST));
        office.kill();
        working.join(Duration.ofSeconds(60).toMillis());
        Map<String, byte[]> after = files(folder);
        assertThat(after.keySet()).containsAll(before.keySet());
        assertThat(after.get(LIGHTING)).isEqualTo(before.get(LIGHTING));
        for (String file : after.keySet()) {
          Files.copy(folder.resolve(file), safe.resolve(file), StandardCopyOption.REPLACE_EXISTING);
        }
      }
      opens(safe);
    }
  }

  /** What is there can be opened, whole: the office ends a package with its list of parts. */
  private static void opens(Path folder) throws Exception {
    try (Office office = Office.start(SharedOffice.OXT)) {
      try (Stream<Path> all = Files.list(folder)) {
        for (Path file : all.toList()) {
          if (file.toString().endsWith(".pdf")) {
            assertThat(
                    new String(
                        Files.readAllBytes(file), java.nio.charset.StandardCharsets.ISO_8859_1))
                .as(file.toString())
                .contains("%%EOF");
            continue;
          }
          XComponent document = office.open(file);
          assertThat(Uno.as(XSpreadsheetDocument.class, document).getSheets().getElementNames())
              .as(file.toString())
              .isNotEmpty();
          Office.discard(document);
        }
      }
    }
  }
}
