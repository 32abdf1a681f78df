package org.setpower.flight;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import org.junit.jupiter.api.Test;

/** The table of rules as a whole. */
class BaggageRuleTest {
  private static final double[] BOTH_SIDES = {0, 0.1, 99.9, 100, 100.1, 159.9, 160, 160.1, 5000};

  @Test
  void every_pack_has_a_rule_from_the_first_day_on() {
    for (RuleBook rules : RuleBook.values()) {
      LocalDate first = LocalDate.of(2018, rules == RuleBook.ICAO ? 1 : 10, 1);
      for (CarriageMode carried : CarriageMode.values()) {
        for (FlightChemistry cells : FlightChemistry.values()) {
          for (double wattHours : BOTH_SIDES) {
            assertThat(BaggageRule.of(wattHours, carried, cells, rules, first).says()).isNotBlank();
            assertThat(BaggageRule.of(wattHours, carried, cells, rules, null).says()).isNotBlank();
          }
        }
      }
    }
  }

  @Test
  void no_two_rules_answer_the_same_question() {
    for (BaggageRule a : BaggageRule.all()) {
      for (BaggageRule b : BaggageRule.all()) {
        boolean same =
            a != b
                && a.rules() == b.rules()
                && a.carried() == b.carried()
                && a.chemistry() == b.chemistry()
                && a.from().equals(b.from())
                && a.over() < b.upTo()
                && b.over() < a.upTo();
        assertThat(same).as("%s and %s", a, b).isFalse();
      }
    }
  }

  @Test
  void every_rule_names_authority_edition_and_source() {
    for (BaggageRule rule : BaggageRule.all()) {
      assertThat(rule.authority()).isNotBlank();
      assertThat(rule.edition()).isNotBlank();
      assertThat(rule.source()).isNotBlank();
      assertThat(rule.basis()).isIn("published", "memory");
    }
  }

  @Test
  void what_is_not_confirmed_is_for_the_airline_to_say() {
    for (RuleBook rules : RuleBook.values()) {
      for (CarriageMode carried :
          new CarriageMode[] {CarriageMode.SPARE, CarriageMode.IN_EQUIPMENT}) {
        assertThat(BaggageRule.of(98, carried, FlightChemistry.SODIUM_ION, rules, null).verdict())
            .isEqualTo(FlightClass.ASK);
      }
    }
  }

  @Test
  void more_watt_hours_are_never_treated_more_kindly() {
    for (RuleBook rules : RuleBook.values()) {
      for (CarriageMode carried : CarriageMode.values()) {
        for (int i = 2; i < BOTH_SIDES.length; i++) {
          FlightClass less = lithium(BOTH_SIDES[i - 1], carried, rules);
          FlightClass more = lithium(BOTH_SIDES[i], carried, rules);
          assertThat(more).isGreaterThanOrEqualTo(less);
        }
      }
    }
  }

  private static FlightClass lithium(double wattHours, CarriageMode carried, RuleBook rules) {
    return BaggageRule.of(wattHours, carried, FlightChemistry.LITHIUM_ION, rules, null).verdict();
  }

  @Test
  void two_classes_together_keep_both_demands() {
    assertThat(FlightClass.CABIN.and(FlightClass.HOLD_OR_CABIN_AGREED))
        .isEqualTo(FlightClass.CABIN_AGREED);
    for (FlightClass a : FlightClass.values()) {
      for (FlightClass b : FlightClass.values()) {
        assertThat(a.and(b)).isEqualTo(b.and(a)).isGreaterThanOrEqualTo(a);
        assertThat(a.and(b).isCarriedOn()).isEqualTo(a.isCarriedOn() && b.isCarriedOn());
      }
    }
  }
}
