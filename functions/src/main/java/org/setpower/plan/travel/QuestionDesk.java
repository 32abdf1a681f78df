package org.setpower.plan.travel;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.setpower.plan.common.Phrase;
import org.setpower.plan.finding.Finding;
import org.setpower.plan.finding.Gate;
import org.setpower.plan.finding.Identity;
import org.setpower.plan.finding.Verdict;

/** Writes what each operating carrier has still to be asked in writing. */
final class QuestionDesk {
  private final Trip trip;
  private final AnswerBook answers;
  private final List<Facts> batteries;

  QuestionDesk(Trip trip, AnswerBook answers, Gate<Facts> batteries) {
    this.trip = trip;
    this.answers = answers;
    this.batteries =
        batteries.paper(b -> b.typed().by() == null).fit().stream()
            .map(Gate.Judged::item)
            .sorted(Comparator.comparing(Facts::type).thenComparing(Facts::id))
            .toList();
  }

  /** One question a carrier, in the order of flights. */
  List<TravelPapers.QuestionRow> rows() {
    Map<String, List<Trip.Leg>> carriers = new LinkedHashMap<>();
    for (Trip.Leg leg : trip.legs) {
      if (!leg.carrier().isEmpty() && leg.date() != null && !about(leg).isEmpty()) {
        carriers.computeIfAbsent(Identity.of(leg.carrier()), k -> new ArrayList<>()).add(leg);
      }
    }
    return carriers.values().stream().map(this::row).toList();
  }

  private TravelPapers.QuestionRow row(List<Trip.Leg> legs) {
    List<Finding> text = new ArrayList<>();
    if (trip.project.production() != null) {
      text.add(TravelStatement.QUESTION_PRODUCTION.of(trip.project.production()));
    }
    text.add(TravelStatement.QUESTION.of());
    for (Trip.Leg leg : legs) {
      text.add(TravelStatement.QUESTION_FLIGHT.of(leg.name(), leg.date()));
      text.addAll(about(leg));
    }
    return new TravelPapers.QuestionRow(
        legs.get(0).carrier(),
        legs.stream().map(Trip.Leg::name).collect(Collectors.joining(", ")),
        text);
  }

  /** What to ask about a flight. */
  private List<Finding> about(Trip.Leg leg) {
    List<Finding> asked = new ArrayList<>();
    if (!leg.held() && !leg.isWritten() && Finding.verdict(leg.findings()) == Verdict.STOP) {
      asked.add(TravelStatement.QUESTION_LIMITS.of());
    }
    Map<List<Object>, List<Facts>> types = new LinkedHashMap<>();
    for (Facts battery : batteries) {
      if (battery.classUnder(leg.edition()).needsAnswer() && !people(leg, battery).isEmpty()) {
        types
            .computeIfAbsent(
                List.of(battery.type(), battery.carried(), battery.wattHours()),
                k -> new ArrayList<>())
            .add(battery);
      }
    }
    types.values().forEach(t -> asked.add(type(leg, t)));
    Map<String, String> outputs = new TreeMap<>();
    batteries.stream()
        .filter(b -> Facts.hasOutputs(b.findings()))
        .forEach(b -> outputs.put(b.type(), b.typeName()));
    if (!outputs.isEmpty() && !trip.people.isEmpty()) {
      asked.add(TravelStatement.QUESTION_OUTPUTS.of(String.join(", ", outputs.values())));
    }
    return asked;
  }

  private Finding type(Trip.Leg leg, List<Facts> rows) {
    Facts first = rows.get(0);
    int pieces = rows.stream().mapToInt(Facts::quantity).sum();
    int most = Math.min(pieces, PersonLimits.most(first, leg));
    List<String> asking = people(leg, first);
    int asked = (int) Math.min(pieces, (long) most * asking.size());
    String people = String.join(", ", asking);
    Phrase chemistry = Phrase.of(first.chemistry().word());
    Phrase carried = Phrase.of(first.carried().word());
    return Double.isNaN(first.wattHours())
        ? TravelStatement.QUESTION_TYPE_OPEN.of(
            first.typeName(), chemistry, carried, most, asked, people)
        : TravelStatement.QUESTION_TYPE.of(
            first.typeName(), chemistry, first.wattHours(), carried, most, asked, people);
  }

  /** Who flies there and has no answer for a battery. */
  private List<String> people(Trip.Leg leg, Facts battery) {
    return trip.people.stream()
        .filter(p -> p.legs().stream().anyMatch(l -> l.row() == leg.row()))
        .filter(p -> answers.answer(leg, p, battery).isEmpty())
        .map(Trip.Person::name)
        .toList();
  }
}
