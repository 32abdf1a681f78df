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
import org.setpower.templates.spec.Check;
import org.setpower.templates.spec.Column;
import org.setpower.templates.spec.Format;
import org.setpower.templates.spec.Formula;

/**
 * What hangs on packs of Kit through a lead: the cells to fill, volts and amps that follow, and
 * what is looked at. The columns stand in the table of whoever asks for them.
 */
public final class PackFeed {
  private static final String SOME_LEAD = "1.5 mm²";

  public final Column plate =
      Column.input("Plate")
          .unit("V class")
          .as(Format.COUNT)
          .oneOf("12", "24", "48")
          .needed()
          .wide(13)
          .help("The volt class the plate or lead asks for: 12, 24 or 48.");
  public final Column pack;
  public final Column leadLength;
  public final Column leadSize;
  public final Column touchSafe =
      Column.input("Touch-safe")
          .oneOf("yes")
          .wide(14)
          .help("Over the touch limit on Job: yes, when no bare part can be touched.");

  public final Column feed = Column.result("Feed").unit("V class").as(Format.WHOLE).wide(13);
  public final Column full = Column.result("Full packs").unit("V").as(Format.ONE).wide(13);
  public final Column there;
  public final Column amps = Column.result("Current").unit("A").as(Format.ONE).wide(16);
  public final Column atCutOff = Column.result("At cut-off").unit("A").as(Format.ONE).wide(13);
  public final Column limit = Column.result("Packs may give").unit("A").as(Format.ONE).wide(14);

  private final Column highest = Column.working("Highest output").as(Format.COUNT);
  private final Column groups = Column.working("Halves side by side").as(Format.ONE).unit("of 1");
  private final Column cells = Column.working("Cells seen").as(Format.ONE).unit("of 1");
  private final Column lead = Column.working("Lead").unit("mΩ").as(Format.ONE);
  private final Column resistance = Column.working("Resistance").unit("mΩ").as(Format.ONE);

  private final Job job;
  private final Kit kit;
  private Formula watts;
  private Formula series;
  private Formula parallel;

  /** The cells to fill for a {@code thing} ("light", "device") that hangs on packs. */
  public PackFeed(Job job, Kit kit, String thing) {
    this.job = job;
    this.kit = kit;
    pack =
        Column.input("Pack").oneOf(kit.pack).needed().wide(18).help("The kind of pack, from Kit.");
    leadLength =
        Column.input("Lead")
            .unit(job.lengths())
            .number(Format.ONE, 0, 1000)
            .wide(12)
            .help(
                "From the pack to the "
                    + thing
                    + ", one way. Blank: the pack sits on the "
                    + thing
                    + ".");
    leadSize =
        Column.input("Lead size")
            .oneOf(
                "18 AWG", "16 AWG", "14 AWG", "12 AWG", "10 AWG", "6 AWG", "1.5 mm²", "2.5 mm²",
                "4 mm²", "6 mm²", "10 mm²")
            .orOther()
            .wide(17)
            .help(
                "Printed on the lead between pack and " + thing + ". Blank: no lead to speak of.");
    there = Column.result("Volts at the " + thing).unit("V").as(Format.ONE).wide(14);
  }

  /** A figure of the pack of the row. */
  public Formula ofPack(Column column) {
    return column.where(kit.pack, pack);
  }

  /** The working columns. */
  public Column[] working() {
    return new Column[] {highest, groups, cells, lead, resistance};
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
    feed.by(
        call(
            BankFunctions.VOLTS,
            call(
                PackFunctions.FEED,
                calc("{}&\"\"", ofPack(kit.outputs)),
                calc("{}/{}", plate, series)),
            series));
    highest.by(ofPack(kit.highest));
    groups.by(calc("MAX(1;{}*{}/{})", highest, series, plate));
    cells.by(calc("{}/{}", ofPack(kit.cells), groups));
    full.by(
        calc(
            "IF({}=\"\";\"\";{})",
            feed,
            call(BankFunctions.FULLVOLTS, cells, series, kit.chemistryOf(pack))));
    there.by(
        calc(
            "IF({};{};{})",
            noLead(),
            feed,
            call(
                CableFunctions.ENDVOLTS,
                or(leadSize, SOME_LEAD),
                metres(),
                watts,
                feed,
                "DC",
                1,
                job.conductorCelsius())));
    amps.by(call(LoadFunctions.AMPS, watts, there, "DC"));
    atCutOff.by(call(LoadFunctions.AMPS, watts, lowest, "DC"));
    limit.by(call(BankFunctions.MAXAMPS, ofPack(kit.maxAmps), sharing));
    lead.by(
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
    resistance.by(
        call(
            BankFunctions.MILLIOHMS,
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
            PackFunctions.LASTS,
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
            leftAtSwap,
            kit.chemistryOf(pack)));
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
  public Check[] checks(String less) {
    return new Check[] {
      Check.stop(
          calc("AND({}>{};{}<>\"yes\")", full, job.touchLimit, or(touchSafe, "")),
          say(
              "{} V DC exceeds the touch limit of {} V. Guard all live parts, then enter yes "
                  + "under Touch-safe.",
              full,
              job.touchLimit)),
      Check.stop(
          calc("{}>{}", atCutOff, limit),
          say("{} A when nearly empty, the packs may give {} A: " + less + ".", atCutOff, limit)),
      Check.stop(
          calc(
              "IF({};FALSE();{}>{})",
              noLead(),
              atCutOff,
              call(CableFunctions.AMPACITY, or(leadSize, SOME_LEAD))),
          say("{} A when nearly empty are too many for a lead of {}.", atCutOff, leadSize)),
      Check.look(
          calc("(N({})=0)+({}=\"\")=1", or(leadLength, 0), optional(leadSize)),
          Formula.of("Fill in both lead and lead size, or neither."))
    };
  }
}
