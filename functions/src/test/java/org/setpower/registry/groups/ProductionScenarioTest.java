package org.setpower.registry.groups;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.setpower.registry.groups.Calls.call;
import static org.setpower.registry.groups.Calls.column;
import static org.setpower.registry.groups.Calls.number;
import static org.setpower.registry.groups.Calls.row;
import static org.setpower.registry.groups.Calls.table;

import java.util.Arrays;
import org.junit.jupiter.api.Test;

/** The questions of the demo's production, "The Salt Road", about flying, hiring and planning. */
class ProductionScenarioTest {
  private static final Object[][] NIGHT = {
    {92, 16, 27, 294, 1},
    {52, 16, 27, 150, 1},
    {50, 17, 27, 294, 1},
    {50, 17, 27, 294, 1},
    {50, 17, 27, 294, 1},
    {50, 17, 27, 294, 1},
    {50, 17, 27, 294, 1},
    {50, 17, 27, 294, 1},
    {50, 17, 27, 294, 1},
    {50, 17, 27, 294, 1}
  };
  private static final Object[][] DEAD_MAINS = {{0, 23}, {26, 36}};

  @Test
  void four_people_fly_with_the_camera_packs() {
    assertThat(call("FLIGHT.CLASS", 98, "spare", "Li-ion", "ICAO", "2026-06-01"))
        .isEqualTo("cabin");
    assertThat(call("FLIGHT.CLASS", 150, "spare", "Li-ion", "ICAO", "2026-06-01"))
        .isEqualTo("cabin, airline must agree");
    assertThat(number("FLIGHT.PEOPLE", column(98, 150), column(10, 8), "ICAO", "2026-06-01"))
        .isEqualTo(4);
    for (int wattHours : new int[] {294, 588, 1210}) {
      assertThat(call("FLIGHT.CLASS", wattHours, "spare", "Li-ion", "ICAO", "2026-06-01"))
          .isEqualTo("cargo only");
      assertThat((String) call("FLIGHT.CARGO", wattHours, "alone", "Li-ion", "2026-06-01"))
          .contains("UN 3480", "Section IA", "cargo aircraft only");
    }
    assertThat(294 * (1 - number("FLIGHT.CARGOCHARGE", "alone", 98, "2026-06-01")))
        .as("Wh to take out of a full P294")
        .isCloseTo(205.8, within(1e-9));
  }

  @Test
  void two_airlines_in_a_row_and_the_second_allows_one() {
    Object[][] dates = column("2026-12-11", "2026-12-11");
    Object[][] rules = column("ICAO", "ICAO");
    assertThat(4 * number("FLIGHT.MINLIMIT", 150, dates, rules, column(2, 1), "spare", "Li-ion"))
        .isEqualTo(4);
    assertThatThrownBy(
            () -> call("FLIGHT.MINLIMIT", 150, dates, rules, column(2, ""), "spare", "Li-ion"))
        .hasMessageContaining("has not answered");
    assertThat(call("FLIGHT.STRICTEST", 150, dates, rules, column(2, ""), "spare", "Li-ion"))
        .isEqualTo("cabin, airline must agree");
  }

  @Test
  void three_power_banks_a_person_were_fine_until_the_26th_of_march_2026() {
    assertThat(number("FLIGHT.LIMIT", 74, "power bank", "Li-ion", "ICAO", "2026-03-26"))
        .isGreaterThanOrEqualTo(3);
    assertThat(number("FLIGHT.LIMIT", 74, "power bank", "Li-ion", "ICAO", "2026-03-27"))
        .isLessThan(3);
  }

  @Test
  void the_quote_adds_up() {
    double days = number("HIRE.DAYS", "2027-01-28", "2027-02-09");
    double packs = number("HIRE.FEE", 14, 10, days, 0.1);
    double camera = number("HIRE.FEE", 310, 1, days);
    assertThat(packs).isEqualTo(756);
    assertThat(camera).isEqualTo(1860);
    Object[][] amounts = column(packs, camera);
    Object[][] rates = column(0.2, 0.2);
    assertThat(table("HIRE.TAX", amounts, rates, 0.05)[0])
        .containsExactly(0.2, 2485.2, 497.04, 2982.24);
    assertThat(number("HIRE.ROUND", number("HIRE.TOTAL", amounts, rates, 0.05) * 0.3, "EUR"))
        .as("deposit")
        .isEqualTo(894.67);
    assertThat(number("HIRE.FEE", 45, 1, 3) - number("HIRE.FEE", 28, 1, 3))
        .as("margin of the haze machine")
        .isEqualTo(51);
  }

  @Test
  void a_lamp_two_days_late_is_one_day_more() {
    assertThat(
            number("HIRE.DAYS", "2027-01-28", "2027-02-11")
                - number("HIRE.DAYS", "2027-01-28", "2027-02-09"))
        .isEqualTo(1);
  }

  @Test
  void the_fleet_shows_its_two_worn_packs_and_its_drifting_cell() {
    int worn = 0;
    double[] measured = {283, 286, 279, 288, 281, 284, 232, 285, 280, 229};
    Object[] healths = new Object[measured.length];
    for (int i = 0; i < measured.length; i++) {
      double health = number("FLEET.HEALTH", measured[i], 294);
      worn += health < 0.8 ? 1 : 0;
      healths[i] = health;
    }
    assertThat(worn).isEqualTo(2);
    Object[][] odd = table("FLEET.OUTLIER", (Object) column(healths));
    assertThat(Arrays.stream(odd).map(r -> r[0]))
        .containsExactly(0.0, 0.0, 0.0, 0.0, 0.0, 0.0, 1.0, 0.0, 0.0, 1.0);
    assertThat(
            number("FLEET.IMBALANCE", (Object) row(4.15, 4.16, 4.15, 4.02, 4.15, 4.16, 4.15, 4.15)))
        .isCloseTo(0.14, within(1e-12));
  }

  @Test
  void the_night_needs_more_packs_where_the_mains_is_dead_for_three_hours() {
    Object[][] base = table("PLAN.PACKS", NIGHT, 4, 3.5, -6);
    Object[][] pans = table("PLAN.PACKS", NIGHT, 4, 3.5, -6, DEAD_MAINS);
    for (int i = 0; i < base.length; i++) {
      assertThat((Double) pans[i][1]).isGreaterThanOrEqualTo((Double) base[i][1]);
    }
    assertThat(lost(base, null)).isZero();
    assertThat(lost(pans, DEAD_MAINS)).isZero();
    base[1][1] = (Double) base[1][1] - 1;
    assertThat(lost(base, null)).as("one P294 dropped on the slipway").isPositive();
  }

  private static double lost(Object[][] packs, Object[][] deadMains) {
    Object[][] healthy =
        Arrays.stream(packs)
            .map(size -> new Object[] {size[0], size[1], 1})
            .toArray(Object[][]::new);
    Object[][] day = table("PLAN.DAY", NIGHT, healthy, 4, 3.5, -6, deadMains);
    return (Double) day[day.length - 1][0];
  }

  @Test
  void after_the_night_the_cart_shows_when_the_last_pack_is_full() {
    Object[][] day =
        table(
            "PLAN.DAY",
            row(92, 16, 27, 294, 1),
            row(294, 6, 1),
            1,
            3,
            -6,
            new Object[][] {{0, 23}, {26, 48}});
    Object[] last = day[day.length - 2];
    assertThat(last[8]).isEqualTo("back from charging");
    assertThat(last[5]).as("all on the shelf").isEqualTo(6.0);
    assertThat((Double) last[0])
        .as("before the call at 14:00 of Friday, 38 h")
        .isBetween(36.5, 36.6);
  }
}
