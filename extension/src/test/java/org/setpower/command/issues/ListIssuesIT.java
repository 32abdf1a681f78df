package org.setpower.command.issues;

import static org.assertj.core.api.Assertions.assertThat;

import com.sun.star.beans.PropertyValue;
import com.sun.star.frame.XDispatchHelper;
import com.sun.star.frame.XDispatchProvider;
import com.sun.star.frame.XFrame;
import com.sun.star.frame.XModel;
import com.sun.star.uno.UnoRuntime;
import java.nio.file.Path;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.setpower.addin.SharedOffice;
import org.setpower.addin.TestSheet;
import org.setpower.command.CommandDriver;
import org.setpower.command.document.CalcDocument;
import org.setpower.command.export.PdfText;
import org.setpower.office.Office;

/** Open issues, listed in a document. */
@ExtendWith(SharedOffice.class)
@Tag("one-office")
class ListIssuesIT {
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

  private TestSheet look() {
    CommandDriver.command(office, sheet.document(), "look");
    return TestSheet.named(sheet.document(), ListIssuesCommand.SHEET);
  }

  @Test
  void lists_stops_errors_and_looks_with_reason_and_link() {
    sheet
        .text("A2", "Crane")
        .put("C2", "=IF(TRUE();\"check\";\"ok\")")
        .text("D2", "Decide the leg.");
    sheet
        .text("A3", "Key light")
        .put("C3", "=ORG.SETPOWER.FUNCTIONS.CABLEDROP(\"2.5 mm²\";-1;16;\"DC\")");
    sheet.text("A4", "Fill").put("C4", "=\"stop\"").text("D4", "The pack is over 60 V.");
    sheet.text("A5", "Not a status").text("C5", "check").put("C6", "=1/0").put("C7", "=\"ok\"");
    TestSheet list = look();
    assertThat(list.shown("A1")).startsWith("Stop: 1; error: 1; check: 1.");
    assertThat(list.data("A5:D8"))
        .hasDimensions(4, 4)
        .satisfies(
            rows ->
                assertThat(rows[0])
                    .containsExactly("stop", "Sheet1.C4", "Fill", "The pack is over 60 V."))
        .satisfies(rows -> assertThat(rows[1]).startsWith("error", "Sheet1.C3", "Key light"))
        .satisfies(rows -> assertThat((String) rows[1][3]).startsWith("CABLE.DROP: length is"))
        .satisfies(
            rows ->
                assertThat(rows[2])
                    .containsExactly("check", "Sheet1.C2", "Crane", "Decide the leg."))
        .satisfies(rows -> assertThat(rows[3]).containsOnly(""));
  }

  /** What it lists is old once the document changes: paper would not show that. */
  @Test
  void is_not_printed() throws Exception {
    sheet.put("C1", "=\"stop\"").text("D1", "Too heavy.");
    look();
    Path pdf = office.newFolder().resolve("issues.pdf");
    office.store(sheet.document(), "calc_pdf_Export", pdf);
    assertThat(PdfText.of(pdf)).contains("Too heavy.").doesNotContain("Ctrl+click");
  }

  @Test
  void the_address_in_the_menu_calls_the_command() throws com.sun.star.uno.Exception {
    sheet.put("C1", "=\"stop\"").text("D1", "Too heavy.");
    XFrame frame =
        UnoRuntime.queryInterface(XModel.class, sheet.document()).getCurrentController().getFrame();
    office
        .service(XDispatchHelper.class, "com.sun.star.frame.DispatchHelper")
        .executeDispatch(
            UnoRuntime.queryInterface(XDispatchProvider.class, frame),
            "service:org.setpower.Commands?look&quiet",
            "",
            0,
            new PropertyValue[0]);
    assertThat(new CalcDocument(sheet.document()).sheets().hasByName(ListIssuesCommand.SHEET))
        .isTrue();
  }

  @Test
  void is_written_anew_and_not_piled_up() {
    sheet.put("C1", "=\"stop\"").put("C2", "=\"check\"");
    look();
    sheet.put("C1", "=\"ok\"");
    TestSheet list = look();
    assertThat(list.shown("A1")).startsWith("Stop: 0; error: 0; check: 1.");
    assertThat(list.data("A5:A6")).isDeepEqualTo(new Object[][] {{"check"}, {""}});
    sheet.put("C2", "=\"ok\"");
    assertThat(look().shown("A1")).startsWith("No open issues");
    assertThat(list.shown("A5")).isEmpty();
  }

  @Test
  void what_a_later_sheet_repeats_is_named_once() {
    sheet.put("C1", "=\"stop\"").text("D1", "Too heavy.");
    sheet.text("A1", "Crane");
    TestSheet result = TestSheet.named(sheet.document(), "Result");
    result.put("C1", "=\"stop\"").text("D1", "Too heavy.");
    result.put("C2", "=\"stop\"").text("D2", "Sheet1").text("E2", "Too heavy.");
    result.text("A3", "Crane").put("C3", "=\"stop\"");
    assertThat(look().shown("A1")).startsWith("Stop: 1;");
  }
}
