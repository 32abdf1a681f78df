package org.setpower.templates.layout;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.setpower.plan.common.InputColumn;
import org.setpower.plan.common.InputTable;
import org.setpower.plan.common.ResultColumn;
import org.setpower.templates.layout.PlanLayout.Column;
import org.setpower.templates.layout.PlanLayout.Place;
import org.setpower.templates.plan.InputCells;
import org.setpower.templates.plan.PlanChart;
import org.setpower.templates.plan.PlanFigures;
import org.setpower.templates.plan.PlanLetter;
import org.setpower.templates.plan.PlanList;
import org.setpower.templates.plan.PlanNotes;
import org.setpower.templates.plan.PlanPart;
import org.setpower.templates.plan.PlanTab;
import org.setpower.templates.plan.PlanTable;
import org.setpower.templates.spec.CellFormat;
import org.setpower.templates.spec.FieldSpec;
import org.setpower.text.MessageCatalog;

/** The formulas of a plan's workbook, without the equals sign. None decides anything. */
public final class PlanFormulas {
  /** What stands below a list that has more rows than it shows. */
  public static final String MORE =
      "More than these: the list of open issues in the menu Set Power has them all.";

  /** The same below another list than that of the open issues. */
  public static final String MORE_ROWS =
      "There are more rows than this list has room for: divide the plan between two files.";

  /** What to do where more rows are filled than are printed. */
  public static final String TO_FIT = "Set print ranges before you print";

  /** Languages as formats name them. */
  private static final Map<String, String> MONTHS =
      Map.of("en", "809", "en-US", "409", "de", "407", "fr", "40C", "es", "C0A");

  private final PlanLayout layout;
  private final PlanNames names;

  PlanFormulas(PlanLayout layout) {
    this.layout = layout;
    names = layout.names();
  }

  /** The job, in what amounts are, how many rows a list has, the date of a paper. */
  public String stamp(PlanTab tab) {
    List<String> parts = new ArrayList<>();
    parts.add(PlanNames.JOB);
    String of = tab.basis().isEmpty() ? layout.workbook().basis() : tab.basis();
    if (!of.isEmpty()) {
      parts.add(shown(layout.workbook().result(of)));
    }
    tab.parts().stream()
        .filter(p -> p instanceof PlanList && !tab.isPage() && !isCharted(tab, p))
        .min(java.util.Comparator.comparing(p -> !p.title().equals(tab.name()))) // its own, else
        .ifPresent(p -> parts.add("\"" + layout.words().of("Rows") + " \"&" + rows((PlanList) p)));
    if (tab.isPaper() && !tab.isSent()) {
      parts.add("\"" + layout.words().of("printed") + " \"&" + PlanNames.TODAY);
    }
    return "TEXTJOIN(\"  ·  \";1;" + String.join(";", parts) + ")" + toFit(tab);
  }

  /** All rows of what a chart shows are always filled. */
  private static boolean isCharted(PlanTab tab, PlanPart list) {
    return tab.parts().stream().anyMatch(p -> p instanceof PlanChart c && c.list() == list);
  }

  /**
   * What to do before rows are printed that do not stand in the print range. A formula cannot see
   * that range: who sets it writes down its last row.
   */
  private String toFit(PlanTab tab) {
    PlanList list = layout.fitted(tab);
    if (list == null) {
      return "";
    }
    Place top = layout.place(list);
    List<Column> columns = layout.columns(list);
    String cells =
        CellNames.fixed(top.column(), top.row() + 1)
            + ":"
            + CellNames.fixed(columns.get(columns.size() - 1).at(), top.row() + list.rows());
    return "&IF(SUMPRODUCT(MAX((LEN("
        + cells
        + ")>0)*ROW("
        + cells
        + ")))>"
        + PlanNames.printed(names.top(list))
        + ";"
        + PlanNames.TO_FIT
        + ";\"\")";
  }

  /**
   * The date of a paper: the month in letters, as figures mean another day elsewhere, and in those
   * of the document's language, which TEXT does not know by itself.
   */
  public String today() {
    String tag = layout.words().tag();
    String day = tag.equals("de") ? "d\\." : "d"; // an ordinal number
    return "TEXT(TODAY();\"[$-" + MONTHS.get(tag) + "]" + day + " mmm yyyy\")";
  }

  private String rows(PlanList list) {
    Place top = layout.place(list);
    String first = CellNames.fixed(top.column(), top.row() + 1);
    return "SUMPRODUCT(1*(LEN("
        + first
        + ":"
        + CellNames.fixed(top.column(), top.row() + list.rows())
        + ")>0))";
  }

  /** Whether a list has more rows than it shows. */
  public String more(PlanList list) {
    String table = list.results().key();
    return "IF(INDEX(Results_"
        + table
        + ";"
        + list.rows()
        + "+"
        + PlanNames.ONE
        + ";1)&\"\"=\"\";\"\";\""
        + layout.words().of(table.equals("issues") ? MORE : MORE_ROWS)
        + "\")";
  }

  /** The cells that no plan reads, beside each other: the job, its revision. */
  public String job() {
    List<String> parts = new ArrayList<>();
    for (PlanNotes notes : layout.workbook().parts(PlanNotes.class).toList()) {
      for (FieldSpec cell : notes.cells()) {
        Place place = layout.place(notes, cell);
        String at = layout.absolute(place.tab(), place.column(), place.row());
        parts.add(
            cell.format() == CellFormat.COUNT
                ? labelled(layout.words().of(cell.heading()), at)
                : at);
      }
    }
    for (String path : layout.workbook().stamps()) {
      String cell = PlanNames.cell(path);
      String label = layout.words().of(layout.input(path).heading());
      parts.add(labelled(label, cell));
    }
    return parts.isEmpty() ? "\"\"" : "TEXTJOIN(\"  ·  \";1;" + String.join(";", parts) + ")";
  }

  /** The cell of a page that shows a result: shorter than the result itself, if there is none. */
  private String shown(ResultColumn result) {
    for (PlanFigures figures : layout.workbook().parts(PlanFigures.class).toList()) {
      int index = figures.columns().indexOf(result.path());
      if (index >= 0 && figures.row() == 1) {
        Place place = layout.figure(figures, index);
        return layout.absolute(place.tab(), place.column(), place.row());
      }
    }
    return layout.names().single(result);
  }

  /** Nothing where the cell is blank. */
  private static String labelled(String label, String cell) {
    return "IF(" + cell + "=\"\";\"\";\"" + label + " \"&" + cell + ")";
  }

  /** Whether a tab is a copy, or the plan cannot be trusted, or there is no extension. */
  public String notice(PlanTab tab) {
    String top = layout.tops().get(tab);
    String missing = "IFERROR(INDEX(Block;" + PlanNames.ONE + ";2)&\"\";" + PlanNames.MISSING + ")";
    if (top == null) { // nothing of the plan stands on it, so a copy shows nothing wrong
      return missing;
    }
    String home = PlanNames.home(top);
    return "IF(SHEET(" + top + ")=" + home + ";\"\";" + PlanNames.COPIED + ")&" + missing;
  }

  /**
   * A unit system as it may be picked: while lengths or others are typed, only that in which they
   * are, since a change would give them another meaning. Where it was cleared meanwhile, only with
   * a statement about these figures, which the plan has confirmed.
   */
  public String offered(String word) {
    String now = PlanNames.cell(layout.workbook().unitCell());
    String quoted = "\"" + word + "\"";
    return "IF($Plan.$C$3=0;"
        + quoted
        + ";IF("
        + now
        + "=\"\";\""
        + layout.workbook().unitsAsked(word)
        + "\";IF("
        + isUnit(now, word)
        + ";"
        + quoted
        + ";"
        + now
        + ")))";
  }

  /** Whether units are those of a word, said with or without a statement about typed figures. */
  private static String isUnit(String cell, String word) {
    return "LEFT(" + cell + ";" + word.length() + ")=\"" + word + "\"";
  }

  /** How many figures are typed in units that Project decides. */
  public String typed() {
    List<String> ranges = new ArrayList<>();
    for (InputTable<?> table : layout.workbook().model().inputs()) {
      String first = null;
      for (InputColumn column : table.columns()) {
        boolean counts = InputCells.isSwitched(column.unit());
        String cells =
            counts ? layout.range(column.path()).replaceAll("\\$([A-Z]+)\\$", "$1") : null;
        if (counts && first != null) { // columns beside each other are one range
          String last = ranges.remove(ranges.size() - 1);
          cells = last.substring(0, last.indexOf(':')) + cells.substring(cells.indexOf(':'));
        }
        if (counts) {
          ranges.add(cells);
        }
        first = cells;
      }
    }
    return "COUNT(" + String.join(";", ranges) + ")";
  }

  /** A heading whose unit a cell decides. */
  public String heading(Column column, PlanTable.Unit unit) {
    String cell = PlanNames.cell(unit.path());
    String heading = column.heading().replace("\"", "\"\"");
    return "\""
        + heading
        + " (\"&IF("
        + cell
        + "=\"\";\""
        + unit.blank()
        + "\";"
        + cell
        + ")&\")\"";
  }

  /** A heading whose unit, one of two such as {@code m|ft}, a cell of the workbook decides. */
  public String heading(String heading, String units) {
    MessageCatalog words = layout.words();
    String[] either = units.split(InputCells.EITHER);
    return "\""
        + words.of(heading).replace("\"", "\"\"")
        + " (\"&IF("
        + isUnit(PlanNames.cell(layout.workbook().unitCell()), layout.workbook().unitWord())
        + ";\""
        + words.of(either[1])
        + "\";\""
        + words.of(either[0])
        + "\")&\")\"";
  }

  /** A result of a letter after its heading; blank where it is. */
  public String labelled(String path) {
    String value = names.single(layout.workbook().result(path));
    return "IF(" + value + "&\"\"=\"\";\"\";\"" + before(path) + "\"&" + value + ")";
  }

  /** A heading before its result, with the colon as the language sets it. */
  private String before(String path) {
    return layout.words().of("{0}: {1}").replace("{0}", heading(path)).replace("{1}", "");
  }

  /** A heading with a result below it; the heading alone where the result is blank. */
  public String marked(Column column, String path) {
    String value = names.single(layout.workbook().result(path));
    String heading = column.heading().replace("\"", "\"\"");
    return "\""
        + heading
        + "\"&IF("
        + value
        + "&\"\"=\"\";\"\";CHAR(10)&\""
        + before(path)
        + "\"&"
        + value
        + ")";
  }

  /** The heading of a result of a letter; blank where the result is. */
  public String label(String path) {
    String value = names.single(layout.workbook().result(path));
    return "IF(" + value + "&\"\"=\"\";\"\";\"" + heading(path) + "\")";
  }

  private String heading(String path) {
    return layout.words().of(layout.workbook().result(path).heading()).replace("\"", "\"\"");
  }

  /** What a column shows in the rows below a cell with a name. */
  public String cell(Column column, String top) {
    return column.leaf() == null
        ? names.shown(column.result(), top)
        : column.leaf().formula(names::leaf);
  }

  /** What a column of a list shows, in an array of its rows. */
  public String array(Column column, String top) {
    return names.listed(column.result(), top);
  }

  /** Every formula, by what it is for. */
  public Map<String, String> all() {
    Map<String, String> all = new TreeMap<>();
    all.put("block", names.call());
    all.put("job", job());
    all.put("today", today());
    all.put("typed", typed());
    layout.workbook().tabs().forEach(t -> all.put("notice " + t.name(), notice(t)));
    layout.workbook().tabs().forEach(t -> all.put("stamp " + t.name(), stamp(t)));
    names.uprights().stream()
        .flatMap(t -> t.columns().stream())
        .forEach(c -> all.put("handed over " + c, names.handedOver(c)));
    for (PlanTable table : layout.workbook().parts(PlanTable.class).toList()) {
      String top = PlanNames.top(table.inputs().key());
      for (Column column : layout.columns(table)) {
        if (column.input() == null) {
          all.put(top + " " + column.heading(), cell(column, top));
        } else if (table.unit(column.input()) != null) {
          all.put("unit " + column.heading(), heading(column, table.unit(column.input())));
        }
      }
    }
    for (PlanList list : layout.workbook().parts(PlanList.class).toList()) {
      String top = names.top(list);
      if (list.isPartial()) {
        all.put(top + " more", more(list));
      }
      layout.columns(list).forEach(c -> all.put(top + " " + c.heading(), cell(c, top)));
      layout.columns(list).stream()
          .filter(c -> list.marks().containsKey(c.result().path()))
          .forEach(c -> all.put(top + " marked", marked(c, list.marks().get(c.result().path()))));
      layout.columns(list).forEach(c -> all.put(top + " array " + c.heading(), array(c, top)));
    }
    layout
        .workbook()
        .parts(PlanLetter.class)
        .flatMap(l -> l.columns().stream())
        .forEach(p -> all.put("labelled " + p, labelled(p)));
    for (PlanFigures figures : layout.workbook().parts(PlanFigures.class).toList()) {
      for (String path : figures.columns()) {
        String formula = names.single(layout.workbook().result(path), figures.row());
        all.put(path + " " + figures.row(), formula);
      }
    }
    return all;
  }
}
