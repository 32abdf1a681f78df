package org.setpower.templates;

import com.sun.star.beans.NamedValue;
import com.sun.star.lang.XComponent;
import com.sun.star.task.XJob;
import java.io.IOException;
import java.io.PrintStream;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Queue;
import java.util.Set;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.ConcurrentLinkedQueue;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.setpower.office.Office;
import org.setpower.templates.example.ExampleTables;
import org.setpower.templates.example.PlanTemplate;
import org.setpower.templates.uno.KeyFigureReader;
import org.setpower.templates.uno.PlanFiller;
import org.setpower.templates.uno.PlanWriter;
import org.setpower.templates.uno.UnoAccess;
import org.setpower.text.MessageCatalog;

/** Draws every template in all languages, and the filled example of each, into a folder. */
public final class BuildTemplates {
  /** How many offices draw at a time. */
  private static final int OFFICES = 2;

  private BuildTemplates() {}

  /** Draws a workbook in the language of some words into a folder. */
  @FunctionalInterface
  private interface Drawer {
    void draw(Office office, MessageCatalog words, Path folder) throws IOException;
  }

  /**
   * A template to draw.
   *
   * @param name its file name without the ending
   * @param words in which language; in English its example is drawn too
   * @param mark a file that says from what it was drawn last
   * @param inputs what it is drawn from
   * @param drawer draws it into a folder
   */
  private record Sheet(String name, MessageCatalog words, Path mark, String inputs, Drawer drawer) {
    boolean isDrawn() {
      try {
        return Files.exists(mark) && Files.readString(mark).equals(inputs);
      } catch (IOException e) {
        throw new UncheckedIOException(e);
      }
    }
  }

  /**
   * Arguments: the packed extension, the folder to draw into, whether it is a release, which
   * languages besides English ("all", or none). Draws only what has changed: a workbook in English
   * with the extension, its own declarations and what all workbooks share; in another language,
   * where there is no example, with what stands on the sheet or the way it is drawn. What is out of
   * date and not to be drawn goes.
   */
  public static void main(String[] arguments) throws IOException {
    Path extension = Path.of(arguments[0]);
    Path folder = Path.of(arguments[1]);
    boolean release = arguments[2].equals("true");
    boolean all = release || arguments[3].equals("all");
    complete(release);
    List<Sheet> sheets = new ArrayList<>();
    int left = 0;
    List<Sheet> declared = sheets(extension, folder);
    removeOthers(folder, declared.stream().map(Sheet::name).collect(Collectors.toSet()));
    for (Sheet sheet : declared) {
      if (!sheet.isDrawn()) {
        Files.deleteIfExists(sheet.mark);
        Files.deleteIfExists(file(sheet.name, sheet.words, folder));
        if (all || sheet.words.isKey()) {
          sheets.add(sheet);
        } else {
          left++;
        }
      }
    }
    if (left > 0) {
      System.out.println(
          left + " templates in other languages are left out: -Dsheet.languages=all draws them");
    }
    if (sheets.isEmpty()) {
      return;
    }
    draw(sheets, extension, folder);
  }

  /** Removes what earlier builds drew of workbooks that are declared no more: it would ship. */
  static void removeOthers(Path folder, Set<String> names) throws IOException {
    if (!Files.exists(folder)) {
      return;
    }
    try (Stream<Path> files = Files.walk(folder)) {
      for (Path file : files.filter(Files::isRegularFile).toList()) {
        boolean mark = file.startsWith(folder.resolve("marks"));
        String name = (mark ? file.getParent() : file).getFileName().toString();
        if (!names.contains(name.replaceFirst("(-example)?\\.(ots|ods|pdf)$", ""))) {
          Files.delete(file);
        }
      }
    }
  }

  /** Shares out the workbooks among the offices; each draws one in all its languages. */
  private static void draw(List<Sheet> sheets, Path extension, Path folder) throws IOException {
    Queue<List<Sheet>> waiting = new ConcurrentLinkedQueue<>(byWorkbook(sheets));
    List<CompletableFuture<Void>> offices =
        Stream.generate(() -> CompletableFuture.runAsync(() -> draw(waiting, extension, folder)))
            .limit(Math.min(OFFICES, waiting.size()))
            .toList();
    offices.forEach(CompletableFuture::join);
  }

  private static Collection<List<Sheet>> byWorkbook(List<Sheet> sheets) {
    return sheets.stream()
        .collect(Collectors.groupingBy(Sheet::name, LinkedHashMap::new, Collectors.toList()))
        .values();
  }

  /** Draws in one office as long as a workbook waits. */
  private static void draw(Queue<List<Sheet>> waiting, Path extension, Path folder) {
    try (Office office = Office.start(extension)) {
      for (List<Sheet> sheets = waiting.poll(); sheets != null; sheets = waiting.poll()) {
        for (Sheet sheet : sheets) {
          sheet.drawer.draw(office, sheet.words, folder);
          Files.createDirectories(sheet.mark.getParent());
          Files.writeString(sheet.mark, sheet.inputs);
        }
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static Path file(String name, MessageCatalog words, Path folder) {
    return folder.resolve("templates").resolve(words.tag()).resolve(name + ".ots");
  }

  private static List<Sheet> sheets(Path extension, Path folder) throws IOException {
    List<Sheet> sheets = new ArrayList<>();
    for (PlanTemplate workbook : TemplateRegistry.plans()) {
      String name = workbook.workbook().fileName();
      DrawingInputs inputs = new DrawingInputs(workbook);
      String packed = Fingerprint.of(extension, inputs::work);
      String own = Fingerprint.ofBeside(BuildTemplates.class, inputs::make);
      String linked = Fingerprint.of(ExampleTables.linked(workbook.workbook().model()));
      Drawer draws = (office, words, to) -> draw(office, workbook, words, to);
      add(
          sheets,
          name,
          folder,
          packed + own + linked,
          draws,
          w -> PlanTextCollector.ask(workbook.workbook(), w));
    }
    return sheets;
  }

  /** Adds a workbook in all languages. */
  private static void add(
      List<Sheet> sheets,
      String name,
      Path folder,
      String english,
      Drawer drawer,
      Function<MessageCatalog, String> texts)
      throws IOException {
    String shared = Fingerprint.ofBeside(BuildTemplates.class, DrawingInputs::draw);
    Path marks = folder.resolve("marks").resolve(name);
    sheets.add(
        new Sheet(
            name,
            MessageCatalog.english(),
            marks.resolve(MessageCatalog.ENGLISH),
            english,
            drawer));
    for (String locale : MessageCatalog.files()) {
      MessageCatalog words = MessageCatalog.in(locale, MessageCatalog.Speaker.SHEETS);
      String inputs = shared + Fingerprint.of(texts.apply(words));
      sheets.add(new Sheet(name, words, marks.resolve(locale), inputs, drawer));
    }
  }

  /** Says which texts stay English, and lets no release pass with them. */
  private static void complete(boolean release) {
    List<String> gaps = new ArrayList<>();
    for (String language : MessageCatalog.LANGUAGES) {
      MessageCatalog words = PlanTextCollector.asked(language);
      Set<String> missing = words.missing();
      if (!missing.isEmpty()) {
        gaps.add(
            "sheets, %s.po: %d of %d texts are missing: %s"
                .formatted(
                    language, missing.size(), words.asked().size(), String.join(" | ", missing)));
      }
    }
    gaps.forEach(gap -> System.err.println(release ? gap : gap.replaceFirst("(.{200}).+", "$1 …")));
    if (release && !gaps.isEmpty()) {
      throw new IllegalStateException("a release needs all texts");
    }
  }

  /** Stores an example as .ods and .pdf and prints its headline figures. */
  private static void example(
      Office office, XComponent document, String title, Path file, PrintStream out)
      throws IOException {
    fitPrint(office, document);
    store(office, document, "calc8", Path.of(file + ".ods"));
    office.store(document, "calc_pdf_Export", Path.of(file + ".pdf"));
    out.println(title + "\n  " + String.join("\n  ", KeyFigureReader.lines(document)));
  }

  /** Draws the empty template, and the example in English, which is the template filled. */
  private static void draw(Office office, PlanTemplate workbook, MessageCatalog words, Path folder)
      throws IOException {
    String name = workbook.workbook().fileName();
    PlanWriter drawing = PlanWriter.of(office, workbook.workbook(), words);
    new PlanFiller(drawing).initial();
    drawing.finish();
    store(office, drawing.document(), "calc8_template", file(name, words, folder));
    if (words.isKey()) {
      drawing.reopen();
      new PlanFiller(drawing).example();
      drawing.properties(workbook.exampleTitle());
      drawing.finish();
      Path example = folder.resolve("examples").resolve(exampleName(name));
      example(office, drawing.document(), workbook.exampleTitle(), example, System.out);
    }
    Office.discard(drawing.document());
  }

  private static void store(Office office, XComponent document, String filter, Path file)
      throws IOException {
    office.store(document, filter, file);
    ZipRecompressor.tightly(file);
  }

  /** Asks the extension itself to print no blank rows, as its menu does. */
  private static void fitPrint(Office office, XComponent document) {
    XJob commands = office.service(XJob.class, "org.setpower.Commands");
    UnoAccess.ask(
        () ->
            commands.execute(
                new NamedValue[] {
                  new NamedValue("Command", "fit"), new NamedValue("Document", document)
                }));
  }

  /** The file name of an example without its ending. */
  static String exampleName(String fileName) {
    return fileName + "-example";
  }
}
