package org.setpower.plan.batteryday;

import static org.assertj.core.api.Assertions.assertThat;
import static org.setpower.plan.batteryday.BatteryDaySamples.at;
import static org.setpower.plan.batteryday.BatteryDaySamples.camera;
import static org.setpower.plan.batteryday.BatteryDaySamples.charger;
import static org.setpower.plan.batteryday.BatteryDaySamples.position;
import static org.setpower.plan.batteryday.BatteryDaySamples.withP98;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.setpower.plan.batteryday.simulation.DayEvent;
import org.setpower.plan.batteryday.simulation.DayOutcome;
import org.setpower.plan.batteryday.word.ScheduleEntry;
import org.setpower.plan.common.PlanResult;
import org.setpower.plan.common.Ranges;

/** Schedule, card and timeline tell the same story, and no battery is in two places. */
class BatteryDayStoryTest {
  private static final String[] CONNECTIONS = {"", "", "", "hot-swap", "series", "parallel"};

  /**
   * A day that is short more often than not: two types, some chargers, batteries found at lunch.
   */
  private static Ranges day(Random random) {
    Ranges day = camera().set("stock", 1, "owned", 1 + random.nextInt(7));
    day.set("positions", 1, "quantity", 1 + random.nextInt(2), "priority", random.nextInt(9) + 1);
    withP98(day, 1 + random.nextInt(5));
    int count = 1 + random.nextInt(4);
    for (int i = 2; i < 2 + count; i++) {
      String connection = CONNECTIONS[random.nextInt(CONNECTIONS.length)];
      boolean small = connection.isEmpty() && random.nextBoolean();
      boolean series = connection.equals("series");
      position(
          day,
          "place " + i,
          small ? 12 : series ? 48 : 24,
          small ? "P98" : "P294",
          15 + random.nextInt(120),
          small ? 11 : series ? 40 : 20,
          small ? 18 : series ? 70 : 36);
      day.set("positions", i, "connection", connection, "priority", 1 + random.nextInt(9));
      day.set("positions", i, "touchSafe", "yes", "quantity", 1 + random.nextInt(2));
      if (random.nextInt(3) == 0) {
        day.set("devices", i, "from", at(8 + random.nextInt(3), 0), "to", at(15, 30));
      }
    }
    for (int i = random.nextInt(3); i > 0; i--) {
      charger(day, "charger " + i, random.nextBoolean() ? "P294" : "P294, P98", 2, 4);
    }
    if (random.nextBoolean()) {
      day.set("days", 1, "breakFrom", at(12, 0), "breakTo", at(13, 0));
    }
    if (random.nextBoolean()) {
      day.set("project", 1, "now", at(9 + random.nextInt(6), 15));
      for (int i = random.nextInt(4); i > 0; i--) {
        day.row("atNow", "number", "B" + (1 + random.nextInt(9)), "charge", random.nextInt(5) / 4.);
        int row = day.rows("atNow").size();
        if (random.nextBoolean()) {
          int place = 1 + random.nextInt(count + 1);
          day.set("atNow", row, "position", place == 1 ? "camera A" : "place " + place);
        } else if (random.nextBoolean()) {
          day.set("atNow", row, "absence", random.nextBoolean() ? "quarantine" : "lent");
        }
      }
    }
    return day;
  }

  private static List<String> names(String list) {
    return list.isEmpty() ? List.of() : List.of(list.split(", "));
  }

  /** What the rows of the schedule say, battery by battery: where from when to when. */
  private static List<String> story(List<BatteryDayResults.ScheduleRow> rows) {
    Map<String, String> on = new HashMap<>();
    List<String> story = new ArrayList<>();
    for (int first = 0; first < rows.size(); ) {
      int next = first;
      while (next < rows.size() && rows.get(next).hour() <= rows.get(first).hour() + 1e-9) {
        next++;
      }
      // in one moment batteries of two positions may change places
      for (BatteryDayResults.ScheduleRow row : rows.subList(first, next)) {
        for (String battery : names(row.off())) {
          String since = on.remove(battery);
          String place = row.position() + " " + row.piece() + " ";
          assertThat(since).as("%s comes off at %s", battery, row).startsWith(place);
          story.add(battery + " " + since + row.at());
        }
      }
      for (BatteryDayResults.ScheduleRow row : rows.subList(first, next)) {
        for (String battery : names(row.on())) {
          String place = row.position() + " " + row.piece() + " ";
          String since = on.put(battery, place + row.at() + "-");
          assertThat(since).as("%s goes on at %s", battery, row).isNull();
        }
      }
      first = next;
    }
    assertThat(on).as("still on at the end").isEmpty();
    return story;
  }

  private static List<String> bars(List<BatteryDayResults.TimelineRow> rows) {
    List<String> bars = new ArrayList<>();
    for (BatteryDayResults.TimelineRow row : rows) {
      for (String battery : names(row.batteries())) {
        String place = row.position() + " " + row.piece() + " ";
        bars.add(battery + " " + place + row.from() + "-" + row.to());
      }
    }
    return bars;
  }

  /** No battery charges while it is on something: both stories of it, hour by hour. */
  private static int assertOnePlace(Ranges day) {
    DayOutcome outcome = new BatteryDayPlan(BatteryDayInputs.read(day.list()).named()).outcome();
    Map<List<Integer>, Double> since = new HashMap<>();
    int compared = 0;
    for (DayEvent event : outcome.events()) {
      for (int number : event.off()) {
        double from = since.remove(List.of(number, event.unit()));
        for (DayEvent.Charge charge : outcome.charges()) {
          if (charge.battery() == number) {
            assertThat(charge.full() <= from + 1e-6 || charge.start() >= event.hour() - 1e-6)
                .as("%s while on from %s to %s", charge, from, event.hour())
                .isTrue();
            compared++;
          }
        }
      }
      event.on().forEach(n -> since.put(List.of(n, event.unit()), event.hour()));
    }
    return compared;
  }

  @Test
  void no_battery_charges_while_it_is_on() {
    Random random = new Random(20);
    int compared = 0;
    for (int i = 0; i < 300; i++) {
      compared += assertOnePlace(day(random));
    }
    assertThat(compared).isGreaterThan(300);
  }

  /** Dark from a row without a battery to the next with one, breaks excepted. */
  @Test
  void the_rows_without_a_battery_are_the_dark_hours() {
    Random random = new Random(21);
    int compared = 0;
    for (int i = 0; i < 300; i++) {
      Ranges day = day(random).set("days", 1, "breakFrom", "", "breakTo", "");
      PlanResult result = day.calculate();
      double sum = 0;
      int rows = 0;
      for (BatteryDayResults.ScheduleRow row : result.rows(BatteryDayResults.SCHEDULE)) {
        if (row.what() == ScheduleEntry.DARK) {
          sum += DaySettings.hours(row.until()) - row.hour();
          rows++;
        }
      }
      compared += rows;
      // until is in full minutes, early
      double shown =
          result.rows(BatteryDayResults.POSITIONS).stream()
              .filter(p -> p != null && p.dark() != null)
              .mapToDouble(BatteryDayResults.PositionResult::dark)
              .sum();
      assertThat(shown).as("day " + i).isBetween(sum - 1e-6, sum + rows / 60.);
    }
    assertThat(compared).isGreaterThan(100);
  }

  @Test
  void schedule_and_timeline_tell_the_same_story() {
    Random random = new Random(19);
    int dark = 0;
    int found = 0;
    for (int i = 0; i < 400; i++) {
      Ranges day = day(random);
      PlanResult result = day.calculate();
      List<BatteryDayResults.ScheduleRow> schedule = result.rows(BatteryDayResults.SCHEDULE);
      List<String> story = story(schedule);
      assertThat(bars(result.rows(BatteryDayResults.TIMELINE)))
          .as("day " + i)
          .containsExactlyInAnyOrderElementsOf(story);
      // only the end of what was dark before is no row of its own on paper, and the paper of the
      // afternoon has no morning
      Object now = day.rows("project").get(0).get("now");
      double from = now instanceof Double typed ? 24 * typed : Double.NEGATIVE_INFINITY;
      assertThat(result.rows(BatteryDayResults.CARD))
          .as("day " + i)
          .hasSize(
              (int)
                  schedule.stream()
                      .filter(r -> r.what() != ScheduleEntry.END || !r.off().isEmpty())
                      .filter(r -> r.what() == ScheduleEntry.NOT_PLANNED || r.hour() >= from - 1e-9)
                      .count());
      dark += result.rows(BatteryDayResults.POSITIONS).get(0).dark() > 0 ? 1 : 0;
      found += day.rows("atNow").isEmpty() ? 0 : 1;
    }
    assertThat(dark).isGreaterThan(50);
    assertThat(found).isGreaterThan(50);
  }
}
