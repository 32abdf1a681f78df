package org.setpower.command.export;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.zip.CRC32;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import java.util.zip.ZipOutputStream;
import javax.xml.stream.XMLStreamException;

/**
 * A stored spreadsheet document without its formulas, scripts and input rules: every result stands
 * in the file beside its formula, so nothing is calculated again and no figure can change.
 */
final class PlainPackage {
  /** The line on top of each sheet moves what is frozen there. */
  private static final int ROWS_ON_TOP = 1;

  private static final int DEFLATE = 1;
  private static final Pattern SCRIPTS = Pattern.compile("(?:Basic|Scripts|Dialogs|Thumbnails)/.*");
  private static final Pattern SCRIPT_ENTRY =
      Pattern.compile(
          "<manifest:file-entry"
              + " [^>]*manifest:full-path=\"(?:Basic|Scripts|Dialogs|Thumbnails)/[^\"]*\"[^>]*/>");
  private static final Pattern FROZEN =
      Pattern.compile(
          "(?s)VerticalSplitMode\"[^>]*>2<.*?VerticalSplitPosition\"[^>]*>(\\d+)<"
              + ".*?PositionBottom\"[^>]*>(\\d+)<");

  private int formulas;

  /** How many cells had a formula. */
  int formulas() {
    return formulas;
  }

  /** The bytes of the .ods without them. */
  byte[] of(byte[] ods) throws IOException {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream(ods.length);
    try (ZipInputStream in = new ZipInputStream(new ByteArrayInputStream(ods));
        ZipOutputStream out = new ZipOutputStream(bytes)) {
      out.setLevel(DEFLATE);
      for (ZipEntry entry = in.getNextEntry(); entry != null; entry = in.getNextEntry()) {
        if (!SCRIPTS.matcher(entry.getName()).matches()) {
          write(out, entry.getName(), changed(entry.getName(), in.readAllBytes()));
        }
      }
    }
    return bytes.toByteArray();
  }

  private byte[] changed(String name, byte[] content) throws IOException {
    return switch (name) {
      case "content.xml", "styles.xml" -> {
        PlainContent plain = new PlainContent();
        try {
          byte[] changed = plain.of(content);
          formulas += plain.formulas();
          yield changed;
        } catch (XMLStreamException e) {
          throw new IOException(e);
        }
      }
      case "settings.xml" -> lower(text(content)).getBytes(StandardCharsets.UTF_8);
      case "META-INF/manifest.xml" ->
          SCRIPT_ENTRY.matcher(text(content)).replaceAll("").getBytes(StandardCharsets.UTF_8);
      default -> content;
    };
  }

  private static String text(byte[] content) {
    return new String(content, StandardCharsets.UTF_8);
  }

  private static String lower(String settings) {
    StringBuilder lowered = new StringBuilder();
    for (String entry : settings.split("(?=<config:config-item-map-entry )")) {
      Matcher frozen = FROZEN.matcher(entry);
      if (frozen.find()) {
        lowered
            .append(entry, 0, frozen.start(1))
            .append(Integer.parseInt(frozen.group(1)) + ROWS_ON_TOP)
            .append(entry, frozen.end(1), frozen.start(2))
            .append(Integer.parseInt(frozen.group(2)) + ROWS_ON_TOP)
            .append(entry, frozen.end(2), entry.length());
      } else {
        lowered.append(entry);
      }
    }
    return lowered.toString();
  }

  /** The kind of the file must stand in it as it is, for programs that read its first bytes. */
  private static void write(ZipOutputStream out, String name, byte[] content) throws IOException {
    ZipEntry entry = new ZipEntry(name);
    if ("mimetype".equals(name)) {
      CRC32 sum = new CRC32();
      sum.update(content);
      entry.setMethod(ZipEntry.STORED);
      entry.setSize(content.length);
      entry.setCrc(sum.getValue());
    }
    out.putNextEntry(entry);
    out.write(content);
    out.closeEntry();
  }
}
