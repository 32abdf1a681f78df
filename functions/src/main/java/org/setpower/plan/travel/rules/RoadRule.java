package org.setpower.plan.travel.rules;

import java.util.List;
import java.util.Optional;
import org.setpower.base.ReferenceTable;

/**
 * How batteries travel by road under ADR.
 *
 * @param cells the word of the cells
 * @param alone UN number of batteries by themselves
 * @param inEquipment UN number of batteries with or in equipment
 * @param smallCell largest cell under Special Provision 188, Wh or g of lithium
 * @param smallBattery largest battery under Special Provision 188, Wh or g of lithium
 * @param points a kg under 1.1.3.6
 * @param maxPoints a transport unit
 * @param confirm whether it is from memory and prints "confirm"
 */
public record RoadRule(
    String cells,
    String alone,
    String inEquipment,
    double smallCell,
    double smallBattery,
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
                        r.text("cells"),
                        r.text("un_alone"),
                        r.text("un_equipment"),
                        r.number("small_cell"),
                        r.number("small_battery"),
                        r.number("points"),
                        r.number("max_points"),
                        r.text("confirm").equals("yes"),
                        r.source(),
                        r.basis()))
            .toList();
  }

  /** The rule for cells; empty where none is held. */
  public static Optional<RoadRule> of(String cells) {
    return Held.ALL.stream().filter(r -> r.cells.equals(cells)).findFirst();
  }
}
