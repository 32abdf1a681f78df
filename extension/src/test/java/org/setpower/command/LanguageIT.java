package org.setpower.command;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import com.sun.star.container.XNameAccess;
import com.sun.star.frame.XDesktop;
import com.sun.star.lang.XComponent;
import com.sun.star.sheet.XSpreadsheetDocument;
import com.sun.star.style.XStyleFamiliesSupplier;
import com.sun.star.uno.UnoRuntime;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.setpower.addin.SharedOffice;
import org.setpower.addin.TestSheet;
import org.setpower.office.Office;
import org.setpower.uno.Uno;

/**
 * What the commands say and offer follows the language of the office; one of its own, as an office
 * that once spoke another language does not quite come back.
 */
class LanguageIT {
  private static Office office;
  private XComponent document;

  @BeforeAll
  static void start() throws IOException {
    office = Office.start(SharedOffice.OXT);
  }

  @AfterAll
  static void end() {
    office.close();
  }

  @AfterEach
  void close() {
    if (document != null) {
      Office.discard(document);
    }
  }

  private void open(String title) {
    assertThat(CommandDriver.command(office, null, "new", "title", title)).isEqualTo(title);
    document = office.service(XDesktop.class, "com.sun.star.frame.Desktop").getCurrentComponent();
  }

  @Test
  void new_sheets_are_offered_in_german() throws com.sun.star.uno.Exception {
    CommandDriver.speak(office, "de");
    List<String> titles = CommandDriver.command(office, null, "new").lines().toList();
    assumeTrue(
        Files.exists(Path.of("target/sheets/templates/de/lighting-power-plan.ots")),
        "drawn with -Dsheet.languages=all only");
    assertThat(titles).contains("Stromplan Licht").doesNotContain("Lighting power plan");
    open("Stromplan Licht");
    XNameAccess sheets =
        UnoRuntime.queryInterface(XSpreadsheetDocument.class, document).getSheets();
    assertThat(sheets.getElementNames()).contains("Projekt", "Übersicht");
    assertThat(CommandDriver.command(office, document, "look"))
        .contains("Stop: 1; Fehler: 0; check: 1");
    assertThat(CommandDriver.command(office, document, "mend")).startsWith("Alle Formeln");
  }

  @Test
  void new_sheets_have_american_words_in_the_united_states() throws Exception {
    CommandDriver.speak(office, "en-US");
    assumeTrue(
        Files.exists(Path.of("target/sheets/templates/en-US/battery-travel-list.ots")),
        "drawn with -Dsheet.languages=all only");
    open("Battery travel list");
    TestSheet project = TestSheet.firstOf(document);
    List<String> shown = new ArrayList<>();
    for (int row = 1; row <= 60; row++) {
      shown.add(project.shown("A" + row) + project.shown("B" + row));
    }
    assertThat(shown.toString()).contains("Travelers").doesNotContainIgnoringCase("travellers");
    assertThat(CommandDriver.command(office, document, "mend")).startsWith("All formulas match");
    XNameAccess pages =
        UnoRuntime.queryInterface(
            XNameAccess.class,
            UnoRuntime.queryInterface(XStyleFamiliesSupplier.class, document)
                .getStyleFamilies()
                .getByName("PageStyles"));
    List<Integer> narrow = new ArrayList<>();
    for (String name : pages.getElementNames()) {
      Object page = pages.getByName(name);
      if (name.startsWith("Set Power")) {
        narrow.add(Math.min((int) Uno.get(page, "Width"), (int) Uno.get(page, "Height")));
      }
    }
    assertThat(narrow).as("Letter, in 1/100 mm").isNotEmpty().containsOnly(21_590);
  }

  @Test
  void the_working_is_told_and_kept_in_french() throws Exception {
    CommandDriver.speak(office, "fr");
    TestSheet sheet = TestSheet.firstOf(office.newSpreadsheet());
    document = sheet.document();
    sheet.put("A1", "=ORG.SETPOWER.FUNCTIONS.CABLEDROP(4;25;16;\"DC\")");
    assertThat(CommandDriver.command(office, document, "explain", "cell", "A1", "put", "yes"))
        .contains("Longueur de câble", "[par défaut]")
        .doesNotContain("Cable length", "[default]");
    CommandDriver.command(office, document, "look");
    String[] french = {"Calcul", "Points ouverts"};
    assertThat(sheets()).contains(french);
    CommandDriver.speak(office, "de");
    CommandDriver.command(office, document, "explain", "cell", "A1", "put", "yes");
    CommandDriver.command(office, document, "look");
    assertThat(sheets()).hasSize(3).contains(french);
  }

  private String[] sheets() {
    return UnoRuntime.queryInterface(XSpreadsheetDocument.class, document)
        .getSheets()
        .getElementNames();
  }

  @Test
  void a_language_without_words_gets_english() throws com.sun.star.uno.Exception {
    CommandDriver.speak(office, "nl");
    assertThat(CommandDriver.command(office, null, "new")).contains("Lighting power plan");
  }
}
