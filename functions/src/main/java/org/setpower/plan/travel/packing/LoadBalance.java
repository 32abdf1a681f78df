package org.setpower.plan.travel.packing;

/**
 * Shares loads by small steps: as long as it helps, the heaviest traveller hands a piece on, or
 * changes one for a lighter one. A start for the programme that proves what is best.
 */
final class LoadBalance {
  private static final int MOST_STEPS = 500;
  private static final double LESS = 1e-6;

  private final Party party;
  private final int people;
  private final double[] pieces;
  private final double[] loads;
  private final double[] kilograms;
  private final int[] counted;

  private double reached;
  private int[] step;

  LoadBalance(Party party, double[] pieces) {
    this.party = party;
    people = party.travellers();
    this.pieces = pieces.clone();
    loads = party.load().clone();
    kilograms = new double[people];
    counted = new int[party.limits().size()];
    for (int i = 0; i < party.items().size(); i++) {
      for (int t = 0; t < people; t++) {
        count(i, t, (int) Math.rint(pieces[i * people + t]));
      }
    }
  }

  private void count(int item, int traveller, int n) {
    loads[traveller] += n * party.items().get(item).load(traveller);
    kilograms[traveller] += n * party.items().get(item).limitKilograms();
    for (int k = 0; k < counted.length; k++) {
      Party.Limit limit = party.limits().get(k);
      counted[k] += limit.traveller() == traveller && limit.items()[item] ? n : 0;
    }
  }

  private void move(int item, int from, int to) {
    pieces[item * people + from]--;
    pieces[item * people + to]++;
    count(item, from, -1);
    count(item, to, 1);
  }

  /** The pieces after the last step that helped. */
  double[] shared() {
    for (int n = 0; n < MOST_STEPS; n++) {
      int heaviest = 0;
      for (int t = 1; t < people; t++) {
        heaviest = loads[t] > loads[heaviest] ? t : heaviest;
      }
      reached = loads[heaviest] - LESS;
      step = null;
      for (int i = 0; i < party.items().size(); i++) {
        for (int t = 0; t < people && pieces[i * people + heaviest] > 0.5; t++) {
          if (t != heaviest) {
            tryStep(i, heaviest, t);
          }
        }
      }
      if (step == null) {
        break;
      }
      move(step[0], heaviest, step[1]);
      if (step[2] >= 0) {
        move(step[2], step[1], heaviest);
      }
    }
    return pieces;
  }

  /** Tries to hand a piece on, by itself and for a lighter one. */
  private void tryStep(int item, int from, int to) {
    move(item, from, to);
    offer(item, from, to, -1);
    double weight = party.items().get(item).balanceKilograms();
    for (int j = 0; j < party.items().size(); j++) {
      if (pieces[j * people + to] > 0.5 && party.items().get(j).balanceKilograms() < weight) {
        move(j, to, from);
        offer(item, from, to, j);
        move(j, from, to);
      }
    }
    move(item, to, from);
  }

  private void offer(int item, int from, int to, int back) {
    double worse = Math.max(loads[from], loads[to]);
    if (worse < reached && isAllowed(item, to) && (back < 0 || isAllowed(back, from))) {
      reached = worse;
      step = new int[] {item, to, back};
    }
  }

  /** Whether a traveller may have what is there now. */
  private boolean isAllowed(int item, int traveller) {
    if (pieces[item * people + traveller] > party.items().get(item).caps()[traveller]
        || kilograms[traveller] > party.room()[traveller] + LESS) {
      return false;
    }
    for (int k = 0; k < counted.length; k++) {
      Party.Limit limit = party.limits().get(k);
      if (limit.traveller() == traveller && limit.items()[item] && counted[k] > limit.most()) {
        return false;
      }
    }
    return true;
  }
}
