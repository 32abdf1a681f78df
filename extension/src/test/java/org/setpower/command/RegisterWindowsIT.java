package org.setpower.command;

import static org.assertj.core.api.Assertions.assertThat;

import com.sun.star.awt.Key;
import com.sun.star.frame.XController;
import com.sun.star.frame.XModel;
import com.sun.star.sheet.XSpreadsheetDocument;
import com.sun.star.task.XJobExecutor;
import com.sun.star.view.XSelectionSupplier;
import java.io.IOException;
import java.nio.file.Path;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.setpower.addin.SharedOffice;
import org.setpower.addin.TestSheet;
import org.setpower.office.Office;
import org.setpower.uno.Uno;

/** The windows of the battery register's commands, with the keyboard and without eyes. */
@Tag("one-office")
class RegisterWindowsIT {
  private static final Path EXAMPLE =
      Path.of("target/sheets/examples/battery-register-example.ods");

  private static Office office;
  private TestSheet batteries;

  @BeforeAll
  static void start() throws IOException {
    office = Office.startWithWindows(SharedOffice.OXT);
  }

  @AfterAll
  static void end() {
    office.close();
  }

  @BeforeEach
  void open() throws IOException {
    batteries = TestSheet.named(office.open(EXAMPLE), "Batteries");
    controller().getFrame().activate();
  }

  @AfterEach
  void close() {
    batteries.close();
  }

  private XController controller() {
    return Uno.as(XModel.class, batteries.document()).getCurrentController();
  }

  private static ShownWindow open(String command) throws Exception {
    return ShownWindow.open(
        office, () -> office.service(XJobExecutor.class, "org.setpower.Commands").trigger(command));
  }

  private boolean isVisible(String tab) throws Exception {
    Object sheet =
        Uno.as(XSpreadsheetDocument.class, batteries.document()).getSheets().getByName(tab);
    return (Boolean) Uno.get(sheet, "IsVisible");
  }

  @Test
  void a_hidden_tab_is_shown_with_enter() throws Exception {
    ShownWindow window = open("tabs");
    assertThat(window.walk().stream().map(ShownWindow.Part::name))
        .containsExactly("Hidden tabs", "Show", "Cancel");
    window.press(Key.ESCAPE);
    window.isClosed();
    assertThat(isVisible("Stocktake list")).isFalse();

    ShownWindow again = open("tabs");
    again.press(Key.RETURN);
    again.isClosed();
    assertThat(isVisible("Stocktake list")).isTrue();
    assertThat(isVisible("Incidents")).isFalse();
    assertThat(isVisible("Plan")).isFalse();
  }

  @Test
  void an_inspection_without_a_role_is_refused() throws Exception {
    Uno.as(XSelectionSupplier.class, controller()).select(batteries.range("B8:B20"));
    ShownWindow window = open("inspect");
    assertThat(window.walk().stream().map(ShownWindow.Part::name))
        .containsExactly("Day of the inspection", "Role, no name", "Mark", "Cancel");
    window.press(Key.ESCAPE);
    window.isClosed();

    ShownWindow again = open("inspect");
    again.press(Key.RETURN);
    ShownWindow refused = again.followedBy();
    assertThat(refused.parts().stream().map(ShownWindow.Part::name))
        .anyMatch(n -> n.startsWith("Type the day of the inspection and the role"));
    refused.press(Key.RETURN);
    refused.isClosed();
  }
}
