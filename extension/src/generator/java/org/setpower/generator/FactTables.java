package org.setpower.generator;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.URI;
import java.net.URISyntaxException;
import java.nio.file.FileSystem;
import java.nio.file.FileSystems;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.setpower.base.ReferenceTable;
import org.setpower.registry.groups.FunctionRegistry;

/** What the tables of facts rest on. */
final class FactTables {
  private FactTables() {}

  /** So many rows of a table come from this source. */
  record Use(String table, String source, String basis, int rows) {}

  static List<Use> uses() {
    try {
      URI place =
          FunctionRegistry.class.getProtectionDomain().getCodeSource().getLocation().toURI();
      Path path = Path.of(place);
      if (Files.isDirectory(path)) {
        return uses(path);
      }
      try (FileSystem jar = FileSystems.newFileSystem(path)) {
        return uses(jar.getPath("/"));
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    } catch (URISyntaxException e) {
      throw new IllegalStateException(e);
    }
  }

  private static List<Use> uses(Path root) throws IOException {
    List<Use> uses = new ArrayList<>();
    try (Stream<Path> files = Files.walk(root)) {
      for (Path file : files.filter(f -> f.toString().endsWith(".csv")).sorted().toList()) {
        String resource = "/" + root.relativize(file).toString().replace('\\', '/');
        Map<String, Use> bySource = new TreeMap<>();
        for (ReferenceTable.Row row : ReferenceTable.read(FunctionRegistry.class, resource)) {
          String table = resource.replaceFirst("^/org/setpower/", "");
          bySource.merge(
              row.source() + "|" + row.basis(),
              new Use(table, row.source(), row.basis(), 1),
              (a, b) -> new Use(table, a.source(), a.basis(), a.rows() + 1));
        }
        uses.addAll(bySource.values());
      }
    }
    return uses;
  }
}
