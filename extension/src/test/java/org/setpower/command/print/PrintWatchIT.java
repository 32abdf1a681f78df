package org.setpower.command.print;

import static org.assertj.core.api.Assertions.assertThat;

import com.sun.star.awt.Size;
import com.sun.star.awt.XCallback;
import com.sun.star.awt.XRequestCallback;
import com.sun.star.beans.PropertyValue;
import com.sun.star.container.XEnumeration;
import com.sun.star.container.XNameAccess;
import com.sun.star.document.XUndoManager;
import com.sun.star.document.XUndoManagerSupplier;
import com.sun.star.frame.XController;
import com.sun.star.frame.XDispatchHelper;
import com.sun.star.frame.XDispatchProvider;
import com.sun.star.frame.XFrame;
import com.sun.star.frame.XModel;
import com.sun.star.frame.XModel2;
import com.sun.star.lang.XComponent;
import com.sun.star.sheet.CellFlags;
import com.sun.star.sheet.XCellRangeAddressable;
import com.sun.star.sheet.XCellRangeReferrer;
import com.sun.star.sheet.XPrintAreas;
import com.sun.star.sheet.XSheetOperation;
import com.sun.star.sheet.XSpreadsheet;
import com.sun.star.sheet.XSpreadsheetView;
import com.sun.star.table.CellRangeAddress;
import com.sun.star.table.XCellRange;
import com.sun.star.table.XColumnRowRange;
import com.sun.star.text.XText;
import com.sun.star.uno.Any;
import com.sun.star.uno.UnoRuntime;
import com.sun.star.util.XCloseable;
import com.sun.star.util.XModifiable;
import com.sun.star.util.XProtectable;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.HashSet;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.setpower.addin.SharedOffice;
import org.setpower.addin.TestSheet;
import org.setpower.command.ShownWindow;
import org.setpower.command.document.CalcDocument;
import org.setpower.command.export.PdfText;
import org.setpower.office.Office;
import org.setpower.uno.Uno;

/** Who prints without having set print ranges gets the filled rows, and no blank pages. */
class PrintWatchIT {
  private static final Path EXAMPLE = Path.of("target/sheets/examples/battery-plan-example.ods");
  private static final Path QUOTE = Path.of("target/sheets/examples/rental-quote-example.ods");
  private static final Path LIGHTING =
      Path.of("target/sheets/examples/lighting-power-plan-example.ods");
  private static final Path BLANK_LIGHTING =
      Path.of("target/sheets/templates/en/lighting-power-plan.ots");
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

  private static void dispatch(XComponent document, String url) throws Exception {
    order(view(document).getFrame(), url);
  }

  /** In the thread of the office's windows, as its menu does. */
  private static void order(XFrame window, String url, PropertyValue... arguments)
      throws Exception {
    XDispatchHelper helper =
        office.service(XDispatchHelper.class, "com.sun.star.frame.DispatchHelper");
    CompletableFuture<Object> done = new CompletableFuture<>();
    XCallback call =
        nothing ->
            done.complete(
                helper.executeDispatch(
                    Uno.as(XDispatchProvider.class, window), url, "", 0, arguments));
    office
        .service(XRequestCallback.class, "com.sun.star.awt.AsyncCallback")
        .addCallback(call, Any.VOID);
    done.get(60, TimeUnit.SECONDS);
  }

  @Test
  void a_preview_shows_filled_rows_only() throws Exception {
    XComponent document = office.open(EXAMPLE);
    int fitted = lastRow(document);
    printAll(document);
    Uno.as(XModifiable.class, document).setModified(false);
    try {
      showPreview(view(document).getFrame());
      assertThat(lastRow(document)).isEqualTo(fitted);
      assertThat(Uno.as(XModifiable.class, document).isModified()).isFalse();
      dispatch(document, ".uno:ClosePreview");
      ShownWindow.until("the sheet", () -> Uno.as(XSpreadsheetView.class, view(document)));
    } finally {
      Office.discard(document);
    }
  }

  @ParameterizedTest
  @ValueSource(strings = {"battery-plan", "rental-quote", "power-budget"})
  void a_step_back_brings_the_former_ranges(String name) throws Exception {
    XComponent document = office.open(Path.of("target/sheets/examples/" + name + "-example.ods"));
    Map<String, Integer> lengthened = lengthen(document);
    Map<String, Integer> heights = heights(document, lengthened.keySet());
    Set<String> locked = locked(document);
    assertThat(locked).isNotEmpty();
    XUndoManager undo = Uno.as(XUndoManagerSupplier.class, document).getUndoManager();
    try {
      showPreview(view(document).getFrame());
      dispatch(document, ".uno:ClosePreview");
      ShownWindow.until("the sheet", () -> Uno.as(XSpreadsheetView.class, view(document)));
      assertThat(lastRows(document, lengthened.keySet())).isNotEqualTo(lengthened);
      assertThat(undo.getAllUndoActionTitles()).startsWith("Set print ranges to filled rows");
      assertThat(heights(document, lengthened.keySet())).isEqualTo(heights);
      Map<String, Integer> fitted = lastRows(document, lengthened.keySet());
      undo.undo();
      assertThat(lastRows(document, lengthened.keySet())).isEqualTo(lengthened);
      assertThat(heights(document, lengthened.keySet())).isEqualTo(heights);
      undo.redo();
      assertThat(lastRows(document, lengthened.keySet())).isEqualTo(fitted);
      assertThat(heights(document, lengthened.keySet())).isEqualTo(heights);
      assertThat(locked(document)).isEqualTo(locked);
    } finally {
      Office.discard(document);
    }
  }

  /** Each paper that prints, down to a row below all others; gives what it prints to. */
  private static Map<String, Integer> lengthen(XComponent document) throws Exception {
    Map<String, Integer> last = new HashMap<>();
    for (XSpreadsheet sheet : new CalcDocument(document).all()) {
      XPrintAreas printed = Uno.as(XPrintAreas.class, sheet);
      if (printed.getPrintAreas().length > 0) {
        CellRangeAddress all = printed.getPrintAreas()[0];
        all.EndRow = ALL_ROWS;
        printed.setPrintAreas(new CellRangeAddress[] {all});
        last.put(CalcDocument.name(sheet), ALL_ROWS);
      }
    }
    return last;
  }

  /** The sheets that are protected. */
  private static Set<String> locked(XComponent document) throws Exception {
    Set<String> locked = new HashSet<>();
    for (XSpreadsheet sheet : new CalcDocument(document).all()) {
      if (Uno.as(XProtectable.class, sheet).isProtected()) {
        locked.add(CalcDocument.name(sheet));
      }
    }
    return locked;
  }

  /** How high the rows of papers are together, hidden ones without height. */
  private static Map<String, Integer> heights(XComponent document, Set<String> papers)
      throws Exception {
    Map<String, Integer> heights = new HashMap<>();
    for (String paper : papers) {
      XCellRange rows =
          TestSheet.named(document, paper).sheet().getCellRangeByPosition(0, 0, 0, ALL_ROWS);
      heights.put(paper, ((Size) Uno.get(rows, "Size")).Height);
    }
    return heights;
  }

  private static Map<String, Integer> lastRows(XComponent document, Set<String> papers) {
    Map<String, Integer> last = new HashMap<>();
    for (String paper : papers) {
      CellRangeAddress[] areas =
          Uno.as(XPrintAreas.class, TestSheet.named(document, paper).sheet()).getPrintAreas();
      last.put(paper, areas.length == 0 ? 0 : areas[areas.length - 1].EndRow);
    }
    return last;
  }

  @Test
  void a_second_window_prints_too_and_when_the_first_is_closed() throws Exception {
    XComponent document = office.open(EXAMPLE);
    int fitted = lastRow(document);
    try {
      XController first = view(document);
      dispatch(document, ".uno:NewWindow");
      XController second = ShownWindow.until("a window", () -> otherThan(first, document));
      XModel model = Uno.as(XModel.class, document);
      printAll(document);
      preview(second);
      assertThat(lastRow(document)).isEqualTo(fitted);
      assertThat(model.getCurrentController()).isNotNull();

      Uno.as(XCloseable.class, first.getFrame()).close(true);
      assertThat(otherThan(first, document)).isNotNull();
      printAll(document);
      preview(otherThan(first, document));
      assertThat(lastRow(document)).isEqualTo(fitted);
    } finally {
      Office.discard(document);
    }
  }

  /** The client's page as the office prints it ends on the page on which its lines end. */
  @Test
  void a_quote_printed_directly_has_its_closing_lines_below_its_total() throws Exception {
    XComponent document = office.open(QUOTE);
    Path pdf = office.newFolder().resolve("quote.pdf");
    try {
      XSpreadsheet page = TestSheet.named(document, "Client quote").sheet();
      shorten(document);
      Uno.as(XModifiable.class, document).setModified(false);
      Object rows =
          Uno.as(XColumnRowRange.class, page.getCellRangeByPosition(0, 0, 0, 400)).getRows();
      export(document, pdf);
      String first = PdfText.of(pdf).split("\f")[0];
      assertThat(first).contains("Total").contains("Accepted:");
      // on the screen nothing is missing
      assertThat(Uno.get(rows, "IsVisible")).isEqualTo(true);
      assertThat(Uno.as(XModifiable.class, document).isModified()).isFalse();
    } finally {
      Office.discard(document);
    }
  }

  /** Papers for several readers: a file holds that in view, and from another tab the client's. */
  @ParameterizedTest
  @CsvSource({
    "Client quote, Client quote",
    "Delivery note, Delivery note",
    "Quote, Client quote",
    "Insurer's list, Insurer's list",
  })
  void a_letter_is_exported_alone(String tab, String paper) throws Exception {
    Map<String, String> only =
        Map.of(
            "Client quote", "Accepted:",
            "Delivery note", "Received complete",
            "Return note", "Counted by both",
            "Insurer's list", "Value of one");
    XComponent document = office.open(QUOTE);
    Path pdf = office.newFolder().resolve("paper.pdf");
    try {
      XSpreadsheet sheet = TestSheet.named(document, tab).sheet();
      Uno.set(sheet, "IsVisible", true);
      Uno.as(XSpreadsheetView.class, view(document)).setActiveSheet(sheet);
      export(document, pdf);
      String text = PdfText.of(pdf);
      only.forEach(
          (name, words) -> {
            if (name.equals(paper)) {
              assertThat(text).contains(words);
            } else {
              assertThat(text).doesNotContain(words);
            }
          });
      // the others are printed again when somebody goes to them
      XSpreadsheet note = TestSheet.named(document, "Delivery note").sheet();
      assertThat(Uno.as(XPrintAreas.class, note).getPrintAreas()).isNotEmpty();
    } finally {
      Office.discard(document);
    }
  }

  /** Exports to PDF as the button of the toolbar does. */
  private static void export(XComponent document, Path pdf) throws Exception {
    order(
        view(document).getFrame(),
        ".uno:ExportDirectToPDF",
        Uno.property("URL", office.address(pdf)),
        Uno.property("FilterName", "calc_pdf_Export"));
    ShownWindow.until("the file", () -> Files.exists(pdf) ? pdf : null);
  }

  /** Nobody has drawn its diagram: printing does, and shows no tab that was hidden. */
  @Test
  void a_filled_plan_printed_for_the_first_time_has_its_diagram() throws Exception {
    XComponent document = office.open(BLANK_LIGHTING);
    Path pdf = office.newFolder().resolve("lighting.pdf");
    try {
      XSpreadsheet diagram = TestSheet.named(document, "Diagram").sheet();
      assertThat(Uno.as(XPrintAreas.class, diagram).getPrintAreas()).isEmpty();
      type(document, "Supplies", "name", "harbour kiosk");
      type(document, "Supplies", "type", "utility");
      export(document, pdf);
      // the title block of the drawing, and the source on a paper of its own
      assertThat(PdfText.of(pdf)).contains("L1 brown").contains("harbour kiosk");
      assertThat(Uno.get(diagram, "IsVisible")).isEqualTo(false);
    } finally {
      Office.discard(document);
    }
  }

  /** Types a word in the first row of a table. */
  private static void type(XComponent document, String table, String key, String word)
      throws Exception {
    XCellRange cells =
        Uno.as(
                XCellRangeReferrer.class,
                Uno.as(XNameAccess.class, Uno.get(document, "NamedRanges")).getByName(table))
            .getReferredCells();
    int column = 0;
    while (!Uno.as(XText.class, cells.getCellByPosition(column, 0)).getString().equals(key)) {
      column++;
    }
    Uno.as(XText.class, cells.getCellByPosition(column, 1)).setString(word);
  }

  /** Drawing its diagram modifies the chart of generators, and so the document. */
  @Test
  void a_plan_with_diagram_and_chart_stays_unmodified() throws Exception {
    XComponent document = office.open(LIGHTING);
    Path pdf = office.newFolder().resolve("example.pdf");
    try {
      Uno.as(XModifiable.class, document).setModified(false);
      export(document, pdf);
      assertThat(PdfText.of(pdf)).contains("L1 brown");
      assertThat(Uno.as(XModifiable.class, document).isModified()).isFalse();
      // what somebody has typed is still to be saved
      type(document, "Supplies", "name", "kiosk");
      export(document, pdf.resolveSibling("again.pdf"));
      assertThat(Uno.as(XModifiable.class, document).isModified()).isTrue();
    } finally {
      Office.discard(document);
    }
  }

  @Test
  void a_plan_without_sources_has_no_diagram() throws Exception {
    XComponent document = office.open(BLANK_LIGHTING);
    Path pdf = office.newFolder().resolve("blank.pdf");
    try {
      export(document, pdf);
      XSpreadsheet diagram = TestSheet.named(document, "Diagram").sheet();
      assertThat(Uno.as(XPrintAreas.class, diagram).getPrintAreas()).isEmpty();
    } finally {
      Office.discard(document);
    }
  }

  /** Clears the rows of the quote from the tenth on: what is left fits on a page. */
  private static void shorten(XComponent document) throws Exception {
    CellRangeAddress items =
        Uno.as(
                XCellRangeAddressable.class,
                Uno.as(
                        XCellRangeReferrer.class,
                        Uno.as(XNameAccess.class, Uno.get(document, "NamedRanges"))
                            .getByName("Items"))
                    .getReferredCells())
            .getRangeAddress();
    XSpreadsheet sheet = TestSheet.named(document, "Quote").sheet();
    Uno.as(XProtectable.class, sheet).unprotect("");
    Uno.as(
            XSheetOperation.class,
            sheet.getCellRangeByPosition(
                items.StartColumn, items.StartRow + 10, items.EndColumn, items.EndRow - 1))
        .clearContents(CellFlags.VALUE | CellFlags.DATETIME | CellFlags.STRING);
  }

  private static void showPreview(XFrame window) throws Exception {
    order(window, ".uno:PrintPreview");
    ShownWindow.until("the preview", () -> isPreview(window.getController()) ? window : null);
  }

  private static boolean isPreview(XController view) {
    return view != null && Uno.as(XSpreadsheetView.class, view) == null;
  }

  /** Shows the preview in a window and closes it; there is another view afterwards. */
  private static void preview(XController view) throws Exception {
    XFrame window = view.getFrame();
    showPreview(window);
    order(window, ".uno:ClosePreview");
    ShownWindow.until("the sheet", () -> Uno.as(XSpreadsheetView.class, window.getController()));
  }

  /** A view of the document that is not this one; null as long as there is none. */
  private static XController otherThan(XController known, XComponent document) throws Exception {
    XEnumeration views = Uno.as(XModel2.class, document).getControllers();
    while (views.hasMoreElements()) {
      XController view = Uno.as(XController.class, views.nextElement());
      if (!UnoRuntime.areSame(view, known)) {
        return view;
      }
    }
    return null;
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
      showPreview(view(document).getFrame());
      dispatch(document, ".uno:ClosePreview");
    } finally {
      Office.discard(document);
    }
  }
}
