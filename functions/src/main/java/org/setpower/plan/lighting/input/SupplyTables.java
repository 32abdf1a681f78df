package org.setpower.plan.lighting.input;

import java.time.LocalDate;
import org.setpower.cable.Protection.Curve;
import org.setpower.plan.common.Input;
import org.setpower.plan.common.InputTable;
import org.setpower.plan.common.NumberForm;
import org.setpower.plan.common.Table;
import org.setpower.supply.Engine;

/** Where power comes from and how it is distributed: sources, distros, outlets, generators. */
public final class SupplyTables {
  public static final InputTable<Supply> SUPPLIES = InputTable.of(Supply.class);
  public static final InputTable<OutletGroup> OUTLETS = InputTable.of(OutletGroup.class);
  public static final InputTable<Generator> GENERATORS = InputTable.of(Generator.class);

  private SupplyTables() {}

  /** A source or a distro. */
  @Table(key = "supplies", heading = "Sources & distro", rows = 40)
  public record Supply(
      @Input(key = "name", heading = "Name", help = "Outlets, cable runs and loads name it.")
          String name,
      @Input(
              key = "type",
              heading = "Type",
              help = "A distro is fed by a cable run, others are not.")
          SupplyType type,
      @Input(
              key = "system",
              heading = "System",
              blank = "Blank: a distro has the legs of its supply run; a source is a stop.",
              help = "1PH, split (120/240 V) or 3PH.")
          SupplySystem system,
      @Input(
              key = "volts",
              heading = "Voltage",
              unit = "V",
              min = 90,
              max = 700,
              blank = "Blank: 230/400 V metric, 120/208/240 V US; a distro has that of its source.",
              help = "Of a source: line to line; on 1PH line to neutral.")
          Double volts,
      @Input(
              key = "breaker",
              heading = "Main breaker",
              unit = "A",
              min = 1,
              max = 6000,
              blank = "Blank: a distro has none, the upstream breaker counts; a source is a stop.",
              help = "Rating of its main breaker or fuse.")
          Double breaker,
      @Input(
              key = "curve",
              heading = "Curve",
              blank = "Blank: not known, the slowest counts.",
              help = "Trip curve of the main breaker (IEC 60898-1).")
          Curve curve,
      @Input(
              key = "rcd",
              heading = "RCD",
              unit = "mA",
              min = 1,
              max = 3000,
              blank = "Blank: none; of a socket outlet not known, with a check.",
              help = "Rated residual current of its main RCD.")
          Double rcd,
      @Input(
              key = "existing",
              heading = "Existing load",
              form = NumberForm.ONE_DECIMAL,
              unit = "A/leg",
              min = 0,
              max = 6000,
              blank = "Blank: none.",
              help = "What others take from it already.")
          Double existing,
      @Input(
              key = "rcdType",
              heading = "RCD type",
              blank = "Blank: not delayed.",
              help = "A, F or B as marked; S is time-delayed, such as A S.")
          RcdType rcdType,
      @Input(
              key = "zs",
              heading = "Earth loop Zs",
              form = NumberForm.THREE_DECIMALS,
              unit = "Ω",
              min = 0.001,
              max = 200,
              blank = "Blank: not known, disconnection is checked without it.",
              help = "Measured at the source.")
          Double zs,
      @Input(
              key = "from",
              heading = "On from",
              unit = ProjectTables.CLOCK,
              min = 0,
              max = 1,
              blank = "Blank: all day.",
              help =
                  "When power comes on, where it is not always there."
                      + " A time before Call and before the Wrap of a night is the next morning.")
          Double from,
      @Input(
              key = "to",
              heading = "On to",
              unit = ProjectTables.CLOCK,
              min = 0,
              max = 1,
              blank = "Blank: all day.",
              help = "When power goes off. At or before On from: next morning.")
          Double to,
      @Input(
              key = "location",
              heading = "Location",
              blank = "Blank: not printed.",
              help = "Where it stands.")
          String location,
      @Input(
              key = "electrician",
              heading = "Responsible electrician",
              blank = "Blank: not printed.",
              help = "The role that connects it and signs for it.")
          String electrician) {}

  /** Outlets of a distro that are alike. */
  @Table(key = "outlets", heading = "Outlets", rows = 120)
  public record OutletGroup(
      @Input(key = "distro", heading = "Distro", help = "Name from Sources & distro.")
          String distro,
      @Input(key = "numbers", heading = "Numbers", help = "Numbers of its outlets, such as 1–6.")
          String numbers,
      @Input(
              key = "connector",
              heading = "Connector",
              help = "One row for each type of connector. A single-pole set is one outlet.")
          Connector connector,
      @Input(
              key = "legs",
              heading = "Legs",
              blank =
                  "Blank: all legs for five pins, two legs for four, in turn from L1 for others.",
              help = "L1, L1-L2, all, in turn from L1, pairs in turn.")
          LegWord legs,
      @Input(
              key = "breaker",
              heading = "Breaker",
              unit = "A",
              blank = "Blank: a stop when the outlet is used.",
              help = "Rating in A, or through: the upstream breaker counts.")
          String breaker,
      @Input(
              key = "curve",
              heading = "Curve",
              blank = "Blank: not known, the slowest counts.",
              help = "Trip curve of the breaker (IEC 60898-1).")
          Curve curve,
      @Input(
              key = "rcd",
              heading = "RCD",
              unit = "mA",
              blank = "Blank: not known.",
              help = "Rated residual current in mA, upstream, or none.")
          String rcd,
      @Input(
              key = "rcdType",
              heading = "RCD type",
              blank = "Blank: not delayed.",
              help = "A, F or B as marked; S is time-delayed, such as A S.")
          RcdType rcdType,
      @Input(
              key = "sharing",
              heading = "Outlets on one breaker",
              min = 1,
              max = 48,
              blank = "Blank: 1.",
              help = "2 for a duplex outlet.")
          Double sharing,
      @Input(
              key = "circuits",
              heading = "Circuits in a connector",
              min = 1,
              max = 12,
              blank = "Blank: 1; 6 in a 19-pin connector.",
              help = "Circuits of outlet 2 are named 2.1, 2.2 …")
          Double circuits,
      @Input(
              key = "together",
              heading = "Tripping together accepted by",
              blank = "Blank: a check where its RCD trips with one behind it.",
              help =
                  "The role that accepts it, such as gaffer: lights behind both RCDs go out. It is"
                      + " printed on the label. It accepts nothing else.")
          String together) {}

  /** How a generator of Sources & distro is run. */
  @Table(key = "generators", heading = "Generator", rows = 8)
  public record Generator(
      @Input(key = "name", heading = "Generator", help = "Name from Sources & distro.") String name,
      @Input(
              key = "engine",
              heading = "Engine",
              blank = "Blank: diesel without turbo, which loses most.",
              help = "It decides what is lost in thin and hot air.")
          Engine engine,
      @Input(
              key = "altitude",
              heading = "Altitude",
              unit = ProjectTables.LENGTH,
              min = -2000,
              max = 50_000,
              blank = "Blank: sea level, with a check.",
              help = "Above sea level.")
          Double altitude,
      @Input(
              key = "intake",
              heading = "Air at intake",
              unit = ProjectTables.TEMPERATURE,
              min = -40,
              max = 200,
              blank = "Blank: 10 °C (18 °F) above the day's max. temperature.",
              help = "Behind sound screens it is hotter. The hotter of this and the day counts.")
          Double intake,
      @Input(
              key = "bond",
              heading = "Neutral bonded",
              blank = "Blank: not known, with a check.",
              help = "Where neutral and earth are bonded. Once, and only once.")
          NeutralBond bond,
      @Input(
              key = "tank",
              heading = "Tank",
              unit = ProjectTables.VOLUME,
              min = 0,
              max = 20_000,
              blank = "Blank: no time to refuel.",
              help = "Fuel that the tank holds.")
          Double tank,
      @Input(
              key = "fuelPrice",
              heading = "Fuel price",
              form = NumberForm.TWO_DECIMALS,
              min = 0,
              max = 1000,
              blank = "Blank: no cost.",
              help = "Price of a litre (US: a gallon), delivered.")
          Double fuelPrice,
      @Input(
              key = "fromDay",
              heading = "From day",
              blank = "Blank: first day.",
              help = "First day it runs.")
          LocalDate fromDay,
      @Input(
              key = "toDay",
              heading = "To day",
              blank = "Blank: last day.",
              help = "Last day it runs.")
          LocalDate toDay,
      @Input(
              key = "before",
              heading = "Before call",
              unit = "min",
              min = 0,
              max = 720,
              blank = "Blank: 30 min.",
              help = "Minutes that it runs before Call.")
          Double before,
      @Input(
              key = "after",
              heading = "After wrap",
              unit = "min",
              min = 0,
              max = 720,
              blank = "Blank: 30 min.",
              help = "Minutes that it runs after Wrap.")
          Double after,
      @Input(
              key = "offFrom",
              heading = "Off for sound from",
              unit = ProjectTables.CLOCK,
              min = 0,
              max = 1,
              blank = "Blank: not off.",
              help =
                  "Off in these hours."
                      + " A time before Call and before the Wrap of a night is the next morning.")
          Double offFrom,
      @Input(
              key = "offTo",
              heading = "Off for sound to",
              unit = ProjectTables.CLOCK,
              min = 0,
              max = 1,
              blank = "Blank: not off.",
              help = "On again. At or before Off for sound from: next morning.")
          Double offTo,
      @Input(
              key = "offMinutes",
              heading = "Also off for sound",
              unit = "min/day",
              min = 0,
              max = 1440,
              blank = "Blank: not off.",
              help = "Minutes a day besides those hours, such as all takes together.")
          Double offMinutes,
      @Input(
              key = "consumption",
              heading = "Fuel at 3/4 load",
              form = NumberForm.ONE_DECIMAL,
              unit = ProjectTables.CONSUMPTION,
              min = 0.1,
              max = 1000,
              blank = "Blank: by the usual chart for its size; there is none for petrol.",
              help = "The maker's consumption at three quarters of its rated kW.")
          Double consumption,
      @Input(
              key = "usable",
              heading = "Usable fuel",
              form = NumberForm.SHARE,
              min = 0.1,
              max = 1,
              blank = "Blank: 90 %.",
              help = "Share of the tank.")
          Double usable,
      @Input(
              key = "kva",
              heading = "Size",
              form = NumberForm.ONE_DECIMAL,
              unit = "kVA",
              min = 1,
              max = 5000,
              blank = "Blank: not decided, with a check; the proposed size counts.",
              help = "Nameplate, prime power.")
          Double kva) {}
}
