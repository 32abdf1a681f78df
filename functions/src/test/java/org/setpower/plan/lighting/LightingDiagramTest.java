package org.setpower.plan.lighting;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.fail;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Random;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.setpower.plan.common.InputTable;
import org.setpower.plan.common.Messages;
import org.setpower.plan.common.PlanResult;
import org.setpower.plan.common.RandomTables;
import org.setpower.plan.common.Ranges;
import org.setpower.plan.finding.Severity;
import org.setpower.plan.finding.Verdict;
import org.setpower.plan.lighting.diagram.DiagramLayout;
import org.setpower.plan.lighting.diagram.DiagramPage;
import org.setpower.plan.lighting.diagram.Element;
import org.setpower.plan.lighting.diagram.Paper;
import org.setpower.plan.lighting.input.LightingFinding;
import org.setpower.plan.lighting.result.LightingResults;
import org.setpower.text.MessageCatalog;

/** The single-line diagram: nothing is left out, nothing covers another, all stands on its page. */
class LightingDiagramTest {
  private static final DiagramLayout.Title TITLE = new DiagramLayout.Title("The Salt Road", "3");

  private static List<DiagramPage> pages(PlanResult plan, Paper paper) {
    return DiagramLayout.of(plan, paper, Messages.in("en"), Locale.UK, TITLE);
  }

  private static List<DiagramPage> pages(Ranges plan, Paper paper) {
    return pages(plan.calculate(), paper);
  }

  private static List<String> words(List<DiagramPage> pages) {
    return pages.stream().flatMap(p -> p.texts().stream()).map(Element.Text::words).toList();
  }

  // What every plan keeps.

  private static void assertReadable(List<DiagramPage> pages) {
    for (DiagramPage page : pages) {
      Element.Box inside =
          new Element.Box(0, 0, page.paper().innerWidth(), page.paper().innerHeight());
      for (Element element : page.elements()) {
        if (!inside.holds(element.box())) {
          fail("%s stands outside of %s", element, page.title());
        }
      }
      List<Element.Text> texts = page.texts();
      for (int i = 0; i < texts.size(); i++) {
        assertThat(texts.get(i).points()).isGreaterThanOrEqualTo(7);
        assertThat(texts.get(i).words()).isNotBlank();
        for (int j = 0; j < i; j++) {
          if (texts.get(i).box().meets(texts.get(j).box())) {
            fail("%s over %s", texts.get(i), texts.get(j));
          }
        }
      }
    }
  }

  /** Every cable run once, every load with all its pieces, each with the verdict of its row. */
  private static void assertComplete(Ranges plan, PlanResult result, List<DiagramPage> pages) {
    Map<Integer, Integer> runs = new HashMap<>();
    Map<Integer, Double> loads = new HashMap<>();
    for (DiagramPage page : pages) {
      for (Element.Text text : page.texts()) {
        Element.Subject row = text.subject();
        if (row != null && row.table().equals("runs")) {
          runs.merge(row.row(), 1, Integer::sum);
          assertThat(row.verdict())
              .isEqualTo(result.rows(LightingResults.RUN_RESULT).get(row.row() - 1).verdict());
        } else if (row != null && row.table().equals("loads")) {
          loads.merge(row.row(), row.quantity(), Double::sum);
          assertThat(row.verdict())
              .isEqualTo(result.rows(LightingResults.LOAD_RESULT).get(row.row() - 1).verdict());
        }
      }
    }
    for (int r = 1; r <= plan.rows("runs").size(); r++) {
      boolean filled = result.rows(LightingResults.RUN_RESULT).get(r - 1) != null;
      assertThat(runs.get(r)).as("run %d of %s", r, plan).isEqualTo(filled ? (Integer) 1 : null);
    }
    for (int r = 1; r <= plan.rows("loads").size(); r++) {
      boolean filled = result.rows(LightingResults.LOAD_RESULT).get(r - 1) != null;
      Object typed = plan.rows("loads").get(r - 1).get("quantity");
      if (!filled) {
        assertThat(loads).doesNotContainKey(r);
      } else if (typed instanceof Double quantity && quantity >= 0 && quantity <= 9999) {
        assertThat(loads.get(r)).as("load %d of %s", r, plan).isEqualTo(Math.ceil(quantity));
      } else {
        assertThat(loads).containsKey(r);
      }
    }
  }

  /** Where something stops, the pages say so in words, and each sentence stands in a box. */
  private static void assertStopsShown(PlanResult result, List<DiagramPage> pages) {
    boolean stops =
        Stream.concat(
                result.rows(LightingResults.RUN_RESULT).stream()
                    .filter(r -> r != null)
                    .map(LightingResults.RunResult::verdict),
                result.rows(LightingResults.LOAD_RESULT).stream()
                    .filter(r -> r != null)
                    .map(LightingResults.LoadResult::verdict))
            .anyMatch(v -> v == Verdict.STOP);
    List<String> words = words(pages);
    if (stops) {
      assertThat(words).anyMatch(w -> w.startsWith("stop: "));
    }
    for (DiagramPage page : pages) {
      List<Element.Box> boxes =
          page.elements().stream()
              .filter(Element.Rect.class::isInstance)
              .map(Element::box)
              .toList();
      page.texts().stream()
          .filter(t -> t.words().startsWith("stop: "))
          .forEach(t -> assertThat(boxes).anyMatch(b -> b.holds(t.box())));
    }
  }

  private static void assertAll(Ranges plan, List<DiagramPage> pages, PlanResult result) {
    assertReadable(pages);
    assertComplete(plan, result, pages);
    assertStopsShown(result, pages);
  }

  @ParameterizedTest
  @EnumSource(Paper.class)
  void known_plans_keep_all_that_a_diagram_keeps(Paper paper) {
    for (Ranges plan :
        List.of(
            DiagramSamples.night(),
            DiagramSamples.nightWithStops(),
            DiagramSamples.stage(),
            LightingSamples.quay(),
            LightingSamples.pans(),
            LightingSamples.stage(),
            LightingSamples.faults(),
            LightingBenchmark.full())) {
      PlanResult result = plan.calculate();
      assertAll(plan, pages(result, paper), result);
    }
  }

  @Test
  void plans_are_readable_in_every_language() {
    for (String language : MessageCatalog.files()) {
      for (Ranges plan : List.of(DiagramSamples.night(), LightingSamples.faults())) {
        List<DiagramPage> pages =
            DiagramLayout.of(
                plan.calculate(),
                Paper.A4,
                Messages.in(language),
                Locale.forLanguageTag(language),
                TITLE);
        assertReadable(pages);
        boolean english = words(pages).contains("All days, the worst figures");
        boolean allDays = plan.rows("project").get(0).get("dayShown") == null;
        assertThat(english).as(language).isEqualTo(allDays && language.startsWith("en"));
      }
    }
  }

  @Test
  void random_plans_keep_all_that_a_diagram_keeps() {
    int drawn = 0;
    for (int seed = 0; seed < 150; seed++) {
      RandomTables random =
          new RandomTables(LightingModel.MODEL, LightingSamples::values, new Random(seed));
      Ranges plan = random.valid(3 + seed % 30);
      PlanResult result = plan.calculate();
      Paper paper = Paper.values()[seed % Paper.values().length];
      List<DiagramPage> pages = pages(result, paper);
      assertAll(plan, pages, result);
      drawn += words(pages).size();
    }
    assertThat(drawn).isGreaterThan(8_000);
  }

  // Size.

  @Test
  void twenty_cable_runs_fit_on_a_sheet_of_a4() {
    assertThat(pages(DiagramSamples.night(), Paper.A4)).hasSize(1);
    assertThat(DiagramSamples.night().rows("runs")).hasSize(20);
    assertThat(pages(DiagramSamples.tails(1, 20), Paper.A4)).hasSize(1);
    assertThat(pages(DiagramSamples.tails(2, 9), Paper.A4)).hasSize(1);
    assertThat(pages(DiagramSamples.stage(), Paper.LETTER)).hasSize(1);
  }

  @Test
  void sixty_cable_runs_fit_on_a_sheet_of_a3() {
    assertThat(pages(DiagramSamples.tails(6, 9), Paper.A3)).hasSize(1);
    assertThat(pages(DiagramSamples.tails(3, 19), Paper.A3)).hasSize(1);
  }

  @Test
  void sixty_cable_runs_are_a_page_a_distro_on_a4() {
    assertThat(pages(DiagramSamples.tails(4, 9), Paper.A4)).hasSize(5);
    List<DiagramPage> pages = pages(DiagramSamples.tails(6, 9), Paper.A4);
    assertThat(pages).hasSize(7);
    assertThat(words(pages.subList(0, 1))).contains("→ D1, page 2", "→ D6, page 7");
    assertThat(words(pages.subList(3, 4))).contains("D3 from mains", "Page 4 of 7");
  }

  // Words.

  @Test
  void a_row_has_its_outlet_above_and_its_cable_below() {
    List<String> words = words(pages(DiagramSamples.night(), Paper.A4));
    // C16 on leg 1: one LED of 1600 W, power factor 0.98: 7.15 to 7.25 A are 228.3 to 225.2 V
    assertThat(words).contains("A1-1 · C16 · 30 mA A · L1 7.2 A", "1 × LED 1600");
    assertThat(LightingPlans.load(DiagramSamples.night(), 1).volts()).isBetween(225.2, 228.3);
    assertThat(words).anyMatch(w -> w.startsWith("T1: 3G2.5 · 10 m · 0.") && w.contains("total"));
    assertThat(words).anyMatch(w -> w.startsWith("5 × 35 mm² · 70 m · "));
    assertThat(words)
        .contains("set", "behind the dike", "generator · 3PH 400 V", "C125 · 300 mA S");
    assertThat(words).contains("idle: A1-5, 6", "The Salt Road", "Day shown: 4 Feb 2027");
    assertThat(words).anyMatch(w -> w.matches("peak 4 Feb 2027 \\d\\d:00"));
    assertThat(words).contains("L1 brown", "PE green-yellow");
  }

  @Test
  void american_plans_have_feet_and_their_own_colours() {
    List<String> words = words(pages(DiagramSamples.stage(), Paper.LETTER));
    assertThat(words).contains("L1 black", "L2 red", "G green");
    assertThat(words(pages(DiagramSamples.stage().set("supplies", 1, "volts", 480), Paper.LETTER)))
        .contains("switch")
        .noneMatch(w -> w.startsWith("L1 black"));
    assertThat(words).anyMatch(w -> w.startsWith("5 × 4/0 AWG · 100 ft · "));
    assertThat(words).anyMatch(w -> w.startsWith("pipe: multi-circuit 12 AWG · 75 ft"));
  }

  @Test
  void the_decimal_mark_is_that_of_the_document() {
    List<DiagramPage> pages =
        DiagramLayout.of(
            DiagramSamples.night().calculate(), Paper.A4, Messages.in("en"), Locale.GERMANY, TITLE);
    assertThat(words(pages)).anyMatch(w -> w.startsWith("T1: 3G2,5 · 10 m · 0,"));
  }

  @Test
  void a_stop_stands_at_its_row_in_words() {
    Ranges plan = DiagramSamples.nightWithStops();
    String words = String.join(" ", words(pages(plan, Paper.A4)));
    // VDE 0298-4, five-core 1.5 mm² in free air: well below 32 A
    assertThat(words)
        .contains("stop: The upstream breaker of 32 A does not protect this cable")
        .contains("stop: There is no place B2-9.")
        .contains("Not connected")
        .contains("1 × haze")
        .contains("1 × practical stop as B1");
    assertThat(words).contains("Do not switch on what is boxed.");
  }

  @Test
  void what_cannot_be_trusted_is_not_drawn() {
    List<Object> ranges = DiagramSamples.night().list();
    int runs = LightingModel.MODEL.inputs().stream().map(InputTable::key).toList().indexOf("runs");
    ((Object[][]) ranges.get(runs))[0][1] = "source";
    List<DiagramPage> pages = pages(LightingModel.MODEL.calculate(ranges), Paper.A4);
    assertThat(pages).hasSize(1);
    assertThat(words(pages)).anyMatch(w -> w.startsWith("stop: "));
    assertThat(words(pages)).noneMatch(w -> w.contains("LED"));
    assertReadable(pages);
  }

  @Test
  void an_empty_plan_says_what_to_fill_in() {
    List<DiagramPage> pages = pages(Ranges.of(LightingModel.MODEL), Paper.A4);
    assertThat(pages).hasSize(1);
    assertReadable(pages);
  }

  @Test
  void every_stop_of_the_plan_has_its_sentence() {
    Ranges plan = LightingSamples.faults();
    PlanResult result = plan.calculate();
    String words = String.join(" ", words(pages(result, Paper.A3)));
    Messages messages = Messages.in("en");
    List<String> sentences = new ArrayList<>();
    result.rows(LightingResults.RUN_RESULT).stream()
        .filter(r -> r != null)
        .flatMap(r -> r.reasons().stream())
        .filter(f -> f.severity().compareTo(Severity.STOP) >= 0)
        .forEach(f -> sentences.add(messages.sentence(f, Locale.UK)));
    result.rows(LightingResults.LOAD_RESULT).stream()
        .filter(r -> r != null)
        .flatMap(r -> r.reasons().stream())
        .filter(f -> f.severity().compareTo(Severity.STOP) >= 0)
        // it names what feeds the load, where the sentence stands
        .filter(f -> f.key() != LightingFinding.LOAD_UPSTREAM)
        .forEach(f -> sentences.add(messages.sentence(f, Locale.UK)));
    assertThat(sentences).hasSizeGreaterThan(20);
    assertThat(sentences).allSatisfy(s -> assertThat(words).contains(s));
  }

  /** On a page of B alone nobody sees that A may not be connected. */
  @Test
  void what_is_fed_through_a_stop_names_it() {
    Ranges plan = LightingSamples.feeder("30").set("equipment", 1, "watts", 1600);
    plan.set("outlets", 2, "rcd", "30");
    plan.row("runs", "to", "stairs", "from", "A-3", "length", 5, "size", "3G2.5", "type", "rubber");
    plan.row("loads", "item", "LED 1600", "place", "stairs");
    assertThat(words(pages(plan, Paper.A4))).noneMatch(w -> w.contains("upstream"));
    plan.row("loads", "item", "LED 1600", "place", "A-5", "level", 80);
    List<String> words = words(pages(plan, Paper.A4));
    assertThat(String.join(" ", words)).contains("A, which feeds it, is a stop");
    assertThat(words).contains("stop upstream: A");
  }

  /** A row of Outlets is one finding; what it names is marked, and no other outlet of the row. */
  @Test
  void a_check_stands_at_the_outlet_it_names() {
    Ranges plan = LightingSamples.quay().set("equipment", 1, "watts", 300);
    plan.row("loads", "item", "LED 1600", "place", "A-2", "quantity", 2);
    plan.row("loads", "item", "LED 1600", "place", "A-4", "quantity", 2);
    plan.row("loads", "item", "LED 1600", "place", "A-3");
    List<String> words = words(pages(plan, Paper.A4));
    assertThat(words).anyMatch(w -> w.startsWith("A-3 ")).anyMatch(w -> w.startsWith("A-4 "));
    assertThat(words).filteredOn("check"::equals).hasSize(2);
  }

  @Test
  void a_placeholder_never_stays() {
    Pattern hole = Pattern.compile("\\{\\d?}");
    assertThat(words(pages(LightingBenchmark.full(), Paper.A4)))
        .noneMatch(w -> hole.matcher(w).find());
  }

  /**
   * Paints the samples.
   *
   * @param arguments a folder
   */
  public static void main(String[] arguments) throws IOException {
    Path folder = Path.of(arguments[0]);
    Map<String, Ranges> plans =
        Map.of(
            "night", DiagramSamples.night(),
            "stops", DiagramSamples.nightWithStops(),
            "stage", DiagramSamples.stage(),
            "pans", LightingSamples.pans(),
            "faults", LightingSamples.faults(),
            "tails", DiagramSamples.tails(6, 9));
    for (Map.Entry<String, Ranges> plan : plans.entrySet()) {
      for (Paper paper : List.of(Paper.A4, Paper.A3)) {
        List<DiagramPage> pages = pages(plan.getValue(), paper);
        for (int p = 0; p < pages.size(); p++) {
          Path file = folder.resolve(plan.getKey() + "-" + paper + "-" + (p + 1) + ".png");
          ImageIO.write(DiagramPicture.of(pages.get(p)), "png", file.toFile());
        }
      }
    }
  }

  /** The operator reads the size of the set and where its neutral is bonded off the drawing. */
  @Test
  void a_generator_has_its_size_and_its_bond_beside_it() {
    List<String> words = words(pages(DiagramSamples.night(), Paper.A4));
    assertThat(words).anyMatch(w -> w.contains("100 kVA")).anyMatch(w -> w.contains("bonded here"));
    Ranges distro = DiagramSamples.night().set("generators", 1, "bond", "at distro");
    assertThat(String.join(" ", words(pages(distro, Paper.A4))))
        .contains("neutral bonded at distro");
  }
}
