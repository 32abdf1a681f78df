package org.setpower.templates;

import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import org.setpower.office.Office;

/** Fills every sheet with the scenario, in an office with the packed extension. */
public final class Demo {
  private Demo() {}

  /**
   * Arguments: the packed extension, the folder for the filled sheets and {@code headlines.txt}.
   */
  public static void main(String[] arguments) throws IOException {
    Path folder = Files.createDirectories(Path.of(arguments[1]));
    try (Office office = Office.start(Path.of(arguments[0]));
        PrintStream headlines =
            new PrintStream(
                folder.resolve("headlines.txt").toFile(), StandardCharsets.UTF_8.name())) {
      for (Workbook workbook : Shelf.all()) {
        System.out.println(workbook.exampleTitle());
        DrawSheets.example(office, workbook, folder, headlines);
      }
    }
  }
}
