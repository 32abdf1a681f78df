package org.setpower.bench;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.jar.Attributes;
import java.util.jar.JarOutputStream;
import java.util.jar.Manifest;
import java.util.stream.Stream;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import javax.tools.ToolProvider;

/** Packs the add-in that the others are compared with. It is never shipped. */
final class BenchAddIn {
  private static final List<String> FILES =
      List.of("META-INF/manifest.xml", "description.xml", "bench.components", "bench.py");

  private BenchAddIn() {}

  /** Writes {@code bench.oxt} into a folder with the SDK of the office at {@code officeHome}. */
  static Path pack(Path where, Path officeHome) throws IOException, InterruptedException {
    Path folder = where.toAbsolutePath(); // javamaker does not find a relative one
    Path classes = Files.createDirectories(folder.resolve("classes"));
    Path idl = Files.writeString(folder.resolve("types.idl"), EmptyAddIn.idl());
    Path types = folder.resolve("types.rdb");
    Path office = officeHome.resolve("program/types.rdb");
    Path more = officeHome.resolve("program/types/offapi.rdb");
    Path tools = officeHome.resolve("sdk/bin");
    run(tools.resolve("unoidl-write"), office, more, idl, types);
    run(
        tools.resolve("javamaker"),
        "-nD",
        "-Torg.setpower.bench.XEmpty",
        "-O" + classes,
        types,
        "-X" + office,
        "-X" + more);
    Path source = Files.writeString(folder.resolve("EmptyFunctions.java"), EmptyAddIn.java());
    String path =
        classes + System.getProperty("path.separator") + System.getProperty("java.class.path");
    int failed =
        ToolProvider.getSystemJavaCompiler()
            .run(
                null,
                null,
                null,
                "-nowarn",
                "-cp",
                path,
                "-d",
                classes.toString(),
                source.toString());
    if (failed != 0) {
      throw new IOException("cannot compile " + source);
    }
    Path oxt = folder.resolve("bench.oxt");
    try (ZipOutputStream zip = new ZipOutputStream(Files.newOutputStream(oxt))) {
      for (String file : FILES) {
        put(zip, file, resource("addin/" + file));
      }
      put(zip, "CalcAddIns.xcu", EmptyAddIn.registration().getBytes(StandardCharsets.UTF_8));
      put(zip, "types.rdb", Files.readAllBytes(types));
      put(zip, "bench.jar", jar(classes));
    }
    return oxt;
  }

  private static void run(Path tool, Object... arguments) throws IOException, InterruptedException {
    List<String> command = new ArrayList<>(List.of(tool.toString()));
    Stream.of(arguments).map(Object::toString).forEach(command::add);
    Process process = new ProcessBuilder(command).redirectErrorStream(true).start();
    String output = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
    if (process.waitFor() != 0) {
      throw new IOException(String.join(" ", command) + ": " + output);
    }
  }

  private static byte[] jar(Path classes) throws IOException {
    Manifest manifest = new Manifest();
    manifest.getMainAttributes().put(Attributes.Name.MANIFEST_VERSION, "1.0");
    manifest
        .getMainAttributes()
        .putValue("RegistrationClassName", "org.setpower.bench.EmptyFunctions");
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    try (JarOutputStream jar = new JarOutputStream(bytes, manifest)) {
      for (String name : List.of("XEmpty.class", "EmptyFunctions.class")) {
        String inside = "org/setpower/bench/" + name;
        put(jar, inside, Files.readAllBytes(classes.resolve(inside)));
      }
    }
    return bytes.toByteArray();
  }

  private static void put(ZipOutputStream zip, String name, byte[] content) throws IOException {
    zip.putNextEntry(new ZipEntry(name));
    zip.write(content);
    zip.closeEntry();
  }

  private static byte[] resource(String name) throws IOException {
    try (InputStream in = BenchAddIn.class.getResourceAsStream(name)) {
      return in.readAllBytes();
    }
  }
}
