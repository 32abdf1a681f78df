package org.setpower.plan.batteryday.simulation;

import java.util.Map;

/**
 * A charger.
 *
 * @param row its row
 * @param supply row of its supply
 * @param channels that charge at the same time
 * @param types what it does with each type of battery that it takes
 * @param fullCharge state of charge at which a charge ends: in cool air less than 1
 * @param usableFrom state of charge from which a battery may be taken off it
 * @param away hours of one way between set and charger
 * @param warmUp hours until a battery from the set may be charged
 * @param planned when it has power as far as it is planned
 * @param power the same, less the hours of which it is known by now that it has none
 * @param lastChange hour after which nobody changes at it until the next call; infinite for none
 */
public record ChargerSpec(
    int row,
    int supply,
    int channels,
    Map<Integer, Rate> types,
    double fullCharge,
    double usableFrom,
    double away,
    double warmUp,
    PowerHours planned,
    PowerHours power,
    double lastChange) {
  /**
   * How a type charges.
   *
   * @param watts from the supply while it charges
   * @param wattHours from the supply for a whole charge
   */
  public record Rate(ChargeCurve charging, double watts, double wattHours) {}

  /** A battery that would gain less stays as it is: nobody charges it for minutes. */
  public static final double LEAST_CHARGE = 0.02;

  /** Whether its power is not as it was planned. */
  boolean isLost() {
    return !planned.equals(power);
  }

  /** The same with the power that was planned. */
  ChargerSpec asPlanned() {
    return new ChargerSpec(
        row,
        supply,
        channels,
        types,
        fullCharge,
        usableFrom,
        away,
        warmUp,
        planned,
        planned,
        lastChange);
  }

  /** Whether both do the same for every battery. */
  boolean isLike(ChargerSpec other) {
    return supply == other.supply
        && channels == other.channels
        && fullCharge == other.fullCharge
        && usableFrom == other.usableFrom
        && away == other.away
        && warmUp == other.warmUp
        && types.keySet().equals(other.types.keySet())
        && types.keySet().stream().allMatch(t -> types.get(t).watts == other.types.get(t).watts)
        && planned.equals(other.planned)
        && power.equals(other.power)
        && lastChange == other.lastChange;
  }
}
