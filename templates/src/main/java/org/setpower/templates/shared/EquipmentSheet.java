package org.setpower.templates.shared;

import static org.setpower.templates.spec.Formula.calc;
import static org.setpower.templates.spec.Formula.call;
import static org.setpower.templates.spec.Formula.optional;
import static org.setpower.templates.spec.Formula.say;

import org.setpower.registry.groups.BankFunctions;
import org.setpower.templates.spec.CellFormat;
import org.setpower.templates.spec.ColumnSpec;
import org.setpower.templates.spec.Formula;
import org.setpower.templates.spec.SheetSpec;
import org.setpower.templates.spec.TableSpec;
import org.setpower.templates.spec.ValidationRule;

/** The drawer with what the crew owns or hires: devices and packs, edited by the crew. */
public final class EquipmentSheet {
  private static final String PLATE = "Type plate or manual";

  public final ColumnSpec item =
      ColumnSpec.input("Item")
          .required()
          .width(52)
          .help("What the crew calls it. One row for each way it is fed.");
  public final ColumnSpec department =
      ColumnSpec.input("Department")
          .width(24)
          .help("Who brings it: electric, camera, sound, make-up.");
  public final ColumnSpec feed =
      ColumnSpec.input("Fed with")
          .options("mains", "DC")
          .required()
          .width(16)
          .help("mains for a plug, DC for a pack or a DC lead.");
  public final ColumnSpec watts =
      ColumnSpec.input("Power")
          .unit("W")
          .number(CellFormat.WHOLE, 0, 100_000)
          .required()
          .width(17)
          .help(PLATE + ": watts at full output. Better: read it at a meter.");
  public final ColumnSpec worksFrom =
      ColumnSpec.input("Works from")
          .unit("V")
          .number(CellFormat.ONE, 0, 1000)
          .width(17)
          .help(PLATE + ": the lowest volts of the input, such as 11 in 11–17 V.");
  public final ColumnSpec worksTo =
      ColumnSpec.input("Works to")
          .unit("V")
          .number(CellFormat.ONE, 0, 1000)
          .width(17)
          .help(PLATE + ": the highest volts of the input, such as 17 in 11–17 V.");
  public final ColumnSpec plug =
      ColumnSpec.input("Plug")
          .width(36)
          .help("Standard or plain words: IEC 60309 16 A, 3-pin XLR, two-pin tap.");
  public final ColumnSpec powerFactor =
      ColumnSpec.input("Power factor")
          .unit("0–1")
          .number(CellFormat.TWO, 0.1, 1)
          .width(17)
          .help(PLATE + ": PF or cos φ. Blank: the power factor on Job is assumed.");
  public final ColumnSpec starting =
      ColumnSpec.input("Starting power")
          .unit("W")
          .number(CellFormat.WHOLE, 0, 500_000)
          .width(18)
          .help("Motors and heaters draw more for a moment when they start. Blank: no more.");
  public final ColumnSpec mass = massOfItem();
  public final ColumnSpec pieces =
      ColumnSpec.input("Pieces")
          .number(CellFormat.COUNT, 0, 9999)
          .width(15)
          .help("How many we have, ours and hired. Blank: not counted.");
  public final ColumnSpec goesWith = thatGoesWithIt();
  public final ColumnSpec dayRate = rateOfDay().unit("money").width(19);
  public final ColumnSpec value = replacementValue().unit("money").width(22);
  public final ColumnSpec origin = countryOfOrigin();

  public final TableSpec devices =
      TableSpec.of("Devices", 80)
          .columns(
              item,
              department,
              feed,
              watts,
              worksFrom,
              worksTo,
              plug,
              powerFactor,
              starting,
              mass,
              pieces,
              goesWith,
              dayRate,
              value,
              origin)
          .checks(
              ValidationRule.wrong(
                  calc("COUNTIF({};{})>1", item.all(), item),
                  say("Duplicate: {}. Give each way of feeding its own name.", item)),
              ValidationRule.stop(
                  calc("{}>{}", worksFrom, worksTo),
                  say("It cannot work from {} V to {} V: swap them.", worksFrom, worksTo)));

  public final ColumnSpec pack =
      ColumnSpec.input("Pack").required().width(52).help("What the crew calls the kind of pack.");
  public final ColumnSpec outputs =
      ColumnSpec.input("Outputs")
          .unit("nominal V")
          .required()
          .width(24)
          .help("Nominal voltages, separated by a slash: 12, 12/24, 24, 48.");
  public final ColumnSpec chemistry =
      ColumnSpec.input("Chemistry")
          .options("Li-ion", "LFP", "NiMH", "lead")
          .width(16)
          .help("On the label. Li-ion if it says nothing else; LFP is lithium iron phosphate.");
  public final ColumnSpec cells =
      ColumnSpec.input("Cells in series")
          .number(CellFormat.COUNT, 1, 400)
          .required()
          .width(17)
          .help("At the highest output. Nominal volts over 3.6: 14.4 V has 4, 28.8 V has 8.");
  public final ColumnSpec ampHours =
      ColumnSpec.input("Charge")
          .unit("Ah")
          .number(CellFormat.ONE, 0.01, 100_000)
          .required()
          .width(17)
          .help("On the label, in Ah at the highest output. Or Wh over nominal volts.");
  public final ColumnSpec wattHours =
      ColumnSpec.input("Energy")
          .unit("Wh")
          .number(CellFormat.WHOLE, 0.1, 10_000_000)
          .required()
          .width(17)
          .help("The Wh printed on the label; flight rules go by it.");
  public final ColumnSpec milliohms =
      ColumnSpec.input("Resistance")
          .unit("mΩ")
          .number(CellFormat.WHOLE, 0.1, 100_000)
          .required()
          .width(17)
          .help("Pack tester, a long pulse. Not known: 60 for a small pack, 45 for a big one.");
  public final ColumnSpec maxAmps =
      ColumnSpec.input("Most current")
          .unit("A")
          .number(CellFormat.ONE, 0.1, 10_000)
          .required()
          .width(17)
          .help("On the label: the highest continuous discharge current.");
  public final ColumnSpec packMass =
      ColumnSpec.input("Mass")
          .number(CellFormat.TWO, 0, 1000)
          .width(17)
          .help(PLATE + ", or the scales.");
  public final ColumnSpec health =
      ColumnSpec.input("Health")
          .share(0, 1.1)
          .width(17)
          .help("Share of the rated energy that the last test gave. Blank: like new.");
  public final ColumnSpec packPieces =
      ColumnSpec.input("Pieces")
          .number(CellFormat.COUNT, 0, 9999)
          .width(18)
          .help("How many we have to plan with, spares and dead ones taken off.");
  public final ColumnSpec fullVolts =
      ColumnSpec.result("Full", call(BankFunctions.FULLVOLTS, cells, 1, optional(chemistry)))
          .unit("V")
          .format(CellFormat.ONE)
          .width(16);

  /** The class of the highest output, in V. */
  public final ColumnSpec highest =
      ColumnSpec.working(
              "Highest output",
              calc("VALUE(TRIM(MID({};IFERROR(FIND(\"/\";{});0)+1;9)))", outputs, outputs))
          .format(CellFormat.COUNT);

  public final TableSpec packs =
      TableSpec.of("Packs", 40)
          .columns(
              pack,
              outputs,
              chemistry,
              cells,
              ampHours,
              wattHours,
              milliohms,
              maxAmps,
              packMass,
              health,
              packPieces,
              fullVolts,
              highest)
          .checks(
              ValidationRule.wrong(
                  calc("COUNTIF({};{})>1", pack.all(), pack),
                  say("Duplicate: {}. One row for each kind.", pack)),
              ValidationRule.check(
                  calc("ABS({}/{}/{}-3.5)>1.5", wattHours, ampHours, cells),
                  say(
                      "{} Wh, {} Ah and {} cells do not belong together: read the label again.",
                      wattHours,
                      ampHours,
                      cells)),
              ValidationRule.check(
                  calc("{}=\"NiMH\"", chemistry),
                  Formula.of("Hours of NiMH packs cannot be worked out here: measure them.")));

  public final ColumnSpec between =
      ColumnSpec.input("Volts between lines")
          .unit("V")
          .number(CellFormat.WHOLE, 50, 1000)
          .required()
          .width(52)
          .help("Three-phase or split supply: volts between two lines.");
  public final ColumnSpec toNeutral =
      ColumnSpec.input("Line to neutral")
          .unit("V")
          .number(CellFormat.WHOLE, 50, 1000)
          .required()
          .width(24)
          .help("The same supply: volts between a line and the neutral.");
  public final TableSpec mains = TableSpec.of("Mains", 10).columns(between, toNeutral).checks();

  /** A drawer whose masses follow the units of a job. */
  public EquipmentSheet(JobSheet job) {
    mass.unit(job.masses());
    packMass.unit(job.masses());
  }

  /** The chemistry of a pack; a blank one is the usual. */
  public Formula chemistryOf(ColumnSpec ofRow) {
    return calc("{}&\"\"", chemistry.lookup(pack, ofRow));
  }

  /** The health of a pack; a blank one is like new. */
  public Formula healthOf(ColumnSpec ofRow) {
    Formula tested = health.lookup(pack, ofRow);
    return calc("IF({}=\"\";1;{})", tested, tested);
  }

  // what a drawer of any file asks of a thing

  /** The mass of one. */
  public static ColumnSpec massOfItem() {
    return ColumnSpec.input("Mass")
        .number(CellFormat.ONE, 0, 100_000)
        .width(16)
        .help(PLATE + ", or the scales.");
  }

  /** What must go out with it. */
  public static ColumnSpec thatGoesWithIt() {
    return ColumnSpec.input("Goes with")
        .width(36)
        .help("Charger, plate, lead, stand: what must not be forgotten.");
  }

  /** What one costs a day. */
  public static ColumnSpec rateOfDay() {
    return ColumnSpec.input("Day rate")
        .number(CellFormat.MONEY, 0, 1_000_000)
        .width(20)
        .help("Rental list, for one piece and one day, before discount.");
  }

  /** What a new one costs. */
  public static ColumnSpec replacementValue() {
    return ColumnSpec.input("Replacement value")
        .number(CellFormat.MONEY, 0, 100_000_000)
        .width(26)
        .help("What a new one costs: for the insurer.");
  }

  /** Where it was made. */
  public static ColumnSpec countryOfOrigin() {
    return ColumnSpec.input("Origin").width(20).help("Country it was made in, for the carnet.");
  }

  /** The drawer's tab, with generic rows to begin with. */
  public SheetSpec tab() {
    devices.initialRows(EquipmentSheet.class, "kit-devices.csv");
    packs.initialRows(EquipmentSheet.class, "kit-packs.csv");
    mains.initialRows(EquipmentSheet.class, "kit-mains.csv");
    return SheetSpec.of(
            "Kit",
            "Equipment database: power draw of devices and battery data. Edit it to"
                + " match your own equipment; drop-down lists on the other tabs use it.")
        .with(devices, packs, mains);
  }
}
