package org.setpower.plan.travel.rules;

import java.util.List;
import java.util.Optional;
import org.setpower.base.ReferenceTable;

/**
 * How batteries travel by road.
 *
 * @param rules the word of the road rules
 * @param cells the word of the cells
 * @param alone UN number of batteries by themselves
 * @param inEquipment UN number of batteries with or in equipment
 * @param nameAlone proper shipping name of batteries by themselves
 * @param nameInEquipment proper shipping name of batteries with or in equipment
 * @param smallCell largest cell under the provision, Wh or g of lithium
 * @param smallBattery largest battery under the provision, Wh or g of lithium
 * @param provision under which small batteries travel
 * @param points a kg under 1.1.3.6; NaN where no points are counted
 * @param maxPoints a transport unit
 * @param confirm whether it is from memory and prints "confirm"
 */
public record RoadRule(
    String rules,
    String cells,
    String alone,
    String nameAlone,
    String inEquipment,
    String nameInEquipment,
    double smallCell,
    double smallBattery,
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
                        r.text("cells"),
                        r.text("un_alone"),
                        r.text("name_alone"),
                        r.text("un_equipment"),
                        r.text("name_equipment"),
                        r.number("small_cell"),
                        r.number("small_battery"),
                        r.text("provision"),
                        r.blank("points") ? Double.NaN : r.number("points"),
                        r.blank("points") ? Double.NaN : r.number("max_points"),
                        r.text("confirm").equals("yes"),
                        r.source(),
                        r.basis()))
            .toList();
  }

  /** The rule for cells; empty where none is held. */
  public static Optional<RoadRule> of(String rules, String cells) {
    return Held.ALL.stream()
        .filter(r -> r.rules.equals(rules) && r.cells.equals(cells))
        .findFirst();
  }

  /** Whether points are counted, of which a transport unit has only so many. */
  public boolean hasPoints() {
    return !Double.isNaN(points);
  }
}
