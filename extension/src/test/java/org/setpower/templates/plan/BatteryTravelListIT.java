package org.setpower.templates.plan;

import static org.assertj.core.api.Assertions.assertThat;

import com.sun.star.beans.PropertyValue;
import com.sun.star.frame.XStorable;
import com.sun.star.sheet.XCellRangeData;
import com.sun.star.table.XColumnRowRange;
import com.sun.star.uno.UnoRuntime;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Consumer;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.api.extension.ExtendWith;
import org.setpower.addin.SharedOffice;
import org.setpower.command.CommandDriver;
import org.setpower.office.Office;
import org.setpower.templates.layout.PlanLayout;
import org.setpower.templates.travel.BatteryTravelList;
import org.setpower.templates.uno.UnoAccess;
import org.setpower.text.MessageCatalog;

/**
 * No paper of the battery travel list has what may not fly, and each says only what was answered,
 * typed or ticked. Limits are those of the sources named in the rules of the plan.
 */
@ExtendWith(SharedOffice.class)
@Tag("one-office")
class BatteryTravelListIT {
  private static final Path TEMPLATE = template("en");
  private static final Path EXAMPLE =
      Path.of("target/sheets/examples/battery-travel-list-example.ods");
  private static final LocalDate DAY_ZERO = LocalDate.of(1899, 12, 30);
  private static final List<String> PAPERS =
      List.of("Check-in sheet", "Passenger cards", "Freight papers", "Road paper");

  private final PlanWorkbook workbook = new BatteryTravelList().workbook();

  private static double day(String date) {
    return ChronoUnit.DAYS.between(DAY_ZERO, LocalDate.parse(date));
  }

  private static Map<String, Object> row(Object... cells) {
    Map<String, Object> row = new HashMap<>();
    for (int i = 0; i < cells.length; i += 2) {
      row.put((String) cells[i], cells[i + 1]);
    }
    return row;
  }

  private static Map<String, Object> with(Map<String, Object> row, Object... changes) {
    Map<String, Object> changed = new HashMap<>(row);
    changed.putAll(row(changes));
    return changed;
  }

  private static Map<String, Object> flight(Object... changes) {
    return with(row("flight", "SA 101", "date", day("2026-06-01"), "carrier", "Salt Air"), changes);
  }

  private static Map<String, Object> battery(Object... changes) {
    return with(
        row(
            "battery",
            "P98",
            "energy",
            98.0,
            "quantity",
            2.0,
            "condition",
            "fine",
            "un383",
            "yes",
            "kilograms",
            0.75),
        changes);
  }

  private static Map<String, Object> answer(Object... changes) {
    return with(
        row(
            "carrier",
            "Salt Air",
            "flight",
            "SA 101",
            "date",
            day("2026-06-01"),
            "type",
            "P150",
            "energy",
            150.0,
            "number",
            2.0,
            "reference",
            "mail 17",
            "answered",
            day("2026-05-11")),
        changes);
  }

  @SuppressWarnings({"unchecked", "rawtypes"}) // an array of a generic type
  private static Map<String, Object>[] array(List<Map<String, Object>> rows) {
    return rows.toArray(new Map[0]);
  }

  /** A flight in June 2026 under ICAO rules, one traveller, no battery. */
  private PlanSheet empty(Office office) throws IOException {
    PlanSheet book = PlanSheet.blank(office, TEMPLATE, workbook);
    book.type("project.issued", day("2026-05-20")).type("project.contact", "desk, +00 000");
    book.rows("flights", flight()).rows("travellers", row("traveller", "gaffer"));
    return book;
  }

  /** It is not carried; what may go by road is on the road paper. */
  private static void isNotCarried(PlanSheet book, String battery) {
    for (String paper : List.of("Check-in sheet", "Passenger cards")) {
      assertThat(book.page(paper)).as(paper).doesNotContain(battery);
    }
    assertThat(book.single("summary.carried")).isEqualTo("0");
  }

  private static void onNoPaper(PlanSheet book, String battery) {
    for (String paper : PAPERS) {
      assertThat(book.page(paper)).as(paper).doesNotContain(battery);
    }
    assertThat(book.single("summary.carried")).isEqualTo("0");
  }

  @Test
  void a_sound_battery_is_carried_and_on_the_papers(Office office) throws IOException {
    try (PlanSheet book = empty(office)) {
      book.rows("batteries", battery());
      assertThat(book.column("lines.traveller")).containsExactly("gaffer");
      assertThat(book.column("checkin.type")).filteredOn(t -> !t.isEmpty()).containsExactly("P98");
      assertThat(book.column("cards.battery")).containsExactly("", "", "P98");
      assertThat(book.single("summary.carried")).isEqualTo("2");
      assertThat(book.single("summary.held")).isEqualTo("0");
      assertThat(book.page("Check-in sheet")).contains("Addendum 1", "desk");
      assertThat(book.page("Passenger cards")).doesNotContain("answer", "covered", "own work");
    }
  }

  @TestFactory
  Stream<DynamicTest> a_battery_that_may_not_fly_is_on_no_paper(Office office) {
    return Stream.of(
        withheld(office, "over 100 Wh, not answered", battery("battery", "X", "energy", 150.0)),
        withheld(office, "dropped", battery("battery", "X", "condition", "dropped")),
        withheld(office, "recalled", battery("battery", "X", "condition", "recalled")),
        withheld(office, "an unknown condition", battery("battery", "X", "condition", "n")),
        withheld(office, "no condition", battery("battery", "X", "condition", "")),
        withheld(office, "0 Wh", battery("battery", "X", "energy", 0.0)),
        withheld(office, "no Wh", battery("battery", "X", "energy", "")),
        withheld(office, "a text as Wh", battery("battery", "X", "energy", "98,5")),
        withheld(office, "terminals open", battery("battery", "X", "terminals", "no")),
        withheld(office, "UN 38.3 no", battery("battery", "X", "un383", "no")),
        withheld(
            office,
            "in quarantine in the register",
            battery("battery", "X", "register", "quarantine", "quantity", 1.0)),
        withheld(
            office,
            "retired in the register",
            battery("battery", "X", "register", "retire", "quantity", 1.0)),
        withheld(office, "damaged", battery("battery", "X", "carried", "damaged")));
  }

  private DynamicTest withheld(Office office, String name, Map<String, Object> battery) {
    return DynamicTest.dynamicTest(
        name,
        () -> {
          try (PlanSheet book = empty(office)) {
            book.type("project.rest", "stays");
            book.rows("batteries", battery);
            book.rows("packing", row("battery", "X", "traveller", "gaffer", "pieces", 1.0));
            onNoPaper(book, "\tX\t");
            assertThat(book.column("issues.verdict")).contains("stop");
            assertThat(book.single("summary.held")).isNotEqualTo("0");
          }
        });
  }

  @Test
  void an_answer_covers_its_flight_and_no_other(Office office) throws IOException {
    try (PlanSheet book = empty(office)) {
      book.rows("batteries", battery("battery", "P150", "energy", 150.0)).rows("answers", answer());
      assertThat(book.single("summary.over")).isEqualTo("2");
      assertThat(book.page("Passenger cards")).contains("written answer for SA 101", "mail 17");
      book.rows(
          "flights",
          flight(),
          flight("flight", "QB 20", "carrier", "Quay Air", "date", day("2026-06-02")));
      isNotCarried(book, "P150");
      book.rows(
          "answers",
          answer(),
          answer("flight", "QB 20", "carrier", "Quay Air", "date", day("2026-06-02")));
      assertThat(book.single("summary.over")).isEqualTo("2");
      book.rows("answers", answer("energy", 100.0), answer("number", 0.0));
      isNotCarried(book, "P150");
    }
  }

  /** US rules: a power bank is a spare, so two of each are four over 100 Wh. */
  @Test
  void power_banks_count_with_spares_under_us_rules(Office office) throws IOException {
    try (PlanSheet book = empty(office)) {
      book.type("project.flightRules", "US");
      book.rows(
          "batteries",
          battery("battery", "P150", "energy", 150.0),
          battery("battery", "bank", "energy", 150.0, "carried", "power bank"));
      book.rows(
          "answers", answer(), answer("type", "bank", "carried", "power bank", "number", 2.0));
      book.rows(
          "packing",
          row("battery", "P150", "traveller", "gaffer", "pieces", 2.0),
          row("battery", "bank", "traveller", "gaffer", "pieces", 2.0));
      assertThat(book.column("lines.verdict")).containsExactly("stop", "stop");
      assertThat(book.single("summary.carried")).isEqualTo("0");
    }
  }

  @Test
  void a_spare_in_the_hold_stops(Office office) throws IOException {
    try (PlanSheet book = empty(office)) {
      book.rows("batteries", battery());
      book.rows(
          "packing", row("battery", "P98", "traveller", "gaffer", "pieces", 2.0, "bag", "hold"));
      assertThat(book.column("lines.verdict")).containsExactly("stop");
      assertThat(book.column("packing.verdict")).containsExactly("stop");
      assertThat(book.column("batteries.heldPieces")).containsExactly("2.0");
      assertThat(book.column("batteries.verdict")).containsExactly("check");
      onNoPaper(book, "P98");
    }
  }

  @Test
  void the_check_in_sheet_has_every_flight_and_type_with_its_rules(Office office)
      throws IOException {
    try (PlanSheet book = empty(office)) {
      List<Map<String, Object>> flights = new ArrayList<>();
      List<Map<String, Object>> types = new ArrayList<>();
      for (int f = 1; f <= 6; f++) {
        flights.add(flight("flight", "F" + f, "rules", f == 6 ? "US domestic" : "ICAO"));
      }
      for (int t = 1; t <= 9; t++) {
        types.add(battery("battery", "type " + t, "energy", 50.0 + t, "quantity", 1.0));
      }
      book.rows("flights", array(flights));
      book.rows("batteries", array(types));
      assertThat(book.column("checkin.type").stream().filter(t -> !t.isEmpty())).hasSize(54);
      List<String> notes = book.column("checkin.notes");
      assertThat(notes.stream().filter(n -> n.contains("Addendum 1"))).hasSize(5);
      assertThat(notes.stream().filter(n -> n.contains("49 CFR"))).hasSize(1);
    }
  }

  @TestFactory
  Stream<DynamicTest> past_the_edition_nothing_is_printed_without_the_carriers_limits(
      Office office) {
    return Stream.of("ICAO 2027-01-01", "US 2027-01-01", "ICAO 2035-06-01", "US 2035-06-01")
        .map(
            name ->
                DynamicTest.dynamicTest(
                    name,
                    () -> {
                      String[] words = name.split(" ");
                      try (PlanSheet book = empty(office)) {
                        Map<String, Object> late = flight("rules", words[0], "date", day(words[1]));
                        book.rows("flights", late).rows("batteries", battery());
                        assertThat(book.column("flights.verdict")).containsExactly("stop");
                        onNoPaper(book, "P98");
                        book.rows(
                            "flights",
                            with(late, "writtenSpares", 1.0, "writtenReference", "mail 9"));
                        assertThat(book.column("flights.verdict")).containsExactly("check");
                        assertThat(book.single("summary.carried")).isEqualTo("1");
                        assertThat(book.page("Check-in sheet"))
                            .contains("31 Dec 2026", "spares 1", "mail 9")
                            .doesNotContain("memory", "Summary");
                      }
                    }));
  }

  @TestFactory
  Stream<DynamicTest> freight_that_is_not_complete_is_withheld(Office office) {
    return Stream.of(
        freight(office, "complete", b -> {}, 1),
        freight(office, "charge 90 %", b -> b.put("charge", 0.9), 0),
        freight(office, "charge blank", b -> b.put("charge", ""), 0),
        freight(office, "charge of one of two", b -> b.put("chargePieces", 1.0), 0),
        freight(office, "UN 38.3 blank", b -> b.put("un383", ""), 0),
        freight(office, "UN 38.3 no", b -> b.put("un383", "no"), 0),
        freight(office, "no weight", b -> b.put("kilograms", ""), 0),
        freight(office, "on a passenger aircraft", b -> b.put("rest", "passenger aircraft"), 0),
        freight(office, "sets not known", b -> b.put("packed", "with equipment"), 0));
  }

  private DynamicTest freight(
      Office office, String name, Consumer<Map<String, Object>> change, int rows) {
    return DynamicTest.dynamicTest(
        name,
        () -> {
          try (PlanSheet book = empty(office)) {
            book.type("project.rest", "cargo aircraft");
            book.type("project.handOver", day("2026-05-28"));
            Map<String, Object> battery =
                battery("battery", "P294", "energy", 294.0, "kilograms", 2.1, "charge", 0.3);
            battery.put("chargePieces", 2.0);
            change.accept(battery);
            book.rows("batteries", battery);
            assertThat(book.column("freight.battery").stream().filter("P294"::equals))
                .hasSize(rows);
            assertThat(book.page("Freight papers").contains("P294")).isEqualTo(rows == 1);
            assertThat(book.page("Freight papers")).contains("not a Shipper's Declaration");
            if (rows == 1) {
              assertThat(book.page("Freight papers"))
                  .contains("UN 3480", "Lithium ion batteries", "PI 965", "IA", "Confirm PI 965")
                  .contains("desk");
            }
          }
        });
  }

  @Test
  void after_the_freight_edition_freight_papers_stop(Office office) throws IOException {
    try (PlanSheet book = empty(office)) {
      book.type("project.rest", "cargo aircraft").type("project.handOver", day("2035-06-01"));
      book.rows("batteries", battery("battery", "P294", "energy", 294.0, "charge", 0.3));
      assertThat(book.page("Freight papers")).doesNotContain("P294");
      assertThat(book.column("lines.verdict")).containsExactly("stop");
      assertThat(book.single("summary.handOverBy")).isEmpty();
    }
  }

  @TestFactory
  Stream<DynamicTest> what_the_rules_leave_open_is_carried(Office office) {
    return Stream.of(
        carried(
            office,
            "two spares of 150 Wh and a camera with 150 Wh inside",
            5,
            List.of(
                battery("battery", "P150", "energy", 150.0),
                battery(
                    "battery",
                    "cam",
                    "energy",
                    150.0,
                    "carried",
                    "in equipment",
                    "quantity",
                    1.0,
                    "type",
                    "P150"),
                battery())),
        carried(
            office,
            "19 spares and two power banks after 27 March 2026",
            21,
            List.of(
                battery("quantity", 19.0),
                battery("battery", "bank", "energy", 74.0, "carried", "power bank"))),
        carried(
            office,
            "NiMH beside an answer for lithium-ion",
            6,
            List.of(battery("battery", "AA", "energy", "", "chemistry", "NiMH", "quantity", 6.0))),
        carried(
            office,
            "V × Ah without Wh",
            2,
            List.of(battery("energy", "", "volts", 14.4, "ampHours", 6.8))),
        carried(
            office,
            "lithium metal of 2 g",
            2,
            List.of(battery("energy", "", "chemistry", "lithium metal", "lithium", 2.0))),
        carried(
            office,
            "100 Wh with the last digits of a division",
            2,
            List.of(battery("energy", 0.1 * 3 * 1000 / 3))),
        carried(
            office,
            "sealed lead",
            2,
            List.of(battery("energy", 84.0, "chemistry", "lead, sealed", "volts", 12.0))));
  }

  private DynamicTest carried(
      Office office, String name, int pieces, List<Map<String, Object>> batteries) {
    return DynamicTest.dynamicTest(
        name,
        () -> {
          try (PlanSheet book = empty(office)) {
            book.rows("batteries", array(batteries));
            book.rows("answers", answer(), answer("carried", "in equipment", "number", 1.0));
            assertThat(book.single("summary.carried")).isEqualTo("" + pieces);
          }
        });
  }

  @Test
  void the_fewest_travellers_are_those_of_the_strictest_flight(Office office) throws IOException {
    try (PlanSheet book = empty(office)) {
      book.rows(
          "batteries",
          battery("battery", "bank", "energy", 74.0, "carried", "power bank", "quantity", 6.0));
      assertThat(book.single("summary.fewestTravellers")).isEqualTo("3");
      book.rows("flights", flight("rules", "US"), flight("flight", "QB 20"));
      book.rows("batteries", battery("quantity", 41.0));
      assertThat(book.single("summary.fewestTravellers")).isEqualTo("3");
    }
  }

  @Test
  void an_unfinished_row_says_what_is_blank(Office office) throws IOException {
    try (PlanSheet book = empty(office)) {
      book.rows("batteries", battery("condition", "", "terminals", "yes"));
      assertThat(book.column("batteries.reasons"))
          .containsExactly("Condition is blank. Fill it in.");
    }
  }

  @Test
  void blank_terminals_are_a_check_and_their_column_is_open(Office office) throws IOException {
    try (PlanSheet book = empty(office)) {
      assertThat(book.layout().columns(book.table("batteries")))
          .filteredOn(c -> c.input() != null && c.input().key().equals("terminals"))
          .singleElement()
          .matches(c -> !c.grouped());
      for (String open : List.of("chemistry", "charge", "by", "type")) {
        assertThat(isOpen(book, "batteries", open)).as(open).isEqualTo(!open.equals("type"));
      }
      for (String open : List.of("energy", "number", "reference", "answered")) {
        assertThat(isOpen(book, "answers", open)).as(open).isTrue();
      }
      book.rows("batteries", battery());
      assertThat(book.column("batteries.verdict")).containsExactly("check");
      assertThat(book.page("Passenger cards")).doesNotContain("Terminals covered");
      book.rows("batteries", battery("terminals", "yes"));
      assertThat(book.column("batteries.verdict")).containsExactly("ok");
      assertThat(book.page("Passenger cards")).contains("Terminals covered.");
    }
  }

  /** Whether a column to fill stands outside the closed group, and is not folded with another. */
  private static boolean isOpen(PlanSheet book, String table, String key) {
    PlanLayout.Place place = book.layout().place(book.layout().input(table + "." + key));
    Object columns =
        UnoRuntime.queryInterface(
                XColumnRowRange.class, book.range(place.tab(), place.column(), place.row(), 1, 1))
            .getColumns();
    return (Boolean) UnoAccess.get(columns, "IsVisible");
  }

  @Test
  void over_160_wh_says_not_in_baggage(Office office) throws IOException {
    try (PlanSheet book = empty(office)) {
      book.rows("batteries", battery("battery", "P290", "energy", 290.0, "outputs", "yes"));
      assertThat(book.column("batteries.maxCarried")).containsExactly("0.0");
      assertThat(book.column("batteries.reasons").get(0))
          .contains("Over 160 Wh: not in baggage")
          .doesNotContain("two a person");
    }
  }

  /** Out by cargo aircraft, back by road: each has its row, and a day that is blank is an issue. */
  @Test
  void the_way_back_is_planned_or_an_open_issue(Office office) throws IOException {
    try (PlanSheet book = empty(office)) {
      book.type("project.handOver", day("2026-05-28"));
      book.rows(
          "batteries",
          with(
              battery("battery", "P294", "energy", 294.0, "charge", 0.3, "by", "cargo aircraft"),
              "chargePieces",
              2.0));
      assertThat(String.join("\n", book.column("issues.reasons"))).contains("way back");
      assertThat(book.column("freight.direction")).containsOnly("out").isNotEmpty();
      book.type("project.backOn", day("2026-06-20"));
      assertThat(book.column("freight.direction")).containsOnly("out").isNotEmpty();
      assertThat(book.column("lines.verdict")).contains("stop");
      book.type("project.back", "road");
      assertThat(book.column("freight.direction")).containsOnly("out").isNotEmpty();
      assertThat(book.column("road.direction")).containsOnly("back").isNotEmpty();
    }
  }

  @Test
  void a_carrier_that_has_not_answered_is_asked(Office office) throws IOException {
    try (PlanSheet book = empty(office)) {
      book.type("project.production", "The Salt Road");
      book.rows("batteries", battery("battery", "P150", "energy", 150.0, "quantity", 5.0));
      assertThat(book.column("questions.carrier")).containsExactly("Salt Air");
      assertThat(book.column("questions.text").get(0))
          .contains("The Salt Road", "SA 101", "P150, Li-ion, 150 Wh each", "2 in all", "gaffer");
      book.rows("answers", answer());
      assertThat(book.column("questions.carrier")).isEmpty();
      assertThat(book.page("Passenger cards"))
          .contains("The Salt Road", "desk", "do not touch it", "security staff");
    }
  }

  @Test
  void the_carrier_is_quoted_as_written_and_cards_count(Office office) throws IOException {
    try (PlanSheet book = empty(office)) {
      book.rows(
          "flights",
          flight(
              "writtenSpares",
              12.0,
              "writtenOver",
              5.0,
              "writtenBanks",
              6.0,
              "writtenReference",
              "mail 9"));
      book.rows("batteries", battery());
      assertThat(book.column("flights.verdict")).containsExactly("check");
      assertThat(book.page("Check-in sheet"))
          .contains("spares 12, over 100 Wh 5, power banks 6; mail 9")
          .contains("spares 12, over 100 Wh 2, power banks 2");
      assertThat(book.page("Passenger cards")).contains("Spares 2 of 12");
    }
  }

  @Test
  void a_card_for_each_of_25_travellers(Office office) throws IOException {
    try (PlanSheet book = empty(office)) {
      List<Map<String, Object>> people = new ArrayList<>();
      for (int t = 1; t <= 25; t++) {
        people.add(row("traveller", "role " + t));
      }
      book.rows("travellers", array(people));
      book.rows("batteries", battery("quantity", 25.0));
      assertThat(book.column("cards.battery").stream().filter("P98"::equals)).hasSize(25);
    }
  }

  @Test
  void more_issues_than_fit_say_so(Office office) throws IOException {
    try (PlanSheet book = empty(office)) {
      book.rows("batteries", array(faulty()));
      assertThat(book.column("issues.verdict")).hasSize(16);
      assertThat(book.page("Summary")).contains("More than these");
    }
  }

  private static List<Map<String, Object>> faulty() {
    return List.of(
        battery("battery", "a", "condition", "dropped"),
        battery("battery", "b", "condition", "recalled"),
        battery("battery", "c", "condition", "contacts"),
        battery("battery", "d", "register", "quarantine"),
        battery("battery", "e", "register", "not tested", "quantity", 1.0),
        battery("battery", "f", "energy", ""),
        battery("battery", "g", "energy", 0.0),
        battery("battery", "h", "volts", 10.0, "ampHours", 5.0),
        battery("battery", "i", "chemistry", "lithium metal"),
        battery("battery", "j", "chemistry", "lead, sealed"),
        battery("battery", "k", "chemistry", "lead, wet"),
        battery("battery", "l", "outputs", "yes"),
        battery("battery", "m", "terminals", "no"),
        battery("battery", "n", "un383", "no"),
        battery("battery", "o", "un383", ""),
        battery("battery", "p", "user", "nobody"),
        battery("battery", "q", "energy", 150.0),
        battery("battery", "r", "energy", "", "volts", 10.0, "ampHours", 5.0),
        battery("battery", "s", "condition", ""));
  }

  /** The bags of each traveller take so many kg; weights may be typed in lb. */
  @Test
  void weights_in_pounds_have_their_unit_in_the_heading(Office office) throws IOException {
    try (PlanSheet book = empty(office)) {
      assertThat(book.page("Batteries").replace("\n", " ")).contains("(kg)");
      book.type("project.weightUnit", "lb");
      book.rows("travellers", row("traveller", "gaffer", "cabinKg", 3.0));
      book.rows("batteries", battery("kilograms", 2.0));
      assertThat(book.page("Batteries")).contains("(lb)").doesNotContain("one (kg)");
      assertThat(book.single("summary.carried")).isEqualTo("1");
    }
  }

  /**
   * Five travellers, three flights, 40 batteries by type: at most 60 cells, counted in the file.
   */
  @Test
  void five_travellers_three_flights_forty_batteries_in_sixty_cells(Office office)
      throws IOException {
    try (PlanSheet book = new PlanSheet(office, TEMPLATE, workbook)) {
      int before = filled(book);
      book.type("project.contact", "desk, +00 000").type("project.backOn", day("2026-06-12"));
      Map<String, Object> out = flight();
      Map<String, Object> on = flight("flight", "QB 20", "carrier", "Quay Air");
      Map<String, Object> back = flight("flight", "SA 102", "date", day("2026-06-09"));
      book.rows("flights", out, on, back);
      book.rows(
          "travellers",
          row("traveller", "gaffer"),
          row("traveller", "best boy"),
          row("traveller", "1st AC"),
          row("traveller", "2nd AC"),
          row("traveller", "sound"));
      book.rows("answers", answerFor(out), answerFor(on), answerFor(back));
      Map<String, Object> p98 =
          row("battery", "P98", "energy", 98.0, "quantity", 25.0, "condition", "fine");
      p98.putAll(row("terminals", "yes", "un383", "yes"));
      Map<String, Object> p150 = with(p98, "battery", "P150", "energy", 150.0, "quantity", 5.0);
      Map<String, Object> p294 = with(p98, "battery", "P294", "energy", 294.0, "quantity", 10.0);
      p294.put("kilograms", 2.1);
      book.rows("batteries", p98, p150, p294);
      assertThat(filled(book) - before).isBetween(50, 60);
      assertThat(book.single("summary.pieces")).isEqualTo("40");
      assertThat(book.single("summary.carried")).isEqualTo("30");
      assertThat(book.single("summary.road")).isEqualTo("10");
      assertThat(book.single("summary.held")).isEqualTo("0");
      assertThat(book.column("travellers.pieces")).hasSize(5);
      assertThat(book.column("issues.verdict")).doesNotContain("stop");
    }
  }

  private static Map<String, Object> answerFor(Map<String, Object> flight) {
    Map<String, Object> answer = answer();
    answer.putAll(flight);
    return answer;
  }

  /** Cells of the file that are to fill and not blank. */
  private int filled(PlanSheet book) {
    int filled = 0;
    for (PlanTable table : workbook.parts(PlanTable.class).toList()) {
      int rows = table.inputs().rows();
      Object[][] cells =
          UnoRuntime.queryInterface(
                  XCellRangeData.class, book.inputs(table.inputs().key(), 0, rows))
              .getDataArray();
      filled += (int) Stream.of(cells).flatMap(Stream::of).filter(c -> !"".equals(c)).count();
    }
    for (PlanFields fields : workbook.parts(PlanFields.class).toList()) {
      filled +=
          (int) fields.columns().stream().filter(c -> !"".equals(book.typed(c.path()))).count();
    }
    return filled;
  }

  /** A list of serials is pasted; beside it at most 60 cells. */
  @Test
  void five_travellers_three_flights_forty_serials_in_sixty_cells(Office office)
      throws IOException {
    try (PlanSheet book = new PlanSheet(office, TEMPLATE, workbook)) {
      int typed = 1;
      book.type("project.contact", "desk, +00 000");
      Map<String, Object> out = row("flight", "SA 101", "date", day("2026-06-01"));
      Map<String, Object> on = row("flight", "QB 20", "date", day("2026-06-01"));
      Map<String, Object> back = row("flight", "SA 102", "date", day("2026-06-09"));
      out.put("carrier", "Salt Air");
      on.put("carrier", "Quay Air");
      back.put("carrier", "Salt Air");
      book.rows("flights", out, on, back);
      typed += 9;
      List<Map<String, Object>> people = new ArrayList<>();
      for (String role : List.of("gaffer", "best boy", "1st AC", "2nd AC", "sound")) {
        people.add(row("traveller", role));
        typed++;
      }
      book.rows("travellers", array(people));
      List<Map<String, Object>> answers = new ArrayList<>();
      for (Map<String, Object> flight : List.of(out, on, back)) {
        Map<String, Object> answer = answer("answered", day("2026-05-01"));
        answer.putAll(flight);
        answers.add(answer);
        typed += answer.size();
      }
      book.rows("answers", array(answers));
      List<Map<String, Object>> list = new ArrayList<>();
      for (int b = 1; b <= 40; b++) {
        boolean large = b > 32;
        list.add(
            battery(
                "battery",
                (large ? "P150-" : "P98-") + b,
                "type",
                large ? "P150" : "P98",
                "energy",
                large ? 150.0 : 98.0,
                "quantity",
                "",
                "register",
                "keep"));
      }
      book.rows("batteries", array(list));
      assertThat(typed).isLessThanOrEqualTo(60);
      assertThat(book.single("summary.carried")).isEqualTo("40");
      assertThat(book.column("travellers.pieces")).hasSize(5);
    }
  }

  /**
   * SHEETS of the project's design: Summary, a check-in sheet a carrier, cards, road or freight.
   */
  private static final int PAGES = 5;

  @Test
  void the_papers_of_the_example_are_few(Office office) throws Exception {
    try (PlanSheet book = new PlanSheet(office, EXAMPLE, workbook).calculated()) {
      assertThat(book.single("summary.verdict")).isEqualTo("stop");
      assertThat(pages(office, book, MessageCatalog.english())).isBetween(4, PAGES);
    }
  }

  /** Five travellers, three flights of two carriers, 40 batteries: at most five pages. */
  @TestFactory
  Stream<DynamicTest> the_papers_of_forty_batteries_are_few(Office office) {
    return Stream.of("en", "de", "fr", "es")
        .filter(language -> Files.exists(template(language)))
        .map(language -> DynamicTest.dynamicTest(language, () -> papersAreFew(office, language)));
  }

  private void papersAreFew(Office office, String language) throws Exception {
    MessageCatalog words = MessageCatalog.in(language, MessageCatalog.Speaker.SHEETS);
    try (PlanSheet book = new PlanSheet(office, template(language), workbook, words)) {
      forty(book);
      assertThat(book.single("summary.pieces")).isEqualTo("40");
      assertThat(pages(office, book, words)).isBetween(4, PAGES);
      book.type("project.rest", "cargo aircraft").type("project.handOver", day("2026-05-28"));
      assertThat(book.column("freight.battery")).contains("P294");
      assertThat(pages(office, book, words)).isBetween(4, PAGES);
    }
  }

  private static Path template(String language) {
    return Path.of("target/sheets/templates/" + language + "/battery-travel-list.ots");
  }

  private static void forty(PlanSheet book) throws IOException {
    book.type("project.production", "The Salt Road").type("project.revision", 2.0);
    book.type("project.issued", day("2026-05-20")).type("project.contact", "desk, +00 000");
    book.type("project.back", "stays");
    Map<String, Object> out = flight("from", "Home", "to", "Hub");
    Map<String, Object> on = flight("flight", "QB 20", "carrier", "Quay Air");
    on.putAll(row("from", "Hub", "to", "Quay"));
    Map<String, Object> back = flight("flight", "SA 102", "date", day("2026-06-09"));
    back.putAll(row("from", "Quay", "to", "Home"));
    book.rows("flights", out, on, back);
    book.rows(
        "travellers",
        row("traveller", "Camera operator", "ownBanks", 1.0),
        row("traveller", "1st AC"),
        row("traveller", "2nd AC"),
        row("traveller", "DIT", "ownSpares", 2.0, "ownBanks", 1.0),
        row("traveller", "Sound mixer"));
    book.rows("answers", answerFor(out), answerFor(on), answerFor(back));
    book.rows(
        "batteries",
        battery("battery", "P98", "quantity", 12.0, "terminals", "yes"),
        battery("battery", "Body", "quantity", 2.0, "carried", "in equipment", "user", "1st AC"),
        battery(
            "battery",
            "P150",
            "energy",
            150.0,
            "quantity",
            8.0,
            "kilograms",
            1.1,
            "terminals",
            "yes"),
        battery(
            "battery",
            "AA",
            "energy",
            "",
            "quantity",
            8.0,
            "chemistry",
            "NiMH",
            "kilograms",
            0.03,
            "user",
            "Sound mixer"),
        battery("battery", "Laptop", "energy", 90.0, "carried", "in equipment", "user", "DIT"),
        battery("battery", "Drone", "energy", 77.0, "quantity", 5.0, "terminals", "yes"),
        battery("battery", "Bank", "energy", 74.0, "carried", "power bank", "quantity", 1.0),
        battery(
            "battery",
            "P294",
            "energy",
            294.0,
            "quantity",
            2.0,
            "kilograms",
            2.1,
            "charge",
            0.3,
            "chargePieces",
            2.0));
  }

  /** Pages of all papers, hidden ones among them, with print ranges set. */
  private int pages(Office office, PlanSheet book, MessageCatalog words) throws Exception {
    CommandDriver.command(office, book.document(), "fit");
    workbook.tabs().stream()
        .filter(PlanTab::isPaper)
        .forEach(t -> UnoAccess.set(book.sheet(words.of(t.name())), "IsVisible", true));
    Path pdf = office.workFolder().resolve("papers.pdf");
    PropertyValue filter = new PropertyValue();
    filter.Name = "FilterName";
    filter.Value = "calc_pdf_Export";
    UnoRuntime.queryInterface(XStorable.class, book.document())
        .storeToURL(office.address(pdf), new PropertyValue[] {filter});
    String text = Files.readString(pdf, StandardCharsets.ISO_8859_1);
    return text.split("/Type\\s*/Page\\b", -1).length - 1;
  }
}
