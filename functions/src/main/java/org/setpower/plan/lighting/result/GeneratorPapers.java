package org.setpower.plan.lighting.result;

import java.time.LocalDate;
import java.util.List;
import org.setpower.plan.common.NumberForm;
import org.setpower.plan.common.Phrase;
import org.setpower.plan.common.Result;
import org.setpower.plan.common.ResultTable;
import org.setpower.plan.common.Table;
import org.setpower.plan.finding.Finding;
import org.setpower.plan.finding.Verdict;
import org.setpower.plan.lighting.input.NeutralBond;
import org.setpower.plan.lighting.input.ProjectTables;

/** What the operator of a generator is handed. */
public final class GeneratorPapers {
  public static final ResultTable<SheetRow> SHEET_ROW =
      ResultTable.of(SheetRow.class, Source.PLAN_AND_SIZES);
  public static final ResultTable<NightRow> NIGHT_ROW =
      ResultTable.of(NightRow.class, Source.PLAN_AND_SIZES);

  private GeneratorPapers() {}

  /** A generator with what its operator connects and watches. */
  @Table(key = "sheet", heading = "Generators", rows = 8)
  public record SheetRow(
      @Result(key = "verdict", heading = "Status", rule = "The worst of Reasons.") Verdict verdict,
      @Result(key = "name", heading = "Generator", rule = "Name.") String name,
      @Result(key = "location", heading = "Location", rule = "From Sources & distro.")
          String location,
      @Result(
              key = "electrician",
              heading = "Responsible electrician",
              rule = "From Sources & distro.")
          String electrician,
      @Result(
              key = "size",
              heading = "Size",
              form = NumberForm.ONE_DECIMAL,
              unit = "kVA",
              rule = "As decided, else as proposed.")
          Double size,
      @Result(key = "breaker", heading = "Main breaker", rule = "Rating and curve.") String breaker,
      @Result(key = "rcd", heading = "RCD", rule = "Rating and type.") String rcd,
      @Result(key = "outlet", heading = "Outlet", rule = "Connectors of the cable runs from it.")
          String outlet,
      @Result(key = "bond", translated = true, heading = "Neutral bonded", rule = "As typed.")
          NeutralBond bond,
      @Result(
              key = "dayShown",
              heading = "Day shown",
              rule = "Whether it is off on the day shown; its figures are blank then.")
          Phrase dayShown,
      @Result(
              key = "amps1",
              heading = "L1",
              form = NumberForm.ONE_DECIMAL,
              unit = "A",
              rule = "Peak of L1, of the day shown or of all.")
          Double amps1,
      @Result(
              key = "amps2",
              heading = "L2",
              form = NumberForm.ONE_DECIMAL,
              unit = "A",
              rule = "Peak of L2.")
          Double amps2,
      @Result(
              key = "amps3",
              heading = "L3",
              form = NumberForm.ONE_DECIMAL,
              unit = "A",
              rule = "Peak of L3.")
          Double amps3,
      @Result(
              key = "neutral",
              heading = "Neutral",
              form = NumberForm.ONE_DECIMAL,
              unit = "A",
              rule = "Legs by vectors, third harmonics added.")
          Double neutral,
      @Result(
              key = "needed",
              heading = "With largest start",
              form = NumberForm.ONE_DECIMAL,
              unit = "kVA",
              rule = "Of all days: legs × the highest, with the start of one load.")
          Double needed,
      @Result(
              key = "left",
              heading = "After derating",
              form = NumberForm.ONE_DECIMAL,
              unit = "kVA",
              rule = "Size less what altitude and air take.")
          Double left,
      @Result(
              key = "share",
              heading = "Peak load",
              form = NumberForm.SHARE,
              rule = "Of what is left, at the peak of all days.")
          Double share,
      @Result(key = "refuelOn", heading = "Refuel by, day", rule = "Day of the next figure.")
          LocalDate refuelOn,
      @Result(
              key = "refuelAt",
              heading = "Refuel by",
              unit = ProjectTables.CLOCK,
              rule =
                  "Start before which to refuel, or when it is empty. Do not refuel while it runs.")
          Double refuelAt,
      @Result(key = "reasons", heading = "Reasons", rule = "What is wrong, worst first.")
          List<Finding> reasons) {}

  /** A day with its night on which a generator runs; its last columns are filled in by hand. */
  @Table(key = "nights", heading = "Running times and log", rows = 240)
  public record NightRow(
      @Result(key = "generator", heading = "Generator", rule = "Name.") String generator,
      @Result(key = "date", heading = "Date", rule = "Day on which the night begins.")
          LocalDate date,
      @Result(
              key = "start",
              heading = "On from",
              unit = ProjectTables.CLOCK,
              rule = "Before Call, as typed on Generator.")
          Double start,
      @Result(
              key = "stop",
              heading = "On to",
              unit = ProjectTables.CLOCK,
              rule = "After Wrap, as typed on Generator.")
          Double stop,
      @Result(
              key = "hours",
              heading = "Running",
              form = NumberForm.ONE_DECIMAL,
              unit = "h",
              rule = "Running, without the hours off for sound.")
          Double hours,
      @Result(
              key = "mean",
              heading = "Mean load",
              form = NumberForm.ONE_DECIMAL,
              unit = "kW",
              rule = "While it runs.")
          Double mean,
      @Result(
              key = "most",
              heading = "Peak load",
              form = NumberForm.ONE_DECIMAL,
              unit = "kW",
              rule = "Highest of the night.")
          Double most,
      @Result(
              key = "fuel",
              heading = "Fuel",
              form = NumberForm.ONE_DECIMAL,
              unit = ProjectTables.VOLUME,
              rule = "Of the night.")
          Double fuel,
      @Result(key = "meter", heading = "Hour meter", rule = "To fill in by hand: start and end.")
          String meter,
      @Result(key = "delivered", heading = "Delivered", rule = "To fill in by hand: fuel and time.")
          String delivered) {}
}
