package org.setpower.generator;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.stream.Collectors;
import org.setpower.text.MessageCatalog;

/** The PO files as they ship: without the texts that only the drawing of sheets reads. */
final class ShippedTexts {
  private static final String DRAWN = "msgctxt \"sheets\"";

  private ShippedTexts() {}

  /** The PO file of a language or country, without the entries of sheets. */
  static String of(String locale) {
    try (InputStream in = MessageCatalog.class.getResourceAsStream(MessageCatalog.file(locale))) {
      String file = new String(in.readAllBytes(), StandardCharsets.UTF_8);
      return Arrays.stream(file.split("\n{2,}"))
          .filter(entry -> entry.lines().noneMatch(DRAWN::equals))
          .collect(Collectors.joining("\n\n", "", "\n"));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
