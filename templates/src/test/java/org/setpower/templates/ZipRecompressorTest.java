package org.setpower.templates;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Random;
import java.util.zip.CRC32;
import java.util.zip.ZipEntry;
import java.util.zip.ZipFile;
import java.util.zip.ZipOutputStream;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class ZipRecompressorTest {
  @Test
  void what_is_inside_stays_and_the_preview_gets_smaller(@TempDir Path folder) throws Exception {
    Path sheet = folder.resolve("a.ots");
    byte[] kind = "application/x".getBytes(StandardCharsets.UTF_8);
    byte[] png = noise();
    try (ZipOutputStream to = new ZipOutputStream(Files.newOutputStream(sheet))) {
      ZipEntry first = new ZipEntry("mimetype");
      CRC32 sum = new CRC32();
      sum.update(kind);
      first.setMethod(ZipEntry.STORED);
      first.setSize(kind.length);
      first.setCrc(sum.getValue());
      to.putNextEntry(first);
      to.write(kind);
      to.putNextEntry(new ZipEntry("content.xml"));
      to.write("<a/>".repeat(1000).getBytes(StandardCharsets.UTF_8));
      to.putNextEntry(new ZipEntry("Thumbnails/thumbnail.png"));
      to.write(png);
    }
    ZipRecompressor.tightly(sheet);
    try (ZipFile packed = new ZipFile(sheet.toFile())) {
      assertThat(packed.stream().map(ZipEntry::getName))
          .containsExactly("mimetype", "content.xml", "Thumbnails/thumbnail.png");
      assertThat(packed.getEntry("mimetype").getMethod()).isEqualTo(ZipEntry.STORED);
      assertThat(packed.getInputStream(packed.getEntry("content.xml")).readAllBytes())
          .hasSize(4000);
      BufferedImage preview =
          ImageIO.read(packed.getInputStream(packed.getEntry("Thumbnails/thumbnail.png")));
      assertThat(preview.getWidth()).isEqualTo(256);
      assertThat(preview.getHeight()).isEqualTo(205);
      assertThat(packed.getEntry("Thumbnails/thumbnail.png").getSize()).isLessThan(png.length / 4);
    }
  }

  private static byte[] noise() throws Exception {
    BufferedImage picture = new BufferedImage(480, 384, BufferedImage.TYPE_INT_RGB);
    Random random = new Random(1);
    for (int y = 0; y < picture.getHeight(); y++) {
      for (int x = 0; x < picture.getWidth(); x++) {
        picture.setRGB(x, y, random.nextInt(0x1000000));
      }
    }
    ByteArrayOutputStream packed = new ByteArrayOutputStream();
    ImageIO.write(picture, "png", packed);
    return packed.toByteArray();
  }
}
