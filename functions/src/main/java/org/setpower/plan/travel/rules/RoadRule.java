package org.setpower.plan.travel.rules;

import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.setpower.base.ReferenceTable;

/**
 * How batteries travel by road.
 *
 * @param rules the word of the road rules
 * @param validTo last day for which it answers
 * @param edition its name
 * @param cells the word of the cells
 * @param alone UN number of batteries by themselves
 * @param inEquipment UN number of batteries with or in equipment
 * @param nameAlone proper shipping name of batteries by themselves
 * @param nameInEquipment proper shipping name of batteries with or in equipment
 * @param smallCell largest cell under the provision, Wh or g of lithium
 * @param smallBattery largest battery under the provision, Wh or g of lithium
 * @param hazard class of dangerous goods
 * @param tunnel tunnel restriction code, from memory; empty without one
 * @param provision under which small batteries travel
 * @param points a kg under 1.1.3.6; NaN where no points are counted
 * @param maxPoints a transport unit
 * @param confirm whether it is from memory and prints "confirm"
 */
public record RoadRule(
    String rules,
    LocalDate validFrom,
    LocalDate validTo,
    String edition,
    String cells,
    String alone,
    String nameAlone,
    String inEquipment,
    String nameInEquipment,
    double smallCell,
    double smallBattery,
    String hazard,
    String tunnel,
    String provision,
    double points,
    double maxPoints,
    boolean confirm,
    String source,
    String basis) {
  private static final class Held {
    static final List<RoadRule> ALL =
        ReferenceTable.read(RoadRule.class, "road.csv").stream()
            .map(
                r ->
                    new RoadRule(
                        r.text("rules"),
                        LocalDate.parse(r.text("valid_from")),
                        LocalDate.parse(r.text("valid_to")),
                        r.text("edition"),
                        r.text("cells"),
                        r.text("un_alone"),
                        r.text("name_alone"),
                        r.text("un_equipment"),
                        r.text("name_equipment"),
                        r.number("small_cell"),
                        r.number("small_battery"),
                        r.text("class"),
                        r.text("tunnel"),
                        r.text("provision"),
                        r.blank("points") ? Double.NaN : r.number("points"),
                        r.blank("points") ? Double.NaN : r.number("max_points"),
                        r.text("confirm").equals("yes"),
                        r.source(),
                        r.basis()))
            .toList();
  }

  /** Every rule held. */
  public static List<RoadRule> all() {
    return Held.ALL;
  }

  /** The newest rule for cells that is in force on a day, or was; empty where none is held. */
  public static Optional<RoadRule> of(String rules, String cells, LocalDate day) {
    return Held.ALL.stream()
        .filter(r -> r.rules.equals(rules) && r.cells.equals(cells))
        .filter(r -> !r.validFrom.isAfter(day))
        .max(Comparator.comparing(RoadRule::validFrom));
  }

  /** Whether points are counted, of which a transport unit has only so many. */
  public boolean hasPoints() {
    return !Double.isNaN(points);
  }
}
