package org.setpower.registry.groups;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.setpower.registry.Parameter;

/** What the wizard says of an argument. */
class ParameterTest {
  private static Parameter<?> parameter(String function, String name) {
    return FunctionRegistry.find(function).orElseThrow().parameters().stream()
        .filter(p -> p.name().equals(name))
        .findFirst()
        .orElseThrow();
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '\'',
      value = {
        "CABLE.DROP | length | Cable length, one way; also text such as \"100 ft\" (m); required",
        "CABLE.DROP | amps | Current in one leg (A); required",
        "CABLE.DROP | power_factor | Power factor, lagging (share); if left out: 1 with DC, otherwise"
            + " required",
        "CABLE.DROP | parallel | Number of equal cables in parallel (pieces); if left out: 1",
        "CABLE.BREAKER | continuous | Whether the load lasts 3 hours or more (NEC only): TRUE or"
            + " FALSE; if left out: TRUE",
        "CABLE.RESISTANCE | metal | \"Cu\" or \"Al\"; if left out: Cu"
      })
  void a_description_joins_phrase_unit_and_default(String function, String name, String words) {
    assertThat(parameter(function, name).description()).isEqualTo(words);
  }

  @Test
  void dates_are_known_as_such() {
    assertThat(parameter("HIRE.DAYS", "out_date").isDate()).isTrue();
    assertThat(parameter("HIRE.DAYS", "min_days").isDate()).isFalse();
    assertThat(parameter("FLIGHT.CLASS", "on_date").isDate()).isTrue();
    assertThat(FunctionRegistry.find("HIRE.DAYS").orElseThrow().takesDate()).isTrue();
    assertThat(FunctionRegistry.find("CABLE.DROP").orElseThrow().takesDate()).isFalse();
    assertThat(FunctionRegistry.find("SHEET.WHY").orElseThrow().takesDate()).isTrue();
  }

  @Test
  void what_may_be_left_out_is_known() {
    assertThat(parameter("CABLE.DROP", "parallel").isOptional()).isTrue();
    assertThat(parameter("CABLE.DROP", "system").isOptional()).isFalse();
    assertThat(parameter("CABLE.DROP", "system").words()).containsExactly("DC", "1PH", "3PH");
    assertThat(parameter("CABLE.DROP", "amps").words()).isEmpty();
  }
}
