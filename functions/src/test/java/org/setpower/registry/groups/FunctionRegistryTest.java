package org.setpower.registry.groups;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.catchThrowableOfType;
import static org.assertj.core.api.Assertions.within;

import java.lang.reflect.Modifier;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.setpower.base.CalculationStep;
import org.setpower.base.EvaluationException;
import org.setpower.registry.FunctionSpec;
import org.setpower.registry.Parameter;

/**
 * Every function of the catalogue against its check values, and the catalogue against itself. With
 * {@code -Dcatalogue.groups=CABLE} those of one group, as changes of its calculations need.
 */
class FunctionRegistryTest {
  private static final String GROUPS = System.getProperty("catalogue.groups", ".*");

  /**
   * Functions that list the moments of a model, too many figures for a case from outside:
   * MeasuredCellsTest holds the model of a pack against measured discharges, BankOracleTest that of
   * a bank against a circuit simulator.
   */
  private static final Set<String> HELD_ELSEWHERE =
      Set.of("PACK.CURVE", "BANK.CURVE", "BANK.EVENTS");

  static List<FunctionSpec> functions() {
    return FunctionRegistry.all().stream().filter(f -> f.group().prefix().matches(GROUPS)).toList();
  }

  static Stream<FunctionCases.Case> cases() {
    return functions().stream().flatMap(f -> FunctionCases.of(f.name()).stream());
  }

  @ParameterizedTest
  @MethodSource("cases")
  void a_case_comes_out(FunctionCases.Case c) {
    if (c.expectsPart()) {
      assertThat((String) c.run()).as(c.source()).contains((String) c.value());
    } else if (c.expectsFault()) {
      assertThatThrownBy(c::run)
          .isInstanceOfSatisfying(
              EvaluationException.class, r -> assertThat(r.kind().shown()).isEqualTo(c.fault()))
          .hasMessageContaining(c.reasonWords());
    } else {
      assertSame(c, c.run(), c.value());
    }
  }

  /** The working of what is refused is refused alike; of a range, each cell has its own working. */
  @ParameterizedTest
  @MethodSource("cases")
  void a_working_ends_in_the_result(FunctionCases.Case c) {
    Object[] arguments = c.arguments();
    FunctionSpec f = FunctionRegistry.find(c.function()).orElseThrow();
    if (c.expectsFault()) {
      assertRefusedAlike(f, arguments, catchThrowableOfType(EvaluationException.class, c::run));
    } else if (isMapped(f, arguments)) {
      Object[][] cells = (Object[][]) c.run();
      assertThat(cells).isNotEmpty();
      for (int row = 0; row < cells.length; row++) {
        assertThat(cells[row]).isNotEmpty();
        for (int column = 0; column < cells[row].length; column++) {
          assertWorkingEndsIn(cells[row][column], f, oneCell(f, arguments, row, column));
        }
      }
    } else {
      assertWorkingEndsIn(c.run(), f, arguments);
    }
  }

  private static void assertWorkingEndsIn(Object result, FunctionSpec f, Object[] arguments) {
    if (result instanceof EvaluationException refusal) {
      assertRefusedAlike(f, arguments, refusal);
      return;
    }
    if ("".equals(result)) {
      assertThat(arguments).as("a blank cell comes from a blank argument").contains("");
      return;
    }
    List<CalculationStep> steps = f.working(arguments);
    CalculationStep last = steps.get(steps.size() - 1);
    Object end = result instanceof Object[][] table ? table[table.length - 1][0] : result;
    assertThat(last.value()).isEqualTo(end);
    assertThat(last.source()).isNotBlank();
    assertThat(steps).hasSizeGreaterThan(f.parameters().size());
  }

  private static void assertRefusedAlike(
      FunctionSpec f, Object[] arguments, EvaluationException refusal) {
    assertThatThrownBy(() -> f.working(arguments))
        .isInstanceOf(EvaluationException.class)
        .hasMessage(refusal.getMessage());
  }

  /** The arguments of one cell of a mapped call. */
  private static Object[] oneCell(FunctionSpec f, Object[] arguments, int row, int column) {
    Object[] one = arguments.clone();
    for (int i = 0; i < one.length; i++) {
      if (one[i] instanceof Object[][] range && f.shapeAt(i) == Parameter.Shape.SINGLE) {
        Object[] cells = range[range.length == 1 ? 0 : row];
        one[i] = cells[cells.length == 1 ? 0 : column];
      }
    }
    return one;
  }

  private static boolean isMapped(FunctionSpec f, Object[] arguments) {
    for (int i = 0; i < arguments.length; i++) {
      if (arguments[i] instanceof Object[][] && f.shapeAt(i) == Parameter.Shape.SINGLE) {
        return true;
      }
    }
    return false;
  }

  private static void assertSame(FunctionCases.Case c, Object actual, Object expected) {
    if (expected instanceof Object[][] table) {
      Object[][] cells = (Object[][]) actual;
      assertThat(cells).hasDimensions(table.length, table[0].length);
      for (int r = 0; r < table.length; r++) {
        for (int k = 0; k < table[r].length; k++) {
          assertSame(c, cells[r][k], table[r][k]);
        }
      }
    } else if (expected instanceof Double d) {
      assertThat((Double) actual).as(c.source()).isCloseTo(d, within(c.allowed(d)));
    } else {
      assertThat(actual).as(c.source()).isEqualTo(expected);
    }
  }

  @ParameterizedTest
  @MethodSource("cases")
  void a_case_names_where_its_value_comes_from(FunctionCases.Case c) {
    assertThat(c.basis()).isIn(FunctionCases.BASES);
    assertThat(c.source()).isNotBlank();
  }

  @ParameterizedTest
  @MethodSource("functions")
  void a_declaration_is_complete(FunctionSpec f) {
    assertThat(f.sentence()).startsWith("Returns ").doesNotEndWith(".");
    assertThat(f.resultWords()).isNotBlank();
    assertThat(f.source()).isNotBlank();
    assertThat(f.parameters().isEmpty() || !f.examples().isEmpty()).as("has an example").isTrue();
    boolean optional = false;
    for (Parameter<?> p : f.parameters()) {
      assertThat(p.name()).matches("[a-z][a-z0-9]*(_[a-z0-9]+)*");
      assertThat(p.phrase()).isNotBlank().doesNotEndWith(".");
      assertThat(optional && !p.isOptional()).as("optional ones last: " + p.name()).isFalse();
      optional = p.isOptional();
    }
    assertThat(f.parameters().stream().map(Parameter::name)).doesNotHaveDuplicates();
  }

  @Test
  void a_constant_is_named_like_its_function() throws IllegalAccessException {
    for (FunctionRegistry entry : FunctionRegistry.values()) {
      Class<?> holder = holderOf(entry);
      for (var field : holder.getDeclaredFields()) {
        if (field.getType() == FunctionSpec.class) {
          assertThat(Modifier.isPublic(field.getModifiers())).isTrue();
          assertThat(((FunctionSpec) field.get(null)).name())
              .isEqualTo(entry.name() + "." + field.getName());
        }
      }
      long constants =
          Arrays.stream(holder.getDeclaredFields())
              .filter(x -> x.getType() == FunctionSpec.class)
              .count();
      assertThat(entry.group().functions()).hasSize((int) constants);
      assertThat(entry.group().prefix()).isEqualTo(entry.name());
    }
  }

  private static Class<?> holderOf(FunctionRegistry entry) {
    String name =
        entry.name().charAt(0) + entry.name().substring(1).toLowerCase(java.util.Locale.ROOT);
    try {
      return Class.forName("org.setpower.registry.groups." + name + "Functions");
    } catch (ClassNotFoundException e) {
      throw new AssertionError(e);
    }
  }

  /** The table of functions and their checks; a function checked by nothing from outside fails. */
  @Test
  void every_function_is_held_against_the_outside_world() {
    Map<String, Map<String, Long>> table = new TreeMap<>();
    for (FunctionSpec f : functions()) {
      table.put(
          f.name(),
          FunctionCases.of(f.name()).stream()
              .collect(
                  Collectors.groupingBy(
                      FunctionCases.Case::basis, TreeMap::new, Collectors.counting())));
    }
    String printed =
        table.entrySet().stream()
            .map(e -> String.format("%-18s %s", e.getKey(), e.getValue()))
            .collect(Collectors.joining(System.lineSeparator()));
    org.junit.platform.commons.logging.LoggerFactory.getLogger(FunctionRegistryTest.class)
        .info(() -> "checks by basis" + System.lineSeparator() + printed);
    for (FunctionSpec f : functions()) {
      if (!f.name().startsWith("SHEET.") && !HELD_ELSEWHERE.contains(f.name())) {
        assertThat(
                FunctionCases.of(f.name()).stream().filter(FunctionCases.Case::fromOutside).count())
            .as("rows from outside the project for " + f.name())
            .isGreaterThanOrEqualTo(3);
      }
    }
  }
}
