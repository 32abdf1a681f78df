package org.setpower.generator;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** Turns the IDL into the type library and the Java types with the tools of the office's SDK. */
public final class TypeLibrary {
  private TypeLibrary() {}

  /** Arguments: the folder of generated files, the folder for Java types. */
  public static void main(String[] args) throws IOException, InterruptedException {
    Path generated = Path.of(args[0]).toAbsolutePath();
    Path classes = Path.of(args[1]).toAbsolutePath();
    Path office = office();
    Path sdk = office.resolve("sdk/bin");
    require(sdk.resolve("unoidl-write"), "the office's SDK is missing", "libreoffice-dev");
    require(sdk.resolve("javamaker"), "the office's SDK is missing", "libreoffice-dev");
    Path types = office.resolve("program/types.rdb");
    Path offapi = office.resolve("program/types/offapi.rdb");
    require(offapi, "LibreOffice Calc is missing", "libreoffice-calc");
    Path library = generated.resolve("types.rdb");
    Path idl = generated.resolve("idl");
    if (isNewer(library, idl) && Files.exists(classes.resolve("org/setpower/XFunctions.class"))) {
      return;
    }
    Files.createDirectories(classes);
    run(sdk.resolve("unoidl-write"), types, offapi, idl, library);
    run(
        sdk.resolve("javamaker"),
        "-nD",
        "-T" + CodeGenerator.INTERFACE,
        "-O" + classes,
        library,
        "-X" + types,
        "-X" + offapi);
  }

  private static Path office() {
    String set = System.getenv("SETPOWER_OFFICE_HOME");
    return Stream.of(Optional.ofNullable(set), Optional.of("/usr/lib/libreoffice"))
        .flatMap(Optional::stream)
        .map(Path::of)
        .filter(Files::isDirectory)
        .findFirst()
        .orElseThrow(() -> new Missing("LibreOffice Calc is missing", "libreoffice-calc"));
  }

  private static void require(Path file, String what, String debianPackage) {
    if (!Files.exists(file)) {
      throw new Missing(what, debianPackage);
    }
  }

  private static boolean isNewer(Path library, Path idl) throws IOException {
    if (!Files.exists(library)) {
      return false;
    }
    try (Stream<Path> files = Files.walk(idl)) {
      return files
          .filter(Files::isRegularFile)
          .allMatch(f -> f.toFile().lastModified() <= library.toFile().lastModified());
    }
  }

  private static void run(Path tool, Object... arguments) throws IOException, InterruptedException {
    List<String> command =
        Stream.concat(Stream.of(tool), Stream.of(arguments)).map(Object::toString).toList();
    Process process = new ProcessBuilder(command).redirectErrorStream(true).start();
    String output = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
    if (process.waitFor() != 0) {
      throw new IllegalStateException(String.join(" ", command) + "\n" + output);
    }
  }

  /** Something the build needs and cannot bring itself. */
  private static final class Missing extends RuntimeException {
    private static final long serialVersionUID = 1L;

    Missing(String what, String debianPackage) {
      super(
          what
              + ": install the Debian package "
              + debianPackage
              + ", or set SETPOWER_OFFICE_HOME to the folder of your LibreOffice.");
    }
  }
}
