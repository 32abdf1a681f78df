package org.setpower;

import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.opentest4j.AssertionFailedError;
import org.opentest4j.TestAbortedException;

/** A missing oracle never passes. */
class OracleTest {
  private static final String PROPERTY = "setpower.oracles";
  private final String before = System.getProperty(PROPERTY);

  @AfterEach
  void restore() {
    if (before == null) {
      System.clearProperty(PROPERTY);
    } else {
      System.setProperty(PROPERTY, before);
    }
  }

  @Test
  void a_missing_program_fails_and_names_its_package() {
    System.clearProperty(PROPERTY);
    assertThatThrownBy(() -> Oracle.run("the-package", "no-such-program"))
        .isInstanceOf(AssertionFailedError.class)
        .hasMessage(
            "The program no-such-program is not installed: install the package the-package,"
                + " or run with -Dsetpower.oracles=skip.");
  }

  @Test
  void a_missing_program_is_reported_as_skipped_when_asked() {
    System.setProperty(PROPERTY, "skip");
    assertThatThrownBy(() -> Oracle.run("the-package", "no-such-program"))
        .isInstanceOf(TestAbortedException.class)
        .hasMessageContaining("the-package");
  }
}
