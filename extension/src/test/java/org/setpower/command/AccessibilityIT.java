package org.setpower.command;

import static org.assertj.core.api.Assertions.assertThat;

import com.sun.star.awt.Key;
import com.sun.star.frame.XDesktop;
import com.sun.star.lang.XComponent;
import com.sun.star.sheet.XSpreadsheetDocument;
import com.sun.star.task.XJobExecutor;
import com.sun.star.uno.UnoRuntime;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.setpower.addin.SharedOffice;
import org.setpower.addin.TestSheet;
import org.setpower.office.Office;

/**
 * Every window of ours without a mouse and without eyes: the tab key stops at each control once,
 * from top to bottom, and each has a name that can be read out; Escape cancels, Enter does what the
 * usual button says.
 */
@Tag("one-office")
class AccessibilityIT {
  /** Controls whose places differ by less stand in one line. */
  private static final int LINE = 12;

  private static Office office;
  private TestSheet sheet;

  @BeforeAll
  static void start() throws IOException {
    office = Office.startWithWindows(SharedOffice.OXT);
  }

  @AfterAll
  static void end() {
    office.close();
  }

  @BeforeEach
  void document() throws IOException {
    sheet = TestSheet.firstOf(office.newSpreadsheet());
  }

  @AfterEach
  void close() {
    sheet.close();
  }

  private static ShownWindow open(String command) throws Exception {
    return ShownWindow.open(
        office, () -> office.service(XJobExecutor.class, "org.setpower.Commands").trigger(command));
  }

  private static void closesWith(short key, String command) throws Exception {
    ShownWindow window = open(command);
    window.press(key);
    window.isClosed();
  }

  /** Walks it with the tab key, and gives the names of the stops. */
  private static List<String> walked(ShownWindow window) throws Exception {
    assertThat(window.title()).isNotBlank();
    List<ShownWindow.Part> stops = window.walk();
    for (int i = 1; i < stops.size(); i++) {
      ShownWindow.Part before = stops.get(i - 1);
      ShownWindow.Part after = stops.get(i);
      assertThat(
              after.y() > before.y() - LINE
                  && (after.y() > before.y() + LINE || after.x() > before.x()))
          .as("%s comes after %s", after, before)
          .isTrue();
    }
    List<String> names = stops.stream().map(ShownWindow.Part::name).toList();
    assertThat(names).doesNotHaveDuplicates();
    assertThat(
            window.parts().stream()
                .filter(ShownWindow.Part::takesFocus)
                .map(ShownWindow.Part::name))
        .as("every control is a stop")
        .isSubsetOf(names);
    return names;
  }

  private static String settings() {
    return CommandDriver.command(office, null, "settings");
  }

  @Test
  void settings_are_walked_and_kept_with_enter_only() throws Exception {
    String before = settings();
    ShownWindow window = open("settings");
    assertThat(walked(window)).startsWith("Units").endsWith("OK", "Cancel");
    window.press(Key.DOWN);
    window.press(Key.ESCAPE);
    window.isClosed();
    assertThat(settings()).isEqualTo(before);

    ShownWindow again = open("settings");
    again.press(Key.DOWN);
    again.press(Key.RETURN);
    again.isClosed();
    assertThat(settings()).contains("UNITS=metric\n");
    CommandDriver.command(office, null, "settings", "UNITS", "");
  }

  private static XComponent front() {
    return office.service(XDesktop.class, "com.sun.star.frame.Desktop").getCurrentComponent();
  }

  @Test
  void about_is_walked_and_closed() throws Exception {
    ShownWindow window = open("about");
    assertThat(walked(window)).containsExactly("Version, license, libraries", "Copy", "Close");
    window.press(Key.RETURN);
    window.isClosed();
    closesWith(Key.ESCAPE, "about");
  }

  /** There is no browser where the tests run, and the office does not notice. */
  @Test
  void the_handbook_says_where_its_file_is() throws Exception {
    ShownWindow window = open("handbook");
    assertThat(walked(window))
        .containsExactly("If no browser opens, open this file in one:", "Copy", "Close");
    window.press(Key.RETURN);
    window.isClosed();
    closesWith(Key.ESCAPE, "handbook");
  }

  @Test
  void how_a_number_came_about_is_walked_and_closed_without_a_trace() throws Exception {
    sheet.put("A1", "=ORG.SETPOWER.FUNCTIONS.CABLEDROP(\"2.5 mm²\";25;16;\"DC\")");
    ShownWindow window = open("explain");
    assertThat(walked(window).get(0)).startsWith("Working: Sheet1.A1 shows");
    window.press(Key.RETURN);
    window.isClosed();
    closesWith(Key.ESCAPE, "explain");
    assertThat(sheets(sheet.document())).containsExactly("Sheet1");
  }

  @Test
  void a_sentence_is_read_out_and_closed() throws Exception {
    ShownWindow window = open("explain");
    assertThat(window.parts().stream().map(ShownWindow.Part::name))
        .anyMatch(n -> n.contains("contains no Set Power function"));
    window.press(Key.ESCAPE);
    window.isClosed();
    closesWith(Key.RETURN, "explain");
    closesWith(Key.RETURN, "look");
  }

  @Test
  void a_new_sheet_is_chosen_with_the_arrows() throws Exception {
    ShownWindow window = open("new");
    assertThat(walked(window)).containsExactly("Start from", "Create", "Cancel");
    window.press(Key.ESCAPE);
    window.isClosed();
    assertThat(sheets(front())).containsExactly("Sheet1");

    ShownWindow again = open("new");
    again.press(Key.DOWN);
    again.press(Key.RETURN);
    again.isClosed();
    XComponent made = front();
    assertThat(sheets(made)).hasSizeGreaterThan(1);
    Office.discard(made);
  }

  @Test
  void a_copy_is_written_with_enter_and_replaced_on_demand_only() throws Exception {
    sheet.put("A1", "=ORG.SETPOWER.FUNCTIONS.CABLEDROP(\"2.5 mm²\";25;16;\"DC\")");
    ShownWindow window = open("copy");
    assertThat(walked(window))
        .containsExactly(
            "OpenDocument spreadsheet (.ods)",
            "Excel workbook (.xlsx)",
            "PDF, as it prints (.pdf)",
            "The working of each figure as a note in its cell",
            "Sheets (Ctrl+click for several)",
            "Folder",
            "Choose…",
            "Name",
            "Write",
            "Cancel");
    window.press(Key.ESCAPE);
    window.isClosed();
    assertThat(copies()).isEmpty();

    ShownWindow again = open("copy");
    again.press(Key.RETURN);
    ShownWindow done = again.followedBy();
    assertThat(done.parts().stream().map(ShownWindow.Part::name))
        .anyMatch(n -> n.startsWith("Written, with 1 cell as a value:"));
    done.press(Key.RETURN);
    done.isClosed();
    assertThat(copies()).hasSize(1);

    ShownWindow third = open("copy");
    third.press(Key.RETURN);
    ShownWindow question = third.followedBy();
    assertThat(question.parts().stream().map(ShownWindow.Part::name))
        .anyMatch(n -> n.startsWith("Replace what is there?"));
    question.press(Key.ESCAPE);
    question.isClosed();
  }

  @Test
  void a_copy_and_its_folder_are_opened() throws Exception {
    for (Path earlier : copies()) {
      Files.delete(earlier);
    }
    sheet.put("A1", "=ORG.SETPOWER.FUNCTIONS.CABLEDROP(\"2.5 mm²\";25;16;\"DC\")");
    ShownWindow window = open("copy");
    window.press(Key.RETURN);
    ShownWindow done = window.followedBy();
    assertThat(done.walk().stream().map(ShownWindow.Part::name))
        .containsExactlyInAnyOrder("Open", "Open folder", "Close");
    done.push("Open");
    done.push("Open folder");
    done.press(Key.ESCAPE);
    done.isClosed();
    Path copy = copies().get(0);
    String folder = address(copy.getParent()) + "/";
    assertThat(ShownWindow.until("two programs", () -> opened(folder)))
        .containsExactly(address(copy), folder);
  }

  private static List<String> sheets(XComponent document) {
    return List.of(
        UnoRuntime.queryInterface(XSpreadsheetDocument.class, document)
            .getSheets()
            .getElementNames());
  }

  private static String address(Path file) {
    return office.address(file).replaceFirst("/$", "");
  }

  /** What of a folder other programs were asked to open; null before there are two. */
  private static List<String> opened(String folder) throws IOException {
    List<String> opened =
        Files.readAllLines(office.workFolder().resolve("office.log")).stream()
            .filter(line -> line.startsWith("opened " + folder))
            .map(line -> line.substring("opened ".length()))
            .toList();
    return opened.size() < 2 ? null : opened;
  }

  private static List<Path> copies() throws IOException {
    try (Stream<Path> files = Files.walk(office.workFolder())) {
      return files.filter(f -> f.getFileName().toString().equals("Set Power values.xlsx")).toList();
    }
  }
}
