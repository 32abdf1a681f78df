package org.setpower.command.newfile;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import com.sun.star.container.XNameAccess;
import com.sun.star.document.XUndoManagerSupplier;
import com.sun.star.frame.XDesktop;
import com.sun.star.frame.XStorable;
import com.sun.star.lang.XComponent;
import com.sun.star.sheet.XCellRangeReferrer;
import com.sun.star.table.XCell;
import com.sun.star.uno.UnoRuntime;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.setpower.addin.SharedOffice;
import org.setpower.addin.TestSheet;
import org.setpower.command.CommandDriver;
import org.setpower.command.document.CalcDocument;
import org.setpower.command.document.JobCell;
import org.setpower.command.settings.Setting;
import org.setpower.office.Office;
import org.setpower.uno.Uno;

/** New documents from what ships with the extension. */
@ExtendWith(SharedOffice.class)
class NewFileIT {
  /** Of a plan's table the first row stands below the row of keys. */
  private static final int BELOW_KEYS = 2;

  private Office office;
  private XComponent document;

  @BeforeEach
  void take(Office shared) {
    office = shared;
    CommandDriver.command(office, null, "settings", "UNITS", "US");
  }

  @AfterEach
  void close() {
    CommandDriver.command(office, null, "settings", "UNITS", "", "FLIGHT_RULES", "");
    if (document != null) {
      Office.discard(document);
    }
  }

  private List<String> titles() {
    return CommandDriver.command(office, null, "new").lines().toList();
  }

  private void open(String title) {
    assertThat(CommandDriver.command(office, null, "new", "title", title)).isEqualTo(title);
    document = office.service(XDesktop.class, "com.sun.star.frame.Desktop").getCurrentComponent();
  }

  private String units() throws com.sun.star.uno.Exception {
    Object names = Uno.get(document, "NamedRanges");
    XNameAccess all = UnoRuntime.queryInterface(XNameAccess.class, names);
    Object name = all.getByName("Project_units");
    return CalcDocument.shown(
        UnoRuntime.queryInterface(XCellRangeReferrer.class, name)
            .getReferredCells()
            .getCellByPosition(0, 0));
  }

  @Test
  void a_template_opens_unnamed_with_the_settings_in_it_and_nothing_to_undo() throws Exception {
    open(titles().get(0));
    assertThat(UnoRuntime.queryInterface(XStorable.class, document).hasLocation()).isFalse();
    assertThat(
            UnoRuntime.queryInterface(XUndoManagerSupplier.class, document)
                .getUndoManager()
                .isUndoPossible())
        .isFalse();
    assertThat(units()).isEqualTo("US");
  }

  @Test
  void an_example_opens_unnamed_and_keeps_its_figures() throws Exception {
    open(
        titles().stream().filter(t -> t.contains("lighting power plan")).findFirst().orElseThrow());
    assertThat(UnoRuntime.queryInterface(XStorable.class, document).hasLocation()).isFalse();
    assertThat(units()).isEqualTo("metric");
  }

  @Test
  void there_is_an_example_for_every_template_and_each_has_a_title() {
    List<String> titles = titles();
    assertThat(titles).doesNotHaveDuplicates().noneMatch(t -> t.contains("."));
    assertThat(titles.size() % 2).isZero();
  }

  @Test
  void settings_and_the_job_have_their_cells() throws Exception {
    Set<String> wanted = new TreeSet<>();
    for (Setting setting : Setting.values()) {
      wanted.addAll(setting.cells());
    }
    for (String title : titles().subList(0, titles().size() / 2)) {
      List<String> names = names(title);
      wanted.removeAll(names);
      for (JobCell cell : List.of(JobCell.PRODUCTION, JobCell.REVISION)) {
        assertThat(cell.names()).as("%s of %s", cell, title).anyMatch(names::contains);
      }
    }
    assertThat(wanted).isEmpty();
  }

  private List<String> names(String title) throws Exception {
    open(title);
    Object names = Uno.get(document, "NamedRanges");
    List<String> all =
        List.of(UnoRuntime.queryInterface(XNameAccess.class, names).getElementNames());
    Office.discard(document);
    document = null;
    return all;
  }

  @Test
  void the_flight_rules_hold_for_flights_that_name_none() {
    CommandDriver.command(office, null, "settings", "FLIGHT_RULES", "US");
    open("Battery travel list");
    at("Flights", "Date", 0, BELOW_KEYS).setFormula("2026-12-11");
    at("Flights", "Operating carrier", 0, BELOW_KEYS).setFormula("first carrier");
    assertThat(shown("Flights", "Edition", 0, BELOW_KEYS)).contains("49 CFR 175.10");
    at("Flights", "Rules", 0, BELOW_KEYS).setFormula("ICAO");
    assertThat(shown("Flights", "Edition", 0, BELOW_KEYS))
        .contains("ICAO")
        .doesNotContain("49 CFR");
  }

  private String shown(String tab, String heading, int right, int below) {
    return CalcDocument.shown(at(tab, heading, right, below));
  }

  /** The cell so many columns right of a heading and rows below it. */
  private XCell at(String tab, String heading, int right, int below) {
    Object[][] cells = TestSheet.named(document, tab).data("A1:CZ60");
    for (int r = 0; r < cells.length; r++) {
      int c = Stream.of(cells[r]).map(NewFileIT::inOneLine).toList().indexOf(heading);
      if (c >= 0) {
        try {
          return TestSheet.named(document, tab)
              .range("A1:CZ70")
              .getCellByPosition(c + right, r + below);
        } catch (com.sun.star.lang.IndexOutOfBoundsException e) {
          throw new IllegalStateException(e);
        }
      }
    }
    throw new AssertionError(tab + " has no " + heading);
  }

  private static Object inOneLine(Object value) {
    return value instanceof String text ? TestSheet.inOneLine(text) : value;
  }

  @Test
  void a_title_that_is_not_there_is_told() {
    assertThatThrownBy(() -> open("Nonsense")).hasMessageContaining("no sheet “Nonsense”");
  }
}
