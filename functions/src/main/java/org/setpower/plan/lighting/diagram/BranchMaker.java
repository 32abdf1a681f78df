package org.setpower.plan.lighting.diagram;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;
import org.setpower.plan.finding.Verdict;
import org.setpower.plan.lighting.diagram.Branch.Bar;
import org.setpower.plan.lighting.diagram.Branch.Head;
import org.setpower.plan.lighting.diagram.Branch.LoadKind;
import org.setpower.plan.lighting.diagram.DiagramNode.Kind;
import org.setpower.plan.lighting.diagram.Element.Subject;
import org.setpower.plan.lighting.input.CableType;
import org.setpower.plan.lighting.input.InrushClass;

/** Makes rows of places: an outlet, its cable and the distro at its end are one row. */
final class BranchMaker {
  /** The longest name, and the longest item of a load. */
  private static final int NAME = 3600;

  private static final int ITEM = 5400;

  /** Loads of one place in one row. */
  private static final int MOST_LOADS = 10;

  /** Keeps a figure and its unit on one line. */
  private static final char HARD = '\u00a0';

  private final DiagramTexts texts;

  BranchMaker(DiagramTexts texts) {
    this.texts = texts;
  }

  /** The sources, then all that nothing feeds. */
  List<Branch> roots(DiagramPlan plan) {
    List<Branch> roots = new ArrayList<>();
    List<Branch> apart = new ArrayList<>();
    for (DiagramNode root : plan.roots()) {
      if (root.supply() != null && root.supply().isSource()) {
        roots.add(source(root));
      } else {
        apart.add(branch(root, ""));
      }
    }
    plan.loose().forEach(l -> apart.add(loads(List.of(l))));
    if (!apart.isEmpty()) {
      String loose = texts.say(DiagramWord.LOOSE);
      roots.add(Branch.top(loose, List.of(List.of(Span.bold(loose, Ink.STOP))), Bar.THIN, apart));
    }
    return roots;
  }

  private Branch source(DiagramNode root) {
    List<Branch> children = new ArrayList<>(children(root));
    if (children.isEmpty()) {
      children.addAll(rows(root.loads()));
    }
    boolean straight = children.size() == 1 && root.children().size() == 1 && root.idle().isEmpty();
    return new Branch(
        root.name(),
        "",
        new Head(root.supply().type(), true),
        new Branch.Symbols(
            root.guard().hasBreaker(), root.guard().hasRcd(), false, 0, false, false),
        ink(root),
        List.of(),
        List.of(),
        label(root),
        texts.stops(root.stops()),
        List.of(),
        LoadKind.NONE,
        straight || children.isEmpty() ? Bar.NONE : Bar.THICK,
        children);
  }

  private static Ink ink(DiagramNode node) {
    return node.verdict() == Verdict.STOP && !node.stops().isEmpty() ? Ink.STOP : Ink.PLAIN;
  }

  private static Subject subject(DiagramNode node) {
    return new Subject(node.kind().table(), node.row(), node.verdict(), Double.NaN);
  }

  /** The word of a verdict that is not ok. */
  private static Stream<Span> mark(Verdict verdict) {
    return switch (verdict) {
      case OK -> Stream.empty();
      case CHECK -> Stream.of(Span.bold(verdict.code(), Ink.CHECK));
      case STOP -> Stream.of(Span.bold(verdict.code(), Ink.STOP));
    };
  }

  private List<Span> line(DiagramNode node, boolean bold, String words) {
    Span span = bold ? Span.bold(words, Ink.PLAIN) : Span.of(words);
    return Stream.of(
            Stream.of(span.about(subject(node))),
            mark(node.verdict()),
            see(node.see()),
            upstream(node.upstream()))
        .flatMap(s -> s)
        .toList();
  }

  /** Where the sentence of a stop stands. */
  private Stream<Span> see(String place) {
    return place.isEmpty()
        ? Stream.empty()
        : Stream.of(new Span(texts.say(DiagramWord.AS, name(place)), Ink.STOP, false, null));
  }

  /** What feeds it and may not be connected. */
  private Stream<Span> upstream(String place) {
    return place.isEmpty()
        ? Stream.empty()
        : Stream.of(Span.bold(texts.say(DiagramWord.UPSTREAM, name(place)), Ink.STOP));
  }

  private static String name(String name) {
    return DiagramTexts.fit(name.isBlank() ? "?" : name, DiagramLayout.SMALLEST, NAME);
  }

  private List<List<Span>> label(DiagramNode supply) {
    DiagramNode.Supply facts = supply.supply();
    String location = facts.location() == null ? "" : name(facts.location());
    boolean source = facts.isSource();
    String guard = texts.guard(supply.guard());
    List<String> lines =
        source
            ? List.of(
                texts.system(facts),
                texts.generator(facts),
                guard,
                texts.legs(facts),
                texts.peak(facts))
            : List.of(guard, texts.legs(facts));
    List<List<Span>> label = new ArrayList<>();
    int most = source ? NAME : Integer.MAX_VALUE;
    if (source) {
      label.add(line(supply, true, name(supply.name())));
      if (!location.isEmpty()) {
        label.add(List.of(Span.of(location)));
      }
    } else {
      label.add(line(supply, true, DiagramTexts.join(List.of(name(supply.name()), location))));
    }
    lines.stream()
        .filter(l -> !l.isEmpty())
        .map(l -> l.replace(' ', HARD).replace(HARD + "·" + HARD, " · "))
        .flatMap(l -> Font.wrap(l, DiagramLayout.SMALLEST, false, most).stream())
        .forEach(l -> label.add(List.of(Span.of(l.replace(HARD, ' ')))));
    return label;
  }

  /** A row from a place on: with the cable in it and the distro at its end where they are alone. */
  private Branch branch(DiagramNode first, String parent) {
    DiagramNode outlet = first.kind() == Kind.RUN || first.kind() == Kind.SUPPLY ? null : first;
    if (outlet != null && outlet.kind() == Kind.BREAKER && isAlone(outlet)) {
      // the only outlet in use of those that share the breaker
      DiagramNode own = outlet.children().get(0);
      outlet = merged(outlet, own);
    }
    DiagramNode run = first.kind() == Kind.RUN ? first : null;
    if (outlet != null && isAlone(outlet) && outlet.children().get(0).kind() == Kind.RUN) {
      run = outlet.children().get(0);
    }
    DiagramNode distro = first.kind() == Kind.SUPPLY ? first : null;
    if (run != null && isAlone(run) && run.children().get(0).kind() == Kind.SUPPLY) {
      distro = run.children().get(0);
    }
    DiagramNode end = distro != null ? distro : run != null ? run : outlet;
    List<Branch> children = children(end);
    boolean leaf = children.isEmpty();
    List<String> stops = new ArrayList<>();
    Ink ink = Ink.PLAIN;
    for (DiagramNode part : Stream.of(outlet, run, distro).filter(p -> p != null).toList()) {
      stops.addAll(texts.stops(part.stops()));
      ink = ink(part) == Ink.STOP ? Ink.STOP : ink;
    }
    List<List<Span>> ends = new ArrayList<>();
    if (leaf) {
      for (DiagramLoad load : end.loads()) {
        ends.add(words(load));
        texts.stops(load.stops()).stream().filter(s -> !stops.contains(s)).forEach(stops::add);
      }
    }
    return new Branch(
        end.name(),
        outlet == null ? parent : outlet.name(),
        Head.NONE,
        new Branch.Symbols(
            outlet != null && outlet.guard().hasBreaker(),
            outlet != null && outlet.guard().hasRcd(),
            outlet != null && outlet.kind() == Kind.OUTLET,
            run == null ? 0 : conductors(run.cable()),
            distro != null && distro.guard().hasBreaker(),
            distro != null && distro.guard().hasRcd()),
        ink,
        above(outlet, run),
        run == null ? List.of() : below(run, distro),
        distro == null ? List.of() : label(distro),
        stops.stream().distinct().toList(),
        ends,
        leaf ? kind(end.loads()) : LoadKind.NONE,
        distro != null ? Bar.THICK : leaf ? Bar.NONE : Bar.THIN,
        children);
  }

  /** Strokes on the line; of a multi-circuit cable it is not known how many cores it has. */
  private static int conductors(DiagramNode.Cable cable) {
    return cable.type() == CableType.MULTI_CIRCUIT ? 0 : cable.cores().count();
  }

  private static boolean isAlone(DiagramNode node) {
    boolean sharing = node.kind() == Kind.BREAKER;
    return node.children().size() == 1
        && node.loads().isEmpty()
        && (sharing || node.idle().isEmpty())
        && (!sharing || node.children().get(0).kind() == Kind.OUTLET);
  }

  private static DiagramNode merged(DiagramNode breaker, DiagramNode outlet) {
    List<org.setpower.plan.finding.Finding> stops = new ArrayList<>(breaker.stops());
    stops.addAll(outlet.stops());
    return new DiagramNode(
        outlet.kind(),
        outlet.row(),
        outlet.name(),
        outlet.verdict(),
        stops,
        breaker.guard(),
        outlet.legs(),
        breaker.amps(),
        null,
        null,
        outlet.loads(),
        outlet.children(),
        outlet.idle(),
        outlet.idleStops(),
        stops.isEmpty() ? breaker.see() : "",
        "");
  }

  private List<Span> above(DiagramNode outlet, DiagramNode run) {
    if (outlet == null) {
      String flow = run == null ? "" : texts.flow(run);
      return flow.isEmpty() ? List.of() : List.of(Span.of(flow));
    }
    String name =
        outlet.kind() == Kind.BREAKER
            ? name(outlet.name()) + " " + texts.say(DiagramWord.SHARED)
            : name(outlet.name());
    return line(
        outlet,
        false,
        DiagramTexts.join(List.of(name, texts.guard(outlet.guard()), texts.flow(outlet))));
  }

  private List<Span> below(DiagramNode run, DiagramNode distro) {
    String cable = texts.cable(run.cable());
    String words =
        distro != null
            ? cable.isEmpty() ? name(run.name()) : cable
            : name(run.name()) + (cable.isEmpty() ? "" : ": " + cable);
    return line(run, false, words);
  }

  private List<Branch> children(DiagramNode node) {
    List<Branch> children = new ArrayList<>();
    node.children().forEach(c -> children.add(branch(c, node.name())));
    children.addAll(idle(node));
    if (!children.isEmpty() || node.loads().size() > MOST_LOADS) {
      children.addAll(0, rows(node.loads()));
    }
    return children;
  }

  /** Loads that stand apart; many of one place take several rows. */
  private List<Branch> rows(List<DiagramLoad> loads) {
    List<Branch> rows = new ArrayList<>();
    for (int i = 0; i < loads.size(); i += MOST_LOADS) {
      rows.add(loads(loads.subList(i, Math.min(loads.size(), i + MOST_LOADS))));
    }
    return rows;
  }

  private Branch loads(List<DiagramLoad> loads) {
    return new Branch(
        "",
        "",
        Head.NONE,
        Branch.Symbols.NONE,
        loads.stream().anyMatch(l -> !l.stops().isEmpty()) ? Ink.STOP : Ink.PLAIN,
        List.of(),
        List.of(),
        List.of(),
        loads.stream().flatMap(l -> texts.stops(l.stops()).stream()).distinct().toList(),
        loads.stream().map(this::words).toList(),
        kind(loads),
        Bar.NONE,
        List.of());
  }

  private List<Span> words(DiagramLoad load) {
    Span words =
        new Span(
            DiagramTexts.fit(texts.load(load), DiagramLayout.SMALLEST, ITEM),
            load.off() ? Ink.SOFT : Ink.PLAIN,
            false,
            new Subject(load.table(), load.row(), load.verdict(), load.quantity()));
    return Stream.of(Stream.of(words), mark(load.verdict()), see(load.see()))
        .flatMap(s -> s)
        .toList();
  }

  private static LoadKind kind(List<DiagramLoad> loads) {
    List<InrushClass> kinds = loads.stream().map(DiagramLoad::kind).distinct().toList();
    if (loads.isEmpty() || loads.stream().allMatch(l -> Double.isNaN(l.quantity()))) {
      return LoadKind.NONE;
    }
    InrushClass kind = kinds.size() == 1 ? kinds.get(0) : null;
    return kind == InrushClass.MOTOR
        ? LoadKind.MOTOR
        : kind == InrushClass.NONE
            ? LoadKind.HEATER
            : loads.stream().allMatch(DiagramLoad::lamp) ? LoadKind.LAMP : LoadKind.OTHER;
  }

  /** By their numbers: A-2 comes before A-10. */
  private static List<String> sorted(List<String> names) {
    return names.stream()
        .sorted(Comparator.comparing(String::length).thenComparing(Comparator.naturalOrder()))
        .toList();
  }

  /** Idle outlets, with those of shared breakers, are one row. */
  private List<Branch> idle(DiagramNode node) {
    if (node.kind() == Kind.BREAKER) {
      return List.of();
    }
    List<String> names = new ArrayList<>(node.idle());
    node.children().stream()
        .filter(c -> c.kind() == Kind.BREAKER)
        .forEach(c -> names.addAll(c.idle()));
    List<String> stops = texts.stops(node.idleStops());
    if (names.isEmpty() && stops.isEmpty()) {
      return List.of();
    }
    String words =
        texts.say(DiagramWord.IDLE, String.join(", ", DiagramTexts.ranges(sorted(names))));
    return List.of(
        new Branch(
            "",
            "",
            Head.NONE,
            Branch.Symbols.NONE,
            stops.isEmpty() ? Ink.SOFT : Ink.STOP,
            List.of(),
            List.of(),
            List.of(),
            stops,
            List.of(List.of(new Span(words, Ink.SOFT, false, null))),
            LoadKind.IDLE,
            Bar.NONE,
            List.of()));
  }
}
