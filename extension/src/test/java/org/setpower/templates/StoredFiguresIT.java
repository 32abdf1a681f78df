package org.setpower.templates;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.api.extension.ExtendWith;
import org.setpower.addin.SharedOffice;
import org.setpower.office.Office;
import org.setpower.templates.spec.SheetSpec;
import org.setpower.templates.spec.WorkbookSpec;

/**
 * Every cell of every example, calculated again, shows what it was stored with. In the second
 * office this compares all formulas of the sheets with the office that drew them.
 */
@ExtendWith(SharedOffice.class)
class StoredFiguresIT {
  private static final Path EXAMPLES = Path.of("target/sheets/examples");
  private static final double NEAR = 1e-9;
  private static final int FEWEST = 500;

  @TestFactory
  Stream<DynamicTest> calculated_again_every_cell_is_as_stored(Office office) {
    return TemplateRegistry.all().stream()
        .map(
            w ->
                DynamicTest.dynamicTest(
                    w.template().fileName(), () -> compare(office, w.template())));
  }

  private static void compare(Office office, WorkbookSpec template) throws IOException {
    Path file = EXAMPLES.resolve(template.fileName() + "-example.ods");
    try (TestWorkbook book = new TestWorkbook(office, file, template)) {
      List<SheetSpec> tabs = template.tabs().stream().filter(t -> !t.isHidden()).toList();
      List<Object[][]> stored = tabs.stream().map(book::data).toList();
      book.calculated();
      List<String> differences = new ArrayList<>();
      for (int i = 0; i < tabs.size(); i++) {
        differences(tabs.get(i).name(), stored.get(i), book.data(tabs.get(i)), differences);
      }
      assertThat(differences).isEmpty();
      long filled =
          stored.stream()
              .flatMap(Arrays::stream)
              .flatMap(Arrays::stream)
              .filter(value -> !"".equals(value))
              .count();
      assertThat(filled).as("filled cells").isGreaterThan(FEWEST);
    }
  }

  private static void differences(
      String tab, Object[][] stored, Object[][] now, List<String> differences) {
    assertThat(now.length).isEqualTo(stored.length);
    for (int row = 0; row < stored.length; row++) {
      for (int column = 0; column < stored[row].length; column++) {
        if (!isSame(stored[row][column], now[row][column])) {
          differences.add(
              "%s, row %d, column %d: stored %s, calculated %s"
                  .formatted(tab, row + 1, column + 1, stored[row][column], now[row][column]));
        }
      }
    }
  }

  /** The office reads some empty texts that it stored as 0. */
  private static boolean isSame(Object stored, Object now) {
    if (now.equals("")) {
      return stored.equals("") || stored.equals(0.0);
    }
    return stored instanceof Double before && now instanceof Double after
        ? Math.abs(before - after) <= NEAR * Math.max(1, Math.abs(before))
        : stored.equals(now);
  }
}
