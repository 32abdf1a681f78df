package org.setpower;

import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.opentest4j.AssertionFailedError;
import org.opentest4j.TestAbortedException;

/** A missing oracle never passes. */
class ReferenceToolTest {
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
  void a_missing_program_is_reported_as_skipped_with_its_name() {
    System.clearProperty(PROPERTY);
    assertThatThrownBy(() -> ReferenceTool.run("the-package", "no-such-program"))
        .isInstanceOf(TestAbortedException.class)
        .hasMessage(
            "The program no-such-program is not installed: install the package the-package.");
  }

  @Test
  void a_missing_program_fails_where_oracles_are_required() {
    System.setProperty(PROPERTY, "required");
    assertThatThrownBy(() -> ReferenceTool.run("the-package", "no-such-program"))
        .isInstanceOf(AssertionFailedError.class)
        .hasMessageContaining("the-package");
  }
}
