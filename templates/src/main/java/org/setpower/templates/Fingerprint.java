package org.setpower.templates;

import java.io.IOException;
import java.net.URISyntaxException;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileSystem;
import java.nio.file.FileSystems;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.Predicate;
import java.util.stream.Stream;

/** Tells whether files are the same as before: SHA-256 of their names and contents. */
final class Fingerprint {
  private Fingerprint() {}

  /** The fingerprint of a text. */
  static String of(String text) {
    return HexFormat.of().formatHex(sha256().digest(text.getBytes(StandardCharsets.UTF_8)));
  }

  /** The fingerprint of some of the files beside a class: those of its jar or folder it names. */
  static String ofBeside(Class<?> one, Predicate<String> isPart) throws IOException {
    try {
      return of(Path.of(one.getProtectionDomain().getCodeSource().getLocation().toURI()), isPart);
    } catch (URISyntaxException e) {
      throw new IllegalStateException(e);
    }
  }

  /** The fingerprint of some of the files of a folder, or of a jar or another packed file. */
  static String of(Path home, Predicate<String> isPart) throws IOException {
    if (Files.isDirectory(home)) {
      return ofFolder(home, isPart);
    }
    try (FileSystem packed = FileSystems.newFileSystem(home)) {
      return ofFolder(packed.getPath("/"), isPart);
    }
  }

  private static String ofFolder(Path folder, Predicate<String> isPart) throws IOException {
    MessageDigest digest = sha256();
    Map<String, Path> files = new TreeMap<>();
    try (Stream<Path> found = Files.walk(folder)) {
      found
          .filter(Files::isRegularFile)
          .forEach(f -> files.put(folder.relativize(f).toString().replace('\\', '/'), f));
    }
    files.keySet().removeIf(isPart.negate());
    for (Map.Entry<String, Path> file : files.entrySet()) {
      digest.update(file.getKey().getBytes(StandardCharsets.UTF_8));
      digest.update(content(file.getKey(), file.getValue(), isPart));
    }
    return HexFormat.of().formatHex(digest.digest());
  }

  /** Of a jar within, as of any folder: only its parts that count. */
  private static byte[] content(String name, Path file, Predicate<String> isPart)
      throws IOException {
    return name.endsWith(".jar")
        ? of(file, isPart).getBytes(StandardCharsets.UTF_8)
        : Files.readAllBytes(file);
  }

  private static MessageDigest sha256() {
    try {
      return MessageDigest.getInstance("SHA-256");
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException("every Java has SHA-256", e);
    }
  }
}
