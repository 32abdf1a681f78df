package org.setpower.templates.spec;

/** The look, declared once: a cell style for each part a cell can play. */
public enum CellStyle {
  TITLE(18, true, Ink.ACCENT),
  LEAD(10, false, Ink.SECONDARY),
  STAMP(9, false, Ink.SECONDARY),
  FINDING(9, false, Ink.INK),
  SECTION(12, true, Ink.ACCENT),
  HEADING(9, true, Ink.ACCENT, Ink.TINT, Ink.ACCENT),
  LABEL(10, false, Ink.INK, Ink.NONE, Ink.HAIRLINE),
  HELP(9, false, Ink.SECONDARY, Ink.NONE, Ink.HAIRLINE),
  TO_FILL(10, false, Ink.INK, Ink.FILL, Ink.FILL_LINE),
  RESULT(10, false, Ink.INK, Ink.NONE, Ink.HAIRLINE),
  /** Reasons: their first line, the worst, is seen where the row is too low for all. */
  REASON(9, false, Ink.INK, Ink.NONE, Ink.HAIRLINE),
  /** Keys of columns, which nobody reads. */
  KEYS(2, false, Ink.PAPER),
  /** The first line of a letter. */
  LETTERHEAD(14, true, Ink.INK),
  LETTER(10, false, Ink.INK),
  LETTER_LABEL(9, false, Ink.SECONDARY),
  /** Lines of a list that are more than a row: a heading, a sum, the sum. */
  GROUP(10, true, Ink.ACCENT, Ink.NONE, Ink.HAIRLINE),
  SUM(10, true, Ink.INK, Ink.NONE, Ink.HAIRLINE),
  TOTAL(11, true, Ink.ACCENT, Ink.TINT, Ink.ACCENT),
  WORD(10, true, Ink.INK, Ink.NONE, Ink.HAIRLINE),
  BLANK(10, false, Ink.INK),
  FIGURE(26, true, Ink.INK),
  FIGURE_LABEL(11, true, Ink.ACCENT),
  NOTE(10, false, Ink.INK),
  /** A heading and a sentence for the screen, which no paper has. */
  HINT_SECTION(12, true, Ink.ACCENT),
  HINT(10, false, Ink.INK),
  CAUTION(9, false, Ink.INK),
  MISSING(12, true, Ink.STOP),
  OK(10, true, Ink.OK, Ink.OK_TINT, Ink.NONE),
  CHECK(10, true, Ink.CHECK, Ink.CHECK_TINT, Ink.NONE),
  STOP(10, true, Ink.STOP, Ink.STOP_TINT, Ink.NONE);

  /** The typeface of all sheets. */
  public static final String FONT = "Liberation Sans";

  /** The colours. */
  public static final class Ink {
    public static final int NONE = -1;
    public static final int PAPER = 0xFFFFFF;
    public static final int INK = 0x1E2A2F;
    public static final int SECONDARY = 0x5A6B70;
    public static final int ACCENT = 0x1F5F6B;
    static final int TINT = 0xE6EFF1;
    public static final int HAIRLINE = 0xD5DCDE;
    static final int FILL = 0xFFF8E6;
    static final int FILL_LINE = 0xD9B44A;
    static final int OK = 0x2E6E48;
    static final int OK_TINT = 0xE7F3EC;
    static final int CHECK = 0x7A4F00;
    static final int CHECK_TINT = 0xFFF1D6;
    static final int STOP = 0x9B1C1C;
    static final int STOP_TINT = 0xFBE9E7;

    private Ink() {}
  }

  private final int points;
  private final boolean bold;
  private final int colour;
  private final int fill;
  private final int line;

  CellStyle(int points, boolean bold, int colour) {
    this(points, bold, colour, Ink.NONE, Ink.NONE);
  }

  CellStyle(int points, boolean bold, int colour, int fill, int line) {
    this.points = points;
    this.bold = bold;
    this.colour = colour;
    this.fill = fill;
    this.line = line;
  }

  public int points() {
    return points;
  }

  public boolean bold() {
    return bold;
  }

  public int colour() {
    return colour;
  }

  /** The background, or {@link Ink#NONE}. */
  public int fill() {
    return fill;
  }

  /** The hairline below, or {@link Ink#NONE}. */
  public int line() {
    return line;
  }

  /** Whether it colours a status word. */
  public boolean isStatus() {
    return this == OK || this == CHECK || this == STOP;
  }

  /** Its name in words; of a status, the word that it colours. */
  public String word() {
    return name().toLowerCase(java.util.Locale.ROOT).replace('_', ' ');
  }

  /** The name of the cell style in the document. */
  public String styleName() {
    return "Set Power " + word();
  }
}
