package org.setpower.office;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

/**
 * Profiles as they are after their extensions were installed. Each is set up by the office once in
 * a Java machine and copied for the offices after it: a test class spends its seconds on its tests.
 */
final class ProfileStore {
  private static final Map<List<String>, Path> KEPT = new HashMap<>();

  private ProfileStore() {}

  /** Sets up a profile. */
  @FunctionalInterface
  interface Setup {
    void run() throws IOException;
  }

  /** Makes the profile of a host: a copy, or for the first with these extensions by the setup. */
  static synchronized void fill(OfficeHost host, List<Path> extensions, Setup setup)
      throws IOException {
    List<String> key = key(extensions);
    Path kept = KEPT.get(key);
    if (kept != null) {
      copy(kept, host.profile());
      return;
    }
    setup.run();
    Path store = Files.createTempDirectory("setpower-profile-");
    Runtime.getRuntime().addShutdownHook(new Thread(() -> OfficeHost.delete(store)));
    kept = store.resolve("profile");
    copy(host.profile(), kept);
    KEPT.put(key, kept);
  }

  private static List<String> key(List<Path> extensions) throws IOException {
    List<String> key = new ArrayList<>();
    for (Path extension : extensions) {
      key.add(extension.toRealPath() + " " + Files.getLastModifiedTime(extension));
    }
    return key;
  }

  /** With owners and rights: the office runs as another user. */
  private static void copy(Path from, Path to) throws IOException {
    try (Stream<Path> files = Files.walk(from)) {
      for (Path file : (Iterable<Path>) files::iterator) {
        Files.copy(file, to.resolve(from.relativize(file)), StandardCopyOption.COPY_ATTRIBUTES);
      }
    }
  }
}
