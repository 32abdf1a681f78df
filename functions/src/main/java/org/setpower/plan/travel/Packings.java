package org.setpower.plan.travel;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Collectors;
import org.setpower.plan.common.InputRow;
import org.setpower.plan.common.InputRows;
import org.setpower.plan.finding.Finding;
import org.setpower.plan.finding.Gate;
import org.setpower.plan.finding.Identity;
import org.setpower.plan.travel.TravelInputs.Packed;

/** The rows of Packing: what is decided by hand, and what the last proposal was. */
final class Packings {
  /** Rows with their verdicts. */
  final Gate<InputRow<Packed>> gate;

  private final List<Decided> decided = new ArrayList<>();
  private final Map<String, Integer> last = new LinkedHashMap<>();
  private final Map<String, Integer> unclear = new LinkedHashMap<>();

  /**
   * A decision that names a battery and a traveller.
   *
   * @param pieces whole pieces; a part of one counts as one
   */
  record Decided(int row, Facts battery, Trip.Person person, int pieces, Bag bag) {}

  Packings(InputRows<Packed> rows, List<Facts> batteries, Trip trip) {
    List<InputRow<Packed>> filled = rows.filled().toList();
    List<Gate.Candidate<InputRow<Packed>>> candidates = new ArrayList<>();
    Map<String, Integer> sums = new LinkedHashMap<>();
    for (InputRow<Packed> row : filled) {
      Optional<Facts> battery = battery(row, batteries);
      Optional<Trip.Person> person = person(row, trip);
      boolean hint = Boolean.FALSE.equals(row.value().decided());
      String key = Identity.of(row.value().battery());
      if (!hint && (row.isUnreadable() || row.value().pieces() == null || person.isEmpty())) {
        unclear.merge(key, row.number(), Math::min);
      }
      if (battery.isPresent() && person.isPresent() && row.value().pieces() != null) {
        int pieces = (int) Math.ceil(row.value().pieces());
        if (hint) {
          last.merge(key(battery.get(), person.get()), pieces, Integer::sum);
        } else {
          decided.add(
              new Decided(
                  row.number(),
                  battery.get(),
                  person.get(),
                  pieces,
                  row.value().bag() == null ? Bag.CABIN : row.value().bag()));
          sums.merge(battery.get().id(), pieces, Integer::sum);
        }
      }
    }
    for (InputRow<Packed> row : filled) {
      String battery = Identity.of(row.value().battery());
      String traveller = Identity.of(row.value().traveller());
      boolean hint = Boolean.FALSE.equals(row.value().decided());
      candidates.add(
          new Gate.Candidate<>(
              row.number(),
              row,
              battery.isEmpty() ? "" : battery + " / " + traveller + (hint ? " / last" : ""),
              findings(row, batteries, trip, hint ? 0 : sums.getOrDefault(battery, 0)),
              false));
    }
    gate = new Gate<>(candidates, List.of());
  }

  private static Optional<Facts> battery(InputRow<Packed> row, List<Facts> batteries) {
    String id = Identity.of(row.value().battery());
    // of rows of one name, which all stop, one that does not depend on their order
    return batteries.stream()
        .filter(b -> !id.isEmpty() && b.id().equals(id))
        .min(Comparator.comparing(b -> b.typed().toString()));
  }

  private static Optional<Trip.Person> person(InputRow<Packed> row, Trip trip) {
    String id = Identity.of(row.value().traveller());
    return trip.travellers.all().stream()
        .map(Gate.Judged::item)
        .filter(p -> !id.isEmpty() && p.id().equals(id))
        .min(Comparator.comparing(p -> p.typed().toString()));
  }

  private static List<Finding> findings(
      InputRow<Packed> row, List<Facts> batteries, Trip trip, int sum) {
    Packed typed = row.value();
    List<Finding> findings = new ArrayList<>(row.findings());
    Optional<Facts> battery = battery(row, batteries);
    if (typed.battery() != null && battery.isEmpty()) {
      findings.add(Finding.of(TravelFinding.PACKED_BATTERY, typed.battery()));
    }
    if (typed.traveller() != null && person(row, trip).isEmpty()) {
      boolean way =
          Arrays.stream(Onward.values())
              .anyMatch(w -> Identity.of(w.word()).equals(Identity.of(typed.traveller())));
      findings.add(
          Finding.of(
              way ? TravelFinding.PACKED_WAY : TravelFinding.PACKED_TRAVELLER, typed.traveller()));
    }
    if (typed.pieces() != null && typed.pieces() != Math.rint(typed.pieces())) {
      findings.add(Finding.of(TravelFinding.PACKED_PART, typed.pieces().toString()));
    }
    if (battery.isPresent() && sum > battery.get().quantity()) {
      findings.add(Finding.of(TravelFinding.PACKED_TOO_MANY, sum, battery.get().quantity()));
    }
    return findings;
  }

  private static String key(Facts battery, Trip.Person person) {
    return battery.id() + "\n" + person.id();
  }

  /** Whether a row is about what a result is made of; one that names nothing may be. */
  boolean isAbout(int row, Behind behind) {
    return decided.stream()
        .filter(d -> d.row == row)
        .allMatch(
            d ->
                behind.batteries().contains(d.battery.row())
                    || behind.travellers().contains(d.person.row()));
  }

  /** What is decided, in the order of rows. */
  List<Decided> decided() {
    return decided;
  }

  boolean isDecided(Facts battery, Trip.Person person) {
    return decided.stream()
        .anyMatch(
            d -> d.battery.id().equals(battery.id()) && Objects.equals(d.person.id(), person.id()));
  }

  /** Pieces of a battery that are decided, over all travellers. */
  int decided(Facts battery) {
    return decided.stream()
        .filter(d -> d.battery.id().equals(battery.id()))
        .mapToInt(Decided::pieces)
        .sum();
  }

  /** Pieces of the last proposal. */
  int last(Facts battery, Trip.Person person) {
    return last.getOrDefault(key(battery, person), 0);
  }

  /** A row that names the battery and cannot be read: nobody knows how many are left. */
  List<Finding> unclear(Facts battery) {
    return unclear.entrySet().stream()
        .filter(e -> e.getKey().isEmpty() || e.getKey().equals(battery.id()))
        .map(e -> Finding.of(TravelFinding.PACKING_UNCLEAR, e.getValue()))
        .collect(Collectors.toList());
  }
}
