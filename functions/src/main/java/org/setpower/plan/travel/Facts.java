package org.setpower.plan.travel;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.setpower.flight.CarriageMode;
import org.setpower.flight.FlightClass;
import org.setpower.flight.Packing;
import org.setpower.plan.common.InputRow;
import org.setpower.plan.finding.Finding;
import org.setpower.plan.finding.Identity;
import org.setpower.plan.register.Condition;
import org.setpower.plan.register.Status;
import org.setpower.plan.travel.TravelInputs.Battery;
import org.setpower.plan.travel.rules.CabinEdition;

/**
 * A row of Batteries, blanks replaced by what they mean.
 *
 * @param type the type as it is compared
 * @param wattHours Wh of one; NaN where it is not known
 * @param workedOut whether the Wh are V × Ah
 * @param quantity pieces
 * @param kilograms weight of one; null where it is not known
 */
record Facts(
    int row,
    String id,
    String type,
    Battery typed,
    TravelChemistry chemistry,
    CarriageMode carried,
    double wattHours,
    boolean workedOut,
    int quantity,
    Double kilograms) {
  /** The label and V × Ah may differ by this share without a remark. */
  private static final double SAME = 0.05;

  /**
   * Wh of a kilogram below and above which no battery is, whatever its cells: lead has 30 to 40,
   * the best lithium metal cells less than 700 (common practice).
   */
  private static final double POOREST = 20;

  private static final double BEST = 700;

  /** A tenth of a battery of 400 Wh: of less a digit may be lost. */
  private static final double LITTLE = 40;

  /** W·h of a kilogram, where a weight is not known; common practice, only to share loads. */
  private static final double WATT_HOURS_A_KILOGRAM = 140;

  private static final Pattern BANK_NAME =
      Pattern.compile(
          "power[ -]?bank|batterie externe|batería externa",
          Pattern.CASE_INSENSITIVE | Pattern.UNICODE_CASE);

  /** Up to this Wh a battery with outputs may be asked about as a power bank. */
  private static final double MOST_BAGGAGE = 160;

  private static final Set<Condition> UNFIT =
      Set.of(
          Condition.DROPPED,
          Condition.WET,
          Condition.SWOLLEN,
          Condition.LEAKING,
          Condition.HOT,
          Condition.BURNT,
          Condition.CRACKED,
          Condition.CELL_VOLTAGE);

  static Facts of(InputRow<Battery> row, WeightUnit unit) {
    Battery typed = row.value();
    TravelChemistry chemistry =
        typed.chemistry() == null ? TravelChemistry.LI_ION : typed.chemistry();
    CarriageMode carried = typed.carried() == null ? CarriageMode.SPARE : typed.carried();
    boolean label = typed.energy() != null;
    boolean works = !label && !row.unreadable().contains("energy") && product(typed) > 0;
    double energy = label ? typed.energy() : works ? product(typed) : Double.NaN;
    return new Facts(
        row.number(),
        Identity.of(typed.battery()),
        Identity.of(typed.type() == null ? typed.battery() : typed.type()),
        typed,
        chemistry,
        carried,
        energy > 0 ? dustless(energy) : Double.NaN,
        works,
        typed.quantity() == null ? 1 : (int) Math.ceil(typed.quantity()),
        WeightUnit.kilograms(unit, typed.kilograms()));
  }

  /** Without the last digits, in which 0.1 × 1000 can be more than 100. */
  static double dustless(double value) {
    return Math.rint(value * 1e6) / 1e6;
  }

  private static double product(Battery typed) {
    return typed.volts() == null || typed.ampHours() == null
        ? Double.NaN
        : dustless(typed.volts() * typed.ampHours());
  }

  String name() {
    return typed.battery() == null ? "#" + row : typed.battery();
  }

  String typeName() {
    return typed.type() == null ? name() : typed.type();
  }

  int priority() {
    return typed.priority() == null ? 9 : (int) Math.round(typed.priority());
  }

  /** Weight of one for shared loads: as typed, or estimated. */
  double balanceKilograms() {
    if (kilograms != null) {
      return kilograms;
    }
    return Double.isNaN(wattHours) ? 0 : Math.rint(wattHours / WATT_HOURS_A_KILOGRAM * 100) / 100;
  }

  Packing packed() {
    if (typed.packed() != null) {
      return typed.packed();
    }
    return carried == CarriageMode.IN_EQUIPMENT ? Packing.IN_EQUIPMENT : Packing.ALONE;
  }

  /** Lithium of one in g without dust; NaN where it is not known. */
  double lithium() {
    return typed.lithium() == null ? Double.NaN : dustless(typed.lithium());
  }

  /** Whether a carrier may take it for a power bank. */
  boolean mayBeBank() {
    return isBank()
        || (Boolean.TRUE.equals(typed.outputs()) || isNamedBank())
            && isSpare()
            && wattHours <= MOST_BAGGAGE;
  }

  /** Whether what its class is judged by is not known. */
  boolean isUnknown() {
    return chemistry == TravelChemistry.LITHIUM_METAL
        ? typed.lithium() == null
        : Double.isNaN(wattHours)
            || chemistry == TravelChemistry.LEAD_SEALED && typed.volts() == null;
  }

  boolean isSpare() {
    return carried == CarriageMode.SPARE;
  }

  /** Whether its name or its type says power bank, in one of the languages of the sheets. */
  private boolean isNamedBank() {
    return Stream.of(typed.battery(), typed.type())
        .anyMatch(n -> n != null && BANK_NAME.matcher(n).find());
  }

  boolean isBank() {
    return carried == CarriageMode.POWER_BANK;
  }

  boolean isLithium() {
    return chemistry.isLithiumIon()
        || chemistry == TravelChemistry.LITHIUM_METAL
        || chemistry == TravelChemistry.SODIUM;
  }

  /** Whether it is over the limit up to which no answer is needed. */
  boolean isOver(CabinEdition edition) {
    return chemistry == TravelChemistry.LITHIUM_METAL
        ? lithium() > edition.metalGrams()
        : isLithium() && wattHours > edition.smallWattHours();
  }

  /** Where it may travel with its owner under an edition. */
  FlightClass classUnder(CabinEdition edition) {
    return switch (chemistry) {
      case LI_ION, LFP -> lithiumIon(edition);
      case LITHIUM_METAL ->
          banded(lithium(), edition.metalGrams(), edition.metalOverGrams(), FlightClass.CABIN);
      case SODIUM ->
          // no rule is confirmed: only with an answer, and never over the limit of lithium-ion
          wattHours <= edition.largeWattHours() ? FlightClass.ASK : FlightClass.CARGO_ONLY;
      case NICKEL, DRY ->
          isBank() ? FlightClass.ASK : isSpare() ? edition.nickel() : FlightClass.HOLD_OR_CABIN;
      case LEAD_SEALED -> lead(edition);
      case LEAD_WET -> FlightClass.NOT_BY_AIR;
    };
  }

  private FlightClass lithiumIon(CabinEdition edition) {
    boolean ask = isBank() && isOver(edition) && edition.isToConfirm("banks_over");
    FlightClass found =
        banded(wattHours, edition.smallWattHours(), edition.largeWattHours(), FlightClass.CABIN);
    return ask && found == FlightClass.CABIN_AGREED ? FlightClass.ASK : found;
  }

  private FlightClass banded(double value, double small, double large, FlightClass spare) {
    boolean inside = carried == CarriageMode.IN_EQUIPMENT;
    if (carried == CarriageMode.DAMAGED) {
      return FlightClass.NOT_BY_AIR;
    }
    if (value <= small) {
      return inside ? FlightClass.HOLD_OR_CABIN : spare;
    }
    if (value <= large) {
      return inside ? FlightClass.HOLD_OR_CABIN_AGREED : FlightClass.CABIN_AGREED;
    }
    // a value that is not known ends here too
    return FlightClass.CARGO_ONLY;
  }

  private FlightClass lead(CabinEdition edition) {
    boolean within =
        typed.volts() != null
            && dustless(typed.volts()) <= edition.leadVolts()
            && wattHours <= edition.leadWattHours();
    if (!within) {
      return FlightClass.CARGO_ONLY;
    }
    return isBank() ? FlightClass.ASK : FlightClass.HOLD_OR_CABIN;
  }

  /** The limits by which it is judged under an edition and that are from memory. */
  List<TravelFinding> fromMemory(CabinEdition edition) {
    List<TravelFinding> rules = new ArrayList<>();
    if (chemistry == TravelChemistry.SODIUM) {
      rules.add(TravelFinding.RULE_SODIUM);
    }
    if (chemistry.isDry() && edition.isToConfirm("nickel")) {
      rules.add(TravelFinding.RULE_NICKEL);
    }
    if (chemistry == TravelChemistry.LEAD_SEALED && edition.isToConfirm("lead")) {
      rules.add(TravelFinding.RULE_LEAD);
    }
    if (isBank() && isOver(edition) && edition.isToConfirm("banks_over")) {
      rules.add(TravelFinding.RULE_BANKS_OVER);
    }
    if (isBank() && edition.isToConfirm("banks_apart")) {
      rules.add(TravelFinding.RULE_BANKS_APART);
    }
    return rules;
  }

  /** Whether the limit by which it is judged under an edition is from memory. */
  boolean isToConfirm(CabinEdition edition) {
    return edition.isToConfirm("all") || !fromMemory(edition).isEmpty();
  }

  /** The limit of energy that lies between two figures; 0 for none. */
  private double lineBetween(double one, double other) {
    if (chemistry.isDry() || chemistry == TravelChemistry.LITHIUM_METAL) {
      return 0;
    }
    return CabinEdition.all().stream()
        .flatMap(e -> Stream.of(e.smallWattHours(), e.largeWattHours()))
        .filter(line -> Math.min(one, other) <= line && line < Math.max(one, other))
        .findFirst()
        .orElse(0.0);
  }

  /** What is wrong with the battery itself, wherever it goes. */
  List<Finding> findings() {
    List<Finding> findings = new ArrayList<>();
    condition(findings);
    if (typed.register() != null) {
      register(typed.register(), findings);
    }
    energy(findings);
    if (chemistry == TravelChemistry.LITHIUM_METAL && typed.lithium() == null) {
      findings.add(Finding.of(TravelFinding.NO_LITHIUM));
    }
    if (chemistry == TravelChemistry.LEAD_SEALED && typed.volts() == null) {
      findings.add(Finding.of(TravelFinding.NO_VOLTS));
    }
    if (chemistry == TravelChemistry.LEAD_WET) {
      findings.add(Finding.of(TravelFinding.SPILLABLE));
    }
    if (Boolean.TRUE.equals(typed.outputs()) && isSpare() && wattHours <= MOST_BAGGAGE) {
      findings.add(Finding.of(TravelFinding.OUTPUTS));
    } else if (isNamedBank() && isSpare() && wattHours <= MOST_BAGGAGE) {
      findings.add(Finding.of(TravelFinding.NAMED_BANK));
    }
    if (Boolean.FALSE.equals(typed.terminals())) {
      findings.add(Finding.of(TravelFinding.TERMINALS_OPEN));
    }
    if (typed.terminals() == null && (isBank() || isSpare() && isLithium())) {
      findings.add(Finding.of(TravelFinding.TERMINALS_BLANK));
    }
    if (isLithium() && typed.un383() == null) {
      findings.add(Finding.of(TravelFinding.UN383_BLANK));
    }
    if (Boolean.FALSE.equals(typed.un383())) {
      findings.add(Finding.of(TravelFinding.UN383_NO));
    }
    if (typed.quantity() != null && typed.quantity() != Math.rint(typed.quantity())) {
      findings.add(Finding.of(TravelFinding.PACKED_PART, typed.quantity().toString()));
    }
    return findings;
  }

  private void condition(List<Finding> findings) {
    Condition condition = typed.condition();
    if (carried == CarriageMode.DAMAGED) {
      findings.add(Finding.of(TravelFinding.DAMAGED, carried.word()));
    }
    if (condition == null || condition == Condition.FINE) {
      return;
    }
    if (condition == Condition.RECALLED) {
      findings.add(Finding.of(TravelFinding.RECALLED));
    } else if (condition == Condition.LOST) {
      findings.add(Finding.of(TravelFinding.LOST));
    } else {
      findings.add(
          Finding.of(
              UNFIT.contains(condition) ? TravelFinding.DAMAGED : TravelFinding.SERVICE,
              condition.word()));
    }
  }

  private void register(Status status, List<Finding> findings) {
    if (status.compareTo(Status.NOT_TESTED) > 0) {
      findings.add(Finding.of(TravelFinding.REGISTER_HELD, status.word()));
    } else if (status == Status.NOT_TESTED) {
      findings.add(Finding.of(TravelFinding.REGISTER_NOT_TESTED));
    }
    if (quantity > 1) {
      findings.add(Finding.of(TravelFinding.SERIAL_QUANTITY, quantity));
    }
  }

  private void energy(List<Finding> findings) {
    if (typed.energy() != null && !(typed.energy() > 0)) {
      findings.add(Finding.of(TravelFinding.ZERO_ENERGY));
    } else if (Double.isNaN(wattHours) && chemistry.isJudgedByEnergy()) {
      findings.add(Finding.of(TravelFinding.NO_ENERGY));
    } else if (workedOut) {
      findings.add(
          Finding.of(TravelFinding.ENERGY_WORKED_OUT, wattHours, typed.volts(), typed.ampHours()));
    } else if (Math.abs(product(typed) - wattHours) > SAME * wattHours) {
      double line = lineBetween(wattHours, product(typed));
      findings.add(
          line > 0
              ? Finding.of(TravelFinding.ENERGY_ACROSS, wattHours, product(typed), line, SAME)
              : Finding.of(TravelFinding.ENERGY_DIFFERS, wattHours, product(typed), SAME));
    }
    weight(findings);
  }

  /** Whether the weight can have that energy; without a weight whether anything confirms it. */
  private void weight(List<Finding> findings) {
    boolean cells = chemistry.isLithiumIon() || chemistry == TravelChemistry.SODIUM;
    if (kilograms == null) {
      boolean confirmed = workedOut || product(typed) > 0 || carried == CarriageMode.IN_EQUIPMENT;
      if (cells && !confirmed && wattHours < LITTLE) {
        findings.add(Finding.of(TravelFinding.ENERGY_UNCONFIRMED, wattHours, 10 * wattHours));
      }
      return;
    }
    double density = wattHours / kilograms;
    boolean alone = carried != CarriageMode.IN_EQUIPMENT;
    if (cells && alone && density < POOREST || chemistry.isJudgedByEnergy() && density > BEST) {
      findings.add(
          Finding.of(
              TravelFinding.ENERGY_IMPOSSIBLE, wattHours, kilograms, density, POOREST, BEST));
      return;
    }
    if (alone && density < chemistry.leastWattHoursAKilogram()) {
      findings.add(
          Finding.of(
              TravelFinding.ENERGY_LOW,
              wattHours,
              kilograms,
              density,
              chemistry.leastWattHoursAKilogram()));
    }
    if (density > chemistry.mostWattHoursAKilogram()) {
      findings.add(
          Finding.of(
              TravelFinding.ENERGY_WEIGHT,
              wattHours,
              kilograms,
              density,
              chemistry.mostWattHoursAKilogram()));
    }
  }

  /** Whether its outputs may make it a power bank. */
  static boolean hasOutputs(List<Finding> findings) {
    return findings.stream()
        .anyMatch(f -> f.key() == TravelFinding.OUTPUTS || f.key() == TravelFinding.NAMED_BANK);
  }

  /** Whether it is damaged or recalled. */
  static boolean isDamaged(List<Finding> findings) {
    return findings.stream()
        .anyMatch(f -> f.key() == TravelFinding.DAMAGED || f.key() == TravelFinding.RECALLED);
  }
}
