package org.setpower.plan.lighting.input;

import org.setpower.plan.common.Input;
import org.setpower.plan.common.InputTable;
import org.setpower.plan.common.NumberForm;
import org.setpower.plan.common.Table;

/** Cables: runs that are laid, and stock. */
public final class CableTables {
  public static final InputTable<Run> RUNS = InputTable.of(Run.class);
  public static final InputTable<CableStock> STOCK = InputTable.of(CableStock.class);
  public static final InputTable<Comparison> COMPARISON = InputTable.of(Comparison.class);

  private CableTables() {}

  /** A cable from a place to a distro, or to an end that loads name. */
  @Table(key = "runs", heading = "Cable runs", rows = 100)
  public record Run(
      @Input(key = "to", heading = "Destination", help = "Distro it feeds, or a name for its end.")
          String to,
      @Input(
              key = "from",
              heading = "From",
              help = "Source, outlet such as A1-3, or the end of another cable run.")
          String from,
      @Input(
              key = "length",
              heading = "Length",
              form = NumberForm.ONE_DECIMAL,
              unit = ProjectTables.LENGTH,
              min = 0.1,
              max = 5000,
              help = "One way.")
          Double length,
      @Input(
              key = "size",
              heading = "Size",
              help = "As on the sheath: 2.5 mm², H07RN-F 5G2.5, 3 × 1.5, 12 AWG, 12/3, 4/0.")
          String size,
      @Input(key = "type", heading = "Type", help = "What the cable is made as.") CableType type,
      @Input(
              key = "cores",
              heading = "Cores",
              blank = "Blank: as Size says, else what the outlet needs.",
              help = "Conductors with earth; 5 single is a set of single-core cables.")
          CoreSet cores,
      @Input(
              key = "pieces",
              heading = "Pieces",
              blank = "Blank: one piece of the length.",
              help = "Lengths of the pieces, such as 20+25.")
          String pieces,
      @Input(
              key = "installation",
              heading = "Installation",
              blank = "Blank: as on Project.",
              help = "free, bunched 2 to 20, drum 1 to 4 layers, radial drum.")
          String installation,
      @Input(
              key = "temperatureClass",
              heading = "Temperature class",
              unit = "°C",
              blank = "Blank: 60 °C.",
              help = "Conductor temperature that the cable is marked for.")
          TemperatureClass temperatureClass,
      @Input(
              key = "air",
              heading = "Air",
              unit = ProjectTables.TEMPERATURE,
              min = -40,
              max = 200,
              blank = "Blank: max. temperature of the days in use.",
              help = "Air around the cable, where it is not that of the day.")
          Double air,
      @Input(
              key = "parallel",
              heading = "Parallel",
              min = 1,
              max = 12,
              blank = "Blank: 1.",
              help = "Equal cables of the same length side by side.")
          Double parallel,
      @Input(
              key = "connector",
              heading = "Connector",
              blank = "Blank: as the outlet.",
              help = "Both ends. Another one than the outlet's needs an adaptor.")
          Connector connector,
      @Input(
              key = "makersRating",
              heading = "Maker's rating",
              form = NumberForm.ONE_DECIMAL,
              unit = "A",
              min = 1,
              max = 6000,
              blank = "Blank: the table of the rating rule.",
              help = "At 30 °C, laid singly. It is derated like the table.")
          Double makersRating,
      @Input(
              key = "ratingSource",
              heading = "Source of rating",
              blank = "Blank: the maker's rating does not count.",
              help = "Data sheet that gives the maker's rating.")
          String ratingSource) {}

  /** Cable that there is. */
  @Table(key = "cableStock", heading = "Cable stock", rows = 40)
  public record CableStock(
      @Input(key = "type", heading = "Type", help = "What the cable is made as.") CableType type,
      @Input(key = "size", heading = "Size", help = "As on the sheath: 2.5 mm², 12 AWG, 4/0.")
          String size,
      @Input(
              key = "cores",
              heading = "Cores",
              blank = "Blank: as Size says, else single cores.",
              help = "Conductors with earth.")
          CoreSet cores,
      @Input(
              key = "length",
              heading = "Length",
              form = NumberForm.ONE_DECIMAL,
              unit = ProjectTables.LENGTH,
              min = 0.1,
              max = 5000,
              help = "Length of a piece.")
          Double length,
      @Input(
              key = "pieces",
              heading = "In stock",
              unit = "pcs",
              min = 0,
              max = 10_000,
              help = "Pieces of this cable.")
          Double pieces) {}

  /** A system on which the same power is compared over the same cable. */
  @Table(key = "comparison", heading = "Voltage comparison", rows = 8)
  public record Comparison(
      @Input(key = "system", heading = "System", help = "1PH, split (120/240 V) or 3PH.")
          SupplySystem system,
      @Input(
              key = "volts",
              heading = "Voltage",
              unit = "V",
              min = 90,
              max = 700,
              help = "Line to line; on 1PH line to neutral.")
          Double volts,
      @Input(
              key = "watts",
              heading = "Power",
              unit = "W",
              min = 1,
              max = 1e6,
              blank = "Blank: as in the row above; in the first a stop.",
              help = "At the end of the cable, on all legs alike.")
          Double watts,
      @Input(
              key = "length",
              heading = "Length",
              form = NumberForm.ONE_DECIMAL,
              unit = ProjectTables.LENGTH,
              min = 0.1,
              max = 5000,
              blank = "Blank: as in the row above; in the first a stop.",
              help = "One way.")
          Double length,
      @Input(
              key = "size",
              heading = "Size",
              blank = "Blank: as in the row above; in the first a stop.",
              help = "As on the sheath: 2.5 mm², 5G2.5, 12 AWG, 4/0.")
          String size) {}
}
