package org.setpower.command.csv;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.charset.StandardCharsets;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.setpower.command.document.InputRule;
import org.setpower.command.message.UserMessageException;

/** CSV files, which come from everywhere. */
class CsvTextTest {
  private static List<List<String>> read(String text) {
    return CsvText.read(text.getBytes(StandardCharsets.UTF_8)).stream()
        .map(CsvText.Line::cells)
        .toList();
  }

  @Test
  void commas_semicolons_and_tabs_are_found_by_the_headings() {
    List<List<String>> same = List.of(List.of("Item", "Power"), List.of("Lamp", "40"));
    assertThat(read("Item,Power\nLamp,40\n")).isEqualTo(same);
    assertThat(read("Item;Power\r\nLamp;40\r\n")).isEqualTo(same);
    assertThat(read("Item\tPower\nLamp\t40")).isEqualTo(same);
  }

  @Test
  void a_mark_at_the_start_blank_lines_and_quotes_do_no_harm() {
    assertThat(read("\uFEFFItem,Power\n\n,\n\"Lamp, \"\"big\"\"\",40\n"))
        .containsExactly(List.of("Item", "Power"), List.of("Lamp, \"big\"", "40"));
  }

  @Test
  void lines_keep_their_number_in_the_file() {
    List<CsvText.Line> lines =
        CsvText.read("Item\n\n\"two\nlines\"\nlast\n".getBytes(StandardCharsets.UTF_8));
    assertThat(lines).extracting(CsvText.Line::number).containsExactly(1L, 2L, 5L);
  }

  @Test
  void what_a_spreadsheet_might_run_is_written_harmless_and_read_back_as_it_was() {
    byte[] written =
        CsvText.write(
            List.of("Item", "Power"),
            List.of(new Object[] {"=cmd", -2.5}, new Object[] {"+1", 40.0}));
    assertThat(new String(written, StandardCharsets.UTF_8))
        .isEqualTo("\uFEFFItem,Power\r\n'=cmd,-2.5\r\n'+1,40\r\n");
    assertThat(CsvText.read(written))
        .extracting(l -> l.cells().get(0))
        .containsExactly("Item", "=cmd", "+1");
  }

  @Test
  void numbers_of_three_decimals_are_read_back_as_such() {
    byte[] written =
        CsvText.write(
            List.of("Item", "Mass"),
            List.of(
                new Object[] {"a", 2.125},
                new Object[] {"b", 0.125},
                new Object[] {"c", -12.625},
                new Object[] {"d", 1234.125}));
    assertThat(new String(written, StandardCharsets.UTF_8))
        .isEqualTo("\uFEFFItem,Mass\r\na,2.1250\r\nb,0.125\r\nc,-12.6250\r\nd,1234.125\r\n");
    InputRule any = new InputRule(true, false, -1e9, 1e9, List.of());
    assertThat(CsvText.read(written).subList(1, 5))
        .extracting(l -> any.value(l.cells().get(1)))
        .containsExactly(2.125, 0.125, -12.625, 1234.125);
  }

  @Test
  void another_character_set_is_told_with_its_line() {
    byte[] latin = "Item\nLamp\nGerät\n".getBytes(StandardCharsets.ISO_8859_1);
    assertThatThrownBy(() -> CsvText.read(latin))
        .hasMessageContaining("not in UTF-8")
        .hasMessageContaining("line 3");
    byte[] wide = "Item\nLamp\n".getBytes(StandardCharsets.UTF_16LE);
    assertThatThrownBy(() -> CsvText.read(wide)).hasMessageContaining("not in UTF-8");
  }

  @Test
  void a_broken_quote_is_told() {
    assertThatThrownBy(() -> read("Item,Power\n\"Lamp\"x,40\n"))
        .isInstanceOf(UserMessageException.class);
  }
}
