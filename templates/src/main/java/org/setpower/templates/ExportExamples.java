package org.setpower.templates;

import com.sun.star.beans.NamedValue;
import com.sun.star.lang.XComponent;
import com.sun.star.sheet.XCalculatable;
import com.sun.star.task.XJob;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import org.setpower.office.Office;
import org.setpower.templates.example.PlanTemplate;
import org.setpower.templates.uno.KeyFigureReader;
import org.setpower.templates.uno.UnoAccess;

/**
 * Opens every example in an office with the packed extension, recalculates it and stores it to work
 * in (.ods), to print (.pdf) and, with values only, to send to somebody without the extension
 * (.xlsx).
 */
public final class ExportExamples {
  private final Office office;
  private final Path folder;

  private ExportExamples(Office office, Path folder) {
    this.office = office;
    this.folder = folder;
  }

  /**
   * Arguments: the packed extension, the folder of the examples, the folder to store to; the
   * headline figures go to {@code headlines.txt} there.
   */
  public static void main(String[] arguments) throws IOException {
    Path folder = Files.createDirectories(Path.of(arguments[2]));
    try (Office office = Office.start(Path.of(arguments[0]));
        PrintStream headlines =
            new PrintStream(
                folder.resolve("headlines.txt").toFile(), StandardCharsets.UTF_8.name())) {
      ExportExamples demo = new ExportExamples(office, folder);
      for (PlanTemplate workbook : TemplateRegistry.plans()) {
        String name = BuildTemplates.exampleName(workbook.workbook().fileName());
        demo.show(name, workbook.exampleTitle(), Path.of(arguments[1]), headlines);
      }
    }
  }

  private void show(String name, String title, Path examples, PrintStream headlines)
      throws IOException {
    System.out.println(title);
    XComponent document = office.open(examples.resolve(name + ".ods"));
    UnoAccess.as(XCalculatable.class, document).calculateAll();
    office.store(document, "calc8", folder.resolve(name + ".ods"));
    office.store(document, "calc_pdf_Export", folder.resolve(name + ".pdf"));
    valuesOnly(document, name + ".xlsx");
    headlines.println(title);
    KeyFigureReader.lines(document).forEach(line -> headlines.println("  " + line));
    Office.discard(document);
  }

  /** Asks the extension itself for the copy, as its menu does. */
  private void valuesOnly(XComponent document, String name) throws IOException {
    Path there = office.newFolder().resolve("copy");
    XJob commands = office.service(XJob.class, "org.setpower.Commands");
    UnoAccess.ask(
        () ->
            commands.execute(
                new NamedValue[] {
                  new NamedValue("Command", "copy"),
                  new NamedValue("Document", document),
                  new NamedValue("formats", "xlsx"),
                  new NamedValue("to", office.address(there))
                }));
    Files.copy(
        there.resolveSibling("copy.xlsx"),
        folder.resolve(name),
        StandardCopyOption.REPLACE_EXISTING);
  }
}
