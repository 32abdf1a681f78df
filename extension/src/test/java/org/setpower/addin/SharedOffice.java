package org.setpower.addin;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.time.Duration;
import org.junit.jupiter.api.extension.ExtensionContext;
import org.junit.jupiter.api.extension.ParameterContext;
import org.junit.jupiter.api.extension.ParameterResolver;
import org.setpower.office.Office;

/**
 * Gives the in-office tests of one Java machine one office with the packed extension; it ends with
 * that machine. Where several machines share out the classes, each has an office of its own.
 */
public final class SharedOffice implements ParameterResolver {
  /** The packed extension, as people get it. */
  public static final Path OXT = Path.of("target/set-power-sheets.oxt");

  /** All tests together, on a machine that has twenty other things to do. */
  private static final Duration LIFE = Duration.ofMinutes(60);

  private static Office office;

  @Override
  public boolean supportsParameter(ParameterContext parameter, ExtensionContext context) {
    return parameter.getParameter().getType() == Office.class;
  }

  @Override
  public Object resolveParameter(ParameterContext parameter, ExtensionContext context) {
    return running();
  }

  private static synchronized Office running() {
    try {
      if (office == null) {
        office = Office.start(LIFE, OXT);
      }
      return office;
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
