package org.setpower.cable;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The published ratings for four conductors, which our share of 80 % must never exceed. */
class AmpacityTest {
  @ParameterizedTest
  @CsvSource({
    "14 AWG,12",
    "12 AWG,16",
    "10 AWG,20",
    "8 AWG,30",
    "6 AWG,40",
    "4 AWG,55",
    "3 AWG,65",
    "2 AWG,75",
    "1 AWG,85",
    "1/0,100",
    "2/0,115",
    "3/0,130",
    "4/0,150"
  })
  void four_loaded_stay_within_30_CFR_18_Appendix_I(String size, double fourConductor) {
    double amps =
        Ampacity.of(CableSize.parse(size), Ampacity.Method.RUBBER, 40, 4, InstallationMethod.FREELY)
            .amps();
    assertThat(amps).isBetween(0.9 * fourConductor, fourConductor + 1e-9);
  }

  @ParameterizedTest
  @CsvSource({"1.5,16", "2.5,25", "4,30", "6,39", "10,51", "16,73", "25,97"})
  void feeder_ratings_are_not_lent_to_multi_core(double area, double amps) {
    Ampacity rating =
        Ampacity.of(
            CableSize.ofArea(area), Ampacity.Method.FLEXIBLE, 30, 2, InstallationMethod.FREELY);
    assertThat(rating.amps()).isEqualTo(amps);
    assertThat(
            Ampacity.find(
                CableSize.ofArea(area), Ampacity.Method.FEEDER, 30, 2, InstallationMethod.FREELY))
        .isNull();
  }
}
