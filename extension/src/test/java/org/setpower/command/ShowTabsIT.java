package org.setpower.command;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import com.sun.star.document.XUndoManager;
import com.sun.star.document.XUndoManagerSupplier;
import com.sun.star.lang.XComponent;
import com.sun.star.table.CellContentType;
import com.sun.star.util.CellProtection;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.setpower.addin.SharedOffice;
import org.setpower.addin.TestSheet;
import org.setpower.office.Office;
import org.setpower.uno.Uno;

/**
 * Hidden tabs are shown one after another, twice in a row, and hidden again, with rows added and
 * removed in between: an office once ended in such a row of steps.
 */
@Tag("one-office")
class ShowTabsIT {
  private static final int ROUNDS = 2;

  private static Office office;

  @BeforeAll
  static void start() throws IOException {
    office = Office.startWithWindows(SharedOffice.OXT);
  }

  @AfterAll
  static void end() {
    office.close();
  }

  private static List<String> hidden(XComponent document) {
    return CommandDriver.command(office, document, "tabs").lines().toList();
  }

  /** The first row of the table in which something is typed, counted from 1. */
  private static int firstFilled(TestSheet sheet) throws Exception {
    int row = 5;
    while (sheet.cell("B" + row).getType() == CellContentType.EMPTY
        || ((CellProtection) Uno.get(sheet.cell("B" + row), "CellProtection")).IsLocked) {
      row++;
    }
    return row;
  }

  private static void show(XComponent document, String tab) throws Exception {
    assertThat(CommandDriver.command(office, document, "tabs", "tab", tab)).contains(tab);
    assertThat(Uno.get(TestSheet.named(document, tab).sheet(), "IsVisible")).isEqualTo(true);
  }

  @ParameterizedTest
  @ValueSource(strings = {"battery-travel-list Batteries", "battery-register Batteries"})
  void tabs_come_and_go_and_the_office_stays(String words) throws Exception {
    String name = words.substring(0, words.indexOf(' '));
    String table = words.substring(words.indexOf(' ') + 1);
    Path example = Path.of("target/sheets/examples/" + name + "-example.ods");
    TestSheet sheet = TestSheet.named(office.open(example), table);
    XUndoManager steps = Uno.as(XUndoManagerSupplier.class, sheet.document()).getUndoManager();
    try {
      List<String> tabs = hidden(sheet.document());
      assertThat(tabs).hasSizeGreaterThan(1).doesNotContain("Plan");
      int filled = firstFilled(sheet);
      for (int round = 0; round < ROUNDS; round++) {
        for (String tab : tabs) {
          show(sheet.document(), tab);
          assertThatThrownBy(
                  () -> CommandDriver.command(office, sheet.document(), "tabs", "tab", tab))
              .hasMessageContaining("There is no hidden tab");
          String cell = table + ".B" + filled;
          CommandDriver.command(office, sheet.document(), "add", "cell", cell, "rows", "1");
          cell = table + ".B" + (filled + 1);
          CommandDriver.command(office, sheet.document(), "remove", "cell", cell, "rows", "1");
          steps.undo();
          steps.undo();
        }
        assertThat(CommandDriver.command(office, sheet.document(), "tabs")).isEmpty();
        CommandDriver.command(office, sheet.document(), "fit");
        while (steps.isUndoPossible()) {
          steps.undo();
        }
        for (String tab : tabs) {
          Uno.set(TestSheet.named(sheet.document(), tab).sheet(), "IsVisible", false);
        }
        assertThat(hidden(sheet.document())).isEqualTo(tabs);
      }
    } finally {
      sheet.close();
    }
  }
}
