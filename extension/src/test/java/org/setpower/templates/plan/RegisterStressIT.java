package org.setpower.templates.plan;

import static org.assertj.core.api.Assertions.assertThat;

import com.sun.star.table.XCell;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.setpower.addin.SharedOffice;
import org.setpower.office.Office;
import org.setpower.templates.register.BatteryRegister;
import org.setpower.templates.uno.UnoAccess;

/** A register filled to the last row, against figures that are worked out here. */
@Tag("one-office")
@ExtendWith(SharedOffice.class)
class RegisterStressIT {
  private static final Path TEMPLATE = Path.of("target/sheets/templates/en/battery-register.ots");
  private static final LocalDate DAY_ZERO = LocalDate.of(1899, 12, 30);
  private static final int BATTERIES = 300;
  private static final int TESTS = 1000;
  private static final int EDITS = 21;

  private static double day(String date) {
    return ChronoUnit.DAYS.between(DAY_ZERO, LocalDate.parse(date));
  }

  private static Map<String, Object> battery(int i) {
    Map<String, Object> row = new HashMap<>();
    row.put("serial", "B" + i);
    row.put("type", "T" + i % 5);
    row.put("condition", i % 10 == 9 ? "dropped" : "fine");
    row.put("energy", 100.0);
    row.put("cycles", 50.0 + i);
    row.put("place", "shelf " + i % 12);
    row.put("un383", "yes");
    row.put("inspected", day("2026-10-20"));
    row.put("inspectedBy", "bench");
    return row;
  }

  /** The newest test of a battery is the one with the highest number. */
  private static Map<String, Object> test(int i) {
    Map<String, Object> row = new HashMap<>();
    row.put("serial", "B" + i % BATTERIES);
    row.put("date", day("2026-10-01") + i / BATTERIES);
    row.put("measured", 90.0 + i % 7);
    row.put("load", 40.0);
    row.put("temperature", 20.0);
    row.put("charge", 1.0);
    row.put("rested", 2.0);
    row.put("resistance", 60.0 + i % 3);
    for (int cell = 1; cell <= 8; cell++) {
      row.put("cell" + cell, 4.15);
    }
    return row;
  }

  @SuppressWarnings({"unchecked", "rawtypes"}) // arrays of a generic type
  private static PlanSheet full(Office office) throws IOException {
    PlanSheet book = new PlanSheet(office, TEMPLATE, new BatteryRegister().workbook());
    book.type("project.asOf", day("2026-11-01"));
    book.rows(
        "types",
        IntStream.range(0, 5)
            .mapToObj(i -> Map.<String, Object>of("type", "T" + i, "chemistry", "Li-ion"))
            .toArray(Map[]::new));
    book.rows(
        "batteries",
        IntStream.range(0, BATTERIES).mapToObj(RegisterStressIT::battery).toArray(Map[]::new));
    return book.rows(
        "tests", IntStream.range(0, TESTS).mapToObj(RegisterStressIT::test).toArray(Map[]::new));
  }

  @Test
  void three_hundred_batteries_and_a_thousand_tests(Office office) throws Exception {
    try (PlanSheet book = full(office)) {
      List<String> fit = book.column("batteries.fit");
      List<String> health = book.column("batteries.health");
      assertThat(fit).hasSize(BATTERIES);
      for (int i = 0; i < BATTERIES; i++) {
        int newest = i + (TESTS - 1 - i) / BATTERIES * BATTERIES;
        assertThat(health.get(i)).isEqualTo("" + (90.0 + newest % 7) / 100);
        assertThat(fit.get(i)).isEqualTo(i % 10 == 9 ? "no" : "yes");
      }
      assertThat(book.single("summary.fit")).isEqualTo("270");
      assertThat(book.column("tests.compared")).hasSize(TESTS).containsOnly("yes");
      assertThat(book.column("actions.serial")).hasSize(30);
      System.out.println(times(office, book));
    }
  }

  /** How long an edit, opening and storing take here and now; {@code bench} says it at rest. */
  private static String times(Office office, PlanSheet book) throws Exception {
    var place = book.layout().place(book.layout().input("batteries.cycles"));
    XCell cell =
        UnoAccess.ask(
            () ->
                book.range(place.tab(), place.column(), place.row(), 1, 1).getCellByPosition(0, 0));
    double[] edits = new double[EDITS];
    for (int i = 0; i < EDITS; i++) {
      long start = System.nanoTime();
      cell.setValue(100 + i);
      book.single("summary.fit");
      edits[i] = (System.nanoTime() - start) / 1e6;
    }
    Arrays.sort(edits);
    Path file = office.newFolder().resolve("full.ods");
    long start = System.nanoTime();
    office.store(book.document(), "calc8", file);
    double stored = (System.nanoTime() - start) / 1e6;
    start = System.nanoTime();
    Office.discard(office.open(file));
    double opened = (System.nanoTime() - start) / 1e6;
    return "edit %.0f ms (fastest %.0f), store %.0f ms, open %.0f ms, %d kB"
        .formatted(edits[EDITS / 2], edits[0], stored, opened, Files.size(file) / 1024);
  }
}
