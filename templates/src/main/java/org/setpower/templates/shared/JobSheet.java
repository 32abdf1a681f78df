package org.setpower.templates.shared;

import static org.setpower.templates.spec.Formula.calc;
import static org.setpower.templates.spec.Formula.or;

import java.util.ArrayList;
import java.util.List;
import org.setpower.templates.spec.Block;
import org.setpower.templates.spec.CellFormat;
import org.setpower.templates.spec.ColumnSpec;
import org.setpower.templates.spec.FieldBlock;
import org.setpower.templates.spec.FieldSpec;
import org.setpower.templates.spec.Formula;
import org.setpower.templates.spec.SheetSpec;
import org.setpower.templates.spec.TableSpec;
import org.setpower.templates.spec.ValidationRule;

/** The first tab of most files: the job, its units and its days. */
public final class JobSheet {
  /** How many days fit. */
  public static final int DAYS = 40;

  public final FieldSpec production;
  public final FieldSpec revision =
      FieldSpec.input("Revision")
          .number(CellFormat.COUNT, 0, 999)
          .help("Increase by 1 each time you issue the file.")
          .is(1)
          .rangeName("Job_Revision");
  public final FieldSpec revised =
      FieldSpec.input("Revised on").format(CellFormat.DATE).help("The date of this revision.");
  public final FieldSpec place = FieldSpec.input("Place").help("Location; printed on every page.");
  public final FieldSpec units =
      FieldSpec.input("Units")
          .options("metric", "US")
          .help("metric: m, °C, kg, L. US: ft, °F, lb, gal. Choose before you fill.")
          .is("metric")
          .rangeName("Job_Units");

  public final ColumnSpec day =
      ColumnSpec.input("Day")
          .width(52)
          .help("What the crew calls it: shoot day 1, night at the pans.");
  public final ColumnSpec date =
      ColumnSpec.input("Date")
          .format(CellFormat.DATE)
          .required()
          .width(38)
          .help("From the schedule. Two rows with one date are a company move.");
  public final ColumnSpec kind =
      ColumnSpec.input("Kind")
          .options("prep", "rig", "travel", "shoot", "night", "move", "hold", "wrap", "off")
          .required()
          .width(20)
          .help("What kind of day it is.");
  public final ColumnSpec where =
      ColumnSpec.input("Place").width(45).help("Location report or call sheet.");
  public final ColumnSpec call =
      ColumnSpec.input("Call")
          .format(CellFormat.TIME)
          .width(16)
          .help("Unit call, by the clock: 07:00.");
  public final ColumnSpec wrap =
      ColumnSpec.input("Wrap")
          .format(CellFormat.TIME)
          .width(16)
          .help("Estimated wrap. At or before the call means the next morning.");
  public final ColumnSpec coldest =
      ColumnSpec.input("Coldest")
          .unit(degrees())
          .number(CellFormat.WHOLE, -60, 140)
          .width(20)
          .help("Weather forecast for the hours you work; packs give less in the cold.");
  public final ColumnSpec warmest =
      ColumnSpec.input("Warmest")
          .unit(degrees())
          .number(CellFormat.WHOLE, -60, 140)
          .width(20)
          .help("Weather forecast; cables and generators carry less in the heat.");

  public final TableSpec days =
      TableSpec.of("Days", DAYS)
          .columns(day, date, kind, where, call, wrap, coldest, warmest)
          .rowLabel(date)
          .checks(
              ValidationRule.check(
                  calc("({}=\"\")<>({}=\"\")", or(call, ""), or(wrap, "")),
                  Formula.of("Fill in both call and wrap, or neither.")),
              ValidationRule.check(
                  calc("{}>{}", coldest, warmest), Formula.of("Coldest is above warmest.")));

  // what a job with cables or DC asks for

  public final FieldSpec family =
      FieldSpec.input("Wire family")
          .options("mm2", "AWG")
          .is("mm2")
          .help("Series used for suggested sizes. Either may be entered.")
          .rangeName("Job_Wire_family");
  public final FieldSpec conductor =
      FieldSpec.input("Conductor temperature")
          .unit(degrees())
          .number(CellFormat.WHOLE, 0, 300)
          .is(60)
          .help(
              "Conductor temperature under load. Default 60 °C (140 °F); lower gives less"
                  + " drop.")
          .rangeName("Job_Conductor_temperature");
  public final FieldSpec touchLimit =
      FieldSpec.input("DC touch-voltage limit")
          .unit("V")
          .number(CellFormat.WHOLE, 12, 120)
          .is(60)
          .help("Guard live parts above this voltage: 60 V DC dry, 30 V DC wet.")
          .rangeName("Job_Touch_limit");

  /** A job named by its production. */
  public JobSheet() {
    this(
        FieldSpec.input("Production")
            .help("Title as on the call sheet.")
            .rangeName("Job_Production"));
  }

  /** A file that is named by something else than a production. */
  public JobSheet(FieldSpec name) {
    production = name;
  }

  /** The cell for the currency of a file with money in it. */
  public static FieldSpec currency() {
    return FieldSpec.input("Currency")
        .options("EUR", "USD", "GBP", "CHF", "SEK", "NOK", "DKK", "PLN", "CZK", "CAD", "AUD")
        .orOther()
        .is("EUR")
        .help("Three letters: EUR, USD, GBP.")
        .rangeName("Job_Currency");
  }

  /** The first tab of a file without days. */
  public SheetSpec tabWithoutDays(String title, String lead, FieldBlock... more) {
    List<Block> blocks = new ArrayList<>(List.of(cells()));
    blocks.addAll(List.of(more));
    return SheetSpec.of("Job", lead)
        .titled(title)
        .grid(16, 17)
        .first()
        .with(blocks.toArray(new Block[0]));
  }

  private FieldBlock cells() {
    return FieldBlock.of("The job", production, revision, revised, place, units);
  }

  /** The first tab; {@code more} are the file's own cells. */
  public SheetSpec tab(String title, String lead, Block... more) {
    List<Block> blocks = new ArrayList<>();
    blocks.add(cells());
    blocks.addAll(List.of(more));
    blocks.add(days);
    return SheetSpec.of("Job", lead).titled(title).first().with(blocks.toArray(new Block[0]));
  }

  /** The line below the title of the other tabs. */
  public Formula stamp() {
    return calc(
        "IF({}=\"\";\"\";{}&\"  ·  \")&\"revision \"&{}&IF({}=\"\";\"\";\"  ·  \"&TEXT({};\"d mmm"
            + " yyyy\"))&IF({}=\"\";\"\";\"  ·  \"&{})",
        production,
        production,
        revision,
        revised,
        revised,
        place,
        place);
  }

  private Formula isUs() {
    return calc("{}=\"US\"", units);
  }

  /** The unit of lengths. */
  public Formula lengths() {
    return calc("IF({};\"ft\";\"m\")", isUs());
  }

  /** The unit of temperatures. */
  public Formula degrees() {
    return calc("IF({};\"°F\";\"°C\")", isUs());
  }

  /** The conductor temperature in °C. */
  public Formula conductorCelsius() {
    return celsius(conductor);
  }

  /** The unit of masses. */
  public Formula masses() {
    return calc("IF({};\"lb\";\"kg\")", isUs());
  }

  /** The unit of fuel. */
  public Formula volumes() {
    return calc("IF({};\"gal\";\"L\")", isUs());
  }

  /** A volume in the chosen unit, in litres. */
  public Formula litres(Formula volume) {
    return calc("{}*IF({};3.785411784;1)", volume, isUs());
  }

  /** Litres in the chosen unit. */
  public Formula fromLitres(Formula litres) {
    return calc("{}/IF({};3.785411784;1)", litres, isUs());
  }

  /** A mass in the chosen unit, in kg. */
  public Formula kilograms(Formula mass) {
    return calc("{}*IF({};0.45359237;1)", mass, isUs());
  }

  /** A length in the chosen unit, in metres. */
  public Formula metres(Formula length) {
    return calc("{}*IF({};0.3048;1)", length, isUs());
  }

  /** Metres in the chosen unit. */
  public Formula fromMetres(Formula metres) {
    return calc("{}/IF({};0.3048;1)", metres, isUs());
  }

  /** A temperature in the chosen unit, or so many °C in that unit when its cell is blank. */
  public Formula degrees(FieldSpec temperature, double celsius) {
    return Formula.or(temperature, calc("IF({};{};{})", isUs(), celsius * 1.8 + 32, celsius));
  }

  /** A temperature in the chosen unit, in °C. */
  public Formula celsius(Formula temperature) {
    return calc("IF({};({}-32)/1.8;{})", isUs(), temperature, temperature);
  }

  /** The coldest of a date in °C; blank cells count as mild. */
  public Formula coldest(Formula on, double mild) {
    return calc(
        "IF(COUNTIFS({};{};{};\"<>\")=0;" + mild + ";{})",
        date.all(),
        on,
        coldest.all(),
        celsius(calc("MINIFS({};{};{})", coldest.all(), date.all(), on)));
  }
}
