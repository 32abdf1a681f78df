package org.setpower.command.export;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;

/** What a PDF shows, read with the tools of poppler. */
public final class PdfText {
  private PdfText() {}

  public static String of(Path pdf) throws Exception {
    return run("pdftotext", "-layout", pdf.toString(), "-");
  }

  public static String properties(Path pdf) throws Exception {
    return run("pdfinfo", pdf.toString());
  }

  private static String run(String... command) throws Exception {
    Process process = new ProcessBuilder(command).redirectErrorStream(true).start();
    String said = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
    assertThat(process.waitFor()).as(said).isZero();
    return said;
  }
}
