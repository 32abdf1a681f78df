package org.setpower.bench;

import com.sun.star.beans.NamedValue;
import com.sun.star.lang.XComponent;
import com.sun.star.task.XJob;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.setpower.office.Office;

/**
 * The formulas of the lighting example compared with its template, with nothing wrong: against
 * opening the example, which reads as many formulas from a file.
 */
final class RestoreBench {
  private static final Path EXAMPLE =
      Path.of("extension/target/sheets/examples/lighting-power-plan-example.ods");
  private static final int ROUNDS = 7;

  private RestoreBench() {}

  static void run(Office office, Measurements figures) throws Exception {
    List<Double> openings = new ArrayList<>();
    List<Double> later = new ArrayList<>();
    double first = 0;
    for (int i = 0; i < ROUNDS; i++) {
      ProcessorTime before = ProcessorTime.of(office);
      XComponent document = office.open(EXAMPLE);
      openings.add(before.secondsUntil(ProcessorTime.of(office)));
      try {
        double seconds = compare(office, document);
        if (i == 0) {
          first = seconds;
        } else {
          later.add(seconds);
        }
      } finally {
        Office.discard(document);
      }
    }
    double opening = ProcessorTime.usual(openings);
    figures.atMost(
        2, words("first time of a session", first, opening) + ", seconds", first, "%.2f");
    double usual = ProcessorTime.usual(later);
    figures.atMost(0.8, words("later", usual, opening), usual / opening, "%.2f");
  }

  private static String words(String when, double seconds, double opening) {
    return String.format(
        Locale.ROOT,
        "formulas of the lighting example compared, %s (%.0f ms), to opening it (%.0f ms)",
        when,
        1e3 * seconds,
        1e3 * opening);
  }

  private static double compare(Office office, XComponent document) throws Exception {
    ProcessorTime before = ProcessorTime.of(office);
    Object answer =
        office
            .service(XJob.class, "org.setpower.Commands")
            .execute(
                new NamedValue[] {
                  new NamedValue("Command", "mend"), new NamedValue("Document", document)
                });
    double seconds = before.secondsUntil(ProcessorTime.of(office));
    if (!answer.equals("All formulas match the template.")) {
      throw new IOException("the example is not as its template has it: " + answer);
    }
    return seconds;
  }
}
