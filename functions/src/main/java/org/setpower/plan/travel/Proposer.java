package org.setpower.plan.travel;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import org.setpower.plan.travel.packing.Party;
import org.setpower.plan.travel.packing.PartyPacking;

/**
 * Makes the question of who carries what, of the batteries that nobody decided about, and reads its
 * answer. Like batteries become one item, so that the order of rows and many serials change
 * nothing.
 */
final class Proposer {
  private final Packings packings;
  private final List<Trip.Person> people;
  private final List<List<PersonLimits.Limit>> limits;
  private final Carriage carriage;

  /** A proposal: pieces of a battery with a traveller. */
  record Proposed(Facts battery, Trip.Person person, int pieces) {}

  /** Proposals, and whether they are proven. */
  record Outcome(List<Proposed> lines, boolean proven) {}

  /** What makes batteries like each other. */
  private record Like(
      double wattHours,
      int priority,
      boolean over,
      double kilograms,
      double balance,
      int user,
      boolean fitted,
      List<Boolean> may,
      List<Integer> last,
      List<Boolean> limits) {}

  Proposer(Packings packings, List<Trip.Person> people, PersonLimits limits, Carriage carriage) {
    this.packings = packings;
    this.people = people;
    this.limits = people.stream().map(limits::cautious).toList();
    this.carriage = carriage;
  }

  /**
   * The proposal.
   *
   * @param batteries those that may travel
   */
  Outcome propose(List<Facts> batteries) {
    Map<Like, List<Facts>> items = new LinkedHashMap<>();
    batteries.stream()
        .filter(b -> left(b) > 0)
        .sorted(Comparator.comparing(Facts::id))
        .forEach(b -> items.computeIfAbsent(like(b), k -> new ArrayList<>()).add(b));
    items.keySet().removeIf(k -> k.may().stream().noneMatch(m -> m));
    if (items.isEmpty()) {
      return new Outcome(List.of(), true);
    }
    PartyPacking.Proposal proposal = PartyPacking.of(party(items));
    List<Proposed> lines = new ArrayList<>();
    int i = 0;
    for (List<Facts> rows : items.values()) {
      share(rows, proposal.pieces()[i++], lines);
    }
    return new Outcome(lines, proposal.proven());
  }

  private static boolean isFitted(Facts battery) {
    return !battery.isSpare() && !battery.isBank();
  }

  /** Whether it is in equipment of the one who carries it. */
  private boolean isBrought(Packings.Decided decided) {
    return isFitted(decided.battery()) && carriage.isUser(decided.battery(), decided.person());
  }

  private int left(Facts battery) {
    return battery.quantity() - packings.decided(battery);
  }

  private Like like(Facts battery) {
    List<Boolean> counted = new ArrayList<>();
    limits.forEach(l -> l.forEach(x -> counted.add(x.rows().contains(battery.row()))));
    Double kilograms = battery.kilograms();
    return new Like(
        Double.isNaN(battery.wattHours()) ? 1 : battery.wattHours(),
        battery.priority(),
        people.stream().flatMap(p -> p.legs().stream()).anyMatch(l -> battery.isOver(l.edition())),
        kilograms == null ? 0 : kilograms,
        battery.balanceKilograms(),
        IntStream.range(0, people.size())
            .filter(t -> carriage.isUser(battery, people.get(t)))
            .findFirst()
            .orElse(-1),
        isFitted(battery),
        people.stream()
            .map(p -> !packings.isDecided(battery, p) && carriage.blocks(battery, p).isEmpty())
            .toList(),
        people.stream().map(p -> packings.last(battery, p)).toList(),
        counted);
  }

  private Party party(Map<Like, List<Facts>> items) {
    List<Like> likes = List.copyOf(items.keySet());
    List<Party.Item> asked = new ArrayList<>();
    items.forEach(
        (like, rows) -> {
          int count = rows.stream().mapToInt(this::left).sum();
          asked.add(
              new Party.Item(
                  count,
                  like.wattHours,
                  like.priority,
                  like.over,
                  like.kilograms,
                  like.balance,
                  like.user,
                  like.fitted,
                  Math.floorMod(rows.get(0).id().hashCode(), people.size()),
                  like.may.stream().mapToInt(m -> m ? count : 0).toArray(),
                  like.last.stream().mapToInt(n -> n * rows.size()).toArray()));
        });
    List<Party.Limit> most = most(likes);
    double[] room = new double[people.size()];
    double[] load = new double[people.size()];
    Arrays.fill(room, Double.POSITIVE_INFINITY);
    for (int t = 0; t < room.length; t++) {
      Double own = people.get(t).cabinKilograms();
      room[t] = own == null ? Double.POSITIVE_INFINITY : own;
      for (Packings.Decided d : packings.decided()) {
        if (d.person().id().equals(people.get(t).id())) {
          Double one = d.battery().kilograms();
          room[t] -= one == null ? 0 : one * d.pieces();
          load[t] += isBrought(d) ? 0 : d.battery().balanceKilograms() * d.pieces();
        }
      }
      load[t] = Facts.dustless(load[t]);
    }
    return new Party(asked, most, room, load);
  }

  /** One limit for each traveller and set of items that can bind: the least of all flights. */
  private List<Party.Limit> most(List<Like> likes) {
    Map<List<Object>, Party.Limit> least = new LinkedHashMap<>();
    int place = 0;
    for (int t = 0; t < people.size(); t++) {
      for (PersonLimits.Limit limit : limits.get(t)) {
        boolean[] counted = new boolean[likes.size()];
        for (int i = 0; i < counted.length; i++) {
          counted[i] = likes.get(i).limits.get(place);
        }
        place++;
        int left = limit.most() - limit.own() - taken(t, limit);
        least.merge(
            List.of(t, Arrays.toString(counted)),
            new Party.Limit(t, counted, left),
            (one, other) -> one.most() <= other.most() ? one : other);
      }
    }
    return List.copyOf(least.values());
  }

  private int taken(int traveller, PersonLimits.Limit limit) {
    return packings.decided().stream()
        .filter(d -> d.person().id().equals(people.get(traveller).id()))
        .filter(d -> limit.rows().contains(d.battery().row()))
        .mapToInt(Packings.Decided::pieces)
        .sum();
  }

  /** Deals the pieces of like batteries out to rows and travellers, in their order. */
  private void share(List<Facts> rows, int[] pieces, List<Proposed> lines) {
    int[] open = pieces.clone();
    for (Facts battery : rows) {
      int left = left(battery);
      for (int t = 0; t < open.length && left > 0; t++) {
        int n = Math.min(left, open[t]);
        if (n > 0) {
          lines.add(new Proposed(battery, people.get(t), n));
          open[t] -= n;
          left -= n;
        }
      }
    }
  }
}
