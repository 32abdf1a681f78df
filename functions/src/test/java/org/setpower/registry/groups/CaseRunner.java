package org.setpower.registry.groups;

import java.util.ArrayList;
import java.util.List;
import org.setpower.registry.FunctionSpec;

/** Runs the checks of one function without a test framework: extension/bin/try. */
final class CaseRunner {
  private final FunctionRegistryTest checks = new FunctionRegistryTest();
  private final List<String> failures = new ArrayList<>();

  private CaseRunner() {}

  /** Argument: the name of a function. The status is 1 when a check fails. */
  public static void main(String[] arguments) {
    FunctionSpec function =
        FunctionRegistry.find(arguments[0])
            .orElseThrow(() -> new IllegalArgumentException("no function " + arguments[0]));
    CaseRunner runner = new CaseRunner();
    List<FunctionCases.Case> cases = FunctionCases.of(function.name());
    cases.forEach(runner::run);
    runner.check(function.name(), () -> runner.checks.a_declaration_is_complete(function));
    runner.failures.forEach(System.out::println);
    System.out.printf(
        "%s: %d cases, %d failures%n", function.name(), cases.size(), runner.failures.size());
    System.exit(runner.failures.isEmpty() ? 0 : 1);
  }

  private void run(FunctionCases.Case c) {
    check(c.toString(), () -> checks.a_case_comes_out(c));
    check(c.toString(), () -> checks.a_working_ends_in_the_result(c));
    check(c.toString(), () -> checks.a_case_names_where_its_value_comes_from(c));
  }

  private void check(String what, Runnable check) {
    try {
      check.run();
    } catch (AssertionError | RuntimeException e) {
      failures.add(what + System.lineSeparator() + "    " + e);
    }
  }
}
