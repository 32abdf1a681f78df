package org.setpower.templates.spec;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.setpower.templates.spec.Formula.calc;
import static org.setpower.templates.spec.Formula.call;
import static org.setpower.templates.spec.Formula.or;
import static org.setpower.templates.spec.Formula.say;

import org.junit.jupiter.api.Test;
import org.setpower.registry.groups.CableFunctions;
import org.setpower.templates.layout.Layout;

/** Formulas as they are written into cells. */
class FormulaTest {
  private final FieldSpec limit =
      FieldSpec.input("Limit").share(0, 0.2).help("Most that may be lost.");
  private final ColumnSpec to = ColumnSpec.input("To").required();
  private final ColumnSpec length =
      ColumnSpec.input("Length").unit("m").number(CellFormat.ONE, 0, 900).required();
  private final ColumnSpec parallel = ColumnSpec.input("Parallel").number(CellFormat.COUNT, 1, 9);
  private final ColumnSpec area =
      ColumnSpec.result("Area", call(CableFunctions.AREA, to)).unit("mm²").format(CellFormat.TWO);
  private final ColumnSpec twice = ColumnSpec.result("Twice").unit("m").format(CellFormat.ONE);
  private final TableSpec runs =
      TableSpec.of("", 10)
          .columns(to, length, parallel, area, twice)
          .checks(ValidationRule.stop(calc("{}>{}", length, limit), say("{} m is long", length)));
  private final WorkbookSpec template =
      WorkbookSpec.of("t", "T", 1)
          .with(
              SheetSpec.of("Job", "").with(FieldBlock.of("The job", limit)),
              SheetSpec.of("To order", "").with(runs));
  private final Layout layout = new Layout(template);
  private final CellContext row = layout.place(runs);

  @Test
  void a_column_is_the_cell_of_the_row() {
    assertThat(calc("{}*2", length).text(row)).isEqualTo("$B6*2");
    assertThat(length.all().text(row)).isEqualTo("$'To order'.$B$6:$B$15");
    assertThat(length.above().text(row)).isEqualTo("$B$5:$B5");
    assertThat(length.below().text(row)).isEqualTo("$B7:$B$16");
    assertThat(limit.text(row)).isEqualTo("$Job.$B$6");
    assertThat(length.lookup(to, "a").text(row))
        .isEqualTo("INDEX($'To order'.$B$6:$B$15;MATCH(\"a\";$'To order'.$A$6:$A$15;0))");
  }

  @Test
  void a_column_of_another_table_stops_the_builder() {
    assertThatThrownBy(() -> length.text(layout.place()))
        .isInstanceOf(IllegalStateException.class)
        .hasMessageContaining("Length");
  }

  @Test
  void a_wrong_number_of_arguments_stops_the_builder() {
    assertThatThrownBy(() -> call(CableFunctions.AREA)).hasMessageContaining("CABLE.AREA takes 1");
    assertThatThrownBy(() -> call(CableFunctions.AREA, to, 1)).hasMessageContaining("not 2");
    assertThatThrownBy(() -> call(CableFunctions.AREA, (Object) null)).hasMessageContaining("size");
    assertThatThrownBy(() -> calc("{}+{}", 1)).hasMessageContaining("2 places for 1");
  }

  @Test
  void a_result_is_blank_while_a_cell_it_needs_is_blank() {
    assertThat(TableSpec.guarded(area, row))
        .isEqualTo("IFERROR(IF($A6=\"\";\"\";CABLE.AREA($A6));TEXT(\"\";\"\"))");
    twice.formula(calc("{}*{}", length, or(parallel, 1)));
    assertThat(TableSpec.guarded(twice, row))
        .isEqualTo("IFERROR(IF($B6=\"\";\"\";$B6*IF($C6=\"\";1;$C6));TEXT(\"\";\"\"))");
  }

  @Test
  void the_finding_asks_in_order_what_is_missing_wrong_refused_checked() {
    twice.formula(calc("{}*2", length));
    ColumnSpec finding =
        runs.columns().stream().filter(c -> c.heading().equals("Finding")).findFirst().get();
    assertThat(finding.formula().text(row))
        .containsSubsequence(
            "COUNTA($A6:$C6)=0;\"\"",
            "check:Fill in To.",
            "check:Fill in Length.",
            "check:Fill in Limit on Job.",
            "OR(ISTEXT($B6);$B6<0;$B6>900)",
            "SHEET.WHY(\"CABLE.AREA\";$A6)",
            "Twice cannot be worked out",
            "stop:\"&ROUND($B6;1)&\" m is long\"",
            "ok:",
            "an input in this row has an error");
  }

  @Test
  void words_carry_values_as_their_cells_show_them() {
    assertThat(say("{} of {}", length, limit).text(row))
        .isEqualTo("ROUND($B6;1)&\" of \"&ROUND(100*$Job.$B$6;1)&\" %\"");
  }

  @Test
  void a_unit_stands_in_the_heading() {
    assertThat(length.headingText(row)).isEqualTo("Length (m)");
    assertThat(limit.headingText(row)).isEqualTo("Limit (%)");
    assertThat(ColumnSpec.input("Run").unit(calc("IF({}>1;\"ft\";\"m\")", limit)).headingText(row))
        .isEqualTo("=\"Run (\"&IF($Job.$B$6>1;\"ft\";\"m\")&\")\"");
  }
}
