package org.setpower.addin;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import java.util.zip.ZipOutputStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.setpower.command.CommandDriver;
import org.setpower.office.Office;

/**
 * An office whose Java is too old: here the extension's classes say that they are for a Java far in
 * the future, and this machine's Java is the one that cannot load them.
 */
class UnsupportedJavaIT {
  private static final int MAJOR = 7; // the place of the version in a class file
  private static final byte NOT_YET = 120;

  @Test
  void cells_say_which_java_is_needed_and_sheets_show_their_notice(@TempDir Path folder)
      throws IOException {
    try (Office office = Office.start(tooNew(folder))) {
      TestSheet sheet = TestSheet.firstOf(office.newSpreadsheet());
      sheet.put("A1", "=ORG.SETPOWER.FUNCTIONS.CABLEDROP(\"2.5 mm²\";25;16;\"DC\")");
      assertThat(sheet.shown("A1")).startsWith("Java 17 is needed, here is ");
      sheet.put("A2", "=ISERROR(ORG.SETPOWER.FUNCTIONS.SHEETVERSION())");
      assertThat(sheet.number("A2")).isEqualTo(1);
    }
  }

  @Test
  void cells_say_it_in_the_language_of_the_office(@TempDir Path folder) throws Exception {
    try (Office office = Office.start(tooNew(folder))) {
      CommandDriver.speak(office, "fr");
      TestSheet sheet = TestSheet.firstOf(office.newSpreadsheet());
      sheet.put("A1", "=ORG.SETPOWER.FUNCTIONS.CABLEDROP(\"2.5 mm²\";25;16;\"DC\")");
      assertThat(sheet.shown("A1")).startsWith("Il faut Java 17, ici c’est ");
    }
  }

  private static Path tooNew(Path folder) throws IOException {
    Path tooNew = folder.resolve("too-new.oxt");
    try (InputStream in = Files.newInputStream(SharedOffice.OXT);
        OutputStream out = Files.newOutputStream(tooNew)) {
      forLaterJava(in, out);
    }
    return tooNew;
  }

  /** The same archive with classes that say so; jars inside likewise. */
  private static void forLaterJava(InputStream from, OutputStream to) throws IOException {
    ZipInputStream in = new ZipInputStream(from);
    ZipOutputStream out = new ZipOutputStream(to);
    for (ZipEntry entry = in.getNextEntry(); entry != null; entry = in.getNextEntry()) {
      byte[] bytes = in.readAllBytes();
      String name = entry.getName();
      if (name.endsWith("set-power-sheets.jar")) {
        ByteArrayOutputStream jar = new ByteArrayOutputStream();
        forLaterJava(new ByteArrayInputStream(bytes), jar);
        bytes = jar.toByteArray();
      } else if (name.endsWith(".class") && isOfJava17(bytes)) {
        bytes[MAJOR] = NOT_YET;
      }
      out.putNextEntry(new ZipEntry(name));
      out.write(bytes);
      out.closeEntry();
    }
    out.finish();
  }

  private static boolean isOfJava17(byte[] bytes) {
    return bytes[MAJOR] == 61;
  }
}
