package org.setpower.templates.shared;

import static org.setpower.templates.spec.Formula.calc;
import static org.setpower.templates.spec.Formula.call;
import static org.setpower.templates.spec.Formula.optional;
import static org.setpower.templates.spec.Formula.or;
import static org.setpower.templates.spec.Formula.say;

import org.setpower.registry.groups.BankFunctions;
import org.setpower.registry.groups.CableFunctions;
import org.setpower.registry.groups.LoadFunctions;
import org.setpower.registry.groups.PackFunctions;
import org.setpower.templates.spec.CellFormat;
import org.setpower.templates.spec.ColumnSpec;
import org.setpower.templates.spec.Formula;
import org.setpower.templates.spec.ValidationRule;

/**
 * What hangs on packs of Kit through a lead: the cells to fill, volts and amps that follow, and
 * what is looked at. The columns stand in the table of whoever asks for them.
 */
public final class PackFeed {
  private static final String SOME_LEAD = "1.5 mm²";

  public final ColumnSpec plate =
      ColumnSpec.input("Plate")
          .unit("nominal V")
          .format(CellFormat.COUNT)
          .options("12", "24", "48")
          .required()
          .width(13)
          .help("Nominal voltage of the plate or DC cable: 12, 24 or 48.");
  public final ColumnSpec pack;
  public final ColumnSpec leadLength;
  public final ColumnSpec leadSize;
  public final ColumnSpec touchSafe =
      ColumnSpec.input("Touch-safe")
          .options("yes")
          .width(14)
          .help("Over the touch limit on Job: yes, when no bare part can be touched.");

  public final ColumnSpec feed =
      ColumnSpec.result("Feed").unit("nominal V").format(CellFormat.WHOLE).width(13);
  public final ColumnSpec full =
      ColumnSpec.result("Full packs").unit("V").format(CellFormat.ONE).width(13);
  public final ColumnSpec there;
  public final ColumnSpec amps =
      ColumnSpec.result("Current").unit("A").format(CellFormat.ONE).width(16);
  public final ColumnSpec atCutOff =
      ColumnSpec.result("Current at cut-off").unit("A").format(CellFormat.ONE).width(13);
  public final ColumnSpec limit =
      ColumnSpec.result("Max. battery current").unit("A").format(CellFormat.ONE).width(14);

  private final ColumnSpec highest = ColumnSpec.working("Highest output").format(CellFormat.COUNT);
  private final ColumnSpec groups =
      ColumnSpec.working("Halves side by side").format(CellFormat.ONE).unit("of 1");
  private final ColumnSpec cells =
      ColumnSpec.working("Cells seen").format(CellFormat.ONE).unit("of 1");
  private final ColumnSpec lead = ColumnSpec.working("Lead").unit("mΩ").format(CellFormat.ONE);
  private final ColumnSpec resistance =
      ColumnSpec.working("Resistance").unit("mΩ").format(CellFormat.ONE);

  private final JobSheet job;
  private final EquipmentSheet kit;
  private Formula watts;
  private Formula series;
  private Formula parallel;

  /** The cells to fill for a {@code thing} ("light", "device") that hangs on packs. */
  public PackFeed(JobSheet job, EquipmentSheet kit, String thing) {
    this.job = job;
    this.kit = kit;
    pack =
        ColumnSpec.input("Pack")
            .options(kit.pack)
            .required()
            .width(18)
            .help("The kind of pack, from Kit.");
    leadLength =
        ColumnSpec.input("Lead")
            .unit(job.lengths())
            .number(CellFormat.ONE, 0, 1000)
            .width(12)
            .help(
                "From the pack to the "
                    + thing
                    + ", one way. Blank: the pack sits on the "
                    + thing
                    + ".");
    leadSize =
        ColumnSpec.input("Lead size")
            .options(
                "18 AWG", "16 AWG", "14 AWG", "12 AWG", "10 AWG", "6 AWG", "1.5 mm²", "2.5 mm²",
                "4 mm²", "6 mm²", "10 mm²")
            .orOther()
            .width(17)
            .help(
                "Printed on the lead between pack and " + thing + ". Blank: no lead to speak of.");
    there = ColumnSpec.result("Volts at the " + thing).unit("V").format(CellFormat.ONE).width(14);
  }

  /** A figure of the pack of the row. */
  public Formula ofPack(ColumnSpec column) {
    return column.lookup(kit.pack, pack);
  }

  /** The working columns. */
  public ColumnSpec[] working() {
    return new ColumnSpec[] {highest, groups, cells, lead, resistance};
  }

  /**
   * Declares the results.
   *
   * @param power what it draws, W
   * @param lowest the volts at which the amps before it stops are reckoned
   * @param inSeries how many packs one behind the other
   * @param beside how many side by side
   * @param sharing how many of them share the current for sure
   */
  public PackFeed works(
      Formula power, Formula lowest, Formula inSeries, Formula beside, Formula sharing) {
    watts = power;
    series = inSeries;
    parallel = beside;
    feed.formula(
        call(
            BankFunctions.VOLTS,
            call(
                PackFunctions.FEED,
                calc("{}&\"\"", ofPack(kit.outputs)),
                calc("{}/{}", plate, series)),
            series));
    highest.formula(ofPack(kit.highest));
    groups.formula(calc("MAX(1;{}*{}/{})", highest, series, plate));
    cells.formula(calc("{}/{}", ofPack(kit.cells), groups));
    full.formula(
        calc(
            "IF({}=\"\";\"\";{})",
            feed,
            call(BankFunctions.FULLVOLTS, cells, series, kit.chemistryOf(pack))));
    there.formula(
        calc(
            "IF({};{};{})",
            noLead(),
            feed,
            call(
                CableFunctions.LOADVOLTS,
                or(leadSize, SOME_LEAD),
                metres(),
                watts,
                feed,
                "DC",
                1,
                job.conductorCelsius())));
    amps.formula(call(LoadFunctions.AMPS, watts, there, "DC"));
    atCutOff.formula(call(LoadFunctions.AMPS, watts, lowest, "DC"));
    limit.formula(call(BankFunctions.MAXAMPS, ofPack(kit.maxAmps), sharing));
    lead.formula(
        calc(
            "IF({};0;1000*{})",
            noLead(),
            call(
                CableFunctions.DROP,
                or(leadSize, SOME_LEAD),
                metres(),
                1,
                "DC",
                1,
                job.conductorCelsius())));
    resistance.formula(
        call(
            BankFunctions.RESISTANCE,
            calc("{}/{}/{}", ofPack(kit.milliohms), groups, groups),
            series,
            parallel));
    return this;
  }

  /** Hours of one set: the shorter of volts and energy. */
  public Formula hours(Formula cutOff, Formula celsius, Object leftAtSwap) {
    return calc(
        "IF({}=\"\";\"\";MIN({};{}))",
        feed,
        call(
            PackFunctions.DISCHARGE,
            calc("{}*{}", cells, series),
            call(BankFunctions.AMPHOURS, calc("{}*{}", ofPack(kit.ampHours), groups), parallel),
            resistance,
            watts,
            cutOff,
            kit.chemistryOf(pack),
            1,
            kit.healthOf(pack),
            celsius,
            lead,
            leftAtSwap),
        call(
            PackFunctions.RUNTIME,
            calc("{}*{}*{}", ofPack(kit.wattHours), series, parallel),
            watts,
            1,
            kit.healthOf(pack),
            celsius,
            kit.chemistryOf(pack),
            leftAtSwap));
  }

  /** The charge below which it does not start again. */
  public Formula startsAbove(Formula cutOff, Formula celsius) {
    return call(
        PackFunctions.STARTS,
        calc("{}*{}", cells, series),
        resistance,
        watts,
        cutOff,
        kit.chemistryOf(pack),
        celsius,
        lead);
  }

  private Formula noLead() {
    return calc("OR({}=\"\";{}=0)", optional(leadSize), or(leadLength, 0));
  }

  private Formula metres() {
    return job.metres(or(leadLength, 0));
  }

  /** What is looked at; {@code less} says what helps when the packs may not give so much. */
  public ValidationRule[] checks(String less) {
    return new ValidationRule[] {
      ValidationRule.stop(
          calc("AND({}>{};{}<>\"yes\")", full, job.touchLimit, or(touchSafe, "")),
          say(
              "{} V DC exceeds the touch limit of {} V. Guard all live parts, then enter yes "
                  + "under Touch-safe.",
              full,
              job.touchLimit)),
      ValidationRule.stop(
          calc("{}>{}", atCutOff, limit),
          say("{} A when nearly empty, the packs may give {} A: " + less + ".", atCutOff, limit)),
      ValidationRule.stop(
          calc(
              "IF({};FALSE();{}>{})",
              noLead(),
              atCutOff,
              call(CableFunctions.AMPACITY, or(leadSize, SOME_LEAD), "flexible", 30, 2, "free")),
          say("{} A when nearly empty are too many for a lead of {}.", atCutOff, leadSize)),
      ValidationRule.check(
          calc("(N({})=0)+({}=\"\")=1", or(leadLength, 0), optional(leadSize)),
          Formula.of("Fill in both lead and lead size, or neither."))
    };
  }
}
