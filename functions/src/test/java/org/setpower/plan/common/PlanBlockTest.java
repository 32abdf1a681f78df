package org.setpower.plan.common;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import java.util.Objects;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.setpower.plan.finding.Finding;
import org.setpower.plan.finding.FindingKey;
import org.setpower.plan.finding.Verdict;

/** What comes back for whatever a sheet hands over. */
class PlanBlockTest {
  /** Days out of a lamp store. */
  @Table(key = "loans", heading = "Loans", rows = 3)
  public record Loan(
      @Input(key = "lamp", heading = "Lamp") String lamp,
      @Input(key = "out", heading = "Out on", blank = "Blank: in.") LocalDate out) {}

  /** Results beside loans. */
  @Table(key = "loans", heading = "Loans", rows = 3)
  public record LoanResult(
      @Result(key = "verdict", heading = "Status", from = "loans.*", rule = "The worst.")
          Verdict verdict,
      @Result(key = "back", heading = "Back on", from = "loans.out", rule = "A week later.")
          LocalDate back,
      @Result(key = "reasons", heading = "Reason", from = "loans.*", rule = "What is wrong.")
          List<Finding> reasons) {}

  private static final ResultTable<LoanResult> RESULTS = ResultTable.of(LoanResult.class);

  /** Gives a lamp back after a week; fails at the lamp "bug". */
  private static final class Loans implements PlanModel {
    @Override
    public String name() {
      return "loans";
    }

    @Override
    public List<InputTable<?>> inputs() {
      return List.of(LOANS);
    }

    @Override
    public List<ResultTable<?>> results() {
      return List.of(RESULTS);
    }

    @Override
    public List<FindingKey> findings() {
      return List.of();
    }

    @Override
    public PlanResult calculate(List<?> ranges) {
      InputRows<Loan> loans = LOANS.read(ranges.get(0));
      return new PlanResult(
          List.of(loans),
          results(),
          () ->
              List.of(new ResultRows<>(RESULTS, loans.rows().stream().map(Loans::result).toList())),
          (table, row, source) -> new int[] {row});
    }

    private static LoanResult result(InputRow<Loan> row) {
      if ("bug".equals(row.value().lamp())) {
        throw new IllegalStateException("a bug");
      }
      LocalDate out = row.value().out();
      return new LoanResult(
          Finding.verdict(row.findings()), out == null ? null : out.plusDays(7), row.findings());
    }
  }

  private static final InputTable<Loan> LOANS = InputTable.of(Loan.class);
  private static final PlanModel MODEL = new Loans();
  private static final String LAYOUT = InputTable.layoutHash(List.of(LOANS));

  private static Object[][] answer(Object... first) {
    return new Object[][] {first, {2.0, "loans.verdict", "loans.back", "loans.reasons"}};
  }

  private static Object[][] sound() {
    return answer("en", LAYOUT, "", "");
  }

  private static Object loan(Object lamp, Object out) {
    return new Object[][] {{"lamp", "out"}, {lamp, out}, {InputTable.END, ""}};
  }

  private static void assertStops(Object[][] block, String why) {
    assertThat(block).hasNumberOfRows(3);
    assertThat(block[0][0]).isEqualTo("stop");
    assertThat((String) block[0][1]).contains(why);
    for (int r = 1; r < 3; r++) {
      assertThat(block[r][0]).isEqualTo("stop");
      assertThat(block[r][1]).isEqualTo("");
      assertThat((String) block[r][2]).contains(why);
    }
  }

  /** Day 46420 after 30 Dec 1899 is 2 Feb 2027. */
  @Test
  void results_stand_below_the_state_of_the_block() {
    assertThat(PlanBlock.of(MODEL, sound(), List.of(loan("A", 46420.0)), 0))
        .isDeepEqualTo(new Object[][] {{"ok", "", ""}, {"ok", 46427.0, ""}, {"", "", ""}});
  }

  /** A document that counts from 1 Jan 1904 is 1,462 days behind. */
  @Test
  void dates_are_those_of_the_document() {
    Object[][] block = PlanBlock.of(MODEL, sound(), List.of(loan("A", 46420.0 - 1462)), 1462);
    assertThat(block[1]).containsExactly("ok", 46427.0 - 1462, "");
  }

  private static Object[][] placed(Object width, Object[]... bands) {
    Object[][] answer = new Object[1 + bands.length][];
    answer[0] = new Object[] {"en", LAYOUT, width, "", ""};
    System.arraycopy(bands, 0, answer, 1, bands.length);
    return answer;
  }

  /** The reasons stand beside the other two, one row lower. */
  @Test
  void bands_stand_where_the_answer_says() {
    Object[][] answer =
        placed(
            3.0,
            new Object[] {2.0, 0.0, 0.0, "loans.verdict", "loans.back"},
            new Object[] {1.0, 1.0, 2.0, "loans.reasons", ""});
    assertThat(PlanBlock.of(MODEL, answer, List.of(loan("A", 46420.0 - 1462)), 1462))
        .isDeepEqualTo(new Object[][] {{"ok", "", ""}, {"ok", 46427.0 - 1462, ""}, {"", "", ""}});
    Object[][] stopped = PlanBlock.of(MODEL, answer, List.of("#"), 0);
    assertThat(stopped[1]).containsExactly("stop", "", "");
    assertThat((String) stopped[2][2]).contains("cannot be read");
  }

  @Test
  void a_place_that_is_none_or_taken_is_a_stop() {
    Object[] verdicts = {2.0, 0.0, 0.0, "loans.verdict", ""};
    Object[][][] wrong = {
      placed(3.0, verdicts, new Object[] {2.0, 1.0, 0.0, "loans.back", ""}),
      placed(3.0, new Object[] {2.0, -1.0, 0.0, "loans.verdict", ""}),
      placed(3.0, new Object[] {2.0, 0.5, 0.0, "loans.verdict", ""}),
      placed(3.0, new Object[] {2.0, 0.0, 3.0, "loans.verdict", ""}),
      placed(3.0, new Object[] {2.0, 0.0, "loans.verdict", "loans.back", ""}),
      placed(0.0, verdicts),
      placed(1e9, verdicts),
      placed(40_000.0, new Object[] {40_000.0, 0.0, 0.0, "loans.verdict", ""}),
    };
    for (Object[][] answer : wrong) {
      Object[][] block = PlanBlock.of(MODEL, answer, List.of(loan("A", "")), 0);
      assertThat(block[0][0]).as(Arrays.deepToString(answer)).isEqualTo("stop");
    }
  }

  @Test
  void another_layout_stops_every_row() {
    for (Object layout : new Object[] {"", "0123456789abcdef", 7.0, "#", null}) {
      Object[][] block =
          PlanBlock.of(MODEL, answer("en", layout, "", ""), List.of(loan("A", 46420.0)), 0);
      assertStops(block, "Choose Update file.");
    }
  }

  @Test
  void a_plan_that_fails_stops_every_row() {
    assertStops(PlanBlock.of(MODEL, sound(), List.of(loan("bug", "")), 0), "cannot be calculated");
  }

  @Test
  void ranges_that_are_none_stop_every_row() {
    for (Object range : new Object[] {null, "#", 7.0, new Object[0][], new Object[30_000][2]}) {
      assertStops(PlanBlock.of(MODEL, sound(), Arrays.asList(range), 0), "cannot be read");
    }
    assertStops(PlanBlock.of(MODEL, sound(), List.of(), 0), "cannot be read");
  }

  @Test
  void an_unreadable_answer_is_a_stop() {
    Object[][][] wrong = {
      null,
      {},
      {{"en", LAYOUT}},
      {{"en"}, {1.0}},
      {{"en", LAYOUT}, {"#", "loans.verdict"}},
      {{"en", LAYOUT}, {0.0, "loans.verdict"}},
      {{"en", LAYOUT}, {1e6, "loans.verdict"}},
      {{"en", LAYOUT}, {Double.NaN, "loans.verdict"}},
      {{"en", LAYOUT}, null},
      {{"en", LAYOUT}, {1.0}}
    };
    for (Object[][] answer : wrong) {
      Object[][] block = PlanBlock.of(MODEL, answer, List.of(loan("A", "")), 0);
      assertThat(block[0][0]).isEqualTo("stop");
      assertThat((String) block[0][1]).contains("Update file");
    }
    assertThat(PlanBlock.of(MODEL, "#", List.of(), 0)[0][0]).isEqualTo("stop");
  }

  @ParameterizedTest
  @ValueSource(strings = {"loans.old", "loans.verdict", "#", "old", "."})
  void an_unknown_or_double_key_stops_every_row(String key) {
    Object[][] answer = {
      {"en", LAYOUT, "", "", ""}, {2.0, "loans.verdict", "loans.back", "loans.reasons", key}
    };
    assertStops(PlanBlock.of(MODEL, answer, List.of(loan("A", "")), 0), "Update file");
  }

  @Test
  void a_blank_between_keys_is_no_key() {
    Object[][] answer = {
      {"en", LAYOUT, "", "", ""}, {1.0, "loans.verdict", "", "loans.reasons", ""}
    };
    Object[][] block = PlanBlock.of(MODEL, answer, List.of(loan("A", "")), 0);
    assertThat(block[0][0]).isEqualTo("stop");
    assertThat(block[0]).hasSize(4);
    assertThat(Arrays.stream(block).flatMap(Arrays::stream)).allMatch(Objects::nonNull);
  }
}
