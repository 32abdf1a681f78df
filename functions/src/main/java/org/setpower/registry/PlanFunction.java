package org.setpower.registry;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import org.setpower.base.Unit;
import org.setpower.plan.common.InputTable;
import org.setpower.plan.common.PlanBlock;
import org.setpower.plan.common.PlanModel;

/** Declares the function that carries a plan into its sheet, from the plan's own declaration. */
public final class PlanFunction {
  /** Ends the name of every argument that is a table; they share one description. */
  public static final String TABLE = "_table";

  private static final String UNREADABLE = "\"#\"";

  private PlanFunction() {}

  /** The function {@code PLAN.NAME(answer; table; table; …)}: one line a plan. */
  public static FunctionSpec of(FunctionGroup group, PlanModel model) {
    List<Parameter<?>> parameters = new ArrayList<>();
    parameters.add(range("answer", "Language, layout and result keys that the sheet asks for"));
    for (InputTable<?> table : model.inputs()) {
      parameters.add(
          range(
              snakeCase(table.key()) + TABLE,
              "Named range of this table, from its row of keys to its end row"));
    }
    return group
        .function(model.name().toUpperCase(Locale.ROOT))
        .description("Returns the results of the " + model.title() + "; the template calls it")
        .parameters(parameters.toArray(Parameter<?>[]::new))
        .returnsTable("Block of results: ok or stop in its first cell", "result")
        .formula("all tables at once; the calculation of each figure is in Show calculation")
        .source("the rules of the " + model.title())
        .example(example(group, model), "stop")
        .plan(model)
        .implementation(a -> block(model, parameters.stream().map(a::get).toArray()));
  }

  /** The block for values as a sheet passes them: the answer, then the tables. */
  public static Object[][] block(PlanModel model, Object... raw) {
    return PlanBlock.of(model, raw[0], Arrays.asList(raw).subList(1, raw.length), 0);
  }

  /** A call that can stand in a cell: what is asked for and cannot be read is a stop. */
  private static String example(FunctionGroup group, PlanModel model) {
    String name = group.prefix() + "." + model.name().toUpperCase(Locale.ROOT);
    return "="
        + name
        + "({\"en\";\"\"|1;\"key\"}"
        + (";" + UNREADABLE).repeat(model.inputs().size())
        + ")";
  }

  private static Parameter<Object> range(String name, String phrase) {
    return Parameter.of(name, phrase, Unit.NONE, Parameter.Shape.RANGE, (n, raw) -> raw);
  }

  private static String snakeCase(String key) {
    return key.replaceAll("(\\p{Lu})", "_$1").toLowerCase(Locale.ROOT);
  }
}
