package org.setpower.generator;

import java.util.ArrayList;
import java.util.List;
import org.setpower.registry.FunctionSpec;
import org.setpower.registry.Parameter;

/** The interface in UNO IDL. */
final class Idl {
  private Idl() {}

  static String of(List<FunctionSpec> functions) {
    StringBuilder idl =
        new StringBuilder(
            """
            // Generated from the catalogue of functions.
            module org { module setpower {

            interface XFunctions {
            """);
    for (FunctionSpec f : functions) {
      idl.append("  any ").append(f.methodName()).append("(");
      idl.append(String.join(", ", parameters(f)));
      idl.append(")\n    raises (com::sun::star::lang::IllegalArgumentException,\n");
      idl.append("            com::sun::star::script::CannotConvertException,\n");
      idl.append("            com::sun::star::sheet::NoConvergenceException);\n");
    }
    return idl.append("};\n\n}; };\n").toString();
  }

  private static List<String> parameters(FunctionSpec f) {
    List<String> all = new ArrayList<>();
    if (f.takesDate()) {
      all.add("[in] com::sun::star::beans::XPropertySet callingDocument");
    }
    for (Parameter<?> p : f.parameters()) {
      String type = p.shape() == Parameter.Shape.REST ? "sequence<any>" : "any";
      all.add("[in] " + type + " " + IdlNames.of(p));
    }
    return all;
  }
}
