package org.setpower.templates;

import java.io.IOException;
import java.io.PrintStream;
import java.net.URISyntaxException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.setpower.office.Office;
import org.setpower.sheet.Translation;
import org.setpower.sheet.Words;

/** Draws every template in all languages, and the filled example of each, into a folder. */
public final class DrawSheets {
  private DrawSheets() {}

  /**
   * Arguments: the packed extension, the folder to draw into, whether it is a release. Draws
   * nothing where the last drawing had the same extension and the same declarations.
   */
  public static void main(String[] arguments) throws IOException {
    Path extension = Path.of(arguments[0]);
    Path folder = Path.of(arguments[1]);
    complete(arguments[2].equals("true"));
    Path mark = folder.resolve("drawn-from");
    String inputs = Fingerprint.of(extension) + Fingerprint.of(declarations());
    if (Files.exists(mark) && Files.readString(mark).equals(inputs)) {
      return;
    }
    Files.deleteIfExists(mark);
    try (Office office = Office.start(extension)) {
      for (Workbook workbook : Shelf.all()) {
        draw(office, workbook, Words.english(), folder);
        for (String language : Translation.LANGUAGES) {
          draw(office, workbook, Words.in(language, DrawSheets.class), folder);
        }
      }
    }
    Files.writeString(mark, inputs);
  }

  /** Says which texts stay English, and lets no release pass with them. */
  private static void complete(boolean release) {
    List<String> gaps = new ArrayList<>();
    for (String language : Translation.LANGUAGES) {
      Words words = Texts.asked(language);
      Set<String> missing = words.missing();
      if (!missing.isEmpty()) {
        gaps.add(
            "templates, words_%s.txt: %d of %d texts are missing: %s"
                .formatted(
                    language, missing.size(), words.asked().size(), String.join(" | ", missing)));
      }
    }
    gaps.forEach(gap -> System.err.println(release ? gap : gap.replaceFirst("(.{200}).+", "$1 …")));
    if (release && !gaps.isEmpty()) {
      throw new IllegalStateException("a release needs all texts");
    }
  }

  /** The jar or folder that this class and all declarations come from. */
  private static Path declarations() {
    try {
      return Path.of(DrawSheets.class.getProtectionDomain().getCodeSource().getLocation().toURI());
    } catch (URISyntaxException e) {
      throw new IllegalStateException(e);
    }
  }

  /** Draws the empty template, and the example in English, which is the template filled. */
  private static void draw(Office office, Workbook workbook, Words words, Path folder)
      throws IOException {
    Drawing drawing = Drawing.of(office, workbook.template(), words);
    new Filling(drawing).calculated();
    drawing.finishToFill();
    Path templates = folder.resolve("templates").resolve(words.language());
    office.store(
        drawing.document(),
        "calc8_template",
        templates.resolve(workbook.template().fileName() + ".ots"));
    if (words.isEnglish()) {
      drawing.takeUp();
      example(office, workbook, drawing, folder.resolve("examples"), System.out);
    }
    Office.discard(drawing.document());
  }

  /** Fills a drawn template; stores it as .ods and .pdf and prints its headline figures. */
  private static void example(
      Office office, Workbook workbook, Drawing drawing, Path folder, PrintStream out)
      throws IOException {
    Filling filling = new Filling(drawing);
    workbook.fill(filling);
    filling.calculated();
    drawing.properties(workbook.exampleTitle());
    drawing.finish();
    String name = exampleName(workbook);
    office.store(drawing.document(), "calc8", folder.resolve(name + ".ods"));
    office.store(drawing.document(), "calc_pdf_Export", folder.resolve(name + ".pdf"));
    out.println(workbook.exampleTitle());
    Results.lines(drawing.document()).forEach(line -> out.println("  " + line));
  }

  /** The file name of an example without its ending. */
  static String exampleName(Workbook workbook) {
    return workbook.template().fileName() + "-example";
  }
}
