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
import java.util.List;
import java.util.stream.Stream;

/** Tells whether files are the same as before: SHA-256 of their names and contents. */
final class Fingerprint {
  private Fingerprint() {}

  /** The fingerprint of a file, or of all files of a folder. */
  static String of(Path path) throws IOException {
    MessageDigest digest = sha256();
    try (Stream<Path> found = Files.walk(path)) {
      List<Path> files = found.filter(Files::isRegularFile).sorted().toList();
      for (Path file : files) {
        digest.update(path.relativize(file).toString().getBytes(StandardCharsets.UTF_8));
        digest.update(Files.readAllBytes(file));
      }
    }
    return HexFormat.of().formatHex(digest.digest());
  }

  /** The fingerprint of a text. */
  static String of(String text) {
    return HexFormat.of().formatHex(sha256().digest(text.getBytes(StandardCharsets.UTF_8)));
  }

  /** The fingerprint of the classes in the package of this one, without packages inside it. */
  static String ofClassesBeside(Class<?> one) throws IOException {
    Path home;
    try {
      home = Path.of(one.getProtectionDomain().getCodeSource().getLocation().toURI());
    } catch (URISyntaxException e) {
      throw new IllegalStateException(e);
    }
    if (Files.isDirectory(home)) {
      return classes(home.resolve(one.getPackageName().replace('.', '/')));
    }
    try (FileSystem jar = FileSystems.newFileSystem(home)) {
      return classes(jar.getPath(one.getPackageName().replace('.', '/')));
    }
  }

  private static String classes(Path folder) throws IOException {
    MessageDigest digest = sha256();
    try (Stream<Path> found = Files.list(folder)) {
      for (Path file : found.filter(f -> f.toString().endsWith(".class")).sorted().toList()) {
        digest.update(Files.readAllBytes(file));
      }
    }
    return HexFormat.of().formatHex(digest.digest());
  }

  private static MessageDigest sha256() {
    try {
      return MessageDigest.getInstance("SHA-256");
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException("every Java has SHA-256", e);
    }
  }
}
