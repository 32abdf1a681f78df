package org.setpower.plan.quote;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.setpower.hire.HireDays;
import org.setpower.hire.Money;
import org.setpower.plan.common.InputRow;
import org.setpower.plan.common.InputRows;
import org.setpower.plan.common.InputTable;
import org.setpower.plan.common.IssueRow;
import org.setpower.plan.common.Issues;
import org.setpower.plan.common.PlanModel;
import org.setpower.plan.common.PlanResult;
import org.setpower.plan.common.ResultRows;
import org.setpower.plan.common.ResultTable;
import org.setpower.plan.finding.Finding;
import org.setpower.plan.finding.FindingKey;
import org.setpower.plan.finding.Gate;
import org.setpower.plan.finding.Verdict;
import org.setpower.plan.quote.QuoteInputs.Return;
import org.setpower.plan.quote.StockCalendar.Peak;

/** The rental quote, calculated once: every price, the client's page, every list. */
public final class QuotePlan {
  /** The model of the sheet. */
  public static final PlanModel MODEL = new Model();

  private static final int NAMED_ROWS = 12;

  private final QuoteInputs inputs;
  private final QuoteRules rules;
  private final ChargedDays charged;
  private final PriceList list;
  private final Map<Integer, QuoteLine> lines = new LinkedHashMap<>();
  private final StockCalendar calendar;
  private final PickedRows picked;
  private final LateReturns returns;
  private final Gate<QuoteLine> gate;
  private final List<Finding> orderFindings;
  private final List<Finding> withheld;
  private final OrderSums sums;
  private final QuoteResults.Letter letter;
  private final List<QuoteResults.DocumentLine> document;
  private final List<QuoteResults.ClosingLine> closing;
  private final ReturnStatement statement;
  private final List<Finding> papersWithheld;
  private final Papers papers;

  private QuotePlan(QuoteInputs inputs) {
    this.inputs = inputs;
    rules =
        new QuoteRules(
            inputs.house().rows().get(0),
            inputs.client().rows().get(0),
            inputs.order().rows().get(0));
    charged = new ChargedDays(rules, inputs.schedule(), inputs.shares());
    list = new PriceList(inputs.stock());
    inputs
        .items()
        .filled()
        .forEach(r -> lines.put(r.number(), new QuoteLine(r, rules, charged, list)));
    calendar = new StockCalendar(rules, list, lines.values(), inputs.booked());
    picked = new PickedRows(lines, inputs.picked());
    returns = new LateReturns(rules, lines, picked, inputs.returns());
    lines.values().forEach(this::judgeShelf);
    lines.values().stream()
        .filter(picked::isLeftOut)
        .forEach(l -> l.add(Finding.of(QuoteFinding.NOT_PICKED)));
    gate =
        new Gate<>(
            lines.values().stream()
                .map(
                    l ->
                        new Gate.Candidate<>(
                            l.row().number(), l, "#" + l.row().number(), l.findings(), false))
                .toList(),
            rules.stops());
    withheld = withheld();
    sums = withheld.isEmpty() ? new OrderSums(rules, fit()) : null;
    letter = Letters.of(rules, withheld, withheld.isEmpty() ? fit() : List.of());
    document =
        sums == null
            ? ClientDocument.withheld(withheld)
            : ClientDocument.of(rules, sums, fit(), fit(QuoteLine::isOption));
    closing = sums == null ? List.of() : Letters.closing(rules, sums, fit(), inputs.terms());
    orderFindings = judgeOrder();
    statement = statement();
    papersWithheld = papersWithheld();
    papers = new Papers(fit(), picked, returns, papersWithheld.stream().findFirst());
  }

  /** Calculates the quote from its ranges, in the order of {@link PlanModel#inputs()}. */
  public static PlanResult of(List<?> ranges) {
    return MODEL.calculate(ranges);
  }

  private static QuoteInputs read(List<?> ranges) {
    return new QuoteInputs(
        QuoteInputs.HOUSE.read(ranges.get(0)),
        QuoteInputs.CLIENT.read(ranges.get(1)),
        QuoteInputs.ORDER.read(ranges.get(2)),
        QuoteInputs.ITEMS.read(ranges.get(3)),
        QuoteInputs.STOCK.read(ranges.get(4)),
        QuoteInputs.BOOKED.read(ranges.get(5)),
        QuoteInputs.SCHEDULE.read(ranges.get(6)),
        QuoteInputs.SHARES.read(ranges.get(7)),
        QuoteInputs.PICKED.read(ranges.get(8)),
        QuoteInputs.RETURNS.read(ranges.get(9)),
        QuoteInputs.TERMS.read(ranges.get(10)));
  }

  private ReturnStatement statement() {
    List<InputRow<Return>> rows = inputs.returns().filled().toList();
    boolean isStopped =
        rows.stream()
            .anyMatch(r -> !QuoteRules.stops(returns.state(r.number()).findings()).isEmpty());
    if (sums == null) {
      return ReturnStatement.withheld(rules, withheld.get(0));
    }
    return isStopped
        ? ReturnStatement.withheld(
            rules, Finding.of(QuoteFinding.NOT_ISSUED_TABLE, QuoteInputs.RETURNS.heading()))
        : ReturnStatement.of(rules, returns, rows, sums);
  }

  /** Rows that are fit and on papers: those that the client takes. */
  private List<QuoteLine> fit() {
    return fit(QuoteLine::isOrdered);
  }

  private List<QuoteLine> fit(Predicate<QuoteLine> on) {
    return gate.paper(l -> true).fit().stream()
        .map(Gate.Judged::item)
        .filter(QuoteLine::isSome)
        .filter(on)
        .toList();
  }

  private void judgeShelf(QuoteLine line) {
    Optional<Peak> peak = calendar.peak(line);
    double missing = missing(line, peak);
    if (missing > 0) {
      line.add(
          Finding.of(
              QuoteFinding.SHORT,
              missing,
              peak.orElseThrow().qty(),
              peak.orElseThrow().day(),
              available(line)));
    }
    boolean reported =
        line.findings().stream().anyMatch(f -> f.key() == QuoteFinding.STOCK_UNCLEAR);
    if (peak.isPresent() && calendar.isUnclear(line.item().item()) && !reported) {
      line.add(Finding.of(QuoteFinding.STOCK_UNCLEAR));
    }
  }

  private static double available(QuoteLine line) {
    Double owned = line.stock().orElseThrow().owned();
    Double out = line.stock().orElseThrow().outOfService();
    return Math.max(0, owned - (out == null ? 0 : out));
  }

  private static double missing(QuoteLine line, Optional<Peak> peak) {
    return peak.isEmpty() || line.stock().isEmpty() || line.stock().get().owned() == null
        ? 0
        : Math.max(0, peak.get().qty() - available(line));
  }

  /** The last day on which something hired comes back, or came back. */
  private Optional<LocalDate> lastBack() {
    List<LocalDate> days = new ArrayList<>();
    lines.values().stream()
        .filter(l -> l.isHired() && l.isOrdered() && l.back() != null)
        .forEach(l -> days.add(l.back()));
    inputs
        .returns()
        .filled()
        .filter(r -> returns.state(r.number()).days() != null)
        .map(r -> returns.state(r.number()).on())
        .forEach(days::add);
    return days.stream().max(Comparator.naturalOrder());
  }

  private List<Finding> judgeOrder() {
    List<Finding> findings = new ArrayList<>(rules.orderFindings());
    LocalDate until = rules.order().insuredUntil();
    Optional<LocalDate> last = lastBack();
    if (last.isPresent() && until != null && until.isBefore(last.get())) {
      findings.add(Finding.of(QuoteFinding.INSURANCE_ENDS, until, last.get()));
    } else if (last.isPresent() && until == null && !rules.isWaived()) {
      findings.add(Finding.of(QuoteFinding.NOT_INSURED));
    }
    judgeDiscount(findings);
    sent().flatMap(s -> s.judge(rules.order(), sentTotal())).ifPresent(findings::add);
    return findings.stream().sorted(Finding.WORST_FIRST).toList();
  }

  private BigDecimal sentTotal() {
    Double total = rules.order().sentTotal();
    return total == null ? null : rules.rounded(Money.decimal(total));
  }

  /** What the page says; nothing while it may not be issued. */
  private Optional<SentQuote> sent() {
    return sums == null
        ? Optional.empty()
        : Optional.of(SentQuote.of(rules.order(), letter, document, closing, sums.total()));
  }

  /**
   * What an export of the page writes into the order; empty while it may not be issued.
   *
   * @param ranges as {@link #of} takes them
   */
  public static Optional<SentQuote> sent(List<?> ranges) {
    return new QuotePlan(read(ranges)).sent();
  }

  /** What a discount on the whole order means for a part of it, and what it tells the client. */
  private void judgeDiscount(List<Finding> findings) {
    if (!rules.isDiscounted()) {
      return;
    }
    long left = lines.values().stream().filter(l -> l.isHired() && l.isDropped()).count();
    if (left > 0) {
      double share = PageText.percent(QuoteRules.share(rules.order().discount()));
      findings.add(Finding.of(QuoteFinding.PART_ORDERED, (double) left, share));
    }
    List<QuoteLine> net =
        lines.values().stream()
            .filter(l -> l.isHired() && l.isOrdered() && l.isSome() && l.isNetPriced())
            .toList();
    if (!net.isEmpty() && net.stream().allMatch(QuoteLine::isSubHired)) {
      List<Integer> rows = net.stream().map(l -> l.row().number()).toList();
      findings.add(Finding.of(QuoteFinding.DISCOUNT_TELLS, numbers(rows)));
    }
  }

  /** Why the client's page may not be issued; empty when it may. */
  private List<Finding> withheld() {
    List<Finding> why = new ArrayList<>();
    stopped(why, QuoteInputs.HOUSE, rules.houseFindings());
    stopped(why, QuoteInputs.CLIENT, rules.clientFindings());
    stopped(why, QuoteInputs.ORDER, rules.orderFindings());
    inputs.terms().filled().forEach(r -> stopped(why, QuoteInputs.TERMS, r.findings()));
    if (charged.isUnclear()) {
      why.add(Finding.of(QuoteFinding.NOT_ISSUED_TABLE, QuoteInputs.SCHEDULE.heading()));
    }
    List<Integer> rows =
        gate.all().stream()
            .filter(j -> !j.fit() && !rules.stops().containsAll(QuoteRules.stops(j.findings())))
            .map(Gate.Judged::row)
            .toList();
    if (!rows.isEmpty()) {
      why.add(Finding.of(QuoteFinding.NOT_ISSUED_ROWS, numbers(rows)));
    }
    if (gate.all().isEmpty()) {
      why.add(Finding.of(QuoteFinding.NOTHING_QUOTED));
    }
    return why.stream().distinct().sorted(Finding.WORST_FIRST).toList();
  }

  /** Why no paper goes with the kit: what stops the quote, and stops of Picking. */
  private List<Finding> papersWithheld() {
    List<Finding> why = new ArrayList<>(withheld);
    List<Integer> rows = picked.stopped();
    if (!rows.isEmpty()) {
      why.add(Finding.of(QuoteFinding.NOT_ISSUED_PICKED, numbers(rows)));
    }
    return why.stream().sorted(Finding.WORST_FIRST).toList();
  }

  /** Numbers of rows; of many the first ones. */
  private static String numbers(List<Integer> rows) {
    String first =
        rows.stream().limit(NAMED_ROWS).map(String::valueOf).collect(Collectors.joining(", "));
    return first + (rows.size() > NAMED_ROWS ? ", …" : "");
  }

  private static void stopped(List<Finding> why, InputTable<?> table, List<Finding> findings) {
    if (!QuoteRules.stops(findings).isEmpty()) {
      why.add(Finding.of(QuoteFinding.NOT_ISSUED_TABLE, table.heading()));
    }
  }

  private List<ResultRows<?>> tables() {
    List<QuoteResults.ReturnResult> returned = align(inputs.returns(), this::returnResult);
    List<QuoteResults.ItemResult> items =
        align(inputs.items(), r -> itemResult(gate.row(r.number())));
    List<IssueRow> issues = issues();
    return List.of(
        new ResultRows<>(
            QuoteResults.HOUSE,
            List.of(
                new QuoteResults.HouseResult(
                    Finding.verdict(rules.houseFindings()), sorted(rules.houseFindings())))),
        new ResultRows<>(
            QuoteResults.CLIENT,
            List.of(
                new QuoteResults.ClientResult(
                    Finding.verdict(rules.clientFindings()), sorted(rules.clientFindings())))),
        new ResultRows<>(
            QuoteResults.ORDER,
            List.of(
                new QuoteResults.OrderResult(
                    Finding.verdict(orderFindings), orderFindings, lastBack().orElse(null)))),
        new ResultRows<>(QuoteResults.ITEMS, items),
        new ResultRows<>(
            QuoteResults.STOCK,
            align(
                inputs.stock(),
                r -> new QuoteResults.StockResult(verdict("stock", r), findings("stock", r)))),
        new ResultRows<>(
            QuoteResults.BOOKED,
            align(
                inputs.booked(),
                r -> new QuoteResults.BookingResult(verdict("booked", r), findings("booked", r)))),
        new ResultRows<>(
            QuoteResults.SCHEDULE,
            align(
                inputs.schedule(),
                r ->
                    new QuoteResults.ScheduleResult(
                        verdict("schedule", r), findings("schedule", r)))),
        new ResultRows<>(
            QuoteResults.SHARES,
            align(
                inputs.shares(),
                r -> new QuoteResults.ShareResult(verdict("shares", r), findings("shares", r)))),
        new ResultRows<>(
            QuoteResults.PICKED,
            align(
                inputs.picked(),
                r ->
                    new QuoteResults.PickResult(
                        verdict("picked", r), findings("picked", r), itemOf(r.value().line())))),
        new ResultRows<>(QuoteResults.RETURNS, returned),
        new ResultRows<>(QuoteResults.LETTER, List.of(letter)),
        new ResultRows<>(
            QuoteResults.TERMS,
            align(
                inputs.terms(),
                r ->
                    new QuoteResults.TermResult(
                        verdict("terms", r),
                        findings("terms", r),
                        withheld.isEmpty() ? r.value().paragraph() : null))),
        new ResultRows<>(QuoteResults.DOCUMENT, document),
        new ResultRows<>(QuoteResults.CLOSING, closing),
        new ResultRows<>(QuoteResults.TAXES, taxes()),
        new ResultRows<>(
            QuoteResults.PAPERS,
            List.of(
                new QuoteResults.PapersResult(Finding.verdict(papersWithheld), papersWithheld))),
        new ResultRows<>(QuoteResults.DELIVERY, papers.delivery()),
        new ResultRows<>(QuoteResults.DUE, papers.due()),
        new ResultRows<>(QuoteResults.STATEMENT, statement.lines()),
        new ResultRows<>(QuoteResults.VALUES, papers.values()),
        new ResultRows<>(QuoteResults.CARNET, papers.carnet()),
        new ResultRows<>(QuoteResults.SUMMARY, List.of(summary(items, returned, issues))),
        new ResultRows<>(QuoteResults.ISSUES, issues));
  }

  private static <T extends Record, R> List<R> align(
      InputRows<T> rows, Function<InputRow<T>, R> result) {
    List<R> results = new ArrayList<>(rows.rows().size());
    rows.rows().forEach(r -> results.add(r.isBlank() ? null : result.apply(r)));
    return results;
  }

  private static List<Finding> sorted(List<Finding> findings) {
    return findings.stream().distinct().sorted(Finding.WORST_FIRST).toList();
  }

  /** What is wrong with a row of a table to fill, worst first. */
  private List<Finding> findings(String table, InputRow<?> row) {
    return switch (table) {
      case "house" -> sorted(rules.houseFindings());
      case "client" -> sorted(rules.clientFindings());
      case "order" -> orderFindings;
      case "items" -> gate.row(row.number()).findings();
      case "stock" -> list.gate().row(row.number()).findings();
      case "booked" -> sorted(calendar.bookingFindings(row.number()));
      case "schedule" -> sorted(charged.scheduleFindings(row.number()));
      case "shares" -> charged.share(row.number()).findings();
      case "picked" -> sorted(picked.findings(row.number()));
      case "returns" -> sorted(returns.state(row.number()).findings());
      default -> sorted(row.findings());
    };
  }

  private Verdict verdict(String table, InputRow<?> row) {
    return Finding.verdict(findings(table, row));
  }

  private QuoteResults.ItemResult itemResult(Gate.Judged<QuoteLine> judged) {
    QuoteLine line = judged.item();
    boolean weekly = line.weeks() != null;
    Optional<Peak> peak = calendar.peak(line);
    BigDecimal net = line.net();
    return new QuoteResults.ItemResult(
        judged.verdict(),
        judged.findings(),
        line.row().number(),
        line.out(),
        line.back(),
        line.basis(),
        line.ruleDays(),
        line.days(),
        weekly ? line.weeks().first() : null,
        weekly ? line.weeks().later() : null,
        line.unitPrice(),
        line.rate(),
        line.each(),
        line.amount(),
        net,
        peak.map(Peak::qty).orElse(null),
        peak.isEmpty() || line.stock().isEmpty() || line.stock().get().owned() == null
            ? null
            : (Double) missing(line, peak),
        line.isOrdered() ? line.subCost() : null,
        net == null || line.subCost() == null || !line.isOrdered()
            ? null
            : net.subtract(line.subCost()));
  }

  private QuoteResults.ReturnResult returnResult(InputRow<Return> row) {
    LateReturns.State state = returns.state(row.number());
    return new QuoteResults.ReturnResult(
        verdict("returns", row),
        findings("returns", row),
        itemOf(row.value().line()),
        state.days(),
        state.fee(),
        state.tax(),
        state.charged(),
        state.subCost());
  }

  /** The item of the row that a number names; null without such a row. */
  private String itemOf(Double number) {
    boolean isWhole = number != null && number == Math.rint(number);
    QuoteLine line = isWhole ? lines.get(number.intValue()) : null;
    return line == null ? null : line.item().item();
  }

  private List<QuoteResults.TaxLine> taxes() {
    List<QuoteResults.TaxLine> taxes = new ArrayList<>();
    if (sums != null) {
      sums.rates()
          .forEach(
              (rate, sum) ->
                  taxes.add(
                      new QuoteResults.TaxLine(
                          rate.share(),
                          rate.reason().isEmpty() ? null : rate.reason(),
                          sum.part(OrderSums.HIRE),
                          sum.part(OrderSums.DISCOUNT),
                          sum.part(OrderSums.MINIMUM),
                          sum.part(OrderSums.WAIVER),
                          sum.part(OrderSums.SOLD),
                          sum.base(),
                          sum.tax())));
    }
    return taxes;
  }

  private List<IssueRow> issues() {
    Issues issues = new Issues();
    issues.addRows(inputs.all(), this::grouped, Set.of("items"));
    withheld.stream()
        .filter(f -> f.key() == QuoteFinding.NOTHING_QUOTED)
        .forEach(f -> issues.add(QuoteResults.DOCUMENT.heading(), "1", List.of(f)));
    return issues.rows(QuoteResults.ISSUES.rows());
  }

  /** The findings of a row; numbers that fit no item are one issue, not one for each row. */
  private List<Finding> grouped(String table, InputRow<?> row) {
    return findings(table, row).stream()
        .map(
            f ->
                f.key() == QuoteFinding.RETURN_ITEM || f.key() == QuoteFinding.PICK_LINE
                    ? Finding.of(QuoteFinding.NUMBERS_OFF)
                    : f)
        .toList();
  }

  private static <R> BigDecimal sum(List<R> rows, Function<R, BigDecimal> amount) {
    return rows.stream()
        .filter(Objects::nonNull)
        .map(amount)
        .filter(Objects::nonNull)
        .reduce(BigDecimal.ZERO, BigDecimal::add);
  }

  private <V> V of(Function<OrderSums, V> figure) {
    return sums == null ? null : figure.apply(sums);
  }

  private QuoteResults.Summary summary(
      List<QuoteResults.ItemResult> items,
      List<QuoteResults.ReturnResult> returned,
      List<IssueRow> issues) {
    LocalDate out = rules.order().out();
    LocalDate back = rules.order().back();
    BigDecimal lateSubHire = sum(returned, QuoteResults.ReturnResult::subCost);
    boolean dated = out != null && back != null && QuoteRules.dates(out, back).isEmpty();
    return new QuoteResults.Summary(
        IssueRow.worst(issues),
        withheld.isEmpty(),
        gate.all().size(),
        gate.paper(l -> true).withheld().size(),
        dated ? (Integer) HireDays.calendar(out, back) : null,
        rules.currency() == null ? null : (Integer) rules.currency().getDefaultFractionDigits(),
        of(OrderSums::hire),
        of(OrderSums::discount),
        of(OrderSums::minimum),
        of(OrderSums::waiver),
        of(OrderSums::sold),
        of(OrderSums::net),
        of(OrderSums::tax),
        of(OrderSums::total),
        of(OrderSums::downPayment),
        of(OrderSums::balance),
        of(OrderSums::security),
        papers.toInsure(),
        papers.withoutValue(),
        papers.weight(),
        papers.withoutWeight(),
        (int)
            returned.stream()
                .filter(r -> r != null && r.daysLate() != null && r.daysLate() > 0)
                .count(),
        sum(returned, QuoteResults.ReturnResult::fee),
        sum(returned, QuoteResults.ReturnResult::feeTax),
        sum(returned, QuoteResults.ReturnResult::charged),
        sum(returned, QuoteResults.ReturnResult::fee)
            .add(sum(returned, QuoteResults.ReturnResult::feeTax))
            .add(sum(returned, QuoteResults.ReturnResult::charged)),
        statement.amount(StatementKind.GIVE_BACK),
        statement.amount(StatementKind.TO_PAY),
        statement.open(),
        sum(items, QuoteResults.ItemResult::subCost).add(lateSubHire),
        sum(items, QuoteResults.ItemResult::margin).add(lateSubFees()).subtract(lateSubHire));
  }

  /** Late fees of what is sub-hired, net. */
  private BigDecimal lateSubFees() {
    return inputs
        .returns()
        .filled()
        .map(r -> returns.state(r.number()))
        .filter(s -> s.subCost() != null && s.fee() != null)
        .map(LateReturns.State::fee)
        .reduce(BigDecimal.ZERO, BigDecimal::add);
  }

  /** The rows that a row of results is made of. */
  private int[] related(String table, int row, String source) {
    if (table.equals(source)) {
      return new int[] {row};
    }
    return switch (source) {
      case "house", "client", "order", "letter", "papers", "summary" -> new int[] {1};
      case "items" -> relatedItems(table, row);
      case "document" -> IntStream.rangeClosed(1, 1).toArray();
      case "values" -> IntStream.rangeClosed(1, papers.values().size()).toArray();
      case "delivery" -> IntStream.rangeClosed(1, papers.delivery().size()).toArray();
      case "taxes" -> IntStream.rangeClosed(1, taxes().size()).toArray();
      case "due" -> IntStream.rangeClosed(1, papers.due().size()).toArray();
      case "statement" -> IntStream.rangeClosed(1, statement.lines().size()).toArray();
      case "stock" -> numbers(inputs.stock());
      case "booked" -> numbers(inputs.booked());
      case "schedule" -> numbers(inputs.schedule());
      case "shares" -> numbers(inputs.shares());
      case "returns" -> numbers(inputs.returns());
      case "picked" -> numbers(inputs.picked());
      case "terms" -> numbers(inputs.terms());
      default -> new int[0];
    };
  }

  private int[] relatedItems(String table, int row) {
    Integer number =
        switch (table) {
          case "returns" -> {
            QuoteLine line = returns.state(row).line();
            yield line == null ? null : (Integer) line.row().number();
          }
          case "delivery" -> papers.delivery().get(row - 1).row();
          case "due" -> papers.due().get(row - 1).row();
          case "statement" -> statement.lines().get(row - 1).row();
          case "values" -> papers.values().get(row - 1).row();
          case "carnet" -> papers.carnet().get(row - 1).row();
          default -> null;
        };
    return number == null ? numbers(inputs.items()) : new int[] {number};
  }

  private static int[] numbers(InputRows<?> rows) {
    return rows.filled().mapToInt(InputRow::number).toArray();
  }

  /** The quote as the function of the sheet and the tests see it. */
  private static final class Model implements PlanModel {
    @Override
    public String name() {
      return "quote";
    }

    @Override
    public String title() {
      return "rental quote";
    }

    @Override
    public List<InputTable<?>> inputs() {
      return List.of(
          QuoteInputs.HOUSE,
          QuoteInputs.CLIENT,
          QuoteInputs.ORDER,
          QuoteInputs.ITEMS,
          QuoteInputs.STOCK,
          QuoteInputs.BOOKED,
          QuoteInputs.SCHEDULE,
          QuoteInputs.SHARES,
          QuoteInputs.PICKED,
          QuoteInputs.RETURNS,
          QuoteInputs.TERMS);
    }

    @Override
    public List<ResultTable<?>> results() {
      return List.of(
          QuoteResults.HOUSE,
          QuoteResults.CLIENT,
          QuoteResults.ORDER,
          QuoteResults.ITEMS,
          QuoteResults.STOCK,
          QuoteResults.BOOKED,
          QuoteResults.SCHEDULE,
          QuoteResults.SHARES,
          QuoteResults.PICKED,
          QuoteResults.RETURNS,
          QuoteResults.LETTER,
          QuoteResults.TERMS,
          QuoteResults.DOCUMENT,
          QuoteResults.CLOSING,
          QuoteResults.TAXES,
          QuoteResults.PAPERS,
          QuoteResults.DELIVERY,
          QuoteResults.DUE,
          QuoteResults.STATEMENT,
          QuoteResults.VALUES,
          QuoteResults.CARNET,
          QuoteResults.SUMMARY,
          QuoteResults.ISSUES);
    }

    @Override
    public List<FindingKey> findings() {
      return List.of(QuoteFinding.values());
    }

    @Override
    public List<String> phrases() {
      return PageText.patterns();
    }

    @Override
    public PlanResult calculate(List<?> ranges) {
      QuoteInputs inputs = read(ranges);
      List<InputRows<?>> all = inputs.all();
      if (all.stream().anyMatch(r -> r.fault().isPresent())) {
        return new PlanResult(all, results(), List::of, (table, row, source) -> new int[0]);
      }
      QuotePlan plan = new QuotePlan(inputs);
      return new PlanResult(all, results(), plan::tables, plan::related);
    }
  }
}
