package org.setpower.templates.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;
import org.setpower.plan.common.InputTable;
import org.setpower.plan.common.PlanModel;
import org.setpower.plan.common.ResultColumn;
import org.setpower.plan.common.ResultTable;

/** A file whose tabs are filled for a plan and show what it says. */
public final class PlanWorkbook {
  private final String fileName;
  private final String title;
  private final PlanModel model;
  private final List<PlanTab> tabs = new ArrayList<>();
  private String purpose = "";
  private String unitCell = "";
  private String unitWord = "";
  private UnaryOperator<String> unitsAsked = word -> word;
  private final List<String> stamps = new ArrayList<>();
  private String decimals = "";
  private boolean closedUp;
  private String basis = "";

  private PlanWorkbook(String fileName, String title, PlanModel model) {
    this.fileName = fileName;
    this.title = title;
    this.model = model;
  }

  /**
   * A template.
   *
   * @param fileName the file name without its ending
   * @param title the name shown where new files are chosen
   */
  public static PlanWorkbook of(String fileName, String title, PlanModel model) {
    return new PlanWorkbook(fileName, title, model);
  }

  public PlanWorkbook with(PlanTab... added) {
    tabs.addAll(List.of(added));
    return this;
  }

  /** What it is for, in a sentence or two: shown where new files are chosen. */
  public PlanWorkbook purpose(String sentences) {
    purpose = sentences;
    return this;
  }

  public String purpose() {
    return purpose;
  }

  /**
   * The cell that decides units written as {@code m|ft}.
   *
   * @param path the cell, as {@code table.key}
   * @param word with this word the second of the two is used, else the first
   */
  public PlanWorkbook unitsBy(String path, String word) {
    unitCell = path;
    unitWord = word;
    return this;
  }

  /**
   * What is picked in place of each word of that cell while figures are typed and none is picked:
   * it begins with the word, and the plan has it confirmed.
   */
  public PlanWorkbook unitsAsked(UnaryOperator<String> asked) {
    unitsAsked = asked;
    return this;
  }

  /** What is picked in place of a word of the units while figures are typed and none is picked. */
  public String unitsAsked(String word) {
    return unitsAsked.apply(word);
  }

  /** The cell that decides units written as {@code m|ft}; empty without one. */
  public String unitCell() {
    return unitCell;
  }

  /** The word of that cell with which the second unit is used. */
  public String unitWord() {
    return unitWord;
  }

  /** Its papers are printed without blank rows in tables that stand above something else. */
  public PlanWorkbook closedUp() {
    closedUp = true;
    return this;
  }

  public boolean isClosedUp() {
    return closedUp;
  }

  /** The result that says how many decimals amounts have, as {@code table.key}. */
  public PlanWorkbook decimals(String path) {
    decimals = path;
    return this;
  }

  /** Cells to fill that papers name, as {@code table.key}: number, revision. */
  public PlanWorkbook stamped(String... paths) {
    stamps.addAll(List.of(paths));
    return this;
  }

  /** The result, {@code table.key}, that says on every tab in what its amounts are. */
  public PlanWorkbook basis(String path) {
    basis = path;
    return this;
  }

  /** The result that says in what amounts are; empty where none does. */
  public String basis() {
    return basis;
  }

  /** The result that says how many decimals amounts have; empty where none does. */
  public String decimals() {
    return decimals;
  }

  /** Cells to fill that papers name. */
  public List<String> stamps() {
    return List.copyOf(stamps);
  }

  /** A table to fill, by its key. */
  public PlanTable table(String key) {
    return PlanTable.of(input(key));
  }

  /** Cells of a table with one row. */
  public PlanFields fields(String title, String table, String... keys) {
    return PlanFields.of(title, input(table), keys);
  }

  /** All rows of a table of results. */
  public PlanList list(String table, String... keys) {
    ResultTable<?> results = results(table);
    return PlanList.of(results, "", results.rows(), keys);
  }

  /** The first rows of a table of results, under a heading. */
  public PlanList list(String title, int rows, String table, String... keys) {
    return PlanList.of(results(table), title, rows, keys);
  }

  /** Head or foot of a letter: labels and values right begin in these columns. */
  public PlanLetter letter(String table, int labels, int values) {
    return PlanLetter.of(results(table), labels, values);
  }

  /** Large figures beside each other. */
  public PlanFigures figures(int across, String table, String... keys) {
    return PlanFigures.of("", across, results(table), keys);
  }

  /** Figures one below another. */
  public PlanFigures lines(String title, String table, String... keys) {
    return PlanFigures.of(title, 0, results(table), keys);
  }

  public String fileName() {
    return fileName;
  }

  public String title() {
    return title;
  }

  public PlanModel model() {
    return model;
  }

  public List<PlanTab> tabs() {
    return List.copyOf(tabs);
  }

  /** All parts of a kind. */
  public <P extends PlanPart> Stream<P> parts(Class<P> kind) {
    return tabs.stream().flatMap(t -> t.parts().stream()).filter(kind::isInstance).map(kind::cast);
  }

  /** The version of its layout: other keys, units or limits give another one. */
  public String version() {
    return InputTable.layoutHash(model.inputs());
  }

  public InputTable<?> input(String key) {
    return model.inputs().stream()
        .filter(t -> t.key().equals(key))
        .findFirst()
        .orElseThrow(() -> new IllegalArgumentException(model.name() + " has no table " + key));
  }

  public ResultTable<?> results(String key) {
    return model.results().stream()
        .filter(t -> t.key().equals(key))
        .findFirst()
        .orElseThrow(() -> new IllegalArgumentException(model.name() + " has no results " + key));
  }

  /** A result column by its path. */
  public ResultColumn result(String path) {
    return results(path.substring(0, path.indexOf('.'))).columns().stream()
        .filter(c -> c.path().equals(path))
        .findFirst()
        .orElseThrow(() -> new IllegalArgumentException(model.name() + " has no result " + path));
  }

  /** Paths of all results that some cell shows, each once: what the plan is asked for. */
  public List<String> answer() {
    return Stream.concat(
            tabs.stream().flatMap(t -> t.parts().stream()).flatMap(PlanWorkbook::results),
            Stream.concat(Stream.of(decimals, basis), tabs.stream().map(PlanTab::basis))
                .filter(d -> !d.isEmpty()))
        .map(p -> result(p).path())
        .distinct()
        .toList();
  }

  private static Stream<String> results(PlanPart part) {
    if (part instanceof PlanTable table) {
      return table.results().stream();
    }
    if (part instanceof PlanList list) {
      return Stream.concat(
          list.columns().stream(), Stream.of(list.kind()).filter(k -> !k.isEmpty()));
    }
    if (part instanceof PlanLetter letter) {
      return letter.columns().stream();
    }
    return part instanceof PlanFigures figures ? figures.columns().stream() : Stream.empty();
  }
}
