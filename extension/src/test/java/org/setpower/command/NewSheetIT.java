package org.setpower.command;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import com.sun.star.container.XNameAccess;
import com.sun.star.document.XUndoManagerSupplier;
import com.sun.star.frame.XDesktop;
import com.sun.star.frame.XStorable;
import com.sun.star.lang.XComponent;
import com.sun.star.sheet.XCellRangeReferrer;
import com.sun.star.uno.UnoRuntime;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.setpower.addin.SharedOffice;
import org.setpower.office.Office;

/** New documents from what ships with the extension. */
@ExtendWith(SharedOffice.class)
class NewSheetIT {
  private Office office;
  private XComponent document;

  @BeforeEach
  void take(Office shared) {
    office = shared;
    Asking.command(office, null, "settings", "UNITS", "US");
  }

  @AfterEach
  void close() {
    Asking.command(office, null, "settings", "UNITS", "");
    if (document != null) {
      Office.discard(document);
    }
  }

  private List<String> titles() {
    return Asking.command(office, null, "new").lines().toList();
  }

  private void open(String title) {
    assertThat(Asking.command(office, null, "new", "title", title)).isEqualTo(title);
    document = office.service(XDesktop.class, "com.sun.star.frame.Desktop").getCurrentComponent();
  }

  private String units() throws com.sun.star.uno.Exception {
    Object names = Uno.get(document, "NamedRanges");
    Object name = UnoRuntime.queryInterface(XNameAccess.class, names).getByName("Job_Units");
    return Book.shown(
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
    open(titles().get(titles().size() - 1));
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
  void every_setting_has_its_cell_in_one_template_at_least() throws Exception {
    Set<String> wanted = new TreeSet<>();
    for (Setting setting : Setting.values()) {
      wanted.add(setting.cell());
    }
    for (String title : titles().subList(0, titles().size() / 2)) {
      open(title);
      Object names = Uno.get(document, "NamedRanges");
      wanted.removeAll(
          List.of(UnoRuntime.queryInterface(XNameAccess.class, names).getElementNames()));
      Office.discard(document);
      document = null;
    }
    assertThat(wanted).isEmpty();
  }

  @Test
  void a_title_that_is_not_there_is_told() {
    assertThatThrownBy(() -> open("Nonsense")).hasMessageContaining("no sheet “Nonsense”");
  }
}
