package org.setpower.command;

import static org.assertj.core.api.Assertions.assertThat;

import com.sun.star.awt.Key;
import com.sun.star.frame.XController;
import com.sun.star.frame.XModel;
import com.sun.star.task.XJobExecutor;
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

/** The window that adds a distro to a lighting power plan, with the keyboard and without eyes. */
@Tag("one-office")
class LightingWindowsIT {
  private static final Path EXAMPLE =
      Path.of("target/sheets/examples/lighting-power-plan-example.ods");

  private static Office office;
  private TestSheet supplies;

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
    supplies = TestSheet.named(office.open(EXAMPLE), "Sources & distro");
    XController controller = Uno.as(XModel.class, supplies.document()).getCurrentController();
    controller.getFrame().activate();
  }

  @AfterEach
  void close() {
    supplies.close();
  }

  private static ShownWindow window() throws Exception {
    return ShownWindow.open(
        office,
        () -> office.service(XJobExecutor.class, "org.setpower.Commands").trigger("distro"));
  }

  @Test
  void a_distro_is_asked_for_with_the_keyboard() throws Exception {
    ShownWindow window = window();
    assertThat(window.title()).isEqualTo("Add distro");
    assertThat(window.walk().stream().map(ShownWindow.Part::name))
        .containsExactly("Name", "Type", "Fed from", "Length (m)", "Cable size", "Add", "Cancel");
    window.press(Key.ESCAPE);
    window.isClosed();

    // the length has no usual value: nothing is written without it
    ShownWindow again = window();
    again.press(Key.RETURN);
    ShownWindow refused = again.followedBy();
    assertThat(refused.parts().stream().map(ShownWindow.Part::name))
        .anyMatch(n -> n.startsWith("Type the length of its cable."));
    refused.press(Key.RETURN);

    // what is typed stays for another try
    ShownWindow back = refused.followedBy();
    assertThat(back.title()).isEqualTo("Add distro");
    back.press(Key.ESCAPE);
    back.isClosed();
  }
}
