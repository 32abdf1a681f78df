package org.setpower.pack;

import java.util.Arrays;
import java.util.List;
import org.setpower.base.ReferenceTable;
import org.setpower.base.TextEnum;

/** What the cells of a pack are made of. */
public enum Chemistry implements TextEnum {
  /** 4.2 V class lithium-ion: NMC, and where nothing more is known. */
  LI_ION("Li-ion", "NMC", "lithium-ion"),
  /** Lithium iron phosphate. */
  LFP("LFP", "LiFePO4"),
  NIMH("NiMH"),
  LEAD("lead", "lead-acid", "Pb"),
  /** Lithium nickel cobalt aluminium oxide: a Li-ion with more resistance in the cold. */
  NCA("NCA");

  private final String word;
  private final List<String> alsoWritten;

  Chemistry(String word, String... alsoWritten) {
    this.word = word;
    this.alsoWritten = List.of(alsoWritten);
  }

  @Override
  public String word() {
    return word;
  }

  @Override
  public List<String> alsoWritten() {
    return alsoWritten;
  }

  /** What it is judged and charged as, and where it has no figures of its own: NCA is a Li-ion. */
  public Chemistry family() {
    return this == NCA ? LI_ION : this;
  }

  /** Ω · Ah of one cell at 25 °C under a sustained load when its resistance is not known. */
  public double usualOhmAmpHours() {
    return Cells.USUAL[ordinal()];
  }

  /** Share of its rated amp-hours that a new cell holds at least. */
  double newShare() {
    return Cells.NEW[ordinal()];
  }

  /**
   * Cells in series of a pack by the nominal volts of its label, or null where these do not tell:
   * labels count with one of two volts a cell.
   */
  public Double cells(double volts) {
    double most = Math.rint(volts / Cells.NOMINAL[ordinal()]);
    double least = Math.rint(volts / Cells.NOMINAL_HIGH[ordinal()]);
    return most == least && most >= 1 ? (Double) most : null;
  }

  /** Volts of a cell just off the charger. */
  public double fullVolts() {
    return Cells.FULL[ordinal()];
  }

  /** Volts of a cell, at the terminals, at which a pack switches itself off. */
  public double floorVolts() {
    return Cells.FLOOR[ordinal()];
  }

  /** °C above which cells are not used. */
  public double hottest() {
    return Cells.HOTTEST[ordinal()];
  }

  /** The figures of the cells, read at first use. */
  private static final class Cells {
    static final double[] FULL = column("full");
    static final double[] FLOOR = column("floor");
    static final double[] HOTTEST = column("hottest");
    static final double[] USUAL = column("usual");
    static final double[] NEW = column("new");
    static final double[] NOMINAL = column("nominal");
    static final double[] NOMINAL_HIGH = column("nominal high");

    private static double[] column(String quantity) {
      List<ReferenceTable.Row> rows =
          ReferenceTable.read(Chemistry.class, "chemistry.csv").stream()
              .filter(r -> r.text("quantity").equals(quantity))
              .toList();
      return Arrays.stream(values())
          .mapToDouble(c -> c.rows(rows).get(0).number("value"))
          .toArray();
    }
  }

  /** Of the rows of a table those of this chemistry; of its family if it has none. */
  List<ReferenceTable.Row> rows(List<ReferenceTable.Row> table) {
    List<ReferenceTable.Row> own =
        table.stream().filter(r -> r.text("chemistry").equals(word)).toList();
    return own.isEmpty() && family() != this ? family().rows(table) : own;
  }
}
