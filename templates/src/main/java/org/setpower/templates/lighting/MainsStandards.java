package org.setpower.templates.lighting;

import org.setpower.templates.spec.CellFormat;
import org.setpower.templates.spec.ColumnSpec;
import org.setpower.templates.spec.Formula;
import org.setpower.templates.spec.TableSpec;

/** Mains standards: the volts of each kind of supply and the colours of its cores. */
final class MainsStandards {
  private static final String AS_MARKED = "As the cores are marked in that standard.";

  final ColumnSpec standard =
      ColumnSpec.input("Standard")
          .required()
          .width(52)
          .help("Its volts, as people call it: 230/400 V.");
  final ColumnSpec onePhase = volts("1PH", 24, "Line to neutral.");
  final ColumnSpec split =
      volts("split", 16, "Between the two lines. Blank: it has no split supply.");
  final ColumnSpec threePhase = volts("3PH", 17, "Between two lines.");
  final ColumnSpec[] legs = {colour("L1"), colour("L2"), colour("L3")};
  final ColumnSpec neutral = colour("Neutral");
  final ColumnSpec earth = colour("Earth").width(36);

  final TableSpec table =
      TableSpec.of("Mains standards", 6)
          .columns(standard, onePhase, split, threePhase, legs[0], legs[1], legs[2], neutral, earth)
          .checks()
          .initialRows(LightingPlan.class, "mains-standards.csv");

  private static ColumnSpec volts(String heading, int wide, String help) {
    return ColumnSpec.input(heading)
        .unit("V")
        .number(CellFormat.WHOLE, 50, 1000)
        .width(wide)
        .help(help);
  }

  private static ColumnSpec colour(String heading) {
    return ColumnSpec.input(heading).width(17).help(AS_MARKED);
  }

  /** The volts of a system in a standard; 0 where it has none. */
  Formula volts(Formula chosen, Formula system) {
    return Formula.calc(
        "IF({}=\"1PH\";{};IF({}=\"split\";{};{}))",
        system,
        onePhase.lookup(standard, chosen),
        system,
        split.lookup(standard, chosen),
        threePhase.lookup(standard, chosen));
  }

  /** The colours of the three legs. */
  Formula legColours(Formula chosen) {
    return Formula.calc(
        "{}&\", \"&{}&\", \"&{}",
        legs[0].lookup(standard, chosen),
        legs[1].lookup(standard, chosen),
        legs[2].lookup(standard, chosen));
  }
}
