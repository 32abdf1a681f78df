package org.setpower.registry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.setpower.base.BaseErrorCode;
import org.setpower.base.CalculationStep;
import org.setpower.base.ErrorCode;
import org.setpower.base.EvaluationException;
import org.setpower.base.PhaseSystem;
import org.setpower.base.Temperature;
import org.setpower.base.Unit;
import org.setpower.registry.groups.Parameters;

/** Functions and parameters that are declared here, so that every step of a declaration counts. */
class DeclarationTest {
  private static final Parameter<Double> X = Parameters.notNegative("x", "First", Unit.METRE);
  private static final Parameter<Double> Y =
      Parameters.positive("y", "Second", Unit.AMPERE).orElse(7.0);

  private static void assertRefused(ErrorCode reason, Runnable call) {
    assertThatThrownBy(call::run)
        .isInstanceOfSatisfying(
            EvaluationException.class,
            refusal -> assertThat(refusal.errorCode()).isEqualTo(reason));
  }

  @Test
  void a_function_keeps_what_is_declared() {
    FunctionGroup group = new FunctionGroup("TEST", "a trade");
    FunctionSpec sum =
        group
            .function("SUM")
            .description("Returns a sum")
            .parameters(X, Y)
            .returns(Unit.VOLT, "The sum")
            .mapsAtMost(3)
            .formula("x + y")
            .source("arithmetic")
            .caution("Take care")
            .errorCodes(BaseErrorCode.MISSING, BaseErrorCode.TOO_SMALL)
            .example("=TEST.SUM(1)", 8.0)
            .example("=TEST.SUM(1;2)", 3.0)
            .steps(a -> List.of(new CalculationStep("x", "the first", a.get(X), Unit.METRE, "")))
            .implementation(a -> a.get(X) + a.get(Y));
    assertThat(group.prefix()).isEqualTo("TEST");
    assertThat(group.title()).isEqualTo("a trade");
    assertThat(group.functions()).containsExactly(sum);
    assertThat(sum.group()).isSameAs(group);
    assertThat(sum.name()).isEqualTo("TEST.SUM");
    assertThat(sum.methodName()).isEqualTo("testSum");
    assertThat(sum.sentence()).isEqualTo("Returns a sum");
    assertThat(sum.parameters().get(0)).isSameAs(X);
    assertThat(sum.parameters().get(1)).isSameAs(Y);
    assertThat(sum.kind()).isEqualTo(FunctionSpec.Kind.NUMBER);
    assertThat(sum.unit()).isEqualTo(Unit.VOLT);
    assertThat(sum.resultWords()).isEqualTo("The sum");
    assertThat(sum.columns()).isEmpty();
    assertThat(sum.formula()).isEqualTo("x + y");
    assertThat(sum.source()).isEqualTo("arithmetic");
    assertThat(sum.caution()).isEqualTo("Take care");
    assertThat(sum.errorCodes()).isEqualTo(List.of(BaseErrorCode.MISSING, BaseErrorCode.TOO_SMALL));
    assertThat(sum.examples())
        .extracting(FunctionSpec.Example::formula)
        .containsExactly("=TEST.SUM(1)", "=TEST.SUM(1;2)");
    assertThat(sum.takesRest()).isFalse();
    assertThat(sum.takesDate()).isFalse();
    assertThat(sum.call(1.0)).isEqualTo(8.0);
    assertThat(sum.call(1.0, 2.0)).isEqualTo(3.0);
    assertThat(sum.working(1.0, 2.0))
        .containsExactly(
            new CalculationStep("x", "First", 1.0, Unit.METRE, "given"),
            new CalculationStep("y", "Second", 2.0, Unit.AMPERE, "given"),
            new CalculationStep("x", "the first", 1.0, Unit.METRE, ""),
            new CalculationStep("TEST.SUM", "The sum", 3.0, Unit.VOLT, "arithmetic"));
    Object[][] four = {{1.0, 2.0}, {3.0, 4.0}};
    assertRefused(BaseErrorCode.TOO_MANY_CELLS, () -> sum.call(new Object[] {four}));
    assertThat((Object[][]) sum.call(new Object[] {new Object[][] {{1.0, 2.0, 3.0}}}))
        .isDeepEqualTo(new Object[][] {{8.0, 9.0, 10.0}});
    assertRefused(BaseErrorCode.TOO_MANY_ARGUMENTS, () -> sum.call(1.0, 2.0, 3.0));
    assertRefused(BaseErrorCode.MISSING, sum::call);
    assertThatThrownBy(
            () -> new Arguments(sum, new Object[] {1.0, 2.0}).get(Parameters.POWER_FACTOR))
        .isInstanceOf(IllegalStateException.class)
        .hasMessageContaining("does not take");
  }

  @Test
  void a_function_gives_a_text_or_a_table() {
    FunctionGroup group = new FunctionGroup("TEST", "a trade");
    FunctionSpec text =
        group.function("TEXT").parameters(X).returnsText("A word").implementation(a -> "so");
    assertThat(text.kind()).isEqualTo(FunctionSpec.Kind.TEXT);
    assertThat(text.resultWords()).isEqualTo("A word");
    assertThat(text.call(1.0)).isEqualTo("so");
    FunctionSpec table =
        group
            .function("TABLE")
            .parameters(X)
            .returnsTable("Rows", "one", "two")
            .implementation(
                a -> a.get(X) == 0 ? new Object[0][] : new Object[][] {{a.get(X), "w"}});
    assertThat(table.kind()).isEqualTo(FunctionSpec.Kind.TABLE);
    assertThat(table.resultWords()).isEqualTo("Rows");
    assertThat(table.columns()).containsExactly("one", "two");
    assertThat((Object[][]) table.call(3.0)).isDeepEqualTo(new Object[][] {{3.0, "w"}});
    assertRefused(BaseErrorCode.NOTHING_TO_LIST, () -> table.call(0.0));
    assertThat(table.working(3.0))
        .last()
        .isEqualTo(new CalculationStep("row 1", "one 3, two w", 3.0, Unit.NONE, ""));
    assertThat(group.functions()).containsExactly(text, table);
  }

  /** No cell shows a number that is none, wherever it stands in a table. */
  @Test
  void an_answer_that_is_no_number_is_refused() {
    FunctionGroup group = new FunctionGroup("TEST", "a trade");
    FunctionSpec half =
        group
            .function("HALF")
            .parameters(X)
            .implementation(a -> new Object[][] {{1.0, "a"}, {1 / a.get(X), "b"}});
    assertThat((Object[][]) half.call(2.0)).isDeepEqualTo(new Object[][] {{1.0, "a"}, {0.5, "b"}});
    assertRefused(BaseErrorCode.RESULT_NOT_FINITE, () -> half.call(0.0));
  }

  @Test
  void a_parameter_keeps_what_is_declared() {
    Parameter<Double> plain = Parameters.positive("amps", "Current", Unit.AMPERE);
    assertThat(plain.name()).isEqualTo("amps");
    assertThat(plain.phrase()).isEqualTo("Current");
    assertThat(plain.unit()).isEqualTo(Unit.AMPERE);
    assertThat(plain.shape()).isEqualTo(Parameter.Shape.SINGLE);
    assertThat(plain.isOptional()).isFalse();
    assertThat(plain.isDate()).isFalse();
    assertThat(plain.description()).isEqualTo("Current (A); required");
    Parameter<Double> two = plain.orElse(2.5);
    assertThat(two.isOptional()).isTrue();
    assertThat(two.fallbackWords()).isEqualTo("2.5");
    assertThat(two.description()).isEqualTo("Current (A); if left out: 2.5");
    assertThat(two.read(null)).isEqualTo(2.5);
    assertThat(two.read(" ")).isEqualTo(2.5);
    assertThat(two.is(plain)).isTrue();
    assertThat(plain.orElse(2.5, "a usual one").description())
        .isEqualTo("Current (A); if left out: a usual one");
    assertThat(plain.orElse(2.5, "").description()).isEqualTo("Current (A)");
    assertRefused(BaseErrorCode.MISSING, () -> two.required().read(null));
    assertThat(two.required().is(plain)).isTrue();
    Parameter<Double> other = two.named("start_amps", "Current at the start");
    assertThat(other.name()).isEqualTo("start_amps");
    assertThat(other.description()).isEqualTo("Current at the start (A); if left out: 2.5");
    assertThat(other.is(plain)).isFalse();
    assertThat(other.read(null)).isEqualTo(2.5);
    assertThat(plain.asDate().isDate()).isTrue();
  }

  @Test
  void a_range_may_be_left_out_or_blank() {
    Object[][] blank = {{"", null}, {" ", ""}};
    Object[][] filled = {{"", 1.0}};
    Parameter<Object> range = Parameters.range("loads", "Loads", Unit.AMPERE);
    assertThat(range.shape()).isEqualTo(Parameter.Shape.RANGE);
    assertThat(range.read(blank)).isSameAs(blank);
    Parameter<Object> optional = range.orElse(9.0);
    assertThat(optional.read(blank)).isEqualTo(9.0);
    assertThat(optional.read(filled)).isSameAs(filled);
    assertThat(optional.step(filled).value()).isEqualTo("1 rows × 2");
    assertThat(optional.step(blank).value()).isEqualTo(9.0);
  }

  @ParameterizedTest
  @CsvSource({
    "notNegative, 0, ",
    "notNegative, -0.001, TOO_SMALL",
    "positive, 0.001, ",
    "positive, 0, ZERO_OR_BLANK",
    "share, 0, ",
    "share, 1, ",
    "share, 1.001, NOT_A_SHARE",
    "share, -0.001, TOO_SMALL",
    "count, 1, ",
    "count, 0, TOO_SMALL",
    "count, 1.5, NOT_WHOLE"
  })
  void a_number_is_checked(String kind, double value, BaseErrorCode reason) {
    Parameter<Double> parameter =
        switch (kind) {
          case "notNegative" -> Parameters.notNegative("n", "N", Unit.METRE);
          case "positive" -> Parameters.positive("n", "N", Unit.METRE);
          case "share" -> Parameters.share("n", "N");
          default -> Parameters.count("n", "N");
        };
    if (reason == null) {
      assertThat(parameter.read(value)).isEqualTo(value);
    } else {
      assertRefused(reason, () -> parameter.read(value));
    }
    assertRefused(BaseErrorCode.NOT_A_NUMBER, () -> parameter.read("many"));
    assertRefused(BaseErrorCode.NOT_FINITE, () -> parameter.read(Double.NaN));
    assertRefused(BaseErrorCode.ONE_VALUE, () -> parameter.read(new Object[][] {{1.0, 2.0}}));
  }

  /** Health up to 1.1 counts as 1: a new pack may hold more than its label. */
  @Test
  void shared_parameters_have_their_limits() {
    assertThat(Parameters.HEALTH.read(1.1)).isEqualTo(1);
    assertThat(Parameters.HEALTH.read(0.9)).isEqualTo(0.9);
    assertRefused(BaseErrorCode.NOT_A_SHARE, () -> Parameters.HEALTH.read(1.11));
    assertRefused(BaseErrorCode.ZERO_OR_BLANK, () -> Parameters.HEALTH.read(0.0));
    assertRefused(BaseErrorCode.ZERO_OR_BLANK, () -> Parameters.POWER_FACTOR.read(0.0));
    assertRefused(BaseErrorCode.NOT_A_SHARE, () -> Parameters.EFFICIENCY.read(1.5));
    assertThat(Parameters.POWER_FACTOR.read(1.0)).isEqualTo(1);
    assertThat(Parameters.EFFICIENCY.read(0.5)).isEqualTo(0.5);
  }

  @Test
  void true_and_false_come_as_one_and_zero() {
    Parameter<Boolean> flag = Parameters.flag("lasting", "Whether it lasts");
    assertThat(flag.read(1.0)).isTrue();
    assertThat(flag.read(0.0)).isFalse();
    assertRefused(BaseErrorCode.TOO_LARGE, () -> flag.read(2.0));
    assertRefused(BaseErrorCode.TOO_SMALL, () -> flag.read(-1.0));
    assertRefused(BaseErrorCode.NOT_WHOLE, () -> flag.read(0.5));
    assertThat(flag.description()).isEqualTo("Whether it lasts: TRUE or FALSE; required");
  }

  /** 50 °F are 10 °C; nothing is colder than −273.15 °C. */
  @Test
  void a_temperature_comes_as_number_or_text() {
    Parameter<Double> temp = Parameters.temperature("temp", "Of the air");
    assertThat(temp.read("50 °F")).isCloseTo(10, within(1e-9));
    assertThat(temp.read(-273.15)).isEqualTo(-273.15);
    assertThat(temp.read(1000.0)).isEqualTo(1000);
    assertRefused(BaseErrorCode.TOO_SMALL, () -> temp.read(-273.16));
    assertRefused(BaseErrorCode.TOO_LARGE, () -> temp.read(1000.1));
    assertThat(temp.description()).startsWith("Of the air; also text").endsWith("(°C); required");
  }

  /** −6 °F are −21.111… °C, −40 is the same on both scales. */
  @Test
  void a_temperature_is_told_on_both_scales() {
    Parameter<Double> temp = Parameters.temperature("temp", "Of the air");
    assertThat(Temperature.format(temp.read("-6 °F"))).isEqualTo("-21.11 °C (-6 °F)");
    assertThat(Temperature.format(-40)).isEqualTo("-40 °C (-40 °F)");
  }

  /** Day 46415 of a sheet is 28 January 2027. */
  @Test
  void a_date_comes_as_day_or_text() {
    Parameter<LocalDate> date = Parameters.date("day", "Of the job");
    assertThat(date.isDate()).isTrue();
    assertThat(date.read("2027-01-28")).isEqualTo(LocalDate.of(2027, 1, 28));
    assertThat(date.read(46415.9)).isEqualTo(LocalDate.of(2027, 1, 28));
    FunctionSpec spec =
        new FunctionGroup("TEST", "").function("DAY").parameters(date).implementation(a -> 1.0);
    assertThat(spec.takesDate()).isTrue();
  }

  @Test
  void a_word_is_one_of_a_list() {
    Parameter<PhaseSystem> system =
        Parameter.of(
            "system",
            "System",
            Unit.NONE,
            Parameter.Shape.SINGLE,
            ArgumentParsers.word(PhaseSystem.class));
    assertThat(system.words()).containsExactly("DC", "1PH", "3PH");
    assertThat(system.read("3PH")).isEqualTo(PhaseSystem.THREE);
    assertThat(system.orElse(PhaseSystem.DC).fallbackWords()).isEqualTo("DC");
    assertRefused(BaseErrorCode.NOT_A_TEXT, () -> system.read(3.0));
    assertRefused(BaseErrorCode.UNKNOWN_WORD, () -> system.read("2PH"));
    assertRefused(BaseErrorCode.ONE_VALUE, () -> system.read(new Object[][] {{"DC"}}));
  }

  @Test
  void all_that_follows_is_handed_on() {
    Parameter<Object> rest =
        Parameter.of("rest", "Rest", Unit.NONE, Parameter.Shape.REST, (n, raw) -> raw);
    FunctionSpec count =
        new FunctionGroup("TEST", "")
            .function("COUNT")
            .parameters(X, rest)
            .implementation(a -> (double) ((Object[][]) a.get(rest))[0].length);
    assertThat(count.takesRest()).isTrue();
    assertThat(count.takesDate()).isTrue();
    assertThat(count.call(1.0)).isEqualTo(0.0);
    assertThat(count.call(1.0, 2.0)).isEqualTo(1.0);
    assertThat(count.call(1.0, "a", new Object[][] {{1.0, 2.0}}, "c")).isEqualTo(3.0);
  }

  @Test
  void a_range_for_one_value_is_refused_with_its_cells_counted() {
    Object[][] six = {{1.0, 2.0, 3.0}, {4.0, 5.0, 6.0}};
    assertThatThrownBy(() -> X.read(six)).hasMessageContaining("a range of 6 cells");
    assertThatThrownBy(() -> X.read(new Object[0][])).hasMessageContaining("a range of 0 cells");
  }

  @Test
  void a_table_stands_in_a_cell_only_if_it_is_one_value() {
    FunctionGroup group = new FunctionGroup("TEST", "a trade");
    Object[][] column = {{3.0}, {4.0}};
    FunctionSpec one =
        group
            .function("ONE")
            .parameters(X)
            .returnsTable("Row", "a")
            .implementation(a -> new Object[][] {{a.get(X)}});
    assertThat((Object[][]) one.call(new Object[] {column})).isDeepEqualTo(column);
    FunctionSpec two =
        group
            .function("TWO")
            .parameters(X)
            .returnsTable("Row", "a", "b")
            .implementation(a -> new Object[][] {{a.get(X), a.get(X)}});
    assertThatThrownBy(() -> two.call(new Object[] {column})).hasMessageContaining("2 cells");
  }
}
