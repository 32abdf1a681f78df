package org.setpower.templates.plan;

import java.util.ArrayList;
import java.util.List;
import org.setpower.templates.spec.CellStyle;

/** A tab: its title, one line that says what it is for and what to fill first, its parts. */
public final class PlanTab {
  /** Columns of an upright page, and its width in millimetres. */
  private static final int GRID = 12;

  private static final int PAGE_WIDTH = 192;

  /** Lines of a list that a first page has room for below its head. */
  private static final int LANDSCAPE_ROWS = 26;

  private static final int UPRIGHT_ROWS = 42;

  private final String name;
  private final String lead;
  private final List<PlanPart> parts = new ArrayList<>();
  private PlanList beside;
  private boolean page;
  private boolean flowing;
  private boolean paper;
  private boolean upright;
  private boolean sent;
  private boolean hidden;
  private boolean shownToPrint;
  private boolean aligned;
  private String basis = "";
  private int printed;
  private int grid = GRID;
  private int gridWidth;
  private int ink = CellStyle.Ink.NONE;

  private PlanTab(String name, String lead) {
    this.name = name;
    this.lead = lead;
  }

  /** A tab whose columns are those of its table. */
  public static PlanTab of(String name, String lead) {
    return new PlanTab(name, lead);
  }

  /** A tab that is an upright page, printed on one sheet of paper. */
  public static PlanTab page(String name, String lead) {
    PlanTab tab = new PlanTab(name, lead);
    tab.page = true;
    return tab.paper();
  }

  /** It takes as many sheets of paper as it needs, each as wide as its page. */
  public PlanTab flowing() {
    flowing = true;
    return this;
  }

  /** The result, {@code table.key}, that says in what its amounts are, instead of the file's. */
  public PlanTab basis(String path) {
    basis = path;
    return this;
  }

  /** Its page has another number of columns: lists of many figures need narrow ones. */
  public PlanTab grid(int columns) {
    if (PAGE_WIDTH % columns != 0) {
      throw new IllegalArgumentException(name + " is not as wide as " + columns + " columns");
    }
    grid = columns;
    return this;
  }

  /** Its page is wider than the paper, and printed smaller: lists of many columns. */
  public PlanTab grid(int columns, int millimetres) {
    grid = columns;
    gridWidth = millimetres;
    return this;
  }

  /** It is printed; a tab that only holds what is typed is not. */
  public PlanTab paper() {
    paper = true;
    return this;
  }

  /** It stays on the screen: nobody prints it by chance with what leaves the house. */
  public PlanTab kept() {
    paper = false;
    return this;
  }

  /** Its page is printed down to a row of its last list until print ranges are set. */
  public PlanTab prints(int rows) {
    printed = rows;
    return paper();
  }

  /** It is printed on upright pages, as many as it needs. */
  public PlanTab upright() {
    upright = true;
    return paper();
  }

  /** It leaves the house as a letter: its pages have neither the head of a tab nor its name. */
  public PlanTab sent() {
    sent = true;
    return upright();
  }

  /** Hidden until it is printed for the first time with something on it. */
  public PlanTab shownToPrint() {
    shownToPrint = true;
    return hidden();
  }

  /** Hidden until somebody shows it. */
  public PlanTab hidden() {
    hidden = true;
    return this;
  }

  /** Results of its tables, one below another, begin with the same column. */
  public PlanTab aligned() {
    aligned = true;
    return this;
  }

  /** The tab to fill first: its tab is coloured. */
  public PlanTab first() {
    ink = CellStyle.Ink.ACCENT;
    return this;
  }

  /** The page with the result: its tab is coloured. */
  public PlanTab result() {
    ink = CellStyle.Ink.INK;
    return this;
  }

  public PlanTab with(PlanPart... added) {
    parts.addAll(List.of(added));
    return this;
  }

  /**
   * A list right of the table with which the tab begins, row beside row. The table has at least as
   * many rows, so that its end row cuts nothing of the list.
   */
  public PlanTab beside(PlanList list) {
    if (!(parts.get(0) instanceof PlanTable table) || table.inputs().rows() < list.rows()) {
      throw new IllegalArgumentException(name + " does not begin with a table of that length");
    }
    beside = list;
    return this;
  }

  public String name() {
    return name;
  }

  public String lead() {
    return lead;
  }

  public List<PlanPart> parts() {
    List<PlanPart> all = new ArrayList<>(parts);
    if (beside != null) {
      all.add(beside);
    }
    return all;
  }

  /** Whether a part stands right of the first. */
  public boolean isBeside(PlanPart part) {
    return part == beside;
  }

  public boolean isPage() {
    return page;
  }

  /** Whether its page takes more than one sheet of paper. */
  public boolean isFlowing() {
    return flowing;
  }

  /** The result that says in what its amounts are; empty for that of the file. */
  public String basis() {
    return basis;
  }

  /** Columns of its page. */
  public int grid() {
    return grid;
  }

  /** The width of each column of its page in millimetres. */
  public int gridWidth() {
    return gridWidth == 0 ? PAGE_WIDTH / grid : gridWidth;
  }

  /** So many of twelve parts of the width of its page, in columns. */
  public int twelfths(int parts) {
    return parts * grid / GRID;
  }

  public boolean isPaper() {
    return paper;
  }

  /** Whether its paper is upright. */
  public boolean isUpright() {
    return page || upright;
  }

  /** Whether its paper comes with the others once there is something on it. */
  public boolean isShownToPrint() {
    return shownToPrint;
  }

  public boolean isSent() {
    return sent;
  }

  public boolean isAligned() {
    return aligned;
  }

  public boolean isHidden() {
    return hidden;
  }

  /**
   * How many rows of its last list are printed until print ranges are set to filled rows, 0 for
   * all: a list with few rows has no blank pages, one with more says what to do first. A letter has
   * no line to say it on.
   */
  public int printed() {
    if (printed > 0 || page || sent || !paper) {
      return printed;
    }
    if (!(parts().get(parts().size() - 1) instanceof PlanList list) || list.isWide()) {
      return 0;
    }
    int onPage = (upright ? UPRIGHT_ROWS : LANDSCAPE_ROWS) / Math.max(1, list.tall());
    return onPage < list.rows() ? onPage : 0;
  }

  public int ink() {
    return ink;
  }
}
