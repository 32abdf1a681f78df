package org.setpower.templates.plan;

import static org.assertj.core.api.Assertions.assertThat;

import com.sun.star.table.XCell;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.platform.commons.logging.LoggerFactory;
import org.setpower.addin.SharedOffice;
import org.setpower.office.Office;

/**
 * Edits, recalculations and saves on the lighting plan filled to its last row: at the end the
 * figures are those of the start, and neither memory nor time has grown.
 *
 * <p>The long form, an hour: {@code extension/bin/soak}; its times are in target/soak.tsv.
 */
@Tag("nightly")
class SoakIT {
  private static final int SECONDS = 20;
  private static final int WARM_UP = 3;
  private static final int SAVE_EVERY = 10;
  private static final int MANY_ROUNDS = 200;
  private static final double MOST_TIMES = 1.5;

  /** MB from the third quarter to the last; before that Java fills the heap that it starts with. */
  private static final double MOST_GROWTH = 60;

  @TempDir Path folder;

  /** One round: when it ended, how long the recalculation took the processor, the memory. */
  private record Round(double at, double seconds, double megabytes) {}

  @Test
  void stays_as_it_is_over_edits_recalculations_and_saves() throws IOException {
    int seconds = Integer.getInteger("soak.seconds", SECONDS);
    try (Office office = Office.start(Duration.ofSeconds(seconds + 900L), SharedOffice.OXT)) {
      try (PlanSheet book = LightingStressIT.full(office)) {
        List<String> before = book.column("loads.amps");
        List<Round> rounds = run(office, book, seconds);
        book.calculated();
        assertThat(book.column("loads.amps")).isEqualTo(before);
        judge(rounds);
      }
    }
  }

  private List<Round> run(Office office, PlanSheet book, int seconds) throws IOException {
    List<Round> rounds = new ArrayList<>();
    long began = System.nanoTime();
    for (int i = 0; i % 2 == 1 || secondsSince(began) < seconds || rounds.size() < 4; i++) {
      edit(book, i);
      double start = worked(office);
      book.calculated();
      double taken = worked(office) - start;
      if (i % SAVE_EVERY == 0) {
        office.store(book.document(), "calc8", folder.resolve("saved.ods"));
      }
      if (i >= WARM_UP) {
        rounds.add(new Round(secondsSince(began), taken, megabytes(office)));
      }
    }
    Files.write(
        Path.of("target/soak.tsv"),
        rounds.stream()
            .map(r -> String.format(Locale.ROOT, "%.1f\t%.3f\t%.1f", r.at, r.seconds, r.megabytes))
            .toList());
    return rounds;
  }

  /** Another quantity in a row of the loads, put back in the next round. */
  private static void edit(PlanSheet book, int round) {
    XCell cell = LightingStressIT.quantity(book, round / 2 % 100);
    cell.setValue(cell.getValue() + (round % 2 == 0 ? 1 : -1));
  }

  private static void judge(List<Round> rounds) {
    int quarter = rounds.size() / 4;
    List<Round> early = rounds.subList(0, Math.max(1, quarter));
    List<Round> late = rounds.subList(rounds.size() - Math.max(1, quarter), rounds.size());
    List<Round> before = rounds.subList(rounds.size() / 2, rounds.size() - quarter);
    double times =
        median(late.stream().map(Round::seconds)) / median(early.stream().map(Round::seconds));
    double growth =
        median(late.stream().map(Round::megabytes)) - median(before.stream().map(Round::megabytes));
    LoggerFactory.getLogger(SoakIT.class)
        .info(
            () ->
                String.format(
                    Locale.ROOT,
                    "%d rounds; last quarter: time of a recalculation × %.2f of the first,"
                        + " memory %+.1f MB since the third",
                    rounds.size(),
                    times,
                    growth));
    assertThat(growth).isLessThan(MOST_GROWTH);
    if (rounds.size() > MANY_ROUNDS) {
      assertThat(times).isLessThan(MOST_TIMES);
    }
  }

  private static double median(Stream<Double> values) {
    List<Double> sorted = values.sorted().toList();
    return sorted.get(sorted.size() / 2);
  }

  private static double secondsSince(long began) {
    return (System.nanoTime() - began) / 1e9;
  }

  /** Seconds that the office has worked, which other programs hardly change. */
  private static double worked(Office office) {
    return office.processes().stream()
        .flatMap(p -> p.info().totalCpuDuration().stream())
        .mapToDouble(d -> d.toNanos() / 1e9)
        .sum();
  }

  /** Resident memory of the office; 0 where /proc is not. */
  private static double megabytes(Office office) {
    return office.processes().stream()
        .flatMap(p -> text(Path.of("/proc", String.valueOf(p.pid()), "status")).lines())
        .filter(line -> line.startsWith("VmRSS:"))
        .mapToDouble(line -> Double.parseDouble(line.replaceAll("[^0-9]", "")) / 1024)
        .sum();
  }

  /** A file of /proc; empty where the process has ended meanwhile. */
  private static String text(Path file) {
    try {
      return Files.readString(file, StandardCharsets.ISO_8859_1);
    } catch (IOException gone) {
      return "";
    }
  }
}
