package org.setpower.plan.travel.packing;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.UnaryOperator;
import java.util.stream.IntStream;

/**
 * Proposes who carries what, one aim after the other: the most Wh of each priority, the first
 * first; fewest pieces over 100 Wh; the smallest heaviest load, to half a kilogram; most pieces
 * with their user; fewest changes from the last proposal. A battery in equipment is no load to its
 * user, who brings the equipment anyway: else a few hundred grams of battery would part a recorder
 * from its mixer. Each aim is an integer programme that keeps what the aims before have reached.
 * Without a last proposal, what is left open goes to a traveller that depends on the battery alone,
 * so that one changed cell moves few pieces. The same question always has the same answer.
 */
public final class PartyPacking {
  /** What one aim may take: some tens of milliseconds. */
  static final long WORK = 3_000_000;

  private static final double DUST = 1e-6;

  /**
   * Loads that differ by less are as good as each other: the heaviest is found to so many
   * kilograms, and what comes after may add as much.
   */
  static final double SAME_LOAD = 0.25;

  /** Energies and weights are compared in hundredths. */
  private static final double GRAIN = 100;

  private final Party party;
  private final int people;
  private final int cells;
  private final List<double[]> rows = new ArrayList<>();
  private final List<Double> ends = new ArrayList<>();
  private final int[] upper;
  private final boolean[] implied;
  private final long work;
  private double[] pieces;
  private boolean proven = true;

  /**
   * A proposal.
   *
   * @param pieces of each item, by traveller
   * @param proven whether every aim is proven to be reached as far as it can be
   */
  public record Proposal(int[][] pieces, boolean proven) {}

  private PartyPacking(Party party, long work) {
    this.party = party;
    this.work = work;
    people = party.travellers();
    cells = party.items().size() * people;
    upper = new int[cells];
    implied = new boolean[cells];
    pieces = new double[cells];
    for (int i = 0; i < party.items().size(); i++) {
      Party.Item item = party.items().get(i);
      double[] supply = new double[cells];
      for (int t = 0; t < people; t++) {
        upper[at(i, t)] = Math.max(0, Math.min(item.caps()[t], item.count()));
        implied[at(i, t)] = item.caps()[t] >= item.count();
        supply[at(i, t)] = 1;
      }
      add(supply, item.count());
    }
    for (Party.Limit limit : party.limits()) {
      double[] counted = new double[cells];
      for (int i = 0; i < limit.items().length; i++) {
        counted[at(i, limit.traveller())] = limit.items()[i] ? 1 : 0;
      }
      add(counted, Math.max(0, limit.most()));
    }
    for (int t = 0; t < people; t++) {
      if (Double.isFinite(party.room()[t])) {
        add(loads(t, false, cells), Math.max(0, party.room()[t]));
      }
    }
  }

  /** The proposal for a party. */
  public static Proposal of(Party party) {
    return of(party, WORK);
  }

  static Proposal of(Party party, long work) {
    PartyPacking packing = new PartyPacking(party, work);
    if (packing.cells > 0) {
      packing.solve();
    }
    int[][] pieces = new int[party.items().size()][party.travellers()];
    for (int i = 0; i < pieces.length; i++) {
      for (int t = 0; t < packing.people; t++) {
        pieces[i][t] = (int) Math.rint(packing.pieces[packing.at(i, t)]);
      }
    }
    return new Proposal(pieces, packing.proven);
  }

  private int at(int item, int traveller) {
    return item * people + traveller;
  }

  private void add(double[] row, double end) {
    rows.add(row);
    ends.add(end);
  }

  private double[] loads(int traveller, boolean balance, int size) {
    double[] row = new double[size];
    for (int i = 0; i < party.items().size(); i++) {
      Party.Item item = party.items().get(i);
      row[at(i, traveller)] = balance ? item.load(traveller) : item.limitKilograms();
    }
    return row;
  }

  private void solve() {
    IntStream.rangeClosed(1, 9).forEach(this::carryMost);
    aim(
        weights(i -> party.items().get(i).over() ? -1 : 0),
        party.items().stream().anyMatch(Party.Item::over) ? 1 : 0);
    shareLoads();
    aim(users(), 1);
    if (party.items().stream().anyMatch(i -> Arrays.stream(i.last()).anyMatch(n -> n > 0))) {
      changeLeast();
    } else {
      boolean reached = proven;
      aim(firsts(), 1);
      proven = reached;
    }
  }

  /** Pieces with their user. */
  private double[] users() {
    double[] users = new double[cells];
    for (int i = 0; i < party.items().size(); i++) {
      Party.Item item = party.items().get(i);
      if (item.user() >= 0) {
        users[at(i, item.user())] = 1;
      }
    }
    return users;
  }

  /** Pieces near the traveller who takes the item first. */
  private double[] firsts() {
    double[] firsts = new double[cells];
    for (int i = 0; i < party.items().size(); i++) {
      for (int t = 0; t < people; t++) {
        int behind = Math.floorMod(t - party.items().get(i).first(), people);
        firsts[at(i, t)] = people - 1 - behind;
      }
    }
    return firsts;
  }

  private void carryMost(int priority) {
    long step = 0;
    for (Party.Item item : party.items()) {
      if (item.priority() == priority) {
        step = gcd(step, Math.round(item.wattHours() * GRAIN));
      }
    }
    aim(
        weights(
            i ->
                party.items().get(i).priority() == priority
                    ? Math.round(party.items().get(i).wattHours() * GRAIN)
                    : 0),
        step);
  }

  private double[] weights(java.util.function.IntToDoubleFunction ofItem) {
    double[] weights = new double[cells];
    for (int i = 0; i < party.items().size(); i++) {
      for (int t = 0; t < people; t++) {
        weights[at(i, t)] = ofItem.applyAsDouble(i);
      }
    }
    return weights;
  }

  private static long gcd(long a, long b) {
    return b == 0 ? a : gcd(b, a % b);
  }

  /** Reaches an aim without further numbers, and keeps it. */
  private void aim(double[] objective, double step) {
    if (Arrays.stream(objective).allMatch(w -> w == 0)) {
      return;
    }
    IntegerProgram program = program(0, UnaryOperator.identity());
    IntegerProgram.Best best = program.greatest(objective, step, pieces, work);
    pieces = best.values();
    proven &= best.proven();
    keep(objective, best.value());
  }

  private void keep(double[] objective, double reached) {
    add(Arrays.stream(objective).map(w -> -w).toArray(), -reached + DUST);
  }

  private IntegerProgram program(int more, UnaryOperator<double[]> completed) {
    IntegerProgram program = new IntegerProgram(upper, implied, more, completed);
    for (int i = 0; i < rows.size(); i++) {
      program.atMost(Arrays.copyOf(rows.get(i), cells + more), ends.get(i));
    }
    return program;
  }

  /**
   * The smallest heaviest load, kept to half a kilogram: one further number that no load is above.
   */
  private void shareLoads() {
    double[][] loads = new double[people][];
    long step = 0;
    for (Party.Item item : party.items()) {
      step = gcd(step, Math.round(item.balanceKilograms() * GRAIN));
    }
    for (int t = 0; t < people; t++) {
      loads[t] = loads(t, true, cells);
      step = gcd(step, Math.round(party.load()[t] * GRAIN));
    }
    IntegerProgram program =
        program(
            1,
            v -> {
              double[] with = Arrays.copyOf(v, cells + 1);
              with[cells] = heaviest(loads, with);
              return with;
            });
    for (int t = 0; t < people; t++) {
      double[] row = Arrays.copyOf(loads[t], cells + 1);
      row[cells] = -1;
      program.atMost(row, -party.load()[t]);
    }
    program.goodEnough(SAME_LOAD);
    double[] objective = new double[cells + 1];
    objective[cells] = -1;
    double[] start = Arrays.copyOf(new LoadBalance(party, pieces).shared(), cells + 1);
    IntegerProgram.Best best = program.greatest(objective, step / GRAIN, start, work);
    pieces = Arrays.copyOf(best.values(), cells);
    proven &= best.proven();
    for (int t = 0; t < people; t++) {
      add(loads[t], best.values()[cells] + SAME_LOAD - party.load()[t] + DUST);
    }
  }

  private double heaviest(double[][] loads, double[] v) {
    double heaviest = 0;
    for (int t = 0; t < people; t++) {
      double load = party.load()[t];
      for (int j = 0; j < cells; j++) {
        load += loads[t][j] * v[j];
      }
      heaviest = Math.max(heaviest, load);
    }
    return heaviest;
  }

  /** Fewest changes: one further number for each place that had pieces, at least the difference. */
  private void changeLeast() {
    int[] had = new int[cells];
    for (int i = 0; i < party.items().size(); i++) {
      for (int t = 0; t < people; t++) {
        had[at(i, t)] = party.items().get(i).last()[t];
      }
    }
    int[] places = IntStream.range(0, cells).filter(j -> had[j] > 0).toArray();
    if (places.length == 0) {
      return;
    }
    IntegerProgram program =
        program(
            places.length,
            v -> {
              double[] with = Arrays.copyOf(v, cells + places.length);
              for (int k = 0; k < places.length; k++) {
                with[cells + k] = Math.abs(v[places[k]] - had[places[k]]);
              }
              return with;
            });
    double[] objective = new double[cells + places.length];
    Arrays.fill(objective, -1);
    for (int k = 0; k < places.length; k++) {
      objective[places[k]] = 0;
      double[] more = new double[cells + places.length];
      more[places[k]] = 1;
      more[cells + k] = -1;
      program.atMost(more, had[places[k]]);
      double[] less = new double[cells + places.length];
      less[places[k]] = -1;
      less[cells + k] = -1;
      program.atMost(less, -had[places[k]]);
    }
    double[] start = Arrays.copyOf(pieces, cells + places.length);
    IntegerProgram.Best best = program.greatest(objective, 1, start, work);
    pieces = Arrays.copyOf(best.values(), cells);
    proven &= best.proven();
  }
}
