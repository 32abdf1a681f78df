package org.setpower.command.settings;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.setpower.addin.SharedOffice;
import org.setpower.addin.TestSheet;
import org.setpower.command.CommandContext;
import org.setpower.command.CommandDriver;
import org.setpower.command.NamedExpressions;
import org.setpower.command.document.CalcDocument;
import org.setpower.office.Office;

/** What the office keeps for new sheets. */
@ExtendWith(SharedOffice.class)
class UserSettingsIT {
  private final Office office;

  UserSettingsIT(Office office) {
    this.office = office;
  }

  @AfterEach
  void clear() {
    settings("UNITS", "", "MAX_DROP", "");
  }

  private String settings(String... options) {
    return CommandDriver.command(office, null, "settings", options);
  }

  @Test
  void are_kept_in_the_configuration() {
    assertThat(settings()).contains("UNITS=\n", "MAX_DROP=");
    settings("UNITS", "US", "MAX_DROP", "5.5");
    assertThat(settings()).contains("UNITS=US\n", "CURRENCY=\n", "MAX_DROP=5.5\n");
  }

  @Test
  void fill_the_cells_of_a_new_sheet_that_bear_their_names() throws Exception {
    settings("UNITS", "US", "MAX_DROP", "5.5");
    TestSheet sheet = TestSheet.firstOf(office.newSpreadsheet());
    NamedExpressions.define(sheet, "Project_units", "$Sheet1.$B$2");
    NamedExpressions.define(sheet, "Project_maxDrop", "$Sheet1.$B$3");
    NamedExpressions.define(sheet, "Project_currency", "$Sheet1.$B$4");
    sheet.text("B2", "metric").put("B3", 0.06).text("B4", "EUR");
    new UserSettings(new CommandContext(office.context(), null))
        .fill(new CalcDocument(sheet.document()));
    assertThat(sheet.data("B2:B4")).isDeepEqualTo(new Object[][] {{"US"}, {0.055}, {"EUR"}});
    sheet.close();
  }

  @Test
  void a_value_that_makes_no_sense_is_refused_with_what_is_known() {
    assertThatThrownBy(() -> settings("FLIGHT_RULES", "ours")).hasMessageContaining("ICAO");
    assertThatThrownBy(() -> settings("UNITS", "cubits")).hasMessageContaining("metric, US");
    assertThatThrownBy(() -> settings("MAX_DROP", "300")).hasMessageContaining("at most 20");
    assertThat(settings()).contains("UNITS=\n", "MAX_DROP=\n");
  }
}
