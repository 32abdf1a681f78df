package org.setpower.generator;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import org.setpower.registry.FunctionSpec;
import org.setpower.registry.Parameter;
import org.setpower.registry.text.FunctionTexts;

/** The registration of the functions and the words of the wizard. */
final class CalcAddIns {
  /** What an office reads that has no text of its own language. */
  private static final String ENGLISH = "en-US";

  private static final String KEYS = "en-GB";

  private CalcAddIns() {}

  /**
   * Descriptions come in all these languages, names in English only: an office with a name in its
   * own language no longer knows the English one.
   */
  static String of(List<FunctionSpec> functions, Map<String, FunctionTexts> translations) {
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
    functions.forEach(f -> xcu.append(function(f, translations)));
    return xcu.append(
            """
                  </node>
                </node>
              </node>
            </oor:component-data>
            """)
        .toString();
  }

  private static String function(FunctionSpec f, Map<String, FunctionTexts> translations) {
    StringBuilder node = new StringBuilder();
    node.append("        <node oor:name=\"" + f.methodName() + "\" oor:op=\"replace\">\n");
    node.append(property("          ", "DisplayName", Map.of(ENGLISH, f.name())));
    node.append(
        property(
            "          ", "Description", texts(f.sentence(), translations, t -> t.sentence(f))));
    node.append("          <prop oor:name=\"Category\"><value>Add-In</value></prop>\n");
    node.append("          <node oor:name=\"Parameters\">\n");
    for (Parameter<?> p : f.parameters()) {
      node.append("            <node oor:name=\"" + IdlNames.of(p) + "\" oor:op=\"replace\">\n");
      node.append(property("              ", "DisplayName", Map.of(ENGLISH, p.name())));
      node.append(
          property(
              "              ",
              "Description",
              texts(p.description(), translations, t -> t.description(p))));
      node.append("            </node>\n");
    }
    node.append("          </node>\n");
    node.append("        </node>\n");
    return node.toString();
  }

  /** A text in American English and, where they differ, in the other languages. */
  private static Map<String, String> texts(
      String british,
      Map<String, FunctionTexts> translations,
      Function<FunctionTexts, String> other) {
    String american = other.apply(FunctionTexts.into(ENGLISH));
    Map<String, String> texts = new LinkedHashMap<>();
    texts.put(ENGLISH, american);
    texts.put(KEYS, british);
    translations.forEach((language, translation) -> texts.put(language, other.apply(translation)));
    texts.entrySet().removeIf(t -> !t.getKey().equals(ENGLISH) && t.getValue().equals(american));
    return texts;
  }

  private static String property(String indent, String name, Map<String, String> texts) {
    StringBuilder property = new StringBuilder(indent + "<prop oor:name=\"" + name + "\">");
    texts.forEach(
        (language, text) ->
            property.append("<value xml:lang=\"" + language + "\">" + escaped(text) + "</value>"));
    return property.append("</prop>\n").toString();
  }

  private static String escaped(String text) {
    return text.replace("&", "&amp;").replace("<", "&lt;").replace(">", "&gt;");
  }
}
