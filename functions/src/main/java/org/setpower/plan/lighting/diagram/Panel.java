package org.setpower.plan.lighting.diagram;

import java.util.ArrayList;
import java.util.List;
import org.setpower.plan.lighting.diagram.Branch.Bar;
import org.setpower.plan.lighting.diagram.Element.Line;
import org.setpower.plan.lighting.diagram.Element.Rect;
import org.setpower.plan.lighting.diagram.Element.Text;

/**
 * Rows that are drawn together, one column for each step from the source. How wide it is follows
 * from its texts; how high, from the width that boxes of stops may take.
 */
final class Panel {
  private static final int GAP = 100;
  private static final int TEXT_GAP = 40;
  private static final int PAD = 60;

  /** Room between a bar and what hangs on it, and before the next bar. */
  private static final int STUB = 200;

  private static final int BAR = 90;

  /** The narrowest column in which a box of stops stands. */
  private static final int BOX = 5000;

  /** Lines of a box at most; a name may be of any length. */
  private static final int BOX_LINES = 12;

  private static final int IDLE_WIDTH = 9000;
  private static final int LABEL_ROOM = 100;

  private final List<Branch> roots;
  private final Style style;
  private final List<Integer> leads = new ArrayList<>();
  private final List<Integer> columns = new ArrayList<>();
  private int natural;

  /**
   * How dense rows are.
   *
   * @param pitch height of a row
   * @param points size of the text, never below {@link DiagramLayout#SMALLEST}
   */
  record Style(int pitch, double points) {
    int line() {
      return Font.height(points);
    }

    /** The line of a row below the row's top: a text stands above it, one below. */
    int axis() {
      return (pitch - 2 * line() - 2 * TEXT_GAP) / 2 + line() + TEXT_GAP;
    }
  }

  Panel(List<Branch> roots, Style style) {
    this.roots = List.copyOf(roots);
    this.style = style;
    roots.forEach(r -> measure(r, 0));
    List<Integer> starts = starts(0);
    for (Branch root : roots) {
      natural = Math.max(natural, right(root, 0, starts));
    }
  }

  List<Branch> roots() {
    return roots;
  }

  private void measure(Branch branch, int depth) {
    if (leads.size() <= depth) {
      leads.add(0);
      columns.add(0);
    }
    boolean head = branch.head().isSource();
    int lead = head ? 0 : branch.symbols().lead();
    leads.set(depth, Math.max(leads.get(depth), lead));
    branch.children().forEach(c -> measure(c, depth + 1));
    int body = Math.max(width(branch.above()), width(branch.below()));
    for (List<Span> line : branch.label()) {
      body = Math.max(body, width(line));
    }
    if (!branch.isLeaf() && !branch.stops().isEmpty()) {
      body = Math.max(body, BOX);
    }
    int own = head ? Math.max(Symbols.SOURCE + branch.symbols().lead() + STUB, body) : body;
    columns.set(depth, Math.max(columns.get(depth), own + branch.symbols().tail()));
  }

  private int width(List<Span> line) {
    return Span.width(line, style.points());
  }

  /** Where the column of each step begins, and where the last ends. */
  private List<Integer> starts(int left) {
    List<Integer> starts = new ArrayList<>();
    int x = left;
    starts.add(x);
    for (int d = 0; d < columns.size(); d++) {
      x += textAt(d) + columns.get(d) + STUB;
      starts.add(x);
    }
    return starts;
  }

  /** Where texts of a column begin, counted from its bar. */
  private int textAt(int depth) {
    return STUB + leads.get(depth);
  }

  private int right(Branch branch, int depth, List<Integer> starts) {
    int right = starts.get(depth + 1) + BAR;
    if (branch.isIdle()) {
      right = starts.get(depth) + STUB + Math.min(IDLE_WIDTH, widest(branch.loads()));
    } else if (!branch.loads().isEmpty()) {
      right = loadsAt(branch, starts.get(depth + 1)) + widest(branch.loads());
    }
    if (branch.isLeaf() && !branch.stops().isEmpty()) {
      right = Math.max(right, starts.get(depth) + textAt(depth) + BOX);
    }
    for (Branch child : branch.children()) {
      right = Math.max(right, right(child, depth + 1, starts));
    }
    return right;
  }

  private int widest(List<List<Span>> lines) {
    return lines.stream().mapToInt(this::width).max().orElse(0);
  }

  private static int loadsAt(Branch branch, int end) {
    int bar = branch.bar() == Bar.NONE ? 0 : STUB;
    return end + bar + (branch.load().isDrawn() ? Symbols.LOAD + GAP : GAP);
  }

  /** The least width. */
  int width() {
    return natural;
  }

  /** Height in this width. */
  int height(int width) {
    List<Integer> starts = starts(0);
    return roots.stream().mapToInt(r -> height(r, 0, starts, width)).sum();
  }

  private int height(Branch branch, int depth, List<Integer> starts, int right) {
    int children =
        branch.children().stream().mapToInt(c -> height(c, depth + 1, starts, right)).sum();
    return Math.max(own(branch, depth, starts, right), children);
  }

  private int own(Branch branch, int depth, List<Integer> starts, int right) {
    List<String> box = box(branch, depth, starts, right);
    int boxed = box.isEmpty() ? 0 : box.size() * boxLine() + 2 * PAD + GAP;
    return body(branch, depth, starts, right) + boxed;
  }

  private static int boxLine() {
    return Font.height(DiagramLayout.SMALLEST);
  }

  /** Height without the box of stops. */
  private int body(Branch branch, int depth, List<Integer> starts, int right) {
    if (branch.isIdle()) {
      return idleLines(branch, starts.get(depth) + STUB, right).size() * style.line() + 2 * PAD;
    }
    int loads = branch.loads().size() * style.line() + TEXT_GAP;
    int height = Math.max(style.pitch(), branch.loads().size() > 2 ? loads : 0);
    if (branch.head().isSource()) {
      return sourceLabel() + branch.label().size() * style.line() + GAP;
    }
    return branch.label().isEmpty()
        ? height
        : Math.max(height, labelAt(branch) + branch.label().size() * style.line() + LABEL_ROOM);
  }

  private int sourceLabel() {
    return style.axis() + Symbols.SOURCE / 2 + TEXT_GAP;
  }

  /** Where the lines about a distro begin, below the top of its row. */
  private int labelAt(Branch branch) {
    return style.axis() + TEXT_GAP + (branch.below().isEmpty() ? 0 : style.line());
  }

  private List<String> idleLines(Branch branch, int left, int right) {
    String words = branch.loads().get(0).get(0).words();
    return cut(Font.wrap(words, style.points(), false, Math.min(IDLE_WIDTH, right - left)));
  }

  private static List<String> cut(List<String> lines) {
    if (lines.size() <= BOX_LINES) {
      return lines;
    }
    List<String> some = new ArrayList<>(lines.subList(0, BOX_LINES - 1));
    some.add("…");
    return some;
  }

  private int boxAt(Branch branch, int depth, List<Integer> starts) {
    return branch.head().isSource() || branch.isIdle()
        ? starts.get(depth) + (branch.isIdle() ? STUB : 0)
        : starts.get(depth) + textAt(depth);
  }

  private List<String> box(Branch branch, int depth, List<Integer> starts, int right) {
    if (branch.stops().isEmpty()) {
      return List.of();
    }
    int end = branch.isLeaf() ? right : starts.get(depth + 1) - STUB;
    int most = end - boxAt(branch, depth, starts) - 2 * PAD;
    List<String> lines = new ArrayList<>();
    branch.stops().forEach(s -> lines.addAll(Font.wrap(s, DiagramLayout.SMALLEST, false, most)));
    return cut(lines);
  }

  /** Draws it with its upper left corner here. */
  void draw(int left, int top, int width, List<Element> onto) {
    List<Integer> starts = starts(left);
    int y = top;
    for (Branch root : roots) {
      draw(root, 0, starts, y, left + width, onto);
      y += height(root, 0, starts, left + width);
    }
  }

  private void draw(
      Branch branch, int depth, List<Integer> starts, int top, int right, List<Element> onto) {
    int axis = top + style.axis();
    if (branch.isIdle()) {
      drawIdle(branch, starts.get(depth), top, right, onto);
    } else if (branch.head().isSource()) {
      drawSource(branch, starts.get(depth), starts.get(depth + 1), top, onto);
    } else {
      drawRow(branch, depth, starts, top, onto);
    }
    drawBox(branch, depth, starts, top, right, onto);
    int y = top;
    int last = axis;
    for (Branch child : branch.children()) {
      draw(child, depth + 1, starts, y, right, onto);
      last = y + (child.isIdle() ? PAD + style.line() / 2 : style.axis());
      y += height(child, depth + 1, starts, right);
    }
    if (branch.bar() != Bar.NONE) {
      boolean thick = branch.bar() == Bar.THICK;
      int at = starts.get(depth + 1);
      int over = thick ? 130 : 0;
      onto.add(
          new Line(
              at,
              axis - over,
              at,
              Math.max(last, axis) + over,
              branch.ink(),
              thick ? BAR : Symbols.LINE,
              false));
    }
  }

  private void drawSource(Branch branch, int x, int end, int top, List<Element> onto) {
    int axis = top + style.axis();
    onto.add(Symbols.source(x, axis, branch.head().source(), branch.ink()));
    int at = guards(branch, x + Symbols.SOURCE, axis, onto);
    if (!branch.children().isEmpty()) {
      onto.add(new Line(at, axis, end, axis, branch.ink(), Symbols.LINE, false));
    }
    lines(branch.label(), x, top + sourceLabel(), onto);
  }

  /** Breaker and RCD at the begin of a line; gives where the line goes on. */
  private static int guards(Branch branch, int x, int axis, List<Element> onto) {
    int at = x;
    if (branch.symbols().breaker()) {
      onto.add(Symbols.breaker(at, axis, branch.ink()));
      at += Symbols.BREAKER;
    }
    if (branch.symbols().rcd()) {
      onto.add(Symbols.rcd(at, axis, branch.symbols().breaker(), branch.ink()));
      at += Symbols.RCD;
    }
    return at;
  }

  private void drawRow(
      Branch branch, int depth, List<Integer> starts, int top, List<Element> onto) {
    int x = starts.get(depth);
    int end = starts.get(depth + 1);
    int axis = top + style.axis();
    boolean isTop =
        depth == 0
            && branch.above().isEmpty()
            && branch.below().isEmpty()
            && branch.symbols().equals(Branch.Symbols.NONE);
    if (!isTop) {
      onto.add(new Line(x, axis, x + STUB, axis, branch.ink(), Symbols.LINE, false));
      int at = guards(branch, x + STUB, axis, onto);
      if (branch.symbols().socket()) {
        onto.add(Symbols.socket(at, axis, branch.ink()));
        at += Symbols.SOCKET;
      }
      int stop =
          end
              - (branch.symbols().endBreaker() ? Symbols.BREAKER : 0)
              - (branch.symbols().endRcd() ? Symbols.RCD : 0);
      onto.add(new Line(at, axis, stop, axis, branch.ink(), Symbols.LINE, false));
      if (branch.symbols().conductors() > 0) {
        int count = branch.symbols().conductors();
        onto.add(
            Symbols.conductors(
                stop - Symbols.conductorsWidth(count) - STUB / 2, axis, count, branch.ink()));
      }
      if (branch.symbols().endBreaker()) {
        onto.add(Symbols.breaker(stop, axis, branch.ink()));
        stop += Symbols.BREAKER;
      }
      if (branch.symbols().endRcd()) {
        onto.add(Symbols.rcd(stop, axis, branch.symbols().endBreaker(), branch.ink()));
      }
    }
    int text = x + textAt(depth);
    line(branch.above(), text, axis - TEXT_GAP - style.line(), onto);
    line(branch.below(), text, axis + TEXT_GAP, onto);
    lines(branch.label(), text, isTop ? top : top + labelAt(branch), onto);
    drawLoads(branch, end, top, onto);
  }

  private void drawLoads(Branch branch, int end, int top, List<Element> onto) {
    int axis = top + style.axis();
    if (branch.load().isDrawn()) {
      int at = end + (branch.bar() == Bar.NONE ? 0 : STUB);
      onto.add(new Line(end, axis, at, axis, branch.ink(), Symbols.LINE, false));
      onto.add(Symbols.load(at, axis, branch.load(), branch.ink()));
    }
    int count = branch.loads().size();
    int y = count <= 2 ? axis - count * style.line() / 2 : top + TEXT_GAP;
    lines(branch.loads(), loadsAt(branch, end), y, onto);
  }

  private void drawIdle(Branch branch, int x, int top, int right, List<Element> onto) {
    int axis = top + PAD + style.line() / 2;
    onto.add(new Line(x, axis, x + STUB - GAP, axis, Ink.SOFT, Symbols.THIN, true));
    int y = top + PAD;
    for (String line : idleLines(branch, x + STUB, right)) {
      line(List.of(new Span(line, Ink.SOFT, false, null)), x + STUB, y, onto);
      y += style.line();
    }
  }

  private void drawBox(
      Branch branch, int depth, List<Integer> starts, int top, int right, List<Element> onto) {
    List<String> box = box(branch, depth, starts, right);
    if (box.isEmpty()) {
      return;
    }
    int x = boxAt(branch, depth, starts);
    int y = top + body(branch, depth, starts, right);
    int widest =
        box.stream().mapToInt(l -> Font.width(l, DiagramLayout.SMALLEST, false)).max().orElse(0);
    onto.add(
        new Rect(
            x, y, widest + 2 * PAD, box.size() * boxLine() + 2 * PAD, Ink.STOP, Ink.STOP_GROUND));
    int at = y + PAD;
    for (String line : box) {
      onto.add(text(new Span(line, Ink.STOP, false, null), x + PAD, at, DiagramLayout.SMALLEST));
      at += boxLine();
    }
  }

  private void lines(List<List<Span>> lines, int x, int top, List<Element> onto) {
    int y = top;
    for (List<Span> line : lines) {
      line(line, x, y, onto);
      y += style.line();
    }
  }

  private void line(List<Span> line, int x, int y, List<Element> onto) {
    int at = x;
    for (Span span : line) {
      onto.add(text(span, at, y, style.points()));
      at += span.width(style.points()) + Font.width(Span.GAP, style.points(), false);
    }
  }

  private static Text text(Span span, int x, int y, double points) {
    return new Text(
        x, y, span.width(points), points, span.bold(), span.ink(), span.words(), span.subject());
  }
}
