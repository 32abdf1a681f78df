package org.setpower.templates;

import java.io.IOException;
import java.io.PrintStream;
import java.net.URISyntaxException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.setpower.office.Office;

/** Draws every template, and the filled example of each, into a folder. */
public final class DrawSheets {
  private DrawSheets() {}

  /**
   * Arguments: the packed extension, the folder to draw into. Draws nothing where the last drawing
   * had the same extension and the same declarations.
   */
  public static void main(String[] arguments) throws IOException {
    Path extension = Path.of(arguments[0]);
    Path folder = Path.of(arguments[1]);
    Path mark = folder.resolve("drawn-from");
    String inputs = Fingerprint.of(extension) + Fingerprint.of(declarations());
    if (Files.exists(mark) && Files.readString(mark).equals(inputs)) {
      return;
    }
    Files.deleteIfExists(mark);
    try (Office office = Office.start(extension)) {
      for (Workbook workbook : Shelf.all()) {
        template(office, workbook, folder.resolve("templates"));
        example(office, workbook, folder.resolve("examples"), System.out);
      }
    }
    Files.writeString(mark, inputs);
  }

  /** The jar or folder that this class and all declarations come from. */
  private static Path declarations() {
    try {
      return Path.of(DrawSheets.class.getProtectionDomain().getCodeSource().getLocation().toURI());
    } catch (URISyntaxException e) {
      throw new IllegalStateException(e);
    }
  }

  /** Draws the empty template; gives its file. */
  public static Path template(Office office, Workbook workbook, Path folder) throws IOException {
    Path file = folder.resolve(workbook.template().fileName() + ".ots");
    Drawing drawing = Drawing.of(office, workbook.template());
    new Filling(drawing).calculated();
    drawing.finishToFill();
    office.store(drawing.document(), "calc8_template", file);
    Office.discard(drawing.document());
    return file;
  }

  /** Draws the filled example as .ods and .pdf and prints its headline figures; gives the .ods. */
  public static Path example(Office office, Workbook workbook, Path folder, PrintStream out)
      throws IOException {
    Path file = folder.resolve(exampleName(workbook) + ".ods");
    Drawing drawing = Drawing.of(office, workbook.template());
    Filling filling = new Filling(drawing);
    workbook.fill(filling);
    filling.calculated();
    drawing.properties(workbook.exampleTitle());
    drawing.finish();
    office.store(drawing.document(), "calc8", file);
    office.store(
        drawing.document(), "calc_pdf_Export", folder.resolve(exampleName(workbook) + ".pdf"));
    out.println(workbook.exampleTitle());
    Results.lines(drawing.document()).forEach(line -> out.println("  " + line));
    Office.discard(drawing.document());
    return file;
  }

  /** The file name of an example without its ending. */
  static String exampleName(Workbook workbook) {
    return workbook.template().fileName() + "-example";
  }
}
