package org.setpower.command.export;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class PlainContentTest {
  private static final String BODY =
      "<office:document-content xmlns:office=\"urn:oasis:names:tc:opendocument:xmlns:office:1.0\""
          + " xmlns:text=\"urn:oasis:names:tc:opendocument:xmlns:text:1.0\">"
          + "<office:body><text:p>%s</text:p></office:body></office:document-content>";

  @TempDir Path folder;

  @Test
  void text_of_the_document_stays() {
    assertThat(plain(BODY.formatted("12 m &amp; more"))).contains("12 m &amp; more");
  }

  @Test
  void an_entity_is_not_followed() throws Exception {
    Path secret = Files.writeString(folder.resolve("secret"), "not for anybody");
    String document =
        "<!DOCTYPE d [<!ENTITY e SYSTEM \"" + secret.toUri() + "\">]>" + BODY.formatted("&e;");
    assertThatThrownBy(() -> plain(document)).isInstanceOf(IllegalArgumentException.class);
  }

  private static String plain(String document) {
    byte[] bytes = document.getBytes(StandardCharsets.UTF_8);
    return new String(new PlainContent(Set.of()).of(bytes), StandardCharsets.UTF_8);
  }
}
