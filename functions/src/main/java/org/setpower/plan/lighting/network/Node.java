package org.setpower.plan.lighting.network;

import java.util.ArrayList;
import java.util.List;
import org.setpower.cable.Protection.Curve;
import org.setpower.plan.lighting.input.RcdType;

/**
 * A point of the distribution through which current flows. Its parent is nearer to the source. What
 * is not filled in is null or NaN; {@link Network} fills it while it builds the tree.
 */
public final class Node {
  /** What a node stands for. */
  public enum Kind {
    SUPPLY,
    /** A breaker that several outlets share. */
    BREAKER,
    OUTLET,
    /** One circuit of a connector with several, or of the end of a multi-circuit cable. */
    CIRCUIT,
    RUN
  }

  private final Kind kind;
  private final String name;
  private final int row;
  private final List<Node> children = new ArrayList<>();
  private int index = -1;
  private Node parent;
  private int legs;
  private boolean neutral = true;
  private double breaker = Double.NaN;
  private Curve curve;
  private Rcd rcd = Rcd.NONE;
  private boolean unclear;

  /**
   * An RCD.
   *
   * @param milliamps NaN without one
   */
  public record Rcd(double milliamps, RcdType type) {
    static final Rcd NONE = new Rcd(Double.NaN, null);

    /** Whether there is one. */
    public boolean isThere() {
      return !Double.isNaN(milliamps);
    }
  }

  Node(Kind kind, String name, int row) {
    this.kind = kind;
    this.name = name;
    this.row = row;
  }

  void hangOn(Node above) {
    parent = above;
    if (above != null) {
      above.children.add(this);
    }
  }

  void cut() {
    if (parent != null) {
      parent.children.remove(this);
      parent = null;
    }
  }

  void number(int number) {
    index = number;
  }

  void conductors(int legsThere, boolean neutralThere) {
    legs = legsThere;
    neutral = neutralThere;
  }

  void protect(double amps, Curve trips) {
    breaker = amps;
    curve = trips;
  }

  void guard(Rcd device) {
    rcd = device;
  }

  void blur() {
    unclear = true;
  }

  public Kind kind() {
    return kind;
  }

  /** As a person writes it: A1, A1-3, A1-2.3. */
  public String name() {
    return name;
  }

  /** Row in the table of its kind, from 1. */
  public int row() {
    return row;
  }

  /** Place in {@link Network#nodes()}; −1 for a node that no source feeds. */
  public int index() {
    return index;
  }

  /** Nearer to the source; null at a root. */
  public Node parent() {
    return parent;
  }

  public List<Node> children() {
    return children;
  }

  /** Legs as bits: bit 0 is L1. */
  public int legs() {
    return legs;
  }

  public boolean hasNeutral() {
    return neutral;
  }

  /** Own breaker, A; NaN without one. */
  public double breaker() {
    return breaker;
  }

  /** Of the own breaker; null where it is not known. */
  public Curve curve() {
    return curve;
  }

  /** Own RCD. */
  public Rcd rcd() {
    return rcd;
  }

  /** Whether its row or one nearer to the source cannot be relied on. */
  public boolean isUnclear() {
    return unclear || parent != null && parent.isUnclear();
  }

  /** The first node, from here on towards the source, that cannot be relied on. */
  public Node firstUnclear() {
    return unclear ? this : parent == null ? null : parent.firstUnclear();
  }

  /** Whether a source feeds it. */
  public boolean isFed() {
    return index >= 0;
  }

  /** The node without a parent above it. */
  public Node root() {
    return parent == null ? this : parent.root();
  }

  /** This node and all above it, up to the source. */
  public List<Node> path() {
    List<Node> path = new ArrayList<>();
    for (Node n = this; n != null; n = n.parent) {
      path.add(n);
    }
    return path;
  }

  /** The smallest breaker from here up to the source; infinite where there is none. */
  public double protectingBreaker() {
    double smallest = Double.POSITIVE_INFINITY;
    for (Node n = this; n != null; n = n.parent) {
      if (n.breaker < smallest) {
        smallest = n.breaker;
      }
    }
    return smallest;
  }

  /** This node and all below it. */
  public List<Node> below() {
    List<Node> all = new ArrayList<>();
    collect(all);
    return all;
  }

  private void collect(List<Node> all) {
    all.add(this);
    children.forEach(c -> c.collect(all));
  }

  @Override
  public String toString() {
    return name;
  }
}
