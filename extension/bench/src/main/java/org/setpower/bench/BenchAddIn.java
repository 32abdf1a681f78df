package org.setpower.bench;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.jar.Attributes;
import java.util.jar.JarOutputStream;
import java.util.jar.Manifest;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;

/** Packs the add-in that the others are compared with. It is never shipped. */
final class BenchAddIn {
  private static final List<String> FILES =
      List.of(
          "META-INF/manifest.xml",
          "description.xml",
          "bench.components",
          "CalcAddIns.xcu",
          "bench.py");

  private BenchAddIn() {}

  /** Writes {@code bench.oxt} into a folder with the SDK of the office at {@code officeHome}. */
  static Path pack(Path folder, Path officeHome) throws IOException, InterruptedException {
    Files.createDirectories(folder);
    Path oxt = folder.resolve("bench.oxt");
    try (ZipOutputStream zip = new ZipOutputStream(Files.newOutputStream(oxt))) {
      for (String file : FILES) {
        put(zip, file, resource("addin/" + file));
      }
      put(zip, "types.rdb", types(folder, officeHome));
      put(zip, "bench.jar", jar());
    }
    return oxt;
  }

  private static byte[] types(Path folder, Path officeHome)
      throws IOException, InterruptedException {
    Path idl = Files.write(folder.resolve("types.idl"), resource("addin/types.idl"));
    Path types = folder.resolve("types.rdb");
    Process process =
        new ProcessBuilder(
                officeHome.resolve("sdk/bin/unoidl-write").toString(),
                officeHome.resolve("program/types.rdb").toString(),
                idl.toString(),
                types.toString())
            .redirectErrorStream(true)
            .start();
    String output = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
    if (process.waitFor() != 0) {
      throw new IOException("unoidl-write: " + output);
    }
    return Files.readAllBytes(types);
  }

  private static byte[] jar() throws IOException {
    Manifest manifest = new Manifest();
    manifest.getMainAttributes().put(Attributes.Name.MANIFEST_VERSION, "1.0");
    manifest.getMainAttributes().putValue("RegistrationClassName", EmptyFunctions.class.getName());
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    try (JarOutputStream jar = new JarOutputStream(bytes, manifest)) {
      for (Class<?> type : List.of(XEmpty.class, EmptyFunctions.class)) {
        String name = type.getSimpleName() + ".class";
        put(jar, "org/setpower/bench/" + name, resource(name));
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
