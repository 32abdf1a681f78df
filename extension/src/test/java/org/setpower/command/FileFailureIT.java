package org.setpower.command;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import com.sun.star.frame.XDesktop;
import com.sun.star.frame.XStorable;
import com.sun.star.lang.XComponent;
import com.sun.star.sheet.FillDirection;
import com.sun.star.sheet.XCellSeries;
import com.sun.star.uno.UnoRuntime;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.time.Duration;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.setpower.addin.SharedOffice;
import org.setpower.addin.TestSheet;
import org.setpower.office.Office;
import org.setpower.uno.Uno;

/** Files that cannot be written, and an office that ends in the middle. */
@ExtendWith(SharedOffice.class)
class FileFailureIT {
  private static final Path EXAMPLES = Path.of("target/sheets/examples");

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

  /** What is brought in or taken over stands in the document: no file is written for it. */
  @ParameterizedTest
  @ValueSource(strings = {"bring", "update"})
  @Tag("one-office")
  void bringing_in_and_updating_need_no_room_on_the_disk(String command) throws Exception {
    Path small = Files.createDirectory(folder.resolve("small"));
    assumeTrue(
        run("mount", "-t", "tmpfs", "-o", "size=400k,mode=777", "tmpfs", small.toString()),
        "only where mounting is allowed");
    XComponent document = office.open(EXAMPLES.resolve("rental-quote-example.ods"));
    try {
      Path source = small.resolve("lighting.ods");
      Files.copy(EXAMPLES.resolve("lighting-power-plan-example.ods"), source);
      Path file = small.resolve("quote.ods");
      if (command.equals("update")) {
        OlderFile.make(document);
      }
      UnoRuntime.queryInterface(XStorable.class, document)
          .storeAsURL(office.address(file), Uno.properties(Uno.property("FilterName", "calc8")));
      byte[] before = Files.readAllBytes(file);
      fill(small);
      List<String> names = names(small);
      if (command.equals("update")) {
        assertThat(CommandDriver.command(office, document, "update"))
            .contains("The older file was not changed.");
        Office.discard(
            office.service(XDesktop.class, "com.sun.star.frame.Desktop").getCurrentComponent());
      } else {
        String from = office.address(source);
        assertThat(CommandDriver.command(office, document, "bring", "file", from))
            .contains("(Lighting power plan");
      }
      assertThat(Files.readAllBytes(file)).isEqualTo(before);
      assertThat(names(small)).isEqualTo(names);
    } finally {
      Office.discard(document);
      run("umount", small.toString());
    }
  }

  /** Writes until the disk is full. */
  private static void fill(Path disk) throws IOException {
    try (OutputStream out = Files.newOutputStream(disk.resolve("rest"))) {
      byte[] block = new byte[4096];
      for (int i = 0; i < 1_000; i++) {
        out.write(block);
      }
    } catch (IOException full) {
      assertThat(disk.toFile().getUsableSpace()).isLessThan(4096);
      return;
    }
    throw new AssertionError("the disk is not full");
  }

  private static boolean run(String... command) throws IOException, InterruptedException {
    return new ProcessBuilder(command).inheritIO().start().waitFor() == 0;
  }
}
