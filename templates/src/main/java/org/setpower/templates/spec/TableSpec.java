package org.setpower.templates.spec;

import static org.setpower.templates.spec.Formula.Patterns.quoted;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * A table: cells to fill left, results right, status and reason last. Status and reason come by
 * themselves from what is missing, of the wrong kind, refused, and from the {@link
 * ValidationRule}s.
 */
public final class TableSpec extends TableBase {
  /**
   * A blank that also keeps Calc from reckoning a column as a whole, in several threads: doing so
   * it sometimes finds a circle where there is none, and the cell stays blank until the next time.
   */
  private static final String BLANK_ONE_BY_ONE = "TEXT(\"\";\"\")";

  /** How a sentence begins that stands beside a single cell. */
  public static final String STOP = "stop: ";

  private static final String IN_ERROR = "an input in this row has an error";

  private final List<ColumnSpec> columns = new ArrayList<>();
  private final List<ValidationRule> checks = new ArrayList<>();
  private final List<FieldSpec> alsoAsked = new ArrayList<>();
  private ColumnSpec finding;
  private ColumnSpec rank;
  private ColumnSpec status;
  private ColumnSpec reason;
  private ColumnSpec key;
  private int lines = 1;
  private boolean apart;
  private Class<?> startsBeside;
  private String startsFrom;

  private TableSpec(String title, int room) {
    super(title, room);
  }

  /** An empty table with room for so many rows. */
  public static TableSpec of(String title, int room) {
    return new TableSpec(title, room);
  }

  /** Its columns from left to right. */
  public TableSpec columns(ColumnSpec... added) {
    for (ColumnSpec column : added) {
      column.ownedBy(this);
      columns.add(column);
    }
    return this;
  }

  /** What is looked at in every row, the worst first; adds the columns status and reason. */
  public TableSpec checks(ValidationRule... added) {
    checks.addAll(List.of(added));
    finding = ColumnSpec.working("Finding", new Finding());
    status = ColumnSpec.result("Status", own("LEFT({};FIND(\":\";{}&\":\")-1)", finding, finding));
    reason =
        ColumnSpec.result(
            "Reason / action", own("MID({};FIND(\":\";{}&\":\")+1;400)", finding, finding));
    rank = ColumnSpec.working("Rank", new Rank());
    return columns(status.mayBeBlank().width(12), reason.mayBeBlank().width(52), finding, rank);
  }

  /** How wide the reason is, where columns of other tables of the tab stand below it. */
  public TableSpec reasonWide(int millimetres) {
    reason.width(millimetres);
    return this;
  }

  /** Single cells that may be blank; where one is filled wrongly each row says so. */
  public TableSpec alsoChecks(FieldSpec... cells) {
    alsoAsked.addAll(List.of(cells));
    return this;
  }

  /** Says which column holds status words, in a table that has no checks of its own. */
  public TableSpec listing(ColumnSpec words) {
    status = words;
    columns.forEach(CellSpec::mayBeBlank);
    return this;
  }

  /**
   * Says that its words are no faults of the plan: what it shows is supposed, or is an outcome.
   * They stay on their own tab.
   */
  public TableSpec excludeFromIssues() {
    apart = true;
    return this;
  }

  /** Whether its rows are looked for faults of the plan. */
  boolean isLookedAt() {
    return rank != null && !apart;
  }

  /** How many lines a row shows on a tab with a grid. */
  public TableSpec linesPerRow(int shown) {
    lines = shown;
    return this;
  }

  public int linesPerRow() {
    return lines;
  }

  /**
   * The rows that stand in it when the template is new: a CSV file whose heading line names the
   * columns.
   */
  public TableSpec initialRows(Class<?> beside, String resource) {
    startsBeside = beside;
    startsFrom = resource;
    return this;
  }

  public Class<?> startsBeside() {
    return startsBeside;
  }

  public String startsFrom() {
    return startsFrom;
  }

  /** The column that names a row in lists of findings; the first if not said. */
  public TableSpec rowLabel(ColumnSpec column) {
    key = column;
    return this;
  }

  @Override
  public List<ColumnSpec> columns() {
    return List.copyOf(columns);
  }

  public List<ColumnSpec> inputs() {
    return columns.stream().filter(ColumnSpec::isInput).toList();
  }

  public ColumnSpec key() {
    return key == null ? columns.get(0) : key;
  }

  /** The status of each row: ok, look, stop or blank. */
  public ColumnSpec status() {
    return status;
  }

  /** What is the matter with each row and what to do. */
  public ColumnSpec reason() {
    return reason;
  }

  /** The running number of a row's finding among its like: stops 1, 2, …, looks −1, −2, …. */
  ColumnSpec rank() {
    return rank;
  }

  /** The formula of a result with its guards: blank in, blank out; nothing naked. */
  public static String guarded(ColumnSpec column, CellContext place) {
    Formula formula = column.formula();
    String body = formula.text(place);
    if (formula instanceof Own || column.isUnguarded()) {
      return body;
    }
    String blank = anyBlank(formula, place);
    return "IFERROR("
        + (blank.isEmpty() ? body : "IF(" + blank + ";\"\";" + body + ")")
        + ";"
        + BLANK_ONE_BY_ONE
        + ")";
  }

  /** A condition that is true when a cell the formula needs is blank; empty when it needs none. */
  static String anyBlank(Formula formula, CellContext place) {
    List<String> blanks = formula.needs().map(i -> i.text(place) + "=\"\"").toList();
    return blanks.size() < 2 ? String.join("", blanks) : "OR(" + String.join(";", blanks) + ")";
  }

  /** A formula of the table's own, which guards itself. */
  private interface Own extends Formula {}

  private static Own own(String pattern, Object... parts) {
    return Formula.calc(pattern, parts)::text;
  }

  /** Numbers the findings: stops from 1 in the order of rows, checks likewise with a minus. */
  private final class Rank implements Own {
    @Override
    public String text(CellContext place) {
      String above = rank.above().text(place);
      return Formula.calc(
              "IF({}=\"stop\";MAX(0;" + above + ")+1;IF({}=\"check\";MIN(0;" + above + ")-1;\"\"))",
              status,
              status)
          .text(place);
    }
  }

  /** The first thing that is the matter with the row, as "stop:…", "check:…" or "ok:". */
  private final class Finding implements Own {
    @Override
    public String text(CellContext place) {
      Deque<Case> cases = new ArrayDeque<>();
      needed().forEach(i -> cases.add(missing(i, place)));
      List<CellSpec<?>> asked =
          Stream.<Stream<? extends CellSpec<?>>>of(
                  inputs().stream(),
                  needed().stream().filter(FieldSpec.class::isInstance),
                  alsoAsked.stream())
              .flatMap(s -> s)
              .<CellSpec<?>>map(i -> i)
              .distinct()
              .toList();
      asked.stream()
          .filter(i -> !i.format().isText())
          .forEach(i -> cases.add(on(i, place, wrongKind(i, place))));
      asked.stream()
          .filter(i -> !i.options().isEmpty() && i.onlyListed())
          .forEach(i -> cases.add(on(i, place, unknown(i, place))));
      checks.stream().filter(ValidationRule::first).forEach(c -> cases.add(applies(c, place)));
      asked.stream()
          .filter(i -> i.wordsFrom() != null && i.onlyListed())
          .forEach(i -> cases.add(notListed(i, place)));
      columns.stream()
          .filter(c -> !c.isInput() && !c.saysNothingWhenBlank())
          .forEach(c -> cases.add(unanswered(c, place)));
      checks.stream().filter(c -> !c.first()).forEach(c -> cases.add(applies(c, place)));
      String first = "\"ok:\"";
      while (!cases.isEmpty()) {
        Case last = cases.removeLast();
        first = "IF(" + last.when() + ";" + last.then() + ";" + first + ")";
      }
      return "IFERROR(IF("
          + isEmpty(place)
          + ";\"\";"
          + first
          + ");"
          + quoted("stop:" + place.words().of(IN_ERROR))
          + ")";
    }
  }

  /** A row is empty when nothing is typed in it; where nothing can be, when it has no name. */
  private String isEmpty(CellContext place) {
    return inputs().isEmpty()
        ? key().text(place) + "=\"\""
        : "COUNTA(" + place.layout().rowRange(inputs(), place) + ")=0";
  }

  /** A condition and what is said then. */
  private record Case(String when, String then) {}

  private Set<CellSpec<?>> needed() {
    Set<CellSpec<?>> needed =
        new LinkedHashSet<>(inputs().stream().filter(CellSpec::isRequired).toList());
    Stream<Formula> results =
        columns.stream()
            .filter(c -> !c.isInput() && !(c.formula() instanceof Own))
            .map(CellSpec::formula);
    Stream.concat(results, checks.stream().map(ValidationRule::when))
        .flatMap(Formula::needs)
        .filter(i -> i instanceof FieldSpec && i.isInput())
        .forEach(needed::add);
    return needed;
  }

  private static Case missing(CellSpec<?> item, CellContext place) {
    String name = place.words().of(item.heading());
    String words =
        item instanceof FieldSpec f
            ? place.words().say("Fill in {} on {}.", name, tabOf(f, place))
            : place.words().say("Fill in {}.", name);
    return new Case(item.text(place) + "=\"\"", quoted("check:" + words));
  }

  /** A word, or a number, that is not on a closed list. */
  private static Case unknown(CellSpec<?> item, CellContext place) {
    String cell = item.text(place);
    String listed =
        item.options().stream()
            .map(w -> item.format().isText() ? quoted(w) : w)
            .collect(Collectors.joining(";", "{", "}"));
    return new Case(
        "IF(" + cell + "=\"\";FALSE();ISNA(MATCH(" + cell + ";" + listed + ";0)))",
        quoted("stop:" + item.error(place.words())));
  }

  /** A case of a cell that is not in the row says where that cell stands. */
  private static Case on(CellSpec<?> item, CellContext place, Case wrong) {
    if (!(item instanceof FieldSpec f)) {
      return wrong;
    }
    String where = " " + place.words().say("See {}.", tabOf(f, place)) + "\"";
    return new Case(wrong.when(), wrong.then().substring(0, wrong.then().length() - 1) + where);
  }

  private static Case wrongKind(CellSpec<?> column, CellContext place) {
    String cell = column.text(place);
    List<String> wrong = new ArrayList<>(List.of("ISTEXT(" + cell + ")"));
    if (!Double.isInfinite(column.least())) {
      wrong.add(cell + "<" + Formula.of(column.least()).text(place));
    }
    if (!Double.isInfinite(column.most())) {
      wrong.add(cell + ">" + Formula.of(column.most()).text(place));
    }
    if (column.format() == CellFormat.COUNT) {
      wrong.add("IF(ISNUMBER(" + cell + ");" + cell + "<>INT(" + cell + ");FALSE())");
    }
    return new Case(
        "IF(" + cell + "=\"\";FALSE();OR(" + String.join(";", wrong) + "))",
        quoted("stop:" + column.error(place.words())));
  }

  /** What stands beside a single cell to fill: its help, or what is wrong with what is typed. */
  public static String beside(FieldSpec field, CellContext place) {
    List<Case> cases = new ArrayList<>();
    if (!field.format().isText()) {
      cases.add(wrongKind(field, place));
    }
    if (!field.options().isEmpty() && field.onlyListed()) {
      cases.add(unknown(field, place));
    }
    if (field.wordsFrom() != null && field.onlyListed()) {
      cases.add(notListed(field, place));
    }
    String help = place.words().of(field.help());
    String text = quoted(help);
    for (Case wrong : cases) {
      text =
          "IF(" + wrong.when() + ";" + wrong.then().replaceFirst("stop:", STOP) + ";" + text + ")";
    }
    return cases.isEmpty() ? help : "=" + text;
  }

  /** An entry that the column it is picked from does not have. */
  private static Case notListed(CellSpec<?> item, CellContext place) {
    String cell = item.text(place);
    ColumnSpec from = item.wordsFrom();
    String match = "MATCH(" + cell + ";" + from.all().text(place) + ";0)";
    return new Case(
        "IF(" + cell + "=\"\";FALSE();ISNA(" + match + "))",
        quoted(
            "stop:"
                + place
                    .words()
                    .say(
                        "{} is not listed on {}. Choose from the list or add it there.",
                        place.words().of(item.heading()),
                        place.layout().name(place.layout().tab(from.owner())))));
  }

  private static Case unanswered(ColumnSpec column, CellContext place) {
    String words =
        quoted(
            column.failure() == null
                ? place
                    .words()
                    .say(
                        "{} cannot be worked out from this row.",
                        place.words().of(column.heading()))
                : place.words().of(column.failure()));
    if (column.failure() == null) {
      List<Formula.Call> calls = column.formula().calls().toList();
      for (Formula.Call call : calls) { // the innermost is asked first
        String why =
            "IFERROR(" + call.whyText(place) + ";" + quoted(place.words().of(IN_ERROR)) + ")";
        words = "IF(" + why + "<>\"fine\";" + why + ";" + words + ")";
      }
    }
    String blank = column.text(place) + "=\"\"";
    String need = anyBlank(column.formula(), place);
    return new Case(
        need.isEmpty() ? blank : "IF(" + need + ";FALSE();" + blank + ")",
        quoted(column.waits() ? "check:" : "stop:") + "&" + words);
  }

  private static Case applies(ValidationRule check, CellContext place) {
    String blank = anyBlank(check.when(), place);
    String when = check.when().text(place);
    return new Case(
        blank.isEmpty() ? when : "IF(" + blank + ";FALSE();" + when + ")",
        "\"" + check.word() + ":\"&" + check.message().text(place));
  }

  private static String tabOf(FieldSpec field, CellContext place) {
    return place.layout().name(place.layout().tab(field));
  }
}
