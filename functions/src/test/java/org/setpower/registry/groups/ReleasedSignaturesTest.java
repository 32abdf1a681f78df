package org.setpower.registry.groups;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.setpower.registry.FunctionSpec;

/** Names in saved documents never change; new arguments come last and may be left out. */
class ReleasedSignaturesTest {
  private final Map<String, FunctionSpec> today =
      FunctionRegistry.all().stream()
          .collect(Collectors.toMap(FunctionSpec::name, Function.identity()));

  @Test
  void a_released_signature_stays() throws IOException {
    ReleasedSignatures.released()
        .forEach(
            (name, released) -> {
              assertThat(today).as("released functions").containsKey(name);
              assertThat(keeps(released, ReleasedSignatures.of(today.get(name))))
                  .as(released + " is now " + ReleasedSignatures.of(today.get(name)))
                  .isTrue();
            });
  }

  @Test
  void a_new_argument_may_only_be_an_optional_last_one() {
    String released = "A.B=aB(x m; [y V = 1])";
    assertThat(keeps(released, released)).isTrue();
    assertThat(keeps(released, "A.B=aB(x m; [y V = 1]; [z A = 2])")).isTrue();
    assertThat(keeps(released, "A.B=aB(x m; [y V = 1]; z A)")).isFalse();
    assertThat(keeps(released, "A.B=aB(x m; [y V = 2])")).isFalse();
    assertThat(keeps(released, "A.B=aB(x ft; [y V = 1])")).isFalse();
    assertThat(keeps(released, "A.B=aB(x m)")).isFalse();
    assertThat(keeps("A.C=aC()", "A.C=aC([z A = 2])")).isTrue();
  }

  private static boolean keeps(String released, String now) {
    String stem = released.substring(0, released.length() - 1);
    if (!now.startsWith(stem)) {
      return false;
    }
    String more = now.substring(stem.length(), now.length() - 1);
    return more.isEmpty() || (more.replaceFirst("^; ", "") + "; ").matches("(\\[[^\\]]*\\]; )+");
  }
}
