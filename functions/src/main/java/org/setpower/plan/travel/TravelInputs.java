package org.setpower.plan.travel;

import java.time.LocalDate;
import org.setpower.flight.CarriageMode;
import org.setpower.flight.Packing;
import org.setpower.plan.common.Input;
import org.setpower.plan.common.InputRows;
import org.setpower.plan.common.InputTable;
import org.setpower.plan.common.NumberForm;
import org.setpower.plan.common.Table;
import org.setpower.plan.register.Condition;
import org.setpower.plan.register.Status;

/**
 * The tables to fill of the battery travel list.
 *
 * @param project one row
 * @param flights every flight of the trip
 * @param travellers roles, no names
 * @param answers what carriers answered in writing
 * @param batteries rows by type with a quantity, or by serial
 * @param packing who carries what, decided by hand or proposed last time
 */
public record TravelInputs(
    InputRows<Project> project,
    InputRows<Flight> flights,
    InputRows<Traveller> travellers,
    InputRows<CarrierAnswer> answers,
    InputRows<Battery> batteries,
    InputRows<Packed> packing) {
  static final InputTable<Project> PROJECT = InputTable.of(Project.class);
  static final InputTable<Flight> FLIGHTS = InputTable.of(Flight.class);
  static final InputTable<Traveller> TRAVELLERS = InputTable.of(Traveller.class);
  static final InputTable<CarrierAnswer> ANSWERS = InputTable.of(CarrierAnswer.class);
  static final InputTable<Battery> BATTERIES = InputTable.of(Battery.class);
  static final InputTable<Packed> PACKING = InputTable.of(Packed.class);

  /** What holds for the whole trip. */
  @Table(key = "project", heading = "Project", rows = 1, upright = true)
  public record Project(
      @Input(
              key = "production",
              heading = "Production",
              blank = "Blank: not printed.",
              help = "Printed on each page and card, and in questions to carriers.")
          String production,
      @Input(
              key = "revision",
              heading = "Revision",
              min = 0,
              max = 999,
              blank = "Blank: not printed.",
              help = "Add one whenever a paper goes out.")
          Double revision,
      @Input(
              key = "issued",
              heading = "Date of issue",
              blank = "Blank: today.",
              help = "The day printed on every paper.")
          LocalDate issued,
      @Input(
              key = "contact",
              heading = "Emergency contact",
              blank = "Blank: freight papers stop.",
              help = "A role and a telephone number that is answered at any hour.")
          String contact,
      @Input(
              key = "flightRules",
              heading = "Flight rules",
              blank = "Blank: ICAO.",
              help = "For flights that name none. US: the stricter of US and ICAO counts.")
          TripRules flightRules,
      @Input(
              key = "rest",
              heading = "Rest goes by",
              blank = "Blank: road.",
              help = "How the batteries travel that no traveller carries.")
          Onward rest,
      @Input(
              key = "handOver",
              heading = "Handed over on",
              blank = "Blank: air freight papers stop.",
              help = "The day on which the forwarder or the driver takes what is not carried.")
          LocalDate handOver,
      @Input(
              key = "needed",
              heading = "Needed full on",
              blank = "Blank: no day to hand over by.",
              help = "The day on which batteries by freight and road have to be full there.")
          LocalDate needed,
      @Input(
              key = "transit",
              heading = "On the way",
              form = NumberForm.ONE_DECIMAL,
              unit = "d",
              min = 0,
              max = 60,
              blank = "Blank: no day to hand over by.",
              help = "Days from handing over to arrival at the destination.")
          Double transit,
      @Input(
              key = "chargers",
              heading = "Chargers there",
              unit = "W",
              min = 1,
              max = 1_000_000,
              blank = "Blank: charging is not counted.",
              help = "Watts from the mains that all chargers at the destination take together.")
          Double chargers,
      @Input(
              key = "back",
              heading = "Comes back by",
              blank = "Blank: as it went.",
              help = "How batteries that went by freight or road come back. stays: they do not.")
          Onward back,
      @Input(
              key = "backOn",
              heading = "Handed over for the way back on",
              blank = "Blank: check, and no papers for the way back.",
              help = "The day by whose rules the way back is judged.")
          LocalDate backOn,
      @Input(
              key = "weightUnit",
              heading = "Weights in",
              blank = "Blank: kg.",
              help = "Unit of every weight typed in this list. Papers are in kg.")
          WeightUnit weightUnit,
      @Input(
              key = "roadRules",
              heading = "Road rules",
              blank = "Blank: ADR.",
              help = "US for roads in the United States; else ADR.")
          RoadBook roadRules,
      @Input(
              key = "transport",
              heading = "Transport office's answer",
              blank = "Blank: none; where it is needed the road paper stops.",
              help = "Reference of its written answer on what the road rules leave to it.")
          String transport,
      @Input(
              key = "confirmed",
              heading = "Rules from memory confirmed",
              blank = "Blank: not confirmed; each such rule is a check here.",
              help = "Reference of the mail that confirmed them: carrier, forwarder or authority.")
          String confirmed,
      @Input(
              key = "freightFrom",
              heading = "Freight from",
              blank = "Blank: not printed.",
              help = "Place or airport where freight and road transport begin on the way out.")
          String freightFrom,
      @Input(
              key = "freightTo",
              heading = "Freight to",
              blank = "Blank: not printed.",
              help = "Place or airport where they end on the way out.")
          String freightTo,
      @Input(
              key = "begins",
              heading = "Trip begins in",
              blank = "Blank: as Freight from.",
              help =
                  "Place or airport, as in From. It shows a flight back that is dated before the flight out.")
          String begins) {}

  /** A flight. */
  @Table(key = "flights", heading = "Flights", rows = 12)
  public record Flight(
      @Input(
              key = "flight",
              heading = "Flight",
              help = "Number of the flight, each only once. Also flights that change planes.")
          String flight,
      @Input(key = "date", heading = "Date", help = "Day of departure, local.") LocalDate date,
      @Input(
              key = "carrier",
              heading = "Operating carrier",
              help = "The carrier that flies it, not the one that sold the ticket.")
          String carrier,
      @Input(
              key = "rules",
              heading = "Rules",
              blank = "Blank: as on Project.",
              help =
                  "US from or to the US: the stricter of both counts. US domestic: stays in the US.")
          TripRules rules,
      @Input(
              key = "from",
              heading = "From",
              blank = "Blank: not printed.",
              help = "Place or airport. From and Destination show whether everything comes back.")
          String from,
      @Input(
              key = "to",
              heading = "Destination",
              blank = "Blank: not printed.",
              help = "Place or airport, written as in From of the next flight.")
          String to,
      @Input(
              key = "writtenSpares",
              heading = "Carrier's limit, spares",
              unit = "pcs",
              min = 0,
              max = 1000,
              blank = "Blank: as the rules; past their edition none.",
              help =
                  "All spare batteries a person, as the carrier writes for this flight. Above the rules it counts where these leave it to the carrier.")
          Double writtenSpares,
      @Input(
              key = "writtenOver",
              heading = "Carrier's limit, over 100 Wh",
              unit = "pcs",
              min = 0,
              max = 1000,
              blank = "Blank: as the rules; past their edition none.",
              help = "Spares over 100 Wh a person, as the carrier writes for this flight.")
          Double writtenOver,
      @Input(
              key = "writtenBanks",
              heading = "Carrier's limit, power banks",
              unit = "pcs",
              min = 0,
              max = 1000,
              blank = "Blank: as the rules; past their edition none.",
              help = "Power banks a person, as the carrier writes for this flight.")
          Double writtenBanks,
      @Input(
              key = "writtenDevices",
              heading = "Carrier's limit, in equipment",
              unit = "pcs",
              min = 0,
              max = 1000,
              blank = "Blank: as the rules.",
              help = "Batteries in equipment a person, as the carrier writes for this flight.")
          Double writtenDevices,
      @Input(
              key = "writtenReference",
              heading = "Reference of these limits",
              blank = "Blank: not in writing; past the edition the flight stops.",
              help = "Mail, number or booking note. Take it along printed.")
          String writtenReference) {}

  /** A traveller. */
  @Table(key = "travellers", heading = "Travellers", rows = 30)
  public record Traveller(
      @Input(key = "traveller", heading = "Traveller", help = "A role, no name. Each only once.")
          String traveller,
      @Input(
              key = "flights",
              heading = "Flights",
              blank = "Blank: all flights.",
              help = "Numbers of the flights of this traveller, with ; between them; or all.")
          String flights,
      @Input(
              key = "cabinKg",
              heading = "Max. weight",
              form = NumberForm.ONE_DECIMAL,
              min = 0,
              max = 200,
              blank = "Blank: not limited.",
              help = "What the cabin bag of this traveller takes of batteries.")
          Double cabinKg,
      @Input(
              key = "ownSpares",
              heading = "Own spares",
              unit = "pcs",
              min = 0,
              max = 100,
              blank = "Blank: none.",
              help = "Spare batteries of one's own up to 100 Wh: they count too.")
          Double ownSpares,
      @Input(
              key = "ownLarge",
              heading = "Own spares over 100 Wh",
              unit = "pcs",
              min = 0,
              max = 100,
              blank = "Blank: none.",
              help = "Not among Own spares. They need the carrier's written answer too.")
          Double ownLarge,
      @Input(
              key = "ownBanks",
              heading = "Own power banks",
              unit = "pcs",
              min = 0,
              max = 100,
              blank = "Blank: none.",
              help = "Power banks of one's own: they count too.")
          Double ownBanks,
      @Input(
              key = "ownDevices",
              heading = "Own devices",
              unit = "pcs",
              min = 0,
              max = 100,
              blank = "Blank: none.",
              help = "Telephone, computer and other devices of one's own: they count too.")
          Double ownDevices,
      @Input(
              key = "back",
              heading = "Batteries come back by",
              blank = "Blank: on the flights of this traveller.",
              help = "Where the flights do not bring them back. stays: they do not come back.")
          Onward back) {}

  /** A written answer of a carrier. It covers what it names and nothing else. */
  @Table(key = "answers", heading = "Carriers' answers", rows = 40)
  public record CarrierAnswer(
      @Input(key = "carrier", heading = "Carrier", help = "Who answered: the operating carrier.")
          String carrier,
      @Input(
              key = "flight",
              heading = "Flights",
              help = "Numbers of the flights it names, with ; between them.")
          String flight,
      @Input(key = "date", heading = "Date of flight", help = "The date of flight it names.")
          LocalDate date,
      @Input(
              key = "date2",
              heading = "Second date",
              blank = "Blank: one date.",
              help = "Where the flights it names are on two days.")
          LocalDate date2,
      @Input(
              key = "travellers",
              heading = "Travellers",
              blank = "Blank: each traveller.",
              help = "Roles it names, with ; between them; or all.")
          String travellers,
      @Input(key = "type", heading = "Type", help = "The type of battery it names.") String type,
      @Input(
              key = "carried",
              heading = "How carried",
              blank = "Blank: spare.",
              help = "An answer for spares does not cover batteries in equipment.")
          CarriageMode carried,
      @Input(
              key = "energy",
              heading = "Up to",
              form = NumberForm.ONE_DECIMAL,
              unit = "Wh",
              min = 0,
              max = 100_000,
              help = "The energy of one battery it names.")
          Double energy,
      @Input(
              key = "number",
              heading = "A person",
              unit = "pcs",
              min = 0,
              max = 1000,
              help = "How many a person may take of the type. 0: refused.")
          Double number,
      @Input(key = "reference", heading = "Reference", help = "Mail, number or booking note.")
          String reference,
      @Input(
              key = "answered",
              heading = "Answered on",
              blank = "Blank: check.",
              help = "The day of the answer.")
          LocalDate answered) {}

  /** Batteries of one type that are carried in one way, or one battery by its serial. */
  @Table(key = "batteries", heading = "Batteries", rows = 120)
  public record Battery(
      @Input(
              key = "battery",
              heading = "Battery",
              help = "The type, or the serial of one battery. Each only once.")
          String battery,
      @Input(
              key = "energy",
              heading = "Energy of one",
              form = NumberForm.ONE_DECIMAL,
              unit = "Wh",
              min = 0,
              max = 100_000,
              blank = "Blank: worked out from V and Ah; without these stop.",
              help = "The Wh on the label.")
          Double energy,
      @Input(
              key = "quantity",
              heading = "Qty",
              unit = "pcs",
              min = 1,
              max = 500,
              blank = "Blank: 1.",
              help = "Pieces to be there.")
          Double quantity,
      @Input(
              key = "chemistry",
              heading = "Chemistry",
              blank = "Blank: Li-ion.",
              help = "On the label.")
          TravelChemistry chemistry,
      @Input(
              key = "carried",
              heading = "How carried",
              blank = "Blank: spare.",
              help = "spare: by itself. in equipment: in the device it feeds.")
          CarriageMode carried,
      @Input(
              key = "condition",
              heading = "Condition",
              help = "What hand and eye say of the worst of them.")
          Condition condition,
      @Input(
              key = "terminals",
              heading = "Terminals covered",
              blank = "Blank: check, and not printed.",
              help = "Each by itself: cap, tape, or a bag of its own.")
          Boolean terminals,
      @Input(
              key = "kilograms",
              heading = "Weight of one",
              form = NumberForm.TWO_DECIMALS,
              min = 0.001,
              max = 1000,
              blank = "Blank: freight and road papers stop.",
              help = "On the scales or from the data sheet.")
          Double kilograms,
      @Input(
              key = "un383",
              heading = "UN 38.3 summary",
              blank = "Blank: check; freight and road papers stop.",
              help = "Is the maker's test summary to hand?")
          Boolean un383,
      @Input(
              key = "charge",
              heading = "State of charge",
              form = NumberForm.SHARE,
              min = 0,
              max = 1,
              blank = "Blank: full.",
              help = "Now, for freight. Read it again after discharging.")
          Double charge,
      @Input(
              key = "chargePieces",
              heading = "Pieces at that charge",
              unit = "pcs",
              min = 0,
              max = 500,
              blank = "Blank: none; 1 where Qty is 1.",
              help = "Of how many pieces it was read. The others count as full.")
          Double chargePieces,
      @Input(
              key = "by",
              heading = "Goes by",
              blank = "Blank: carried as far as rules and answers leave it.",
              help = "The way, chosen on purpose: no traveller carries it.")
          Onward by,
      @Input(
              key = "type",
              heading = "Type",
              blank = "Blank: as Battery.",
              help = "The type of a battery that is named by its serial.")
          String type,
      @Input(
              key = "register",
              heading = "Register",
              blank = "Blank: not from the register.",
              help = "The state in the battery register, brought in by serial.")
          Status register,
      @Input(
              key = "rest",
              heading = "Rest goes by",
              blank = "Blank: as on Project.",
              help = "How those travel that no traveller can carry.")
          Onward rest,
      @Input(
              key = "user",
              heading = "User",
              blank = "Blank: anyone.",
              help = "The traveller who works with it.")
          String user,
      @Input(
              key = "priority",
              heading = "Priority",
              min = 1,
              max = 9,
              blank = "Blank: 9, the last.",
              help = "1 is carried first.")
          Double priority,
      @Input(
              key = "outputs",
              heading = "USB or tap output",
              blank = "Blank: no.",
              help = "A battery with outputs may be taken for a power bank.")
          Boolean outputs,
      @Input(
              key = "volts",
              heading = "Nominal voltage",
              form = NumberForm.ONE_DECIMAL,
              unit = "V",
              min = 0,
              max = 2000,
              blank = "Blank: not known.",
              help = "On the label, where it shows no Wh, and of lead batteries.")
          Double volts,
      @Input(
              key = "ampHours",
              heading = "Capacity",
              form = NumberForm.TWO_DECIMALS,
              unit = "Ah",
              min = 0,
              max = 100_000,
              blank = "Blank: not known.",
              help = "On the label. V × Ah may differ from the Wh of the label by 5 %.")
          Double ampHours,
      @Input(
              key = "cells",
              heading = "Cells",
              unit = "pcs",
              min = 1,
              max = 10_000,
              blank = "Blank: freight as of cells over 20 Wh.",
              help = "All cells of one battery.")
          Double cells,
      @Input(
              key = "packed",
              heading = "Freight packed",
              blank = "Blank: alone; in equipment where it is carried so.",
              help = "alone, in one box with its equipment, or in it.")
          Packing packed,
      @Input(
              key = "inUse",
              heading = "In use at a time",
              unit = "pcs",
              min = 1,
              max = 500,
              blank = "Blank: freight packed with equipment stops.",
              help =
                  "Of freight packed with equipment: pieces that this equipment takes at a time.")
          Double inUse,
      @Input(
              key = "lithium",
              heading = "Lithium",
              form = NumberForm.TWO_DECIMALS,
              unit = "g",
              min = 0,
              max = 10_000,
              blank = "Blank: lithium metal batteries stop.",
              help = "Grams of lithium in one lithium metal battery.")
          Double lithium,
      @Input(
              key = "backCharge",
              heading = "State of charge, way back",
              form = NumberForm.SHARE,
              min = 0,
              max = 1,
              blank = "Blank: air freight papers of the way back stop where a limit is mandatory.",
              help = "Read it after discharging for the way back.")
          Double backCharge,
      @Input(
              key = "backPieces",
              heading = "Pieces at that charge, way back",
              unit = "pcs",
              min = 0,
              max = 500,
              blank = "Blank: none; 1 where Qty is 1.",
              help = "Of how many pieces it was read. The others count as full.")
          Double backPieces) {}

  /** Who carries how many of a battery. */
  @Table(key = "packing", heading = "Packing", rows = 240)
  public record Packed(
      @Input(key = "battery", heading = "Battery", help = "A row of Batteries.") String battery,
      @Input(key = "traveller", heading = "Traveller", help = "A row of Travellers.")
          String traveller,
      @Input(
              key = "pieces",
              heading = "Pieces",
              unit = "pcs",
              min = 0,
              max = 500,
              help = "How many this traveller carries. 0: none.")
          Double pieces,
      @Input(
              key = "bag",
              heading = "Bag",
              blank = "Blank: cabin.",
              help = "Spares and power banks never go into the hold.")
          Bag bag,
      @Input(
              key = "decided",
              heading = "Decided",
              blank = "Blank: yes.",
              help = "no: the last proposal, from which as little as possible changes.")
          Boolean decided) {}
}
