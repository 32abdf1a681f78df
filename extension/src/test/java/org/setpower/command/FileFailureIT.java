package org.setpower.command;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import com.sun.star.frame.XStorable;
import com.sun.star.sheet.FillDirection;
import com.sun.star.sheet.XCellSeries;
import com.sun.star.uno.UnoRuntime;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.time.Duration;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.setpower.addin.SharedOffice;
import org.setpower.addin.TestSheet;
import org.setpower.office.Office;
import org.setpower.uno.Uno;

/** Files that cannot be written, and an office that ends in the middle. */
@ExtendWith(SharedOffice.class)
class FileFailureIT {
  private Office office;
  private TestSheet sheet;
  private Path folder;

  @BeforeEach
  void open(Office shared) throws IOException {
    office = shared;
    folder = office.newFolder();
    sheet = longSheet(office);
  }

  @AfterEach
  void close() {
    sheet.close();
  }

  private static TestSheet longSheet(Office office) throws IOException {
    TestSheet sheet = TestSheet.firstOf(office.newSpreadsheet());
    sheet.put("A1", 25).put("A2", "=A1+0.01");
    sheet.put("B1", "=ORG.SETPOWER.FUNCTIONS.CABLEDROP(\"2.5 mm²\";A1;16;\"DC\")");
    UnoRuntime.queryInterface(XCellSeries.class, sheet.range("A2:A10000"))
        .fillAuto(FillDirection.TO_BOTTOM, 1);
    UnoRuntime.queryInterface(XCellSeries.class, sheet.range("B1:B10000"))
        .fillAuto(FillDirection.TO_BOTTOM, 1);
    return sheet;
  }

  private static String copy(Office office, TestSheet sheet, Path to) {
    return CommandDriver.command(
        office, sheet.document(), "copy", "formats", "ods,xlsx,pdf", "to", office.address(to));
  }

  private static List<String> names(Path folder) throws IOException {
    try (Stream<Path> files = Files.list(folder)) {
      return files.map(f -> f.getFileName().toString()).sorted().toList();
    }
  }

  @Test
  void an_office_that_is_cut_off_leaves_the_document_and_no_half_file_under_its_name()
      throws Exception {
    try (Office doomed = Office.start(SharedOffice.OXT)) {
      Path place = doomed.newFolder();
      Path original = place.resolve("plan.ods");
      TestSheet plan = longSheet(doomed);
      UnoRuntime.queryInterface(XStorable.class, plan.document())
          .storeAsURL(
              doomed.address(original), Uno.properties(Uno.property("FilterName", "calc8")));
      byte[] before = Files.readAllBytes(original);
      Thread copying = new Thread(() -> copy(doomed, plan, place.resolve("copy")));
      copying.setUncaughtExceptionHandler((thread, cutOff) -> {});
      copying.start();
      waitForPart(place);
      doomed.kill();
      copying.join(Duration.ofSeconds(60).toMillis());
      assertThat(names(place)).doesNotContain("copy.ods", "copy.xlsx", "copy.pdf");
      assertThat(Files.readAllBytes(original)).isEqualTo(before);
    }
  }

  private static void waitForPart(Path place) throws Exception {
    long until = System.nanoTime() + Duration.ofSeconds(120).toNanos();
    while (names(place).stream().noneMatch(n -> n.endsWith(".part"))) {
      assertThat(System.nanoTime()).as("a file is begun in time").isLessThan(until);
      Thread.sleep(5);
    }
  }

  @Test
  void a_folder_that_may_not_be_written_to_is_told() throws Exception {
    Files.setPosixFilePermissions(folder, PosixFilePermissions.fromString("r-xr-xr-x"));
    assertThatThrownBy(() -> copy(office, sheet, folder.resolve("copy")))
        .hasMessageContaining("may you write into it")
        .hasMessageContaining("Nothing was changed");
    assertThat(names(folder)).isEmpty();
  }

  @Test
  void a_file_that_is_there_stays_when_the_disk_is_full() throws Exception {
    Path small = Files.createDirectory(folder.resolve("small"));
    assumeTrue(
        run("mount", "-t", "tmpfs", "-o", "size=96k,mode=777", "tmpfs", small.toString()),
        "only where mounting is allowed");
    try {
      Path there = Files.writeString(small.resolve("copy.ods"), "what was there");
      assertThatThrownBy(() -> copy(office, sheet, small.resolve("copy")))
          .hasMessageContaining("is there room?");
      assertThat(names(small)).containsExactly("copy.ods");
      assertThat(there).hasContent("what was there");
    } finally {
      run("umount", small.toString());
    }
  }

  private static boolean run(String... command) throws IOException, InterruptedException {
    return new ProcessBuilder(command).inheritIO().start().waitFor() == 0;
  }
}
