package org.setpower.addin;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.time.Duration;
import org.junit.jupiter.api.extension.ExtensionContext;
import org.junit.jupiter.api.extension.ParameterContext;
import org.junit.jupiter.api.extension.ParameterResolver;
import org.setpower.office.Office;

/** Gives the in-office tests one office with the packed extension, ended after the last of them. */
public final class SharedOffice implements ParameterResolver {
  /** The packed extension, as people get it. */
  public static final Path OXT = Path.of("target/set-power-sheets.oxt");

  /** All tests together, on a machine that has twenty other things to do. */
  private static final Duration LIFE = Duration.ofMinutes(60);

  @Override
  public boolean supportsParameter(ParameterContext parameter, ExtensionContext context) {
    return parameter.getParameter().getType() == Office.class;
  }

  @Override
  public Object resolveParameter(ParameterContext parameter, ExtensionContext context) {
    return context
        .getRoot()
        .getStore(ExtensionContext.Namespace.create(SharedOffice.class))
        .getOrComputeIfAbsent("office", key -> new Running(), Running.class)
        .office;
  }

  private static final class Running implements AutoCloseable {
    private final Office office;

    Running() {
      try {
        office = Office.start(LIFE, OXT);
      } catch (IOException e) {
        throw new UncheckedIOException(e);
      }
    }

    @Override
    public void close() {
      office.close();
    }
  }
}
