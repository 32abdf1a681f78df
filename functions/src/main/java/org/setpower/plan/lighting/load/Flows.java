package org.setpower.plan.lighting.load;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.Function;
import java.util.stream.IntStream;
import org.setpower.plan.lighting.input.LightingSettings;
import org.setpower.plan.lighting.network.Network;
import org.setpower.plan.lighting.network.Node;

/**
 * What flows through each place, over all states of the plan: peaks of legs and neutral, what
 * others leave, voltage with loads of constant power.
 */
public final class Flows {
  private static final int LEGS = LegCurrents.LEGS;
  private static final int SWEEPS = 12;
  private static final double SETTLED = 1e-6;

  /** Share of the voltage beyond which a load of constant power gets no stable voltage. */
  private static final double COLLAPSE = 0.5;

  private static final double ROUNDING = 1e-9;

  private final Network network;
  private final Timeline timeline;
  private final List<PlannedLoad> loads;
  private final List<LoadState> states;
  private final LightingSettings settings;
  private final int count;
  private final int[] parent;
  private final int[] legs;
  private final int[] used;
  private final boolean[] threePhase;
  private final boolean[] pair;

  /** Volts of which drops are shares. */
  private final double[] dropVolts;

  /** By a node, breakers from it up to the source. */
  private final int[][] upstream;

  private final Draw[][] draws;
  private final int[] shownQuarters;
  private final double[] breakers;
  private final double[] existing;
  private final RunImpedance[] impedance;
  private final Peak[] peaks;
  private final Peak[] shown;
  private final Peak[] neutralPeaks;
  private final double[] neutralShown;
  private final double[] legPeaks;
  private final double[] legShown;
  private final double[] available;
  private final double[] harmonic;
  private final boolean[] assumed;
  private final double[] dropShare;
  private final double[] dropShown;
  private final Drop[] drops;
  private final boolean[] onShown;
  private final double[] stateDrop;
  private final double[] amps;
  private final List<double[]> rootSums = new ArrayList<>();

  /** Places through which something flows in the state that is being calculated, rising. */
  private int[] active;

  private final boolean[] carrying;

  /** What a part of a load takes at a node. */
  private record Draw(int node, int legs, double[] currents, boolean rises) {}

  /**
   * Calculates every state.
   *
   * @param impedances of the nodes of cable runs
   */
  public Flows(
      Network network,
      Timeline timeline,
      LoadTable table,
      LightingSettings settings,
      Function<Node, RunImpedance> impedances) {
    this.network = network;
    this.timeline = timeline;
    this.settings = settings;
    new LegSuggestion(table, network).suggest();
    loads = table.loads();
    states = LoadState.of(loads);
    List<Node> nodes = network.nodes();
    count = nodes.size();
    parent = nodes.stream().mapToInt(n -> n.parent() == null ? -1 : n.parent().index()).toArray();
    existing = new double[count];
    impedance = new RunImpedance[count];
    for (Node node : nodes) {
      boolean run = node.kind() == Node.Kind.RUN;
      impedance[node.index()] = run ? impedances.apply(node) : RunImpedance.NONE;
      boolean taken = node.kind() == Node.Kind.SUPPLY && network.supply(node).existing() != null;
      existing[node.index()] = taken ? network.supply(node).existing() : 0;
    }
    for (int i = count - 1; i > 0; i--) {
      if (parent[i] >= 0) {
        existing[parent[i]] += existing[i];
      }
    }
    legs = nodes.stream().mapToInt(Node::legs).toArray();
    breakers = nodes.stream().mapToDouble(Node::breaker).toArray();
    threePhase = new boolean[count];
    pair = new boolean[count];
    dropVolts = new double[count];
    upstream = new int[count][];
    double[] legVolts = new double[count];
    for (int i = 0; i < count; i++) {
      // a source comes before what hangs on it
      Node node = nodes.get(i);
      threePhase[i] = parent[i] < 0 ? network.isThreePhase(node) : threePhase[parent[i]];
      legVolts[i] = parent[i] < 0 ? network.legVolts(node) : legVolts[parent[i]];
      pair[i] = isPair(node);
      dropVolts[i] = pair[i] ? network.lineVolts(node.root()) : legVolts[i];
      int[] above = parent[i] < 0 ? new int[0] : upstream[parent[i]];
      upstream[i] = Double.isNaN(breakers[i]) ? above : prepend(i, above);
    }
    draws = loads.stream().map(Flows::draws).toArray(Draw[][]::new);
    shownQuarters = states.stream().mapToInt(this::shownQuarter).toArray();
    used = used();
    carrying = new boolean[count];
    peaks = filled();
    shown = filled();
    neutralPeaks = filled();
    neutralShown = new double[count];
    legPeaks = new double[count * LEGS];
    legShown = new double[count * LEGS];
    harmonic = new double[count];
    assumed = assumed();
    dropShare = new double[count * LEGS];
    dropShown = new double[count * LEGS];
    drops = new Drop[count];
    Arrays.fill(drops, Drop.NONE);
    onShown = new boolean[loads.size()];
    stateDrop = new double[count * LEGS];
    amps = new double[count * LEGS];
    available = new double[count];
    Arrays.fill(available, Double.POSITIVE_INFINITY);
    for (int s = 0; s < shownQuarters.length; s++) {
      calculate(states.get(s), shownQuarters[s]);
    }
    if (IntStream.of(shownQuarters).allMatch(q -> q < 0)) {
      takeExisting();
    }
  }

  private static int[] prepend(int first, int... others) {
    int[] all = new int[others.length + 1];
    all[0] = first;
    System.arraycopy(others, 0, all, 1, others.length);
    return all;
  }

  private static Draw[] draws(PlannedLoad load) {
    boolean rises = load.isConstantPower();
    return load.parts().stream()
        .map(p -> new Draw(p.node().index(), p.legs(), p.currents(), rises))
        .toArray(Draw[]::new);
  }

  /** On a day without a load others still take what they take. */
  private void takeExisting() {
    for (int node : used) {
      for (int leg = 0; leg < LEGS; leg++) {
        boolean there = (legs[node] >> leg & 1) == 1;
        amps[node * LEGS + leg] = there ? existing[node] : 0;
        legShown[node * LEGS + leg] = amps[node * LEGS + leg];
      }
    }
    for (int node : used) {
      leave(node);
    }
  }

  /** Nodes through which something flows at some time; what is idle takes no time. */
  private int[] used() {
    boolean[] carries = new boolean[count];
    for (PlannedLoad load : loads) {
      for (PlannedLoad.Part part : load.parts()) {
        for (int at = part.node().index(); at >= 0 && !carries[at]; at = parent[at]) {
          carries[at] = true;
        }
      }
    }
    return IntStream.range(0, count)
        .filter(
            i -> carries[i] || existing[i] > 0 || network.nodes().get(i).kind() == Node.Kind.SUPPLY)
        .toArray();
  }

  /** Nodes whose third harmonics are high by what is assumed alone, not by what is typed. */
  private boolean[] assumed() {
    boolean[] open = new boolean[count];
    boolean[] typed = new boolean[count];
    for (PlannedLoad load : loads) {
      boolean isOpen = load.equipment() != null && ThirdHarmonic.isAssumed(load.equipment());
      boolean[] marked = isOpen ? open : typed;
      if (isOpen || load.harmonic() > ThirdHarmonic.HEATS) {
        for (PlannedLoad.Part part : load.parts()) {
          for (int at = part.node().index(); at >= 0 && !marked[at]; at = parent[at]) {
            marked[at] = true;
          }
        }
      }
    }
    for (int i = 0; i < count; i++) {
      open[i] &= !typed[i];
    }
    return open;
  }

  private Peak[] filled() {
    Peak[] all = new Peak[count];
    Arrays.fill(all, Peak.NONE);
    return all;
  }

  private void calculate(LoadState state, int quarter) {
    active = active(state);
    double[] sums = voltages(state);
    rootSums.add(sums);
    Arrays.fill(amps, 0);
    for (int node : active) {
      for (int leg = 0; leg < LEGS; leg++) {
        boolean there = (legs[node] >> leg & 1) == 1;
        amps[node * LEGS + leg] = there ? LegCurrents.amps(sums, node, leg) + existing[node] : 0;
      }
    }
    if (quarter >= 0) {
      for (int node : used) {
        leave(node);
      }
    }
    int first = state.first();
    int longest = state.longest();
    for (int node : active) {
      peaks(first, longest, sums, node, quarter);
      for (int leg = 0; leg < LEGS; leg++) {
        int at = node * LEGS + leg;
        if (amps[at] > 0) {
          dropShare[at] = Math.max(dropShare[at], stateDrop[at]);
          if (quarter >= 0) {
            dropShown[at] = Math.max(dropShown[at], stateDrop[at]);
            drop(sums, node, leg);
          }
        }
      }
    }
    if (quarter >= 0) {
      for (int i : state.on()) {
        onShown[i] = true;
      }
    }
  }

  /** Places of {@link #used} that are not idle in a state: most are in most states. */
  private int[] active(LoadState state) {
    for (int node : used) {
      carrying[node] = existing[node] > 0;
    }
    for (int i : state.on()) {
      for (Draw draw : draws[i]) {
        for (int at = draw.node; at >= 0 && !carrying[at]; at = parent[at]) {
          carrying[at] = true;
        }
      }
    }
    int[] all = new int[used.length];
    int size = 0;
    for (int node : used) {
      if (carrying[node]) {
        all[size++] = node;
      }
    }
    return Arrays.copyOf(all, size);
  }

  /** Notes how the drop at a node came about where it is the worst so far. */
  private void drop(double[] sums, int node, int leg) {
    double total = stateDrop[node * LEGS + leg];
    if (total > drops[node].total() && impedance[node].ohms() > 0) {
      double own = amps[node * LEGS + leg];
      double neutral = LegCurrents.neutral(sums, node);
      drops[node] =
          new Drop(
              total,
              (legs[node] >> leg & 1) == 0 ? 0 : share(sums, node, leg, neutral),
              own,
              back(node, own, neutral),
              powerFactor(sums, node, leg, own));
    }
  }

  private void peaks(int first, int longest, double[] sums, int node, int quarter) {
    Node place = network.nodes().get(node);
    for (int leg = 0; leg < LEGS; leg++) {
      double a = amps[node * LEGS + leg];
      legPeaks[node * LEGS + leg] = Math.max(legPeaks[node * LEGS + leg], a);
      if (a > peaks[node].amps() + ROUNDING) {
        peaks[node] = new Peak(a, leg, first, longest);
      }
      if (quarter >= 0) {
        legShown[node * LEGS + leg] = Math.max(legShown[node * LEGS + leg], a);
        if (a > shown[node].amps() + ROUNDING) {
          shown[node] = new Peak(a, leg, quarter, longest);
        }
      }
      if (a > existing[node]) {
        harmonic[node] = LegCurrents.harmonic(sums, node, leg, harmonic[node]);
      }
    }
    if (place.hasNeutral()) {
      double neutral =
          LegCurrents.neutral(sums, node)
              + (Integer.bitCount(place.legs()) == 1 ? existing[node] : 0);
      if (neutral > neutralPeaks[node].amps() + ROUNDING) {
        neutralPeaks[node] = new Peak(neutral, 0, first, longest);
      }
      if (quarter >= 0) {
        neutralShown[node] = Math.max(neutralShown[node], neutral);
      }
    }
  }

  /** With the current of the leg, others' included. */
  private double powerFactor(double[] sums, int node, int leg, double all) {
    double active = LegCurrents.active(sums, node, leg, threePhase[node]) + existing[node];
    return all > 0 ? Math.min(1, Math.max(0.1, active / all)) : 1;
  }

  /** What breakers from here up to the source leave, when others take what they take. */
  private void leave(int node) {
    for (int at : upstream[node]) {
      for (int leg = 0; leg < LEGS; leg++) {
        if ((legs[node] >> leg & 1) == 1) {
          double others = amps[at * LEGS + leg] - amps[node * LEGS + leg];
          available[node] = Math.min(available[node], breakers[at] - others);
        }
      }
    }
  }

  private int shownQuarter(LoadState state) {
    if (timeline.shown(settings.dayShown()) == null) {
      return state.first();
    }
    for (int[] span : state.spans()) {
      for (int q = span[0]; q < span[1]; q++) {
        if (timeline.isOn(q, settings.dayShown())) {
          return q;
        }
      }
    }
    return -1;
  }

  /**
   * Sums of a state from the places up to the sources; drops raise loads of constant power.
   *
   * @return whether there are such loads
   */
  private boolean sum(LoadState state, boolean raised, double... sums) {
    boolean rises = false;
    Arrays.fill(sums, 0);
    for (int i : state.on()) {
      for (Draw draw : draws[i]) {
        rises |= draw.rises;
        double factor =
            raised && draw.rises ? 1 / (1 - worst(stateDrop, draw.node, draw.legs, COLLAPSE)) : 1;
        LegCurrents.add(sums, draw.node, draw.currents, factor);
      }
    }
    for (int u = active.length - 1; u >= 0; u--) {
      int i = active[u];
      if (parent[i] >= 0) {
        int from = i * LegCurrents.WIDTH;
        int to = parent[i] * LegCurrents.WIDTH;
        for (int k = 0; k < LegCurrents.WIDTH; k++) {
          sums[to + k] += sums[from + k];
        }
      }
    }
    return rises;
  }

  private static double worst(double[] drops, int node, int legs, double most) {
    double worst = 0;
    for (int leg = 0; leg < LEGS; leg++) {
      if ((legs >> leg & 1) == 1) {
        worst = Math.max(worst, drops[node * LEGS + leg]);
      }
    }
    return Math.min(most, worst);
  }

  /** Finds the drops of a state, and its currents at the voltages that are left. */
  private double[] voltages(LoadState state) {
    double[] sums = new double[count * LegCurrents.WIDTH];
    boolean rises = sum(state, false, sums);
    Arrays.fill(stateDrop, 0);
    for (int sweep = 0; sweep < SWEEPS; sweep++) {
      double change = drops(sums);
      if (!rises || change < SETTLED) {
        break;
      }
      sum(state, true, sums);
    }
    return sums;
  }

  /** Finds the drops of these currents; how much one of them has changed at most. */
  private double drops(double... sums) {
    double change = 0;
    for (int node : active) {
      int at = node * LEGS;
      if (parent[node] < 0) {
        continue;
      }
      int from = parent[node] * LEGS;
      if (impedance[node].ohms() == 0) {
        for (int leg = 0; leg < LEGS; leg++) {
          stateDrop[at + leg] = stateDrop[from + leg];
        }
        continue;
      }
      double neutral = pair[node] ? 0 : LegCurrents.neutral(sums, node);
      for (int leg = 0; leg < LEGS; leg++) {
        double drop = stateDrop[from + leg];
        if ((legs[node] >> leg & 1) == 1) {
          drop += share(sums, node, leg, neutral);
        }
        change = Math.max(change, Math.abs(drop - stateDrop[at + leg]));
        stateDrop[at + leg] = drop;
      }
    }
    return change;
  }

  /**
   * Share of a leg's voltage that is lost over the cable run of a node, to neutral and back.
   *
   * @param neutral its current
   */
  private double share(double[] sums, int node, int leg, double neutral) {
    RunImpedance z = impedance[node];
    double own = LegCurrents.amps(sums, node, leg) + existing[node];
    double cosine = powerFactor(sums, node, leg, own);
    double ohms = z.ohms() * cosine + z.reactance() * Math.sqrt(1 - cosine * cosine);
    return (own + back(node, own, neutral)) * ohms / dropVolts[node];
  }

  /** What flows back: over the neutral, of a pair over its other leg. */
  private double back(int node, double own, double neutral) {
    return pair[node] ? own : Math.min(own, neutral);
  }

  private static boolean isPair(Node place) {
    return Integer.bitCount(place.legs()) == 2 && !place.hasNeutral();
  }

  /** Volts of which drops are shares: a leg to neutral, of a pair without neutral line to line. */
  public double dropVolts(Node node) {
    return isPair(node) ? network.lineVolts(node.root()) : network.legVolts(node.root());
  }

  /** States in the order of {@link #sums(int)}. */
  public List<LoadState> states() {
    return states;
  }

  public List<PlannedLoad> loads() {
    return loads;
  }

  /** The state of a quarter hour; −1 where nothing is on. */
  public int stateAt(int quarter) {
    for (int s = 0; s < states.size(); s++) {
      if (states.get(s).holds(quarter)) {
        return s;
      }
    }
    return -1;
  }

  /** Current of a leg at a place in a state. */
  public double amps(int state, Node node, int leg) {
    boolean there = (node.legs() >> leg & 1) == 1;
    double own = state < 0 ? 0 : LegCurrents.amps(rootSums.get(state), node.index(), leg);
    return there ? own + existing[node.index()] : 0;
  }

  /** Watts of a leg at a place in a state, without existing loads. */
  public double watts(int state, Node node, int leg) {
    return LegCurrents.active(
            rootSums.get(state), node.index(), leg, network.isThreePhase(node.root()))
        * network.legVolts(node.root());
  }

  /** The peak over all days. */
  public Peak peak(Node node) {
    return peaks[node.index()];
  }

  /** The peak of the day shown, or of all. */
  public Peak shown(Node node) {
    return shown[node.index()];
  }

  /** The highest current of a leg of the day shown, or of all. */
  public double shown(Node node, int leg) {
    return legShown[node.index() * LEGS + leg];
  }

  /** The highest current of a leg over all days. */
  public double peak(Node node, int leg) {
    return legPeaks[node.index() * LEGS + leg];
  }

  /** The highest current of the neutral of the day shown, or of all. */
  public double shownNeutral(Node node) {
    return neutralShown[node.index()];
  }

  /** How the largest drop at the end of a cable run came about on the day shown, or on all. */
  public Drop shownDrop(Node node) {
    return drops[node.index()];
  }

  /** Share of the voltage that is lost from the source to here, on the day shown or on all. */
  public double shownDropShare(Node node, int legs) {
    return worst(dropShown, node.index(), legs, 1);
  }

  /** Whether a load, by its place in {@link #loads()}, is on at some time of the day shown. */
  public boolean isShown(int load) {
    return onShown[load];
  }

  /** States of the day shown, or all. */
  public List<LoadState> shownStates() {
    return IntStream.range(0, shownQuarters.length)
        .filter(s -> shownQuarters[s] >= 0)
        .mapToObj(states::get)
        .toList();
  }

  /** The highest current of the neutral over all days. */
  public Peak neutral(Node node) {
    return neutralPeaks[node.index()];
  }

  /** What it may take on its legs while others take what they take; infinite without a breaker. */
  public double available(Node node) {
    return available[node.index()];
  }

  /** Whether the third harmonics of a place are assumed, since nobody has typed high ones. */
  public boolean isHarmonicAssumed(Node node) {
    return assumed[node.index()];
  }

  /** The highest share of third harmonics in a leg. */
  public double harmonic(Node node) {
    return harmonic[node.index()];
  }

  /** The largest share of the voltage that is lost from the source to here, on some of the legs. */
  public double dropShare(Node node, int legs) {
    return worst(dropShare, node.index(), legs, 1);
  }

  /** Times its current at the voltage of the source that a part takes where it is. */
  public double rise(PlannedLoad load, PlannedLoad.Part part) {
    return rise(load, part, dropShare);
  }

  /** The same, of the day shown. */
  public double shownRise(PlannedLoad load, PlannedLoad.Part part) {
    return rise(load, part, dropShown);
  }

  private double rise(PlannedLoad load, PlannedLoad.Part part, double... drops) {
    boolean rises = load.isConstantPower() && part.node().isFed();
    return rises ? 1 / (1 - worst(drops, part.node().index(), part.legs(), COLLAPSE)) : 1;
  }

  /** Whether a drop leaves loads of constant power no stable voltage. */
  public static boolean isCollapse(double dropShare) {
    return dropShare >= COLLAPSE;
  }

  /** Voltage of the source of a place, between a leg and neutral. */
  public double legVolts(Node node) {
    return network.legVolts(node.root());
  }

  /** Existing load at a place and below, A on each leg. */
  public double existing(Node node) {
    return existing[node.index()];
  }
}
