package org.setpower.flight;

import java.time.LocalDate;
import java.util.List;
import java.util.Objects;
import org.setpower.base.EvaluationException;
import org.setpower.base.ReferenceTable;
import org.setpower.base.TextEnum;

/**
 * One dated rule for lithium-ion packs as declared air cargo: either which UN number, packing
 * instruction and section, or how full they may be.
 *
 * @param topic "section" or "charge"
 * @param from first day on which it holds
 * @param charge highest share of the rated Wh; NaN where the rule is not about charge
 * @param mandatory whether that share binds; otherwise it is recommended
 */
public record CargoRule(
    String topic,
    LocalDate from,
    Packing packing,
    double over,
    double upTo,
    String says,
    double charge,
    boolean mandatory,
    String source,
    String basis) {

  private static final class Held {
    static final List<CargoRule> ALL =
        ReferenceTable.read(CargoRule.class, "cargo.csv").stream().map(CargoRule::of).toList();
  }

  /** A pack without printed Wh counts as one that the limit binds. */
  private static final double UNPRINTED = 100;

  private static final TextEnum.Lookup<Packing> PACKINGS = new TextEnum.Lookup<>(Packing.class);

  private static CargoRule of(ReferenceTable.Row row) {
    return new CargoRule(
        row.text("topic"),
        LocalDate.parse(row.text("valid_from")),
        PACKINGS.read("packing", row.text("packing")),
        row.blank("over") ? 0 : row.number("over"),
        row.blank("up_to") ? Double.MAX_VALUE : row.number("up_to"),
        row.text("says"),
        row.blank("charge") ? Double.NaN : row.number("charge"),
        row.text("mandatory").equals("yes"),
        row.source(),
        row.basis());
  }

  /**
   * UN number, packing instruction and section, and what always goes with them.
   *
   * @param wattHours Wh printed on one pack
   * @param onDate day of the flight; {@code null} for the newest rules held
   * @throws EvaluationException for cells that are not lithium-ion, packs without printed Wh, and
   *     days before the oldest rules held or after their edition
   */
  public static CargoRule section(
      double wattHours, Packing packing, FlightChemistry chemistry, LocalDate onDate) {
    Edition.ofCargo().requireValidOn(onDate);
    if (!chemistry.isLithium()) {
      throw new EvaluationException(FlightErrorCode.CARGO_CHEMISTRY, chemistry.word());
    }
    if (wattHours == 0) {
      throw new EvaluationException(FlightErrorCode.CARGO_NOT_PRINTED);
    }
    CargoRule rule = find("section", wattHours, packing, onDate);
    if (rule == null) {
      throw new EvaluationException(
          FlightErrorCode.BEFORE_OLDEST,
          "cargo, packed " + packing.word(),
          oldest("section", packing),
          String.valueOf(onDate));
    }
    return rule;
  }

  /**
   * The highest share of the rated Wh that packs may hold as air cargo.
   *
   * @param wattHours Wh printed on one pack
   * @param onDate day of the flight; {@code null} for the newest rules held
   * @throws EvaluationException where a share is only recommended, or none is named, and for days
   *     after the edition
   */
  public static CargoRule highestCharge(double wattHours, Packing packing, LocalDate onDate) {
    Edition.ofCargo().requireValidOn(onDate);
    CargoRule rule = find("charge", wattHours == 0 ? UNPRINTED : wattHours, packing, onDate);
    String day = Objects.toString(onDate, "the newest date held");
    if (rule == null) {
      throw new EvaluationException(
          FlightErrorCode.CHARGE_FREE, "batteries packed " + packing.word(), day);
    }
    if (!rule.mandatory) {
      throw new EvaluationException(
          FlightErrorCode.CHARGE_RECOMMENDED, "batteries packed " + packing.word(), day);
    }
    return rule;
  }

  private static CargoRule find(String topic, double wattHours, Packing packing, LocalDate onDate) {
    CargoRule newest = null;
    for (CargoRule rule : Held.ALL) {
      if (rule.topic.equals(topic)
          && rule.packing == packing
          && wattHours > rule.over
          && wattHours <= rule.upTo
          && (onDate == null || !rule.from.isAfter(onDate))
          && (newest == null || rule.from.isAfter(newest.from))) {
        newest = rule;
      }
    }
    return newest;
  }

  private static LocalDate oldest(String topic, Packing packing) {
    return Held.ALL.stream()
        .filter(r -> r.topic.equals(topic) && r.packing == packing)
        .map(CargoRule::from)
        .min(LocalDate::compareTo)
        .orElseThrow();
  }
}
