package org.setpower.plan.common;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.time.LocalTime;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.setpower.plan.finding.CommonFinding;
import org.setpower.plan.finding.Finding;
import org.setpower.plan.finding.FindingKey;

class InputTableTest {
  /** A table of every kind of column. */
  @Table(key = "lamps", heading = "Lamps", rows = 3)
  public record Lamp(
      @Input(key = "name", heading = "Name", help = "Its name.") String name,
      @Input(
              key = "watts",
              heading = "Power",
              unit = "W",
              min = 0,
              max = 100,
              blank = "Blank: 0 W.")
          Double watts,
      @Input(key = "day", heading = "Day", blank = "Blank: all days.") LocalDate day,
      @Input(key = "dim", heading = "Dimmable", blank = "Blank: no.") Boolean dim,
      @Input(key = "level", heading = "Level", unit = "%", count = 2, blank = "Blank: none.")
          List<Double> levels) {}

  private static final InputTable<Lamp> LAMPS = InputTable.of(Lamp.class);
  private static final Object[] KEYS = {"name", "watts", "day", "dim", "level1", "level2"};

  private static InputRows<Lamp> read(Object[]... rows) {
    Object[][] range = new Object[rows.length + 2][];
    range[0] = KEYS;
    System.arraycopy(rows, 0, range, 1, rows.length);
    range[rows.length + 1] = new Object[] {InputTable.END, "", "", "", "", ""};
    return LAMPS.read(range);
  }

  private static FindingKey only(InputRow<Lamp> row) {
    assertThat(row.findings()).hasSize(1);
    return row.findings().get(0).key();
  }

  @Test
  void cells_are_read_by_type() {
    // day 46420 after 30 Dec 1899 is 2 Feb 2027
    InputRow<Lamp> row = read(new Object[] {" A ", 5.5, 46420.75, "YES", "", 30.0}).rows().get(0);
    assertThat(row.value())
        .isEqualTo(new Lamp("A", 5.5, LocalDate.of(2027, 2, 2), true, List.of(30.0)));
    assertThat(row.findings()).isEmpty();
    assertThat(read(new Object[] {1204.0, "", "2027-02-02", "", "", ""}).rows().get(0).value())
        .isEqualTo(new Lamp("1204", null, LocalDate.of(2027, 2, 2), null, List.of()));
  }

  @Test
  void columns_are_found_by_key_not_by_place() {
    Object[][] range = {
      {"level2", "dim", "watts", "level1", "name", "day"},
      {2.0, "no", 7.0, 1.0, "A", ""},
      {InputTable.END}
    };
    assertThat(LAMPS.read(range).rows().get(0).value())
        .isEqualTo(new Lamp("A", 7.0, null, false, List.of(1.0, 2.0)));
  }

  @Test
  void wrong_keys_stop_the_table() {
    for (Object[] keys :
        List.of(
            new Object[] {"name", "watts", "day", "dim", "level1"},
            new Object[] {"name", "watts", "day", "dim", "level1", "level2", "new"},
            new Object[] {"name", "watts", "day", "dim", "level1", "level2", ""},
            new Object[] {"name", "watts", "day", "dim", "level1", "level2", "watts"},
            new Object[] {"name", "watts", "#", "dim", "level1", "level2"})) {
      InputRows<Lamp> rows =
          LAMPS.read(new Object[][] {keys, {"A", 1.0, "", "", "", ""}, {InputTable.END}});
      assertThat(rows.fault().orElseThrow().key()).isEqualTo(CommonFinding.WRONG_KEYS);
      assertThat(rows.filled()).isEmpty();
    }
  }

  @Test
  void a_lost_end_row_stops_the_table() {
    InputRows<Lamp> rows =
        LAMPS.read(new Object[][] {KEYS, {"A", 1.0, "", "", "", ""}, {"B", 1.0, "", "", "", ""}});
    assertThat(rows.fault().orElseThrow().key()).isEqualTo(CommonFinding.NO_END_ROW);
  }

  @Test
  void an_unreadable_range_stops_the_table() {
    for (Object range : new Object[] {"#", 7.0, new Object[][] {{"#"}}, new Object[0][]}) {
      assertThat(LAMPS.read(range).fault().orElseThrow().key())
          .isEqualTo(CommonFinding.UNREADABLE_TABLE);
    }
    assertThat(LAMPS.read(null).fault()).isPresent();
  }

  @Test
  void a_blank_row_is_not_there_but_keeps_its_place() {
    InputRows<Lamp> rows =
        read(
            new Object[] {"", null, " ", "\u00a0", "", ""}, new Object[] {"B", "", "", "", "", ""});
    assertThat(rows.rows()).hasSize(2);
    assertThat(rows.filled().map(InputRow::number)).containsExactly(2);
  }

  @Test
  void a_blank_is_a_finding_only_where_it_is_required() {
    assertThat(only(read(new Object[] {"", 5.0, "", "", "", ""}).rows().get(0)))
        .isEqualTo(CommonFinding.BLANK_CELL);
    assertThat(read(new Object[] {"A", "", "", "", "", ""}).rows().get(0).findings()).isEmpty();
  }

  @ParameterizedTest
  @ValueSource(strings = {"12.5", "12,5", "5 W", "five"})
  void text_is_never_taken_for_a_number(String text) {
    InputRow<Lamp> row = read(new Object[] {"A", text, "", "", "", ""}).rows().get(0);
    assertThat(only(row)).isEqualTo(CommonFinding.NOT_A_NUMBER);
    assertThat(row.unreadable()).containsExactly("watts");
    assertThat(row.value().watts()).isNull();
  }

  @Test
  void a_hostile_cell_is_a_finding_of_its_row() {
    Object[][] cells = {
      {"#", CommonFinding.UNREADABLE_CELL},
      {Double.NaN, CommonFinding.UNREADABLE_CELL},
      {Boolean.TRUE, CommonFinding.UNREADABLE_CELL},
      {100.1, CommonFinding.OUT_OF_RANGE},
      {-0.1, CommonFinding.OUT_OF_RANGE},
      {"x".repeat(256), CommonFinding.TOO_LONG}
    };
    for (Object[] cell : cells) {
      InputRows<Lamp> rows =
          read(
              new Object[] {"A", cell[0], "", "", "", ""}, new Object[] {"B", 1.0, "", "", "", ""});
      assertThat(only(rows.rows().get(0))).isEqualTo(cell[1]);
      assertThat(rows.rows().get(1).findings()).isEmpty();
    }
    assertThat(only(read(new Object[] {"A", "", "3.2.2027", "", "", ""}).rows().get(0)))
        .isEqualTo(CommonFinding.NOT_A_DATE);
    assertThat(only(read(new Object[] {"A", "", "2027-02-30", "", "", ""}).rows().get(0)))
        .isEqualTo(CommonFinding.NOT_A_DATE);
    assertThat(only(read(new Object[] {"A", "", 12.0, "", "", ""}).rows().get(0)))
        .isEqualTo(CommonFinding.NOT_A_DATE);
    assertThat(only(read(new Object[] {"A", "", "", "y", "", ""}).rows().get(0)))
        .isEqualTo(CommonFinding.UNKNOWN_WORD);
  }

  /** Day, month and year in the order of each country, common practice; ISO 8601 everywhere. */
  @ParameterizedTest
  @CsvSource({"en-GB, 31/12/2026", "en-US, 12/31/2026", "de-DE, 31.12.2026", "fr-FR, 31/12/2026"})
  void a_refused_date_has_an_example_as_it_is_typed(String language, String example) {
    Finding refused =
        read(new Object[] {"A", "", "10.12.26", "", "", ""}).rows().get(0).findings().get(0);
    assertThat(new EnglishMessages().sentence(refused, Locale.forLanguageTag(language)))
        .endsWith("holds \"10.12.26\". Type a date such as " + example + " or 2026-12-31.");
  }

  @Test
  void short_and_missing_rows_are_blank() {
    assertThat(read(new Object[] {"A"}, null).rows().get(0).findings()).isEmpty();
    assertThat(read(new Object[] {"A"}, null).rows().get(1).isBlank()).isTrue();
  }

  /** The same table with another domain. */
  @Table(key = "lamps", heading = "Lights", rows = 3)
  public record Other(
      @Input(key = "name", heading = "Called", help = "Another text.") String name,
      @Input(
              key = "watts",
              heading = "Power",
              unit = "W",
              min = 0,
              max = 200,
              blank = "Blank: 0 W.")
          Double watts) {}

  /** The same table with other words only. */
  @Table(key = "lamps", heading = "Lights", rows = 3)
  public record Renamed(
      @Input(key = "name", heading = "Label", help = "Something else.") String name,
      @Input(key = "watts", heading = "Load", unit = "W", min = 0, max = 200, blank = "Blank: –.")
          Double watts) {}

  @Test
  void the_layout_changes_with_the_domain_and_not_with_words() {
    String hash = InputTable.layoutHash(List.of(InputTable.of(Other.class)));
    assertThat(InputTable.layoutHash(List.of(InputTable.of(Renamed.class)))).isEqualTo(hash);
    assertThat(InputTable.layoutHash(List.of(LAMPS))).isNotEqualTo(hash).hasSize(16);
  }

  /** A table with a time. */
  @Table(key = "calls", heading = "Calls", rows = 1)
  public record Call(
      @Input(key = "call", heading = "Call", help = "Time of the clock.") LocalTime call) {}

  private static InputRow<Call> call(Object cell) {
    Object[][] range = {{"call"}, {cell}, {InputTable.END}};
    return InputTable.of(Call.class).read(range).rows().get(0);
  }

  /** A spreadsheet holds a time as a part of the day. */
  @ParameterizedTest
  @CsvSource({"0,00:00", "0.25,06:00", "0.6805555556,16:20", "1,00:00", "0.99999,00:00"})
  void times_are_parts_of_a_day(double cell, String time) {
    assertThat(call(cell).value().call()).isEqualTo(LocalTime.parse(time));
    assertThat(call(cell).findings()).isEmpty();
  }

  @Test
  void times_may_be_texts_with_a_colon() {
    assertThat(call("7:05").value().call()).isEqualTo(LocalTime.of(7, 5));
    assertThat(call("23:59").value().call()).isEqualTo(LocalTime.of(23, 59));
  }

  @ParameterizedTest
  @ValueSource(strings = {"24:00", "7", "7.30", "07:60", "noon", "7:05 pm", "-1:00"})
  void other_texts_are_no_times(String cell) {
    assertThat(call(cell).value().call()).isNull();
    assertThat(call(cell).findings().get(0).key()).isEqualTo(CommonFinding.NOT_A_TIME);
  }

  /** 27:00 is 1.125 in its cell. */
  @Test
  void a_time_past_midnight_is_shown_as_typed() {
    assertThat(call(1.125).findings().get(0).arguments()).contains("27:00");
  }

  @ParameterizedTest
  @ValueSource(doubles = {-0.1, 1.5, 7, 46420.25})
  void other_numbers_are_no_times(double cell) {
    assertThat(call(cell).findings().get(0).key()).isEqualTo(CommonFinding.NOT_A_TIME);
  }
}
