package org.setpower.command.trace;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import com.sun.star.beans.XPropertyContainer;
import com.sun.star.document.XDocumentPropertiesSupplier;
import com.sun.star.document.XUndoManager;
import com.sun.star.document.XUndoManagerSupplier;
import com.sun.star.frame.XComponentLoader;
import com.sun.star.frame.XDesktop;
import com.sun.star.lang.XComponent;
import com.sun.star.sheet.XSpreadsheetDocument;
import com.sun.star.uno.UnoRuntime;
import com.sun.star.util.XModifiable;
import com.sun.star.util.XProtectable;
import java.nio.file.Path;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;
import org.setpower.addin.SharedOffice;
import org.setpower.addin.TestSheet;
import org.setpower.command.CommandDriver;
import org.setpower.office.Office;
import org.setpower.uno.Uno;

/** How a number came about, asked in a document. */
@ExtendWith(SharedOffice.class)
class TraceIT {
  private Office office;
  private TestSheet sheet;

  @BeforeEach
  void open(Office shared) throws Exception {
    office = shared;
    sheet = TestSheet.firstOf(office.newSpreadsheet());
  }

  @AfterEach
  void close() {
    sheet.close();
  }

  private String explain(String cell, String... options) {
    String[] all = new String[options.length + 2];
    all[0] = "cell";
    all[1] = cell;
    System.arraycopy(options, 0, all, 2, options.length);
    return CommandDriver.command(office, sheet.document(), "explain", all);
  }

  @Test
  void says_what_went_in_the_steps_the_result_and_the_source() {
    sheet.text("A1", "2.5 mm²").put("B1", 25).put("C1", 16);
    sheet.put("D1", "=ORG.SETPOWER.FUNCTIONS.CABLEDROP(A1;B1;C1;\"DC\")");
    String text = explain("D1");
    assertThat(text)
        .startsWith("Sheet1.D1 shows " + sheet.shown("D1"))
        .contains("=CABLE.DROP(A1,B1,C1,\"DC\")")
        .contains("size = 2.5 mm²", "[A1]", "length = 25 m", "[B1]", "[default]")
        .contains("Result", "CABLE.DROP = ", "Source", "Caution")
        .doesNotContain("The cell shows something else");
  }

  @Test
  void works_out_nested_calls_and_expressions_and_leaves_no_trace()
      throws com.sun.star.uno.Exception {
    sheet.text("A1", "2.5 mm²").put("B1", 10).put("C1", 16);
    sheet.put("D1", "=2*ORG.SETPOWER.FUNCTIONS.CABLEDROP(A1;B1+15;SUM(C1:C2);\"DC\")+1");
    unmodified();
    String text = explain("D1");
    assertThat(text).contains("length = 25 m", "[B1+15]", "amps = 16 A", "[SUM(C1:C2)]");
    assertThat(UnoRuntime.queryInterface(XModifiable.class, sheet.document()).isModified())
        .isFalse();
    assertThat(undoTitles()).isEmpty();
    assertThat(sheet.data("A1:D1")[0][3]).isEqualTo(sheet.number("D1"));
  }

  @Test
  void keeps_the_undo_list_of_the_user() {
    sheet.text("A1", "2.5 mm²").put("B1", 10);
    sheet.put("D1", "=ORG.SETPOWER.FUNCTIONS.CABLEDROP(A1;B1*2;16;\"DC\")");
    String[] before = undoTitles();
    explain("D1");
    assertThat(undoTitles()).isEqualTo(before);
  }

  @Test
  void expressions_that_give_a_block_are_worked_out_whole() {
    for (int r = 1; r <= 3; r++) {
      sheet.text("A" + r, "2.5 mm²").put("B" + r, 10.0 * r).put("C" + r, 16);
    }
    sheet.array("D1:D3", "=ORG.SETPOWER.FUNCTIONS.CABLEDROP(A1:A3;B1:B3*2;C1:C3;\"DC\")");
    assertThat(explain("D2")).contains("length = 40 m", "row 2, column 1 of B1:B3*2");
    assertThat(sheet.data("XFB1048574:XFD1048576"))
        .isDeepEqualTo(new Object[][] {{"", "", ""}, {"", "", ""}, {"", "", ""}});
  }

  @Test
  void a_protected_sheet_stays_as_it_is() throws com.sun.star.uno.Exception {
    sheet.text("A1", "2.5 mm²").put("B1", 10);
    sheet.put("D1", "=ORG.SETPOWER.FUNCTIONS.CABLEDROP(A1;B1*2;16;\"DC\")");
    XProtectable lock = UnoRuntime.queryInterface(XProtectable.class, sheet.sheet());
    lock.protect("");
    assertThat(explain("D1")).contains("every sheet is protected");
    Object properties =
        UnoRuntime.queryInterface(XDocumentPropertiesSupplier.class, sheet.document())
            .getDocumentProperties()
            .getUserDefinedProperties();
    UnoRuntime.queryInterface(XPropertyContainer.class, properties)
        .addProperty("Set Power template", (short) 0, "lighting 1");
    unmodified();
    assertThat(explain("D1")).contains("length = 20 m");
    assertThat(lock.isProtected()).isTrue();
    assertThat(undoTitles()).isEmpty();
    TestSheet.named(sheet.document(), "Open one");
    assertThat(explain("D1")).contains("length = 20 m");
    lock.unprotect("");
    lock.protect("secret");
    assertThat(explain("D1")).contains("length = 20 m");
    lock.unprotect("secret");
  }

  /** All sheets protected, as in a document made from a template of ours. */
  private void fromTemplate(String password) throws com.sun.star.uno.Exception {
    sheet.text("A1", "2.5 mm²").put("B1", 10);
    sheet.put("D1", "=ORG.SETPOWER.FUNCTIONS.CABLEDROP(A1;B1*2;16;\"DC\")");
    Object properties =
        UnoRuntime.queryInterface(XDocumentPropertiesSupplier.class, sheet.document())
            .getDocumentProperties()
            .getUserDefinedProperties();
    UnoRuntime.queryInterface(XPropertyContainer.class, properties)
        .addProperty("Set Power template", (short) 0, "lighting 1");
    UnoRuntime.queryInterface(XProtectable.class, sheet.sheet()).protect(password);
  }

  /** A step of the user can be made, undone and made again. */
  private void undoWorks(XComponent document) throws com.sun.star.uno.Exception {
    XUndoManager undo =
        UnoRuntime.queryInterface(XUndoManagerSupplier.class, document).getUndoManager();
    assertThat(undo.isLocked()).isFalse();
    assertThatThrownBy(undo::leaveUndoContext).as("a context was left open").isNotNull();
    assertThat(undo.isUndoPossible()).isTrue();
    String last = undo.getCurrentUndoActionTitle();
    undo.undo();
    assertThat(undo.getAllUndoActionTitles()).hasSizeLessThan(100);
    undo.redo();
    assertThat(undo.getCurrentUndoActionTitle()).isEqualTo(last);
  }

  @Test
  void a_password_is_told_and_undo_goes_on() throws com.sun.star.uno.Exception {
    fromTemplate("secret");
    String[] before = undoTitles();
    assertThat(before).isNotEmpty();
    UnoRuntime.queryInterface(XModifiable.class, sheet.document()).setModified(false);
    assertThat(explain("D1")).contains("every sheet is protected with a password");
    assertThat(undoTitles()).isEqualTo(before);
    assertThat(UnoRuntime.queryInterface(XModifiable.class, sheet.document()).isModified())
        .isFalse();
    undoWorks(sheet.document());
    XProtectable lock = UnoRuntime.queryInterface(XProtectable.class, sheet.sheet());
    assertThat(lock.isProtected()).isTrue();
    lock.unprotect("secret");
    assertThat(lock.isProtected()).isFalse();
  }

  @Test
  void a_password_on_one_sheet_leaves_the_others() throws com.sun.star.uno.Exception {
    fromTemplate("secret");
    TestSheet other = TestSheet.named(sheet.document(), "Without password");
    XProtectable lock = UnoRuntime.queryInterface(XProtectable.class, other.sheet());
    lock.protect("");
    String[] before = undoTitles();
    assertThat(explain("D1")).contains("length = 20 m");
    assertThat(lock.isProtected()).isTrue();
    assertThat(undoTitles()).isEqualTo(before);
    undoWorks(sheet.document());
  }

  @Test
  void a_document_for_reading_only_stays_as_it_is(@TempDir Path folder) throws Exception {
    fromTemplate("");
    Path file = folder.resolve("read.ods");
    office.store(sheet.document(), "calc8", file);
    XComponent document =
        UnoRuntime.queryInterface(
                XComponentLoader.class,
                office.service(XDesktop.class, "com.sun.star.frame.Desktop"))
            .loadComponentFromURL(
                office.copyIn(file), "_blank", 0, Uno.properties(Uno.property("ReadOnly", true)));
    try {
      String text = CommandDriver.command(office, document, "explain", "cell", "D1");
      assertThat(text).contains("size = 2.5 mm²", "the document is open for reading only");
      TestSheet read = TestSheet.firstOf(document);
      assertThat(UnoRuntime.queryInterface(XProtectable.class, read.sheet()).isProtected())
          .isTrue();
      assertThat(read.data("XFD1048576:XFD1048576")[0][0]).isEqualTo("");
      assertThat(UnoRuntime.queryInterface(XModifiable.class, document).isModified()).isFalse();
      XUndoManager undo =
          UnoRuntime.queryInterface(XUndoManagerSupplier.class, document).getUndoManager();
      assertThat(undo.isLocked()).isFalse();
      assertThat(undo.getAllUndoActionTitles()).isEmpty();
      assertThatThrownBy(
              () -> CommandDriver.command(office, document, "explain", "cell", "D1", "put", "yes"))
          .hasMessageContaining("reading only");
      assertThat(
              UnoRuntime.queryInterface(XSpreadsheetDocument.class, document)
                  .getSheets()
                  .getElementNames())
          .containsExactly("Sheet1");
    } finally {
      Office.discard(document);
    }
  }

  @Test
  void says_why_there_is_no_number_and_what_to_type() {
    sheet.text("A1", "2.5 mm²").put("B1", -4);
    sheet.put("D1", "=ORG.SETPOWER.FUNCTIONS.CABLEDROP(A1;B1;16;\"DC\")");
    String text = explain("D1");
    assertThat(sheet.shown("D1")).isEqualTo("Err:502");
    assertThat(text).contains("Error", "Correction", "length:", "like this: =CABLE.DROP");
  }

  @Test
  void finds_the_cell_whose_error_is_handed_on() {
    sheet
        .put("B1", "=1/0")
        .put("D1", "=ORG.SETPOWER.FUNCTIONS.CABLEDROP(\"2.5 mm²\";B1;16;\"DC\")");
    assertThat(explain("D1")).contains("length comes from B1: it is in error itself (#DIV/0!)");
  }

  @Test
  void takes_the_row_of_an_array_formula() {
    for (int r = 1; r <= 3; r++) {
      sheet.text("A" + r, "2.5 mm²").put("B" + r, 10.0 * r);
    }
    sheet.array("D1:D3", "=ORG.SETPOWER.FUNCTIONS.CABLEDROP(A1:A3;B1:B3;16;\"DC\")");
    assertThat(explain("D3"))
        .contains("length = 30 m", "row 3, column 1 of B1:B3")
        .doesNotContain("The cell shows something else");
  }

  @Test
  void goes_into_the_document_as_a_block_that_one_undo_takes_away() {
    sheet.put("D1", "=ORG.SETPOWER.FUNCTIONS.CABLEDROP(\"2.5 mm²\";25;16;\"DC\")");
    explain("D1", "put", "yes");
    TestSheet working = TestSheet.named(sheet.document(), TraceCommand.SHEET);
    assertThat(working.shown("A1")).startsWith("Sheet1.D1 shows");
    assertThat(working.shown("E1")).isEqualTo("Sheet1.D1");
    assertThat(working.shown("A3")).startsWith("=CABLE.DROP");
    explain("D1", "put", "yes");
    assertThat(undoTitles()).startsWith("Show calculation");
  }

  @Test
  void a_cell_without_our_functions_is_told_so() {
    sheet.put("D1", "=1+1");
    assertThatThrownBy(() -> explain("D1")).hasMessageContaining("contains no Set Power function");
  }

  private void unmodified() throws com.sun.star.uno.Exception {
    UnoRuntime.queryInterface(XModifiable.class, sheet.document()).setModified(false);
    UnoRuntime.queryInterface(XUndoManagerSupplier.class, sheet.document())
        .getUndoManager()
        .clear();
  }

  private String[] undoTitles() {
    return UnoRuntime.queryInterface(XUndoManagerSupplier.class, sheet.document())
        .getUndoManager()
        .getAllUndoActionTitles();
  }
}
