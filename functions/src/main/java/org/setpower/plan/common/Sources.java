package org.setpower.plan.common;

import java.util.HashSet;
import java.util.List;
import java.util.Set;

/** Which input columns a result column is made of, as the plan's tables declare it. */
public final class Sources {
  private Sources() {}

  /** Whether a source names an input column; one that ends in * names all that begin so. */
  static boolean matches(String source, InputColumn column) {
    return source.endsWith("*")
        ? column.path().startsWith(source.substring(0, source.length() - 1))
        : source.equals(column.path());
  }

  /** The paths of all input columns behind a result column, over all results between. */
  public static Set<String> of(PlanModel model, ResultColumn column) {
    Set<String> inputs = new HashSet<>();
    collect(model, column, inputs, new HashSet<>());
    return inputs;
  }

  private static void collect(
      PlanModel model, ResultColumn column, Set<String> inputs, Set<String> seen) {
    if (!seen.add(column.path())) {
      return;
    }
    List<InputColumn> all = model.inputs().stream().flatMap(t -> t.columns().stream()).toList();
    for (String source : column.from()) {
      all.stream().filter(c -> matches(source, c)).forEach(c -> inputs.add(c.path()));
      model.results().stream()
          .flatMap(t -> t.columns().stream())
          .filter(c -> c.path().equals(source))
          .forEach(c -> collect(model, c, inputs, seen));
    }
  }
}
