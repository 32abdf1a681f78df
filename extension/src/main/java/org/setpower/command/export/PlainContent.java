package org.setpower.command.export;

import java.io.ByteArrayInputStream;
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
import javax.xml.stream.XMLInputFactory;
import javax.xml.stream.XMLStreamConstants;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamReader;

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

  byte[] of(byte[] document) throws XMLStreamException {
    byte[] xml = withoutOtherSheets(document);
    XMLInputFactory factory = XMLInputFactory.newDefaultFactory();
    factory.setProperty(XMLInputFactory.SUPPORT_DTD, false);
    factory.setProperty(XMLInputFactory.IS_SUPPORTING_EXTERNAL_ENTITIES, false);
    XMLStreamReader in = factory.createXMLStreamReader(new ByteArrayInputStream(xml));
    out.append("<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n");
    while (in.hasNext()) {
      switch (in.next()) {
        case XMLStreamConstants.START_ELEMENT -> start(in, name(in));
        case XMLStreamConstants.END_ELEMENT -> end(name(in));
        case XMLStreamConstants.CHARACTERS, XMLStreamConstants.SPACE -> {
          if (skipping == 0) {
            escape(in.getTextCharacters(), in.getTextStart(), in.getTextLength());
          }
        }
        default -> {
          // comments and instructions mean nothing to the office
        }
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
  private byte[] withoutOtherSheets(byte[] xml) {
    // one byte is one character: what is sought is ASCII, and names are decoded on their own
    String text = new String(xml, StandardCharsets.ISO_8859_1);
    StringBuilder kept = null;
    int done = 0;
    for (int from = text.indexOf(SHEET); from >= 0; ) {
      int end = text.indexOf(SHEET_END, from);
      int nameEnd = text.indexOf(QUOTE, from + SHEET.length());
      if (end < 0 || nameEnd < 0) {
        break;
      }
      end += SHEET_END.length();
      if (isOther(text.substring(from + SHEET.length(), nameEnd))) {
        kept = kept == null ? new StringBuilder(text.length()) : kept;
        kept.append(text, done, from);
        done = end;
      }
      from = text.indexOf(SHEET, end);
    }
    return kept == null
        ? xml
        : kept.append(text, done, text.length()).toString().getBytes(StandardCharsets.ISO_8859_1);
  }

  /** Names with marks that XML writes otherwise are left to the reader of XML. */
  private boolean isOther(String name) {
    return name.indexOf('&') < 0
        && !wanted.contains(
            new String(name.getBytes(StandardCharsets.ISO_8859_1), StandardCharsets.UTF_8));
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

  private static String name(XMLStreamReader in) {
    String prefix = in.getPrefix();
    return prefix == null || prefix.isEmpty()
        ? in.getLocalName()
        : prefix + ":" + in.getLocalName();
  }

  private void start(XMLStreamReader in, String name) {
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
        int many = repeated(in, "number-columns-repeated");
        hidden.columns.set(column, column + many, value(in, "visibility") != null);
        column += many;
      }
      case "table:table-row" -> {
        int many = repeated(in, "number-rows-repeated");
        isRowHidden = value(in, "visibility") != null;
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

  private void sheet(XMLStreamReader in) {
    String name = value(in, "name");
    if (value(in, "protection-key") != null) {
      throw FormulaToValueConverter.locked(name);
    }
    hidden = new Hidden();
    sheets.put(name, hidden);
    row = 0;
    column = 0;
  }

  /** Whether nobody sees a cell: then blank ones stand in its place. */
  private boolean isHidden(XMLStreamReader in, String name) {
    int many = repeated(in, "number-columns-repeated");
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
    if (value(in, "formula") != null) {
      int array =
          repeated(in, "number-matrix-columns-spanned")
              * repeated(in, "number-matrix-rows-spanned");
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
  private static String place(XMLStreamReader in, String name) {
    if (!name.startsWith("draw:") && !name.startsWith("style:")) {
      return "";
    }
    String place = value(in, "href");
    return place == null ? "" : place.replaceFirst("^\\./", "");
  }

  private void open(XMLStreamReader in, String name, String place) {
    out.append('<').append(name);
    for (int i = 0; i < in.getNamespaceCount(); i++) {
      String prefix = in.getNamespacePrefix(i);
      attribute(prefix == null ? "xmlns" : "xmlns:" + prefix, in.getNamespaceURI(i));
    }
    boolean isError = isError(in);
    boolean isBlank =
        !isError
            && CELLS.contains(name)
            && value(in, "formula") != null
            && "".equals(value(in, "string-value"));
    for (int i = 0; i < in.getAttributeCount(); i++) {
      String attribute = in.getAttributeLocalName(i);
      boolean isValue = "office".equals(in.getAttributePrefix(i));
      int from = out.length();
      if (!(isValue && (isBlank || isError && attribute.equals("string-value")))) {
        attribute(in, i);
      }
      if (attribute.equals("notify-on-update-of-ranges")) {
        charts.add(new Chart(place, from, out.length(), in.getAttributeValue(i)));
      }
    }
    out.append('>');
  }

  private static boolean isError(XMLStreamReader in) {
    for (int i = 0; i < in.getAttributeCount(); i++) {
      if (in.getAttributeLocalName(i).equals("value-type")
          && in.getAttributeValue(i).equals("error")) {
        return true;
      }
    }
    return false;
  }

  private void attribute(XMLStreamReader in, int i) {
    String prefix = in.getAttributePrefix(i);
    String name =
        prefix == null || prefix.isEmpty()
            ? in.getAttributeLocalName(i)
            : prefix + ":" + in.getAttributeLocalName(i);
    String value = in.getAttributeValue(i);
    if (DROPPED_ATTRIBUTES.contains(name)
        || splitMany > 0 && name.equals(REPEATED)
        || name.startsWith("table:protection-key")
        || name.equals("calcext:value-type")) {
      return;
    }
    // a cell is locked, and its value may be read
    attribute(name, name.equals("style:cell-protect") ? "protected" : value);
  }

  private void attribute(String name, String value) {
    out.append(' ').append(name).append("='");
    escape(value);
    out.append('\'');
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

  private boolean isDropped(XMLStreamReader in, String name) {
    return DROPPED.contains(name)
        || name.equals("table:table") && !wanted.contains(value(in, "name"))
        || name.equals("calcext:condition") && readsMore(value(in, "value"))
        || name.equals("style:map") && isOldFormat(value(in, "condition"));
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

  private static int repeated(XMLStreamReader in, String attribute) {
    String many = value(in, attribute);
    return many == null ? 1 : Integer.parseInt(many);
  }

  private static String value(XMLStreamReader in, String local) {
    for (int i = 0; i < in.getAttributeCount(); i++) {
      if (in.getAttributeLocalName(i).equals(local)) {
        return in.getAttributeValue(i);
      }
    }
    return null;
  }

  private void escape(String text) {
    for (int i = 0; i < text.length(); i++) {
      escape(text.charAt(i));
    }
  }

  private void escape(char[] text, int from, int length) {
    for (int i = from; i < from + length; i++) {
      escape(text[i]);
    }
  }

  private void escape(char c) {
    switch (c) {
      case '&' -> out.append("&amp;");
      case '<' -> out.append("&lt;");
      case '>' -> out.append("&gt;");
      case '\'' -> out.append("&apos;");
      case '\n' -> out.append("&#10;");
      case '\t' -> out.append("&#9;");
      default -> out.append(c);
    }
  }
}
