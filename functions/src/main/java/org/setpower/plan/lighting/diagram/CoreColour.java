package org.setpower.plan.lighting.diagram;

import java.util.List;
import org.setpower.base.ReferenceTable;
import org.setpower.plan.lighting.input.MeasureSystem;

/**
 * The colour of a core.
 *
 * @param volts highest voltage, line to line, at which it holds
 * @param second other colour of a striped core
 */
record CoreColour(
    MeasureSystem units,
    double volts,
    String letter,
    DiagramWord colour,
    Ink ground,
    Ink second,
    String standard) {
  private static final List<CoreColour> ALL =
      ReferenceTable.read(CoreColour.class, "cores.csv").stream().map(CoreColour::of).toList();

  private static CoreColour of(ReferenceTable.Row row) {
    return new CoreColour(
        "US".equals(row.text("units")) ? MeasureSystem.US : MeasureSystem.METRIC,
        row.number("highest_volts"),
        row.text("letter"),
        DiagramWord.ofColour(row.text("colour")),
        Ink.valueOf(row.text("ground")),
        Ink.valueOf(row.text("second")),
        row.text("standard"));
  }

  /** Those of a plan, from L1 to earth; none where its voltage is above those that are known. */
  static List<CoreColour> of(DiagramPlan plan) {
    double highest =
        plan.roots().stream()
            .filter(r -> r.supply() != null && !Double.isNaN(r.supply().volts()))
            .mapToDouble(r -> r.supply().volts())
            .max()
            .orElse(0);
    return ALL.stream().filter(c -> c.units == plan.units() && highest <= c.volts).toList();
  }
}
