package org.setpower.templates;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import com.sun.star.sheet.XCellRangeReferrer;
import com.sun.star.sheet.XNamedRanges;
import com.sun.star.table.CellContentType;
import com.sun.star.table.XCell;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.api.extension.ExtendWith;
import org.setpower.addin.SharedOffice;
import org.setpower.office.Office;
import org.setpower.templates.example.TemplateDefinition;
import org.setpower.templates.spec.TableBase;
import org.setpower.templates.spec.TableSpec;
import org.setpower.templates.uno.ExampleLoader;
import org.setpower.templates.uno.UnoAccess;
import org.setpower.templates.uno.WorkbookWriter;
import org.setpower.text.MessageCatalog;

/** The shipped templates in other languages, filled like the example, reckon and judge alike. */
@Tag("one-office")
@ExtendWith(SharedOffice.class)
class LanguagesIT {
  private static final Path SHEETS = Path.of("target/sheets");

  @TestFactory
  Stream<DynamicTest> figures_and_status_words_are_those_of_the_english_example(Office office) {
    return TemplateRegistry.all().stream()
        .flatMap(
            w ->
                MessageCatalog.LANGUAGES.stream()
                    .map(
                        l ->
                            DynamicTest.dynamicTest(
                                w.template().fileName() + " " + l, () -> check(office, w, l))));
  }

  private static void check(Office office, TemplateDefinition workbook, String language)
      throws IOException {
    String name = workbook.template().fileName();
    Path english = SHEETS.resolve("examples/" + name + "-example.ods");
    Path other = SHEETS.resolve("templates/" + language + "/" + name + ".ots");
    assumeTrue(Files.exists(other), "drawn with -Dsheet.languages=all only");
    MessageCatalog words = MessageCatalog.in(language, MessageCatalog.Speaker.SHEETS);
    try (TestWorkbook right = new TestWorkbook(office, english, workbook.template());
        TestWorkbook book = new TestWorkbook(office, other, workbook.template(), words)) {
      WorkbookWriter drawing = WorkbookWriter.over(book.document(), workbook.template(), words);
      workbook.fill(new ExampleLoader(drawing));
      right.calculated();
      book.calculated();
      assertThat(book.errors()).isEmpty();
      assertThat(status(book)).isEqualTo(status(right));
      assertThat(figures(book)).isEqualTo(figures(right));
    }
  }

  /** The headline figures that are numbers. */
  static Map<String, Double> figures(TestWorkbook book) {
    XNamedRanges names =
        UnoAccess.as(XNamedRanges.class, UnoAccess.get(book.document(), "NamedRanges"));
    Map<String, Double> figures = new TreeMap<>();
    for (String name : names.getElementNames()) {
      if (name.startsWith("Result_")) {
        Object range = UnoAccess.ask(() -> names.getByName(name));
        XCell cell =
            UnoAccess.ask(
                () ->
                    UnoAccess.as(XCellRangeReferrer.class, range)
                        .getReferredCells()
                        .getCellByPosition(0, 0));
        boolean isNumber =
            UnoAccess.get(cell, "FormulaResultType2")
                .equals(com.sun.star.sheet.FormulaResult.VALUE);
        if (cell.getType() == CellContentType.FORMULA && isNumber) {
          figures.put(name, Math.rint(cell.getValue() * 1e6) / 1e6);
        }
      }
    }
    return figures;
  }

  static List<Object> status(TestWorkbook book) {
    List<Object> words = new ArrayList<>();
    for (TableBase rows : book.template().tables()) {
      if (rows instanceof TableSpec table && table.status() != null) {
        words.add(table.status().heading() + book.values(table.status()));
      }
    }
    return words;
  }
}
