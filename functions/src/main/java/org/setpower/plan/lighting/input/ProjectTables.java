package org.setpower.plan.lighting.input;

import java.time.LocalDate;
import org.setpower.cable.RatingRule;
import org.setpower.plan.common.Input;
import org.setpower.plan.common.InputTable;
import org.setpower.plan.common.NumberForm;
import org.setpower.plan.common.Table;

/** What holds for the whole plan: project, days, groups of loads, generators on offer. */
public final class ProjectTables {
  public static final InputTable<Project> PROJECT = InputTable.of(Project.class);
  public static final InputTable<ShootDay> DAYS = InputTable.of(ShootDay.class);
  public static final InputTable<LoadGroup> GROUPS = InputTable.of(LoadGroup.class);
  public static final InputTable<SizeOnOffer> SIZES = InputTable.of(SizeOnOffer.class);

  /** Unit of a length: the first in metric units, the second in US units. */
  public static final String LENGTH = "m|ft";

  public static final String TEMPERATURE = "°C|°F";
  public static final String VOLUME = "L|US gal";
  public static final String CONSUMPTION = "L/h|US gal/h";

  /** A time of the day, as cells hold it: a share of a day. */
  public static final String CLOCK = "hh:mm";

  private ProjectTables() {}

  /** What holds for the whole plan. */
  @Table(key = "project", heading = "Project", rows = 1, upright = true)
  public record Project(
      @Input(
              key = "units",
              heading = "Units",
              help = "Units of every length, temperature and volume typed in this plan.")
          MeasureSystem units,
      @Input(
              key = "rule",
              heading = "Rating rule",
              blank = "Blank: BS 7671 for mm², NEC for AWG.",
              help = "Tables by which cables are rated. Sizes in AWG always go by the NEC.")
          RatingRule rule,
      @Input(
              key = "installation",
              heading = "Default installation",
              blank = "Blank: bunched 2, with a check.",
              help = "How cables lie: free, bunched 2 to 20, drum 1 to 4 layers, radial drum.")
          String installation,
      @Input(
              key = "maxDrop",
              heading = "Max. voltage drop",
              form = NumberForm.SHARE,
              min = 0.001,
              max = 0.5,
              blank = "Blank: 5 %.",
              help = "From the source to the load.")
          Double maxDrop,
      @Input(
              key = "dayShown",
              heading = "Day shown",
              blank = "Blank: all days, the worst figures.",
              help = "Currents and times are those of this day. Status always counts all days.")
          LocalDate dayShown,
      @Input(
              key = "spareCable",
              heading = "Spare cable",
              form = NumberForm.SHARE,
              min = 0,
              max = 1,
              blank = "Blank: none.",
              help = "Share of spare pieces of cable and adaptors in the order, rounded up.")
          Double spareCable,
      @Input(
              key = "headroom",
              heading = "Generator headroom",
              form = NumberForm.SHARE,
              min = 0,
              max = 1,
              blank = "Blank: 20 %.",
              help = "Share that a generator is larger than its peak load.")
          Double headroom,
      @Input(
              key = "maxImbalance",
              heading = "Max. leg difference",
              form = NumberForm.SHARE,
              min = 0,
              max = 1,
              blank = "Blank: 25 %, common practice.",
              help =
                  "Of a generator: its highest leg less its lowest, as a share of the rated current of"
                      + " a leg. Makers state it.")
          Double maxImbalance,
      @Input(
              key = "tablesCompared",
              heading = "Ratings compared by",
              blank = "Blank: a check for each table whose ratings are from memory.",
              help = "Who compared ratings from memory with the standard, and when.")
          String tablesCompared) {}

  /** A day, or a place of a day with two. */
  @Table(key = "days", heading = "Days", rows = 30)
  public record ShootDay(
      @Input(key = "date", heading = "Date", help = "A day with two places has two rows.")
          LocalDate date,
      @Input(
              key = "call",
              heading = "Call",
              unit = CLOCK,
              min = 0,
              max = 1,
              blank = "Blank: 00:00.",
              help =
                  "Loads without a time are on from here. A night is one day: its times after"
                      + " midnight belong to the day on which it begins.")
          Double call,
      @Input(
              key = "wrap",
              heading = "Wrap",
              unit = CLOCK,
              min = 0,
              max = 1,
              blank = "Blank: 24:00.",
              help = "Loads without a time are on until here. At or before Call: next morning.")
          Double wrap,
      @Input(
              key = "warmest",
              heading = "Max. temperature",
              unit = TEMPERATURE,
              min = -40,
              max = 200,
              blank = "Blank: 30 °C (86 °F), with a check.",
              help = "Cables and generators carry less in the heat.")
          Double warmest,
      @Input(
              key = "coldest",
              heading = "Min. temperature",
              unit = TEMPERATURE,
              min = -60,
              max = 200,
              blank = "Blank: 10 °C (18 °F) below the max. temperature.",
              help = "Diesel and cold engines need care in the frost.")
          Double coldest) {}

  /** Loads that are switched together. */
  @Table(key = "groups", heading = "Groups", rows = 20)
  public record LoadGroup(
      @Input(key = "group", heading = "Group", help = "A scene or a set, as Loads names it.")
          String group,
      @Input(
              key = "on",
              heading = "Counted",
              blank = "Blank: yes.",
              help = "no leaves the loads of the group out of the plan.")
          Boolean on) {}

  /** A generator that the rental house has. */
  @Table(key = "sizes", heading = "Generators on offer", rows = 8)
  public record SizeOnOffer(
      @Input(
              key = "kva",
              heading = "Size on offer",
              form = NumberForm.ONE_DECIMAL,
              unit = "kVA",
              min = 1,
              max = 5000,
              help = "Nameplate of a generator that can be hired.")
          Double kva) {}
}
