package org.setpower.addin;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.setpower.office.Office;

/** What a cell shows for every kind of fault, and how ranges map. */
@ExtendWith(SharedOffice.class)
class ErrorTableIT {
  private static final int DOMAIN = 502;
  private static final int TOO_MANY = 504;
  private static final int WRONG_KIND = 519;
  private static final int NO_ANSWER = 32767;
  private static final int DIVISION_BY_ZERO = 532;

  private TestSheet sheet;

  @BeforeEach
  void open(Office office) throws IOException {
    sheet = TestSheet.firstOf(office.newSpreadsheet());
  }

  @AfterEach
  void close() {
    sheet.close();
  }

  @Test
  void a_value_outside_the_domain_is_502() {
    assertThat(sheet.put("A1", "=CABLE.AREA(12)").error("A1")).isEqualTo(DOMAIN);
    assertThat(sheet.put("A2", "=CABLE.DROP(\"12 AWG\";-1;5;\"DC\")").error("A2"))
        .isEqualTo(DOMAIN);
  }

  @Test
  void a_question_without_answer_is_not_available() {
    sheet.put("A1", "=CABLE.RESISTANCE(\"250 kcmil\")").put("A2", "=IFNA(A1;\"caught\")");
    assertThat(sheet.error("A1")).isEqualTo(NO_ANSWER);
    assertThat(sheet.shown("A1")).isEqualTo("#N/A");
    assertThat(sheet.shown("A2")).isEqualTo("caught");
  }

  @Test
  void text_where_a_number_belongs_is_a_wrong_kind() {
    sheet.text("B1", "five").put("A1", "=CABLE.DROP(\"12 AWG\";10;B1;\"DC\")");
    assertThat(sheet.error("A1")).isEqualTo(WRONG_KIND);
    assertThat(sheet.shown("A1")).isEqualTo("#VALUE!");
  }

  @Test
  void an_error_cell_is_handed_on() {
    sheet.put("B1", "=1/0").put("A1", "=CABLE.DROP(\"12 AWG\";10;B1;\"DC\")");
    assertThat(sheet.error("A1")).isEqualTo(DIVISION_BY_ZERO);
  }

  @Test
  void too_few_and_too_many_arguments_are_errors() {
    assertThat(sheet.put("A1", "=CABLE.DROP(\"12 AWG\";10;;\"DC\")").error("A1")).isEqualTo(DOMAIN);
    assertThat(sheet.put("A2", "=CABLE.AREA(1;2)").error("A2")).isEqualTo(TOO_MANY);
  }

  @Test
  void an_optional_argument_may_be_left_out_or_empty() {
    sheet.put("A1", "=CABLE.DROP(\"12 AWG\";10;5;\"DC\";;75)");
    sheet.put("A2", "=CABLE.DROP(\"12 AWG\";10;5;\"DC\";1;75)");
    sheet.put("A3", "=CABLE.DROP(\"12 AWG\";10;5;\"DC\";\"\";75)");
    assertThat(sheet.number("A1")).isPositive();
    assertThat(sheet.number("A1")).isEqualTo(sheet.number("A2"));
    assertThat(sheet.number("A3")).isEqualTo(sheet.number("A2"));
  }

  @Test
  void a_range_maps_in_an_array_formula_with_faults_in_their_own_cells() {
    sheet.put("A1", 2.5).put("A2", 7).text("A3", "5/0").text("A5", "250 kcmil");
    sheet.array("B1:B5", "=CABLE.RESISTANCE(A1:A5)");
    assertThat(sheet.number("B1")).isCloseTo(7.98, within(1e-9));
    assertThat(sheet.error("B2")).isEqualTo(DOMAIN);
    assertThat(sheet.shown("B2")).isEqualTo("Err:502");
    assertThat(sheet.error("B3")).isEqualTo(DOMAIN);
    assertThat(sheet.shown("B4")).as("blank gives blank").isEmpty();
    assertThat(sheet.error("B5")).isEqualTo(NO_ANSWER);
  }

  @Test
  void a_wrong_kind_inside_a_matrix_shows_as_such() {
    sheet.put("A1", 5).text("A2", "five");
    sheet.array("B1:B2", "=CABLE.DROP(\"12 AWG\";10;A1:A2;\"DC\")");
    assertThat(sheet.error("B1")).isZero();
    assertThat(sheet.error("B2")).isEqualTo(WRONG_KIND);
  }

  @Test
  void a_range_maps_in_sumproduct() {
    sheet.put("A1", 1.5).put("A2", 2.5).put("A3", 4);
    sheet.put("B1", "=SUMPRODUCT(CABLE.AREA(A1:A3))");
    assertThat(sheet.number("B1")).isEqualTo(8);
    sheet.put("C1", 10).put("C2", 20).put("C3", 30);
    sheet.put("B2", "=SUMPRODUCT(CABLE.DROP(A1:A3;C1:C3;5;\"DC\"))");
    sheet.put(
        "B3", "=CABLE.DROP(A1;C1;5;\"DC\")+CABLE.DROP(A2;C2;5;\"DC\")+CABLE.DROP(A3;C3;5;\"DC\")");
    assertThat(sheet.number("B2")).isCloseTo(sheet.number("B3"), within(1e-12));
  }

  @Test
  void a_row_and_a_column_span_a_table() {
    sheet.put("A2", 1.5).put("A3", 2.5).put("B1", 10).put("C1", 20).put("D1", 30);
    sheet.array("B2:D3", "=CABLE.DROP(A2:A3;B1:D1;5;\"DC\")");
    sheet.put("F1", "=CABLE.DROP(A3;D1;5;\"DC\")");
    assertThat(sheet.number("D3")).isPositive().isEqualTo(sheet.number("F1"));
  }

  @Test
  void ranges_that_do_not_fit_are_refused_as_a_whole() {
    sheet.put("A1", 1.5).put("A2", 2.5).put("B1", 10).put("B2", 20).put("B3", 30);
    sheet.put("C1", "=SUMPRODUCT(CABLE.DROP(A1:A2;B1:B3;5;\"DC\"))");
    sheet.put("C2", "=SHEET.WHY(\"CABLE.DROP\";A1:A2;B1:B3;5)");
    assertThat(sheet.error("C1")).isEqualTo(WRONG_KIND);
    assertThat(sheet.shown("C2")).contains("differ in size");
  }

  @Test
  void a_whole_column_is_refused_by_its_size() {
    sheet.put("B1", "=SUMPRODUCT(CABLE.AREA(A1:A1048576))");
    assertThat(sheet.error("B1")).isEqualTo(DOMAIN);
  }

  @Test
  void an_error_inside_a_range_is_caught_by_calc() {
    sheet.put("A1", 1.5).put("A2", "=1/0");
    sheet.put("B1", "=SUMPRODUCT(CABLE.AREA(A1:A2))");
    assertThat(sheet.error("B1")).isEqualTo(TOO_MANY);
  }

  @Test
  void names_survive_saving_and_reading(Office office) throws IOException {
    sheet.put("A1", "=CABLE.AREA(\"2.5 mm²\")");
    assertThat(sheet.cell("A1").getFormula()).startsWith("=ORG.SETPOWER.FUNCTIONS.CABLEAREA(");
    var file = java.nio.file.Path.of("target/names.ods");
    office.store(sheet.document(), "calc8", file);
    TestSheet again = TestSheet.firstOf(office.open(file));
    again.calculate();
    assertThat(again.number("A1")).isEqualTo(2.5);
    again.close();
  }
}
