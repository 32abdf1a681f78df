package org.setpower.plan.common;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.setpower.plan.common.InputTableTest.Lamp;
import org.setpower.plan.finding.CommonFinding;
import org.setpower.plan.finding.Finding;
import org.setpower.plan.finding.Verdict;

class PlanResultTest {
  /** Results beside lamps. */
  @Table(key = "lamps", heading = "Lamps", rows = 3)
  public record LampResult(
      @Result(key = "verdict", heading = "Status", from = "lamps.*", rule = "The worst.")
          Verdict verdict,
      @Result(key = "amps", heading = "Current", unit = "A", from = "lamps.watts", rule = "P / U.")
          Double amps,
      @Result(key = "next", heading = "Next", from = "lamps.day", rule = "The day after.")
          LocalDate next,
      @Result(key = "used", heading = "Used", from = "lamps.amps", rule = "Above 0 A.")
          Boolean used,
      @Result(key = "reasons", heading = "Reason", from = "lamps.*", rule = "What is wrong.")
          List<Finding> reasons) {}

  private static final InputTable<Lamp> LAMPS = InputTable.of(Lamp.class);
  private static final ResultTable<LampResult> RESULTS = ResultTable.of(LampResult.class);
  private static final List<String> KEYS =
      List.of("lamps.reasons", "lamps.amps", "lamps.verdict", "lamps.next", "lamps.used");

  private static final LampResult ROW =
      new LampResult(
          Verdict.STOP,
          0.1,
          LocalDate.of(2027, 2, 2),
          true,
          List.of(Finding.of(CommonFinding.NO_IDENTITY)));

  private static PlanResult result(boolean sound) {
    Object[][] range = {
      {"name", "watts", "day", "dim", "level1", "level2"},
      {"A", 23.0, "", "", "", ""},
      {"", "", "", "", "", ""},
      {sound ? InputTable.END : "B", "", "", "", "", ""}
    };
    return new PlanResult(
        List.of(LAMPS.read(range)),
        List.of(RESULTS),
        () -> List.of(new ResultRows<>(RESULTS, Arrays.asList(ROW, null))),
        (table, r, source) -> new int[] {r});
  }

  private static Object[][] matrix(PlanResult result, List<String> keys, int rows) {
    return result.matrix(new Answer(keys, rows), new EnglishMessages(), Locale.ENGLISH);
  }

  @Test
  void columns_come_in_the_order_of_the_block_and_rows_are_padded() {
    Object[][] matrix = matrix(result(true), KEYS, 4);
    assertThat(matrix).hasNumberOfRows(5);
    assertThat(matrix[0]).containsExactly("ok", "", "", "", "");
    assertThat(matrix[1])
        .containsExactly("The row has no name. Fill it in.", 0.1, "stop", 46420.0, "yes");
    for (int r = 2; r <= 4; r++) {
      assertThat(matrix[r]).containsExactly("", "", "", "", "");
    }
  }

  private static void assertStops(Object[][] matrix, String way) {
    assertThat(matrix.length).isGreaterThan(1);
    assertThat(matrix[0][0]).isEqualTo("stop");
    assertThat((String) matrix[0][1]).contains(way);
    for (int r = 1; r < matrix.length; r++) {
      assertThat((String) matrix[r][0]).contains(way);
      assertThat(matrix[r][1]).isEqualTo("");
      assertThat(matrix[r][2]).isEqualTo("stop");
    }
  }

  @Test
  void a_fault_stops_every_row_of_the_block() {
    assertStops(matrix(result(false), KEYS, 4), "Update file");
    assertThat(result(false).rows(RESULTS)).isEmpty();
  }

  @Test
  void more_rows_than_the_block_has_stop_every_row() {
    PlanResult two =
        new PlanResult(
            List.of(),
            List.of(RESULTS),
            () -> List.of(new ResultRows<>(RESULTS, List.of(ROW, ROW))),
            (table, r, source) -> new int[] {r});
    assertStops(
        matrix(two, KEYS, 1),
        "Lamps has 2 rows and the sheet shows 1. Delete rows, or begin a second file.");
    assertThat(matrix(two, KEYS, 2)[0][0]).isEqualTo("ok");
  }

  @Test
  void blank_rows_at_the_end_need_no_room() {
    assertThat(matrix(result(true), KEYS, 1)[0][0]).isEqualTo("ok");
  }

  @Test
  void bands_stand_one_below_the_other() {
    Answer answer =
        new Answer(
            "en",
            "",
            List.of(
                new Answer.Band(List.of("lamps.amps"), 2, 0, 0),
                new Answer.Band(List.of("lamps.verdict", "lamps.used"), 3, 2, 0)),
            3);
    assertThat(result(true).matrix(answer, new EnglishMessages(), Locale.ENGLISH))
        .isDeepEqualTo(
            new Object[][] {
              {"ok", "", ""},
              {0.1, "", ""},
              {"", "", ""},
              {"stop", "yes", ""},
              {"", "", ""},
              {"", "", ""}
            });
  }

  @Test
  void bands_stand_beside_each_other() {
    Answer answer =
        new Answer(
            "en",
            "",
            List.of(
                new Answer.Band(List.of("lamps.amps"), 3, 0, 0),
                new Answer.Band(List.of("lamps.verdict"), 1, 0, 1),
                new Answer.Band(List.of("lamps.used"), 2, 1, 1)),
            2);
    assertThat(result(true).matrix(answer, new EnglishMessages(), Locale.ENGLISH))
        .isDeepEqualTo(new Object[][] {{"ok", ""}, {0.1, "stop"}, {"", "yes"}, {"", ""}});
  }

  @Test
  void an_unknown_or_double_result_key_stops_every_row() {
    assertStops(
        matrix(
            result(true), List.of("lamps.reasons", "lamps.amps", "lamps.verdict", "lamps.old"), 4),
        "Update file");
    assertStops(
        matrix(
            result(true), List.of("lamps.reasons", "lamps.amps", "lamps.verdict", "lamps.amps"), 4),
        "Update file");
  }

  @Test
  void a_figure_leads_back_to_typed_cells() {
    Trace trace = result(true).trace("lamps.used", 1);
    assertThat(trace.steps())
        .extracting(Trace.Step::heading)
        .containsExactly("Power", "Current", "Used");
    assertThat(trace.steps().get(0).values()).containsExactly(23.0);
    assertThat(trace.steps().get(0).typed()).isTrue();
    assertThat(trace.steps().get(1).rule()).isEqualTo("P / U.");
    assertThat(trace.steps().get(2).values()).containsExactly(true);
    assertThat(trace.steps())
        .extracting(Trace.Step::path)
        .containsExactly("lamps.watts", "lamps.amps", "lamps.used");
    assertThat(result(true).has("lamps", 1)).isTrue();
    assertThat(result(true).has("lamps", 2)).as("a blank row").isFalse();
    assertThat(result(true).has("lamps", 0)).isFalse();
    assertThat(result(false).has("lamps", 1)).as("a fault").isFalse();
  }
}
