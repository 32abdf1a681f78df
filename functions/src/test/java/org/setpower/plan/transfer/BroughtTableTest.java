package org.setpower.plan.transfer;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** What a sheet keeps of what was brought in. */
class BroughtTableTest {
  private static final List<BroughtTable> TABLES =
      List.of(
          new BroughtTable(
              TransferWay.LIGHTING_TO_QUOTE,
              "plan, v3.ods",
              "3",
              "2027-01-18",
              TransferTarget.QUOTE_ITEMS,
              List.of(
                  new BroughtRow(
                      "PANEL",
                      "lights = all",
                      4,
                      Map.of(
                          "item",
                          "panel = \\n #4\nsecond line",
                          "qty",
                          2.5,
                          "out",
                          LocalDate.of(2027, 2, 2))),
                  new BroughtRow("7", "", 0, Map.of("item", "7")))),
          new BroughtTable(
              TransferWay.BATTERIES_TO_QUOTE,
              "plan, v3.ods",
              "",
              "",
              TransferTarget.QUOTE_ITEMS,
              List.of(new BroughtRow("P98", "", 5, Map.of("qty", 0.1 + 0.2)))));

  @Test
  void it_is_read_as_it_was_written() {
    assertThat(BroughtTable.read(BroughtTable.written(TABLES).toArray(Object[][]::new)))
        .isEqualTo(TABLES);
  }

  /** A sheet may turn a key of digits into a number. */
  @Test
  void numbers_are_texts_where_texts_belong() {
    List<Object[]> written = BroughtTable.written(TABLES);
    written.get(1)[6] = 7.0;
    written.forEach(r -> r[2] = "3".equals(r[2]) ? (Object) 3.0 : r[2]);
    assertThat(BroughtTable.read(written.toArray(Object[][]::new))).isEqualTo(TABLES);
  }

  @Test
  void what_is_no_row_of_ours_is_passed_over() {
    List<Object[]> written = new ArrayList<>(BroughtTable.written(TABLES));
    written.add(0, new Object[] {"heading", "", "", "", "", "", "", "", ""});
    written.add(new Object[] {"LIGHTING_TO_QUOTE", "x", "", "", "QUOTE_ITEMS", "four", "", "", ""});
    written.add(new Object[] {null, null, null, null, null, null, null, null, null});
    written.add(new Object[] {"LIGHTING_TO_QUOTE"});
    assertThat(BroughtTable.read(written.toArray(Object[][]::new))).isEqualTo(TABLES);
  }

  @Test
  void a_damaged_cell_counts_as_not_brought_in() {
    List<Object[]> written = BroughtTable.written(TABLES);
    written.get(0)[8] = "qty#two\nout@someday\nitem=panel\n=\nnothing";
    assertThat(BroughtTable.read(written.toArray(Object[][]::new)).get(0).rows().get(0).cells())
        .isEqualTo(Map.of("item", "panel"));
  }
}
