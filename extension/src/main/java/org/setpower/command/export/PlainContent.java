package org.setpower.command.export;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * The cells and styles of a stored document, without what calculates, links, checks or notes, and
 * without what nobody sees: sheets that were not chosen, and the content of hidden rows and
 * columns.
 */
final class PlainContent {
  private static final Set<String> DROPPED =
      Set.of(
          "table:content-validations",
          "table:named-expressions",
          "table:database-ranges",
          "table:data-pilot-tables",
          "table:consolidation",
          "table:dde-links",
          "table:tracked-changes",
          "table:label-ranges",
          "table:scenario",
          "table:table-source",
          "table:cell-range-source",
          "table:detective",
          "office:annotation",
          "office:scripts",
          "office:event-listeners",
          "office:forms",
          "draw:control");

  private static final Set<String> UNWRAPPED = Set.of("text:a", "draw:a");

  private static final Set<String> DROPPED_ATTRIBUTES =
      Set.of(
          "table:formula",
          "table:number-matrix-columns-spanned",
          "table:number-matrix-rows-spanned",
          "table:content-validation-name",
          "calcext:value-type",
          "table:protected",
          "table:structure-protected");

  private static final Set<String> CELLS = Set.of("table:table-cell", "table:covered-table-cell");
  private static final String QUOTE = "\"";
  private static final String SHEET = "<table:table table:name=" + QUOTE;
  private static final String SHEET_END = "</table:table>";
  private static final String REPEATED = "table:number-columns-repeated";
  private static final String FORMAT = "calcext:conditional-format";
  private static final Pattern COLUMN = Pattern.compile("\\.\\$?([A-Z]{1,3})(?=\\$?\\d|[:\\]])");
  private static final Pattern FIXED_ROW = Pattern.compile("\\.\\$?[A-Z]{1,3}\\$(\\d+)");
  private static final Pattern RANGE =
      Pattern.compile(
          "('(?:[^']|'')+'|[^'. ]+)\\.([A-Z]+)(\\d+):(?:'(?:[^']|'')+'|[^'. ]+)\\.([A-Z]+)(\\d+)");
  private static final Pattern TEXT = Pattern.compile("\"[^\"]*\"");
  private static final Pattern CELL_REFERENCE = Pattern.compile("\\[[^]]*]");
  private static final Pattern OTHER_SHEET = Pattern.compile("\\[[^].]|:[^].]");
  private static final Pattern NAME = Pattern.compile("\\p{L}\\w*[._][\\w.]*");

  /** Conditions without a formula of their own: duplicate, above-average, top-elements(3) … */
  private static final Pattern KIND = Pattern.compile("(?!formula-is)[a-z-]+(?:\\(\\d*\\))?");

  private static final Pattern LONE_WORD = Pattern.compile("(?<![\\w.])\\p{L}[\\w.]*(?![\\w.(-])");
  private static final Set<String> WORDS = Set.of("TRUE", "FALSE", "AND", "OR");

  /** The rows and columns of a sheet that are hidden. */
  private record Hidden(BitSet rows, BitSet columns) {
    Hidden() {
      this(new BitSet(), new BitSet());
    }
  }

  /** A chart, where in the text its ranges stand, and which they are. */
  private record Chart(String place, int from, int to, String ranges) {}

  private final Set<String> wanted;
  private final StringBuilder out = new StringBuilder();
  private final Map<String, Hidden> sheets = new HashMap<>();
  private final List<Chart> charts = new ArrayList<>();
  private final Set<String> places = new HashSet<>();
  private final Set<String> ownData = new HashSet<>();
  private Hidden hidden = new Hidden();
  private boolean isRowHidden;
  private int row;
  private int column;
  private int splitFrom;
  private int splitMany;
  private int splitAt;
  private int formulas;
  private int formatAt;
  private int conditions;
  private int skipping;

  /**
   * The content of a document.
   *
   * @param wanted the names of the sheets that stay
   */
  PlainContent(Set<String> wanted) {
    this.wanted = wanted;
  }

  /** How many cells that stay had a formula. */
  int formulas() {
    return formulas;
  }

  /** The places in the package of the drawings and charts that stay. */
  Set<String> places() {
    return places;
  }

  /** The places of charts whose cells are not all in the copy. */
  Set<String> ownData() {
    return ownData;
  }

  byte[] of(byte[] document) {
    String text = withoutOtherSheets(new String(document, StandardCharsets.UTF_8));
    XmlTokens in = new XmlTokens(text);
    out.append("<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n");
    for (XmlTokens.Kind kind = in.next(); kind != XmlTokens.Kind.NONE; kind = in.next()) {
      if (kind == XmlTokens.Kind.START) {
        start(in, in.name());
      } else if (kind == XmlTokens.Kind.END) {
        end(in.name());
      } else if (skipping == 0) {
        out.append(in.text());
      }
    }
    for (int i = charts.size() - 1; i >= 0; i--) {
      Chart chart = charts.get(i);
      if (readsHidden(chart.ranges)) {
        ownData.add(chart.place);
        out.delete(chart.from, chart.to);
      }
    }
    return out.toString().getBytes(StandardCharsets.UTF_8);
  }

  /** Large hidden sheets are cut out unread: reading them would take most of the time. */
  private String withoutOtherSheets(String text) {
    StringBuilder kept = new StringBuilder();
    int done = 0;
    for (int from = text.indexOf(SHEET); from >= 0; ) {
      int end = text.indexOf(SHEET_END, from);
      int nameEnd = text.indexOf(QUOTE, from + SHEET.length());
      if (end < 0 || nameEnd < 0) {
        break;
      }
      end += SHEET_END.length();
      if (!wanted.contains(XmlTokens.unescape(text.substring(from + SHEET.length(), nameEnd)))) {
        kept.append(text, done, from);
        done = end;
      }
      from = text.indexOf(SHEET, end);
    }
    return done == 0 ? text : kept.append(text, done, text.length()).toString();
  }

  private boolean readsHidden(String ranges) {
    for (Matcher range = RANGE.matcher(ranges); range.find(); ) {
      String name = range.group(1);
      Hidden in =
          sheets.get(
              name.startsWith("'")
                  ? name.substring(1, name.length() - 1).replace("''", "'")
                  : name);
      if (in == null
          || isAny(in.columns, number(range.group(2)), number(range.group(4)))
          || isAny(
              in.rows,
              Integer.parseInt(range.group(3)) - 1,
              Integer.parseInt(range.group(5)) - 1)) {
        return true;
      }
    }
    return false;
  }

  private static boolean isAny(BitSet bits, int from, int to) {
    int next = bits.nextSetBit(from);
    return next >= 0 && next <= to;
  }

  private void start(XmlTokens in, String name) {
    if (skipping > 0 || isDropped(in, name)) {
      skipping++;
      return;
    }
    String place = place(in, name);
    places.add(place);
    if (UNWRAPPED.contains(name)) {
      return;
    }
    switch (name) {
      case "table:table" -> sheet(in);
      case "table:table-column" -> {
        int many = repeated(in, REPEATED);
        hidden.columns.set(column, column + many, in.has("table:visibility"));
        column += many;
      }
      case "table:table-row" -> {
        int many = repeated(in, "table:number-rows-repeated");
        isRowHidden = in.has("table:visibility");
        hidden.rows.set(row, row + many, isRowHidden);
        row += many;
        column = 0;
      }
      case "table:table-cell", "table:covered-table-cell" -> {
        if (isHidden(in, name)) {
          skipping++;
          return;
        }
      }
      case FORMAT -> {
        formatAt = out.length();
        conditions = 0;
      }
      default -> conditions += name.startsWith("calcext:") ? 1 : 0;
    }
    open(in, name, place);
  }

  private void sheet(XmlTokens in) {
    String name = in.value("table:name");
    if (in.has("table:protection-key")) {
      throw FormulaToValueConverter.locked(name);
    }
    hidden = new Hidden();
    sheets.put(name, hidden);
    row = 0;
    column = 0;
  }

  /** Whether nobody sees a cell: then blank ones stand in its place. */
  private boolean isHidden(XmlTokens in, String name) {
    int many = repeated(in, REPEATED);
    int from = column;
    column += many;
    if (isRowHidden || hidden.columns.nextClearBit(from) >= column) {
      blank(name, many);
      return true;
    }
    if (isAny(hidden.columns, from, column - 1)) {
      splitFrom = from;
      splitMany = many;
      splitAt = out.length();
    }
    if (in.has("table:formula")) {
      int array =
          repeated(in, "table:number-matrix-columns-spanned")
              * repeated(in, "table:number-matrix-rows-spanned");
      formulas += Math.max(array, many - hidden.columns.get(from, column).cardinality());
    }
    return false;
  }

  private void blank(String name, int many) {
    out.append('<').append(name);
    attribute(REPEATED, String.valueOf(many));
    out.append("/>");
  }

  /** A cell that is repeated over columns of which some are hidden, once for each run of them. */
  private void split(String name) {
    String cell = out.substring(splitAt);
    out.setLength(splitAt);
    int end = splitFrom + splitMany;
    for (int from = splitFrom; from < end; ) {
      boolean isHidden = hidden.columns.get(from);
      int next = isHidden ? hidden.columns.nextClearBit(from) : hidden.columns.nextSetBit(from);
      int to = next < 0 ? end : Math.min(next, end);
      if (isHidden) {
        blank(name, to - from);
      } else {
        out.append('<').append(name);
        attribute(REPEATED, String.valueOf(to - from));
        out.append(cell, name.length() + 1, cell.length());
      }
      from = to;
    }
    splitMany = 0;
  }

  /** Where in the package a drawing stands; empty if this is none. */
  private static String place(XmlTokens in, String name) {
    if (!name.startsWith("draw:") && !name.startsWith("style:")) {
      return "";
    }
    String place = in.value("xlink:href");
    return place == null ? "" : place.replaceFirst("^\\./", "");
  }

  private void open(XmlTokens in, String name, String place) {
    out.append('<').append(name);
    boolean isCell = CELLS.contains(name);
    boolean isError = isCell && "error".equals(in.value("calcext:value-type"));
    boolean isBlank =
        isCell && !isError && in.has("table:formula") && "".equals(in.value("office:string-value"));
    for (int i = 0; i < in.attributes(); i++) {
      String attribute = in.attribute(i);
      int from = out.length();
      if (!(isBlank && attribute.startsWith("office:")
          || isError && attribute.equals("office:string-value")
          || isDropped(attribute))) {
        // a cell is locked, and its value may be read
        attribute(attribute, attribute.equals("style:cell-protect") ? "protected" : in.written(i));
      }
      if (attribute.equals("draw:notify-on-update-of-ranges")) {
        charts.add(new Chart(place, from, out.length(), in.value(attribute)));
      }
    }
    out.append('>');
  }

  private boolean isDropped(String attribute) {
    return DROPPED_ATTRIBUTES.contains(attribute)
        || splitMany > 0 && attribute.equals(REPEATED)
        || attribute.startsWith("table:protection-key");
  }

  /** A value in quotation marks may have an apostrophe of its own, and the other way round. */
  private void attribute(String name, String written) {
    String mark = written.contains(QUOTE) ? "'" : QUOTE;
    out.append(' ').append(name).append('=').append(mark).append(written).append(mark);
  }

  private void end(String name) {
    if (skipping > 0) {
      skipping--;
      return;
    }
    if (UNWRAPPED.contains(name)) {
      return;
    }
    out.append("</").append(name).append('>');
    if (splitMany > 0 && CELLS.contains(name)) {
      split(name);
    }
    if (name.equals(FORMAT) && conditions == 0) {
      out.setLength(formatAt);
    }
  }

  private boolean isDropped(XmlTokens in, String name) {
    return DROPPED.contains(name)
        || name.equals("table:table") && !wanted.contains(in.value("table:name"))
        || name.equals("calcext:condition") && readsMore(in.value("calcext:value"))
        || name.equals("style:map") && isOldFormat(in.value("style:condition"));
  }

  /** Conditional formats are stored a second time for old offices. */
  private static boolean isOldFormat(String condition) {
    return condition != null
        && (condition.startsWith("is-true-formula") || condition.startsWith("cell-content"));
  }

  /** Whether a condition reads what the copy has not: other sheets, names, hidden cells. */
  private boolean readsMore(String condition) {
    String plain = TEXT.matcher(condition == null ? "" : condition).replaceAll("0");
    Matcher columns = COLUMN.matcher(plain);
    while (columns.find()) {
      if (hidden.columns.get(number(columns.group(1)))) {
        return true;
      }
    }
    Matcher rows = FIXED_ROW.matcher(plain);
    while (rows.find()) {
      if (hidden.rows.get(Integer.parseInt(rows.group(1)) - 1)) {
        return true;
      }
    }
    Matcher references = CELL_REFERENCE.matcher(plain);
    while (references.find()) {
      if (OTHER_SHEET.matcher(references.group()).find()) {
        return true;
      }
    }
    String rest = references.replaceAll("0");
    if (KIND.matcher(rest).matches()) {
      return false;
    }
    return NAME.matcher(rest).find()
        || LONE_WORD
            .matcher(rest)
            .results()
            .anyMatch(word -> !WORDS.contains(word.group().toUpperCase(Locale.ROOT)));
  }

  private static int number(String letters) {
    int number = 0;
    for (char letter : letters.toCharArray()) {
      number = number * 26 + letter - 'A' + 1;
    }
    return number - 1;
  }

  private static int repeated(XmlTokens in, String attribute) {
    String many = in.value(attribute);
    return many == null ? 1 : Integer.parseInt(many);
  }
}
