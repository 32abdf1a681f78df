package org.setpower.plan.lighting.diagram;

import java.util.ArrayList;
import java.util.List;
import org.setpower.plan.lighting.input.SupplyType;

/**
 * A row of the diagram with what hangs on it: from a bar over breaker, RCD, outlet and cable to
 * loads, or to the bar of a distro.
 *
 * @param name of its end, for references
 * @param from what feeds it
 * @param head what a source or the top of a part begins with; null for other rows
 * @param symbols on its line
 * @param above text above its line
 * @param below text below its line
 * @param label lines about the distro at its end
 * @param stops sentences, to be boxed
 * @param loads lines at its end
 * @param bar what stands at its end
 */
record Branch(
    String name,
    String from,
    Head head,
    Symbols symbols,
    Ink ink,
    List<Span> above,
    List<Span> below,
    List<List<Span>> label,
    List<String> stops,
    List<List<Span>> loads,
    LoadKind load,
    Bar bar,
    List<Branch> children) {
  /** What a row begins with that has no bar before it. */
  record Head(SupplyType source, boolean isSource) {
    static final Head NONE = new Head(null, false);
  }

  /** What stands at the end of a row. */
  enum Bar {
    NONE,
    /** Where a line divides. */
    THIN,
    /** A distro. */
    THICK
  }

  /** What is drawn before the texts of loads. */
  enum LoadKind {
    NONE,
    LAMP,
    MOTOR,
    HEATER,
    /** Of another kind, or of several. */
    OTHER,
    /** The row goes on elsewhere. */
    ARROW,
    /** Outlets without a load. */
    IDLE;

    boolean isDrawn() {
      return this == LAMP || this == MOTOR || this == HEATER || this == OTHER;
    }
  }

  /**
   * What stands on the line.
   *
   * @param conductors of the cable, 0 without one
   * @param endBreaker whether the distro at its end has a breaker
   */
  record Symbols(
      boolean breaker,
      boolean rcd,
      boolean socket,
      int conductors,
      boolean endBreaker,
      boolean endRcd) {
    static final Symbols NONE = new Symbols(false, false, false, 0, false, false);

    int lead() {
      return (breaker ? org.setpower.plan.lighting.diagram.Symbols.BREAKER : 0)
          + (rcd ? org.setpower.plan.lighting.diagram.Symbols.RCD : 0)
          + (socket ? org.setpower.plan.lighting.diagram.Symbols.SOCKET : 0);
    }

    int tail() {
      return (conductors == 0
              ? 0
              : 100 + org.setpower.plan.lighting.diagram.Symbols.conductorsWidth(conductors))
          + (endBreaker ? org.setpower.plan.lighting.diagram.Symbols.BREAKER : 0)
          + (endRcd ? org.setpower.plan.lighting.diagram.Symbols.RCD : 0);
    }
  }

  boolean isIdle() {
    return load == LoadKind.IDLE;
  }

  boolean isLeaf() {
    return children.isEmpty();
  }

  Branch withChildren(List<Branch> others) {
    return new Branch(
        name, from, head, symbols, ink, above, below, label, stops, loads, load, bar, others);
  }

  /** The same without what hangs on it, which stands elsewhere. */
  Branch cut(String reference) {
    return new Branch(
        name,
        from,
        head,
        symbols,
        ink,
        above,
        below,
        label,
        stops,
        List.of(List.of(Span.of(reference))),
        LoadKind.ARROW,
        bar,
        List.of());
  }

  /** The top of a part that shows what hangs on a row. */
  static Branch top(String name, List<List<Span>> label, Bar bar, List<Branch> children) {
    return new Branch(
        name,
        "",
        Head.NONE,
        Symbols.NONE,
        Ink.PLAIN,
        List.of(),
        List.of(),
        label,
        List.of(),
        List.of(),
        LoadKind.NONE,
        bar,
        children);
  }

  /** This row and all that hang on it. */
  List<Branch> all() {
    List<Branch> all = new ArrayList<>();
    all.add(this);
    children.forEach(c -> all.addAll(c.all()));
    return all;
  }
}
