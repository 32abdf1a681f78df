package org.setpower.bench;

import java.nio.file.Path;
import java.time.Duration;
import org.setpower.office.Office;

/** What the extension costs inside the office; see {@code extension/bin/bench --help}. */
public final class OfficeBench {
  private OfficeBench() {}

  /** Arguments: the packed extension, the office's folder, the folder for what is written, what. */
  public static void main(String[] args) throws Exception {
    Path oxt = Path.of(args[0]);
    Path folder = Path.of(args[2]);
    Path addIn = BenchAddIn.pack(folder, Path.of(args[1]));
    String what = args[3];
    Measurements figures = new Measurements(folder.resolve(what + ".md"), title(what));
    if (what.equals("start")) {
      WholeBench.size(oxt, figures);
      WholeBench.starts(oxt, addIn, figures);
    } else {
      try (Office office = Office.start(Duration.ofHours(2), oxt, addIn)) {
        switch (what) {
          case "office" -> CellsBench.run(office, figures);
          case "functions" -> FunctionsBench.run(office, figures);
          case "sheets" -> {
            DischargeBench.run(office, figures);
            WholeBench.growth(office, figures);
            WholeBench.heap(office, figures);
            RestoreBench.run(office, figures);
            RegisterBench.run(office, figures);
            BatteryBench.run(office, figures);
            QuoteBench.run(office, figures);
            BudgetBench.run(office, figures);
            TravelBench.run(office, figures);
            LightingBench.run(office, figures);
          }
          default -> throw new IllegalArgumentException(what);
        }
      }
    }
    figures.write();
  }

  private static String title(String what) {
    return switch (what) {
      case "office" ->
          "A cell, work of the processor, the lower quarter of several recalculations of 10 000";
      case "functions" ->
          "A cell of each function, work of the processor, the lower quarter of 15 recalculations"
              + " of 1 000";
      case "sheets" ->
          "Sheets, work of the processor, the lower quarter of several recalculations in turn";
      default -> "The extension as a whole, the lower quarter of several starts in turn";
    };
  }
}
