package org.setpower.addin;

import static org.assertj.core.api.Assertions.assertThat;

import com.sun.star.lang.XComponent;
import com.sun.star.sheet.XCalculatable;
import com.sun.star.uno.UnoRuntime;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.api.extension.ExtendWith;
import org.setpower.base.ReferenceTable;
import org.setpower.office.Office;
import org.setpower.templates.TemplateRegistry;
import org.setpower.templates.uno.KeyFigureReader;

/**
 * The figures on the result page of each filled example, opened and worked out anew by an office,
 * against figures worked out without this project ({@code results/<template>.csv}).
 */
@ExtendWith(SharedOffice.class)
class TemplatesIT {
  private static final Path EXAMPLES = Path.of("target/sheets/examples");

  @TestFactory
  Stream<DynamicTest> the_result_page_shows_what_was_worked_out_by_hand(Office office) {
    return TemplateRegistry.plans().stream()
        .map(w -> w.workbook().fileName())
        .map(
            name ->
                DynamicTest.dynamicTest(
                    name, () -> assertThat(shown(office, name)).isEqualTo(expected(name))));
  }

  private static Map<String, String> shown(Office office, String name) throws IOException {
    XComponent document = office.open(EXAMPLES.resolve(name + "-example.ods"));
    try {
      UnoRuntime.queryInterface(XCalculatable.class, document).calculateAll();
      return KeyFigureReader.of(document);
    } finally {
      Office.discard(document);
    }
  }

  private static Map<String, String> expected(String name) {
    Map<String, String> figures = new TreeMap<>();
    String resource = "/results/" + name + ".csv";
    try (InputStream in = TemplatesIT.class.getResourceAsStream(resource)) {
      assertThat(in).as("expected figures in " + resource).isNotNull();
      for (CSVRecord row :
          ReferenceTable.FORMAT.parse(new InputStreamReader(in, StandardCharsets.UTF_8))) {
        figures.put(row.get("figure"), row.get("value"));
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return figures;
  }
}
