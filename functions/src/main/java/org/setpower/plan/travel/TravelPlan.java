package org.setpower.plan.travel;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.setpower.flight.FlightClass;
import org.setpower.plan.common.InputRow;
import org.setpower.plan.common.InputRows;
import org.setpower.plan.common.InputTable;
import org.setpower.plan.common.IssueRow;
import org.setpower.plan.common.Issues;
import org.setpower.plan.common.Phrase;
import org.setpower.plan.common.PlanModel;
import org.setpower.plan.common.PlanResult;
import org.setpower.plan.common.ResultRows;
import org.setpower.plan.common.ResultTable;
import org.setpower.plan.finding.Finding;
import org.setpower.plan.finding.FindingKey;
import org.setpower.plan.finding.Gate;
import org.setpower.plan.finding.Identity;
import org.setpower.plan.travel.TravelInputs.Battery;
import org.setpower.plan.travel.rules.CabinEdition;

/** The battery travel list, calculated once: every verdict, the packing, every paper. */
public final class TravelPlan {
  /** The model of the sheet. */
  public static final PlanModel MODEL = new Model();

  /** What a line says of a row that is an issue itself. */
  private static final Set<FindingKey> ELSEWHERE =
      Set.of(
          TravelFinding.LINE_BATTERY,
          TravelFinding.LINE_TRAVELLER,
          TravelFinding.LINE_FLIGHT,
          TravelFinding.LINE_ANSWER_UNCLEAR);

  private final TravelInputs inputs;
  private final Trip trip;
  private final AnswerBook answers;
  private final Packings packings;
  private final PersonLimits limits;
  private final Carriage carriage;
  private final Gate<Facts> batteries;
  private final OnwardDesk onward;
  private final OnwardDesk back;
  private final PaperDesk desk;

  private TravelPlan(TravelInputs inputs) {
    this.inputs = inputs;
    trip = new Trip(inputs);
    List<Facts> facts =
        inputs.batteries().filled().map(r -> Facts.of(r, trip.project.weightUnit())).toList();
    answers = new AnswerBook(trip, inputs.answers(), facts);
    packings = new Packings(inputs.packing(), facts, trip);
    limits = new PersonLimits(answers, facts);
    carriage = new Carriage(trip, answers, limits, packings);
    batteries =
        new Gate<>(
            facts.stream()
                .map(f -> new Gate.Candidate<>(f.row(), f, f.id(), findings(f), false))
                .toList(),
            trip.stops());
    carriage.judge(batteries);
    onward = OnwardDesk.out(trip, batteries.all(), carriage, packings);
    back = onward.back(backAnotherWay());
    desk = new PaperDesk(trip, answers, batteries, carriage, onward, back);
  }

  private List<Finding> findings(Facts battery) {
    InputRow<Battery> row = inputs.batteries().rows().get(battery.row() - 1);
    List<Finding> findings = new ArrayList<>(row.findings());
    findings.addAll(battery.findings());
    findings.addAll(packings.unclear(battery));
    String user = Identity.of(battery.typed().user());
    if (!user.isEmpty()
        && trip.travellers.all().stream().noneMatch(t -> t.item().id().equals(user))) {
      findings.add(Finding.of(TravelFinding.USER_UNKNOWN, battery.typed().user()));
    }
    boolean limited = trip.people.stream().anyMatch(p -> p.cabinKilograms() != null);
    if (limited && battery.kilograms() == null && battery.typed().by() == null) {
      findings.add(Finding.of(TravelFinding.NO_WEIGHT));
    }
    if (battery.typed().by() == null) {
      findings.addAll(baggage(battery));
    }
    return findings;
  }

  /** What stands against a battery as baggage. */
  private List<Finding> baggage(Facts battery) {
    List<Finding> findings = new ArrayList<>();
    FlightClass strictest = carriage.strictest(battery);
    if (strictest == FlightClass.CARGO_ONLY && !battery.isUnknown()) {
      Phrase way = Phrase.of(OnwardDesk.way(battery, trip.project).word());
      double most =
          trip.legs.stream().mapToDouble(l -> l.edition().largeWattHours()).min().orElse(0);
      boolean ion =
          battery.chemistry().isLithiumIon() || battery.chemistry() == TravelChemistry.SODIUM;
      findings.add(
          ion
              ? Finding.of(TravelFinding.NOT_BAGGAGE, most, way)
              : Finding.of(TravelFinding.CARGO_ONLY, way));
    }
    List<String> unanswered = carriage.unanswered(battery);
    if (!unanswered.isEmpty()) {
      findings.add(Finding.of(TravelFinding.UNANSWERED, String.join(", ", unanswered)));
    }
    List<String> refused = carriage.refused(battery);
    if (!refused.isEmpty()) {
      findings.add(Finding.of(TravelFinding.REFUSED, String.join(", ", refused)));
    }
    return findings;
  }

  private List<Finding> whole() {
    List<Finding> whole = new ArrayList<>(trip.settings);
    if (!carriage.isProven()) {
      whole.add(Finding.of(TravelFinding.NOT_PROVEN));
    }
    if (trip.project.confirmed() == null) {
      whole.addAll(
          carriage.fromMemory(
              batteries.paper(b -> true).fit().stream().map(Gate.Judged::item).toList()));
    }
    if (isOneWay()) {
      whole.add(Finding.of(TravelFinding.NO_RETURN, pieces(stranded())));
    }
    int away = (trip.project.back() == Onward.STAYS ? 0 : onward.away()) + pieces(backAnotherWay());
    if (away > 0 && trip.project.backOn() == null) {
      whole.add(Finding.of(TravelFinding.NO_WAY_BACK, away));
    }
    LocalDate by = onward.handOverBy();
    LocalDate issued = trip.project.issued();
    LocalDate handOver = trip.project.handOver();
    boolean goes = onward.gate().all().stream().anyMatch(r -> r.item().way() != Onward.STAYS);
    if (goes && handOver != null && issued != null && handOver.isBefore(issued)) {
      whole.add(Finding.of(TravelFinding.HAND_OVER_BEFORE, handOver, issued));
    }
    LocalDate last = trip.lastOfMore();
    if (goes && handOver != null && last != null && handOver.isAfter(last)) {
      whole.add(Finding.of(TravelFinding.HAND_OVER_AFTER, handOver, last));
    }
    if (by != null && trip.project.handOver() != null && trip.project.handOver().isAfter(by)) {
      whole.add(Finding.of(TravelFinding.HANDED_OVER_LATE, trip.project.handOver(), by));
    } else if (by != null && issued != null && by.isBefore(issued)) {
      whole.add(Finding.of(TravelFinding.HAND_OVER_PASSED, by, issued));
    }
    return sorted(whole);
  }

  private static int pieces(List<Carriage.Line> lines) {
    return lines.stream().mapToInt(Carriage.Line::pieces).sum();
  }

  /** Lines that no flight brings back and of which nobody says how they come back. */
  private List<Carriage.Line> stranded() {
    return carriage.stranded().stream().filter(l -> l.person().typed().back() == null).toList();
  }

  /** Lines that no flight brings back and that come back another way. */
  private List<Carriage.Line> backAnotherWay() {
    return carriage.stranded().stream()
        .filter(l -> l.person().typed().back() != null)
        .filter(l -> l.person().typed().back() != Onward.STAYS)
        .toList();
  }

  /** Whether nothing that is carried comes back on a flight: the list has no flights back. */
  private boolean isOneWay() {
    int carried = carriage.gate().paper(l -> true).fit().size();
    return carried > 0 && stranded().size() == carried;
  }

  /** What is wrong with what a traveller carries. */
  private List<Finding> load(Trip.Person person) {
    List<Finding> findings = new ArrayList<>(carriage.overs(person.row()));
    List<Carriage.Line> own =
        stranded().stream().filter(l -> l.person().row() == person.row()).toList();
    if (!own.isEmpty() && !isOneWay() && !new Route(person.legs()).isBroken()) {
      Map<String, Integer> each = new TreeMap<>();
      own.forEach(l -> each.merge(l.battery().name(), l.pieces(), Integer::sum));
      findings.add(
          Finding.of(
              TravelFinding.TRAVELLER_NO_RETURN,
              String.join(", ", person.legs().stream().map(Trip.Leg::name).toList()),
              pieces(own),
              each.entrySet().stream()
                  .map(e -> e.getKey() + " " + e.getValue())
                  .collect(Collectors.joining(", "))));
    }
    return findings;
  }

  private static List<Finding> sorted(List<Finding> findings) {
    return findings.stream().distinct().sorted(Finding.WORST_FIRST).toList();
  }

  private List<ResultRows<?>> tables() {
    List<IssueRow> issues = issues();
    List<TravelResults.TravellerResult> travellers =
        align(inputs.travellers(), r -> traveller(r.number()));
    List<TravelResults.BatteryResult> rows = align(inputs.batteries(), r -> battery(r.number()));
    return List.of(
        new ResultRows<>(
            TravelResults.PROJECT,
            List.of(new TravelResults.ProjectResult(Finding.verdict(whole()), whole()))),
        new ResultRows<>(TravelResults.FLIGHTS, align(inputs.flights(), r -> flight(r.number()))),
        new ResultRows<>(TravelResults.TRAVELLERS, travellers),
        new ResultRows<>(
            TravelResults.ANSWERS,
            align(
                inputs.answers(),
                r ->
                    new TravelResults.AnswerResult(
                        Finding.verdict(answers.findings(r.number())),
                        answers.findings(r.number())))),
        new ResultRows<>(TravelResults.BATTERIES, rows),
        new ResultRows<>(
            TravelResults.PACKING,
            align(
                inputs.packing(),
                r -> {
                  List<Finding> findings =
                      new ArrayList<>(packings.gate.row(r.number()).findings());
                  findings.addAll(carriage.ofPacking(r.number()));
                  return new TravelResults.PackedResult(
                      Finding.verdict(findings), sorted(findings));
                })),
        new ResultRows<>(TravelResults.LINES, lines()),
        new ResultRows<>(TravelResults.RULES, rules()),
        new ResultRows<>(TravelResults.SUMMARY, List.of(summary(rows, travellers, issues))),
        new ResultRows<>(TravelResults.ISSUES, issues),
        new ResultRows<>(TravelPapers.CHECK_IN, desk.checkIn()),
        new ResultRows<>(TravelPapers.CARDS, desk.cards()),
        new ResultRows<>(TravelPapers.FREIGHT, desk.freight()),
        new ResultRows<>(TravelPapers.ROAD, desk.road()),
        new ResultRows<>(TravelPapers.QUESTIONS, new QuestionDesk(trip, answers, batteries).rows()),
        new ResultRows<>(TravelPapers.PAPERS, desk.papers()));
  }

  /** One result a row of the table, null for blank rows. */
  private static <T extends Record, R> List<R> align(
      InputRows<T> rows, Function<InputRow<T>, R> result) {
    List<R> results = new ArrayList<>(rows.rows().size());
    rows.rows().forEach(r -> results.add(r.isBlank() ? null : result.apply(r)));
    return results;
  }

  private TravelResults.FlightResult flight(int row) {
    Gate.Judged<Trip.Leg> judged = trip.flights.row(row);
    Trip.Leg leg = judged.item();
    return new TravelResults.FlightResult(
        judged.verdict(),
        judged.findings(),
        leg.rules(),
        leg.shown().name(),
        leg.shown().validTo(),
        limited(leg.spares()),
        limited(leg.over()),
        limited(leg.banks()),
        limited(leg.devices()));
  }

  private static Integer limited(int most) {
    return most == CabinEdition.NONE ? null : (Integer) most;
  }

  private TravelResults.TravellerResult traveller(int row) {
    Gate.Judged<Trip.Person> judged = trip.travellers.row(row);
    List<Finding> findings = new ArrayList<>(judged.findings());
    findings.addAll(load(judged.item()));
    List<Carriage.Line> own =
        carriage.gate().all().stream()
            .map(Gate.Judged::item)
            .filter(l -> l.person().row() == row)
            .toList();
    return new TravelResults.TravellerResult(
        Finding.verdict(findings),
        sorted(findings),
        own.stream().mapToInt(Carriage.Line::pieces).sum(),
        sum(own.stream().map(TravelPlan::wattHours)),
        sum(
            own.stream()
                .filter(l -> l.battery().kilograms() != null)
                .map(l -> l.pieces() * l.battery().kilograms())));
  }

  private static double wattHours(Carriage.Line line) {
    double one = line.battery().wattHours();
    return Double.isNaN(one) ? 0 : one * line.pieces();
  }

  /** A sum whose last digit does not depend on the order of rows. */
  private static double sum(Stream<Double> values) {
    double sum = 0;
    for (double value : values.sorted().toList()) {
      sum += value;
    }
    return Facts.dustless(sum);
  }

  private TravelResults.BatteryResult battery(int row) {
    Gate.Judged<Facts> judged = batteries.row(row);
    Facts battery = judged.item();
    int carried = carried(battery);
    int freight = left(battery, r -> r.way().isAir());
    int road = left(battery, r -> r.way() == Onward.ROAD);
    int stays = left(battery, r -> r.way() == Onward.STAYS);
    List<Finding> findings = withHeld(judged);
    return new TravelResults.BatteryResult(
        Finding.verdict(findings),
        findings,
        Double.isNaN(battery.wattHours()) ? null : (Double) battery.wattHours(),
        shown(judged, carriage.strictest(battery)),
        judged.fit() ? most(battery) : null,
        carried,
        held(battery),
        freight,
        road,
        stays);
  }

  /** Pieces on no paper that do not stay either. */
  private int held(Facts battery) {
    return Math.max(0, battery.quantity() - carried(battery) - left(battery, r -> true));
  }

  /** What is wrong with a battery; of a sound one also that pieces of it go nowhere. */
  private List<Finding> withHeld(Gate.Judged<Facts> judged) {
    int held = held(judged.item());
    if (!judged.fit() || held == 0) {
      return judged.findings();
    }
    List<Finding> findings = new ArrayList<>(judged.findings());
    findings.add(Finding.of(TravelFinding.HELD_BACK, held));
    return sorted(findings);
  }

  /** The class of a battery; of one that stops only that it does not fly at all. */
  private static FlightClass shown(Gate.Judged<Facts> judged, FlightClass found) {
    if (Facts.isDamaged(judged.findings()) || found == FlightClass.NOT_BY_AIR) {
      return FlightClass.NOT_BY_AIR;
    }
    return judged.fit() ? found : null;
  }

  private Integer most(Facts battery) {
    FlightClass strictest = carriage.strictest(battery);
    if (strictest != null && strictest.compareTo(FlightClass.ASK) > 0) {
      return 0;
    }
    return trip.people.stream()
        .flatMap(p -> carriage.most(battery, p).stream())
        .min(Comparator.naturalOrder())
        .orElse(null);
  }

  private int carried(Facts battery) {
    return carriage.gate().paper(l -> l.battery().row() == battery.row()).fit().stream()
        .mapToInt(l -> l.item().pieces())
        .sum();
  }

  private int left(Facts battery, Predicate<OnwardDesk.Rest> way) {
    return onward
        .gate()
        .paper(r -> r.battery().row() == battery.row() && way.test(r))
        .fit()
        .stream()
        .mapToInt(r -> r.item().pieces())
        .sum();
  }

  /** Who carries what, then what nobody carries. */
  private List<TravelResults.LineRow> lines() {
    return Stream.of(carried().map(TravelPlan::line), left().map(TravelPlan::rest))
        .flatMap(s -> s)
        .toList();
  }

  private Stream<Gate.Judged<Carriage.Line>> carried() {
    return carriage.gate().all().stream()
        .sorted(
            Comparator.comparing((Gate.Judged<Carriage.Line> l) -> l.item().person().id())
                .thenComparing(l -> l.item().battery().id())
                .thenComparing(l -> l.item().toString()));
  }

  /** What nobody carries, out and then back. */
  private Stream<Gate.Judged<OnwardDesk.Rest>> left() {
    return Stream.of(onward, back)
        .flatMap(
            d ->
                d.gate().all().stream().sorted(Comparator.comparing(r -> r.item().battery().id())));
  }

  private static TravelResults.LineRow line(Gate.Judged<Carriage.Line> line) {
    return new TravelResults.LineRow(
        line.verdict(),
        line.item().person().name(),
        line.item().battery().name(),
        line.item().pieces(),
        line.item().bag(),
        Facts.dustless(wattHours(line.item())),
        null,
        line.item().decided(),
        line.findings());
  }

  private static TravelResults.LineRow rest(Gate.Judged<OnwardDesk.Rest> rest) {
    double one = rest.item().battery().wattHours();
    return new TravelResults.LineRow(
        rest.verdict(),
        rest.item().wayWord(),
        rest.item().battery().name(),
        rest.item().pieces(),
        null,
        Double.isNaN(one) ? null : (Double) Facts.dustless(one * rest.item().pieces()),
        rest.item().discharge(),
        null,
        rest.findings());
  }

  /** One row a flight and sort of battery, so that many serials are one row. */
  private List<TravelResults.RuleRow> rules() {
    return trip.legs.stream()
        .flatMap(
            leg ->
                batteries.all().stream()
                    .sorted(
                        Comparator.comparing((Gate.Judged<Facts> b) -> b.item().type())
                            .thenComparing(b -> b.item().id()))
                    .map(
                        b ->
                            new TravelResults.RuleRow(
                                leg.name(),
                                b.item().typeName(),
                                shown(b, b.item().classUnder(leg.edition())),
                                leg.shown().name(),
                                b.item().isToConfirm(leg.edition()),
                                leg.shown().source())))
        .distinct()
        .toList();
  }

  private TravelResults.Summary summary(
      List<TravelResults.BatteryResult> rows,
      List<TravelResults.TravellerResult> travellers,
      List<IssueRow> issues) {
    List<TravelResults.BatteryResult> filled = rows.stream().filter(r -> r != null).toList();
    return new TravelResults.Summary(
        IssueRow.worst(issues),
        batteries.all().stream().mapToInt(b -> b.item().quantity()).sum(),
        filled.stream().mapToInt(TravelResults.BatteryResult::carriedPieces).sum(),
        carriage.gate().paper(l -> l.battery().wattHours() > 100).fit().stream()
            .mapToInt(l -> l.item().pieces())
            .sum(),
        filled.stream().mapToInt(TravelResults.BatteryResult::freightPieces).sum(),
        filled.stream().mapToInt(TravelResults.BatteryResult::roadPieces).sum(),
        filled.stream().mapToInt(TravelResults.BatteryResult::stayPieces).sum(),
        filled.stream().mapToInt(TravelResults.BatteryResult::heldPieces).sum(),
        carriage.fewestTravellers(
            batteries.paper(b -> true).fit().stream().map(Gate.Judged::item).toList()),
        travellers.stream()
            .filter(t -> t != null)
            .mapToDouble(TravelResults.TravellerResult::weight)
            .max()
            .orElse(0),
        onward.toCharge(),
        onward.chargeHours(),
        onward.handOverBy());
  }

  private List<IssueRow> issues() {
    Issues issues = new Issues();
    issues.add(TravelInputs.PROJECT.heading(), "1", whole());
    trip.flights
        .all()
        .forEach(f -> issues.add(TravelInputs.FLIGHTS.heading(), f.item().name(), f.findings()));
    trip.travellers
        .all()
        .forEach(
            t -> {
              List<Finding> findings = new ArrayList<>(t.findings());
              findings.addAll(load(t.item()));
              issues.add(TravelInputs.TRAVELLERS.heading(), t.item().name(), sorted(findings));
            });
    answers.all().forEach((row, f) -> issues.add(TravelInputs.ANSWERS.heading(), "#" + row, f));
    batteries
        .all()
        .forEach(b -> issues.add(TravelInputs.BATTERIES.heading(), b.item().name(), b.findings()));
    packings
        .gate
        .all()
        .forEach(p -> issues.add(TravelInputs.PACKING.heading(), "#" + p.row(), p.findings()));
    carriage
        .gate()
        .all()
        .forEach(
            l ->
                issues.add(
                    TravelResults.LINES.heading(),
                    l.item().person().name() + " / " + l.item().battery().name(),
                    l.findings().stream()
                        .filter(f -> !ELSEWHERE.contains(f.key()))
                        .filter(f -> !carriage.overs(l.item().person().row()).contains(f))
                        .toList()));
    left()
        .forEach(
            r ->
                issues.add(
                    TravelResults.LINES.heading(),
                    r.item().wayWord() + " / " + r.item().battery().name(),
                    r.findings()));
    return issues.rows(TravelResults.ISSUES.rows());
  }

  /** The rows that a row of results is made of: its own, or all of the other table. */
  private int[] related(String table, int row, String source) {
    if (table.equals(source)) {
      return new int[] {row};
    }
    IntStream all =
        inputs().stream()
            .filter(i -> i.table().key().equals(source))
            .flatMap(i -> i.filled().map(InputRow::number))
            .mapToInt(Integer::intValue);
    Behind behind = behind(table, row);
    return behind == null ? all.toArray() : all.filter(r -> has(behind, source, r)).toArray();
  }

  /** Whether a row of a table to fill stands behind a result. */
  private boolean has(Behind behind, String source, int row) {
    return switch (source) {
      case "batteries" -> behind.batteries().contains(row);
      case "travellers" -> behind.travellers().contains(row);
      case "flights" -> behind.flights().contains(row);
      case "answers" -> answers.isAbout(row, behind);
      case "packing" -> packings.isAbout(row, behind);
      default -> true;
    };
  }

  /** What a row of results is made of; null for everything. */
  private Behind behind(String table, int row) {
    List<Behind> rows = new ArrayList<>();
    switch (table) {
      case "batteries" -> {
        return Behind.of(batteries.row(row).item(), trip);
      }
      case "travellers" -> {
        Trip.Person person = trip.travellers.row(row).item();
        List<Carriage.Line> own =
            carriage.gate().all().stream()
                .map(Gate.Judged::item)
                .filter(l -> l.person().row() == row)
                .toList();
        return own.isEmpty() ? Behind.of(person) : Behind.of(own);
      }
      case "lines" -> {
        carried().forEach(l -> rows.add(Behind.of(List.of(l.item()))));
        left().forEach(r -> rows.add(Behind.of(r.item().battery(), trip)));
      }
      case "checkin" -> desk.checkIn(rows);
      case "cards" -> desk.cards(rows);
      case "freight" -> rows.addAll(desk.behindRest(true));
      case "road" -> rows.addAll(desk.behindRest(false));
      default -> {
        return null;
      }
    }
    return rows.get(row - 1);
  }

  private List<InputRows<?>> inputs() {
    return List.of(
        inputs.project(),
        inputs.flights(),
        inputs.travellers(),
        inputs.answers(),
        inputs.batteries(),
        inputs.packing());
  }

  /** The travel list as the function of the sheet and the tests see it. */
  private static final class Model implements PlanModel {
    @Override
    public String name() {
      return "travel";
    }

    @Override
    public String title() {
      return "battery travel list";
    }

    @Override
    public List<InputTable<?>> inputs() {
      return List.of(
          TravelInputs.PROJECT,
          TravelInputs.FLIGHTS,
          TravelInputs.TRAVELLERS,
          TravelInputs.ANSWERS,
          TravelInputs.BATTERIES,
          TravelInputs.PACKING);
    }

    @Override
    public List<ResultTable<?>> results() {
      return List.of(
          TravelResults.PROJECT,
          TravelResults.FLIGHTS,
          TravelResults.TRAVELLERS,
          TravelResults.ANSWERS,
          TravelResults.BATTERIES,
          TravelResults.PACKING,
          TravelResults.LINES,
          TravelResults.RULES,
          TravelResults.SUMMARY,
          TravelResults.ISSUES,
          TravelPapers.CHECK_IN,
          TravelPapers.CARDS,
          TravelPapers.FREIGHT,
          TravelPapers.ROAD,
          TravelPapers.QUESTIONS,
          TravelPapers.PAPERS);
    }

    @Override
    public List<FindingKey> findings() {
      return Stream.concat(
              Arrays.stream(TravelFinding.values()), Arrays.stream(TravelStatement.values()))
          .map(FindingKey.class::cast)
          .toList();
    }

    @Override
    public List<String> phrases() {
      return TravelPapers.Words.patterns();
    }

    @Override
    public PlanResult calculate(List<?> ranges) {
      TravelInputs read =
          new TravelInputs(
              TravelInputs.PROJECT.read(ranges.get(0)),
              TravelInputs.FLIGHTS.read(ranges.get(1)),
              TravelInputs.TRAVELLERS.read(ranges.get(2)),
              TravelInputs.ANSWERS.read(ranges.get(3)),
              TravelInputs.BATTERIES.read(ranges.get(4)),
              TravelInputs.PACKING.read(ranges.get(5)));
      List<InputRows<?>> all =
          List.of(
              read.project(),
              read.flights(),
              read.travellers(),
              read.answers(),
              read.batteries(),
              read.packing());
      if (all.stream().anyMatch(r -> r.fault().isPresent())) {
        return new PlanResult(all, results(), List::of, (table, row, source) -> new int[0]);
      }
      TravelPlan plan = new TravelPlan(read);
      return new PlanResult(all, results(), plan::tables, plan::related);
    }
  }
}
