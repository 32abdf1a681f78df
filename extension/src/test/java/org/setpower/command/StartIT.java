package org.setpower.command;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import com.sun.star.deployment.PackageInformationProvider;
import java.io.IOException;
import java.net.URI;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.setpower.addin.SharedOffice;
import org.setpower.addin.TestSheet;
import org.setpower.office.Office;

/** An office that starts loads nothing of ours until somebody asks for it. */
class StartIT {
  @Test
  void our_code_is_loaded_by_the_first_call_and_not_before() throws IOException {
    assumeTrue(Files.isDirectory(Path.of("/proc/self/fd")), "open files are seen on Linux only");
    try (Office office = Office.start(SharedOffice.OXT)) {
      TestSheet sheet = TestSheet.firstOf(office.newSpreadsheet());
      sheet.put("A1", "=SUM(1;2)");
      assertThat(isOurCodeOpen(office)).isFalse();
      sheet.put("A2", "=ORG.SETPOWER.FUNCTIONS.CABLEDROP(\"2.5 mm²\";25;16;\"DC\")");
      assertThat(sheet.number("A2")).isPositive();
      assertThat(isOurCodeOpen(office)).isTrue();
    }
  }

  /** Whether a process of this machine holds the jar of that office's extension open. */
  private static boolean isOurCodeOpen(Office office) throws IOException {
    String folder =
        PackageInformationProvider.get(office.context()).getPackageLocation("org.setpower.sheets");
    String jar = Path.of(URI.create(folder)) + "/lib/set-power-sheets.jar";
    try (DirectoryStream<Path> processes = Files.newDirectoryStream(Path.of("/proc"), "[0-9]*")) {
      for (Path process : processes) {
        if (holds(process.resolve("fd"), jar)) {
          return true;
        }
      }
    }
    return false;
  }

  private static boolean holds(Path files, String name) {
    try (DirectoryStream<Path> open = Files.newDirectoryStream(files)) {
      for (Path file : open) {
        if (Files.readSymbolicLink(file).toString().endsWith(name)) {
          return true;
        }
      }
    } catch (IOException | java.nio.file.DirectoryIteratorException goneOrNotOurs) {
      return false;
    }
    return false;
  }
}
