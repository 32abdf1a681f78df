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

  @Test
  void a_new_word_may_only_be_the_last_of_its_list() {
    String released = "A.B=aB(x a|b; [y c|d = c])";
    assertThat(keeps(released, "A.B=aB(x a|b|e; [y c|d|e|f = c])")).isTrue();
    assertThat(keeps(released, "A.B=aB(x a|be; [y c|d = c])")).isFalse();
    assertThat(keeps(released, "A.B=aB(x a|e|b; [y c|d = c])")).isFalse();
    assertThat(keeps(released, "A.B=aB(x a; [y c|d = c])")).isFalse();
    assertThat(keeps(released, "A.B=aB(x a|b; [y c|d|e = d])")).isFalse();
  }

  private static boolean keeps(String released, String now) {
    int open = released.indexOf('(');
    String name = released.substring(0, open + 1);
    if (!now.startsWith(name)) {
      return false;
    }
    String[] before = arguments(released, open);
    String[] after = arguments(now, open);
    for (int i = 0; i < after.length; i++) {
      if (i < before.length ? !keepsArgument(before[i], after[i]) : !after[i].startsWith("[")) {
        return false;
      }
    }
    return after.length >= before.length;
  }

  private static String[] arguments(String signature, int open) {
    String all = signature.substring(open + 1, signature.length() - 1);
    return all.isEmpty() ? new String[0] : all.split("; ");
  }

  /** The same, or one of words that has more words at the end of its list. */
  private static boolean keepsArgument(String released, String now) {
    int last = released.lastIndexOf('|');
    if (last < 0 || released.equals(now)) {
      return released.equals(now);
    }
    int space = released.indexOf(' ', last);
    int end = space < 0 ? released.length() : space;
    return now.startsWith(released.substring(0, end) + "|")
        && now.endsWith(released.substring(end));
  }
}
