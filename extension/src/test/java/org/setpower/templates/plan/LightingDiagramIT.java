package org.setpower.templates.plan;

import static org.assertj.core.api.Assertions.assertThat;

import com.sun.star.container.XIndexAccess;
import com.sun.star.drawing.XDrawPageSupplier;
import com.sun.star.sheet.XPrintAreas;
import com.sun.star.sheet.XSpreadsheet;
import com.sun.star.sheet.XSpreadsheetDocument;
import com.sun.star.text.XText;
import com.sun.star.util.XProtectable;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;
import org.setpower.addin.SharedOffice;
import org.setpower.command.CommandDriver;
import org.setpower.office.Office;
import org.setpower.uno.Uno;

/** The single-line diagram of the example, drawn on its tab of the lighting power plan. */
@ExtendWith(SharedOffice.class)
@Tag("one-office")
class LightingDiagramIT {
  private static final Path EXAMPLE =
      Path.of("target/sheets/examples/lighting-power-plan-example.ods");

  @TempDir Path folder;

  private static List<String> texts(XSpreadsheet tab) throws Exception {
    XIndexAccess groups =
        Uno.as(XIndexAccess.class, Uno.as(XDrawPageSupplier.class, tab).getDrawPage());
    List<String> texts = new ArrayList<>();
    for (int g = 0; g < groups.getCount(); g++) {
      XIndexAccess parts = Uno.as(XIndexAccess.class, groups.getByIndex(g));
      for (int i = 0; i < parts.getCount(); i++) {
        XText text = Uno.as(XText.class, parts.getByIndex(i));
        texts.add(text == null ? "" : text.getString());
      }
    }
    return texts;
  }

  /** What stands above the first page. */
  private static String notice(XSpreadsheet tab) throws Exception {
    int first = Uno.as(XPrintAreas.class, tab).getPrintAreas()[0].StartRow;
    return Uno.as(XText.class, tab.getCellByPosition(0, first)).getString();
  }

  @Test
  void the_example_is_drawn_on_its_tab_and_drawn_again_before_it_is_printed(Office office)
      throws Exception {
    var document = office.open(EXAMPLE);
    try {
      XSpreadsheet tab =
          Uno.as(
              XSpreadsheet.class,
              Uno.as(XSpreadsheetDocument.class, document).getSheets().getByName("Diagram"));
      assertThat((Boolean) Uno.get(tab, "IsVisible")).isFalse();
      boolean locked = Uno.as(XProtectable.class, tab).isProtected();
      assertThat(CommandDriver.command(office, document, "diagram"))
          .startsWith("The diagram is on the tab “Diagram”");
      assertThat((Boolean) Uno.get(tab, "IsVisible")).isTrue();
      assertThat(Uno.as(XProtectable.class, tab).isProtected()).isEqualTo(locked);
      List<String> drawn = texts(tab);
      assertThat(drawn).anyMatch(t -> t.contains("The Salt Road"));
      assertThat(drawn).anyMatch(t -> t.matches("\\d+ × LED 1600 W"));
      assertThat(drawn).anyMatch(t -> t.contains("35 mm²"));
      assertThat(notice(tab)).isEmpty();
      CommandDriver.command(office, document, "fit");
      assertThat(texts(tab)).isEqualTo(drawn);
      assertThat(notice(tab)).isEmpty();
      int pages = Uno.as(XPrintAreas.class, tab).getPrintAreas().length;
      assertThat(pages)
          .isEqualTo(
              Uno.as(XIndexAccess.class, Uno.as(XDrawPageSupplier.class, tab).getDrawPage())
                  .getCount());
      Path pdf = folder.resolve("example.pdf");
      office.store(document, "calc_pdf_Export", pdf);
      String keep = System.getenv("SETPOWER_PICTURES");
      if (keep != null) {
        Files.copy(pdf, Path.of(keep, "example.pdf"));
      }
      assertThat(Files.size(pdf)).isPositive();
    } finally {
      Office.discard(document);
    }
  }
}
