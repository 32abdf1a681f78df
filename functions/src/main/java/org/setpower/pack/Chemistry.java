package org.setpower.pack;

import java.util.Arrays;
import java.util.List;
import org.setpower.base.ReferenceTable;
import org.setpower.base.TextEnum;

/** What the cells of a pack are made of. */
public enum Chemistry implements TextEnum {
  /** 4.2 V class lithium-ion: NMC, NCA. */
  LI_ION("Li-ion", "NMC", "NCA", "lithium-ion"),
  /** Lithium iron phosphate. */
  LFP("LFP", "LiFePO4"),
  NIMH("NiMH"),
  LEAD("lead", "lead-acid", "Pb");

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

    private static double[] column(String quantity) {
      List<ReferenceTable.Row> rows = ReferenceTable.read(Chemistry.class, "chemistry.csv");
      return Arrays.stream(values())
          .mapToDouble(
              c ->
                  rows.stream()
                      .filter(r -> r.text("chemistry").equals(c.word))
                      .filter(r -> r.text("quantity").equals(quantity))
                      .findFirst()
                      .orElseThrow()
                      .number("value"))
          .toArray();
    }
  }
}
