package org.setpower.command.print;

import static org.assertj.core.api.Assertions.assertThat;

import com.sun.star.beans.PropertyValue;
import com.sun.star.document.XUndoManagerSupplier;
import com.sun.star.frame.XController;
import com.sun.star.frame.XDispatchHelper;
import com.sun.star.frame.XDispatchProvider;
import com.sun.star.frame.XModel;
import com.sun.star.lang.XComponent;
import com.sun.star.sheet.XPrintAreas;
import com.sun.star.sheet.XSpreadsheetView;
import com.sun.star.table.CellRangeAddress;
import com.sun.star.util.XModifiable;
import java.io.IOException;
import java.nio.file.Path;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.setpower.addin.SharedOffice;
import org.setpower.addin.TestSheet;
import org.setpower.command.ShownWindow;
import org.setpower.office.Office;
import org.setpower.uno.Uno;

/** Who prints without having set print ranges gets the filled rows, and no blank pages. */
class PrintWatchIT {
  private static final Path EXAMPLE = Path.of("target/sheets/examples/battery-plan-example.ods");
  private static final String PAPER = "Change schedule";
  private static final int ALL_ROWS = 400;

  private static Office office;

  @BeforeAll
  static void start() throws IOException {
    office = Office.startWithWindows(SharedOffice.OXT);
  }

  @AfterAll
  static void end() {
    office.close();
  }

  private static XPrintAreas printed(XComponent document) {
    return Uno.as(XPrintAreas.class, TestSheet.named(document, PAPER).sheet());
  }

  private static int lastRow(XComponent document) {
    CellRangeAddress[] areas = printed(document).getPrintAreas();
    return areas[areas.length - 1].EndRow;
  }

  private static void printAll(XComponent document) {
    CellRangeAddress all = printed(document).getPrintAreas()[0];
    all.EndRow = ALL_ROWS;
    printed(document).setPrintAreas(new CellRangeAddress[] {all});
  }

  private static XController view(XComponent document) {
    return Uno.as(XModel.class, document).getCurrentController();
  }

  private static void dispatch(XComponent document, String url, PropertyValue... arguments)
      throws Exception {
    office
        .service(XDispatchHelper.class, "com.sun.star.frame.DispatchHelper")
        .executeDispatch(
            Uno.as(XDispatchProvider.class, view(document).getFrame()), url, "", 0, arguments);
  }

  @Test
  void a_preview_shows_filled_rows_only() throws Exception {
    XComponent document = office.open(EXAMPLE);
    int fitted = lastRow(document);
    printAll(document);
    Uno.as(XModifiable.class, document).setModified(false);
    try {
      dispatch(document, ".uno:PrintPreview");
      assertThat(Uno.as(XSpreadsheetView.class, view(document))).as("the preview came").isNull();
      assertThat(lastRow(document)).isEqualTo(fitted);
      assertThat(Uno.as(XModifiable.class, document).isModified()).isFalse();
      dispatch(document, ".uno:ClosePreview");
      ShownWindow.until("the sheet", () -> Uno.as(XSpreadsheetView.class, view(document)));
    } finally {
      Office.discard(document);
    }
  }

  @Test
  void a_step_back_brings_the_former_ranges() throws Exception {
    XComponent document = office.open(EXAMPLE);
    printAll(document);
    try {
      dispatch(document, ".uno:PrintPreview");
      dispatch(document, ".uno:ClosePreview");
      assertThat(lastRow(document)).isLessThan(ALL_ROWS);
      Uno.as(XUndoManagerSupplier.class, document).getUndoManager().undo();
      assertThat(lastRow(document)).isEqualTo(ALL_ROWS);
    } finally {
      Office.discard(document);
    }
  }

  /** A paper for the client, a plan with a drawing, a page that flows: none stops the preview. */
  @ParameterizedTest
  @ValueSource(
      strings = {
        "rental-quote",
        "lighting-power-plan",
        "power-budget",
        "battery-register",
        "battery-travel-list"
      })
  void every_example_can_be_previewed(String name) throws Exception {
    XComponent document = office.open(Path.of("target/sheets/examples/" + name + "-example.ods"));
    try {
      dispatch(document, ".uno:PrintPreview");
      assertThat(Uno.as(XSpreadsheetView.class, view(document))).as("the preview came").isNull();
      dispatch(document, ".uno:ClosePreview");
    } finally {
      Office.discard(document);
    }
  }
}
