package org.setpower.handbook;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.setpower.addin.SharedOffice;
import org.setpower.addin.TestSheet;
import org.setpower.base.Numbers;
import org.setpower.office.Office;
import org.setpower.registry.FunctionSpec;
import org.setpower.registry.groups.FunctionRegistry;

/** Every formula that users are shown, typed into a cell as it is printed. */
@ExtendWith(SharedOffice.class)
@Tag("one-office")
class ExamplesIT {
  private static final Path HANDBOOK = Path.of("target/generated/handbook");

  /** Far from the cells that formulas of the handbook name. */
  private static final String CELL = "AX900";

  /** What a formula shows that the office cannot read: syntax, a name or a function unknown. */
  private static final List<Integer> UNREADABLE =
      List.of(501, 507, 508, 509, 510, 511, 516, 525, 533, 539);

  private static final Pattern CODE = Pattern.compile("<code>(=[^<]*)</code>");

  /** A formula in code, "gives" or the next cell of a table, its result. */
  private static final Pattern WITH_RESULT =
      Pattern.compile(CODE + "(?: gives |</td>\\s*<td[^>]*>)(?:<strong>)?([^<]*)");

  private static final Pattern NUMBER =
      Pattern.compile("^(−?[0-9]+(?:\\.([0-9]+))?)( ?%)?(?![0-9.])");

  private TestSheet sheet;

  @BeforeEach
  void open(Office office) throws IOException {
    sheet = TestSheet.firstOf(office.newSpreadsheet());
  }

  @AfterEach
  void close() {
    sheet.close();
  }

  @Test
  void an_example_of_the_reference_gives_what_is_printed_beside_it() {
    List<String> wrong = new ArrayList<>();
    int tried = 0;
    for (FunctionSpec f : FunctionRegistry.all()) {
      for (FunctionSpec.Example example : f.examples()) {
        tried++;
        String printed =
            example.result() instanceof Double d
                ? Numbers.format(d).replace('-', '−')
                : example.result().toString();
        complain(wrong, "reference", example.formula(), printed);
      }
    }
    assertThat(wrong).isEmpty();
    assertThat(tried).isGreaterThanOrEqualTo(FunctionRegistry.all().size() - 2);
  }

  @Test
  void a_formula_of_the_handbook_gives_what_is_printed_beside_it() throws IOException {
    List<String> wrong = new ArrayList<>();
    int tried = 0;
    for (Path page : pages()) {
      for (MatchResult m : WITH_RESULT.matcher(text(page)).results().toList()) {
        if (!namesCells(plain(m.group(1)))) {
          tried++;
          complain(wrong, page.getFileName().toString(), plain(m.group(1)), plain(m.group(2)));
        }
      }
    }
    assertThat(wrong).isEmpty();
    assertThat(tried).isGreaterThan(90);
  }

  @Test
  void the_office_can_read_every_formula_of_the_handbook() throws IOException {
    List<String> wrong = new ArrayList<>();
    int tried = 0;
    for (Path page : pages()) {
      for (MatchResult m : CODE.matcher(text(page)).results().toList()) {
        tried++;
        String formula = plain(m.group(1));
        if (UNREADABLE.contains(sheet.put(CELL, formula).error(CELL)) || hasHoles(formula)) {
          wrong.add(page.getFileName() + ": " + formula + " shows " + sheet.shown(CELL));
        }
      }
    }
    assertThat(wrong).isEmpty();
    assertThat(tried).isGreaterThan(110);
  }

  /**
   * A bar parts the cells of a table, also within a formula, unless it stands behind a backslash.
   */
  @Test
  void no_formula_is_cut_in_two_by_a_table() throws IOException {
    for (Path page : pages()) {
      assertThat(text(page)).as(page.getFileName().toString()).doesNotContain("`=");
    }
  }

  /** A formula that only shows a form, such as =NAME(…), belongs in words, not behind "=". */
  private static boolean hasHoles(String formula) {
    return formula.contains("…");
  }

  private void complain(List<String> wrong, String where, String formula, String printed) {
    sheet.put(CELL, formula);
    if (!isShown(printed)) {
      wrong.add(where + ": " + formula + " shows " + sheet.shown(CELL) + ", not " + printed);
    }
  }

  /** Whether the cell holds what is printed, to the last digit that is. */
  private boolean isShown(String printed) {
    if (sheet.error(CELL) != 0) {
      return printed.startsWith(sheet.shown(CELL));
    }
    Optional<MatchResult> number = NUMBER.matcher(printed).results().findFirst();
    if (number.isEmpty() || !isNumber()) {
      return sheet.shown(CELL).equals(printed);
    }
    int places = number.get().group(2) == null ? 0 : number.get().group(2).length();
    double share = number.get().group(3) == null ? 1 : 100;
    BigDecimal rounded =
        BigDecimal.valueOf(sheet.number(CELL) * share).setScale(places, RoundingMode.HALF_UP);
    return rounded.compareTo(new BigDecimal(number.get().group(1).replace('−', '-'))) == 0;
  }

  private boolean isNumber() {
    return sheet.data(CELL)[0][0] instanceof Double;
  }

  private static List<Path> pages() throws IOException {
    try (Stream<Path> files = Files.walk(HANDBOOK)) {
      return files
          .filter(f -> f.toString().endsWith(".html") && !f.endsWith("all.html"))
          .sorted()
          .toList();
    }
  }

  private static String text(Path page) throws IOException {
    return Files.readString(page).replace('\u00a0', ' ');
  }

  private static String plain(String html) {
    return html.replace("&quot;", "\"")
        .replace("&lt;", "<")
        .replace("&gt;", ">")
        .replace("&amp;", "&")
        .strip();
  }

  private static boolean namesCells(String formula) {
    return Pattern.compile("\\b[A-Z]{1,3}\\$?[0-9]+\\b")
        .matcher(formula.replaceAll("\"[^\"]*\"", ""))
        .find();
  }
}
