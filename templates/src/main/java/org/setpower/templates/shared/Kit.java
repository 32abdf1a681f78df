package org.setpower.templates.shared;

import static org.setpower.templates.spec.Formula.calc;
import static org.setpower.templates.spec.Formula.call;
import static org.setpower.templates.spec.Formula.optional;
import static org.setpower.templates.spec.Formula.say;

import org.setpower.registry.groups.BankFunctions;
import org.setpower.templates.spec.Check;
import org.setpower.templates.spec.Column;
import org.setpower.templates.spec.Format;
import org.setpower.templates.spec.Formula;
import org.setpower.templates.spec.Tab;
import org.setpower.templates.spec.Table;

/** The drawer with what the crew owns or hires: devices and packs, edited by the crew. */
public final class Kit {
  private static final String PLATE = "Type plate or manual";

  public final Column item =
      Column.input("Item")
          .needed()
          .wide(52)
          .help("What the crew calls it. One row for each way it is fed.");
  public final Column department =
      Column.input("Department").wide(24).help("Who brings it: electric, camera, sound, make-up.");
  public final Column feed =
      Column.input("Fed with")
          .oneOf("mains", "DC")
          .needed()
          .wide(16)
          .help("mains for a plug, DC for a pack or a DC lead.");
  public final Column watts =
      Column.input("Power")
          .unit("W")
          .number(Format.WHOLE, 0, 100_000)
          .needed()
          .wide(17)
          .help(PLATE + ": watts at full output. Better: read it at a meter.");
  public final Column worksFrom =
      Column.input("Works from")
          .unit("V")
          .number(Format.ONE, 0, 1000)
          .wide(17)
          .help(PLATE + ": the lowest volts of the input, such as 11 in 11–17 V.");
  public final Column worksTo =
      Column.input("Works to")
          .unit("V")
          .number(Format.ONE, 0, 1000)
          .wide(17)
          .help(PLATE + ": the highest volts of the input, such as 17 in 11–17 V.");
  public final Column plug =
      Column.input("Plug")
          .wide(36)
          .help("Standard or plain words: IEC 60309 16 A, 3-pin XLR, two-pin tap.");
  public final Column powerFactor =
      Column.input("Power factor")
          .unit("0–1")
          .number(Format.TWO, 0.1, 1)
          .wide(17)
          .help(PLATE + ": PF or cos φ. Blank: the power factor on Job is assumed.");
  public final Column starting =
      Column.input("Starting power")
          .unit("W")
          .number(Format.WHOLE, 0, 500_000)
          .wide(18)
          .help("Motors and heaters draw more for a moment when they start. Blank: no more.");
  public final Column mass = massOfItem();
  public final Column pieces =
      Column.input("Pieces")
          .number(Format.COUNT, 0, 9999)
          .wide(15)
          .help("How many we have, ours and hired. Blank: not counted.");
  public final Column goesWith = thatGoesWithIt();
  public final Column dayRate = rateOfDay().unit("money").wide(19);
  public final Column value = replacementValue().unit("money").wide(22);
  public final Column origin = countryOfOrigin();

  public final Table devices =
      Table.of("Devices", 80)
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
              Check.wrong(
                  calc("COUNTIF({};{})>1", item.all(), item),
                  say("{} stands here twice: give each way of feeding its own name.", item)),
              Check.stop(
                  calc("{}>{}", worksFrom, worksTo),
                  say("It cannot work from {} V to {} V: swap them.", worksFrom, worksTo)));

  public final Column pack =
      Column.input("Pack").needed().wide(52).help("What the crew calls the kind of pack.");
  public final Column outputs =
      Column.input("Outputs")
          .unit("V class")
          .needed()
          .wide(24)
          .help("The volt classes it can give, with a stroke between: 12, 12/24, 24, 48.");
  public final Column chemistry =
      Column.input("Chemistry")
          .oneOf("Li-ion", "LFP", "NiMH", "lead")
          .wide(16)
          .help("On the label. Li-ion if it says nothing else; LFP is lithium iron phosphate.");
  public final Column cells =
      Column.input("Cells in series")
          .number(Format.COUNT, 1, 400)
          .needed()
          .wide(17)
          .help("At the highest output. Nominal volts over 3.6: 14.4 V has 4, 28.8 V has 8.");
  public final Column ampHours =
      Column.input("Charge")
          .unit("Ah")
          .number(Format.ONE, 0.01, 100_000)
          .needed()
          .wide(17)
          .help("On the label, in Ah at the highest output. Or Wh over nominal volts.");
  public final Column wattHours =
      Column.input("Energy")
          .unit("Wh")
          .number(Format.WHOLE, 0.1, 10_000_000)
          .needed()
          .wide(17)
          .help("The Wh printed on the label; flight rules go by it.");
  public final Column milliohms =
      Column.input("Resistance")
          .unit("mΩ")
          .number(Format.WHOLE, 0.1, 100_000)
          .needed()
          .wide(17)
          .help("Pack tester, a long pulse. Not known: 60 for a small pack, 45 for a big one.");
  public final Column maxAmps =
      Column.input("Most current")
          .unit("A")
          .number(Format.ONE, 0.1, 10_000)
          .needed()
          .wide(17)
          .help("On the label: the highest continuous discharge current.");
  public final Column packMass =
      Column.input("Mass").number(Format.TWO, 0, 1000).wide(17).help(PLATE + ", or the scales.");
  public final Column health =
      Column.input("Health")
          .share(0, 1.1)
          .wide(17)
          .help("Share of the rated energy that the last test gave. Blank: like new.");
  public final Column packPieces =
      Column.input("Pieces")
          .number(Format.COUNT, 0, 9999)
          .wide(18)
          .help("How many we have to plan with, spares and dead ones taken off.");
  public final Column fullVolts =
      Column.result("Full", call(BankFunctions.FULLVOLTS, cells, 1, optional(chemistry)))
          .unit("V")
          .as(Format.ONE)
          .wide(16);

  /** The class of the highest output, in V. */
  public final Column highest =
      Column.working(
              "Highest output",
              calc("VALUE(TRIM(MID({};IFERROR(FIND(\"/\";{});0)+1;9)))", outputs, outputs))
          .as(Format.COUNT);

  public final Table packs =
      Table.of("Packs", 40)
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
              Check.wrong(
                  calc("COUNTIF({};{})>1", pack.all(), pack),
                  say("{} stands here twice: one row for each kind.", pack)),
              Check.look(
                  calc("ABS({}/{}/{}-3.5)>1.5", wattHours, ampHours, cells),
                  say(
                      "{} Wh, {} Ah and {} cells do not belong together: read the label again.",
                      wattHours,
                      ampHours,
                      cells)),
              Check.look(
                  calc("{}=\"NiMH\"", chemistry),
                  Formula.of("Hours of NiMH packs cannot be worked out here: measure them.")));

  public final Column between =
      Column.input("Volts between lines")
          .unit("V")
          .number(Format.WHOLE, 50, 1000)
          .needed()
          .wide(52)
          .help("Three-phase or split supply: volts between two lines.");
  public final Column toNeutral =
      Column.input("Line to neutral")
          .unit("V")
          .number(Format.WHOLE, 50, 1000)
          .needed()
          .wide(24)
          .help("The same supply: volts between a line and the neutral.");
  public final Table mains = Table.of("Mains", 10).columns(between, toNeutral).checks();

  /** A drawer whose masses follow the units of a job. */
  public Kit(Job job) {
    mass.unit(job.masses());
    packMass.unit(job.masses());
  }

  /** The chemistry of a pack; a blank one is the usual. */
  public Formula chemistryOf(Column ofRow) {
    return calc("{}&\"\"", chemistry.where(pack, ofRow));
  }

  /** The health of a pack; a blank one is like new. */
  public Formula healthOf(Column ofRow) {
    Formula tested = health.where(pack, ofRow);
    return calc("IF({}=\"\";1;{})", tested, tested);
  }

  // what a drawer of any file asks of a thing

  /** The mass of one. */
  public static Column massOfItem() {
    return Column.input("Mass")
        .number(Format.ONE, 0, 100_000)
        .wide(16)
        .help(PLATE + ", or the scales.");
  }

  /** What must go out with it. */
  public static Column thatGoesWithIt() {
    return Column.input("Goes with")
        .wide(36)
        .help("Charger, plate, lead, stand: what must not be forgotten.");
  }

  /** What one costs a day. */
  public static Column rateOfDay() {
    return Column.input("Day rate")
        .number(Format.MONEY, 0, 1_000_000)
        .wide(20)
        .help("Rental list, for one piece and one day, before discount.");
  }

  /** What a new one costs. */
  public static Column replacementValue() {
    return Column.input("Replacement value")
        .number(Format.MONEY, 0, 100_000_000)
        .wide(26)
        .help("What a new one costs: for the insurer.");
  }

  /** Where it was made. */
  public static Column countryOfOrigin() {
    return Column.input("Origin").wide(20).help("Country it was made in, for the carnet.");
  }

  /** The drawer's tab, with generic rows to begin with. */
  public Tab tab() {
    devices.starts(Kit.class, "kit-devices.csv");
    packs.starts(Kit.class, "kit-packs.csv");
    mains.starts(Kit.class, "kit-mains.csv");
    return Tab.of(
            "Kit",
            "A drawer, not a step: what things draw and what packs hold. Correct it to your own"
                + " kit; lists on the other tabs come from here.")
        .with(devices, packs, mains);
  }
}
