package org.setpower.plan.batteryday;

import static org.assertj.core.api.Assertions.assertThat;
import static org.setpower.plan.batteryday.BatteryDaySamples.at;
import static org.setpower.plan.batteryday.BatteryDaySamples.camera;
import static org.setpower.plan.batteryday.BatteryDaySamples.day;

import java.time.LocalTime;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.setpower.plan.batteryday.word.BatteryUse;
import org.setpower.plan.batteryday.word.ScheduleEntry;
import org.setpower.plan.common.Answer;
import org.setpower.plan.common.EnglishMessages;
import org.setpower.plan.common.PlanResult;
import org.setpower.plan.common.Ranges;
import org.setpower.plan.finding.Finding;
import org.setpower.plan.finding.FindingKey;

/** What a crew decides on two summer days: a reserve, numbers, one battery of a plate. */
class BatteryDaySummerTest {
  private static List<FindingKey> keys(List<Finding> findings) {
    return findings.stream().map(Finding::key).toList();
  }

  private static List<Finding> stockOf(PlanResult result) {
    return result.rows(BatteryDayResults.STOCK).get(0).reasons();
  }

  private static List<Finding> positionOf(PlanResult result) {
    return result.rows(BatteryDayResults.POSITIONS).get(0).reasons();
  }

  private static Finding found(List<Finding> findings, FindingKey key) {
    return findings.stream().filter(f -> f.key() == key).findFirst().orElseThrow();
  }

  /** 92 W take 294 Wh in about 2.9 h: four batteries for 10 h, and B5 is kept as reserve. */
  private static Ranges withReserve() {
    return camera().set("stock", 1, "reserve", 1);
  }

  /** Nobody hires a battery that lies in the case. */
  @Test
  void a_reserve_is_put_in_before_one_is_hired() {
    assertThat(stockOf(withReserve().calculate())).isEmpty();
    Ranges one = withReserve().row("atCall", "number", "B2", "absence", "quarantine");
    PlanResult failed = one.calculate();
    assertThat(keys(stockOf(failed))).containsExactly(BatteryDayFinding.SHORT_RESERVE);
    assertThat(found(stockOf(failed), BatteryDayFinding.SHORT_RESERVE).arguments())
        .containsExactly(4.0, 3.0, "B5");
    assertThat(found(positionOf(failed), BatteryDayFinding.RUNS_DRY_RESERVE).arguments())
        .contains("B5");
    Ranges two = one.copy().row("atCall", "number", "B3", "absence", "quarantine");
    assertThat(found(stockOf(two.calculate()), BatteryDayFinding.SHORT_WITH_RESERVE).arguments())
        .containsExactly(4.0, 2.0, "B5", 1.0);
  }

  /** Entered on Today it is in the plan, of that day only, and it is told. */
  @Test
  void a_reserve_that_is_entered_is_used() {
    Ranges one = withReserve().row("atCall", "number", "B2", "absence", "quarantine");
    one.row("atCall", "number", "B5", "charge", 1);
    PlanResult result = one.calculate();
    assertThat(stockOf(result)).isEmpty();
    assertThat(positionOf(result)).isEmpty();
    assertThat(keys(result.rows(BatteryDayResults.AT_CALL).get(1).reasons()))
        .containsExactly(BatteryDayFinding.FOUND_RESERVE);
    assertThat(result.rows(BatteryDayResults.BATTERIES).get(4).use()).isEqualTo(BatteryUse.PLANNED);
    one.row("days", "date", day("2027-02-03"), "call", at(7, 0), "wrap", at(17, 0), "min", 20);
    one.set("project", 1, "today", day("2027-02-02"), "day", day("2027-02-03"));
    assertThat(one.calculate().rows(BatteryDayResults.BATTERIES).get(4).use())
        .isEqualTo(BatteryUse.RESERVE);
  }

  /** At lunch it comes in from then on: the morning stays as it was handed out. */
  @Test
  void a_reserve_put_in_at_lunch_leaves_the_morning_alone() {
    for (int hour = 8; hour < 16; hour++) {
      Ranges lunch = withReserve().set("project", 1, "now", at(hour, 15));
      lunch.row("atNow", "number", "B4", "absence", "quarantine");
      PlanResult failed = lunch.calculate();
      boolean isDark = failed.rows(BatteryDayResults.POSITIONS).get(0).dark() > 0;
      if (isDark) {
        assertThat(stockOf(failed)).anyMatch(f -> f.arguments().contains("B5"));
      }
      PlanResult result = lunch.row("atNow", "number", "B5", "shelf", "yes").calculate();
      assertThat(keys(result.rows(BatteryDayResults.AT_NOW).get(1).reasons()))
          .containsExactly(BatteryDayFinding.FOUND_RESERVE);
      assertThat(result.rows(BatteryDayResults.POSITIONS).get(0).dark()).isZero();
      LocalTime now = LocalTime.of(hour, 15);
      assertThat(before(result, now)).isEqualTo(before(withReserve().calculate(), now));
      assertThat(result.rows(BatteryDayResults.SCHEDULE))
          .filteredOn(r -> r.on().equals("B5"))
          .allMatch(r -> !r.at().isBefore(now));
    }
  }

  private static List<BatteryDayResults.ScheduleRow> before(PlanResult result, LocalTime hour) {
    return result.rows(BatteryDayResults.SCHEDULE).stream()
        .filter(r -> r.at().isBefore(hour))
        .toList();
  }

  /**
   * A plate of two with three batteries of about 2.9 h, one after the other, from 7 to 17 h: from
   * about 12:45, when the second is empty, the third works alone until it is dark.
   */
  @Test
  void a_plate_says_from_when_to_when_it_stands_on_one_battery() {
    Ranges plate =
        camera().set("positions", 1, "connection", "hot-swap").set("stock", 1, "owned", 3);
    List<BatteryDayResults.CardRow> card = plate.calculate().rows(BatteryDayResults.CARD);
    assertThat(card)
        .filteredOn(c -> c.on().isEmpty() && !c.off().isEmpty() && !c.isEnd())
        .isNotEmpty()
        .allMatch(c -> !c.isChange());
    BatteryDayResults.CardRow alone =
        card.stream().filter(c -> c.what().pattern().contains("one battery")).findFirst().get();
    assertThat(alone.on()).isEmpty();
    assertThat(alone.off()).isNotEmpty();
    BatteryDayResults.CardRow dark =
        card.stream().filter(c -> c.what().pattern().startsWith("no power")).findFirst().get();
    assertThat(alone.what().arguments()).contains(dark.by());
  }

  /** What goes on while nothing comes off is no change of one for another. */
  @Test
  void a_battery_put_on_a_plate_is_called_so() {
    Ranges plate =
        camera().set("positions", 1, "connection", "hot-swap").set("stock", 1, "owned", 1);
    plate.set("stock", 1, "hired", 4, "inHandOn", day("2027-02-02"), "inHandFrom", at(9, 0));
    List<BatteryDayResults.ScheduleRow> rows = plate.calculate().rows(BatteryDayResults.SCHEDULE);
    List<BatteryDayResults.ScheduleRow> puts =
        rows.stream()
            .filter(r -> !r.on().isEmpty() && r.off().isEmpty())
            .filter(r -> r.at().isAfter(LocalTime.of(7, 0)))
            .toList();
    // until what is hired arrives at 9 h the plate works on one
    assertThat(plate.calculate().rows(BatteryDayResults.CARD).get(0).what().arguments())
        .contains(LocalTime.of(9, 0));
    assertThat(puts).isNotEmpty().allMatch(r -> r.what() == ScheduleEntry.PUT_ON);
    assertThat(rows)
        .filteredOn(r -> r.what() == ScheduleEntry.CHANGE)
        .allMatch(r -> !r.on().isEmpty() && !r.off().isEmpty());
  }

  /** One camera from 7 to 17 h, the next call at 8 h, one charger with power until late. */
  private static Ranges night(double to, double again) {
    Ranges night = BatteryDaySamples.charger(camera(), "one", "P294", 1, 5);
    BatteryDaySamples.charger(night, "two", "P294", 1, 5);
    for (int row = 1; row <= 2; row++) {
      night.set("chargers", row, "powerFrom", again, "powerTo", to);
    }
    return night.row(
        "days", "date", day("2027-02-03"), "call", at(8, 0), "wrap", at(9, 0), "min", 20);
  }

  /** Who loads chargers goes from one to the next, at each in order of time. */
  @Test
  void the_night_is_charger_by_charger() {
    List<BatteryDayResults.ChargingRow> rows =
        night(at(23, 30), at(6, 0)).calculate().rows(BatteryDayResults.CHARGING);
    List<String> chargers =
        rows.stream().map(r -> (String) r.charger().arguments().get(0)).toList();
    assertThat(chargers).contains("one", "two").isSorted();
  }

  /** A few minutes of a charge after the power was off are no row of their own. */
  @Test
  void a_few_minutes_of_a_charge_are_no_row_of_their_own() {
    int all = 0;
    for (int minute = 0; minute < 110; minute++) {
      PlanResult night = night(at(17, minute), at(6, 0)).calculate();
      for (BatteryDayResults.ChargingRow row : night.rows(BatteryDayResults.CHARGING)) {
        if (row.from() != null && row.until().arguments().size() > 1) {
          LocalTime until = BatteryDaySamples.clock(row.until());
          boolean fromSix = BatteryDaySamples.clock(row.from()).equals(LocalTime.of(6, 0));
          assertThat(fromSix && until.isBefore(LocalTime.of(6, 14))).as("17:%s", minute).isFalse();
          all++;
        }
      }
    }
    assertThat(all).isPositive();
  }

  /** Lithium batteries charge attended: at which hours somebody has to be there. */
  @Test
  void the_hours_of_charging_are_told() {
    PlanResult night = night(at(18, 0), at(6, 0)).calculate();
    BatteryDayResults.RunResult run = night.rows(BatteryDayResults.RUN).get(0);
    assertThat(run.attended().toString()).contains("17:00", "18:00", "06:00");
    assertThat(camera().calculate().rows(BatteryDayResults.RUN).get(0).attended()).isNull();
    assertThat(night.rows(BatteryDayResults.CHARGING))
        .filteredOn(r -> r.from() != null)
        .isNotEmpty()
        .noneMatch(r -> r.from().pattern().startsWith("on since"));
  }

  private static BatteryDayResults.StockResult row(Ranges job, int row) {
    return job.calculate().rows(BatteryDayResults.STOCK).get(row - 1);
  }

  /** The batteries of the second row were marked B6 to B8 before two were hired for the first. */
  @Test
  void hired_batteries_that_move_the_numbers_of_others_are_told() {
    Ranges job = BatteryDaySamples.withP98(camera(), 3);
    assertThat(row(job, 2).reasons()).isEmpty();
    Ranges hired = job.copy().set("stock", 1, "hired", 2);
    assertThat(row(hired, 2).fromNumber()).isEqualTo("B8");
    assertThat(found(row(hired, 2).reasons(), BatteryDayFinding.NUMBERS_MOVED).arguments())
        .containsExactly(2.0, "B6", "B8", 8.0);
    assertThat(row(hired.set("stock", 2, "first", 8), 2).reasons()).isEmpty();
    Ranges below = job.copy().row("stock", "type", "P294", "hired", 2);
    assertThat(row(below, 2).fromNumber()).isEqualTo("B6");
    assertThat(row(below, 2).reasons()).isEmpty();
    assertThat(row(below, 3).fromNumber()).isEqualTo("B9");
    assertThat(row(below, 1).fewest()).isEqualTo(row(below, 3).fewest());
    Ranges all = job.copy().set("stock", 1, "owned", "", "hired", 5);
    assertThat(row(all, 2).reasons()).isEmpty();
  }

  /** Who types numbers on Today has them on the batteries. */
  @Test
  void numbers_that_are_typed_on_today_may_not_move() {
    Ranges job =
        BatteryDaySamples.withP98(camera(), 3).row("atCall", "number", "B7", "charge", 0.9);
    assertThat(found(row(job, 2).reasons(), BatteryDayFinding.NUMBERS_MOVE).arguments())
        .containsExactly("B6", 6.0);
    assertThat(row(job.set("stock", 2, "first", 6), 2).reasons()).isEmpty();
  }

  /**
   * 10 h take four batteries of about 2.9 h, 2 h take one: the job takes four, whatever is shown.
   */
  @Test
  void fewest_batteries_of_all_dates() {
    Ranges job =
        camera().row("days", "date", day("2027-02-03"), "call", at(8, 0), "wrap", at(10, 0));
    job.set("days", 2, "min", 20, "max", 20);
    assertThat(row(job, 1).fewest()).isEqualTo(4);
    assertThat(row(job, 1).fewestOfAll()).isEqualTo(4);
    job.set("project", 1, "day", day("2027-02-03"));
    assertThat(row(job, 1).fewest()).isEqualTo(1);
    assertThat(row(job, 1).fewestOfAll()).isEqualTo(4);
  }

  /** What the lists of a sheet have no room for is not left out: all stops, and says why. */
  @ParameterizedTest
  @CsvSource({"supplies, supply, watts, peak, 10", "chargers, charger, amps, charges, 20"})
  void more_watts_and_chargers_than_a_list_holds_are_refused_in_words(
      String table, String name, String figure, String result, int room) {
    Ranges job = BatteryDaySamples.charger(camera(), "one", "P294", 1, 3);
    Answer answer =
        new Answer(List.of(table + ".verdict", table + "." + result, table + ".reasons"), room);
    for (int row = job.rows(table).size() + 1; row <= room; row++) {
      job.row(table, name, name + row, figure, 5);
    }
    String said = Arrays.deepToString(matrix(job, answer));
    assertThat(said).doesNotContain("the sheet shows");
    job.row(table, name, "one more", figure, 5);
    Object[][] cells = matrix(job, answer);
    assertThat(cells).hasDimensions(room + 1, 3);
    String heading = table.equals("supplies") ? "Supplies" : "Chargers";
    String sentence =
        heading + " has " + (room + 1) + " rows and the sheet shows " + room + ". Delete rows, or";
    for (int row = 1; row <= room; row++) {
      assertThat(cells[row][0]).isEqualTo("stop");
      assertThat(cells[row][1]).isEqualTo("");
      assertThat(cells[row][2].toString()).startsWith(sentence);
    }
  }

  private static Object[][] matrix(Ranges job, Answer answer) {
    return job.calculate().matrix(answer, new EnglishMessages(), Locale.UK);
  }
}
