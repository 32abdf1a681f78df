package org.setpower.plan.lighting.diagram;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.setpower.plan.common.Messages;
import org.setpower.plan.common.PlanResult;
import org.setpower.plan.finding.Finding;
import org.setpower.plan.lighting.diagram.Branch.Bar;
import org.setpower.plan.lighting.diagram.Element.Rect;
import org.setpower.plan.lighting.diagram.Element.Text;
import org.setpower.plan.lighting.input.MeasureSystem;

/**
 * Lays the diagram out on pages: as one tree where that fits; else with each distro apart, on the
 * same page or, where that does not fit either, on a page of its own.
 */
public final class DiagramLayout {
  /** The smallest text, in points. */
  public static final double SMALLEST = 7;

  /** Where trees are cut, as far as it takes until each part fits. */
  private static final List<Bar> CUTS = List.of(Bar.THICK, Bar.THIN, Bar.NONE);

  private static final List<Panel.Style> STYLES =
      List.of(
          new Panel.Style(900, 8),
          new Panel.Style(900, SMALLEST),
          new Panel.Style(800, SMALLEST),
          new Panel.Style(720, SMALLEST));

  private static final Panel.Style APART = new Panel.Style(900, SMALLEST);
  private static final int BETWEEN = 600;
  private static final int BELOW = 300;
  private static final int PAD = 100;

  /** Stands in for the number of a page until it is known. */
  private static final String ANY_PAGE = "88";

  private final DiagramTexts texts;
  private final Paper paper;
  private final TitleBlock title;
  private final List<String> stops;
  private final int head;
  private final int width;
  private final int height;

  /** Numbers of the pages on which what stands apart begins. */
  private final Map<String, Integer> pageOf = new HashMap<>();

  /**
   * What the title names.
   *
   * @param job its name; empty where it is not known
   * @param revision of the plan; empty where it is not known
   */
  public record Title(String job, String revision) {}

  /** A part that is drawn as one, and where. */
  private record Placed(Panel panel, int page, int x, int y, int width) {}

  /** A part that waits for its place; a new page begins with some. */
  private record Part(String name, Panel panel, boolean begins) {}

  private DiagramLayout(DiagramPlan plan, DiagramTexts texts, Paper paper, Title named) {
    this.texts = texts;
    this.paper = paper;
    width = paper.innerWidth();
    title = new TitleBlock(plan, texts, named.job(), named.revision(), width);
    List<String> lines = new ArrayList<>();
    texts
        .stops(plan.stops())
        .forEach(s -> lines.addAll(Font.wrap(s, SMALLEST, false, width - 2 * PAD)));
    stops = lines.size() > 12 ? lines.subList(0, 12) : lines;
    head = stops.isEmpty() ? 0 : stops.size() * Font.height(SMALLEST) + 3 * PAD;
    height = paper.innerHeight() - title.height() - head;
  }

  /** The pages of a calculated plan; one that says why, where it cannot be trusted. */
  public static List<DiagramPage> of(
      PlanResult result, Paper paper, Messages messages, Locale locale, Title title) {
    Optional<DiagramPlan> plan = result.part(DiagramPlan.class);
    if (plan.isPresent()) {
      return of(plan.get(), paper, messages, locale, title);
    }
    List<Finding> faults = result.faults();
    DiagramPlan none =
        new DiagramPlan(
            MeasureSystem.METRIC,
            null,
            faults,
            List.of(),
            List.of(),
            Map.of(),
            Map.of(),
            Map.of(),
            false);
    return of(none, paper, messages, locale, title);
  }

  /** The pages of a plan. */
  public static List<DiagramPage> of(
      DiagramPlan plan, Paper paper, Messages messages, Locale locale, Title title) {
    DiagramTexts texts = new DiagramTexts(messages, locale, plan.units());
    DiagramLayout layout = new DiagramLayout(plan, texts, paper, title);
    return layout.pages(new BranchMaker(texts).roots(plan));
  }

  /** The words that it adds to those of the plan, in English. */
  public static List<String> words() {
    return DiagramWord.all();
  }

  private List<DiagramPage> pages(List<Branch> roots) {
    if (roots.isEmpty()) {
      return draw(List.of());
    }
    for (Panel.Style style : STYLES) {
      Panel all = new Panel(roots, style);
      if (fits(all)) {
        return draw(List.of(new Placed(all, 0, 0, 0, width)));
      }
    }
    for (Panel.Style style : STYLES) {
      Optional<List<Placed>> onOne = flow(apart(roots, style, false));
      if (onOne.isPresent()) {
        return draw(onOne.get());
      }
    }
    // twice: the second time with the numbers of the pages
    List<Placed> first = onPages(apart(roots, APART, true));
    return draw(pageOf.isEmpty() ? first : onPages(apart(roots, APART, true)));
  }

  private boolean fits(Panel panel) {
    return panel.width() <= width && panel.height(width) <= height;
  }

  /** An overview, then each distro; cut further where one does not fit by itself. */
  private List<Part> apart(List<Branch> roots, Panel.Style style, boolean pages) {
    List<Branch> cut = new ArrayList<>();
    List<Branch> overview = List.of();
    List<Part> parts = new ArrayList<>();
    for (Bar bar : CUTS) {
      cut.clear();
      overview = roots.stream().map(r -> below(r, bar, cut, pages)).toList();
      if (!isTooLarge(overview, style)) {
        break;
      }
    }
    divide(overview, style).forEach(p -> parts.add(new Part("", p, false)));
    for (Branch branch : cut) {
      List<Part> own = new ArrayList<>();
      apart(branch, style, pages, own);
      for (int i = 0; i < own.size(); i++) {
        parts.add(new Part(own.get(i).name(), own.get(i).panel(), i == 0));
      }
    }
    return parts;
  }

  /** A distro with all that hangs on it where it fits, else with its own distros apart. */
  private void apart(Branch branch, Panel.Style style, boolean pages, List<Part> parts) {
    Panel whole = new Panel(List.of(top(branch, branch.children(), false)), style);
    if (fits(whole)) {
      parts.add(new Part(branch.name(), whole, false));
      return;
    }
    List<Branch> cut = new ArrayList<>();
    List<Branch> rows = List.of();
    for (Bar bar : CUTS) {
      cut.clear();
      rows = branch.children().stream().map(c -> cut(c, bar, cut, pages)).toList();
      if (!isTooLarge(List.of(top(branch, rows, false)), style)) {
        break;
      }
    }
    divide(List.of(top(branch, rows, false)), style)
        .forEach(p -> parts.add(new Part(branch.name(), p, false)));
    cut.forEach(c -> apart(c, style, pages, parts));
  }

  /** Whether it stays too large when its rows are divided among pages. */
  private boolean isTooLarge(List<Branch> roots, Panel.Style style) {
    int wide = new Panel(roots, style).width();
    return wide > width
        || roots.stream()
            .flatMap(r -> r.children().stream().map(c -> r.withChildren(List.of(c))))
            .anyMatch(r -> new Panel(List.of(r), style).height(most(wide)) > height);
  }

  /** The width that a part takes where its rows are divided. */
  private int most(int wide) {
    return Math.min(width, Math.max(wide, width / 2 - BETWEEN));
  }

  private Branch top(Branch branch, List<Branch> rows, boolean continued) {
    String name = DiagramTexts.fit(branch.name().isBlank() ? "?" : branch.name(), SMALLEST, 3600);
    String from = DiagramTexts.fit(branch.from(), SMALLEST, 3600);
    String words =
        continued
            ? texts.say(DiagramWord.CONTINUED, name)
            : from.isBlank() ? name : texts.say(DiagramWord.FROM, name, from);
    return Branch.top(
        branch.name(), List.of(List.of(Span.bold(words, Ink.ACCENT))), Bar.THICK, rows);
  }

  /**
   * Cuts what hangs on a distro from a tree.
   *
   * @param bar THICK cuts at distros, THIN wherever a line divides, NONE at the end of each cable
   */
  private Branch cut(Branch branch, Bar bar, List<Branch> cut, boolean pages) {
    boolean all = bar == Bar.NONE;
    boolean here = !branch.isLeaf() && (all || branch.bar() == Bar.THICK || branch.bar() == bar);
    if (here) {
      cut.add(branch);
      String name = DiagramTexts.fit(branch.name(), SMALLEST, 2400);
      Integer page = pageOf.get(branch.name());
      return branch.cut(
          pages
              ? texts.say(DiagramWord.SEE_PAGE, name, page == null ? ANY_PAGE : page)
              : texts.say(DiagramWord.SEE, name));
    }
    return below(branch, bar, cut, pages);
  }

  private Branch below(Branch branch, Bar bar, List<Branch> cut, boolean pages) {
    return branch.withChildren(
        branch.children().stream().map(c -> cut(c, bar, cut, pages)).toList());
  }

  /** Parts that fit on a page each, the rows of a bar divided where they are too many. */
  private List<Panel> divide(List<Branch> roots, Panel.Style style) {
    Panel all = new Panel(roots, style);
    int most = most(all.width());
    if (all.height(most) <= height) {
      return List.of(all);
    }
    List<Panel> panels = new ArrayList<>();
    List<Branch> some = new ArrayList<>();
    for (Branch root : roots) {
      Branch left = root;
      List<Branch> more = new ArrayList<>(some);
      more.add(left);
      if (new Panel(more, style).height(most) <= height) {
        some.add(left);
        continue;
      }
      if (!some.isEmpty()) {
        panels.add(new Panel(some, style));
        some.clear();
      }
      List<Branch> pieces = pieces(left, style, most);
      pieces.subList(0, pieces.size() - 1).forEach(p -> panels.add(new Panel(List.of(p), style)));
      some.add(pieces.get(pieces.size() - 1));
    }
    panels.add(new Panel(some, style));
    return panels;
  }

  /** A row with as many of those on its bar as fit, and the others below its name again. */
  private List<Branch> pieces(Branch root, Panel.Style style, int most) {
    List<Branch> pieces = new ArrayList<>();
    List<Branch> rows = new ArrayList<>();
    Branch top = root;
    for (Branch row : root.children()) {
      List<Branch> more = new ArrayList<>(rows);
      more.add(row);
      if (!rows.isEmpty()
          && new Panel(List.of(top.withChildren(more)), style).height(most) > height) {
        pieces.add(top.withChildren(rows));
        top = top(root, List.of(), true);
        rows = new ArrayList<>();
      }
      rows.add(row);
    }
    pieces.add(top.withChildren(rows));
    return pieces;
  }

  /** All parts in columns of one page; empty where they do not fit. */
  private Optional<List<Placed>> flow(List<Part> parts) {
    List<Placed> placed = new ArrayList<>();
    int x = 0;
    int y = 0;
    int column = 0;
    for (Part part : parts) {
      int wide = part.panel().width();
      int high = part.panel().height(wide);
      if (y > 0 && y + high > height) {
        x += column + BETWEEN;
        y = 0;
        column = 0;
      }
      if (high > height || x + wide > width) {
        return Optional.empty();
      }
      placed.add(new Placed(part.panel(), 0, x, y, wide));
      column = Math.max(column, wide);
      y += high + BELOW;
    }
    return Optional.of(placed);
  }

  private List<Placed> onPages(List<Part> parts) {
    List<Placed> placed = new ArrayList<>();
    int page = 0;
    int x = 0;
    int y = 0;
    int column = 0;
    for (Part part : parts) {
      int wide = part.panel().width();
      int high = part.panel().height(wide);
      // alone on a page it may be wider, and lower
      boolean whole = high > height || x == 0 && y == 0 && part.begins();
      if (!placed.isEmpty() && (part.begins() || high > height)) {
        page++;
        x = 0;
        y = 0;
        column = 0;
      } else if (y > 0 && y + high > height) {
        x += column + BETWEEN;
        y = 0;
        column = 0;
      }
      if (x > 0 && x + wide > width) { // also below a narrower one
        page++;
        x = 0;
        y = 0;
        column = 0;
      }
      int given = whole ? width : wide;
      placed.add(new Placed(part.panel(), page, x, y, given));
      pageOf.putIfAbsent(part.name(), page + 1);
      column = Math.max(column, given);
      y += part.panel().height(given) + BELOW;
    }
    return placed;
  }

  private List<DiagramPage> draw(List<Placed> placed) {
    int pages = placed.stream().mapToInt(Placed::page).max().orElse(0) + 1;
    List<DiagramPage> drawn = new ArrayList<>();
    for (int page = 0; page < pages; page++) {
      List<Element> elements = new ArrayList<>();
      box(elements);
      if (placed.isEmpty() && stops.isEmpty()) {
        String words = texts.say(DiagramWord.EMPTY);
        int wide = Font.width(words, SMALLEST, false);
        elements.add(new Text(0, 0, wide, SMALLEST, false, Ink.PLAIN, words, null));
      }
      for (Placed part : placed) {
        if (part.page() == page) {
          part.panel().draw(part.x(), head + part.y(), part.width(), elements);
        }
      }
      title.draw(paper.innerHeight(), page + 1, pages, elements);
      String name =
          texts.say(DiagramWord.TITLE) + ", " + texts.say(DiagramWord.PAGE, page + 1, pages);
      drawn.add(new DiagramPage(paper, name, elements));
    }
    return drawn;
  }

  /** What stops every row stands once, on top of each page. */
  private void box(List<Element> onto) {
    if (stops.isEmpty()) {
      return;
    }
    int line = Font.height(SMALLEST);
    onto.add(new Rect(0, 0, width, stops.size() * line + 2 * PAD, Ink.STOP, Ink.STOP_GROUND));
    for (int i = 0; i < stops.size(); i++) {
      String words = stops.get(i);
      int wide = Font.width(words, SMALLEST, false);
      onto.add(new Text(PAD, PAD + i * line, wide, SMALLEST, false, Ink.STOP, words, null));
    }
  }
}
