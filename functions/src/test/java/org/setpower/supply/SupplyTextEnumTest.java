package org.setpower.supply;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.setpower.base.TextEnum;

/** What people write for engines, fuels and supplies, besides the words that are shown. */
class SupplyTextEnumTest {
  @Test
  void other_ways_to_write_a_word_are_read() {
    TextEnum.Lookup<Engine> engines = new TextEnum.Lookup<>(Engine.class);
    assertThat(engines.read("engine", "turbo diesel")).isEqualTo(Engine.DIESEL_TURBO);
    assertThat(engines.read("engine", "diesel")).isEqualTo(Engine.DIESEL);
    assertThat(engines.read("engine", "gasoline")).isEqualTo(Engine.PETROL);
    TextEnum.Lookup<Fuel> fuels = new TextEnum.Lookup<>(Fuel.class);
    assertThat(fuels.read("fuel", "gasoline")).isEqualTo(Fuel.PETROL);
    assertThat(Fuel.HVO.alsoWritten()).isEmpty();
    TextEnum.Lookup<Feed> feeds = new TextEnum.Lookup<>(Feed.class);
    assertThat(feeds.read("supply", "split phase")).isEqualTo(Feed.SPLIT);
    assertThat(feeds.read("supply", "three phase")).isEqualTo(Feed.THREE_PHASE);
    assertThat(feeds.read("supply", "3 phase")).isEqualTo(Feed.THREE_PHASE);
  }
}
