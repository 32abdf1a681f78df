package org.setpower.bench;

import com.sun.star.container.XNameContainer;
import com.sun.star.script.XLibraryContainer;
import com.sun.star.uno.UnoRuntime;
import java.io.IOException;
import java.util.Locale;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.setpower.office.Office;
import org.setpower.pack.Chemistry;
import org.setpower.pack.OpenCircuit;

/** A discharge as one call, against the same stepped in Basic and in a grid of native formulas. */
final class DischargeBench {
  private static final int COPIES = 20;
  private static final int ROWS = 200;
  private static final int FEW_ROWS = 20;
  private static final int ROUNDS = 9;
  private static final int GRID_COLUMNS = 8;
  private static final double STEP_HOURS = 3.1873 / (ROWS - 1);
  private static final double SAME = 0.02;
  private static final double STEP_SECONDS = 10;
  private static final OpenCircuit CURVE = OpenCircuit.of(Chemistry.LI_ION);
  private static final int POINTS = CURVE.segments() + 1;

  /**
   * Cells, amp-hours, ohms of the pack, watts, cut-off and the pack's own floor, as in the cells.
   */
  private static final String DISCHARGE = "=PACK.DISCHARGE(8;10.2;45;92;24;\"Li-ion\";1;1;25)";

  private static final String BASIC =
      """
      Function BasicDischarge(cells, ah, milliohms, watts, cutoff)
        Dim q(%1$d) As Double, e(%1$d) As Double
      %2$s
        ohms = milliohms / 1000
        share = 1
        k = %1$d
        hours = 0
        Do
          Do While k > 1 And share < q(k - 1)
            k = k - 1
          Loop
          volts = cells * (e(k - 1) + (e(k) - e(k - 1)) * (share - q(k - 1)) / (q(k) - q(k - 1)))
          root = volts * volts - 4 * ohms * watts
          If root < 0 Then Exit Do
          terminal = (volts + Sqr(root)) / 2
          If terminal < cutoff Then Exit Do
          share = share - watts / terminal * %3$f / 3600 / ah
          hours = hours + %3$f / 3600
          If share <= 0 Then Exit Do
        Loop
        BasicDischarge = hours
      End Function
      """
          .formatted(
              POINTS - 1,
              IntStream.range(0, POINTS)
                  .mapToObj(
                      i ->
                          String.format(
                              Locale.ROOT,
                              "  q(%d) = %.9f : e(%d) = %.9f",
                              i,
                              CURVE.chargeAt(i),
                              i,
                              CURVE.voltsAt(i)))
                  .collect(Collectors.joining("\n")),
              STEP_SECONDS);

  private DischargeBench() {}

  static void run(Office office, Measurements figures)
      throws IOException, com.sun.star.uno.Exception {
    addBasic(office, "Discharge", BASIC);
    try (BenchDocument ours = BenchDocument.empty(office).down(0, 0, 50 * COPIES, DISCHARGE);
        BenchDocument basic =
            BenchDocument.empty(office)
                .down(0, 0, COPIES, DISCHARGE.replace("PACK.DISCHARGE", "BASICDISCHARGE"))) {
      agree(ours.cell(0, 0).getValue(), basic.cell(0, 0).getValue());
      BenchDocument.inTurn(ROUNDS, ours, basic);
      figures.atLeast(
          100,
          String.format(
              Locale.ROOT,
              "PACK.DISCHARGE (%.0f µs), times faster than Basic that steps through it in %.0f s",
              1e6 * ours.seconds() / (50 * COPIES),
              STEP_SECONDS),
          basic.seconds() / COPIES / (ours.seconds() / (50 * COPIES)),
          "%.0f");
    }
    try (BenchDocument fine = BenchDocument.empty(office);
        BenchDocument coarse = BenchDocument.empty(office);
        BenchDocument grid = BenchDocument.empty(office)) {
      for (int i = 0; i < COPIES; i++) {
        curve(fine, i, ROWS);
        curve(coarse, i, FEW_ROWS);
        grid(grid, i);
      }
      agree(fine.cell(2, ROWS - 1).getValue(), grid.cell(6, ROWS - 1).getValue());
      agree(coarse.cell(2, FEW_ROWS - 1).getValue(), grid.cell(6, ROWS - 1).getValue());
      BenchDocument.inTurn(ROUNDS, fine, coarse, grid);
      faster(figures, coarse, grid, FEW_ROWS);
      faster(figures, fine, grid, ROWS);
    }
  }

  private static void curve(BenchDocument book, int copy, int rows)
      throws com.sun.star.uno.Exception {
    book.array(
        5 * copy,
        0,
        5,
        rows,
        "=PACK.CURVE(8;10.2;45;92;24;\"Li-ion\";1;1;25;;%d)".formatted(rows - 1));
  }

  private static void faster(
      Measurements figures, BenchDocument curve, BenchDocument grid, int rows) {
    figures.atLeast(
        5,
        String.format(
            Locale.ROOT,
            "a discharge as one PACK.CURVE of %d rows, each exact (%.0f µs), times faster than a"
                + " native grid of %d rows",
            rows,
            1e6 * curve.seconds() / COPIES,
            ROWS),
        grid.seconds() / curve.seconds(),
        "%.1f");
  }

  private static void agree(double ours, double other) throws IOException {
    if (!(Math.abs(other / ours - 1) < SAME)) {
      throw new IOException("not the same discharge: %s and %s".formatted(ours, other));
    }
  }

  static void addBasic(Office office, String module, String text)
      throws com.sun.star.uno.Exception {
    XLibraryContainer libraries =
        office.service(
            XLibraryContainer.class, "com.sun.star.script.ApplicationScriptLibraryContainer");
    libraries.loadLibrary("Standard");
    UnoRuntime.queryInterface(XNameContainer.class, libraries.getByName("Standard"))
        .insertByName(module, text);
  }

  /** Charge and volts of the curve, then hours, charge, line, open volts, volts and amperes. */
  private static void grid(BenchDocument grid, int copy) throws com.sun.star.uno.Exception {
    int left = GRID_COLUMNS * copy;
    Object[][] curve = new Object[POINTS][];
    for (int i = 0; i < POINTS; i++) {
      curve[i] = new Object[] {CURVE.chargeAt(i), CURVE.voltsAt(i)};
    }
    grid.data(left, curve);
    String charges = "$%1$s$1:$%1$s$%2$d".formatted(column(left), POINTS);
    String volts = "$%1$s$1:$%1$s$%2$d".formatted(column(left + 1), POINTS);
    String share = column(left + 3) + "1";
    String line = column(left + 4) + "1";
    String open = column(left + 5) + "1";
    String terminal = column(left + 6) + "1";
    String amps = column(left + 7) + "1";
    grid.cell(left + 2, 0).setValue(0);
    grid.cell(left + 3, 0).setValue(1);
    grid.down(left + 2, 1, ROWS - 1, "=" + column(left + 2) + "1+" + STEP_HOURS);
    grid.down(left + 3, 1, ROWS - 1, "=" + share + "-" + amps + "*" + STEP_HOURS + "/10.2");
    grid.down(left + 4, 0, ROWS, "=MIN(MATCH(%s;%s;1);%d)".formatted(share, charges, POINTS - 1));
    grid.down(
        left + 5,
        0,
        ROWS,
        "=8*(INDEX(VOLTS;M)+(INDEX(VOLTS;M+1)-INDEX(VOLTS;M))*(S-INDEX(CHARGE;M))/(INDEX(CHARGE;M+1)-INDEX(CHARGE;M)))"
            .replace("VOLTS", volts)
            .replace("CHARGE", charges)
            .replace("M", line)
            .replace("(S-", "(" + share + "-"));
    grid.down(left + 6, 0, ROWS, "=(%1$s+SQRT(%1$s^2-4*0.045*92))/2".formatted(open));
    grid.down(left + 7, 0, ROWS, "=92/" + terminal);
  }

  private static String column(int index) {
    return index < 26
        ? String.valueOf((char) ('A' + index))
        : column(index / 26 - 1) + (char) ('A' + index % 26);
  }
}
