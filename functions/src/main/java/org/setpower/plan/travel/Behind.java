package org.setpower.plan.travel;

import java.util.List;
import java.util.Set;
import java.util.TreeSet;

/**
 * The rows that a row of results is made of, so that its calculation names these and no others.
 *
 * @param batteries rows of Batteries
 * @param travellers rows of Travellers
 * @param flights rows of Flights
 */
record Behind(Set<Integer> batteries, Set<Integer> travellers, Set<Integer> flights) {
  /** Of lines on all flights of their travellers. */
  static Behind of(List<Carriage.Line> lines) {
    Behind behind = new Behind(new TreeSet<>(), new TreeSet<>(), new TreeSet<>());
    for (Carriage.Line line : lines) {
      behind.batteries.add(line.battery().row());
      behind.add(line.person());
    }
    return behind;
  }

  /** Of lines on one flight. */
  static Behind of(List<Carriage.Line> lines, Trip.Leg leg) {
    Behind behind = of(lines);
    behind.flights.clear();
    behind.flights.add(leg.row());
    return behind;
  }

  /** Of a traveller without a battery. */
  static Behind of(Trip.Person person) {
    Behind behind = of(List.of());
    behind.add(person);
    return behind;
  }

  /** Of a battery that any traveller may carry on any flight. */
  static Behind of(Facts battery, Trip trip) {
    Behind behind = of(List.of());
    behind.batteries.add(battery.row());
    trip.people.forEach(behind::add);
    trip.legs.forEach(l -> behind.flights.add(l.row()));
    return behind;
  }

  private void add(Trip.Person person) {
    travellers.add(person.row());
    person.legs().forEach(l -> flights.add(l.row()));
  }
}
