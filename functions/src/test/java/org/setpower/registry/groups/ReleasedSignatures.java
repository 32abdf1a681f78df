package org.setpower.registry.groups;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.setpower.registry.FunctionSpec;
import org.setpower.registry.Parameter;

/**
 * What saved documents depend on: names, order of arguments, their units, defaults and words. The
 * committed list holds one line per released function, {@code version<TAB>signature}; it grows by
 * running {@link #main} at a release and is never edited otherwise.
 */
public final class ReleasedSignatures {
  /** The committed list, seen from the module or from the top. */
  static final Path LIST =
      Stream.of("", "functions")
          .map(folder -> Path.of(folder, "src/test/resources/released.tsv"))
          .filter(Files::exists)
          .findFirst()
          .orElseThrow();

  private ReleasedSignatures() {}

  /** A function's signature: {@code NAME=method(argument; [optional=default]; …)}. */
  static String of(FunctionSpec f) {
    return f.name()
        + "="
        + f.methodName()
        + f.parameters().stream()
            .map(ReleasedSignatures::of)
            .collect(Collectors.joining("; ", "(", ")"));
  }

  private static String of(Parameter<?> p) {
    String unit = p.unit().symbol().isEmpty() ? "" : " " + p.unit().symbol();
    String words = p.words().isEmpty() ? "" : " " + String.join("|", p.words());
    return p.isOptional()
        ? "[" + p.name() + unit + words + " = " + p.fallbackWords() + "]"
        : p.name() + unit + words;
  }

  /** Released signatures by function name. */
  static Map<String, String> released() throws IOException {
    Map<String, String> all = new LinkedHashMap<>();
    for (String line : Files.readAllLines(LIST, StandardCharsets.UTF_8)) {
      if (!line.isBlank() && !line.startsWith("#")) {
        String signature = line.split("\t", 2)[1];
        all.put(signature.substring(0, signature.indexOf('=')), signature);
      }
    }
    return all;
  }

  /** Adds what is new in the catalogue. Arguments: the version that is released. */
  public static void main(String[] args) throws IOException {
    List<String> lines = new ArrayList<>(Files.readAllLines(LIST, StandardCharsets.UTF_8));
    Map<String, String> released = released();
    for (FunctionSpec f : FunctionRegistry.all()) {
      if (!released.containsKey(f.name())) {
        lines.add(args[0] + "\t" + of(f));
      } else if (!released.get(f.name()).equals(of(f))) {
        lines.replaceAll(
            l -> l.endsWith("\t" + released.get(f.name())) ? args[0] + "\t" + of(f) : l);
      }
    }
    Files.write(LIST, lines, StandardCharsets.UTF_8);
  }
}
