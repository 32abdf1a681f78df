package org.setpower.generator;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.setpower.registry.FunctionSpec;
import org.setpower.registry.Parameter;

/** The class that implements the interface; each method names its constant and nothing else. */
final class AddInClass {
  private AddInClass() {}

  static String of(List<FunctionSpec> functions) {
    StringBuilder java =
        new StringBuilder(
            """
            package org.setpower.addin;

            import com.sun.star.lang.IllegalArgumentException;
            import com.sun.star.script.CannotConvertException;
            import com.sun.star.sheet.NoConvergenceException;
            import com.sun.star.uno.XComponentContext;
            import org.setpower.XFunctions;

            /** Generated from the catalogue of functions. */
            public final class FunctionsAddIn extends AddIn implements XFunctions {

              /** Outside an office. */
              public FunctionsAddIn() {}

              /** Created by the office. */
              public FunctionsAddIn(XComponentContext context) {
                super(context);
              }
            """);
    functions.forEach(f -> java.append(method(f)));
    return java.append("}\n").toString();
  }

  private static String method(FunctionSpec f) {
    List<String> parameters = new ArrayList<>();
    List<String> arguments = new ArrayList<>();
    arguments.add(holder(f) + "." + constant(f));
    if (f.takesDate()) {
      parameters.add("com.sun.star.beans.XPropertySet callingDocument");
      arguments.add("callingDocument");
    }
    for (Parameter<?> p : f.parameters()) {
      parameters.add(
          (p.shape() == Parameter.Shape.REST ? "Object[] " : "Object ") + IdlNames.of(p));
      arguments.add(IdlNames.of(p));
    }
    return """

      @Override
      public Object %s(%s)
          throws IllegalArgumentException, CannotConvertException, NoConvergenceException {
        return %s(%s);
      }
    """
        .formatted(
            f.methodName(),
            String.join(", ", parameters),
            f.plan().isPresent() ? "answerPlan" : f.takesDate() ? "answerDated" : "answer",
            String.join(", ", arguments));
  }

  private static String constant(FunctionSpec f) {
    return f.name().substring(f.name().indexOf('.') + 1);
  }

  private static String holder(FunctionSpec f) {
    String prefix = f.group().prefix();
    return "org.setpower.registry.groups."
        + prefix.charAt(0)
        + prefix.substring(1).toLowerCase(Locale.ROOT)
        + "Functions";
  }
}
