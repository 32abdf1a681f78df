package org.setpower.plan.lighting.result;

import java.time.LocalDate;
import java.time.LocalTime;
import java.util.List;
import org.setpower.plan.common.IssueRow;
import org.setpower.plan.common.NumberForm;
import org.setpower.plan.common.Phrase;
import org.setpower.plan.common.Result;
import org.setpower.plan.common.ResultTable;
import org.setpower.plan.common.Table;
import org.setpower.plan.finding.Finding;
import org.setpower.plan.finding.Verdict;
import org.setpower.plan.lighting.input.ProjectTables;

/** Lists that a lighting power plan hands out. */
public final class LightingPapers {
  private static final List<String> ORDER =
      List.of(
          Source.PROJECT,
          Source.DAYS,
          Source.GROUPS,
          Source.SUPPLIES,
          Source.OUTLETS,
          Source.RUNS,
          Source.LOADS,
          Source.EQUIPMENT,
          Source.GENERATORS,
          Source.STOCK,
          Source.BATTERY_TYPES,
          Source.BATTERY_LOADS,
          Source.BATTERY_CHARGERS);

  public static final ResultTable<Summary> SUMMARY = ResultTable.of(Summary.class, Source.PLAN);
  public static final ResultTable<IssueRow> ISSUES =
      IssueRow.table(
          120,
          Source.PROJECT,
          Source.DAYS,
          Source.GROUPS,
          Source.SUPPLIES,
          Source.OUTLETS,
          Source.RUNS,
          Source.LOADS,
          Source.EQUIPMENT,
          Source.GENERATORS,
          Source.SIZES,
          Source.STOCK,
          Source.READINGS,
          Source.COMPARISON,
          Source.BATTERY_TYPES,
          Source.BATTERY_LOADS,
          Source.BATTERY_CHARGERS);
  public static final ResultTable<PlaceRow> PLACE_ROW = ResultTable.of(PlaceRow.class, Source.PLAN);
  public static final ResultTable<PluggingRow> PLUGGING_ROW =
      ResultTable.of(PluggingRow.class, Source.PLAN);
  public static final ResultTable<PullRow> PULL_ROW = ResultTable.of(PullRow.class, Source.PLAN);
  public static final ResultTable<LengthRow> LENGTH_ROW =
      ResultTable.of(LengthRow.class, Source.PLAN);
  public static final ResultTable<LabelRow> LABEL_ROW = ResultTable.of(LabelRow.class, Source.PLAN);
  public static final ResultTable<LegRow> LEG_ROW = ResultTable.of(LegRow.class, Source.PLAN);
  public static final ResultTable<BalanceRow> BALANCE_ROW =
      ResultTable.of(BalanceRow.class, Source.PLAN);
  public static final ResultTable<OrderRow> ORDER_ROW = ResultTable.of(OrderRow.class, ORDER);
  public static final ResultTable<HourRow> HOUR_ROW = ResultTable.of(HourRow.class, Source.PLAN);
  public static final ResultTable<ComparisonRow> COMPARISON_ROW =
      ResultTable.of(ComparisonRow.class);

  private LightingPapers() {}

  /** Counts of the plan. */
  @Table(key = "summary", heading = "Summary", rows = 1, upright = true)
  public record Summary(
      @Result(
              key = "verdict",
              heading = "Status",
              from = {
                Source.PROJECT,
                Source.DAYS,
                Source.GROUPS,
                Source.SUPPLIES,
                Source.OUTLETS,
                Source.RUNS,
                Source.LOADS,
                Source.EQUIPMENT,
                Source.GENERATORS,
                Source.SIZES,
                Source.STOCK,
                Source.READINGS,
                Source.COMPARISON,
                Source.BATTERY_TYPES,
                Source.BATTERY_LOADS,
                Source.BATTERY_CHARGERS
              },
              rule = "The worst of all issues.")
          Verdict verdict,
      @Result(
              key = "stops",
              heading = "Stops",
              from = {
                Source.PROJECT,
                Source.DAYS,
                Source.GROUPS,
                Source.SUPPLIES,
                Source.OUTLETS,
                Source.RUNS,
                Source.LOADS,
                Source.EQUIPMENT,
                Source.GENERATORS,
                Source.SIZES,
                Source.STOCK,
                Source.READINGS,
                Source.COMPARISON,
                Source.BATTERY_TYPES,
                Source.BATTERY_LOADS,
                Source.BATTERY_CHARGERS
              },
              rule = "Issues that are a stop.")
          int stops,
      @Result(
              key = "checks",
              heading = "Checks",
              from = {
                Source.PROJECT,
                Source.DAYS,
                Source.GROUPS,
                Source.SUPPLIES,
                Source.OUTLETS,
                Source.RUNS,
                Source.LOADS,
                Source.EQUIPMENT,
                Source.GENERATORS,
                Source.SIZES,
                Source.STOCK,
                Source.READINGS,
                Source.COMPARISON,
                Source.BATTERY_TYPES,
                Source.BATTERY_LOADS,
                Source.BATTERY_CHARGERS
              },
              rule = "Issues to check.")
          int checks,
      @Result(
              key = "loadsFit",
              heading = "Loads on papers",
              rule = "Rows of Loads that papers print.")
          int loadsFit,
      @Result(
              key = "loadsWithheld",
              heading = "Loads not on papers",
              rule = "Rows of Loads that papers do not print as fit.")
          int loadsWithheld,
      @Result(
              key = "runsFit",
              heading = "Cable runs on papers",
              rule = "Rows of Cable runs that papers print.")
          int runsFit,
      @Result(
              key = "runsWithheld",
              heading = "Cable runs not on papers",
              rule = "Rows of Cable runs that papers do not print as fit.")
          int runsWithheld,
      @Result(
              key = "power",
              heading = "Power",
              unit = "W",
              rule = "The most that is on at one time, of the day shown or of all.")
          double power,
      @Result(key = "day", heading = "Shown", rule = "Day shown of Project.") Phrase day,
      @Result(
              key = "period",
              heading = "Days of the plan",
              from = Source.DAYS,
              rule = "First and last day of Days.")
          Phrase period) {}

  /** An outlet in use, for whoever plugs and measures. */
  @Table(key = "distribution", heading = "Distribution", rows = 200)
  public record PlaceRow(
      @Result(key = "distro", heading = "Distro", rule = "Whose outlet it is.") String distro,
      @Result(key = "place", heading = "Outlet", rule = "Outlets in use, by distro.") String place,
      @Result(key = "connector", heading = "Connector", rule = "Of the outlet.") String connector,
      @Result(
              key = "breaker",
              heading = "Breaker",
              unit = "A",
              rule = "The smallest from here to the source.")
          Double breaker,
      @Result(key = "rcd", heading = "RCD", unit = "mA", rule = "Nearest on the way to the source.")
          Double rcd,
      @Result(key = "plugged", heading = "Plugged", rule = "Cable run or loads that are fit.")
          String plugged,
      @Result(key = "legs", heading = "Leg", rule = "Legs that its loads hang on.") String legs,
      @Result(
              key = "amps",
              heading = "Current",
              form = NumberForm.ONE_DECIMAL,
              unit = "A",
              rule = "Peak of the leg that carries most.")
          Double amps,
      @Result(
              key = "neutral",
              heading = "Neutral",
              form = NumberForm.ONE_DECIMAL,
              unit = "A",
              rule = "Legs by vectors, third harmonics added.")
          Double neutral,
      @Result(key = "clamp", heading = "Measured", unit = "A", rule = "To fill in by hand.")
          String clamp,
      @Result(
              key = "withheld",
              heading = "Not on paper",
              rule = "Rows of Loads and Cable runs on it that are not fit.")
          int withheld,
      @Result(
              key = "nights",
              heading = "Days",
              rule = "Days on which it feeds something; blank with a day shown.")
          Phrase nights,
      @Result(
              key = "upstream",
              heading = "Stop upstream",
              rule = "What feeds it and is a stop; blank without one.")
          String upstream) {}

  /** A load that is fit, by its place. */
  @Table(key = "plugging", heading = "Loads by outlet", rows = 200)
  public record PluggingRow(
      @Result(key = "place", heading = "Place", rule = "As typed.") String place,
      @Result(key = "outlet", heading = "Outlet", rule = "Where its cable or its plug goes in.")
          String outlet,
      @Result(
              key = "breaker",
              heading = "Breaker",
              unit = "A",
              rule = "The smallest from here to the source.")
          Double breaker,
      @Result(key = "cable", heading = "Cable", rule = "Cable runs between outlet and load.")
          String cable,
      @Result(key = "item", heading = "Item", rule = "As typed.") String item,
      @Result(key = "quantity", heading = "Qty", unit = "pcs", rule = "As typed.") double quantity,
      @Result(key = "legs", heading = "Leg", rule = "Of the outlet, decided, or suggested.")
          String legs,
      @Result(
              key = "amps",
              heading = "Current",
              form = NumberForm.ONE_DECIMAL,
              unit = "A",
              rule = "Of one leg.")
          Double amps,
      @Result(key = "department", heading = "Department", rule = "As typed.") String department,
      @Result(key = "location", heading = "Location", rule = "As typed.") String location,
      @Result(key = "verdict", heading = "Status", rule = "Of its row.") Verdict verdict,
      @Result(
              key = "protectedOutlet",
              heading = "Outlet",
              rule = "Where its cable or its plug goes in, with the smallest breaker upstream.")
          Phrase protectedOutlet,
      @Result(
              key = "device",
              heading = "Item",
              rule = "As typed, with what feeds it and is a stop.")
          Phrase device,
      @Result(
              key = "on",
              heading = "Days, times",
              rule = "Days and times of its row; blank: all that the paper is of.")
          Phrase on,
      @Result(key = "tick", heading = "Done", rule = "A box to tick.") String tick,
      @Result(
              key = "upstream",
              heading = "Stop upstream",
              rule = "What feeds it and is a stop; blank without one.")
          String upstream) {}

  /** A cable run that is fit, for whoever lays it. */
  @Table(key = "pull", heading = "Cable pull", rows = 100)
  public record PullRow(
      @Result(key = "to", heading = "Destination", rule = "As typed.") String to,
      @Result(key = "from", heading = "From", rule = "As typed.") String from,
      @Result(
              key = "length",
              heading = "Length",
              form = NumberForm.ONE_DECIMAL,
              unit = ProjectTables.LENGTH,
              rule = "As typed.")
          Double length,
      @Result(key = "pieces", heading = "Pieces", rule = "As typed.") String pieces,
      @Result(key = "size", heading = "Size", rule = "As typed.") String size,
      @Result(key = "cores", heading = "Cores", rule = "As typed, or what the outlet needs.")
          String cores,
      @Result(
              key = "cable",
              heading = "Cable",
              rule =
                  "Size, with cores where it names none; pieces as typed; what to connect first.")
          Phrase cable,
      @Result(
              key = "singles",
              translated = true,
              heading = "Connect earth first",
              rule =
                  "Single-core cables: earth, neutral, legs; disconnect in reverse (NEC 520.53,"
                      + " from memory). Blank for others.")
          Boolean singles,
      @Result(
              key = "end",
              heading = "Destination",
              rule = "As typed, and where the distro or the loads at its end stand.")
          Phrase end,
      @Result(
              key = "laying",
              heading = "Installation",
              rule = "What its rating rests on: as typed, else of Project.")
          Phrase laying,
      @Result(
              key = "feeds",
              heading = "Feeds",
              rule =
                  "Loads at its end that are fit; of a distro, how many of its outlets are used."
                      + " What feeds it and is a stop.")
          Phrase feeds,
      @Result(
              key = "location",
              heading = "Location",
              rule = "Where the distro or the loads at its end stand.")
          String location,
      @Result(key = "verdict", heading = "Status", rule = "Of its row.") Verdict verdict,
      @Result(
              key = "connector",
              heading = "Connectors",
              rule = "As typed, of its outlet, or what its source needs.")
          String connector,
      @Result(
              key = "nights",
              heading = "Days",
              rule = "Days on which it feeds something; blank with a day shown.")
          Phrase nights,
      @Result(key = "tick", heading = "Laid", rule = "A box to tick.") String tick,
      @Result(
              key = "upstream",
              heading = "Stop upstream",
              rule = "What feeds it and is a stop; blank without one.")
          String upstream) {}

  /** Cable of a size, all runs together. */
  @Table(key = "lengths", heading = "Cable by size", rows = 40)
  public record LengthRow(
      @Result(key = "size", heading = "Size", rule = "Sizes in order.") String size,
      @Result(key = "cores", heading = "Cores", rule = "Of the runs.") String cores,
      @Result(
              key = "length",
              heading = "Length",
              form = NumberForm.ONE_DECIMAL,
              unit = ProjectTables.LENGTH,
              rule = "All runs together, times Parallel.")
          double length,
      @Result(key = "runs", heading = "Cable runs", unit = "pcs", rule = "How many.") int runs) {}

  /** A row of the label of a distro. */
  @Table(key = "labels", heading = "Distro labels", rows = 240)
  public record LabelRow(
      @Result(key = "kind", heading = "Type", rule = "name, line, outlet, stop or caution.")
          String kind,
      @Result(
              key = "place",
              heading = "Distro",
              rule = "Name of the distro, then its outlets in use.")
          String place,
      @Result(key = "plugged", heading = "Plugged in", rule = "What is plugged in and fit.")
          Phrase plugged,
      @Result(key = "legs", heading = "Legs", rule = "Of the outlet.") String legs,
      @Result(key = "breaker", heading = "Breaker", unit = "A", rule = "Of the outlet.")
          Double breaker,
      @Result(key = "rcd", heading = "RCD", unit = "mA", rule = "The one nearest to the outlet.")
          Double rcd,
      @Result(
              key = "amps",
              heading = "Current",
              form = NumberForm.ONE_DECIMAL,
              unit = "A",
              rule = "Peak of the outlet.")
          Double amps) {}

  /** Legs of a source or a distro, sources first. */
  @Table(key = "legs", heading = "Legs", rows = 40)
  public record LegRow(
      @Result(key = "verdict", heading = "Status", rule = "Status on Sources & distro.")
          Verdict verdict,
      @Result(
              key = "name",
              heading = "Source or distro",
              from = {Source.SUPPLIES},
              rule = "Name.")
          String name,
      @Result(
              key = "type",
              heading = "Type",
              from = {Source.SUPPLIES},
              rule = "Type.")
          String type,
      @Result(
              key = "amps1",
              heading = "L1",
              form = NumberForm.ONE_DECIMAL,
              unit = "A",
              rule = "Peak of L1, whenever it is: loads by power factor and pairs by vectors.")
          Double amps1,
      @Result(
              key = "amps2",
              heading = "L2",
              form = NumberForm.ONE_DECIMAL,
              unit = "A",
              rule = "Peak of L2, whenever it is.")
          Double amps2,
      @Result(
              key = "amps3",
              heading = "L3",
              form = NumberForm.ONE_DECIMAL,
              unit = "A",
              rule = "Peak of L3, whenever it is.")
          Double amps3,
      @Result(
              key = "neutral",
              heading = "Neutral",
              form = NumberForm.ONE_DECIMAL,
              unit = "A",
              rule = "Legs by vectors, third harmonics added.")
          Double neutral,
      @Result(
              key = "imbalance",
              heading = "Imbalance",
              form = NumberForm.SHARE,
              rule = "Largest deviation of a leg from the mean, over the mean.")
          Double imbalance,
      @Result(
              key = "available",
              heading = "Available",
              form = NumberForm.ONE_DECIMAL,
              unit = "A/leg",
              rule =
                  "The smallest of its own and all upstream breakers, less what others take there.")
          Double available,
      @Result(
              key = "headroom",
              heading = "Headroom",
              form = NumberForm.ONE_DECIMAL,
              unit = "A/leg",
              rule = "Available less the leg that carries most.")
          Double headroom,
      @Result(key = "peakDate", heading = "Peak on", rule = "Date of the peak of the busiest leg.")
          LocalDate peakDate,
      @Result(
              key = "peakAt",
              heading = "Peak at",
              unit = ProjectTables.CLOCK,
              rule = "Time at which the peak of the busiest leg begins.")
          Double peakAt) {}

  /** A proposed exchange. */
  @Table(key = "balance", heading = "Load balance", rows = 40)
  public record BalanceRow(
      @Result(key = "supply", heading = "Source or distro", rule = "Where legs are uneven.")
          String supply,
      @Result(key = "item", heading = "Item", rule = "On the leg that carries most.") String item,
      @Result(key = "place", heading = "Place", rule = "Of the item.") String place,
      @Result(key = "fromLeg", heading = "From", rule = "Its leg now.") String fromLeg,
      @Result(key = "otherItem", heading = "Exchange with", rule = "Blank: it moves alone.")
          String otherItem,
      @Result(key = "otherPlace", heading = "Place", rule = "Of the other item.") String otherPlace,
      @Result(key = "toLeg", heading = "To leg", rule = "Where it goes.") String toLeg,
      @Result(
              key = "before",
              heading = "Peak now",
              form = NumberForm.ONE_DECIMAL,
              unit = "A",
              rule = "Of the leg that carries most.")
          double before,
      @Result(
              key = "after",
              heading = "Peak then",
              form = NumberForm.ONE_DECIMAL,
              unit = "A",
              rule = "The exchange that lowers it most.")
          double after) {}

  /** Something to order. */
  @Table(key = "order", heading = "Order list", rows = 200)
  public record OrderRow(
      @Result(
              key = "kind",
              heading = "Type",
              rule = "generator, distro, cable, adaptor, splitter, battery or load.")
          String kind,
      @Result(
              key = "what",
              heading = "Item",
              rule =
                  "Generator, distro with outlets, type of cable, connectors of an adaptor,"
                      + " device.")
          String what,
      @Result(
              key = "size",
              heading = "Size",
              rule = "Of a cable; kVA of a generator; main breaker of a distro.")
          String size,
      @Result(
              key = "cores",
              heading = "Cores",
              rule = "Of a cable; the conductor of a set of single-core cables.")
          String cores,
      @Result(key = "article", heading = "Item", rule = "The same, with the breaker of an adaptor.")
          Phrase article,
      @Result(
              key = "cable",
              heading = "Size and cores",
              rule = "Of a cable; its size alone for others.")
          Phrase cable,
      @Result(key = "connector", heading = "Connectors", rule = "Both ends.") String connector,
      @Result(
              key = "length",
              heading = "Length",
              form = NumberForm.ONE_DECIMAL,
              unit = ProjectTables.LENGTH,
              rule = "Of a piece.")
          Double length,
      @Result(
              key = "required",
              heading = "Required",
              unit = "pcs",
              rule = "Pieces of all cable runs; devices that are on at once.")
          int required,
      @Result(key = "spare", heading = "Spare", unit = "pcs", rule = "Rounded up.") int spare,
      @Result(
              key = "stock",
              heading = "In stock",
              unit = "pcs",
              rule = "From Cable stock and Equipment.")
          Double stock,
      @Result(
              key = "short",
              heading = "Short",
              unit = "pcs",
              rule = "Required and spare, less stock.")
          double shortOf,
      @Result(
              key = "breaker",
              heading = "With breaker",
              unit = "A",
              rule = "A plug made for less than the upstream breaker needs one.")
          Double breaker) {}

  /** The load of the generators hour by hour, for the chart: every hour of the day. */
  @Table(key = "hours", heading = "Load by hour", rows = 24)
  public record HourRow(
      @Result(
              key = "at",
              heading = "Time",
              rule = "The hour that begins, in the order of the day and its night.")
          LocalTime at,
      @Result(
              key = "first",
              heading = "Generator 1",
              form = NumberForm.ONE_DECIMAL,
              unit = "kW",
              rule =
                  "Mean load of the hour on its day of most energy: the first generator by name.")
          Double first,
      @Result(
              key = "second",
              heading = "Generator 2",
              form = NumberForm.ONE_DECIMAL,
              unit = "kW",
              rule =
                  "Mean load of the hour on its day of most energy: the second generator by name.")
          Double second,
      @Result(
              key = "third",
              heading = "Generator 3",
              form = NumberForm.ONE_DECIMAL,
              unit = "kW",
              rule =
                  "Mean load of the hour on its day of most energy: the third generator by name.")
          Double third,
      @Result(
              key = "fourth",
              heading = "Generator 4",
              form = NumberForm.ONE_DECIMAL,
              unit = "kW",
              rule =
                  "Mean load of the hour on its day of most energy: the fourth generator by name.")
          Double fourth) {}

  /** The same power over the same cable on another system. */
  @Table(key = "comparison", heading = "Voltage comparison", rows = 8)
  public record ComparisonRow(
      @Result(
              key = "verdict",
              heading = "Status",
              from = "comparison.reasons",
              rule = "The worst of the reasons.")
          Verdict verdict,
      @Result(
              key = "reasons",
              heading = "Reason",
              from = {Source.PROJECT, Source.COMPARISON},
              rule = "What is wrong with the row.")
          List<Finding> reasons,
      @Result(
              key = "amps",
              heading = "Current",
              form = NumberForm.ONE_DECIMAL,
              unit = "A",
              from = {Source.PROJECT, Source.COMPARISON},
              rule = "Of a leg at power factor 1: LOAD.AMPS.")
          Double amps,
      @Result(
              key = "drop",
              heading = "Voltage drop",
              form = NumberForm.ONE_DECIMAL,
              unit = "V",
              from = {Source.PROJECT, Source.COMPARISON},
              rule = "CABLE.DROP of the cable, loaded and warm.")
          Double drop,
      @Result(
              key = "share",
              heading = "Share",
              form = NumberForm.FINE_SHARE,
              from = {Source.PROJECT, Source.COMPARISON},
              rule = "Voltage drop over the voltage.")
          Double share,
      @Result(
              key = "loss",
              heading = "Lost as heat",
              unit = "W",
              from = {Source.PROJECT, Source.COMPARISON},
              rule = "Power that warms the cable.")
          Double loss) {}
}
