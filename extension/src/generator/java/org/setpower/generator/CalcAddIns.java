package org.setpower.generator;

import java.util.List;
import org.setpower.sheet.FunctionSpec;
import org.setpower.sheet.Parameter;

/** The registration of the functions and the words of the wizard. */
final class CalcAddIns {
  private CalcAddIns() {}

  static String of(List<FunctionSpec> functions) {
    StringBuilder xcu =
        new StringBuilder(
            """
            <?xml version="1.0" encoding="UTF-8"?>
            <oor:component-data xmlns:oor="http://openoffice.org/2001/registry"
                                xmlns:xs="http://www.w3.org/2001/XMLSchema"
                                oor:name="CalcAddIns" oor:package="org.openoffice.Office">
              <node oor:name="AddInInfo">
                <node oor:name="org.setpower.Functions" oor:op="replace">
                  <node oor:name="AddInFunctions">
            """);
    functions.forEach(f -> xcu.append(function(f)));
    return xcu.append(
            """
                  </node>
                </node>
              </node>
            </oor:component-data>
            """)
        .toString();
  }

  private static String function(FunctionSpec f) {
    StringBuilder node = new StringBuilder();
    node.append("        <node oor:name=\"" + f.methodName() + "\" oor:op=\"replace\">\n");
    node.append(property("          ", "DisplayName", f.name()));
    node.append(property("          ", "Description", f.sentence()));
    node.append("          <prop oor:name=\"Category\"><value>Add-In</value></prop>\n");
    node.append("          <node oor:name=\"Parameters\">\n");
    for (Parameter<?> p : f.parameters()) {
      node.append("            <node oor:name=\"" + Names.of(p) + "\" oor:op=\"replace\">\n");
      node.append(property("              ", "DisplayName", p.name()));
      node.append(property("              ", "Description", p.description()));
      node.append("            </node>\n");
    }
    node.append("          </node>\n");
    node.append("        </node>\n");
    return node.toString();
  }

  private static String property(String indent, String name, String text) {
    return indent
        + "<prop oor:name=\""
        + name
        + "\"><value xml:lang=\"en-US\">"
        + escaped(text)
        + "</value></prop>\n";
  }

  private static String escaped(String text) {
    return text.replace("&", "&amp;").replace("<", "&lt;").replace(">", "&gt;");
  }
}
