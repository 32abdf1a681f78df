package org.setpower.templates;

import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
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
import javax.imageio.ImageIO;

/** Packs a stored sheet as tightly as its format allows; the office packs for speed. */
final class ZipRecompressor {
  /** The first moment that a file of this kind can name: what is inside has no date of its own. */
  private static final LocalDateTime NO_DATE = LocalDateTime.of(1980, 1, 1, 0, 0);

  private static final String PREVIEW = "Thumbnails/thumbnail.png";

  /** As large as the office's list of templates shows a preview. */
  private static final int PREVIEW_PIXELS = 256;

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
        if (entry.getName().equals(PREVIEW)) {
          content = preview(content);
        }
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

  /** The preview, smaller and in the 216 colours of six steps of red, green and blue. */
  private static byte[] preview(byte[] png) throws IOException {
    BufferedImage large = ImageIO.read(new ByteArrayInputStream(png));
    double scale =
        Math.min(1, (double) PREVIEW_PIXELS / Math.max(large.getWidth(), large.getHeight()));
    int width = (int) Math.round(large.getWidth() * scale);
    int height = (int) Math.round(large.getHeight() * scale);
    BufferedImage small = new BufferedImage(width, height, BufferedImage.TYPE_BYTE_INDEXED);
    for (int y = 0; y < height; y++) {
      for (int x = 0; x < width; x++) {
        small.setRGB(x, y, rounded(mean(large, x, y, width, height)));
      }
    }
    ByteArrayOutputStream packed = new ByteArrayOutputStream();
    ImageIO.write(small, "png", packed);
    return packed.toByteArray();
  }

  /** The mean colour of what becomes one pixel of a picture of this width and height. */
  private static int[] mean(BufferedImage large, int x, int y, int width, int height) {
    int right = Math.max((x + 1) * large.getWidth() / width, x * large.getWidth() / width + 1);
    int below = Math.max((y + 1) * large.getHeight() / height, y * large.getHeight() / height + 1);
    int[] sums = new int[3];
    int pixels = 0;
    for (int row = y * large.getHeight() / height; row < below; row++) {
      for (int column = x * large.getWidth() / width; column < right; column++) {
        int rgb = large.getRGB(column, row);
        for (int i = 0; i < sums.length; i++) {
          sums[i] += rgb >> 8 * i & 0xFF;
        }
        pixels++;
      }
    }
    for (int i = 0; i < sums.length; i++) {
      sums[i] /= pixels;
    }
    return sums;
  }

  private static int rounded(int[] colour) {
    int rgb = 0xFF000000;
    for (int i = 0; i < colour.length; i++) {
      rgb |= Math.round(colour[i] / 51f) * 51 << 8 * i;
    }
    return rgb;
  }
}
