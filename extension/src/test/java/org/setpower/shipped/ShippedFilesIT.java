package org.setpower.shipped;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.jar.Attributes;
import java.util.jar.Manifest;
import java.util.regex.Pattern;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.setpower.addin.SharedOffice;
import org.setpower.text.MessageCatalog;

/** What lies in the packed extension. */
@Tag("one-office")
class ShippedFilesIT {
  private static final Pattern KINDS =
      Pattern.compile(
          "LICENSE|.*\\.(xml|xcu|xcs|xdl|components|rdb|jar|txt|html|png|ots|ods|properties)");
  private static final Pattern DOCUMENTS = Pattern.compile(".*\\.(ots|ods)");

  /** Macros, things that are loaded from elsewhere, and things that start by themselves. */
  private static final List<String> FOREIGN =
      List.of(
          "script:event-listener",
          "table:dde",
          "office:dde",
          "table:cell-range-source",
          "<draw:plugin",
          "<draw:applet",
          "<draw:object-ole",
          "xlink:href=\"http",
          "xlink:href=\"ftp",
          "xlink:href=\"file",
          "xlink:href=\"vnd",
          "<!DOCTYPE",
          "<!ENTITY",
          "WEBSERVICE",
          "FILTERXML");

  private static final List<String> OURS = List.of("lib/set-power-sheets.jar", "lib/functions.jar");

  private static Map<String, byte[]> unpacked(byte[] zip) throws IOException {
    Map<String, byte[]> files = new LinkedHashMap<>();
    try (ZipInputStream in = new ZipInputStream(new ByteArrayInputStream(zip))) {
      for (ZipEntry entry = in.getNextEntry(); entry != null; entry = in.getNextEntry()) {
        if (!entry.isDirectory()) {
          files.put(entry.getName(), in.readAllBytes());
        }
      }
    }
    return files;
  }

  private static Map<String, byte[]> extension() throws IOException {
    return unpacked(Files.readAllBytes(SharedOffice.OXT));
  }

  @Test
  void only_kinds_of_files_that_are_known() throws IOException {
    assertThat(extension().keySet()).allMatch(KINDS.asMatchPredicate());
  }

  @Test
  void sheets_hold_no_macro_and_load_nothing_from_elsewhere() throws IOException {
    Map<String, byte[]> extension = extension();
    List<String> sheets = extension.keySet().stream().filter(DOCUMENTS.asMatchPredicate()).toList();
    assertThat(sheets).hasSizeGreaterThanOrEqualTo(12);
    for (String sheet : sheets) {
      Map<String, byte[]> parts = unpacked(extension.get(sheet));
      assertThat(parts.keySet())
          .as(sheet)
          .contains("content.xml")
          .noneMatch(part -> part.startsWith("Basic/") || part.startsWith("Scripts/"));
      for (String part : List.of("content.xml", "styles.xml", "settings.xml")) {
        String text = new String(parts.get(part), StandardCharsets.UTF_8);
        assertThat(FOREIGN).as(sheet + " " + part).noneMatch(text::contains);
      }
    }
  }

  /** Every language ships with its texts but those of sheets, which are drawn already. */
  @Test
  void texts_ship_without_those_of_sheets() throws IOException {
    Map<String, byte[]> functions = unpacked(extension().get("lib/functions.jar"));
    for (String locale : MessageCatalog.files()) {
      byte[] file = functions.get("org/setpower/text/" + MessageCatalog.file(locale));
      for (MessageCatalog.Speaker speaker : MessageCatalog.Speaker.values()) {
        MessageCatalog shipped =
            MessageCatalog.from(new ByteArrayInputStream(file), locale, speaker);
        if (speaker == MessageCatalog.Speaker.SHEETS) {
          assertThat(shipped.translated()).as(locale).isEmpty();
        } else {
          assertThat(shipped.translated())
              .as(locale + " " + speaker)
              .isEqualTo(MessageCatalog.in(locale, speaker).translated());
        }
      }
    }
  }

  /** One line a library: file, name, version, licence. Kept in target/libraries.txt. */
  @Test
  void the_notice_names_every_library_with_version_and_licence() throws IOException {
    Map<String, byte[]> extension = extension();
    String notice = new String(extension.get("NOTICE.txt"), StandardCharsets.UTF_8);
    String flat = notice.replaceAll("\\s+", " ");
    List<String> libraries = new ArrayList<>();
    for (Map.Entry<String, byte[]> file : extension.entrySet()) {
      if (!file.getKey().endsWith(".jar") || OURS.contains(file.getKey())) {
        continue;
      }
      Map<String, byte[]> jar = unpacked(file.getValue());
      Attributes about =
          new Manifest(new ByteArrayInputStream(jar.get("META-INF/MANIFEST.MF")))
              .getMainAttributes();
      String name = about.getValue("Implementation-Title");
      String version = about.getValue("Implementation-Version");
      assertThat(flat).contains(name + " " + version).contains(file.getKey());
      assertThat(jar).containsKeys("META-INF/LICENSE.txt", "META-INF/NOTICE.txt");
      String licence =
          new String(jar.get("META-INF/LICENSE.txt"), StandardCharsets.UTF_8)
              .strip()
              .replaceAll("\\s+", " ");
      assertThat(licence).startsWith("Apache License Version 2.0");
      assertThat(flat).contains("Apache License 2.0");
      libraries.add(String.join("\t", file.getKey(), name, version, "Apache License 2.0"));
    }
    Files.write(Path.of("target/libraries.txt"), libraries);
    assertThat(libraries).hasSize(1);
  }
}
