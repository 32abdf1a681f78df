package org.setpower.generator;

import java.util.Set;
import org.setpower.registry.Parameter;

/** Names in IDL and Java, derived from the catalogue's. */
final class IdlNames {
  private static final Set<String> KEYWORDS =
      Set.of(
          "any",
          "attribute",
          "boolean",
          "bound",
          "byte",
          "case",
          "char",
          "class",
          "const",
          "constants",
          "constrained",
          "context",
          "default",
          "double",
          "enum",
          "exception",
          "float",
          "for",
          "get",
          "hyper",
          "if",
          "in",
          "inout",
          "interface",
          "long",
          "maybeambiguous",
          "maybedefault",
          "maybevoid",
          "methods",
          "module",
          "native",
          "new",
          "object",
          "oneway",
          "optional",
          "out",
          "package",
          "private",
          "property",
          "published",
          "raises",
          "readonly",
          "removable",
          "sequence",
          "service",
          "set",
          "short",
          "singleton",
          "string",
          "struct",
          "switch",
          "this",
          "throws",
          "transient",
          "type",
          "typedef",
          "union",
          "unsigned",
          "void",
          "while");

  private IdlNames() {}

  /** {@code conductor_temp} → {@code conductorTemp}. */
  static String of(Parameter<?> parameter) {
    StringBuilder name = new StringBuilder();
    for (String word : parameter.name().split("_")) {
      name.append(
          name.isEmpty() ? word : Character.toUpperCase(word.charAt(0)) + word.substring(1));
    }
    if (KEYWORDS.contains(name.toString())) {
      throw new IllegalStateException(
          "the parameter " + parameter.name() + " is a keyword of IDL or Java: name it otherwise");
    }
    return name.toString();
  }
}
