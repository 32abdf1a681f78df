package org.setpower.templates.spec;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;

/** Open issues, stops first, gathered from the tables of a file. */
public final class IssueList {
  /** A finding is coded as table · STEP + running number + STEP / 2. */
  private static final int STEP = 10_000;

  /** Smaller tables are forms, whose rows are all there to be filled. */
  private static final int FILLED_IN_TIME = 20;

  private static final String FULL =
      "Table {} is full ({} rows). Combine similar rows or continue in a copy of" + " this file.";

  private final int room;
  private final List<TableSpec> all;

  private IssueList(int room, List<TableSpec> all) {
    this.room = room;
    this.all = all;
  }

  /**
   * The findings on these tabs.
   *
   * @param room how many the list on the result page shows
   */
  public static IssueList on(int room, List<SheetSpec> tabs) {
    return new IssueList(
        room,
        tabs.stream()
            .flatMap(t -> t.blocks().stream())
            .filter(TableSpec.class::isInstance)
            .map(TableSpec.class::cast)
            .filter(TableSpec::isLookedAt)
            .toList());
  }

  /** The list of them, for the result page. */
  public TableSpec list() {
    ColumnSpec number = ColumnSpec.working("No.");
    number.formula(number.rowNumber());
    List<ColumnSpec> left = left(number);
    ColumnSpec code = ColumnSpec.working("Code", code(left));
    ColumnSpec place =
        ColumnSpec.result(
            "Where",
            choose(code, t -> at -> Formula.Patterns.quoted(at.layout().name(at.layout().tab(t)))));
    ColumnSpec row = ColumnSpec.result("What", choose(code, t -> found(code, t, t.key())));
    ColumnSpec word = ColumnSpec.result("Status", choose(code, t -> found(code, t, t.status())));
    ColumnSpec reason =
        ColumnSpec.result("Reason / action", choose(code, t -> found(code, t, t.reason())));
    return TableSpec.of("Open issues", room)
        .columns(word.width(15), place.width(30), row.width(30), reason.width(105), code)
        .columns(left.toArray(new ColumnSpec[0]))
        .listing(word)
        .linesPerRow(2);
  }

  /** The figure that counts the stops. */
  public KeyFigure stops() {
    return KeyFigure.of("Stop (rows)", CellFormat.COUNT, count("stop"), "Resolve before use.");
  }

  /** The figure that counts the checks, and says when the list has no room for all. */
  public KeyFigure checks() {
    return KeyFigure.of(
        "Check (rows)",
        CellFormat.COUNT,
        count("check"),
        Formula.calc(
            "IF({}+{}>"
                + room
                + ";\"the first "
                + room
                + " of all are listed below\";\"Needs a decision.\")",
            count("stop"),
            count("check")));
  }

  private Formula count(String word) {
    Object[] parts = all.stream().map(t -> t.status().all()).toArray();
    return Formula.calc("0" + ("+COUNTIF({};\"" + word + "\")").repeat(parts.length), parts);
  }

  /** Each column: the running number less all findings of its table and those before it. */
  private List<ColumnSpec> left(ColumnSpec number) {
    List<ColumnSpec> left = new ArrayList<>(List.of(number));
    for (String count : List.of("{}-MAX(0;{})", "{}+MIN(0;{})")) {
      for (TableSpec table : all) {
        ColumnSpec before = left.get(left.size() - 1);
        left.add(ColumnSpec.working("Left", Formula.calc(count, before, table.rank().all())));
      }
    }
    return left;
  }

  private Formula code(List<ColumnSpec> left) {
    StringBuilder pattern = new StringBuilder();
    List<Object> parts = new ArrayList<>();
    for (int i = 0; i < left.size() - 1; i++) {
      boolean stop = i < all.size();
      pattern.append("IF({}<=0;").append((i % all.size() + 1) * STEP + STEP / 2);
      pattern.append(stop ? "+{};" : "-{};");
      parts.add(left.get(i + 1));
      parts.add(left.get(i));
    }
    pattern.append("\"\"").append(")".repeat(left.size() - 1));
    return Formula.calc(pattern.toString(), parts.toArray());
  }

  private Formula choose(ColumnSpec code, Function<TableSpec, Formula> of) {
    List<Object> parts = new ArrayList<>();
    parts.add(code);
    all.forEach(t -> parts.add(of.apply(t)));
    return Formula.calc(
        "CHOOSE(INT({}/" + STEP + ")" + ";{}".repeat(all.size()) + ")", parts.toArray());
  }

  private static Formula found(Formula code, TableSpec table, ColumnSpec wanted) {
    return found(table, wanted, Formula.calc("MOD({};" + STEP + ")-" + STEP / 2, code));
  }

  /** A cell of the row with this rank, or the number of the row where the cell is blank. */
  private static Formula found(TableSpec table, ColumnSpec wanted, Formula ranked) {
    return at -> {
      String row = Formula.calc("MATCH({};{};0)", ranked, rank(table)).text(at);
      String cell = "INDEX(" + wanted.all().text(at) + ";" + row + ")";
      String number =
          Formula.of("row ").text(at) + "&ROW(" + rank(table).text(at) + ")+" + row + "-1";
      String words = wanted.format().text(cell);
      return "IF("
          + cell
          + "=\"\";"
          + number
          + ";"
          + (wanted.format().isText()
              ? words
              : "IF(ISTEXT(" + cell + ");" + cell + ";" + words + ")")
          + ")";
    };
  }

  /** The tables of a tab whose rows say what is the matter with them. */
  public static List<TableSpec> explained(SheetSpec tab) {
    return tab.tables().stream()
        .filter(TableSpec.class::isInstance)
        .map(TableSpec.class::cast)
        .filter(t -> t.reason() != null)
        .toList();
  }

  /**
   * The first row of these tables that is to stop for, or else the first to check, in full: in the
   * row itself the words may have less room than they need.
   */
  public static Formula first(List<TableSpec> tables) {
    return at -> {
      StringBuilder text = new StringBuilder();
      for (String word : List.of("stop", "check")) {
        for (TableSpec table : tables) {
          Formula ranked = Formula.of(word.equals("stop") ? 1 : -1);
          String status = table.status().all().text(at);
          text.append("IF(COUNTIF(" + status + ";\"" + word + "\")>0;\"" + word + ": \"&");
          text.append(found(table, table.key(), ranked).text(at) + "&\" – \"&");
          text.append(found(table, table.reason(), ranked).text(at) + ";");
        }
      }
      int open = 2 * tables.size();
      for (TableSpec table : tables) {
        if (!table.inputs().isEmpty() && table.room() >= FILLED_IN_TIME) {
          String words = at.words().say(FULL, at.words().of(table.title()), table.room());
          String last = "INDEX(" + table.status().all().text(at) + ";" + table.room() + ")";
          text.append("IF(" + last + "<>\"\";" + Formula.Patterns.quoted("check: " + words) + ";");
          open++;
        }
      }
      return text + "\"\"" + ")".repeat(open);
    };
  }

  private static Formula rank(TableSpec table) {
    return table.rank().all();
  }
}
