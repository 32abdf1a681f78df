package org.setpower.templates;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.time.LocalDateTime;
import java.util.Collections;
import java.util.List;
import java.util.zip.CRC32;
import java.util.zip.Deflater;
import java.util.zip.ZipEntry;
import java.util.zip.ZipFile;
import java.util.zip.ZipOutputStream;

/** Packs a stored sheet as tightly as its format allows; the office packs for speed. */
final class ZipRecompressor {
  /** The first moment that a file of this kind can name: what is inside has no date of its own. */
  private static final LocalDateTime NO_DATE = LocalDateTime.of(1980, 1, 1, 0, 0);

  private ZipRecompressor() {}

  /** Packs a sheet again, in its place. What is inside, and its order, stays. */
  static void tightly(Path sheet) throws IOException {
    Path packed = sheet.resolveSibling(sheet.getFileName() + ".new");
    try (ZipFile from = new ZipFile(sheet.toFile());
        OutputStream out = Files.newOutputStream(packed);
        ZipOutputStream to = new ZipOutputStream(out)) {
      to.setLevel(Deflater.BEST_COMPRESSION);
      List<? extends ZipEntry> entries = Collections.list(from.entries());
      for (ZipEntry entry : entries) {
        byte[] content = from.getInputStream(entry).readAllBytes();
        to.putNextEntry(like(entry, content));
        to.write(content);
        to.closeEntry();
      }
    }
    Files.move(packed, sheet, StandardCopyOption.REPLACE_EXISTING);
  }

  /** What was stored as it is stays so: the type of the file, which must be readable first. */
  private static ZipEntry like(ZipEntry old, byte[] content) {
    ZipEntry entry = new ZipEntry(old.getName());
    entry.setTimeLocal(NO_DATE);
    entry.setMethod(old.getMethod());
    if (old.getMethod() == ZipEntry.STORED) {
      CRC32 sum = new CRC32();
      sum.update(content);
      entry.setSize(content.length);
      entry.setCrc(sum.getValue());
    }
    return entry;
  }
}
