package org.setpower.plan.travel.rules;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.setpower.base.ReferenceTable;
import org.setpower.base.TextEnum;
import org.setpower.flight.Packing;

/**
 * How batteries are shipped as declared air freight.
 *
 * @param cells the word of the cells
 * @param small whether it is for small batteries of small cells
 * @param name proper shipping name
 * @param hazard class of dangerous goods
 * @param passengerKg net weight a package on passenger aircraft; NaN where it does not fly or has
 *     no limit
 * @param cargoKg net weight a package on cargo aircraft
 * @param charge highest state of charge; NaN where none is named
 * @param binds whether that state of charge is mandatory
 * @param chargeOver energy of a battery above which it is
 * @param spareSets sets that may be packed with equipment besides that in use; NaN for no limit
 * @param confirm parts that are from memory and print "confirm"; empty for none
 */
public record FreightRule(
    String cells,
    Packing packed,
    boolean small,
    LocalDate validFrom,
    String un,
    String name,
    String hazard,
    String instruction,
    String section,
    double passengerKg,
    double cargoKg,
    double charge,
    boolean binds,
    double chargeOver,
    double spareSets,
    String packaging,
    String marks,
    String labels,
    String confirm,
    String source,
    String basis) {
  private static final TextEnum.Lookup<Packing> PACKINGS = new TextEnum.Lookup<>(Packing.class);

  private static final class Held {
    static final List<FreightRule> RULES =
        ReferenceTable.read(FreightRule.class, "freight.csv").stream()
            .map(FreightRule::of)
            .toList();
    static final List<Edition> EDITIONS =
        ReferenceTable.read(FreightRule.class, "freight_editions.csv").stream()
            .map(
                r ->
                    new Edition(
                        LocalDate.parse(r.text("valid_from")),
                        LocalDate.parse(r.text("valid_to")),
                        r.text("name"),
                        r.text("read").equals("yes")))
            .toList();
  }

  /**
   * For which days the rules answer.
   *
   * @param read whether its text was read
   */
  public record Edition(LocalDate validFrom, LocalDate validTo, String name, boolean read) {}

  private static FreightRule of(ReferenceTable.Row row) {
    return new FreightRule(
        row.text("cells"),
        PACKINGS.read("packed", row.text("packed")),
        row.text("small").equals("yes"),
        LocalDate.parse(row.text("valid_from")),
        row.text("un"),
        row.text("name"),
        row.text("class"),
        row.text("instruction"),
        row.text("section"),
        kilograms(row, "passenger_kg"),
        kilograms(row, "cargo_kg"),
        row.blank("charge") ? Double.NaN : row.number("charge"),
        row.text("charge_binds").equals("yes"),
        row.number("charge_over_wh"),
        row.blank("spare_sets") ? Double.NaN : row.number("spare_sets"),
        row.text("packaging"),
        row.text("marks"),
        row.text("labels"),
        row.text("confirm"),
        row.source(),
        row.basis());
  }

  private static double kilograms(ReferenceTable.Row row, String column) {
    String text = row.text(column);
    return text.equals("forbidden") || text.equals("unlimited") ? Double.NaN : row.number(column);
  }

  /** Every rule held. */
  public static List<FreightRule> all() {
    return Held.RULES;
  }

  /** The edition of a day that was read; empty where none is held. */
  public static Optional<Edition> edition(LocalDate day) {
    return Held.EDITIONS.stream()
        .filter(e -> e.read() && !day.isBefore(e.validFrom()) && !day.isAfter(e.validTo()))
        .findFirst();
  }

  /** The last day for which a read edition answers. */
  public static LocalDate lastDay() {
    return Held.EDITIONS.stream()
        .filter(Edition::read)
        .map(Edition::validTo)
        .max(LocalDate::compareTo)
        .orElseThrow();
  }

  /**
   * The rule of a day: the newest in force.
   *
   * @param cells the word of the cells
   * @param small whether the battery is known to be small, of small cells
   */
  public static Optional<FreightRule> of(
      String cells, Packing packed, boolean small, LocalDate day) {
    FreightRule newest = null;
    for (FreightRule rule : Held.RULES) {
      if (rule.cells.equals(cells)
          && rule.packed == packed
          && rule.small == small
          && !rule.validFrom.isAfter(day)
          && (newest == null || rule.validFrom.isAfter(newest.validFrom))) {
        newest = rule;
      }
    }
    return Optional.ofNullable(newest);
  }

  /** What of it is read on paper in the reader's language; names and numbers stay as they are. */
  public Stream<String> words() {
    return Stream.of(packaging, marks, labels, confirm);
  }

  /** Whether a part of it is from memory. */
  public boolean isToConfirm() {
    return !confirm.isEmpty();
  }

  /** How many may be packed with equipment that takes so many at a time. */
  public int withEquipment(double inUse) {
    return (int) Math.floor(inUse * (1 + spareSets));
  }

  /** Whether the state of charge is mandatory for a battery of that energy. */
  public boolean bindsAt(double wattHours) {
    return binds && wattHours > chargeOver;
  }
}
