package org.setpower.bench;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.setpower.registry.FunctionSpec;
import org.setpower.registry.Parameter;
import org.setpower.registry.groups.FunctionRegistry;

/**
 * The sources of an add-in with a function for each of ours, with the same arguments, that computes
 * nothing: what a call costs before we do anything. {@code CABLE.DROP} becomes {@code
 * EMPTY.CABLEDROP}. It gives 0, or a text where ours gives a text, or a column of 0 where a range
 * is passed for a single value.
 */
final class EmptyAddIn {
  private static final List<FunctionSpec> FUNCTIONS = FunctionRegistry.all();

  private EmptyAddIn() {}

  /** Our formula, asked of the empty functions. */
  static String formula(String ours) {
    String formula = ours;
    for (FunctionSpec f : FUNCTIONS) {
      formula = formula.replace(f.name() + "(", name(f) + "(");
    }
    return formula;
  }

  private static String name(FunctionSpec f) {
    return "EMPTY." + f.name().replace(".", "");
  }

  static String idl() {
    return """
    module org { module setpower { module bench {
    interface XEmpty {
      any heapMegabytes();
    %s};
    interface XPython {
      any pythonDrop([in] any ohms, [in] any length, [in] any amps);
    };
    }; }; };
    """
        .formatted(
            lines(
                f ->
                    "  any %s(%s);"
                        .formatted(
                            f.methodName(),
                            parameters(
                                f,
                                "[in] com::sun::star::beans::XPropertySet ",
                                "[in] sequence<any> ",
                                "[in] any "))));
  }

  static String java() {
    return """
    package org.setpower.bench;

    import com.sun.star.lang.XServiceInfo;
    import com.sun.star.lang.XSingleComponentFactory;
    import com.sun.star.lib.uno.helper.Factory;
    import com.sun.star.lib.uno.helper.WeakBase;

    public final class EmptyFunctions extends WeakBase implements XEmpty, XServiceInfo {
      private static final String SERVICE = "org.setpower.bench.Empty";
      private static final Double ZERO = 0.0;
      private static final String TEXT = "nothing computed";

      public static XSingleComponentFactory __getComponentFactory(String implementation) {
        return implementation.equals(EmptyFunctions.class.getName())
            ? Factory.createComponentFactory(EmptyFunctions.class, new String[] {SERVICE})
            : null;
      }

      private static Object zeros(Object[][] range) {
        Object[][] column = new Object[range.length][];
        java.util.Arrays.setAll(column, row -> new Object[] {ZERO});
        return column;
      }

      @Override public Object heapMegabytes() {
        System.gc();
        System.gc();
        Runtime runtime = Runtime.getRuntime();
        return (runtime.totalMemory() - runtime.freeMemory()) / 1e6;
      }

    %s
      @Override public String getImplementationName() {
        return getClass().getName();
      }

      @Override public boolean supportsService(String name) {
        return SERVICE.equals(name);
      }

      @Override public String[] getSupportedServiceNames() {
        return new String[] {SERVICE};
      }
    }
    """
        .formatted(
            lines(
                f ->
                    "  @Override public Object %s(%s) { return %s; }"
                        .formatted(
                            f.methodName(),
                            parameters(
                                f, "com.sun.star.beans.XPropertySet ", "Object[] ", "Object "),
                            answer(f))));
  }

  private static String answer(FunctionSpec f) {
    List<Parameter<?>> all = f.parameters();
    String ranges =
        IntStream.range(0, all.size())
            .filter(i -> all.get(i).shape() == Parameter.Shape.SINGLE)
            .mapToObj(i -> "p%d instanceof Object[][] r%d ? zeros(r%d) : ".formatted(i, i, i))
            .collect(Collectors.joining());
    return switch (f.kind()) {
      case NUMBER -> ranges + "ZERO";
      case TEXT -> "TEXT";
      case TABLE -> "ZERO";
    };
  }

  static String registration() {
    return """
    <?xml version="1.0" encoding="UTF-8"?>
    <oor:component-data xmlns:oor="http://openoffice.org/2001/registry"
        xmlns:xs="http://www.w3.org/2001/XMLSchema"
        oor:name="CalcAddIns" oor:package="org.openoffice.Office">
      <node oor:name="AddInInfo">
        <node oor:name="org.setpower.bench.Empty" oor:op="replace">
          <node oor:name="AddInFunctions">
    %s%s      </node>
        </node>
        <node oor:name="org.setpower.bench.Python" oor:op="replace">
          <node oor:name="AddInFunctions">
    %s      </node>
        </node>
      </node>
    </oor:component-data>
    """
        .formatted(
            lines(f -> entry(f.methodName(), name(f))),
            entry("heapMegabytes", "EMPTY.HEAP") + "\n",
            entry("pythonDrop", "PYTHON.DROP") + "\n");
  }

  private static String entry(String method, String name) {
    return """
    <node oor:name="%s" oor:op="replace">
      <prop oor:name="DisplayName"><value xml:lang="en-US">%s</value></prop>
    </node>\
    """
        .formatted(method, name);
  }

  private static String lines(java.util.function.Function<FunctionSpec, String> line) {
    return FUNCTIONS.stream().map(line).map(l -> l + "\n").collect(Collectors.joining());
  }

  private static String parameters(FunctionSpec f, String document, String rest, String single) {
    List<String> all = new ArrayList<>();
    if (f.takesDate()) {
      all.add(document + "doc");
    }
    for (int i = 0; i < f.parameters().size(); i++) {
      boolean isRest = f.parameters().get(i).shape() == Parameter.Shape.REST;
      all.add((isRest ? rest : single) + "p" + i);
    }
    return String.join(", ", all);
  }
}
